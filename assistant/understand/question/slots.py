"""What a text names, as slots: mentions and amounts put to the question that was asked.

A name that could be several things is narrowed by the question (a dose is for a bottle, a round is an enclosure's) and
by what is open; what is left over becomes a choice, and is asked.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from typing import Any

from assistant.contract import Choice, SaidTime, Slots, Unknown, World
from assistant.core.quantities.amounts import Amount, Percent, SaidRatio
from assistant.core.round.rounds import is_open
from assistant.understand.air.room_air import with_room_air
from assistant.understand.air.windows_told import stood_so_since
from assistant.understand.asked import Asked
from assistant.understand.bottles import fills
from assistant.understand.bottles.label_says import minutes_by_label
from assistant.understand.bottles.mixes_kept import kept_mixed
from assistant.understand.bottles.plainly_filled import beside_it
from assistant.understand.harm.alarms import neutralises
from assistant.understand.named.added import adds_in
from assistant.understand.named.by_colour import products_by_colour
from assistant.understand.named.by_kind import called_by_its_kind, of_the_one_open
from assistant.understand.named.choosing_words import CHOOSING, job_in, methods_in, near_water, of_facts
from assistant.understand.named.chores_apart import chores_apart, chores_beside, fills_beside, on_two_days
from assistant.understand.named.chores_said import PLANNING, chores_in, every_one
from assistant.understand.named.drains import drains_in, wish_in
from assistant.understand.named.from_to import taken_in
from assistant.understand.named.good_news import of_illness, one_is_well, without_the_old
from assistant.understand.named.groups_said import groups_marked, groups_named, homes_of, racks_in
from assistant.understand.named.illness_told import restart_in, speaks_of_a_test
from assistant.understand.named.items_said import begun_in, cracked_in, items_in, still_wet_in, ways_in
from assistant.understand.named.left_out import left_out, without_the_left_out
from assistant.understand.named.names import Mention, Thing
from assistant.understand.named.not_this_time import not_this_time
from assistant.understand.named.settings_said import setting_in
from assistant.understand.named.surfaces_said import inside_said, soaks
from assistant.understand.named.tubs_said import shut_in, tub_told, tubs_in
from assistant.understand.named.unknown_germs import unknown_germ
from assistant.understand.named.unknown_names import ROUND, unknown_names
from assistant.understand.numbers.dose_again import for_several
from assistant.understand.numbers.left_said import left_in_it
from assistant.understand.numbers.per_area import per_area
from assistant.understand.numbers.poured import roles_of, share_left, share_wanted, strokes_in, uses_up
from assistant.understand.numbers.scaled import at_another_strength
from assistant.understand.numbers.scoops_said import without_the_tool
from assistant.understand.numbers.strengths import bare_numbers, faults_in, mixes_in
from assistant.understand.numbers.thinning import thinning
from assistant.understand.numbers.wanted_unit import to_be_converted, wanted_unit
from assistant.understand.parsing import Parsed, is_a_mix
from assistant.understand.question.round_slots import is_of_every_one, with_the_round
from assistant.understand.steps.touched import touched_in
from assistant.understand.steps.washing_up import without_the_washing_up
from assistant.understand.text.patterns import Pattern
from assistant.understand.times.moments import age_since, moment
from assistant.understand.times.months import month_in
from assistant.understand.times.said_times import SaidWhen, when_in

_OF_THE_STOCK = frozenset({"mix_strength", "bleach_now"})
_OF_AN_AGE = frozenset({"bleach_now", "dose"})
_WHOLE_ROUND = Pattern(r"\btoday\b|\b(?:whole|full|entire) (?:round|lot|day)\b|\bthe (?:round|lot)\b|\beverything\b")
_BOTH = Pattern(r"\bboth\b(?! windows| doors| bottles)", "both")
MIXED_WITH_A_TOOL = frozenset({"dose", "mix_strength", "top_up", "mixed"})
"""Questions where the size of a cap or a syringe is no amount of what is mixed."""
_BOTTLE_FIRST = ("bottle", "stock", "agent", "measure", "enclosure", "animal", "organism")
_HOME_FIRST = ("enclosure", "animal", "bottle", "stock", "agent", "organism", "measure")
_FIELD = {
    "bottle": "bottles",
    "stock": "stocks",
    "enclosure": "enclosures",
    "animal": "enclosures",
    "measure": "measures",
    "agent": "agents",
    "organism": "organisms",
}


def slots_of(parsed: Parsed, asked: Asked) -> Slots:
    """Everything that a text names, by kind, for that question."""
    names = _named(parsed, asked)
    mixes, strength = mixes_in(parsed)
    found = parsed.amounts.found

    def of(kind: str) -> tuple[Any, ...]:
        return tuple(one.value for one in found if one.kind == kind)

    roles = roles_of(parsed)
    slots = Slots(
        volumes=of("volume"),
        roles=roles,
        lengths=of("length"),
        uses_up=uses_up(parsed, roles),
        share_left=share_left(parsed),
        share_wanted=share_wanted(parsed) if asked.intent in ("dose", "mixed") else None,
        strokes=strokes_in(parsed),
        durations=of("duration"),
        temperatures=of("temperature"),
        mixes=mixes,
        numbers=bare_numbers(found, parsed),
        stock_strength=strength,
        faulty=faults_in(parsed, mixed=asked.intent in MIXED_WITH_A_TOOL),
        **names,
    )
    if asked.intent in MIXED_WITH_A_TOOL:
        slots = without_the_tool(slots, parsed)
    if slots.share_wanted is not None:  # "a quarter of the yellow one" is no ratio
        slots = replace(slots, numbers=tuple(number for number in slots.numbers if number != slots.share_wanted))
    if asked.intent == "mix_strength":
        slots = _unfolded(slots)
    month = month_in(parsed.tokens)
    if month is not None and month[0] in slots.numbers:  # "made in march 2025": no degrees
        slots = replace(slots, numbers=tuple(number for number in slots.numbers if number != month[0]))
    if asked.intent == "bleach_now" and len(slots.numbers) == 1 and not slots.temperatures:
        degrees = Amount(slots.numbers[0], "degC")  # "three months at 30"; the reply says it back
        slots = replace(slots, temperatures=(degrees,), numbers=())
    if asked.intent in _OF_AN_AGE and not slots.durations and month is None and parsed.when is not None:
        slots = replace(slots, durations=age_since(parsed.when, asked.world.now))  # "bought six months ago"
    if asked.intent == "dose":
        slots = for_several(slots, parsed, asked.world)
        slots = at_another_strength(slots, parsed.plain, asked.world)
        slots = replace(slots, setting=thinning(parsed))
    if asked.intent == "top_up":
        slots = left_in_it(slots, parsed, asked.world)
    if asked.intent == "convert":
        slots = to_be_converted(slots, parsed, asked.world.household.habits.gallon or "US")
    if asked.intent in _OF_THE_STOCK:
        slots = _percent_as_stock(slots)
    slots = _with_the_rest(slots, parsed, asked)
    if asked.intent == "start":
        slots = replace(slots, setting=minutes_by_label(parsed))
    if asked.intent == "still_good":
        slots = replace(slots, setting=kept_mixed(parsed))
    if asked.intent in ("make_up", "dry_time"):
        slots = replace(slots, setting=per_area(parsed))
    if asked.intent == "make_up":
        slots = _homes_to_spray(slots, parsed.plain, asked.world)
    if asked.intent in ("read_ratio", "convert") and slots.to_unit in ("%", "ppm") and len(slots.mixes) > 1:
        slots = _percent_as_stock(slots)  # "1 to 32 in percent, for 6 percent bleach"
    return with_room_air(_but_for(slots, parsed, asked), parsed, asked.intent)


def _homes_to_spray(slots: Slots, plain: str, world: World) -> Slots:
    """ "Today's round" is every one; "both" are the two in work, else the two just spoken of, never any two."""
    if _WHOLE_ROUND.search(plain):
        return replace(slots, every_enclosure=True)
    if _BOTH.search(plain) is None or slots.enclosures:
        return slots
    in_work = tuple(name for name, round_ in world.state.rounds.items() if is_open(round_))
    before = world.talk.last.values.get("enclosures", ()) if world.talk.last is not None else ()
    both = in_work if len(in_work) == 2 else tuple(before)
    return replace(slots, enclosures=both if len(both) == 2 else (), every_enclosure=False)


def _but_for(slots: Slots, parsed: Parsed, asked: Asked) -> Slots:
    """ "Everyone except pepper" is everyone else; a step that not all have done is none, so `done` is left alone."""
    start = left_out(parsed) if asked.intent in (*PLANNING, "start", "make_up") else None
    if start is None:
        return slots
    excepted = tuple(
        names[0]
        for mention in parsed.mentions
        if mention.start >= start
        for kind, names in _meant(mention, _HOME_FIRST, asked)
        if kind == "enclosure" and len(names) == 1
    )
    return without_the_left_out(slots, parsed, excepted, start, asked.world.household)


def _percent_as_stock(slots: Slots) -> Slots:
    """A percentage as the concentrate's own, where none is wanted."""
    percent = next((mix for mix in slots.mixes if isinstance(mix, Percent)), None)
    if percent is None or slots.stock_strength is not None:
        return slots
    mixes = tuple(mix for mix in slots.mixes if mix is not percent)
    return replace(slots, mixes=mixes, stock_strength=Amount(percent.percent, "%"))


