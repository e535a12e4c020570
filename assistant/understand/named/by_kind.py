"""An enclosure called by what it is: "the tank", where of all open cleans only one is of a tank."""

from __future__ import annotations

from assistant.contract import World
from assistant.core.household import Enclosure
from assistant.core.round.rounds import is_open
from assistant.understand.named.animal_words import LIZARDS, SNAKES
from assistant.understand.named.names import HOMES
from assistant.understand.parsing import Parsed
from assistant.understand.text.patterns import Pattern

_HOME = "|".join(sorted(HOMES))
_THE_HOME = Pattern(
    rf"(?:\b(?:the|that|this) |^(?:ok |so |and |now |right |yes |oh |,)*)({_HOME})\b(?! of\b| number\b)"
)
_WAITS_IN = Pattern(r"\b(?:in|into|to|from|out of) (?:the|that|this) (?:tub|box|bin)\b")


def called_by_its_kind(plain: str, world: World) -> tuple[str, ...]:
    """The enclosures with an open clean that are called so, each the only one of several; empty: none, or in doubt."""
    homes = open_homes(world)
    if len(homes) < 2 or _WAITS_IN.search(plain):
        return ()
    each = [tuple(h.name for h in homes if found[1] in words_of_home(h)) for found in _THE_HOME.finditer(plain)]
    return tuple(dict.fromkeys(names[0] for names in each)) if all(len(names) == 1 for names in each) else ()


_KINDS = {"snake": SNAKES, "snakes": SNAKES, "lizard": LIZARDS, "lizards": LIZARDS}


def of_the_one_open(parsed: Parsed, enclosures: tuple[str, ...], world: World) -> tuple[str, ...]:
    """ "The snake", where the only open clean is the python's and not the corn snake's; else what they were.

    None where it may be either of two in work.
    """
    homes = open_homes(world)
    said = {mention.said for mention in parsed.mentions}
    kinds = next((_KINDS[word] for word in said if word in _KINDS), ())
    if len(enclosures) != 1 or not homes or not kinds:
        return enclosures
    fitting = [home.name for home in homes if home.animal.casefold().endswith(kinds)]
    if len(fitting) > 1:
        return ()  # two snakes out: which, only the keeper knows
    return (fitting[0],) if len(homes) == 1 and fitting else enclosures


def open_homes(world: World) -> tuple[Enclosure, ...]:
    """The enclosures with an open clean."""
    rounds = world.state.rounds
    return tuple(home for home in world.household.enclosures if is_open(rounds.get(home.name)))


def words_of_home(home: Enclosure) -> set[str]:
    """What an enclosure may be called: the words of its name and its material."""
    return {*home.name.split(), *(home.material or "").split()}
