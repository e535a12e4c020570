"""How sure a hearing is: which of the recogniser's alternatives to take, and what must be read back.

When a number is certain is told in `number_doubts`. A step is doubtful where an alternative says "not", "about to" or
asks. What was heard badly as a whole is read back as a whole.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

from assistant.contract import Doubt, Heard, Reading, Slots
from assistant.core.harms import HARMS
from assistant.understand.numbers.number_doubts import MUMBLED, mean_posterior, number_doubts
from assistant.understand.parsing import Parsed
from assistant.understand.steps.claimed_steps import claims_in

BETTER = 0.25
"""An alternative is taken only when its reading is surer by this much; the first hearing is mostly right."""
PLAIN = 0.9
"""Mean posterior of a text that needs no alternative: of 128 clean clips, three heard word for word at 0.95 and more
came out as another question by way of an alternative."""
LOOKED_AT = 8
"""Alternatives that are read in full; the numbers of all of them count."""
MUMBLED_BUT = 0.8
"""Least chance of a mumbled question that is read back; between 0 and 0.95 it made no difference."""
WISHED = {"filled": "fill", "refilled": "refill", "mixed": "mix", "made": "make", "topped": "top", "rinsed": "rinse"}
"""What was done, and the same as a wish: the ending is lost or put in by a recogniser."""
HEARD_WHOLE = 0.7
"""Mean posterior under which the whole question is read back. On the even half under a fan at 10 dB that made confirmed
ones of 9 right ones and of one wrong one, of 128."""
AT_ONCE = ("yes", "no", "hush", "slower", "repeat", "help")
"""Never read back: an answer to what was asked, or nothing that could go wrong."""
OF_THE_TALK = ("hush", "slower", "repeat", "help")
FEW = 3
"""Words up to which a question of the talk itself is taken though it was heard badly: "hush", "say again". In more,
hiss was heard as "you are the all" and "what do I say", and taken for these; so those are read back."""
UNDONE = 0.9
"""Least chance of an "undo" that takes back at once: "river tank as well should", for "is washed", is most like one."""
HEARD_WELL = 0.5
"""Least posterior of a word of a step, a start or a yes that isn't read back. Chosen, not measured."""


def best_of(heard: Heard, read: Callable[[str], Reading]) -> tuple[str, Reading]:
    """The text to take, of what was heard and its alternatives, with its reading.

    What was heard well and means something is taken as it is. Mumbling is no question, but a cry is heard even there:
    the first hearing's own, or one that half of the alternatives agree on. A cry in a single alternative is mostly
    noise ("I've rinsed" as "I breathed"), and would start a rinse that nobody needs.
    """
    text, best = heard.text, read(heard.text)
    sure = mean_posterior(heard)
    if sure >= PLAIN and best.intent is not None:
        return text, best
    others = [(other, read(other)) for other in heard.alternatives[:LOOKED_AT] if other != text]
    cries = [(other, reading) for other, reading in others if reading.intent in HARMS]
    if best.intent not in HARMS and cries and 2 * len(cries) >= len(others):
        return cries[0]
    for other, reading in others:
        better = reading.confidence >= best.confidence + BETTER or best.intent is None
        if reading.intent not in (None, *HARMS) and better and best.intent not in HARMS:
            text, best = other, reading
    if sure < MUMBLED and best.intent not in HARMS and (best.confidence < MUMBLED_BUT or best.intent in AT_ONCE):
        return heard.text, replace(best, intent=None, slots=Slots(), confidence=sure, doubts=())
    return text, best


def doubts_of(reading: Reading, text: str, heard: Heard, parse: Callable[[str], Parsed]) -> tuple[Doubt, ...]:
    """What of a reading was not heard with certainty."""
    doubts = list(reading.doubts)
    known = {doubt.heard for doubt in doubts}
    doubts += [doubt for doubt in number_doubts(reading, text, heard, parse) if doubt.heard not in known]
    if reading.intent in ("done", "start", "mixed", "rinsed_out", "yes") and not any(
        doubt.kind == "polarity" for doubt in doubts
    ):
        doubts += _polarity_doubts(reading, text, heard, parse)
    at_once = reading.intent in AT_ONCE and not (reading.intent in OF_THE_TALK and len(text.split()) > FEW)
    said_back = any(doubt.kind == "polarity" for doubt in doubts) or reading.intent in (None, *HARMS) or at_once
    badly = bool(heard.words) and mean_posterior(heard) < HEARD_WHOLE
    badly = badly or text != heard.text  # an alternative is read back
    badly = badly or (reading.intent == "undo" and (text != heard.text or reading.confidence < UNDONE))
    if not said_back and (badly or (reading.intent in ("mixed", "rinsed_out") and _may_be_meant(text, heard))):
        doubts.append(Doubt("hearing", text))
    return tuple(doubts)


def _may_be_meant(text: str, heard: Heard) -> bool:
    """Whether "filled" may have been "fill": it asks how much, or an alternative has the verb as a wish."""
    words = set(text.split())
    if "how" in words:
        return True
    told = [wish for done, wish in WISHED.items() if done in words]
    return any(wish in other.split() for other in heard.alternatives for wish in told)


def _polarity_doubts(reading: Reading, text: str, heard: Heard, parse: Callable[[str], Parsed]) -> list[Doubt]:
    said = reading.slots.steps[0] if reading.slots.steps else reading.intent or ""
    for alternative in (heard.text, *heard.alternatives):
        if alternative == text:
            continue
        plain = parse(alternative).plain
        claims = claims_in(plain)
        against = claims.polarity in ("not yet", "asked") or (not claims.done and set(claims.mentioned) & {said})
        refusal = reading.intent == "yes" and {"no", "not", "nope"} & set(plain.split())
        if (reading.intent == "done" and against and {said} & {*claims.mentioned, *claims.done}) or refusal:
            return [Doubt("polarity", said, (alternative,))]
    if text != heard.text:
        return [Doubt("polarity", said)]  # not the first hearing: nothing is recorded on it unasked
    if heard.words and min(word.posterior for word in heard.words) < HEARD_WELL:
        return [Doubt("polarity", said)]
    return []


def with_doubts(reading: Reading, text: str, heard: Heard, parse: Callable[[str], Parsed]) -> Reading:
    """The reading with its doubts, marked as spoken."""
    return replace(reading, spoken=True, doubts=doubts_of(reading, text, heard, parse))
