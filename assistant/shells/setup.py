"""`setup`: asks about the household and writes keeping.toml.

Every answer is checked by the readers of keeping.toml and written at once, so that it can be stopped anywhere; run
again it goes on with what is missing, and leaves what is there as it is.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping, Sequence
from contextlib import contextmanager
from datetime import date
from typing import Any

from assistant.core.facts import Facts
from assistant.hear.call_word import unfit
from assistant.hear.sound_alike import sounds_like
from assistant.shells.options import Options, opened_folder
from assistant.shells.setup_answers import Ask, Known, Section, Values
from assistant.shells.setup_asking import Asker, asker
from assistant.shells.setup_questions import SECTIONS
from assistant.store.keeping import KeepingFault
from assistant.store.keeping_file import KeepingFile, NotWritten
from assistant.store.keeping_tables import tables_of
from assistant.store.keeping_values import Wrong
from assistant.store.packaged import packaged_facts

NAMED = ("bottle", "enclosure", "stock", "measure")
INTRODUCTION = """\
What you own, for {path}. Each answer is written down at once.
Enter takes what stands in [brackets], or leaves the question out. "?" explains a question, "again" begins the last \
thing anew, "next" goes to the next part, "stop" ends; run setup again to go on."""

ADDING = """\
A new {one}. Enter takes what stands in [brackets], or leaves the question out; "?" explains it, "stop" ends. \
Bleach in an eye, or anything like it, is heard all the while."""


class _Stop(Exception):
    pass


class _Again(Exception):
    pass


class _Next(Exception):
    pass


def setup(options: Options) -> int:
    """Asks until everything was asked or the keeper stops; 0."""
    with opened_folder(options) as folder:
        facts = packaged_facts()
        interview = Interview(KeepingFile(folder.keeping, facts), asker(options.json), facts, options.now().date())
        interview.run()
    return 0


class Interview:
    """One sitting of questions about a keeping.toml."""

    def __init__(self, file: KeepingFile, asking: Asker, facts: Facts, today: date) -> None:
        self._file = file
        self._asking = asking
        self._facts = facts
        self._today = today

    def run(self, sections: Sequence[Section] = SECTIONS) -> None:
        """Fails: KeepingFault, ShellFault; what was answered by then is kept."""
        self._file.content()  # a fault of the file is told before anything is asked
        self._asking.tell(INTRODUCTION.format(path=self._file.path))
        try:
            for section in sections:
                try:
                    self._section(section)
                except _Next:
                    continue
            self._asking.tell(f"\nThat was all. {self._summary()}")
        except (_Stop, EOFError):
            self._asking.tell(f"\nStopped; run setup again to go on. {self._summary()}")
        except KeyboardInterrupt:
            self._asking.tell(f"\nStopped. {self._summary()}")
            raise

    def add(self, kind: str) -> None:
        """Asks about one new thing of that kind, and keeps it as soon as it has what it needs.

        kind: a table of keeping.toml that may stand several times.
        Fails: KeepingFault, ShellFault; what was answered by then is kept.
        """
        section = next(section for section in SECTIONS if section.one and section.kind == kind)
        self._file.content()  # a fault of the file is told before anything is asked
        self._asking.tell(ADDING.format(one=section.one))
        try:
            name = self._new_name(section)
            name = name and self._added(section, name)
        except (_Stop, _Next, _Again, EOFError):
            name = ""
        kept = f'"{name}" is kept.' if name else "Stopped."
        self._asking.tell(f"{kept} What you have is in {self._file.path}.")

    def _summary(self) -> str:
        if not self._file.path.exists():
            return "Nothing is written; questions can still be asked with the amounts said."
        kept = self._file.household()
        counts = (("products", kept.stocks), ("bottles", kept.bottles), ("measures", kept.measures))
        counted = ", ".join(f"{name} {len(things)}" for name, things in (*counts, ("enclosures", kept.enclosures)))
        return f"{self._file.path} has: {counted}. Change anything there by hand; `rinseback check` reads it over."

    # ------------------------------------------------------------ sections

    def _section(self, section: Section) -> None:
        if section.one:
            self._asking.tell(f"\n{section.title}")
            self._many(section)
            return
        asks = self._open(section, self._file.content().get(section.kind, {}))
        if not asks:
            self._asking.tell(f"\n{section.title}: all there")
            return
        self._asking.tell(f"\n{section.title}")
        while True:
            answered: list[str] = []
            try:
                self._ask_all(section, asks, {}, self._setting(section.kind, answered))
                return
            except _Again:
                self._file.forget(section.kind, tuple(answered))

    def _many(self, section: Section) -> None:
        things = self._file.content().get(section.kind, [])
        if things:
            self._asking.tell(f"On file: {', '.join(_name(thing) for thing in things)}")
        self._fill_gaps(section, things)
        latest = ""
        while True:
            try:
                name = self._new_name(section)
            except _Again:
                if latest:
                    self._file.drop(section.kind, latest)
                    self._asking.tell(f'"{latest}" is taken out again.')
                    latest = ""
                continue
            if not name:
                return
            latest = self._added(section, name)

    def _fill_gaps(self, section: Section, things: Sequence[Mapping[str, Any]]) -> None:
        gaps = {
            _name(thing): asks
            for thing in things
            if (asks := [ask for ask in self._open(section, thing) if not ask.aside])
        }
        if not gaps:
            return
        told = "; ".join(f"{name} ({_keys(asks)})" for name, asks in gaps.items())
        self._asking.tell(f"Not said yet: {told}")
        if not self._yes("Say it now, yes or no?"):
            return
        for thing in things:
            if _name(thing) in gaps:
                self._asking.tell(f"{_name(thing)}:")
                self._gaps_of(section, dict(thing) | {"name": _name(thing)}, gaps[_name(thing)])

    def _yes(self, question: str) -> bool:
        while True:
            typed = self._typed(question, "yes").lower()
            if typed in ("", "y", "yes", "n", "no"):
                return typed not in ("n", "no")
            self._asking.wrong(f'"{typed[:40]}" is neither yes nor no; write one of them')

    def _gaps_of(self, section: Section, thing: Values, asks: Sequence[Ask]) -> None:
        while True:
            answered: list[str] = []
            try:
                self._ask_all(section, asks, dict(thing), self._adding(section.kind, thing["name"], answered))
                return
            except _Again:
                self._file.forget(section.kind, tuple(answered), thing["name"])

    def _added(self, section: Section, name: str) -> str:
        """Asks about one new thing; its name once it is kept, else ""."""
        values: Values = {"name": name}

        def accept(new: Values) -> None:
            if all(key in {**values, **new} for key in section.needs):
                self._file.keep(section.kind, {**values, **new})

        try:
            if section.needs == ("name",):
                accept({})
            self._ask_all(section, section.asks, values, accept)
        except _Again:
            if self._is_kept(section.kind, name):
                self._file.drop(section.kind, name)
            return ""
        except (_Stop, _Next, EOFError, KeyboardInterrupt):
            if not self._is_kept(section.kind, name):
                missing = " and ".join(key for key in section.needs if key not in values)
                self._asking.tell(f'\n"{name}" is not kept: its {missing} was not said.')
            raise
        return name

    def _is_kept(self, kind: str, name: str) -> bool:
        return name in (_name(thing) for thing in self._file.content().get(kind, ()))

    # ------------------------------------------------------------ one question

    def _open(self, section: Section, values: Mapping[str, Any]) -> list[Ask]:
        known = self._known(values)
        return [ask for ask in section.asks if not any(key in values for key in ask.keys) and ask.wanted(known)]

    def _known(self, values: Mapping[str, Any]) -> Known:
        return Known(values, self._file.content(), self._facts, self._today)

    def _ask_all(self, section: Section, asks: Sequence[Ask], values: Values, accept: Callable[[Values], None]) -> None:
        """Puts the questions; each answer goes through `accept`, which writes it, and into `values`."""
        for ask in asks:
            if ask.wanted(self._known(values)):
                values.update(self._answer(section, ask, values, accept))

    def _setting(self, kind: str, answered: list[str]) -> Callable[[Values], None]:
        def accept(new: Values) -> None:
            self._file.set(kind, new)
            answered.extend(new)

        return accept

    def _adding(self, kind: str, name: str, answered: list[str]) -> Callable[[Values], None]:
        def accept(new: Values) -> None:
            self._file.keep(kind, {"name": name, **new})
            answered.extend(new)

        return accept

    def _answer(self, section: Section, ask: Ask, values: Values, accept: Callable[[Values], None]) -> Values:
        known = self._known(values)
        default, choices = ask.default(known), ask.choices(known)
        needed = any(key in section.needs for key in ask.keys)
        while True:
            typed = self._typed(ask.text, default, choices, _explained(ask, choices)) or default
            if typed in ("", "skip"):
                if not needed:
                    return {}
                self._asking.wrong(f'a {section.one} can\'t be kept without this; "again" leaves it out as a whole')
                continue
            with self._told():
                new = self._read(section.kind, ask, typed, known)
                if "call_word" in new:
                    new["call_word"] = self._heard_well(new["call_word"], "", self._unfit)
                if "also" in new:
                    new["also"] = self._heard_well_each(new["also"], section.kind, str(values.get("name", "")))
                accept(new)
                return new

    def _read(self, kind: str, ask: Ask, typed: str, known: Known) -> Values:
        new = ask.read(typed, known) if ask.read else {ask.keys[0]: typed}
        readers = tables_of(self._facts, self._file.household().habits.gallon or "US")[kind].keys
        for key, value in new.items():
            taken = readers[key](value)
            if isinstance(taken, str) and key != "agent":
                new[key] = taken  # as the choice is spelt
        return new

    def _new_name(self, section: Section) -> str:
        """A name for a new thing, or "" for no more."""
        more = "Another" if self._file.content().get(section.kind) else "The first"
        while True:
            name = self._typed(f'{more} {section.one}, by name, as "{section.example}" (Enter: no more)')
            if not name:
                return ""
            with self._told():
                return self._heard_well(name, section.kind, self._sounds_like)

    def _heard_well(self, name: str, kind: str, warning: Callable[[str], str]) -> str:
        """The name as it is settled on: a doubtful one is told of, and kept if the keeper says so."""
        while True:
            if kind:
                tables_of(self._facts, "US")[kind].keys["name"](name)
                self._free(kind, name)
            trouble = warning(name)
            if not trouble:
                return name
            self._asking.tell(f"! {trouble}")
            other = self._typed("Another one, or Enter to keep it", name)
            if other in ("", name):
                return name
            name = other

    def _heard_well_each(self, names: Sequence[str], kind: str, of: str) -> list[str]:
        """Other names of the thing called `of`, which may sound like that one: either means it."""
        return [self._heard_well(name, kind, lambda each: self._sounds_like(each, of)) for name in names]

    def _free(self, kind: str, name: str) -> None:
        for thing in self._file.content().get(kind, ()):
            if name.lower() in (each.lower() for each in (_name(thing), *thing.get("also", ()))):
                raise Wrong(f'"{name}" already names {kind} "{_name(thing)}"', "give each a name of its own")

    def _sounds_like(self, name: str, of: str = "") -> str:
        """A warning, or ""; of: the thing whose name it is, where that is on file already."""
        call_word = self._file.household().habits.call_word
        others = [other for other in self._names() if other != of]
        near = sounds_like(name, (*others, *([call_word] if call_word else [])))
        return f'"{name}" sounds like "{near}"; when you speak, one may be taken for the other' if near else ""

    def _unfit(self, call_word: str) -> str:
        near = sounds_like(call_word, self._names())
        return unfit(call_word, self._names()) or (f'"{call_word}" sounds like "{near}"' if near else "")

    def _names(self) -> tuple[str, ...]:
        content = self._file.content()
        things = [thing for kind in NAMED for thing in content.get(kind, ())]
        return tuple(name for thing in things for name in (_name(thing), *thing.get("also", ())))

    def _typed(self, question: str, default: str = "", choices: Sequence[str] = (), help_: str = "") -> str:
        """What was typed, once it is no word of setup's own."""
        while True:
            typed = " ".join(self._asking.ask(question, default, choices).split())
            if typed == "?":
                self._asking.tell(help_ or 'Enter goes on; "again", "next" and "stop" as above.')
                continue
            if typed.lower() in _WORDS:
                raise _WORDS[typed.lower()]
            return typed

    @contextmanager
    def _told(self) -> Iterator[None]:
        """What can't be taken is told in one line; the caller asks again."""
        try:
            yield
        except NotWritten:
            raise
        except (Wrong, KeepingFault) as fault:
            self._asking.wrong(f"{fault.what}; {fault.fix}")


_WORDS: Mapping[str, type[Exception]] = {"stop": _Stop, "quit": _Stop, "exit": _Stop, "again": _Again, "next": _Next}


def _name(thing: Mapping[str, Any]) -> str:
    return " ".join(str(thing["name"]).split())


def _keys(asks: Sequence[Ask]) -> str:
    return ", ".join(ask.called or ask.keys[0].replace("_", " ") for ask in asks)


def _explained(ask: Ask, choices: Sequence[str]) -> str:
    return f"{ask.help} One of: {', '.join(choices)}." if choices else ask.help
