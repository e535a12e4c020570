"""How many windows or doors a text says are open. The airing's clock goes by them."""

from __future__ import annotations

from assistant.understand.steps.claimed_steps import not_yet
from assistant.understand.text.asking import ASKS_FIRST
from assistant.understand.text.patterns import Pattern

_SHUT = Pattern(
    r"\b(?:closed|shut)\b(?: \w+){0,2} (?:windows?|doors?)\b|\b(?:windows?|doors?)(?: is| are"
    r"| 's)?(?: all| now)? (?:closed|shut)\b"
    r"|\b(?:no|none of the|not one|not a single) (?:\w+ )?(?:windows?|doors?)(?: is| are| 's)?"
    r"(?: all| now)* open(?:ed)?\b|\bnothing(?: is| 's)? open(?:ed)?\b"
    r"|\bopened nothing\b|\b(?:have|did) not (?:opened?) (?:anything|any(?: of them)?)\b|\beverything(?: is| 's)?"
    r" (?:shut|closed)\b"
    r"|\b(?:windows?|doors?)(?: is| are| 's)? not open\b"
    r"|\b(?:did|have|has|could|can|do) not (?:\w+ )?open(?:ed)?(?: \w+){0,2} (?:windows?|doors?)\b"
)
_OPEN = Pattern(
    r"(?P<count>\b(?:one|two|three|four|both|all three|all|another|second|third|1|2|3"
    r"|4) )?(?:more )?(?:\w+ )?(?P<what>windows?|doors?|one)"
    r"(?P<too> and (?:the |a )?(?:\w+ )?(?:window|door))?(?: is| are| 's| has been| have"
    r" been)?(?: all| now| wide| both)* open(?:ed)?\b"
)
_OPENED = Pattern(
    r"\bopened(?: up)?(?: the| a| my)?(?P<count> one| two| three| both| all| another| second)?(?: of"
    r" the)?(?: \w+)? (?P<what>windows?|doors?)(?P<too> and (?:the |a )?(?:\w+ )?(?:window|door))?"
)
_NO_MORE = Pattern(
    r"^(?:just |only |ok |yes |now |still |it is )*(?P<count>one|two|both|three|all|all three)"
    r"(?: of the)?(?: big| small)? (?P<what>windows?|doors?)(?P<too> and (?:the |a )?(?:\w+ )?(?:window|door))?"
    r"(?: now| today)?$"
)
""" "One window": the answer to how many are open."""
_COUNTS = {
    "one": 1,
    "1": 1,
    "two": 2,
    "2": 2,
    "both": 2,
    "second": 2,
    "three": 3,
    "3": 3,
    "third": 3,
    "all three": 3,
    "all": 3,
    "four": 3,
    "4": 3,
}


OF_NO_WINDOW = Pattern(
    r"\b(?:cage|tank|viv|vivarium|box|tub|enclosure|cupboard|fridge|front|back|car|ENCLOSURE|hall|bathroom) doors?\b"
    r"|\bdoors? (?:behind (?:me|us)|of (?:the |his |her )?(?:cage|tank|viv|box|enclosure|ENCLOSURE)|to the hall)\b"
    r"|\b(?:would|i'd) rather\b"
)
""" "Closed the door behind me" tells nothing of the air."""


def openings_in(text: str) -> int | None:
    """How many windows or doors are said to be open now; 0: shut; None: nothing is said."""
    if OF_NO_WINDOW.search(text):
        return None
    if _SHUT.search(text):
        return 0
    found = _OPEN.search(text) or _OPENED.search(text) or _NO_MORE.match(text)
    if found is None or (found["what"] == "one" and (found["count"] or "").strip() not in ("second", "third")):
        return None
    before = text[: found.start()].split()[-2:] + found.group().split()[:1]
    if {"not", "no", "is", "are", "should", "if", "open"} & set(before) and "?" in text + "?" and _asks_about(text):
        return None
    count = (found["count"] or "").strip()
    if count in _COUNTS:
        return _COUNTS[count]
    if found["too"]:
        return 2
    return 2 if found["what"] in ("windows", "doors") else 1


_NAMED = Pattern(
    r"\b(?P<count>no|one|1|(?:a )?second|(?:a )?third|a|the|both|two|2|another|three|3|all three|all|four|4|five|5"
    r"|every) (?:more )?(?:\w+ )?(?P<what>windows?|doors?|openings?|vents?)\b"
)
_FEWEST = {"no": 0, "a": 1, "another": 2, "every": 3, "five": 3, "5": 3}
_SHUT_IN = Pattern(r"\b(?:shut|closed|everything shut|nothing open)\b")


def openings_named(text: str) -> int | None:
    """How many windows or doors a question about airing names, open or not said to be; None: none.

    For a question only: "with two windows" there is no report that they stand open.
    """
    found = _NAMED.search(text)
    if found is None:
        return 0 if _SHUT_IN.search(text) else None
    count = found["count"]
    if count == "the":
        return 2 if found["what"].endswith("s") else 1
    return _FEWEST.get(count, _COUNTS.get(count.removeprefix("a ")))


def _asks_about(text: str) -> bool:
    words = text.split()
    return bool(words) and (words[0] in ASKS_FIRST or text.endswith("?") or not_yet(text))
