"""Which of the strengths said is to be mixed, and which is the concentrate's own; and the numbers left over."""

from __future__ import annotations

import re
from collections.abc import Sequence
from fractions import Fraction
from typing import Any

from assistant.contract import Faulty
from assistant.core.quantities.amounts import Amount, Percent, Ppm
from assistant.understand.numbers.amounts import BELOW_ZERO, Found
from assistant.understand.parsing import Parsed
from assistant.understand.text.patterns import Pattern

_STOCK_BEFORE = Pattern(
    r"(?:\bfrom|\busing|\bmy|\bwith|\bout of|\bhave|\bgot|\bof (?:the|my)|\bis|\bhow much(?: of)?|\bmany \w+ of|\bstock"
    r"|\bconcentrate)(?: a| the| my| some| only)*$"
)
_TARGET_BEFORE = Pattern(
    r"(?i)(?:\bmake|\bmix|\bwant|\bneed|\bget|\bat|\bto|\bfor|\bin|\ba|\bmaking|\breach|\bof|\binto)"
    r"(?: up| me| a| some| about| around| volume)*$",
)


def mixes_in(parsed: Parsed) -> tuple[tuple[Any, ...], Amount | None]:
    """What is to be mixed, apart from the strength of the concentrate itself."""
    found = [one for one in parsed.amounts.found if one.kind == "mix"]
    stock = _stock_strength(parsed, found)
    mixes = tuple(one.value for one in found if one is not stock)
    if stock is None or not isinstance(stock.value, Percent):
        return mixes, None
    return mixes, Amount(stock.value.percent, "%")


def _stock_strength(parsed: Parsed, found: Sequence[Found]) -> Found | None:
    percents = [one for one in found if isinstance(one.value, Percent)]
    if not percents:
        return None
    owned = [one for one in percents if _is_its_own(parsed, one)]
    if len(owned) == 1:
        return owned[0]
    wanted = [one for one in percents if _WANTED.search(_before(parsed, one))]
    if len(percents) == 2 and len(wanted) == 1 and _product_behind(parsed, percents[1 - percents.index(wanted[0])]):
        return next(one for one in percents if one is not wanted[0])  # "2 percent chlorhexidine down to 4"
    marked = [one for one in percents if _is_of_stock(parsed, one, others=len(found) > 1)]
    if marked:
        return max(marked, key=_size)
    if len(percents) > 1:
        return max(percents, key=_size)
    return None


_WANTED = Pattern(r"\b(?:down to|up to|to|to (?:make|get|reach))(?: a| about| around)*$")


def _before(parsed: Parsed, one: Found) -> str:
    return " ".join(token.text for token in parsed.tokens[max(0, one.start - 4) : one.start])


def _product_behind(parsed: Parsed, one: Found) -> bool:
    return any(mention.start == one.end and mention.things[0].kind in ("agent", "stock") for mention in parsed.mentions)


def _size(one: Found) -> Fraction:
    return one.value.percent if isinstance(one.value, Percent) else Fraction(0)


def _is_of_stock(parsed: Parsed, one: Found, others: bool) -> bool:
    """ "from six percent bleach", "my 6 percent bleach"; beside another strength or ratio, "6 percent bleach"."""
    before = _before(parsed, one)
    product = _product_behind(parsed, one)
    is_so = _IS.search(before)
    names = one.start - len(is_so.group().split()) if is_so is not None else None
    if any(mention.end == names and mention.things[0].kind in ("agent", "stock") for mention in parsed.mentions):
        return True  # "my bleach is only 4 percent"
    if re.search(r"\b(?:from|using|out of)(?: a| the| my| some)*$", before):
        return True
    if product and _STOCK_BEFORE.search(before):
        return True
    if _is_before_a_weaker_ppm(parsed, one):
        return True
    if others and _size(one) > MOST_ON_A_SURFACE and re.search(r"\bwith(?: a| the| my| some)*$", before):
        return True  # "at one in 32 with 12 percent"
    return product and others and not _TARGET_BEFORE.search(before)


def _is_its_own(parsed: Parsed, one: Found) -> bool:
    """ "It's the 2 percent stuff", "mine's 6 percent", "the two percent one": what it is bought as, and never what is
    wanted of it."""
    before = _before(parsed, one)
    after = " ".join(token.text for token in parsed.tokens[one.end : one.end + 2])
    if re.search(r"\bnot(?: the| a)*$", before):
        return False  # "it's four, not six percent"
    of_mine = re.search(r"\b(?:mine|ours)(?: is| 's)+(?: only| just| about| the| a)*$", before) is not None
    it_is = re.search(r"\b(?:it|this|that)(?: is| 's)(?: only| just| about)*(?: the| a| an)$", before) is not None
    the_one = re.search(r"\b(?:the|a|that)$", before) is not None and re.match(_A_SORT, after) is not None
    return of_mine or (it_is and (not after or re.match(_A_SORT, after) is not None)) or the_one


_A_SORT = r"(?:one|stuff|kind|sort|version|bleach|chlorhex\w*|concentrate|bottle of)\b"
_IS = re.compile(r"\bis(?: only| just| about| now| around| really| actually| at)*$")


def _is_before_a_weaker_ppm(parsed: Parsed, one: Found) -> bool:
    """ "Bleach 5 percent 500 ppm": right behind the product, and far stronger than the ppm that is wanted."""
    ends = {mention.end for mention in parsed.mentions if mention.things[0].kind in ("agent", "stock")}
    wanted = [found.value.ppm for found in parsed.amounts.found if isinstance(found.value, Ppm)]
    return one.start in ends and len(wanted) == 1 and _size(one) * PPM_IN_A_PERCENT > 2 * wanted[0]


MOST_ON_A_SURFACE = 1
"""Percent: "with" more than that is with a concentrate, since none is mixed so strong."""
PPM_IN_A_PERCENT = 10_000
"""By weight in volume, as parts per million of chlorine are counted; here only to tell which is by far the stronger."""


def faults_in(parsed: Parsed, *, mixed: bool) -> tuple[Faulty, ...]:
    """The amounts that can't be taken; a bare number below zero only where something is mixed."""
    return tuple(fault for fault in parsed.amounts.faulty if mixed or fault.why != BELOW_ZERO)


def bare_numbers(found: Sequence[Found], parsed: Parsed) -> tuple[Fraction, ...]:
    """Bare numbers, without those that count windows or tubs."""
    counted = (
        "window",
        "windows",
        "door",
        "doors",
        "tubs",
        "tanks",
        "boxes",
        "cages",
        "enclosures",
        "times",
        "animals",
        "strokes",
        "squirts",
        "pumps",
        "pulls",
        "squeezes",
        "puffs",
    )
    words = [token.text for token in parsed.tokens]
    return tuple(
        one.value
        for one in found
        if one.kind == "number"
        and isinstance(one.value, Fraction)
        and words[one.end : one.end + 1] not in [[w] for w in counted]
    )
