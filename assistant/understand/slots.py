"""What a text names, as slots: mentions and amounts put to the question that was asked.

A name that could be several things is narrowed by the question (a dose is for a bottle, a round is an enclosure's) and
by what is open; what is left over becomes a choice, and is asked.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from typing import Any

from assistant.contract import Choice, SaidTime, Slots, Unknown, World
from assistant.core.quantities.amounts import Amount, Percent, SaidRatio
from assistant.core.round.rounds import is_open
from assistant.understand.named.added import adds_in
from assistant.understand.named.by_kind import called_by_its_kind, of_the_one_open
from assistant.understand.named.choosing_words import CHOOSING, job_in, methods_in, near_water, of_facts
from assistant.understand.named.chores_said import PLANNING, chores_in, clean_in, every_one, groups_named, racks_in
from assistant.understand.named.drains import drains_in, wish_in
from assistant.understand.named.items_said import begun_in, cracked_in, items_in, still_wet_in, taken_in, ways_in
from assistant.understand.named.left_out import left_out, without_the_left_out
from assistant.understand.named.names import Mention, Thing
from assistant.understand.named.openings import openings_in
from assistant.understand.named.room_air import with_room_air
from assistant.understand.named.surfaces_said import inside_said, soaks
from assistant.understand.named.unknown_germs import unknown_germ
from assistant.understand.named.unknown_names import ROUND, unknown_names
from assistant.understand.named.waiting import (
    asks_end,
    groups_in,
    homes_of,
    marks_group,
    neutralises,
    restart_in,
    setting_in,
    shut_in,
    speaks_of_a_test,
    tub_cleaned,
    tubs_in,
)
from assistant.understand.numbers.dose_again import for_several
from assistant.understand.numbers.poured import roles_of, share_left, share_wanted, strokes_in, uses_up
from assistant.understand.numbers.scoops_said import without_the_tool
from assistant.understand.numbers.strengths import bare_numbers, mixes_in
from assistant.understand.numbers.wanted_unit import one_of_a_unit, wanted_unit
from assistant.understand.parsing import Parsed, is_a_mix
from assistant.understand.steps import fills
from assistant.understand.steps.apart import steps_apart
from assistant.understand.steps.claimed_steps import Claims
from assistant.understand.steps.told import Told, told_in
from assistant.understand.steps.touched import touched_in
from assistant.understand.steps.washing_up import without_the_washing_up
from assistant.understand.text.patterns import Pattern
from assistant.understand.times.moments import moment
from assistant.understand.times.months import month_in
from assistant.understand.times.said_times import SaidWhen, when_in

_OF_THE_STOCK = frozenset({"mix_strength", "bleach_now"})
_WHOLE_ROUND = Pattern(r"\btoday\b|\b(?:whole|full|entire) (?:round|lot|day)\b|\bthe (?:round|lot)\b|\beverything\b")
_BOTH = Pattern(r"\bboth\b(?! windows| doors| bottles)", "both")
_POURED_TOGETHER = frozenset({"mix_strength"})
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

_EVERY = Pattern(
    r"\b(?:both|all|every|each)(?: of)?(?: the| my| these| those)? (?:them|tubs?|tanks?|boxes|box"
    r"|cages?|vivs?|vivariums?|enclosures?|homes?|of them"
    r"|racks?|two|three|animals?)\b|\b(?:everyone|everybody)\b|\beither(?: one| of them)?$"
    r"|\bboth\b(?! windows| doors| bottles| the windows)|\ball of"
    r" (?:them|em)\b|\ball (?:are|is|done|sprayed|rinsed|dry|washed)\b"
    r"(?=.*\b(?:are|tubs|tanks|boxes)\b)|\beverything is (?:sprayed|rinsed|washed)\b"
)
_CHILLED = Pattern(
    r"\b(?:he|she|it|they|ANIMAL|ENCLOSURE|snake|gecko|lizard|tortoise|turtle|little one)(?: is| are| 's| looks?"
    r"| feels?| seems?| was| getting| all| so| very| really| a bit| too)* (?:cold|chilly|freezing|shivering|chilled)\b"
)
"""The animal, not the heater: "he is cold"."""

_WARMTH = Pattern(r"\b(?:cold|cool|chilly|freezing|warm|hot|temperature|degrees|heat)\b")
"""Of a waiting tub: how warm it may be is asked."""
_COLD = Pattern(
    r"\b(?:heat\w*|heat (?:mat|lamp)|lamps?|mats?|bulbs?)\b.*\b(?:off|cold|cool|unplugged)\b|\b(?:off"
    r"|unplugged) and cold\b"
)
_OVER = Pattern(
    r"\bstart (?:it |this |that |him |her |(?:the |my )?(?:ENCLOSURE|ANIMAL) )?(?:over|again|afresh"
    r"|anew)\b|\bfrom (?:scratch|the beginning|the start|the top)\b|\bbegin again\b|\brestart\b"
)
_ON = Pattern(r"\b(?:go on|carry on|continue|keep going|resume|pick up|go on with it)\b")


@dataclass(frozen=True, slots=True)
class Asked:
    """What the slots are read for."""

    intent: str | None
    claims: Claims
    world: World


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
        faulty=parsed.amounts.faulty,
        **names,
    )
    if asked.intent in MIXED_WITH_A_TOOL:
        slots = without_the_tool(slots, parsed)
    if slots.share_wanted is not None:  # "a quarter of the yellow one" is no ratio
        slots = replace(slots, numbers=tuple(number for number in slots.numbers if number != slots.share_wanted))
    if asked.intent in _POURED_TOGETHER:
        slots = _unfolded(slots)
    month = month_in(parsed.tokens)
    if month is not None and month[0] in slots.numbers:  # "made in march 2025": no degrees
        slots = replace(slots, numbers=tuple(number for number in slots.numbers if number != month[0]))
    if asked.intent == "bleach_now" and len(slots.numbers) == 1 and not slots.temperatures:
        degrees = Amount(slots.numbers[0], "degC")  # "three months at 30"; the reply says it back
        slots = replace(slots, temperatures=(degrees,), numbers=())
    if asked.intent == "dose":
        slots = for_several(slots, parsed, asked.world)
    if asked.intent == "convert" and not found:
        one = one_of_a_unit(parsed, asked.world.household.habits.gallon or "US")
        slots = replace(slots, volumes=(one,), roles=("",)) if one is not None else slots
    if asked.intent in _OF_THE_STOCK:
        slots = _percent_as_stock(slots)
    slots = _with_the_rest(slots, parsed, asked)
    if asked.intent == "make_up":
        slots = _homes_to_spray(slots, parsed.plain, asked.world)
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
    plain, claims = parsed.plain, asked.claims
    if asked.intent in ROUND - {"start"} and not slots.enclosures and not slots.choices:
        slots = replace(slots, enclosures=called_by_its_kind(plain, asked.world))
    elif asked.intent in ROUND - {"start"}:
        slots = replace(slots, enclosures=of_the_one_open(parsed, slots.enclosures, asked.world))
    if asked.intent in MANY_AT_ONCE and not slots.enclosures:
        slots = replace(slots, enclosures=homes_of(plain, asked.world.household))
    if asked.intent in OF_ITEMS:
        slots = _with_items(slots, parsed, asked)
    elif asked.intent in ("rewet", "status", "dried_early"):
        slots = without_the_washing_up(slots, parsed, asked.world.household, asked.world.facts.agents)
    elif asked.intent in ("done", "tub"):
        slots = without_the_washing_up(slots, parsed, asked.world.household, asked.world.facts.agents)
        slots = replace(slots, tubs=tubs_in(plain), cleaned=tub_cleaned(plain), shut_in=shut_in(plain))
    elif asked.intent == "outbreak":
        groups = groups_in(plain) if marks_group(plain) else ()
        slots = replace(slots, groups=groups, asks_end=asks_end(plain), tested=speaks_of_a_test(plain))
    elif asked.intent == "add":
        slots = replace(slots, adds=adds_in(plain), unknown=(), faulty=(), choices=())
    elif asked.intent == "quarantine":
        slots = replace(slots, restart=restart_in(plain))
    elif asked.intent == "spill":
        slots = replace(slots, wish="neutralising" if neutralises(plain) else None)
    elif asked.intent == "pour_away":
        slots = replace(slots, drains=drains_in(plain))
    elif asked.intent == "units":
        slots = replace(slots, setting=setting_in(plain))
    elif asked.intent == "unknown_bottle":
        slots = replace(slots, wish=wish_in(plain))
    every = bool(_EVERY.search(plain)) and not slots.enclosures
    told = told_in(plain)
    smells = asked.intent in ("still_smells", "return_check", "done")
    over = True if _OVER.search(plain) else False if _ON.search(plain) else None
    if asked.intent == "mixed":
        named = bool(slots.agents or slots.stocks)
        slots = replace(
            slots,
            topped_up=fills.topped_up(plain),
            rinsed_first=fills.rinsed_first(plain),
            plain_water=fills.plain_water(plain, named),
            some_time_ago=fills.some_time_ago(plain),
        )
    if asked.intent in PLANNING:
        racks = racks_in(parsed.text, asked.world.household)
        slots = replace(slots, enclosures=()) if racks else slots  # "the east rack" is no tank
        groups = groups_named(plain) if asked.intent != "quarantine" and not slots.enclosures else ()
        slots = replace(slots, chores=chores_in(plain), groups=groups, racks=racks)
        every = (every or every_one(plain)) and not groups and not slots.enclosures
    if asked.intent in CHOOSING:
        slots = _for_choosing(slots, parsed, asked)
    return replace(
        slots,
        steps=_steps(claims, told, asked.intent),
        stayed_wet=_stayed_wet(claims, told, asked.intent),
        too_early=told.too_early and asked.intent == "dried_early",
        part=told.part if asked.intent == "dried_early" else None,
        touched=touched_in(parsed, asked.world.household) if asked.intent not in ("done", "rewet") else (),
        smell=told.smell if smells else None,
        wet=_wet(claims, told) if smells and asked.intent != "done" else None,
        openings=openings_in(plain) if asked.intent == "done" else None,
        apart=steps_apart(parsed) if asked.intent == "done" and len(slots.enclosures) > 1 else (),
        every_enclosure=every or slots.every_enclosure,
        pressed=asked.intent == "return_check" and bool(_PRESSED.search(plain)),
        cold=(asked.intent == "return_check" and bool(_CHILLED.search(plain)))
        or (asked.intent == "tub" and bool(_WARMTH.search(plain))),
        heat_cold=bool(_COLD.search(plain)),
        to_unit=wanted_unit(parsed, asked.world.household.habits.gallon or "US"),
        inside=inside_said(plain),
        soaks=soaks(plain),
        month=month_in(parsed.tokens),
        start_over=over if asked.intent == "start" else None,
        clean_as=clean_in(plain) if asked.intent in ("start", "hold_time") else None,
        when=_when(parsed, asked),
        unknown=(*slots.unknown, *unknown_names(parsed, asked.intent, slots), *_germ_unheard_of(parsed, asked, slots)),
    )


def _germ_unheard_of(parsed: Parsed, asked: Asked, slots: Slots) -> tuple[Unknown, ...]:
    germ = unknown_germ(parsed, asked.intent, slots)
    return (germ,) if germ is not None else ()


_PRESSED = Pattern(r"\b(?:just|please|only) (?:say|tell)\b|\bsay (?:yes|it is)\b|\bsurely\b|\bis not it\b|\bgo on\b")


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


def _steps(claims: Claims, told: Told, intent: str | None) -> tuple[str, ...]:
    if intent == "rewet":
        return ("apply",) if told.wet_kept == "sprayed" else ()
    if intent in ("dried_early", "still_smells", "clean_only", "leave_off"):
        return ()
    if intent == "start":
        return claims.done if claims.polarity == "claimed" else ()  # "start it with bleach, she is out already"
    return claims.done if intent == "done" else claims.mentioned or claims.done


def _stayed_wet(claims: Claims, told: Told, intent: str | None) -> bool | None:
    if intent in ("dried_early", "clean_only"):
        return False if told.dried else None
    return claims.stayed_wet if intent == "done" else None


def _wet(claims: Claims, told: Told) -> bool | None:
    """Wet or not after the rinse; "dry, bit of bleach" tells both."""
    return False if "dry" in claims.done and told.wet is None else told.wet


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
        taken=taken_in(plain, _homes(parsed, asked)) if asked.intent == "share_tool" else None,
    )


def _homes(parsed: Parsed, asked: Asked) -> tuple[str, ...]:
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
    result["choices"] = tuple(choices)
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
    if first == "bottle" and (agents or stocks) and not all(thing.kind == "bottle" for thing in mention.things):
        return [*meant, *([("agent", agents)] if len(set(agents)) == 1 and _said_agent(mention) else [])]
    if first == "stock" and len(stocks) == 1:
        return [*meant, ("agent", agents)]
    if first == "stock" and agents:
        return [("agent", tuple(dict.fromkeys(agents)))]
    return meant


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
