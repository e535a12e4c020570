"""Where something is to be poured, and what somebody would do with a bottle that nobody knows."""

from __future__ import annotations

from assistant.understand.harm.patterns import ANIMAL
from assistant.understand.text.patterns import Pattern

_DRAINS: tuple[tuple[str, Pattern], ...] = (
    ("kitchen sink", Pattern(r"\bkitchen\b|\bwashing ?up (?:bowl|sink)\b|\bdish ?washer\b")),
    ("street drain", Pattern(r"\b(?:street|storm|road|gutter|outside drain|drain outside|yard drain)\b")),
    ("water", Pattern(r"\b(?:pond|river|stream|ditch|lake|sea|creek|canal)\b")),
    (
        "garden",
        Pattern(r"\b(?:garden|lawn|grass|soil|ground|earth|flower ?bed|compost|outside|outdoors|hedge|yard|patio)\b"),
    ),
    ("septic", Pattern(r"\b(?:septic|cesspit|cesspool|soakaway)\b")),
    ("toilet", Pattern(r"\b(?:toilet|loo|lavatory)\b")),
    ("laundry sink", Pattern(r"\b(?:laundry|utility) (?:room )?(?:sink|tub)\b")),
    ("bathroom sink", Pattern(r"\b(?:bath ?room|bath|shower|basin)\b")),
    ("drain", Pattern(r"\b(?:drain|sink|plughole|sewer|plug)\b")),
)
_WISHES: tuple[tuple[str, Pattern], ...] = (
    ("sniffing", Pattern(r"\b(?:sniff\w*|smell(?:s|ing|ed)? (?:it|like)|smell to|give it a smell|smell\b)")),
    ("tasting", Pattern(r"\btast\w*\b")),
    (
        "its colour",
        Pattern(r"\bcolou?r\w*|\bit(?: is|'s)? (?:blue|green|pink|yellow|clear|orange|red|white)\b|\blooks like\b"),
    ),
    ("mixing", Pattern(r"\b(?:mix(?:ed|ing)?|top (?:it )?up|combine|pour (?:it|them) together|add)\b")),
    ("trying it out", Pattern(r"\b(?:try(?:ing)?|test it|spray a bit|use(?: it| them)?\b(?!d))")),
    ("guessing", Pattern(r"\b(?:guess\w*|probably|must be|pretty sure|i think it is|reckon)\b")),
    ("shaking", Pattern(r"\bshak\w*\b")),
)


_UNKNOWN = Pattern(
    r"\b(?:unlabell?ed|unmarked|mystery|nameless) (?:\w+ )?(?:bottles?|BOTTLE|sprays?|sprayer|jug|container)\b"
    r"|\b(?:label|sticker|writing|tape|name)(?: \w+){0,3} (?:off|gone|rubbed off|fallen off|unreadable)\b"
    r"|\b(?:no|without (?:a|any)|has not got a|lost its) label\b"
    r"|\b(?:do not know|not know|no idea|forgot|forget|can not remember|not sure|nobody knows)(?: \w+){0,4} what"
    r"(?: \w+){0,3} (?:in|into|with|holds?) ?(?:the |my |this |that )?(?:BOTTLE|bottle)?"
)


def nobody_knows(plain: str) -> bool:
    """True when a bottle is spoken of that has no label, or whose content is forgotten."""
    return _UNKNOWN.search(plain) is not None and ("bottle" in plain or "BOTTLE" in plain or "label" in plain)


_STORED = Pattern(
    r"^(?:(?:and|so|ok|um) )*(?:can|could|may|should|is it|are|do|does|where|how)\b.*\b"
    r"(?:keep|kept|store|stored|storing|stand|stash|live)\b.*\b"
    r"(?:next to|beside|by|together|with|near|shelf|cupboard|side|alongside|under)\b"
    r"|^(?:(?:and|so|ok|um) )*(?:can|could|may|should|is it|are|do|does|will|is)\b.*\b(?:sit|go|be|share|ok|fine)\b.*"
    r"\b(?:(?:same|one) (?:box|drawer|crate|tray)|(?:same|one|the|a) (?:shelf|cupboard|cabinet|closet)"
    r"|under the sink)\b"
    r"|\b(?:AGENT|STOCK)\b.*\b(?:AGENT|STOCK)\b.*\b(?:(?:in|on) (?:one|the same|a|the) (?:shelf|cupboard|cabinet"
    r"|closet|crate)|under the sink)\b.*\b(?:problem|ok|fine|idea|allowed|matter|safe|alright|right)\b"
    r"|\bunder the sink\b.*\b(?:with|next to|beside)\b.*\b(?:bad idea|ok|fine|problem|good idea|alright|safe)\b"
)


_OF_ANIMALS = Pattern(rf"\b(?:ENCLOSURE|{ANIMAL}|males?|females?)\b")
_OF_PRODUCTS = Pattern(r"\b(?:AGENT|STOCK|BOTTLE|bottles?|products?|chemicals?|acids?|cleaners?)\b")


_THEM = Pattern(
    r"\b(?:keep|kept|store|stored|storing|stash)\b.*\b(?:them|they|these|those|two|both)\b"
    r"|\b(?:them|they|these|those|two|both)\b.*\b(?:keep|kept|store|stored|live)\b"
)
_OF_A_BODY = Pattern(r"\b(?:eyes?|hands?|arm|skin|face)\b")


_ON_A_SURFACE = Pattern(r"\b(?:wet|on top|surface|mix\w*|wip\w+|spray\w*|cleaned|poured|after|before)\b")
"""Of what is cleaned with one and then the other, and not of where they stand."""


def stored(plain: str) -> bool:
    """True when it is asked whether products may be kept side by side."""
    if _OF_A_BODY.search(plain) is not None:
        return False  # "keep this eye under the tap"
    if _STORED.search(plain) is None or _ON_A_SURFACE.search(plain) is not None:
        return False
    if _OF_PRODUCTS.search(plain) is not None:
        return True
    return _OF_ANIMALS.search(plain) is None and _THEM.search(plain) is not None


def drains_in(plain: str) -> tuple[str, ...]:
    """Where it is to be poured; the place that matters most first."""
    return tuple(place for place, pattern in _DRAINS if pattern.search(plain))


def wish_in(plain: str) -> str | None:
    """What somebody would do to find out what a bottle holds, or with it all the same; None: nothing."""
    return next((wish for wish, pattern in _WISHES if pattern.search(plain)), None)
