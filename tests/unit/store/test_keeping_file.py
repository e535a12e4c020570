"""keeping.toml as it is written to: every line that was there stays, and a fault changes nothing."""

from __future__ import annotations

import tomllib
from pathlib import Path

import pytest

from assistant.core.facts import Facts
from assistant.store import keeping_file
from assistant.store.keeping import KeepingFault
from assistant.store.keeping_file import KeepingFile, NotWritten

HOUSEHOLD = Path(__file__).parents[2] / "household.toml"
DEMO = Path(__file__).parents[3] / "assistant" / "demo" / "keeping.toml"

COMMENTED = """\
# mine, all of it
[room]
name = "back room"   # the warm one

# Bottles, by the sink
[[bottle]]
name = "tin bottle"  # was blue
capacity = "1 L"
# the cap leaks

[[bottle]]
name = "red bottle"
capacity = "500 mL"

# Enclosures
[[enclosure]]
name = "east tank"
# the end
"""


@pytest.fixture
def path(tmp_path: Path) -> Path:
    return tmp_path / "keeping.toml"


def written(path: Path, text: str, facts: Facts) -> KeepingFile:
    path.write_text(text, encoding="utf-8")
    return KeepingFile(path, facts)


def lines_kept(old: str, new: str) -> bool:
    """Whether every old line is in the new text, in the old order."""
    rest = iter(new.splitlines())
    return all(line in rest for line in old.splitlines())


def test_the_first_answer_makes_the_file(path: Path, facts: Facts) -> None:
    KeepingFile(path, facts).keep("bottle", {"name": "tin bottle", "capacity": "1 L"})
    assert path.read_text(encoding="utf-8") == '[[bottle]]\nname = "tin bottle"\ncapacity = "1 L"\n'


@pytest.mark.parametrize("text", [COMMENTED, HOUSEHOLD.read_text(encoding="utf-8"), DEMO.read_text(encoding="utf-8")])
def test_every_line_and_comment_stays_whatever_is_added(text: str, path: Path, facts: Facts) -> None:
    file = written(path, text, facts)
    file.keep("bottle", {"name": "new bottle", "capacity": "1 L"})
    file.keep("enclosure", {"name": "new tank", "animals": 2})
    file.keep("stock", {"name": "new stock", "agent": "vinegar"})
    file.keep("measure", {"name": "new spoon", "capacity": "1 tsp", "kind": "spoon"})
    file.set("people", {"at_risk": ["over 65"]} if text == COMMENTED else {})
    file.set("habits", {"speak": True} if text == COMMENTED else {})
    assert lines_kept(text, path.read_text(encoding="utf-8"))
    assert file.household().bottle("new bottle") is not None


def test_what_is_added_stands_with_its_kind_and_comments_stay_with_theirs(path: Path, facts: Facts) -> None:
    file = written(path, COMMENTED, facts)
    file.set("room", {"airing": "shut"})
    file.keep("bottle", {"name": "new bottle", "capacity": "2 L"})
    new = path.read_text(encoding="utf-8")
    assert 'the warm one\nairing = "shut"\n\n# Bottles' in new
    assert '500 mL"\n\n[[bottle]]\nname = "new bottle"\ncapacity = "2 L"\n\n# Enclosures\n[[enclosure]]' in new


def test_a_thing_added_and_dropped_again_leaves_the_same_content(path: Path, facts: Facts) -> None:
    file = written(path, COMMENTED, facts)
    file.keep("stock", {"name": "new stock", "agent": "vinegar"})
    file.drop("stock", "new stock")
    file.set("people", {"vet": "555 0102"})
    file.forget("people", ("vet",))
    assert lines_kept(COMMENTED, path.read_text(encoding="utf-8"))
    assert file.content() == tomllib.loads(COMMENTED) | {"people": {}}


def test_a_key_of_a_thing_that_is_there_is_set(path: Path, facts: Facts) -> None:
    file = written(path, COMMENTED, facts)
    file.keep("bottle", {"name": "tin bottle", "colour": "tin"})
    assert 'capacity = "1 L"\n# the cap leaks\ncolour = "tin"\n' in path.read_text(encoding="utf-8")


def test_things_written_within_one_line_can_be_added_to(path: Path, facts: Facts) -> None:
    file = written(path, 'room.name = "den"\nbottle = [{name = "a", capacity = "1 L"}]\n', facts)
    file.keep("bottle", {"name": "b", "capacity": "2 L"})
    file.set("room", {"airing": "shut"})
    assert [bottle.name for bottle in file.household().bottles] == ["a", "b"]
    assert file.household().room.airing == "shut"


@pytest.mark.parametrize(
    ("values", "says"),
    [
        ({"name": "tin bottle 2", "capacity": "big"}, "doesn't begin with a number"),
        ({"name": "TIN BOTTLE", "capacity": "1 L"}, "already names"),
        ({"name": "third", "capacity": "1 L", "stock": "nothing"}, "no stock is called"),
        ({"name": "third", "capacity": "1 L", "size": "1 L"}, "no key of bottle"),
    ],
)
def test_a_fault_leaves_the_file_as_it_is(values: dict[str, str], says: str, path: Path, facts: Facts) -> None:
    file = written(path, COMMENTED, facts)
    with pytest.raises(KeepingFault, match=says):
        file.keep("bottle", values)
    assert path.read_text(encoding="utf-8") == COMMENTED


def test_a_file_with_a_fault_in_it_is_not_written_to(path: Path, facts: Facts) -> None:
    file = written(path, "[room\n", facts)
    with pytest.raises(KeepingFault, match="line 1"):
        file.set("room", {"airing": "shut"})
    assert path.read_text(encoding="utf-8") == "[room\n"


def test_what_another_hand_changed_meanwhile_stays(path: Path, facts: Facts) -> None:
    file = written(path, COMMENTED, facts)
    path.write_text(COMMENTED.replace("back room", "front room"), encoding="utf-8")
    file.set("room", {"airing": "shut"})
    assert file.household().room.name == "front room"


def test_line_ends_byte_mark_and_rights_stay(path: Path, facts: Facts) -> None:
    path.write_bytes(b"\xef\xbb\xbf" + COMMENTED.replace("\n", "\r\n").encode())
    path.chmod(0o640)
    KeepingFile(path, facts).set("room", {"airing": "shut"})
    new = path.read_bytes()
    assert new.startswith(b"\xef\xbb\xbf# mine")
    assert new.count(b"\n") == new.count(b"\r\n") > 0
    assert path.stat().st_mode & 0o777 == 0o640


def test_a_link_stays_a_link(tmp_path: Path, path: Path, facts: Facts) -> None:
    real = tmp_path / "elsewhere.toml"
    real.write_text(COMMENTED, encoding="utf-8")
    path.symlink_to(real)
    KeepingFile(path, facts).set("room", {"airing": "shut"})
    assert path.is_symlink()
    assert 'airing = "shut"' in real.read_text(encoding="utf-8")


def test_a_write_that_fails_leaves_the_old_file_and_nothing_beside_it(
    path: Path, facts: Facts, monkeypatch: pytest.MonkeyPatch
) -> None:
    file = written(path, COMMENTED, facts)

    def full(_: int) -> None:
        raise OSError(28, "No space left on device")

    monkeypatch.setattr(keeping_file.os, "fsync", full)
    with pytest.raises(NotWritten, match="no space left"):
        file.set("room", {"airing": "shut"})
    assert path.read_text(encoding="utf-8") == COMMENTED
    assert list(path.parent.iterdir()) == [path]
