"""`mixed`: the keeper says that a bottle was filled. What else was in it since it was last rinsed out comes first.

A claim that two agents met in a bottle is kept whatever is said next: only a rinse on record clears it.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from datetime import datetime
from fractions import Fraction
from typing import Any

from assistant.answer.asking import ask, names_of
from assistant.answer.back_dated import earliest
from assistant.answer.filling_several import mixed_each
from assistant.answer.meeting import UNKNOWN_FACT, agent_of, gas_made
from assistant.answer.mix_wanted import mix_in
from assistant.answer.mixing import total_in
from assistant.answer.product import Product, other_in_bottle, product_in
from assistant.answer.scooped import as_poured
from assistant.answer.strength import Strength, strength_of
from assistant.answer.two_volumes import as_one_mix
from assistant.contract import UNHEARD_PRODUCT, Answer, Outcome, Pending, Reading, World
from assistant.core.choice.together import meet
from assistant.core.facts import Agent, Source
from assistant.core.household import Bottle
from assistant.core.mixing.dilution import mix
from assistant.core.quantities.amounts import Amount, Mix, SaidRatio
from assistant.core.quantities.quantity import read_mix
from assistant.core.quantities.ratio import Ratio, read
from assistant.core.quantities.units import in_ml
from assistant.core.record.events import (
    AgentPoured,
    AgentsMet,
    BottleDoubted,
    BottleMixed,
    BottleRinsed,
    BottleUnsettled,
    Event,
    Recorded,
    Voided,
)
from assistant.core.record.fold import fold
from assistant.core.shelf.bottles import Life, filled_with, held_in, is_on_record, left_of, life_of, taken_back, written

CANT_TELL = ("mixing.how_strong",)
"""What a dose asks after but a fill doesn't: it is done, and what was drawn for it isn't known."""


@dataclass(frozen=True, slots=True)
class _Fill:
    """A fill as it was told."""

    bottle: Bottle
    product: Product
    agent: Agent
    wanted: Mix
    total: Amount
    strength: Strength | None
    """None: the stock's strength isn't known."""
    at: datetime
    """When it was filled, as told; now where nothing was said of that."""
    added: Amount | None = None
    """What was poured onto what was left; None: it was filled, or it wasn't said how much."""

    @property
    def concentrate(self) -> Amount | None:
        return mix(self.added or self.total, self.strength.share).concentrate if self.strength is not None else None


def mixed(reading: Reading, world: World) -> Answer:
    """Records what a bottle was filled with, or says what stands against it.

    Said to be another bottle than was recorded: that record goes, whatever is still to be asked of the other.
    """
    if reading.slots.each:
        return mixed_each(reading, world, mixed)
    before = _put_right(reading, world)
    answer = _with_what_went_in(_mixed(reading, _without_the_doubt(before, world)), reading, world)
    if before is None or answer.values.get("recorded"):
        return answer
    if before[1] in reading.slots.bottles and not _is_unsettled(answer):
        return answer
    return replace(answer, events=(before[0], *answer.events), pending=_no_more_to_correct(answer.pending))


def _is_unsettled(answer: Answer) -> bool:
    return answer.outcome is Outcome.ASK and any(isinstance(event, AgentPoured) for event in answer.events)


def _with_what_went_in(answer: Answer, reading: Reading, world: World) -> Answer:
    """The same, with what was told to be in there while something of it is still asked: no fill, and no guess."""
    bottle = world.household.bottle(reading.slots.bottles[0]) if len(reading.slots.bottles) == 1 else None
    if bottle is None or answer.outcome is not Outcome.ASK or answer.events or answer.details.get("ahead"):
        return answer
    product = product_in(reading, world)
    if not isinstance(product, Product) or product.agent is None:
        return answer
    filled = filled_with(bottle, world.state) is not None  # then it is no longer that fill
    held = held_in(bottle, world.state)
    other = answer.values.get("earlier")
    agents = tuple(agent for agent in (other, product.agent.id) if agent is not None and (filled or agent not in held))
    return replace(answer, events=tuple(AgentPoured(bottle.name, agent) for agent in agents))


