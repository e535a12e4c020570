"""keeping.toml: what is read from it, and the one line that each fault gets."""

from __future__ import annotations

import dataclasses
import os
from datetime import date
from fractions import Fraction
from pathlib import Path

import pytest

from assistant.core.facts import Facts
from assistant.core.household import Bottle, Enclosure, Habits, Household, Measure, People, Room, Stock
from assistant.core.quantities.amounts import Amount, Neat, Percent, Ppm, SaidRatio
from assistant.store.keeping import KeepingFault, read_household

HOUSEHOLD = Path(__file__).parents[2] / "household.toml"
DEMO = Path(__file__).parents[3] / "assistant" / "demo" / "keeping.toml"


@pytest.fixture
def kept(facts: Facts) -> Household:
    return read_household(HOUSEHOLD, facts)


def test_a_missing_file_is_an_empty_household(tmp_path: Path, facts: Facts) -> None:
    assert read_household(tmp_path / "keeping.toml", facts) == Household()


def test_an_empty_file_is_an_empty_household(tmp_path: Path, facts: Facts) -> None:
    assert _read("", tmp_path, facts) == Household()


def test_every_field_of_the_household_is_in_the_tests_file(kept: Household) -> None:
    """So that no key of the design's page is left without a reader."""
    things = (kept.room, kept.habits, kept.people, kept.measures[0], kept.stocks[0], kept.bottles[0])
    for thing in (*things, *kept.enclosures[:1], *kept.enclosures[2:]):
        left_out = {field.name for field in dataclasses.fields(thing) if getattr(thing, field.name) in (None, "", ())}
        assert left_out <= ({"quarantine", "arrived"} if thing is kept.enclosures[0] else set(_LATER)), thing


_LATER = (
    "also",
    "rack",
    "material",
    "length",
    "width",
    "height",
    "spot_clean_every",
    "deep_clean_every",
    "water_every",
)


def test_the_room_the_habits_and_the_people_are_read(kept: Household) -> None:
    assert kept.room == Room(
        "test room",
        Amount(Fraction(28), "m^3"),
        "two openings",
        Amount(Fraction(24), "degC"),
        Amount(Fraction(50), "%"),
    )
    assert kept.habits == Habits("in", "imperial", "violet submarine", False, 45)
    assert kept.people == People("555 0100", "555 0101", "555 0102", ("under 5", "pregnant"))


def test_a_measure_is_read_exactly(kept: Household) -> None:
    assert kept.measures[0] == Measure(
        "small syringe",
        Amount(Fraction(2), "mL"),
        Amount(Fraction(1, 10), "mL"),
        "syringe",
        Amount(Fraction(5), "%"),
        ("thin syringe",),
    )


def test_a_plain_pint_follows_the_keepers_gallon(kept: Household, tmp_path: Path, facts: Facts) -> None:
    assert kept.measures[1].capacity == Amount(Fraction(1, 2), "imp pt")
    american = HOUSEHOLD.read_text(encoding="utf-8").replace('gallon = "imperial"', 'gallon = "us"')
    assert _read(american, tmp_path, facts).measures[1].capacity == Amount(Fraction(1, 2), "US pt")


def test_a_stock_is_read_with_its_label(kept: Household) -> None:
    assert kept.stocks[0] == Stock(
        name="shed bleach",
        agent="sodium hypochlorite",
        strength=Amount(Fraction("5.25"), "%"),
        basis="w/w",
        made=date(2025, 11, 20),
        kept_at=Amount(Fraction(22), "degC"),
        left=Amount(Fraction("1.3"), "L"),
        label_minutes=5,
        label_mix=SaidRatio(Fraction(1), Fraction(20), "in"),
        label_claim="disinfect",
        label_organisms=("salmonella", "an unheard-of germ"),
        label_keeps=Amount(Fraction(24), "h"),
        pictograms=("corrosion", "environment"),
        also=("old bleach",),
    )


