"""What `setup` asks: section by section, each question with its default and what an empty answer means.

Only wording and defaults are here. Whether an answer will do is decided by the readers of keeping.toml.
A default is something the keeper has said already, or the plain case; no figure of the trade is offered.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Mapping
from dataclasses import dataclass
from datetime import date, timedelta
from typing import Any

from assistant.core.facts import Facts
from assistant.core.household import Habits
from assistant.store.keeping_values import Wrong


@dataclass(frozen=True)
class Known:
    """What has been said by the time of a question."""

    values: Mapping[str, Any]
    """Of the thing that is being asked about."""
    content: Mapping[str, Any]
    """The whole of keeping.toml."""
    facts: Facts
    today: date


Values = dict[str, Any]


@dataclass(frozen=True)
class Ask:
    """One question and the keys that its answer fills."""

    keys: tuple[str, ...]
    text: str
    help: str
    default: Callable[[Known], str] = lambda known: ""
    """What Enter takes; empty: Enter leaves it out."""
    wanted: Callable[[Known], bool] = lambda known: True
    choices: Callable[[Known], tuple[str, ...]] = lambda known: ()
    read: Callable[[str, Known], Values] | None = None
    """The answer as TOML values; None: as text, under its one key."""
    called: str = ""
    """What several keys are together."""
    aside: bool = False
    """Asked of a new thing only: one without it isn't unfinished, so that setup doesn't ask at every run."""


@dataclass(frozen=True)
class Section:
    """One kind of table."""

    kind: str
    title: str
    asks: tuple[Ask, ...]
    needs: tuple[str, ...] = ()
    one: str = ""
    """What one of them is called; empty: the table stands once."""
    example: str = ""


# ---------------------------------------------------------------- how answers are read


def _number(key: str) -> Callable[[str, Known], Values]:
    def read(typed: str, _: Known) -> Values:
        plain = re.sub(r"\s*(minutes?|mins?|animals?)$", "", typed)
        try:
            return {key: int(plain) if plain.isdecimal() else float(plain)}
        except ValueError:
            raise Wrong(f'"{typed[:40]}" is no number', "write one like 10") from None

    return read


def _percent(key: str) -> Callable[[str, Known], Values]:
    """The question says percent, so a bare number can be nothing else."""
    return lambda typed, _: {key: f"{typed} percent" if re.fullmatch(r"\d*\.?\d+", typed) else typed}


def _day(key: str) -> Callable[[str, Known], Values]:
    def read(typed: str, known: Known) -> Values:
        near = {"today": 0, "yesterday": 1}
        try:
            said = known.today - timedelta(near[typed.lower()]) if typed.lower() in near else date.fromisoformat(typed)
        except ValueError:
            raise Wrong(f'"{typed[:40]}" is no day', "write it as 2026-01-31, or today, or yesterday") from None
        if said > known.today:
            raise Wrong(f"{said} is still to come", "write a day that has been")
        return {key: said}

    return read


def _list(key: str) -> Callable[[str, Known], Values]:
    return lambda typed, _: {key: [part.strip() for part in typed.split(",") if part.strip()]}


def _airing(typed: str, _: Known) -> Values:
    return {"airing": float(typed) if re.fullmatch(r"\d*\.?\d+", typed) else typed}


def _sides(typed: str, _: Known) -> Values:
    """ "4 x 3 x 2.4 m": a unit after the last holds for those without one."""
    parts = [part.strip() for part in re.split(r"\s*(?:[x×*,]|\bby\b)\s*", typed, flags=re.IGNORECASE)]
    unit = re.sub(r"^[\d./\s]+", "", parts[-1])
    if len(parts) != 3 or not unit:
        raise Wrong(f'"{typed[:40]}" is no length, width and height', "write the three and a unit, as 90 x 45 x 45 cm")
    each = [part if re.search(r"[a-z]", part, re.IGNORECASE) else f"{part} {unit}" for part in parts]
    return dict(zip(("length", "width", "height"), each, strict=True))


def _room_size(typed: str, known: Known) -> Values:
    if re.search(r"\d\s*(?:[x×*,]|by\b)", typed, re.IGNORECASE):
        return _sides(typed, known)
    return {"volume": typed}


def _intervals(typed: str, _: Known) -> Values:
    parts = [part.strip() for part in typed.split(",")]
    if len(parts) != 3:
        raise Wrong(
            f'"{typed[:40]}" is not three spans of time', 'write three, as "1 day, 30 day, 1 day"; - leaves one'
        )
    return {key: part for key, part in zip(_EVERY, parts, strict=True) if part != "-"}


# ---------------------------------------------------------------- defaults


_EVERY = ("spot_clean_every", "deep_clean_every", "water_every")


def _said_before(keys: tuple[str, ...], join: str = ", ") -> Callable[[Known], str]:
    """As it was said of the latest thing of this kind."""

    def default(known: Known) -> str:
        for thing in reversed(known.content.get("enclosure", [])):
            if thing.get("name") != known.values.get("name") and all(key in thing for key in keys):
                return join.join(str(thing[key]) for key in keys)
        return ""

    return default


def _agent_in_name(known: Known) -> str:
    """The agent whose name, or other name, stands in the product's; the longest, if several do."""
    name = f" {known.values.get('name', '').lower()} "
    names = [each for agent in known.facts.agents.values() for each in (agent.name, *agent.also)]
    return max((each for each in names if f" {each.lower()} " in name), key=len, default="")


