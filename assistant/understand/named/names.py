"""Names in a text: the household's bottles, stocks, enclosures, measures and animals, and the facts' agents and germs.

Exact names first, the longest before the shorter; then slips ("bleech", "firm box") by rapidfuzz, where the words
stand for nothing else. A mention keeps every thing that it could be; which one is meant depends on the question and is
decided in `slots`.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from typing import Literal, TypeAlias

from rapidfuzz import fuzz, process

from assistant.core.facts import Facts
from assistant.core.household import Household
from assistant.understand.named.animal_names import short_forms
from assistant.understand.numbers.spoken_numbers import NUMBER_WORDS, ONES
from assistant.understand.text.english_words import Usage, spelled_right
from assistant.understand.text.known_words import words_of
from assistant.understand.text.sounds import sound_alike
from assistant.understand.text.words import Token, tokens_of

NameKind: TypeAlias = Literal["bottle", "stock", "enclosure", "animal", "measure", "agent", "organism"]


@dataclass(frozen=True, slots=True)
class Thing:
    """One thing that a name may stand for."""

    kind: NameKind
    name: str
    """The household's own name; an agent's or organism's id."""
    weak: bool = False
    """By a part of its name or by its colour alone, so a fuller name of another thing wins."""


@dataclass(frozen=True, slots=True)
class Mention:
    """A name in a text, tokens `start` up to `end`."""

    things: tuple[Thing, ...]
    said: str
    start: int
    end: int
    likeness: float = 100.0
    """Of the words to the name, 100 when exact."""


SLIPPED_WORD = 78.0
"""Cut-off of rapidfuzz's ratio for a name of one word: "vinigar" 86, "bleech" 83, "chlorhexadine" 92; "peach" 73."""
SLIPPED_NAME = 82.0
"""The same for a name of several words: "firm box" for fern box 88; "slate tub" for maple tub 67."""
SLIPPED_FOR_SURE = 92.0
"""The same for a name of several words that are all ordinary: "dessert box" for desert box 95."""
BY_EAR = 60.0
"""The same for either where it sounds the same: "chlorhexadeen" 77, "perspecks" 75."""
CLEAR_LEAD = 5.0
"""A slip that lies this close to two things is one that could be either."""
_SHORTEST_SLIP = 5
_SHORT_WORD = 4
_SHORT = 6
"""Words of a text in which a colour at the beginning or the end is surely a bottle."""

CONTAINERS = frozenset({"bottle", "bottles", "spray", "sprayer", "squirter"})
HOMES = frozenset(
    {"tub", "tank", "box", "vivarium", "viv", "enclosure", "cage", "terrarium", "bin", "hall", "rack", "house", "pen"}
)
TOOLS = frozenset({"syringe", "jug", "beaker", "spoon", "cup"})
_COMMON_ENDS = CONTAINERS | HOMES | TOOLS | {"concentrate", "cap"}


