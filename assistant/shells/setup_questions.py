"""What `setup` asks, section by section. Whether an answer will do is decided by the readers of keeping.toml."""

from __future__ import annotations

from assistant.core.choice.pictograms import WARNS
from assistant.core.household import Habits
from assistant.shells.setup_answers import (
    EVERY,
    Ask,
    Section,
    airing,
    day,
    intervals,
    names_listed,
    number,
    percent,
    room_size,
    sides,
)
from assistant.shells.setup_defaults import (
    MEASURES,
    agent_in_name,
    agents,
    amount_in_name,
    colour_in_name,
    dated_bleach,
    has_strength,
    is_bleach,
    is_one_of,
    kind_in_name,
    only_stock,
    said_before,
    stock_named,
    stocks,
    water_of,
)

_ALSO = Ask(
    ("also",),
    "What else do you call it?",
    'Other names that you say for it, with commas between, as "bleach, the big jug". Left out: none.',
    read=names_listed("also"),
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
            agent_in_name,
            choices=agents,
        ),
        Ask(
            ("strength",),
            "How strong is it, in percent, by its label?",
            "Left out, it is asked when an answer needs it.",
            wanted=has_strength,
            read=percent("strength"),
        ),
        Ask(("left",), "How much of it is left?", 'As "1.5 L" or "1/2 gal". Left out, nothing is counted down.'),
        Ask(
            ("made",),
            "When was it made or bought?",
            "As 2026-01-31. Bleach gets weaker; left out, its age is not reckoned with.",
            wanted=is_bleach,
            read=day("made"),
        ),
        Ask(
            ("label_minutes",),
            "How many minutes must it stay wet, by its label?",
            "Left out, the published time is taken where there is one.",
            wanted=has_strength,
            read=number("label_minutes"),
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
            wanted=dated_bleach,
        ),
        Ask(
            ("label_organisms",),
            "Which germs does the label list?",
            'With commas between, as "salmonella, influenza". Left out: none, so for a germ that you name '
            "the longer of the label's minutes and the published ones counts.",
            wanted=lambda known: "label_minutes" in known.values,
            read=names_listed("label_organisms"),
            called="germs on its label",
            aside=True,
        ),
        Ask(
            ("pictograms",),
            "Which hazard signs does its label carry, in red frames?",
            f"By name or code, with commas between: {', '.join(WARNS)}. They go on your labels too. Left out: none.",
            read=names_listed("pictograms"),
            called="hazard signs",
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
            only_stock,
            wanted=lambda known: bool(stocks(known)),
            choices=stocks,
        ),
        Ask(
            ("mix",),
            "At what mix?",
            'As "1 in 32" (one part of 32 in all), "1 to 32" (and 32 of water), "500 ppm" or "neat".',
            lambda known: str(stock_named(known).get("label_mix", "")),
            wanted=lambda known: "stock" in known.values,
        ),
        Ask(("colour",), "What colour is it?", "You can ask by it.", colour_in_name),
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
            kind_in_name,
            choices=lambda known: MEASURES,
        ),
        Ask(("capacity",), "How much does it hold?", 'As "10 mL" or "1 tsp".', amount_in_name),
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
            water_of,
            choices=lambda known: ("dry", "part", "all"),
        ),
        Ask(
            ("material",),
            "What is it made of, inside?",
            'As "glass" or "sealed wood". Left out, it is asked when an answer needs it.',
            said_before(("material",)),
            choices=lambda known: tuple(material.name for material in known.facts.materials.values()),
        ),
        Ask(
            ("length", "width", "height"),
            "Length, width and height inside?",
            "As 90 x 45 x 45 cm. It tells how much mix a clean takes.",
            read=sides,
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
            wanted=is_one_of("group", "new"),
            read=day("arrived"),
        ),
        Ask(
            ("quarantine",),
            "How long is its quarantine, as your vet says?",
            'As "90 day" or "12 week".',
            wanted=is_one_of("group", "new"),
        ),
        Ask(
            EVERY,
            "How often: spot clean, deep clean, fresh water?",
            'Three spans of time, as "1 day, 30 day, 1 day"; - for one that you don\'t plan.',
            said_before(EVERY),
            read=intervals,
            called="how often",
        ),
        Ask(
            ("animals",),
            "How many animals live there?",
            "A number. Left out: 1.",
            wanted=lambda known: "animal" in known.values,
            read=number("animals"),
            called="how many",
            aside=True,
        ),
        Ask(
            ("rack",),
            "Which rack or shelf does it stand on?",
            'As "left rack": then you can say all of that rack at once. Left out: none.',
            said_before(("rack",)),
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
            read=names_listed("at_risk"),
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
            read=room_size,
            called="size",
        ),
        Ask(
            ("airing",),
            "How is it usually aired?",
            "By how many windows and doors stand open, or a number: air changes an hour.",
            choices=lambda known: ("shut", "one opening", "two openings", "three openings"),
            read=airing,
        ),
        Ask(("temperature",), "How warm is it, usually?", 'As "25 degC" or "77 degF". Warm rooms dry sooner.'),
        Ask(("humidity",), "How humid, in percent, usually?", 'As "45".', read=percent("humidity")),
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
            read=number("tub_minutes"),
            called="minutes in a tub",
        ),
    ),
)
SECTIONS = (HABITS, STOCK, BOTTLE, MEASURE, ENCLOSURE, PEOPLE, ROOM)
"""Habits first, since the gallon decides how the amounts after it are read."""
