"""An animal that got out, and a product that was spilled: found by rule, like harm, for nobody then words it with care.

"He's out of the tub!" is an escape where an animal waits in one; while it is being moved out it may be that step, and
that is left to `claimed_steps`. Nothing here ever counts as a step.
"""

from __future__ import annotations

from assistant.understand.harm.patterns import ANIMAL
from assistant.understand.named.tub_words import TUB
from assistant.understand.text.patterns import Pattern, words_in


def _words(text: str) -> tuple[str, ...]:
    return tuple(text.split())


_ONE = (
    rf"(?:he|she|it|they|one|everyone|somebody|{ANIMAL}|ENCLOSURE|(?:the |my |our )?(?:\w+ )?"
    rf"(?:{ANIMAL}|little (?:one|guy)|baby|babies|girl|boy))"
)
_HAS = (
    r"(?: has| might| may| must| have| is| are| was| just| 's| been| only| gone and| managed to| went and| bloody"
    r"| somehow| about)*"
)

_ESCAPED = Pattern(
    r"\bescap(?:ed|es|ing|e)\b"
    rf"|\b{_ONE}{_HAS} (?:got|gotten|get|gets|getting|come|came|coming|climbed|climbing|crawled|slithered"
    r"|wriggled|jumped|hopped|squeezed|pushed|slipped) (?:right |clean |all )*(?:out|free|off|away|loose)"
    r"(?! of bed)(?! (?:the |my |some )?(?:AGENT|BOTTLE|STOCK|mop|smell))\b"
    rf"|\b{_ONE}{_HAS} (?:on the (?:loose|run|floor|ceiling|curtains?)|(?:running|roaming|wandering) (?:loose|free"
    rf"|around)"
    r"|loose(?! (?:stool|skin|shed))|missing|disappeared|vanished|bolted|legged it|run off|ran off|done a runner"
    r"|a runner|gone missing|gone from (?:the|his|her|its) (?:\w+ )?" + TUB + r")\b"
    rf"|\b(?:lost (?:him|her|it|them)|dropped (?:him|her|them)|(?:lost|dropped) (?:the |my )?(?:\w+ )?{ANIMAL})\b"
    r"(?! (?:off|appetite|weight))"
    r"|\bdropped it\b(?! off)(?!.*\b(?:glass|everywhere|smashed|AGENT|STOCK|BOTTLE)\b)"
    rf"|\b(?:{ANIMAL}|he|she|ENCLOSURE)(?: is| 's| has got| got| has)? out\b.*\bwhere (?:do|should|can|shall"
    rf"|would) (?:i|we)"
    r" (?:even |first )?(?:look|start looking|search)\b"
    rf"|\boh no\b.*\bwhere is (?:he|she|it|(?:the |my )?(?:\w+ )?{ANIMAL})\b"
    rf"|\b(?:can not|could not|can|where) (?:i )?(?:find|see) (?:him|her|them|(?:the |my )(?:\w+ )?{ANIMAL}"
    rf"|ENCLOSURE)"
    r"(?: anywhere)?(?! (?:on the|in the (?:list|record)))\b"
    rf"|\b{_ONE}(?: has| is| have| are| 's)? not in (?:the|his|her|its|their) (?:\w+ )?{TUB}(?: any ?more)?\b"
    rf"|\b(?:somewhere|gone|hiding|went|ran|slid|slithered|shot|is|has gone) (?:in|under|behind"
    rf"|into) (?:the )?(?:\w+ )?"
    r"(?:sofa|couch|fridge|cupboard|wardrobe|radiator|skirting|floorboards?|bed|washing machine|cooker|oven|wall)\b"
    rf"|\b{_ONE}{_HAS} (?:made|making) (?:a |one )?(?:bolt|dash|break|run)\b"
    rf"|\b{_ONE}{_HAS} (?:took off|shot off|darted off|jumped out|leapt out|ran (?:off|under|behind|out)"
    rf"|(?:is )?climbing (?:up )?the curtains?)\b"
    rf"|\b{_ONE}{_HAS} out(?:,| and) (?:he is |she is |it is )?(?:out|under|behind|on the (?:floor|run|loose))\b"
    rf"|\bwhere (?:is|has|did) (?:he|she|it|{ANIMAL})(?: has| is)? (?:gone|go|got to|disappeared)\b"
    rf"|^(?:he|she) is out (?:he|she) is out\b"
    rf"|\b{_ONE}{_HAS} (?:up|behind|on) the curtains?\b|\b{_ONE}{_HAS} not where (?:i|we|he|she|it)\b"
    rf"|\b(?:door|lid|{TUB}) was (?:left )?open and (?:the )?(?:\w+ )?(?:ENCLOSURE|{TUB}|tank|viv)(?: \w+)? (?:is"
    rf"|was) empty\b"
    rf"|\bempty {TUB} and (?:an? |the )?(?:open|lid)\b"
    rf"|\b{_ONE}{_HAS} (?:shot|bolted|darted|scuttled|scurried|legged it|zoomed) (?:up|under|behind|across|down|along"
    rf"|over|into"
    rf"|past|out)\b"
    # nobody where somebody should be
    rf"|\b(?:there is )?no (?:{ANIMAL}|sign of (?:him|her|it|them|the {ANIMAL})) (?:in|inside|anywhere|to be seen)\b"
    r"|\b(?:nobody|no one|no ?body|nothing|not a soul)(?: is|'s)? (?:in|inside) "
    rf"(?:it|there|here|the {TUB}|his {TUB}|her {TUB})(?: any ?more| now| when \S+.*)?$"
    rf"|\b{_ONE} (?:nearly |almost )?(?:broke|broken|broke out|made a break|made a run)\b",
    *_words(
        """
        escap out free off away loose run floor ceiling curtain roam wander missing disappear vanish bolt
        legged lost dropped find see not under behind hiding broke gone went into made making took shot darted
        climbing where scuttl scurri zoomed nobody nothing soul no up curtain not empty
        """
    ),
)
_OUT_OF_THE_TUB = Pattern(rf"\b{_ONE}{_HAS} out of (?:the|his|her|its|their|that|a) (?:\w+ )?{TUB}\b", "out of")
_OUT = Pattern(
    rf"^(?:help |oh no |no |oh |quick )*,? ?(?:{_ONE}|NUMBER|one of (?:them|(?:the |my )?{ANIMAL})){_HAS} out ?!", "out"
)
_NOT_AN_ESCAPE = Pattern(
    r"\bout and (?:the|his|her|its) (?:box|tank|cage|tub|viv\w*|enclosure) is (?:all )?"
    r"(?:empty|clear|cleared|stripped|emptied)\b"
    r"|\b(?:escape (?:the|this) (?:menu|screen)|escape room|escape key|escape proof|fire escape|lost "
    r"(?:it|him|her|them) (?:interest|weight)|dropped (?:it|him|her|them) (?:off|back|in)|lost (?:the )?"
    r"(?:lid|label|cap|bottle|syringe|weight|count|track))\b"
    r"|\b(?:got|taken|took|get|getting|moved|lifted) (?:him|her|it|them|the ANIMAL|ANIMAL|ENCLOSURE) out\b"
    r"|\b(?:come|comes|came|coming|get|gets|go|goes|move|moved|off|out)(?: out| off)?(?: of)? (?:the )?"
    r"(?:quarantine|isolation)\b|\b(?:has|have|does|did|will) (?:it|they|that) come out\b"
    r"|\bcome out (?:at|as|of (?:the )?eggs?)\b"
    r"|\bout of (?:quarantine|isolation|date|reach|the way|AGENT|STOCK|hospital|sight)\b"
    r"|\b(?:smell|stain|air) \w+ (?:got|come) out\b"
    r"|\bgone (?:limp|floppy|pale|quiet|stiff|cold|off|red|white|all|soft|to sleep)\b|\bout of the way\b"
    r"|\bgot (?:some|a bit|a drop|a little)(?: too| as well)*(?: ?[.!])*$|\bcan i see\b|\b(?:got|get|come|came"
    r"|coming) off (?:the|with|from)\b|\bgot away with\b"
)
_FOUND = Pattern(
    r"\b(?:found|caught|caught up with|recaptured|got hold of|tracked down) "
    rf"(?:him|her|it|them|(?:the |my )?(?:\w+ )?{ANIMAL}|ENCLOSURE)\b"
    rf"|\b(?:him|her|it|them|{ANIMAL}|ENCLOSURE)(?: is| has been| was|'s)? (?:found|caught)\b"
    r"|\b(?:got|have) (?:him|her|it|them) (?:again|back)\b(?! (?:in|home))"
    r"|^(?:and |ah |oh |ok |yes |phew |hurray |right |,)*(?:got|have got|i have got) "
    r"(?:him|her|them|ANIMAL|ENCLOSURE)(?: now| ,? ?thank \w+| ,? ?phew)? ?!?\.?$"
    r"|^(?:ah |oh |ok |yes |phew |,)*(?:here|there) (?:he|she|it) is ?!?\.?$"
    r"|^(?:ah |oh |ok |yes |phew |and |i |have |,)*got (?:him|her) (?:out|off|down|safe)\b(?! of (?:my"
    r"|the tank|"
    r"the enclosure|the viv))[^?]*$"
    rf"|\b{_ONE}{_HAS} in (?:the|his|her|its|their|a) (?:\w+ )?{TUB} (?:again|now)\b"
    r"|^(?:ok |phew |yes |ah |,)*found ?!?$"
    rf"|, (?:and )?(?:he is |she is |it is )?back in (?:the|his|her|its|their|a) (?:\w+ )?{TUB}\b"
    rf"|\b{_ONE}{_HAS} back in (?:the|his|her|its|their|a) (?:\w+ )?{TUB}\b"
    rf"|\b{_ONE}{_HAS} (?:safe|caught|found)\b(?: now| again| and sound)*$",
    *_words("found caught recaptured hold tracked again back safe got here"),
)
_PRODUCT = (
    r"(?:AGENT|STOCK|BOTTLE|MIX|concentrate|disinfectant|cleaner|cleaning stuff|solution|spray|chemicals?|product)"
)
_SOLID = r"(?:AGENT|STOCK|BOTTLE|concentrate|disinfectant|cleaner|cleaning stuff|solution|spray|chemicals?|product)"
"""A product that is tipped: a mix so much in so much is made up, not tipped over."""
_BARE = (
    r"(?= (?:it|some(?:thing)?|everything|loads|lots|all|a (?:bit|lot|load|little|drop|few|whole)|half|about|on|onto"
    r"|over|in|down|everywhere|and|what|help|by|VOLUME)\b| ?[.!?,]| *$)"
)
"""After "spilled": no thing is named, so it may be a product; where one is named, it must be one."""
_SPILLED = Pattern(
    rf"\b(?:spill(?:ed|s|age|ing)?|spilt|slopped|sloshed)\b(?:{_BARE}|(?=.*{_PRODUCT}))"
    r"(?! (?:(?:the|my|some|his|her|a bit of|a little|all the|most of the) )*"
    r"(?:water|tea|coffee|drink|food|milk|feed|crickets|substrate|soil|sand|beans|bowl|over into)\b)"
    rf"|\b(?:knocked|tipped|kicked|fell|tumbled)(?: \S+){{0,3}} over\b(?=.*{_PRODUCT})"
    rf"|{_PRODUCT} (?:has |have |is |was |just |got |'s )*(?:knocked over|tipped over|fell over|fallen over|toppled"
    r"|burst|split|leaked|leaking|smashed|cracked|dripping everywhere|gone everywhere|went everywhere|everywhere)\b"
    r"|\b(?:knocked|tipped|kicked|dropped|smashed|burst|split) (?:over )?(?:the |my |a |that )?(?:\w+ )?"
    rf"(?:of )?{_SOLID}\b(?! (?:in|into|on|onto|down|out|off))"
    rf"|\b(?:puddle|pool|lake|flood) of (?:the |my )?{_PRODUCT}\b|\blet (?:fall|drop|go of) (?:the |my |a"
    rf" )?{_PRODUCT}\b"
    rf"|{_PRODUCT} (?:is |has gone |went |got |gone )*(?:all )?(?:over|on|across) (?:the |my )?(?:\w+ )?"
    r"(?:floor|carpet|rug|floorboards|stairs|sofa)\b"
    rf"|{_PRODUCT} (?:is |has |have |just )*(?:gone|went|got|leaked|ran|all)(?: all)? (?:over|on|across|down) "
    r"(?:the |my )?(?:\w+ )?(?:shelf|bench|worktop|counter|table|tiles|room|cupboard|desk|side)\b",
    *_words(
        """
        spill spilt slopped sloshed knocked tipped kicked fell tumbled fallen toppled burst split leak
        smashed cracked everywhere dropped puddle pool lake flood floor carpet rug bench shelf worktop
        counter table tiles stairs sofa room let
        """
    ),
)
_NOT_A_SPILL = Pattern(
    r"\b(?:washing machine|dishwasher|radiator|boiler|roof|pipe|fridge|freezer|washer)\b(?!.*(?:AGENT|STOCK|BOTTLE))|"
    r"\b(?:spill (?:the )?beans|spill proof|do not spill|without spilling|not to spill|oil spill|dropped "
    rf"(?:off )?to)\b|\b(?:put|left|leave|stood|set|placed|sat) (?:the |my |some |a )?(?:\w+ )?(?:of )?{_PRODUCT}"
    r"|\b(?:water |food )?(?:bowl|dish|water|drink|tea|coffee|cup|mug|feeder)(?: has| is| was| got| 's| just| all)* "
    r"(?:spilled|spilt|slopped|knocked over|tipped over)\b"
    r"(?! (?:on|in|into|onto|over) (?:the |my )?(?:AGENT|STOCK|MIX))"
    r"|\bdropped (?:the |my |a )?(?:\w+ )?(?:sprayer|bottle|BOTTLE|cloth|sponge|brush|lid|cap|jug) (?:in|into) "
    r"(?:it|there|the (?:tank|box|cage|viv\w*|enclosure)|ENCLOSURE)$|\bspill (?:kit|tray|mat|pallet)\b"
    r"|\b(?:store|storing|stored|keep|kept|stand)\b|\bdropped (?:the )?(?:percent|strength|price)\b"
    r"|^(?:can|could|may|might|should|shall|would|will) (?:i|we|you) (?:use|put|spray|apply|try|pour|wipe|mop)\b"
)

