"""Which agent for this job: a computation over the facts, the shelf and the surface, not a look-up.

Every agent is either offered, with strength and wet time, or passed over with the reason. What must never be is taken
out first; what is left is ranked by what is published for it. A cleaner is offered for cleaning alone.
"""

from __future__ import annotations

from dataclasses import dataclass, field
from fractions import Fraction
from typing import Literal, TypeAlias

from assistant.core.choice.evidence import Evidence, weigh
from assistant.core.choice.surfaces import standing
from assistant.core.choice.together import UNKNOWN, standoff
from assistant.core.facts import Agent, Facts, Material
from assistant.core.household import Bottle, Enclosure, Group, Household, Stock
from assistant.core.quantities.amounts import Mix, Percent
from assistant.core.record.state import Touch
from assistant.core.round.wet_time import Use, WetTime, percent_of, wet_time

Job: TypeAlias = Literal["scale", "dirt", "routine", "illness", "quarantine", "mites"]

CLEANING: dict[Job, tuple[str, str]] = {
    "scale": ("acetic acid", "choosing-scale"),
    "dirt": ("detergent", "choosing-dirt"),
}
"""Jobs that a cleaner does: which, and the fact that says so."""

CARRIED = "salmonella"
"""What a disinfection is ranked against when no germ is named: every reptile is treated as a carrier of it."""

WhyNot: TypeAlias = Literal[
    "refused",  # not near reptiles at all
    "water",  # it harms water life, and there is some
    "vet",  # its strength and time are the vet's plan
    "cleans",  # it cleans, it doesn't disinfect
    "never there",  # it must not touch that material
    "porous",  # the material soaks it up
    "rinse first",  # what is on the surface must not meet it
    "fails",  # published to fail
    "partly",  # published to do only part
    "disagree",  # studies disagree
    "nothing",  # nothing published supports it
    "contents",  # what is in it isn't known
]


@dataclass(frozen=True, slots=True)
class Need:
    """What is to be cleaned or disinfected, against what, where."""

    job: Job
    organism: str | None = None
    material: Material | None = None
    enclosure: Enclosure | None = None
    near_water: bool = False
    """Said in so many words: frogs, turtles, fish are near."""
    touches: tuple[Touch, ...] = ()
    """What is on that surface."""

    @property
    def target(self) -> str:
        """The organism that agents are ranked against."""
        return self.organism or ("mites" if self.job == "mites" else CARRIED)

    @property
    def group(self) -> Group:
        """Of the enclosure; a quarantine counts as new, an illness as sick."""
        if self.job == "quarantine":
            return "new"
        if self.job == "illness":
            return "sick"
        return self.enclosure.group if self.enclosure is not None else "healthy"


@dataclass(frozen=True, slots=True)
class Offer:
    """One agent, or heat, that may be used."""

    id: str
    name: str
    evidence: Evidence | None
    """None for a cleaner."""
    percent: Fraction | None = None
    minutes: Fraction | None = None
    """Wet time to keep, minutes; for heat how long; None: its label decides, or nothing was stated."""
    wet: WetTime | None = None
    stock: Stock | None = None
    bottle: Bottle | None = None
    """The keeper's bottle, where its mix is strong enough as it is."""
    agent: Agent | None = None
    """None for heat."""

    @property
    def verdict(self) -> str:
        """ "works" or "unknown"; a cleaner's is "unknown": nothing is claimed for it."""
        return self.evidence.verdict if self.evidence is not None else "unknown"


@dataclass(frozen=True, slots=True)
class PassedOver:
    """One agent that is not offered, and why."""

    id: str
    name: str
    why: WhyNot
    fact: str | None = None
    """Id of the fact that says so."""


@dataclass(frozen=True, slots=True)
class Choosing:
    """What may be used, best first, and what may not."""

    offers: tuple[Offer, ...]
    passed_over: tuple[PassedOver, ...] = field(default=())

    @property
    def works(self) -> bool:
        """Whether the best is published to work."""
        return bool(self.offers) and self.offers[0].verdict == "works"


