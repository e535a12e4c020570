"""`rinseback --voice`: ears and mouth opened for a chat, and the chat without a terminal, where turns come from both.

On a terminal the chat of `chat` stays as it is, with a key to talk and a meter; see there.
"""

from __future__ import annotations

import queue
import threading
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from datetime import datetime
from typing import cast

from assistant.contract import Heard, Reply
from assistant.hear.call_word import unfit
from assistant.hear.choose import open_recogniser
from assistant.hear.microphone import Microphone
from assistant.hear.recogniser import CannotListen
from assistant.shells.ears import words_of
from assistant.shells.folder import Folder, ShellFault, TurnFault
from assistant.shells.listening import Began, Ears, HeardTurn, News, When
from assistant.shells.mouth import Mouth
from assistant.shells.once import stdin_lines
from assistant.shells.options import Options
from assistant.shells.out import complain, show
from assistant.shells.sitting import Sitting
from assistant.shells.voiced import answer_aloud
from assistant.store.log import StoreFault

TICK_S = 1.0


@contextmanager
def opened_ears(sitting: Sitting, folder: Folder, options: Options, mouth: Mouth) -> Iterator[Ears]:
    """Ears that don't listen yet.

    Fails: ShellFault, when there is no recogniser, or no call word where one is wanted.
    """
    call_word = sitting.household.habits.call_word
    when = _when(options, call_word)
    if when == "call":
        household = sitting.household
        named = [(bottle.name, *bottle.also) for bottle in household.bottles]
        named += [(home.name, *home.also) for home in household.enclosures]
        named += [(stock.name, *stock.also) for stock in household.stocks]
        trouble = unfit(call_word, tuple(name for names in named for name in names))
        if trouble:
            complain(trouble)
    try:
        recogniser = open_recogniser(words_of(sitting, call_word), folder.models, folder.cache)
    except CannotListen as fault:
        raise ShellFault(str(fault)) from fault
    mouth.warm()
    sitting.warm()
    ears = Ears(recogniser, mouth, when, call_word, sitting.cries())
    try:
        yield ears
    finally:
        ears.close()


def _when(options: Options, call_word: str) -> When:
    if options.listen == "call" and not call_word:
        raise ShellFault('no call word is set; write call_word = "..." under [habits] in keeping.toml')
    return cast(When, options.listen or ("call" if call_word else "key"))


def microphone_of(options: Options) -> Microphone:
    """The microphone that the options name."""
    return Microphone(options.microphone)


@dataclass(frozen=True)
class _Typed:
    text: str


class Lines:
    """A chat in plain lines, with turns from the microphone and from stdin, and what comes due in between."""

    def __init__(self, sitting: Sitting, options: Options, now: Callable[[], datetime], mouth: Mouth) -> None:
        self._sitting = sitting
        self._options = options
        self._now = now
        self._mouth = mouth
        self._news: queue.Queue[News | _Typed] = queue.Queue()

    def run(self, ears: Ears, leave: tuple[str, ...]) -> None:
        """Until "quit", or Ctrl-C; stdin may end before."""
        ears.start(microphone_of(self._options), self._news.put)
        threading.Thread(target=self._read, daemon=True, name="stdin").start()
        while True:
            try:
                news = self._news.get(timeout=TICK_S)
            except queue.Empty:
                self._tick(ears)
                continue
            if isinstance(news, _Typed):
                if news.text.strip().lower() in leave:
                    return
                self._turn(Heard(news.text), ears)
            elif isinstance(news, HeardTurn):
                self._turn(news.heard, ears)
            elif isinstance(news, Began):
                complain("listening")
            else:
                complain(news.say)
                self._mouth.say(news.say)

    def _read(self) -> None:
        for line in stdin_lines():
            if line.strip():
                self._news.put(_Typed(line))

    def _turn(self, heard: Heard, ears: Ears) -> None:
        try:
            reply = self._sitting.hear(heard, self._now())
        except (StoreFault, TurnFault) as fault:
            complain(str(fault))
            return
        self._give(reply, ears)

    def _tick(self, ears: Ears) -> None:
        if ears.busy or self._mouth.speaking:
            return  # never on top of the keeper, nor of a reply
        now = self._now()
        try:
            reply = self._sitting.speak_up(now)
            self._sitting.watch(now)
        except StoreFault:
            return  # a busy file or a full disk: the next turn says so
        if reply is not None:
            self._give(reply, ears)

    def _give(self, reply: Reply, ears: Ears) -> None:
        show(reply, self._options)
        answer_aloud(reply, ears, self._mouth)