def _without_the_doubt(before: tuple[Voided, str] | None, world: World) -> World:
    """The world without the doubt that a fill brought on its bottle, where that fill is put right now."""
    if before is None or "BottleMixed" in {deed.event for deed in world.state.turns[-1].deeds}:
        return world
    unknown = tuple(name for name in world.state.unknown_mixes if name != before[1])
    return replace(world, state=replace(world.state, unknown_mixes=unknown))


def _no_more_to_correct(pending: Pending | None) -> Pending | None:
    if pending is None:
        return None

    def plain(outcome: Answer | Reading | None) -> Any:
        if not isinstance(outcome, Reading):
            return outcome
        return replace(outcome, slots=replace(outcome.slots, corrects=False))

    return replace(pending, reading=plain(pending.reading), on_yes=plain(pending.on_yes), on_no=plain(pending.on_no))


def _mixed(reading: Reading, world: World) -> Answer:
    bottle = world.household.bottle(reading.slots.bottles[0]) if len(reading.slots.bottles) == 1 else None
    told = as_poured(reading, world)
    told = _with_its_concentrate(as_one_mix(told), bottle, world) if isinstance(told, Reading) else told
    if isinstance(told, Answer):
        return _unrecorded(told)
    reading = told
    product = product_in(reading, world)
    if isinstance(product, Answer):
        return _with_poured(product, bottle, reading, world)
    if product.bottle is None:
        known = names_of("bottle", world)
        return _unrecorded(ask(reading, world, ("bottle",), "shelf.filled_which", {"known": known}))
    unheard = _unheard(product, reading, world)
    if unheard is not None:
        return unheard
    if product.agent is None:
        details = {"bottle": product.bottle.name}
        return _unrecorded(ask(reading, world, ("agent", "stock"), "shelf.filled_with", details))
    stopped = _stopped(product, product.agent, product.bottle, reading, world)
    if stopped is not None:
        return stopped
    fill = _fill_in(product, product.agent, product.bottle, reading, world)
    if isinstance(fill, Answer):
        return _unrecorded(fill)
    return _recorded(fill, reading, world)


def _unheard(product: Product, reading: Reading, world: World) -> Answer | None:
    """Asks with what it was filled, where a word that nobody knows stands for it; that it isn't its own is kept."""
    slots, bottle = reading.slots, product.bottle
    if bottle is None or slots.agents or slots.stocks or not (slots.beside or "").startswith(UNHEARD_PRODUCT):
        return None
    details = {"bottle": bottle.name, "unheard": (slots.beside or "").removeprefix(UNHEARD_PRODUCT)}
    asked = ask(reading, world, ("agent", "stock"), "shelf.filled_with", details)
    return _unrecorded(replace(asked, events=(BottleUnsettled(bottle.name),)))


def _with_its_concentrate(reading: Reading, bottle: Bottle | None, world: World) -> Reading | Answer:
    """ "25 mils of bleach in the yellow bottle" is the concentrate where that much to the whole comes near its own mix.

    The mix is then what that makes; where it doesn't, it is asked whether so much ready mix is meant.
    """
    slots = reading.slots
    if bottle is None or slots.mixes or len(slots.roles) != 1 or slots.roles[0] not in ("product", ""):
        return reading
    if not isinstance(bottle.mix, SaidRatio):
        return reading
    part, whole = in_ml(slots.volumes[0]), in_ml(bottle.capacity)
    own = read(bottle.mix, world.household.habits.ratio)
    if not isinstance(own, Ratio):
        return reading
    measured = SaidRatio(Fraction(1), whole / part, "in")
    concentrate = replace(reading, slots=replace(slots, mixes=(measured,), volumes=(), roles=()))
    if own.share / NEAR_ITS_OWN <= part / whole <= own.share * NEAR_ITS_OWN:
        return concentrate
    if part >= whole or (slots.roles == ("",) and part >= whole / LITTLE_OF_IT):
        return reading
    ready = replace(reading, slots=replace(slots, mixes=(bottle.mix,), roles=()))
    details = {"bottle": bottle, "volume": slots.volumes[0], "ratio": own}
    pending = Pending(ready, world.now, missing=("concentrate",), on_yes=ready, on_no=concentrate)
    values = {"bottle": bottle.name}
    missing = ("concentrate",)
    return Answer(reading.intent, Outcome.ASK, "shelf.ready_mix", details, values, missing=missing, pending=pending)


