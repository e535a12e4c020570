"""Caps, spoons and syringes as they are spoken of: "a cap is 10 mils", "how many capfuls", "two 15 mil spoons".

What a tool holds is no amount of the mix: taken for the total it would make a dose many times too weak.
"""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

from assistant.contract import Slots, VolumeRole
from assistant.core.quantities.amounts import Amount, Scoops
from assistant.understand.numbers.amounts import Found
from assistant.understand.parsing import Parsed
from assistant.understand.text.patterns import Pattern

_TOOLS = {
    **dict.fromkeys(("cap", "caps", "capful", "capfuls", "capsful", "lid", "lids", "lidful", "lidfuls"), "cap"),
    **dict.fromkeys(("spoon", "spoons", "spoonful", "spoonfuls"), "spoon"),
    **dict.fromkeys(("syringe", "syringes", "syringeful", "syringefuls"), "syringe"),
    **dict.fromkeys(("pipette", "pipettes"), "pipette"),
    **dict.fromkeys(("dropper", "droppers", "dropperful", "dropperfuls"), "dropper"),
    **dict.fromkeys(("scoop", "scoops", "scoopful", "scoopfuls"), "scoop"),
}
"""What a keeper measures with and hardly ever mixes in."""
_MAY_BE_EITHER = frozenset({"cup", "cups", "jug", "beaker"})
""" "For a 500 mil jug" is the mix, "with a 50 mil cup" what it is measured with."""
_BETWEEN = frozenset({"-", "measuring", "medicine", "dosing", "plastic", "little", "small", "big", "sized", "kitchen"})
_WORD = "|".join(_TOOLS)
_WITH = Pattern(r"\b(?:with|using|have|got|has)(?: only| just| got)*(?: a| an| the| my| one| this| that)*$")
_HOLDS_BEFORE = Pattern(
    rf"\b(?P<tool>{_WORD})(?: \w+){{0,2}}? (?:is|are|holds?|takes?|measures?|has|contains?|fits|=|'s|of|comes to"
    r"|does)(?: about| only| exactly| just| a)*$"
)
_HOLDS_AFTER = Pattern(rf"^(?:(?:a|per|each|every|to|in|for|one|the|my) ){{1,2}}(?P<tool>{_WORD})\b")
_HOW_MANY = Pattern(
    rf"\bhow many (?:\w+ )?(?P<tool>{_WORD})\b|\bin (?P<other>caps|capfuls|spoonfuls|scoops|syringes)\b"
)
_ONLY_THE_TOOL = Pattern(r"\b(?:only|just) (?:have|got|has)(?: got)?(?: a| an| the| my| one| this)* VOLUME\b")


def scoops_in(parsed: Parsed) -> tuple[Scoops | None, tuple[Found, ...]]:
    """The tool spoken of with what it holds and how many, and the amounts that are the tool's and nothing else's."""
    words = [token.text for token in parsed.tokens]
    tool, holds, count = "", None, None
    taken: list[Found] = []
    for one in parsed.amounts.found:
        named = _tool_of(one, words)
        if one.kind == "volume" and named and isinstance(one.value, Amount):
            tool, holds = named, one.value
            taken.append(one)
    for one in parsed.amounts.found:
        begin = one.end
        if one.kind == "number" and taken and taken[0].start == one.end:
            begin = taken[0].end  # "two 15 mil spoons"
        if one.kind == "number" and isinstance(one.value, Fraction) and _word(words, begin) in _TOOLS:
            tool, count = tool or _TOOLS[_word(words, begin)], one.value
            taken.append(one)
    wanted = _HOW_MANY.search(" ".join(words))
    if wanted is not None:
        tool = tool or _TOOLS[wanted["tool"] or wanted["other"]]
    elif count is None:
        count, tool = _a_single_one(words, tool)
    if not tool:
        return None, ()
    return Scoops(tool, holds, count, wanted=wanted is not None), tuple(taken)


def _tool_of(one: Found, words: list[str]) -> str:
    """The tool whose size a volume is; empty: it is of none."""
    before, at = " ".join(words[max(0, one.start - 7) : one.start]), one.end
    holds = _HOLDS_BEFORE.search(before)
    if holds is not None:
        return _TOOLS[holds["tool"]]
    after = _HOLDS_AFTER.match(" ".join(words[at : at + 3]))
    if after is not None:
        return _TOOLS[after["tool"]]
    while _word(words, at) in _BETWEEN:
        at += 1
    end = _word(words, at)
    if end in _MAY_BE_EITHER and (_WITH.search(before) or words[one.end] in ("measuring", "medicine", "dosing")):
        return end.removesuffix("s")
    return _TOOLS.get(end, "")


def _a_single_one(words: list[str], tool: str) -> tuple[Fraction | None, str]:
    """ "A capful of bleach", "half a cap of bleach": one of it, or that part."""
    found = _SINGLE.search(" ".join(words))
    if found is None:
        return None, tool
    return (Fraction(1, 2) if found["half"] else Fraction(1)), tool or _TOOLS[found["tool"]]


_SINGLE = Pattern(rf"\b(?P<half>half )?(?:an?|one) (?P<tool>{_WORD}) (?:of|in|into|to|per)\b(?! the (?:yellow|bottle))")


def _word(words: list[str], at: int) -> str:
    return words[at] if at < len(words) else ""


def only_has_the_tool(plain: str) -> bool:
    """ "I only have a 2 mil syringe": not the product that is all there is."""
    return _ONLY_THE_TOOL.search(plain) is not None


def without_the_tool(slots: Slots, parsed: Parsed) -> Slots:
    """The slots with the tool apart from the amounts."""
    scoops, taken = scoops_in(parsed)
    if scoops is None:
        return slots
    left = [one for one in parsed.amounts.found if one.kind == "volume"]
    kept = [place for place, one in enumerate(left) if one not in taken]
    volumes = tuple(slots.volumes[place] for place in kept if place < len(slots.volumes))
    roles: tuple[VolumeRole, ...] = tuple(slots.roles[place] for place in kept if place < len(slots.roles))
    counted = {one.value for one in taken if one.kind == "number"}
    numbers = tuple(number for number in slots.numbers if number not in counted)
    uses_up = slots.uses_up and not only_has_the_tool(parsed.plain)
    return replace(slots, volumes=volumes, roles=roles, numbers=numbers, uses_up=uses_up, scoops=scoops)