def _unfolded(slots: Slots) -> Slots:
    """A recipe ("a cup in a gallon of water") as the two volumes that were poured, where they have been poured."""
    recipe = next((mix for mix in slots.mixes if isinstance(mix, SaidRatio) and mix.part is not None), None)
    if recipe is None or recipe.part is None or recipe.whole is None or slots.volumes:
        return slots
    return replace(
        slots,
        volumes=(recipe.part, recipe.whole),
        roles=("product", "water" if recipe.word == "to" else ""),
        mixes=tuple(mix for mix in slots.mixes if mix is not recipe),
    )


def _with_the_rest(slots: Slots, parsed: Parsed, asked: Asked) -> Slots:
    """What is no amount and no name: which homes are meant, and all that only some questions read."""
    plain = parsed.plain
    slots = _of_its_question(_with_homes(slots, parsed, asked), parsed, asked)
    every = is_of_every_one(plain) and not slots.enclosures
    slots = with_the_round(slots, parsed, asked)
    if asked.intent in PLANNING:
        slots = _with_groups(slots, parsed, asked)
        every = (every or every_one(plain)) and not slots.groups and not slots.enclosures
    slots = _with_what_else_was_done(slots, parsed, asked)
    if asked.intent in CHOOSING:
        slots = _for_choosing(slots, parsed, asked)
    return replace(
        slots,
        touched=touched_in(parsed, asked.world.household) if asked.intent not in ("done", "rewet") else (),
        every_enclosure=every or slots.every_enclosure,
        to_unit=wanted_unit(parsed, asked.world.household.habits.gallon or "US"),
        inside=inside_said(plain),
        soaks=soaks(plain),
        month=month_in(parsed.tokens),
        when=_when(parsed, asked) if slots.openings is None else stood_so_since(parsed, slots.openings, asked.world),
        unknown=(*slots.unknown, *unknown_names(parsed, asked.intent, slots), *_germ_unheard_of(parsed, asked, slots)),
    )