def _agents(known: Known) -> tuple[str, ...]:
    return (*(a.name for a in known.facts.agents.values() if a.id not in ("heat", "drying", "other")), "other")


def _amount_in_name(known: Known) -> str:
    found = re.search(
        r"\b\d*\.?\d+\s*(ml|mils?|l|litres?|liters?|tsp|tbsp|cups?)\b", known.values["name"], re.IGNORECASE
    )
    return found.group() if found else ""


def _kind_in_name(known: Known) -> str:
    return next((kind for kind in _MEASURES if kind in known.values["name"].lower()), "syringe")


def _stock(known: Known) -> Mapping[str, Any]:
    stocks = known.content.get("stock", [])
    return next((stock for stock in stocks if stock.get("name") == known.values.get("stock")), {})


def _stocks(known: Known) -> tuple[str, ...]:
    return tuple(str(stock["name"]) for stock in known.content.get("stock", []))


def _only_stock(known: Known) -> str:
    return _stocks(known)[0] if len(_stocks(known)) == 1 else ""


def _is(key: str, *wanted: str) -> Callable[[Known], bool]:
    return lambda known: known.values.get(key) in wanted


def _is_bleach(known: Known) -> bool:
    agent = known.facts.agent_named(str(known.values.get("agent", "")))
    return agent is not None and agent.id == "sodium hypochlorite"


def _dated_bleach(known: Known) -> bool:
    return _is_bleach(known) and "made" in known.values


def _has_strength(known: Known) -> bool:
    agent = known.facts.agent_named(str(known.values.get("agent", "")))
    return agent is not None and agent.id != "detergent"


# ---------------------------------------------------------------- the sections


_MEASURES = ("syringe", "spoon", "cup", "jug")
_COLOURS = ("yellow", "pink", "green", "blue", "red", "orange", "white", "clear", "black", "purple", "brown", "grey")


def _colour_in_name(known: Known) -> str:
    return next((colour for colour in _COLOURS if colour in known.values["name"].lower().split()), "")


