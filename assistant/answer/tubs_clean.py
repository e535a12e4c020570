"""Whether a waiting tub is clean: told, denied, or asked. What isn't surely disinfected isn't taken as that."""

from __future__ import annotations

from dataclasses import replace

from assistant.contract import Answer, Outcome, Pending, Reading, World
from assistant.core.record.events import TubCleaned, TubUnclean
from assistant.core.record.state import TubUse


def of_a_clean_tub(reading: Reading, world: World) -> Answer:
    """What is said of named tubs; one with an animal in it on record isn't taken for clean."""
    names = reading.slots.tubs
    uses = tuple(use for name in names if (use := world.state.tubs.get(name)) is not None)
    taken = next((use for use in uses if use.until is None), None)
    match reading.slots.cleaned:
        case "asked":
            return _of_tub(reading, "tubs.is_clean", taken or (uses[0] if uses else None), world)
        case "not":
            answer = _of_tub(reading, "tubs.not_clean", None, world)
            return replace(answer, events=tuple(TubUnclean(use.tub) for use in uses if use.cleaned))
    if taken is not None:
        left = _of_tub(reading, "tubs.occupied", taken, world)
        return replace(left, events=_cleaned(uses))
    noted = replace(_of_tub(reading, "tubs.cleaned", None, world), events=_cleaned(uses))
    held = next((use for use in uses if use.group != "healthy" and not use.cleaned), None)
    if reading.slots.cleaned == "disinfected" or held is None:
        return noted
    noted = replace(noted, details={**noted.details, "disinfected": True})
    asked = _of_tub(reading, "tubs.only_washed", held, world)
    denied = _of_tub(reading, "tubs.not_clean", held, world)
    return replace(asked, outcome=Outcome.CONFIRM, pending=Pending(reading, world.now, on_yes=noted, on_no=denied))


def _cleaned(uses: tuple[TubUse, ...]) -> tuple[TubCleaned, ...]:
    return tuple(TubCleaned(use.tub) for use in uses if use.until is not None)


def _of_tub(reading: Reading, message: str, use: TubUse | None, world: World) -> Answer:
    name = use.tub if use is not None else reading.slots.tubs[0]
    return Answer(
        reading.intent,
        Outcome.ANSWER,
        message,
        details={
            "tub": name,
            "tubs": reading.slots.tubs,
            "use": use,
            "home": world.household.enclosure(use.enclosure) if use is not None else None,
            "disinfected": reading.slots.cleaned == "disinfected",
            "now": world.now,
        },
        values={"waiting": (), "not_out": (), "tub": name},
    )
