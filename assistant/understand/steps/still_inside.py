"""An animal on record as out that is said to be inside: "she's still in there", "only one is out"."""

from __future__ import annotations

from dataclasses import replace

from assistant.contract import Doubt, Reading
from assistant.core.harms import OF_SOMETHING_ELSE
from assistant.core.round.gate import may_go_back
from assistant.core.round.rounds import is_open
from assistant.understand.look import BY_RULE, Look
from assistant.understand.named.by_kind import open_homes
from assistant.understand.named.names import HOMES
from assistant.understand.steps.back_words import IS_BACK
from assistant.understand.steps.inside_words import BOTH_AFTER_ALL, INSIDE, NO_INSIDE, ONE_OUT, OTHER_NOT, OTHER_TOO
from assistant.understand.text.asking import ASKED
from assistant.understand.text.patterns import Pattern

_IT = (
    r"(?:he|she|it|they|ANIMAL|ENCLOSURE|one(?: of (?:them|ANIMAL))?|one ANIMAL|the other(?: one| ANIMAL)?|another"
    r"(?: one)?)"
)
_HOME = "|".join(sorted(HOMES - {"tub"}))
_IN_THERE = rf"(?:inside|in there|in here|in it|in (?:the |his |her |their |its )?(?:ENCLOSURE|{_HOME}))"
_STILL_INSIDE = Pattern(
    rf"\b{_IT} (?:is|'s|are|was|were)? ?(?:actually |really )?still "
    rf"(?:{_IN_THERE}\b|in(?= ?(?:[.,!]|$|and\b|sprayed\b)))|\bstill (?:a |one |an )?ANIMAL {_IN_THERE}\b"
    r"|\bthere is (?:still )?(?:another|one|a second|(?:DURATION|a|an)(?= ANIMAL))(?: one| ANIMAL)? "
    rf"(?:still |left |hiding )*{_IN_THERE}\b"
    r"|\bfound (?:a |the |an |another |one |his |her |its )*"
    rf"(?:baby|babies|one|other|second|ANIMAL|juvenile|hatchling)(?: one)? (?:still )?{_IN_THERE}\b"
    rf"|\b{_IT} (?:is|are|was|were|has|have) (?:not|never) (?:been |come |moved |taken |even )?out\b"
    rf"(?! of (?:quarantine|sight|date))|\b{_IT} never (?:came|went|got) out\b"
    r"|\b(?:i|we) (?:did not|have not|never) (?:take|took|taken|move|moved|get|got|lift|lifted) "
    r"(?:(?:he|him|she|her|it|them|the|my) )*(?:ANIMAL )?out\b"
    r"|\bonly (?:one|NUMBER)(?: of (?:them|ANIMAL))? (?:is|are|was|came) out\b"
    r"|\b(?:crawled|climbed|slipped|slithered|snuck|sneaked|ran|jumped|hopped|went|got) back "
    rf"(?:in|into|inside|{_IN_THERE})\b(?= by |.*\bon (?:his|her|its) own\b)"
    r"|\b(?:crawled|climbed|slipped|slithered|snuck|sneaked) (?:right |straight )?back\b"
    rf"|\b(?:one|{_IT}) (?:is |are )?(?:hides|hiding|hid) (?:{_IN_THERE}|in (?:the|his|her) hide)\b",
    "still",
    "out",
    "back",
    "hid",
    "there is",
    "found",
)
_ASKED = Pattern(
    rf"{ASKED}|\b(?:if|unless|in case|quarantine|loose|escap\w+)\b"
    r"|\b(?:one|NUMBER|it|he|she|they|ANIMAL|ENCLOSURE|them)(?: has| have| 's| just)* "
    r"(?:got|gotten|broke|broken|jumped|ran|run|bolted|shot) out\b|\bout ?!"
)
"""What asks, and a cry that one got out by itself: that is no moving out, however many live there."""
_OF_A_THING = Pattern(
    r"\b(?:smells?|stink\w*|water|soap|suds|wet|damp|puddles?|AGENT|STOCK|spray|dirt|poo|mess|substrate|bedding|paper"
    r"|bowls?|dish(?:es)?|hides?(?= (?:is|are|still))|branch\w*|shed)\b"
)
_NOT_YET = Pattern(r"\bout yet\b|\byet out\b", "yet")
""" "Not out yet" takes back what was just told."""
_THOUGHT_SO = Pattern(r"\b(?:thought|feared|was afraid|was worried)\b.*\bbut\b", "but")
""" "I thought she was still inside, but she's in the tub": she isn't."""


