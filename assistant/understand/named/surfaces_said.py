"""Which inside surfaces of an enclosure were said, and whether something is soaked rather than sprayed."""

from __future__ import annotations

from typing import Literal

from assistant.understand.text.patterns import Pattern

_FLOOR = Pattern(r"\b(?:just|only) (?:the )?(?:floor|base|bottom)\b|\b(?:floor|base|bottom) (?:only|alone)\b")
_WALLS = Pattern(r"\b(?:just|only) (?:the )?(?:walls|sides)\b|\b(?:walls|sides) (?:only|alone)\b")
_TOP = r"(?:the |its )?(?:lid|roof|ceiling|top)\b"
_ALL = Pattern(
    rf"\b{_TOP}.*\b(?:too|as well|also|included)\b|\b(?:and|with|including|plus) {_TOP}(?! up)"
    r"|\b(?:all six|every side|all the sides|all sides)\b"
)
_SOAKS = Pattern(r"\bsoak\w*\b|\bsubmerg\w*|\bdunk\w*|\bfill(?:ing)? (?:the |a |my |up )*(?:tub|bucket|bin|box|sink)\b")


def inside_said(plain: str) -> Literal["floor", "walls", "all sides"] | None:
    """Which surfaces; None: nothing was said."""
    if _FLOOR.search(plain):
        return "floor"
    if _WALLS.search(plain):
        return "walls"
    return "all sides" if _ALL.search(plain) else None


def soaks(plain: str) -> bool:
    """Whether something is to lie in it."""
    return bool(_SOAKS.search(plain))
