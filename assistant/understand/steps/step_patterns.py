"""How a round's steps are said: done, and mentioned in whatever form. What may count is `claimed_steps`."""

from __future__ import annotations

from assistant.understand.named.animal_words import ONE_ANIMAL
from assistant.understand.named.tub_words import TUB
from assistant.understand.text.patterns import Pattern

_ONE = (
    r"(?:he|she|they|it|him|her|them|this one|ANIMAL|(?:the |my |our |his |her )?"
    rf"(?:animals?|{ONE_ANIMAL}|reptile|critter|baby|babies|little one|little guy|big guy|guy|girl|boy"
    rf"|\w+ {ONE_ANIMAL}))"
)
_ALL_OF_THEM = (
    r"(?:both(?: of them)?|all (?:two|three|four|five|NUMBER|of them)(?: of them)?|everyone|everybody|they all)"
    r"(?: (?:on|in) (?:the )?\w+(?: \w+)?)?"
)
_IS = r"(?: is| are| was| were| 's| has been| have been| has| am)?"
_NOW = (
    r"(?: all| now| safely| already| been| both| finally| just| fully| completely| totally| properly| really"
    r"| nice and| safe and"
)
_NOW += r"| out and)*"
_WAIT = r"(?:(?:holding|spare|travel|travelling|temporary|temp|waiting|plastic|carry|transport|feeding|other) )"
_LITTER = (
    r"(?:substrate|bedding|litter|paper|decor|decorations|furniture|furnishings|dishes|bowls?|hides?|branches|plants"
    r"|everything|muck|mess|poop?|droppings|all (?:the |his |her |its )?(?:stuff|bits|things))"
)
DONE = (
    r"(?:(?:all |both |now )*(?:done(?: with)?|finished(?: up| off)?(?: with)?|through(?= with)|over|completed?"
    r"|sorted|taken care of|dealt with|ticked off|out of the way|seen to|behind (?:us|me)|wrapped up|crossed off))"
)
_WET_STUFF = r"(?:AGENT|STOCK|BOTTLE|disinfectant|spray)"

