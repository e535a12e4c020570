"""`labels`: the page is read back and rendered by PDFium, another library than the one that drew it."""

from __future__ import annotations

import json
from datetime import UTC, datetime
from fractions import Fraction
from pathlib import Path

import pypdfium2
import pytest
from fpdf import FPDF
from PIL import Image

from assistant.core.choice.pictograms import SYMBOLS, WARNS
from assistant.core.quantities.amounts import Amount
from assistant.core.record.events import BottleDoubted, BottleMixed
from assistant.say.wording.label_said import LabelText
from assistant.shells.hazard_signs import draw_sign
from assistant.shells.label_sheet import BODY_PT, MM_A_PT, WIDE, sheet, unprintable
from assistant.store.log import Log

from .conftest import Command

AT = datetime(2026, 5, 4, 9, tzinfo=UTC)
NOON = ("--at", "2026-05-04T12:00+00:00")


def words(path: Path) -> str:
    document = pypdfium2.PdfDocument(path)
    try:
        return " ".join(" ".join(page.get_textpage().get_text_range() for page in document).split())
    finally:
        document.close()


def record(run: Command, *events: object) -> None:
    with Log.open(run.home / "record.sqlite") as log:
        log.append(events, log.next_turn(), AT)  # type: ignore[arg-type]


def test_the_sheet_has_every_bottle_and_what_is_to_be_known_of_it(run: Command) -> None:
    ran = run("labels", *NOON)
    assert (ran.code, ran.err) == (0, "")
    said = words(run.home / "labels.pdf")
    for part in (
        "Orange bottle",
        "Violet bottle",
        "White bottle",
        "Blue bottle",
        "Colour: orange",
        "Bleach, 5.25 percent",
    ):
        assert part in said
    assert "1 in 32: 1 part, 31 of water, 32 in all" in said
    assert "Fill to this line: 1 imp pt" in said
    assert "Never mix bleach with any other cleaner" in said
    assert "poison centre 555 0100" in said
    assert "Wet time: 7.5 minutes (its own label)" in said


def test_a_fill_on_record_gives_the_times(run: Command) -> None:
    until, total = datetime(2026, 5, 5, 9, tzinfo=UTC), Amount(Fraction(400), "mL")
    record(run, BottleMixed("blue bottle", "chlorhexidine", "blue concentrate", "1 in 40", total, None, None, until))
    assert run("labels", "blue bottle", *NOON).code == 0
    said = words(run.home / "labels.pdf")
    assert "Mixed: Mon 4 May 2026, 9:00" in said
    assert "Good until: Tue 5 May 2026, 9:00" in said
    assert "10 mL of it, water up to 400 mL" in said
    assert "..." not in said


def test_a_fill_past_its_time_says_pour_it_away(run: Command) -> None:
    until = datetime(2026, 5, 4, 10, tzinfo=UTC)
    record(run, BottleMixed("blue bottle", "chlorhexidine", "blue concentrate", "1 in 40", kept_until=until))
    assert run("labels", "blue bottle", *NOON).code == 0
    assert "past its time, pour it away" in words(run.home / "labels.pdf")


def test_an_unknown_mix_is_labelled_as_one_and_nothing_else(run: Command) -> None:
    record(run, BottleDoubted("orange bottle"))
    assert run("labels", "carrot", *NOON).code == 0
    said = words(run.home / "labels.pdf")
    assert "UNKNOWN MIX" in said
    assert "Fill to" not in said
    assert "Wet time" not in said


def test_the_picture_of_one_label_is_as_wide_as_the_label_and_has_ink(run: Command) -> None:
    assert run("labels", "--png", "orange bottle", *NOON).code == 0
    with Image.open(run.home / "label-orange-bottle.png") as picture:
        wide, high = picture.size
        inked = picture.convert("L").histogram()
    assert wide == pytest.approx((WIDE + 2) / 25.4 * 200, abs=2)
    assert high > wide
    assert 0.03 < sum(inked[:128]) / (wide * high) < 0.4


def test_letters_are_large_enough_for_an_arms_length() -> None:
    """Capitals of 3.5 mm, a two-hundredth of 70 cm (common practice, no source); Helvetica's are 0.718 of its size."""
    assert BODY_PT * 0.718 * MM_A_PT >= 3.5


@pytest.mark.parametrize("paper", ["a4", "letter"])
def test_no_label_runs_off_its_page(paper: str) -> None:
    long = LabelText("A name of many words " * 3, "P", (("Mix", "words " * 40),) * 3, ("caution " * 20,), "Fill to")
    document = pypdfium2.PdfDocument(sheet([long] * 5, paper))
    assert len(document) == 3
    for page in document:
        _, high = page.get_size()
        text = page.get_textpage()
        boxes = [text.get_rect(n) for n in range(text.count_rects())]
        assert min(box[1] for box in boxes) > 10
        assert max(box[3] for box in boxes) < high - 10
    document.close()


def test_a_keepers_own_marks_are_printed_as_letters() -> None:
    document = pypdfium2.PdfDocument(sheet([LabelText("X", "Y", (("From", "__shed__ **b** -- c"),), ())], "a4"))
    assert "_ _shed_ _ * *b* * - - c" in document[0].get_textpage().get_text_range()
    document.close()


def test_letters_that_the_font_lacks_are_told() -> None:
    assert unprintable(LabelText("Žlutá", "Bleach", (), ())) == ""
    assert unprintable(LabelText("Żółta", "Bleach", (("Colour", "жёлтая"),), ())) != ""


