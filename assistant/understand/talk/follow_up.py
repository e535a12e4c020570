"""What a turn means after the one before: a missing slot supplied, a correction, "and for the blue?".

A full new question always beats what was pending; that is decided in `reader`. Here a short answer is joined to the
question that it answers.
"""

from __future__ import annotations

import re
from dataclasses import dataclass, replace
from typing import Any

from assistant.contract import Choice, Pending, Reading, Slots, World
from assistant.core.quantities.amounts import Amount, Percent, Ppm, SaidRatio, Scoops
from assistant.understand.numbers.corrections import (
    instead_of,
    not_that,
    said_values,
    still_doubted,
    which_number,
    with_number,
)
from assistant.understand.numbers.dose_again import (
    fits_its_bottle,
    of_another_product,
    with_its_bottles_mix,
    without_a_bottles_mix,
)
from assistant.understand.numbers.left_said import into_how_much, left_again, what_is_left
from assistant.understand.numbers.poured_again import poured_again
from assistant.understand.numbers.scaled import factor_in, scaled
from assistant.understand.numbers.thinning import thinned_again
from assistant.understand.numbers.wanted_unit import names_two_units
from assistant.understand.parsing import Parsed
from assistant.understand.talk.takes import all_given, asks_only, given_to
from assistant.understand.text.known_words import CONNECTING, ROOM_AIR
from assistant.understand.text.patterns import Pattern

_ANSWER = Pattern(r"^(?:(?:yes|ok|um|er|oh) ?,? ?)*")
_CORRECTS = Pattern(
    r"^(?:no|nope|not|wait|sorry|i said|i meant|i mean|actually|make that|rather)\b"
    r"|\b(?:i said|i meant|i mean|i should say|i should have said|make that|instead|more like)\b"
    r"|^(?:it|that|this) is (?:actually )?\w+ ,? not \w+$"
    r"|\b(?:not|rather than) (?:the )?(?:NUMBER|MIX|VOLUME|DURATION|BOTTLE)$"
)
_SAME = r"^(?:and |ok )*(?:the )?same (?:question |thing |again )?(?:for|with|on)\b"
_ASKS_THE_SAME = Pattern(
    _SAME
    + r"|^(?:and |so |ok )*(?:(?:for|with|on|in) )?(?:the |my )?(?:BOTTLE|STOCK|AGENT|ENCLOSURE|ANIMAL|\w+)(?: too)?"
    r" ?,? (?:(?:is |are |it |that |in )*(?:the )?same)(?: \w+)? ?\?$"
    r"|^(?:and |so |ok )*(?:the |my )?(?:BOTTLE|STOCK|AGENT|ENCLOSURE|ANIMAL)(?: \w+){0,2} ?, (?:the )?same \w+ ?\??$"
    r"|^(?:and |so |ok |but |well )*(?:what about|how about) (?:the |my )?(?:BOTTLE|STOCK|AGENT|ENCLOSURE|ANIMAL"
    r"|ORGANISM)"
    r"(?: one)? ?,? (?:is|are|does|do|would|will|can|could|did) (?:that|it|they|this|those)\b(?: \w+){0,4} ?\??$"
)
_ANOTHER = Pattern(
    r"(?:\btoo|\bas well|\balso)(?: \?)?$"
    r"|^(?:and|what about|how about|also|then|now|or|and what about|and how about)\b"
    rf"|{_SAME}"
)

_GOES_ON = Pattern(
    r"^(?:(?:and|or|then|what about|how about|ok|okay|so|now|but|right|well) ?,? ?)*"
    r"(?:on|for|with|against|in|the|AGENT|STOCK|BOTTLE|ORGANISM|ENCLOSURE)\b"
)

