"""What answers "did it stay wet the whole time?".

Wet is what was seen wet all over to the end; a part that dried, or a span that is too short, is a no. What is neither
seen nor denied ("probably") is asked again.
"""

from __future__ import annotations

from typing import Literal, TypeAlias

from assistant.understand.steps.stayed_wet import NEVER_WET, SIDE, SURFACE, stayed_wet
from assistant.understand.text.patterns import Pattern

WetSaid: TypeAlias = Literal["wet", "dried", "unsure"]

_PART = rf"{SIDE}(?:{SURFACE}|branch(?:es)?|bit|bits|patch(?:es)?|spots?|places|half)"
_NEVER_DRIED = Pattern(
    r"\b(?:never|did not|has not|nothing|nowhere|not (?:a |one )?(?:bit|spot|part|patch)?)(?: \w+){0,2}"
    r" (?:dried|dry|drying)\b|\bnot (?:a|one|any|a single) dry (?:spot|patch|bit|part|place)\b|\bno dry (?:spots?"
    r"|patch(?:es)?|bits?|parts?)\b"
)
_DRIED = Pattern(
    rf"\b(?:dried|dry|drier|drying|patchy|streaky|evaporated)\b"
    rf"|\b(?:only|just) (?:the |a |one |some )*{_PART}\b|\b(?:not|except|bar|but for|apart from|aside from|other than"
    rf"|minus|save|(?:all|everything|everywhere|lot|rest|thing|of it) but) (?:for )?(?:the |a |one |its )*{_PART}\b"
    rf"|\b(?:well|at least|mind you) ?,? ?(?:the|its|his) {_PART} (?:did|was|were|stayed)(?: wet)?$"
    rf"|\b(?:the |its |his )?{_PART} (?:did not|was not|never|no|not|got dry|went)\b|{NEVER_WET}"
    r"|\b(?:most|nearly all|almost all|half|some|part|bits?) of it\b|\bnot (?:all|quite|really|entirely|completely"
    r"|the"
    r" whole|everywhere|fully)\b|\b(?:mostly|mainly|nearly|almost|partly)\b|\b(?:too early|too soon|cut it short)\b"
)
_TOO_SOON = Pattern(r"\b(?:too (?:early|soon|quick\w*)|cut it short|straight (?:away|off)|right away|at once)\b")
_AFTER_IT = Pattern(
    r"(?:^|(?:,| and| then)* )(?:i (?:have )?)?(?:rinsed|wiped (?:it|off|twice)|hosed|washed off|towelled)\b"
)
_LEFT_TO_DRY = Pattern(
    r"\b(?:i )?(?:just |only )?(?:let|leave|left|letting|leaving) (?:it|that|them)(?: to)? (?:air )?dry\b"
)
_NO_BUT_WET = Pattern(
    r"^no ?[,.]? (?:(?:wait|sorry|yes|hang on) ?,? )*(?=it (?:did (?:stay|keep)|stayed|kept|was)\b.*\bwet\b)"
)
""" "No, it did stay wet" denies that it dried."""
_DRY_NOW = Pattern(r"(?:it |that |ENCLOSURE |is |all |bone |now |the |ok |and )*(?:dry|dried)(?: now| already| off)*")
_NO = Pattern(
    r"^(?:(?:oh|um|uh|er|well|sorry|damn|ah|hmm) ,? ?)*(?:no|nope|nah|not|afraid not|sadly not|unfortunately not"
    r"|it did not|did not|negative)\b(?! (?:smells?|worries|problem|idea|rush|hurry|one|thanks|thank|bother|need"
    r"|a dry|dry|more|wait))"
)
_YES = (
    r"(?:yes|yeah|yep|yup|aye|yah|sure|ok|definitely|certainly|absolutely|of course|it did|they did|all good"
    r"|sure did)"
)
_WET = Pattern(
    rf"^(?:{_YES}\b(?: ?,? )?)*(?:(?:and|it|that|they|all of it|everything|the lot|the whole thing|stayed|kept|was"
    rf"|were"
    r"|is|did|stay|keep|has|been|remained|i|we|nice and|good and|properly|soaking|sopping|dripping|really|still"
    r"|all|looked|looks"
    r"|to me|sat there|there|in there|when|checked|just now|now|watched|saw|made sure|had|the|whole|entire|full|every"
    r"|time|throughout|till|until|to|right|up|through|end|it's|way|over|everywhere|wet|glistening|shiny|minutes"
    r"|minute"
    r"|DURATION|of it|i looked|rinsed|long|whole time|top to bottom|of them|both|misting|misted|spraying|topping"
    r"|topped"
    r"|wetting|again|twice|once|kept on|it up|so|yes|a few times|and again|while|with|eye|on|my|an|bit|for) ?,? ?)*$"
)
_SEEN = Pattern(
    rf"^{_YES}$|^{_YES}\b.*\b(?:misted|sprayed|topped|misting|spraying)\b.*\b(?:twice|again|a few times|up|on)\b"
    rf"|\bwet\b|\bglistening\b|\bshiny\b|\bsoaking\b|\bdripping\b|\bwhole\b|\bentire\b|\bthroughout\b"
    r"|\ball (?:of it|the way|the time|over|along)\b|\bwatched\b|\beye on\b|\bkept (?:on )?(?:misting|spraying"
    r"|topping"
    r"|wetting)\b|\btopped it up\b|^it did\b|^all good$|\bto the end\b"
)
_PERHAPS = Pattern(
    r"^(?:\w+ ){0,3}?(?:probably|maybe|perhaps|(?:i )?think(?: so)?|i guess(?: so)?|i suppose(?: so)?|i hope so"
    r"|should have"
    r"|might have|must have|i reckon(?: so)?|more or less|pretty much|i believe so|fairly sure|pretty sure|hopefully"
    r"|as far as i (?:know|could see|can tell))\b"
)

