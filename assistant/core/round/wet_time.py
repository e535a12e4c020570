"""How long an agent must stay wet: its label against the published figures. Keepers' habits are told, never used."""

from __future__ import annotations

from dataclasses import dataclass, replace
from fractions import Fraction
from typing import Literal, TypeAlias

from assistant.core.facts import Agent, Efficacy, Fact, Facts, Source
from assistant.core.household import Group, Stock
from assistant.core.quantities.amounts import Mix, Neat, Percent, Ppm, SaidRatio
from assistant.core.quantities.errors import OutOfRange
from assistant.core.quantities.ratio import SHIPPED, Ratio, read

Basis: TypeAlias = Literal["label", "published", "none"]
OrganismVerdict: TypeAlias = Literal["works", "fails", "unknown"]
Why: TypeAlias = Literal[
    "cleans only",  # the agent takes no timed hold
    "vet's plan",  # no time is offered
    "refused",  # not near reptiles at all
    "ask label",  # neither a label's minutes nor a published default
    "label",  # the label's minutes hold here
    "weaker than label",  # the mix is weaker than the one the label's minutes are for, or can't be compared with it
    "label only sanitises",  # its claim is less than disinfecting
    "not on label",  # the organism named isn't one the label lists
    "new or sick",  # the enclosure's group
    "default",  # the agent's published default
    "organism",  # the named organism's figure is the longer
    "too weak for study",  # a study has it work, at a stronger mix or a strength that can't be compared
    "too weak for any",  # weaker than every figure behind the agent's default: the time is kept, nothing vouches for it
    "studies disagree",  # one has it work, another at least as strong has it fail
]


@dataclass(frozen=True, slots=True)
class Use:
    """What is to be sprayed, against what, where."""

    agent: Agent
    stock: Stock | None = None
    mix: Mix | None = None
    """As the bottle is mixed; None: not known."""
    organism: str | None = None
    group: Group = "healthy"
    """Of the enclosure."""
    colon: Literal["in", "to"] | None = None
    """How this keeper reads "1:32"; None: "to"."""


@dataclass(frozen=True, slots=True)
class WetTime:
    """How long it must stay wet, and on whose word."""

    minutes: Fraction | None
    """None: there is no figure, so the wet time can't be served."""
    basis: Basis
    """On what a claim to have disinfected rests; "none" with minutes: the time is kept, but nothing vouches for it."""
    sources: tuple[Source, ...] = ()
    practice: tuple[Fact, ...] = ()
    """What keepers commonly do: to be told beside it."""
    why: tuple[Why, ...] = ()
    organism_verdict: OrganismVerdict | None = None
    """Whether the agent works on the organism named, at this mix; None: none was named."""

    @property
    def too_weak(self) -> bool:
        """True for a mix known to be weaker than all that the agent's default is for, with no label to vouch for it."""
        return self.basis == "none" and ("too weak for any" in self.why or "weaker than label" in self.why)

    @property
    def disinfects(self) -> bool:
        """True when serving it may be called a disinfection."""
        return self.minutes is not None and self.basis != "none"


def wet_time(use: Use, facts: Facts) -> WetTime:
    """The wet time for one use of an agent.

    The label wins, even when shorter, at its own dilution or stronger and for its own claim. A weaker mix, a claim
    that only sanitises, an organism the label doesn't list, or an enclosure of a new or sick animal takes the longer
    of label and published. Without a label it is the longer of the agent's default and the named organism's figure,
    and that figure counts only if the mix is at least as strong as the study's; an agent with no default has no time
    without its label, whatever was studied. A mix known to be weaker than all that the default is for keeps its time,
    but nothing published vouches that it disinfects; only a study of the very germ named, at that strength, does.

    Gives: minutes, exact; None where no figure holds (a cleaner, the vet's plan, or a label that isn't on record).
    Valid: washed, hard, non-porous surfaces that stay wet throughout.
    Source: the facts named by the agent, the efficacy rows of agent and organism, the stock's own label.
    """
    agent = use.agent
    practice = (facts[agent.habit],) if agent.habit is not None else ()
    studied = _studied(use, facts)
    none = _no_time(agent)
    if none is not None:
        named = tuple(facts[fact].cited() for fact in (agent.no_time, agent.refused) if fact is not None)
        return WetTime(None, "none", (*named, *studied.sources), practice, (none,), studied.verdict)
    published, cited, why = _published(agent, studied, facts)
    weak = _too_weak(use, studied, facts)
    if weak is not None:
        if studied.verdict == "works":  # in a study without a time, or of a relative: no wet time is vouched for
            studied = replace(studied, verdict="unknown")
        cited, why = (*cited, weak.cited()), (*why, "too weak for any")
    if use.stock is not None and use.stock.label_minutes is not None:
        return _by_label(use, use.stock, _Published(published, cited, why, practice, studied, weak is None), facts)
    if agent.hold is None:
        return WetTime(None, "none", cited, practice, ("ask label", *studied.why), studied.verdict)
    return WetTime(published, "published" if weak is None else "none", cited, practice, why, studied.verdict)


