"""What follows a splash in the talk: never "I don't know that one", never a step, never a clock that starts over."""

from __future__ import annotations

from pathlib import Path

import pytest

from tests.sitting import play

AFTER = (
    (
        "bleach in my eye",
        ("it still stings", "what now", "he's a toddler", "it was the bleach", "milk?", "lens?", "worse"),
    ),
    (
        "my kid drank bleach",
        ("do I make her sick up?", "milk?", "water?", "what do I do", "she's three", "the yellow bottle"),
    ),
    ("I breathed in the bleach fumes", ("still coughing", "what now", "should I call someone")),
    ("chlorhexidine on the gecko", ("do I give it water", "it's breathing oddly", "is it bad", "can I stop rinsing")),
)
PAIRS = [(first, after) for first, afters in AFTER for after in afters]


@pytest.mark.parametrize(("first", "after"), PAIRS)
def test_it_is_answered_as_the_same_harm(first: str, after: str, tmp_path: Path) -> None:
    script = tmp_path / "said.txt"
    script.write_text(f"{first}\n+1m\n{after}\n", "utf-8")
    told, reply = (reply for reply in play(script) if reply["question"])
    assert (reply["intent"], reply["outcome"]) == ("splash", "answer")
    assert reply["values"]["place"] == told["values"]["place"]
    if told["values"]["seconds"]:
        assert reply["values"]["seconds"] == told["values"]["seconds"] - 60
    assert len(reply["say"].split()) <= 25


def test_a_rinse_that_is_over_and_still_hurts_is_to_be_seen(tmp_path: Path) -> None:
    script = tmp_path / "said.txt"
    script.write_text("bleach in my eye\n+20m\nit still hurts\n", "utf-8")
    reply = play(script)[-1]
    assert "seen urgently" in reply["say"]
    assert reply["values"]["seconds"] is None


def test_an_hour_later_it_is_no_longer_about_the_splash(tmp_path: Path) -> None:
    script = tmp_path / "said.txt"
    script.write_text("bleach in my eye\n+2h\nwhat now\n", "utf-8")
    assert play(script)[-1]["intent"] == "next"


def test_two_places_are_rinsed_by_two_clocks(tmp_path: Path) -> None:
    script = tmp_path / "said.txt"
    script.write_text("bleach on my arm and in my eye\nhow long left\n", "utf-8")
    timers = play(script)[-1]["values"]["timers"]
    assert sorted(timer["step"] for timer in timers) == ["eye", "skin"]


def test_fumes_come_before_any_other_place(tmp_path: Path) -> None:
    script = tmp_path / "said.txt"
    script.write_text("swallowed some and I can't stop coughing\n", "utf-8")
    assert play(script)[0]["say"].startswith("Out now, into fresh air.")