_THE_SIZE = Pattern(r"\bthe NUMBER\b(?! of)")
_WITH = Pattern(r"^(?:(?:and|or|so|what about|how about) )?(?:with|at|if|in)\b")
_ABOUT_THE_AIR = frozenset({"dry_time", "air_time"})
_SUPPLIES: dict[str, tuple[str, ...]] = {
    "enclosure": ("enclosures", "every_enclosure"),
    "animal": ("enclosures", "every_enclosure"),
    "bottle": ("bottles",),
    "stock": ("stocks", "agents"),
    "agent": ("agents", "stocks"),
    "measure": ("measures",),
    "organism": ("organisms",),
    "total": ("volumes", "bottles", "numbers"),
    "volume": ("volumes", "numbers"),
    "amount": ("volumes", "mixes", "numbers", "durations", "stock_strength"),
    "number": ("numbers", "volumes", "mixes"),
    "mix": ("mixes", "numbers", "stock_strength"),
    "ratio": ("mixes", "numbers"),
    "reading": ("mixes",),
    "strength": ("stock_strength", "mixes", "numbers"),
    "stock_strength": ("stock_strength", "mixes", "numbers"),
    "duration": ("durations", "numbers"),
    "minutes": ("durations", "numbers"),
    "step": ("steps",),
    "chore": ("chores",),
    "when": ("when",),
    "start_over": ("start_over",),
    "place": ("place",),
    "concentrate": ("volumes",),
    "water": ("volumes", "bottles", "numbers"),
    "scoops": ("scoops", "volumes"),
    "left": ("volumes", "share_left", "numbers"),
    "unit": ("to_unit",),
    "size": ("lengths", "volumes"),
    "age": ("durations", "month", "when"),
    "item": ("items",),
    "setting": ("setting",),
    "adds": ("adds",),
    "material": ("materials",),
    "job": ("job", "materials", "organisms", "enclosures"),
    "temperature": ("temperatures", "numbers"),
}
"""What each kind of missing slot is answered by."""


@dataclass(frozen=True, slots=True)
class Answering:
    """A short turn with everything that its words name."""

    parsed: Parsed
    slots: Slots
    spoken: bool


_WITH_THE = Pattern(r"(?:and |what about |how about |or )*(?:with|from|using) (?:the )?NUMBER(?: one)?$")
_HEDGES = frozenset({"suppose", "guess", "think", "reckon", "probably", "maybe", "perhaps", "believe", "about"})
"""Words that make an answer no other question: "one to thirty-two, I suppose"."""
CLAIMED = ("log_clean", "mixed", "rinsed_out")
_LEFT_UNDONE = Pattern(
    r"^(?:i |we |oh |but |and |have |just )*(?:forgot|forgotten|missed|skipped|left out|not|did not do|did not)\b"
)


def is_short(parsed: Parsed, before: str | None = None) -> bool:
    """True when a text says little beyond names and amounts, so that it can be an answer.

    before: the question that it may go on from, whose own small words count for nothing.
    """
    idle = CONNECTING | _HEDGES | (ROOM_AIR if before in _ABOUT_THE_AIR else frozenset())
    rest = [word for word in parsed.words if word[0] != "{" and word not in idle]
    return len(rest) <= 1 and len(parsed.words) <= 9