_VESSEL = (
    r"(?:bottles?|BOTTLE|STOCK|AGENT|concentrate|disinfectant|cleaner|chemicals?|jugs?|buckets?|pails?|jerry ?can"
    r"|cans?|canister|drum|carboy|sprayer|container|lid|cap|mix|MIX|stuff|solution|it|everything|the lot)"
)
_WHOLE = r"(?:jugs?|buckets?|pails?|jerry ?can|canister|drum|carboy|BOTTLE|STOCK|container|tub of \w+|can|sprayer)"
_DOWN = (
    r"(?:floor|carpet|rug|tiles|stairs|door|cupboard|shel(?:f|ves)|rack|racks|ceiling|worktop|bench|counter|table"
    r"|floorboards?|skirting|sofa|tubs?|room|landing|hall|kitchen|step|steps|desk|patio|drawers?)"
)
_IS = r"(?: is| has| was| 's| have| all| just| only| now| been| gone| going| got| started)*"
_SPILLED_BY_PARTS = Pattern(
    # it runs, leaks, spreads where it shouldn't
    rf"\b{_VESSEL}{_IS} (?:runs?|ran|running|pour(?:s|ed|ing)|trickl\w+|drip(?:s|ping|ped)?|seep\w*|spread\w*|leak\w*"
    r"|creep\w*|flow\w*|going|gone|went|came|coming|flooding|soaking|all|out)\b(?: \w+){0,3}? "
    r"(?:over|down|under|across|along|through|towards?|into|onto|in|out of|behind|on) (?:the |my |a |under |behind )*"
    rf"(?:back of the |bottom of the )?(?:\w+ )?{_DOWN}\b"
    rf"|\b(?:is|'s|has|was){_IS} (?:pouring|gushing|running|flooding|leaking) (?:out|everywhere|all over)\b"
    rf"|\b{_VESSEL}{_IS} (?:split|burst|smashed|cracked|toppled|leaking|leaked|exploded|collapsed|tipped over"
    r"|fallen over|fell over)\b(?=.*\b(?:pour\w*|everywhere|floor|out|leak\w*|over|help|all|puddle|now|down)\b)"
    rf"|\b{_VESSEL}{_IS} (?:fell|dropped|toppled|came|tipped|rolled)(?: \w+){{0,4}} and (?:has |it )*"
    r"(?:burst|split|smashed|cracked|broke|emptied|leaked|poured)\b"
    r"|\b(?:AGENT|STOCK|BOTTLE|MIX|mix|disinfectant|concentrate|cleaner|chemical|solution)(?: is| 's| has gone) "
    rf"(?:all )?(?:under|over|down|behind|through|across) (?:the |my )?(?:\w+ )?{_DOWN}\b"
    r"|^VOLUME (?:of \w+ )?(?:all )?(?:on|over|across) (?:the |my )?(?:\w+ )?(?:tiles|floor|carpet|rug|stairs)\b"
    # what is full of it was turned over
    r"|\b(?:knocked|tipped|kicked|upset|upended|dropped|spilled)(?: over)? (?:the |my |a |that )?"
    rf"(?:whole |full |entire |big |bloody |half )*(?:\w+ )?{_WHOLE}(?: \S+)? "
    r"(?:over|off|down the (?!drain|sink|toilet|loo))"
    r"|\b(?:have|'ve|i|just) (?:just |only |gone and )*(?:knocked|tipped|kicked|upset|upended)(?: over)? "
    r"(?:the |my |a )?(?:whole |full |entire |big |bloody )*(?:bucket|pail|jug|drum|canister)(?: over)?$"
    rf"|\b(?:knocked|kicked|bumped|caught|nudged) (?:the |my |a )?(?:\w+ )?{_WHOLE[:-1]}|AGENT) (?:off"
    r"|over)\b|\b(?:tub|tin|bag|box|bottle|bucket|jug|BOTTLE)(?: of \w+)?(?: is| 's| has)? gone over\b|\b(?:lid|cap"
    r"|top|nozzle)(?: has| 's)? (?:came|come|popped|flew) off\b.*\b(?:soaked|everywhere|everything|all over"
    r"|leak\w*)\b"
    # and there it is
    rf"|\b(?:it|everything|the lot|stuff){_IS} (?:all )?(?:over|across) (?:the |my )?(?:\w+ )?{_DOWN}\b"
    rf"|\b(?:lid|cap|top|nozzle)\b.*\b(?:it|everything|stuff){_IS} everywhere\b"
    r"|^(?:oh no |help |god )*(?:it|everything) (?:is|'s|went|has gone) everywhere\b",
    *_words(
        """
        run ran pour trickl drip seep spread leak creep flow going gone went came coming flood soak out all split burst
        smash crack toppl explod collaps tipped fallen fell knocked kicked upset upended dropped spilled bumped nudged
        caught over across everywhere come popped flew rolled under down behind through fell came dropped VOLUME
        """
    ),
)
_NO_PRODUCT = Pattern(
    r"\b(?:water|tea|coffee|soil|sand|substrate|bedding|poo\w*|urates?|mess|food|crickets|bugs?|locusts?|feed|milk"
    r"|steam|light|cable|plants?|drain|sink|toilet|loo|window|smell\w*|air|fumes?|escaped|mites?|ORGANISM|ANIMAL|he"
    r"|she|they|timer|dry|dried|wiped|sprayed|rinsed|washed|mopped|week|yesterday)\b"
    r"|^(?:so |and |ok )*(?:can|could|may|might|should|shall|would|will|do|does|is|are|how|what|which|where|when"
    r"|if)\b"
)
"""Something else that lies about, or work that is told or asked."""

