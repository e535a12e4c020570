"""What was heard or typed, and what it was taken to mean."""

from __future__ import annotations

import re
from dataclasses import dataclass
from datetime import datetime
from fractions import Fraction
from typing import Literal, TypeAlias

from assistant.core.harms import AskedOfHarm, Place, Victim
from assistant.core.quantities.amounts import Amount, Mix, Scoops

VolumeRole: TypeAlias = Literal["", "water", "product", "total", "left"]
"""What a volume was said to be of; "": nothing was said."""


@dataclass(frozen=True, slots=True)
class Word:
    """One recognised word."""

    text: str
    posterior: float
    """How sure the recogniser is of it, 0 to 1."""


@dataclass(frozen=True, slots=True)
class Heard:
    """One turn of the keeper's, typed or recognised."""

    text: str
    spoken: bool = False
    alternatives: tuple[str, ...] = ()
    """Other things it may have been, best first; empty when typed."""
    words: tuple[Word, ...] = ()
    """The words of `text` with their posteriors; empty when typed or when the engine gives none."""


Draught: TypeAlias = Literal["still", "draught", "fan"]
"""How air moves over a wet surface: windows shut, a window open, a fan across it."""


@dataclass(frozen=True, slots=True)
class Choice:
    """Words that fit several things; the keeper is asked which."""

    kind: str
    """The slot's kind: "bottle", "enclosure", "stock", "agent" ..."""
    said: str
    candidates: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Unknown:
    """Words that stand where a name belongs, but fit nothing that is known."""

    kind: str
    said: str


@dataclass(frozen=True, slots=True)
class Faulty:
    """A number or amount that can't be taken: zero, negative, absurd, or a unit that is refused."""

    said: str
    why: str
    """One line: what is wrong and what to write instead."""


@dataclass(frozen=True, slots=True)
class Doubt:
    """Something that was not heard with certainty, so it is read back before it counts."""

    kind: Literal["number", "polarity", "part", "hearing", "meaning"]
    """ "polarity": whether it was done at all; "part": whether all of it was; "meaning": it is only like that question,
    and isn't plainly told."""
    heard: str
    """As taken: "15", or "rinsed", or all of what was heard badly."""
    others: tuple[str, ...] = ()
    """What else it may have been."""


@dataclass(frozen=True, slots=True)
class SaidTime:
    """When something was said to be: "yesterday at four", "last tuesday"."""

    at: datetime
    """Aware, in the zone of now. To the day: noon of it, or now when that is earlier."""
    to_the: Literal["minute", "part", "day", "week"] = "minute"
    """How closely it was said; "part" is a morning, an afternoon, an evening."""
    others: tuple[datetime, ...] = ()
    """What else it may have been: four in the morning, the fifth of March; empty: it is plain."""


NO_SMELL = "no_smell"
"""What a doubt about `still_smells` is of, where the smell is said to be gone."""
ASKED_WHY = ("asked", "why")
"""`Slots.setting` of a quarantine of which it is asked why it is so long."""
UNHEARD_PRODUCT = "with "
"""What `Slots.beside` begins with where the word stands for a product that nobody knows: "with glim"."""


