"""Nothing that a keeper says in passing makes an enclosure ready: no hedge, no joke, nothing seen afterwards.

Each sentence is said at one point of a clean that is otherwise as it should be, and then it is asked whether the
animals may go back. All of them are ways of speaking that were once taken for a step, or passed over.
"""

from __future__ import annotations

import pytest
from talk import Talk

BEGUN = ("start window cage with the pink bottle", "geckos out, cleared, washed", "sprayed")
RINSED_IS_TOLD = """
rinsed it last time
rinsed, well, nearly
yeah right, like I've rinsed it already
my mate rinsed his after two minutes
it's rinsed and dry in ten minutes
just say rinsed
rinsed? ha
rinsed with what, there's no water
getting it rinsed now
rinsed by tonight
rinsed, dry enough
rinsed it, or was that the other one, yeah the other one
rinsed, obviously not
rinsed, as if
yeah nah rinsed
scarcely rinsed it
all but rinsed
rinsed it, one more to go
I thought I rinsed it
it's been rinsed, supposedly
apparently it's rinsed
she claims it's rinsed
he swears he rinsed it
he said say rinsed
the label says rinsed surfaces only
get it rinsed
I rinsed something
I've rinsed it in my head
haven't washed it but rinsed it
"""
WET_TIME_IS_TOLD = """
stayed wet, I mean it didn't
nearly
yes, the glass did
yes if you don't count the door
stayed wet, rinsed ten minutes ago
"""
SAID_AFTERWARDS = """
haven't rinsed
scrap that, haven't rinsed
found a bit of poo, wiped it off
missed a bit of poo in the corner, wiped it up
found a dead cricket under the hide, wiped it out
wiped it over with a bit of disinfectant
sprayed the hide as well and popped it in
I think it might have dried out at some point
to be honest I wasn't watching it, it could've dried
water's pooled in the bottom
water is sitting in the bottom
knocked the yellow bottle over, some went in
overspray from the river tank got on it
I left the door open and the cat walked through
the cat got in and walked all over it
that was the yellow bottle by the way
splashed some bleach in it doing the river tank
washed the glass again with soap
used the cage for the new arrival for an hour
dried it with the towel I used on the hospital tub
Sam dried it with the dirty towel
I lied about the rinsing
none of that happened
the back glass didn't get sprayed
it was only wet for a few minutes
waited maybe eight
I eyeballed the mix
mix was a guess
pink looked very pale
the bottle was nearly all water
there was no concentrate in that bottle
I used less than usual
didn't do under the ledge
I couldn't reach the back
ran out before the roof
the door's not been cleaned
lid's still off being cleaned
I dried it with kitchen roll but it keeps weeping
it's raining on it
my eyes water when I lean in
the cat's been in it
a mouse ran through it
a fly laid eggs in it
she regurgitated in it
there's a crack full of gunk
used the dirty cloth to dry
no gloves on and I touched the sick one first
I put bleach in the water bowl
rinsed it with the mop bucket water
the glass is cloudy
painted the wall next to it
that was meant for the river tank
"""
WHILE_IT_RUNS = """
sprayed a bit more on the dry bits
gave it a mist from the tap sprayer
I started rinsing too soon, stopped
only gave it five
moved on early
gave up on the wait
didn't wash the roof
it's beading, not wetting
it all ran to the bottom
my wife wiped it down
the cleaner wiped it
I rinsed the lid already
she wiped the front off
my wife came and dried it
snake touched it
the gecko's tail dragged on it
it's run off the sides
"""
DRY_IS_TOLD = """
dry, obviously not
dry as a swamp
yeah right, dry
I thought it was dry
apparently dry
supposedly dry
he claims it's dry
dry enough
get it dry
assume it's dry
call it dry
I dried it last week
wiped dry but the towel was wet
"""
SMELL_IS_TOLD = """
my daughter can't smell it but I can
hardly any
can't tell
can't smell it any more but my nose is blocked
"""


def a_talk(*before: str, **wait: float) -> Talk:
    talk = Talk()
    talk.tells(*before)
    talk.after(**wait)
    return talk


@pytest.mark.parametrize("said", RINSED_IS_TOLD.strip().splitlines())
def test_what_is_no_plain_word_of_a_rinse_is_asked_about(said: str) -> None:
    talk = a_talk(*BEGUN, minutes=10)
    talk.tell("it stayed wet")
    assert talk.tell(said).values.get("recorded") is not True
    assert talk.tells("dry", "can they go back").values["ready"] is False


@pytest.mark.parametrize("said", WET_TIME_IS_TOLD.strip().splitlines())
def test_half_a_word_of_the_wet_time_vouches_for_nothing(said: str) -> None:
    talk = a_talk(*BEGUN, minutes=15)
    talk.tell(said)
    assert talk.tells("rinsed", "dry", "can they go back").values["ready"] is False


@pytest.mark.parametrize("said", SAID_AFTERWARDS.strip().splitlines())
def test_what_is_told_afterwards_is_never_passed_over(said: str) -> None:
    talk = a_talk(*BEGUN, minutes=10)
    talk.tells("it stayed wet", "rinsed", "dry", said)
    assert talk.tells("can they go back").values["ready"] is False


@pytest.mark.parametrize("said", WHILE_IT_RUNS.strip().splitlines())
def test_what_is_told_while_the_wet_time_runs_is_never_passed_over(said: str) -> None:
    talk = a_talk(*BEGUN, minutes=3)
    talk.tell(said)
    talk.after(minutes=7)
    assert talk.tells("stayed wet", "rinsed", "dry", "can they go back").values["ready"] is False


