"""Sentences for the recogniser that stand in no file of intents/, over the household of the demo."""

from __future__ import annotations

TEXTS: tuple[str, ...] = tuple(
    line.strip()
    for line in """
how much bleach goes in the yellow bottle at one in thirty two
bleach for the yellow bottle at one in fifteen
bleach for the yellow bottle at one in fifty
how much chlorhexidine do i put in the pink bottle for one in forty
i want seven hundred fifty mils of bleach at one to ten
what's the bleach for half a litre at one in thirty
what's the bleach for half a litre at one in thirteen
one in sixteen bleach for the clear bottle please
one in sixty bleach for the clear bottle please
how many mils of pink concentrate in five hundred mils at one to forty
how many mils of pink concentrate in five hundred mils at one to fourteen
need point five percent bleach in the lemon bottle
how much plain bleach to make two litres at five hundred parts per million
how much plain bleach for the yellow bottle at one thousand parts per million
a litre and a half of bleach one in thirty two
bleach one in ninety for a quart
bleach one in nineteen for a quart
tell me how much vinegar for the green bottle at one to one
seven fifty mils at one in seventy how much chlorhexidine
seven fifty mils at one in seventeen how much chlorhexidine
how much bleach for three litres at one in eighty
how much bleach for three litres at one in eighteen
point nine percent bleach in the yellow bottle
i've got two hundred and fifty mils to fill at one in twenty five
how much do i need for one gallon at one to sixty four
what goes in the pink bottle for two percent
start on the river tank with bleach
i'm going to start the desert box
let's begin the hospital tub with the pink bottle
what's next for river tank
okay what do i do now
what comes after that for the window cage
river tank is washed
i've rinsed the desert box
sprayed the window cage
hospital tub is dry
i have not rinsed it yet
moved the corn snake out
rinsed and dried river tank
rack tub seven is sprayed
where am i with the desert box
what's left to do on rack tub seven
how long is left on the river tank
how many minutes are left
is the time up yet on juniper
how long does bleach have to stay wet
how long must chlorhexidine stay wet for salmonella
can the leopard gecko go back in
is river tank ready for the snake
may i put pepper back now
can she go back
what can you do for me
say that one more time
yes that's right
no that's wrong
please undo that
i got bleach in my eye
the gecko has vinegar on his skin
can i put chlorhexidine on his wound
can i mix bleach with vinegar
is it okay to use rubbing alcohol after bleach
how much bleach for five hundred mils at one in forty
make me one litre at one in sixteen
how much vinegar for two hundred mils at one to four
""".splitlines()
    if line.strip()
)
