"""Drying: how long a film of liquid lasts, and how often it has to be wetted again to outlast a wet time.

A forecast and no more. The equation is a pool's, its surface as warm as the air, and nobody weighed the film; so every
figure comes as a span, and the keeper's eyes decide. Where room, film and wet time come from is `answer.drying`.
"""

from __future__ import annotations

from dataclasses import dataclass
from math import ceil

from assistant.core.facts import Facts
from assistant.core.quantities.errors import OutOfRange


@dataclass(frozen=True, slots=True)
class Air:
    """The air over a surface."""

    celsius: float
    humidity: float
    """Relative, 0 (dry) to 1 (saturated)."""
    speed: float = 0.0
    """Along the surface, in metres a second, 0 or more."""


@dataclass(frozen=True, slots=True)
class Film:
    """Liquid on a surface."""

    ml_per_m2: float
    """More than 0; a millilitre is taken as a gram."""
    volatility: float | None = None
    """How many times as fast as water it evaporates, both in dry air; None: it is mostly water."""


@dataclass(frozen=True, slots=True)
class Forecast:
    """When a film will be dry."""

    soonest: float | None
    """Minutes by the equation: until then it may well be dry. None: the air is saturated, it won't dry."""
    latest: float | None
    """Minutes at the rate measured over undisturbed water; in dead air behind a rim it can take longer still."""


def saturation_kpa(celsius: float, facts: Facts) -> float:
    """The pressure of water vapour in saturated air.

    celsius: air temperature, in degrees Celsius.
    Gives: kilopascals.
    Fails: OutOfRange outside the range of the fit.
    Valid: -20 to 50 degC, to 0.083 percent.
    Source: drying-saturation, drying-saturation-range.
    """
    low, high = facts["drying-saturation-range"].value
    if not low <= celsius <= high:
        raise OutOfRange("the temperature", f"{celsius:g} degC", f"{low} to {high} degC")
    fit = facts["drying-saturation"].value
    return float(fit["factor"] * 10 ** (fit["slope"] * celsius / (celsius + fit["offset"])))


def latent_heat(celsius: float, facts: Facts) -> float:
    """What it takes to evaporate a kilogram of water.

    celsius: of the water, 0 to 50 degC.
    Gives: kJ/kg.
    Source: drying-latent-heat.
    """
    heat = facts["drying-latent-heat"].value
    return float(heat["at_zero"] - heat["a_degree"] * celsius)


def carrier(deficit_kpa: float, speed: float, heat: float, facts: Facts) -> float:
    """Evaporation from a water surface, by the equation as published.

    deficit_kpa: saturation pressure at the surface less the vapour pressure of the air, in kPa, 0 or more.
    speed: of the air along the surface, in m/s, 0 or more.
    heat: latent heat of the water, in kJ/kg.
    Gives: kg/(s m2).
    Fails: OutOfRange for a negative deficit or speed.
    Valid: a water surface as warm as the air; made for pools, and doubted even there.
    Source: drying-equation.
    """
    if deficit_kpa < 0:
        raise OutOfRange("the pressure difference", f"{deficit_kpa:g} kPa", "0 or more")
    if speed < 0:
        raise OutOfRange("the air's speed", f"{speed:g} m/s", "0 or more")
    law = facts["drying-equation"].value
    return float(deficit_kpa * (law["still"] + law["moving"] * speed) / heat)


def evaporation(film: Film, air: Air, facts: Facts) -> float:
    """How fast a film leaves its surface.

    An alcohol's rate is the published multiple of water's in dry air, so humidity doesn't hold it up. A mix of alcohol
    and water goes faster at first and slower at last; once its alcohol is gone it no longer counts as alcohol, so the
    fast rate is taken throughout.

    Gives: grams a square metre a minute; 0 in saturated air.
    Fails: OutOfRange for a temperature outside the fit, a humidity not from 0 to 1, or a negative speed.
    Source: drying-equation, drying-saturation, drying-rate-water and its like.
    """
    if not 0 <= air.humidity <= 1:
        raise OutOfRange("the humidity", f"{air.humidity * 100:g} percent", "0 to 100 percent")
    saturated = saturation_kpa(air.celsius, facts)
    share = 1 - air.humidity if film.volatility is None else film.volatility
    rate = carrier(saturated * share, air.speed, latent_heat(air.celsius, facts), facts)
    return rate * 1000 * 60


def forecast(film: Film, air: Air, facts: Facts) -> Forecast:
    """When a film will be dry, as a span.

    film: more than 0 mL/m2. air: at the surface.
    Gives: minutes from the moment it was laid on.
    Fails: OutOfRange as `evaporation`, and for a film of nothing.
    Valid: a smooth surface in the open. One chilled by its own evaporation, or in a deep tub, stays wet longer; one in
    the sun, on a heat mat or on wood dries sooner.
    Source: as `evaporation`; the slow end is drying-undisturbed.
    """
    if film.ml_per_m2 <= 0:
        raise OutOfRange("the film", f"{film.ml_per_m2:g} mL/m2", "more than 0")
    rate = evaporation(film, air, facts)
    if rate == 0:
        return Forecast(None, None)
    soonest = film.ml_per_m2 / rate
    return Forecast(soonest, soonest / (float(facts["drying-undisturbed"].value) / 100))


def rewets_needed(wet_minutes: float, now: float | None, each: float | None) -> int:
    """How often it has to be wetted again, at the soonest drying, to stay wet that long.

    wet_minutes: still to be kept wet, 0 or more.
    now: minutes that the film on it lasts; None: it won't dry.
    each: minutes that a new film lasts, more than 0; None: it won't dry.
    Gives: 0 or more. Wetted just before it dries, each film counts in full.
    Source: arithmetic.

    >>> rewets_needed(10, 4, 4)
    2
    """
    if now is None or now >= wet_minutes:
        return 0
    return 1 if each is None else ceil((wet_minutes - now) / each - 1e-9)