def supplied(answering: Answering, pending: Pending, world: World | None = None) -> Reading | None:
    """The pending question with what was missing; None: the turn supplies none of it.

    world: with it, a volume asked for leaves a dose the mix of the bottle that was named.
    """
    if pending.reading.intent in CLAIMED and _LEFT_UNDONE.match(answering.parsed.plain):
        return None  # "forgot the hospital one" names one that wasn't done
    fields = [field for kind in pending.missing for field in _SUPPLIES.get(kind, (kind + "s",))]
    given = _given(answering.slots)
    if "start_over" in fields and _TELLS_A_STEP.search(answering.parsed.plain):
        return None  # "sprayed bleach on basil's" is a claim, and no "go on"
    if "start_over" in fields and (over := _over(answering.parsed.plain)) is not None:
        return _joined(pending.reading, answering, replace(pending.reading.slots, start_over=over))
    if "step" in pending.missing and "steps" in given:
        return _joined(pending.reading, answering, replace(pending.reading.slots, steps=given["steps"]))
    if "reading" in pending.missing and (word := _ratio_word(answering.parsed.plain)):
        mixes = tuple(replace(m, word=word) if isinstance(m, SaidRatio) else m for m in pending.reading.slots.mixes)
        return _joined(pending.reading, answering, replace(pending.reading.slots, mixes=mixes))
    troubled = answering.slots.choices or answering.slots.faulty or answering.slots.unknown
    if not troubled and not any(field in given for field in fields):
        return None
    if "mix" in pending.missing and not troubled and set(given) == {"numbers"}:
        which = which_number(pending.reading, answering.slots.numbers)
        if which is not None:
            return _joined(pending.reading, answering, which)
    if {"strength", "stock_strength"} & set(pending.missing) and "mixes" in given:
        given = _as_stock_strength(given)
    if "scoops" in pending.missing and len(given.get("volumes", ())) == 1 and pending.reading.slots.scoops is not None:
        given = {"scoops": replace(pending.reading.slots.scoops, holds=given["volumes"][0])}
    if pending.reading.intent == "together" and "agents" in given:
        given = {**given, "agents": (*pending.reading.slots.agents, *given["agents"])}  # the other one of two
    base = pending.reading
    if (
        base.slots.faulty
        and base.slots.volumes
        and base.intent == "mix_strength"
        and len(given.get("volumes", ())) == 1
    ):
        roles = base.slots.roles or ("",) * len(base.slots.volumes)
        given = {**given, "volumes": (*given["volumes"], *base.slots.volumes), "roles": ("product", *roles)}
    if world is not None:
        if fits_its_bottle(base, given, world):
            given = {**given, "bottles": base.slots.bottles}
        base = with_its_bottles_mix(base, given, world)
        given = what_is_left(base, given, pending.missing, answering.parsed, world)
        given = into_how_much(base, given, pending.missing)
    slots = _merged(base.slots, given, answering.slots)
    if pending.reading.intent == "mixed" and "volumes" not in given:
        slots = replace(slots, volumes=pending.reading.slots.volumes)  # into whichever bottle, that much went in
    return _joined(pending.reading, answering, slots)


