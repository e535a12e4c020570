"""Whether a step that brings "ready" nearer is told in plain words and no others.

"Rinsed it last time", "it's rinsed and dry in ten minutes", "just say rinsed", "rinsed with what": there is no end to
the words that turn a claim into none, so it is the words that leave it one which are listed. With any other word beside
it a step is asked about before it counts.
"""

from __future__ import annotations

from collections.abc import Collection

from assistant.understand.steps.step_patterns import STEPS
from assistant.understand.text.known_words import words_of
from assistant.understand.text.parts_of_it import FITTING, PART
from assistant.understand.text.patterns import Pattern
from assistant.understand.text.plain_words import first_beside

CLOSING = frozenset({"rinse", "dry", "air", "hold", "wipe"})
"""Steps after which less is left to do. Of what is sprayed it counts even in doubt that it touched the surface."""

_PLAIN = words_of(
    """
    's a all also am an and are at away been bit both clean cleanly completely corner corners course did do does done
    down dripping each elbow end every everything everywhere extra finally finished first for fresh from full fully gave
    given go good got grease had has have her hers hot i in inside into is it it's its itself job let lot lots lovely
    me more my myself nice nicely now of off ok okay on once one our out outside over own plain plenty proper properly
    quick quickly really rinse round s same second so solid some spare super surface take than thank thanks that the
    them then there these they third this thorough thoroughly those three through time times to together too took
    totally turn twice two under up us used using very warm was water we well went were whole wipe with yep yes you
    bone spotless squeaky tidy crisp hard
    afternoon afterwards again ago already anyway evening minute minutes moment morning since today
    bucket buckets chamois cloth cloths fan flannel hose hosed hairdryer jug jugs kitchen microfibre paper rag rags
    roll shower head sponge squeegee tap tissue towel towels
    air aired airing breeze door doors draught open opened opening shut window windows
    soap soapy suds residue bubbles phew yay hooray
    log logged mark marked note record tick ticked
    hour hours ours wood wooden glass plastic metal mesh cork tile tiles else
    just way along actually managed finally shiny wet closed rack room tank box cage viv vivarium tub enclosure
    """
)
"""Words beside a step that change nothing of it."""
_BEFORE_A_RINSE = frozenset({"move out", "clear", "wash", "apply"})
_CHANGES_NOTHING = Pattern(
    r"\b(?:at (?:long )?last|dry as \w+|as (?:a|any) \w+|the last of|no (?:dirt|fumes|soap|suds|bubbles|residue|smell"
    r"|product|drips|puddles|damp|wet)(?: \w+)?(?: left)?"
    r"|in (?:the )?(?:corners|sink|bath|shower|garden|sun|room|middle)|as (?:you )?(?:said|asked|told|ordered)"
    r"|like you (?:said|asked|told me)|you (?:said|asked|told me)|by (?:hand|now|myself)|(?:nothing|not a drop) left"
    r"|about (?:DURATION|NUMBER)|i (?:promise|swear)|every last|(?:for|after|of) (?:at least |about |over )?DURATION"
    r"|DURATION (?:ago|later|on|since)|of (?:it|them)|left (?:it )?to|(?:you )?know)\b"
)
_STILL_TO_COME = Pattern(
    r"\b(?:in|within|inside) (?:about |around |another |a |the next )*(?:DURATION|NUMBER|minute)\b"
    r"|\bused (?:on|in|for)\b"
)
_A_PART = Pattern(rf"\b(?:{PART}|{FITTING})\b")
_SECOND_THOUGHTS = Pattern(
    r"\b(?:wait|hang on|hold on|no sorry|sorry no|i mean|tell a lie|or (?:was|is|did) (?:it|that|i)|or not)\b"
    r"|, ?no(?:,| wait| sorry| not| just|$)|\b(?:nearly|almost|mostly|ish|not quite)$"
    r"|, ?(?:as if|if only|\w+ not|not|not really|so (?:he|she|they|it) (?:says?|said|claims?)|in theory|on paper)$"
    r"|^(?:yeah|yes|oh|sure) ,? ?(?:right|sure|nah)\b|\ball but (?:\w+ed|dry|done)\b|\bmore to (?:go|do)$"
    r"|\bin (?:my|his|her) (?:head|mind)\b"
)
""" "It stayed wet, rinsed, wait no, just stayed wet"."""
_NOT_SO = Pattern(
    r"[,.] ?(?:wait|hang on|hold on|oh|sorry)? ?[,.]? ?(?:no|nope)[ .,]*$"
    r"|, ?(?:nearly|almost|not quite|not really|or not)$"
)
""" "Sprayed. wait. no.", "washed, nearly": of whichever step."""
_ANOTHER_DAY = Pattern(
    r"\b(?:yesterday|last (?:night|week|weekend|time|month|\w+day)|the other (?:day|night|week)|(?:days|weeks) ago"
    r"|(?:on|this|since) (?:mon|tues|wednes|thurs|fri|satur|sun)day)\b"
)
"""What was sprayed then may be of another clean..."""
_WITH_WHAT = Pattern(r"\b(?:with|using|from|out of) .*$")
"""...but "with yesterday's mix" is of that."""
_STILL_ON_IT = Pattern(
    r"\bstill (?:some |a bit of |a lot of |loads of |lots of |full of |covered in )*(?:soap\w*|suds|foam|bubbles|poo\w*"
    r"|dirt\w*|muck\w*|dirty|filthy|grubby|mould\w*|mold\w*|urates?|stuck|caked|there|on)\b"
    r"|\b(?:will|would|did|does|is|has|have) not (?:all |quite |really )*(?:come|coming|came|shift|shifting|budge"
    r"|go|gone)"
    r"(?: off| out| away)?\b|\bnot (?:all )?(?:come|coming) off\b",
    "still",
    "not",
)
""" "Washed it but the poo won't come off"."""
_BY_ITSELF = Pattern(r"(?:^|, ?)(?:\w+ )?(\w+ly)(?= ?(?:,|$))")
""" "It's been rinsed, supposedly": a word of how it was, set apart."""
_WITH_A_DIRTY_ONE = Pattern(
    r"\b(?:towel|cloth|rag|sponge|paper|roll|mop|flannel|hose|water)(?: is| was| 's)+ (?:\w+ )?(?:wet|damp|dirty|filthy"
    r"|soaked|soaking|used|soapy|brown|grubby|manky)\b"
)
""" "Wiped dry but the towel was wet"."""
_ONE_OF_THEM = Pattern(
    r", ?(?:well|or|i mean|at least|no)? ?,? ?(?:only |just )?(?:one|two|some|half)(?: of (?:them|the (?:two|three"
    r"|lot)))?$"
    r"|, ?(?:well|or|i mean|at least) (?:only |just )?one(?: of them)?(?: is| 's)$"
    r"|^(?:(?:so|and|but|ok|well) )*(?:only|just) (?:the )?(?:ENCLOSURE|ANIMAL)(?: is| 's)\b"
    r"|\bthe other(?: one)?(?: is| 's| has| 's)? (?:still|not|hiding|loose)\b"
    r"|^(?:(?:ok|so|and|right) )*(?:only |just )?one (?:of them|of the \w+|ANIMAL)(?: is| 's)?(?: back)?\b"
)
""" "Got the geckos out, well one of them", "one gecko's back in"."""