def _with_homes(slots: Slots, parsed: Parsed, asked: Asked) -> Slots:
    """ "The tank", "the snake", "all the healthy ones": enclosures that aren't called by their names."""
    if asked.intent in ROUND - {"start"} and not slots.enclosures and not slots.choices:
        slots = replace(slots, enclosures=called_by_its_kind(parsed.plain, asked.world))
    elif asked.intent in ROUND - {"start"}:
        slots = replace(slots, enclosures=of_the_one_open(parsed, slots.enclosures, asked.world))
    if asked.intent == "start" and len(slots.enclosures) > 1:
        other = not_this_time(parsed)
        slots = replace(slots, enclosures=tuple(name for name in slots.enclosures if name not in other))
    if asked.intent in MANY_AT_ONCE and not slots.enclosures:
        slots = replace(slots, enclosures=homes_of(parsed.plain, asked.world.household))
    return slots


def _of_its_question(slots: Slots, parsed: Parsed, asked: Asked) -> Slots:
    """What a question has of its own."""
    plain, household = parsed.plain, asked.world.household
    if asked.intent in OF_ITEMS:
        return _with_items(slots, parsed, asked)
    if asked.intent in ("rewet", "status", "dried_early"):
        return without_the_washing_up(slots, parsed, household, asked.world.facts.agents)
    if asked.intent in ("done", "tub"):
        slots = without_the_washing_up(slots, parsed, household, asked.world.facts.agents)
        return replace(slots, tubs=tubs_in(plain), cleaned=tub_told(plain), shut_in=shut_in(plain))
    if asked.intent == "outbreak":
        groups = groups_marked(plain)
        slots = replace(slots, groups=groups, of_illness=of_illness(plain), tested=speaks_of_a_test(plain))
        slots = replace(slots, enclosures=()) if one_is_well(plain) else slots
        return without_the_old(slots, parsed, household)
    if asked.intent == "add":
        return replace(slots, adds=adds_in(plain), unknown=(), faulty=(), choices=())
    if asked.intent == "quarantine":
        return without_the_old(replace(slots, restart=restart_in(plain)), parsed, household)
    if asked.intent == "spill":
        return replace(slots, wish="neutralising" if neutralises(plain) else None)
    if asked.intent == "pour_away":
        return replace(slots, drains=drains_in(plain))
    if asked.intent == "units":
        return replace(slots, setting=setting_in(plain))
    return replace(slots, wish=wish_in(plain)) if asked.intent == "unknown_bottle" else slots


