"""`setup`: what it asks, what it writes, and that it can be stopped anywhere and gone on with."""

from __future__ import annotations

import io
import sys
from pathlib import Path

import pytest

from assistant.core.household import Household
from assistant.shells import cli
from assistant.store.keeping import read_household

from .conftest import HOUSEHOLD, Command, Ran
from .test_cli import one_line

HABITS = ("to", "US", "marigold lantern", "45")
BLEACH = (
    "laundry bleach",
    "",
    "6",
    "1.5 L",
    "2025-10-01",
    "10",
    "1 in 32",
    "disinfect",
    "18 degC",
    "salmonella",
    "GHS05, environment",
    "big jug",
)
BOTTLE = ("yellow bottle", "750 mL", "", "", "", "lemon one, sun")
SYRINGE = ("10 mL syringe", "", "", "0.2 mL", "")
TANK = ("river tank", "corn snake", "", "glass", "120 x 60 x 60 cm", "", "1 day, 30 day, -", "2", "left rack", "")
PEOPLE = ("555 0110", "555 0111", "", "under 5, pregnant")
ROOM = ("12 x 10 x 8 ft", "one opening", "", "45")
EVERYTHING = (*HABITS, *BLEACH, "", *BOTTLE, "", *SYRINGE, "", *TANK, "", *PEOPLE, *ROOM)


class Setup:
    """Runs setup in this process on an empty folder; the answers are lines of stdin."""

    def __init__(self, capture: pytest.CaptureFixture[str], patch: pytest.MonkeyPatch, home: Path) -> None:
        self._capture, self._patch, self.home = capture, patch, home

    def __call__(self, *answers: str, options: tuple[str, ...] = ()) -> Ran:
        typed = "".join(f"{answer}\n" for answer in answers).encode()
        self._patch.setattr("sys.stdin", io.TextIOWrapper(io.BytesIO(typed)))
        code = cli.main(["setup", "--home", str(self.home), "--at", "2026-01-05T09:00+00:00", *options])
        out, err = self._capture.readouterr()
        return Ran(code, out, err)

    def household(self) -> Household:
        return read_household(self.home / "keeping.toml")


@pytest.fixture
def setup(capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch, tmp_path: Path) -> Setup:
    return Setup(capsys, monkeypatch, tmp_path / "home")


def test_a_whole_household_is_asked_and_written(setup: Setup) -> None:
    ran = setup(*EVERYTHING)
    assert (ran.code, ran.err) == (0, "")
    assert "That was all." in ran.out
    kept = setup.household()
    assert (kept.habits.ratio, kept.habits.gallon, kept.habits.call_word) == ("to", "US", "marigold lantern")
    assert (kept.stocks[0].agent, kept.stocks[0].label_minutes) == ("sodium hypochlorite", 10)
    assert (kept.bottles[0].stock, kept.bottles[0].colour) == ("laundry bleach", "yellow")
    assert kept.bottles[0].mix == kept.stocks[0].label_mix
    assert (kept.measures[0].kind, str(kept.measures[0].capacity.amount)) == ("syringe", "10")
    assert (kept.enclosures[0].water, kept.enclosures[0].group) == ("dry", "healthy")
    assert kept.enclosures[0].deep_clean_every is not None
    assert kept.enclosures[0].water_every is None
    assert kept.habits.tub_minutes == 45
    assert (kept.stocks[0].also, kept.stocks[0].label_organisms) == (("big jug",), ("salmonella",))
    assert kept.stocks[0].pictograms == ("corrosion", "environment")
    assert kept.stocks[0].kept_at is not None
    assert kept.bottles[0].also == ("lemon one", "sun")
    assert (kept.enclosures[0].animals, kept.enclosures[0].rack) == (2, "left rack")
    assert kept.people.at_risk == ("under 5", "pregnant")
    assert kept.room.volume is not None
    assert (kept.room.volume.amount, kept.room.volume.unit) == (960, "ft^3")


def test_enter_alone_writes_nothing_and_decides_nothing(setup: Setup) -> None:
    ran = setup(*[""] * 60)
    assert ran.code == 0
    assert not (setup.home / "keeping.toml").exists()


