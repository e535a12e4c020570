"""What is told later on and takes a wet time or an airing back: too short, the wrong mix, dirty again.

None of it names a step. The wet time is then one that didn't hold; the airing is open until the keeper says that
nothing smells.
"""

from __future__ import annotations

from dataclasses import replace

from assistant.contract import Slots
from assistant.core.round.rounds import is_open, is_sprayed, waits_on_hold
from assistant.understand.bottles.wrong_mix import mix_was_wrong
from assistant.understand.look import Look
from assistant.understand.named.animal_words import ONE_ANIMAL
from assistant.understand.named.unknown_names import OF_WHAT_NOBODY_KNOWS
from assistant.understand.question.may_be import is_told
from assistant.understand.steps.rinsed_when import DRY_TO_COME, rinsed_before_its_end
from assistant.understand.text.parts_of_it import FILLING, FITTING, PART, WHICH
from assistant.understand.text.patterns import Pattern, words_in

_ONLY_SO_LONG = Pattern(
    r"\b(?:only|just|barely|hardly|about)? ?(?:stayed|kept|was|left) (?:it )?(?:only |just |barely |about )*(?:wet )?"
    r"(?:only |just |barely |about |for )*DURATION\b|\bonly (?:waited|gave it|had it on|left it)(?: \w+)* DURATION\b",
    "DURATION",
)
_NO_WET_TIME = Pattern(
    r"\b(?:lied|made (?:it |that )?up|was wrong|fibbed|guessed|cheated) (?:about|on) (?:the )?(?:wet time|time"
    r"|timer|minutes"
    r"|waiting|hold)\b|\b(?:did not|never) (?:wait|time it|really wait|leave it)\b|\bskipped the (?:wait|wet time"
    r"|timer)\b|\b(?:gave|given) up (?:on |with )?(?:the )?(?:wait|waiting|wet time|timer)\b|\bstopped waiting\b",
    *("lied", "made", "wrong", "fibbed", "guessed", "cheated", "wait", "time", "leave"),
)
_SHORTER = Pattern(
    r"\b(?:lied|fibbed|cheated|made it up|guessed) (?:about|on|that) (?:it |the \w+ )?(?:staying|being|stayed"
    r"|was) wet\b"
    r"|\b(?:not|do not know|no idea) (?:quite |really |so )?(?:sure|certain|if|whether)?(?: if| that"
    r"| whether)? ?it (?:was|stayed|is)"
    r" (?:still |really )?wet (?:for )?(?:all|the (?:whole|full|entire)|long enough|DURATION|NUMBER)\b"
    r"|\b(?:bit|little|too|rather) (?:too )?(?:quick|short|hasty|early) (?:with|on) the (?:DURATION|wait|wet time"
    r"|timer|time"
    r"|minutes)\b|\b(?:can not|could not) have been (?:the |a )?(?:full |whole )?(?:DURATION|time|minutes"
    r"|that long|long enough)\b"
    r"|\bdr(?:ied|y) (?:out |up |off )?(?:during|in|within|halfway through|before the end of) the (?:NUMBER"
    r"|DURATION|ten|five"
    r"|time|minutes|wait|wet time)\b|\bmore like (?:NUMBER|DURATION|six|five|four|three|two) (?:than|not)\b",
    *(
        "lied",
        "fibbed",
        "cheated",
        "made",
        "guessed",
        "wet",
        "quick",
        "short",
        "hasty",
        "early",
        "have been",
        "dr",
        "like",
    ),
)
"""The same in the words of somebody who owns up to it."""
_NO_MIX = Pattern(
    r"\b(?:BOTTLE|bottle|it|that|mix|spray|stuff) (?:was|is|had|has|held)(?: \w+){0,2}? (?:only |just "
    r"|plain )+water\b"
    r"|\b(?:BOTTLE|bottle|sprayer) (?:was|had) (?:\w+ )?(?:empty|run out|ran out|almost nothing)\b"
    r"|\b(?:it|that|this|BOTTLE|the mix|mix) was (?:\w+ )?(?:old|an old|expired|out of date|past it|stale"
    r"|yesterday 's)"
    r"(?: (?:mix|batch|stuff|fill))?\b"
    r"|\b(?:mix|it|that|BOTTLE) was (?:\w+ )?(?:too weak|half strength|mixed wrong|diluted wrong"
    r"|the wrong strength)\b"
    r"|\b(?:misted|sprayed|wetted|topped|kept)(?: (?:it|that|them|everything|all of it|ENCLOSURE|the glass"
    r"|the walls?|again|wet|up|down|over))* with (?:just |only |some |plain |clean |a bit of "
    r"|a little )*water\b"
    r"|\b(?:mist|misting|spray|squirt|spritz|wetting|misted|sprayed|topped) (?:\w+ ){0,3}?(?:from|with"
    r"|out of) (?:the |a |my )?"
    r"(?:tap|water|misting|plant|pump)(?: water)? (?:sprayer|spray|mister|bottle)\b"
    r"|\b(?:sprayed|misted|spritzed) (?:some |a bit of |plain |warm )*water\b(?!.*humid)"
    r"|\badded (?:some |a bit of |a little |more )*water\b(?! to the (?:bottle|mix|BOTTLE))"
    r"|\b(?:mixed|diluted|made) (?:it|that) (?:up )?(?:wrong|too weak|too thin)\b",
    *(
        "sprayer",
        "mist",
        "water",
        "empty",
        "ran out",
        "run out",
        "old",
        "expired",
        "date",
        "past it",
        "stale",
        "yesterday",
        "weak",
        "half",
    ),
    *("wrong", "nothing", "thin"),
)
_NOT_ALL_THE_TIME = Pattern(
    r"\b(?:cut|kept|made) (?:it|the (?:\w+ )?(?:time|minutes|DURATION|hold|wait)|DURATION) short\b"
    r"|\b(?:rinsed|wiped|hosed|washed)(?: (?:it|them|ENCLOSURE|that|off|everything))* (?:way |far "
    r"|a bit )?too (?:early|soon)\b"
    r"|\b(?:did not|never|do not think (?:i|it)|not sure (?:if |that |whether )?(?:i|it)|do not know (?:if"
    r"|whether) (?:i|it)|no idea"
    r" (?:if|whether) (?:i|it)|doubt (?:that )?(?:i|it))(?: (?:really|actually|all|even|ever|quite))* (?:keep"
    r"|kept|stay|stayed)(?: it| them| all)*"
    r" wet\b"
    r"|\b(?:might|may|could|must) (?:well )?have (?:\w+ )?(?:dried|gone dry)\b(?: (?:out|up|off|early|before|in|on|at"
    r"|round"
    r"|a bit|a little|too|by the time|while)\b|$)(?! now)"
    r"|\b(?:was|were|is) not (?:really )?wet (?:for )?(?:all|the (?:whole|full|entire)|long enough|DURATION)\b"
    r"|\b(?:went|gone|had gone) dry (?:round|around|at|on|in|along|by|near)\b|\bit (?:was|went) (?:all |a bit "
    r"|quite )?patchy\b",
    *("short", "too ", "wet", "dry", "patchy"),
)
"""That it wasn't wet for as long as it has to be, whenever that is told."""
_AFTER_SO_LONG = Pattern(
    r"\b(?:dried|dry|rinsed|wiped|hosed)(?: (?:it|out|off|up|them|that|ENCLOSURE))* (?:after|at|within"
    r"|in) (?:only |just |about |like |maybe )*DURATION\b",
    "DURATION",
)
""" "It dried after five minutes"."""
_FOUND_DRY = Pattern(
    r"\b(?:came|got|come|was) back (?:and|to find|,) .*\bdr(?:y|ied)\b|\bdr(?:y|ied) (?:when|by the time"
    r"|before) i (?:came|got|looked|returned|was)\b"
    r"|\bwhen i (?:came|got|looked|returned)\b.*\bdr(?:y|ied)\b|\bby the time i\b.*\bdr(?:y|ied)\b"
    r"|\b(?:think|reckon|guess|maybe|perhaps|may|might|probably|suppose)\b.*\bdr(?:y|ied)\b|\bdried (?:a (?:bit"
    r"|little)|at the|round the|on the|in the|in one|in places)\b",
    "dr",
)
""" "It was dry when I came back", "I think it dried at the edges": of the wet time, where nothing is rinsed yet."""
_WATERED = Pattern(
    r"\b(?:misted|sprayed|wetted|topped|kept|squirted|dampened|soaked|topping|misting|spraying|wetting|keeping)"
    r"(?: \w+){0,4}? with (?:a |the |some |my )?"
    r"(?:(?!AGENT|STOCK|soap\w*|with)\w+ ){0,2}?(?:water|(?:damp|wet) (?:sponge|cloth|rag|towel))\b"
    r"|\b(?:misted|sprayed|squirted|splashed|put|poured|chucked|threw|dribbled)"
    r" (?:some |a bit of |a little |more |just |only |plain |tap |clean |warm )*water (?:on|at|over|onto|in"
    r"|inside|all over)\b",
    "water",
    "sponge",
    "cloth",
    "rag",
    "towel",
)
"""Water on what has to stay wet with the product: it thins it, or takes it off."""
_DIRTY_AGAIN = Pattern(
    r"\b(?:peed|pooped|pooed|pood|pissed|weed|shat|crapped|urinated|threw up|vomited|puked|sneezed|been sick"
    r"|was sick)"
    r" (?:in|on|into|inside|all over) (?:it|there|that|the \w+|ENCLOSURE)\b"
    rf"|\b(?:cat|dog|kitten|puppy|child|kid|toddler|son|daughter|baby|hamster|rabbit|bird|ANIMAL|{ONE_ANIMAL})"
    r"(?: \w+){0,2}? (?:was|got|has been|jumped|climbed|slept|sat|walked|lay|went|crawled"
    r"|trampled)(?: \w+){0,2}? (?:in|on"
    r"|into|inside|through|over) (?:it|there|that|the (?:clean|tank|box|cage|tub|viv\w*))\b"
    r"|\b(?:dropped|spilled|spilt|tipped|got) (?:some |the |his |her |a |dirty )*(?:dirt|soil|substrate|food|mice"
    r"|mouse|rat"
    r"|blood|poo|poop|droppings|urates|muck) (?:in|on|into|inside) (?:it|there|the \w+)\b",
    *("peed", "poo", "piss", "weed", "shat", "crap", "urinat", "threw", "vomit", "puke", "sneez", "sick", "cat", "dog"),
    *("kitten", "puppy", "child", "kid", "toddler", "son", "daughter", "baby", "hamster", "rabbit", "bird", "ANIMAL"),
    *("snake", "gecko", "lizard", "dropped", "spil", "tipped", "got"),
)
_DIRT = (
    r"(?:poo|poop|poos|faeces|feces|turd|turds|droppings|urate|urates|urine|pee|wee|muck|dirt|filth|mould|mold"
    r"|blood|slime"
    r"|algae|grime|scum)"
)
_DIRT_SEEN = Pattern(
    rf"\b(?:see|saw|seen|found|find|notice|noticed|spotted|missed|there is|are|have got|got)(?: still| a| some| more|"
    rf" another"
    rf"| the| one| bit of| bits of| streaks? of| dried| old| fresh| little| tiny)* {_DIRT}\b(?! (?:on|off|in) (?:my"
    rf"|me)\b)"
    rf"|\b(?:streaks?|bits?|smears?|specks?|traces?|lumps?|spots?|stains?) of (?:dried |old |dry )?{_DIRT}\b"
    rf"|^(?:still |some |more |dried |fresh |a bit of )*{_DIRT}(?: still| left| stuck| all)* (?:in|on|under|behind"
    rf"|over)"
    rf" (?:it|there|the |its )(?:{WHICH}{PART})?"
    rf"|\bsmells? (?:a bit |still )?(?:of|like) {_DIRT}\b"
    r"|^(?:it is |it 's |that is |is |still |all |a bit |really |it looks |looks )*(?:dirty|filthy|mucky|grubby|grimy)"
    r"(?: again| still| in there| inside| now)*$"
    rf"|\bput (?:(?:the|his|her|its|a|some|back) )*(?:dirty|old|used|soiled|unwashed|filthy|mucky|unrinsed) (?:\w+ )?"
    rf"(?:{FITTING}|{FILLING}) (?:back|in)\b"
    rf"|\b(?:put|used)(?: \w+){{1,3}}? (?:from|of) (?:the )?(?:ENCLOSURE|ANIMAL|\w+ tub|\w+ one) (?:back )?(?:in there"
    rf"|in it|inside|in here)\b"
    rf"|\bused (?:the )?(?:quarantine|sick|hospital|dirty)(?: \w+){{1,2}} (?:in there|in it|inside|on it|in here)\b",
    *("poo", "fae", "fec", "turd", "dropp", "urat", "urin", "pee", "wee", "muck", "dirt", "filth", "mou", "mold"),
    *("blood", "slime", "alga", "grim", "scum", "mucky", "grub", "put", "used"),
)
"""Dirt seen in what is clean, or carried in."""
_SOMEBODY_DID = Pattern(
    r"(?:(?:oh|no|god|great|and|now|well|ugh) ,? ?)*ENCLOSURE (?:has |have |had |just |went and |\w+ly )*"
    r"(?:peed|pooped|pooed|pood|pissed|weed|shat|crapped|urinated|threw|vomited|puked|sneezed|walked|climbed|crawled|sat)\b",
    "ENCLOSURE",
)
""" "Clover peed on it", of an animal by its own name, and on what is being cleaned."""
_TAKEN_OFF = Pattern(
    r"\b(?:wiped|scooped|picked|removed|took|cleaned|scrubbed|washed|binned|no more|all gone|none|nothing|no)\b"
    r"|\b(?:hands?|gloves?|shoes?|sleeves?|bucket|bin|outside|carpet|cloth|sponge)\b"
)
_PUT_ON = Pattern(
    r"\b(?:polished|cleaned|wiped|sprayed|used|buffed|washed|went over|treated|put|finished|squirted|poured|tipped"
    r"|splashed|spritzed|misted|scrubbed|rubbed|rinsed|dabbed|added|gave|got)\b",
    *("ed", "used", "put", "went", "gave", "got"),
)


