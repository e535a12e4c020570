"""How it is told that the computer's two clocks have parted, and what then counts."""

from __future__ import annotations

from collections.abc import Callable

from assistant.contract import Answer, Line, World
from assistant.core.record.clocks import differences
from assistant.say.wording.plain import capital, span

SINCE = {"hold": "spraying", "air": "airing began", "rinse": "rinsing began"}


def clocks_parted_line(world: World) -> str:
    """That the clocks have parted, and what the keeper is asked of it."""
    parting, differ = world.state.parting, differences(world.state, world.now)[0]
    ahead = parting.ahead_s if parting is not None else 0.0
    moved = f"jumped ahead {span(ahead)}" if ahead > 0 else f"went back {span(-ahead)}"
    asked = f"{capital(differ.thing)}: is it really {span(differ.more_s)} since {SINCE[differ.step]}?"
    return f"The computer's clock {moved}: the shorter time counts. {asked}"


def _settled(answer: Answer) -> Line:
    counts = "longer" if answer.details["passed"] else "shorter"
    return Line(f"Then the {counts} time counts, {answer.details['difference'].thing}. The clock runs on from there.")


LINES: dict[str, Callable[[Answer], Line]] = {"the_round.clocks_settled": _settled}
