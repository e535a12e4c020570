"""Text to reading: which question was asked, with which slots, and how sure that is.

The order is one of safety. Harm first; then agents that meet; then what is said to be done, where anything that isn't
plainly a claim is kept from counting; then answers to what the tool asked; then the nearest question, or none.
"""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import dataclass, replace
from functools import lru_cache

from assistant.contract import Doubt, Heard, Pending, Question, Reading, Slots, World
from assistant.core.facts import Facts
from assistant.core.household import Household
from assistant.core.rounds import is_open
from assistant.understand import alarms, fills, follow_up
from assistant.understand.certainty import HARM, best_of, with_doubts, with_guess_doubted
from assistant.understand.claimed_steps import WORDS as CLAIM_WORDS
from assistant.understand.claimed_steps import Claims, bare_done, claims_in, dried_early, only_dried, steps_named
from assistant.understand.cries import cry_in
from assistant.understand.drains import nobody_knows, stored
from assistant.understand.follow_up import Answering
from assistant.understand.harm_patterns import WORDS as CRY_WORDS
from assistant.understand.items_said import asked_of_items
from assistant.understand.known_words import CONNECTING, EVERYDAY
from assistant.understand.learning import OUTSIDE
from assistant.understand.matching import Matcher, rows_of, texts_of, words_of
from assistant.understand.may_be import ANOTHER_MATTER, HAS_STEP_WORD, LOOKS_BACK, may_be
from assistant.understand.meeting import meets
from assistant.understand.names import Names
from assistant.understand.openings import openings_in
from assistant.understand.parsing import Parsed, Parser, matched_words
from assistant.understand.referents import with_referent
from assistant.understand.scaled import factor_in
from assistant.understand.short_slips import LONGEST, told_apart
from assistant.understand.slots import Asked, slots_of
from assistant.understand.surface import of_the_surface, smell_answer, wet_answer, where_it_was_asked
from assistant.understand.told import WORDS as TOLD_WORDS
from assistant.understand.told import Told, told_in
from assistant.understand.weights import opened
from assistant.understand.words import ARTICLES

ENOUGH = 0.55
"""Least chance of a question that is taken. Held out, 94 % of the lines outside stay below it, and 2 % of phrasings
come out as a wrong question (tests/bench/README.md)."""
STRANGE_ENOUGH = 0.85
"""The same for a question that names nothing, in a text with a word that no phrasing has: "next episode"."""
BY_ITS_WORDS = 0.33
"""The same for the likeliest question when it is asked in words that are hardly about anything else."""
FEW_WORDS = 4
"""In a text of no more words a strange word is half of what was said, and no likeness is enough: "next train"."""
NEVER = 1.0
"""A chance that none reaches."""
BY_RULE = 0.97
"""Confidence of a reading found by rule: harm, agents that meet, plain claims."""
OUTSIDE_FOR_SURE = 0.80
"""A claim in a text that is this surely about something else is none."""
NOT_YET_OUTSIDE = 0.97
"""The same for "haven't rinsed", "will rinse later", which record nothing."""


@dataclass(frozen=True, slots=True)
class _Look:
    """One text as it was looked at."""

    parsed: Parsed
    claims: Claims
    chances: Mapping[str, float]
    told: Told
    world: World
    spoken: bool

    @property
    def top(self) -> str:
        return max(self.chances, key=lambda label: self.chances[label])

    @property
    def nearest(self) -> tuple[str, ...]:
        ranked = sorted(
            (label for label in self.chances if label not in _NEVER_OFFERED), key=lambda label: -self.chances[label]
        )
        return tuple(ranked[:2])