WORDS = words_in(_ESCAPED, _OUT_OF_THE_TUB, _OUT, _NOT_AN_ESCAPE, _FOUND, _SPILLED, _NOT_A_SPILL)


def escaped(text: str, *, one_waits: bool) -> bool:
    """True when a masked text says that an animal got out.

    one_waits: an animal waits in a tub on record; only then is "out of the tub" no step of a clean.
    """
    if _NOT_AN_ESCAPE.search(text) or goes_into_a_tub(text) or _ORDINARY_OUT.search(text):
        return False
    if _ESCAPED.search(text) or _OUT.search(text):
        return True
    return _OUT_OF_THE_TUB.search(text) is not None and (one_waits or text.endswith("!"))


def sprayed_everywhere(text: str) -> bool:
    """ "Sprayed bleach everywhere": what a clean is for, and no spill."""
    return _EVERYWHERE.search(text) is not None


_EVERYWHERE = Pattern(
    r"^(?!.*\b(?:oops|accident\w*|spilled|spilt|knocked|dropped|leak\w*|floor|carpet|burst)\b).*\b"
    r"(?:sprayed|misted|spritzed)(?: \w+){0,3}? (?:everywhere|all over"
    r"(?: (?:it|there|inside|the (?:tank|box|cage|viv\w*)))?)\b",
    "everywhere",
    "all over",
)
_ONE_OF_OURS = rf"(?:he|she|it|they|everyone|{ANIMAL}|ENCLOSURE)"
_INTO_A_TUB = (
    r"\bout of (?:the|his|her|its|their|ENCLOSURE) ?(?:\w+ )?\w+ ?,? "
    r"(?:(?:and|now|but|is|he|she|it|safe|shut|safely) )*(?:in|into|inside) (?:a|the|his|her|its|their) "
    rf"(?:\w+ )?{TUB}\b"
)
"""Out of one home and into another: moved."""
_ORDINARY_OUT = Pattern(
    # out of what is no home: food, work, breath
    rf"\bout of (?!(?:the|his|her|its|their|that|this|a|my|our|there|here|it|ENCLOSURE)\b|{TUB}\b|tanks?\b|cages?\b"
    rf"|vivs?\b|vivarium\b|enclosures?\b|hand\b|nowhere\b|control\b)\w+|\bout of (?:his|her|its) skin\b|{_INTO_A_TUB}"
    rf"|\b{_ONE_OF_OURS}(?: is| are| 's)? (?:not|still not|nearly|almost) out(?: yet)?$"
    # long ago, or seen to be all right
    r"|\b(?:last (?:year|month|week|summer|winter|spring|autumn|time)|(?:years?|months?|weeks?|ages) ago|once"
    r"|back then)$"
    rf"|\b{_ONE_OF_OURS}(?: is| 's)? (?:under|in|behind|on) (?:the|his|her|its) "
    r"(?:hide|log|rock|branch|leaves|towel|moss|plant|cork|perch|substrate|heat mat)\b"
    r"|\bgone (?:to (?:bed|work|school|sleep|town|the (?:shops?|vet|loo|toilet|door|kitchen))|home|shopping|upstairs"
    r"|downstairs)\b"
    # what nobody here keeps in a tank goes in and out
    r"|^(?:(?:oh|the|my|our|her|his|neighbour 's|and|,) ?)*"
    r"(?:cats?|dogs?|puppy|kitten|kids?|hamster|son|daughter|wife|husband|mum|dad)(?: has| have| is| 's| just)* "
    r"(?:got|gone|ran|run|went|escaped|is|bolted|out)\b"
    r"|(?:AGENT|STOCK|BOTTLE|cleaner|spray|sprayer|bottles?|cloths?|sponges?|brush|gloves?|buckets?|towels?|mop|lid"
    r"|label|food|stuff|descaler|polish|remover|keys?|phone|torch|syringe|jug)(?: is| are| 's)? (?:\w+ )?"
    r"(?:in|under|behind|into) (?:the |my )?\w+"
    rf"|\b(?:can not|could not|can) (?:find|see) (?:my|the|his|her|any|a) (?!(?:\w+ )?{ANIMAL})"
    r"(?!(?:any|no|in|out|now)\w*\b)\w+(?: \w+)?$",
)
"""Talk of what is out, or can't be found, that tells of no animal loose."""