def test_no_input_at_all_is_a_stop(setup: Setup) -> None:
    ran = setup()
    assert (ran.code, ran.err) == (0, "")
    assert "Stopped" in ran.out


@pytest.mark.parametrize("length", range(len(EVERYTHING) + 1))
def test_stopped_after_any_answer_what_was_said_is_kept_and_the_file_reads(setup: Setup, length: int) -> None:
    setup(*EVERYTHING[:length])
    kept = setup.household()
    assert (kept.habits.ratio is not None) == (length > 0)
    assert len(kept.stocks) == (length > 5)
    assert len(kept.bottles) == (length > 18)
    assert len(kept.enclosures) == (length > 30)


def test_run_again_it_goes_on_with_what_is_missing(setup: Setup) -> None:
    setup(*EVERYTHING[:32])
    before = (setup.home / "keeping.toml").read_text(encoding="utf-8")
    ran = setup("", "", "", "yes", *TANK[2:7], "", *PEOPLE, *ROOM)
    assert "Your habits: all there" in ran.out
    assert "Not said yet: river tank (water, material, size, group, how often)" in ran.out
    assert (setup.home / "keeping.toml").read_text(encoding="utf-8").startswith(before)
    assert setup.household().enclosures[0].material == "glass"
    assert setup.household().people.poison_centre == "555 0110"


def test_a_complete_file_is_left_to_the_letter(setup: Setup) -> None:
    setup(*EVERYTHING)
    before = (setup.home / "keeping.toml").read_bytes()
    assert setup(*["next"] * 7).code == 0
    assert (setup.home / "keeping.toml").read_bytes() == before


def test_a_thing_without_what_it_needs_is_not_kept_and_that_is_said(setup: Setup) -> None:
    ran = setup("next", "next", "yellow bottle")
    assert '"yellow bottle" is not kept: its capacity was not said' in ran.out
    assert not (setup.home / "keeping.toml").exists()


def test_again_begins_a_thing_anew(setup: Setup) -> None:
    setup("next", "next", "tin bottle", "1 L", "again", "yellow bottle", "2 L", "yellow", "again", "pink bottle", "1 L")
    assert [bottle.name for bottle in setup.household().bottles] == ["pink bottle"]


def test_again_begins_a_part_anew(setup: Setup) -> None:
    setup("to", "US", "again", "in", "imperial")
    assert setup.household().habits.ratio == "in"
    assert setup.household().habits.gallon == "imperial"


@pytest.mark.parametrize(
    ("answers", "says"),
    [
        (("per",), 'line 1 of the input: can\'t be "per"; write "to" or "in"'),
        (("next", "next", "jar", "big"), "line 4 of the input"),
        (("next", "next", "jar", "0 L"), "line 4 of the input"),
        (("next", "next", "jar", "750 ML"), "megalitres"),
        (("next", "next", "jar", ""), "can't be kept without this"),
        (("next", "next", "jar", "1 L", "", "JAR"), "already names bottle"),
        (("next", "next", "x" * 61), "at most 60 letters"),
        (("next", "acid", "sulfuric"), "no agent is known"),
        (("next", "bleach", "", "600"), "over 100 percent"),
        (("next", "bleach", "", "6", "", "2027-01-01"), "still to come"),
        (("next", "bleach", "", "6", "", "soon"), "is no day"),
        (("next", "bleach", "", "6", "", "", "ten"), "is no number"),
        (("next", "next", "next", "10 mL syringe", "", "", "20 mL"), "line 7 of the input"),
        ((*["next"] * 4, "tank", "", "", "", "90 x 45"), "length, width and height"),
        ((*["next"] * 4, "tank", "", "", "", "", "", "daily"), "three spans of time"),
        ((*["next"] * 5, "1", "2", "3", "dogs"), "write "),
        ((*["next"] * 6, "large"), "doesn't begin with a number"),
    ],
)
def test_a_wrong_answer_in_a_pipe_ends_it_with_one_line(setup: Setup, answers: tuple[str, ...], says: str) -> None:
    ran = setup(*answers, "750 mL")
    assert ran.code == 2
    assert one_line(ran.err)
    assert says in ran.err
    assert "what came before it is kept" in ran.err


