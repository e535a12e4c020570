"""A reply as the screen of a tired person shows it: what came due, the answer, what to mind, where it comes from."""

from __future__ import annotations

from textwrap import wrap

from assistant.contract import Reply

NARROWEST = 24
MOST_SOURCES = 2
LINES_A_SOURCE = 2
"""The whole of them is in the JSON."""


def screen_lines(reply: Reply, width: int = 80) -> list[str]:
    """The lines of one reply, none wider than `width`."""
    width = max(width, NARROWEST)
    lines = []
    for reminder in reply.reminders:
        if reminder not in reply.show:
            lines += _hung("* ", reminder, width)
    for line in reply.show.splitlines():
        lines += _hung("", line, width)
    for caution in reply.cautions:
        if caution not in reply.show:
            lines += _hung("! ", caution, width)
    for source in reply.sources[:MOST_SOURCES]:
        lines += _cut(_hung("  from: ", source.text, width), width)
    if len(reply.sources) > MOST_SOURCES:
        lines.append(f"  and {len(reply.sources) - MOST_SOURCES} more; --json lists them all")
    return lines


def _cut(lines: list[str], width: int) -> list[str]:
    """Its first lines, with dots where something was left out."""
    if len(lines) <= LINES_A_SOURCE:
        return lines
    return [*lines[: LINES_A_SOURCE - 1], lines[LINES_A_SOURCE - 1][: width - 4].rstrip(" ,;(") + " ..."]


def _hung(mark: str, text: str, width: int) -> list[str]:
    indent = len(text) - len(text.lstrip())
    rest = " " * (len(mark) + indent)
    return wrap(text.strip(), width, initial_indent=mark + " " * indent, subsequent_indent=rest) or [""]


def clock(seconds: float) -> str:
    """A span as a clock shows it: "4:05", "1:02:09"."""
    whole = int(seconds + 0.999)  # a running clock never shows 0:00
    minutes, second = divmod(whole, 60)
    hours, minute = divmod(minutes, 60)
    return f"{hours}:{minute:02}:{second:02}" if hours else f"{minute}:{second:02}"