@pytest.mark.parametrize("said", DRY_IS_TOLD.strip().splitlines())
def test_what_is_no_plain_word_of_dry_is_asked_about(said: str) -> None:
    talk = a_talk(*BEGUN, minutes=10)
    talk.tells("it stayed wet", "rinsed", said)
    assert talk.tell("can they go back").values["ready"] is False


@pytest.mark.parametrize("said", SMELL_IS_TOLD.strip().splitlines())
def test_a_smell_half_told_is_one(said: str) -> None:
    talk = a_talk("start river tank with the yellow bottle", "snake out, cleared, washed", "sprayed", minutes=10)
    talk.tells("yes", "rinsed", "dry", "window open")
    talk.after(hours=4)
    talk.tell(said)
    assert talk.tell("can she go back").values["ready"] is False


@pytest.mark.parametrize(("said", "ready"), [("no", True), ("yes", False), ("no, just the lid", False)])
def test_a_rinse_told_too_early_is_settled_by_its_answer(said: str, ready: bool) -> None:
    talk = a_talk(*BEGUN, minutes=3)
    talk.tells("my wife wiped it down", said)
    talk.after(minutes=7)
    assert talk.tells("stayed wet", "rinsed", "dry", "can they go back").values["ready"] is ready


@pytest.mark.parametrize("said", ["snake's out and about in there", "snake moved itself"])
def test_what_moves_by_itself_is_not_out(said: str) -> None:
    assert a_talk("start river tank with the yellow bottle").tell(said).values.get("recorded") is not True


@pytest.mark.parametrize(
    ("opened", "then", "seconds"),
    [
        ("two windows open", "shut one of them", 3 * 3600),
        ("opened three windows", "wind blew them shut", 11 * 3600),
    ],
)
def test_windows_are_shut_one_by_one_or_by_the_wind(opened: str, then: str, seconds: float) -> None:
    talk = a_talk("start river tank with the yellow bottle", "snake out, cleared, washed", "sprayed", minutes=10)
    talk.tells("yes", "rinsed", "dry", opened, then)
    assert talk.tell("how long").values["seconds"] == pytest.approx(seconds, rel=0.05)


def test_a_wet_time_is_of_its_own_enclosure() -> None:
    talk = a_talk(*BEGUN, minutes=15)
    assert talk.tell("river tank stayed wet").values.get("recorded") is not True


def test_on_second_thoughts_a_rinse_is_none() -> None:
    talk = a_talk(*BEGUN, minutes=15)
    talk.tell("it stayed wet, rinsed, wait no, just stayed wet")
    assert talk.tell("can they go back").values["blocked_by"] == ("rinse", "dry")


def test_what_was_dirty_is_not_put_right_by_drying() -> None:
    talk = a_talk(*BEGUN, minutes=10)
    talk.tells("it stayed wet", "rinsed", "dry", "found a bit of poo, wiped it off", "can they go back")
    assert talk.tells("dry", "can they go back").values["ready"] is False


@pytest.mark.parametrize("said", ["ten minutes are up, rinsed it", "time's up and rinsed"])
def test_a_rinse_told_with_a_wet_time_that_still_runs_is_asked_about(said: str) -> None:
    talk = a_talk(*BEGUN, minutes=9)
    talk.tell(said)
    assert talk.tells("yes", "rinsed", "dry", "can they go back").values["ready"] is False


@pytest.mark.parametrize("said", ["actually not the window cage", "undo that for the window cage"])
def test_a_step_is_taken_back_of_one_of_several(said: str) -> None:
    talk = a_talk(
        *("start river tank and window cage with the pink bottle", "both animals out", "both cleared and washed"),
        *("both sprayed",),
        minutes=10,
    )
    talk.tells("both stayed wet", "rinsed both")
    assert "window cage" in talk.tell(said).say.lower()
    assert talk.tells("both dry", "can the geckos go back").values["ready"] is False
    assert talk.tell("can the snake go back").values["ready"] is True


def test_no_just_the_sides_is_a_no() -> None:
    talk = a_talk(*BEGUN, minutes=10)
    talk.tells("it stayed wet", "rinsed the sides")
    assert talk.tell("no just the sides").values.get("recorded") is not True


def test_opened_nothing_is_shut() -> None:
    talk = a_talk("start river tank with the yellow bottle", "snake out, cleared, washed", "sprayed", minutes=10)
    talk.tells("yes", "rinsed", "dry", "opened nothing, it's freezing")
    talk.after(hours=6)
    assert talk.tell("can she go back").values["ready"] is False


@pytest.mark.parametrize("said", ["taking them out", "take them out", "got the geckos out, well one of them"])
def test_who_may_be_inside_is_not_out(said: str) -> None:
    talk = a_talk("start window cage with the pink bottle")
    assert talk.tell(said).values.get("recorded") is not True


@pytest.mark.parametrize("said", ["please tell me I can put him back now", "say I can put them back"])
def test_who_may_go_back_is_not_back(said: str) -> None:
    talk = a_talk(*BEGUN)
    reply = talk.tell(said)
    assert reply.intent == "return_check"
    assert reply.values["ready"] is False


def test_what_was_told_is_settled_before_a_return_is_recorded() -> None:
    talk = a_talk(*BEGUN, minutes=10)
    talk.tells("it stayed wet", "rinsed", "dry", "put the water bowl straight back in from the bleach")
    assert talk.tell("they're back in").values["recorded"] is False
    assert talk.tell("yes").values["recorded"] is True


@pytest.mark.parametrize(
    "said",
    [
        "rinsed it under the tap",
        "rinsed it well, twice, with warm water",
        "that's it rinsed off lovely",
        "it's rinsed now",
    ],
)
def test_a_plain_word_still_acts_at_once(said: str) -> None:
    talk = a_talk(*BEGUN, minutes=10)
    talk.tell("it stayed wet")
    assert talk.tell(said).values["recorded"] is True