def test_a_line_that_is_not_utf8_ends_it_with_one_line(setup: Setup, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr("sys.stdin", io.TextIOWrapper(io.BytesIO(b"t\xe9\n")))
    assert cli.main(["setup", "--home", str(setup.home)]) == 2


def test_a_file_with_a_fault_is_told_before_anything_is_asked(setup: Setup) -> None:
    setup.home.mkdir()
    (setup.home / "keeping.toml").write_text("[room]\nairing = 0\n", encoding="utf-8")
    ran = setup(*EVERYTHING)
    assert (ran.code, ran.out) == (2, "")
    assert one_line(ran.err)
    assert "line 2" in ran.err


@pytest.mark.parametrize(
    ("answers", "warns"),
    [
        (("to", "US", "tub"), "short call word"),
        ((*HABITS, "next", *BOTTLE[:1], "1 L", "", "", "yello bottle"), 'sounds like "yellow bottle"'),
    ],
)
def test_names_that_are_told_apart_badly_are_warned_of_and_may_be_changed(
    setup: Setup, answers: tuple[str, ...], warns: str
) -> None:
    ran = setup(*answers, "violet submarine")
    assert warns in ran.out
    assert "violet submarine" in (setup.home / "keeping.toml").read_text(encoding="utf-8") + ran.out
    assert ran.code == 0


def test_another_name_is_warned_of_too_but_not_for_its_own_thing(setup: Setup) -> None:
    first = (*HABITS, "next", *BOTTLE[:1], "1 L", "", "yello bottle, lemon one", "")
    own = setup(*first[:-1])
    assert "sounds like" not in own.out
    ran = setup("next", "left spray", "1 L", "", "lemmon one", "violet submarine")
    assert 'sounds like "lemon one"' in ran.out


@pytest.mark.parametrize(
    ("animal", "offered"), [("White's tree frog", "part"), ("fire salamander", "part"), ("corn snake", "dry")]
)
def test_an_amphibian_is_offered_as_one(setup: Setup, animal: str, offered: str) -> None:
    ran = setup(*HABITS, "next", "next", "next", "fern box", animal)
    assert f"dry, part or all? [{offered}]" in ran.out


def test_a_warned_of_name_is_kept_by_enter(setup: Setup) -> None:
    setup("", "", "tub", "")
    assert setup.household().habits.call_word == "tub"


def test_an_empty_question_mark_explains(setup: Setup) -> None:
    ran = setup("?")
    assert "one part and 32 of water" in ran.out


def test_json_is_one_object_a_line(setup: Setup) -> None:
    ran = setup("to", options=("--json",))
    assert [next(iter(line)) for line in ran.replies][:4] == ["tell", "tell", "ask", "ask"]
    assert ran.replies[2]["choices"] == ["to", "in"]


def test_the_tests_household_can_be_added_to_and_keeps_its_lines(run: Command) -> None:
    ran = run("setup", stdin=b"no\nnew bleach\nbleach\n6\n\n\n\n\nstop\n")
    new = (run.home / "keeping.toml").read_text(encoding="utf-8")
    rest = iter(new.splitlines())
    assert ran.code == 0
    assert all(line in rest for line in HOUSEHOLD.read_text(encoding="utf-8").splitlines())


@pytest.mark.skipif(sys.platform == "win32", reason="no pseudo-terminal there")
def test_at_a_terminal_a_wrong_answer_is_asked_again_and_ctrl_c_keeps_the_rest(tmp_path: Path) -> None:
    import pexpect

    home = tmp_path / "home"
    program = pexpect.spawn(
        sys.executable,
        ["-m", "assistant", "setup", "--home", str(home)],
        encoding="utf-8",
        timeout=30,
        dimensions=(40, 100),
    )
    try:
        program.expect("to or in")
        program.send("per\r")
        program.expect('can\'t be "per"')
        program.expect("to or in")
        program.send("in\r")
        program.expect("US or imperial")
        program.sendcontrol("c")
        program.expect("Stopped")
        program.expect(pexpect.EOF)
    finally:
        program.close(force=True)
    assert program.exitstatus == 130
    assert read_household(home / "keeping.toml").habits.ratio == "in"
