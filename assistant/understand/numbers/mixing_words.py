"""What the mixing questions can't be without: a likeness that lacks it is none."""

from __future__ import annotations

from collections.abc import Mapping

_INTO_A_UNIT = frozenset({"convert", "many", "in", "into", "to", "turn", "change", "put", "come", "as", "metric", "be"})

_UNITS = frozenset(
    {"ml", "millilitres", "litres", "ounces", "teaspoons", "tablespoons", "cups", "pints", "quarts", "gallons"}
    | {"celsius", "fahrenheit", "ppm", "percent"}
)
"""Of "what's that in teaspoons": the amount is the last reply's."""

MIXING_NEEDS: Mapping[str, tuple[frozenset[str], ...]] = {
    "convert": (
        frozenset({"{volume}", "{temperature}", "{mix}", "{duration}", "it"}) | _UNITS,
        _INTO_A_UNIT,
    ),
    "read_ratio": (frozenset({"{mix}", "ratio", "colon"}),),
    "measure_with": (frozenset({"{volume}", "{measure}", "syringe", "tool", "measure", "spoon", "cup"}),),
    "mix_strength": (frozenset({"{volume}", "{mix}", "{bottle}", "{number}"}),),
    "top_up": (frozenset({"top", "topping", "fill", "refill", "add", "empty", "pour", "put", "bring", "mix", "gone"}),),
    "make_up": (
        frozenset({"{enclosure}", "{animal}", "{volume}", "{number}", "{bottle}", "bottles", "today", "them", "soak"})
        | frozenset({"lot", "round", "soaking", "bottle", "rack", "healthy"}),
    ),
    "bleach_now": (frozenset({"{agent}", "{mix}", "{duration}"}),),
}
"""By question: of each set of masked words at least one stands in the text."""
