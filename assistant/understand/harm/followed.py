"""What is said right after first aid was told, or while a splash is being rinsed: "it still hurts", "milk?".

None of it makes a new splash. It belongs to the one that was just told of, so that nobody in pain is told "I don't know
that one", or which step of the clean comes next.
"""

from __future__ import annotations

import re
from dataclasses import dataclass
from typing import Any

from assistant.contract import World
from assistant.core.harms import HARM_LASTS, SWALLOWED_LASTS, AskedOfHarm, HarmTold, Place, latest
from assistant.core.record.state import Rinse
from assistant.core.round.rounds import a_surface_is_touched, is_open, rinse_left_s
from assistant.understand.harm.in_a_bad_way import in_a_bad_way
from assistant.understand.harm.while_rinsing import bare_of_the_rinse, names_the_body
from assistant.understand.named.animal_words import ONE_ANIMAL
from assistant.understand.text.patterns import Pattern


@dataclass(frozen=True, slots=True)
class Followed:
    """What a turn asks of the harm before it."""

    asked: AskedOfHarm
    place: Any = None
    victim: Any = None


def followed(text: str, world: World) -> Followed | None:
    """What a masked text asks of the harm that was just told of or is still being rinsed; None: nothing.

    A number to call and whether to make somebody sick are known at any time.
    """
    down = _down(text, world)
    if down is not None:
        return down
    fumes = (_told(world) or ("", ""))[0] == "lungs"
    if _FALSE_ALARM.search(text) and not text.endswith("?") and (any(_running(world)) or fumes):
        return Followed("over", *(_harm_before(world) or (None, None)))
    bare = bare_of_the_rinse(text, world)
    if bare is not None:
        return Followed("stop" if names_the_body(text) else "bare", bare.place, bare.victim)
    swallowed = _sign_of_what_was_swallowed(text, world)
    if swallowed is not None:
        return swallowed
    if _NUMBER.search(text):
        return Followed("number", *(_harm_before(world) or (None, None)))
    just_told = _just_told(world)
    before = _harm_before(world)
    if before is not None and _NUMBER_ALONE.match(text):
        return Followed("number", *before)
    if _SICK.search(text):
        return Followed("give", *(("mouth", before[1]) if before else ("mouth", None)))
    if before is None or (_STEP.search(text) and not just_told):
        return None
    if before[0] in ("eye", "skin", "mouth") and _ONTO_IT.search(text) and just_told:
        return Followed("onto it" if before[0] != "mouth" else "give", *before)
    cleaning = any(is_open(round_) for round_ in world.state.rounds.values())
    if before[0] not in ("eye", "skin") and _RINSED_IT.match(text):
        return None
    asked = _asked(text, just_told, cleaning)
    if asked is None:
        return None
    victim = "person" if _A_PERSON.search(text) else before[1]
    return Followed(asked, before[0], victim)


def goes_on_from_it(after: Followed, place: Place | None, text: str) -> bool:
    """True where it goes on from the harm before, though the same words may be a cry of their own.

    place: where that cry would be.
    """
    if after.asked in ("collapsed", "over", "onto it", "bare"):
        return True
    if after.asked == "still":
        return (
            after.place in ("eye", "skin")
            and after.place == place
            and " still " in text
            and _FROM_IT.search(text) is None
        )
    return after.place == "mouth" and place == "lungs"


def _down(text: str, world: World) -> Followed | None:
    """Somebody unconscious, not breathing or in fits; of an animal only where a product may have done it."""
    before = _harm_before(world)
    known = _AN_ANIMAL.search(text) is not None or (before is not None and before[1] == "animal")
    animal = known and not _PEOPLE.search(text)
    if _ASKED_OF_IT.search(text):
        return None
    if in_a_bad_way(text):
        return Followed("collapsed", None, "animal")
    if _PLAINLY_DOWN.match(text) and not _PEOPLE.search(text) and (_FROM_IT.search(text) is None):
        animal_before = before is not None and before[1] == "animal"
        return Followed("collapsed", before[0] if animal_before and before is not None else None, "animal")
    place = before[0] if before is not None else None
    if animal and _DOWN_ANIMAL.search(text) and (before is not None or _FROM_IT.search(text)):
        return Followed("collapsed", place, "animal")
    if known and a_surface_is_touched(world.state.rounds.values()) and _GAPES.fullmatch(text.strip(" .!,")) is not None:
        return Followed("collapsed", place, "animal")  # something is in the air there
    stiller = _HAS_NOT_MOVED.search(text) is not None and (before is not None or _FROM_IT.search(text) is not None)
    if not animal and _GONE_LIMP.match(text):
        return Followed("collapsed", place, before[1] if before is not None else "either")
    if not animal and (stiller or _DOWN.search(_A_THING_FELL_IN.sub(" ", text))):
        return Followed("collapsed", place, "person")
    return None


