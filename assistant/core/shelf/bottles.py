"""What bottles hold, and what is left of the stocks they are filled from: the record's part and the rules on it.

keeping.toml says what a bottle is for; only events say what it holds. How much goes in is `dilution`, whether agents
may meet is `together`; what a bottle's mix is good for on a surface is `wet_time`.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from datetime import datetime, time, timedelta
from fractions import Fraction
from typing import Literal, TypeAlias

from assistant.core.facts import Agent, Facts
from assistant.core.household import Bottle, Household, Stock
from assistant.core.quantities.amounts import Amount, Mix, Neat, Percent, Ppm
from assistant.core.quantities.quantity import read_mix
from assistant.core.quantities.ratio import Reading
from assistant.core.quantities.units import convert, in_ml
from assistant.core.record.events import BottleMixed
from assistant.core.record.state import Draw, Drawn, Fill, Holds, State

Basis: TypeAlias = Literal["label", "published", "made today", "no limit", "unknown"]

DRAWS_KEPT = 60
"""Of each stock, so that the state row stays small; what was drawn earlier is kept as one sum."""

NOTHING = Holds()

# ---------------------------------------------------------------- folded from events


def filled(state: State, event: BottleMixed, at: datetime) -> State:
    """The state once a bottle was filled. A top-up keeps the older fill's end where that comes first."""
    before = state.bottles.get(event.bottle, NOTHING).fill
    fill = Fill(
        event.mixed_at or at,
        event.agent,
        event.stock,
        event.mix,
        event.total,
        event.concentrate,
        event.kept_until,
        event.basis,
        event.topped_up,
        event.to_the,
    )
    if event.topped_up and before is not None and _ends_first(before, fill):
        fill = replace(fill, at=before.at, to_the=before.to_the, kept_until=before.kept_until, basis=before.basis)
    holds = poured(state, event.bottle, (event.agent,)).bottles[event.bottle]
    return replace(state, bottles={**state.bottles, event.bottle: replace(holds, fill=fill)})


def _ends_first(before: Fill, fill: Fill) -> bool:
    """An end that isn't known, where one may be, comes before any that is."""
    if before.basis == "unknown":
        return True
    if before.kept_until is None or fill.kept_until is None:
        return before.kept_until is not None
    return before.kept_until <= fill.kept_until


def poured(state: State, bottle: str, agents: tuple[str, ...], *, unknown_mix: bool = False) -> State:
    """The state once those agents were in a bottle, as an unknown mix or not; never forgotten until rinsed out."""
    holds = state.bottles.get(bottle, NOTHING)
    held = tuple(dict.fromkeys((*holds.held, *agents)))
    holds = replace(holds, held=held, fill=None if unknown_mix else holds.fill)
    unknown = state.unknown_mixes
    if unknown_mix and bottle not in unknown:
        unknown = (*unknown, bottle)
    return replace(state, bottles={**state.bottles, bottle: holds}, unknown_mixes=unknown)


def unfilled(state: State, bottle: str) -> State:
    """The state once something went into a bottle that is no settled fill: none counts then; what it held stays."""
    holds = state.bottles.get(bottle, NOTHING)
    return replace(state, bottles={**state.bottles, bottle: replace(holds, fill=None, rinsed_at=None)})


def rinsed_out(state: State, bottle: str, at: datetime) -> State:
    """The state once a bottle was rinsed out and pumped through: it holds nothing, and nothing it held counts."""
    unknown = tuple(name for name in state.unknown_mixes if name != bottle)
    return replace(state, bottles={**state.bottles, bottle: Holds(rinsed_at=at)}, unknown_mixes=unknown)


def drawn_for(state: State, event: BottleMixed, at: datetime) -> State:
    """The state once a fill was drawn from its stock; another figure in keeping.toml starts a new count."""
    if event.stock is None or event.left is None or event.concentrate is None:
        return state
    known = state.drawn.get(event.stock)
    if known is None or known.left != event.left:
        known = Drawn(event.left)
    draws = tuple(sorted((*known.draws, Draw(event.mixed_at or at, event.concentrate)), key=lambda draw: draw.at))
    before = known.before
    for old in draws[:-DRAWS_KEPT]:
        before = Amount(in_ml(old.amount) + (in_ml(before) if before is not None else 0), "mL")
    known = replace(known, draws=draws[-DRAWS_KEPT:], before=before)
    return replace(state, drawn={**state.drawn, event.stock: known})


def taken_back(state: State, bottle: str) -> State:
    """The state without a bottle's fill and what was drawn for it; that its agent was in there stays.

    Valid: of a fill that was no top-up; the record itself is folded anew without it.
    """
    holds = state.bottles.get(bottle, NOTHING)
    fill = holds.fill
    if fill is None:
        return state
    bottles = {**state.bottles, bottle: replace(holds, fill=None)}
    drawn = state.drawn
    known = drawn.get(fill.stock) if fill.stock is not None else None
    if known is not None and fill.stock is not None and fill.concentrate is not None:
        draws = list(known.draws)
        if (draw := Draw(fill.at, fill.concentrate)) in draws:
            draws.remove(draw)
        drawn = {**drawn, fill.stock: replace(known, draws=tuple(draws))}
    return replace(state, bottles=bottles, drawn=drawn)


# ---------------------------------------------------------------- what a bottle holds now


def held_in(bottle: Bottle, state: State) -> tuple[str, ...]:
    """Every agent in a bottle since it was last rinsed out, on record."""
    return state.bottles.get(bottle.name, NOTHING).held


