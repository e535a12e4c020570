"""What fits no question by itself, right after an answer, taken for what it most likely goes on from.

What was learned says which (`learned_on`). A question that only asks is asked again, or asked with what was spoken of;
what would be recorded is asked about first; and nothing is vouched for, nor a number left out, on a likeness alone.
"""

from __future__ import annotations

from dataclasses import fields, replace
from typing import Any, Literal

from assistant.contract import Doubt, Pending, Reading, Slots
from assistant.core.harms import HARMS
from assistant.core.round.gate import may_go_back
from assistant.core.round.rounds import is_open
from assistant.understand.look import BY_RULE, Look, without_troubles
from assistant.understand.matching.learning import OUTSIDE
from assistant.understand.steps.claimed_steps import steps_named
from assistant.understand.talk import follow_up
from assistant.understand.talk.follow_up import Answering
from assistant.understand.talk.learned_on import SAME, Chances
from assistant.understand.talk.loosely_on import pleads
from assistant.understand.talk.says_more import ALARMS, CHANGES, DENIED, FURTHER_BACK, OF_ITS_STATE, TOO, UNEASY
from assistant.understand.talk.takes import given_to
from assistant.understand.text.asking import asks
from assistant.understand.text.patterns import Pattern

LIKELY = 0.5
"""Chance from which on it is taken for that question..."""
LIKELY_STATED = 0.7
"""...for the same answer to what asks nothing..."""
LIKELY_TOLD = 0.6
"""...for one that would be recorded..."""
LIKELY_HARM = 0.7
"""...and for harm, which would interrupt. These, and the next, were chosen with the weights: see `learned_on`."""
SURELY_THE_SAME = 0.85
"""Chance from which on it is the question before, though by itself it is like another that only asks."""
SURELY_OUTSIDE = 0.9
"""Chance of being none of the questions from which on it is none, where it is only like one that asks."""
_LIKE_IT = 0.6
"""Chance of a question from which on it isn't overruled."""
_NEVER = frozenset({OUTSIDE, "yes", "no"})
_OF_THE_TALK = frozenset({"why", "repeat", "help", "hush", "slower", "units", "add", "undo"})
"""Questions that hold nothing of the one before."""
_EMPTY = Slots()


def before_it(look: Look) -> str | None:
    """The question that was answered or asked about last; None: nothing, or it wasn't understood."""
    last = look.world.talk.last
    return last.intent if last is not None and last.intent not in _NEVER else None


def likely_on(look: Look, chances: Chances) -> Reading | None:
    """What a turn is that is no question by itself; None: it goes on from nothing that may be taken by likeness."""
    label = max(chances, key=lambda one: chances[one])
    meant = before_it(look) if label == SAME else label
    if meant is None or meant in _NEVER or chances[label] < _enough(meant, label, look):
        return None
    if meant not in HARMS and ALARMS.search(look.parsed.plain):
        return None
    under_way = any(is_open(round_) for round_ in look.world.state.rounds.values())
    if meant in _OF_THE_ROUND and (_would_be_ready(look) or (under_way and not asks(look.parsed.plain))):
        return None  # nothing is vouched for by half a likeness, and what is told meanwhile is for the record
    found = _same_again(look, meant, chances[label]) if label == SAME else _another(look, meant)
    return replace(found, confidence=min(chances[label], 0.95)) if found is not None else None


def told_on(look: Look, chances: Chances) -> str | None:
    """What is told that is no telling by itself, and is asked about before it counts: "now it doesn't", of a smell."""
    label = max(chances, key=lambda one: chances[one], default=OUTSIDE)
    by_likeness = label in _TOLD_BY_LIKENESS and label != before_it(look)
    return label if by_likeness and chances[label] >= LIKELY_TOLD and not asks(look.parsed.plain) else None


def rather_the_same(look: Look, intent: str, chances: Chances) -> Reading | None:
    """The question before, where a turn that is like another one is surely that; both only ask."""
    before = before_it(look)
    if before is None or intent == before or chances.get(SAME, 0.0) < SURELY_THE_SAME:
        return None
    if look.chances[intent] >= BY_RULE:
        return None
    both_ask = all(
        follow_up.may_be_asked_again(one, look.world) and one not in _OF_THE_TALK for one in (intent, before)
    )
    return likely_on(look, chances) if both_ask else None