_SOMETHING = Pattern(
    r"\b(?:sprayed|misted|put|poured|squirted|used|wiped)(?: it| that| the glass)?(?: (?:with|down with))? (?:something"
    r"|god knows what|i do not know what|whatever|some (?:other )?(?:stuff|thing))(?: else)?"
    r"(?: (?:in|on|into|inside|over|onto) (?:it|there|ENCLOSURE|the \w+))?$",
    *("something", "what", "stuff", "thing"),
)
"""A product of which nothing is told."""


def wet_time_was_none(look: Look) -> Slots | None:
    """The slots of a wet time that is said not to have held, or of what has got dirty again; None: nothing is told."""
    plain = look.parsed.plain
    if not any(map(is_sprayed, look.world.state.rounds.values())) or not _is_told(plain):
        return None
    short = (_ONLY_SO_LONG.search(plain) or _AFTER_SO_LONG.search(plain)) is not None and _too_short(look)
    short = (short and DRY_TO_COME.search(plain) is None) or rinsed_before_its_end(look)
    short = (
        short
        or _NOT_ALL_THE_TIME.search(plain) is not None
        or _SHORTER.search(plain) is not None
        or (_none_rinsed(look) and _was_dry(plain))
    )
    watered = _WATERED.search(plain) is not None and any(map(waits_on_hold, look.world.state.rounds.values()))
    dirty = _DIRTY_AGAIN.search(plain) is not None or _dirt_seen(look) or _another_was_in_it(look)
    wrong = mix_was_wrong(look) or _NO_MIX.search(plain) is not None
    if not (short or watered or dirty or wrong or _NO_WET_TIME.search(plain)):
        return None
    slots = look.slots("dried_early")
    somebodys = " from " in plain or _SOMEBODY_DID.match(plain) is not None
    homes = slots.enclosures if "ENCLOSURE" in plain and not somebodys else ()  # "a snake was in it" names no tank
    return replace(slots, enclosures=homes, choices=(), too_early=True, bottles=(), part=None)


