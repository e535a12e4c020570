"""What was sprayed is told to have been no good afterwards: too old, too weak, measured wrong, or without product.

It is of the mix of a clean in which something has been sprayed; another product or bottle that is named is none of it.
"""

from __future__ import annotations

from collections.abc import Iterable
from datetime import timedelta

from assistant.contract import World
from assistant.core.quantities.quantity import read_mix
from assistant.core.record.state import Round
from assistant.core.round.rounds import is_sprayed
from assistant.core.shelf.bottles import NOTHING
from assistant.understand.look import Look
from assistant.understand.named.by_colour import products_by_colour
from assistant.understand.named.names import Thing
from assistant.understand.text.patterns import Pattern, words_in
from assistant.understand.times.moments import moment

_MIX = r"(?:BOTTLE|AGENT|STOCK|mix|bottle|stuff|batch|spray|solution|concentrate)"
_OLD = Pattern(
    rf"\b{_MIX}(?: \w+){{0,3}}? (?:expired|out of date|past its (?:date|best|life|time)|gone off|went off|stale"
    r"|too old)\b|\b(?:an|the|some) old (?:mix|batch|bottle|lot|solution)\b",
    *("expired", "out of date", "past its", "off", "stale", "old"),
)
_SO_OLD = Pattern(rf"\b(?:{_MIX}|it|that)(?: \w+){{0,2}}? (?:was|is|were|'s)(?: \w+){{0,2}}? DURATION old\b", "old")
_MADE = Pattern(
    rf"\b(?:{_MIX}|it|that)(?: \w+)?? (?:was|is|were|'s|has been)(?: \w+){{0,2}}? (?:made|mixed|filled|from)\b"
    rf"|\bi (?:\w+ )?(?:mixed|made|filled)(?: up)? (?:it|that|this|(?:the |my )?{_MIX})\b"
    rf"|\b(?:used|sprayed)(?: \w+){{0,4}}? {_MIX} (?:from|i made|i mixed|made|mixed)\b",
    *("made", "mixed", "filled", "from"),
)
_LONG_AGO = Pattern(
    r"\b(?:last (?:week|month|year|weekend|summer|winter|spring|autumn)|(?:ages|weeks|months|years|days) (?:ago|back)"
    r"|the other (?:day|week)|a (?:week|month|year) (?:ago|back)|yesterday 's)\b",
    *("last", "ago", "back", "other", "yesterday"),
)
_NOTHING_IN_IT = Pattern(
    r"\b(?:never|forgot(?:ten)?(?: to)?|did not|without)(?: \w+){0,2}? "
    r"(?:put|putting|add|adding|pour|pouring|measure)(?: \w+){0,3}? (?:concentrate|AGENT|STOCK|product|disinfectant)"
    r"(?: in| into it| to it| in it)?$"
    r"|\bforgot(?:ten)? (?:the |to add |to put in )*(?:concentrate|AGENT|STOCK|product)(?: in (?:the |my )?BOTTLE)?$"
    rf"|\b{_MIX}(?: \w+){{0,6}}? full of (?:\w+ )?water\b"
    r"|\bthere was (?:only|just|nothing but|plain) (?:\w+ )?water in (?:the |my )?(?:BOTTLE|bottle|sprayer)\b",
    *("never", "forgot", "not", "without", "water"),
)
_TOO_LITTLE = Pattern(
    r"\b(?:too little|not enough|not nearly enough|hardly any|only half|half) (?:of )?(?:the )?"
    r"(?:concentrate|AGENT|STOCK|product|in\b|strength|(?:the )?dose)"
    r"|\bonly (?:put|added|used|poured|measured)(?: in)? VOLUME\b|\b(?:a )?NUMBER (?:of )?the dose\b",
    *("little", "enough", "hardly", "half", "only", "dose"),
)
_WRONGLY = Pattern(
    r"\b(?:measured|mixed|diluted|dosed)(?: \w+){0,2}? (?:wrong|wrongly|incorrectly|badly|too weak|too thin)\b"
    r"|\b(?:got|had) the (?:ratio|dose|mix|dilution|amount|strength|measuring|numbers?|sums?) wrong\b"
    r"|\b(?:used|mixed|had) (?:it )?(?:at |in )?(?:the |a )?wrong (?:ratio|dose|dilution|strength|amount)\b",
    *("wrong", "badly", "weak", "thin", "incorrectly"),
)
_AT_A_MIX = Pattern(
    rf"\b(?:i used|i mixed|i made|used|mixed it|made it|it was|that was|{_MIX} was)"
    r"(?: it| only| just| about| at| a| actually| really| up)* MIX$",
    "MIX",
)
OLD_MIX = timedelta(hours=24)
OLD_STOCK_DAYS = 180
"""Days from which on the age of a product as bought is taken for a fault of what was sprayed, when it is told so."""


