"""Lists of plain words that the reading turns on. Words of one question belong to its file in intents/."""

from __future__ import annotations


def words_of(words: str) -> frozenset[str]:
    """The words of a text, as a set."""
    return frozenset(words.split())


# Words before "bottle" or "tank" that are no name.
ORDINARY = words_of(
    """
    a about all an and animal animals another any around as at back ball big bleach both can clean cleaned cleaning
    dilute dirty do done dry each empty entire every feeding fill filled filling first for from full gecko's glass
    good half her his holding hospital how i in inside into is it its labeled labelled large last litre little long
    made mist mix mixed ml much my need new next no of off old on one only or other our out over per plastic put
    python's quarantine ready right same second size sized small snake snake's soak spare spray start that the their
    these third this those three to travel trigger two under up use waiting want water wet what which whole with
    wrong your
    """
)

# Colours, by which bottles are told apart.
COLOURS = words_of(
    """
    amber beige black blue bronze brown checked clear copper coral cream crimson cyan gold golden gray green grey
    indigo ivory khaki lavender lilac lime magenta maroon mauve navy olive orange peach pink purple red scarlet
    silver spotted striped tan teal turquoise violet white yellow
    """
)

# Last words of products whose content isn't known: "toilet cleaner".
PRODUCT_ENDS = words_of(
    """
    cleaner cleaners cleanser descaler disinfectant freshener polish powder remover tablets
    """
)

# Words known beside those of the phrasings, so that none is taken for a slip of another.
EVERYDAY = words_of(
    """
    about abscess accident accidentally added after again aired airing almost always another applied bathe because
    been before bench being best better blister both brow bottle bottles breathe breathing
    burn burning burns burnt celsius
    choking clean cleared coiled cold cork coughing could cup cups curled damp day days degrees dirty dizzy door drank
    dried drier drunk dryer
    ballooning bubbling bulging fizz fizzed fizzes fizzing foam foaming hiss hissing smoke smoking steam steaming
    swollen
    drying each emptied empty even evening every eye eyes face feeding feel feels finished first floor
    fluid food fresh from full fumes gallon gallons gave give glass gloves going good hand hands have haven't heat
    high hold holding hosed hour hours house humidity infection inhaled into just keep kept kitchen know lamp large
    last leave left licked light lights like liter liters litre litres little long look looks made make many mask
    maybe metal millilitre millilitres million minutes misted mixed month more morning most mouth moved much nearly
    need never next only opened other ounce ounces over paper parts percent pinched pint pints plastic pointed
    poured prayed praying printed quart quarts raised raising really returned right rinsed rinsing rising room safe
    scrubbed second seconds short should skin small soak some spilled spilt splash splashed sprained spray sprayed
    spraying springs squirted still sting stinging stings strayed sure swallow swallowed table tablespoon
    tablespoons take tank teaspoon teaspoons temperature than their them then there think throat time tipped today
    together tomorrow took towel tub under very waited want warm washed washer washes washing watched water week wet
    what when where which while wifi window windows wiped wished with wood would wound wrinkled wrong year your
    """
)

# Words without one of which a likeness to a splash is none.
HURT = words_of(
    """
    breathe breathing burn burning burns choking cough coughing dizzy drank eye eyes face fumes hand hands inhaled
    mouth ouch ow poisoned sick skin splash splashed sting stinging stings swallow swallowed throat
    """
)

# Words that a short answer may hold beside names and amounts.
CONNECTING = words_of(
    """
    's a about all an and at be bottle box by colour concentrate do for from go him how i in instead into is it just
    like make mean meant mix ml my no not now number of ok on one ones other please put rather ratio right said say
    should size sorry spray stock tank that the them then there this to together total tub um up use using wait want
    was what with would yes {number}
    """
)

# Words that a short answer to a question about the room's air may hold as well.
ROOM_AIR = words_of(
    """
    air airflow both changes closed degrees door doors draught draughty everything factor fan fans hour humidity if
    in mixing more no nothing on open opened percent second shut still three two window windows
    """
)

# Words without one of which hardly anything is asked of an airing.
AIRS = words_of(
    """
    air aired airing airs breeze door doors draught fan fans fume fumes open opened reek room shut smell smells stink
    vent vented ventilate ventilated ventilating ventilation vents window windows
    """
)

# Words without one of which a likeness to sharing a tool is none.
SHARED = words_of(
    """
    {item}
    tongs tong tweezers forceps gloves glove cloth cloths rag rags sponge brush brushes scoop scoops hook hooks net nets
    bowl bowls dish hide branch tub bucket scissors tool tools equipment kit gear share sharing same stuff things
    instruments spatula shovel
    """
)

# What a surface is made of, and what is cleaned beside the enclosure: one word each when a question is matched. Which
# one it is, the slots read from the facts.
MATERIALS = words_of(
    """
    acrylic aluminium aluminum brass ceramic chipboard copper cork cotton fabric foam glass grout iron laminate mdf
    melamine mesh metal perspex plastic plexi plexiglass plywood polycarbonate polypropylene polystyrene polythene pvc
    rock rocks rubber sealant silicone slate stainless steel stone stones terracotta tile tiles timber vinyl wood wooden
    """
)
ITEMS = words_of(
    """
    bark blanket bowl bowls branch branches brush brushes bucket cave caves cloth cloths crock decor decorations dish
    dishes driftwood fleece fleeces forceps furniture grapevine hammock hammocks hide hides ledge liner liners log logs
    mop net nets ornament ornaments perch perches plants pothos rag rags scissors scoop scoops scraper shovel spatula
    sponge sponges squeegee sticks tongs toothbrush towel towels tweezers vine
    """
)

# Words without one of which a likeness to asking who waits where is none.
ASKS_WHO = words_of(
    "who where which what how since is are list tubs out waiting did has have wait anyone anybody tub's"
)