def corrected(answering: Answering, before: Reading, world: World) -> Reading | None:
    """The reading before, with the slot that "no, fifty" or "no, the copper one" puts right; None: it names nothing."""
    slots = answering.slots
    if before.slots.met:
        return None  # that two agents met is no question to ask again
    if before.intent == "convert" and names_two_units(answering.parsed, world.household.habits.gallon or "US"):
        return None  # a question of its own, though its amount may not be understood
    meant = not_that(answering.parsed, slots)
    if meant is not None:
        if meant.number is not None and len(meant.slots.numbers) == 1:
            put_right = instead_of(before, meant.number, meant.slots.numbers[0])
            return _joined(before, answering, put_right) if put_right is not None else None
        slots = meant.slots
    if before.intent == "works_on" and _on_what_nobody_knows(answering.parsed.plain, slots):
        return None  # "and chlorhexidine on parvo": not the germ asked of before
    question = world.questions.get(before.intent or "")
    given = given_to(question, slots) if question is not None else _given(slots)
    factor = factor_in(answering.parsed.plain, said_values(answering.parsed))
    if factor is not None:  # arithmetic on the last answer, not a number to put in
        again = scaled(factor, before, world)
        return _joined(before, answering, again) if again is not None else None
    if "NUMBER" in answering.parsed.plain and re.search(r"\bof (?:that|it)$", answering.parsed.plain):
        return None
    left = left_again(before, slots, answering.parsed, world)
    if left is not None:
        return _joined(before, answering, left)
    if before.intent == "mix_strength" and not before.doubts:
        poured = poured_again(before.slots, slots, answering.parsed.plain)
        if poured is not None:
            return _joined(before, answering, poured)
    by_volume = bool(before.slots.volumes) and not before.slots.bottles  # "no, the five hundred" is a volume again
    bottle = () if by_volume else _bottle_of_size(answering.parsed, slots, world)
    if bottle:
        given = {"bottles": bottle} if len(bottle) == 1 else {}
        choice = Choice("bottle", answering.parsed.text, bottle)
        slots = replace(slots, choices=() if len(bottle) == 1 else (choice,), numbers=(), volumes=())
    elif by_volume and _THE_SIZE.search(answering.parsed.plain) and slots.numbers and not slots.volumes:
        said = replace(before.slots.volumes[0], amount=slots.numbers[0])
        return _joined(before, answering, replace(before.slots, volumes=(said,)))
    elif "numbers" in given and len(given) == 1:
        if _WITH_THE.match(answering.parsed.plain):
            return None  # "and with the 6": six percent, or the sixth of something; no six mils
        return _joined(before, answering, with_number(before, slots.numbers[-1]))
    before, fits = with_its_bottles_mix(before, given, world), fits_its_bottle(before, given, world)
    if fits:
        given = {**given, "bottles": before.slots.bottles}
    if {"bottles", "stocks", "agents"} & given.keys() and "mixes" not in given and not fits:
        before = without_a_bottles_mix(_without_its_ppm(before, given, world), world)
    if not given and not slots.choices and not slots.unknown and not slots.faulty:
        return None
    if asks_for_another(answering.parsed, before.intent) and set(given) == {"bottles"}:
        before = of_another_product(before, slots.bottles, world, at_that_mix=asks_the_same(answering.parsed))
    if before.intent == "share_tool" and "enclosures" in given:
        return _joined(before, answering, _taken_elsewhere(before.slots, slots))
    return _joined(before, answering, _merged(before.slots, given, slots))


def _without_its_ppm(before: Reading, given: dict[str, Any], world: World) -> Reading:
    """Parts per million are of chlorine: asked of another agent, the mix is asked for anew."""
    mixes = tuple(mix for mix in before.slots.mixes if not isinstance(mix, Ppm))
    bottles = (world.household.bottle(name) for name in given.get("bottles", ()))
    stocks = [*given.get("stocks", ()), *(bottle.stock for bottle in bottles if bottle is not None)]
    found = (world.household.stock(name) for name in stocks)
    agents = [*given.get("agents", ()), *(stock.agent for stock in found if stock is not None)]
    chlorine = all(world.facts.agents[agent].family == "chlorine" for agent in agents if agent in world.facts.agents)
    return before if chlorine else replace(before, slots=replace(before.slots, mixes=mixes))


def _on_what_nobody_knows(plain: str, slots: Slots) -> bool:
    """A word where a germ is named, that names none."""
    return not (slots.organisms or slots.materials or slots.enclosures) and _ON_A_WORD.search(plain) is not None


_ON_A_WORD = Pattern(
    r"\b(?:on|against|for|kill|kills) (?!(?:it|that|them|those|this|us|both|sure|real|now|long)\b)[a-z]{3,}$"
)


def may_be_asked_again(intent: str | None, world: World) -> bool:
    """True for a question that records nothing, so that a changed word only asks it again."""
    return asks_only(world.questions.get(intent or ""))


def _taken_elsewhere(slots: Slots, said: Slots) -> Slots:
    """ "And for the blue one?": the same tool from the same place, to another; `shared_on` has what is surely that."""
    source, target = slots.taken or ("", "")
    source = source or next((name for name in slots.enclosures if name != target), "")
    way = said.taken if said.taken is not None and all(said.taken) else (source, said.enclosures[0])
    return replace(slots, taken=way, enclosures=(), choices=(), unknown=())