_PATTERNS: tuple[tuple[str, str], ...] = (
    # Waiting tubs come first: "back in the spare tub" is not back home.
    ("move out", rf"\b{_ONE}{_IS}{_NOW} (?:back )?in(?:to)? (?:the |a |his |her |their |its )?{_WAIT}{TUB}\b"),
    (
        "move out",
        r"\b(?:put|popped|placed|moved|got|transferred|shifted|relocated|boxed|tubbed|bagged|taken|took)\b"
        rf"(?: \S+){{0,4}}? (?:in|into|to|over to|across to) (?:the |a |his |her |their |its )?{_WAIT}?{TUB}\b",
    ),
    (
        "move out",
        rf"\b{_ONE}{_IS}{_NOW} (?:sitting|waiting|settled|shut|tucked up|safe) in (?:the |a |his |her |its )?{TUB}\b",
    ),
    ("move out", rf"\bENCLOSURE(?: is| 's){_NOW} in (?:the |a |his |her |its ){TUB}\b"),
    ("move out", rf"^(?:the |my )?ENCLOSURE are{_NOW} out\b(?! of)"),  # "pepper and juniper are out"
    # "Keep him in the tub" is a wish, and tells of nothing done.
    ("move out", rf"(?<!keep )(?<!leave )(?<!keeping )(?<!leaving )\b{_ONE}{_IS}{_NOW} in (?:the |a )?{TUB}\b"),
    (
        "move out",
        r"\b(?:took|got|taken|lifted|scooped|removed|pulled|fetched|moved|have|brought|coaxed|tempted"
        rf"|carried|cleared) {_ONE}{_NOW} out\b",
    ),
    (
        "move out",
        r"\b(?:took|got|lifted|moved|brought|have) both(?: of)?(?: the| my| these| those| them)?"
        rf"(?: (?!{_LITTER})\w+){{0,2}} out\b",
    ),
    ("move out", rf"\bmoved {_ONE}(?: across| over)?(?: to| into|$)"),
    ("move out", r"\bmoved (?:ENCLOSURE )?out\b|\b(?:moving|move) out(?: is| 's)? " + DONE),
    ("move out", rf"\b{_ONE}{_IS}{_NOW} (?:out|moved)\b"),
    ("move out", rf"\b{_ALL_OF_THEM}(?: are| is| 's| have been| got)?{_NOW} (?:out|moved|tubbed|boxed)\b"),
    # An animal's own name stands for its home, so "taken pepper out" is masked like a tank.
    ("move out", r"\b(?:took|got|taken|lifted|scooped|fetched|moved|brought) ENCLOSURE out\b"),
    ("move out", rf"\b(?:tubbed|boxed) (?:up )?{_ONE}|\b{_ONE}{_IS}{_NOW} (?:tubbed|boxed)\b"),
    (
        "move out",
        r"^(?:all )?out$|^out (?:in (?:the |a |his |her |their |its )?"
        + TUB
        + r"s?\b|and|,|(?=(?:cleared|emptied|stripped|washed|scrubbed)\b))"
        r"|\bENCLOSURE(?: is| 's| :) out\b|^(?:the )?ENCLOSURE out(?= ,|$)",
    ),
    ("return", rf"\b(?:put|popped|placed|moved|got|let|set) {_ONE}{_NOW} (?:straight )?(?:back|home)\b"),
    ("return", r"\b(?:put|popped|placed|got|let) ENCLOSURE (?:straight )?back(?: in\b| home\b|$)"),
    (
        "return",
        r"\b(?:someone|somebody|kids?|child|son|daughter|wife|husband|partner|mum|mom|dad|brother|sister)(?: has"
        r"| 's| have"
        rf"| just)* (?:put|let|popped) (?:{_ONE}|(?:the |my )?(?:ANIMAL|ENCLOSURE)) in(?: there)?$",
    ),
    # With no "back" said, only "already" tells it from being put in the tub.
    ("return", rf"\balready (?:put|popped|placed|got) (?:{_ONE}|(?:the |my )?(?:ANIMAL|ENCLOSURE)) in(?: again)?$"),
    ("return", rf"\b(?:put|popped|placed) (?:{_ONE}|(?:the |my )?(?:ANIMAL|ENCLOSURE)) in (?:already|again)$"),
    (
        "return",
        rf"\b(?:{_ONE}|{_ALL_OF_THEM}|he|she|they|it|(?:the |my )?(?:ANIMAL|ENCLOSURE))"
        rf"(?: has| have| is| are| 's)?{_NOW} (?:got|climbed|crawled|crept|slipped|jumped|ran|went|wandered|snuck"
        r"|hopped|escaped|sneaked|gone) (?:straight |right )?back "
        rf"(?:in(?!to)|inside|into (?:it|there|the wet|ENCLOSURE))\b(?! {TUB})"
        rf"(?! (?:the|his|her|their|a|its) (?:{_WAIT})?{TUB})",
    ),
    (
        "return",
        rf"\b{_ONE}(?: has| have)?{_NOW} (?:fell|fallen|jumped|dropped|climbed|crawled|slipped|ran|hopped) "
        r"(?:straight )?in(?:to)?(?: it| there| the wet)?(?=$| ,| and\b| now\b)",
    ),
    (
        "return",
        rf"^(?:{_ONE}|ENCLOSURE|both(?: of them)?|all of them|they both)(?: is| are| 's){_NOW} in(?: now| again)?"
        r"(?=$| ,)",
    ),
    ("return", rf"\b{_ALL_OF_THEM}(?: are| is| 's| have| has)?{_NOW} (?:gone )?(?:back|home|returned)\b"),
    (
        "return",
        r"^(?:the |my )?ENCLOSURE(?: is| are| 's)?(?: now| safely)* (?:back(?: in| home)?|home)(?: now| again)?\b",
    ),
    (
        "return",
        rf"\b{_ONE}{_IS}{_NOW} (?:gone )?(?:back|home|returned)\b|\breturned {_ONE}|^(?:all )?back (?:in|home)\b"
        r"|^returned$",
    ),
    (
        "dry",
        r"\b(?:wiped|gave (?:it|that|them) a wipe|wiped (?:it|that|them))(?: \w+){0,3}? with (?:a |the |some )?"
        r"(?:clean )?dry (?:paper )?(?:towels?|cloths?|rags?|paper)\b",
    ),
    (
        "dry",
        r"\b(?:wiped|rubbed|patted|mopped|buffed)(?: (?!with\b)\w+){0,3}? dry\b"
        r"|\b(?:wiped|rubbed|patted|mopped|buffed)(?: \w+){0,3}? with (?:\w+ )?"
        r"(?:kitchen (?:roll|paper|towel)|paper towels?|loo roll|toilet paper)\b",
    ),
    (
        "rinse",
        r"\bwashed (?:it |that |this |them |everything |all of it |ENCLOSURE )?(?:all )?(?:down|off|out) with "
        r"(?:\w+ ){0,2}?water\b",
    ),
    (
        "rinse",
        r"\b(?:washed|hosed) (?:it |that |this |them |everything |all of it |all |ENCLOSURE )?(?:all )?off"
        r"(?=$| ,| now\b| and\b)",
    ),
    (
        "rinse",
        r"\b(?:washed|hosed|flushed|wiped)(?: \S+){0,3} (?:AGENT|STOCK|BOTTLE) off\b"
        r"|\b(?:washed|wiped) off (?:the )?AGENT"
        r"|^(?:all )?(?:the )?(?:AGENT|STOCK|disinfectant)(?: is| 's) (?:all |now )*off(?: now| it)?$",
    ),
    ("clear", r"\b(?:cleared|emptied|stripped|gutted|clearing(?: out)?(?: is| 's)? " + DONE + ")"),
    (
        "clear",
        r"\b(?:hoovered|vacuumed|brushed|swept)(?: (?:it|that|them|everything|all of it|ENCLOSURE|the \w+))? "
        r"(?:all )?out\b",
    ),
    (
        "clear",
        r"\b(?:took|taken|got|pulled|removed|scooped|binned|chucked|threw|thrown|tossed|tipped|lifted)"
        rf"(?: out| away)? (?:the |all |old |dirty |used |soiled |wet |rest of )*{_LITTER}",
    ),
    (
        "clear",
        rf"\b(?:ENCLOSURE|it|both|they|the (?:tank|box|cage|tub|viv\w*))(?: is| are| 's){_NOW} "
        r"(?:empty|bare|stripped|emptied|stripped out)(?: now)?(?=$| ,| and\b)",
    ),
    (
        "clear",
        r"^(?:ok |so |and |right |now |all )*(?:(?:the |my )?(?:tank|cage|box|viv|vivarium|enclosure)(?: is| 's)?"
        r"(?: all| now)* )?empty(?: now)?(?=$| ,| and\b)|\bnothing(?: is)? left in (?:it|there|ENCLOSURE)\b",
    ),
    (
        "clear",
        rf"\b{_LITTER}(?: and {_LITTER})*{_IS}{_NOW} in the (?:bin|trash|rubbish|sink|bucket|garbage)\b"
        rf"|\b(?:stuff|everything|all the stuff|his things|her things){_IS}{_NOW} out(?: of (?:it|there))?"
        r"(?=$| ,| and\b)",
    ),
    ("clear", rf"\bcleaned out (?:the |all the |his |her )?(?:sand|soil|{_LITTER})"),
    ("clear", rf"\b{_LITTER}(?: and {_LITTER})*{_IS}{_NOW} (?:out|gone|removed|binned)\b"),
    (
        "wash",
        r"\b(?:washed|scrubbed|soaped|shampooed)\b(?!(?: \w+)? hands)|\b(?:washing|scrubbing|wash)(?: is"
        r"| 's)? " + DONE,
    ),
    (
        "wash",
        r"\b(?:cleaned|sponged|mopped|brushed|did|done|went over|wiped|given|gave) "
        r"(?:it|that|this|them|everything|ENCLOSURE|the \w+)"
        r"(?: (?:all|out|down|over|a|good|quick|wash|scrub|clean|going))* with (?:the |some |warm |hot |plenty of )*"
        r"(?:dish )?(?:soap|detergent|soapy water|washing up liquid|suds)\b"
        r"|^(?:ok |and |so )*soap and water(?=$| ,| done| and\b)",
    ),
    ("wash", rf"\b{DONE} (?:with )?(?:the )?(?:washing|scrubbing)|\b(?:done|finished) (?:with )?the wash\b"),
    ("rinse", r"\b(?:done|finished) (?:with )?the rinse\b"),
    ("wash", r"\brinsed (?:off |out )?(?:all )?(?:the )?(?:soap|suds|detergent|dish soap)"),
    ("wash", r"\b(?:soap|suds|detergent)(?: is| are| 's| has been| all)* (?:rinsed|off|gone|washed)"),
    (
        "apply",
        r"\b(?:sprayed|resprayed|applied|spritzed|squirted|doused|drenched|coated|slathered|misted|saturated|soaked"
        r"|wetted)\b",
    ),
    ("apply", rf"\b{DONE} (?:with )?(?:the )?(?:spraying|applying)|\b(?:spraying|spray)(?: is| 's)? {DONE}"),
    (
        "apply",
        rf"(?<![a-z]){_WET_STUFF}(?: is| 's| has)?(?: gone| all| now)* (?:on|down|on there|on it|applied)"
        r"(?: now| everywhere| the (?:glass|walls?|tank|viv\w*|box|tub|cage|enclosure|lid|lot|surfaces?|sides"
        r"|branches|hide|decor|base|inside)| ENCLOSURE| the ENCLOSURE)*(?: walls?| glass| floor)?$",
    ),
    ("apply", rf"\b(?:done|finished) putting (?:the |my )?{_WET_STUFF} (?:on|over|down)\b"),
    ("apply", rf"\bbeen (?:all )?over (?:\S+ ){{1,3}}?with (?:the |my )?(?:{_WET_STUFF}|sprayer)\b"),
    (
        "apply",
        r"\b(?:put|got|have|poured|brushed|wiped|used|laid|slapped|sloshed)(?: \S+){0,4}? (?:AGENT|STOCK|BOTTLE)"
        r"(?: all)? (?:on|over|onto|in|down)\b",
    ),
    (
        "apply",
        r"\b(?:is|are|'s) (?:all |now |nicely )*(?:covered|dripping|drenched|coated) (?:in|with) "
        rf"(?:the )?{_WET_STUFF}",
    ),
    ("apply", r"\bwiped(?: \S+){0,5}? (?:with|in) (?:the |my )?(?:AGENT|STOCK|BOTTLE)"),
    (
        "apply",
        r"\bkept (?:it|that|them|everything|ENCLOSURE)(?: \w+)? wet (?:with|using) (?:the |some |more )*"
        r"(?:AGENT|STOCK|BOTTLE)\b"
        r"|\b(?:gave|given) (?:it|that|them|ENCLOSURE|the \w+) (?:a |an |another |one )*(?:\w+ )?"
        r"(?:wipe|wash|scrub|spray|rinse|once over) (?:of|with|in) (?:the |some )?(?:AGENT|STOCK|BOTTLE)\b"
        r"|\b(?:a )?(?:bit|drop|splash|little|dab|squirt) of (?:the )?(?:AGENT|STOCK|BOTTLE) went (?:on|in|over)\b"
        r"|\bused (?:the |a bit of |some |a little )*(?:AGENT|STOCK|BOTTLE) to (?:get|take|clean|lift)\b",
    ),
    (
        "apply",
        r"\b(?:rinsed|dried|hosed|flushed|mopped|washed|scrubbed)(?: \S+){0,3}? (?:with|in|using) "
        r"(?:the |some |my |a |a bit of |more )*(?:\w+ )?(?:AGENT|STOCK|BOTTLE)\b(?! off)",
    ),
    ("wash", r"\b(?:rinsed|wiped)(?: \S+){0,3}? with (?:\w+ ){0,2}?(?:soapy|soap|suds)\b"),
    ("apply", r"\bused (?:the |my )?(?:AGENT|STOCK|BOTTLE) (?:on|in) "),
    (
        "hold",
        r"^(?:(?:ok|right|so|there) ,? ?)*(?:that|it)(?: is| 's) (?:the |my |all )*DURATION(?: up| done| now| over)?$",
    ),
    ("hold", rf"\b{DONE} (?:with )?(?:the )?(?:holding|hold|wet time|soaking)"),
    (
        "hold",
        r"\b(?:hold|holding|wet time|contact time|soak time|soaking|timer|time|DURATION|minutes|countdown)"
        r"(?: is| are| 's| has| have)?(?: all)? (?:up|over|done|finished|complete|ended|served|passed|gone)\b"
        r"(?! (?:the|your) )",
    ),
    (
        "hold",
        r"\b(?:stayed|kept|remained|been)(?: it| everything| all of it| nice and| really| good and| properly"
        r"| soaking)* wet\b",
    ),
    ("hold", r"\bwet (?:the )?(?:whole|entire|full|all) (?:the )?(?:time|way|through|DURATION)|\bit never dried\b"),
    (
        "rinse",
        r"\b(?:rinsed|hosed|flushed)\b|\b(?:rinsing|rinse)(?: is| 's)? "
        + DONE
        + rf"|\b{DONE} (?:with )?(?:the )?rinsing",
    ),
    ("wipe", r"\b(?:gone|been|went) over (?:\S+ ){1,3}with (?:clean|plain|fresh) water\b"),
    ("wipe", rf"\bwiped\b|\bwiping(?: is| 's)? {DONE}|\b{DONE} (?:with )?(?:the )?wiping"),
    (
        "dry",
        r"\bdry\b(?= ?(?:$|now|[,.!?]|and|as|too|already|all|no smell|to the touch|everywhere|inside|enough"
        r"|again))|\b(?:dried|towelled|toweled|towel dry)\b|\bdrying(?: is| 's)? " + DONE + rf"|\b{DONE} drying",
    ),
    (
        "air",
        rf"\b(?:aired|ventilated)\b|\b(?:airing|ventilating|ventilation)(?: out)?(?: is| 's)? {DONE}"
        rf"|\b{DONE} (?:airing|ventilating)",
    ),
)
_HINTS: dict[str, tuple[str, ...]] = {
    "move out": (
        "out",
        "moved",
        "tub",
        "box",
        "bin",
        "bucket",
        "carrier",
        "tote",
        "container",
        "bag",
        "pillow",
        "faun",
        "crate",
    ),
    "return": ("back", "home", "return", "already", "again", " in"),
    "clear": (
        "nothing",
        " in the ",
        "bare",
        "clean",
        "clear",
        "empt",
        "strip",
        "gutted",
        "hoover",
        "vacuum",
        "brush",
        "swept",
        "took",
        "taken",
        "pull",
        "remov",
        "scoop",
        "binn",
        "chuck",
        "threw",
        "thrown",
        "tossed",
        "tipp",
        "lift",
        "out",
        "gone",
        "got",
    ),
    "wash": ("rins", "wip", "wash", "scrub", "soap", "shampoo", "suds", "detergent"),
    "apply": (
        "kept",
        "gave",
        "given",
        "went",
        "scrub",
        "wash",
        "cover",
        "drip",
        "laid",
        "slapped",
        "sloshed",
        "spray",
        "appl",
        "squirt",
        "spritz",
        "dous",
        "drench",
        "coat",
        "slather",
        "mist",
        "satur",
        "soak",
        "wett",
        " on",
        " over",
        " down",
        " in",
        "wip",
        "used",
        "rins",
        "dried",
        "flush",
        "mopp",
    ),
    "hold": ("hold", "wet", "time", "soak", "DURATION", "minutes", "countdown", "dried"),
    "rinse": ("rins", "hos", "flush", "wash", "wip", " off"),
    "wipe": ("wip", "water"),
    "dry": ("dry", "dri", "towel", "wip", "roll", "paper"),
    "air": ("air", "ventil"),
}
STEPS = tuple((step, Pattern(pattern, *_HINTS[step])) for step, pattern in _PATTERNS)

# The words of a step in any form, to see which one is asked about or still to come.
MENTIONED: tuple[tuple[str, Pattern], ...] = tuple(
    (step, Pattern(pattern))
    for step, pattern in (
        ("move out", r"\bnot out\b|\b(?:move|moving|moved|take|taking) (?:\w+ )?out\b"),
        ("clear", r"\bclear(?:ed|ing)?\b"),
        ("wash", r"\b(?:wash(?:ed|ing)?|scrub(?:bed|bing)?)\b(?!(?: \w+)? hands)"),
        ("apply", r"\b(?:spray(?:ed|ing)?|appl(?:y|ied|ying)|mist(?:ed|ing)?)\b"),
        ("hold", r"\bhold(?:ing)?\b"),
        ("rinse", r"\b(?:rins(?:e|ed|ing)|hos(?:e|ed|ing))\b"),
        ("wipe", r"\b(?:wip(?:e|ed|ing))\b"),
        ("dry", r"\b(?:dr(?:y|ied|ying)|wet|damp)\b"),
        ("air", r"\bair(?:ed|ing)?\b"),
        ("return", r"\bback\b"),
    )
)
