"""Amounts in a text: each reads as what it says, or is refused with one line."""

from __future__ import annotations

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from phrasings.said_as import _text

from assistant.core.quantities.quantity import Gallon
from assistant.understand.numbers.amounts import amounts_in
from assistant.understand.text.words import tokens_of

ROWS = """
500 ml = 500 mL
500ml = 500 mL
500 mL = 500 mL
half a litre = 1/2 L
a litre and a half = 3/2 L
one and a half litres = 3/2 L
a litre = 1 L
three quarters of a litre = 3/4 L
seven fifty mil = 750 mL
one fifty mils = 150 mL
five millileters = 5 mL
5 cc = 5 mL
sixteen fl oz = 16 US fl oz
16 fluid ounces = 16 US fl oz
a 16 oz bottle = 16 US fl oz
two imperial pints = 2 imp pt
two british pints = 2 imp pt
a quart = 1 US qt
half a us gallon = 1/2 US gal
an imperial gallon = 1 imp gal
a tablespoon = 1 tbsp
two teaspoons = 2 tsp
a cup = 1 US cup
28 m^3 = 28 m^3
2-litre bottle = 2 L
1 in 32 = 1 in 32
one in thirty-two = 1 in 32
one to thirty two = 1 to 32
1:32 = 1:32
1 : 32 = 1:32
1+9 = 1 to 9
one plus nine = 1 to 9
one part to ten = 1 to 10
one part in ten = 1 in 10
one part bleach to nine parts water = 1 to 9
one out of ten = 1 in 10
1 in every 50 = 1 in 50
one in one hundred and twenty eight = 1 in 128
one two thirty two = 1 to 32
equal parts = 1 to 1
fifty fifty = 1 to 1
neat = neat
undiluted = neat
0.06 percent = 0.06 percent
0.06% = 0.06 percent
point nine percent = 0.9 percent
half a percent = 1/2 percent
nought point oh six per cent = 0.06 percent
five hundred ppm = 500 ppm
200 parts per million = 200 ppm
mix 1 in 32 in 500 ml = 1 in 32 | 500 mL
one in thirty-two in a half-litre bottle = 1 in 32 | 1/2 L
10 ml in 500 ml = 10 mL | 500 mL
add 5 ml to 2 litres = 5 mL | 2 L
ten minutes = 10 min
an hour and a half = 3/2 h
half an hour = 1/2 h
an hour and twenty minutes = 80 min
90 seconds = 90 s
three weeks = 3 week
25 degC = 25 degC
minus five degrees celsius = -5 degC
77 fahrenheit = 77 degF
one fifty = 150
no, fifty = 50
the copper one in two litres = 2 L
put it in 500 floofs = 500
the first one =
this one and that one =
half rinsed =
"""


@pytest.mark.parametrize("row", ROWS.strip().splitlines())
def test_an_amount_is_read_as_said(row: str) -> None:
    said, _, expected = row.partition(" =")
    amounts = amounts_in(tokens_of(said), "US")
    assert [_text(found.value) for found in amounts.found] == [e.strip() for e in expected.split("|") if e.strip()]
    assert amounts.faulty == ()


@pytest.mark.parametrize(
    "said",
    ["500 ML", "500 Ml", "2 T", "2 t", "0 ml", "-5 ml", "9**9**9 mL", "1e9 ml", "1 in 0", "0 in 32", "32 in 1",
     "150 percent", "0 percent", "2,000,000 ml", "1234567890123 ml", "0,5 ml", "5000000"],
)  # fmt: skip
def test_an_amount_that_cannot_be_taken_is_refused_with_one_line(said: str) -> None:
    amounts = amounts_in(tokens_of(said), "US")
    assert len(amounts.faulty) == 1
    assert amounts.faulty[0].why
    assert "\n" not in amounts.faulty[0].why
    assert amounts.found == ()


@pytest.mark.parametrize(("gallon", "unit"), [("US", "US gal"), ("imperial", "imp gal")])
def test_an_unsaid_gallon_is_the_keepers(gallon: Gallon, unit: str) -> None:
    (found,) = amounts_in(tokens_of("a gallon"), gallon).found
    assert _text(found.value) == f"1 {unit}"


def test_a_word_of_a_name_is_no_number() -> None:
    tokens = tokens_of("tub two at 1 in 32")
    assert [_text(found.value) for found in amounts_in(tokens, "US", taken=(0, 1)).found] == ["1 in 32"]


@given(st.text(max_size=60))
@settings(derandomize=True, max_examples=300, deadline=None)
def test_no_text_breaks_the_reading_of_amounts(text: str) -> None:
    for found in amounts_in(tokens_of(text), "US").found:
        assert 0 <= found.start < found.end