def strays(look: Look, intent: str | None, chances: Chances) -> bool:
    """ "And the milk from monday", after whether a mix keeps: by the talk it is none of the questions.

    intent: the question that it is like by itself, if any.
    """
    if chances.get(OUTSIDE, 0.0) < SURELY_OUTSIDE or look.parsed.mentions or pleads(look):
        return False
    if intent is not None and look.chances[intent] >= _LIKE_IT:
        return False
    only_asks = intent is None or (intent not in _OF_THE_TALK and follow_up.may_be_asked_again(intent, look.world))
    return only_asks and not look.claims.mentioned


def _enough(meant: str, label: str, look: Look) -> float:
    if meant in HARMS and label != SAME:
        return LIKELY_HARM
    return LIKELY if follow_up.may_be_asked_again(meant, look.world) else LIKELY_TOLD


def _would_be_ready(look: Look) -> bool:
    """Nothing is left to do on some open clean: half a likeness never asks for a yes."""
    rounds = look.world.state.rounds.values()
    return any(may_go_back(round_, look.world.now).ready for round_ in rounds)


def _same_again(look: Look, meant: str, chance: float) -> Reading | None:
    plain = look.parsed.plain
    if meant in _OF_THE_TALK:
        further = meant != "undo" or FURTHER_BACK.search(plain) is not None
        return _asked_first(look.reading(meant, look.slots(meant), 0.0), look) if further else None
    if meant in _OF_THE_ROUND and look.claims.mentioned and not asks(look.parsed.plain):
        return None  # "only rinsed half" tells of a step: the same answer would pass over it
    pending = look.world.waiting
    base = pending.reading if pending is not None else look.world.talk.last_reading
    if base is None or base.intent != meant or base.slots.met or _is_uneasy(look):
        return None
    slots = replace(look.slots(meant), place=follow_up.place_in(plain))
    answering = Answering(look.parsed, slots, look.spoken)
    if pending is not None and (told := _answered(answering, pending, look)) is not None:
        return told
    if meant in HARMS:
        return _harm_again(look, base)
    if not follow_up.may_be_asked_again(meant, look.world):
        told_too = _told_again(look, base, slots)
        return _asked_first(told_too, look) if told_too is not None else _unclear(look, base, chance)
    names_more = bool(look.parsed.amounts.found or look.parsed.mentions or slots.choices)
    if slots.unknown:
        return None
    if names_more and not _only_asks_of_another(look, meant):
        return _unclear(look, base, chance)
    put_right = follow_up.corrected(answering, base, look.world)
    if put_right is not None:
        return put_right
    states = not asks(look.parsed.plain)
    if names_more or (pending is not None and pending.missing) or (states and _needs_to_ask(meant, chance)):
        return _unclear(look, base, chance)
    left_out = states or CHANGES.search(plain) is not None
    again: Literal["same", "aside"] = "aside" if left_out else "same"
    return replace(look.once_more(base), again=again)


def _unclear(look: Look, base: Reading, chance: float) -> Reading | None:
    """Of the question before, and surely so, but not how: it is asked for in full, and nothing is answered anew."""
    told_of_none = base.intent == "done" and not look.claims.mentioned  # "closed the door behind me", after a step
    question = look.world.questions[base.intent or ""]
    of_others = bool(look.parsed.mentions) and not given_to(question, look.slots(base.intent))
    if chance < LIKELY_STATED or told_of_none or of_others:
        return None
    return replace(look.once_more(base), again="unclear")


def _harm_again(look: Look, base: Reading) -> Reading | None:
    """First aid once more, with no new clock; what is told of somebody or somewhere else is never taken so."""
    if base.intent == "wound":
        return look.once_more(base)
    if not asks(look.parsed.plain):
        return None
    slots = replace(base.slots, asked_of_harm="again") if base.intent == "splash" else base.slots
    return replace(look.once_more(base), slots=slots)


def _is_uneasy(look: Look) -> bool:
    plain = look.parsed.plain
    return ALARMS.search(plain) is not None or (UNEASY.search(plain) is not None and not asks(look.parsed.plain))


def _only_asks_of_another(look: Look, meant: str) -> bool:
    """ "And for the pink one", and not "there's vinegar already in it"."""
    plain = look.parsed.plain
    if OF_ITS_STATE.search(plain) is not None and not plain.endswith("?"):
        return False
    denied = DENIED.search(plain) is not None and not _CORRECTS.match(plain)
    return asks(look.parsed.plain) or (not denied and follow_up.is_short(look.parsed, meant))


_CORRECTS = Pattern(r"(?:no|nope|not|sorry)\b")


def _needs_to_ask(meant: str, chance: float) -> bool:
    """Whether what is told, and asks nothing, goes on from nothing: of what a bottle holds it may be the end."""
    return meant in _OF_CONTENTS or chance < LIKELY_STATED