@dataclass(frozen=True, slots=True)
class Slots:
    """What the text names, by kind, in the order said. Names are the household's own, agents and organisms are ids."""

    volumes: tuple[Amount, ...] = ()
    roles: tuple[VolumeRole, ...] = ()
    """Of each of `volumes`, in the same order."""
    lengths: tuple[Amount, ...] = ()
    durations: tuple[Amount, ...] = ()
    temperatures: tuple[Amount, ...] = ()
    mixes: tuple[Mix, ...] = ()
    numbers: tuple[Fraction, ...] = ()
    """Bare numbers that belong to none of the above."""
    agents: tuple[str, ...] = ()
    stocks: tuple[str, ...] = ()
    bottles: tuple[str, ...] = ()
    measures: tuple[str, ...] = ()
    enclosures: tuple[str, ...] = ()
    """By name, other name, or the animal that lives there."""
    organisms: tuple[str, ...] = ()
    steps: tuple[str, ...] = ()
    """From `rounds.STEPS`."""
    every_enclosure: bool = False
    """ "both", "all of them": every enclosure with an open round."""
    both: bool = False
    """It was said of two: of more that are open, the two that it fits."""
    stayed_wet: bool | None = None
    """What was said of the surface during the wet time."""
    too_early: bool = False
    """It was said to have dried before its time, in those words; or a mite was seen in what is clean."""
    part: str | None = None
    """The one part of a surface that was spoken of: "lid"."""
    smell: bool | None = None
    """Whether it smells of product; None: nothing was said of it."""
    wet: bool | None = None
    """Whether it is wet or damp after the rinse; None: nothing was said of it."""
    remark: bool = False
    """Not understood, and told of what is being cleaned as it seems: wet, dirty, a product, missed."""
    touched: tuple[str, ...] = ()
    """Agents said to have been put on a surface, in a text that is answered as something else."""
    confirmed: bool = False
    """The tool asked whether it was meant, and it was."""
    openings: int | None = None
    """How many windows or doors were said to be open."""
    shut_before: bool = False
    """They were said to have been shut until then: "I only opened it now"."""
    old_mix: bool = False
    """It was said to have been sprayed with a mix of another day: no disinfection."""
    wiped: bool = False
    """The rinse among the steps was a wiping with clean water."""
    air_changes: Fraction | None = None
    """Air changes an hour, where a question about airing names them."""
    mixing: Fraction | None = None
    """The mixing factor named for an airing, 1 or more."""
    humidity: Fraction | None = None
    """Relative humidity of the room in percent, where a question about drying names it."""
    draught: Draught | None = None
    """How the air over a wet surface was said to move."""
    heat_cold: bool = False
    """ "heat is off and cold" was said."""
    cold: bool = False
    """The waiting animal was said to be cold."""
    place: Place | None = None
    victim: Victim | None = None
    places_too: tuple[Place, ...] = ()
    """Where else it got to, in the same breath."""
    asked_of_harm: AskedOfHarm | None = None
    stock_strength: Amount | None = None
    """A strength of the concentrate itself stated in the question ("from six percent bleach"), percent."""
    to_unit: str | None = None
    """The unit that something is wanted in: "how many mils", "in fluid ounces"."""
    share_left: Fraction | None = None
    """ "Half full", "a third left", "empty": the part of a bottle that is still in it."""
    adds: Literal["bottle", "enclosure", "stock", "measure"] | None = None
    """What is to be added to the household."""
    share_wanted: Fraction | None = None
    """ "Half the yellow bottle", "fill it two thirds full": the part of a bottle that is to be filled."""
    scoops: Scoops | None = None
    """A cap, spoon or syringe that was spoken of, with what it holds."""
    uses_up: bool = False
    """A volume of concentrate is given, and what it makes is asked: "the last of the bleach"."""
    strokes: Fraction | None = None
    """How often a trigger was pulled into a measure."""
    inside: Literal["floor", "walls", "all sides"] | None = None
    """Which surfaces of an enclosure; None: nothing was said."""
    soaks: bool = False
    """Something is to be soaked in it: a tub is filled, not sprayed."""
    month: tuple[int | None, int] | None = None
    """A year (None: the latest) and month in which something was made or bought."""
    materials: tuple[str, ...] = ()
    """What a surface is made of, ids of the facts."""
    methods: tuple[str, ...] = ()
    """Ways without a product, ids of the facts: "heat", "drying"."""
    residues: tuple[str, ...] = ()
    """What an agent may meet that is no agent, ids of the facts: "urates"."""
    job: str | None = None
    """What is to be done: "scale", "dirt", "routine", "illness", "quarantine" or "mites"."""
    near_water: bool = False
    """Frogs, turtles, fish or their water were said to be near."""
    clean_as: str | None = None
    """Which sort of clean is to be begun, from `jobs.JOBS`; None: nothing was said of it."""
    start_over: bool | None = None
    """ "start over" True, "go on" False."""
    each: tuple[Slots, ...] = ()
    """Of a fill: what each of several bottles was filled with."""
    beside: str | None = None
    """Of a fill: a word told with it that may make it weaker, stronger or another; None: it is plainly told."""
    topped_up: bool = False
    """A fill was poured onto what was left in the bottle."""
    rinsed_first: bool | None = None
    """Whether the bottle was rinsed out before it was filled; None: not said."""
    apart: tuple[tuple[str, tuple[str, ...]], ...] = ()
    """Steps or chores told of several enclosures, not the same of each: "sprayed the tank and washed the box"."""
    dried_apart: tuple[str, ...] = ()
    """Of the enclosures of `apart` those that dried before their time, where another one stayed wet."""
    corrects: bool = False
    """It puts right what was recorded before: a fill, a step, or with what something was sprayed or begun."""
    plain_water: bool = False
    """The bottle was filled with water alone."""
    items: tuple[str, ...] = ()
    """Bowls, branches, cloths ...: ids of facts/items.toml."""
    ways: tuple[str, ...] = ()
    """What is to be done with them: "soak", "boil", "bake", "wash hot", "bin" ...; as in facts/items.toml."""
    cracked: bool = False
    """It is said to be cracked, chipped or scratched."""
    begun: bool = False
    """It is said to be in the oven, the pot or the soak by now."""
    still_wet: bool = False
    """It is said to have been sprayed or soaked, and not to be rinsed and dry since."""
    chores: tuple[str, ...] = ()
    """From `chores.CHORES`: "spot clean", "deep clean", "water"."""
    groups: tuple[str, ...] = ()
    """Groups of enclosures: "healthy", "new", "sick"."""
    racks: tuple[str, ...] = ()
    """Racks by the name that keeping.toml gives them."""
    taken: tuple[str, str] | None = None
    """From where to where a tool is to be taken: names of enclosures or groups, empty where unsaid."""
    shut_in: bool = False
    """The animal was said to be shut in, or in its waiting tub."""
    pressed: bool = False
    """The gate is not asked but pressed: "just tell me it's fine"."""
    tubs: tuple[str, ...] = ()
    """Waiting tubs, as the keeper calls them: "blue tub"."""
    cleaned: Literal["disinfected", "washed", "not", "asked"] | None = None
    """What is said of a waiting tub: that, washed alone, not disinfected, or it is asked."""
    drains: tuple[str, ...] = ()
    """Where something is to be poured: "kitchen sink", "toilet", "garden" ..."""
    setting: tuple[str, str] | None = None
    """A setting by word of mouth: ("gallon", "imperial"), ("ratio", "in")."""
    wish: str | None = None
    """What somebody would do with a bottle that nobody knows: "sniffing", "mixing" ..."""
    found: bool = False
    """It was said that a loose animal is found."""
    got_out: bool = False
    """After fumes: everybody is out, or it is asked when to go back in."""
    of_illness: Literal["ends", "none", "unmarked", "asked"] | None = None
    """Its end is asked; there is none after all; nobody is to be marked; the record is asked. None: it may be one."""
    tested: bool = False
    """A test was spoken of, and not only what was seen."""
    restart: str | None = None
    """What starts a quarantine again: "newcomer", "test" or "sign"; None: nothing of the kind was said."""
    met: bool = False
    """It was said that the agents named have met already."""
    when: SaidTime | None = None
    """A date or time said, past unless the words say otherwise ("tomorrow")."""
    some_time_ago: bool = False
    """It was said to be some while back, and nothing tells how long: "a while ago", "before lunch"."""
    choices: tuple[Choice, ...] = ()
    unknown: tuple[Unknown, ...] = ()
    faulty: tuple[Faulty, ...] = ()


