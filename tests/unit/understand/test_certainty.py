"""What was not heard with certainty is read back."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from assistant.contract import Heard, Reading, Word, World
from assistant.understand.reader import Reader

Hear = Callable[..., Reading]

DOSE = "how much bleach for the orange bottle at one in fifteen"


@pytest.fixture
def hear(reader: Reader, world: World) -> Hear:
    def heard(text: str, *alternatives: str, posterior: float = 1.0, **less: float) -> Reading:
        words = tuple(Word(word, less.get(word, posterior)) for word in text.split())
        return reader(Heard(text, True, alternatives, words), world)

    return heard


def test_a_number_heard_well_and_alone_is_certain(hear: Hear) -> None:
    assert hear(DOSE, "how much peach for the orange bottle at one in fifteen").doubts == ()


def test_another_number_among_the_alternatives_makes_it_doubtful(hear: Hear) -> None:
    (doubt,) = hear(DOSE, "how much bleach for the orange bottle at one in fifty").doubts
    assert (doubt.kind, doubt.heard, doubt.others) == ("number", "15", ("50",))


@pytest.mark.parametrize("posterior", [0.98, 0.5])
def test_a_number_word_below_099_makes_it_doubtful(posterior: float, hear: Hear) -> None:
    (doubt,) = hear(DOSE, fifteen=posterior).doubts
    assert (doubt.kind, doubt.heard) == ("number", "15")


def test_a_number_without_posteriors_is_doubtful(reader: Reader, world: World) -> None:
    assert reader(Heard(DOSE, spoken=True), world).doubts


def test_other_words_heard_badly_make_no_number_doubtful(hear: Hear) -> None:
    assert hear(DOSE, bottle=0.4).doubts == ()


def test_a_typed_number_is_never_doubtful(reader: Reader, world: World) -> None:
    assert reader(Heard(DOSE), world).doubts == ()


@pytest.mark.parametrize(
    "other", ["i haven't rinsed it", "have i rinsed it", "i'm about to rinse it", "did i rinse it"]
)
def test_a_step_that_may_have_been_denied_or_asked_is_doubtful(other: str, hear: Hear) -> None:
    reading = hear("i have rinsed it", other)
    assert reading.intent == "done"
    assert [doubt.kind for doubt in reading.doubts] == ["polarity"]


def test_a_step_that_all_alternatives_claim_is_certain(hear: Hear) -> None:
    assert hear("i have rinsed it", "i have rinsed it off", "and rinsed it").doubts == ()


def test_a_yes_that_may_have_been_a_no_is_doubtful(hear: Hear) -> None:
    assert [doubt.kind for doubt in hear("yes", "no").doubts] == ["polarity"]


def test_an_alternative_that_reads_better_is_taken(hear: Hear) -> None:
    assert hear("wattle next", "what is next").intent == "next"


def test_the_first_hearing_is_kept_where_both_read_as_well(hear: Hear) -> None:
    assert hear("rinsed the east tank", "rinsed the pond tub").slots.enclosures == ("east tank",)


def test_a_cry_among_the_alternatives_is_heard(hear: Hear) -> None:
    assert hear("peach in my pie", "bleach in my eye").intent == "splash"


def test_what_was_spoken_is_marked(hear: Hear) -> None:
    assert hear("what's next").spoken


@pytest.mark.parametrize("lost", ["plain", "play", "pint", "fine"])
def test_a_number_after_a_word_like_point_is_doubtful(lost: str, hear: Hear) -> None:
    """ "Point nine percent" heard as "plain nine percent", each word for certain, would be ten times the dose."""
    reading = hear(f"how much bleach for the orange bottle at {lost} nine percent")
    assert [doubt.kind for doubt in reading.doubts] == ["number"]


def test_the_word_before_a_number_must_be_certain_too(hear: Hear) -> None:
    reading = hear("how much bleach for the orange bottle at the nine percent", the=0.49)
    assert [doubt.kind for doubt in reading.doubts] == ["number"]


def test_what_was_heard_well_needs_no_alternative(hear: Hear) -> None:
    said = "how long is left on the east tank"
    assert hear(said, "how long is bleach in the eye", posterior=0.97).intent == "time_left"


@pytest.mark.parametrize("said", ["yes", "no", "hush", "how the east thing much of it"])
def test_mumbling_is_no_answer_and_no_question_that_only_may_be_one(said: str, hear: Hear) -> None:
    reading = hear(said, posterior=0.2)
    assert (reading.intent, reading.doubts) == (None, ())


def test_a_mumbled_question_that_is_plainly_one_is_read_back(hear: Hear) -> None:
    said = "how long is left on the east tank"
    (doubt,) = hear(said, posterior=0.2).doubts
    assert (doubt.kind, doubt.heard) == ("hearing", said)
    assert [doubt.kind for doubt in hear("rinsed the east tank", posterior=0.2).doubts] == ["polarity"]


def test_a_mumbled_cry_is_heard(hear: Hear) -> None:
    assert hear("bleach in my eye", posterior=0.2).intent == "splash"


def test_a_cry_in_one_of_many_alternatives_is_noise(hear: Hear) -> None:
    others = (
        "i breathed the east tank",
        "i've rinsed the east tanks",
        "i've rinsed these tank",
        "i've rinsed east tank",
    )
    assert hear("i've rinsed the east tank", *others, posterior=0.6).intent == "done"


def test_a_cry_that_half_of_the_alternatives_hear_is_one(hear: Hear) -> None:
    assert hear("peach in my pie", "bleach in my eye", "bleach in my eyes", "peach on my pie").intent == "splash"


def test_a_step_read_from_an_alternative_is_asked_about(hear: Hear) -> None:
    reading = hear("how many so you", "rinsed the east tank", posterior=0.6)
    assert reading.intent == "done"
    assert [doubt.kind for doubt in reading.doubts] == ["polarity"]


def test_every_doubtful_number_is_told_not_only_the_worst(hear: Hear) -> None:
    said = "how much bleach for sixty mils at one in fifteen"
    doubts = hear(said, sixty=0.8, fifteen=0.8).doubts
    assert [doubt.heard for doubt in doubts] == ["60", "15"]
    (doubt,) = hear(said, "how much bleach for fifty mils at one in fifteen").doubts
    assert (doubt.heard, doubt.others) == ("60", ("50",))


def test_a_number_that_none_sounds_like_is_certain_in_a_sentence_heard_well(hear: Hear) -> None:
    said = "how much bleach for the orange bottle at one in ten"
    near = "how much {} for the orange bottle at one in {}"
    far = [near.format(word, "ten") for word in ("leech", "peach", "beach")] + [near.format("bleach", "nine")]
    assert hear(said, *far, ten=0.6).doubts == ()
    assert hear(said, far[3], ten=0.6).doubts, "another number is near"
    assert hear(said, *far, ten=0.6, posterior=0.75).doubts, "the sentence was not heard well"
    assert hear(said, ten=0.4).doubts, "it is no more likely than not"


@pytest.mark.parametrize("said", ["one in fifteen", "one in thirty two", "two percent", "plain two parts per million"])
def test_a_number_that_others_sound_like_needs_more(said: str, hear: Hear) -> None:
    words = said.split()
    assert hear(
        f"how much bleach for the orange bottle at {said}", **{words[-1 if words[-1] != "percent" else 0]: 0.9}
    ).doubts


def test_one_in_two_is_not_one_to_two(hear: Hear) -> None:
    (doubt,) = hear("bleach for the orange bottle at one in two", "bleach for the orange bottle at one to two").doubts
    assert doubt.heard == "2"


def test_a_number_that_an_alternative_lacks_is_doubtful(hear: Hear) -> None:
    (doubt,) = hear(DOSE, "how much bleach for the orange bottle at once").doubts
    assert doubt.heard == "15"


def test_what_was_heard_badly_as_a_whole_is_read_back_as_a_whole(hear: Hear) -> None:
    said = "how long is left on the east tank"
    (doubt,) = hear(said, posterior=0.6).doubts
    assert (doubt.kind, doubt.heard) == ("hearing", said)
    assert hear(said, posterior=0.8).doubts == ()


@pytest.mark.parametrize("said", ["hush", "bleach in my eye", "slower", "say that again"])
def test_what_can_do_no_harm_or_cannot_wait_is_never_read_back(said: str, hear: Hear) -> None:
    assert "hearing" not in [doubt.kind for doubt in hear(said, posterior=0.6).doubts]


@pytest.mark.parametrize(
    ("said", "other"),
    [
        ("filled the orange bottle with bleach at one in ten how much", "filled the orange bottle"),
        ("filled the orange bottle with bleach", "fill the orange bottle with bleach"),
    ],
)
def test_a_fill_that_may_have_been_asked_for_is_read_back_before_it_is_kept(said: str, other: str, hear: Hear) -> None:
    assert [doubt.kind for doubt in hear(said, other).doubts if doubt.kind != "number"] == ["hearing"]


def test_a_fill_that_is_told_in_every_alternative_is_kept(hear: Hear) -> None:
    assert hear("filled the orange bottle with bleach", "filled the orange bottle with leech").doubts == ()


def test_an_undo_that_may_not_have_been_one_is_read_back(hear: Hear) -> None:
    assert hear("undo that").doubts == ()
    reading = hear("under bat", "undo that", posterior=0.8)
    assert reading.intent == "undo"
    assert [doubt.kind for doubt in reading.doubts] == ["hearing"]