def names_a_closing_step(text: str) -> bool:
    """Whether such a step is named that was found not to be told: "wiped twice with a soapy cloth"."""
    return any(step in CLOSING and pattern.search(text) for step, pattern in STEPS)


def on_second_thoughts(text: str, steps: Collection[str], denied: Collection[str] = ()) -> bool:
    """Whether a text that tells such steps has second thoughts, of whichever of them.

    denied: steps that it says aren't done: "haven't washed it but rinsed it".
    """
    if not {"move out", "return"}.isdisjoint(steps) and _ONE_OF_THEM.search(text) is not None:
        return True
    if _NOT_SO.search(text) is not None or (
        "apply" in steps and _ANOTHER_DAY.search(_WITH_WHAT.sub("", text)) is not None
    ):
        return True
    if "wash" in steps and _STILL_ON_IT.search(text) is not None:
        return True
    if CLOSING.isdisjoint(steps):
        return False
    if not _BEFORE_A_RINSE.isdisjoint(denied) or _SECOND_THOUGHTS.search(text) or _WITH_A_DIRTY_ONE.search(text):
        return True
    by_itself = (found.group(1) for found in _BY_ITSELF.finditer(text))
    return any(word not in _PLAIN for word in by_itself)


def beside_it(clause: str, steps: Collection[str]) -> str | None:
    """The first word of a clause that may make a step in it none; None: it is plainly told, or none that brings it
    nearer to ready.

    clause: masked, without what opens and closes a turn.
    """
    if CLOSING.isdisjoint(steps):
        return None
    to_come = _STILL_TO_COME.search(clause)
    if to_come:
        return to_come.group()
    rest = _CHANGES_NOTHING.sub(" ", clause)
    for _, pattern in STEPS:
        rest = pattern.sub(" ", rest)
    return first_beside(_A_PART.sub(" ", rest), _PLAIN)
