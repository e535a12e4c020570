"""What is only like something told: in words that no rule knows, but surely so; it is asked about before it counts."""

from __future__ import annotations

from assistant.understand.look import Look
from assistant.understand.steps.of_the_keeper import of_the_keeper
from assistant.understand.text.asking import ASKED
from assistant.understand.text.patterns import Pattern

ASKED_ABOUT = 0.9
"""Chance from which on something told in words that no rule knows is asked about, and recorded after a "yes"."""
A_STEP = 0.94
"""The same of a step, which is told often, and mostly in plain words."""
SURELY_TOLD = 0.97
"""The same where its words might as well ask or deny: "you won't find a twig in there now"."""
IS_IT = frozenset({"mixed", "rinsed_out", "log_clean", "rewet", "done", "dried_early", "still_smells"})
"""Questions that record something, and are asked about where they aren't plainly told."""

_ASKS_OR_AHEAD = Pattern(
    rf"{ASKED}|\b(?:if|going to|gonna|about to|will|should|shall|would|could|might|can i|before i|until|till|need to"
    r"|needs to|want to|have to|has to|let me|let us|never|nobody|no one|none|did not|have not|has not|was not|were"
    r" not|forgot"
    r"|almost|nearly|remind|pretend|suppose|later|tomorrow|tonight|soon)\b|\?|\bno$|^not\b"
)
"""Asked, denied or still to come: nothing to ask about."""


def surely_told(label: str, look: Look, least: float = ASKED_ABOUT) -> bool:
    """Whether something is told, in words that no rule knows, so surely that it is worth asking about."""
    chance, plain = look.chances[label], look.parsed.plain
    if of_the_keeper(plain) or _DENIED.search(plain):
        return False
    return chance >= SURELY_TOLD or (chance >= least and not _ASKS_OR_AHEAD.search(plain))


_DENIED = Pattern(
    r"^(?:(?:so|and|but|ok) )*(?:nobody|no one|noone|none|never|not|(?:i|we) (?:did|have|had) not)\b|\bno$|\bif\b"
)
_NOTHING_LEFT = Pattern(
    r"\b(?:no|not a|without a|nothing|never a|is not a|not so much as a) (?:\w+ ){0,3}"
    r"(?:soap\w*|suds|bubbles?|smears?|streaks?|drops?|traces?|specks?|wet|damp|dirt|residue|product|AGENT)\b"
)
"""What a step took off denies no step."""
_NOT_ALL_OR_NOT_YET = Pattern(
    r"\b(?:not|never|no|none|nobody|without|yet|about to|almost|nearly|going to|will|would|should|if|until|before"
    r"|forgot\w*|miss\w*|skip\w*|most\w*|half|except|but|bar|only|just|apart|did i|have i|was|were)\b"
)


def denies_no_step(plain: str) -> bool:
    """Whether a "no" in it is of what a step took off ("no soap left"), or there is none: then a step may be told."""
    return _NOTHING_LEFT.search(plain) is not None or _NOT_ALL_OR_NOT_YET.search(plain) is None