class Names:
    """Every name that is known, ready to be found in a text."""

    def __init__(self, household: Household, facts: Facts, usage: Usage, ordinary: Iterable[str] = ()) -> None:
        self._things: dict[tuple[str, ...], list[Thing]] = {}
        self._ordinary = frozenset(ordinary)
        self._usage = usage
        self._add_household(household)
        for agent in facts.agents.values():
            ids = () if agent.id == "other" else (agent.id,)  # "the other one" is no agent
            self._add(Thing("agent", agent.id), *ids, agent.name, *agent.also)
        for organism in facts.organisms.values():
            self._add(Thing("organism", organism.id), organism.id, organism.name, *organism.also)
        self._longest = max(map(len, self._things), default=0)
        self._words = frozenset(word for name in self._things for word in name)
        self._spelled = {" ".join(name): name for name in self._things}
        self._by_length: dict[int, list[str]] = {}
        for spelled, name in self._spelled.items():
            self._by_length.setdefault(len(name), []).append(spelled)
        self._bottles_of = _bottles_by_agent(household)

    @property
    def words(self) -> frozenset[str]:
        """Every word of every name."""
        return self._words

    def in_text(self, tokens: Sequence[Token]) -> tuple[Mention, ...]:
        """Every name in a text, in the order said; none overlap."""
        words = [token.text for token in tokens]
        found = self._exact(words)
        found += self._slipped(words, _places(found))
        found = [self._with_container(mention, words) for mention in found]
        return tuple(sorted(found, key=lambda mention: mention.start))

    # ------------------------------------------------------------ building

    def _add_household(self, household: Household) -> None:
        for bottle in household.bottles:
            self._add(Thing("bottle", bottle.name), bottle.name, *bottle.also)
            self._add_weak(Thing("bottle", bottle.name, weak=True), bottle.name)
            called = [name.removesuffix(" bottle") for name in bottle.also if name.endswith(" bottle")]
            self._add(Thing("bottle", bottle.name, weak=True), *(f"{name} one" for name in called))
            if bottle.name.endswith("bottle"):  # "how many yellow bottles"
                self._add(Thing("bottle", bottle.name, weak=True), f"{bottle.name}s")
            for colour in filter(None, {bottle.colour}):
                self._add(Thing("bottle", bottle.name, weak=True), f"{colour} bottle", f"{colour} one", colour)
                sprays = (f"{colour} {said}" for said in ("spray", "spray bottle", "sprayer", "stuff", "mix"))
                self._add(Thing("bottle", bottle.name, weak=True), *sprays)
        for stock in household.stocks:
            self._add(Thing("stock", stock.name), stock.name, *stock.also)
        for measure in household.measures:
            self._add(Thing("measure", measure.name), measure.name, *measure.also)
        for home in household.enclosures:
            self._add(Thing("enclosure", home.name), home.name, *home.also)
            self._add_weak(Thing("enclosure", home.name, weak=True), home.name)
            if home.animal:
                self._add(Thing("animal", home.name), home.animal, f"{home.animal}s")
                last = home.animal.split()[-1]
                self._add(Thing("animal", home.name, weak=True), last, f"{last}s", *short_forms(home.animal))

    def _add_weak(self, thing: Thing, name: str) -> None:
        """The name without its last word, where that says only what kind of thing it is: "maple" for maple tub."""
        words = _spelling(name)
        if len(words) > 1 and words[-1] in _COMMON_ENDS and not set(words[:-1]) <= NUMBER_WORDS:
            rest = words[:-1] if words[-2] != "cap" or len(words) < 3 else words[:-2]
            self._add(thing, " ".join(rest), f"{' '.join(rest)} one")
            if thing.kind == "bottle":
                self._add(thing, f"{' '.join(rest)} spray", f"{' '.join(rest)} bottle")

    def _add(self, thing: Thing, *names: str) -> None:
        for name in names:
            words = _spelling(name)
            for spelling in {words, _in_figures(words)}:
                things = self._things.setdefault(spelling, [])
                if not any((known.kind, known.name) == (thing.kind, thing.name) for known in things):
                    things.append(thing)

    # ------------------------------------------------------------ finding

    def _exact(self, words: list[str]) -> list[Mention]:
        found: list[Mention] = []
        at = 0
        while at < len(words):
            for length in range(min(self._longest, len(words) - at), 0, -1):
                things = self._things.get(tuple(words[at : at + length]))
                if length > 1 and words[at + length - 1] in ("one", "1") and _begins_number(words[at + length - 1 :]):
                    continue  # "how much for yellow one in 32"
                if things and not self._stands_for_else(words, at, length, things):
                    found.append(Mention(_strongest(things), " ".join(words[at : at + length]), at, at + length))
                    at += length
                    break
            else:
                at += 1
        return found

    def _stands_for_else(self, words: list[str], at: int, length: int, things: list[Thing]) -> bool:
        """A part of a name that is an ordinary word as well is no name, unless it stands like one.

        A bottle's colour before "tub" is the tub's.
        """
        after = words[at + length] if at + length < len(words) else ""
        if after in HOMES and all(thing.weak and thing.kind == "bottle" for thing in things):
            return True
        if (
            length > 1
            or not all(thing.weak and thing.kind != "animal" for thing in things)
            or words[at] not in self._ordinary
        ):
            return False
        before = words[at - 1] if at else ""
        if after in ("one", "1") and _begins_number(words[at + 1 :]):
            after = ","  # "for yellow one in 32"
        if (
            before in _FILLS
            and (after in _AFTER_FILLED or (after,) in self._things)
            and any(thing.kind == "bottle" for thing in things)
        ):
            return words[at] in _NEVER_ALONE  # "filled yellow bleach one in 32"
        if words[at] == "clear" and before in _INTO and after in ("", "?", ".", "with", "and"):
            return all(thing.kind != "bottle" for thing in things)  # "what's in clear", "filled clear with alcohol"
        if before in _DONE_TO and after in _AFTER_WHAT_IS_DONE and all(thing.kind == "enclosure" for thing in things):
            return before == "cleaned" and words[at] in _NEVER_ALONE  # "sprayed river", "spot cleaned river and desert"
        if words[at] in _NEVER_ALONE:
            return True
        if self._is_put_on(words, at):
            return False
        if after and after not in _AFTER_A_NAME:
            return True
        if before in _BEFORE_A_COLOUR or (before in ("the", "my") and at > 1 and words[at - 2] in _BEFORE_A_COLOUR):
            return False
        if before == "it" and at > 1 and words[at - 2] in ("make", "made", "do") and not after:
            return all(thing.kind != "bottle" for thing in things)  # "no, make it yellow"
        if (
            before in _AFTER_ANOTHER
            and set(words[:at]) & _OF_A_FILL
            and any(thing.kind == "bottle" for thing in things)
        ):
            return False  # "filled yellow with bleach and pink with chlorhexidine", "rinsed out green"
        if before in ("is", "are") and at == 1 and any(thing.kind == "bottle" for thing in things):
            return False  # "is yellow still good"
        if words[0] in ("start", "begin", "starting") and not after and any(thing.kind == "bottle" for thing in things):
            return False  # "start river tank yellow"
        if before in _BEFORE_A_BOTTLE and any(thing.kind == "bottle" for thing in things):
            return False  # "made the pink up last night", "doing a fresh yellow"
        opens = at == 0 and after in ("'s", "has")
        return not (
            opens or (len(words) <= _SHORT and before in ("", "the", "my", "no", "and", "sorry", "meant", "actually"))
        )

    def _is_put_on(self, words: list[str], at: int) -> bool:
        """ "Sprayed the green on it", "the rest of the green", "green and yellow": a colour that is a bottle."""
        verb = words[at - 2] if at > 1 and words[at - 1] in ("the", "my") else words[at - 1] if at else ""
        if verb in _PUT_ON or words[max(0, at - 3) : at] == ["rest", "of", "the"]:
            return self._is_bottle(words[at])
        pairs = [(at + 1, at + 2), (at - 1, at - 2)]
        beside = [words[other] for joint, other in pairs if 0 <= other < len(words) and words[joint] == "and"]
        return self._is_bottle(words[at]) and any(map(self._is_bottle, beside))

    def _is_bottle(self, word: str) -> bool:
        return any(thing.kind == "bottle" for thing in self._things.get((word,), ()))

    def _slipped(self, words: list[str], taken: frozenset[int]) -> list[Mention]:
        candidates: list[Mention] = []
        for at in range(len(words)):
            for length in range(1, min(self._longest, len(words) - at) + 1):
                window = words[at : at + length]
                if taken.isdisjoint(range(at, at + length)) and self._may_be_slip(window):
                    candidates += self._nearest(window, at)
        chosen: list[Mention] = []
        for mention in sorted(candidates, key=lambda m: (-m.likeness - 4 * (m.end - m.start), m.start)):
            if all(mention.end <= other.start or mention.start >= other.end for other in chosen):
                chosen.append(mention)
        return chosen

    def _may_be_slip(self, window: list[str]) -> bool:
        """Words that stand for nothing else; a word of a name beside them may help."""
        if not all(word[:1].isalpha() for word in window):
            return False
        if len(window) > 1 and (window[0] in _NEVER_FIRST or window[-1] in _NEVER_LAST):
            return False  # "a disinfectant" is no slip of "pine disinfectant"
        strange = [word for word in window if word not in self._ordinary and word not in NUMBER_WORDS]
        unknown = [word for word in strange if word not in self._words]
        if len(window) == 1:
            return bool(unknown) and len(window[0]) >= _SHORTEST_SLIP
        ends_like_one = window[-1] in _COMMON_ENDS and window[0] not in _NEVER_FIRST
        return bool(unknown) or ends_like_one

    def _nearest(self, window: list[str], at: int) -> list[Mention]:
        said = " ".join(window)
        cut_off = SLIPPED_WORD if len(window) == 1 else SLIPPED_NAME
        if all(word in self._ordinary or word in NUMBER_WORDS for word in window):
            cut_off = SLIPPED_FOR_SURE
        names = self._by_length.get(len(window), [])
        if len(window) > 1:  # "chlor hexidine", "vin egar": one word heard as two
            names = names + self._by_length.get(1, [])
        by_ear = any(
            len(word) >= _SHORT_WORD and not spelled_right(word, self._usage) for word in window
        )  # "bake a" is no beaker
        nearest = process.extract(said, names, scorer=fuzz.ratio, score_cutoff=BY_EAR, limit=8)
        close = [
            (name, score)
            for name, score, _ in nearest
            if self._may_be(window, said, name) and (score >= cut_off or (by_ear and sound_alike(said, name)))
        ]
        if not close:
            return []
        best = close[0][1]
        things: list[Thing] = []
        for name, score in close:
            if score >= best - CLEAR_LEAD:
                things += [thing for thing in self._things[self._spelled[name]] if thing not in things]
        if len(window) == 1 and spelled_right(said, self._usage) and all(thing.weak for thing in things):
            return []  # "agree" is no green
        return [Mention(_strongest(things), said, at, at + len(window), best)]

    def _may_be(self, window: list[str], said: str, name: str) -> bool:
        return self._same_numbers(window, name) and abs(len(name) - len(said)) <= 3

    def _same_numbers(self, window: list[str], name: str) -> bool:
        """A name never swallows a number word that isn't its own."""
        own = [word for word in name.split() if word in NUMBER_WORDS]
        return [word for word in window if word in NUMBER_WORDS] == own

    def _with_container(self, mention: Mention, words: list[str]) -> Mention:
        """ "the bleach bottle", "the vinegar one": the bottles that are for that agent."""
        after = words[mention.end] if mention.end < len(words) else ""
        if after not in ("bottle", "one", "spray", "sprayer") or mention.things[0].kind not in ("agent", "stock"):
            return mention
        if after == "one" and _begins_number(words[mention.end :]):
            return mention  # "bleach one in thirty-two"
        agents = [thing.name for thing in mention.things if thing.kind == "agent"]
        stocks = [thing.name for thing in mention.things if thing.kind == "stock"]
        bottles = [b for key in (*stocks, *agents) for b in self._bottles_of.get(key, ())]
        things = tuple(Thing("bottle", name) for name in dict.fromkeys(bottles))
        return Mention(
            (*things, *mention.things), f"{mention.said} {after}", mention.start, mention.end + 1, mention.likeness
        )


