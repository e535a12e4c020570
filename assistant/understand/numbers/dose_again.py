"""What a dose keeps from the one before it: the bottle's own mix for another volume, the same for several bottles,
the same with a concentrate of another strength.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from fractions import Fraction
from typing import Any

from assistant.contract import Reading, Slots, World
from assistant.core.household import Bottle, Stock
from assistant.core.quantities.amounts import Amount, Percent
from assistant.core.quantities.units import in_ml
from assistant.understand.parsing import Parsed
from assistant.understand.text.patterns import Pattern


def with_its_bottles_mix(before: Reading, given: Mapping[str, Any], world: World) -> Reading:
    """ "And for two litres", after a dose for a bottle: of the same product, at the bottle's own mix.

    A volume that goes into the bottle leaves it the bottle's.
    """
    bottle = _one_bottle(before, world)
    volumes = given.get("volumes", ())
    if before.intent != "dose" or bottle is None or len(volumes) != 1 or "bottles" in given:
        return before
    if not _is_for(bottle, before, given, world):
        return before
    return replace(before, slots=_as_in(bottle, before.slots, world))


def without_a_bottles_mix(before: Reading, world: World) -> Reading:
    """The dose before without a mix that is only a bottle's own: of another product the keeper never said it."""
    slots = before.slots
    own = {bottle.mix for bottle in world.household.bottles if bottle.stock in slots.stocks}
    if before.intent != "dose" or len(slots.mixes) != 1 or slots.mixes[0] not in own:
        return before
    return replace(before, slots=replace(slots, mixes=()))


def of_another_product(
    before: Reading, bottles: tuple[str, ...], world: World, *, at_that_mix: bool = False
) -> Reading:
    """ "And the pink one?", after a dose of bleach: what that bottle is for, at its own mix.

    at_that_mix: "same for the pink", so the mix that was said is kept.
    """
    bottle = world.household.bottle(bottles[0]) if len(bottles) == 1 else None
    stock = world.household.stock(bottle.stock) if bottle is not None else None
    slots = before.slots
    agents = {*slots.agents, *(s.agent for name in slots.stocks if (s := world.household.stock(name)) is not None)}
    agents |= {s.agent for name in slots.bottles if (s := _stock_of(name, world)) is not None}
    if before.intent != "dose" or stock is None or not agents or stock.agent in agents or not slots.bottles:
        return before
    mixes = slots.mixes if at_that_mix else ()
    kept = replace(slots, agents=(), stocks=(), mixes=mixes, numbers=(), volumes=(), roles=(), stock_strength=None)
    return replace(before, slots=kept, doubts=())


def _stock_of(bottle: str, world: World) -> Stock | None:
    known = world.household.bottle(bottle)
    return world.household.stock(known.stock) if known is not None else None


def fits_its_bottle(before: Reading, given: Mapping[str, Any], world: World) -> bool:
    """Whether the volume now said goes into the bottle of the dose before."""
    bottle, volumes = _one_bottle(before, world), given.get("volumes", ())
    if before.intent != "dose" or bottle is None or len(volumes) != 1 or "bottles" in given:
        return False
    return _is_for(bottle, before, given, world) and in_ml(volumes[0]) <= in_ml(bottle.capacity)


def _is_for(bottle: Bottle, before: Reading, given: Mapping[str, Any], world: World) -> bool:
    """Whether the bottle is meant for what is to be mixed, as far as that was named."""
    stock = world.household.stock(bottle.stock)
    agents = set(given.get("agents", ()) or before.slots.agents)
    stocks = set(given.get("stocks", ()) or before.slots.stocks)
    return stock is not None and agents <= {stock.agent} and stocks <= {stock.name}


def _one_bottle(before: Reading, world: World) -> Bottle | None:
    names = before.slots.bottles
    return world.household.bottle(names[0]) if len(names) == 1 else None


def _as_in(bottle: Bottle, slots: Slots, world: World) -> Slots:
    """The slots with what the bottle is meant for, as far as nothing else was named."""
    stock = world.household.stock(bottle.stock)
    if stock is None or slots.stocks or (slots.agents and slots.agents != (stock.agent,)):
        return slots
    mixes = slots.mixes or ((bottle.mix,) if bottle.mix is not None else ())
    return replace(slots, stocks=(stock.name,), agents=(stock.agent,), mixes=mixes)


# ---------------------------------------------------------------- several bottles

_COUNTED = Pattern(r"\bNUMBER (?:of (?:the |my )?)?(?:full )?(?:BOTTLE|bottles)\b")
MOST_BOTTLES = 50