def _was_dry(plain: str) -> bool:
    return _FOUND_DRY.search(plain) is not None and _NOT_OF_THE_FILM.search(plain) is None


_NOT_OF_THE_FILM = Pattern(
    r"\b(?:rinsed|wiped|if|when it|once|will|towel\w*|soon|nearly|almost|getting|hands?|how long)\b"
)


def _none_rinsed(look: Look) -> bool:
    """The wet time was served, as far as was told, and nothing has been rinsed since."""
    rounds = [r for r in look.world.state.rounds.values() if is_sprayed(r)]
    return bool(rounds) and all("rinse" in r.steps and "rinse" not in r.done for r in rounds)


_PUT_IN = Pattern(
    r"\b(?:put|popped|placed|dropped|sat) (?:the |my |his |her )?ANIMAL (?:down )?(?:in|into) (?:it|there|here)\b"
)


def _another_was_in_it(look: Look) -> bool:
    """An animal of another enclosure was put into what is clean."""
    if _PUT_IN.search(look.parsed.plain) is None:
        return False
    homes = look.slots("dried_early").enclosures
    open_ones = {name for name, one in look.world.state.rounds.items() if is_open(one)}
    return bool(homes) and open_ones.isdisjoint(homes)


def _dirt_seen(look: Look) -> bool:
    plain = look.parsed.plain
    return _DIRT_SEEN.search(plain) is not None and _TAKEN_OFF.search(plain) is None and not look.claims.done


