"""Where `setup` asks: a terminal, with completion and line editing, or lines of stdin.

At a terminal a wrong answer is told and asked again. From a file or a pipe it ends the command: the lines after it may
have been meant for other questions, and taking them would write down what nobody said.
"""

from __future__ import annotations

import json
import os
import shutil
import sys
from collections.abc import Sequence
from textwrap import fill
from typing import Protocol

from assistant.shells.folder import ShellFault
from assistant.shells.out import complain

WIDEST = 100


class Asker(Protocol):
    """Puts questions to the keeper. `ask` fails with EOFError when nothing more will come."""

    def ask(self, question: str, default: str, choices: Sequence[str]) -> str: ...

    def tell(self, text: str) -> None: ...

    def wrong(self, text: str) -> None: ...


def asker(as_json: bool) -> Asker:
    """For how this process was started."""
    if as_json or not (sys.stdin.isatty() and sys.stdout.isatty()):
        return Lines(as_json)
    return Plain() if os.environ.get("TERM") == "dumb" else Terminal()


class Plain:
    """A terminal that can't move its cursor."""

    def ask(self, question: str, default: str, choices: Sequence[str]) -> str:
        return input(question_line(question, default)).strip()

    def tell(self, text: str) -> None:
        width = min(shutil.get_terminal_size().columns, WIDEST)
        print("\n".join(fill(line, width, break_long_words=False) for line in text.split("\n")), flush=True)

    def wrong(self, text: str) -> None:
        self.tell(f"! {text}")


class Terminal(Plain):
    """With line editing, and completion of what can be chosen from."""

    def __init__(self) -> None:
        from prompt_toolkit import PromptSession

        self._session: PromptSession[str] = PromptSession()

    def ask(self, question: str, default: str, choices: Sequence[str]) -> str:
        from prompt_toolkit.completion import FuzzyWordCompleter

        completer = FuzzyWordCompleter(list(choices)) if choices else None
        # The lines that completion would reserve below the prompt push the questions off a small screen.
        typed = self._session.prompt(question_line(question, default), completer=completer, reserve_space_for_menu=0)
        return typed.strip()


class Lines:
    """Answers from stdin, a line each; questions on stdout, as text or as one JSON object each."""

    def __init__(self, as_json: bool) -> None:
        self._as_json = as_json
        self._read = 0

    def ask(self, question: str, default: str, choices: Sequence[str]) -> str:
        if self._as_json:
            print(json.dumps({"ask": question, "default": default, "choices": list(choices)}), flush=True)
        else:
            print(question_line(question, default), end="", flush=True)
        line = sys.stdin.buffer.readline()
        if not line:
            raise EOFError
        self._read += 1
        try:
            typed = line.decode("utf-8-sig").strip()
        except UnicodeDecodeError:
            self.wrong("this isn't UTF-8 text; save the input as UTF-8")
            raise
        if not self._as_json:
            print(typed)
        return typed

    def tell(self, text: str) -> None:
        if self._as_json:
            print(json.dumps({"tell": text}), flush=True)
        else:
            print(text, flush=True)

    def wrong(self, text: str) -> None:
        if self._as_json and sys.stdin.isatty():
            complain(text)
            return
        if not self._as_json:
            print()
        raise ShellFault(f"line {self._read} of the input: {text}; what came before it is kept")


def question_line(question: str, default: str) -> str:
    """A question as it stands before the answer, with what Enter takes."""
    return f"{question} [{default}] > " if default else f"{question} > "