def is_on_record(bottle: Bottle, state: State) -> bool:
    """True when a fill, a rinse or anything else of that bottle is on record, so that keeping.toml no longer counts."""
    return bottle.name in state.bottles


def filled_with(bottle: Bottle, state: State) -> str | None:
    """The agent of a bottle's last fill on record; None: it says of none, so keeping.toml does."""
    fill = state.bottles.get(bottle.name, NOTHING).fill
    return fill.agent if fill is not None else None


def as_filled(bottle: Bottle, state: State) -> Bottle:
    """The bottle with the stock and the mix that it holds on record, in place of those it is meant for."""
    fill = state.bottles.get(bottle.name, NOTHING).fill
    if fill is None:
        return bottle
    return replace(bottle, stock=fill.stock, mix=read_mix(fill.mix) if fill.mix is not None else None)


def all_as_filled(household: Household, state: State) -> Household:
    """The household with every bottle as it is filled on record."""
    return replace(household, bottles=tuple(as_filled(bottle, state) for bottle in household.bottles))


def is_past_its_life(bottle: Bottle, state: State, now: datetime) -> bool:
    """True when what was filled in on record has a known end, and that is over."""
    fill = state.bottles.get(bottle.name, NOTHING).fill
    return fill is not None and fill.kept_until is not None and fill.kept_until <= now


def written(mix: Mix, reading: Reading | None = None) -> str:
    """A mix as `quantity.read_mix` reads it back.

    reading: what a colon was read as.
    Gives: exact; "1 in 32", "0.06 percent", "500 ppm" or "neat".

    >>> written(SaidRatio(Fraction(1), Fraction(65, 2), "colon"), "in")
    '1 in 65/2'
    """
    if isinstance(mix, Neat):
        return "neat"
    if isinstance(mix, Percent):
        return f"{mix.percent} percent"
    if isinstance(mix, Ppm):
        return f"{mix.ppm} ppm"
    if mix.part is not None:  # a recipe, in whatever units it was told
        mix = replace(mix, first=Fraction(1), second=mix.second / mix.first)
    word = mix.word if mix.word != "colon" else reading or "to"
    return f"{mix.first} {word} {mix.second}"


# ---------------------------------------------------------------- how long a mix keeps


ONLY_EMPTIED = "rinsed out and pumped through"
"""What is asked of a bottle that was said to be empty."""
LIFE_FACTS = {"chlorine": "bottle-life-bleach", "biguanide": "bottle-life-chlorhexidine"}
"""Families whose mixes have a published life in hours."""
MADE_TODAY = {
    "quat": "bottle-life-quat",
    "peroxide": "bottle-life-peroxide",
    "peroxymonosulfate": "bottle-life-peroxymonosulfate",
}
"""Families whose mixes go by the label, and are made for the day where it says nothing."""
NO_LIMIT = {"acid": "bottle-life-vinegar", "alcohol": "bottle-life-alcohol"}
"""Families with no published limit."""


@dataclass(frozen=True, slots=True)
class Life:
    """How long a mix is good for."""

    until: datetime | None
    """None: no limit is known."""
    basis: Basis
    fact: str | None
    """Id of the fact it rests on; None: the label's own figure, or nothing is known."""


def life_of(agent: Agent, stock: Stock | None, mixed_at: datetime, facts: Facts) -> Life:
    """How long a mix made at that moment is good for.

    The stock's own label wins. Bleach and chlorhexidine mixes have a published life; quats, peroxides and
    peroxymonosulfate are made for the day, which ends at midnight; vinegar and alcohol have no published limit.

    mixed_at: aware; its zone is the keeper's, by which a day ends.
    Source: the facts of bottle_life.toml, named by the result.
    """
    if stock is not None and stock.label_keeps is not None:
        seconds = convert(stock.label_keeps, "s").amount
        return Life(mixed_at + timedelta(seconds=float(seconds)), "label", None)
    family = agent.family
    if family in LIFE_FACTS:
        hours = float(facts[LIFE_FACTS[family]].value)
        return Life(mixed_at + timedelta(hours=hours), "published", LIFE_FACTS[family])
    if family in MADE_TODAY:
        midnight = datetime.combine(mixed_at.date() + timedelta(days=1), time(), mixed_at.tzinfo)
        return Life(midnight, "made today", MADE_TODAY[family])
    if family in NO_LIMIT:
        return Life(None, "no limit", NO_LIMIT[family])
    return Life(None, "unknown", None)


# ---------------------------------------------------------------- what is left of a stock


def left_of(stock: Stock, state: State) -> Amount | None:
    """What is left of a stock: keeping.toml's figure less what was drawn since; in mL, at least 0; None: not known."""
    if stock.left is None:
        return None
    known = state.drawn.get(stock.name)
    left = in_ml(stock.left)
    if known is not None and known.left == stock.left:
        left -= sum((in_ml(draw.amount) for draw in known.draws), Fraction(0))
        left -= in_ml(known.before) if known.before is not None else 0
    return Amount(max(left, Fraction(0)), "mL")


def ml_a_day(stock: Stock, state: State) -> Fraction | None:
    """How fast a stock is drawn down: what was drawn from the first fill up to the last, over the days between.

    Gives: mL a day; None with fewer than two fills, or all of them within a day.
    Source: arithmetic.
    """
    known = state.drawn.get(stock.name)
    if known is None or known.left != stock.left or len(known.draws) < 2:
        return None
    first, *_, last = known.draws
    days = Fraction(int((last.at - first.at).total_seconds()), 86400)
    if days < 1:
        return None
    return sum((in_ml(draw.amount) for draw in known.draws[:-1]), Fraction(0)) / days
