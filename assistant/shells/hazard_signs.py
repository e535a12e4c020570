"""GHS hazard pictograms, drawn by our own strokes: a red square on its point, a black symbol inside.

Only for what a keeper copied from the stock's own label. The frame and what each symbol shows are those of the Globally
Harmonized System (United Nations, "Purple Book", Annex 1 and 1.4.10.4); the strokes are ours.
Each symbol is drawn on a field of 100 by 100 whose corners are the middles of the frame's sides.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass
from typing import Any

RED = (225, 0, 25)
Point = tuple[float, float]


@dataclass(frozen=True, slots=True)
class _Pen:
    """Draws on the field of one sign, in black, whatever its size and place on the page."""

    pdf: Any
    x: float
    y: float
    a_unit: float

    def shape(self, *points: Point, white: bool = False) -> None:
        """A filled polygon."""
        self._ink(white)
        self.pdf.polygon([self._at(point) for point in points], style="F")

    def disc(self, middle: Point, wide: float, high: float | None = None, *, white: bool = False) -> None:
        self._ink(white)
        tall = wide if high is None else high
        x, y = self._at((middle[0] - wide / 2, middle[1] - tall / 2))
        self.pdf.ellipse(x, y, wide * self.a_unit, tall * self.a_unit, style="F")

    def ring(self, middle: Point, wide: float, thick: float) -> None:
        self.disc(middle, wide)
        self.disc(middle, wide - 2 * thick, white=True)

    def line(self, *points: Point, thick: float = 4) -> None:
        self.pdf.set_draw_color(0)
        self.pdf.set_line_width(thick * self.a_unit)
        self.pdf.polyline([self._at(point) for point in points], style="D")

    def curve(self, start: Point, *pieces: tuple[Point, Point, Point], white: bool = False) -> None:
        """A filled outline of Bezier pieces, each two handles and an end."""
        self.shape(*_along(start, pieces), white=white)

    def _ink(self, white: bool) -> None:
        self.pdf.set_fill_color(255 if white else 0)

    def _at(self, point: Point) -> Point:
        return self.x + point[0] * self.a_unit, self.y + point[1] * self.a_unit


def _along(start: Point, pieces: Sequence[tuple[Point, Point, Point]]) -> list[Point]:
    points, here = [start], start
    for a, b, end in pieces:
        for step in range(1, 13):
            t = step / 12
            u = 1 - t
            weights = (u**3, 3 * u * u * t, 3 * u * t * t, t**3)
            corners = (here, a, b, end)
            points.append(
                (
                    sum(w * p[0] for w, p in zip(weights, corners, strict=True)),
                    sum(w * p[1] for w, p in zip(weights, corners, strict=True)),
                )
            )
        here = end
    return points


def draw_sign(pdf: Any, symbol: str, place: Point, wide: float) -> None:
    """One pictogram in a square of `wide` mm whose upper left corner is `place`; `symbol` is its name in English."""
    x, y = place
    half = wide / 2
    thick = wide * 0.045
    inset = thick * 0.71
    pdf.set_line_width(thick)
    pdf.set_draw_color(*RED)
    pdf.set_fill_color(255)
    corners = [(x + half, y + inset), (x + wide - inset, y + half), (x + half, y + wide - inset), (x + inset, y + half)]
    pdf.polygon(corners, style="DF")
    SYMBOLS[symbol](_Pen(pdf, x + wide / 4, y + wide / 4, wide / 200))
    pdf.set_draw_color(0)
    pdf.set_fill_color(0)


# ---------------------------------------------------------------- the nine symbols


def _flame_shape(pen: _Pen, dx: float = 0, dy: float = 0, size: float = 1) -> None:
    def at(x: float, y: float) -> Point:
        return dx + x * size, dy + y * size

    pen.curve(
        at(50, 84),
        (at(24, 84), at(16, 62), at(26, 44)),
        (at(28, 52), at(31, 55), at(35, 56)),
        (at(33, 36), at(42, 18), at(56, 4)),
        (at(53, 20), at(62, 28), at(66, 40)),
        (at(69, 36), at(69, 32), at(68, 28)),
        (at(82, 44), at(88, 84), at(50, 84)),
    )
    pen.curve(
        at(51, 80),
        (at(38, 80), at(36, 66), at(43, 56)),
        (at(45, 60), at(47, 61), at(49, 60)),
        (at(48, 52), at(52, 44), at(56, 40)),
        (at(56, 52), at(66, 56), at(64, 68)),
        (at(63, 76), at(58, 80), at(51, 80)),
        white=True,
    )


def _flame(pen: _Pen) -> None:
    _flame_shape(pen)
    pen.shape((22, 88), (78, 88), (78, 95), (22, 95))


def _flame_over_circle(pen: _Pen) -> None:
    _flame_shape(pen, 18, -8, 0.64)
    pen.ring((50, 70), 46, 7)
    pen.shape((28, 96), (72, 96), (72, 102), (28, 102))


def _exploding_bomb(pen: _Pen) -> None:
    pen.disc((42, 66), 44)
    for a, b, c in (
        ((50, 38), (46, 8), (58, 36)),
        ((58, 38), (72, 6), (66, 42)),
        ((66, 46), (92, 26), (70, 54)),
        ((70, 58), (100, 58), (70, 66)),
        ((68, 70), (92, 88), (62, 78)),
        ((40, 40), (26, 18), (34, 42)),
        ((24, 54), (0, 44), (20, 62)),
    ):
        pen.shape(a, b, c)
    for middle in ((12, 26), (88, 12), (96, 42), (84, 74), (34, 6)):
        pen.disc(middle, 6)


def _gas_cylinder(pen: _Pen) -> None:
    def turned(along: float, across: float) -> Point:
        # the cylinder leans: its axis runs from lower left to upper right
        return 10 + along * 0.87 + across * 0.5, 74 - along * 0.5 + across * 0.87

    pen.shape(
        *(turned(a, c) for a, c in ((0, -12), (66, -12), (74, -9), (79, -4), (79, 4), (74, 9), (66, 12), (0, 12)))
    )
    pen.shape(*(turned(a, c) for a, c in ((79, -4), (90, -4), (90, 4), (79, 4))))
    pen.line(turned(-1, -12), turned(-1, 12), thick=4)


def _corrosion(pen: _Pen) -> None:
    for left in (6.0, 54.0):
        pen.shape((left + 2, 16), (left + 30, 6), (left + 33, 13), (left + 5, 23))
    for x, y in ((10, 28), (18, 26), (60, 28), (68, 26)):
        pen.curve((x, y), ((x - 4, y + 8), (x - 4, y + 12), (x, y + 12)), ((x + 4, y + 12), (x + 4, y + 8), (x, y)))
    pen.shape((-6, 58), (0, 58), (4, 66), (16, 66), (20, 58), (42, 58), (42, 72), (-6, 72))
    pen.curve(
        (52, 72),
        ((56, 60), (60, 56), (58, 48)),
        ((64, 58), (66, 56), (68, 48)),
        ((70, 58), (78, 50), (88, 46)),
        ((96, 46), (106, 52), (106, 58)),
        ((100, 58), (92, 56), (88, 60)),
        ((86, 68), (72, 70), (52, 72)),
    )
    for foot in (4.0, 10.0, 60.0, 68.0):
        pen.line((foot, 54), (foot - 3, 44), thick=2.5)


def _skull(pen: _Pen) -> None:
    for start, end in (((16, 64), (84, 86)), ((84, 64), (16, 86))):
        pen.line(start, end, thick=8)
        for x, y in (start, end):
            pen.disc((x, y - 4), 11)
            pen.disc((x + (3 if x > 50 else -3), y + 4), 11)
    pen.disc((50, 26), 56, 50)
    pen.shape((34, 42), (66, 42), (63, 64), (37, 64))
    pen.disc((38, 30), 15, 14, white=True)
    pen.disc((62, 30), 15, 14, white=True)
    pen.shape((50, 38), (54, 47), (46, 47), white=True)
    for tooth in (42, 50, 58):
        pen.shape((tooth - 1, 53), (tooth + 1, 53), (tooth + 1, 63), (tooth - 1, 63), white=True)


def _exclamation(pen: _Pen) -> None:
    pen.curve(
        (42, 8),
        ((42, 0), (58, 0), (58, 8)),
        ((58, 26), (56, 44), (54, 64)),
        ((54, 68), (46, 68), (46, 64)),
        ((44, 44), (42, 26), (42, 8)),
    )
    pen.disc((50, 84), 17)


def _health_hazard(pen: _Pen) -> None:
    pen.disc((50, 10), 25, 27)
    pen.curve(
        (16, 92),
        ((15, 56), (18, 38), (40, 32)),
        ((44, 28), (56, 28), (60, 32)),
        ((82, 38), (85, 56), (84, 92)),
        ((70, 92), (30, 92), (16, 92)),
    )
    star = (
        (50, 38),
        (54, 52),
        (67, 43),
        (60, 57),
        (78, 59),
        (62, 65),
        (71, 79),
        (56, 71),
        (50, 86),
        (44, 71),
        (29, 79),
        (38, 65),
        (22, 59),
        (40, 57),
        (33, 43),
        (46, 52),
    )
    pen.shape(*star, white=True)


def _environment(pen: _Pen) -> None:
    pen.shape((0, 80), (96, 80), (90, 86), (6, 86))
    pen.shape((22, 82), (26, 30), (33, 30), (36, 82))
    for base, tip in (
        ((28, 34), (10, 12)),
        ((29, 34), (30, 2)),
        ((30, 36), (50, 16)),
        ((32, 50), (50, 36)),
        ((26, 56), (8, 42)),
    ):
        pen.line(base, tip, thick=3.5)
    pen.line((30, 16), (20, 6), thick=2.5)
    pen.line((40, 26), (44, 10), thick=2.5)
    pen.line((17, 20), (6, 22), thick=2.5)
    pen.curve(
        (46, 66),
        ((56, 52), (76, 52), (88, 62)),
        ((92, 58), (98, 54), (102, 54)),
        ((98, 62), (98, 68), (102, 76)),
        ((98, 76), (92, 72), (88, 68)),
        ((76, 80), (58, 80), (48, 66)),
    )
    pen.disc((60, 64), 5, white=True)


SYMBOLS: Mapping[str, Callable[[_Pen], None]] = {
    "exploding bomb": _exploding_bomb,
    "flame": _flame,
    "flame over circle": _flame_over_circle,
    "gas cylinder": _gas_cylinder,
    "corrosion": _corrosion,
    "skull and crossbones": _skull,
    "exclamation mark": _exclamation,
    "health hazard": _health_hazard,
    "environment": _environment,
}
