"""With what a step was done, where that makes it none: a wipe with a soapy cloth, a washing without soap."""

from __future__ import annotations

from assistant.understand.text.patterns import Pattern

NOT_CLEAN_WATER = Pattern(
    r"(?: \S+){0,4}? with (?:a |an |the |my |some |that |his |her )*(?:\w+ )?"
    r"(?:soapy|soap|detergent|dirty|used|filthy|same|sleeve|hospital|quarantine|sick|other tank 's|old)\b"
    r"(?! toothbrush| shirt)",
    "with",
)
NO_SOAP = Pattern(
    r"\b(?:no|without(?: any)?|with no) (?:soap|detergent)\b"
    r"|\bwashed\b(?: \S+){0,3} with (?:just |only |plain )+(?:\w+ )?water\b|\bwith water only\b"
    r"|\b(?:soap|suds)(?: is| are| 's)? still (?:on|in|there)\b|\bstill (?:all |a bit )?(?:soapy|sudsy)\b",
    *("soap", "detergent", "water", "suds"),
)
""" "Washed, no soap": soap is what a washing is, and that it is off again."""
_OLD_MIX = Pattern(
    r"\b(?:with|from|using) (?:(?:the|a|an|some|my) )?(?:(?:old|older|ancient|leftover|expired) "
    r"(?:mix|stuff|batch|fill)|(?:mix|batch|stuff|fill) from (?:last|yesterday|the other|\w+day)|"
    r"(?:yesterday|last \w+)(?: 's)? (?:mix|batch|stuff|fill|spray))\b"
)


def of_an_old_mix(plain: str) -> bool:
    """Whether a spraying is told of with a mix of another day."""
    return _OLD_MIX.search(plain) is not None
