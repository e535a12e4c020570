"""Ordinary talk for the language model, so that what isn't a question isn't forced into one.

Plain sentences, written for this project; the model counts their words. Nothing here is ever answered.
"""

from __future__ import annotations

SENTENCES: tuple[str, ...] = tuple(
    line.strip()
    for line in """
good morning everyone
i will be back in a minute
could you close the door please
where did i put my keys
what do you want for dinner tonight
i think it is going to rain today
that was really funny
she said she would call me later
we need to go to the shop before it closes
turn the music down a little
my phone is ringing
hold on a second
let me think about it
i don't know what you mean
he came home very late last night
the kids are at school until three
did you see the game on saturday
they are coming over next week
it was not my fault
nobody told me about that
this is the best coffee i have had in years
can somebody help me with this box
look at that big green one over there
you have to be kidding
we used to live near the sea
my sister has a new car
it takes about an hour by train
thank you very much
you are welcome
see you tomorrow
how was your day
i am so tired
it's getting dark outside
the dog wants to go for a walk
there is something wrong with the heater
i forgot to pay the electric bill
he works from home on friday
that one costs too much money
put it on the table next to the lamp
who was that on the phone
i can't find my glasses anywhere
she always makes me laugh
do you remember the name of that film
it must be somewhere in the kitchen
they never answer my letters
what a beautiful evening
we should get some bread and cheese
my back hurts from all this lifting
just leave it where it is
i would like a cup of tea
the neighbours are making noise again
if you have time call your mother
he looks much better than yesterday
come here and look at this
she likes to sit under the lamp
he is hungry again
i love the colour of her eyes
be careful with your fingers
don't let him bite you
oh no not again
well that's that
all right then
why is it so cold in here
wait until i get there
give me a hand
the radio is too loud
someone is at the front door
i read about it in the news
it happened a long time ago
people say that every year
we went there when i was young
you can have it if you want
tell him i said hello
i was going to say the same thing
maybe they will bring the other one
it looks old but it still works
she bought three books and a map
the bus was full this morning
what else do we need from town
i hope they get here soon
he has been talking about it for days
those shoes are mine
i'm only joking
we could try again another day
nothing ever happens around here
this light keeps going on and off
play something nice
write that down for me
set an alarm for seven
how far is it to the station
the weather has been lovely this month
sorry i was talking to the cat
are you even listening
there you are my little friend
i need new batteries for the torch
let's have a look
did anyone feed the fish
that smells like dinner
my hands are freezing
i should have brought a chair
the lid does not fit any more
who left the window open all night
it fell behind the shelf
hand me that towel would you
i have to sneeze
the mask is making my glasses fog up
one of these days i will tidy this room
two of them were sleeping
we have four or five of those at home
""".splitlines()
    if line.strip()
)
