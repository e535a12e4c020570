"""What is told of an illness: a positive test, a mite, the vet's all clear, what starts a quarantine again.

That there is none after all, and what is asked of its record, is `good_news`.
"""

from __future__ import annotations

import re

from assistant.understand.named.animal_words import ONE_ANIMAL
from assistant.understand.text.patterns import Pattern

_TOLD = Pattern(
    r"\b(?:tested|came back|come back|swab\w*|results?|test)\b.*\bpositive\b|\bpositive for\b"
    r"|\b(?:cleared|clear) by the vet\b|\bvet (?:has |'s )?(?:cleared|passed)\b"
    r"|\b(?:saw|seen|found|spotted|got|has|have) (?:a |some |the )?(?:mites?|ORGANISM)\b"
)


def outbreak_told(plain: str) -> bool:
    """True when a positive test, a mite, or the vet's all clear is told."""
    return _TOLD.search(plain) is not None


_NEW_ONE = rf"(?:{ONE_ANIMAL}|one|animal|reptile|ANIMAL)"
_NEWCOMER = Pattern(
    rf"\b(?:new (?:\w+ |ANIMAL )?(?:{_NEW_ONE}|arrival)|newcomer|newbie|rescue)\b.*\b"
    r"(?:came|comes|coming|arriv\w+|join\w*|moved|moving|here|brought|today)\b"
    rf"|\b(?:got|took in|bought|brought(?: home)?|have) (?:a|another|one more) (?:new )?(?:\w+ )?{_NEW_ONE}\b"
    r"|\banother (?:one|newcomer) (?:came|arrived|joined)\b"
)
_BEGINS_AGAIN = Pattern(
    r"\b(?:restarts?|start\w*(?: \S+){0,5} (?:again|over|afresh|from (?:zero|scratch|the start|day one))|begin\w*"
    r"(?: \S+){0,5} (?:again|over)|reset\w*|back to (?:zero|day (?:one|zero)))\b"
)


def restart_in(plain: str) -> str | None:
    """What is said to start a quarantine again, from `QuarantineRestarted`; None: nothing is."""
    if _NEWCOMER.search(plain):
        return "newcomer"
    if not _BEGINS_AGAIN.search(plain):
        return None
    if speaks_of_a_test(plain):
        return "test"
    return "sign" if re.search(r"\b(?:sick|ill|sign|symptoms?|mites?|ORGANISM|cough\w*)\b", plain) else "newcomer"


def speaks_of_a_test(plain: str) -> bool:
    """True when a test, a swab or a result is spoken of."""
    return re.search(r"\b(?:test\w*|positive|swab\w*|results?)\b", plain) is not None