def _begins_number(words: Sequence[str]) -> bool:
    """True when a "one" begins a number or a ratio: "one in ten", "one fifty", "one part to nine"."""
    after, second = (*words[1:3], "", "")[:2]
    if after in ("part", "parts", "colon", ":", "point", "hundred", "thousand", "percent", "half", "litre", "liter"):
        return True
    if after in ("in", "to", "into", "two", "too", "out", "and"):
        return second in NUMBER_WORDS or second[:1].isdecimal() or second in ("every", "for", "a", "of")
    return after in NUMBER_WORDS


# A bottle may be called clear and a cage window; said alone, these words are a step, an opening, a state.
_NEVER_ALONE = frozenset({"clear", "window", "door", "spray", "dry", "wet", "water", "clean", "new", "next", "spare"})
_DONE_TO = frozenset({"cleaned", "sprayed", "rinsed", "washed", "dried", "wiped", "misted"})
_AFTER_WHAT_IS_DONE = frozenset({"", ".", ",", "and", "then", "too", "now"})
_AFTER_A_NAME = frozenset(
    {
        "?",
        "!",
        ".",
        ",",
        ";",
        "please",
        "'s",
        "is",
        "was",
        "has",
        "had",
        "with",
        "at",
        "now",
        "still",
        "then",
        "yet",
        "and",
        "from",
        *("up", "this", "last", "yesterday", "today", "tonight", "again", "instead", "not", "earlier", "just", "by"),
        *("stayed", "kept", "dried", "rinsed", "sprayed", "washed", "wiped", "looks", "smells", "needs"),
        *("to", "tomorrow", "will", "would", "should", "can", "did", "does", "since", "before", "after", "or", "got"),
    }
)
_AFTER_ANOTHER = frozenset({"and", ",", "plus", "out", "or"})
_OF_A_FILL = frozenset(
    {"filled", "refilled", "fill", "mixed", "topped", "made", "put", "poured", "rinsed", "flushed", "emptied", "washed"}
)
_FILLS = frozenset({"fill", "filled", "refilled"})
_AFTER_FILLED = NUMBER_WORDS | frozenset(
    {"fresh", "freshly", "an", "a", "about", "around", "half", "ages", "first", "over", "full", "halfway", "too"}
)
_INTO = frozenset({"in", "into", "fill", "filled", "refilled"})
_BEFORE_A_BOTTLE = frozenset({"the", "my", "that", "this", "fresh", "new", "full", "of", "made", "flushed", "rinsed"})
"""Words before a colour that is a bottle's, wherever in a sentence it stands."""
_PUT_ON = words_of(
    """
    spray sprayed spraying sprays mist misted misting squirt squirted squirting put putting pour poured pouring
    wipe wiped wiping hit hitting apply applied applying add added adding mix mixed mixing tip tipped tipping
    dump dumped use used
    using
    """
)
"""Verbs after which a bottle's colour is that bottle."""
_BEFORE_A_COLOUR = frozenset(
    {
        "both",
        "then",
        "in",
        "into",
        "for",
        "from",
        "with",
        "fill",
        "filled",
        "mix",
        "mixed",
        "mixing",
        "refilled",
        "topped",
        "up",
        "use",
        "used",
        "using",
    }
)
_NEVER_LAST = frozenset({"it", "is", "was", "the", "i"})  # "for god's sake it" is no slip of "snake mite"
_NEVER_FIRST = frozenset(
    {"the", "a", "an", "my", "in", "of", "for", "to", "and", "is", "it", "that", "this", "his", "her"}
)


