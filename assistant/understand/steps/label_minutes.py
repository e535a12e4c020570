"""The wet time that a product's own label gives, told: "the label says 5 minutes", with a start or right after it.

Only of an open clean that has no wet time on record, or a shorter one: what its figures give is never cut short by it.
"""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

from assistant.contract import Reading, Slots
from assistant.core.record.state import Round
from assistant.core.round.rounds import is_open
from assistant.understand.bottles.label_says import LABEL, minutes_by_label, one_span
from assistant.understand.look import BY_RULE, Look
from assistant.understand.text.asking import asks
from assistant.understand.text.patterns import Pattern

_ALONE = Pattern(
    r"(?:(?:it|its|the|label|says|said|is|that|um|er|oh|ok|about) ,? ?)*(?:DURATION|NUMBER)"
    r"(?: wet| on it| it says| it said)?"
)


def label_told(look: Look) -> Reading | None:
    """The clean begun again with the label's time, as far as it was done before anything was sprayed; None: no such."""
    plain = look.parsed.plain.strip(" .!,")
    last = look.world.talk.last
    just_begun = last is not None and last.intent == "start" and _ALONE.fullmatch(plain) is not None
    told = (one_span(look.parsed) or _bare_number(look)) if just_begun else minutes_by_label(look.parsed)
    if told is None or asks(plain) or look.claims.done or _names_an_animal(look):
        return None
    begun = [round_ for round_ in look.world.state.rounds.values() if is_open(round_)]
    if len(begun) != 1 or not (_lacks_it(begun[0], look) or _is_longer(told, begun[0], look)):
        return None
    return look.reading("start", _once_more(begun[0], told), BY_RULE)


def _bare_number(look: Look) -> tuple[str, str] | None:
    """ "Ten", right after it was asked how many minutes."""
    numbers = look.slots("start").numbers
    return (LABEL, str(numbers[0])) if len(numbers) == 1 and numbers[0] > 0 else None


def _lacks_it(round_: Round, look: Look) -> bool:
    """Whether its wet time waits for the label's: the time of no other clean is changed."""
    agent = look.world.facts.agents.get(round_.agent)
    timed = agent is not None and "hold" in round_.steps and not agent.vet_only and agent.refused is None
    return timed and round_.hold_s is None and "hold" not in round_.done and not round_.put_back


def _is_longer(told: tuple[str, str], round_: Round, look: Look) -> bool:
    """Longer than the wet time that was counted on: then it has to stay wet as long as its label wants."""
    seconds = round_.hold_s
    by_label = minutes_by_label(look.parsed) is not None
    return by_label and seconds is not None and Fraction(told[1]) * 60 > seconds and not round_.put_back


def _names_an_animal(look: Look) -> bool:
    """Another thing is spoken of beside the product."""
    kinds = {thing.kind for mention in look.parsed.mentions for thing in mention.things}
    return bool(kinds - {"agent", "stock", "bottle"})


def _once_more(round_: Round, told: tuple[str, str]) -> Slots:
    slots = Slots(enclosures=(round_.enclosure,), setting=told, corrects=True, start_over=True)
    named = replace(slots, bottles=(round_.bottle,)) if round_.bottle else replace(slots, agents=(round_.agent,))
    organisms = (round_.organism,) if round_.organism else ()
    return replace(named, organisms=organisms, clean_as=round_.job or None)
