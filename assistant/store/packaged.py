"""The files that come with the program: the questions of intents/ and the cited data of facts/.

Read through importlib.resources alone, so that a wheel and an editable install serve alike. A question's file is
checked here, and the error names the file. What a fact must carry is `core.facts`.
"""

from __future__ import annotations

import re
import tomllib
from collections.abc import Callable, Mapping, Sequence
from functools import cached_property
from importlib.resources import files
from importlib.resources.abc import Traversable
from typing import Any, overload

from assistant.contract import Question, SlotWanted
from assistant.core.facts import Facts

_AMOUNTS_AND_TOOLS = ("volume", "mix", "duration", "temperature", "number", "agent", "stock", "bottle", "measure")
_THINGS = ("enclosure", "animal", "organism", "material", "item")
PLACEHOLDERS = frozenset({*_AMOUNTS_AND_TOOLS, *_THINGS, "step", "stock_strength", "when"})
"""What may stand in braces in a phrasing."""

LEARNED = "learned.b64"
"""The file of intents/ that holds what the matcher learned from the others."""

LEARNED_CRIES = "learned_cries.b64"
"""The same of what was learned about harm."""

LEARNED_FOLLOW_UPS = "learned_follow_ups.b64"
"""The same of what was learned about turns that go on from an answer."""

OUTSIDE = "outside.txt"
"""The file of intents/ that holds what is not answered."""

CRIES = "cries.txt"
"""The file of intents/ that holds cries of harm, and ordinary talk in the same words."""

FOLLOW_UPS = "follow_ups.txt"
"""The file of intents/ that holds what was said right after an answer."""

_TEXTS = ("name", "family", "about", "example")
_NEEDED = {*_TEXTS, "phrasings"}
_SLOT_KEYS = {"kind", "ask"}
_BLOCK = re.compile(r"^phrasings = \[\n.*?^\]\n", re.MULTILINE | re.DOTALL)
"""The phrasings of a question's file, as the package's own are written."""


class PackagedFault(ValueError):
    """A file of the package can't be taken: which, and what is wrong; its text is one line."""

    def __init__(self, file: str, what: str) -> None:
        super().__init__(f"{file}: {what}")
        self.file = file
        self.what = what


def read_questions(folder: Traversable | None = None) -> Mapping[str, Question]:
    """Every question, by name, in the order of the names.

    folder: where their files are; intents/ of the package unless given.
    Fails: PackagedFault.
    """
    folder = folder if folder is not None else files("assistant.intents")
    return _by_name(folder, lambda entry: _question(entry, _parsed(entry)))


def questions_at_hand() -> Mapping[str, Question]:
    """The package's own questions, as `read_questions` has them; the phrasings of each are read when first looked at.

    A turn looks at those of one question or none, and reading them all takes longer than answering.
    Fails: PackagedFault; of a phrasing, when it is looked at.
    """
    return _by_name(files("assistant.intents"), _but_for_phrasings)


def _by_name(folder: Traversable, read: Callable[[Traversable], Question]) -> Mapping[str, Question]:
    found = sorted((entry for entry in folder.iterdir() if entry.name.endswith(".toml")), key=lambda entry: entry.name)
    questions = [read(entry) for entry in found]
    return {question.name: question for question in questions}


def _but_for_phrasings(entry: Traversable) -> Question:
    text = entry.read_text(encoding="utf-8")
    block = _BLOCK.search(text)
    if block is None:
        return _question(entry, _parsed(entry))
    later = _Later(entry.name, block.group())
    return _question(entry, {**_toml(text.replace(block.group(), ""), entry.name), "phrasings": later})


class _Later(Sequence[str]):
    """Phrasings that are read from their part of the file when first looked at."""

    def __init__(self, file: str, block: str) -> None:
        self._file = file
        self._block = block

    @cached_property
    def _texts(self) -> tuple[str, ...]:
        return _phrasings(_toml(self._block, self._file)["phrasings"], self._file)

    @overload
    def __getitem__(self, place: int) -> str: ...
    @overload
    def __getitem__(self, place: slice) -> Sequence[str]: ...
    def __getitem__(self, place: int | slice) -> str | Sequence[str]:
        return self._texts[place]

    def __len__(self) -> int:
        return len(self._texts)


def outside_lines() -> tuple[str, ...]:
    """Lines that are not answered, in the form of phrasings: what the matcher learns to refuse."""
    lines = (files("assistant.intents") / OUTSIDE).read_text(encoding="utf-8").splitlines()
    return tuple(line.strip() for line in lines if line.strip() and not line.startswith("#"))


