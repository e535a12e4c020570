"""Which mix is wanted: the one said, else the bottle's own, else the label's; what leaves that open is asked."""

from __future__ import annotations

import re

from assistant.answer.asking import ask, is_a_number_over, number_over
from assistant.answer.product import Product, own_stock
from assistant.contract import Answer, Reading, World
from assistant.core.quantities.amounts import Mix

COMPARED = frozenset({"stronger", "weaker", "milder"})
"""Words for a mix that isn't the bottle's own, and don't say which."""

_AT_A_RATIO = re.compile(r"\bat (?:about |around |a )?(?:one|1) (?:in|to|part)\b")
"""A ratio was said, and its number not understood: "at one in fif teen" is none of the bottle's own."""


def mix_in(product: Product, reading: Reading, world: World) -> Mix | Answer | None:
    """The mix said, else the bottle's own, else the label's; None: none is known."""
    mixes = tuple(dict.fromkeys(reading.slots.mixes))
    if len(mixes) > 1:
        return ask(reading, world, ("mix",), "mixing.which_mix", {"candidates": mixes})
    counted = "bottles" in reading.words  # "two bottles of 500 mils": how many, and no mix
    if mixes and not counted and is_a_number_over(reading.slots) and (reading.slots.volumes or product.bottle):
        return number_over(reading, world)
    if mixes:
        return mixes[0]
    if reading.intent in ("dose", "mixed") and reading.slots.numbers:  # "at blah in forty": a mix not understood
        return ask(reading, world, ("mix",), "mixing.odd_number", {"number": reading.slots.numbers[-1]})
    if reading.intent in ("dose", "mixed") and _AT_A_RATIO.search(reading.said) is not None:
        return ask(reading, world, ("mix",), "mixing.how_much_stronger")
    if reading.intent == "dose" and not COMPARED.isdisjoint(reading.words):
        return ask(reading, world, ("mix",), "mixing.how_much_stronger")
    if product.bottle is not None and product.bottle.mix is not None and own_stock(product, world):
        return product.bottle.mix
    return product.stock.label_mix if product.stock is not None else None
