"""What a keeper may say, as sample sentences for the language model.

The questions' phrasings are filled with the household's own names, the agents and organisms of the facts, and spoken
numbers, and mixed with a share of ordinary talk. Pure and the same every time: the random choices are seeded by the
caller. The model itself is `language_model`; how the words sound is `pronunciation`.
"""

from __future__ import annotations

import random
import re
from collections import Counter
from collections.abc import Callable, Iterable, Iterator, Mapping
from dataclasses import dataclass
from itertools import cycle, islice

from assistant.contract import Question
from assistant.core.facts import Agent, Organism
from assistant.core.household import Household
from assistant.hear.general_english import SENTENCES
from assistant.hear.spoken_form import ONES, TENS, number_words, words_of

Words = tuple[str, ...]


@dataclass(frozen=True)
class Sayable:
    """Everything the vocabulary is built from."""

    phrasings: Mapping[str, tuple[str, ...]]
    """Of each question, with {slot} where a name or number stands."""
    names: Mapping[str, tuple[str, ...]]
    """What may stand in each slot that takes a name."""
    call_word: str = ""
    """Said before a question when listening hands-free; empty: none."""


@dataclass(frozen=True)
class Share:
    """How the sample is made up; the figures were chosen by tests/bench/recognition.py on one half of its clips."""

    a_question: int = 600
    """Sentences for each question, however many phrasings it has."""
    with_slot: int = 3
    """How much oftener a phrasing with a slot is taken than one without: it stands for many sentences."""
    follow_ups: int = 1800
    """Sentences that answer a question of the tool's."""
    chatter: float = 0.15
    """Ordinary talk, as a share of all sentences."""
    seed: int = 1


FOLLOW_UPS: tuple[str, ...] = (
    *("{number}", "{digits}", "{volume}", "{mix}", "{duration}", "{bottle}", "the {bottle}", "{enclosure}"),
    *("the {enclosure}", "{agent}", "{stock}", "no {number}", "no {digits}", "no {mix}", "no {volume}"),
    *("no i said {number}", "no i said {mix}", "i said {volume}", "yes {number}", "yes {mix}"),
)
"""Answers to what the tool asks: they belong to no file of intents/, since they carry the waiting question's intent."""

CALLED_EVERY = 2
"""With a call word, every n-th sentence begins with it."""
CALLED_ALONE = 300
"""Sentences that are nothing but the call word."""

_BEFORE = ("okay", "right", "so", "um", "and", "hey", "now", "please", "can you tell me", "excuse me", "alright")
_AFTER = ("please", "now", "then", "again", "today", "thanks")
_SLOT = re.compile(r"\{(\w+)\}")
_WITH_ARTICLE = ("bottle", "enclosure", "animal", "measure", "stock")
_APART = re.compile(r"\s+'s\b")
_TWICE = re.compile(r"\b(?:the|my|a) the ")
_SHORTENED = tuple(
    (re.compile(full), short)
    for full, short in (
        (r"\b(i) am\b", r"\1'm"),
        (r"\b(i|you|we|they) have\b", r"\1've"),
        (r"\b(i|you|he|she|it|we|they) will\b", r"\1'll"),
        (r"\b(he|she|it|that|what|where|there|who|how) is\b", r"\1's"),
        (r"\b(you|we|they) are\b", r"\1're"),
        (r"\b(do|does|did|is|are|was|has|have|had|would|could|should) not\b", r"\1n't"),
        (r"\bcannot\b", "can't"),
        (r"\blet us\b", "let's"),
    )
)
"""Phrasings are written out; people say them short."""

STEPS: tuple[str, ...] = (
    *("moved out", "cleared", "cleaned out", "washed", "scrubbed", "soap rinsed off", "sprayed", "applied", "soaked"),
    *("rinsed", "wiped", "dried", "dry", "aired", "aired out", "back in", "move out", "clear", "wash", "spray"),
    *("rinse", "wipe", "air", "holding", "airing", "drying", "washing", "rinsing", "spraying"),
)
"""Said forms of a round's steps, for {step}."""

