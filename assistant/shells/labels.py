"""`labels`: a sheet of bottle labels to print, or one label as a picture. It changes nothing on record."""

from __future__ import annotations

import json
from collections.abc import Sequence
from datetime import datetime
from pathlib import Path

from assistant.answer.labelled import NoLabel, Warned, label_of
from assistant.contract import Reading, World
from assistant.core.household import Bottle, Household
from assistant.core.record.as_recorded import as_recorded
from assistant.core.record.state import State
from assistant.say.wording import line_of
from assistant.say.wording.label_said import LabelText, label_text, warning_text
from assistant.shells.folder import Folder, ShellFault
from assistant.shells.label_sheet import picture, sheet, unprintable
from assistant.shells.options import Options, opened_folder
from assistant.shells.out import complain
from assistant.store.keeping import read_household
from assistant.store.log import Log
from assistant.store.packaged import packaged_facts

MADE, NONE_MADE = 0, 2


def labels(options: Options) -> int:
    """Writes the file and names it; 2 when there is no bottle that can have a label."""
    if options.png is not None and options.bottles:
        raise ShellFault("--png takes its one bottle itself; leave the other names out")
    with opened_folder(options) as folder:
        if options.demo and options.to is None:
            raise ShellFault("the demo's folder is thrown away; name a file with --to")
        world = _world(folder, options)
        wanted = _wanted(options, world.household)
        made = [text for bottle in wanted if (text := _text(bottle, world, options)) is not None]
        if not made:
            return NONE_MADE
        path = Path(options.to).expanduser() if options.to is not None else folder.path / _name(options, wanted)
        _write(path, picture(made[0]) if options.png is not None else sheet(made, options.paper))
    _tell(path, made, options)
    return MADE


def _world(folder: Folder, options: Options) -> World:
    facts = packaged_facts()
    household = read_household(folder.keeping, facts)
    state = State()
    if folder.record.exists():
        with Log.open(folder.record) as log:
            state = log.state()
    return World(
        options.now(), as_recorded(household, state), facts, {}, lambda heard, _: Reading(heard.text, None), state
    )


def _wanted(options: Options, household: Household) -> Sequence[Bottle]:
    if not household.bottles:
        raise ShellFault("no bottle is set up, so there is no label; add a [[bottle]] to keeping.toml")
    if options.png is not None:
        return (_bottle(options.png, household),)
    return tuple(_bottle(said, household) for said in dict.fromkeys(options.bottles)) or household.bottles


def _bottle(said: str, household: Household) -> Bottle:
    plain = said.strip().casefold()
    for bottle in household.bottles:
        if plain in (name.casefold() for name in (bottle.name, *bottle.also)):
            return bottle
    known = ", ".join(bottle.name for bottle in household.bottles)
    raise ShellFault(f'no bottle "{said[:40]}"; known are: {known}')


def _text(bottle: Bottle, world: World, options: Options) -> LabelText | None:
    """A label's words; None, with one line of complaint, where the bottle can't have a label."""

    def local(at: datetime) -> datetime:
        return at.astimezone(options.at.tzinfo) if options.at is not None else at.astimezone()

    label = label_of(bottle, world)
    if isinstance(label, NoLabel):
        because = line_of(label.because).say if label.because is not None else "give it a stock and a mix"
        complain(f"no label for the {bottle.name}: {because}")
        return None
    text = (
        warning_text(label)
        if isinstance(label, Warned)
        else label_text(label, world.household.people.poison_centre, local)
    )
    letters = unprintable(text)
    if letters:
        complain(f"the label of the {bottle.name} can't print {letters} and has ? instead; write it by hand")
    return text


def _write(path: Path, drawn: bytes) -> None:
    try:
        path.write_bytes(drawn)
    except OSError as error:
        why = (error.strerror or "can't be written").lower()
        raise ShellFault(f"{path}: {why}; name another file with --to") from error


def _name(options: Options, wanted: Sequence[Bottle]) -> str:
    if options.png is None:
        return "labels.pdf"
    plain = "".join(letter if letter.isalnum() else "-" for letter in wanted[0].name)
    return f"label-{plain}.png"


def _tell(path: Path, made: Sequence[LabelText], options: Options) -> None:
    if options.json:
        told = [
            {
                "bottle": t.name,
                "product": t.product,
                "lines": dict(t.lines),
                "signs": [symbol for symbol, _ in t.signs],
                "cautions": list(t.cautions),
            }
            for t in made
        ]
        print(json.dumps({"file": str(path), "labels": told}, ensure_ascii=False))
        return
    print(f"{path}: {len(made)} {'label' if len(made) == 1 else 'labels'}.")
    print("Print at full size, cut along the dashes. The thick line goes at the fill mark.")
    print("The product's own label comes first. Only the hazard signs that keeping.toml has")
    print("from there, as a stock's pictograms, are drawn.")