def test_bottles_hold_each_kind_of_mix_and_their_stocks_own_name(kept: Household) -> None:
    assert kept.bottles[0] == Bottle(
        "orange bottle",
        Amount(Fraction(1), "imp pt"),
        "orange",
        "shed bleach",
        SaidRatio(Fraction(1), Fraction(32), "in"),
        0.9,
        ("carrot",),
    )
    assert [bottle.mix for bottle in kept.bottles[1:]] == [Ppm(Fraction(500)), Neat(), Percent(Fraction("0.05"))]
    assert kept.bottles[1].stock == "shed bleach"


def test_an_enclosure_is_read(kept: Household) -> None:
    day = Amount(Fraction(1), "d")
    assert kept.enclosures[0] == Enclosure(
        name="east tank",
        also=("biscuit",),
        rack="east rack",
        animal="corn snake",
        animals=1,
        material="glass",
        length=Amount(Fraction(90), "cm"),
        width=Amount(Fraction(45), "cm"),
        height=Amount(Fraction(45), "cm"),
        spot_clean_every=day,
        deep_clean_every=Amount(Fraction(30), "d"),
        water_every=day,
    )
    assert kept.enclosures[2].arrived == date(2025, 12, 28)
    assert kept.enclosures[2].group == "new"
    assert kept.enclosures[1].water == "all"


def test_the_sides_of_a_room_give_its_volume(tmp_path: Path, facts: Facts) -> None:
    room = _read('[room]\nlength = "4 m"\nwidth = "300 cm"\nheight = "2.4 m"\n', tmp_path, facts).room
    assert room.volume == Amount(Fraction("28.8"), "m^3")


def test_a_number_is_air_changes_an_hour(tmp_path: Path, facts: Facts) -> None:
    assert _read("[room]\nairing = 3\n", tmp_path, facts).room.airing == 3.0


def test_a_file_saved_with_a_mark_and_windows_line_ends_is_read(tmp_path: Path, facts: Facts) -> None:
    path = tmp_path / "keeping.toml"
    path.write_bytes(b'\xef\xbb\xbf[[enclosure]]\r\nname = "tub"\r\n')
    assert read_household(path, facts).enclosures[0].name == "tub"


def test_the_demo_household_is_read(facts: Facts) -> None:
    demo = read_household(DEMO, facts)
    assert (len(demo.measures), len(demo.stocks), len(demo.bottles), len(demo.enclosures)) == (4, 5, 4, 5)
    assert {enclosure.group for enclosure in demo.enclosures} == {"healthy", "new", "sick"}


