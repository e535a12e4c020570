"""What an animal waits in while its home is cleaned, in one table: whether it is inside one, or got out of that too.

Common practice, no source.
"""

from __future__ import annotations

from assistant.understand.text.patterns import any_of

_SCRUBBED = ("tub", "bucket", "carrier", "tote", "crate", "faunarium")
_NAMED = (*_SCRUBBED, "pillowcase")
_ANY = (*_NAMED, "shoe ?box", "box", "bin", "container", "bag")

SCRUBBED_TUB = any_of(_SCRUBBED)
"""What is cleaned itself between two animals; nobody scrubs a pillowcase."""
NAMED_TUB = any_of(_NAMED)
"""What the keeper has a name for: "blue tub". A box or a bin so named is rather a home, or holds something else."""
TUB = any_of(_ANY)
"""Anything that an animal is said to be in, or out of."""
TUBS = any_of([f"{word}e?s?" if word.endswith("x") else f"{word}s?" for word in _ANY])
"""One of them or several."""
