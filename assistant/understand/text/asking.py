"""Whether a text asks, by how it begins and how it ends: the words that open a question, in one place.

A rule that reads what is told looks here first. What else keeps a text from telling ("nearly", "if", "going to") stands
with the rule, since it depends on what is told; so do the questions that a rule takes for a telling after all: a text
that asks of a gas or a fire may still be a cry (`met.meeting`, `harm.fire`).
"""

from __future__ import annotations

from assistant.understand.text.known_words import words_of
from assistant.understand.text.patterns import Pattern, any_of

WHICH_WORDS = words_of("how what when where which who why")
"""These ask wherever they open a text."""
_MAY_WORDS = words_of("can could may might must shall should will would")
"""These ask, or speak of what isn't so yet."""
_WAS_WORDS = words_of("am is are was were do does")
ASKS_FIRST = WHICH_WORDS | _MAY_WORDS - {"must"} | _WAS_WORDS | words_of("did has have had whats whether whose")
"""Words that a question begins with. "Have rinsed it" and "did a mist" begin with one and tell: who only needs a hint
takes these, who must know takes the patterns below."""

_HAVE_I = (
    r"(?:have|had)(?= (?:i|we|you|they|it|he|she|that|this|any\w*|some\w*|every\w*|all|both)\b)"
    r"|(?:have|had)(?= (?:the|these|those|my|our|his|her|[A-Z]{3,})(?: \w+){0,4}? "
    r"(?:been|gone|come|run|(?!opened|closed)\w+ed)\b)|has(?! (?:not|been|to|already|just|dried|gone|got)\b)"
)
"""After these stands whose it is, where it is asked: "have rinsed" and "has dried" tell."""
BEGINS_AS_ASKED = (
    r"^(?:(?:and|so|but|ok|um|oh|now|right|well|wait|hey) ,? ?)*"
    rf"(?:{any_of((*WHICH_WORDS, *_MAY_WORDS, *_WAS_WORDS, 'whose', 'if'))}|did(?! an? )|{_HAVE_I})\b"
)
"""A text that begins as a question does, or supposes something ("if it dried"), for a pattern of a rule's own. A rule
for which "did not rinse" tells adds "(?! not)"."""
ASKED = rf"\?$|{BEGINS_AS_ASKED}"
"""The same, or with the sign at its end."""
_BEGINS = Pattern(BEGINS_AS_ASKED)
_ASKED = Pattern(ASKED)


ENDS_AS_ASKED = Pattern(
    r", ?(?:is|are|was|were|did|do|does|have|has|had) (?:not )?(?:it|i|he|she|they|we|you|that|there)(?: not)? ?[?.!]*$"
    r"|, ?(?:right|yes|no|or not|correct) ?\?$",
    ",",
)
""" "They're in the grey tub, are they": a tag makes a question of it."""


def begins_as_asked(plain: str) -> bool:
    """Whether a text begins as a question does, or supposes something."""
    return _BEGINS.match(plain) is not None


def asks(plain: str) -> bool:
    """The same, or it ends as a question does."""
    return _ASKED.search(plain) is not None
