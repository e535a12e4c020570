"""Harm comes first: in the middle of anything, shouted or misspelt; and an animal is never treated."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from assistant.contract import Reading

Ask = Callable[[str], Reading]

SPLASHES = """
bleach in my eye = eye person
OW BLEACH IN MY EYE = eye person
how much bleach for the orange bottle at one in ow it's in my eye = eye person
rinsed the east tank and got bleach in my eye = eye person
what's next oh no my eyes are burning = eye person
my eye stings = eye person
bleach went in her eye = eye either
got it in biscuit's eye = eye animal
bleach on my hand = skin person
I spilled bleach down my leg = skin person
spilt it on my bare foot = skin person
my fingers are burning = skin person
splashed it in my face = skin person
I sprayed the snake with bleach by accident = skin animal
bleach got on the gecko = skin animal
I swallowed bleach = mouth person
my daughter drank it = mouth person
he swallowed some = mouth person
the turtle drank the bleach water = mouth animal
the gecko licked it = mouth animal
I can't breathe = lungs person
I'm coughing = lungs person
breathed in the fumes = lungs person
the fumes are awful = lungs person
it reeks in here = lungs person
feeling dizzy = lungs person
my throat's burning = lungs person
blech in my eye = eye person
bleach in my I = eye person
my i hurts = eye person
it went in my ice = eye person
the drop hit my cheek = skin person
the mist blew back into my face = skin person
splattered on my glasses and into my eye = eye person
I had a sip of the concentrate = mouth person
I can taste bleach = mouth person
the cat drank from the bucket = mouth animal
she walked through the wet bleach = skin animal
I SPRAYED THE GECKO = skin animal
the gecko got misted with chlorhexidine = skin animal
there's vinegar on the gecko's back = skin animal
it dripped on the snake's back = skin animal
bleach dripped on biscuit = skin animal
the snake was still in there when I sprayed = skin animal
biscuit was still in when I sprayed = skin animal
swalowed some bleech = mouth person
"""

WOUNDS = """
can I put chlorhexidine on his burn
how do I make point oh five percent for his burn
what strength for scale rot
can I soak the snake in chlorhexidine
can I dip her in bleach
spray the gecko with vinegar
mix a chlorhexidine bath for the turtle
is bleach ok on his skin
how much ivermectin for the snake
what dose of antibiotics
chlorhexidine for mouth rot
just a tiny bit of bleach on the wound, how much
make me 500 ml at 0.05 percent to flush his abscess
can I flush his eye with chlorhexidine
a drop of bleach in his drinking water
0.05 percent for the cut on her tail
put vinegar on his skin to treat a fungus
what strength is bleach gentle enough for skin
a drop of bleach in his soak
bathe biscuit in iodine
she's bleeding what do I spray on it
he's burnt, chlorhexidine on it?
rinse a snake's mouth with chlorhexidine
how many mils of chlorhexidine can she have by mouth
wipe her side with alcohol
"""

NEITHER = """
how much bleach for the orange bottle at one in thirty two
start the east tank with bleach
sprayed the east tank with bleach
can the snake go back
put the snake back
moved the snake to the tub
do I need goggles for my eyes
how long for the fumes to clear
keep an eye on the time
spray the snake's tank with bleach
is bleach ok for the snake's tank
clean her tank with bleach
how long does bleach need
I washed my hands
hand me the bleach
what's on hand
use bleach in his tub
use bleach on her back wall
is bleach mild enough for the snake's hide
I sprayed the gecko's tank
the snake was in the tub when I sprayed
bleach on the snake's hide
she drank from the bowl
it hit me that I forgot the lid
my ice cream is melting
the bleach reached the floor
the toast is burning
hard to swallow, that price
do vinegar and bleach make fumes
repeat that, I had my mouth full
"""


@pytest.mark.parametrize("row", SPLASHES.strip().splitlines())
def test_a_splash_comes_before_anything_else(row: str, ask: Ask) -> None:
    said, _, expected = row.partition(" = ")
    reading = ask(said)
    assert reading.intent == "splash"
    assert f"{reading.slots.place} {reading.slots.victim}" == expected


@pytest.mark.parametrize("said", WOUNDS.strip().splitlines())
def test_a_wish_to_treat_an_animal_is_known_however_it_is_put(said: str, ask: Ask) -> None:
    assert ask(said).intent == "wound"


@pytest.mark.parametrize("said", NEITHER.strip().splitlines())
def test_ordinary_work_is_no_harm(said: str, ask: Ask) -> None:
    assert ask(said).intent not in ("splash", "wound")


def test_nobody_in_pain_is_asked_which_bottle(ask: Ask) -> None:
    slots = ask("ow bleach from the turquoise bottle in my eye 500 ML").slots
    assert (slots.choices, slots.unknown, slots.faulty) == ((), (), ())