def _with_groups(slots: Slots, parsed: Parsed, asked: Asked) -> Slots:
    """Chores, and the groups and racks they are of."""
    racks = racks_in(parsed.text, asked.world.household)
    slots = replace(slots, enclosures=()) if racks else slots  # "the east rack" is no tank
    groups = groups_named(parsed.plain) if asked.intent != "quarantine" else ()
    if asked.intent == "order" and len(groups) > 1:
        slots = replace(slots, enclosures=())  # "the sick one or the new one" is asked of both
    groups = groups if not slots.enclosures else ()
    return replace(slots, chores=chores_in(parsed.plain), groups=groups, racks=racks)


def _bottle_by_colour(parsed: Parsed, asked: Asked) -> tuple[str, ...]:
    """ "Mixed another pink": of a fill a colour alone is the bottle's."""
    _, things = products_by_colour(parsed, asked.world.household)
    names = tuple(dict.fromkeys(thing.name for thing in things if thing.kind == "bottle" and thing.name))
    return names if len(names) == 1 else ()


def _with_what_else_was_done(slots: Slots, parsed: Parsed, asked: Asked) -> Slots:
    """Of a fill or a chore told: how the bottle was filled, and what was done in the same breath."""
    plain = parsed.plain
    if asked.intent == "mixed":
        slots = replace(
            slots,
            bottles=slots.bottles or _bottle_by_colour(parsed, asked),
            topped_up=fills.topped_up(plain),
            rinsed_first=fills.rinsed_first(plain),
            plain_water=fills.plain_water(plain, bool(slots.agents or slots.stocks)),
            some_time_ago=fills.some_time_ago(plain),
            beside=beside_it(parsed.marked),
        )
    if asked.intent in ("mixed", "rinsed_out"):
        slots = replace(slots, chores=chores_beside(plain))
    if asked.intent == "log_clean":
        slots = replace(slots, bottles=slots.bottles if fills_beside(plain) else (), some_time_ago=on_two_days(plain))
        told_apart = chores_apart(plain, homes_in(parsed, asked), asked.world.household)
        slots = replace(slots, apart=told_apart or (), chores=slots.chores if told_apart is not None else ())
    return slots


def _germ_unheard_of(parsed: Parsed, asked: Asked, slots: Slots) -> tuple[Unknown, ...]:
    germ = unknown_germ(parsed, asked.intent, slots)
    return (germ,) if germ is not None else ()


def _for_choosing(slots: Slots, parsed: Parsed, asked: Asked) -> Slots:
    """What only the questions of choosing read: materials, ways without a product, dirt, the job."""
    facts = asked.world.facts
    residues = of_facts(parsed.plain, facts.residues)
    agents = tuple(a for a in slots.agents if a != "detergent" or "soap residue" not in residues)  # "soap" is in it
    return replace(
        slots,
        agents=agents,
        materials=of_facts(parsed.plain, facts.materials),
        methods=methods_in(parsed.plain, facts.methods),
        residues=residues,
        job=job_in(parsed.plain),
        near_water=near_water(parsed.plain),
    )


def _when(parsed: Parsed, asked: Asked) -> SaidTime | None:
    """When it was; "at four" by itself counts only for a question that is told of times."""
    said: SaidWhen | None = parsed.when
    if asked.intent == "mixed" and fills.for_later(parsed.plain):
        return None
    question = asked.world.questions.get(asked.intent or "")
    if said is None and question is not None and any("{when}" in text for text in question.phrasings):
        said = when_in(parsed.tokens, bare=True)
        if said is not None and is_a_mix(parsed.tokens, said, parsed.mentions):
            said = None
    return moment(said, asked.world.now) if said is not None else None


MANY_AT_ONCE = frozenset({"start", "done", "next", "status", "return_check", "make_up", "tub", "time_left"})
"""Questions that may be about a whole rack or group."""

OF_ITEMS = frozenset({"treat_item", "share_tool"})
"""Questions about bowls, tongs, branches and cloths."""


def _with_items(slots: Slots, parsed: Parsed, asked: Asked) -> Slots:
    plain = parsed.plain
    return replace(
        slots,
        items=items_in(plain, asked.world.facts),
        ways=ways_in(plain),
        begun=begun_in(plain),
        cracked=cracked_in(plain),
        still_wet=still_wet_in(plain),
        taken=taken_in(plain, homes_in(parsed, asked)) if asked.intent == "share_tool" else None,
    )


