"""A call for help that says nothing else: "help me", "HELP!", "call an ambulance", "999".

The emergency number comes first, then what helps wherever it got to, and the question where. "Help" alone, in small
letters or spoken, asks what may be asked; so does "Help!".
"""

from __future__ import annotations

from dataclasses import replace

from assistant.contract import Slots
from assistant.core.harms import latest
from assistant.understand.look import Look, without_troubles
from assistant.understand.parsing import Parsed
from assistant.understand.text.patterns import Pattern, words_in

_LEAD = r"(?:(?:oh|no|god|my|please|quick|quickly|now|somebody|someone|anybody|anyone|hello|,|!) ?)*"
_SERVICE = (
    r"(?:ambulance|paramedics?|emergency services?|doctor|fire brigade|nine nine nine|one one two|nine one one|NUMBER)"
)
_CALLED = Pattern(
    rf"^{_LEAD}(?:help me|somebody help|someone help|anybody help|help help(?: help)*|help us|(?:i|we) need help|can "
    r"(?:somebody|someone|anybody|anyone) help(?: me| us)?|mayday(?: mayday)*|s ?o ?s|"
    r"(?:it is |this is |we have |there is |i have )?(?:an |a )?(?:real )?emergency|"
    rf"(?:call|ring|phone|get|fetch|send|dial|i need|we need|need)(?: me| us| for)? (?:an |the |a )?{_SERVICE}|"
    r"(?:an |the )?ambulance)(?: (?:now|please|quick|quickly|help|fast|here|somebody|someone|me|us|,|!))*[ .!]*$",
    *("help", "mayday", "emergency", "ambulance", "call", "ring", "phone", "get", "fetch", "send", "dial", "need", "s"),
)
_SHOUTED = Pattern(r"^\s*(?:HELP(?:\s+ME)?\s*[!.]*|[Hh][Ee][Ll][Pp]\s*!\s*!+)\s*$")
_DIALLED = Pattern(r"^\W*(?:999|911|112|000)\W*$")


def called_for_help(parsed: Parsed) -> bool:
    """Whether a text calls for help and tells nothing besides."""
    if parsed.plain.endswith("?"):
        return False
    shouted = _SHOUTED.match(parsed.text) is not None or _DIALLED.match(parsed.text) is not None
    return shouted or (_CALLED.match(parsed.plain) is not None and not _MANY.search(parsed.text))


def called_slots(look: Look) -> Slots:
    """The slots of such a call, with the harm that was told of before, if any."""
    told = latest(look.world.talk.harms, look.world.now)
    slots = replace(without_troubles(look.slots("splash")), asked_of_harm="help", place=None)
    return replace(slots, place=told.place, victim=told.victim) if told is not None else slots


_MANY = Pattern(r"\b(?:call|ring|phone|dial|get|need|send)\b\D*\b(?!999|911|112|000)\d+")
""" "I need 500": a number, and no number to call."""

WORDS = words_in(_CALLED)
"""Words that the rule turns on."""
