"""What "it", "that one" and "him" stand for: the one thing that the turn before was about.

Only for questions that record nothing, and never for whether an animal may go back: there a wrong "him" would open the
wrong enclosure, so the reading stays without a name and the answer asks, or goes by the only round that is open.
"""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta
from typing import Any

from assistant.contract import Reading, Slots, World
from assistant.understand.talk.takes import asks_only, kinds_of
from assistant.understand.text.patterns import Pattern

_IT = Pattern(
    r"\b(?:it|(?:is|does|will|can|could|would|may) that(?! the)|that one|this one|the same one|that stuff|this stuff"
    r"|that bottle|this bottle|there)\b"
)
_THE_SAME_AGAINST = Pattern(r"^(?:and|or|so|what about|how about|and what about) (?:against|on|for)\b")
""" "How about against salmonella?", after a question about chlorhexidine."""
_HIM = Pattern(r"\b(?:he|him|his|she|her|hers|it|its|there|that one|this one|that tank|that tub|in there)\b")
_VOUCHES = frozenset({"return_check", "status", "next", "time_left"})
"""Questions about the rounds on record: which one is meant is decided by what is open."""
_PRODUCT = ("bottles", "stocks", "agents")


def with_referent(slots: Slots, intent: str, plain: str, world: World) -> Slots:
    """The slots of a question with what its pronoun stands for put in; as they were where nothing fits."""
    question = world.questions.get(intent)
    before = _just_before(world)
    if before is None:
        return replace(slots, **_of_the_illness_told(slots, intent, world))
    if question is None or not asks_only(question) or intent in _VOUCHES or slots.choices:
        return slots
    kinds = kinds_of(question)
    filled: dict[str, Any] = _of_the_illness_told(slots, intent, world)
    if kinds & {"bottle", "stock", "agent"} and not any(getattr(slots, field) for field in _PRODUCT):
        product = {field: value for field in _PRODUCT if len(value := getattr(before.slots, field)) == 1}
        same = _IT.search(plain) or _THE_SAME_AGAINST.match(plain)
        if product and same and len(before.slots.bottles) < 2:
            filled |= product | _as_just_reckoned(slots, intent, before)
    homes = before.slots.enclosures
    takes_home = kinds & {"enclosure", "animal"} and not slots.enclosures and not slots.every_enclosure
    if takes_home and len(homes) == 1 and not filled and _HIM.search(plain):
        filled["enclosures"] = homes
    return replace(slots, **filled) if filled else slots


def _as_just_reckoned(slots: Slots, intent: str, before: Reading) -> dict[str, Any]:
    """ "Is that enough for salmonella?", right after a dose: of that mix, and not of the one the bottle is for."""
    if intent not in _OF_A_STRENGTH or before.intent not in _RECKONED or slots.mixes or not before.slots.mixes:
        return {}
    return {"mixes": before.slots.mixes, "stock_strength": slots.stock_strength or before.slots.stock_strength}


_RECKONED = frozenset({"dose", "mix_strength", "read_ratio"})
_OF_A_STRENGTH = frozenset({"works_on", "hold_time", "mix_strength"})


def _of_the_illness_told(slots: Slots, intent: str, world: World) -> dict[str, Any]:
    """The illness that was told of a while ago, for what is to be used, soaked or kept wet after it."""
    told = world.talk.germ
    if told is None or intent not in _AFTER_AN_ILLNESS or slots.organisms or slots.job == "mites":
        return {}
    return {"organisms": (told[0],)} if world.now - told[1] <= WHILE_IT_LASTS else {}


WHILE_IT_LASTS = timedelta(minutes=30)
_AFTER_AN_ILLNESS = frozenset({"treat_item", "choose_agent", "hold_time", "works_on"})


def _just_before(world: World) -> Reading | None:
    """The reading of the turn before, where that was a question; None: it was not, or it was long ago."""
    last, before = world.talk.last, world.talk.last_reading
    if last is None or before is None or last.intent != before.intent:
        return None
    return before