@dataclass(frozen=True, slots=True)
class Reading:
    """What the text was taken to mean."""

    question: str
    """What was heard or typed, after normalising."""
    intent: str | None
    """A question's name, or None: no reading."""
    slots: Slots = Slots()
    confidence: float = 0.0
    """Chance that the reading is right, 0 to 1."""
    nearest: tuple[str, ...] = ()
    """The two nearest questions' names, for when it is unsure."""
    doubts: tuple[Doubt, ...] = ()
    spoken: bool = False
    """It was heard, not typed: its numbers and steps are said back."""
    again: Literal["", "same", "aside", "unclear"] = ""
    """Taken for the question before once more, by likeness, with nothing in it changed; "aside": what was said may
    change the answer, and isn't in it; "unclear": it does, and nobody knows how."""

    @property
    def words(self) -> tuple[str, ...]:
        """The words of the question, in small letters and without signs."""
        return tuple(_WORD.findall(self.question.casefold().replace("\u2019", "'")))

    @property
    def said(self) -> str:
        """The same as one text, for phrases."""
        return " ".join(self.words)

    @property
    def asks(self) -> bool:
        """It ends as a question does."""
        return self.question.rstrip().endswith("?")


_WORD = re.compile(r"[^\W_]+(?:'[^\W_]+)*")
