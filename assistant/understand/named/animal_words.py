"""Kinds of animals, in one table: what a keeper calls the animal of an enclosure beside its name.

Common practice, no source. What they are called for short ("beardie") is `animal_names`; words for any animal ("little
one", "baby") stand where they are needed, since each rule bears others.
"""

from __future__ import annotations

from assistant.understand.text.known_words import words_of
from assistant.understand.text.patterns import any_of

SNAKES = ("snake", "python", "boa", "racer", "viper", "cobra", "mamba", "hognose")
LIZARDS = ("lizard", "gecko", "dragon", "skink", "monitor", "chameleon", "iguana", "anole", "tegu", "agama")
TORTOISES = ("tortoise", "turtle", "terrapin")
_AMPHIBIANS = ("frog", "toad", "newt", "salamander", "axolotl")
KINDS = (*SNAKES, *LIZARDS, *TORTOISES, *_AMPHIBIANS)

ANIMAL_WORDS = frozenset(KINDS) | {f"{kind}s" for kind in KINDS}
"""Each, one or several."""
ONE_ANIMAL = any_of(KINDS)
"""Any of them, as alternatives."""
ANIMALS = any_of([f"{kind}s?" for kind in KINDS])
"""One or several of them."""
MATCHED_ALIKE = words_of(
    """
    animal animals snake snakes gecko geckos lizard lizards tortoise turtle frog dragon python boa skink monitor reptile
    critter
    """
)
"""Those that are the same word where a question is matched. Fewer than the table: with another the learned weights are
to be trained anew."""
