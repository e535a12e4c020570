"""The `rinseback` command: reads the command line and starts the shell it names.

Each command's module is imported when it is called for: the chat's terminal library alone costs as much as an answer.
Every expected trouble ends here, as one line on stderr.
"""

from __future__ import annotations

import argparse
import os
import sys
from collections.abc import Sequence
from contextlib import suppress
from importlib import import_module
from typing import NoReturn, TextIO

from assistant.shells.folder import ShellFault
from assistant.shells.options import Options, read_time
from assistant.shells.out import complain
from assistant.store.keeping import KeepingFault
from assistant.store.log import StoreFault
from assistant.store.packaged import PackagedFault

BAD_INPUT = 2
INTERRUPTED = 130

COMMANDS = {
    "chat": ("assistant.shells.chat", "chat"),
    "ask": ("assistant.shells.once", "ask"),
    "hear": ("assistant.shells.once", "hear"),
    "rehearse": ("assistant.shells.rehearse", "rehearse"),
    "model": ("assistant.shells.model", "model"),
    "check": ("assistant.shells.check", "check"),
    "labels": ("assistant.shells.labels", "labels"),
    "setup": ("assistant.shells.setup", "setup"),
    "export": ("assistant.shells.one_file", "export"),
    "import": ("assistant.shells.one_file", "bring_back"),
    "log": ("assistant.shells.show_log", "show_log"),
}


def main(arguments: Sequence[str] | None = None) -> int:
    """Runs one command; gives its exit code."""
    _have_all_streams()
    for stream in (sys.stdout, sys.stderr):
        _never_fail_on_a_letter(stream)
    try:
        options = _options(list(sys.argv[1:] if arguments is None else arguments))
        module, name = COMMANDS[options.command]
        code: int = getattr(import_module(module), name)(options)
        sys.stdout.flush()
    except (ShellFault, KeepingFault, StoreFault, PackagedFault) as fault:
        complain(str(fault))
        return BAD_INPUT
    except BrokenPipeError:
        _leave_stdout_alone()  # whoever read our output has gone
        return 0
    except OSError as error:
        _leave_stdout_alone()
        complain(
            f"{error.filename or 'output'}: {(error.strerror or 'unusable').lower()}; see whether its disk is full"
        )
        return BAD_INPUT
    except KeyboardInterrupt:
        return INTERRUPTED
    return code


def _have_all_streams() -> None:
    """A stream that the caller closed reads as empty and swallows what is written."""
    for name, mode in (("stdin", "r"), ("stdout", "w"), ("stderr", "w")):
        if getattr(sys, name) is None:
            setattr(sys, name, open(os.devnull, mode, encoding="utf-8"))  # noqa: SIM115


def _leave_stdout_alone() -> None:
    """Keeps the interpreter from writing the rest once more on its way out."""
    with suppress(OSError, ValueError):  # a test's stand-in has no number
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())


def _never_fail_on_a_letter(stream: TextIO | None) -> None:
    reconfigure = getattr(stream, "reconfigure", None)
    if reconfigure is not None:
        reconfigure(errors="replace")


class _Parser(argparse.ArgumentParser):
    """Its complaints are one line, like all others."""

    def error(self, message: str) -> NoReturn:
        raise ShellFault(f"{message}; see {self.prog} --help")


class _Version(argparse.Action):
    """Looks the version up only when asked: reading a package's metadata takes longer than reading the household."""

    def __call__(self, parser: argparse.ArgumentParser, *_: object) -> NoReturn:
        from importlib.metadata import version

        print(f"rinseback {version('rinseback')}")
        parser.exit()


def _options(arguments: list[str]) -> Options:
    if not arguments or (arguments[0].startswith("-") and arguments[0] not in ("-h", "--help", "--version")):
        arguments = ["chat", *arguments]
    given = vars(_parser().parse_args(arguments))
    at = given.pop("at", None)
    bottles = tuple(given.pop("bottles", ()))
    return Options(**given, bottles=bottles, at=None if at is None else read_time(at))


