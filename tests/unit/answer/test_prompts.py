"""What the tool said by itself can be asked for again."""

from __future__ import annotations

from talk import Talk


def test_what_repeats_a_prompt_and_then_the_reply_again() -> None:
    talk = Talk()
    talk.tells("start the desert box with the pink bottle", "out, cleared, washed, soap rinsed off, sprayed")
    prompt = talk.after(minutes=11)
    assert "stay wet" in prompt
    assert talk.tell("what?").say == prompt
    assert talk.tell("say that again").say == prompt
    answer = talk.tell("yes").say
    assert talk.tell("say that again").say == answer
