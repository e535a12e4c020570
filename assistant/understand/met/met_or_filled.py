"""Products that met, or went into a bottle: told, asked about, or put onto what another one is on."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

from assistant.contract import Doubt, Reading, Slots
from assistant.understand.bottles import fills
from assistant.understand.bottles.bottle_doubts import bottle_doubted
from assistant.understand.bottles.emptied import is_empty
from assistant.understand.bottles.fill_words import may_be_an_order
from assistant.understand.bottles.fills_apart import fills_apart
from assistant.understand.bottles.not_as_told import fill_taken_back, filled_otherwise
from assistant.understand.bottles.other_product import other_product, unnamed_product
from assistant.understand.look import BY_RULE, Look
from assistant.understand.met.meeting import (
    is_put_on,
    meets,
    met_in_that_bottle,
    never_together,
    speaks_of_products,
    unknown_bottle_again,
)
from assistant.understand.met.met_told import bottles_mixed, met_told, something_in_the_bottle, spilled_too
from assistant.understand.met.poured_across import poured_across
from assistant.understand.met.product_told import product_told
from assistant.understand.named.drains import stored
from assistant.understand.parsing import Parsed
from assistant.understand.steps.over_dirt import over_dirt
from assistant.understand.steps.put_on_it import lies_there, put_on_it
from assistant.understand.text.asking import ENDS_AS_ASKED
from assistant.understand.text.patterns import Pattern


def met_there(look: Look) -> Reading | None:
    """ "It was in the yellow bottle", told after the gas: that bottle holds what nobody knows.

    So does one that is told to have had something else in it; of what was sprayed from it that is told as well.
    """
    if (held := something_in_the_bottle(look)) is not None:
        return look.reading("together", replace(held, touched=held.agents), BY_RULE)
    slots = met_in_that_bottle(look.parsed, look.slots("together"), look.world)
    return look.by_rule("together", slots)


_IS_IN = Pattern(r"\b(?:is|'s)\b.*\b(?:in there|in it|inside|in (?:the |this |that )?(?:BOTTLE|bottle))\b")


def another_product(look: Look) -> Reading | None:
    """What was used is said to have been another product than the one on record."""
    if ENDS_AS_ASKED.search(look.parsed.plain) and _IS_IN.search(look.parsed.plain):
        return None  # "that is the alcohol in there, isn't it"
    return poured_across(look) or bottle_doubted(look) or other_product(look) or unnamed_product(look)


def met_or_filled(look: Look, parse: Callable[[str], Parsed]) -> Reading | None:
    if stored(look.parsed.plain):
        return look.reading("store_it", look.slots("store_it"), BY_RULE)
    if (mixed := bottles_mixed(look) or over_dirt(look)) is not None:
        return look.reading("together", mixed, BY_RULE)
    apart = _filled_apart(look, parse)
    if apart is not None:
        return apart
    if (both := met_told(look) or spilled_too(look)) is not None:
        return look.reading("together", both, BY_RULE)
    if fills.tells(look.parsed.plain):
        return look.reading("mixed", look.slots("mixed"), BY_RULE)
    into = fills.poured_into_it(look.parsed.plain, look.world) or fills.filled_it(look.parsed.plain, look.world)
    out = fills.rinsed_out_too(look.parsed.plain, look.world)
    if out is not None and not look.parsed.mentions:
        reading = look.reading("rinsed_out", replace(look.slots("rinsed_out"), bottles=(out,), steps=()), BY_RULE)
        emptied = fills.only_emptied(look.parsed.plain)
        return replace(reading, doubts=(fills.NOT_ONLY_EMPTIED,)) if emptied else reading
    if is_empty(look.parsed.plain, look.slots("rinsed_out").bottles, look.world):
        reading = look.reading("rinsed_out", replace(look.slots("rinsed_out"), steps=()), BY_RULE)
        return replace(reading, doubts=(fills.NOT_ONLY_EMPTIED,))
    if into is not None:
        slots = look.slots("mixed")
        return look.reading("mixed", replace(slots, bottles=slots.bottles or (into,), steps=()), BY_RULE)
    if (touching := lies_there(look) or put_on_it(look)) is not None:
        return touching
    if (told := product_told(look)) is not None:
        return told
    if not speaks_of_products(look.parsed) and not look.world.state.unknown_mixes:
        return None
    slots = look.slots("together")
    again = unknown_bottle_again(look.parsed.plain, slots, look.world)
    if again is not None:
        return look.reading("together", replace(slots, bottles=(again,), agents=(), steps=()), BY_RULE)
    met = meets(look.parsed, slots, look.world, look.chances.get("together", 0.0))
    if met and fills.put_into(look.parsed.plain) and not never_together(slots, look.world):
        return look.reading("mixed", replace(look.slots("mixed"), steps=()), BY_RULE)
    if met is None and fills.put_into(look.parsed.plain):
        reading = look.reading("mixed", replace(look.slots("mixed"), steps=()), BY_RULE)
        wished = may_be_an_order(look.parsed.plain) and reading.slots.when is None
        return replace(reading, doubts=(Doubt("meaning", "mixed"),)) if wished else reading
    if met is None and not look.claims.done and is_put_on(look.parsed, slots, look.world):
        met = False  # which of the two it is that is on the surface, the answer knows
    if met is None:
        return None
    return look.reading("together", replace(slots, met=met, steps=()), BY_RULE)


def _filled_apart(look: Look, parse: Callable[[str], Parsed]) -> Reading | None:
    """ "Filled yellow with bleach and pink with chlorhexidine": each by itself, and nothing met."""
    texts = fills_apart(look.parsed) if fills.may_be_fill(look.parsed.plain) else ()
    if not texts:
        return None
    whole = look.slots("mixed")
    looks = (replace(look, parsed=parse(text), _slots={}) for text in texts)
    each = tuple(replace(one.slots("mixed"), steps=()) for one in looks)
    each = tuple(
        replace(one, when=one.when or whole.when, some_time_ago=one.some_time_ago or whole.some_time_ago)
        for one in each  # told of one, it may be of all: the older
    )
    if any(len(one.bottles) != 1 or one.choices or one.unknown or one.faulty for one in each):
        return None
    return look.reading("mixed", Slots(bottles=whole.bottles, each=each), BY_RULE)


def filled_as_told(look: Look) -> Reading | None:
    """ "Filled", right after a dose was told: that is what went in."""
    undone = fills.undone(look.parsed.plain, look.world)
    if undone is not None:
        return look.reading("undo", Slots(bottles=(undone,)), BY_RULE)
    otherwise = filled_otherwise(look) or fill_taken_back(look)
    if otherwise is not None:
        return otherwise
    if not fills.bare_fill(look.parsed.plain):
        return None
    told = fills.of_the_dose(look.slots("mixed"), look.world)
    if told is None:
        return None
    slots, doubts = told
    return replace(look.reading("mixed", slots, BY_RULE), doubts=doubts)
