"""How much ready mix a round or a soak needs; and what one stroke of a sprayer lays down."""

from __future__ import annotations

from dataclasses import dataclass, replace
from fractions import Fraction
from math import ceil
from typing import Any

from assistant.answer.asking import ask
from assistant.answer.laid_down import is_said_by_area, ml_a_square_metre, strokes_a_square_metre
from assistant.answer.which import open_rounds
from assistant.contract import Answer, Outcome, Pending, Reading, World
from assistant.core.facts import Source
from assistant.core.household import Bottle, Enclosure
from assistant.core.mixing.making import FILM, Box, Inside, filled, fills_of, inside_area, spray_for, stroke_of
from assistant.core.quantities.amounts import Amount
from assistant.core.quantities.units import convert
from assistant.core.record.events import SprayerMeasured

STROKE_RANGE = "mixing-stroke-range"


@dataclass(frozen=True, slots=True)
class Sprayed:
    """One enclosure, or a thing whose sides were said, and what it takes."""

    name: str
    """Empty: sides were said."""
    area: Amount
    solution: Amount
    least: Amount
    """By the lower end of what a wet surface holds."""


def make_up(reading: Reading, world: World) -> Answer:
    """How much ready solution an enclosure, a soak tub or a whole round needs; or what a sprayer lays down a stroke."""
    slots = reading.slots
    if slots.strokes is not None and slots.volumes and not is_said_by_area(slots):
        return _one_stroke(slots.strokes, reading, world)
    if slots.soaks:
        return _soak(reading, world)
    return _spray(reading, world)


def _no_values() -> dict[str, Any]:
    return {"solution": None, "area": None, "bottles": None, "strokes": None, "ml_a_stroke": None}


# ---------------------------------------------------------------- what one stroke lays down


def _one_stroke(strokes: Fraction, reading: Reading, world: World) -> Answer:
    """What was caught over the strokes; kept for that bottle once the keeper says so."""
    bottle = _bottle(reading, world)
    if bottle is None:
        return ask(reading, world, ("bottle",), "making.whose_strokes")
    if len(reading.slots.volumes) > 1:
        return ask(reading, world, ("volume",), "reckoning.one_at_a_time", {"candidates": reading.slots.volumes})
    stroke = stroke_of(reading.slots.volumes[0], strokes)
    low, high = (Fraction(str(value)) for value in world.facts[STROKE_RANGE].value)
    if not low <= stroke.amount <= high:
        return ask(reading, world, ("volume", "number"), "making.odd_stroke", {"stroke": stroke, "strokes": strokes})
    details = {"bottle": bottle, "stroke": stroke, "strokes": strokes, "caught": reading.slots.volumes[0]}
    values = {**_no_values(), "ml_a_stroke": stroke.amount, "bottle": bottle.name}
    sources = (world.facts["mixing-stroke-count"].cited(),)
    written = (world.written or world.household).bottle(bottle.name)
    was = written.ml_a_stroke if written is not None else None
    kept = Answer(
        reading.intent,
        Outcome.ANSWER,
        "making.stroke_kept",
        details=details,
        values=values,
        sources=sources,
        events=(SprayerMeasured(bottle.name, float(stroke.amount), was),),
    )
    return Answer(
        reading.intent,
        Outcome.CONFIRM,
        "making.keep_stroke",
        details=details,
        values=values,
        sources=sources,
        pending=Pending(reading, world.now, on_yes=kept),
    )


# ---------------------------------------------------------------- sprayed


def _spray(reading: Reading, world: World) -> Answer:
    bottle = _bottle(reading, world)
    own = _by_strokes(reading, bottle)
    film = ml_a_square_metre(reading.slots, bottle)
    uncounted = film is None and reading.slots.strokes is not None and is_said_by_area(reading.slots)
    counted = not {"strokes", "squirts", "pulls", "pumps", "sprays", "squeezes"}.isdisjoint(reading.words)
    if bottle is None and (uncounted or (counted and own is None and len(world.household.bottles) > 1)):
        return ask(reading, world, ("bottle",), "making.whose_strokes")
    if own is not None and not reading.slots.enclosures and not reading.slots.lengths:
        return _in_strokes(own, reading)
    sprayed = _sprayed(reading, world)
    if isinstance(sprayed, Answer):
        return sprayed
    if uncounted and bottle is not None:
        return _strokes_alone(sprayed, bottle, reading)
    sprayed = sprayed if film is None else tuple(_with_film(one, film) for one in sprayed)
    area = Amount(sum((one.area.amount for one in sprayed), Fraction(0)), "m^2")
    solution = own or Amount(sum((one.solution.amount for one in sprayed), Fraction(0)), "mL")
    stroke = bottle.ml_a_stroke if bottle is not None else None
    strokes = ceil(solution.amount / Fraction(str(stroke))) if stroke else None
    fills = _fills(solution, bottle, world)
    return Answer(
        reading.intent,
        Outcome.ANSWER,
        "making.spray",
        details={
            "sprayed": sprayed,
            "area": area,
            "solution": solution,
            "least": Amount(sum((one.least.amount for one in sprayed), Fraction(0)), "mL"),
            "bottle": bottle,
            "fills": fills,
            "fills_each": _fills_each(solution, bottle, world),
            "strokes": strokes,
            "own": own is not None,
            "film_said": film,
            "inside": _inside(reading),
            "film": world.facts[FILM].value,
            "rest": _without_sides(reading, world),
        },
        values={
            "solution": solution,
            "area": area,
            "bottles": fills,
            "strokes": strokes,
            "ml_a_stroke": stroke,
            "bottle": bottle.name if bottle is not None else None,
            "enclosures": [one.name for one in sprayed if one.name],
            "each": [
                {"enclosure": one.name, "area": one.area, "solution": one.solution} for one in sprayed if one.name
            ],
        },
        cautions=("caution-label-first",),
        sources=_sources(own is not None or film is not None, bottle, world),
    )