_MADE_WETTER = Pattern(
    r"(?:(?:i|we|just|have|ok|and) )*(?:topped|misted|sprayed)(?: up)? (?:the|its) (?:wet|film|spray)(?: up)?"
    r"(?: again| a bit)*"
)
""" "Topped the wet up": done to it, and no word of whether it dried."""


_ASKS = Pattern(
    r"\?$|^(?:(?:and|so|ok|but) )*(?:what|how|why|when|where|which|who|can|may|should|is|are|was|do|does|did i|tell|say"
    r"|stop|hush|repeat|help|undo)\b"
)
_LONGEST_HALF = 10


def is_half_an_answer(plain: str) -> bool:
    """Whether something was said to it that is no clear yes: then what comes next doesn't vouch for it."""
    return _ASKS.search(plain) is None and len(plain.split()) <= _LONGEST_HALF


def is_a_hedge(plain: str) -> bool:
    """ "Nearly", "more or less": half an answer, and nothing besides."""
    return _HEDGE.fullmatch(plain.strip(" .!,")) is not None


_HEDGE = Pattern(
    r"(?:(?:well|um|er|oh|yes|yeah|i think|so) ,? ?)*(?:nearly|almost|mostly|mainly|partly|roughly|barely|hardly"
    r"|just about|pretty much|more or less|sort of|kind of|not quite|near enough|ish)"
    r"(?: there| all| so| it| over| dry)*"
)


def before_the_rinse(plain: str) -> str:
    """What a text tells of the wet time: "stayed wet, rinsed, dried" tells what came after it as well."""
    cut = _AFTER_IT.search(plain)
    return plain[: cut.start()].strip(" ,") if cut is not None else plain


def wet_said(plain: str) -> WetSaid | None:
    """What a masked text says, right after it was asked; None: it is no answer."""
    plain = plain.strip(" .!,").replace(" ,", ",").replace(",", " ,")
    if plain.endswith("?") or len(plain.split()) > 18:
        return None
    if stayed_wet(plain) is False and "wet" in plain and "not" in plain.split()[-2:]:
        return "dried"
    if _DRY_NOW.fullmatch(plain) or plain in ("nearly", "almost", "nearly there", "almost there"):
        return None  # since when it is dry, only the keeper knows; "nearly" is of the time
    if not _TOO_SOON.search(plain):
        plain = before_the_rinse(plain)
        if not plain:
            return None  # "rinsed and dried": what came after it, and no word of the wet time
    plain = _NO_BUT_WET.sub("", _LEFT_TO_DRY.sub(" ", plain))
    without = _NEVER_DRIED.sub(" wet ", plain)
    if _DRIED.search(without):
        return "dried"
    if _PERHAPS.match(plain) or _MADE_WETTER.fullmatch(plain):
        return "unsure"
    if _NO.match(without) and len(without.split()) <= 6 and "wet" not in without:
        return "dried"
    return "wet" if _WET.match(without) and _SEEN.search(without) else None
