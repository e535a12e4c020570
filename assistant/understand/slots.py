"""What a text names, as slots: mentions and amounts put to the question that was asked.

A name that could be several things is narrowed by the question (a dose is for a bottle, a round is an enclosure's) and
by what is open; what is left over becomes a choice, and is asked.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass, replace
from fractions import Fraction
from typing import Any

from assistant.contract import Choice, Slots, Unknown, World
from assistant.core.amounts import Amount, Percent
from assistant.core.rounds import is_open
from assistant.understand.amounts import Found
from assistant.understand.claimed_steps import Claims, openings_in
from assistant.understand.names import HOMES, Mention, Thing
from assistant.understand.parsing import Parsed

_ROUND = frozenset({"start", "next", "done", "status", "time_left", "hold_time", "return_check"})
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

_EVERY = re.compile(
    r"\b(?:both|all|every|each)(?: of)?(?: the| my| these| those)? (?:them|tubs?|tanks?|boxes|box|cages?|vivs?|vivariums?|enclosures?|homes?|of them"
    r"|racks?|two|three|animals?)\b|\bboth\b(?! windows| doors| bottles| the windows)|\ball of (?:them|em)\b|\ball (?:are|is|done|sprayed|rinsed|dry|washed)\b"
    r"(?=.*\b(?:are|tubs|tanks|boxes)\b)|\beverything is (?:sprayed|rinsed|washed)\b"
)
_COLD = re.compile(r"\b(?:heat\w*|heat (?:mat|lamp)|lamps?|mats?|bulbs?)\b.*\b(?:off|cold|cool|unplugged)\b|\b(?:off|unplugged) and cold\b")
_OVER = re.compile(r"\bstart (?:it |this |that |him |her |(?:the |my )?(?:ENCLOSURE|ANIMAL) )?(?:over|again|afresh|anew)\b|\bfrom (?:scratch|the beginning|the start|the top)\b|\bbegin again\b|\brestart\b")
_ON = re.compile(r"\b(?:go on|carry on|continue|keep going|resume|pick up|go on with it)\b")

_STOCK_BEFORE = re.compile(r"(?:\bfrom|\busing|\bmy|\bwith|\bout of|\bhave|\bgot|\bof (?:the|my)|\bis|\bhow much|\bmany \w+ of|\bstock|\bconcentrate)(?: a| the| my| some| only)*$")
_TARGET_BEFORE = re.compile(r"(?:\bmake|\bmix|\bwant|\bneed|\bget|\bat|\bto|\bfor|\bin|\ba|\bmaking|\breach|\bof|\binto)(?: up| me| a| some| about| around| volume)*$", re.IGNORECASE)


@dataclass(frozen=True, slots=True)
class Asked:
    """What the slots are read for."""

    intent: str | None
    claims: Claims
    world: World


def slots_of(parsed: Parsed, asked: Asked) -> Slots:
    """Everything that a text names, by kind, for that question."""
    names = _named(parsed, asked)
    mixes, strength = _mixes(parsed)
    found = parsed.amounts.found

    def of(kind: str) -> tuple[Any, ...]:
        return tuple(one.value for one in found if one.kind == kind)

    slots = Slots(
        volumes=of("volume"),
        durations=of("duration"),
        temperatures=of("temperature"),
        mixes=mixes,
        numbers=_numbers(found, parsed),
        stock_strength=strength,
        faulty=parsed.amounts.faulty,
        **names,
    )
    return _with_the_rest(slots, parsed, asked)


def _with_the_rest(slots: Slots, parsed: Parsed, asked: Asked) -> Slots:
    plain, claims = parsed.plain, asked.claims
    every = bool(_EVERY.search(plain)) and not slots.enclosures
    over = True if _OVER.search(plain) else False if _ON.search(plain) else None
    return replace(
        slots,
        steps=claims.done if asked.intent == "done" else claims.mentioned or claims.done,
        stayed_wet=claims.stayed_wet if asked.intent == "done" else None,
        openings=openings_in(plain) if asked.intent == "done" else None,
        every_enclosure=every,
        heat_cold=bool(_COLD.search(plain)),
        start_over=over if asked.intent == "start" else None,
        unknown=(*slots.unknown, *_unknown(parsed, asked, slots)),
    )


# ---------------------------------------------------------------- names


def _named(parsed: Parsed, asked: Asked) -> dict[str, Any]:
    order = _HOME_FIRST if asked.intent in _ROUND else _BOTTLE_FIRST
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
    if len(homes) < 2 or asked.intent not in _ROUND or asked.intent == "start":
        return homes
    rounds = asked.world.state.rounds
    in_work = tuple(home for home in homes if is_open(rounds.get(home)))
    return in_work if len(in_work) == 1 else homes


# ---------------------------------------------------------------- names that fit nothing

_ORDINARY = frozenset(
    "the a an my this that these those same other whole full half empty big small large little new old first second third which what each every"
    " water glass plastic clean dirty trigger next last right wrong per any his her its their your our no one two spare holding quarantine hospital"
    " travel feeding soak waiting another only entire good and or of in for with to is it on at from into back up as ready mixed labelled labeled"
    " animal animals ball python's snake snake's gecko's litre ml size sized about around over under out off all both three bleach mix made all"
    " put fill filling filled do use start clean cleaned spray the inside wet dry done long dilute mist cleaning want need how much can i".split()
)
_COLOURS = frozenset(
    "red orange yellow green blue purple violet pink brown black white grey gray turquoise teal indigo crimson scarlet maroon navy cyan magenta lilac"
    " mauve amber gold golden silver bronze copper beige cream lime olive coral peach lavender tan khaki striped spotted checked clear ivory".split()
)
_PRODUCT_ENDS = frozenset({"cleaner", "cleanser", "remover", "descaler", "polish", "disinfectant", "cleaners", "freshener", "powder", "tablets"})


def _unknown(parsed: Parsed, asked: Asked, slots: Slots) -> tuple[Unknown, ...]:
    """Words that stand where a name belongs, but fit nothing known: "the turquoise bottle"."""
    words = parsed.plain.split()
    found: list[Unknown] = []
    for at in range(1, len(words)):
        said, end = words[at - 1], words[at]
        if not said.isalpha() or said.isupper() or said in _ORDINARY:
            continue
        if end in ("bottle", "one") and (end == "bottle" or said in _COLOURS) and asked.intent not in ("done", "status", "next", "return_check"):
            found.append(Unknown("bottle", said))
        elif end in HOMES and asked.intent in _ROUND and not slots.enclosures and not slots.choices:
            found.append(Unknown("enclosure", f"{said} {end}"))
        elif end in _PRODUCT_ENDS and asked.intent == "together":
            found.append(Unknown("agent", f"{said} {end}"))
    last = words[-1] if words else ""
    if last in _COLOURS and asked.intent == "dose" and len(words) > 1 and words[-2] in ("the", "my") and not slots.bottles:
        found.append(Unknown("bottle", last))
    return tuple(found)


# ---------------------------------------------------------------- strengths


def _mixes(parsed: Parsed) -> tuple[tuple[Any, ...], Amount | None]:
    """What is to be mixed, apart from the strength of the concentrate itself."""
    found = [one for one in parsed.amounts.found if one.kind == "mix"]
    stock = _stock_strength(parsed, found)
    mixes = tuple(one.value for one in found if one is not stock)
    if stock is None or not isinstance(stock.value, Percent):
        return mixes, None
    return mixes, Amount(stock.value.percent, "%")


def _stock_strength(parsed: Parsed, found: Sequence[Found]) -> Found | None:
    percents = [one for one in found if isinstance(one.value, Percent)]
    if not percents:
        return None
    marked = [one for one in percents if _is_of_stock(parsed, one, others=len(found) > 1)]
    if marked:
        return max(marked, key=_size)
    if len(percents) > 1:
        return max(percents, key=_size)
    return None


def _size(one: Found) -> Fraction:
    return one.value.percent if isinstance(one.value, Percent) else Fraction(0)


def _is_of_stock(parsed: Parsed, one: Found, others: bool) -> bool:
    """ "from six percent bleach", "my 6 percent bleach"; with another strength or ratio beside it, "6 percent bleach"."""
    before = " ".join(token.text for token in parsed.tokens[max(0, one.start - 4) : one.start])
    product = any(mention.start == one.end and mention.things[0].kind in ("agent", "stock") for mention in parsed.mentions)
    if re.search(r"\b(?:from|using|out of)(?: a| the| my| some)*$", before):
        return True
    if product and _STOCK_BEFORE.search(before):
        return True
    return product and others and not _TARGET_BEFORE.search(before)


def _numbers(found: Sequence[Found], parsed: Parsed) -> tuple[Fraction, ...]:
    """Bare numbers, without those that count windows or tubs."""
    counted = ("window", "windows", "door", "doors", "tubs", "tanks", "boxes", "cages", "enclosures", "times", "animals")
    words = [token.text for token in parsed.tokens]
    return tuple(
        one.value
        for one in found
        if one.kind == "number" and isinstance(one.value, Fraction) and words[one.end : one.end + 1] not in [[w] for w in counted]
    )
