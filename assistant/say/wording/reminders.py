"""What the tool says by itself, between the keeper's turns."""

from __future__ import annotations

from assistant.contract import World
from assistant.core.round.reminders import Reminder
from assistant.say.wording.clocks import clocks_parted_line
from assistant.say.wording.harm import poison_centre, vet
from assistant.say.wording.plain import capital, count, span

ITEM_OVER = {
    "soak": "soaked long enough. Rinse it well, then dry it.",
    "boil": "boiled long enough. Heat off, let it cool, then dry it.",
    "bake": "baked long enough. Oven off, let it cool in there.",
    "wash hot": "washed. Dry it fully.",
}


def reminder_line(reminder: Reminder, world: World) -> str:
    """One line for something that came due."""
    thing = capital(reminder.thing)
    match reminder.kind:
        case "hold over":
            return f"{thing}: wet time is over. Did it stay wet the whole time? Then rinse or go on."
        case "vouch":
            return f"{thing}: wet time is over, but in doubt. Did it stay wet the whole time?"
        case "still wet":
            return f"{thing}: still wet?"
        case "about to dry":
            return f"{thing}: it may be about to dry. Still wet? Spray again where it isn't."
        case "rinse now":
            return f"{thing}: rinse now, the wet time is over."
        case "open window":
            return f"{thing}: open a window, and tell me how many are open."
        case "air over":
            return f"{thing}: airing time is up. {_dry_or_smell(reminder.thing, world)}"
        case "keep rinsing":
            people = world.household.people
            call = vet(people) if reminder.victim == "animal" else poison_centre(people)
            call += f"; an animal: {vet(people)}" if reminder.victim == "either" else ""
            return f"{thing}: keep rinsing. {capital(call)}. Have the label in hand."
        case "rinse over":
            rinsed = _rinsed_for(reminder, world)
            if reminder.victim == "animal":
                return f"{thing}: {rinsed} of rinsing are up. Now {vet(world.household.people)}, well as it looks."
            return f"{thing}: {rinsed} of rinsing are up. Still sore, red or blurred? Get it seen urgently."
        case "bottle past its life":
            return f"{thing}: the mix is past its life. Mix fresh before you spray from it again."
        case "item over":
            return f"{thing}: {ITEM_OVER[reminder.victim]}"
        case "clocks parted":
            return clocks_parted_line(world)
        case _:
            animal = _animal(reminder.thing, world)
            waited = span(60 * reminder.minutes)
            return f"{thing}: {animal} has waited {waited} in the tub. Shut in, warm enough, away from fumes?"


def _dry_or_smell(enclosure: str, world: World) -> str:
    round_ = world.state.rounds.get(enclosure)
    return "Any smell left?" if round_ is not None and "dry" in round_.done else "Dry? Any smell left?"


def _animal(enclosure: str, world: World) -> str:
    found = world.household.enclosure(enclosure)
    return f"the {found.animal}" if found is not None and found.animal else "the animal"


def _rinsed_for(reminder: Reminder, world: World) -> str:
    rinses = (r for r in world.state.rinses if (r.place, r.victim) == (reminder.thing, reminder.victim))
    rinse = next(rinses, None)
    return count(round(rinse.seconds / 60), "minute") if rinse is not None else "the minutes"