def cry_lines() -> tuple[tuple[str, str], ...]:
    """Lines and what they are: a question of harm, or "ordinary"."""
    of, found = "", []
    for line in (files("assistant.intents") / CRIES).read_text(encoding="utf-8").splitlines():
        if line.startswith("# "):
            of = line[2:]
        elif line.strip():
            found.append((line.strip(), of))
    return tuple(found)


def follow_up_lines() -> tuple[tuple[str, str, str], ...]:
    """Turns said right after an answer: the question answered, the one meant (or "outside"), the text as a phrasing."""
    found = []
    for line in (files("assistant.intents") / FOLLOW_UPS).read_text(encoding="utf-8").splitlines():
        if line.strip() and not line.startswith("#"):
            questions, _, text = line.partition(": ")
            before, _, meant = questions.partition(" > ")
            found.append((before, meant, text.strip()))
    return tuple(found)


def packaged_weights() -> tuple[bytes, bytes, bytes]:
    """What was learned of the questions, of harm and of follow-ups, as `understand.matching.weights` packs it."""
    folder = files("assistant.intents")
    of_questions, of_cries, of_follow_ups = (folder / file for file in (LEARNED, LEARNED_CRIES, LEARNED_FOLLOW_UPS))
    return of_questions.read_bytes(), of_cries.read_bytes(), of_follow_ups.read_bytes()


def packaged_facts(folder: Traversable | None = None) -> Facts:
    """The cited data; a topic's file is read when the topic is first asked for.

    Fails, when a topic is read: PackagedFault if its file isn't TOML.
    """
    where = folder if folder is not None else files("assistant.facts")
    topics = sorted(entry.name.removesuffix(".toml") for entry in where.iterdir() if entry.name.endswith(".toml"))

    def load(topic: str) -> Mapping[str, Any]:
        return _parsed(where / f"{topic}.toml")

    return Facts(load, tuple(topics))


def _parsed(entry: Traversable) -> dict[str, Any]:
    try:
        return _toml(entry.read_text(encoding="utf-8"), entry.name)
    except UnicodeDecodeError as error:
        raise PackagedFault(entry.name, f"not TOML: {error}") from error


def _toml(text: str, file: str) -> dict[str, Any]:
    try:
        return tomllib.loads(text)
    except tomllib.TOMLDecodeError as error:
        raise PackagedFault(file, f"not TOML: {error}") from error


def _question(entry: Traversable, content: Mapping[str, Any]) -> Question:
    def refuse(what: str) -> PackagedFault:
        return PackagedFault(entry.name, what)

    unknown = content.keys() - _NEEDED - {"slot", "records", "told"}
    if unknown:
        raise refuse(f"unknown key {sorted(unknown)[0]!r}")
    missing = _NEEDED - content.keys()
    if missing:
        raise refuse(f"no {sorted(missing)[0]!r}")
    for key in _TEXTS:
        if not isinstance(content[key], str) or not content[key].strip():
            raise refuse(f"{key!r} must be text")
    if content["name"] != entry.name.removesuffix(".toml"):
        raise refuse(f"its name is {content['name']!r}, but the file is called otherwise")
    if not content["family"].isidentifier():
        raise refuse(f"family {content['family']!r} is no module's name")
    return Question(
        name=content["name"],
        family=content["family"],
        about=content["about"],
        example=content["example"],
        phrasings=said if isinstance(said := content["phrasings"], _Later) else _phrasings(said, entry.name),
        slots=_slots(content.get("slot", []), entry.name),
        records=content.get("records", True) is not False,
        told=content.get("told", False) is True,
    )


def _phrasings(given: Any, file: str) -> tuple[str, ...]:
    if not isinstance(given, list) or not given or not all(isinstance(text, str) and text.strip() for text in given):
        raise PackagedFault(file, "'phrasings' must be a list of texts, at least one")
    seen: set[str] = set()
    for text in given:
        if text in seen:
            raise PackagedFault(file, f"phrasing twice: {text!r}")
        seen.add(text)
        unknown = set(re.findall(r"\{([^}]*)\}", text)) - PLACEHOLDERS
        if unknown or text.count("{") != text.count("}"):
            raise PackagedFault(file, f"unknown slot in braces: {text!r}")
    return tuple(given)


def _slots(given: Any, file: str) -> tuple[SlotWanted, ...]:
    if not isinstance(given, list):
        raise PackagedFault(file, "write [[slot]] in double brackets")
    for slot in given:
        if set(slot) != _SLOT_KEYS or not all(isinstance(text, str) and text.strip() for text in slot.values()):
            raise PackagedFault(file, "a slot has 'kind' and 'ask', both text, and nothing else")
    return tuple(SlotWanted(slot["kind"], slot["ask"]) for slot in given)
