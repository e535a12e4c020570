"""From the mix asked for to the share of concentrate: what a ratio, a percentage or a ppm comes to with this product.

Ratios are kept to the letter, however old the stock. Percent and ppm take the aged strength of a dated bleach.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from datetime import timedelta
from fractions import Fraction

from assistant.answer.asking import ask
from assistant.answer.product import Product
from assistant.contract import Answer, Outcome, Pending, Reading, World
from assistant.core.facts import Facts
from assistant.core.mixing.chlorine import Chlorine, available_chlorine
from assistant.core.mixing.decay import Age, age_of
from assistant.core.mixing.dilution import share_for
from assistant.core.quantities.amounts import Amount, Mix, Neat, Percent, SaidRatio
from assistant.core.quantities.errors import OutOfRange
from assistant.core.quantities.ratio import EitherWay, Ratio, of_share, read
from assistant.core.quantities.units import convert

MOST = "mixing-bleach-most"
STRONGEST = "mixing-bleach-strongest"
LEAST_AGE_DAYS = 30
"""A time told with a mix counts as the age of the concentrate from here on; a shorter one is of something else. Chosen,
not measured."""


@dataclass(frozen=True, slots=True)
class Strength:
    """A share of concentrate, and what it rests on."""

    share: Fraction
    wanted: Mix
    ratio: Ratio
    """As said; a percentage, ppm or undiluted as "1 to N"."""
    percent: Fraction | None = None
    """Of the concentrate as reckoned with: aged where that is corrected for; None: not known."""
    chlorine: Chlorine | None = None
    """Of the concentrate, by its label."""
    age: Age | None = None
    """Of a bleach whose strength is the shelf's; None: not asked after."""

    @property
    def is_ratio(self) -> bool:
        """True where the parts were said, so that age changes nothing."""
        return isinstance(self.wanted, SaidRatio | Neat)

    @property
    def correction(self) -> Fraction:
        """What the label's strength is taken times."""
        return self.age.correction if self.age is not None and not self.is_ratio else Fraction(1)

    @property
    def mixed_percent(self) -> Fraction | None:
        """Of the finished mix, in the stock's own terms; None: not known."""
        return None if self.percent is None else self.percent * self.share

    @property
    def mixed_ppm(self) -> Fraction | None:
        """Available chlorine of the finished mix; None: no bleach, or not known."""
        return None if self.chlorine is None else self.chlorine.ppm * self.correction * self.share


def strength_of(wanted: Mix, product: Product, reading: Reading, world: World) -> Strength | Answer:
    """What the mix asked for comes to with this product; an answer where it can't be told, or may not be."""
    too_strong = _too_strong_a_target(wanted, product, reading, world.facts)
    if too_strong is not None:
        return too_strong
    chlorine = product.chlorine(world.facts)
    age = age_in(product, reading, world)
    if isinstance(wanted, SaidRatio):
        ratio = ratio_of(wanted, reading, world)
        if isinstance(ratio, Answer):
            return ratio
        found = Strength(ratio.share, wanted, ratio, product.percent, chlorine, age)
        return _too_strong_a_share(found, product, reading, world) or found
    if isinstance(wanted, Neat):
        return Strength(Fraction(1), wanted, of_share(Fraction(1)), product.percent, chlorine, age)
    return _of_target(wanted, product, age, reading, world)


def _of_target(wanted: Mix, product: Product, age: Age | None, reading: Reading, world: World) -> Strength | Answer:
    """For percent and ppm, the concentrate's strength must be known."""
    if product.percent is None:
        kinds = ("stock_strength",) if product.agent is not None else ("stock_strength", "stock", "agent")
        return ask(reading, world, kinds, "mixing.how_strong", {"name": product.name})
    chlorine = product.chlorine(world.facts)
    correction = age.correction if age is not None else Fraction(1)
    percent = product.percent * correction
    if isinstance(wanted, Percent):
        target, stock = wanted.percent, percent
    elif chlorine is not None:
        target, stock = _figure(wanted), chlorine.ppm * correction
    else:
        target, stock = _figure(wanted) / world.facts["mixing-ppm-other"].exact(), percent
    try:
        share = share_for(target, stock)
    except OutOfRange:
        details = {"name": product.name, "percent": percent, "wanted": wanted}
        return Answer(
            reading.intent,
            Outcome.REFUSE,
            "mixing.weaker_stock",
            details=details,
            cautions=("caution-label-first",),
            sources=(world.facts["mixing-parts-of-water"].cited(),),
        )
    return Strength(share, wanted, of_share(share), percent, chlorine, age)


