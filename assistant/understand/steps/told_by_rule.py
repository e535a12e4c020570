"""Questions that are known by a plain sign in the text, so that no likeness to another one takes them away."""

from __future__ import annotations

from assistant.core.household import Household
from assistant.understand.named.added import is_to_be_added
from assistant.understand.named.chores_said import watered
from assistant.understand.named.drains import nobody_knows
from assistant.understand.named.good_news import good_news
from assistant.understand.named.illness_told import outbreak_told
from assistant.understand.named.tub_words import TUBS
from assistant.understand.named.tubs_said import asks_who_is_out, into_a_tub, stays_in_the_tub, tub_told
from assistant.understand.numbers.how_much_for import mix_for_many
from assistant.understand.question.may_be import is_told
from assistant.understand.text.asking import ENDS_AS_ASKED
from assistant.understand.text.patterns import Pattern

_A_CLEAN_TO_DO = Pattern(
    r"(?:(?:ok|so|right|now|it is|this is|only|just) ,? ?)*(?:just |only )(?:a |the )?(?:quick |little )?"
    r"(?:spot|deep|full|scale|quarantine) clean (?:of|for|in|on) (?:the |my )?(?:ENCLOSURE|ANIMAL)"
    r"(?: please| now| today)?[ .!]*$"
)
""" "Just a spot clean of the river tank": wanted, and not said to be done."""
_IS_IT_ENOUGH = Pattern(
    r"(?:(?:so|and|ok|but) )*(?:will|would|is|are|does) (?:VOLUME|NUMBER)"
    r"(?: of (?:the |that )?(?:AGENT|STOCK|it|stuff|concentrate))? (?:be )?"
    r"(?:do|enough|right|ok|fine|plenty|too much|too little|about right|correct)\b.*\bBOTTLE\b",
    "BOTTLE",
)
""" "Will ten mils do for the yellow bottle?": of the concentrate, in the whole bottle."""
_FOR_A_PART = Pattern(
    r"(?:(?:so|and|ok|but) )*(?:how much|what)(?: \w+){0,4}? (?:for|in|goes in|to fill) (?:a |about |only |just )*"
    r"(?:half|quarter|third|NUMBER)(?: of)? (?:a |the |my )?BOTTLE\b",
    "BOTTLE",
)
""" "How much for a quarter of the yellow one?" """
_MADE_IN = Pattern(
    r"(?:and |so |my |the |what about |how about )*(?:AGENT|STOCK)(?: that was| was)? "
    r"(?:made|bought|opened|dated|from)(?: in)? (?:january|february|march|april|may|june|july|august|september"
    r"|october|november|december)\b"
)
""" "Bleach made in March 2025": how strong it is by now; nothing was mixed."""
_IS_IT_NEEDED = Pattern(
    r"(?:(?:so|and|but|ok) )*(?:is|are) (?:the |all )?DURATION (?:really |actually |all )*"
    r"(?:needed|necessary|required)\b(?!.*\b(?:newcomer|quarantine|new|isolation|isolate\w*)\b)"
)
_WHICH_MIX = Pattern(
    r"(?:so |and |ok )*(?:what|which) (?:ratio|dilution|mix|strength|concentration)"
    r"(?: should| do| must| shall| would)?(?: i| we)?(?: use| mix| make| need| want)?(?: it| them)?(?: up)? "
    r"(?:for|of|with|at) (?:the |my )?(?:AGENT|STOCK|BOTTLE) ?\??$"
)
""" "What ratio should I use for bleach?": how it is mixed, not what to wear."""
_INTO_ANOTHER_UNIT = Pattern(
    r"(?:(?:what is|how much is|how big is|convert|what 's) )?(?:an? |one |the )?(?:imperial|us|uk|british|american) "
    r"(?:gallon|pint|quart|fluid ounce|fl oz|ounce|cup)(?: is)? (?:in|to|into|as) \w+"
)
""" "Imperial gallon in litres": no change of the setting."""
_BEGINS = Pattern(
    r"(?:^|^.*[,.;] (?:so |and |then )*)(?:(?:ok|so|right|now|let us|i will|i am going to|going to|please|can you|and"
    r"|hey) ,? ?)*(?:start|begin|starting|starting on|start on|begin on|beginning|doing|do) "
    r"(?:on |with |a clean of |cleaning )?(?:the |my )?(?:ENCLOSURE|ANIMAL)"
    r"(?: (?:and|,) (?:the |my )?(?:ENCLOSURE|ANIMAL))* (?:(?:with|using|in|,) )?(?:the |some |my )?"
    r"(?:BOTTLE|AGENT|STOCK)(?: please)?(?:$| ?[,.;]| and\b| so\b)"
)
""" "Start the river tank with bleach, how long does it stay wet?": begun, whatever is asked in the same breath."""
_READY = Pattern(
    r"(?:(?:so|ok|and|um|well|right) ,? ?)*(?:(?:is|are) (?:it|we|they|he|she|everything) )?(?:all )?ready"
    r"(?: now| yet| then)? ?\??"
)
""" "Ready?": the animal's home, and no step."""
_WHAT_LIFTS_IT = Pattern(
    r"(?:(?:so|ok|and|um) ,? ?)*(?:what|which (?:one|bottle|product|stuff))(?: will| would| can)? "
    r"(?:removes?|shifts?|lifts?|gets? (?:rid of|off)|takes? off|dissolves?|cuts?) (?:the |this |these |that )?"
    r"(?:\w+ )?(?:lime ?scale|scale|calcium|hard water|water ?(?:marks?|spots?|stains?))\b"
)
_SHELF_LIFE = Pattern(r"\bshelf life of (?:a |the |my |mixed |diluted )*(?:AGENT|STOCK|BOTTLE)\b", "shelf life")
_RATIO_AS = Pattern(
    r"(?:(?:so|and|ok|what is|what 's) ,? ?)*MIX (?:of )?(?:AGENT|STOCK)(?: is| in| makes| gives| comes to| as)* "
    r"(?:how (?:many|much)|what) (?:percent|percentage|ppm|parts per million) ?\??$"
    r"|(?:(?:so|and|ok|what is|what 's|how much is) ,? ?)*MIX (?:in|as) (?:a |an )?"
    r"(?:percent|percentage|ppm|parts per million)(?: (?:for|of|with|from) (?:MIX )?(?:AGENT|STOCK)) ?\??$",
    "MIX",
)
""" "1:64 bleach is how many ppm?" """
_HOW_MUCH_OF_IT = Pattern(
    r"(?:(?:so|and|ok|right|now|um) ,? ?)*(?:how much|how many mils of) (?:of (?:the|my) )?(?:the |my )?"
    r"(?:AGENT|STOCK|concentrate)(?: (?:do|should|must|shall|will|would|am) (?:i|we)(?: going to)? "
    r"(?:need|use|put in|want|add|mix|take|measure)(?: in| out| up)?)?(?: now| then| please)? ?\??$"
)
""" "How much bleach do I need?": for which bottle, is asked."""
_WHAT_TO_PUT_IN = Pattern(
    r"(?:(?:so|and|ok|right|now) ,? ?)*(?:what|how much)(?: of what)? (?:do|should|must|shall|would) (?:i|we) "
    r"(?:put|pour|mix|measure|make)(?: up)? (?:in|into) (?:the |my )?BOTTLE ?\??$",
    "BOTTLE",
)
""" "What do I put in the pink bottle?": the product, the mix and how much."""
_AT_ANOTHER_STRENGTH = Pattern(
    r"(?:(?:so|and|ok|right|now|i want|make|mix|do|can i have) ,? ?)*(?:a )?"
    r"(?:(?:half|double|twice|triple)(?: the)? strength(?: mix)? (?:in|for|into) (?:the |my )?BOTTLE|"
    r"(?:the |my )?BOTTLE (?:at )?(?:(?:half|double|twice|triple)(?: the)? strength|twice as strong"
    r"|half as strong)) ?\??$",
    "BOTTLE",
)
_ALL_GONE = Pattern(
    r"(?:(?:so|oh|and|ok|damn|no|we|i|have|that is) ,? ?)*"
    r"(?:(?:the |my |our )?(?:AGENT|STOCK)(?: is| 's| has| are)?(?: all| now| been)* "
    r"(?:gone|finished|run out|used up|empty)|(?:finished|used up|emptied)(?: off)? (?:the |my )?(?:last of the )?"
    r"(?:AGENT|STOCK))$"
)
""" "The vinegar's all gone": told, of what keeping.toml counts."""
_FILLED_WHICH = Pattern(
    r"(?:(?:ok|right|i|we|have|just|so|and) ,? ?)*(?:(?:filled|refilled|topped up) (?:all|both|all of|both of)?"
    r"(?: ?the| ?my)? ?(?:bottles|sprays|sprayers|of them|them|both|all)(?: up| again)*|mixed (?:some |it )?(?:up )?"
    r"(?:fresh|afresh|a new lot|a fresh (?:lot|batch|mix)))$"
)
""" "Filled both", "mixed fresh": of which bottle, is asked."""
_IS_LOW = Pattern(
    r"(?:(?:oh|so|and|ok|right) ,? ?)*(?:the |my )?BOTTLE(?: one)?(?: is| 's)? "
    r"(?:nearly|almost|getting|running|about)(?: nearly| to)* (?:gone|empty|out|low|run out|finished|done)$",
    "BOTTLE",
)
_MAY_I_USE = Pattern(
    r"(?:(?:so|and|ok|but|or) ,? ?)*(?:(?:can|could|may|should) (?:i|we) use (?:the |some |a )?(?:AGENT|STOCK)|"
    r"(?:is|are) (?:the |some )?(?:AGENT|STOCK) (?:ok|okay|fine|safe|allowed|any good)(?: to use)?) ?\??$"
)
""" "Can I use pine cleaner?": on what, is asked, unless it is refused anywhere."""
_SUPPOSES_IT_SO_STRONG = Pattern(
    r"(?:(?:and|so|but|ok) )*(?:what if|if|suppose|say) (?:the |my |our )?(?:AGENT|STOCK) (?:is|was|'s)"
    r"(?: only| really)* MIX"
)
""" "What if my bleach is 3 percent": for which bottle, is asked."""
_WITH_WATER = Pattern(
    r"(?:(?:so|and|ok|can|could|may|should|do|i|we|is it|add|put|mix|pour|use|the|some) ,? ?)*(?:AGENT|STOCK) "
    r"(?:and|with|in|into|to) (?:hot|warm|boiling|cold) (?:tap )?water(?: ok| safe| fine)? ?\??$"
    r"|\b(?:AGENT|STOCK) (?:in|into|to) (?:the )?water or (?:the )?water (?:in|into|to|onto) (?:the )?"
    r"(?:AGENT|STOCK|it)\b"
    r"|\bwater (?:in|into|to|onto) (?:the )?(?:AGENT|STOCK) or (?:the )?(?:AGENT|STOCK) (?:in|into|to|onto) (?:the )?"
    r"(?:water|it)\b",
    "water",
)
_OVER_A_MESS = Pattern(
    r"(?:(?:so|and|ok|but) ,? ?)*(?:can|could|may|should) (?:i|we) (?:just )?(?:AGENT|bleach|spray|put|use|pour)"
    r"(?: (?:AGENT|STOCK|BOTTLE|it|straight))* (?:over|on|onto|on top of) (?:the |some |his |her |that )?"
    r"(?:wee|pee|urine|urates?|poo|poop|droppings|mess|dirt)\b"
)
""" "Can I bleach over the wee?" """
_IN_ITS_TUB = Pattern(
    r"(?:(?:ok|right|so|and|yes) ,? ?)*(?:he|she|it|they|both|(?:the |my )?ANIMAL|ENCLOSURE|both of them)"
    rf"(?: is| are| 's)?(?: now| safely| all| both| safe| already)* in (?:his|her|its|their|a|the) (?:own )?{TUBS}"
    r"(?: (?:now|with|and|the|its|his|lid|lids|on|shut|shut in|closed|safe|safely|sound|,))*[ .!]*$"
)
""" "He's in his tub with the lid on": moved out."""
MOVED_OUT = "moved out"
"""An animal is said to be in a waiting tub: the step of moving it out."""


