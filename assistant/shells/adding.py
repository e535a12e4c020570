"""`add` in the chat: setup's questions in the chat's own window, with its clocks running, and a cry answered first.

Setup's interview waits for each answer, so it runs in a thread beside the chat's loop; whatever touches the sitting or
the screen is done in the loop.
"""

from __future__ import annotations

import asyncio
from collections.abc import Awaitable, Callable, Sequence
from datetime import date
from pathlib import Path

from prompt_toolkit import PromptSession
from prompt_toolkit.completion import FuzzyWordCompleter
from prompt_toolkit.formatted_text import AnyFormattedText

from assistant.core.facts import Facts
from assistant.shells.setup import Interview
from assistant.shells.setup_asking import Plain, question_line
from assistant.store.keeping_file import KeepingFile

Interrupts = Callable[[str], Awaitable[bool]]
"""Takes what was typed; True when it was a turn of its own and no answer."""


class InChat(Plain):
    """Asks in a chat: the clocks stay in the bottom line, and a cry of harm is a turn and not an answer."""

    def __init__(self, bottom_line: Callable[[], AnyFormattedText], interrupts: Interrupts) -> None:
        self._loop = asyncio.get_running_loop()
        self._session: PromptSession[str] = PromptSession(bottom_toolbar=bottom_line, refresh_interval=1.0)
        self._interrupts = interrupts

    def ask(self, question: str, default: str, choices: Sequence[str]) -> str:
        return asyncio.run_coroutine_threadsafe(self._asked(question, default, choices), self._loop).result()

    async def _asked(self, question: str, default: str, choices: Sequence[str]) -> str:
        completer = FuzzyWordCompleter(list(choices)) if choices else None
        while True:
            try:
                typed = await self._session.prompt_async(
                    question_line(question, default), completer=completer, reserve_space_for_menu=0
                )
            except KeyboardInterrupt:
                raise EOFError from None  # left to itself it would end the whole chat
            if not await self._interrupts(typed):
                return typed.strip()


async def add_in_chat(kind: str, keeping: Path, facts: Facts, today: date, asking: InChat) -> None:
    """Asks about one new thing of that kind and writes it to keeping.toml.

    Fails: KeepingFault, ShellFault; what was answered by then is kept.
    """
    interview = Interview(KeepingFile(keeping, facts), asking, facts, today)
    await asyncio.to_thread(interview.add, kind)