def homes_in(parsed: Parsed, asked: Asked) -> tuple[str, ...]:
    """The enclosures that a text names, in the order said; empty for one that may be several."""
    homes = []
    for mention in parsed.mentions:
        for kind, names in _meant(mention, _HOME_FIRST, asked):
            if kind == "enclosure":
                homes.append(names[0] if len(names) == 1 else "")
    return tuple(homes)


# ---------------------------------------------------------------- names


def _named(parsed: Parsed, asked: Asked) -> dict[str, Any]:
    order = _HOME_FIRST if asked.intent in ROUND else _BOTTLE_FIRST
    fields: dict[str, list[str]] = {field: [] for field in _FIELD.values()}
    choices: list[Choice] = []
    for mention in parsed.mentions:
        for kind, names in _meant(mention, order, asked):
            if len(names) == 1:
                fields[_FIELD[kind]].append(names[0])
            elif names and asked.intent not in ("splash", "wound"):
                choices.append(Choice("enclosure" if kind == "animal" else kind, mention.said, names))
    result: dict[str, Any] = {field: tuple(dict.fromkeys(names)) for field, names in fields.items()}
    # "Start the desert box, gecko out": of the one that is named, though another has one too.
    result["choices"] = tuple(
        choice
        for choice in choices
        if choice.kind != "enclosure" or set(choice.candidates).isdisjoint(fields["enclosures"])
    )
    return result


def _meant(mention: Mention, order: Sequence[str], asked: Asked) -> list[tuple[str, tuple[str, ...]]]:
    """The things that a mention stands for, by kind; several names of one kind are a choice."""
    kinds = [kind for kind in order if any(thing.kind == kind for thing in mention.things)]
    first = kinds[0]
    if first in ("enclosure", "animal"):
        homes = _of(mention.things, ("enclosure", "animal"))
        return [("enclosure", _narrowed(homes, asked))]
    meant = [(first, _of(mention.things, (first,)))]
    if first == "bottle" and len(meant[0][1]) > 1 and asked.intent == "together":
        meant = []  # which of the bottles doesn't matter: the agent in them is named
    # A stock's own name names its agent as well, and "the bleach bottle" names both.
    agents = _of(mention.things, ("agent",))
    stocks = _of(mention.things, ("stock",))
    household = asked.world.household
    if not agents:
        agents = tuple(stock.agent for name in stocks if (stock := household.stock(name)) is not None)
    if asked.intent == "together" and (once := _said_once(meant, agents, first, asked.world)) is not None:
        return once
    if first == "bottle" and (agents or stocks) and not all(thing.kind == "bottle" for thing in mention.things):
        return [*meant, *([("agent", agents)] if len(set(agents)) == 1 and _said_agent(mention) else [])]
    if first == "stock" and len(stocks) == 1:
        return [*meant, ("agent", agents)]
    if first == "stock" and agents:
        return [("agent", tuple(dict.fromkeys(agents)))]
    return meant


_Meant = list[tuple[str, tuple[str, ...]]]


def _said_once(meant: _Meant, agents: tuple[str, ...], first: str, world: World) -> _Meant | None:
    """One mention of one product, for whether two may meet: "bleach" is no two, though it is a stock and an agent.

    None: the mention isn't of that kind, or the bottle holds something else than its name says.
    """
    if first == "stock" and len(set(agents)) == 1:
        return [("agent", agents)]
    if first != "bottle" or not meant or len(meant[0][1]) != 1 or len(set(agents)) != 1:
        return None
    bottle = world.household.bottle(meant[0][1][0])
    stock = world.household.stock(bottle.stock) if bottle is not None else None
    holds = world.state.bottles.get(meant[0][1][0])
    held = set(holds.held) if holds is not None else {stock.agent} if stock is not None else set()
    return meant if held == set(agents) else None


def _said_agent(mention: Mention) -> bool:
    return any(thing.kind == "agent" for thing in mention.things)


def _of(things: Sequence[Thing], kinds: Sequence[str]) -> tuple[str, ...]:
    return tuple(dict.fromkeys(thing.name for thing in things if thing.kind in kinds))


def _narrowed(homes: tuple[str, ...], asked: Asked) -> tuple[str, ...]:
    """Of several homes the one whose round is open, where a round is asked about."""
    if len(homes) < 2 or asked.intent not in ROUND or asked.intent == "start":
        return homes
    rounds = asked.world.state.rounds
    in_work = tuple(home for home in homes if is_open(rounds.get(home)))
    if len(in_work) > 1 and asked.intent == "done" and "move out" in asked.claims.done:
        in_work = tuple(home for home in in_work if "move out" not in rounds[home].done)  # the other is out already
    return in_work if len(in_work) == 1 else homes
