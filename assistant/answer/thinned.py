"""What is asked of a dose beside it: how much water makes a ready mix weaker, and whether it was said back right."""

from __future__ import annotations

from assistant.answer.asking import ask
from assistant.answer.strength import ratio_of
from assistant.contract import Answer, Outcome, Reading, World
from assistant.core.mixing.dilution import thinned
from assistant.core.quantities.amounts import SaidRatio
from assistant.core.quantities.errors import OutOfRange


def as_thinned(reading: Reading, world: World) -> Answer | None:
    """How much water makes the mix that is there the one that is wanted; None: nothing is to be thinned."""
    slots = reading.slots
    if said_in_this_turn(reading) != "thinned" or len(slots.volumes) != 1 or len(slots.mixes) != 2:
        return None
    ratios = [ratio_of(mix, reading, world) for mix in slots.mixes if isinstance(mix, SaidRatio)]
    if len(ratios) != 2:
        return None
    there, wanted = ratios
    if isinstance(there, Answer):
        return there
    if isinstance(wanted, Answer):
        return wanted
    try:
        found = thinned(slots.volumes[0], there.share, wanted.share)
    except OutOfRange:
        return ask(reading, world, ("mix",), "mixing.no_weaker", {"wanted": slots.mixes[1], "there": slots.mixes[0]})
    return Answer(
        reading.intent,
        Outcome.ANSWER,
        "mixing.thinned",
        details={"water": found.water, "there": found.concentrate, "total": found.total, "wanted": slots.mixes[1]},
        values={"concentrate": None, "water": found.water, "total": found.total, "parts": wanted.parts},
        cautions=("caution-label-first",),
        sources=(world.facts["mixing-parts-of-water"].cited(),),
    )


def said_in_this_turn(reading: Reading) -> str:
    """What this very turn told of a dose, as "right" or "thinned"; what an earlier one told is over. Empty: nothing."""
    setting = reading.slots.setting
    return setting[0] if setting is not None and setting[1] == reading.question else ""