def _too_weak(use: Use, studied: _Studied, facts: Facts) -> Fact | None:
    """The fact that tells that the mix is known to be weaker than all that the default is for; None: it isn't."""
    if use.agent.hold_least is None:
        return None
    least, percent = facts[use.agent.hold_least], percent_of(use, facts)
    if percent is None or percent >= least.exact():
        return None
    row = studied.figure
    vouched = row is not None and studied.verdict == "works" and row.directness == "same organism"
    return None if vouched else least


def _no_time(agent: Agent) -> Why | None:
    if "hold" not in agent.steps:
        return "cleans only"
    if agent.vet_only:
        return "vet's plan"
    return "refused" if agent.refused is not None else None


# ---------------------------------------------------------------- label against published


@dataclass(frozen=True, slots=True)
class _Published:
    minutes: Fraction | None
    sources: tuple[Source, ...]
    why: tuple[Why, ...]
    practice: tuple[Fact, ...]
    studied: _Studied
    vouches: bool
    """False: the mix is weaker than every figure behind the minutes."""


def _by_label(use: Use, stock: Stock, published: _Published, facts: Facts) -> WetTime:
    """The label's minutes, or the longer of label and published where the label doesn't say enough for this use."""
    label = Fraction(str(stock.label_minutes))
    source = Source(f"label-{stock.name}", "label", f"{stock.name}: its own label says {label_text(label)} minutes")
    limits = _limits(use, stock, facts)
    verdict = published.studied.verdict
    if use.organism is not None and "not on label" not in limits:
        verdict = "works" if not _beyond_label(limits) else verdict
    if not limits:
        return WetTime(label, "label", (source,), published.practice, ("label",), verdict)
    longer = label if published.minutes is None else max(label, published.minutes)
    if _beyond_label(limits):
        vouched = published.minutes is not None and published.vouches and not _unstudied(use, published, facts)
        basis: Basis = "published" if vouched else "none"
    else:
        basis = "published" if longer != label and published.vouches else "label"
    why = tuple(one for one in published.why if basis == "none" or one != "too weak for any")  # the label vouches
    return WetTime(longer, basis, (source, *published.sources), published.practice, (*limits, *why), verdict)


def _unstudied(use: Use, published: _Published, facts: Facts) -> bool:
    """Known to be weaker than its label says, where the default names no strength and no study vouches for this one."""
    stock = use.stock
    if stock is None or stock.label_mix is None or use.agent.hold_least is not None:
        return False
    return published.studied.verdict != "works" and _known_weaker(use, stock.label_mix, facts)


def _known_weaker(use: Use, label_mix: Mix, facts: Facts) -> bool:
    """A mix that can't be compared is none that is known to be weaker."""
    used, label = percent_of(use, facts), percent_of(replace(use, mix=label_mix), facts)
    if used is None or label is None:
        used, label = _share(use.mix, use.colon), _share(label_mix, use.colon)
    return used is not None and label is not None and used < label


def label_text(minutes: Fraction) -> str:
    """Minutes as a label prints them: "10", "7.5"."""
    return f"{float(minutes):g}"


def _limits(use: Use, stock: Stock, facts: Facts) -> tuple[Why, ...]:
    """Why the label's minutes alone don't settle it."""
    limits: list[Why] = []
    if stock.label_mix is not None and not at_least(use, stock.label_mix, facts):
        limits.append("weaker than label")
    if stock.label_claim == "sanitise":
        limits.append("label only sanitises")
    if use.organism is not None and use.organism not in stock.label_organisms:
        limits.append("not on label")
    if use.group in ("new", "sick"):
        limits.append("new or sick")
    return tuple(limits)


def _beyond_label(limits: tuple[Why, ...]) -> bool:
    """The label can't vouch that this use disinfects at all."""
    return "weaker than label" in limits or "label only sanitises" in limits