def _strokes_alone(sprayed: tuple[Sprayed, ...], bottle: Bottle, reading: Reading) -> Answer:
    """So many strokes to the square metre, of a bottle whose stroke nobody has measured: the strokes, and no volume."""
    area = Amount(sum((one.area.amount for one in sprayed), Fraction(0)), "m^2")
    strokes = ceil(area.amount * strokes_a_square_metre(reading.slots))
    return Answer(
        reading.intent,
        Outcome.ANSWER,
        "making.strokes_alone",
        details={"strokes": strokes, "bottle": bottle, "area": area},
        values={**_no_values(), "area": area, "strokes": strokes, "bottle": bottle.name},
    )


def _with_film(one: Sprayed, film: Fraction) -> Sprayed:
    """With so many mils on each square metre, as the keeper sprays."""
    solution = Amount(one.area.amount * film, "mL")
    return replace(one, solution=solution, least=solution)


def _in_strokes(own: Amount, reading: Reading) -> Answer:
    """What so many strokes lay down."""
    return Answer(
        reading.intent,
        Outcome.ANSWER,
        "making.in_strokes",
        details={"solution": own, "strokes": reading.slots.strokes},
        values={**_no_values(), "solution": own, "strokes": reading.slots.strokes},
    )


def _fills(solution: Amount, bottle: Bottle | None, world: World) -> int | None:
    """Of the bottle; with none named, what every bottle of the household comes to; None: they differ."""
    bottles = (bottle,) if bottle is not None else world.household.bottles
    fills = {fills_of(solution, one.capacity) for one in bottles}
    return fills.pop() if len(fills) == 1 else None


def _fills_each(solution: Amount, bottle: Bottle | None, world: World) -> tuple[tuple[str, int], ...]:
    """By bottle, where none was named and they differ; empty where one number says it."""
    if _fills(solution, bottle, world) is not None:
        return ()
    return tuple((one.name, fills_of(solution, one.capacity)) for one in world.household.bottles)


def _by_strokes(reading: Reading, bottle: Bottle | None) -> Amount | None:
    """ "Forty strokes wet the river tank", by the keeper's own sprayer; None: none were said, or it isn't known."""
    strokes = reading.slots.strokes
    if strokes is None or bottle is None or bottle.ml_a_stroke is None or is_said_by_area(reading.slots):
        return None
    return Amount(strokes * Fraction(str(bottle.ml_a_stroke)), "mL")


def _sprayed(reading: Reading, world: World) -> tuple[Sprayed, ...] | Answer:
    inside = _inside(reading)
    if reading.slots.lengths:
        box = _box_said(reading, None)
        return (_one("", box, inside, world),) if box is not None else _ask_size("", reading, world)
    homes = _homes(reading, world)
    if isinstance(homes, Answer):
        return homes
    boxes = [(home, box) for home in homes if (box := _box_of(home)) is not None]
    if not boxes:
        return _ask_size(homes[0].name, reading, world)
    return tuple(_one(home.name, box, inside, world) for home, box in boxes)


def _one(name: str, box: Box, inside: Inside, world: World) -> Sprayed:
    area = inside_area(box, inside)
    most = spray_for(area, world.facts)
    low, high = (Fraction(str(value)) for value in world.facts[FILM].value)
    return Sprayed(name, area, most, Amount(most.amount * low / high, "mL"))


def _inside(reading: Reading) -> Inside:
    return reading.slots.inside or "floor and walls"