WHEN: tuple[str, ...] = (
    *("yesterday", "this morning", "last night", "last week", "on monday", "on tuesday", "on wednesday", "on thursday"),
    *("on friday", "on saturday", "on sunday", "last tuesday", "two days ago", "a week ago", "an hour ago", "just now"),
    *("ten minutes ago", "yesterday at four", "at half past three", "this afternoon", "on the third of may"),
)
MATERIALS: tuple[str, ...] = (
    *("glass", "acrylic", "plastic", "wood", "cork", "silicone", "metal", "stainless steel", "stone", "tile", "mesh"),
    *("melamine", "plywood", "slate", "fabric"),
)
ITEMS: tuple[str, ...] = (
    *("water bowl", "bowls", "dishes", "tongs", "branches", "hides", "plastic plants", "towels", "cloth", "sponge"),
    *("brush", "scoop", "bucket", "cork bark", "decor"),
)
"""A few of the many, so that what is heard has the shape of the question; the words themselves are in the phrasings."""


LONG_PHRASING = 6
"""Words up to which a phrasing is short, and mostly one that is also spoken."""
SHORT_SEEN, LONG_SEEN = 6, 12
"""Phrasings that every word of a sampled one stands in, for a short and for a long one. What is typed in many ways has
words that the ear must not listen for: with all of them in, "one in thirty two" was heard as "thirty to you". Of 256
clips of unseen sentences 92 % were right or confirmed with 6 and 12 (1,243 words), 91 % with 3 and 6 (1,560 words)."""


def _spoken(questions: Iterable[Question]) -> dict[str, tuple[str, ...]]:
    """The phrasings that are sampled, by question."""
    asked = tuple(questions)
    seen = Counter(word for question in asked for phrasing in question.phrasings for word in set(phrasing.split()))
    return {
        question.name: (
            *(phrasing for phrasing in question.phrasings if _often_said(phrasing, seen)),
            question.example,
        )
        for question in asked
    }


def _often_said(phrasing: str, seen: Counter[str]) -> bool:
    """Whether each of its words stands in enough other phrasings."""
    words = phrasing.split()
    least = SHORT_SEEN if len(words) <= LONG_PHRASING else LONG_SEEN
    return all(seen[word] >= least for word in words)


def sayable(
    questions: Iterable[Question],
    household: Household,
    agents: Iterable[Agent] = (),
    organisms: Iterable[Organism] = (),
    call_word: str = "",
) -> Sayable:
    """Gather what may be said.

    agents, organisms: all that the facts know; agents that stand on the keeper's shelf are named more often.
    """
    named = {
        "bottle": [(bottle.name, *bottle.also, *_by_colour(bottle.colour)) for bottle in household.bottles],
        "stock": [(stock.name, *stock.also) for stock in household.stocks],
        "measure": [(measure.name, *measure.also) for measure in household.measures],
        "enclosure": [(home.name, *home.also, *_by_animal(home.animal)) for home in household.enclosures],
        "animal": [_by_animal(home.animal) for home in household.enclosures],
        "organism": [(organism.name, *organism.also) for organism in organisms],
        "step": [STEPS],
        "when": [WHEN],
        "material": [MATERIALS],
        "item": [ITEMS],
    }
    shelf = {stock.agent for stock in household.stocks}
    return Sayable(
        phrasings=_spoken(questions),
        names={
            **{slot: tuple(sorted({name for names in groups for name in names})) for slot, groups in named.items()},
            "agent": _agents(list(agents), shelf),
        },
        call_word=call_word,
    )


