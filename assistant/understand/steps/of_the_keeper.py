"""What is told of the keeper, and not of what is being cleaned: "my sleeve's wet", "I slipped"."""

from __future__ import annotations

from assistant.understand.text.patterns import Pattern

WORN = r"(?:top|shirt|sleeve|hair|hand|glove|arm|trousers|jeans|jumper|shoe|sock|knee|back|coat|apron|mask)s?|feet|foot"
"""What is theirs, as alternatives."""
_MY_OWN = Pattern(
    r"(?:oh |ok |and |no |now )*(?:my|our) (?!ENCLOSURE|ANIMAL|tank|box|cage|viv|tub|river)(?:\w+ )?"
    rf"(?:{WORN}|front)(?: is| are| 's| got| feels?)+ "
)
_OF_THEM = Pattern(
    r"\b(?:i|he|she|we) (?:have )?(?:slipped|fell|tripped|stepped)\b|\b(?:sick|tired|fed up) of\b"
    rf"|\b(?:my|his|her) (?:{WORN})\b"
)


def of_the_keeper(plain: str) -> bool:
    """Whether what is wet or dry is the keeper's own: "my top's wet"."""
    return _MY_OWN.match(plain) is not None


def speaks_of_the_keeper(plain: str) -> bool:
    """Whether a text speaks of them at all: "mopped it up and my socks are soaked", "she slipped"."""
    return _OF_THEM.search(plain) is not None
