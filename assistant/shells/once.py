"""`ask` and `hear`: turns that stand alone, each as if the program had been started for it."""

from __future__ import annotations

import sys
from collections.abc import Iterator

from assistant.contract import Heard, Outcome, Reply
from assistant.shells.options import Options, opened_folder
from assistant.shells.out import complain, show
from assistant.shells.sitting import Sitting, open_sitting

ANSWERED, NOT_UNDERSTOOD, REFUSED = 0, 2, 3


def ask(options: Options) -> int:
    """`ask TEXT`, or `ask -` for one turn a line of stdin."""
    with opened_folder(options) as folder, open_sitting(folder) as sitting:
        if options.what == "-":
            return _ask_each(sitting, options)
        return _one(sitting, Heard(options.what), options)


def _one(sitting: Sitting, heard: Heard, options: Options) -> int:
    reply = sitting.hear(heard, options.now())
    show(reply, options)
    return exit_code(reply)


def exit_code(reply: Reply) -> int:
    """0 answered, asked back or to be confirmed; 2 not understood; 3 refused on safety grounds."""
    if reply.outcome is Outcome.UNSURE:
        return NOT_UNDERSTOOD
    return REFUSED if reply.outcome is Outcome.REFUSE else ANSWERED


def _ask_each(sitting: Sitting, options: Options) -> int:
    for line in stdin_lines():
        sitting.begin_anew()
        show(sitting.hear(Heard(line), options.now()), options)
    return ANSWERED


def stdin_lines() -> Iterator[str]:
    """Lines of stdin as they come; one that isn't UTF-8 is complained of and counts as blank: nothing is guessed."""
    for number, raw in enumerate(sys.stdin.buffer, start=1):
        try:
            yield raw.decode("utf-8-sig" if number == 1 else "utf-8").rstrip("\r\n")
        except UnicodeDecodeError:
            complain(f"line {number} of the input isn't UTF-8 text; save it as UTF-8")
            yield ""
