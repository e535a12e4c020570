"""Every product that a text names, with a bottle's colour standing for that bottle wherever it is said: "the green".

Only for rules that ask for the whole shape of a sentence: a colour alone is no bottle ("a green towel").
"""

from __future__ import annotations

from collections.abc import Iterable

from assistant.contract import World
from assistant.core.household import Household
from assistant.understand.named.named_at import MASKS, named_at
from assistant.understand.named.names import Mention, Thing
from assistant.understand.parsing import Parsed
from assistant.understand.text.known_words import words_of

PRODUCTS = frozenset({"BOTTLE", "STOCK", "AGENT"})
_NO_BOTTLE = words_of(
    "tub towel towels cloth cloths bucket box bowl bowls sponge lid cap glove gloves tank cage crate jug cup brush tape"
    " label hide plant branch mat rag wipe wipes paper light"
)
"""What a colour before it is of."""
_OF_A_BOTTLE = words_of("bottle one spray sprayer stuff mix")


def products_by_colour(parsed: Parsed, household: Household) -> tuple[str, tuple[Thing, ...]]:
    """The masked text with colours masked too, and what each product's mask stands for, in the order said.

    A product that could be several is a thing without a name.
    """
    words, things = parsed.plain.split(), []
    kept: list[str] = []
    for index, (word, mention) in enumerate(named_at(parsed)):
        after = words[index + 1] if index + 1 < len(words) else ""
        if word in MASKS:
            if word in PRODUCTS:
                things.append(_product(mention))
        elif (bottle := _of_colour(word, household)) is not None and after not in _NO_BOTTLE:
            things.append(Thing("bottle", bottle))
            word = "BOTTLE"
        elif word in _OF_A_BOTTLE and kept and kept[-1] == "BOTTLE":
            continue  # "the green one"
        kept.append(word)
    return " ".join(kept), tuple(things)


def _of_colour(word: str, household: Household) -> str | None:
    bottles = [bottle.name for bottle in household.bottles if bottle.colour == word]
    return bottles[0] if len(bottles) == 1 else None


def _product(mention: Mention | None) -> Thing:
    for kind in ("bottle", "stock", "agent"):
        found = [thing for thing in mention.things if thing.kind == kind] if mention is not None else []
        if found:
            return found[0] if len(found) == 1 else Thing(kind, "")
    return Thing("agent", "")


def agents_of(things: Iterable[Thing], world: World) -> tuple[str, ...]:
    """The agents in those products: of a bottle on record what it held, else what it is for; "other" is unknown."""
    agents: list[str] = []
    for thing in things:
        if thing.kind == "bottle" and thing.name in world.state.bottles:
            agents += world.state.bottles[thing.name].held
            continue
        bottle = world.household.bottle(thing.name) if thing.kind == "bottle" else None
        stock = world.household.stock(bottle.stock if bottle is not None else thing.name)
        agents.append(stock.agent if stock is not None else (thing.name if thing.kind == "agent" else "") or "other")
    return tuple(dict.fromkeys(agents))
