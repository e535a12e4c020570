"""What may count as done, and what never may."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from assistant.contract import Reading
from assistant.understand.steps.claimed_steps import claims_in

Ask = Callable[[str], Reading]

NEVER_DONE = """
should I give it a rinse
I'll give it a good scrub
haven't given it a rinse
it hasn't had its wash
needs another rinse
did I give it a spray
about to give it the second coat
is it covered in bleach
the bleach isn't off yet
rinse: not done
almost done with the scrub
I'll have given it a rinse by then
haven't rinsed
I haven't rinsed it
havent rinsed
have not rinsed it yet
not rinsed
not rinsed yet
never rinsed
nearly rinsed
half rinsed
mostly rinsed
rinsed most of it
rinsed everything except the lid
about to rinse
just about to rinse
going to rinse
gonna rinse it
I'll rinse it now
will rinse later
let me rinse it
I'm rinsing
rinsing now
still rinsing
need to rinse
I have to rinse it
I must rinse it
want to rinse it
ready to rinse
yet to rinse
forgot to rinse
I should have rinsed it
if I rinsed it
once I've rinsed it
when it's rinsed
before I rinsed it
until it's rinsed
did I rinse?
did I rinse
did I rinse it
have I rinsed it
have I rinsed it yet?
has it been rinsed
is it rinsed
is the east tank rinsed
was it rinsed
rinsed?
it's rinsed, right?
I've rinsed it, haven't I?
it's been rinsed hasn't it?
can't remember if I rinsed it
not sure whether I rinsed it
do you know if I rinsed
should I rinse
can I rinse now
do I rinse it
how do I rinse it
rinse it
nearly dry
almost dry
not dry
not dry yet
it isn't dry
still wet
still damp
it's still drying
nearley dry
almsot dry
not yet dry
is it dry
dry?
how long until it's dry
when will it be dry
going to spray
about to spray the east tank
I'm spraying
haven't sprayed
havent sprayd
haven't washed and rinsed it
I haven't washed, rinsed or dried it
neither washed nor rinsed
all clear?
all clear
it's all clear
is it clear
can I put him back
put him back?
when can I put him back
fine to put her back
going to put her back
haven't put him back
is he out
he's out of the tub!
he's out of the holding tub
the snake got out
he got out
she escaped
about to move him out
haven't moved her out yet
rinsed my eye
I rinsed my hands
washed my hands
rinsed out the orange bottle
it dried out
it dried too soon
washed everything but the lid
rinsed, well, not the floor
all rinsed bar the bottom
none of them are dry
nothing's been rinsed
got half the muck out
after it's dry, what then
is everything out of it and clear
don't mark the wash as complete
mark the wash as undone
are clearing and washing finished
clearing and washing are nearly finished
clearing and washing are not finished
have you ticked off the rinse
tell me when the wash is done
rinse it when done
put the pond tub back on the shelf
took biscuit out of quarantine
the heater stopped working
the spray is on the table
bleach is on the list
use bleach on her back wall
dried flowers for the table
use vinegar on the east tank
try bleach on the east tank
what about bleach on the east tank
apply some bleach on it
misted it again
"""

DONE = """
just given it a good rinse = rinse
gave the east tank its wash = wash
it's had a really good scrub = wash
had a rinse = rinse
it's been given a wipe, twice, with clean water = wipe
gave it a thorough soaking with the bleach = apply
rinse: check = rinse
the rinse is behind us = rinse
finished up with the rinsing = rinse
it's covered in bleach = apply
laid the bleach on thick = apply
the bleach is off now = rinse
she's sitting in her tub now = move out
I did it, it's rinsed = rinse
no, it's rinsed = rinse
no it's dry = dry
ok it's rinsed = rinse
rinsed it, what's next = rinse
it's dry. what now? = dry
rinsed and dried = rinse, dry
sprayed it and it stayed wet = apply, hold
soap's rinsed off = wash
washed the soap off = wash
wiped it down with bleach = apply
wiped it down with clean water = wipe
rinsed the bleach off = rinse
washed the bleach off = rinse
it never dried out = hold
she's in the spare box = move out
he's out = move out
the east tank is out, cleared and washed = move out, clear, wash
put her back in the holding tub = move out
all out, cleared, washed = move out, clear, wash
dried = dry
wrinsed it = rinse
taken biscuit out = move out
put biscuit back in the pond tub, heat on = return
he's gone back in the east tank = return
got all the muck out = clear
clearing and washing are all finished = clear, wash
the wash and the rinse are both done = wash, rinse
mark the wash as complete = wash
tick off the rinse = rinse
drying is taken care of = dry
rinse the east tank done = rinse
finished with the wash = wash
been over it with bleach = apply
"""


@pytest.mark.parametrize("said", NEVER_DONE.strip().splitlines())
def test_what_is_not_plainly_claimed_is_never_done(said: str, ask: Ask) -> None:
    assert ask(said).intent != "done"


@pytest.mark.parametrize("row", DONE.strip().splitlines())
def test_a_claim_names_its_steps_in_order(row: str, ask: Ask) -> None:
    said, _, steps = row.partition(" = ")
    reading = ask(said)
    assert reading.intent == "done"
    assert reading.slots.steps == tuple(step.strip() for step in steps.split(","))
    assert reading.doubts == ()


@pytest.mark.parametrize(
    "said", ["I think it's dry", "looks dry", "probably rinsed", "pretty dry", "he's out!", "it should be dry by now"]
)
def test_a_claim_with_a_hedge_is_never_taken_at_its_word(said: str, ask: Ask) -> None:
    reading = ask(said)
    assert reading.intent != "done" or reading.doubts


@pytest.mark.parametrize(
    "said", ["haven't rinsed", "about to rinse", "did I rinse?", "not rinsed yet", "need to rinse it"]
)
def test_a_step_not_done_yet_or_asked_is_a_look_at_the_status_of_that_step(said: str, ask: Ask) -> None:
    reading = ask(said)
    assert (reading.intent, reading.slots.steps) == ("status", ("rinse",))


@pytest.mark.parametrize(
    ("said", "openings"),
    [
        ("rinsed, one window's open", 1),
        ("window's open", 1),
        ("the door and the window are open", 2),
        ("two windows are open", 2),
        ("both windows are open", 2),
        ("I've opened three windows", 3),
        ("second one's open", 2),
        ("the windows are open", 2),
        ("I shut the window", 0),
    ],
)
def test_openings_are_counted(said: str, openings: int, ask: Ask) -> None:
    reading = ask(said)
    assert (reading.intent, reading.slots.openings) == ("done", openings)


@pytest.mark.parametrize(
    "said", ["should I open a window", "is the window open", "is the window open?", "close the window"]
)
def test_a_window_asked_about_is_not_open(said: str, ask: Ask) -> None:
    assert ask(said).intent != "done"


@pytest.mark.parametrize(
    ("said", "steps"),
    [
        ("out cleared and washed", ("move out", "clear", "wash")),  # as a recogniser gives it, without commas
        ("i already put him in", ("return",)),
        ("already put ENCLOSURE in", ("return",)),
        ("i already put him in the tub", ("move out",)),
    ],
)
def test_what_is_said_in_a_hurry_is_still_the_step(said: str, steps: tuple[str, ...]) -> None:
    assert claims_in(said).done == steps


@pytest.mark.parametrize("word", ["wetted", "heated", "thinned", "inside"])
def test_a_denial_goes_on_over_a_word_that_only_begins_like_a_new_subject(word: str) -> None:
    assert claims_in(f"i have not cleared , {word} or rinsed it").done == ()