# The faults: the file, the line that is to be named, and words that are to stand in the error.
BROKEN: list[tuple[str, int, tuple[str, ...]]] = [
    ('[[bottle]]\nname = "a"\ncapcity = "500 mL"\n', 3, ('"capcity"', 'did you mean "capacity"')),
    ('[[bottles]]\nname = "a"\n', 1, ('"bottles"', 'did you mean "bottle"')),
    ('# note\n\nshelf = "x"\n', 3, ('"shelf"', "room, habits")),
    ('[[bottle]]\nname = "a"\ncapacity = "500 ML"\n', 3, ("megalitres", '"mL"')),
    ('[[bottle]]\nname = "a"\ncapacity = "2 T"\n', 3, ("tablespoon", '"tbsp"')),
    ('[[bottle]]\nname = "a"\ncapacity = "2 t"\n', 3, ("teaspoon", '"tsp"')),
    ('[[bottle]]\nname = "a"\ncapacity = "90 cm"\n', 3, ("no volume", '"500 mL"')),
    ('[[bottle]]\nname = "a"\ncapacity = 500\n', 3, ("needs a unit", '"500 mL"')),
    ('[[bottle]]\nname = "a"\ncapacity = 500 mL\n', 3, ("not TOML", 'capacity = "500 mL"')),
    ('[[bottle]]\nname = "a"\ncapacity = "0 mL"\n', 3, ("not more than zero",)),
    ('[[bottle]]\nname = "a"\ncapacity = "-5 mL"\n', 3, ("not more than zero",)),
    ('[[bottle]]\nname = "a"\ncapacity = "9999999 mL"\n', 3, ("too large",)),
    ('[[bottle]]\nname = "a"\ncapacity = "0.1234567890123 mL"\n', 3, ("12 digits",)),
    ('[[bottle]]\nname = "a"\ncapacity = "9**9**9 mL"\n', 3, ("no unit known",)),
    ('[[bottle]]\nname = "a"\ncapacity = "1/0 mL"\n', 3, ("divides by zero",)),
    ('[[bottle]]\nname = "a"\ncapacity = "500"\n', 3, ("has no unit",)),
    ('[[bottle]]\nname = "a"\ncapacity = "lots"\n', 3, ("number",)),
    ('[[bottle]]\nname = "a"\n', 1, ("has no capacity",)),
    ('[[bottle]]\n\ncapacity = "1 L"\n', 1, ("has no name",)),
    ('[[bottle]]\nname = ""\ncapacity = "1 L"\n', 2, ("is empty",)),
    ('[[bottle]]\nname = 7\ncapacity = "1 L"\n', 2, ("must be text, not 7", "quotes")),
    ('[[bottle]]\nname = "a"\ncapacity = "1 L"\nmix = "1 for 32"\n', 4, ("no mix", '"1 in 32"')),
    ('[[bottle]]\nname = "a"\ncapacity = "1 L"\nmix = "0 in 32"\n', 4, ("not more than zero",)),
    ('[[bottle]]\nname = "a"\ncapacity = "1 L"\nmix = "32 in 1"\n', 4, ("more parts than the whole",)),
    ('[[bottle]]\nname = "a"\ncapacity = "1 L"\nmix = "120 percent"\n', 4, ("over 100 percent",)),
    ('[[bottle]]\nname = "a"\ncapacity = "1 L"\nmix = 0.06\n', 4, ("must be text",)),
    ('[[bottle]]\nname = "a"\ncapacity = "1 L"\nstock = "b"\n', 4, ('no stock is called "b"', "[[stock]]")),
    ('[[bottle]]\nname = "a"\ncapacity = "1 L"\nml_a_stroke = "0.9 mL"\n', 4, ("must be a number",)),
    ('[[bottle]]\nname = "a"\ncapacity = "1 L"\nml_a_stroke = true\n', 4, ("must be a number, not true",)),
    ('[[bottle]]\nname = "a"\ncapacity = "1 L"\nml_a_stroke = nan\n', 4, ("can't be nan",)),
    (
        '[[bottle]]\nname = "a"\ncapacity = "1 L"\n\n[[bottle]] # again\nname = "A"  # the same\ncapacity = "2 L"\n',
        6,
        ('"A" already names bottle "a"',),
    ),
    (
        '[[enclosure]]\nname = "a"\n[[enclosure]]\nname = "b"\nalso = [\n  "c",\n  "a",\n]\n',
        5,
        ('"a" already names enclosure "a"',),
    ),
    ('[[enclosure]]\nname = "a"\nalso = ["a"]\n', 3, ("already names",)),
    ('[[enclosure]]\nname = "a"\nalso = "b"\n', 3, ("must be a list", '["first", "second"]')),
    ('[[enclosure]]\nname = "a"\ngroup = "ill"\n', 3, ('"healthy", "new" or "sick"',)),
    ('[[enclosure]]\nname = "a"\nanimals = 1.5\n', 3, ("whole number",)),
    ('[[enclosure]]\nname = "a"\nanimals = 0\n', 3, ("above zero",)),
    ('[[enclosure]]\nname = "a"\narrived = "2025-12-28"\n', 3, ("must be a date", "without quotes")),
    ('[[enclosure]]\nname = "a"\narrived = 2025-12-28T09:00:00\n', 3, ("must be a date",)),
    ('[[enclosure]]\nname = "a"\narrived = 2025-13-28\n', 3, ("not TOML",)),
    ('[[enclosure]]\nname = "a"\nquarantine = "90 cm"\n', 3, ("no span of time", '"1 day"')),
    ('[enclosure]\nname = "a"\n', 1, ("[[enclosure]]",)),
    ('[[room]]\nname = "a"\n', 1, ("write [room]",)),
    ('room = "a"\n', 1, ("write [room]",)),
    ('[room]\nvolume = "28 m^3"\nlength = "4 m"\n', 2, ("not both",)),
    ('\n[room]\nlength = "4 m"\nwidth = "3 m"\n', 2, ("all three",)),
    ('[room]\nairing = "wide open"\n', 2, ('"one opening"',)),
    ('[room]\ntemperature = "25 percent"\n', 2, ("no temperature",)),
    ('[room]\nhumidity = "145 percent"\n', 2, ("over 100 percent",)),
    ('[habits]\nratio = "of"\n', 2, ('"to" or "in"',)),
    ('[habits]\nspeak = "yes"\n', 2, ("true or false",)),
    ('[people]\nat_risk = ["cat"]\n', 2, ('"under 5"',)),
    ('[[stock]]\nname = "a"\nagent = "bleech"\n', 3, ('no agent is known by "bleech"', 'did you mean "bleach"')),
    ('[[stock]]\nname = "a"\nagent = "bleach"\nstrength = "6 mL"\n', 4, ("no percentage",)),
    ('[[stock]]\nname = "a"\nagent = "bleach"\nbasis = "w"\n', 4, ('"w/w", "w/v" or "v/v"',)),
    ('[[measure]]\nname = "a"\ncapacity = "1 mL"\ngraduation = "2 mL"\n', 4, ("more than its capacity",)),
    ('[habits]\nratio = "to"\nratio = "in"\n', 3, ("twice", "once")),
    ('[habits]\nratio = "to\n', 2, ("not TOML",)),
    ("[habits]\nratio\n", 2, ("not TOML",)),
    ('[habits\nratio = "to"\n', 1, ("not TOML",)),
    ('"habits" = { ratio = "to", "speak" = 1 }\n', 1, ("true or false",)),
    ('habits.ratio = "to"\nhabits.speak = 1\n', 2, ("true or false",)),
    ('[room]\nname = """\nspeak = 1\n[habits]\n"""\n\n[habits]\nspeak = 1\n', 8, ("true or false",)),
]