# ---------------------------------------------------------------- published


@dataclass(frozen=True, slots=True)
class _Studied:
    """What the studies of this agent on the named organism come to, at this mix."""

    verdict: OrganismVerdict | None = None
    figure: Efficacy | None = None
    """The row that sets a time."""
    why: tuple[Why, ...] = ()
    rows: tuple[Efficacy, ...] = ()

    @property
    def sources(self) -> tuple[Source, ...]:
        return tuple(row.fact.cited() for row in self.rows)


def _published(
    agent: Agent, studied: _Studied, facts: Facts
) -> tuple[Fraction | None, tuple[Source, ...], tuple[Why, ...]]:
    """The longer of the agent's default and the named organism's figure, with sources and reasons."""
    figure = studied.figure.minutes if studied.figure is not None else None
    if agent.hold is None:
        return figure, studied.sources, (*(("organism",) if figure is not None else ()), *studied.why)
    default = facts[agent.hold]
    minutes = default.exact()
    sources = (default.cited(), *studied.sources)
    if figure is not None and figure > minutes:
        return figure, sources, ("organism", *studied.why)
    return minutes, sources, ("default", *studied.why)


def _studied(use: Use, facts: Facts) -> _Studied:
    if use.organism is None:
        return _Studied()
    rows = facts.efficacy(use.agent.id, use.organism)
    percent = percent_of(use, facts)
    works = [row for row in rows if row.outcome == "works"]
    reached = [row for row in works if _reached(row, percent)]
    against = [row for row in rows if row.outcome != "works" and _at_least_as_strong(row, percent)]
    figure = _figure(reached)
    if reached and against:
        return _Studied("unknown", figure, ("studies disagree",), rows)
    if reached:
        return _Studied("works", figure, (), rows)
    if any(row.outcome == "fails" for row in (rows if not works else against)):
        return _Studied("fails", None, (), rows)
    return _Studied("unknown", None, ("too weak for study",) if works else (), rows)


def _reached(row: Efficacy, percent: Fraction | None) -> bool:
    return row.percent is not None and percent is not None and percent >= row.percent


def _at_least_as_strong(row: Efficacy, percent: Fraction | None) -> bool:
    """The row's mix was at least as strong as this one; a strength that isn't known doesn't speak against."""
    return row.percent is not None and percent is not None and row.percent >= percent


def _figure(reached: list[Efficacy]) -> Efficacy | None:
    """Of each study the row nearest below this mix (a stronger mix works sooner), and of the studies the longest."""
    nearest: dict[str, Efficacy] = {}
    for row in reached:
        if row.minutes is None:
            continue
        known = nearest.get(row.fact.source)
        if known is None or (row.percent or 0, row.minutes) > (known.percent or 0, known.minutes or 0):
            nearest[row.fact.source] = row
    return max(nearest.values(), key=lambda row: row.minutes or 0, default=None)


# ---------------------------------------------------------------- strengths


def percent_of(use: Use, facts: Facts) -> Fraction | None:
    """Strength of a mix in percent, in its stock's own terms; None: it can't be known.

    Source: arithmetic; ppm by the public-health convention for bleach (mixing-chlorine-convention).
    """
    if isinstance(use.mix, Percent):
        return use.mix.percent
    if isinstance(use.mix, Ppm):
        return use.mix.ppm / facts["mixing-chlorine-convention"].exact()
    share = _share(use.mix, use.colon)
    if share is None or use.stock is None or use.stock.strength is None:
        return None
    return use.stock.strength.amount * share


def at_least(use: Use, label_mix: Mix, facts: Facts) -> bool:
    """Whether the mix used is at least as strong as the label's; one that can't be compared counts as weaker."""
    used, label = percent_of(use, facts), percent_of(replace(use, mix=label_mix), facts)
    if used is None or label is None:
        used, label = _share(use.mix, use.colon), _share(label_mix, use.colon)
    return used is not None and label is not None and used >= label


def _share(mix: Mix | None, colon: Literal["in", "to"] | None) -> Fraction | None:
    """Part of the mix that is the stock, for a ratio or an undiluted one; None: by this alone it can't be known."""
    if isinstance(mix, Neat):
        return Fraction(1)
    if not isinstance(mix, SaidRatio):
        return None
    try:
        ratio = read(mix, colon or SHIPPED)
    except OutOfRange:
        return None
    return ratio.share if isinstance(ratio, Ratio) else None
