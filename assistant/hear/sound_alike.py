"""Names that sound alike: a recogniser, or a keeper in a mask, may take one for the other.

What two names share as whole words ("bottle") tells nothing apart, so only the rest is compared, sound by sound. Sounds
of one kind (p and b, m and n) count as half a difference. How near is too near is from memory, tried on invented names.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence

from assistant.hear.pronunciation import Sounds, by_rule, pronounce
from assistant.hear.spoken_form import words_of

TOO_NEAR = 0.36
"""Share of the longer name's sounds that differ."""

Sound = Callable[[str], Sounds]

_KINDS = ("P B", "T D", "K G", "F V TH DH", "S Z SH ZH", "CH JH", "M N NG", "L R W", "IH IY EH", "AA AO AH", "UH UW OW")
_KIND_OF = {phone: kind for kind in _KINDS for phone in kind.split()}


def sound_by_dictionary() -> Sound:
    """Sounds from the trade words and spelling rules alone; needs no library."""
    known: dict[str, Sounds] = {}

    def sound(word: str) -> Sounds:
        if word not in known:
            known[word] = pronounce((word,), {}).get(word, (by_rule(word),))[0]
        return known[word]

    return sound


def sounds_like(name: str, others: Iterable[str], sound: Sound | None = None) -> str | None:
    """The first of the others that sounds like this name; the name itself is passed over."""
    sound = sound or sound_by_dictionary()
    return next((other for other in others if other.lower() != name.lower() and _alike(name, other, sound)), None)


def _alike(one: str, other: str, sound: Sound) -> bool:
    mine, theirs = list(words_of(one.lower())), list(words_of(other.lower()))
    shared = set(mine) & set(theirs)
    first = " ".join(sound(word) for word in mine if word not in shared).split()
    second = " ".join(sound(word) for word in theirs if word not in shared).split()
    if not first or not second:
        return first == second  # the same words in another order
    return _distance(first, second) / max(len(first), len(second)) <= TOO_NEAR


def _distance(one: Sequence[str], other: Sequence[str]) -> float:
    """Sounds put in, left out or taken for another."""
    row = [float(at) for at in range(len(other) + 1)]
    for at, phone in enumerate(one, start=1):
        before, row = row, [float(at)]
        for place, heard in enumerate(other, start=1):
            cost = 0.0 if phone == heard else 0.5 if _KIND_OF.get(phone, phone) == _KIND_OF.get(heard) else 1.0
            row.append(min(before[place] + 1, row[-1] + 1, before[place - 1] + cost))
    return row[-1]
