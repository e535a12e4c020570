"""When a fill was, told in a turn of its own: "it was at four", right after "filled it yesterday"."""

from __future__ import annotations

from dataclasses import replace

from assistant.contract import Reading, Slots


def only_a_time(words: tuple[str, ...], slots: Slots) -> bool:
    """ "It was at four", "two hours ago": nothing but when."""
    return slots.when is not None and not slots.bottles and set(words) <= _OF_A_TIME


def on_the_same_day(slots: Slots, before: Reading) -> Slots:
    """ "At four", after "yesterday": at four yesterday."""
    said, day = slots.when, before.slots.when
    if said is None or day is None or said.to_the != "minute":
        return slots
    back = day.at.date() - said.at.date()
    return replace(slots, when=replace(said, at=said.at + back, others=tuple(at + back for at in said.others)))


_OF_A_TIME = frozenset(
    {"{when}", "{number}", "it", "was", "that", "actually", "about", "around", "but", "at", "no", "one"}
    | {"i", "filled", "mixed", "made", "did", "up", "done", "not", "today", "now", "this", "morning", "just", "fill"}
    | {"sorry", "wait", "oh", "mix", "batch", "is", "'s", "from", "mean", "meant", "on", "the"}
)