def mix_was_wrong(look: Look) -> bool:
    """Whether what an open clean was sprayed with is told to have been no good."""
    plain = look.parsed.plain.strip(" .!,")
    sprayed = [r for r in look.world.state.rounds.values() if is_sprayed(r)]
    if not sprayed:
        return False
    masked, things = products_by_colour(look.parsed, look.world.household)
    sprayed = [r for r in sprayed if _is_of(r, things, look.world)]
    if not sprayed:
        return False
    texts = (plain, masked.strip(" .!,"))
    plainly = (_OLD, _NOTHING_IN_IT, _TOO_LITTLE, _WRONGLY)
    if any(pattern.search(text) is not None for pattern in plainly for text in texts):
        return True
    if any(_SO_OLD.search(text) is not None for text in texts):
        return _days_said(look) >= (OLD_STOCK_DAYS if _of_a_stock(things) else 1)
    if any(_MADE.search(text) is not None for text in texts):
        return _long_ago(look)
    return _AT_A_MIX.search(texts[1]) is not None and not _at_its_own(look, sprayed)


def measured_wrong(look: Look) -> bool:
    """Whether it is told in so many words that its mix was measured wrong, or too weak: no new fill."""
    return _WRONGLY.search(look.parsed.plain) is not None and mix_was_wrong(look)


def _is_of(round_: Round, things: Iterable[Thing], world: World) -> bool:
    """Whether every product that is named is that of the clean."""
    for thing in things:
        stock = world.household.stock(thing.name)
        agent = stock.agent if thing.kind == "stock" and stock is not None else thing.name
        if thing.kind == "bottle" and thing.name != round_.bottle:
            return False
        if thing.kind != "bottle" and agent != round_.agent:
            return False
    return True


def _of_a_stock(things: Iterable[Thing]) -> bool:
    return any(thing.kind != "bottle" for thing in things)


def _days_said(look: Look) -> float:
    return max((float(span) / 86400 for span in look.parsed.amounts.spans_s), default=0.0)


def _long_ago(look: Look) -> bool:
    """A day ago or more, at the earliest that is meant."""
    if _LONG_AGO.search(look.parsed.plain) is not None:
        return True
    said = moment(look.parsed.when, look.world.now) if look.parsed.when is not None else None
    if said is None:
        return False
    at = said.at.replace(hour=0, minute=0) if said.to_the in ("day", "week") else said.at
    return look.world.now - at >= OLD_MIX


def _at_its_own(look: Look, rounds: Iterable[Round]) -> bool:
    """Whether the mix told is the one that the bottle is known to hold."""
    told = [one.value for one in look.parsed.amounts.found if one.kind == "mix"]
    for round_ in rounds:
        bottle = look.world.household.bottle(round_.bottle) if round_.bottle is not None else None
        fill = look.world.state.bottles.get(round_.bottle or "", NOTHING).fill
        own = read_mix(fill.mix) if fill is not None and fill.mix is not None else bottle.mix if bottle else None
        if any(mix != own for mix in told):
            return False
    return True


WORDS = words_in(_OLD, _NOTHING_IN_IT, _TOO_LITTLE, _WRONGLY)
"""Words that the rules here turn on."""
