"""What a turn means after the one before."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from datetime import timedelta
from fractions import Fraction

import pytest
from phrasings.said_as import written

from assistant.contract import Doubt, Heard, Outcome, Pending, Reading, Reply, Slots, Talk, World
from assistant.core.quantities.amounts import Amount
from assistant.understand.reader import Reader

Ask = Callable[..., Reading]


@pytest.fixture
def waiting(ask: Ask, world: World) -> Callable[..., Talk]:
    """A talk in which the question that a text asked still waits."""

    def of(said: str, *missing: str, doubts: tuple[Doubt, ...] = (), seconds_ago: float = 30) -> Talk:
        reading = replace(ask(said), doubts=doubts)
        pending = Pending(reading, world.now - timedelta(seconds=seconds_ago), missing, on_yes=reading)
        return Talk(pending=pending, last_reading=reading)

    return of


@pytest.mark.parametrize(
    ("asked", "missing", "said", "field", "expected"),
    [
        ("how much bleach at 1 in 32", ("total",), "sixty mils", "volumes", ["60 mL"]),
        ("how much bleach at 1 in 32", ("total",), "the violet one", "bottles", ["violet bottle"]),
        ("how much bleach at 1 in 32", ("total",), "half a litre please", "volumes", ["1/2 L"]),
        ("how much bleach at 1 in 32", ("total",), "violet", "bottles", ["violet bottle"]),
        ("how much bleach at 1 in 32", ("total",), "500", "numbers", ["500"]),
        ("how much bleach at 1 in 32", ("total",), "the turquoise bottle", "unknown", ["turquoise"]),
        ("how much bleach at 1 in 32", ("total",), "500 ML", "faulty", ["500 ML"]),
        ("how much bleach for half a litre", ("mix",), "one in fifty", "mixes", ["1 in 50"]),
        ("how much bleach for half a litre", ("mix",), "0.06 percent", "mixes", ["0.06 percent"]),
        ("how much bleach for half a litre", ("mix",), "at 1:20 please", "mixes", ["1:20"]),
        ("how much bleach for half a litre", ("mix",), "one fifty", "numbers", ["150"]),
        ("0.05 percent in half a litre", ("stock_strength",), "six percent", "stock_strength", "6 %"),
        ("rinsed", ("enclosure",), "the east tank", "enclosures", ["east tank"]),
        ("rinsed", ("enclosure",), "biscuit", "enclosures", ["east tank"]),
        ("rinsed", ("enclosure",), "the turtle", "enclosures", ["pond tub"]),
        ("rinsed", ("enclosure",), "both", "every_enclosure", True),
        ("rinsed", ("enclosure",), "the maple tub", "unknown", ["maple tub"]),
        ("start the east tank", ("bottle", "stock", "agent"), "bleach", "agents", ["sodium hypochlorite"]),
        ("start the east tank", ("bottle", "stock", "agent"), "with the orange bottle", "bottles", ["orange bottle"]),
        ("start the east tank", ("start_over",), "start over", "start_over", True),
        ("start the east tank", ("start_over",), "go on", "start_over", False),
        ("start the east tank", ("start_over",), "carry on", "start_over", False),
        ("done", ("step",), "the rinse", "steps", ["rinse"]),
        ("done", ("step",), "washing", "steps", ["wash"]),
    ],
)
def test_a_short_answer_supplies_what_was_missing(
    asked: str,
    missing: tuple[str, ...],
    said: str,
    field: str,
    expected: object,
    ask: Ask,
    waiting: Callable[..., Talk],
) -> None:
    talk = waiting(asked, *missing)
    reading = ask(said, talk)
    assert talk.last_reading is not None
    assert reading.intent == talk.last_reading.intent
    assert written(reading.slots, field) == expected


def test_what_was_said_before_stays(ask: Ask, waiting: Callable[..., Talk]) -> None:
    slots = ask("sixty mils", waiting("how much bleach at 1 in 32", "total")).slots
    assert (written(slots, "mixes"), slots.agents) == (["1 in 32"], ("sodium hypochlorite",))


@pytest.mark.parametrize(
    ("said", "intent"),
    [
        ("what's next", "next"),
        ("how long left", "time_left"),
        ("can the snake go back", "return_check"),
        ("bleach in my eye", "splash"),
        ("I've rinsed the east tank", "done"),
        ("help", "help"),
        ("yes", "yes"),
        ("no", "no"),
    ],
)
def test_a_full_question_beats_the_one_that_waits(
    said: str, intent: str, ask: Ask, waiting: Callable[..., Talk]
) -> None:
    assert ask(said, waiting("how much bleach at 1 in 32", "total")).intent == intent


def test_a_question_that_waited_over_five_minutes_is_answered_no_more(ask: Ask, waiting: Callable[..., Talk]) -> None:
    talk = replace(waiting("how much bleach at 1 in 32", "total", seconds_ago=301), last_reading=None)
    assert ask("sixty mils", talk).intent is None


@pytest.mark.parametrize(
    "said", ["no, five zero", "no, fifty", "fifty", "one in fifty", "I said fifty", "no, one in fifty"]
)
def test_a_correction_replaces_the_doubted_number_and_clears_the_doubt(
    said: str, ask: Ask, waiting: Callable[..., Talk]
) -> None:
    doubt = Doubt("number", "15", ("50",))
    reading = ask(said, waiting("bleach for the orange bottle at one in fifteen", doubts=(doubt,)))
    assert (reading.intent, written(reading.slots, "mixes"), reading.doubts) == ("dose", ["1 in 50"], ())
    assert reading.slots.bottles == ("orange bottle",)


def test_a_doubt_stays_while_something_else_is_supplied_or_put_right(ask: Ask, waiting: Callable[..., Talk]) -> None:
    doubts = (Doubt("number", "15", ("50",)),)
    supplied = ask("the orange one", waiting("how much bleach at one in fifteen", "total", doubts=doubts))
    assert (supplied.slots.bottles, supplied.doubts) == (("orange bottle",), doubts)
    changed = ask("no, the violet one", waiting("bleach for the orange bottle at one in fifteen", doubts=doubts))
    assert (changed.slots.bottles, changed.doubts) == (("violet bottle",), doubts)


def test_of_two_doubtful_numbers_the_one_not_put_right_stays_doubtful(ask: Ask, waiting: Callable[..., Talk]) -> None:
    doubts = (Doubt("number", "60"), Doubt("number", "15"))
    reading = ask("no, one in fifty", waiting("bleach at one in fifteen for sixty mils", doubts=doubts))
    assert (written(reading.slots, "mixes"), reading.doubts) == (["1 in 50"], doubts[:1])


def test_a_corrected_volume_stays_a_volume(ask: Ask, waiting: Callable[..., Talk]) -> None:
    reading = ask("no, sixty", waiting("bleach at 1 in 32 for sixteen mils", doubts=(Doubt("number", "16", ("60",)),)))
    assert (written(reading.slots, "volumes"), written(reading.slots, "mixes")) == (["60 mL"], ["1 in 32"])


@pytest.mark.parametrize(
    ("said", "field", "expected"),
    [
        ("and for the blue?", "bottles", ["blue bottle"]),
        ("and the violet one", "bottles", ["violet bottle"]),
        ("what about one in fifty", "mixes", ["1 in 50"]),
        ("no, fifty", "mixes", ["1 in 50"]),
        ("no, the violet one", "bottles", ["violet bottle"]),
    ],
)
def test_the_last_question_is_asked_again_with_another_word(said: str, field: str, expected: object, ask: Ask) -> None:
    talk = Talk(last_reading=ask("how much bleach for the orange bottle at one in thirty two"))
    reading = ask(said, talk)
    assert (reading.intent, written(reading.slots, field)) == ("dose", expected)


def test_the_five_hundred_is_a_bottle_of_that_size(ask: Ask) -> None:
    talk = Talk(last_reading=ask("how much bleach for the orange bottle at one in thirty two"))
    (choice,) = ask("no, the five hundred", talk).slots.choices
    assert choice.candidates == ("violet bottle", "white bottle", "blue bottle")


def test_half_of_that_is_not_put_in_as_a_number(ask: Ask) -> None:
    talk = Talk(last_reading=ask("how much bleach for the orange bottle at one in thirty two"))
    assert ask("what about half of that", talk).intent is None


def test_a_recorded_step_is_not_corrected_without_being_taken_back(ask: Ask) -> None:
    talk = Talk(last_reading=ask("I've rinsed the east tank"), takes_back=True)
    assert ask("no, the pond tub", talk).intent != "done"


@pytest.mark.parametrize(
    ("said", "wet"),
    [("it stayed wet", True), ("yes it stayed wet", True), ("it dried out", False), ("it didn't stay wet", False)],
)
def test_whether_it_stayed_wet_answers_that_question(said: str, wet: bool, ask: Ask, world: World) -> None:
    def answer(stayed: bool) -> Reading:
        return Reading("", "done", Slots(enclosures=("east tank",), steps=("hold",), stayed_wet=stayed))

    talk = Talk(pending=Pending(answer(True), world.now, on_yes=answer(True), on_no=answer(False)))
    reading = ask(said, talk)
    assert (reading.intent, reading.slots.steps, reading.slots.stayed_wet) == ("done", ("hold",), wet)
    assert reading.slots.enclosures == ("east tank",)


@pytest.mark.parametrize("said", ["it dried out", "it didn't stay wet", "it dried"])
def test_that_it_dried_is_no_step_when_nothing_asked(said: str, ask: Ask) -> None:
    reading = ask(said)
    assert "hold" not in reading.slots.steps


def test_a_bare_mix_right_after_an_amount_asks_for_that_mix(ask: Ask) -> None:
    before = ask("how much bleach for the orange bottle")
    talk = Talk(last_reading=before, last=Reply("", "dose", Outcome.ANSWER, "", ""))
    reading = ask("1 in 50", talk)
    assert (reading.intent, reading.slots.bottles, written(reading.slots, "mixes")) == (
        "dose",
        ("orange bottle",),
        ["1 in 50"],
    )
    assert ask("1 in 50", replace(talk, last=Reply("", "next", Outcome.ANSWER, "", ""))).intent is None


def test_a_bare_name_with_nothing_waiting_is_no_question(ask: Ask) -> None:
    assert ask("the orange bottle").intent is None
    assert ask("sixty mils").intent is None


def test_reading_a_turn_changes_nothing(reader: Reader, world: World) -> None:
    first = reader(Heard("how much bleach for the orange bottle at 1 in 32"), world)
    reader(Heard("no, fifty"), replace(world, talk=Talk(last_reading=first)))
    assert reader(Heard("how much bleach for the orange bottle at 1 in 32"), world) == first
    assert first.slots.mixes[0].second == Fraction(32)  # type: ignore[union-attr]


def _after(said: str, ask: Ask, **values: object) -> Talk:
    before = ask(said)
    assert before.intent is not None
    return Talk(last_reading=before, last=Reply("", before.intent, Outcome.ANSWER, "", "", values=values))


@pytest.mark.parametrize(
    ("said", "volumes"),
    [
        ("what about half of that", ["250 mL"]),
        ("and for half that", ["250 mL"]),
        ("twice as much", ["1000 mL"]),
        ("only half the bottle", ["250 mL"]),
    ],
)
def test_half_of_that_is_half_of_the_amount_just_answered(said: str, volumes: list[str], ask: Ask) -> None:
    talk = _after("how much bleach for the orange bottle at one in 32", ask, total=Amount(Fraction(500), "mL"))
    reading = ask(said, talk)
    assert (reading.intent, written(reading.slots, "volumes"), written(reading.slots, "mixes")) == (
        "dose",
        volumes,
        ["1 in 32"],
    )


def test_double_strength_doubles_the_strength_and_nothing_else(ask: Ask) -> None:
    reading = ask("what about double strength", _after("how much bleach for the orange bottle at one in 32", ask))
    assert (written(reading.slots, "mixes"), reading.slots.volumes) == (["1 in 16"], ())


def test_it_stands_for_the_one_thing_just_spoken_of(ask: Ask) -> None:
    reading = ask("how long does it need to stay wet", _after("how much bleach for the orange bottle", ask))
    assert (reading.intent, reading.slots.bottles) == ("hold_time", ("orange bottle",))


@pytest.mark.parametrize("said", ["can he go back", "I've rinsed it", "is it finished"])
def test_it_never_chooses_whose_round_is_vouched_for_or_recorded(said: str, ask: Ask) -> None:
    reading = ask(said, _after("how long does the east tank have to stay wet", ask))
    assert reading.intent == "hold_time" or reading.slots.enclosures == ()  # that again vouches for nothing


def test_what_a_question_does_not_take_is_not_put_into_it(ask: Ask) -> None:
    reading = ask("and for the east tank", _after("convert three cups to mils", ask))
    assert reading.intent != "convert"


@pytest.mark.parametrize("said", ["and the pond tub", "no, the pond tub", "what about the pond tub"])
def test_what_records_is_at_most_asked_about_by_a_word(said: str, ask: Ask) -> None:
    reading = ask(said, _after("I've rinsed the east tank", ask))
    assert reading.intent != "done" or reading.doubts or reading.again == "unclear"
