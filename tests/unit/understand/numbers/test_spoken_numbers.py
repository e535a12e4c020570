"""Numbers out of words, in British and American habit."""

from __future__ import annotations

from fractions import Fraction

import pytest

from assistant.understand.numbers.spoken_numbers import number_at
from assistant.understand.text.words import tokens_of

ROWS = """
one = 1
seven = 7
ten = 10
eleven = 11
twelve = 12
thirteen = 13
fifteen = 15
nineteen = 19
twenty = 20
thirty = 30
forty = 40
fifty = 50
ninety = 90
twenty one = 21
twenty-five = 25
thirty two = 32
thirty-two = 32
sixty four = 64
ninety nine = 99
one hundred = 100
a hundred = 100
a hundred five = 105
a hundred and five = 105
one hundred and five = 105
one oh five = 105
two hundred = 200
two hundred and fifty = 250
two hundred fifty = 250
two fifty = 250
three fifty = 350
five hundred = 500
five hundred and fifty = 550
five fifty = 550
seven fifty = 750
seven hundred fifty = 750
seven hundred and fifty = 750
seven five zero = 750
nine ninety nine = 999
one twenty eight = 128
one hundred twenty eight = 128
one hundred and twenty eight = 128
one fifty = 150
one thirty-two = 132
two twenty five = 225
twelve fifty = 1250
twelve hundred = 1200
fifteen hundred = 1500
a thousand = 1000
one thousand = 1000
two thousand = 2000
ten thousand = 10000
one thousand two hundred = 1200
one thousand two hundred and fifty = 1250
one thousand and five = 1005
one thousand five = 1005
twenty five thousand = 25000
one hundred thousand = 100000
five zero = 50
one five = 15
one two eight = 128
zero five = 5
five oh oh = 500
point five = 1/2
point nine = 9/10
point oh five = 1/20
point zero five = 1/20
point oh six = 3/50
point one two five = 1/8
point twenty five = 1/4
nought point six = 3/5
nought point oh six = 3/50
zero point five = 1/2
zero point zero six = 3/50
oh point five = 1/2
one point five = 3/2
two point two five = 9/4
five point two five = 21/4
eight point two five = 33/4
thirty two point five = 65/2
one hundred point five = 201/2
half = 1/2
a half = 1/2
one half = 1/2
a quarter = 1/4
one quarter = 1/4
three quarters = 3/4
a third = 1/3
one third = 1/3
two thirds = 2/3
three eighths = 3/8
an eighth = 1/8
a tenth = 1/10
one and a half = 3/2
two and a half = 5/2
ten and a half = 21/2
two and three quarters = 11/4
one and three quarter = 7/4
one and a quarter = 5/4
one and two thirds = 5/3
a hundred and a half = 201/2
500 = 500
0.5 = 1/2
.5 = 1/2
1.875 = 15/8
1/2 = 1/2
3/4 = 3/4
1 1/2 = 3/2
2 3/4 = 11/4
1½ = 3/2
½ = 1/2
2 and a half = 5/2
1,000 = 1000
12,500.5 = 25001/2
2 thousand = 2000
-5 = -5
minus five = -5
minus two point five = -5/2
fourty = 40
"""


@pytest.mark.parametrize("row", list(ROWS.strip().splitlines()))
def test_a_number_in_words_is_that_number(row: str) -> None:
    said, _, value = row.partition(" = ")
    tokens = tokens_of(said)
    number = number_at(tokens, 0)
    assert number is not None
    assert (number.value, number.end, number.faulty) == (Fraction(value), len(tokens), "")


@pytest.mark.parametrize("said", ["one fifty", "one thirty two", "one twenty eight"])
def test_what_could_be_a_ratio_as_well_is_marked(said: str) -> None:
    number = number_at(tokens_of(said), 0)
    assert number is not None
    assert number.split


@pytest.mark.parametrize("said", ["seven fifty", "one hundred and fifty", "fifty", "twelve fifty"])
def test_what_can_be_no_ratio_is_not_marked(said: str) -> None:
    number = number_at(tokens_of(said), 0)
    assert number is not None
    assert not number.split


@pytest.mark.parametrize("said", ["9**9**9", "1e9", "1.2.3", "0,06", "1/0", "1234567890123", "5^3"])
def test_what_is_no_decimal_or_simple_fraction_is_faulty(said: str) -> None:
    number = number_at(tokens_of(said), 0)
    assert number is not None
    assert number.faulty


@pytest.mark.parametrize("said", ["the", "to", "for", "oh", "o", "and", "third", "tenths", "point", "hundredth", "x1"])
def test_other_words_are_no_number(said: str) -> None:
    assert number_at(tokens_of(said), 0) is None