def _homes(reading: Reading, world: World) -> tuple[Enclosure, ...] | Answer:
    """The enclosures named; for a whole round those being cleaned now, else every one of the household."""
    known = world.household.enclosures
    if reading.slots.enclosures:
        return tuple(home for home in known if home.name in reading.slots.enclosures)
    in_work = [round_.enclosure for round_ in open_rounds(world)]
    if in_work and (reading.slots.every_enclosure or len(in_work) == 1):
        return tuple(home for home in known if home.name in in_work)
    if reading.slots.every_enclosure and known:
        return known
    return ask(reading, world, ("enclosure", "size"), "making.which_enclosure")


def _without_sides(reading: Reading, world: World) -> tuple[str, ...]:
    """Enclosures that are left out, since keeping.toml doesn't have their measures."""
    homes = _homes(reading, world)
    if reading.slots.lengths or isinstance(homes, Answer):
        return ()
    return tuple(home.name for home in homes if _box_of(home) is None)


def _box_of(home: Enclosure) -> Box | None:
    if home.length is None or home.width is None or home.height is None:
        return None
    return Box(home.length, home.width, home.height)


def _box_said(reading: Reading, depth_of: Box | None) -> Box | None:
    """Three sides said; or one, the depth of a tub whose other two are known."""
    lengths = reading.slots.lengths
    if len(lengths) == 3:
        return Box(*lengths)
    if len(lengths) == 1 and depth_of is not None:
        return Box(depth_of.length, depth_of.width, lengths[0])
    return None


def _ask_size(name: str, reading: Reading, world: World) -> Answer:
    return ask(reading, world, ("size",), "making.how_big", {"name": name})


def _bottle(reading: Reading, world: World) -> Bottle | None:
    """The bottle named; else the only one for what is named, or for the round that is going on; else the only one."""
    slots, household = reading.slots, world.household
    if slots.bottles:
        return household.bottle(slots.bottles[0])
    stocks = {*slots.stocks, *(stock.name for agent in slots.agents for stock in household.stocks_of(agent))}
    if not stocks:
        used = {round_.bottle for round_ in open_rounds(world) if round_.bottle is not None}
        if len(used) == 1:
            return household.bottle(used.pop())
    bottles = [bottle for bottle in household.bottles if not stocks or bottle.stock in stocks]
    return bottles[0] if len(bottles) == 1 else None


# ---------------------------------------------------------------- soaked


def _soak(reading: Reading, world: World) -> Answer:
    """A tub filled to its height, or to the depth said; a volume said is what it holds."""
    slots = reading.slots
    if len(slots.enclosures) > 1 and not slots.lengths:
        return _soak_each(slots.enclosures, reading, world)
    named = world.household.enclosure(slots.enclosures[0]) if slots.enclosures else None
    box = _box_said(reading, _box_of(named) if named is not None else None)
    if box is None and named is not None and not slots.lengths:
        box = _box_of(named)
    if box is not None:
        solution = filled(box)
    elif len(slots.volumes) == 1:
        solution = convert(slots.volumes[0], "L")
    else:
        return _ask_size(named.name if named is not None else "tub", reading, world)
    return Answer(
        reading.intent,
        Outcome.ANSWER,
        "making.soak",
        details={"solution": solution, "box": box, "name": named.name if named is not None else ""},
        values={**_no_values(), "solution": solution, "bottle": None, "enclosures": [named.name] if named else []},
        cautions=("caution-label-first",),
    )


def _soak_each(names: tuple[str, ...], reading: Reading, world: World) -> Answer:
    """Several tubs, each filled to its height, and the sum."""
    tubs = tuple(home for name in names if (home := world.household.enclosure(name)) is not None)
    boxes = {tub.name: _box_of(tub) for tub in tubs}
    unknown = next((name for name, box in boxes.items() if box is None), None)
    if unknown is not None:
        return _ask_size(unknown, replace(reading, slots=replace(reading.slots, enclosures=(unknown,))), world)
    each = {name: filled(box) for name, box in boxes.items() if box is not None}
    solution = Amount(sum((one.amount for one in each.values()), Fraction(0)), "L")
    return Answer(
        reading.intent,
        Outcome.ANSWER,
        "making.soak",
        details={"solution": solution, "box": None, "name": "", "each": each},
        values={
            **_no_values(),
            "solution": solution,
            "bottle": None,
            "enclosures": list(each),
            "each": [{"enclosure": name, "area": None, "solution": one} for name, one in each.items()],
        },
        cautions=("caution-label-first",),
    )


def _sources(own: bool, bottle: Bottle | None, world: World) -> tuple[Source, ...]:
    cited = () if own else (world.facts[FILM].cited(),)
    if bottle is None or bottle.ml_a_stroke is None:
        return cited
    text = f"{bottle.name}: {bottle.ml_a_stroke:g} mils a stroke, as you set or measured it"
    return (*cited, Source("setting-stroke", "setting", text))