def asks_for_another(parsed: Parsed, before: str | None = None) -> bool:
    """ "and for the blue?", "what about one in fifty"; "with two windows?" after a question about the air."""
    about_air = before in _ABOUT_THE_AIR and _WITH.match(parsed.plain) is not None
    return (about_air or _ANOTHER.search(parsed.plain) is not None) and (
        is_short(parsed, before) or asks_the_same(parsed)
    )


def asks_the_same(parsed: Parsed) -> bool:
    """ "Same question for the window cage": in so many words, whatever it is most like."""
    return _ASKS_THE_SAME.match(parsed.plain) is not None


def goes_on_choosing(parsed: Parsed, slots: Slots, before: Reading) -> bool:
    """ "On glass?", "for salmonella?", "and the yellow one?" right after such a question: the same of another thing.

    A product alone or a material alone is a question of another kind unless one of these was just asked.
    """
    named = {
        "surface": slots.materials or slots.agents or slots.bottles or slots.stocks,
        "works_on": slots.organisms or slots.agents or slots.bottles or slots.stocks or slots.methods,
        "choose_agent": slots.organisms or slots.materials or slots.enclosures,
        "protect": slots.agents or slots.bottles or slots.stocks,
    }
    return bool(named.get(before.intent or "")) and _GOES_ON.match(parsed.plain) is not None and is_short(parsed)


def corrects(parsed: Parsed, before: str | None = None) -> bool:
    """ "no, fifty", "I said the copper one"."""
    return _CORRECTS.search(parsed.plain) is not None and is_short(parsed, before)


# ---------------------------------------------------------------- joining


def _given(slots: Slots) -> dict[str, Any]:
    """The slots that a short answer fills; a step only answers what was asked, and is put into no other question."""
    return all_given(slots) | ({"steps": slots.steps} if slots.steps else {})


def _joined(before: Reading, answering: Answering, slots: Slots) -> Reading:
    slots = thinned_again(before.slots, slots, answering.parsed.text)
    return replace(
        before,
        question=answering.parsed.text,
        slots=slots,
        confidence=max(before.confidence, 0.9),
        doubts=still_doubted(before.doubts, slots),
        spoken=answering.spoken,
        nearest=(),
    )


def _merged(base: Slots, given: dict[str, Any], answer: Slots) -> Slots:
    """The base with what the answer gives in its place; one way to say a total, or with what, replaces the other."""
    cleared: dict[str, Any] = {}
    if "bottles" in given or "volumes" in given:
        cleared |= {"volumes": (), "bottles": (), "numbers": ()}
    if {"bottles", "stocks", "agents"} & given.keys():
        cleared |= {"stocks": (), "agents": ()}
    if "bottles" in given and base.bottles:
        cleared |= {"share_wanted": None}
    if "bottles" in given and not given.get("agents") and base.mixes:
        cleared |= {"stocks": base.stocks, "agents": base.agents}
    if {"bottles", "stocks", "agents"} & given.keys():
        cleared |= {"methods": ()}
    if "methods" in given:
        cleared |= {"bottles": (), "stocks": (), "agents": ()}
    if any(unknown.kind == "organism" for unknown in answer.unknown) and "organisms" not in given:
        cleared |= {"organisms": ()}  # never the germ before in place of one that nobody knows
    if "organisms" in given or "job" in given:
        cleared |= {"organisms": (), "job": None}
    if "enclosures" in given:
        cleared |= {"every_enclosure": False}
    if "every_enclosure" in given:
        cleared |= {"enclosures": ()}
    if "mixes" in given:
        cleared |= {"numbers": ()}
    if "openings" in given:
        cleared |= {"air_changes": None}
    if "scoops" in given and base.scoops is not None:
        given = {**given, "scoops": _same_tool(base.scoops, given["scoops"])}
    return replace(base, **{**cleared, **given}, choices=answer.choices, unknown=answer.unknown, faulty=answer.faulty)


def _same_tool(before: Scoops, now: Scoops) -> Scoops:
    """ "A cap is 5 mils", after "how many capfuls": what each of the two leaves unsaid is the other's."""
    count = now.count if now.count is not None else before.count
    return replace(now, holds=now.holds or before.holds, count=count, wanted=now.wanted or before.wanted)


