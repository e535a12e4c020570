"""`check`: what works on this computer, and how to mend what doesn't. It changes nothing but makes the data folder."""

from __future__ import annotations

import json
import shutil
from collections.abc import Callable, Iterator
from dataclasses import asdict, dataclass
from textwrap import fill

from assistant.core.household import Bottle, Enclosure, Measure, Stock
from assistant.hear.recogniser import CannotListen
from assistant.hear.sound_alike import sound_by_dictionary, sounds_like
from assistant.shells.folder import Folder, throw_away
from assistant.shells.options import Options, opened_folder
from assistant.store.keeping import KeepingFault, read_household
from assistant.store.log import Log, StoreFault
from assistant.store.packaged import PackagedFault, packaged_facts, read_questions

WORKS, BROKEN = 0, 2


@dataclass(frozen=True)
class Finding:
    """One part of the program: whether it works here."""

    part: str
    works: bool
    detail: str
    mend: str = ""
    """What to do when it doesn't; empty when it does."""
    needed: bool = True
    """False: everything else works without it."""


def check(options: Options) -> int:
    """Prints a line a part; 0 when all that text needs works, else 2."""
    with opened_folder(options) as folder:
        findings = list(_findings(folder))
    for finding in findings:
        print(json.dumps(asdict(finding)) if options.json else _line(finding))
    return WORKS if all(finding.works for finding in findings if finding.needed) else BROKEN


def _line(finding: Finding) -> str:
    mark = "ok" if finding.works else "NO" if finding.needed else "--"
    text = f"{mark}  {finding.part}: {finding.detail}" + (f"; {finding.mend}" if finding.mend else "")
    wide = min(shutil.get_terminal_size().columns, 100)
    return fill(text, wide, subsequent_indent="      ", break_long_words=False, break_on_hyphens=False)


def _findings(folder: Folder) -> Iterator[Finding]:
    yield Finding("data folder", True, str(folder.path))
    household = _found(_household, folder)
    yield household
    if household.works:
        yield _names(folder)
    for look in (_record, _files):
        yield _found(look, folder)
    for hear_or_say in (_recogniser, _microphone, _speech, _loudspeaker):
        yield hear_or_say(folder)


def _found(look: Callable[[Folder], Finding], folder: Folder) -> Finding:
    try:
        return look(folder)
    except (KeepingFault, StoreFault, PackagedFault) as fault:
        what, _, mend = str(fault).rpartition("; ")
        return Finding(look.__name__.strip("_"), False, what, mend)


def _household(folder: Folder) -> Finding:
    if not folder.keeping.exists():
        mend = "`rinseback setup` writes one; without it, name volumes and mixes in the question; --demo shows a sample"
        return Finding("household", False, f"no {folder.keeping}", mend, needed=False)
    kept = read_household(folder.keeping, packaged_facts())
    counts = (("bottles", kept.bottles), ("stocks", kept.stocks), ("measures", kept.measures))
    counted = ", ".join(f"{len(things)} {name}" for name, things in (*counts, ("enclosures", kept.enclosures)))
    return Finding("household", True, f"{folder.keeping}: {counted}")


def _names(folder: Folder) -> Finding:
    """Names and other names, whether one may be taken for another's when it is spoken."""
    kept = read_household(folder.keeping, packaged_facts())
    things: list[Bottle | Enclosure | Stock | Measure] = [*kept.bottles, *kept.enclosures, *kept.stocks, *kept.measures]
    owners = [(name, at) for at, thing in enumerate(things) for name in (thing.name, *thing.also)]
    sound = sound_by_dictionary()
    for place, (name, owner) in enumerate(owners):
        others = [other for other, at in owners[place + 1 :] if at != owner]
        near = sounds_like(name, others, sound) or next((o for o in others if o.lower() == name.lower()), None)
        if near is not None:
            mend = "give one of them another name; typed, nothing is mistaken"
            return Finding("names", False, f'"{name}" and "{near}" sound alike', mend, needed=False)
    return Finding("names", True, f"{len(owners)}, and no two sound alike")


def _record(folder: Folder) -> Finding:
    with Log.open(folder.record) as log:
        return Finding("record", True, f"{folder.record}: {len(log.record())} events")


def _files(folder: Folder) -> Finding:
    questions, facts = read_questions(), packaged_facts()
    return Finding("files", True, f"{len(questions)} questions, {sum(1 for _ in facts.all())} cited facts")


# ---------------------------------------------------------------- voice: everything else works without it


def _recogniser(folder: Folder) -> Finding:
    try:
        from assistant.hear.checks import SPOKEN, recogniser_works
        from assistant.shells.ears import words_of
        from assistant.shells.sitting import open_sitting

        with open_sitting(folder, ":memory:") as sitting:
            works = recogniser_works(words_of(sitting), folder.models, folder.cache, _spoken(SPOKEN))
            return Finding("recogniser", True, works)
    except Exception as fault:
        return _missing("recogniser", fault, "type instead; models/README.md tells of models")


def _spoken(text: str) -> bytes | None:
    """The text as this computer says it; None: it can't, and the line on speech says why."""
    from assistant.hear.wav import read_file
    from assistant.say.voice import Voice

    with throw_away() as place, Voice() as voice:
        clip = place.path / "clip.wav"
        return None if voice.render(text, clip) else read_file(clip)


def _microphone(_: Folder) -> Finding:
    try:
        from assistant.hear.checks import microphone_works

        return Finding("microphone", True, microphone_works())
    except Exception as fault:
        return _missing("microphone", fault, "type instead, or `rinseback hear FILE.wav`")


def _speech(folder: Folder) -> Finding:
    from assistant.say.voice import NoVoice, Voice, works

    with throw_away() as place, Voice() as voice:
        found = works(voice, place.path / "speech.wav")
    if isinstance(found, NoVoice):
        return Finding("speech", False, found.why, found.fix, needed=False)
    return Finding("speech", True, found)


def _loudspeaker(_: Folder) -> Finding:
    from assistant.say.playing import NoSound, loudspeaker

    found = loudspeaker()
    if isinstance(found, NoSound):
        return Finding("loudspeaker", False, found.why, found.fix, needed=False)
    return Finding("loudspeaker", True, found)


def _missing(part: str, fault: Exception, mend: str) -> Finding:
    """A part of the voice that doesn't work; whatever went wrong in a library of others is told, not thrown."""
    what = f"{fault.what} ({fault.where})" if isinstance(fault, CannotListen) else f"{fault}"
    return Finding(part, False, what, fault.fix if isinstance(fault, CannotListen) else mend, needed=False)
