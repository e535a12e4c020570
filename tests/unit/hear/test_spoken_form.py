import pytest

from assistant.hear.spoken_form import number_words, words_of


@pytest.mark.parametrize(
    ("written", "said"),
    [
        ("Tub 2", "tub two"),
        ("1:32", "one to thirty two"),
        ("0.5% bleach", "zero point five percent bleach"),
        ("750 mL at 25 °C", "seven hundred fifty mils at twenty five degrees"),
        ("copper-cap bottle", "copper cap bottle"),
        ("What’s next?", "what's next"),
        ("crème tank", "crème tank"),
        ("?!", ""),
    ],
)
def test_written_signs_and_numbers_become_words(written: str, said: str) -> None:
    assert " ".join(words_of(written)) == said


@pytest.mark.parametrize(
    ("number", "said"),
    [(0, "zero"), (15, "fifteen"), (50, "fifty"), (64, "sixty four"), (500, "five hundred"), (10_000, "ten thousand")],
)
def test_whole_numbers_are_spelled_out(number: int, said: str) -> None:
    assert number_words(number) == said


def test_a_very_long_number_is_read_digit_by_digit() -> None:
    assert words_of("12345678") == ("one", "two", "three", "four", "five", "six", "seven", "eight")