_ALSO = Ask(
    ("also",),
    "What else do you call it?",
    'Other names that you say for it, with commas between, as "bleach, the big jug". Left out: none.',
    read=_list("also"),
    called="other names",
    aside=True,
)
STOCK = Section(
    "stock",
    "Products on your shelf: the concentrates, as bought",
    (
        Ask(
            ("agent",),
            "What is in it?",
            'The active agent on its label, as "bleach" or "chlorhexidine"; "other" when it isn\'t listed.',
            _agent_in_name,
            choices=_agents,
        ),
        Ask(
            ("strength",),
            "How strong is it, in percent, by its label?",
            "Left out, it is asked when an answer needs it.",
            wanted=_has_strength,
            read=_percent("strength"),
        ),
        Ask(("left",), "How much of it is left?", 'As "1.5 L" or "1/2 gal". Left out, nothing is counted down.'),
        Ask(
            ("made",),
            "When was it made or bought?",
            "As 2026-01-31. Bleach gets weaker; left out, its age is not reckoned with.",
            wanted=_is_bleach,
            read=_day("made"),
        ),
        Ask(
            ("label_minutes",),
            "How many minutes must it stay wet, by its label?",
            "Left out, the published time is taken where there is one.",
            wanted=_has_strength,
            read=_number("label_minutes"),
        ),
        Ask(
            ("label_mix",),
            "At what mix, by its label?",
            'The mix that those minutes hold for, as "1 in 32", "0.06 percent", "500 ppm" or "neat".',
            wanted=lambda known: "label_minutes" in known.values,
        ),
        Ask(
            ("label_claim",),
            "What does the label claim for that: disinfect or sanitise?",
            "To sanitise is less than to disinfect. Left out: not known.",
            wanted=lambda known: "label_minutes" in known.values,
            choices=lambda known: ("disinfect", "sanitise"),
        ),
        Ask(
            ("kept_at",),
            "How warm is it where you keep it?",
            'As "18 degC" or "65 degF". Bleach ages faster in the warm; left out, its age is not reckoned with.',
            wanted=_dated_bleach,
        ),
        Ask(
            ("label_organisms",),
            "Which germs does the label list?",
            'With commas between, as "salmonella, influenza". Left out: none, so for a germ that you name '
            "the longer of the label's minutes and the published ones counts.",
            wanted=lambda known: "label_minutes" in known.values,
            read=_list("label_organisms"),
            called="germs on its label",
            aside=True,
        ),
        _ALSO,
    ),
    ("name", "agent"),
    "product",
    "laundry bleach",
)
BOTTLE = Section(
    "bottle",
    "Spray bottles",
    (
        Ask(("capacity",), "How much does it hold, full?", 'As "750 mL", "1 L" or "24 fl oz".'),
        Ask(
            ("stock",),
            "Which product is it for?",
            "One of your products; left out, it is asked when an answer needs it.",
            _only_stock,
            wanted=lambda known: bool(_stocks(known)),
            choices=_stocks,
        ),
        Ask(
            ("mix",),
            "At what mix?",
            'As "1 in 32" (one part of 32 in all), "1 to 32" (and 32 of water), "500 ppm" or "neat".',
            lambda known: str(_stock(known).get("label_mix", "")),
            wanted=lambda known: "stock" in known.values,
        ),
        Ask(("colour",), "What colour is it?", "You can ask by it.", _colour_in_name),
        _ALSO,
    ),
    ("name", "capacity"),
    "bottle",
    "yellow bottle",
)
MEASURE = Section(
    "measure",
    "What you measure with: syringes, spoons, cups, jugs",
    (
        Ask(
            ("kind",),
            "Which kind is it?",
            "syringe, spoon, cup or jug.",
            _kind_in_name,
            choices=lambda known: _MEASURES,
        ),
        Ask(("capacity",), "How much does it hold?", 'As "10 mL" or "1 tsp".', _amount_in_name),
        Ask(
            ("graduation",),
            "How far apart are its finest marks?",
            'As "0.2 mL". Left out: it has none, and is only ever filled full.',
        ),
        _ALSO,
    ),
    ("name", "capacity"),
    "measure",
    "10 mL syringe",
)
ENCLOSURE = Section(
    "enclosure",
    "Enclosures and who lives there",
    (
        Ask(("animal",), "Which animal lives there?", 'As "corn snake". It counts for what may be used near it.'),
        Ask(
            ("water",),
            "Does it live in water: dry, part or all?",
            '"part" and "all" also for amphibians; some products are refused near them.',
            lambda known: "dry",
            choices=lambda known: ("dry", "part", "all"),
        ),
        Ask(
            ("material",),
            "What is it made of, inside?",
            'As "glass" or "sealed wood". Left out, it is asked when an answer needs it.',
            _said_before(("material",)),
            choices=lambda known: tuple(material.name for material in known.facts.materials.values()),
        ),
        Ask(
            ("length", "width", "height"),
            "Length, width and height inside?",
            "As 90 x 45 x 45 cm. It tells how much mix a clean takes.",
            read=_sides,
            called="size",
        ),
        Ask(
            ("group",),
            "Is the animal healthy, new or sick?",
            "New and sick ones are cleaned last, and their wet times are the longer ones.",
            lambda known: "healthy",
            choices=lambda known: ("healthy", "new", "sick"),
        ),
        Ask(
            ("arrived",),
            "When did it arrive?",
            "As 2026-01-31, today or yesterday. Its quarantine counts from then.",
            wanted=_is("group", "new"),
            read=_day("arrived"),
        ),
        Ask(
            ("quarantine",),
            "How long is its quarantine, as your vet says?",
            'As "90 day" or "12 week".',
            wanted=_is("group", "new"),
        ),
        Ask(
            _EVERY,
            "How often: spot clean, deep clean, fresh water?",
            'Three spans of time, as "1 day, 30 day, 1 day"; - for one that you don\'t plan.',
            _said_before(_EVERY),
            read=_intervals,
            called="how often",
        ),
        Ask(
            ("animals",),
            "How many animals live there?",
            "A number. Left out: 1.",
            wanted=lambda known: "animal" in known.values,
            read=_number("animals"),
            called="how many",
            aside=True,
        ),
        Ask(
            ("rack",),
            "Which rack or shelf does it stand on?",
            'As "left rack": then you can say all of that rack at once. Left out: none.',
            _said_before(("rack",)),
            aside=True,
        ),
        _ALSO,
    ),
    ("name",),
    "enclosure",
    "river tank",
)
PEOPLE = Section(
    "people",
    "Whom to call, and who is at home",
    (
        Ask(("poison_centre",), "The poison centre's number?", "It is said after a splash. Put a real one here."),
        Ask(("emergency",), "The emergency number?", "As 112, 911 or 999."),
        Ask(("vet",), "Your vet's number?", "For an animal that got some on it."),
        Ask(
            ("at_risk",),
            "Anyone at home under 5, over 65, pregnant, or with a weak immune system?",
            'As "under 5, pregnant" (under 5, over 65, pregnant, immune). Left out: nobody.',
            read=_list("at_risk"),
        ),
    ),
)
ROOM = Section(
    "room",
    "The room they stand in",
    (
        Ask(
            ("volume", "length", "width", "height"),
            "How large is the room?",
            "As 4 x 3 x 2.4 m, 12 x 10 x 8 ft, or 28 m^3. It counts when fumes are aired out.",
            read=_room_size,
            called="size",
        ),
        Ask(
            ("airing",),
            "How is it usually aired?",
            "By how many windows and doors stand open, or a number: air changes an hour.",
            choices=lambda known: ("shut", "one opening", "two openings", "three openings"),
            read=_airing,
        ),
        Ask(("temperature",), "How warm is it, usually?", 'As "25 degC" or "77 degF". Warm rooms dry sooner.'),
        Ask(("humidity",), "How humid, in percent, usually?", 'As "45".', read=_percent("humidity")),
    ),
)
HABITS = Section(
    "habits",
    "Your habits",
    (
        Ask(
            ("ratio",),
            'Does "1:32" mean 1 to 32, or 1 in 32: to or in?',
            '"to": one part and 32 of water. "in": one part in 32 in all. Left out it is read as "to", and you are '
            "asked where it matters most.",
            choices=lambda known: ("to", "in"),
        ),
        Ask(
            ("gallon",),
            "Whose gallons, pints and fluid ounces: US or imperial?",
            "Left out: US.",
            choices=lambda known: ("US", "imperial"),
        ),
        Ask(
            ("call_word",),
            "A call word, for listening hands-free?",
            'Two words that nobody says by chance, four syllables or more, as "marigold lantern". Left out: none.',
        ),
        Ask(
            ("tub_minutes",),
            "After how many minutes in a tub shall an animal be asked after?",
            f"A number of minutes. Left out: {Habits().tub_minutes}.",
            read=_number("tub_minutes"),
            called="minutes in a tub",
        ),
    ),
)
SECTIONS = (HABITS, STOCK, BOTTLE, MEASURE, ENCLOSURE, PEOPLE, ROOM)
"""Habits first, since the gallon decides how the amounts after it are read."""
