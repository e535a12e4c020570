"""What is to be added to the household: "add a bottle", "set up a new tank"."""

from __future__ import annotations

from typing import Literal, TypeAlias

from assistant.understand.text.patterns import Pattern

Adds: TypeAlias = Literal["bottle", "enclosure", "stock", "measure"]

_VERB = r"(?:add|adding|register|registering|set up|setting up|enter|create|put in)"
_KINDS: tuple[tuple[Adds, Pattern], ...] = (
    ("measure", Pattern(r"\b(?:syringes?|spoons?|measures?|measuring \w+|cups?|jugs?|beakers?|pipettes?)\b")),
    ("bottle", Pattern(r"\b(?:(?:spray )?bottles?|sprayers?|BOTTLE)\b")),
    (
        "enclosure",
        Pattern(
            r"\b(?:enclosures?|tanks?|tubs?|vivs?|vivariums?|cages?|terrariums?|homes?|box|boxes|ENCLOSURE|ANIMAL)\b"
        ),
    ),
    ("stock", Pattern(r"\b(?:products?|cleaners?|disinfectants?|concentrates?|stocks?|AGENT|STOCK)\b")),
)
_ADDS = Pattern(
    r"^(?:(?:ok|right|so|please|hey|can|could|would|will|may|let|us|me|i|we|you|want|need|like|to|how|do|and|now|go"
    rf"|about) )*{_VERB} (?:a|an|another|one more|NUMBER more|new|my|the)"
    r"(?: (?:new|NUMBER|other|second|third|small|big|spray|measuring))* "
    r"(?:bottle|sprayer|enclosure|tank|tub|viv|vivarium|cage|terrarium|product|cleaner|disinfectant|concentrate|stock"
    r"|syringe|spoon|measure|cup|jug|beaker|pipette)\b(?! "
    r"(?:of|with|to (?:the|my|it)\b(?! (?:list|household|shelf|file|record))))"
)


_BOUGHT = Pattern(
    r"^(?:(?:ok|right|so|hey|oh|well|and|now|also) ,? ?)*(?:(?:i|we) )?(?:have )?(?:just |also )*"
    r"(?:bought|got|purchased|picked up|ordered|been given|was given)(?: (?:me|myself|us))? "
    r"(?:(?:a|an|my|some) (?:brand )?new|another|one more|a second|a third|a spare|an extra)"
    r"(?: (?:small|big|large|little|spray|measuring|VOLUME|\w+))? "
    r"(?:bottle|sprayer|enclosure|tank|viv|vivarium|cage|terrarium|product|cleaner|disinfectant|concentrate|syringe"
    r"|spoon|measure|cup|jug|beaker)(?: (?:for|of|called) [^,?]*)?$"
)
_OF_A_PRODUCT = Pattern(r"\b(?:bottle|jug) of (?:AGENT|STOCK)\b|\bnew MEASURE of (?:AGENT|STOCK)\b")
"""What is bought by the jug is the product."""
_USED_TOO = Pattern(r"\b(?:filled|mixed|poured|sprayed|rinsed|with|unlabelled|leak\w*|smell\w*)\b")


def is_to_be_added(plain: str) -> bool:
    """True when a thing is to be added to what the keeper owns, and nothing to a bottle or a bucket."""
    bought = _BOUGHT.search(plain.strip(" .!")) is not None and _USED_TOO.search(plain) is None
    return bought or _ADDS.search(plain) is not None


def adds_in(plain: str) -> Adds | None:
    """What sort of thing is named; None: none is."""
    if _OF_A_PRODUCT.search(plain):
        return "stock"
    return next((kind for kind, pattern in _KINDS if pattern.search(plain)), None)