def goes_into_a_tub(text: str) -> bool:
    """ "She's going in her tub", "out of the tank and in a tub": shut in, not out."""
    return _GOES_INTO_A_TUB.match(text) is not None or _IS_IN_A_TUB.match(text) is not None


def went_into_a_tub(text: str) -> bool:
    """The same, as something that is done."""
    done = "gone" in text.split() or "went" in text.split() or _IS_IN_A_TUB.match(text) is not None
    return goes_into_a_tub(text) and done


_IS_IN_A_TUB = Pattern(rf"^(?:(?:ok|right|so|and|now|,) ?)*{_ONE}{_HAS} {_INTO_A_TUB}(?: now| safe| ok| fine)*[ .]*$")


_GOES_INTO_A_TUB = Pattern(
    rf"^(?:(?:ok|right|so|and|now|,) ?)*{_ONE}(?: is| has| are| have| 's)? (?:goes|going|gone|went|go) (?:straight )?"
    rf"(?:in|into|inside) (?:the|his|her|its|their|a) (?:waiting )?(?:\w+ )?{TUB}(?: now| first| ok| fine)*"
    r"(?: ?[.!])*$",
    *_words("goes going gone went go"),
)


def still_in_the_room(text: str) -> bool:
    """ "The lizard's still in the room": it didn't get out, it is to be taken out before the work."""
    return _STILL_IN_THE_ROOM.match(text) is not None


