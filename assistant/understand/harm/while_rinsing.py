"""A bare "rinsed it", "done", "all good" while an eye, a skin or an animal is being rinsed, or first thing after that.

It is of the body: a step of the clean that is only guessed would serve a wet time that nobody watched. The reply says
that nothing of the clean is recorded, so whoever meant the enclosure names it.
"""

from __future__ import annotations

from assistant.contract import World
from assistant.core.harms import HARM_LASTS
from assistant.core.record.state import Rinse
from assistant.core.round.rounds import is_open, rinse_left_s
from assistant.understand.named.animal_words import ANIMAL_WORDS, ANIMALS
from assistant.understand.text.known_words import words_of
from assistant.understand.text.patterns import Pattern

_OF_EITHER = Pattern(
    r"\b(?:rins(?:ed|ing)|washed|washing|flushed|flushing|wiped|dried|dry|done|finished|good|fine|ok|okay|alright"
    r"|better|clean|all right)\b"
)
"""What may be said of a body and of an enclosure alike."""
_SMALL = ANIMAL_WORDS | words_of(
    """
    i have has had it is was that 's we he she they am are a an the my his her its of and so right then there now well
    off out up down for good long proper properly thoroughly all fully really just already too very yes yeah yep no nope
    oh phew ok okay alright fine better clean done finished rinse
    rinsed rinsing wash washed washing flushed flushing wiped dried
    dry enough again twice still minutes minute fifteen ten fourteen quarter hour whole full time through with water
    under tap , . ! DURATION NUMBER ANIMAL eye eyes arm hand hands face skin finger fingers leg wrist foot
    everything thanks
    """
)
"""Every word of such a text: whatever names an enclosure, a product or another step is none."""
_OF_THE_BODY = Pattern(
    rf"\b(?:eyes?|arm|hands?|face|skin|fingers?|leg|wrist|foot|ANIMAL|{ANIMALS}|i am|we are|she (?:is|'s)|he "
    r"(?:is|'s))\b"
)
_TAKES_BACK = Pattern(r"\bnot\b|\?$")


def bare_of_the_rinse(text: str, world: World) -> Rinse | None:
    """The rinse that a masked text is of, though it may be of a step; None: it names something, or no rinse is on.

    With no clean open there is nothing else that it could be of.
    """
    if not any(is_open(round_) for round_ in world.state.rounds.values()):
        return None
    if _OF_EITHER.search(text) is None or _TAKES_BACK.search(text) is not None or not set(text.split()) <= _SMALL:
        return None
    return _running(world) or _just_over(world)


def names_the_body(text: str) -> bool:
    """ "Rinsed my eye", "she's dry": of nothing else."""
    return _OF_THE_BODY.search(text) is not None


def _running(world: World) -> Rinse | None:
    running = [rinse for rinse in world.state.rinses if rinse_left_s(rinse, world.now) > 0]
    return max(running, key=lambda rinse: rinse.began, default=None)


def _just_over(world: World) -> Rinse | None:
    """The rinse that ended last, where nothing was recorded since, nor said of it."""
    last = world.talk.last
    if last is not None and last.intent == "splash" and last.values.get("seconds") is None:
        return None  # that it is over was said: what comes now is of the clean again
    recorded = world.state.turns[-1].at if world.state.turns else None
    over = [
        rinse
        for rinse in world.state.rinses
        if world.now - rinse.began < HARM_LASTS
        and (recorded is None or (recorded - rinse.began).total_seconds() < rinse.seconds)
    ]
    return max(over, key=lambda rinse: rinse.began, default=None)
