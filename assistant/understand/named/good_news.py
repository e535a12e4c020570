"""What is said of an illness that isn't: a negative test, no mites, well after all, "don't mark her"; or asked.

Bad news is looked for first in doubt: two germs in one breath, or "isn't healthy", are no good news.
"""

from __future__ import annotations

from dataclasses import replace
from typing import Literal, TypeAlias

from assistant.contract import Slots
from assistant.core.household import Household
from assistant.understand.named.animal_words import LIZARDS, SNAKES, TORTOISES
from assistant.understand.named.names import Mention
from assistant.understand.parsing import Parsed
from assistant.understand.text.asking import ASKED
from assistant.understand.text.patterns import Pattern

OfIllness: TypeAlias = Literal["ends", "none", "unmarked", "asked"]
"""Its end is asked; there is none, as told; nothing is to be changed; how it stands on record is asked."""

_ENDS = Pattern(
    r"^(?:and |so )?(?:when|how long|how do i know|how will i know|is it)\b.*\b(?:gone|over|rid|ends?|clear)\b"
)
_GERM = r"(?:ORGANISM|mites?|ticks?|parasites?|bugs?)"
_SICK = r"(?:sick|ill|poorly|unwell|infected|contagious|positive)"
_LITTLE = r"(?:have|had|has|got|get|see|seen|find|found|be|been|a|an|any|the|it|really|actually|after all|single|more)"
_NONE = Pattern(
    r"\b(?:test\w*|swab\w*|results?|samples?|he|she|it|they|ANIMAL|ENCLOSURE|"
    r"(?:came|comes|come) back)\b.*\bnegative\b|\bnegative for\b"
    rf"|\bno (?:more |signs? of |trace of |sight of |sick |new )*{_GERM}\b"
    rf"|\b(?:is|was|are|were|have|has|had|does|do|did) (?:not|never) (?:{_LITTLE} )*{_GERM}\b"
    rf"|\bnever (?:{_LITTLE} )+{_GERM}\b|\bnot {_GERM} after all\b|\b(?:free|clear) of {_GERM}\b|\b{_GERM} free\b"
    rf"|\b(?:is|was|are|were|looks?|seems?|does) not (?:look |seem )?(?:\w+ )?{_SICK}\b|\bnot {_SICK} after all\b"
    r"|\bvet (?:has |'s )?(?:says?|said|thinks|reckons|told me|rang|called)\b(?: \S+){0,4}? (?:is |are |'s |was )?"
    r"(?:all |just |perfectly )?(?:fine|ok|okay|well|clear|healthy|good)\b"
)
_BAD_AFTER_ALL = Pattern(
    rf"\bnot (?:\w+ )?(?:fine|ok|well|clear|healthy|good|right|negative|cleared)\b|{_GERM}.*{_GERM}"
    r"|\bfalse negative\b|\bbut\b|\bbefore\b|\blike (?:this|that|these|those)\b"
    r"|(?:ENCLOSURE|ANIMAL)\b.*\b(?:ENCLOSURE|ANIMAL)\b|\b(?:will|going to|should|could|might|may) (?:\w+ )?be\b"
    r"|\bvet\b.*\b(?:fine|ok|okay|well|clear|good)\b (?:to|for|idea|that)\b"
    rf"|\b(?:fine|ok|okay|good)\b.*\b(?:{_GERM}|{_SICK})\b|\bpositive\b.*\bnegative\b|\bnegative\b.*\bpositive\b"
)
_UNMARKED = Pattern(
    r"\b(?:do not|never|should not|did not (?:want to|mean to)) (?:mark|list|set|count)\b|\b(?:not|never) to mark\b"
    r"|\bunmark\b|\bvet (?:has |have )?(?:not|never) (?:\w+ )?(?:cleared|passed)\b"
)
_ASKED = Pattern(
    rf"^(?:(?:and|so|ok|but|wait) )*(?:(?:is|are|was|were) .*\b(?:{_SICK}|healthy|well|quarantined?|in quarantine)\b|"
    r"(?:did|have|has) (?:i|we|you|anyone|somebody|someone) .*\b(?:mark|marked|list|listed|put|set|move|moved)\b)"
)
_IS_ONE_ILL = Pattern(
    r"^(?:(?:and|so|ok|but|wait) )*(?:is|are) (?:the |my )?(?:ENCLOSURE|ANIMAL|he|she) (?:still |now |really )?"
    rf"(?:{_SICK}|healthy) ?\??$"
)
_ASKS = Pattern(rf"{ASKED}(?! not (?:mark|list|set|count)\b)|\b(?:if|whether|until|unless|in case)\b")
_PRODUCT = Pattern(r"\b(?:AGENT|STOCK|BOTTLE)\b")


def of_illness(plain: str) -> OfIllness | None:
    """What is said of an illness beside that there is one; None: nothing, so it may be one."""
    if _ENDS.search(plain):
        return "ends"
    if _UNMARKED.search(plain) and not _ASKS.search(plain):
        return "unmarked"
    if _ASKED.match(plain):
        return "asked"
    if _ASKS.search(plain) or _PRODUCT.search(plain) or _BAD_AFTER_ALL.search(plain):
        return None
    return "none" if _NONE.search(plain) else None


def good_news(plain: str) -> bool:
    """True where it is told that nobody is ill or to be marked so, or asked of one: known by its signs alone."""
    return of_illness(plain) in ("none", "unmarked") or _IS_ONE_ILL.match(plain) is not None


def one_is_well(plain: str) -> bool:
    """ "No mites on juniper but pepper has some": of two named one is well, and which is ill is to be asked."""
    return _NONE.search(plain) is not None and _TWO.search(plain) is not None


_TWO = Pattern(r"(?:ENCLOSURE|ANIMAL)\b.*\b(?:ENCLOSURE|ANIMAL)\b")


# ---------------------------------------------------------------- the new one

_KINDS = {"snake": SNAKES, "lizard": LIZARDS, "tortoise": TORTOISES}
"""What an animal may be called beside its own name."""


def without_the_old(slots: Slots, parsed: Parsed, household: Household) -> Slots:
    """ "The new snake" is one in quarantine, and never one that has long been there; nobody where none is known."""
    newcomers = [home for home in household.enclosures if home.group == "new"]
    kept, choices = list(slots.enclosures), slots.choices
    for mention in parsed.mentions:
        homes = {thing.name for thing in mention.things if thing.kind in ("enclosure", "animal")}
        if not homes or not _is_new(mention, parsed) or homes & {home.name for home in newcomers}:
            continue
        kinds = _KINDS.get(mention.said.split()[-1], (mention.said.split()[-1],))
        fitting = [home.name for home in newcomers if set(home.animal.split()) & set(kinds)]
        kept = [name for name in kept if name not in homes] + (fitting if len(fitting) == 1 else [])
        choices = tuple(choice for choice in choices if choice.said != mention.said)
    return replace(slots, enclosures=tuple(dict.fromkeys(kept)), choices=choices)


def _is_new(mention: Mention, parsed: Parsed) -> bool:
    before = [token.text for token in parsed.tokens[max(0, mention.start - 2) : mention.start]]
    return "new" in before or "newest" in before
