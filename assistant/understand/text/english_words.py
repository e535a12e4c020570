"""Whether a word is English as it stands, so that it isn't taken for a slip of a word of the questions."""

from __future__ import annotations

from collections.abc import Callable
from typing import TypeAlias

from assistant.understand.text.known_words import words_of

Usage: TypeAlias = Callable[[str], int]
"""How common a word is in speech: 0 for none at all, `RARE` for one that is hardly ever met."""
RARE = 50
_LONG = 7
"""Letters from which on even a rare word is one: "postie" isn't, "vivarium" is; a short one is mostly a slip."""


def spelled_right(word: str, usage: Usage) -> bool:
    """Whether a word in small letters is common English, or a keeper's word that lists of English lack."""
    return word in _OURS or usage(word) > RARE or (len(word) >= _LONG and usage(word) == RARE)


_OURS = words_of(
    """
    aluminium armour arse behaviour bioactive centimetre centimetres centre centres colour coloured colours
    crestie cresties crypto cryptosporidium dewormer dishwashing draught draughts draughty esky favour favourite
    fibre fibres flavour glug glugged glugs grey harbour hatchling hatchlings hognose hognoses honour humour
    isopropyl kilometres labour litre litres lol metre metres millilitre millilitres mould moulds mouldy mum
    neighbour neighbours neutralise neutralised odour odours omg overspray parlour plough programme pseudomonas
    pvc quat quats recognise rehome rehomed rewet rumour sanitise sanitised sanitiser sceptic spritz spritzed
    sterilise sterilised tegu tegus theatre tumour tyre tyres undilute unlabelled uromastyx uvb vapour vapours viv
    vivs watercolour whiffy
    """
)
"""British spellings and words of the trade."""