def ratio_of(said: SaidRatio, reading: Reading, world: World) -> Ratio | Answer:
    """The ratio as read; what could be two mixes is asked."""
    if said.may_be_turned:
        return _turned(said, reading, world)
    try:
        ratio = read(said, world.household.habits.ratio)
    except OutOfRange:
        return ask(reading, world, ("mix",), "mixing.bad_ratio", {"said": said})
    if isinstance(ratio, EitherWay):
        return ask(reading, world, ("mix",), "mixing.either_way", {"n": ratio.as_in.n})
    return ratio


def _turned(said: SaidRatio, reading: Reading, world: World) -> Answer:
    """ "40 to 1": asked whether the forty is the water; "yes" answers for that."""
    asked = ask(reading, world, ("mix",), "mixing.turned", {"said": said})
    meant = SaidRatio(said.second, said.first, "to")
    mixes = tuple(meant if one == said else one for one in reading.slots.mixes)
    on_yes = replace(reading, slots=replace(reading.slots, mixes=mixes))
    return replace(asked, pending=Pending(reading, world.now, missing=("mix",), on_yes=on_yes))


def age_in(product: Product, reading: Reading, world: World) -> Age | None:
    """What is known of a bleach's age: as told with the question, else as the shelf has it; None: no bleach of a shelf.

    Bleach alone has a rate law; a strength stated in the question is taken as it is now, unless its age is told too.
    """
    if not product.is_bleach or product.stock is None:
        return None
    today = world.now.date()
    days = sum(int(convert(span, "d").amount) for span in reading.slots.durations)
    if days >= LEAST_AGE_DAYS:
        strength = Amount(product.percent, "%") if product.percent is not None else None
        told = replace(product.stock, strength=strength, basis=product.basis, made=today - timedelta(days=days))
        return age_of(told, today, world.facts)
    return None if product.said_strength is not None else age_of(product.stock, today, world.facts)


# ---------------------------------------------------------------- bleach too strong for a surface


def _too_strong_a_target(wanted: Mix, product: Product, reading: Reading, facts: Facts) -> Answer | None:
    if not product.is_bleach or isinstance(wanted, SaidRatio):
        return None
    if isinstance(wanted, Neat):
        return _refused(product, reading, facts)
    if isinstance(wanted, Percent):
        basis = product.basis
        ppm = available_chlorine(min(wanted.percent, Fraction(100)), basis, facts).ppm
    else:
        ppm = _figure(wanted)
    return _refused(product, reading, facts) if ppm > _most(facts) else None


def _too_strong_a_share(found: Strength, product: Product, reading: Reading, world: World) -> Answer | None:
    """By the label's strength. Where it isn't known, the strongest that is sold decides whether it must be asked."""
    if not product.is_bleach:
        return None
    if found.mixed_ppm is not None:
        return _refused(product, reading, world.facts) if found.mixed_ppm > _most(world.facts) else None
    strongest_sold = Fraction(str(world.facts["mixing-bleach-label-range"].value[1]))
    if available_chlorine(strongest_sold, None, world.facts).ppm * found.share <= _most(world.facts):
        return None
    return ask(reading, world, ("stock_strength",), "mixing.how_strong", {"name": product.name})


def _refused(product: Product, reading: Reading, facts: Facts) -> Answer:
    return Answer(
        reading.intent,
        Outcome.REFUSE,
        "mixing.bleach_too_strong",
        details={"name": product.name, "most": facts[MOST], "strongest": facts[STRONGEST]},
        cautions=("caution-label-first", "caution-gloves-eyes"),
        sources=(facts[STRONGEST].cited(), facts[MOST].cited()),
    )


def _most(facts: Facts) -> Fraction:
    """In ppm: milligrams a litre of one percent weight in volume, whatever the stock's basis."""
    return facts[MOST].exact() * facts["mixing-chlorine-convention"].exact()


def _figure(wanted: Mix) -> Fraction:
    assert not isinstance(wanted, SaidRatio | Neat | Percent)
    return wanted.ppm