def test_json_names_the_file_and_what_stands_on_each_label(run: Command) -> None:
    told = json.loads(run("labels", "orange bottle", "--json", *NOON).out)
    assert told["file"] == str(run.home / "labels.pdf")
    assert told["labels"][0]["lines"]["Colour"] == "orange"


@pytest.mark.parametrize(
    "bad",
    [
        ("no such bottle",),
        ("--png", "no such bottle"),
        ("orange bottle", "--png", "blue bottle"),
        ("--paper", "a3"),
        ("--to", "/no/such/folder/labels.pdf"),
        ("--demo",),
    ],
)
def test_bad_input_is_one_line(run: Command, bad: tuple[str, ...]) -> None:
    ran = run("labels", *bad)
    assert (ran.code, ran.out) == (2, "")
    assert ran.err.startswith("rinseback: ")
    assert ran.err.count("\n") == 1


def test_a_bottle_that_can_have_no_label_is_told_and_the_rest_are_made(run: Command) -> None:
    keeping = run.home / "keeping.toml"
    keeping.write_text(keeping.read_text("utf-8") + '\n[[bottle]]\nname = "spare"\ncapacity = "1 L"\n', "utf-8")
    ran = run("labels", *NOON)
    assert ran.code == 0
    assert ran.err == "rinseback: no label for the spare: give it a stock and a mix\n"
    assert run("labels", "spare", *NOON).code == 2


def test_a_household_without_bottles_is_told_what_to_do(run: Command) -> None:
    (run.home / "keeping.toml").write_text("", "utf-8")
    ran = run("labels")
    assert (ran.code, ran.out) == (2, "")
    assert "[[bottle]]" in ran.err


def pixels_of(picture: Image.Image) -> list[tuple[int, int, int]]:
    raw = picture.tobytes()
    return list(zip(raw[::3], raw[1::3], raw[2::3], strict=True))


def redness(path: Path) -> float:
    """The share of a picture that is red."""
    with Image.open(path) as picture:
        pixels = pixels_of(picture.convert("RGB"))
    return sum(1 for red, green, blue in pixels if red > 180 and green < 80 and blue < 80) / len(pixels)


def with_signs(run: Command, signs: str) -> None:
    keeping = run.home / "keeping.toml"
    lines = keeping.read_text(encoding="utf-8").split("\n")
    at = next(n for n, line in enumerate(lines) if line.startswith("agent =") and "hexidine" in line)
    keeping.write_text("\n".join([*lines[: at + 1], f"pictograms = {signs}", *lines[at + 1 :]]), encoding="utf-8")


def test_no_hazard_sign_is_drawn_that_the_keeper_has_not_copied(run: Command) -> None:
    assert run("labels", "--png", "blue bottle", *NOON).code == 0
    assert redness(run.home / "label-blue-bottle.png") == 0


def test_the_signs_of_the_stocks_own_label_are_drawn_with_their_words(run: Command) -> None:
    with_signs(run, '["corrosion", "GHS09"]')
    assert run("labels", "--png", "blue bottle", *NOON).code == 0
    assert redness(run.home / "label-blue-bottle.png") > 0.002
    assert run("labels", "blue bottle", *NOON).code == 0
    said = words(run.home / "labels.pdf")
    assert "Corrosion: burns skin and eyes, or eats metal" in said
    assert "Environment: harms water life" in said
    assert json.loads(run("labels", "blue bottle", "--json", *NOON).out)["labels"][0]["signs"] == [
        "corrosion",
        "environment",
    ]


@pytest.mark.parametrize("signs", ['["corosion"]', '["GHS10"]', '"corrosion"', "[5]"])
def test_a_sign_that_is_none_is_told_in_one_line(run: Command, signs: str) -> None:
    with_signs(run, signs)
    ran = run("labels", *NOON)
    assert (ran.code, ran.out, ran.err.count("\n")) == (2, "", 1)
    assert "pictograms" in ran.err


def test_every_pictogram_is_a_black_symbol_inside_a_red_frame_on_its_point() -> None:
    drawn = []
    for symbol in WARNS:
        pdf = FPDF(unit="mm", format=(40, 40))
        pdf.add_page()
        draw_sign(pdf, symbol, (0, 0), 40)
        document = pypdfium2.PdfDocument(bytes(pdf.output()))
        picture = document[0].render(scale=5).to_pil().convert("RGB")
        document.close()
        side = picture.size[0]
        for corner in ((2, 2), (side - 3, 2), (2, side - 3), (side - 3, side - 3)):
            assert picture.getpixel(corner) == (255, 255, 255)
        for red in ((0.5, 0.04), (0.5, 0.96), (0.04, 0.5), (0.96, 0.5), (0.265, 0.265), (0.735, 0.735)):
            found = picture.getpixel((int(red[0] * side), int(red[1] * side)))
            assert found == (225, 0, 25), (symbol, red, found)
        black = [
            (n % side, n // side) for n, (r, g, b) in enumerate(pixels_of(picture)) if r < 60 and g < 60 and b < 60
        ]
        # inside the frame's inner edge, with white between
        assert max(abs(x / side - 0.5) + abs(y / side - 0.5) for x, y in black) < 0.45, symbol
        assert 0.02 < len(black) / side**2 < 0.25, symbol
        drawn.append(frozenset(black))
    assert len(set(drawn)) == len(SYMBOLS) == 9
