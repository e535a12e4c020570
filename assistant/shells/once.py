"""`ask` and `hear`: turns that stand alone, each as if the program had been started for it."""

from __future__ import annotations

import sys
from collections.abc import Iterator

from assistant.contract import Heard, Outcome, Reply
from assistant.shells.folder import ShellFault
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


def hear(options: Options) -> int:
    """`hear FILE.wav`, or `hear -` for a recording on stdin: one turn."""
    from assistant.shells.ears import heard_from

    with opened_folder(options) as folder, open_sitting(folder) as sitting:
        return _one(sitting, heard_from(options.what, sitting, folder), options)


def _one(sitting: Sitting, heard: Heard, options: Options) -> int:
    reply = sitting.hear(heard, options.now())
    show(reply, options)
    _say(reply, options)
    return exit_code(reply)


def _say(reply: Reply, options: Options) -> None:
    """Speaks the reply, or writes it to a sound file, where that was asked for."""
    if not (options.speak or options.say_to):
        return
    from assistant.shells.mouth import Mouth, say_to

    if options.say_to:
        say_to(reply, options.say_to)
    if options.speak:
        with Mouth() as mouth:
            mouth.speak(reply)
            mouth.wait()


def exit_code(reply: Reply) -> int:
    """0 answered, asked back or to be confirmed; 2 not understood; 3 refused on safety grounds."""
    if reply.outcome is Outcome.UNSURE:
        return NOT_UNDERSTOOD
    return REFUSED if reply.outcome is Outcome.REFUSE else ANSWERED


def _ask_each(sitting: Sitting, options: Options) -> int:
    if options.say_to:
        raise ShellFault("--say-to takes one question, not many lines; ask them one by one")
    for line in stdin_lines():
        sitting.begin_anew()
        reply = sitting.hear(Heard(line), options.now())
        show(reply, options)
        _say(reply, options)
    return ANSWERED


def stdin_lines() -> Iterator[str]:
    """Lines of stdin as they come; one that isn't UTF-8 is complained of and counts as blank: nothing is guessed."""
    for number, raw in enumerate(sys.stdin.buffer, start=1):
        try:
            yield raw.decode("utf-8-sig" if number == 1 else "utf-8").rstrip("\r\n")
        except UnicodeDecodeError:
            complain(f"line {number} of the input isn't UTF-8 text; save it as UTF-8")
            yield ""