def _agents(agents: list[Agent], shelf: set[str]) -> tuple[str, ...]:
    """Every agent's names; those on the shelf make up half, and an everyday name counts three times."""
    every = [name for agent in agents for name in (agent.name, *agent.also)]
    own = [name for agent in agents if agent.id in shelf for name in (*(agent.name,) * 3, *agent.also)]
    return tuple(every) + tuple(own) * (len(every) // len(own) if own else 0)


def _by_colour(colour: str) -> tuple[str, ...]:
    return (f"{colour} bottle", f"{colour} one") if colour else ()


def _by_animal(animal: str) -> tuple[str, ...]:
    return (f"{animal}", f"{animal}'s") if animal else ()


def sentences(said: Sayable, share: Share | None = None) -> list[Words]:
    """Sample sentences, questions and ordinary talk mixed."""
    share = share or Share()
    chance = random.Random(share.seed)
    fill = _Fill(said.names, chance)
    sample: list[Words] = []
    for name in sorted(said.phrasings):
        weighed = [(phrasing, share.with_slot if "{" in phrasing else 1) for phrasing in said.phrasings[name]]
        sample += [_dressed(fill(phrasing), chance) for phrasing in _spread(weighed, share.a_question)]
    sample += [fill(phrasing) for phrasing in _spread([(phrasing, 1) for phrasing in FOLLOW_UPS], share.follow_ups)]
    call = words_of(said.call_word)
    if call:
        sample = [(*call, *words) if n % CALLED_EVERY == 0 else words for n, words in enumerate(sample)]
        sample += [call] * CALLED_ALONE
    talk = [words_of(sentence) for sentence in SENTENCES]
    wanted = round(len(sample) * share.chatter / (1 - share.chatter))
    sample += [talk[n % len(talk)] for n in range(max(wanted, len(talk)))]
    return [words for words in sample if words]


def _spread(weighed: list[tuple[str, int]], wanted: int) -> Iterator[str]:
    """Each phrasing by its weight, over and over until so many are had, each at least once."""
    once = [phrasing for phrasing, weight in weighed for _ in range(weight)]
    return islice(cycle(once), max(wanted, len(once)))


def _dressed(words: Words, chance: random.Random) -> Words:
    if not words:
        return words
    before = words_of(chance.choice(_BEFORE)) if chance.random() < 0.12 else ()
    after = words_of(chance.choice(_AFTER)) if chance.random() < 0.08 else ()
    return (*before, *words, *after)


class _Fill:
    """Fills one phrasing at a time. A slot that nothing can stand in gives no sentence."""

    def __init__(self, names: Mapping[str, tuple[str, ...]], chance: random.Random) -> None:
        self._names = names
        self._chance = chance
        self._counted: Mapping[str, Callable[[random.Random], str]] = {
            "volume": volume,
            "mix": mix,
            "duration": duration,
            "temperature": temperature,
            "number": number,
            "digits": digits,
            "stock_strength": strength,
        }

    def __call__(self, phrasing: str) -> Words:
        filled = _APART.sub("'s", phrasing)
        for slot in _SLOT.findall(phrasing):
            if slot in self._counted:
                words = self._counted[slot](self._chance)
            elif self._names.get(slot):
                words = self._chance.choice(self._names[slot])
                if slot in _WITH_ARTICLE and self._chance.random() < 0.5:
                    words = f"the {words}"
            else:
                return ()
            filled = filled.replace(f"{{{slot}}}", words, 1)
        filled = _TWICE.sub("the ", filled)
        for full, short in _SHORTENED:
            if self._chance.random() < 0.6:
                filled = full.sub(short, filled)
        return words_of(filled)


# ---------------------------------------------------------------- spoken numbers and amounts


def number(chance: random.Random) -> str:
    """A whole number as said. Every word for a number is about as likely as its neighbour, so that the sound decides
    between fifteen and fifty, never the model."""
    kind = chance.random()
    if kind < 0.30:
        return ONES[chance.randint(1, 12)]
    if kind < 0.50:
        return number_words(chance.randint(13, 19))
    if kind < 0.70:
        return TENS[chance.randint(2, 9)]
    if kind < 0.88:
        return number_words(chance.randint(2, 9) * 10 + chance.randint(1, 9))
    hundreds = chance.randint(1, 9)
    if kind < 0.93:
        return f"{ONES[hundreds]} hundred"
    rest = number_words(chance.randint(10, 99))
    return chance.choice((f"{ONES[hundreds]} hundred {rest}", f"{ONES[hundreds]} hundred and {rest}"))


def digits(chance: random.Random) -> str:
    """A number digit by digit, as it is said back when in doubt."""
    return " ".join(ONES[chance.randint(0, 9)] for _ in range(chance.choice((2, 2, 2, 3))))


def decimal(chance: random.Random) -> str:
    """A number with a point or a fraction."""
    point = f"point {ONES[chance.randint(1, 9)]}"
    return chance.choice(
        (
            f"{ONES[chance.randint(1, 12)]} {point}",
            f"{ONES[chance.randint(1, 12)]} {point}",
            point,
            f"zero {point}",
            f"zero point zero {ONES[chance.randint(1, 9)]}",
            f"{ONES[chance.randint(1, 9)]} and a half",
        )
    )


def volume(chance: random.Random) -> str:
    """A volume: mostly millilitres, as on a keeper's bottles."""
    kind = chance.random()
    if kind < 0.55:
        unit = chance.choice(("mils", "mils", "mil", "millilitres", "millilitre"))
        return f"{_bottle_size(chance)} {unit}"
    if kind < 0.65:
        return f"{decimal(chance)} {chance.choice(('mils', 'litres', 'millilitres', 'gallons'))}"
    if kind < 0.80:
        return chance.choice(
            ("a litre", "one litre", "half a litre", "a litre and a half", "two litres", "one and a half litres")
        )
    if kind < 0.88:
        return f"{number(chance)} {chance.choice(('litres', 'litre'))}"
    unit = chance.choice(("gallon", "quart", "pint", "cup", "fluid ounce", "ounce", "tablespoon", "teaspoon"))
    if kind < 0.94:
        return chance.choice((f"a {unit}", f"one {unit}", f"half a {unit}", f"a quarter {unit}"))
    return f"{number(chance)} {unit}s"


def _bottle_size(chance: random.Random) -> str:
    kind = chance.random()
    hundreds = ONES[chance.randint(1, 9)]
    if kind < 0.6:
        return number(chance)
    if kind < 0.85:
        return f"{hundreds} hundred"
    return chance.choice((f"{hundreds} fifty", f"{hundreds} hundred and fifty"))


def strength(chance: random.Random) -> str:
    """A percentage."""
    return f"{chance.choice((number, decimal, decimal))(chance)} percent"


def mix(chance: random.Random) -> str:
    """A dilution: a ratio in either reading, percent, parts per million, or undiluted."""
    kind = chance.random()
    if kind < 0.70:
        return f"one {chance.choice(('in', 'in', 'to'))} {number(chance)}"
    if kind < 0.84:
        return strength(chance)
    if kind < 0.94:
        size = chance.choice((f"{ONES[chance.randint(1, 9)]} hundred", f"{ONES[chance.randint(1, 10)]} thousand"))
        return f"{chance.choice((size, number(chance)))} {chance.choice(('parts per million', 'ppm'))}"
    return chance.choice(("undiluted", "neat", "full strength", "half strength"))


def duration(chance: random.Random) -> str:
    """A time span."""
    unit = chance.choice(("minutes", "minutes", "minute", "hours", "hour", "seconds", "days", "day", "weeks"))
    kind = chance.random()
    if kind < 0.8:
        return f"{number(chance)} {unit}"
    return chance.choice(
        ("half an hour", "an hour", "a minute", "a minute and a half", "a day", "a quarter of an hour")
    )


def temperature(chance: random.Random) -> str:
    """A temperature."""
    return f"{number(chance)} degrees{chance.choice(('', '', ' celsius', ' fahrenheit'))}"
