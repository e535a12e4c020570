"""Common words of English as spelled, so that none of them is taken for a slip of a word of the questions.

No word is here for its meaning. The usual endings are taken off a word before it is looked up.
"""

from __future__ import annotations

from collections.abc import Iterator

from assistant.understand.text.known_words import words_of

_STEM = 3
"""Letters of the shortest word that is looked for under an ending."""
_VERBS = ("ed", "er", "ers", "ing", "ings")


def spelled_right(word: str) -> bool:
    """Whether a word in small letters is common English, or is made of such a word with a usual ending.

    >>> spelled_right("batteries"), spelled_right("stopping"), spelled_right("sprayd")
    (True, True, False)
    """
    return word in _WORDS or any(stem in _WORDS for stem in _stems(word))


def _stems(word: str) -> Iterator[str]:
    """The words that a word may be made of: "baked" of "bak" or "bake", "stopping" of "stopp" or "stop"."""
    for ending in ("s", "es", "d", "r", "ly", *_VERBS):
        stem = word.removesuffix(ending)
        if stem == word or len(stem) < _STEM or (ending in ("d", "r") and stem[-1] != "e"):
            continue
        yield stem
        if ending in _VERBS:
            yield stem + "e"
            if stem[-1] == stem[-2]:
                yield stem[:-1]
        if stem[-1] == "i":
            yield stem[:-1] + "y"