def _as_stock_strength(given: dict[str, Any]) -> dict[str, Any]:
    percents = [mix for mix in given["mixes"] if isinstance(mix, Percent)]
    if not percents:
        return given
    rest = {field: value for field, value in given.items() if field != "mixes"}
    return {**rest, "stock_strength": Amount(percents[0].percent, "%")}


def _bottle_of_size(parsed: Parsed, slots: Slots, world: World) -> tuple[str, ...]:
    """ "no, the five hundred": the bottles that hold so much, where "the" stands before the number."""
    sizes = [*slots.numbers, *(volume.amount for volume in slots.volumes)]
    if not sizes or not re.search(r"\bthe (?:NUMBER|VOLUME)\b(?! of)", parsed.plain) or slots.bottles:
        return ()
    return tuple(bottle.name for bottle in world.household.bottles if bottle.capacity.amount == sizes[0])


_TELLS_A_STEP = Pattern(r"\b(?:sprayed|misted|soaked|rinsed|washed|wiped|squirted|doused)\b")


def _over(plain: str) -> bool | None:
    """Whether an open clean starts over (True) or goes on, by words that say hardly anything else; None: neither.

    "Does bleach work on glass" has an "on" in it and "say that again" an "again": a clean begun anew by these is lost.
    """
    if not _ONLY_OF_GOING_ON.fullmatch(plain.strip(" .!,")) or _ASKS_OF_IT.match(plain) or plain.endswith("?"):
        return None
    if _FROM_THE_START.search(plain):
        return True
    return False if re.search(r"\b(?:on|continue|carry|keep|resume|finish)\b", plain) else None


_ONLY_OF_GOING_ON = Pattern(
    r"(?:(?:yes|yeah|yep|ok|no|nope|please|just|then|now|um|er|oh|well|right|so|actually|i|we|let|us|want|to|will"
    r"|would|like|better|rather|can|could|start|begin|do|go|going|over|again|afresh|anew|new|fresh|one|scratch"
    r"|beginning|top|restart|from|the|a|it|this|that|with|on|carry|continue|keep|resume|finish|ENCLOSURE|ANIMAL|him"
    r"|her|clean|round|where|left|off|am|was|and|my|think|guess|,)(?: |$))+"
)
_FROM_THE_START = Pattern(
    r"\b(?:over|afresh|anew|scratch|beginning|restart|top)\b|\b(?:start|begin|do)\b.*\bagain\b|\b(?:new|fresh)\b"
)
_ASKS_OF_IT = Pattern(r"^(?:so |and |ok )*(?:do|should|shall|did|does|what|how|where) (?:i|we|you|it)\b")


def _ratio_word(plain: str) -> Any:
    if re.search(r"\b(?:in all|in total|total|in|parts in all)\b", plain):
        return "in"
    return "to" if re.search(r"\b(?:to|plus|parts water|water)\b", plain) else None


_PLACES = (
    ("eye", r"\beyes?\b"),
    ("mouth", r"\b(?:mouth|swallow\w*|drank|drunk)\b"),
    ("lungs", r"\b(?:breath\w*|fumes?|cough\w*|lungs?|inhaled|throat|nose)\b"),
    ("skin", r"\b(?:skin|hands?|arms?|legs?|face|foot|feet|fingers?)\b"),
)


def place_in(plain: str) -> Any:
    """Where a splash got to, said in a word."""
    return next((place for place, pattern in _PLACES if re.search(pattern, plain)), None)


def goes_on(parsed: Parsed) -> bool:
    """ "start over", "go on", "carry on": an answer to whether an open clean goes on."""
    return _over(parsed.plain) is not None and len(parsed.words) <= 6


def starts_with_yes(plain: str) -> str:
    """A text without its leading "yes"."""
    return _ANSWER.sub("", plain)
