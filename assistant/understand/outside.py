"""What is not answered: lines near to the questions or far from them; a likeness to one of these counts against.

One line each, in the form that phrasings have. A question that is taken up later takes its lines out of here.
"""

from __future__ import annotations

LINES: tuple[str, ...] = tuple(
    line.strip()
    for line in """
how old is my {agent}
what is on the schedule
which one should i clean first
who do i do first
log a water change
changed the water in {enclosure}
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
can she stay in the tub
it is drying too fast
will it stay wet long enough
how long until it dries
do i need the window open
should i open a window
are the fumes gone
how do i get rid of the smell
hold on
hang on
wait
wait a minute
give me a minute
how long do i hold him
how long can he stay out
do i need goggles
what should i open
says who
speak up
louder
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
how many enclosures do i have
what is on the shelf
how big is {bottle}
which is the biggest bottle
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
how many crickets does a {animal} eat {duration}
when did {enclosure} last eat
should i dust the worms with calcium today
thaw {number} mice for {enclosure}
she refused her rat again
how long do i thaw a frozen mouse in warm water
can {animal} have dandelion leaves
{enclosure} only took {number} roaches
what size prey for a young {animal}
is it too soon to feed him after he is been moved
gut load the crickets
put hoppers on the shopping list
does a {animal} need live food every week
do i take the uneaten food out at night
vitamin powder , how often
what wattage basking bulb for the {enclosure}
when did i last change the uv tube
the heat mat 's stopped working
set the thermostat to {number}
turn the lights off in the garden room
is {number} degrees too hot for a {animal} hide
humidity 's down to {number} in the {enclosure}
how far should the lamp be from the branch
the ceramic heater is flickering
how long do uv lamps last
mist the plants at {number}
my probe says {number} but the gun says {number}
which timer plug runs the night bulb
can i dim the basking lamp
{enclosure} 's gone blue , she must be about to shed
there is a bit of shed stuck on his tail tip
how long between sheds for a {animal}
when can i handle the new {animal}
how do i pick up a nervous {animal}
she dropped her tail
is he old enough to breed
how do you tell a male from a female
how much should a {animal} weigh at {duration}
weighed {enclosure} , {number} grams
he shed in one piece this morning
what is the right size hide for a {animal}
{enclosure} 's breathing with her mouth open
he is got runny poo again
her gums look a bit red , is that mouth rot
what are the signs of a respiratory infection
i just saw a {organism} on the {animal}
how do i get a stool sample to the lab
what does a fungal patch look like
he is been lethargic since tuesday
is metabolic bone disease curable
there is a tick on her chin
book the vet for friday
what is a normal temperature for a sick {animal}
do {animal} carry {organism}
mark the {enclosure} as healthy again
put the towels on at {number}
how much powder for a full load of washing
did i hang the washing out
can these cloths go in the tumble dryer
my jeans have {agent} spots , can i dye them
is the washing machine finished
how do i get the smell out of a gym bag
iron my work shirt
how much {agent} goes in a pickle brine
how long do i boil an egg
add fresh {enclosure} to the pasta at the end
{volume} of oil in millilitres for the cake
is this chicken still good to eat
descale the kettle
a pinch of {enclosure} and some {enclosure} berries for the stew
what temperature for roast potatoes
the dishwasher 's leaking
swap {stock} for lemon juice in a dressing
how do i unblock the kitchen sink
preheat the oven to {number}
where should i keep the concentrate
how many tablespoons are in {volume}
is {agent} any good against mould
do i need goggles for this
i kept it wet the whole time with another spray over
just finish this one as a clean
how long before this film dries by itself
there is still a whiff of {agent} in the {enclosure}
i knocked the {agent} over , it is all over the floor
what is the weather tomorrow
play some jazz
what is {number} times {number}
who won the match last night
set an alarm for half {number}
how far is the moon
translate good morning into spanish
what is the capital of peru
call my sister
read me the news
how do i change a bike tyre
any good films on tonight
text sam i will be late
what time does the chemist close
square root of {number}
book a table for {number} on saturday
is there traffic on the ring road
turn the volume up
how do i renew my passport
write a poem about rain
what is the best way to {bottle} piano
how many days till the holidays
who invented the telescope
what is my bank balance
add milk to the list
good films about {animal}
so if i the uh
and then for the
bottle
kshhh tap tap
the what is it called the
in the um with the
mm wet cold floor mat
sss the lid of the
to the at the one with
i was just going to
no wait what was i
red red {enclosure}
on the left hand side of
degrees of the of the
that thing with the thing
bu bu bu lee
who is a good girl then
come here you little monster
stop wriggling
aw look at your face
do not you dare bite me
hello {enclosure} did you miss me
shush now , nearly over
you are a proper fatty are not you
out you come sweetheart
no climbing on my shoulder
you have made a right mess in here mate
look at that tongue go
. . .
um
hmm hmm
?
er
ah
-
forgot to rinse the soap off
let me wipe it down first
once i have rinsed it i will tell you
need to rinse the {bottle} out
going to rinse out the {bottle}
what if i rinsed it early
hold on {duration}
hold that thought
can i hold her while it dries
how do i hold a {animal} properly
hang on , hold it
get hold of the vet
she is got out !
leave him where he is
{enclosure} 's climbing out of the box
spray the eye level shelf
put the eye hooks back on the lid
the eyelash {animal} 's tank is due
black eyed peas for dinner
her eyes are clear so the shed 's close
there is shed skin stuck to the glass
{animal} skin for the classroom display
the bin bag has a thin skin
burn in the lamp
how many hours do i burn a new uv tube in for
this candle burns too fast
the bulb 's burnt out
burn a cd of the sounds
i have burned through half the {stock}
the toast is burning
is the splash guard washable
splash of milk in my coffee
a splash of colour for the background
the nozzle only squirts , it will not spray
does the fan splash water on the rack
i will have a drink and a bite to eat
hard to swallow , that price
she drinks more when it is hot
he bit me last week , just a nip , it is healed
does a drain swallow that much water
word of mouth says {agent} is best
cough sweets on the list
sting nettles in the garden
can i take the mask off to breathe while it dries
wound the house back up
cut the liner to size
the wood 's rotting in the corner
bath time for the kids
i have soaked the branch in a bath
the dressing gown 's in the wash
where is the first aid kit kept
put the bandage box back on the shelf
he drank from the bowl
she is drinking from the water dish
dried flowers for the table
dried herbs for the stew
dried mealworms for {animal}
{agent} is on the list
{agent} is on offer
the spray is on the shelf
took {enclosure} out for a cuddle
took {animal} out of quarantine
mark that on the calendar
tick off the list
how many bottles for everything today
how many teaspoons in {volume}
does {agent} go off
just call it a clean , not a disinfection
will it stay wet the whole time in this heat
the corner 's still damp
which one should i do first
changed everyone 's water this morning
where should i keep the {agent}
how long has {enclosure} been waiting in there
where does that figure come from
use ounces from now on
what temperature should the hot spot be
how often do i feed a {animal}
set a timer for the pasta
what is the weather doing
did the postman come
i am off to make {volume} of tea
good girl , come on , mind your tail
can you order more {agent}
hello there
thanks , that is all
is the washing up done
what should i name the new {animal}
my back 's killing me
rinse the rice and put it on
how do i get red wine out of a carpet
she shed last night , all in one piece
what humidity for a {animal}
how much water does a {animal} drink
how much do i weigh out for the {animal} diet powder
how much {agent} for my white shirts
can i dye my hair after {agent}
is {agent} nice on chips
the tank on the car is empty
tomorrow i will do the {enclosure} with {agent}
do i have to rinse out the {bottle} first
need to rinse out the {bottle}
forget it
delete everything
erase it all
clear the whole history
wipe the log
can i go home
when can i go home
how much {agent} do i own
how long is left of the match
how long left until dinner
how do i clean the kitchen sink
how do i clean the bathroom sink
how do i clean the oven
how do i clean the windows of the house
which sink should i buy
what should i wear tonight
what should i wear to the party
do i need a coat
why is the sky blue
why is he hiding
why is he not eating
why is my snake pale
what is the best snake for beginners
what is the best heat lamp
what kills weeds
what gets rid of ants
does he like heat
is the heat mat ok on wood
can i use wood in the tank
can i put acrylic doors on it
is cork ok for him
does the mesh let enough air in
use {agent} in his tub
use {agent} in his tank
put {agent} in his tub
use {bottle} in his box
what do bearded dragons eat
how often does {animal} need feeding
how many crickets for {animal}
{animal} has not eaten for a week
when did {animal} last eat
how warm should {enclosure} be
what is the temperature in {enclosure}
is {enclosure} too hot
does {animal} need a heat lamp
the heat mat is not working
the bulb has gone in {enclosure}
is {animal} shedding
{animal} has a bad shed
{animal} keeps sneezing
{animal} looks thin
how do i sex {animal}
how long does {animal} live
how big does {animal} get
can {animal} and {animal} live together
can two of them live together
can they share a tank
can i put two in one tub
what substrate should i use
which bedding is best
should i use sand
where can i buy a bigger tank
how much is a new tank
what thermostat do i need
turn the heat up
set the temperature to {temperature}
when do they breed
how do i hatch eggs
do they need company
do they get lonely
what is a good name for {animal}
how do i pick {animal} up
how do i tame {animal}
does {animal} bite
that bit hurt
ow he scratched me
stop biting
weigh {animal}
{animal} weighs {number} grams
book the vet
when is the vet appointment
ring the vet for me
how much does a vet cost
how much {agent} for a swimming pool
how much {agent} in a hot tub
how much chlorine for the pool
how much {agent} for pickles
how much {agent} in a salad
how much {agent} in the washing machine
how much {agent} for a load of whites
{agent} for my laundry
can i use {agent} on my hair
can i wash my hair with {agent}
can i cook with {agent}
can i drink {agent}
does {agent} kill weeds
does {agent} kill slugs
does {agent} kill ants in the kitchen
will {agent} unblock a drain
can i clean the car with {agent}
can i use {agent} on my kitchen worktop
can i use {agent} on the toilet
how do i clean the fridge
clean the windows of the house
mop the kitchen floor
hoover the stairs
do the dishes
wash my jeans
rinse the salad
dry the dishes
dry the laundry
air the bedroom
air the bedding
wipe my nose
wipe the kitchen table
spray the plants
mist the ferns
open the front door
close the curtains
lock the door
switch the light on
turn the radio off
turn the music down
play a song
pause the music
stop the music
stop the car
start the dishwasher
next track please
skip this song
skip the advert
repeat the song
repeat the last song
undo my jacket
help my son with homework
help with my taxes
set a timer for the eggs
wake me at seven
remind me to call mum
remind me to buy milk
add milk to the shopping list
buy more paper towels
order a pizza
order more crickets
order new bulbs
what is the date today
what is the weather like
will it rain
how cold is it outside
who won the game
what is on tv
who is the president
what is the capital of spain
how tall is the tower
how far is the shop
when does the shop close
how do i get to the station
call dad
text my sister
read my email
any messages
what is the news
who made you
are you real
do you like snakes
thank you very much
cheers
see you later
i hate this job
this is boring
i need a drink
i need the toilet
my back is killing me
it is cold in here
it is too dark
i can not see a thing
where are my glasses
where is my phone
where did i put the scissors
the phone is ringing
someone is at the door
there is someone at the door
one moment
one second
give me a second
hold this
hold still
hold on a minute
be quiet you
not talking to you
i was not talking to you
i am talking to the dog
talking to my wife
mind the step
pass me the cloth
pass the tape
put that down
look at you
come on then
good girl
you are gorgeous
stop moving
sit still
get down
leave it alone
what is nine times seven
what is {number} plus {number}
what is {mix} of eighty
spell {agent}
how do you spell {agent}
translate that
say it in french
take a note
take a picture
what is the dose of aspirin
what is the dose for a headache
how do i get a stain out of my shirt
how do i get the smell out of my car
how long does chicken take
bake a cake at {temperature}
bake it for {duration}
how many calories are in bread
what is for dinner
how do i fix a leak
how do i build a shelf
how do i paint a wall
how do i change a tyre
how do i change the bulb
the cat has been sick
feed the dog
walk the dog
did you feed the cat
how do i bath the dog
what ph should the aquarium be
how do i cycle a fish tank
clean the fish tank filter
do fish sleep
how much does it cost
how much was that
how much is left in my account
how many days until christmas
how many people live here
what is the longest river
which way is north
why do snakes shed
why is she so slow
why am i doing this
it does not matter
i do not care
let me think
let me see
i wonder
and so on
and then i was like
so anyway
as i was saying
you know what i mean
blah blah blah
uh huh
testing one two three
of the and
with a
in the
to be
he wants out
{animal} wants out
he wants to come out
let him out
hand me the {agent}
pass the {agent}
get me the {agent}
hand me {bottle}
hand me the {item}
what strength for his tank
what strength for {enclosure}
""".strip().splitlines()
    if line.strip()
)