@pytest.mark.parametrize(("text", "line", "words"), BROKEN, ids=[f"{i:02}" for i in range(len(BROKEN))])
def test_a_broken_file_gets_one_line_that_names_its_line(
    text: str, line: int, words: tuple[str, ...], tmp_path: Path, facts: Facts
) -> None:
    with pytest.raises(KeepingFault) as caught:
        _read(text, tmp_path, facts)
    said = str(caught.value)
    assert caught.value.line == line, said
    assert f"keeping.toml, line {line}: " in said
    assert "\n" not in said
    for word in words:
        assert word in said


def test_a_file_that_is_no_text_is_named_with_its_line(tmp_path: Path, facts: Facts) -> None:
    path = tmp_path / "keeping.toml"
    path.write_bytes(b'[people]\nvet = "caf\xe9"\n')
    with pytest.raises(KeepingFault, match=r"line 2: this isn't UTF-8 text; save the file as UTF-8"):
        read_household(path, facts)


def test_a_folder_in_its_place_is_named(tmp_path: Path, facts: Facts) -> None:
    (tmp_path / "keeping.toml").mkdir()
    with pytest.raises(KeepingFault, match=r"can't be read"):
        read_household(tmp_path / "keeping.toml", facts)


@pytest.mark.skipif(os.name == "nt" or os.geteuid() == 0, reason="permissions don't bind this user")
def test_a_file_that_may_not_be_read_is_named(tmp_path: Path, facts: Facts) -> None:
    path = tmp_path / "keeping.toml"
    path.touch(mode=0)
    with pytest.raises(KeepingFault, match=r"can't be read: permission denied"):
        read_household(path, facts)


def test_brackets_nested_too_deep_are_refused_in_one_line(tmp_path: Path, facts: Facts) -> None:
    with pytest.raises(KeepingFault, match="nested too deep"):
        _read("a = " + "[" * 100_000, tmp_path, facts)


def _read(text: str, folder: Path, facts: Facts) -> Household:
    path = folder / "keeping.toml"
    path.write_bytes(text.encode())
    return read_household(path, facts)
