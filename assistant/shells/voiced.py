"""What a chat on a terminal listens and speaks with: ears, mouth, the talk key, the meter."""

from __future__ import annotations

import asyncio
from collections.abc import Callable
from dataclasses import dataclass

from prompt_toolkit.application import get_app
from prompt_toolkit.filters import Condition
from prompt_toolkit.key_binding import KeyBindings, KeyPressEvent

from assistant.contract import Heard, Reply
from assistant.hear.microphone import Microphone
from assistant.shells.listening import Ears, HeardTurn, News, Note
from assistant.shells.mouth import Mouth


@dataclass(frozen=True)
class Voiced:
    """Ears and a mouth, for the thread that the chat runs in."""

    ears: Ears
    mouth: Mouth
    microphone: Microphone

    def start(self, turn: Callable[[Heard], None], note: Callable[[str], None]) -> None:
        """Begin to listen: turns and notes come in the thread of the running loop."""
        loop = asyncio.get_running_loop()

        def bring(news: News) -> None:
            if isinstance(news, HeardTurn):
                turn(news.heard)
            elif isinstance(news, Note):
                note(news.say)
                self.mouth.say(news.say)

        def deliver(news: News) -> None:
            loop.call_soon_threadsafe(bring, news)

        self.ears.start(self.microphone, deliver)

    def answer(self, reply: Reply) -> None:
        """Speaks a reply."""
        answer_aloud(reply, self.ears, self.mouth)

    def keys(self) -> KeyBindings:
        """Space talks, on an empty line: the biggest key there is, for a gloved hand."""
        bindings = KeyBindings()

        @bindings.add(" ", filter=Condition(lambda: not get_app().current_buffer.text))
        def _talk(_: KeyPressEvent) -> None:
            self.ears.press()

        return bindings


def answer_aloud(reply: Reply, ears: Ears, mouth: Mouth) -> None:
    """Speaks a reply; what it asks is then listened for."""
    mouth.answer(reply)
    if reply.intent != "hush":
        ears.replied(reply)
