"""Common words of English as spelled, so that none of them is taken for a slip of a word of the questions.

They come from sentences written for trying the tool, with their usual endings; no word is here for its meaning.
"""

from __future__ import annotations

from assistant.understand.known_words import words_of

ENGLISH = words_of(
    """
    able abled ables about abscess absolutely accent accented accenting accents accident accidently accidents
    accurate accurately acetic acid acidly acids across acrylic acrylics actually add added adder adding adds
    adenovirus adult adults affirmative affirmatively afraid afresh aft after afternoon afternoons again against age
    agee ages aging ago ahead ahh aid aided aides aiding aids air aird aired aires airing airs alarm alarmed
    alarming alarms alcohol alcohols all aller alles alling allow allowed allowing allows alls almost along alongs
    alot already alright also altogether aluminium aluminum always america american americans americas ammonia
    ammonium amount amounted amounting amounts and ander andes anding ands animal animals another answer answered
    answering answers antibiotic antibiotics anxious anxiously any anybody anyone anything anyway anyways anywhere
    apart apparently applied applies appling apply applying appointment appointments appreciate appreciated
    appreciating approximately aquarium aquariums are area areas arend arens ares aries arm armed armer armes arming
    arms around arrival arrivals arrive arrived arrives arriving ask asked asker asking asks asleep asthma ate ates
    aunt aunts authorities authority autumn awake away aways awful awfully aye ayes babies baby back backed backer
    backes background backgrounds backing backs backward backwards bacterial bad bader badly bag bagged bagging bags
    bak bake baked bakes baking baling ball balled baller balles balling balls banana bananas bandage bandaged
    bandages bang banged banger banging bangs bare bared barely bares baring bark barke barked barker barkes barking
    barks base based basil basing basinger bask basked basking basks bass batch batches bath bathe bathed bather
    bathes bathing bathroom bathrooms baths batt batte batted batter battered batterer batteries battering batters
    batting battle battled battles battling batts beach beached beacher beaches beaching beak beaker beaks bean
    beane beans beard bearded beards bearing because become becomes becoming bed bedded bedding bedroom bedrooms
    beds been beens beep beeped beeping beeps before begin beginning beginnings begins behind behinds being beings
    belied belies bellied bellies belling belly bely belying bench bencher benches bening bent benter bently beside
    besides best bested bester besting bett bette better bettered bettering betters betting betts between betweens
    big bigger biggers biggs bigs bin bind binding bindings binds bines binning bins birthday birthdays biscuit
    biscuits bit bite biter bites biting bits bitten bitting black blacked blacker blacks blah blame blamed blames
    blaming blank blanke blanked blanking blanks blast blasted blasting blasts bleach bleached bleacher bleaching
    blech blecher bleed bleeding bleeds bless blessed blesses blessing blew blink blinked blinking blinks blood
    blooded bloodied bloods bloody blowing blown blue blued blueing blues bluing bodied bodies body boies boil
    boiled boiler boiling boils boling bolt bolte bolted bolter bolting bolts bone boned bones boning booing book
    booked booker bookies booking books bot both bothe bother bothered bothering bothers bots botting bottle bottled
    bottles bottling bottom bottomed bottoming bottoms bought boughter bowing bowl bowled bowler bowles bowling
    bowls box boxed boxer boxes boxing boy boyd boye boyer boyes boys brain brained brainer brains branch branche
    branched branches branching brand branded brander brandes branding brands bread breaded breading breads break
    breaker breakfast breakfasts breaking breaks breath breathe breathed breather breathes breathing breaths breed
    breeder breeders breeding breeds brim brimer brimmed brimming bring bringing brings brining british broke
    broking broth brother brotherly brothers broths brought brown browned browner browning browns brush brushed
    brushes brushing bubble bubbled bubbles bubbling bucket buckets buddies budding buddy bug bugs build builder
    building builds built bulb bulbs bullseye buried buries burn burne burned burner burnes burning burnings burns
    burnsed burnt burst bursting bursts bus bused buser buses bush busher bushes busied business businesses busing
    buss bussed bussing bust busted busting busts but buts butting buy buyer buying buys cable cabled cables cactus
    cage caged cages cake caked cakes calcium call calle called caller calles calling calls calm calmed calmer
    calmes calming calmly calms calorie calories came can canaries canary cancel canceled canceling cancelled
    cancelling cancels candle candles cane caned canes caning canned canning cannot cans cant canter cap cape caped
    caper capes capital capitals capped capping caps car card care cared career carefully carer cares caring carly
    carpet carpeted carpeting carpets carrie carried carrier carriers carries carris carrot carrots carry carrying
    cars case cases casing cat catch catcher catches catching cate cater cates cats caught celsius centimetre
    centimetres centre centres ceramic ceramics certainly chameleon chang change changed changes changing chap chaps
    chapter chapters chart charted charter charting charts chase chased chases chasing che cheap cheaper cheapest
    cheaply check checked checker checking checks checkup checkups chee cheek cheeked cheeks cheer cheered cheering
    cheers chemical chemically chemicals ches chest chested chester chests chicken chickened chickening chickens
    child childs chilies chlorine chok choke choked choking christmas christmases chuck chucked chucking class
    classed classes classing classroom classrooms clean cleaned cleaner cleaners cleaning cleanly cleans clear
    cleared clearer clearing clearly clears climb climbed climbing climbs clock clocked clocker clocking clocks clos
    close closed closely closes closet closeted closets closing closs cloth clothed clothes clothing cloths cloud
    clouded clouding clouds cloudy clove clover club clubbed clubbing clubs clue clued clues coast coasted coaster
    coasting coasts coat coated coates coating coats coconut coconuts coffee coffees cold colder coldly colds
    collect collected collecting collects colon colour coloured colouring colours com combine combined combines
    combining come comely comes coming comings command commanded commanding commands common commoner commonly
    commons complete completed completely completes completing compute computed computer computers computing coms
    concentrate concentrated concentrates concentrating concentration concentrations conservatories conservatory
    contact contacted contacting contacts contagious contain contained container containers containing contains
    content contented contents convert converted converter converting converts convince convinced convincing cooing
    cook cooke cooked cooker cookers cookies cooking cooks cool cooled cooler cooling coolly cools copp copped
    copper coppers copping copps cork corker corking corks corn corne corner cornered cornering corners corning
    corns correct corrected correcting correctly corrects cost coste costed coster costing costly costs cotton
    cottoned cottons cough coughed coughing coughs could count counted counter countered countering counters
    counties counting counts cove cover covered covering covers crack cracked cracker cracking cracks crap craps
    crawl crawled crawling crawls crazies crazy cream creamed creamer creams creep creeping creeps crest crested
    cresting crests crib cribbing cribs cricket crickets cried cris cros crose cross crossed crosser crosses
    crossing crypto cryptosporidium cub cube cubed cubic cubs cuing cup cupboard cupboards cups curtain curtains cut
    cute cuter cuts cutting cuttings cutts cycle cycled cycles cycling cylinder cylinders dab dabbing dagger daggers
    damage damaged damages damaging damp damped damper damping damps dang danger dangerous dangerously dare dared
    dares daring dark darker darkly dart darted darter darting darts date dated dates dating daughter daughters day
    daye days dead deader deadly deal dealer dealing deals dear dearer dearing dearly decant decanting deen deener
    deep deeper deeply definitely defrost defrosting degree degreed degrees delete deleted deletes deleting delicate
    delicately deliveries delivering delivery desert deserted deserter deserting deserts dessert desserts detergent
    detergents did die died dies difference differences different differently dilute diluted dilutes diluting dinner
    dinners dinning dip dipped dipping dips dirt disagree disagreed disagreeing disagrees disappear disappeared
    disappearing disappears disease diseased diseases dish dished disher dishes dishing dishwasher dishwashers
    dishwashing disinfect disinfectant disinfectants disinfection display displayed displaying displays dispose
    disposed disposes disposing distance distanced distances distancing distract distracted distracting distracts
    division divisions dizzy dizzying doe does dog dogged dogging dogs doing doings done doner dones donned donning
    dons door doorbell doors dose doses dosing dot dote doting dots double doubled doubles doubling down downed
    downer downes downgrade downgraded downgrades downgrading downing downs downstairs dragon dragone dragons drain
    drained drainer draining drains drank draught draughts draw drawer drawers drawing drawings draws dreadful
    dreadfully dream dreamed dreamer dreaming dreams dreamt dress dressed dressing dressings dried dries drift
    drifted drifter drifting drifts driftwood drill drilled driller drilling drills dring drink drinker drinking
    drinks drip dripped dripping dripps drips drive driver drivers drives driving drool drooled drooling drop
    dropped dropping droppings drops drove droves drunk drunks dry drye dryer dryers drying dryly dude dudes due
    dues dump dumped dumper dumping dumps dunning dunno duration durations during dusing dust dusted duster dusting
    dusts dwell dwelled dweller dwelling dwells each ear eared earlie earlier early earring ears easing east easter
    easterly eastes easy eat eaten eater eating eats effective effectively egg egge egged egger egging eggs eight
    eighties eights eighty elbow elbowed elbowing elbows electric electrics eleven elevens else elses emptied
    empties empting empty emptying enclosure enclosures end ende ended ender ending ends english enough ent ente
    enter entered entering enters entries entry envelope enveloped envelopes enveloping erase erased erases erasing
    error errors escape escaped escapee escapees escapes escaping evaporate evaporated evaporates evaporating even
    evened evening evenings evenly evens ever evered everly evers every everybody everyone everything everythings
    everywhere evidence evidenced evidences ewe ewes ewing exact exacted exacting exactly exacts example examples
    exotic exotics expire expired expires expiring explain explained explaining explains extra extras eye eyeball
    eyeballs eyed eyeing eyelash eyelashes eyes fabric fabrics face faced faces facing fad fade faded fading fads
    fahrenheit faint fainted fainter fainting faintly fake faked fakes faking fallen fan fanned fanning fans far
    fared fares faring farly fast fasted faster fasting fasts fat fated fates fats fatties fatty fault faulted
    faulting faults favourite fed feder feds feed feeder feeding feedings feeds feel feeler feeling feelings feels
    feet fell fella fellas felled feller felling fells felt felter feltes felts female females fever fevered fevers
    few fewer fifteen fifteens fifties fifty fight fighter fighting fights figure figured figures figuring filing
    fill filled filler fillies filling fillinger fillings fills film filmed filmer filming films filter filtered
    filtering filters finally find finder finding finds fine fined finely fines finger fingered fingering fingers
    fining finish finished finisher finishes finishing fire fired fires firing first firstly firsts fish fished
    fisher fishes fishing fit fites fits fitted fitting five fives flank flanked flanking flanks flash flashed
    flashing flask flasks fleece fleeced fleeces fleecing flesh fleshed flesher floor floored flooring floors fluid
    fluids flush flushed flushes flushing fluster flustered flustering flusters foam foaming foams follow followed
    follower following followings follows food foods foot footed footer footing for ford forever forget forgets
    forgetting forgoing forgot forgotten fors forties fortune fortunes forty forum forums found founded founder
    founding four fours fox foxes fraction fractions frame framed frames framing free freed freeing freely frees
    freeze freezes freezing french fresh fresher freshly frett fretted fretting friday fridays fridge fridges friend
    friendly friends frighten frightened frightening frightens frog frogs from fromer froning front fronted fronting
    fronts frown frowned frowning frowns frozen full fuller fume fumed fumes fuming fungal fungus funnel funneled
    funneling funnels funny furth further furthered furthering furthers future futures gain gained gainer gaines
    gaining gains gal galer gales galling gallon gallons gals garage garages garden gardened gardener gardening
    gardens gas gases gasp gaspe gasped gasping gasps gass gassed gassing gave gear geared gearing gears gecko
    geckos gentle gentles genuinely get geter gets getting gettinger gettings getts gimme girl girlfriend
    girlfriends girls give given givens gives giving glas glass glassed glasser glasses glisten glistened glistening
    glove gloved gloves god godding goding godly gods goe goes goeser goggle goggles going goings goldfish gone
    gonna good gooder gooding goodly goodnight goodnights goods gosh got gotta gowing gown gowns grab grabbe grabbed
    grabbing graber grabs gram grams granddaughter granddaughters grandson grandsons great greater greatly greats
    green greene greened greener greening greenly greens growing grown guard guarded guarding guards guess guessed
    guessing gum gums gut guts gutted gutter guttered guttering gutters gutting guy guyer guys habit habits had hadd
    hader hades hafta hair haired hairs half hallway hallways halogen hammock hammocks hamster hamsters hand handed
    handedly hander handing handle handled handles handling handly hands hang hanged hanger hanging hangs haning
    happen happened happening happens happy hard harder harding hardly hards haring harm harmed harmer harmes
    harming harms has haser hass hassing hatch hatched hatcher hatches hatching hate hated hates hating have havener
    havens haves having head headache headaches headed header heading heads heal healed healing heals healthy hear
    heard hearer hearing hearings hears heart hearted hearts heat heated heater heaters heating heats heavies
    heaving heavy helicopter helicopters heling hell heller helling hello help helped helper helping helps her herd
    here hering herring hers hey heyd heyer heying heys hid hide hides hiding high higher highly highs him himes
    himself his hise hiser hiss hissed hisses hissing hit hites hits hitting hmm hob hobbies hobbing hobby hobs hold
    holde holder holding holdings holds hole holed holes holing home homed homely homes homework homeworker homing
    honestly hood hooded hoods hook hooke hooked hooker hooking hooks hopeless hopelessly horrible hose hosed hoses
    hosing hospital hospitals hoss hot hotly hots hour hourly hours house housed houses housing how hower howes huh
    humidity hundred hundreds hurt hurting hurts husband husbands hush hushed hydrogen hydrogens hypothetically ice
    iced ices icing idea ideas ill illes ills imagine imagined imagining imp imperial imply inch inched inches
    inching incubate incubates incubating incubator incubators infect infected infecting infection infections
    infects inject injected injecting injects insect insects inside insides instead instruct instructed instructing
    instructor instructors instructs insurance insurances into iodine iron ironed ironing irons isolation its itself
    january jaw jawed jaws jean jeane jeans job jobe jobes jobs join joined joiner joines joining joins joint
    jointed jointly joints joke joked jokes joking jug juge jugs july jump jumped jumper jumpers jumping jumps june
    junes juniper junipers junk junked junker junking just juster justly keep keeper keeping keeps kept kettle
    kettles kick kicked kicker kicking kicks kid kidd kidded kidding kids kill kille killed killer killers killing
    killinger killings kills kilo kilos kind kinda kinder kindly kinds kiss kissed kissing kit kitchen kitchener
    kitchens kites kiting kits knee kneed kneeing knees knife knifed knifing knitted knitting knock knocked knocking
    knocks know knowed knower knowing knowingly knows lab label labeled labeling labelled labels laber labs lad ladd
    lader ladies lading lads lady laid laing lake lakes lamp lamping lamps land lande landed landing landings
    landlord landlords lands last lasted laster lasting lastly lasts lat late lately later lats laundries laundry
    law lawes lawing lawn lawner lawns laws leak leake leaked leaking leaks learn learned learning learns leath
    leather leathers leave leaves leaving ledge ledges lee leed lees left leftover leftovers leg lege leger legg
    legge legged legging legs lemon lemonade lemond lemons lend lending lendings lends length lengths leopard
    leopards les less lesser lessing let lets letting level leveled leveling levelled levels lick licked licking
    licks lid lide lids lie lied lies life lifes light lighted lighter lighting lightly lights like liked likely
    likes liking lili lilies lime limes liming limp limped limping limps lin line lined linen linens liner liners
    lines lining lino lins lip lipe lipped lips liquid liquids list listed lister listing lists lit lite liter
    literally liters lits litt litter littered littering litters little littles litts liv live lived lively lives
    living livings lizard lizards load loaded loader loading loads lock locke locked locker locking locks locust
    locusts log loges logged logging logs lol lolling lolly long longe longed longer longing longs loo look looked
    looker looking looks loos loose loosed loosely looses loosing los lose loses losing loss losses lossing lost lot
    lots love loved lovely loves loving low lower lowes lowing lowly lows luck lucked lucker lucking lucks lump
    lumped lumper lumping lumps lunatic lunatics lunch lunched lunches lunching lung lunge lunged lunging lungs
    machine machined machines machining made mak make makes making makings mal male males man maned maner manes
    manly manned manning mans many march marched marcher marches marching maring mark marke marked markedly marker
    marking marks mask masked masker masking masks mat match matched matches matching mate mated mateer mater mates
    mating mats matt matte matter mattered matters matting matts may maybe mayer mayes mays meal mealer mealing
    meals mean meaner meaning meanings means meant measure measured measurement measurements measures measuring meet
    meeting meets melamine merely mesh meshed meshes meshing mess messed messer messes messing metal metals metre
    metres metric metrics microwave microwaved microwaves microwaving middle middling might migraine migraines mil
    mild mile miler miles milk milked milking milks milky mill mille milled milliliter milliliters millilitre
    millilitres milling million millions mills milly mils min mind minded minder minding minds mined miner mines
    mining minute minutely minutes mis miss missed misses missing mist mistake mistaken mistakenly mistakes
    mistaking mister mists mit mite mites mix mixed mixer mixes mixing moment moments monday mondays money moneyed
    moneys monster monsters month monthly months moon moons mop moped moping mopped mopping mops more mores moring
    morn morning mornings morph morphed morphing morphs mos mose moss mosser mosses most moster mostly moth mother
    mothering motherly mothers moths mould moulder moulding moulds mouldy mouse mouth mouthed mouthful mouthing
    mouths move moved moves movies moving movingly much muck mucking muddle muddled muddles muddling mum mums music
    musics musing must muster mutch mute muted mutes muting myself mysteries mystery nagged nagging nah name named
    namely names naming nan nasty naught naughty near neared nearer nearing nearly nears neat neater neatly
    necessary neck necked necker necks ned nedd need needed needing needs negative negatively negatives neighbour
    neighbouring neighbourly neighbours neither nephew nephews nervous nervously nettle nettled nettles neve never
    nevers new newcom newcome newcomer newcomers newer newly news next nice nicely night nighter nightly nights nine
    nines nineties ninety nip nipped nipping nips nite nobodies nobody noise noises noisy none noodle noodles noon
    noons nope nor nord nored normal normally norred nose nosed noses nosing not note noted notes noth nothing
    nothings noting nots november now nozzle nozzles numb numbed number numbered numbering numbers numbing objection
    objections occupant occupants off offer offered offerer offering offers offing offs often oftener ohio okay
    okayed okays old older olds once one ones online only onto oop oops open opened opener opening openings openly
    opens operation operations option optioned optioning options orange oranges orchid orchids ord order ordered
    ordering orderly orders ordinaries ordinary other others ought ounce ounces our ours out outbreak outbreaks
    outed outer outing outs outside outsides outstanding outstandingly outta oven ovens over overall overalls
    overdid overdo overdoing overdue overly overnight overnighter overs owing own owned owner owning owns pacing
    pack packed packer packet packets packing packs pain pained pains paint painted painter painting paints pair
    paired pairing pairs pan panel paneled paneling panels panes panic panicked panicking panics panned panning pans
    pap pape paper papered papering papers pardon pardoned pardoning pardons parent parente parenting parents paring
    park parked parker parkes parking parks parrot parrots part parte parted particular particularly particulars
    partied parties parting partly partner partnered partnering partners parts party partying pas pasing pass passe
    passed passer passes passing past pasta pastas pasted paster pastes pasting pasts patch patched patches patching
    patchy patient patiently patients pause paused pauses pausing pea peace peas peel peele peeled peeling peels
    people peopled peoples pepper peppered peppering peppers per percent percentage percentages percents peres
    perish perished perishing permitted permitting peroxide pers person persons peru pest pester pests pet peter
    pets petted petting phew phone phoned phones phoning pick picked picker picking pickle pickled pickles pickling
    picks picture pictured picturing piece pieced pieces piecing pine pined pines pining pink pinker pinkie pinks
    pint pinter pints pipe piped pipes piping pitt pitted pitting pitts place placed places placing plain plainer
    plaines plainly plains plan plane planed planer planes planned planning plans plant plante planted planter
    planting plants plastic plastics play played player playing plays pleas please pleased pleases pleasing
    plexiglass plue plus pluses plywood point pointed pointer pointing points poke poked pokes poking polish
    polished polishing polypropylene pond ponder ponds ponied ponies poo pooh poohed pool pooled pooler pooling
    pools poop pooped pooper poops poor poorer poorly poors pop popes popp poppe popped popping pops posing positive
    positively positives possibilities possible post posted poster posting posts pot potato potatoe potatoes pots
    potted pour poured pouring pours pow powder powdered powdering powderly powders powe power powered powering
    powers pows ppm precious prefer preferably prefered preferred preferring prefers pregnant press presse pressed
    pressing pretend pretended pretender pretending pretends pretties pretty price priced prices pricing prime
    primed primes priming probably probe probed probes probing problem problems proceed proceeded proceeding
    proceeds producing product products promise promised promising prop proper properly props protection protections
    protective protectively prune pruned pruning pseudomonas puddle puddles pull pulled pulling pulls puming pump
    pumped pumping pumps punch punched punches punching push pushed pushing put putes puts putt putted putting putts
    pvc python quantities quantity quarantine quarantined quarantines quarantining quart quarter quarterly quarters
    quarts quaternary question questioned questioning questions quick quicker quickly quiet quieted quieter quieting
    quietly quiets quite rabbit rabbits racing rack racked racker racking racks radiator radiators radio radioed
    radios rag raged rager rages ragged raging rags rain raine rained rainer raines raining rains ran rand random
    randomly ranes rang ranged ranger ranges ranging rans rat rate rated rater rates rath rathe rather rating ratio
    ratios rats raw reach reached reaches reaching react reacted reacting reacts read reader readied readies reading
    reads ready readying real realise realised really reason reasoned reasoner reasoning reasons receptionist
    receptionists recipe recipes reckon reckoned reckoning reckons recommend recommended recommending recommends
    record recorded recorder recording records red redd redding reder reding reds reek reeking reeks refill refilled
    refills refrigerator refrigerators refund refunded refunding refunds regular regularly regulars remain remained
    remaining remains remember remembered remembering remembers remind reminded reminder reminding reminds remove
    removed removes removing repeat repeated repeater repeating repeats reptile reptiles require required requiring
    resin resins respirator respirators rest rested rester resting rests result resulted resulting results return
    returned returning returns rice rid ridding ride rider rides riding rids right righted righter rightly rights
    rind rinds ring ringe ringed ringer ringing rings rinse rinsing rising risk risked risking risks rite rites
    river rivers roach roache roaches road roades roads roast roasted roaster roasting roasts robot robots rock
    rocke rocked rockies rocking rocks roling roll rolled roller rolling rolls rom romer romes roms room rooming
    roommate roommates rooms root rooted rooter rooting roots ros rose roses rosing ross rot rota rots rott rotted
    rotting rough roughed rougher roughing roughly round rounded rounder rounding roundly rounds rove rover rovers
    roving royal royally royals rub rubbed rubbing rubbish rubs ruin ruined ruining ruins rule ruled rules ruling
    run runaway runaways rund rundown rune runes runner runners running runnings runny runs rush rushed rushing rust
    rusted rusting rusts safe safely safes safeties safety safing said salad salads salmonella sam same sameer sames
    sams sand sanded sander sanding sands sanitize sanitized sanitizing sank sanker sanks sat sated sater sates
    saturday saturdays saucepan save saved savely saves saving saw sawed sawing saws say saye sayed sayer saying
    sayings says scale scaled scales scaling scar scare scared scares scaring scars school schooled schooler
    schooling schools scone scones scoop scooped scooper scooping scoops scrap scrape scraped scraper scrapers
    scrapes scraping scrapped scrapping scraps scratch scratched scratches scratching scratchy screen screened
    screener screening screens scrub scrubbed scrubbing seal seale sealed sealing seals seam seams search searched
    searcher searches searching seat seatbelt seatbelts seated seater seating seats sec second seconded secondly
    seconds see seed seeing seely seem seemed seeming seems seen sees selies sell seller selling sells sense sensed
    senses sensible sensing sentence sentenced sentences sentencing separate separated separately separates
    separating september septic sequence sequences sequencing set sets sette setting settings settle settled settles
    settling seven sevens seventeen seventeens sex sexed sexes shake shaken shaking shall share shared shares
    sharing sharp sharpen sharpened sharpening sharpens sharper sharply sharps she shed shedd shedding sheds sheer
    sheet sheeting sheets shelf shied shies shift shifted shifter shifting shifts shin shine shined shines shing
    shining shirt shirted shirting shirts shoe shoes shoo shooed shoot shooter shooting shoots shop shoppe shopped
    shopping shops shoring short shorted shorter shorting shortly shorts shot shots should shoulder shouldered
    shouldering shoulders shout shouted shouting shouts show showed shower showered showering showers showing shows
    shrunk shut shutes shuts shutting sick sicker sickly sid side sided sides siding sids sign signed signing signs
    silence silenced silences silencing silicone silicones silly sin since sine sing singed singer singing single
    singled singles singling singly sings sink sinker sinking sinks sins sir sires sirs sister sisters sit site
    sited sites siting sits sitting sitts six sixed sixer sixes sixteen sixteens sixties sixty size sized sizes
    sizing skiing skin skinned skins skip skipped skipping skips slate slated slates slating sleep sleeper sleeping
    sleeps sleeve sleeved sleeves slip slipped slipping slips sloppy slow slowed slower slowing slowly slows slug
    slugs small smaller smallest smalling smalls smash smashed smashing smell smelled smelling smells smoke smoked
    smokes smoking snake snakes snaking sneeze sneezed sneezing sniff sniffed sniffer sniffing sniffs snow snowed
    snowing snows soak soaked soaker soaking soaks soap soaps soapy sock socked socking socks sodium sofa sofaer
    sofas soft soften softened softener softening softens softer softly soil soiled soils solution solutions some
    somebody someone somes something somethings sometime sometimes somewhere somewheres son sones song songer songs
    sons soon sooner sooners soonest sore sorely sores sorry sort sorted sorter sorting sorts sound sounded sounder
    sounding soundly sounds source sources sourcing souvenir souvenirs space spaced spaces spacing spain spare
    spared spares sparing speak speake speaker speakes speaking speaks speck specks speed speeded speeder speeding
    speeds spell spelled speller spelling spells spider spiders spill spillage spilled spiller spilling spills spilt
    spirit spirited spirits splash splashed splashes splashing split splits splitting spoil spoiled spoiler spoiling
    spoils sponge sponged sponges spore spores spot spots spotted spotting spray sprayed sprayer sprayers spraying
    sprays spread spreader spreading spreads square squared squarely squares squaring squeak squeaked squeaking
    squeaks squirt squirted squirting squirts stack stacked stacking stacks stain stained staining stainless stains
    stair stairs stale stand standard standards stander standing standings stands star stare stared staring stars
    start started starter starting starts stash stashed stashing state stated stately states stating statue status
    stay stayed stayer staying stays steadied steady steam steamed steamer steaming steams steel steeled steeler
    steels step stepped stepping steps stew stewed stewing stews stick sticker stickers sticking sticks still
    stilled stiller stills sting stinger stinging stings stink stinking stinks stinky stock stocked stocker stocking
    stocks stomach stomachs stone stoned stones stoning stood stop stopped stopping stops store stored stores
    storied stories storing storm stormed stormer stormes storming storms story straight straighter straights
    strawberries streak streaked streaking streaks stream streamed streaming streams street streeter streets
    strength strengths stressful stretch stretched stretcher stretches stretching strike strikes striking stroke
    stroked strokes stroking strong stronger strongly stuck stucker studied studies study studying stuff stuffed
    stuffer stuffing stuffs stupid stupider stupidly substrate substrates such sucher suck sucked sucking sucks
    suggest suggested suggesting suggests suing sulk sulked sulking sum summed summer summers summing sums sun sund
    sunday sundays sunning suns sunset sunsets sup super supers support supported supporter supporting supports
    suppose supposed supposedly supposes supposing sure surely sures surface surfaced surfaces surfacing swab swabs
    swallow swallowed swallowing swallows swap swapes swapp swapped swapping swaps swear swearing swears sweet
    sweetheart sweethearts sweeting sweets sweetser swig swiger swimming switch switched switcher switches switching
    swollen syring syringe syringes tab tabbing taber tablespoon tablespoons tabs tail tailed tailing tails taing
    tak take taken takes taking takings tale tales talk talked talker talking talks tank tanke tanked tanker tanking
    tanks tap taped taper tapes taping tapped tapping taps taste tasted tastes tasting tastings tea tear teare
    tearing tears teas teaspoon teaspoons teeth teething tell teller telles telling tellingly tells telly temp
    temper temperature temperatures temps ten tend tener tens test tested tester testes testing tests text texted
    texter texting texts than thank thanked thanking thanks that thaw thawed thawing thaws the their theirs them
    themed themes theming then there thermostat thermostats these theses thesing they thi thies thin thing things
    think thinker thinking thinks thinly thinned thinning thins third thirdly thirds thirties thirty this tho those
    thought thoughts thread threaded threading threads three threes thrill thrilled thrilling thrills throat
    throated throats through throughs throw thrower throwing throws thru thump thumped thumping thumps thursday
    thursdays tick ticked ticker ticking ticks tight tighter tightly tights til tile tiled tiles till tiller tilles
    tilling tilly tim time timed timely timer timers times timing tims tin tiner tines tingle tingling tins tiny tip
    tipp tipped tipping tipps tips tire tired tiring toast toasted toaster toasting toasts today todays toddle
    toddler toddlers toddling toe toed toeing toes together togethers toilet toilets told tomorrow tomorrows ton
    toned toner tones tong tonge tongs tongue tongued tongues tonight toning tons too took tooker tookes tool toole
    tooled tooling tools top topp topped topping toppings topps tops torch torched torches torching tortoise
    tortoises toss tossed tosses tossing total totaled totaling totalled totalling totally totals touch touche
    touched touches touching towel toweling towels toxic toxics tracing track tracked tracker tracking tracks trail
    trailed trailing trails train trained trainer training trains translate translated translates translating trash
    trashed trashes trashing travel traveled traveler traveling travelled travelling travels treat treated treater
    treating treats tri trick tricked tricking tricks trie tried trigg trigger triggered triggering triggers triggs
    trouble troubled troubles troubling trouser trousers trust trusted trusting trusts try trying tub tube tuber
    tubes tubing tubs tuesday tuesdays tumble tumbled tumbles tumbling turing turkey turkeys turn turned turner
    turning turns turquoise turtle turtles tweezer tweezers twelve twenties twenty twice two twos ugh uncle uncles
    und under underly understand understanding understandings understands undilute undiluted undo undoing undue unit
    unite united uniting units unknowing unknown unknowns unlabeled unmarked until untreated upholstery upon upside
    urgent urgently usable use used useless uses using vanish vanished vanishes vanishing varnish varnished
    varnishes vent vented venter ventilate ventilated ventilating ventilation venting vents verse versed verses
    versus very vet vets vetted vetting video videos vinegar vinegars violet violets vitamin vitamins viv vives
    voice voiced voices voicing volume volumes vomit vomiting wait waite waited waiter waites waiting waits walk
    walke walked walker walking walks wall walle walled waller walles walling walls wander wandered wandering
    wanderings wanders waning wanna want wante wanted wanting wants waring warm warmed warmer warmest warming warmly
    warms warn warne warned warning warningly warnings warns was wash washable washed washer washes washing wass
    waste wasted wasting wat watch watched watcher watches watching water watered waterer watering waters watt watts
    way ways weak weaken weakened weakening weakens weaker weakly weaks wear wearer wearing wears weather weathered
    weathering weatherly weathers wednesday wednesdays wee weed weeded weeding weeds week weekend weekender weekends
    weekes weeklies weekly weeks weigh weighed weighing weighs well weller welles welling wells wen wend wenning
    went were wet wetting what whate whatever whats wheel wheeled wheeler wheeling wheels wheeze wheezing when where
    whether which whiff while whiles whisky white whited whitely whites whiting who whoa whole wholes whoop whooped
    whooping whoops why whys wich wife wiling will willed willer willes willing wills winding window windowed
    windows windy wine wined wines wining wint winter wintered winters wipe wiped wipes wiping wise wised wisely
    wish wished wisher wishes wishing witch witcher witches witching with wither without wives womb won wond wonder
    wondered wondering wonders wood wooded wooden wooding woods wooing wool woolly wools word worded wording words
    work worked worker working workinger workings works worried worries worry worrying worse worth worthing worths
    would wound wounded wounding wounds wreck wrecked wrecker wrecking wrecks wrist wrists writ write writes writing
    writings writs written wrong wronged wrongly wrongs wrote yard yarder yards yea yeah year yearly years yeas
    yellow yellower yellowing yellows yep yes yeses yesterday yesterdays yet you young younger youngest youngs your
    yours yourself yourselfer yous yup zip zipped zipping zips
    """
)
