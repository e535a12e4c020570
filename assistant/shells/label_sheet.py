"""Labels drawn on paper: black on white, readable at arm's length, each as tall as its words need.

fpdf2 lays out the page; a picture of one label is that page as PDFium renders it, so that the two can't differ.
"""

from __future__ import annotations

import re
import unicodedata
from collections.abc import Sequence
from io import BytesIO
from typing import Any

from assistant.say.wording.label_said import LabelText
from assistant.shells.hazard_signs import draw_sign

PAPER = {"a4": (210.0, 297.0), "letter": (215.9, 279.4)}
MARGIN, GAP, PAD = 8.0, 3.0, 4.0
WIDE = 93.0
"""Of one label in mm: two side by side on either paper."""

NAME_PT, PRODUCT_PT, BODY_PT, CAUTION_PT = 26, 18, 14, 12
"""At arm's length, about 70 cm, capitals want some 3.5 mm, a two-hundredth of that: 14 points; common practice."""
SIGN = 15.0
"""Of a hazard pictogram, corner to corner across, in mm."""
SIGNS_FROM = "Signs on the product's own label:"
MM_A_PT = 25.4 / 72
LEADING = 1.1
_MARKS = re.compile(r"([*_~-])(?=\1)")
FONT = "Helvetica"
DOTS_AN_INCH = 200


def sheet(labels: Sequence[LabelText], paper: str) -> bytes:
    """The labels as a PDF, two side by side, cut along the dashes."""
    wide, high = PAPER[paper]
    pdf = _blank((wide, high))
    pdf.add_page()
    y = MARGIN
    for at in range(0, len(labels), 2):
        pair = labels[at : at + 2]
        tallest = max(_height(pdf, label) for label in pair)
        if y > MARGIN and y + tallest > high - MARGIN:
            pdf.add_page()
            y = MARGIN
        for place, label in enumerate(pair):
            _draw(pdf, label, MARGIN + place * (WIDE + GAP), y, tallest)
        y += tallest + GAP
    return bytes(pdf.output())


def picture(label: LabelText) -> bytes:
    """One label as a PNG."""
    import pypdfium2

    measured = _blank((WIDE + 2, 400.0))
    measured.add_page()
    high = _height(measured, label)
    pdf = _blank((WIDE + 2, high + 2))
    pdf.add_page()
    _draw(pdf, label, 1, 1, high)
    document = pypdfium2.PdfDocument(bytes(pdf.output()))
    written = BytesIO()
    document[0].render(scale=DOTS_AN_INCH / 72).to_pil().save(written, "PNG")
    document.close()
    return written.getvalue()


def unprintable(label: LabelText) -> str:
    """The letters of a label that its font doesn't have and no plain letter stands for."""
    words = [
        label.name,
        label.product,
        *label.cautions,
        *(words for _, words in label.signs),
        *(part for line in label.lines for part in line),
    ]
    return "".join(dict.fromkeys(letter for letter in "".join(words) if _printed(letter) == "?" != letter))


def _printed(text: str) -> str:
    """With the letters of the page's own font: Latin-1; others by their plain letter, else a question mark."""

    def letter_of(letter: str) -> str:
        if ord(letter) < 256:
            return letter
        plain = unicodedata.normalize("NFKD", letter).encode("latin-1", "ignore").decode("latin-1")
        return plain or {"’": "'", "‘": "'", "–": "-", "—": "-"}.get(letter, "?")

    return "".join(map(letter_of, text))


# ---------------------------------------------------------------- drawing


def _blank(paper: tuple[float, float]) -> Any:
    from fpdf import FPDF  # a tenth of a second that no other command has to pay

    pdf = FPDF(unit="mm", format=paper)
    pdf.set_auto_page_break(False)
    pdf.set_margin(0)
    pdf.set_title("Bottle labels")
    pdf.set_lang("en")
    return pdf


def _height(pdf: Any, label: LabelText) -> float:
    return _words(pdf, label, 0, 0, dry=True) + PAD


def _draw(pdf: Any, label: LabelText, x: float, y: float, high: float) -> None:
    pdf.set_draw_color(0)
    pdf.set_line_width(0.2)
    pdf.set_dash_pattern(dash=2, gap=2)
    pdf.rect(x, y, WIDE, high)
    pdf.set_dash_pattern()
    if label.fill_to:
        pdf.set_line_width(1.2)
        pdf.line(x, y + 1, x + WIDE, y + 1)
    _words(pdf, label, x, y, dry=False)


def _words(pdf: Any, label: LabelText, x: float, y: float, *, dry: bool) -> float:
    """Puts the words on the page, or only measures them; gives where they end."""
    at = y + PAD / 2
    if label.fill_to:
        at = _put(pdf, label.fill_to, (x, at + 0.5), BODY_PT, "B", dry=dry)
    at = _put(pdf, label.name, (x, at), NAME_PT, "B", dry=dry)
    at = _put(pdf, label.product, (x, at), PRODUCT_PT, "B", dry=dry) + 1
    for head, text in label.lines:
        at = _put(pdf, f"**{_unmarked(head)}:** {_unmarked(text)}", (x, at), BODY_PT, "", dry=dry)
    if label.signs:
        at = _put(pdf, SIGNS_FROM, (x, at + 1.5), CAUTION_PT, "B", dry=dry) + 1
    for symbol, words in label.signs:
        if not dry:
            draw_sign(pdf, symbol, (x + PAD, at), SIGN)
        indent = SIGN + 2
        high = _put(pdf, words, (x, at), BODY_PT, "", dry=True, indent=indent) - at
        _put(pdf, words, (x, at + max(0.0, (SIGN - high) / 2)), BODY_PT, "", dry=dry, indent=indent)
        at += max(SIGN, high) + 1
    for place, caution in enumerate(label.cautions):
        at = _put(pdf, f"! {caution}", (x, at + (1.5 if place == 0 else 0)), CAUTION_PT, "", dry=dry)
    return at


def _unmarked(text: str) -> str:
    """A keeper's own stars and dashes are no markup."""
    return _MARKS.sub(r"\1 ", text)


def _put(
    pdf: Any, text: str, place: tuple[float, float], size: int, style: str, *, dry: bool, indent: float = 0
) -> float:
    pdf.set_font(FONT, style, size)
    pdf.set_xy(place[0] + PAD + indent, place[1])
    line = size * MM_A_PT * LEADING
    height: float = pdf.multi_cell(
        WIDE - 2 * PAD - indent,
        line,
        _printed(text),
        align="L",
        markdown=style == "" and text.startswith("**"),
        dry_run=dry,
        output="HEIGHT",
    )
    return place[1] + height
