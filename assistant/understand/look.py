"""One text as it is looked at by everything that decides which question it is, and what is made of it in the end."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field, replace

from assistant.contract import Reading, Slots, World
from assistant.core.harms import HARMS
from assistant.understand.asked import Asked
from assistant.understand.harm.learned_cries import Evidence
from assistant.understand.matching.learning import OUTSIDE
from assistant.understand.parsing import Parsed
from assistant.understand.question.slots import slots_of
from assistant.understand.steps.claimed_steps import Claims
from assistant.understand.steps.told import Told
from assistant.understand.text.asking import ASKS_FIRST

ENOUGH = 0.55
"""Least chance of a question that is taken. Held out, 94 % of the lines outside stay below it, and 2 % of phrasings
come out as a wrong question (tests/bench/README.md)."""
WISHED = 0.9
"""Least chance of a wish to treat an animal, where a rule takes it for an accident."""
BY_RULE = 0.97
"""Confidence of a reading found by rule: harm, agents that meet, plain claims."""
BY_LIKENESS = 0.9
"""The same of a cry that no rule knows, by its words all together."""
_NEVER_OFFERED = frozenset({OUTSIDE, "yes", "no"})


@dataclass(frozen=True, slots=True)
class Look:
    """One text as it was looked at."""

    parsed: Parsed
    claims: Claims
    chances: Mapping[str, float]
    speak: tuple[str, ...]
    """The words that speak for the likeliest: of a long turn a part of it."""
    told: Told
    evidence: Evidence
    """For harm, of the words all together."""
    world: World
    spoken: bool
    _slots: dict[str | None, Slots] = field(default_factory=dict, compare=False, repr=False)

    @property
    def is_cry(self) -> bool:
        """Whether it is harm by its words all together."""
        return self.evidence.is_cry(self._chance_but_for(*HARMS, OUTSIDE))

    @property
    def is_no_cry(self) -> bool:
        """Whether it isn't, though a rule may say so."""
        return self.evidence.overrules(self._chance_but_for(*HARMS))

    @property
    def is_a_wish_to_treat(self) -> bool:
        """Asked whether a sore may be treated, by all its words, though a rule takes it for an accident."""
        asked = not ASKS_FIRST.isdisjoint(self.parsed.plain.split())
        return asked and self.chances.get("wound", 0.0) >= WISHED and self.evidence.is_rather("wound", "splash")

    def _chance_but_for(self, *labels: str) -> float:
        return max((chance for label, chance in self.chances.items() if label not in labels), default=0.0)

    @property
    def top(self) -> str:
        return max(self.chances, key=lambda label: self.chances[label])

    @property
    def nearest(self) -> tuple[str, ...]:
        ranked = sorted(
            (label for label in self.chances if label not in _NEVER_OFFERED), key=lambda label: -self.chances[label]
        )
        return tuple(ranked[:2])

    def slots(self, intent: str | None) -> Slots:
        """Everything that the text names, for that question; worked out once, since several rules ask for the same."""
        if intent not in self._slots:
            self._slots[intent] = slots_of(self.parsed, Asked(intent, self.claims, self.world))
        return self._slots[intent]

    def reading(self, intent: str, slots: Slots, confidence: float) -> Reading:
        """The text as that question."""
        return Reading(self.parsed.text, intent, slots, min(confidence, 0.99), self.nearest, (), self.spoken)

    def once_more(self, before: Reading) -> Reading:
        """The question before as it was asked, said by this text; no doubt of then is left."""
        return replace(before, question=self.parsed.text, spoken=self.spoken, doubts=())

    def by_rule(self, intent: str, slots: Slots | None) -> Reading | None:
        """The text as that question, where a rule gives its slots; None: it gives none."""
        return self.reading(intent, slots, BY_RULE) if slots is not None else None


def without_troubles(slots: Slots) -> Slots:
    """Nobody with bleach in the eye is asked which bottle, or told that a number is faulty; a stray one is noise."""
    return replace(slots, steps=(), numbers=(), choices=(), unknown=(), faulty=())


def words_of(texts: Iterable[str]) -> frozenset[str]:
    """The words of a question's phrasings, which are given as matched."""
    return frozenset(word for text in texts for word in text.split())