_WORDS = words_of(
    """
    able abort about abscess absolutely accent accept accident accurate acetic ache aches aching acid acquire across
    acrylic actually add adenovirus adult adulthood affected affects affirmative afraid afresh aft afternoon
    afterthought again against age aging ago agree ahead ahh aid aimed aiming aims air airline airport alarm alcohol
    alcoholic all allow almost along alot already alright also alter altogether aluminium aluminum always american
    ammonia ammonium amount ancient and angle angles animal annoy another answer antibiotic anxious any anybody
    anyhow anyone anything anyway anywhere apart appalled apparently appeal appeals apple apples apply appointment
    appreciate approximately aquarium are area arm around arrival arrive ask asleep asthma ate attach attack
    attacked attacks attic aunt authority autumn avoided avoids awake aware away awful aye baby back background
    backpack backward bacterial bad bag bake ball ballet banana bandage bang banned banning bare bark barn barrel
    base bashes basil bask bass batch bath bathe bathroom batter battered batteries battering battle beach beak bean
    bear beard bearing bears beast beaten beats because become bed bedroom bedside bedtime been beep before beggar
    begin behind being believed believes belling bells belly below bench bending bent beside best bets better
    bettered bettering betting between beware biases bidding big bills bin binding binds birds birth birthday
    biscuit bit bite bitten black blade blah blame blank blast bleach bleed bless blew blink blood bloody blow
    blowing blown blows blue boat boats body boil bolt bomb bone booing book bookies boom boost border bore boss bot
    both bothered bothering bottle bottom bought bounce bowing bowl box boy boyhood brain branch brand bread break
    breakable breakdown breakfast breath breathe breed brim bring british broke broth brotherly brought brown brush
    bubble buck bucket budding buddy bug build built bulb bull bullseye burden buried buries burn burnt burst bury
    bus bush busied business bust but button buy byte cable cactus cage cake calcium call calm calorie came camera
    camps can canary cancel candle cane cannot cant cap cape capital caprice capsize car care carefully careless
    cargo carpet carriage carrier carrot carry case casserole casting cat catch catering catfish caught cause causes
    cellar celsius centimetre centre ceramic certainly chain chalk chameleon change chap chapter chart chase chats
    chatting cheap cheapest cheat cheats check checkup cheek cheeky cheer cheered cheering chemical chest chicken
    child chilies chlorine choke choosing chopping christmas chuck circles claimed class classroom clean cleanest
    clear clearest click client climb clock close closet cloth cloud cloudy clove club clue clumsy coach coarse
    coast coat coconut coding coffee coin cold collapse collect college colon colour combat combine come comeback
    command common comparing compete complete complex compost compute concentrate concentration confusing confusion
    conservatory constant contact contacts contagious contain content continue contract contrast convert convince
    cooing cook cookies cool cope coped copes copied coping copper copy cork corn cornered cornering correct cost
    cotton cough could count countered countering counties courier course courses courts cousin cove coverage
    covered covering cows crack craft cramps crap crawl crazy cream creature creep crest crested crib cricket cried
    criteria cross crosses cruise crypto cryptosporidium cub cube cubic cuing cup cupboard cupboards cures currency
    curry curse curtain curtains custard cut cute cycle cylinder dab dagger dairy damage damp danger dangerous dare
    dark dart dashes date daughter day daylight daytime dead deal dear death decant decay deep default definitely
    defrost degree delete delicate delighted delivering delivery delta denied desert dessert detergent diary did die
    difference different digs dilute dine dining dinner dinning dip dirt disagree disappear disaster disease dish
    dishonest dishwasher dishwashing disinfect disinfectant disinfection display dispose distance distinct distract
    ditto dive dived divide divided division dizzy doctor doctors doe dog doing dole done donned donning dons door
    doorbell doormat doorstep dose dot dote double doubtless dough down downgrade downstairs dozen dozens drag
    dragon drain drank draught draw drawer drawers drawn dread dreadful dream dreamt dress dressing drift driftwood
    drill drink drinkable drip drive driveway drool drop drove drown drowns drunk drunken dry dude due dump dunning
    dunno duration during dust duty dwell each eagerly ear earache earlier earns easing east easterly easy eat eaten
    educating effect effective egg eight eighty elbow electric eleven else emerge empty enclose enclosure encoded
    end english enough ensure enter entered entering entirely entirety entry envelope erase error escape escapee
    essay evaporate even event events ever every everybody everyone everything everywhere evidence ewe exact example
    except exception exempt exotic expire explain extra eye eyeball eyelash eyesore fabric face fad fade fahrenheit
    failure faint faintest fairer fairy faith fake fall fallen fame fan fancy far faraway farm farmer fast fat
    father fathers fatten fattest fatty faucet fault favour favourite feared fed feeble feed feel fees feet fell
    fella felt female fence fetch fetched fever few fewest fibre fibres fiddle fiddly field fierce fifteen fifty
    fight figure filing fill fillies film filter final finally finals find fine finger finish fire fireplace
    fireside firewood firework fireworks firmly first fish fit fittest five flank flash flashlight flask flaw fleece
    flesh float floor flow fluid flush fluster foam follow font food fool fooling foot football for forage force
    forest forever forgave forget forgive forgiven forgoing forgot forgotten form format forming forth fortune forty
    forum foul found four fourth fox fraction frame free freeze freezer french fresh fretting friday fridge fried
    friend frighten fringe frog from front frown frozen frying fuel fulfil full fume fungal fungus funnel funny
    further furthered furthering future gain gal gallon games garage garden gargoyle garlic gas gasp gates gave gear
    gecko gene gentle gentleman genuinely get getaway gimme girl girlfriend give given glass glasses glisten glove
    goals goat god goes goggle going goldfish gone gonna good goodnight gosh got gotta gown grab grace grade grades
    grain gram granddad granddaughter grandson grant grasp grave great green greenhouse grill groan growing grown
    grumpy guard guess guest guests gum gut guttered guttering guy habit had hafta hair hairy half hallway halogen
    halve halves hammock hamster hand handle handy hang happen happy hard harden hardy haring harm harmless has
    hatch hate have havens head headache heal healthy hear heart heat heaven heaving heavy hedge heel height
    helicopter hell hello help hence her here heroes hey hid hidden hide high highlight him himself hire hires his
    hisses hit hither hmm hob hobby hognose hold hole home homemade homework honestly honour hood hook hoped
    hopeless hopes hoping horrible horse horses hose hospital hot hour house household households housekeeper how
    however huh humidity hundred hunger hungry hunt hunting hunts hurt husband hush hydrogen hypothetically ice
    icing icons idea ideal ill image imagine imp imperial inaccurate inch income incoming incomplete incubate
    incubator indoor ineffective infant infect infection inject injure injured injuries injury insect inside
    insisted instead instruct instructor insult insulted insurance intern into invest iodine iron irritate island
    islands isolation issuing its itself january jaw jeans job join joint joke jug july jump june juniper junk just
    keen keep kept kettle kick kid kill kilo kind kinda kiss kit kitchen knee knife knitted knitting knock know
    knowingly lab label labour lacked lacks lad ladder lady laid lake lamb lambs lamp land landing landlord lane
    laser lasers last lat late laughter laundry law lawn laying layout lays lead leak leans leap learn learnt least
    leather leave ledge lee leeway left leftover leg legend lemon lemonade lend length lens lenses lent leopard less
    lesson lessons lest let letdown level liable lick lid lie life lifetime light like lilies lime limp line linen
    linked linking links lion lip liquid list lit lite literally littered littering little live lizard load loans
    lock locust lodger loft log lol long loo look loops loose lose loss losses lost lot love low luck lump lunatic
    lunch lung lunge lust machine made mails maize make male man manage managed manager mandate mango manhole
    mankind manor many mapped march mark markedly markets mask mass mat match mate matt matte mattered mattress may
    maybe mayor meal mean meant measure measurement meat meet melamine mends mere merely mermaid mesh mess messy
    metal metre metric microwave middle might mighty migraine mil mildly mile milk milky mill milliliter millilitre
    million min minded minding minds mint minute misled miss missed misses mist mistake mistaken mistook misuse mite
    mix moan mock modest moment momentum monday money monster month mood moon mop more morn mos mosses most moth
    mother mothering motherly motor motors mould mouldy mouse mouth mouthful move movement movements movie movies
    movingly mower much muck muddle mum mummy music musing must mute myself mystery nagged nagging nah nail nails
    name nasty naught naughty near nearby neat necessary neck need needles negative neighbour neither nephew nerve
    neutral neutralise neutralize
    nerves nervous nested nettle never new newcomer newspaper next nice nicest niece night nine ninety nip nite
    nobody noise noisy none noodle noon nope nor normal nose not note notebook nothing notices nouns november novice
    now nozzle numb numbered numbering nurse nurses objection occupant off offend offered offering offhand office
    offload offset often okay old once one ongoing onion onions online only onset onto oops open operation option
    oral orange orchid order ordered ordering orderly ordinary organ organise other otherwise ought ounce our out
    outbreak outcome outdoor outfit outgoing outlaw outlet outline outlook outpost output outset outside outstanding
    outta oven over overall overdid overdo overdose overdue overflow overhead overlook overlooked overnight overtake
    overtime owing own pacing pack packet pain painful painless paint pair pan panel panic panicked panicking pant
    pantry pap papered papering paperwork pardon parent paring park parrot part partial partially particular partner
    party pas passes password past pasta paste patch patchy patient patio pause pea peace peel peer pending people
    pepper per percent percentage perfume perish permitted permitting peroxide person pest pet phew phone pick
    pickle picture piece pillow pine pink pinkie pint pipe pitting place plain plan plane plant plaster plastic play
    playground pleas please pleasure plexiglass plotting plus plywood poet point poisoning poke polish poll
    polypropylene pond ponder ponies pooh pool poop poor poorer poorly pop popcorn porch ports posh posing positive
    possibilities possible post pot potato potatoes pothole pounds pour powder power powered powering practical
    practically pray precious prefer preferably pregnant prepare press pretend pretty prey price prime probable
    probably probe problem proceed produce producing product project projects promise prone prop properly property
    propose prospect protection protective protest proud provision prune pseudomonas pudding puddle pull pump punch
    pupil pupils pure purely pursue push put putrid putt pvc python quantity quarantine quart quarterly quaternary
    question questionable quick quiet quite quote quotes rabbit racing rack radiator radio rag rain ran random rang
    ranks rants rarest rat rate rather ratio raw reach react read ready real realise reason reasonable recall
    recalled recalling receptionist recipe reckon recommend record red redhead reek refill refrigerator refund
    regain regular rehome related relay rely remain remainder remarking remember remind remove repeat replaced
    replies reptile require reset resin resist resort respirator rest result retain return revise rice rich rid ride
    right rind ring rinse riot ripped risen rising risk rite river roach road roast robot rock roll roman room
    roommate root rose rot rotate rotor rotten rough round rove royal rub rubbish ruin rule run runaway rundown rune
    runny runway rush rust sack sacks safe safety said sake salad salmonella same sampling sand sanitize sank sat
    saturday saucepan savannah save saw sawdust say scale scans scar scare scarlet scattered scene school scone
    scoop scores scrap scrape scratch scratchy screaming screen scrub seal seam search seat sec second secondary
    secure see seeking seeks seem seemingly seen selecting sell sense sensible sentence separate september septic
    sequence server set setback settle seven seventeen sex shake shaken shall shallow share sharp sharpen she shed
    shedding sheds sheep sheet shelf shells shied shies shift shin shine shipped shirt shocking shocks shoe shoo
    shoot shop shoring short shortened shot should shouldered shouldering shout show showered showering shown shrunk
    shut shutdown sick side sigh sight sighted sign silence silicone silly sin since sine sing single sinister sink
    sir sister sit site situated situation six sixteen sixty size skiing skill skilled skin skip slash slate slave
    sleep sleeve slides sliding slight slim slip sloppy slow slug small smallest smash smell smiles smoke snack
    snake sneak sneeze sniff snow soak soap soapy social sock socket sockets sodium sofa soft soften soil sold
    soldier sole soles solid solution solved some somebody someone something sometime somewhat somewhere son song
    soon soonest sore sorry sort sound soup source souvenir space spare speak speck speed spell spelt spider spill
    spillage spilt spirit spite splash split spoil spoilt spoke sponge spore spot spotless spray spread spreadsheet
    spring springs sprung spur square squeak squirt stable stack stain stainless stair staircase stake stale stamp
    stand standard star stare stars start startle startled starve starved stash state station statue status stay
    steady steam steel step sterile stew stick still sting stink stinky stirs stock stomach stone stood stop
    stopwatch store storm story stove straight strawberries stray streak stream street strength stressful stretch
    strike string strings stroke strong stubborn stuck student students study stuff stunt stupid substrate such suck
    suffers suffice suggest suing suit suite suited sulk sum sun sunburn sunday sundown sunk sunset sup support
    suppose supposedly sure surface swab swallow swamp swap swear sweat sweeping sweet sweetheart sweets swig
    swimming swims switch swollen swore sworn syringe tab tabby tablespoon tablets tack tackle tail tailor take
    taken tale talent talk tank tap taste tasteless tea teach teaches teacup teapot tearing tears teaspoon teenage
    teenager teeth tegu tell tellingly telly temp temperature temple tempt tempts ten tenant tenor tenth terminal
    test text textbook than thank that thaw the theatre their them theme themes then theory there thereby therefore
    thermostat these they thick thin thing think third thirsty thirty this tho those thought thread threat threats
    three thrill throat through throw thru thump thursday tick ticket tickets tidied tidy ties tiger tight til tile
    till time tin tingle tiny tip tiptoe tire title titles toast toaster today toddle toe together toilet token told
    tomorrow ton tone tong tongue tonight too took tool top topic torch tore torn tortoise toss total touch tour
    toward towards towel town toxic toys tracing track tractor trading trail train trainee transfer translate trap
    traps trash travel tread treat treaty triangle tribe trick trigger triggered triggering trip trips trivial
    trolley troop trouble trouser trust try tub tube tuesday tumble turkey turn turquoise turtle twelve twenty twice
    twist twisting two tying typed tyre tyres ugh uncle unclear under undergo understand understands understood
    undertake underwater undid undilute undiluted undo undue unit unite unknowing unknown unlabeled unmarked unset
    unstable untidy until untreated unused upcoming update updated upend uphold upholstery upkeep upload upon upper
    uproot upset upsets upside uptake upturn urgent uromastyx usable usage use useless usher using vanilla vanish
    varnish vary vent ventilate ventilation verify verse version versus very vet video vinegar violation violet
    virtual visit visitor visitors visually vitamin viv voice volume volunteer volunteers vomit vote wait walk wall
    wallet wallpaper wander waning wanna want wardrobe warm warmest warn warp wars wary was wash washable waste
    watch water watercolour watered watering waterproof watertight watt way wayside weak weaken wealth wear weary
    weather website wednesday wee weeded weeding weeds week weekend weeklies weigh well wen went were wet whale what
    whatever wheel wheeze when where wherever whether which whichever whiff while whisky whistle white who whoa
    whole whoop why width wife wildly wiling will wind winding window winds windy wine wing wings winter wintered
    wipe wiring wise wish witch with withdraw withhold within without wives woman womb women won wonder wondering
    wood wooden wooing wool word work workbench workshop worldwide worry worse worth worthwhile worthy would wound
    wrapper wreck wrist writ write written wrong wrote yard yawn yea yeah yearly years yellow yep yes yesterday yet
    you young youngest yours yourself yup zip
    """
)
