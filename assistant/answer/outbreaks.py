"""A positive test, a mite, a sick animal: shut it off, cleaned last, the vet; and its group changed on "yes"."""

from __future__ import annotations

from dataclasses import replace
from typing import cast

from assistant.answer.asking import ask
from assistant.answer.does_it_work import works_on
from assistant.answer.named import germ_on_record, germ_there
from assistant.answer.which import open_rounds
from assistant.contract import Answer, Outcome, Pending, Reading, World
from assistant.core.choice.choosing import Need, choose
from assistant.core.household import Enclosure, Group
from assistant.core.record.events import DriedEarly, GroupChanged, QuarantineRestarted
from assistant.core.round.rounds import is_open
from assistant.core.shelf.bottles import all_as_filled

BREATHING = ("serpentovirus", "ferlavirus", "mycoplasma")
OF_ALL = ("outbreak-first", "outbreak-vet-plan", "outbreak-tools", "outbreak-order", "outbreak-no-release")

KINDS = {
    "cryptosporidium": ("crypto", ("outbreak-crypto", "outbreak-crypto-negative")),
    "mites": (
        "mites",
        (
            "outbreak-mites",
            "outbreak-mites-cycle",
            "outbreak-mites-live",
            "outbreak-mites-carry",
            "outbreak-mites-over",
        ),
    ),
}
"""How it is spoken of, and the facts of its own, by organism."""


def outbreak(reading: Reading, world: World) -> Answer:
    """What to do first, what works on it, and whom to ask; "mark her sick" changes the group once "yes" is said."""
    home = _home(reading, world)
    organism = _organism(reading, world)
    slots = reading.slots
    if slots.agents or slots.stocks or slots.bottles:
        about = replace(reading, slots=replace(slots, organisms=(organism,) if organism else ()))
        return _enough(works_on(about, world), home, organism)
    if slots.of_illness == "ends":
        return _over(reading, home, organism, world)
    if slots.of_illness is not None and not (slots.of_illness == "asked" and home is None):
        return _as_it_stands(reading, home, organism, world)
    if slots.groups:
        return _mark(reading, home, cast(Group, slots.groups[0]), organism, world)
    return _first(reading, home, organism, world)


def _as_it_stands(reading: Reading, home: Enclosure | None, organism: str | None, world: World) -> Answer:
    """Good news, "don't mark her sick", or what is on record: nothing is shut off by it, and nothing marked sick."""
    good = reading.slots.of_illness == "none"
    sick = home is not None and home.group == "sick"
    lasting = good and organism == "cryptosporidium"
    if good and home is not None and sick and not lasting:
        return _mark(reading, home, "healthy", organism, world)
    fact = world.facts["outbreak-crypto-negative"]
    return Answer(
        reading.intent,
        Outcome.ANSWER,
        "outbreaks.as_it_stands",
        details={
            "home": home,
            "good": good,
            "unmarked": reading.slots.of_illness == "unmarked",
            "fact": fact if lasting else None,
        },
        values={**_values(home, organism, ()), "isolate": sick, "order": "last" if sick else None},
        cautions=("caution-vet",),
        sources=(fact.cited(),) if lasting else (),
    )


def _over(reading: Reading, home: Enclosure | None, organism: str | None, world: World) -> Answer:
    """When it counts as over: mites by a rule of practice, all else by the vet's tests."""
    organism = organism or germ_on_record(world)
    fact = world.facts["outbreak-mites-over" if organism == "mites" else "outbreak-vet-plan"]
    return Answer(
        reading.intent,
        Outcome.ANSWER,
        "outbreaks.over",
        details={"fact": fact, "mites": organism == "mites"},
        values=_values(home, organism, ()),
        cautions=("caution-vet",),
        sources=(fact.cited(),),
    )


def _home(reading: Reading, world: World) -> Enclosure | None:
    """The one named; else the one spoken of just before, or the only one being cleaned. It is named in the reply."""
    names = list(reading.slots.enclosures)
    before = world.talk.last_reading
    if not names and before is not None and before.intent == "outbreak":
        names += before.slots.enclosures
    asked = world.waiting
    if not names and asked is not None and asked.reading.intent == "outbreak":
        names += asked.reading.slots.enclosures  # "mark her sick", asked a turn or two ago whether to
    rounds = open_rounds(world)
    if not names and len(rounds) == 1:
        names.append(rounds[0].enclosure)
    return world.household.enclosure(names[0]) if names else None


def _organism(reading: Reading, world: World) -> str | None:
    if reading.slots.organisms:
        return reading.slots.organisms[0]
    before = world.talk.last_reading
    if before is not None and before.intent in ("outbreak", "works_on") and before.slots.organisms:
        return before.slots.organisms[0]
    return None


def _enough(answer: Answer, home: Enclosure | None, organism: str | None) -> Answer:
    """ "She tested positive for crypto, is bleach enough?": whether it works, as an outbreak's answer."""
    values = {**answer.values, "enclosure": home.name if home is not None else None, "organism": organism}
    return replace(answer, intent="outbreak", values=values)