def for_several(slots: Slots, parsed: Parsed, world: World) -> Slots:
    """ "Three pink bottles", and right after a dose "for two bottles": so many times its capacity, at its own mix."""
    if slots.volumes or _COUNTED.search(parsed.plain) is None or not _plural(parsed):
        return slots
    counts = [number for number in slots.numbers if number.denominator == 1 and 1 < number <= MOST_BOTTLES]
    last = world.talk.last_reading
    names = slots.bottles or (last.slots.bottles if last is not None and last.intent == "dose" else ())
    bottle = world.household.bottle(names[0]) if len(names) == 1 else None
    if len(counts) != 1 or bottle is None:
        return slots
    whole = Amount(bottle.capacity.amount * counts[0], bottle.capacity.unit)
    rest = tuple(number for number in slots.numbers if number != counts[0])
    return replace(_as_in(bottle, slots, world), bottles=(), volumes=(whole,), roles=("total",), numbers=rest)


def _plural(parsed: Parsed) -> bool:
    return any(token.text in ("bottles", "ones", "sprays", "sprayers") for token in parsed.tokens)


# ---------------------------------------------------------------- another concentrate

NOT_SO_STRONG = Pattern(r" ?,? (?:and )?(?:not|instead of|rather than) (?:MIX|NUMBER)$")
""" "4 percent, not 6"."""
_IS_SO_STRONG = Pattern(
    r"(?:(?:and|but|what|so|ok|or|then|oh|no|sorry|actually|wait|well|suppose|say) ,? ?)*(?:if )?"
    r"(?:it|that|this|mine|(?:the |my |our |this |that )?(?:AGENT|STOCK|stuff|concentrate|product|label)"
    r"(?: (?:bottle|i have))?) ?(?:is|was|were|says|'s)(?: only| actually| now| about| really)* MIX"
    r"(?: AGENT| STOCK| instead| though)*"
)
_WITH_ONE_OF = Pattern(
    r"(?:(?:and|but|what|about|how|so|ok|or|then) )*(?:with|using|from|for) (?:a |the |my |some )?MIX "
    r"(?:AGENT|STOCK|one)"
)
_WITH_SO_MUCH = Pattern(r"(?:(?:and|or|so|ok|what about|how about) )*(?:with|from|using) (?:NUMBER|MIX)(?: one)?")
""" "And with 6", after another strength was said of the concentrate."""
_WITH_MINE = Pattern(
    r"(?:(?:and|or|so|ok|what about|how about) )*(?:with|from|using) (?:my|mine|our|my own|the)(?: own| usual| normal)*"
    r"(?: AGENT| STOCK| stuff| one)*"
)
MOST_PERCENT = 100
_ALONE = Pattern(r"(?:(?:and|it is|um|ok|so) )*MIX(?: AGENT| STOCK)?")
_OF_A_STOCK = ("dose", "mix_strength", "read_ratio", "top_up")


def with_another_strength(before: Reading | None, parsed: Parsed) -> Slots | None:
    """ "What if the bleach is 8 percent", after a dose: of the concentrate, and no strength to be mixed.

    A bare percentage is that only where bleach of it would be refused on a surface, and a target was said before.
    """
    plain = NOT_SO_STRONG.sub("", parsed.plain.strip(" .?!,"))
    if before is None or before.intent not in _OF_A_STOCK:
        return None
    if before.slots.stock_strength is not None and _WITH_MINE.fullmatch(plain):
        return replace(before.slots, stock_strength=None)
    if not parsed.amounts.found:
        return None
    if len(parsed.amounts.found) != (1 if plain == parsed.plain.strip(" .?!,") else 2):
        return None
    value = parsed.amounts.found[0].value
    if isinstance(value, Fraction) and before.slots.stock_strength is not None and _WITH_SO_MUCH.fullmatch(plain):
        value = Percent(value)
    if not isinstance(value, Percent) or not 0 < value.percent <= MOST_PERCENT:
        return None
    said = _IS_SO_STRONG.fullmatch(plain) is not None or _WITH_ONE_OF.fullmatch(plain) is not None
    said = said or (before.slots.stock_strength is not None and _WITH_SO_MUCH.fullmatch(plain) is not None)
    target = bool(before.slots.mixes or before.slots.bottles) and value.percent > ABOVE_ANY_SURFACE
    bare = target and _ALONE.fullmatch(plain) is not None and "sodium hypochlorite" in before.slots.agents
    if not (said or bare):
        return None
    return replace(before.slots, stock_strength=Amount(value.percent, "%"), faulty=(), unknown=(), choices=())


def strength_told(parsed: Parsed) -> Amount | None:
    """ "The bleach is 4 percent, not 6", said by itself: what keeping.toml counts; None: nothing of the kind."""
    plain = parsed.plain.strip(" .!,")
    if parsed.plain.endswith("?") or not {"AGENT", "STOCK"} & set(plain.split()) or not parsed.amounts.found:
        return None
    value = parsed.amounts.found[0].value
    told = _IS_SO_STRONG.fullmatch(NOT_SO_STRONG.sub("", plain)) is not None and not plain.startswith(_SUPPOSES)
    return Amount(value.percent, "%") if told and isinstance(value, Percent) else None


_SUPPOSES = ("and if", "but what", "what if", "if ", "suppose", "so if", "or if")
ABOVE_ANY_SURFACE = Fraction(1)
"""Percent of bleach above which none is mixed for a surface, so that it can only be the concentrate's."""
