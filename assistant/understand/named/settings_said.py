"""A setting by word of mouth: what a gallon or a colon means."""

from __future__ import annotations

from assistant.understand.text.patterns import Pattern

_SETTINGS: tuple[tuple[tuple[str, str], Pattern], ...] = (
    (("gallon", "imperial"), Pattern(r"\b(?:imperial|british|uk|english)\b")),
    (("gallon", "US"), Pattern(r"\b(?:us|american|usa|states)\b")),
    (("metric", ""), Pattern(r"\b(?:metric|litres?|liters?|ml|millilitres?|milliliters?|centi\w+)\b")),
    (("ratio", "in"), Pattern(r"\bcolon\b.*\bin\b|\b(?:one )?part in\b|\bin all\b")),
    (("ratio", "to"), Pattern(r"\bcolon\b.*\bto\b|\b(?:one )?part to\b|\bplus water\b")),
)


def setting_in(plain: str) -> tuple[str, str] | None:
    """A setting that is named: what a gallon or a colon means."""
    if _WHICH_OF_BOTH.search(plain):
        return None  # "are you using US or imperial": neither is wanted
    return next((setting for setting, pattern in _SETTINGS if pattern.search(plain)), None)


_WHICH_OF_BOTH = Pattern(r"\b(?:us|american|imperial|british|uk) or (?:us|american|imperial|british|uk)\b")