def _first(reading: Reading, home: Enclosure | None, organism: str | None, world: World) -> Answer:
    kind, own = KINDS.get(organism or "", ("breathing" if organism in BREATHING else "any", ()))
    if kind == "breathing":
        own = ("outbreak-breathing", "outbreak-serpentovirus")
    facts = tuple(world.facts[fact] for fact in (*own, *OF_ALL, "outbreak-restart"))
    found = (
        choose(Need("illness", organism), all_as_filled(world.household, world.state), world.facts)
        if organism is not None
        else None
    )
    works = tuple(offer for offer in found.offers if offer.verdict == "works") if found is not None else ()
    sick = home is not None and home.group == "sick"
    answer = Answer(
        reading.intent,
        Outcome.ANSWER,
        "outbreaks.first",
        details={
            "kind": kind,
            "home": home,
            "sick": sick,
            "organism": world.facts.organisms.get(organism) if organism else None,
            "works": tuple(offer.name for offer in works),
            "people": world.household.people,
            "facts": facts,
        },
        values=_values(home, organism, tuple(offer.id for offer in works)),
        cautions=("caution-vet", "caution-hands"),
        sources=tuple(fact.cited() for fact in facts),
        events=_opens_again(reading, home, world),
    )
    if home is None:
        return replace(answer, pending=Pending(reading, world.now, missing=("enclosure",)))
    if sick:
        return replace(answer, events=_germ_noted(home, organism, reading, world))
    marking = replace(reading, slots=replace(reading.slots, enclosures=(home.name,)))
    return replace(answer, pending=Pending(marking, world.now, on_yes=_marked(marking, home, "sick", organism, world)))


def _opens_again(reading: Reading, home: Enclosure | None, world: World) -> tuple[DriedEarly, ...]:
    """A mite seen in what has been sprayed: it isn't clean."""
    round_ = world.state.rounds.get(home.name) if home is not None else None
    seen = reading.slots.too_early and round_ is not None and is_open(round_) and "apply" in round_.done
    return (DriedEarly(round_.enclosure),) if seen and round_ is not None else ()


def _germ_noted(home: Enclosure, organism: str | None, reading: Reading, world: World) -> tuple[GroupChanged, ...]:
    """What a sick one is said to have, kept for what is started there; asked about, or on record already, nothing."""
    if organism is None or reading.asks or organism not in reading.slots.organisms:
        return ()
    if germ_there(home.name, world) == organism:
        return ()
    return (GroupChanged(home.name, "sick", _as_written(home, world), organism),)


def _as_written(home: Enclosure, world: World) -> str:
    """The group that keeping.toml gives it."""
    written = (world.written or world.household).enclosure(home.name)
    return written.group if written is not None else home.group


# ---------------------------------------------------------------- the group


def _mark(reading: Reading, home: Enclosure | None, group: Group, organism: str | None, world: World) -> Answer:
    """Asks before it changes a group."""
    if home is None:
        return ask(reading, world, ("enclosure",), "outbreaks.mark_which", {"group": group})
    values = {"enclosure": home.name, "group": group, "was": home.group}
    if home.group == group:
        return Answer(reading.intent, Outcome.ANSWER, "outbreaks.already", {"home": home, "group": group}, values)
    done = _marked(reading, home, group, organism, world)
    return Answer(
        reading.intent,
        Outcome.CONFIRM,
        "outbreaks.mark",
        details={"home": home, "group": group},
        values=values,
        cautions=("caution-vet",),
        pending=Pending(reading, world.now, on_yes=done),
    )


def _marked(reading: Reading, home: Enclosure, group: Group, organism: str | None, world: World) -> Answer:
    was = _as_written(home, world)
    again = in_quarantine(world, but=home.name) if group == "sick" else ()
    return Answer(
        reading.intent,
        Outcome.ANSWER,
        "outbreaks.marked",
        details={"home": home, "group": group, "again": again},
        values={
            "enclosure": home.name,
            "group": group,
            "was": home.group,
            "quarantine_again": tuple(other.name for other in again),
        },
        sources=(world.facts["outbreak-restart"].cited(),) if again else (),
        events=(
            GroupChanged(home.name, group, was, organism if group == "sick" else None),
            *(QuarantineRestarted(other.name, "test" if reading.slots.tested else "sign") for other in again),
        ),
    )


def _values(home: Enclosure | None, organism: str | None, works: tuple[str, ...]) -> dict[str, object]:
    return {
        "enclosure": home.name if home is not None else None,
        "organism": organism,
        "group": home.group if home is not None else None,
        "isolate": True,
        "order": "last",
        "works": works,
    }


def in_quarantine(world: World, but: str | None = None) -> tuple[Enclosure, ...]:
    """Every enclosure in quarantine, without that one: they share a room, so what starts one again starts all."""
    return tuple(home for home in world.household.enclosures if home.group == "new" and home.name != but)