_STILL_IN_THE_ROOM = Pattern(
    r"^(?:(?:but|and|oh|the|my|our|what if|both|all|,) ?)*(?:\w+ )?"
    rf"(?:{ANIMAL}|ENCLOSURE|he|she|they|the kids?|dog|cat)(?: is| are| 's)? (?:still )?(?:in|inside) "
    r"(?:the|this|that|the same) room(?: (?:with me|too|as well|though))*(?: ?[.!?])*$",
    "room",
)


def found(text: str) -> bool:
    """True when a masked text says that a loose animal is found."""
    return _FOUND.search(text) is not None and not text.endswith("?")


def spilled(text: str) -> bool:
    """True when a masked text says that a product was spilled."""
    if _NOT_A_SPILL.search(text):
        return False
    if _SPILLED.search(text):
        return True
    return _SPILLED_BY_PARTS.search(text) is not None and _NO_PRODUCT.search(text) is None


def plain_talk(intent: str, text: str) -> bool:
    """True when a text that only looks like this alarm names nothing that alarms: "I dropped the lid"."""
    if intent == "spill":
        about = _ABOUT_A_SPILL.search(text) is not None and _NOT_A_SPILL.search(text) is None
        return not about or _DRY_SPILL.search(text) is not None
    if intent == "escape" and goes_into_a_tub(text):
        return True
    return intent == "escape" and any(no.search(text) for no in (_NOT_AN_ESCAPE, _ON_ME, _ORDINARY_OUT))


