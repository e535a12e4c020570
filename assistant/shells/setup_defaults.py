"""What `setup` offers for Enter, and when a question is asked at all.

A default is something the keeper has said already, or the plain case; no figure of the trade is offered.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Mapping
from typing import Any

from assistant.shells.setup_answers import Known

MEASURES = ("syringe", "spoon", "cup", "jug")
COLOURS = ("yellow", "pink", "green", "blue", "red", "orange", "white", "clear", "black", "purple", "brown", "grey")


def said_before(keys: tuple[str, ...], join: str = ", ") -> Callable[[Known], str]:
    """As it was said of the latest thing of this kind."""

    def default(known: Known) -> str:
        for thing in reversed(known.content.get("enclosure", [])):
            if thing.get("name") != known.values.get("name") and all(key in thing for key in keys):
                return join.join(str(thing[key]) for key in keys)
        return ""

    return default


def agent_in_name(known: Known) -> str:
    """The agent whose name, or other name, stands in the product's; the longest, if several do."""
    name = f" {known.values.get('name', '').lower()} "
    names = [each for agent in known.facts.agents.values() for each in (agent.name, *agent.also)]
    return max((each for each in names if f" {each.lower()} " in name), key=len, default="")


def agents(known: Known) -> tuple[str, ...]:
    return (*(a.name for a in known.facts.agents.values() if a.id not in ("heat", "drying", "other")), "other")


def amount_in_name(known: Known) -> str:
    found = re.search(
        r"\b\d*\.?\d+\s*(ml|mils?|l|litres?|liters?|tsp|tbsp|cups?)\b", known.values["name"], re.IGNORECASE
    )
    return found.group() if found else ""


def kind_in_name(known: Known) -> str:
    return next((kind for kind in MEASURES if kind in known.values["name"].lower()), "syringe")


_IN_WATER = re.compile(
    r"\b(?:\w*(?:frog|toad|turtle|terrapin)s?|newts?|salamanders?|axolotls?|caecilians?|amphibians?|fish|tadpoles?)\b",
    re.IGNORECASE,
)


def water_of(known: Known) -> str:
    """ "part" for an amphibian or a water animal by its name, else "dry": some products are refused near the former."""
    return "part" if _IN_WATER.search(str(known.values.get("animal", ""))) else "dry"


def stock_named(known: Known) -> Mapping[str, Any]:
    stocks = known.content.get("stock", [])
    return next((stock for stock in stocks if stock.get("name") == known.values.get("stock")), {})


def stocks(known: Known) -> tuple[str, ...]:
    return tuple(str(stock["name"]) for stock in known.content.get("stock", []))


def only_stock(known: Known) -> str:
    return stocks(known)[0] if len(stocks(known)) == 1 else ""


def is_one_of(key: str, *wanted: str) -> Callable[[Known], bool]:
    return lambda known: known.values.get(key) in wanted


def is_bleach(known: Known) -> bool:
    agent = known.facts.agent_named(str(known.values.get("agent", "")))
    return agent is not None and agent.id == "sodium hypochlorite"


def dated_bleach(known: Known) -> bool:
    return is_bleach(known) and "made" in known.values


def has_strength(known: Known) -> bool:
    agent = known.facts.agent_named(str(known.values.get("agent", "")))
    return agent is not None and agent.id != "detergent"


def colour_in_name(known: Known) -> str:
    return next((colour for colour in COLOURS if colour in known.values["name"].lower().split()), "")
