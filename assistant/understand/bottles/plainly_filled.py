"""Whether a fill is told in plain words and no others, so that a bottle's own mix may be taken for it.

"A bit weak", "by eye", "straight from the concentrate", "with a glug of it", "by the last tenant": there is no end to
the words that make a fill another than the usual one, so it is the words that leave it the usual one which are listed.
With any other word beside it how strong it is gets asked.
"""

from __future__ import annotations

from collections.abc import Sequence

from assistant.contract import UNHEARD_PRODUCT
from assistant.understand.bottles import fills
from assistant.understand.text.known_words import COLOURS, words_of
from assistant.understand.text.patterns import Pattern, any_of
from assistant.understand.text.plain_words import first_beside

_PLAIN = (
    words_of(
        """
        a about actually added afternoon again ah all already also always am an and another are around as at
        back batch beaker been boiled both bottle bottles brand brim bunged but can cap capful capfuls caps
        chucked clean cleaned closed container correct correctly cup day days deep did directions distilled do
        does done down dried each emptied er even evening everyone everything fill filled filling fills
        finally first flushed for forgot forgotten four fresh freshly full go good got great had hang has have
        hello here hey holds hot hour hours i in inside instructions into is it its jug just k label labeled
        labelled lid log logged lot lukewarm made make mark me mean meant measured mention mil mils minute
        minutes misted mix mixed mixes mixing ml morning much my neck new nice nicely night noon normal normally
        note noted now of oh ok okay on one ones only onto oops our out own per plain please plus popped poured
        primed properly pumped put ready record recorded refill refilled refilling rest right rinse rinsed round
        rounds said same say says screwed shaken shook shut so solution sorry spoon spoonful spoonfuls spoons
        spot spout spray sprayer sprayers squirted swilled syringe syringes tap tell thank thanks that the them
        then there these they this those three through time tipped to today tomorrow tonight too top
        topped topping trigger tub two um up us use used usual usually wait warm was washed water
        watered we week well went were whole whoops wiped with work write yes you
        """
    )
    | COLOURS
)
"""Words beside a fill that change nothing of how strong it is."""
_CHANGES_NOTHING = Pattern(
    r"\b(?:VOLUME|NUMBER|MIX) (?:of )?(?:the )?(?:neat )?concentrate\b|\bfrom (?:the )?(?:AGENT|STOCK)\b"
    r"|\b(?:to|at) (?:the )?(?:\w+ )?(?:line|top|mark|brim|neck|rim|label)\b|\bby the label\b"
    r"|\b(?:my|the|these) (?:hands|back|arms?) (?:are |is )?(?:still )?\w+ but\b|\bmore of (?:the same|it|that)\b"
    r"|\b(?:with )?(?:some )?more (?:of )?(?=AGENT|STOCK)|\blast (?:night|time|week)\b|\bby (?:now|myself|hand)\b"
    r"|\b(?:few|couple|quite)\b(?= (?:of )?(?:\w+ )?(?:ago|back|hours|minutes|days|weeks|a while))"
    r"|\bMIX (?:AGENT|STOCK|water)(?: ,| and)* half (?:AGENT|STOCK|water)\b|\bfull up\b"
    r"|\bhalf (?:an hour|past|full|way|filled|(?:of )?(?:the |my )?BOTTLE)\b|\bhalfway\b"
    r"|\bfor (?:the |this )?weekend\b|\b(?:as|like) (?:you|it) (?:said|says|told me)\b"
    r"|\bfor (?:\w+ )?(?:use|job|round|clean|cleaning)\b"
)
_SOME = Pattern(r"\bsome\b")
_WHOLE = Pattern(r"\b(?:filled|refilled|mixed|made|topped|fresh|batch|lot|new)\b")
""" "Filled with some bleach" is full of it; "put some bleach in" leaves open how much."""
_PRODUCT = Pattern(r"\b(?:AGENT|STOCK)\b")
_OF_IT = Pattern(r" ?'s\b")


_WITH_WHAT = Pattern(
    r"\b(?:with|using)(?: (?:the|some|a|an|my|our|that|this|fresh|new|neat|diluted|more))* (?P<word>[a-z]+)\b"
)
_STUFF = Pattern(
    r"\b(?:with|from) (?:the |some |that |my )?"
    rf"(?:BOTTLE\b|{any_of(COLOURS)} (?:stuff|liquid|concentrate|cleaner|soap)\b)"
)
""" "With the blue stuff": a colour is no product."""
WORDS = _PLAIN | words_of("swirl swirled swirling glug squirt squirts weak weaker stronger eye concentrate guess")
"""Words that the rules here turn on."""


def beside_it(marked: Sequence[str]) -> str | None:
    """The first word told with a fill that may make it another than the bottle's usual one; None: it is plainly told.

    marked: the words with names, amounts and times in braces.
    Gives: "with glim" for a word that stands where the product's name belongs.
    """
    said = " ".join(word[1:-1].upper() if word[0] == "{" else word for word in marked)
    text = fills.but_for_when(_CHANGES_NOTHING.sub(" ", said))
    if _WHOLE.search(text) is not None:
        text = _SOME.sub(" ", text)
    text = _OF_IT.sub("", text)
    stuff = _STUFF.search(said)
    if stuff is not None:
        return stuff.group().replace("BOTTLE", "that stuff")
    beside = first_beside(text, _PLAIN)
    product = _WITH_WHAT.search(text) if _PRODUCT.search(said) is None else None
    if beside is None or product is None or product["word"] != beside:
        return beside
    return f"{UNHEARD_PRODUCT}{beside}"
