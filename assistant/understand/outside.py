"""What is not answered: lines near to the questions or far from them; a likeness to one of these counts against.

One line each, in the form that phrasings have. A question that is taken up later takes its lines out of here.
"""

from __future__ import annotations

LINES: tuple[str, ...] = tuple(
    line.strip()
    for line in """
what should i use on the {organism} tank
what should i use on {enclosure}
what should i use to clean {enclosure}
what should i use for {organism}
what do i use for {organism}
what do i clean glass with
which disinfectant is best
which disinfectant for {organism}
which one is better {agent} or {agent}
what is the best thing for {organism}
what works on {organism}
what kills {organism}
does {agent} kill {organism}
does {agent} work on {organism}
does {agent} work against {organism}
is {agent} any good for {organism}
is {agent} enough for {organism}
is {agent} better than {agent}
will {agent} kill {organism}
will {agent} get rid of {organism}
can i use {agent} on wood
can i use {agent} on glass
can i use {agent} on acrylic
is {agent} ok on plastic
is {agent} safe on metal
is {agent} safe for cork bark
does {agent} damage silicone
will {agent} ruin the mesh
is my {agent} still good
is {bottle} still good
is {agent} too old
is this mix still any good
is the mix in {bottle} still ok to use
has {bottle} gone off
how old is {bottle}
how old is my {agent}
when did i mix {bottle}
when does {bottle} expire
when does the {agent} go off
how long does the mix last
how long does {agent} keep
how long does {bottle} keep
how long is {bottle} good for
how long does {agent} last once mixed
what is in {bottle}
what does {bottle} hold
what is {bottle} for
which bottle is the {agent}
how much {agent} have i got left
how much {agent} is left
how many fills are left
when will i run out of {agent}
do i need to buy more {agent}
i mixed {bottle}
i filled {bottle}
i filled {bottle} with {agent}
i have made up {bottle} at {mix}
{bottle} is filled
{bottle} is mixed
filled
i filled {bottle} with water
i topped up {bottle}
can i top up {bottle}
there is {volume} left can i top it up
where do i store {agent}
how do i store {bottle}
where do i keep {agent}
how do i get rid of {agent}
can i pour {agent} down the drain
pour away {bottle}
convert {volume} to mils
convert {volume} to litres
convert {volume} into fluid ounces
how many mils in {volume}
how many millilitres is {volume}
how many teaspoons in a cup
how many pints in a gallon
what is {volume} in mils
what is {volume} in ounces
what is {temperature} in fahrenheit
what does {mix} mean
what is {mix} as a percentage
what is {mix} in percent
is {mix} the same as {mix}
does {mix} mean parts water or parts in all
explain {mix}
i put {volume} of {agent} in {volume} of water how strong is it
i put {volume} in {volume} how strong is that
how strong is {bottle}
how strong is my {agent} now
how strong is {agent} after {duration}
what strength is {bottle}
which syringe should i use
which syringe is best for {volume}
what do i measure {volume} with
how accurate is {measure}
how much solution do i need for {enclosure}
how much mix do i need to spray {enclosure}
how many bottles do i need for {enclosure}
how much solution for all of them
how much do i need for today
when is the next deep clean due
when is {enclosure} due
what is due today
what is due
what needs cleaning today
which one is due next
which enclosure is due
is anything due
is anything overdue
what is on the schedule
which one should i clean first
which order should i do them in
what order do i clean them in
who do i do first
when did i last clean {enclosure}
when was {enclosure} last cleaned
when did i last deep clean {enclosure}
last clean of {enclosure}
i spot cleaned {enclosure}
spot cleaned {enclosure} this morning
spot cleaned all the healthy ones
log a spot clean for {enclosure}
log a water change
fresh water for {enclosure}
changed the water in {enclosure}
how long is {animal} in quarantine
when is {animal} out of quarantine
when does quarantine end
how many days of quarantine
what should i feed him
when did i last feed {animal}
how much do i feed {animal}
{animal} is hungry
he ate two mice
he has not eaten in {duration}
can he eat crickets
how often should i feed {animal}
set the heat lamp
set the heat mat to {temperature}
turn the heat lamp on
turn off the heat mat
what temperature should {enclosure} be
how warm should the tub be
how hot should the basking spot be
is {temperature} too hot for {animal}
what humidity does {animal} need
mist the plants
how long should the uvb be on
when do i change the bulb
he is shedding
{animal} is shedding
she looks poorly
he looks ill
{animal} is not moving
she has a cold
what is wrong with {animal}
she tested positive for {organism}
i saw a mite
i found mites
{animal} tested positive
mark {enclosure} sick
is {organism} contagious
he is out of the tub
he is out of the box
he got out
he escaped
{animal} escaped
{animal} is loose
she is loose in the room
the snake is on the floor
i can not find {animal}
{animal} has got out of the tub
where is {animal}
which tub is {animal} in
who is in the holding tub
how long has {animal} been in the tub
keep her in the tub
can she stay in the tub
it dried
it dried out
it has dried before time
it dried too soon
it dried already
the lid is dry already
it is drying too fast
it did not stay wet
misted it again
misted it again still wet
sprayed it again to keep it wet
kept it topped up
how long will it take to dry
will it stay wet long enough
how long until it dries
how long should i air the room
how long do i air it for
how long with one window
how long do i leave the window open
do i need the window open
should i open a window
it still smells
it still smells of {agent}
i can still smell {agent}
i can smell {agent}
time is up but it still smells
there is a wet patch
no smell now
the smell is gone
are the fumes gone
how do i get rid of the smell
pause
pause {enclosure}
put it on hold
hold on
hang on
wait
wait a minute
give me a minute
leave {enclosure} for now
i have to stop
i will come back to it
i can not finish it today
finish it as a clean
make it a clean only
no time for the wet time
how long do i hold him
how long can he stay out
what do i wear
do i need gloves
do i need a mask
do i need goggles
should i wear gloves for {agent}
what should i open
can i use these tongs on {enclosure}
can i use the same cloth on {enclosure}
can i take the tongs to {enclosure}
can i share tools
how do i clean the water bowl
how do i clean the branches
can i boil the bowl
can i bake the bark
how do i clean cork
can i put hides in the dishwasher
i spilled {agent} on the floor
i spilled {bottle}
{bottle} is leaking
knocked over {bottle}
i do not know what is in {bottle}
the label has come off
why
why {duration}
why that long
why is that
where does that number come from
where did you get that
who says
says who
what is your source
hush
be quiet
stop talking
shut up
stop
slower
slow down
speak up
talk slower
louder
use metric
switch to imperial
change the units
use litres
how are you
hello
hi
good morning
good night
goodbye
bye
thank you
thanks a lot
who are you
what is your name
are you there
are you listening
can you hear me
good job
well done
nice one
i love you
tell me a joke
sing a song
play some music
what is the weather
what time is it
what day is it
set a timer for {duration}
set an alarm for the morning
remind me in {duration}
call the vet
call my mum
send a message
what is the vet 's number
order more {agent}
buy some {agent}
how much does {agent} cost
is {agent} expensive
turn the lights off
open the door
close the window
the doorbell rang
i am hungry
i am tired
i am fed up
i hate this
i need a break
i need a cup of tea
put the kettle on
clean the kitchen
clean the bathroom
clean the fridge
clean the car
wash the dishes
do the laundry
can i use {agent} on my shirt
how much detergent for a wash
how do i clean an oven
what do i use on limescale
how do i unblock a sink
dinner is ready
the kids are home
the dog needs a walk
where did i put the keys
where is {bottle}
where is the syringe
the
and the
so i was
how much
how long
how do i
can i
what about
if you could
the other
with the
i think that
when the
is the
it is a
for the
blah blah
la la la
asdf
qwerty zxcv
one two three
testing testing
testing one two
um so yeah
nothing
never mind
no idea
whatever
who knows
i do not know
maybe
i am not sure
i forgot
lovely
damn
oh no
oops
what a mess
this is disgusting
that stinks
it smells funny
look at that
come here
good boy
who is a good girl
get off
let go
leave that alone
mind your fingers
is it raining
what is the capital of france
how tall is a giraffe
what is seven times eight
how old are you
which team won
i sprayed the plants
i washed my hands
i washed the car
my hands are dry
the towel is wet
the sink is full
fill the sink
run the tap
boil some water
is the water warm enough
how warm should the water be
how do i make a shelter
how do i build a vivarium
how big should {enclosure} be
what size tank for {animal}
how long do {animal} live
how old is {animal}
how much does {animal} weigh
is {animal} male or female
what is {animal} called
can {animal} live with another
can i handle {animal}
can i pick her up
should i wake him
is {animal} asleep
is he happy
is {animal} eating
can he have a bath
start the car
start the music
start the washing machine
start a timer
next song
next door
next week
next tuesday
i am done with work
i am done for the day
done shopping
it is dry in here
the air is dry
it is raining outside so the grass is wet
i am back
i am back from the shop
welcome back
put it back on the shelf
put the lid back
can i go back to bed
can we go home
how long is the drive
how long is the film
how long does pasta take
how long till dinner
how much time do i spend on this
mix some batter
how much flour for the cake
how much salt in the pasta
how much milk
how much is the electricity
add {agent} to the shopping list
add {enclosure} to the list
add a new enclosure
rename {enclosure}
rename {bottle}
delete {enclosure}
i got a new bottle
i bought a new {agent}
i have a new {animal}
set up my shelf
change the label
print labels
show the log
export the log
what did i do yesterday
how many enclosures do i have
list my bottles
what bottles do i have
what is on the shelf
how big is {bottle}
which is the biggest bottle
is {bottle} empty
{bottle} is empty
is {agent} flammable
is {agent} poisonous
is {agent} an acid
what is {agent} made of
what is a quat
what is {organism}
how do you catch {organism}
can people catch {organism}
is this thing on
what is going to happen
is it working
does it work
are you sure
really
that can not be right
you are wrong
i do not believe you
seriously
what do you think
what would you do
any news
is it bad to skip a step
is it bad if i forget to wash
start the film
start the recorder
next film
next chapter please
can you help my brother
can they help with the cleaning
dry sense of humour
dry run
lather rinse and repeat
wash and go
it is all clear now
all clear here
can they go back to school
can he go back to work
can we go back inside
{agent}
{stock}
{bottle}
{enclosure}
{animal}
{volume}
{mix}
{number}
{duration}
{organism}
{measure}
{agent} {agent} {agent}
the one in {bottle}
{enclosure} please
{bottle} please
{volume} of water
{volume} {volume}
{number} {number}
anything else
so what
""".strip().splitlines()
    if line.strip()
)