def _answered(answering: Answering, pending: Pending, look: Look) -> Reading | None:
    """What was asked for, given in more words than an answer mostly has."""
    if "step" in pending.missing:
        steps = look.claims.done or steps_named(look.parsed.plain)
        answering = replace(answering, slots=replace(answering.slots, steps=steps))
    return follow_up.supplied(answering, pending, look.world) if pending.missing else None


def _told_again(look: Look, base: Reading, slots: Slots) -> Reading | None:
    """ "Pink also, just now", after a fill: the same of another one; None: it names none, or doesn't say so."""
    intent, plain = base.intent or "", look.parsed.plain
    if DENIED.search(plain) or intent in _ONLY_BY_THEMSELVES:
        return None
    if intent == "done" and look.claims.done:
        return look.reading(intent, replace(slots, steps=look.claims.done), 0.0)
    named = given_to(look.world.questions[intent], slots)
    if not named or TOO.search(plain) is None or len(look.parsed.words) > _AND_THAT_ONE:
        return None
    if intent == "done":
        return look.reading(intent, replace(slots, steps=base.slots.steps), 0.0) if slots.enclosures else None
    if intent in ("mixed", "rinsed_out"):
        return look.reading(intent, slots, 0.0) if slots.bottles else None  # never the mix of the bottle before
    return look.reading(intent, _filled_up(look, intent, slots, base.slots), 0.0)


_AND_THAT_ONE = 5
"""Most words of "and tub seven's too", after a step."""
_ONLY_BY_THEMSELVES = frozenset({"still_smells", "dried_early", "rewet", "undo", "yes", "no"})
"""What is told of a surface is told anew each time."""
_OF_THE_ROUND = frozenset(
    {"return_check", "status", "next", "time_left", "dry_time", "air_time", "day_end", "still_smells"}
)
_OF_CONTENTS = frozenset({"still_good", "in_bottle", "top_up", "stock_left", "unknown_bottle"})
_TOLD_BY_LIKENESS = frozenset({"still_smells", "dried_early", "log_clean"})
_NOT_BY_LIKENESS = _TOLD_BY_LIKENESS | {"mixed", "rinsed_out", "rewet", "start", "done"}
"""Told things that no turn is of which only goes on; some of them `told_on` asks about."""
_VOUCHES = frozenset({"return_check", "status"})
"""Questions of which no enclosure is chosen that the turn doesn't name."""


def _another(look: Look, meant: str) -> Reading | None:
    """Another question, with what was spoken of where it takes that and the turn names none of it."""
    slots = look.slots(meant)
    if meant in _NOT_BY_LIKENESS:
        return None
    if meant in HARMS:
        return look.reading(meant, without_troubles(slots), 0.0)
    before = look.world.talk.last_reading
    carries = meant not in _OF_THE_TALK | _VOUCHES and follow_up.may_be_asked_again(meant, look.world)
    if carries and before is not None:
        slots = _filled_up(look, meant, slots, before.slots)
    return _asked_first(look.reading(meant, slots, 0.0), look)


def _filled_up(look: Look, meant: str, slots: Slots, spoken_of: Slots) -> Slots:
    """What a turn names, with what was spoken of; of a product, a place or an amount the one that is named counts."""
    question = look.world.questions.get(meant)
    if question is None:
        return slots
    carried: dict[str, Any] = dict(given_to(question, spoken_of))
    for group in _ONE_OF:
        if any(getattr(slots, name) != getattr(_EMPTY, name) for name in group):
            carried = {name: value for name, value in carried.items() if name not in group}
    named = {field.name for field in fields(Slots) if getattr(slots, field.name) != getattr(_EMPTY, field.name)}
    return replace(slots, **{name: value for name, value in carried.items() if name not in named})


_ONE_OF = (
    ("bottles", "stocks", "agents", "choices", "unknown"),
    ("enclosures", "every_enclosure", "groups", "racks"),
    ("volumes", "numbers", "roles", "bottles"),
    ("durations", "month", "when"),
)
"""Ways to name one thing: a new one takes the place of the old."""


def _asked_first(reading: Reading, look: Look) -> Reading:
    """A reading, asked about where it would be recorded."""
    if follow_up.may_be_asked_again(reading.intent, look.world) or reading.intent is None:
        return reading
    step = reading.slots.steps[0] if reading.slots.steps else ""
    doubt = Doubt("polarity", step) if reading.intent == "done" and step else Doubt("meaning", reading.intent)
    return replace(reading, doubts=(doubt,))
