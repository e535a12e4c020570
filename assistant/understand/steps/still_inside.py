"""An animal on record as out that is said to be inside: "she's still in there", "only one is out"."""

from __future__ import annotations

from dataclasses import replace

from assistant.contract import Reading
from assistant.core.round.rounds import is_open
from assistant.understand.look import BY_RULE, Look
from assistant.understand.named.names import HOMES
from assistant.understand.steps.back_words import IS_BACK
from assistant.understand.text.patterns import Pattern

_IT = (
    r"(?:he|she|it|they|ANIMAL|ENCLOSURE|one(?: of (?:them|ANIMAL))?|one ANIMAL|the other(?: one| ANIMAL)?"
    r"|another(?: one)?)"
)
_HOME = "|".join(sorted(HOMES - {"tub"}))
_IN_THERE = rf"(?:inside|in there|in here|in it|in (?:the |his |her |their |its )?(?:ENCLOSURE|{_HOME}))"
_STILL_INSIDE = Pattern(
    rf"\b{_IT} (?:is|'s|are|was|were)? ?(?:actually |really )?still (?:{_IN_THERE}\b|in(?= ?(?:[.,!]|$|and\b"
    rf"|sprayed\b)))"
    rf"|\bstill (?:a |one |an )?ANIMAL {_IN_THERE}\b|\bthere is (?:still )?(?:another|one|a second)(?: one"
    rf"| ANIMAL)? (?:still )?{_IN_THERE}\b"
    rf"|\b{_IT} (?:is|are|was|were|has|have) (?:not|never) (?:been |come |moved |taken "
    rf"|even )?out\b(?! of (?:quarantine|sight|date))"
    rf"|\b{_IT} never (?:came|went|got) out\b|\b(?:i|we) (?:did not|have not|never) (?:take|took|taken|move|moved"
    rf"|get|got|lift|lifted)"
    rf" (?:(?:he|him|she|her|it|them|the|my) )*(?:ANIMAL )?out\b|\bonly (?:one|NUMBER)(?: of (?:them"
    rf"|ANIMAL))? (?:is|are|was|came) out\b"
    rf"|\b(?:crawled|climbed|slipped|slithered|snuck|sneaked|ran|jumped|hopped|went|got) back (?:in|into|inside"
    rf"|{_IN_THERE})\b(?= by |.*\bon (?:his|her|its) own\b)"
    rf"|\b(?:crawled|climbed|slipped|slithered|snuck|sneaked) (?:right |straight )?back\b"
    rf"|\b(?:one|{_IT}) (?:is |are )?(?:hides|hiding|hid) (?:{_IN_THERE}|in (?:the|his|her) hide)\b",
    "still",
    "out",
    "back",
    "hid",
    "there is",
)
_ASKED = Pattern(
    r"\?$|^(?:and |so |but |ok )*(?:is|are|was|can|could|may|should|do|does|did|when|how|what|why|where|who|which"
    r"|if)\b"
    r"|\b(?:if|unless|in case|quarantine|loose|escaped)\b"
)
_OF_A_THING = Pattern(
    r"\b(?:smells?|stink\w*|water|soap|suds|wet|damp|puddles?|AGENT|STOCK|spray|dirt|poo|mess|substrate|bedding|paper"
    r"|bowls?|dish(?:es)?|hides?(?= (?:is|are|still))|branch\w*|shed)\b"
)
_NOT_YET = Pattern(r"\bout yet\b|\byet out\b", "yet")
""" "Not out yet" takes back what was just told."""
_THOUGHT_SO = Pattern(r"\b(?:thought|feared|was afraid|was worried)\b.*\bbut\b", "but")
""" "I thought she was still inside, but she's in the tub": she isn't."""
_NOT_OF_A_CLEAN = ("splash", "spill", "together", "escape")


def still_inside(look: Look) -> Reading | None:
    """An animal put back, or never out, in an enclosure whose clean has it as moved out; None: nothing of the kind.

    Where several cleans fit, none is named, so that it is asked which.
    """
    plain = look.parsed.plain
    if _STILL_INSIDE.search(plain) is None or _ASKED.search(plain) is not None or _OF_A_THING.search(plain) is not None:
        return None
    if _NOT_YET.search(plain) is not None or _THOUGHT_SO.search(plain) is not None or IS_BACK.search(plain) is not None:
        return None
    last = look.world.talk.last
    if last is not None and last.intent in _NOT_OF_A_CLEAN:
        return None  # right after fumes: who is in there is in danger
    slots = look.slots("done")
    rounds = look.world.state.rounds
    out = [name for name, one in rounds.items() if is_open(one) and "move out" in one.done]
    named = [name for name in out if name in slots.enclosures] if slots.enclosures else out
    if not named:
        return None
    slots = replace(
        slots, enclosures=tuple(named) if len(named) == 1 else (), steps=("return",), choices=(), numbers=()
    )
    return look.reading("done", slots, BY_RULE)
