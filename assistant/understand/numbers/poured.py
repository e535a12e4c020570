"""What a volume is of: water, the concentrate, the whole mix, or what is left in a bottle."""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction

from assistant.contract import VolumeRole
from assistant.understand.numbers.amounts import Found
from assistant.understand.numbers.unit_words import HOLDERS
from assistant.understand.parsing import Parsed
from assistant.understand.text.patterns import Pattern

_WATER = Pattern(r"(?:of )?(?:the |some |plain |clean |cold |tap |warm |fresh )*water\b(?! mix| solution)")
_PRODUCT = Pattern(r"(?:of )?(?:the |my |your |our |this )*(?:stuff|concentrate|product|stock|undiluted|neat)\b")
_TOTAL = Pattern(
    r"(?:of )?(?:the |ready |made |finished |spray )*(?:in all|in total|total|altogether|all told|(?:ready )?mix"
    r"|mixture|solution|spray|worth)\b"
)
_TOGETHER = Pattern(
    r"(?:of )?(?:the )?(?:water and (?:the |my )?(?:\w+ ){1,3}|(?:\w+ ){1,3}and (?:the )?water )"
    r"(?:together|in all|in total|altogether)\b"
)
_LEFT = Pattern(r"(?:or so )?(?:of (?:it|that|the \w+|\w+) )?(?:still )?(?:left|remaining|still in)\b")
_WHOLE_BEFORE = Pattern(r"(?:\bup to|\bmakes?|\bmade|\bmaking|\bto make)(?: up)?(?: a| the| about)*$")
_LEFT_BEFORE = Pattern(
    r"(?:\bthere (?:is|are|be)(?: still| about| maybe| only)*|\bleft with|\bstill (?:has|have|holds|got)|\bhas "
    r"(?:still )?(?:got )?|\bdown to)(?: about| a| only)*$"
)
_USES_UP = Pattern(
    r"\bus(?:e|ing) (?:it |that |them )?up\b|\b(?:the )?last of (?:the|my)\b|\b(?:only|just) (?:have|got|has)\b"
    r"|\b(?:have|has|got) only\b|\bthat is all (?:i|we|there)\b|\ball (?:the \w+ )?i have(?: left| got)?\b"
    r"|\bhow much (?:(?:mix|solution|spray) )?(?:can|will|does|would|could) (?:i|it|that|this|VOLUME)(?: \w+)? make"
    r"|\bhow much does that make\b|\bhow far (?:will|does)\b|\bfinish(?:ing)? off (?:the|my)\b"
)
_HOW_MUCH_WATER = Pattern(r"\b(?:how much|what) water\b|\bwater (?:do|should|must) i\b")
_FULL = Pattern(r"\b(half|third|quarter|three quarters?|two thirds?)(?: of)? (?:full|left|empty|there|gone|in it)\b")
_PARTS = {
    "half": Fraction(1, 2),
    "third": Fraction(1, 3),
    "quarter": Fraction(1, 4),
    "three quarter": Fraction(3, 4),
    "three quarters": Fraction(3, 4),
    "two third": Fraction(2, 3),
    "two thirds": Fraction(2, 3),
}
_OFTEN = frozenset(
    {"stroke", "strokes", "squirt", "squirts", "pump", "pumps", "pull", "pulls", "squeeze", "squeezes", "puff", "puffs"}
    | {"press", "presses", "trigger", "sprays", "shots"}
)


_PULLED = frozenset({"pumped", "sprayed", "pulled", "squeezed", "squirted", "pressed", "pump", "pull", "squeeze"})


def roles_of(parsed: Parsed) -> tuple[VolumeRole, ...]:
    """The role of each volume, in the order said."""
    volumes = [one for one in parsed.amounts.found if one.kind == "volume"]
    return tuple(_role(parsed, one) for one in volumes)


def _role(parsed: Parsed, one: Found) -> VolumeRole:
    words = [token.text for token in parsed.tokens]
    after = " ".join(words[one.end : one.end + 6])
    before = " ".join(words[max(0, one.start - 5) : one.start])
    if _LEFT.match(after):
        return "left"
    if words[one.end : one.end + 1] and words[one.end] in HOLDERS and words[one.end] != "spray":
        return "total"
    if _TOGETHER.match(after):
        return "total"
    if _WATER.match(after):
        return "water"
    if _TOTAL.match(after) or _WHOLE_BEFORE.search(before):
        return "total"
    product = _product_at(parsed, one.end)
    if product is not None:
        return (
            "total"
            if _TOTAL.match(" ".join(words[product : product + 3])) or words[product : product + 1] == ["water"]
            else "product"
        )
    if _PRODUCT.match(after):
        return "product"
    return "left" if _LEFT_BEFORE.search(before) else ""


def _product_at(parsed: Parsed, at: int) -> int | None:
    """Where the name of a product right behind a volume ends: "of the shed bleach"; None: none stands there."""
    words = [token.text for token in parsed.tokens]
    begin = at
    while begin < len(words) and begin - at < 4 and words[begin] in ("of", "the", "my", "that", "this", "old"):
        begin += 1
    for found in parsed.amounts.found:  # "of 6 percent bleach"
        if found.start == begin and found.kind == "mix":
            begin = found.end
    for mention in parsed.mentions:
        if mention.start == begin and mention.things[0].kind in ("agent", "stock"):
            return mention.end
    return None


def uses_up(parsed: Parsed, roles: Sequence[VolumeRole]) -> bool:
    """Whether what a volume of concentrate makes is asked, not how much concentrate a volume takes."""
    if _USES_UP.search(parsed.plain):
        return True
    return "product" in roles and _HOW_MUCH_WATER.search(parsed.plain) is not None


def share_left(parsed: Parsed) -> Fraction | None:
    """What part of a bottle is still in it: "half full", "a third gone"; None: nothing is said."""
    words = " ".join(token.text for token in parsed.tokens)
    found = _FULL.search(words)
    if found is None:
        return None
    share = _PARTS[found[1]]
    return 1 - share if found[0].endswith(("empty", "gone")) else share


def share_wanted(parsed: Parsed) -> Fraction | None:
    """What part of a bottle is to be filled: "half the yellow bottle", "only two thirds full"; None: none is said."""
    found = _PART_OF_A_BOTTLE.search(parsed.plain)
    if found is None:
        return None
    if "NUMBER" not in found[0]:
        return Fraction(1, 2)
    parts = (one.value for one in parsed.amounts.found if one.kind == "number")
    return next((part for part in parts if isinstance(part, Fraction) and 0 < part < 1), None)


_PART_OF_A_BOTTLE = Pattern(
    r"\b(?:half|NUMBER)(?: of)? (?:the |my |a |that |this )*(?:BOTTLE|bottle)\b|\bhalf fill\w*\b"
    r"|\b(?:only|just) (?:want|need|make|making|fill|filling|do|use|using|mix|mixing)(?: up)? half\b(?! strength| as)"
    r"|\b(?:fill|filled|filling|make|mix|do|only|just|to|up)\b(?: (?:it|the|my|up|BOTTLE|only|just|about|to))* "
    r"(?:(?:half|NUMBER)(?: (?:way|full|of the way|the way))+|halfway)\b"
)


def strokes_in(parsed: Parsed) -> Fraction | None:
    """How often a trigger was pulled; None: nothing is said of it."""
    words = [token.text for token in parsed.tokens]
    often = _OFTEN | {"times"} if _PULLED & set(words) else _OFTEN
    for found in parsed.amounts.found:
        counted = set(words[found.end : found.end + 2]) & often
        if counted and found.kind == "number" and isinstance(found.value, Fraction):
            return found.value
    return None