class Reader:
    """Reads the turns of one household. Built once; knows nothing of the turn before but what the world holds."""

    def __init__(self, household: Household, facts: Facts, questions: Mapping[str, Question], weights: bytes) -> None:
        self._matcher = Matcher(rows_of(questions), opened(weights).model)
        vocabulary = self._matcher.vocabulary | EVERYDAY | CLAIM_WORDS | CRY_WORDS | alarms.WORDS | TOLD_WORDS
        self._parser = Parser(Names(household, facts, vocabulary), household.habits.gallon or "US", vocabulary)
        self._parse = lru_cache(maxsize=64)(self._parser)
        self._questions = questions
        self._facts = facts
        self._short_answers = texts_of(questions, "yes", "no")
        self._yes = words_of(questions, "yes")
        self._no = words_of(questions, "no")
        self._known = vocabulary
        self._own = {name: words_of(questions, name) | CONNECTING for name in _ABOUT_TALK}
        self._short = {
            text: name for name in _SHORT for text in texts_of(questions, name) if len(text.split()) <= LONGEST
        }

    def __call__(self, heard: Heard, world: World) -> Reading:
        """The reading of one turn; for a heard one, of its likeliest alternative, with its doubts."""
        if not heard.spoken:
            return self._read(heard.text, world, spoken=False)
        text, reading = best_of(heard, lambda said: self._read(said, world, spoken=True))
        return with_doubts(reading, text, heard, self._parse)

    def _read(self, text: str, world: World, spoken: bool) -> Reading:
        parsed = self._parse(text)
        claims = claims_in(parsed.plain)
        told = told_in(parsed.plain)
        look = _Look(parsed, claims, self._matcher.chances(parsed.words), told, world, spoken)
        return (
            self._harm(look)
            or self._escape(look)
            or self._meeting(look)
            or self._spill(look)
            or self._filled(look)
            or self._in_talk(look)
            or self._question(look)
        )

    # ------------------------------------------------------------ before anything else

    def _harm(self, look: _Look) -> Reading | None:
        cry = cry_in(look.parsed.plain)
        if cry is None or cry.intent not in self._questions:
            return None
        slots = self._slots(look, cry.intent)
        slots = replace(_without_troubles(slots), place=cry.place, victim=cry.victim)
        return self._reading(look, cry.intent, slots, BY_RULE)

    def _escape(self, look: _Look) -> Reading | None:
        """An animal that got out; with one loose on record also that it is found."""
        if "escape" not in self._questions:
            return None
        plain, state = look.parsed.plain, look.world.state
        waits = any("move out" in r.done and is_open(r) for r in state.rounds.values())
        found = alarms.found(plain) and bool(state.loose)
        if not found and not alarms.escaped(plain, one_waits=waits):
            return None
        slots = replace(_without_troubles(self._slots(look, "escape")), found=found)
        return self._reading(look, "escape", slots, BY_RULE)

    def _spill(self, look: _Look) -> Reading | None:
        if "spill" not in self._questions or not alarms.spilled(look.parsed.plain):
            return None
        return self._reading(look, "spill", _without_troubles(self._slots(look, "spill")), BY_RULE)

    def _meeting(self, look: _Look) -> Reading | None:
        if "together" not in self._questions:
            return None
        if "store_it" in self._questions and stored(look.parsed.plain):
            return self._reading(look, "store_it", self._slots(look, "store_it"), BY_RULE)
        slots = self._slots(look, "together")
        if "mixed" in self._questions and fills.tells(look.parsed.plain):
            return self._reading(look, "mixed", self._slots(look, "mixed"), BY_RULE)
        met = meets(look.parsed, slots, look.world, look.chances.get("together", 0.0))
        if met is None:
            return None
        return self._reading(look, "together", replace(slots, met=met, steps=()), BY_RULE)

    def _filled(self, look: _Look) -> Reading | None:
        """ "Filled", right after a dose was told: that is what went in."""
        if "mixed" not in self._questions or not fills.bare_fill(look.parsed.plain):
            return None
        told = fills.of_the_dose(self._slots(look, "mixed"), look.world)
        if told is None:
            return None
        slots, doubts = told
        return replace(self._reading(look, "mixed", slots, BY_RULE), doubts=doubts)

    # ------------------------------------------------------------ answers to what was asked

    def _in_talk(self, look: _Look) -> Reading | None:
        plain = look.parsed.plain.strip(" .!?,")
        pending = follow_up.pending_of(look.world)
        if pending is not None and "start_over" in pending.missing and follow_up.goes_on(look.parsed):
            return follow_up.supplied(Answering(look.parsed, Slots(), look.spoken), pending)
        answer = self._yes_or_no(look, pending)
        if answer is not None:
            return answer
        if pending is not None:
            wet = wet_answer(look, pending) or smell_answer(look, pending)
            if wet is not None:
                return wet
        share = self._share_of_it(look, pending)
        if share is not None:
            return share
        short = follow_up.is_short(look.parsed, _asked_before(look, pending))
        if not short or plain in _EXACT or (look.claims.done and not (pending and "step" in pending.missing)):
            return None
        return self._joined(look, pending)

    def _yes_or_no(self, look: _Look, pending: Pending | None) -> Reading | None:
        """A yes or a no, and any other very short text that was misspelt or misheard."""
        asked = pending is not None or look.world.talk.takes_back
        slipped = told_apart(self._short, matched_words(look.parsed.as_said), self._known, asked)
        if slipped is not None:
            return self._reading(look, slipped, self._slots(look, slipped), 0.9)
        claims, waits = look.claims, pending is not None and pending.on_yes is not None
        if waits and _NO_STEP.match(look.parsed.plain) and claims.polarity == "not yet" and not claims.done:
            return self._reading(look, "no", Slots(), 0.9)  # "no, I haven't rinsed it"
        if self._says(look, self._no) and look.top in ("no", OUTSIDE, "undo", "status"):
            return self._reading(look, "no", Slots(), 0.95)
        if self._says(look, self._yes) and look.top in ("yes", OUTSIDE):
            return self._reading(look, "yes", Slots(), 0.95)
        return None

    def _joined(self, look: _Look, pending: Pending | None) -> Reading | None:
        """A short turn joined to the question that it answers, corrects or repeats."""
        before = pending.reading if pending is not None else look.world.talk.last_reading
        if before is None or before.intent is None:
            return None
        full = look.chances[look.top] >= ENOUGH and look.top not in (OUTSIDE, before.intent, "yes", "no")
        full = full and not (look.top in _OF_AN_AMOUNT and follow_up.asks_for_another(look.parsed))
        slots = replace(self._slots(look, before.intent), place=follow_up.place_in(look.parsed.plain))
        if pending is not None and "step" in pending.missing:
            slots = replace(slots, steps=look.claims.done or steps_named(look.parsed.plain))
        answering = Answering(look.parsed, slots, look.spoken)
        if follow_up.corrects(look.parsed, before.intent) and (
            pending is not None or follow_up.may_be_asked_again(before.intent, look.world)
        ):
            corrected = follow_up.corrected(answering, before, look.world)
            if corrected is not None:
                return corrected
        if pending is not None and pending.missing and (not full or follow_up.starts_with_yes(look.parsed.plain) == ""):
            return follow_up.supplied(answering, pending)
        if (
            follow_up.asks_for_another(look.parsed, before.intent)
            and follow_up.may_be_asked_again(before.intent, look.world)
            and not full
        ):
            return follow_up.corrected(answering, before, look.world)
        if pending is None and self._same_again(look, before):
            return follow_up.corrected(answering, before, look.world)
        if pending is not None and pending.reading.doubts:
            return follow_up.corrected(answering, before, look.world)
        return None

    def _share_of_it(self, look: _Look, pending: Pending | None) -> Reading | None:
        """ "What about half of that", after an amount."""
        before = look.world.talk.last_reading
        if pending is not None or before is None or look.claims.mentioned or len(look.parsed.words) > LONGEST + 2:
            return None
        other = look.top not in (OUTSIDE, before.intent) and look.chances[look.top] >= ENOUGH
        if other or not follow_up.may_be_asked_again(before.intent, look.world):
            return None
        if factor_in(look.parsed.plain) is None:
            return None
        return follow_up.corrected(Answering(look.parsed, Slots(), look.spoken), before, look.world)

    def _same_again(self, look: _Look, before: Reading) -> bool:
        """ "1 in 50" right after an amount was given, or a bare name after a look: the same for that one.

        A question in full ("how much bleach at 500 ppm") asks anew: the bottle of the one before isn't taken for it.
        """
        last = look.world.talk.last
        if last is None or last.intent != before.intent or not follow_up.may_be_asked_again(before.intent, look.world):
            return False
        if set(look.parsed.words) <= _A_NAME and look.parsed.mentions:
            return True
        if before.intent == "treat_item" and set(look.parsed.words) <= _A_NAME | {"in", "with", "using"}:
            return bool(look.parsed.mentions)
        amounts = any(found.kind in ("mix", "volume") for found in look.parsed.amounts.found)
        return before.intent == "dose" and amounts and look.parsed.words[0] not in _ASKS_IN_FULL

    def _says(self, look: _Look, words: frozenset[str]) -> bool:
        said, plain = look.parsed.words, look.parsed.plain
        asks = plain.endswith("?") or (not plain.startswith("do not") and plain.split(" ", 1)[0] in _ASKS_OR_TELLS)
        asks = (
            asks or not look.parsed.tokens or look.parsed.tokens[-1].text in ARTICLES - {"that", "this"}
        )  # "it is the" is cut short
        word_for_word = " ".join(said) in self._short_answers
        plainly = bool(set(said) & _YES_OR_NO) or word_for_word
        if set(said) & _ASKING and not word_for_word:
            return False  # "no wait what was I"
        short = 0 < len(said) <= 6 or word_for_word
        return short and set(said) <= words and plainly and not asks

    # ------------------------------------------------------------ a question of its own

    def _question(self, look: _Look) -> Reading:
        if "unknown_bottle" in self._questions and nobody_knows(look.parsed.plain):
            return self._reading(look, "unknown_bottle", self._slots(look, "unknown_bottle"), BY_RULE)
        intent, confidence = of_the_surface(look, look.world) or self._claimed(look) or self._nearest(look)
        if intent is None and (thing := asked_of_items(look.parsed.plain, self._facts)) in self._questions:
            intent, confidence = thing, max(confidence, ENOUGH)
        if intent is None:
            slots = Slots(stayed_wet=False) if _says_it_dried(look) else Slots()
            return Reading(look.parsed.text, None, slots, confidence, look.nearest, (), look.spoken)
        slots = self._slots(look, intent)
        if intent in HARM:
            slots = _without_troubles(slots)
        slots = where_it_was_asked(intent, slots, look.world)
        slots = with_referent(slots, intent, look.parsed.plain, look.world)
        reading = self._reading(look, intent, slots, confidence)
        if intent == "done" and look.claims.polarity == "doubtful":
            step = slots.steps[0] if slots.steps else "done"
            reading = replace(reading, doubts=(Doubt("polarity", step),))
        return reading if not look.parsed.guessed else with_guess_doubted(reading, look.parsed)

    def _claimed(self, look: _Look) -> tuple[str | None, float] | None:
        """`done` or `status` for what is said of steps; None: nothing is."""
        claims, chances, plain = look.claims, look.chances, look.parsed.plain
        if only_dried(plain):
            return "done", max(chances["done"], 0.9)
        if _says_it_dried(look):
            return None
        if claims.polarity in ("asked", "not yet") and not claims.done:
            return self._of_steps(look) if claims.mentioned else None
        if claims.done:
            sure = chances[OUTSIDE] < OUTSIDE_FOR_SURE or len(look.parsed.words) == 1
            no_bottle = look.top == "rinsed_out" and "bottle" not in plain.lower()
            wins = look.top not in _BEATS_A_CLAIM or no_bottle or chances["done"] >= 0.25
            return ("done", max(chances["done"], 0.9)) if sure and wins else None
        told = look.top == "air_time" and chances["done"] >= 0.25
        opened = openings_in(plain) is not None and (told or look.top in ("done", OUTSIDE))
        if (opened or bare_done(plain)) and not plain.endswith("?"):
            return "done", max(chances["done"], 0.9)
        return None

    def _of_steps(self, look: _Look) -> tuple[str | None, float] | None:
        """`status` or `return_check`, for steps that are asked about or not done yet; None: neither."""
        chances, claims = look.chances, look.claims
        if ANOTHER_MATTER.search(look.parsed.plain):
            return None
        about = chances["done"] + chances["status"]
        too_far = NOT_YET_OUTSIDE if claims.polarity == "not yet" else OUTSIDE_FOR_SURE
        if chances[OUTSIDE] >= too_far or not HAS_STEP_WORD.search(look.parsed.plain):
            return ("status", about) if about >= ENOUGH else None
        if claims.polarity == "not yet":
            fits = look.top in ("done", "status", "no", "start", "time_left", "next", "rinsed_out", OUTSIDE)
            return ("status", max(about, 0.8)) if fits else None
        if claims.mentioned == ("return",):
            return (
                ("return_check", max(chances["return_check"], 0.8))
                if max(chances["return_check"], chances["done"]) >= 0.2
                else None
            )
        looks_back = LOOKS_BACK.search(look.parsed.plain) is not None and not re.search(r"\btime\b", look.parsed.plain)
        if looks_back and (look.top in ("done", "status", OUTSIDE) or about >= 0.2):
            return "status", max(about, 0.8)
        return None

    def _nearest(self, look: _Look) -> tuple[str | None, float]:
        """The likeliest question, if it is likely enough; a claim never comes in by likeness alone."""
        chances = dict(look.chances)
        if chances.pop("done", 0.0) >= ENOUGH:
            return None, chances[OUTSIDE]
        if "in_bottle" in chances and fills.asked(look.parsed.plain):
            chances["in_bottle"] += chances.pop("mixed", 0.0)
        top = max(chances, key=lambda label: chances[label])
        needed = self._needed(top, look.parsed.words, look.parsed.plain)
        if top == OUTSIDE or chances[top] < needed or not may_be(top, look.parsed, look.claims):
            return None, chances[top] if top != OUTSIDE else max(
                (v for k, v in chances.items() if k != OUTSIDE), default=0.0
            )
        named = set(look.parsed.words)
        if top == "measure_with" and "{volume}" not in named and named & {"{bottle}", "{mix}"}:
            return "dose", chances[top]  # what is to be measured for a bottle is its dose
        return top, chances[top]

    def _needed(self, label: str, words: tuple[str, ...], plain: str) -> float:
        """Least chance of a question; a word that is strange to a question about the talk or the round counts against.

        In few words it must be one of the question's own ("undo my belt" is none); in more, where nothing is named, one
        that any phrasing has.
        """
        if label in _HALF_ENOUGH and _HALF_ENOUGH[label].search(plain):
            return BY_ITS_WORDS
        if label not in self._own:
            return ENOUGH
        few = len(words) <= FEW_WORDS
        if not few and any(word[0] == "{" for word in words):
            return ENOUGH
        known = self._own[label] | CLAIM_WORDS if few else self._matcher.vocabulary
        strange = any(word not in known and word[0] != "{" for word in words)
        return ENOUGH if not strange else NEVER if few else STRANGE_ENOUGH

    # ------------------------------------------------------------ making the reading

    def _slots(self, look: _Look, intent: str | None) -> Slots:
        return slots_of(look.parsed, Asked(intent, look.claims, look.world))

    def _reading(self, look: _Look, intent: str, slots: Slots, confidence: float) -> Reading:
        return Reading(look.parsed.text, intent, slots, min(confidence, 0.99), look.nearest, (), look.spoken)