LITTLE_OF_IT = 4
"""Part of a bottle from which on a volume, with no word of what it is, is taken as so much mix."""
NEAR_ITS_OWN = Fraction(5, 2)
"""Times stronger or weaker than a bottle's own mix that a fill of it may be taken for."""


def _unrecorded(answer: Answer) -> Answer:
    return replace(answer, values={"recorded": False, **answer.values})


def water(reading: Reading, world: World) -> Answer:
    """Water alone is no mix, so it is no fill; nor does it rinse out what was there.

    Poured onto a mix it leaves one whose strength nobody knows.
    """
    bottle = world.household.bottle(reading.slots.bottles[0])
    assert bottle is not None, "it is only read so where a bottle is named"
    held = tuple(agent_of(agent, world) for agent in held_in(bottle, world.state))
    details = {"bottle": bottle.name, "held": held, "unknown": bottle.name in world.state.unknown_mixes}
    values = {"recorded": False, "bottle": bottle.name}
    if reading.slots.topped_up and held:
        return Answer(None, Outcome.REFUSE, "shelf.watered", details, values, events=(BottleDoubted(bottle.name),))
    return Answer(None, Outcome.UNSURE, "shelf.water", details, values, events=(BottleUnsettled(bottle.name),))


def _with_poured(answer: Answer, bottle: Bottle | None, reading: Reading, world: World) -> Answer:
    """Two agents that must not meet were said to be in that bottle: gas, or a mix that nobody knows."""
    if bottle is None or answer.outcome is not Outcome.REFUSE:
        return _unrecorded(answer)
    agents = tuple(reading.slots.agents)
    met = gas_made(reading.intent, agents, bottle.name, None, world)
    return met or _unrecorded(replace(answer, events=(AgentsMet(bottle.name, agents),)))


# ---------------------------------------------------------------- what stands against it


def _stopped(product: Product, agent: Agent, bottle: Bottle, reading: Reading, world: World) -> Answer | None:
    """What was in the bottle before, an agent that is refused, or contents nobody knows; None: nothing."""
    if bottle.name in world.state.unknown_mixes and not reading.slots.rinsed_first:
        details = {"bottle": bottle.name}
        poured = (AgentPoured(bottle.name, agent.id),)
        refused = Answer(reading.intent, Outcome.REFUSE, "the_round.unknown_mix", details, events=poured)
        return _unrecorded(refused)
    other = None if reading.slots.rinsed_first else other_in_bottle(product, world)
    if other is not None:
        return _met(other, agent, bottle, reading, world)
    if agent.refused is not None:
        poured = (AgentPoured(bottle.name, agent.id),)
        fact = world.facts[agent.refused].cited()
        refused = Answer(reading.intent, Outcome.REFUSE, "the_round.refused_agent", {"agent": agent}, events=poured)
        return _unrecorded(replace(refused, sources=(fact,)))
    return None


