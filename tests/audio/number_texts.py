"""Sentences with numbers, made from frames that stand in no file of intents/, the same every time."""

from __future__ import annotations

import random
from collections.abc import Callable

from assistant.hear.spoken_form import number_words

_VOLUMES = (
    *("five hundred", "seven fifty", "two hundred and fifty", "nine hundred", "one hundred fifty", "six hundred"),
    *("three hundred", "eight fifty", "four hundred"),
)
_MIXED = (21, 25, 32, 36, 48, 55, 64, 75, 99, 128, 100, 200, 250, 150)


def number_texts() -> tuple[str, ...]:
    """Two sentences for every number from 2 to 20, every ten, and some beyond; volumes and strengths beside them."""
    chance = random.Random(7)

    def said(number: int) -> str:
        words = number_words(number)
        with_and = number > 100 and number % 100 and chance.random() < 0.5
        return words.replace("hundred ", "hundred and ") if with_and else words

    def volume() -> str:
        return chance.choice(_VOLUMES)

    def strength(number: int) -> str:
        if number % 2:
            hundreds = chance.choice(("one", "two", "five", "six", "eight", "nine"))
            return f"how much bleach for the yellow bottle at {hundreds} hundred parts per million"
        litres, percent = said(number) if number < 20 else "two", ("point five", "two", "point nine", "one point five")
        return f"how much bleach for {litres} litres at {chance.choice(percent)} percent"

    frames: tuple[Callable[[int], str], ...] = (
        lambda number: f"how much bleach goes in the yellow bottle at one in {said(number)}",
        lambda number: f"tell me the chlorhexidine for {volume()} mils at one to {said(number)}",
        lambda number: f"i want {volume()} mils of bleach at one in {said(number)}",
        lambda number: f"the pink bottle wants one in {said(number)} how much goes in",
        lambda number: (
            f"vinegar for {chance.choice(('two litres', 'a litre', 'half a litre', 'three litres'))} "
            f"at one to {said(number)}"
        ),
        lambda number: f"i mixed the pink bottle one in {said(number)} with chlorhexidine",
        strength,
        lambda number: f"fill the green bottle with vinegar at one to {said(number)} how much",
    )
    numbers = [*range(13, 20), *range(20, 100, 10), *range(2, 13), *_MIXED]
    chance.shuffle(numbers)
    texts = [frames[(at + more) % 8](number) for at, number in enumerate(numbers) for more in (0, 3)]
    return tuple(dict.fromkeys(texts))