def _asked_before(look: _Look, pending: Pending | None) -> str | None:
    """The question that this turn may go on from."""
    before = pending.reading if pending is not None else look.world.talk.last_reading
    return before.intent if before is not None else None


def _says_it_dried(look: _Look) -> bool:
    """That a surface didn't stay wet: no step, and not taken down as one, but not to be forgotten either."""
    stayed = look.claims.stayed_wet
    return stayed is False or (stayed is None and dried_early(look.parsed.plain))


def _without_troubles(slots: Slots) -> Slots:
    """Nobody with bleach in the eye is asked which bottle, or told that a number is faulty; a stray one is noise."""
    return replace(slots, steps=(), numbers=(), choices=(), unknown=(), faulty=())


_HALF_ENOUGH = {
    "dry_time": re.compile(
        r"\b(?:how|when|will|does|do|going to)\b.*"
        r"\b(?:dry|dries|dried|drying|evaporates?|(?:stay|keep)\w* (?:it )?wet)\b"
        r"|\b(?:dry|drying) times?\b"
    ),
    "air_time": re.compile(
        r"\b(?:how|when|will|would|is|what|for)\b.*\b(?:air|aired|airing|ventilat\w+|windows?|fumes|smell)\b"
    ),
}
_ABOUT_TALK = frozenset({"next", "repeat", "help", "undo", "start", "status"})
_ASKING = frozenset({"what", "how", "which", "where", "when", "who", "why"})
_SHORT = ("help", "undo", "next", "repeat", "status", "yes", "no")
_NO_STEP = re.compile(r"(?:um |er |oh )*no\b")
_ASKS_OR_TELLS = frozenset({"is", "was", "did", "do", "are", "they"})
_YES_OR_NO = frozenset(
    {"yes", "ok", "right", "correct", "sure", "exactly", "affirmative", "indeed", "absolutely", "definitely", "confirm"}
    | {"confirmed", "true", "no", "not", "negative", "wrong", "incorrect", "never", "false"}
)
"""Words without one of which only a phrasing of yes or no, word for word, is one."""
_OF_AN_AMOUNT = frozenset({"read_ratio", "mix_strength"})
"""Questions that "what about one in fifty?" would be by itself, but not after another."""
_A_NAME = frozenset({"{enclosure}", "{animal}", "{bottle}", "{agent}", "{stock}"})
_ASKS_IN_FULL = frozenset({"how", "what", "which", "can", "could", "do", "does", "i", "give", "tell"})
_NEVER_OFFERED = frozenset({OUTSIDE, "yes", "no"})
_EXACT = frozenset({"next", "help", "undo", "repeat", "status", "again", "pardon", "what now", "now what"})

_BEATS_A_CLAIM = frozenset(
    {"rinsed_out", "start", "dose", "hold_time", "help", "repeat", "undo"}
    | {"mix_strength", "top_up", "make_up", "bleach_now", "measure_with"}
)
"""Questions that aren't a claim of a step though they hold the words of one."""
