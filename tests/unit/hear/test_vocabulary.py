from __future__ import annotations

from collections import Counter
from collections.abc import Mapping
from dataclasses import replace

from assistant.contract import Question
from assistant.core.facts import Facts
from assistant.core.household import Household
from assistant.hear.spoken_form import ONES, TENS, words_of
from assistant.hear.vocabulary import LONG_SEEN, SHORT_SEEN, Sayable, Share, sayable, sentences


def test_every_name_of_the_household_can_be_heard(
    questions: Mapping[str, Question], household: Household, facts: Facts
) -> None:
    said = sayable(questions.values(), household, facts.agents.values(), facts.organisms.values())
    words = {word for sentence in sentences(said) for word in sentence}
    things = (*household.bottles, *household.enclosures, *household.stocks, *household.measures)
    for thing in things:
        for name in (thing.name, *thing.also):
            assert set(words_of(name)) <= words, name
    for agent in facts.agents.values():
        for name in (agent.name, *agent.also):
            assert set(words_of(name)) <= words, name


def test_every_phrasing_that_is_sampled_is_in_the_sample(
    questions: Mapping[str, Question], household: Household, facts: Facts
) -> None:
    said = sayable(questions.values(), household, facts.agents.values(), facts.organisms.values())
    words = {word for sentence in sentences(said) for word in sentence}
    for name, phrasings in said.phrasings.items():
        for phrasing in phrasings:
            fixed = [part for part in phrasing.replace("{", " {").replace("}", "} ").split() if "{" not in part]
            missing = {
                word
                for part in fixed
                for word in words_of(part)
                # "he is" may have been shortened in each sentence it stands in; its parts are elsewhere.
                if word not in words and len(word) > 1
            }
            assert not missing, (name, phrasing)


def test_a_phrasing_with_a_word_that_few_others_have_is_left_out_of_the_sample(
    questions: Mapping[str, Question], household: Household
) -> None:
    one = next(iter(questions.values()))
    long, short = "would the gentleman kindly pour me the bleach", "pour the bleach"
    others = tuple(f"{long} {number}" for number in range(LONG_SEEN - 1))

    def sampled(*phrasings: str) -> tuple[str, ...]:
        return sayable([replace(one, phrasings=phrasings)], household).phrasings[one.name]

    assert long in sampled(long, *others)
    assert long not in sampled(long, *others[1:])
    assert short in sampled(short, *others[: SHORT_SEEN - 1])
    assert short not in sampled(short, *others[: SHORT_SEEN - 2])


def test_the_sample_is_the_same_every_time() -> None:
    said = Sayable({"dose": ("how much {agent} at {mix}",)}, {"agent": ("bleach", "vinegar")})
    assert sentences(said) == sentences(said)


def test_fifteen_is_about_as_likely_as_fifty_so_that_the_sound_decides() -> None:
    said = Sayable({"dose": ("one in {number}", "how much for {volume}", "{mix}", "{volume}")}, {})
    numbers = {*ONES, *TENS, "hundred", "thousand", "point", "and"}
    counted = Counter(
        sentence[at]
        for sentence in sentences(said, Share(a_question=12_000))
        for at in range(len(sentence))
        # By itself: "fifty one" and "seven fifty" are no rivals of fifteen.
        if not numbers & {*sentence[max(0, at - 1) : at], *sentence[at + 1 : at + 2]}
    )
    for teen, ten in (("thirteen", "thirty"), ("fifteen", "fifty"), ("sixteen", "sixty"), ("seventeen", "seventy")):
        assert 0.6 < counted[teen] / counted[ten] < 1.7, (teen, counted[teen], counted[ten])


def test_a_slot_that_nothing_can_fill_gives_no_sentence() -> None:
    said = Sayable({"start": ("start {enclosure}", "begin")}, {"enclosure": ()})
    found = sentences(said)
    assert ("begin",) in found
    assert not any(sentence[:1] == ("start",) for sentence in found)


def test_phrasings_written_in_full_are_heard_short_too() -> None:
    found = sentences(Sayable({"next": ("what is next",)}, {}), Share(a_question=60))
    assert {("what", "is", "next"), ("what's", "next")} <= set(found)


def test_ordinary_talk_has_its_share() -> None:
    said = Sayable({"help": ("help me out here",)}, {})
    few, many = sentences(said, Share(chatter=0.05)), sentences(said, Share(chatter=0.4))
    assert len(many) > len(few)
    assert ("good", "morning", "everyone") in few