_DID_IT_GET = Pattern(
    r"(?:and |so |ok |oh )*did (?:the |my |both |any of )*(?:ENCLOSURE|ANIMAL|he|she|it|they|i|we|you|anyone|everyone"
    r"|everybody|\w+ one)(?: 's)?(?: \w+)? (?:get|have|drink|need|give|change|do|already|ever)\b",
    "did",
)
""" "Did the snake get water yesterday" asks; "did the snake's water" tells."""


def told_by_rule(plain: str, household: Household) -> str | None:
    """The question that a masked text is by its signs, or `MOVED_OUT`; None: none."""
    if _A_CLEAN_TO_DO.match(plain) or _BEGINS.match(plain):
        return "start"
    if _IS_IT_ENOUGH.match(plain):
        return "mix_strength"
    if any(pattern.match(plain) for pattern in (_FOR_A_PART, _HOW_MUCH_OF_IT, _WHAT_TO_PUT_IN, _AT_ANOTHER_STRENGTH)):
        return "dose"
    if _SUPPOSES_IT_SO_STRONG.fullmatch(plain.strip(" .?!")):
        return "dose"
    if _RATIO_AS.match(plain):
        return "read_ratio"
    if _FILLED_WHICH.match(plain.strip(" .!")):
        return "mixed"
    if _IS_LOW.match(plain.strip(" .!")):
        return "top_up"
    if _WITH_WATER.search(plain) or _OVER_A_MESS.match(plain):
        return "together"
    if _MAY_I_USE.match(plain):
        return "surface"
    if _ALL_GONE.match(plain.strip(" .!")):
        return "stock_left"
    if _MADE_IN.match(plain):
        return "bleach_now"
    if _IS_IT_NEEDED.match(plain):
        return "hold_time"
    if _WHICH_MIX.match(plain):
        return "dose"
    if _INTO_ANOTHER_UNIT.match(plain):
        return "convert"
    if _READY.fullmatch(plain):
        return "return_check"
    if _WHAT_LIFTS_IT.match(plain):
        return "choose_agent"
    if _SHELF_LIFE.search(plain):
        return "still_good"
    if is_to_be_added(plain):
        return "add"
    if tub_told(plain) or asks_who_is_out(plain):
        return "tub"
    if stays_in_the_tub(plain):
        return "tub"
    if into_a_tub(plain) or _IN_ITS_TUB.match(plain):
        return "tub" if ENDS_AS_ASKED.search(plain) else MOVED_OUT
    if outbreak_told(plain) or good_news(plain):
        return "outbreak"
    if nobody_knows(plain):
        return "unknown_bottle"
    if watered(plain) and is_told(plain.removeprefix("did ")) and not _DID_IT_GET.match(plain):
        return "log_clean"
    if mix_for_many(plain, household):
        return "make_up"
    return None