def _met(other: Agent, agent: Agent, bottle: Bottle, reading: Reading, world: World) -> Answer:
    """Another agent was in that bottle: on record and making gas, out first; else was it rinsed out?

    "No" to that records that they met.
    """
    on_record = is_on_record(bottle, world.state)
    gas = gas_made(reading.intent, (other.id, agent.id), bottle.name, None, world)
    if gas is not None and (on_record or reading.slots.rinsed_first is False):
        return gas
    pair = meet(other, agent, world.facts)
    fact = world.facts[pair.fact if pair is not None else UNKNOWN_FACT]
    details = {"bottle": bottle.name, "other": other, "agent": agent, "pair": pair, "reason": fact}
    details["on_record"] = on_record
    values: dict[str, Any] = {"recorded": False, "bottle": bottle.name, "earlier": other.id, "agent": agent.id}
    values |= {"verdict": pair.verdict if pair is not None else None, "gas": pair.gas if pair is not None else None}
    if reading.slots.rinsed_first is False:
        met = (AgentsMet(bottle.name, (other.id, agent.id)),)
        return Answer(reading.intent, Outcome.REFUSE, "shelf.met", details, values, sources=(fact.cited(),), events=met)
    rinsed, not_rinsed = (replace(reading, slots=replace(reading.slots, rinsed_first=was)) for was in (True, False))
    return Answer(
        reading.intent,
        Outcome.REFUSE if gas is not None else Outcome.ASK,
        "shelf.rinsed_first",
        details,
        values,
        missing=("rinsed_out",),
        cautions=("caution-label-first", "caution-never-mix"),
        sources=(fact.cited(),),
        # Until it is said that it was rinsed out, both are in there.
        events=(AgentPoured(bottle.name, other.id), AgentPoured(bottle.name, agent.id)) if gas is not None else (),
        pending=Pending(reading, world.now, on_yes=rinsed, on_no=not_rinsed),
    )


# ---------------------------------------------------------------- the fill


def _fill_in(product: Product, agent: Agent, bottle: Bottle, reading: Reading, world: World) -> _Fill | Answer:
    """How much of what; an answer that asks where it can't be told."""
    holds = world.state.bottles.get(bottle.name)
    if reading.slots.topped_up and (holds is None or (holds.fill is None and holds.held)):
        return ask(reading, world, ("contents",), "shelf.topped_unknown", {"bottle": bottle.name})
    at = earliest(reading.slots.when, world.now) if reading.slots.when is not None else world.now
    if at > world.now or (reading.slots.some_time_ago and reading.slots.when is None):
        return ask(reading, world, ("when",), "shelf.filled_when", {"bottle": bottle.name, "ahead": at > world.now})
    below = read_mix(holds.fill.mix) if holds is not None and holds.fill is not None and holds.fill.mix else None
    same = reading.slots.topped_up and not reading.slots.mixes and not reading.slots.numbers
    wanted = below if same and below is not None else mix_in(product, reading, world)
    if isinstance(wanted, Answer):
        return wanted
    if wanted is None or (reading.slots.beside is not None and not reading.slots.mixes):
        return ask(reading, world, ("mix",), "shelf.filled_how_strong", {"bottle": bottle.name, "name": product.name})
    total = total_in(product, reading, world)
    if isinstance(total, Answer):
        return total
    strength = strength_of(wanted, product, reading, world)
    if isinstance(strength, Answer):
        if strength.message == "mixing.weaker_stock":  # nothing comes out stronger than what it is mixed from
            details = {**strength.details, "bottle": bottle.name}
            return ask(reading, world, ("mix",), "shelf.stronger_than_it", details)
        if strength.outcome is Outcome.REFUSE:
            return _too_strong_in_it(strength, bottle, agent)
        if strength.message not in CANT_TELL:
            return strength
    found = None if isinstance(strength, Answer) else strength
    if not reading.slots.topped_up:
        return _Fill(bottle, product, agent, wanted, total or bottle.capacity, found, at)
    if below is not None and found is not None and below != wanted:
        old = strength_of(below, product, reading, world)
        if isinstance(old, Strength) and old.share != found.share:
            return _another_on_top(bottle)
    return _Fill(bottle, product, agent, wanted, bottle.capacity, found, at, total if reading.slots.volumes else None)


def _another_on_top(bottle: Bottle) -> Answer:
    """One strength on what was left of another: nobody knows how strong the two are together."""
    values = {"recorded": False, "bottle": bottle.name}
    details = {"bottle": bottle.name}
    return Answer("mixed", Outcome.REFUSE, "shelf.watered", details, values, events=(BottleDoubted(bottle.name),))


