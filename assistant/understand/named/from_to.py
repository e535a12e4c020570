"""From where to where a thing is to go, as it is said: "from the sick one to clover", "pepper's tongs", "and back"."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Literal

from assistant.understand.named.animal_words import ONE_ANIMAL
from assistant.understand.text.patterns import Pattern

_GROUP_WORDS = {
    "new": r"quarantined?|isolation|newcomers?|new (?:arrivals?|ones?|animals?|{animal})",
    "sick": r"sick|ill|poorly|infected|hospital|crypto|positive",
    "healthy": r"healthy|well ones?|residents?|clean ones?|normal ones?|others?|rest",
}
PLACE = Pattern(
    r"\b(?:(?P<home>ENCLOSURE|ANIMAL)|(?P<new>{new})|(?P<sick>{sick})"
    r"|(?P<healthy>{healthy}))\b".format(**_GROUP_WORDS)
)
_FROM_BEFORE = Pattern(
    r"\b(?:from|after|off|out of|between|of|used (?:\S+ ){0,3}(?:in|on|for|with)|been (?:in|on|near|with)|was "
    r"(?:in|on)|were (?:in|on)|did|done|doing|finished(?: with)?|touched|touching|handled|handling|cleaned|fed"
    r"|feeding)(?: (?:the|my|a|an|our|his|her|that|this|those|these))*(?: \w+)?$"
)
_TO_BEFORE = Pattern(
    r"\b(?:to|into|on|onto|in|for|with|at|and|near|over to|across to|touch|do|clean|feed|handle)"
    r"(?: (?:the|my|a|an|our|his|her|that|this|all|both|those|these))*(?: \w+)?$"
)
_TOOL = (
    r"(?:tongs?|tweezers|forceps|hooks?|scoops?|nets?|tools?|brush(?:es)?|cloths?|gloves?|sponges?|rags?|bowls?|dish"
    r"(?:es)?|hides?|branch(?:es)?|scissors|bucket|tub|things|stuff|kit|gear|equipment|spatula|bottle|bag)"
)
_OWN_TOOL = Pattern(rf"^(?: ?'s)?(?: (?:ones?|box|tub|tank|room|rack|{ONE_ANIMAL}|animals?|viv))?(?: ?'s)? {_TOOL}\b")


def taken_in(plain: str, homes: Sequence[str]) -> tuple[str, str] | None:
    """From where to where something is to go: names of enclosures or groups, empty where unsaid; None: nowhere named.

    homes: the enclosures that stand behind the text's ENCLOSURE and ANIMAL, in the order said; empty for one that is
    not clear.
    """
    left = list(homes)
    places, source, target = [], "", ""
    for match in PLACE.finditer(plain):
        place = (left.pop(0) if left else "") if match["home"] else str(match.lastgroup)
        before, after = plain[: match.start()].rstrip(), plain[match.end() :]
        if not source and (_OWN_TOOL.match(after) or _FROM_BEFORE.search(before)):
            source = place
        elif not target and source and _TO_BEFORE.search(before):
            target = place
        else:
            places.append((place, _TO_BEFORE.search(before) is not None))
    if not source and len(places) > 1:  # "for the one and the other": in the order said
        source = places.pop(0)[0]
    for place, is_target in places:
        if not target and (source or is_target):
            target = place
        elif not source:
            source = place
    return (source, target) if source or target else None


# ---------------------------------------------------------------- said after another such question

_NOT_THIS = Pattern(r"\bnot (?:\w+ ){0,2}$")
_OWN = Pattern(r"^ ?'s ?\??$")
_TURNED = Pattern(
    r"\bback\b|\b(?:other|opposite|wrong) (?:way|direction)\b|\bvice versa\b|\b(?:in )?reverse\b|\bthe reverse\b"
)


@dataclass(frozen=True, slots=True)
class End:
    """A place named in what goes on from such a question, and which end of the way it is."""

    place: str
    """An enclosure or a group; empty for a name that is not clear."""
    role: Literal["from", "to", ""]
    """Empty where nothing says which."""


def ends_in(plain: str, homes: Sequence[str]) -> tuple[End, ...]:
    """The places that a follow-up names, without the one after "not". homes: as for `taken_in`."""
    left, plain = list(homes), _TURNED.sub(" ", plain)  # in "the other way" nobody is "the other"
    ends = []
    for match in PLACE.finditer(plain):
        place = (left.pop(0) if left else "") if match["home"] else str(match.lastgroup)
        before, after = plain[: match.start()].rstrip(), plain[match.end() :]
        if _NOT_THIS.search(before + " "):
            continue
        if _OWN_TOOL.match(after) or _FROM_BEFORE.search(before):
            ends.append(End(place, "from"))
        elif _TO_BEFORE.search(before):
            ends.append(End(place, "to"))
        else:
            ends.append(End(place, "from" if _OWN.match(after) else ""))  # "and clover's": what is hers
    return tuple(ends)


def turned_round(plain: str) -> bool:
    """ "And back?", "the other way round": the same way the other way."""
    return _TURNED.search(plain) is not None


def ends_after(said: tuple[str, str], ends: Sequence[End], turned: bool) -> tuple[str, str]:
    """From where to where a follow-up asks, after a question from `said[0]` to `said[1]`.

    Both ends named replace both. One named replaces its own, and the other stays; named where the thing was to go
    from, or where it came from, it is the way back that is asked.
    """
    source, target = said
    named = list(ends)
    if not named:
        return (target, source) if turned else said
    if len(named) > 1:
        first = next((end for end in named if end.role == "from"), None)
        first = first or next((end for end in named if end.role == ""), named[0])
        second = next((end for end in named if end is not first and end.role != "from"), None)
        return first.place, second.place if second is not None else ""
    place, role = named[0].place, named[0].role
    if role == "from" or (role == "" and target and not source):
        return place, source if place == target else target
    return target if place == source and target else source, place