_ON_ME = Pattern(
    r"\b(?:on|up|in|round|around|over|onto|across) my (?:\w+ )?(?:head|arms?|hands?|shoulders?|neck|lap|legs?|knees?)\b"
)
_ABOUT_A_SPILL = Pattern(
    r"\bspill\w*|\bspilt\b"
    r"|\b(?:puddle|pool|flood\w*|lake|mop|soaks? up|leak\w*|burst|bust|split|smash\w*|crack\w*|toppl\w*|slopp\w*"
    r"|slosh\w*|everywhere|carpet)\b"
    rf"|(?=.*{_PRODUCT}).*\b(?:knock\w*|tip\w*|drop\w*|fell|fallen|kick\w*|over|floor|came off|bucket)\b"
)
_DRY_SPILL = Pattern(
    r"\b(?:spill\w*|spilt) (?:(?:the|my|some|his|her|a bit of|a little|all the|most of the|all his|all her) )*"
    r"(?:water|tea|coffee|drink|food|milk|feed|crickets|substrate|soil|sand|bowl)\b"
)


_NEUTRAL = Pattern(
    r"\bneutrali[sz]\w*\b"
    r"|\b(?:put|pour|tip|use|spray|throw|add)\b(?: \S+){0,3} (?:AGENT|STOCK|BOTTLE|baking soda|soda)(?: \w+)? "
    r"(?:on|onto|over|to) (?:it|that|the (?:puddle|spill|mess)|top)\b"
)


def neutralises(plain: str) -> bool:
    """True when something is to be put onto a spill to make it harmless."""
    return _NEUTRAL.search(plain) is not None