def _asked(text: str, just_told: bool, cleaning: bool) -> AskedOfHarm | None:
    short = len(text.split()) <= _FEW
    if _LENS.search(text):
        return "lens"
    rinsed = _RINSED_IT.match(text)
    if _STOP.search(text) or (rinsed is not None and just_told and (not cleaning or " " in rinsed["what"])):
        return "stop"
    if short and _STILL.search(text):
        return "still"
    if just_told and _HOW_LONG.search(text):
        return "again"
    if not just_told or not short:
        return None
    if _GIVE.search(text) and not (_OF_THE_WORK.search(text) and not _GIVEN.search(text)):
        return "give"
    return "again" if _AGAIN.search(text) or _A_PERSON.search(text) or _WITH_WHAT.match(text) else None


def _sign_of_what_was_swallowed(text: str, world: World) -> Followed | None:
    """ "She's throwing up", "he's drooling", after something was swallowed: no fumes, so whom to call is said again."""
    told = world.talk.harms[-1] if world.talk.harms else None
    if (
        told is None
        or told.place != "mouth"
        or world.now - told.at > SWALLOWED_LASTS
        or len(text.split()) > _FEW
        or text.endswith("?")
    ):
        return None
    if told.victim != "animal" and _NO_BREATH.search(text):
        return Followed("collapsed", "mouth", told.victim)
    another = told.victim == "person" and _AN_ANIMAL.search(text) is not None
    asks = re.search(r"\bwhat (?:do|should|can) i use\b", text) is not None
    return Followed("again", "mouth", told.victim) if _SIGN.match(text) and not (another or asks) else None


def _running(world: World) -> list[Rinse]:
    return [rinse for rinse in world.state.rinses if rinse_left_s(rinse, world.now) > 0]


def _just_told(world: World) -> bool:
    """First aid was the last thing told, or is what goes on while nothing else does."""
    if _told(world) is not None:
        return True
    return bool(_running(world)) and not any(is_open(round_) for round_ in world.state.rounds.values())


def _told(world: World) -> tuple[Any, Any] | None:
    """Place and victim that the last reply was about; of a rinse only while it is recent."""
    last = world.talk.last
    if last is None or last.intent != "splash" or not last.values.get("place"):
        return None
    place, victim = last.values["place"], last.values.get("victim")
    clocked = last.values.get("minutes") is not None
    return None if clocked and not _recent(world) else (place, victim)


def _recent(world: World) -> list[Rinse]:
    return [rinse for rinse in world.state.rinses if world.now - rinse.began < HARM_LASTS]


def _harm_before(world: World) -> tuple[Any, Any] | None:
    """Place and victim of the harm last told of, else of the latest that is being rinsed."""
    told = _told(world)
    if told is not None:
        return told
    kept: HarmTold | None = latest(world.talk.harms, world.now)
    if kept is not None:
        return kept.place, kept.victim
    rinse = max(_recent(world), key=lambda rinse: rinse.began, default=None)
    return (rinse.place, rinse.victim) if rinse is not None else None


