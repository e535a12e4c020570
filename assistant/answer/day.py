"""The end of the day: what is still open, who still waits, what was cleaned and not disinfected, what ends; hands."""

from __future__ import annotations

from datetime import datetime
from typing import Any

from assistant.answer.tubs import waiting_animals
from assistant.answer.way_on import way_on
from assistant.answer.which import open_rounds
from assistant.contract import Answer, Outcome, Reading, World
from assistant.core.record.state import ItemTimer, Round
from assistant.core.round.rounds import hold_is_over, next_step
from assistant.core.shelf.chores import due_of
from assistant.core.shelf.leftovers import bottles_ending, cleaned_only_today, over_today, still_in, tubs_to_wash

HANDS = "tool-hands"


def day_end(reading: Reading, world: World) -> Answer:
    """What the record has open at the end of the day, the most pressing first. Nothing is closed or ready by it."""
    state, now = world.state, world.now
    rounds, home, agents = open_rounds(world), world.household.enclosure, world.facts.agents
    waiting = waiting_animals(world)
    dues = tuple(d for home in world.household.enclosures for d in due_of(home, state, now) if d.is_due)
    items, over = still_in(state, now), over_today(state, now)
    endings, tubs = bottles_ending(state, now), tubs_to_wash(state)
    cleaned = cleaned_only_today(state, now)
    loose = tuple(one.enclosure for one in state.loose)
    hands = world.facts[HANDS]
    return Answer(
        reading.intent,
        Outcome.ANSWER,
        "day.end",
        details={
            "loose": tuple(world.household.enclosure(name) for name in loose),
            "rounds": rounds,
            "next": {
                r.enclosure: (way_on(r, world), home(r.enclosure), agents[r.agent], _asks_wet(r, now)) for r in rounds
            },
            "waiting": waiting,
            "cleaned_only": cleaned,
            "items": items,
            "over": over,
            "ending": endings,
            "tubs": tubs,
            "dues": dues,
            "now": now,
            "hands": hands,
        },
        values={
            "open": tuple(round_.enclosure for round_ in rounds),
            "waiting": tuple(one["enclosure"] for one in waiting),
            "loose": loose,
            "cleaned_only": cleaned,
            "items": tuple(_item(item) for item in (*items, *over)),
            "ending": tuple({"bottle": ending.bottle, "expires": ending.at} for ending in endings),
            "tubs": tuple(use.tub for use in tubs),
            "due_count": len(dues),
            "closed": not (rounds or waiting or loose or items),
        },
        cautions=("caution-hands",),
        sources=(hands.cited(),),
    )


def _item(item: ItemTimer) -> dict[str, Any]:
    return {"item": item.item, "way": item.way, "enclosure": item.enclosure or None}


def _asks_wet(round_: Round, now: datetime) -> bool:
    """Its wet time is over and nobody has vouched for it."""
    return next_step(round_, now) == "hold" and hold_is_over(round_, now)
