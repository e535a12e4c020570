"""Two fills in one breath: "filled yellow with bleach and pink with chlorhexidine".

Each bottle has its own product, so nothing met; anything that isn't plainly so is left to the rules of meeting.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from itertools import pairwise

from assistant.understand.parsing import Parsed
from assistant.understand.text.patterns import Pattern

_VERB = r"(?:filled|refilled|topped|made|mixed|put|poured|did)"
_LEAD = rf"(?:(?:i|we|have|has|just|ok|okay|right|so|and|then|now|well|yes|both|the|also|,) ?)*(?:{_VERB}(?: up)?)?"
_FINE = r"(?: ?\b(?:the|my|some|fresh|of|up|both|with|MIX|VOLUME|at|into|in|a)\b)*"
_TAIL = (
    r"(?: (?:too|again|today|now|just now|up|fresh|both|one|,|at|MIX|VOLUME|of|mix|\{?when\}?|WHEN|this|morning|got"
    r"|have been|has been|are|were|is|was|filled|refilled|made|mixed|done"
    r"|(?:before|after) (?:breakfast|lunch|tea|dinner|work|school|bed)))*"
)
_INTO_BOTTLE = Pattern(rf"^{_LEAD}{_FINE} ?(?:AGENT|STOCK)(?: MIX| VOLUME| at)* in(?:to)?(?: the| my)? BOTTLE{_TAIL}$")
_WITH_PRODUCT = Pattern(
    rf"^{_LEAD}{_FINE} ?BOTTLE(?: up| is| 's| has been| got| now)*(?: filled| refilled| made up| mixed| full)?"
    rf"(?: up)?(?: with| of)(?: the| some| fresh| my| MIX| VOLUME| of| a)* (?:AGENT|STOCK){_TAIL}$"
)
_BARE = Pattern(rf"^{_LEAD}(?: the| my| both| up)* ?BOTTLE{_TAIL}$")
_NOT_APART = Pattern(
    r"\b(?:together|same|from|bucket|jug|each other|instead|not|never|wrong|mistake|accident\w*|oops"
    r"|(?:after|before)(?! (?:breakfast|lunch|tea|dinner|work|school|bed)\b))\b"
)
_FILLED = Pattern(rf"\b{_VERB}\b|\bfilled\b")
_JOINTS = ("and", ",", "then", "plus", ";", "&")


def fills_apart(parsed: Parsed) -> tuple[str, ...]:
    """A text for each bottle that was filled, with the verb put back; empty where it isn't plainly so of each."""
    plain = parsed.plain
    if _NOT_APART.search(plain) or not _FILLED.search(plain) or plain.endswith("?"):
        return ()
    cuts = _cuts(parsed)
    if not cuts:
        return ()
    bounds = [0, *cuts, len(parsed.tokens)]
    spans = [_trimmed(parsed, begin, end) for begin, end in pairwise(bounds)]
    shapes = [_shape(parsed, begin, end) for begin, end in spans]
    if "" in shapes or len({shape == "bare" for shape in shapes}) != 1:
        return ()
    verb = next((token.text for token in parsed.tokens if re.fullmatch(_VERB, token.text)), "filled")
    texts = (" ".join(token.raw for token in parsed.tokens[begin:end]) for begin, end in spans)
    return tuple(text if _FILLED.search(text) else f"{verb} {text}" for text in texts)


def _bottles(parsed: Parsed, begin: int, end: int) -> list[str]:
    """The bottles named between two tokens; a name of several bottles is none."""
    named = [
        [thing.name for thing in mention.things if thing.kind == "bottle"]
        for mention in parsed.mentions
        if begin <= mention.start < end
    ]
    return [names[0] for names in named if len(set(names)) == 1]


def _cuts(parsed: Parsed) -> list[int]:
    """Where one fill ends and the next begins, each with a bottle of its own; none: there is only one."""
    joints = [at for at, token in enumerate(parsed.tokens) if token.text in _JOINTS]
    joints = [at for at in joints if not any(m.start <= at < m.end for m in parsed.mentions)]
    cuts: list[int] = []
    begin = 0
    for at in joints:
        if _bottles(parsed, begin, at) and _bottles(parsed, at, len(parsed.tokens)):
            cuts.append(at)
            begin = at
    every = _bottles(parsed, 0, len(parsed.tokens))
    alone = len(every) == len(set(every)) == len(cuts) + 1
    return cuts if alone else []


def _trimmed(parsed: Parsed, begin: int, end: int) -> tuple[int, int]:
    while begin < end and parsed.tokens[begin].text in _JOINTS:
        begin += 1
    while end > begin and parsed.tokens[end - 1].text in (*_JOINTS, ".", "!"):
        end -= 1
    return begin, end


def _shape(parsed: Parsed, begin: int, end: int) -> str:
    """ "bare", "with" or "into"; empty: it is none of these."""
    plain = " ".join(_masked(parsed, begin, end))
    for shape, pattern in (("into", _INTO_BOTTLE), ("with", _WITH_PRODUCT), ("bare", _BARE)):
        if pattern.match(plain):
            return shape
    return ""


def _masked(parsed: Parsed, begin: int, end: int) -> Sequence[str]:
    """The tokens with bottles, products and amounts in capitals."""
    spans = {m.start: (m.end, _kind(m.things)) for m in parsed.mentions}
    spans |= {found.start: (found.end, found.kind.upper()) for found in parsed.amounts.found}
    if parsed.when is not None:
        spans[parsed.when.start] = (parsed.when.end, "WHEN")
    words, at = [], begin
    while at < end:
        if at in spans:
            at, word = spans[at]
            words.append(word)
        else:
            words.append(parsed.tokens[at].text)
            at += 1
    return words


def _kind(things: Sequence[object]) -> str:
    kinds = [getattr(thing, "kind", "") for thing in things]
    return next((kind.upper() for kind in ("bottle", "stock", "agent") if kind in kinds), kinds[0].upper())