def choose(need: Need, household: Household, facts: Facts) -> Choosing:
    """Every agent offered or passed over, for that need.

    Out go, in this order: what is refused near reptiles, what harms water life where there is some, what is the vet's
    plan, cleaners, what must not touch the material, what must not meet what is on the surface, what is published to
    fail or only to do part, and what nothing is published for. The rest is ranked: what works before what is only
    known from a relative; what has a wet time before what needs its label; the keeper's own before what would have to
    be bought; the nearer study before the farther; what burns last.

    Gives: offers, best first; none where nothing published supports any.
    Source: the facts that each offer's evidence and each passing over name.
    """
    if need.job in CLEANING:
        return _cleaning(need, household, facts)
    offers: list[Offer] = []
    passed: list[PassedOver] = []
    for agent in facts.agents.values():
        if agent.family == UNKNOWN:
            continue
        reason = _why_not(agent, need, household, facts)
        if reason is not None:
            passed.append(reason)
        else:
            offers.append(_offer(agent, _At(need, household, facts)))
    unknown = household.stocks_of("other")
    passed += [PassedOver("other", stock.name, "contents", "together-unknown") for stock in unknown]
    if need.organism is not None or need.job == "mites":
        offers += _methods(need, facts)
    return Choosing(tuple(sorted(offers, key=_rank)), tuple(passed))


def _rank(offer: Offer) -> tuple[bool, bool, bool, bool, int, bool]:
    evidence = offer.evidence
    return (
        offer.verdict != "works",
        offer.agent is None and offer.id != "heat",
        offer.minutes is None,
        offer.stock is None and offer.agent is not None,
        evidence.distance if evidence is not None else 0,
        offer.agent is not None and offer.agent.needs_cold,
    )


# ---------------------------------------------------------------- out


def _why_not(agent: Agent, need: Need, household: Household, facts: Facts) -> PassedOver | None:
    def out(why: WhyNot, fact: str | None = None) -> PassedOver:
        return PassedOver(agent.id, agent.name, why, fact)

    if agent.refused is not None:
        return out("refused", agent.refused)
    if agent.refused_in_water is not None and water_near(need, household):
        return out("water", agent.refused_in_water)
    if agent.vet_only:
        return out("vet", agent.no_time)
    if not agent.disinfects:
        return out("cleans", agent.no_time)
    touched = _not_there(agent, need, facts)
    if touched is not None:
        return touched
    return _not_against(agent, need, facts)


def _not_there(agent: Agent, need: Need, facts: Facts) -> PassedOver | None:
    """The material, or what is on it, forbids the agent."""
    if need.material is not None:
        held = standing(agent, need.material, facts)
        if held.verdict == "never":
            return PassedOver(agent.id, agent.name, "never there", held.fact.id)
        if held.verdict == "porous":
            return PassedOver(agent.id, agent.name, "porous", held.fact.id)
    met = standoff(need.touches, agent, facts)
    if met is not None:
        return PassedOver(agent.id, agent.name, "rinse first", met.pair.fact if met.pair is not None else None)
    return None


def _not_against(agent: Agent, need: Need, facts: Facts) -> PassedOver | None:
    """Nothing published has it work on what is to be killed."""
    evidence = weigh(agent.id, need.target, facts)
    reason = evidence.rows[0].fact.id if evidence.rows else None
    if evidence.verdict == "works":
        return None
    if evidence.verdict == "fails":
        return PassedOver(agent.id, agent.name, "fails", reason)
    if need.organism is None and need.job != "mites" and agent.hold is not None:
        return None  # for everyday bacteria its published wet time is enough to offer it
    if stand_in(evidence, facts) is not None:
        return None
    if evidence.doubt == "only partly":
        return PassedOver(agent.id, agent.name, "partly", reason)
    if evidence.doubt == "studies disagree":
        return PassedOver(agent.id, agent.name, "disagree", reason)
    return PassedOver(agent.id, agent.name, "nothing")


