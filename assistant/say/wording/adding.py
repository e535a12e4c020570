"""How it is told where a thing is added."""

from __future__ import annotations

from collections.abc import Callable, Mapping

from assistant.contract import Answer, Line

ONE = {"bottle": "a bottle", "enclosure": "an enclosure", "stock": "a product", "measure": "a measure"}


def _what(_: Answer) -> Line:
    return Line("What shall I add: a bottle, an enclosure, a product or a measure?")


def _how(answer: Answer) -> Line:
    one = ONE[answer.details["adds"]]
    return Line(
        f"To add {one}, type that in the chat, or run rinseback setup.",
        f"To add {one}, type that in the chat, or run `rinseback setup`: it asks a few questions and writes it down.",
    )


LINES: Mapping[str, Callable[[Answer], Line]] = {"adding.what": _what, "adding.how": _how}