_DOWN = Pattern(
    r"\b(?:passed out|out cold|collapsed|unconscious|fainted|keeled over|blacked out|lost consciousness|unresponsive|"
    r"(?:is|are|'s|has) not (?:breathing|responding|waking)|stopped breathing|(?:will|can) not wake|not breathing"
    r"|turn(?:ed|ing) blue|having a (?:fit|seizure)|seizures?|convuls\w+|fitting on the)\b"
)
_A_THING_FELL_IN = Pattern(
    r"\b(?:shares?|prices?|markets?|economy|currency|pound|banks?|firm|company|shop|deal|talks|plans?|trade|government"
    r"|cakes?|sponges?|souffl\w+|meringues?|bread|loaf|dough|pudding|jelly|tents?|gazebo|marquee|umbrella|awning"
    r"|tarpaulin|tarp|shel(?:f|ves)|shelving|racks?|racking|stands?|stack|pile|tower|table|chairs?|bed|sofa|desk|bench"
    r"|cabinet|wardrobe|roof|ceiling|walls?|fence|shed|greenhouse|bridge|building|house|tunnel|barn|box|boxes|carton"
    r"|bin|bags?|tubs?|tanks?|cages?|vivs?|vivarium|enclosure|lid|hides?|hammock|log|branch\w*|rocks?|burrow|cave"
    r"|scaffold\w*|ladder|tree|hedge|netting|app|system|web ?site|line|hose|sprayer)"
    r"(?: (?:has|have|had|is|are|was|just|all|then|nearly|almost|completely|suddenly|finally|again))* collapsed?\b"
    r"(?! (?:on|onto|over) (?:me|us|my|him|her|them|the (?:kids?|child\w*|dog|cat|ANIMAL)))",
    "collaps",
)
""" "The tent collapsed": only a person or an animal does that to be helped."""
_HAS_NOT_MOVED = Pattern(r"\b(?:he|she|they) (?:has|have|is|are) not (?:moved|moving)\b")
_GONE_LIMP = Pattern(
    r"^(?:(?:oh|no|help|god|shit|quick|please|and|now|i think|looks like|,) ?)*(?:he|she|they)"
    r"(?: (?:is|are|has|have|'s|just|really|all|completely|suddenly|gone|went|going|looks?|lying|there|now))* "
    r"(?:limp|floppy|out cold|lifeless|dying|cold and stiff)(?: (?:now|help|quick|and|,|not|moving"
    r"|what do i do))*[ .!]*$",
    *("limp", "floppy", "out cold", "lifeless", "stiff", "dying"),
)
"""He or she, who may be a person or an animal."""
_DOWN_ANIMAL = Pattern(
    _DOWN.pattern + r"|\b(?:limp|floppy|gasping|twitching|paralysed|paralyzed|not moving|(?:is|does|has) not mov\w+"
    r"|stopped moving|not right|breathing (?:funny|weird\w*|odd\w*|hard|fast|heavily|strange\w*|badly)"
    r"|(?:open|opening) (?:his |her |its )?mouth|mouth open|foaming|dying|upside down)\b"
)
_GAPES = Pattern(
    rf"(?:(?:oh|no|and|now|help|god|,) ?)*(?:the |my )?(?:\w+ )?(?:ANIMAL|ENCLOSURE|{ONE_ANIMAL}|he|she)(?: is"
    rf"| 's| keeps)?(?: just| now)*"
    r" (?:gaping|gasping|breathing with (?:his|her|its) mouth open|got (?:his|her"
    r"|its) mouth (?:wide )?open)(?: a lot| now| badly)*",
    "gap",
    "gasp",
    "mouth",
)
_PLAINLY_DOWN = Pattern(
    r"^(?:(?:oh|no|help|god|shit|quick|please|and|now|i think|looks like|,) ?)*"
    r"(?:(?:the|my|our|one of the|both|two) )*(?:\w+ )?(?:ANIMAL|fish|frogs?|animals?|hatchlings?|(?<!the )"
    r"(?<!my )ENCLOSURE)(?:(?: is| are| has| have| 's)? "
    r"(?:(?:gone|lying|all|just|really|now|suddenly|looks?|seems?|been|going|completely) )*"
    r"(?:gasping(?: for (?:air|breath))?|limp|floppy|dying|collapsed|unresponsive|unconscious|twitching|convulsing"
    r"|paraly[sz]ed|suffocating|choking|foaming(?: at the mouth)?|having (?:a |some sort of a? ?)?"
    r"(?:fit|fits|seizure|seizures)|not breathing|stopped breathing|can not breathe|struggling "
    r"(?:to breathe|for (?:air|breath))|got (?:foam|froth|bubbles) (?:at|from|round|around|in|coming from)"
    r" (?:his|her|its|the) (?:mouth|nose))| (?:is|are|has|does|do|did) not "
    r"(?:mov(?:e|ing|ed)|respond\w*|breath\w*|wak\w*)|(?: has| have)? stopped moving| can not (?:breathe|move))"
    r"(?: (?:any ?more|at all|now|help|quick|what (?:do|should) i do|and \w+(?: \w+){0,3}|in there|in "
    r"(?:his|her|its|the) tub))*(?: ?[.!])*$"
)
"""An animal in a bad way, whatever did it. "Not moving much today" is none."""
_AN_ANIMAL = Pattern(rf"\b(?:ANIMAL|ENCLOSURE|{ONE_ANIMAL})\b")
_PEOPLE = Pattern(
    r"\b(?:husband|wife|mum|mom|dad|son|daughter|child|kid|baby|toddler|boy|girl|man|woman|partner|friend|brother"
    r"|sister|someone|somebody|person)\b"
)
_FROM_IT = Pattern(r"\b(?:AGENT|STOCK|BOTTLE|MIX|spray\w*|mist\w*|fumes?|smell|disinfect\w*|clean\w*|bleach\w*)\b")
_ASKED_OF_IT = Pattern(r"^(?:what if|if|can|could|will|would|does|do|how|should)\b|\bwhat if\b|\bonce\b")
_FEW = 10
_FALSE_ALARM = Pattern(
    r"\bfalse alarm\b"
    r"|\b(?:stop|cancel|end|kill|clear|drop|turn off|switch off|delete) (?:that |the |my |this )?"
    r"(?:eye |skin |rinse |rinsing |splash )*(?:timer|clock|countdown|counting|alarm)\b"
    r"|\b(?:poison centre|poison center|poison control|doctor|nurse|hospital|paramedic|vet|they|optician|ambulance)\b"
    r"(?: \w+){0,2}? (?:says?|said|told|reckons?|thinks?|confirmed)(?: me| us)?(?: that)? "
    r"(?:i|he|she|it|we|that|this) (?:is |am |are |can |'s |was )*"
    r"(?:fine|ok|okay|alright|all right|good|enough|stop|clear|nothing)\b"
    r"|^(?:(?:no|oh|sorry|haha|ok|,) ?)*(?:just kidding|(?:only|just) joking|nothing happened|(?:it )?missed me"
    r"|no harm done)(?: ,? ?(?:it )?(?:missed me|nothing happened|no harm done|sorry))?(?: ?[.!])*$"
    r"|^(?:(?:no|oh|sorry|actually|wait|it is ok|,) ?)*(?:it|that) (?:was|is) (?:only |just )+(?:plain |clean )?water"
    r"(?: ?[.!])*$"
)
"""The end of a rinse, by somebody who knows or because there was nothing."""
_SIGN = Pattern(
    r"^(?:(?:and|now|oh|no|help|but|so|god|,) ?)*(?:he|she|it|they|i|(?:the |my )?(?:\w+ )?(?:ANIMAL|ENCLOSURE)|my "
    r"(?:son|daughter|\w+)) ?(?:'s|is|am|are|has|have|keeps?|feels?|looks?|seems?|just|started|threw|was|being|been"
    r"|getting|got|now|all|a bit|really|so| )*(?:throw\w* (?:it )?up|thrown up|threw up|vomit\w*|puk\w+|retch\w*|sick"
    r"|ill|nauseous|drool\w*|dribbl\w*|foam\w*|froth\w*|limp|floppy|cry\w*|screaming|in pain|pale|white|shak\w+"
    r"|trembl\w+|sweat\w*|cough\w*|chok\w*|gag\w*|dizzy|drowsy|sleepy|faint|quiet|weak|worse|not right|not well"
    r"|burping|spitting|wheez\w*|bleeding|swelling|swollen|hurting|hurts)\b"
    r"|^(?:(?:and|now|,) ?)*(?:my|his|her|its|the) (?:mouth|throat|stomach|tummy|belly|lips?|tongue|chest) "
    r"(?:is |are |'s |feels? )?(?:\w+ )?(?:burn\w*|hurt\w*|sore|swollen|swelling|red|blister\w*|raw|numb|cramp\w*)\b"
)
_NO_BREATH = Pattern(
    r"\b(?:can not|can hardly|hardly|barely|struggling to|trouble) (?:\w+ )?breath\w*"
    r"|\b(?:turn\w*|gone|going|is|are|looks?|lips) (?:all )?blue\b(?! (?:tub|bottle|one))"
)
_ONTO_IT = Pattern(
    r"\bneutrali[sz]e\b(?!.*\b(?:drains?|pipes?|sink|toilet|old|down|away)\b)"
    r"|^(?:so |and |but |ok |or |what if i |what about )*(?:can|could|do|should|shall|may|must|would|put|use|will)\b"
    r"(?: \S+){0,5}? (?:AGENT|STOCK|cream|ointment|baking soda|lemon|butter|oil|soap)(?: \w+)? "
    r"(?:on|in|onto|into|to) (?:it|that|there|(?:my|his|her|the) (?:\w+ )?"
    r"(?:eyes?|skin|hands?|arms?|face|burn|mouth|legs?|belly))\b"
)
_NUMBER = Pattern(
    r"\b(?:do|should|must|shall) (?:i|we) (?:need|call|ring|get|have) (?:an |the )?ambulance\b"
    r"|\b(?:number|phone|ring|telephone)\b.*\b(?:poison|emergency|ambulance)\b"
    r"|\b(?:poison (?:centre|center|control|line)|emergency|ambulance)(?: 's)? (?:number|phone)\b"
    r"|^(?:and |so |but )*(?:who|whom|what number|which number) (?:do|should|can|shall|must) (?:i|we) "
    r"(?:call|ring|phone)\b"
)
_NUMBER_ALONE = Pattern(
    r"^(?:and |so |but |ok |quick |please )*(?:what is|what was|give me|tell me|say|which is)? ?(?:the|that|their|a) "
    r"(?:phone |telephone )?number(?: again| to (?:call|ring|phone))?(?: ?[?.])?$"
)
_SICK = Pattern(
    r"\b(?:make|making|get) (?:him|her|them|it|myself|(?:the |my )?(?!the\b)\w+) (?:be |to be )?"
    r"(?:sick|vomit|throw up|puke)\b"
    r"|\b(?:should|shall|do|must) (?:he|she|i|they) (?:be sick|vomit|throw (?:it )?up|bring it up)\b"
    r"|\binduce vomiting\b"
)
_GIVE = Pattern(
    r"\b(?:milk|water|drink|drinks|salt|charcoal|bread|egg|eggs|honey|oil|food|eat|antacid|juice|tablet|medicine)\b"
    r"(?!.*\b(?:bowl|dish|running|tap|rinse|rinsing|on it|over it|tank|tub)\b)"
)
_OF_THE_WORK = Pattern(
    r"\b(?:ENCLOSURE|BOTTLE|MIX|VOLUME|fresh|chang\w+|stains?|marks|strength|strong|parts|twice|eggs?|rubber|metal"
    r"|seals?|surface|glass|wip\w+|tongs|bowls)\b"
)
_GIVEN = Pattern(r"\b(?:giv\w+|drink\w*|swallow\w*|him|her|them|feed|milk|charcoal)\b")
"""By mouth, whatever else the words may be of."""
_LENS = Pattern(r"\b(?:contact )?lens(?:es)?\b|\bcontacts\b")
_RINSED_IT = Pattern(
    r"^(?:ok |so |and |right |done |i |have |we |all )*(?:rinsed|washed|flushed) "
    r"(?P<what>it|them|that|my \w+|his \w+|her \w+|the eye)(?: (?:out|off|now|well|already|for DURATION))*"
    r"(?: ?[.!])*$"
)
"""The eye, where nothing else can be meant: with a clean open "it" may be what was sprayed."""
_STOP = Pattern(
    r"\b(?:stop|finish|enough|done) rins\w+|\brins\w+ (?:is |it )?(?:long )?enough\b|\bkeep rinsing\b.*\?"
    r"|\b(?:it|stinging|burning|pain|that) (?:has |is |'s )?(?:stopped|gone off|eased)"
    r"(?: (?:hurting|stinging|burning))?$|\bno longer (?:hurts|stings|burns)\b"
    r"|\b(?:does|do) not (?:hurt|sting|burn) (?:any ?more|now)\b|\bfeels (?:better|fine|ok|alright)(?: now)?$"
)
_STILL = Pattern(
    r"\bstill (?:really |so |very |a bit )?(?:hurt\w*|sting\w*|burn\w*|sore|red|blurr\w*|itch\w*|cough\w*|chok\w*"
    r"|dizzy|sick|cloudy|swollen|bad|in there|in it|on it|on (?:his|her|its|my)|tastes?|breathing)\b"
    r"|\b(?:no|not any) better\b|(?:^|\b(?:getting |got |it is |even ))worse\b(?! (?:smell|time))"
    r"|\b(?:he|she|it|ANIMAL) (?:is |'s )?(?:breathing|acting|moving) \w+$"
)
_AGAIN = Pattern(
    r"^(?:(?:it|that|the eye|eye|skin|my \w+|his \w+|her \w+) (?:is|has|looks|'s|are|feels)(?: \w+){0,2} "
    r"(?:red(?! hot)|blister\w*|swollen|peeling|raw|white|bleeding|weeping|cloudy|puffy|numb|burnt|burned"
    r"|worse)\b.*)$"
    r"|^(?:and |so |ok |right |but |oh |please |help )*(?:(?:what|now what)(?: (?:now|next|then|else))?|what "
    r"(?:do|should|shall|can|must) (?:i|we) do(?: now| next| then| about it)?|and (?:now|then)|then what|help(?: me)?"
    r"|what is next|is (?:that|it) (?:all|bad|serious|dangerous)|how bad is (?:it|that)|will (?:he|she|i|it) be "
    r"(?:ok|fine|alright)|(?:do|should) (?:i|we) (?:call|ring|go to|see|need|take) "
    r"(?!.*\b(?:goggles|gloves|mask|wear|more|buy|order|protection|ventilate|anything|BOTTLE|AGENT|STOCK)\b).*"
    r"|should i worry|can i .*bath .*|again)(?: ?\?)*$"
)
_HOW_LONG = Pattern(
    r"^(?:and |so |but |ok |god |please )*(?:for )?how (?:long|many minutes)\b.*\b(?:tap|water|rins\w+|running"
    r"|run|under|flush\w*"
    r"|it|this)\b(?!.*\b(?:AGENT|STOCK|BOTTLE|ENCLOSURE|wet|dry|room|window)\b)"
    r"|^(?:for )?how (?:much )?long(?:er)?(?: \?)?$",
    "how",
)
""" "How long do I have to keep this tap on it"."""
_A_PERSON = Pattern(
    r"\b(?:he|she|it|they) (?:is|are)(?: only| just)? (?:an? )?(?:\w+ )?"
    r"(?:toddler|baby|child|kid|adult|teenager|pregnant)\b"
    r"|\b(?:he|she) (?:is|was)(?: only| just)? (?:NUMBER|DURATION|one|two|three|four|five|six|seven|eight|nine|ten)"
    r"(?: (?:months?|years?|weeks?)(?: old)?)?$"
)
_WITH_WHAT = Pattern(
    r"^(?:and |so |oh |no |,)*(?:(?:it|that) (?:is|was) |with |from |of )?(?:the |some |neat |undiluted |my )*"
    r"(?:AGENT|BOTTLE|STOCK|MIX)(?: (?:concentrate|bottle|one|neat|undiluted))?(?: ?[.!?])*$"
)
_STEP = Pattern(r"\b(?:rinsed|washed|sprayed|dry|dried|smell|smells|ENCLOSURE|wet)\b")