def _parser() -> argparse.ArgumentParser:
    parser = _Parser(
        prog="rinseback",
        description="Cleaning and disinfecting reptile enclosures: how much, what next, how long, may it go back.",
        epilog="Without a command it opens the chat; `rinseback --demo` tries it on an invented household.",
    )
    parser.add_argument(
        "--version", action=_Version, nargs=0, dest=argparse.SUPPRESS, help="show the version and leave"
    )
    commands = parser.add_subparsers(dest="command", required=True, metavar="COMMAND")
    common = _Parser(add_help=False)
    common.add_argument("--home", metavar="DIR", help="the data folder, instead of your own")
    common.add_argument("--demo", action="store_true", help="an invented household in a throw-away folder")
    common.add_argument("--json", action="store_true", help="one JSON object a turn on stdout, nothing else")
    common.add_argument("--at", metavar="TIME", help="answer as at that time, as 2026-01-31T09:00")

    spoken = _Parser(add_help=False)
    spoken.add_argument("--speak", action="store_true", help="speak the replies as well")

    live = _Parser(add_help=False)
    live.add_argument("--voice", action="store_true", help="listen to the microphone, and speak the replies")
    live.add_argument(
        "--listen",
        choices=("key", "call", "always"),
        help="when to listen: after a press of the space bar, after your call word, or always",
    )
    live.add_argument("--microphone", metavar="NAME", help="which microphone, by its name or a part of it")

    written = _Parser(add_help=False)
    written.add_argument("--say-to", metavar="FILE.wav", help="write the spoken reply to a sound file")

    commands.add_parser(
        "chat", parents=[common, spoken, live], help="talk, typing or speaking, with live timers (the default)"
    )
    ask = commands.add_parser("ask", parents=[common, spoken, written], help="one question, one answer")
    ask.add_argument("what", metavar="TEXT", help='the question; "-" takes one from each line of stdin')
    hear = commands.add_parser("hear", parents=[common, spoken, written], help="one question from a recording")
    hear.add_argument("what", metavar="FILE.wav", help='a 16-bit PCM WAV file; "-" reads stdin')
    rehearse = commands.add_parser("rehearse", parents=[common], help="run a script of turns on a clock of its own")
    rehearse.add_argument("what", metavar="FILE", help='turns, one a line; "+9m30s" moves the clock; "-" reads stdin')
    model = commands.add_parser("model", parents=[common], help="fetch or unpack a speech model, and check it")
    model.add_argument(
        "what", metavar="ADDRESS-or-FILE", help="a packed Vosk model: a web address or a zip or tar file"
    )
    model.add_argument("--sha256", metavar="SUM", default="", help="the checksum that its page names")
    commands.add_parser(
        "setup", parents=[common], help="asks what you own and writes keeping.toml; stop and go on as you like"
    )
    export = commands.add_parser("export", parents=[common], help="write keeping.toml and the record to one file")
    export.add_argument("what", metavar="FILE.zip", nargs="?", default="", help="else a new one in the backups folder")
    bring = commands.add_parser("import", parents=[common], help="put back what a file from export holds")
    bring.add_argument("what", metavar="FILE.zip", help="what it replaces is written to the backups folder first")
    commands.add_parser("check", parents=[common], help="what works on this computer, and how to mend what doesn't")
    _add_labels(commands.add_parser("labels", parents=[common], help="bottle labels to print, or one as a picture"))
    _add_log(commands.add_parser("log", parents=[common], help="what was done, as a table, CSV, JSON or a month"))
    return parser


def _add_labels(labels: argparse.ArgumentParser) -> None:
    labels.add_argument("bottles", nargs="*", metavar="BOTTLE", help="whose labels; without any, all of them")
    labels.add_argument("--png", metavar="BOTTLE", help="that one label, as a picture")
    labels.add_argument("--to", metavar="FILE", help="where to write it, instead of labels.pdf in the data folder")
    labels.add_argument("--paper", choices=("a4", "letter"), default="a4", help="the sheet's size (a4)")


def _add_log(log: argparse.ArgumentParser) -> None:
    log.add_argument("--csv", action="store_true", help="comma-separated, for a spreadsheet")
    log.add_argument("--month", metavar="2026-05", help="a picture of the month: a letter for what was done on the day")
    log.add_argument("--enclosure", metavar="NAME", help="only that enclosure")
    log.add_argument("--agent", metavar="NAME", help="only what has to do with that agent")
    log.add_argument("--from", dest="first", metavar="DAY", help="from that day on, as 2026-01-31")
    log.add_argument("--to", dest="last", metavar="DAY", help="up to that day, the day included")
    log.add_argument("--notes", action="store_true", help="with what the tool noted for its own clocks")


if __name__ == "__main__":
    sys.exit(main())
