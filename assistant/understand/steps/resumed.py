"""Going on with a clean that was begun: "back to the river tank", "resume", "pick up where I left off"."""

from __future__ import annotations

from dataclasses import replace

from assistant.contract import Reading
from assistant.core.round.rounds import is_open
from assistant.understand.look import BY_RULE, Look
from assistant.understand.text.patterns import Pattern

_OPENS = r"(?:(?:ok|right|so|now|and|let us|let me|i am|i will|going|please|time to|can we|we are) ,? ?)*"
_ONE = r"(?:with |on |to |at |in )*(?:the |my )?(?:ENCLOSURE|ANIMAL|it|that one|that|the clean)(?: 's)?(?: clean)?"
_RESUMES = Pattern(
    rf"{_OPENS}(?:(?:get |go |coming |going )?back (?:to|on|at|with)|carry(?:ing)? on|go(?:ing)? on|pick(?:ing)? up"
    rf"|resum(?:e|ing)|continu(?:e|ing)|unpaus(?:e|ing)|take up|restart(?:ing)? where) {_ONE}"
    r"(?: again| now| then| please)*"
    rf"|{_OPENS}(?:resume|unpause|pick(?:ing)? (?:it )?(?:back )?up(?: again)?|"
    r"(?:pick(?:ing)? up|carry(?:ing)? on|continu(?:e|ing)|start(?:ing)?|go(?:ing)? on)(?: again)?(?: from)? where "
    r"(?:i|we) (?:left off|stopped|was|were|got to))(?: now| then| please)*",
    *("back", "on", "up", "resum", "continu", "unpaus"),
)


def resumed(look: Look) -> Reading | None:
    """The clean that is gone on with: the one named, else the only one paused or open; None: no such."""
    plain = look.parsed.plain.strip(" .!,")
    if plain.endswith("?") or look.claims.done or not _RESUMES.fullmatch(plain):
        return None
    begun = [round_ for round_ in look.world.state.rounds.values() if is_open(round_)]
    slots = look.slots("start")
    named = [round_ for round_ in begun if round_.enclosure in slots.enclosures]
    paused = [round_ for round_ in begun if round_.paused_at is not None]
    meant = named if slots.enclosures else paused or begun
    if len(meant) != 1:
        return None
    slots = replace(slots, enclosures=(meant[0].enclosure,), choices=(), steps=(), start_over=False)
    return look.reading("start", slots, BY_RULE)