def _too_strong_in_it(refusal: Answer, bottle: Bottle, agent: Agent) -> Answer:
    """What is refused is in there all the same: no mix that is known, so nothing is sprayed from it until it is out."""
    events = (AgentPoured(bottle.name, agent.id), BottleDoubted(bottle.name))
    values = {**refusal.values, "bottle": bottle.name, "agent": agent.id, "too_strong": True}
    return replace(refusal, message="shelf.too_strong", values=values, events=events)


def _recorded(fill: _Fill, reading: Reading, world: World) -> Answer:
    stock = fill.product.stock
    life = life_of(fill.agent, stock, fill.at, world.facts)
    # Topped up without saying by how much, what was drawn isn't known.
    told, when = fill.at < world.now, reading.slots.when
    guessed = reading.slots.topped_up and not reading.slots.volumes
    event = BottleMixed(
        bottle=fill.bottle.name,
        agent=fill.agent.id,
        stock=stock.name if stock is not None else None,
        mix=written(fill.wanted, fill.strength.ratio.reading if fill.strength is not None else None),
        total=fill.total,
        concentrate=None if guessed else fill.concentrate,
        left=stock.left if stock is not None else None,
        kept_until=life.until,
        basis=life.basis,
        topped_up=reading.slots.topped_up,
        mixed_at=fill.at if told else None,
        to_the=when.to_the if told and when is not None else "minute",
    )
    rinsed = (BottleRinsed(fill.bottle.name),) if reading.slots.rinsed_first else ()
    events: tuple[Event, ...] = (*rinsed, event)
    before = _put_right(reading, world)
    state = taken_back(world.state, before[1]) if before is not None else world.state
    for one in events:
        state = fold(state, Recorded(world.now, "", one))
    kept = state.bottles[fill.bottle.name].fill
    assert kept is not None
    left = left_of(stock, state) if stock is not None else None
    strength = fill.strength
    return Answer(
        reading.intent,
        Outcome.ANSWER,
        "shelf.mixed",
        details={
            "fill": kept,
            "bottle": fill.bottle,
            "agent": fill.agent,
            "name": fill.product.name,
            "wanted": fill.wanted,
            "ratio": strength.ratio if strength is not None else None,
            "concentrate": event.concentrate,
            "left": left,
            "stock": stock,
            "rinsed": bool(rinsed),
            "topped_up": event.topped_up,
            "life": life,
            "told": told,
            "corrects": before is not None,
            "now": world.now,
            "spoken": reading.spoken,
        },
        values={
            "recorded": True,
            "bottle": fill.bottle.name,
            "agent": fill.agent.id,
            "stock": event.stock,
            "mix": event.mix,
            "parts": strength.ratio.parts if strength is not None else None,
            "reading": strength.ratio.reading if strength is not None else None,
            "strength_percent": strength.mixed_percent if strength is not None else None,
            "strength_ppm": strength.mixed_ppm if strength is not None else None,
            "total": fill.total,
            "concentrate": event.concentrate,
            "mixed_at": kept.at.astimezone(world.now.tzinfo),
            "expires": kept.kept_until,
            "basis": kept.basis,
            "left": left,
        },
        cautions=("caution-label-first", "caution-never-mix"),
        sources=sources_of(life, fill.product, world),
        events=(before[0], *events) if before is not None else events,
    )


def _put_right(reading: Reading, world: World) -> tuple[Voided, str] | None:
    """What takes back the fill recorded last, and its bottle, where this one is said in its place; None: it isn't."""
    if not reading.slots.corrects or not world.state.turns:
        return None
    last = world.state.turns[-1]
    bottle = next(
        (deed.thing for deed in last.deeds if deed.event in ("BottleMixed", "BottleDoubted", "AgentPoured")), None
    )
    return (Voided(last.turn), bottle) if bottle is not None else None


def sources_of(life: Life, product: Product, world: World) -> tuple[Source, ...]:
    """What a mix's life rests on."""
    if life.basis == "label" and product.stock is not None:
        text = f"{product.stock.name}: how long its label says the mix keeps"
        return (Source(f"label-{product.stock.name}", "label", text),)
    return (world.facts[life.fact].cited(),) if life.fact is not None else ()