def _spelling(name: str) -> tuple[str, ...]:
    return tuple(token.text for token in tokens_of(name) if token.text not in ("the", "'s"))


_FIGURES = {word: str(value) for word, value in ONES.items()}


def _in_figures(words: tuple[str, ...]) -> tuple[str, ...]:
    """ "tub two" also as "tub 2", and the other way about."""
    spoken = {figure: word for word, figure in _FIGURES.items()}
    return tuple(_FIGURES.get(word) or spoken.get(word) or word for word in words)


def _strongest(things: Sequence[Thing]) -> tuple[Thing, ...]:
    """Full names before parts of names."""
    full = tuple(thing for thing in things if not thing.weak)
    return full or tuple(things)


def _places(mentions: Iterable[Mention]) -> frozenset[int]:
    return frozenset(place for mention in mentions for place in range(mention.start, mention.end))


def _bottles_by_agent(household: Household) -> Mapping[str, tuple[str, ...]]:
    """Bottles by the stock they are for, and by its agent."""
    found: dict[str, tuple[str, ...]] = {}
    for bottle in household.bottles:
        stock = household.stock(bottle.stock)
        if stock is not None:
            found[stock.name] = (*found.get(stock.name, ()), bottle.name)
            found[stock.agent] = (*found.get(stock.agent, ()), bottle.name)
    return found