def still_inside(look: Look) -> Reading | None:
    """An animal put back, or never out, in an enclosure whose clean has it as moved out; None: nothing of the kind.

    Where several cleans fit, none is named, so that it is asked which.
    """
    plain = look.parsed.plain.rstrip(" .")
    last = look.world.talk.last
    if last is not None and last.intent in (*OF_SOMETHING_ELSE, "escape"):
        return None  # right after fumes: who is in there is in danger
    if _ASKED.search(plain) is not None or _NOT_YET.search(plain) is not None or _THOUGHT_SO.search(plain) is not None:
        return None
    if _STILL_INSIDE.search(plain) is not None and IS_BACK.search(plain) is None and not _OF_A_THING.search(plain):
        return _inside(look, _moved_out(look))
    several = _one_of_several(look, plain)
    if several is not None or INSIDE.search(plain) is None or NO_INSIDE.search(plain):
        return several
    if "move out" in look.claims.done or _NEVER_THE_ANIMAL.search(plain):
        return None
    return _inside(look, _moved_out(look))


_NEVER_THE_ANIMAL = Pattern(r"\b(?:smells?|stink\w*|water|soap|suds|puddles?|AGENT|STOCK|spray|dirt|poo|mess|bowls?)\b")


def _moved_out(look: Look) -> list[str]:
    """The open cleans that have their animal as moved out."""
    return [name for name, one in look.world.state.rounds.items() if is_open(one) and "move out" in one.done]


def _inside(look: Look, out: list[str]) -> Reading | None:
    """Put back on record and out again; when nothing is left to do, the moving out is taken back instead.

    Told as a return then, it would close the clean, with an animal that was inside while it was sprayed.
    """
    slots = look.slots("done")
    named = [name for name in out if name in slots.enclosures] or (out if not _names_another(look, out) else [])
    if not named:
        return None
    slots = replace(slots, enclosures=tuple(named) if len(named) == 1 else (), choices=(), numbers=())
    never_out = not _WENT_BACK.search(look.parsed.plain)
    if len(named) == 1 and never_out and may_go_back(look.world.state.rounds[named[0]], look.world.now).ready:
        taken_back = replace(look.slots("undo"), enclosures=slots.enclosures, steps=("move out",), corrects=True)
        return look.reading("undo", taken_back, BY_RULE) if _ALL_THE_TIME.search(look.parsed.plain) else None
    reading = look.reading("done", replace(slots, steps=("return",)), BY_RULE)
    of_several = len(named) == 1 and may_go_back(look.world.state.rounds[named[0]], look.world.now).ready
    of_several = of_several and _ONE_BACK.search(look.parsed.plain) is not None and _are_several(named[0], look)
    return replace(reading, doubts=(Doubt("part", "return"),)) if of_several else reading


def _are_several(name: str, look: Look) -> bool:
    home = look.world.household.enclosure(name)
    return home is not None and home.animals > 1


_ONE_BACK = Pattern(r"^(?:i |we |only |ok |and |so )*(?:have )?(?:put |popped |placed )?one\b", "one")
""" "One is back in", of two: whether the other is, is asked."""
_WENT_BACK = Pattern(r"\bback\b", "back")
_ALL_THE_TIME = Pattern(
    r"\b(?:still|never|not|only|found|second|another|left|DURATION|forgot|neither|along|time|one|other|both|tail|head"
    r"|see|saw|spotted|wait|god|oh|no)\b"
)
"""Said so that it can be no return: without any of them, "the snake's in the tank" may be one."""


def _names_another(look: Look, out: list[str]) -> bool:
    """Whether an enclosure is named by its name, which is none of these."""
    return bool(look.slots("done").enclosures) and "ENCLOSURE" in look.parsed.plain


def _one_of_several(look: Look, plain: str) -> Reading | None:
    """ "One's out, the other is still hiding": not moved out, where more than one lives; None: nothing of the kind."""
    homes = [home for home in open_homes(look.world) if home.animals > 1]
    named = [home for home in homes if home.name in look.slots("done").enclosures] or homes
    if len(named) != 1:
        return None
    home, before = named[0], look.world.talk.last_reading
    slots = replace(look.slots("done"), enclosures=(home.name,), choices=(), numbers=())
    was_one = (
        before is not None and before.intent == "next" and ONE_OUT.search(before.said.replace("'s", " 's")) is not None
    )
    if was_one and home.animals == 2 and OTHER_TOO.match(plain):
        return look.reading("done", replace(slots, steps=("move out",)), BY_RULE)
    other_not, one = OTHER_NOT.search(plain) is not None, ONE_OUT.search(plain) is not None
    if BOTH_AFTER_ALL.search(plain) and not other_not:
        all_out = one and home.animals == 2 and not look.claims.done
        return look.reading("done", replace(slots, steps=("move out",)), BY_RULE) if all_out else None
    if "move out" in look.world.state.rounds[home.name].done:
        return _inside(look, [home.name]) if other_not or (one and "only" in plain) else None
    if not (one or other_not or INSIDE.search(plain) or _STILL_INSIDE.search(plain)):
        return None
    return look.reading("next", replace(look.slots("next"), enclosures=(home.name,), choices=()), BY_RULE)
