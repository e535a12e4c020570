"""What is denied after it was said: "rinsed? no", "sprayed - nope", "stayed wet? I doubt it" mean "not rinsed" ...

Put at the front, where the rules look for it: a claim that is taken back in the same breath is none.
"""

from __future__ import annotations

import re

_NO = (
    r"(?:no|nope|nah|naw|not|never|not yet|not really|not at all|negative|(?:i )?doubt it|i do(?:n't| not) think so|i"
    r"(?:'m| am) not sure|not sure|can(?:'t|not) tell|can(?:'t|not) say|no(?:,? it| i| they)? "
    r"(?:didn't|did not|isn't|is not|wasn't|was not|haven't|have not))"
)
_AFTER = re.compile(
    rf"^\s*(?P<said>[^?]*\w{{3,}}[^?]*?)\s*(?:\?|,|;|\.\.\.?|…|\s[-–—])\s*{_NO}\s*[.!]*\s*$", re.IGNORECASE
)
_THERE_IS = re.compile(
    r"^\s*no (?P<said>smells?|odou?rs?|fumes|wet patch(?:es)?|damp)\s*\?\s*"
    r"(?:yes|yeah|there is|there are|yep|well)\b.*$",
    re.IGNORECASE,
)
_IT_WAS = re.compile(r"^(?:it|that|they|i|we)\s+(?:(?:was|were|is|has|have|did)\s+)?", re.IGNORECASE)
_ALREADY = re.compile(
    r"^\s*(?:no|not|nope|never|nothing|nobody|yes|yeah|ok|can|could|may|should|shall|do|does|did|is|are|was|what|how"
    r"|when|which|why|who|where|will)\b",
    re.IGNORECASE,
)


def denied_first(text: str) -> str:
    """The text with its denial in front, where one follows what is said; any other text as it is.

    >>> denied_first("rinsed? no"), denied_first("no smell? there is"), denied_first("rinsed, no smell")
    ('not rinsed', 'there is still smell', 'rinsed, no smell')
    """
    there = _THERE_IS.match(text)
    if there is not None:
        return f"there is still {there['said']}"
    found = _AFTER.match(text)
    if found is None or _ALREADY.match(text) or len(found["said"].split()) > _LONGEST:
        return text
    return f"not {_IT_WAS.sub('', found['said'])}"


_LONGEST = 8
"""Words of what is denied: a story that ends in "no" may deny anything."""