def water_near(need: Need, household: Household) -> bool:
    """Whether water life is in that home or on the same rack, or was said to be near."""
    if need.near_water or need.enclosure is None:
        return need.near_water
    here = need.enclosure
    if here.water != "dry":
        return True
    return bool(here.rack) and any(home.rack == here.rack and home.water != "dry" for home in household.enclosures)


# ---------------------------------------------------------------- offered


@dataclass(frozen=True, slots=True)
class _At:
    """What an offer is made from."""

    need: Need
    household: Household
    facts: Facts


def _offer(agent: Agent, at: _At) -> Offer:
    """The agent from the keeper's shelf, as its bottle is mixed where that is strong enough; else as studied."""
    evidence = weigh(agent.id, at.need.target, at.facts)
    stocks = at.household.stocks_of(agent.id) or (None,)
    made = [_made_from(stock, agent, evidence, at) for stock in stocks]
    return min(made, key=lambda offer: (offer.bottle is None, offer.minutes is None))


def _made_from(stock: Stock | None, agent: Agent, evidence: Evidence, at: _At) -> Offer:
    colon = at.household.habits.ratio

    def wet(mix: Mix | None) -> WetTime:
        return wet_time(Use(agent, stock, mix, at.need.target, at.need.group, colon), at.facts)

    wanted = strength_wanted(evidence, at.facts)
    if wanted is None and evidence.verdict == "works":  # the study's strength isn't known, so no mix is vouched for
        unsaid = wet(None)
        return Offer(agent.id, agent.name, evidence, None, unsaid.minutes, unsaid, stock, None, agent)
    for bottle in at.household.bottles:
        if stock is None or bottle.stock != stock.name:
            continue
        as_mixed = wet(bottle.mix)
        if as_mixed.organism_verdict == "works" or (wanted is None and not as_mixed.too_weak):
            percent = percent_of(Use(agent, stock, bottle.mix, colon=colon), at.facts)
            return Offer(agent.id, agent.name, evidence, percent, as_mixed.minutes, as_mixed, stock, bottle, agent)
    label = stock.label_mix if stock is not None else None
    mixed = wet(Percent(wanted) if wanted is not None else label)
    percent = wanted if wanted is not None else percent_of(Use(agent, stock, label, colon=colon), at.facts)
    return Offer(agent.id, agent.name, evidence, percent, mixed.minutes, mixed, stock, None, agent)


def strength_wanted(evidence: Evidence, facts: Facts) -> Fraction | None:
    """Strength to mix for it: as studied on the organism, or on the one that stands in; None: not stated."""
    other = stand_in(evidence, facts)
    return other.percent if other is not None else evidence.percent


def stand_in(evidence: Evidence, facts: Facts) -> Evidence | None:
    """What is known of the agent on the organism's wider kind, where it works and the organism itself has no answer."""
    germ = facts.organisms.get(evidence.organism)
    if germ is None or germ.like is None or evidence.doubt not in ("only on others", "studies disagree"):
        return None
    other = weigh(evidence.agent, germ.like, facts)
    return other if other.verdict == "works" else None


def _methods(need: Need, facts: Facts) -> list[Offer]:
    found = []
    for method in facts.methods.values():
        evidence = weigh(method.id, need.target, facts)
        if evidence.verdict == "works" or (evidence.doubt == "only partly" and method.id == "heat"):
            found.append(Offer(method.id, method.name, evidence, None, evidence.minutes))
    return found


def _cleaning(need: Need, household: Household, facts: Facts) -> Choosing:
    """A cleaner for a cleaning job; it disinfects nothing, and says so."""
    agent = facts.agents[CLEANING[need.job][0]]
    reason = _not_there(agent, need, facts)
    if reason is not None and reason.why != "porous":
        return Choosing((), (reason,))
    stocks = household.stocks_of(agent.id)
    return Choosing((Offer(agent.id, agent.name, None, stock=stocks[0] if stocks else None, agent=agent),))