def _too_short(look: Look) -> bool:
    said = look.parsed.amounts.spans_s
    rounds = look.world.state.rounds.values()
    needed = [r.hold.seconds for r in rounds if is_open(r) and r.hold is not None and r.hold.seconds is not None]
    return bool(said and needed) and max(said) < max(needed)


def something_else_put_on(look: Look) -> Slots | None:
    """The slots of a product that nobody knows, put on what is being cleaned: "polished it with glass cleaner"."""
    plain = look.parsed.plain
    rounds = [r for r in look.world.state.rounds.values() if is_open(r)]
    unknown = OF_WHAT_NOBODY_KNOWS.search(plain) is not None and _PUT_ON.search(plain) is not None
    if not rounds or not _is_told(plain) or not (unknown or _SOMETHING.search(plain)):
        return None
    if _IN_ANOTHER_ROOM.search(plain) is not None:
        return None  # "used oven cleaner in the kitchen"
    if not any("apply" in r.done for r in rounds) or look.slots("done").agents:
        return None
    return replace(look.slots("done"), steps=("apply",), agents=("other",), bottles=(), stocks=())


_IN_ANOTHER_ROOM = Pattern(
    r"\b(?:in|on) (?:the|my|our) (?:kitchen|bathroom|bedroom|hall|hallway|lounge|garage|oven|hob|loo|toilet|sink|shower"
    r"|bath|car|stairs|windows?)\b"
)


def _is_told(plain: str) -> bool:
    return not plain.endswith("?") and (is_told(plain) or _DENIED.search(plain) is not None)


_DENIED = Pattern(
    r"\b(?:did not|never|forgot|do not (?:think|know)|not sure|no idea|was not|were not|(?:can|could) not have been)\b",
    "not",
    "never",
    "forgot",
    "idea",
)
WORDS = words_in(
    *(_NOT_ALL_THE_TIME, _AFTER_SO_LONG, _WATERED, _ONLY_SO_LONG, _NO_WET_TIME, _NO_MIX, _DIRTY_AGAIN, _DIRT_SEEN)
)
"""Words that the rules here turn on."""
