"""Ways to say units and strengths that `core.quantities.quantity`, which reads files, doesn't know."""

from __future__ import annotations

from fractions import Fraction

from assistant.core.quantities.quantity import Gallon

# Ways to say a unit that no file would hold. "ounces" of what is poured are fluid ounces.
SAID: dict[str, str] = {
    "mls": "ml",
    "mill": "ml",
    "mills": "ml",
    "m l": "ml",
    "ccs": "ml",
    "c c": "ml",
    "ltr": "l",
    "ltrs": "l",
    "lt": "l",
    "oz": "fl oz",
    "ozs": "fl oz",
    "ounce": "fl oz",
    "ounces": "fl oz",
    "fluid oz": "fl oz",
    "fluid ounzes": "fl oz",
    "fl ozs": "fl oz",
    "fl ounces": "fl oz",
    "us oz": "us fl oz",
    "us ounces": "us fl oz",
    "us ounce": "us fl oz",
    "american gallon": "us gallon",
    "american gallons": "us gallons",
    "american pint": "us pint",
    "american pints": "us pints",
    "american quart": "us quart",
    "american quarts": "us quarts",
    "imperial ounces": "imperial fluid ounces",
    "imperial ounce": "imperial fluid ounce",
    "british gallon": "imperial gallon",
    "british gallons": "imperial gallons",
    "british pint": "imperial pint",
    "british pints": "imperial pints",
    "uk gallon": "imperial gallon",
    "uk gallons": "imperial gallons",
    "uk pint": "imperial pint",
    "uk pints": "imperial pints",
    "uk fl oz": "imperial fl oz",
    "gals": "gal",
    "qts": "qt",
    "pts": "pt",
    "tbsps": "tbsp",
    "tsps": "tsp",
    "degrees c": "degc",
    "degrees centigrade": "degc",
    "centigrade": "degc",
    "degrees": "degc",
    "degree": "degc",
    "degrees f": "degf",
    "pct": "%",
    "percents": "%",
    "percentage": "%",
    "p p m": "ppm",
    "part per million": "ppm",
    "parts a million": "ppm",
    "hrs": "hours",
    "secs": "seconds",
    "wks": "weeks",
    "mg l": "ppm",
    "mg per l": "ppm",
    "mg per litre": "ppm",
    "mg a litre": "ppm",
    "milligrams per litre": "ppm",
    "milligrams a litre": "ppm",
}
# Longer spans, in days: a twelfth of 365.25, and 365.25.
SPANS: dict[str, Fraction] = {
    **dict.fromkeys(("month", "months", "mth", "mths"), Fraction("30.4375")),
    **dict.fromkeys(("year", "years", "yr", "yrs"), Fraction("365.25")),
}
# Words that name the system a unit belongs to.
SYSTEM_WORDS: dict[str, Gallon] = {
    **dict.fromkeys(("us", "american"), "US"),
    **dict.fromkeys(("imp", "imperial", "british", "uk"), "imperial"),
}
# What may follow "us" behind a unit, where it is a country and nobody.
ENDS_A_UNIT = frozenset({"", ",", ".", "?", "!", "in", "to", "into", "is", "at", "of", "as", "please"})
# What a volume may be the size of: "in a litre bottle" is no recipe.
HOLDERS = frozenset(
    {"bottle", "bottles", "jug", "bucket", "sprayer", "spray", "tub", "container", "syringe", "cup", "beaker", "can"}
)
LONGEST_UNIT = 3
# Words that stand after a number for another reason than being its unit.
NO_UNIT = frozenset({"in", "to", "for", "at", "c", "f", "s", "m", "d", "h", "o"})
LONG_UNITS = (
    *("millilitre", "millilitres", "milliliter", "milliliters", "litre", "litres", "liter", "liters", "gallon"),
    *("gallons", "quarts", "percent", "minutes", "minute", "seconds", "tablespoon", "tablespoons", "teaspoon"),
    *("teaspoons", "ounces", "pints"),
)
SLIPPED_UNIT = 84
"""Cut-off of rapidfuzz's ratio for a unit's slip: "litters" 92, "minuets" 86; "little" against "litre" 73."""

NEAT: tuple[tuple[str, ...], ...] = (
    ("neat",),
    ("undiluted",),
    ("full", "strength"),
    ("straight", "up"),
    ("straight", "from", "the", "bottle"),
)
EQUAL: tuple[tuple[str, ...], ...] = (
    ("equal", "parts"),
    ("fifty", "fifty"),
    ("50", "50"),
    ("50", "/", "50"),
    ("half", "and", "half"),
)
