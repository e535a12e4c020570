"""An animal by its own name: "clover's mouth", "pepper has licked it".

A keeper calls a home by its animal, so the name is masked as the home. Where a part of a body or something that only an
animal does stands beside it, it is the animal; "clover's tank" and "spray pepper's box" stay the home.
"""

from __future__ import annotations

from assistant.understand.named.named_at import named_at
from assistant.understand.named.names import HOMES, Mention
from assistant.understand.parsing import Parsed
from assistant.understand.text.patterns import Pattern

_BODY = (
    r"(?:skin|shell|scales?|scutes?|tail|mouth|belly|bely|bellies|foot|feet|legs?|nose|nostrils?|nares|eyes?|vent"
    r"|cloaca|head|toes?|gums?|face|neck|jaw|tongue|plastron|carapace|stump|claws?|ears?|throat|lips?|spine|wounds?"
    r"|sores?|cuts?|burns?|bites?|graz\w+|scratch\w*|abscess\w*|ulcers?|blisters?|scabs?|stitches|rot|prolapse\w*"
    r"|infection)"
)
_ITS = Pattern(rf"'s (?:\w+ ){{0,2}}?{_BODY}\b")
_DOES = Pattern(
    r"(?:(?:has|have|is|was|'s|just|got|been) )*(?:swallow\w*|drank|drunk|drinking|licked|licking|ate|eaten|bitten"
    r"|tasted|tasting|chewed|chewing|flicked (?:his|her|its) tongue"
    r"|burnt|burned|bleeding|breath\w*|inhal\w*|cough\w*|gasp\w*|wheez\w*|gaping|limp|hurt|injured|covered in"
    r"|soaked in|splashed|sprayed in)\b"
)


_IS_BATHED = Pattern(r"\b(?:bathe|bathing|baths?|soak|soaking|dip|dipping|dunk|dunking)(?: for| of)?$")
""" "A soak for juniper", "bathe pepper in": no home is bathed."""


def with_animals_by_name(parsed: Parsed) -> str:
    """The masked text with ANIMAL for each home that is called by its animal's name and meant as the animal."""
    if "ENCLOSURE" not in parsed.plain:
        return parsed.plain
    words = parsed.plain.split()
    for at, (word, mention) in enumerate(named_at(parsed)):
        if mention is None:
            continue
        after = " ".join(words[at + 1 : at + 6])
        bathed = _IS_BATHED.search(" ".join(words[max(0, at - 3) : at]))
        if word == "ENCLOSURE" and _by_name(mention) and (_ITS.match(after) or _DOES.match(after) or bathed):
            words[at] = "ANIMAL"
            if _DOES.match(after) and words[at + 1] == "'s":
                words[at + 1] = "is" if words[at + 2].endswith("ing") else "has"
    return " ".join(words)


def names_a_home_itself(parsed: Parsed) -> bool:
    """ "The desert box": no animal's name stands for it."""
    homes = (mention for word, mention in named_at(parsed) if word == "ENCLOSURE" and mention is not None)
    return any(not _by_name(mention) for mention in homes)


def _by_name(mention: Mention) -> bool:
    return not set(mention.said.split()) & HOMES and any(not thing.weak for thing in mention.things)
