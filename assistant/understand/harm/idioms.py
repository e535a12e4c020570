"""Ordinary talk that holds the words of harm: "in my other hand", "can't see the screen", "the toast is burning"."""

from __future__ import annotations

from assistant.understand.text.known_words import words_of
from assistant.understand.text.patterns import Pattern

# Bits of text without one of which the pattern can't match.
_HINTS = words_of(
    "reek lick ow ouch ringworm water eye ANIMAL aid cough mouth gulp swallow burn fumes smell"
    " gas chlorine drink dry dried drying see hand elbow arm foot knee sleeve leg bum hip scratch sick ill asthma sniff"
    " touched own itching sprayed misted wiped rinsed washed wrist shoulder back feet cut stink odor odour whiff nose"
    " head poison"
)

IDIOMS = Pattern(
    r"\btouched (?:it|that|this|ENCLOSURE|the \w+) with (?:the |my |a |an |his |her )*(?:\w+ )?(?:gloves?|tongs|hook"
    r"|brush|cloth"
    r"|sponge|towel|net)\b"
    r"|\bpoison (?:dart )?(?:ANIMAL|frogs?)\b|\bred eyed? (?:crocodile |tree )?(?:ANIMAL|skinks?|frogs?)\b"
    r"|\bfirst aid (?:kit|box|course)\b|\bcough (?:sweets?|drops?|syrup|mixture)\b"
    r"|\b(?:my |his |her )?mouth (?:is )?full\b(?! of (?:bubbles|foam|froth|AGENT|STOCK))"
    r"|\b(?:easy|gentle|kind|hard) on (?:the|your|my) eyes?\b|\bcoughs? and sneez\w*"
    r"|\beye ?wash (?:station|bottle|kit)\b(?=.*\b(?:need|buy|get|worth|have)\b)"
    r"|\bswallow\w* (?:my|his|her|your|our) (?:pride|words|tongue)\b|\bhard to swallow\b|\bdrains? (?:\w+ )?swallow\w*"
    r"|\b(?:toast|toaster|dinner|lamp|bulb|tube|candle)\b[^.,;!]*\bburn\w*"
    r"|\bburn\w*(?: in)?\b[^.,;!]*\b(?:toast|dinner|lamp|bulb|tube|candle)\b"
    r"|\b(?:how long|when|do|does|will)\b[^.,;!]*\b(?:fumes|smell)\b[^.,;!]*\b(?:take|clear|go|gone|last|leave)\w*"
    r"|\b(?:make|makes|making|give|gives|give off|produce|produces) (?:any |toxic |bad )?(?:fumes|gas|chlorine)\b"
    r"|\bwhat (?:fumes|gas|gases) (?:do|does|will|would|is|are)\b"
    r"|\b(?:swallow|gulp)\w*(?: \w+){0,3} (?:mouse|mice|rats?|pinkies?|pinky|crickets?|locusts?|roach\w*|worms?|food"
    r"|dinner|meal|prey|eggs?|fish|whole)\b"
    r"|\b(?:blink|twinkling|apple|corner) of (?:an|the|my|his|her) eye\b"
    r"|\b(?:my|your|an|his|her) eye on (?:a|the|it|him|her|that|them|this)\b"
    r"|\b(?:do|does|are|is|can|will|would)(?: the| any| bleach)? fumes (?:hurt|harm|bad|dangerous|toxic|kill"
    r"|affect|bother|upset|reach|worry|get)\w*"
    r"|\bavoid (?:the |any |breathing )*fumes\b|\bANIMAL (?:\w+ )?(?:went|ran|climbed|crawled) (?:up|on|onto) my \w+"
    r"|\bburn\w* (?:the |a |through )*(?:plastic|acrylic|hole|mat|wood|glass|tub)\b"
    r"|\bdrinks? more\b|\bdr(?:y|ied|ying)(?: out| up)? on (?:me|us)\b"
    r"|\bfumes(?: are| have| has| is)?(?: all| now| finally)* (?:gone|cleared|clear)\b"
    r"|^(?:are|is|do|does|will) (?:the )?(?:AGENT )?(?:fumes|vapours?)\b"
    r"|\b(?:sneez|wheez|cough)\w* (?:a bit |a lot )?(?:today|this week|lately|these days)\b"
    r"|\breek\w*\b[^.;!]*\bstill\b|\bstill reek\w*"
    r"|\blick\w* (?:his|her|its|their) (?:own )?(?:eyes?|eyeballs?|lips|nose)\b(?!.*(?:AGENT|STOCK|BOTTLE))"
    r"|\b(?:ow+|ouch)\b[^.;!]*\b(?:bang|bump|stub|pinch|trap|bagg|knock|whack|catch|caught)\w* my \w+"
    r"|\b(?:work|works|effective|good|kills?|use) (?:on |against |for )?ringworm\b"
    r"|\b(?:stuck|retained|loose) eye ?caps?\b(?!.*(?:AGENT|STOCK|BOTTLE))"
    r"|\b(?:only |just |got |some )*water (?:on|in|over|down) my (?:shirt|sleeve|hands?|trousers|jeans|shoes?"
    r"|socks?|lap)\b"
    r"|\b(?:can not|could not|cannot) see (?:(?:the|my|a|his) (?:screen|display|clock|phone|numbers?"
    r"|writing|label|marks?)"
    r"|him|her|it|them)\b"
    r"|\b(?:got|have|had|hold|holding|with)(?: (?:the|a|my|an|one|NUMBER))? (?:BOTTLE|ANIMAL|MEASURE"
    r"|bottle|jug|syringe|cloth"
    r"|sponge|brush|sprayer|towel)s? in (?:my|his|her|their|one|the|each|both|both my)"
    r" (?:other |left |right |free )?hands?\b"
    r"|\b(?:AGENT|STOCK|BOTTLE|cleaner|stuff) in (?:this|that|one|either) hand\b"
    r"(?: and (?:a|the|my) \w+ in the other)?|\b(?:still|got|left) in hand\b|\bwith my elbow\b"
    r"|\bmy (?:elbow|arm|foot|knee|hand|sleeve|bum|leg|hip) (?:just )?(?:knocked|caught|kicked|hit|tipped|bumped"
    r"|nudged)"
    r" (?:over )?(?:the|a|my) (?:AGENT|STOCK|BOTTLE|bottle|jug|bucket|lid|shelf|table|rack)\b"
    r"|\b(?:my \w+|partner|wife|husband|flatmate|he|she|they|(?:someone|somebody|anybody)(?: else)?) "
    r"(?:has |have |'s |just |already )*(?:sprayed|misted"
    r"|wiped|rinsed|washed) (?:it"
    r"|that"
    r"|ENCLOSURE|the (?:tank|box|tub|cage|viv|vivarium|glass|lid|floor|walls?))\b(?! (?:in|into|on|onto) (?:my|his"
    r"|her))"
    r"|\b(?:my \w+|the kids?|he|she|they|(?:someone|somebody)(?: else)?) (?:has |have |just |already )*"
    r"(?:sprayed|misted|wiped|put)"
    r"(?: (?:something|some|a bit of|stuff|AGENT|STOCK|BOTTLE|(?:glass|window|other) cleaner))* (?:in|into|inside|on)"
    r" (?:it|there|ENCLOSURE|the (?:tank|box|tub|cage|viv|vivarium|glass))\b"
    r"|^(?:the )?(?:AGENT|STOCK|BOTTLE)(?: is| 's)(?: all| now)* (?:sprayed|misted|wiped|poured|put) (?:on|over)"
    r"(?: (?:it|there|everything|the glass))?$"
    r"|\bon (?:his|her|its|their|my|our) own\b|\bitching to\b|\bmy (?:arms?|wrists?|back|feet|legs|shoulders?"
    r"|knees) (?:is |are |'s )?killing me\b"
    r"|\bcuts? (?:it|that|this|the \w+|down)(?: \w+)? (?:down|short)\b|\bcut down\b"
    r"|\b(?:reeks?|stinks?|odor|odour|smells?|whiff)\b[^.,;!]* (?:in|inside|from) (?:the |his |her |its )?"
    r"(?:ENCLOSURE|tank|box|tub|cage|viv|vivarium)\b"
    r"|\b(?:put|stick|stuck|poke|poked|got) my (?:nose|head) (?:in|inside|into|over|near|to)\b"
    # Wet with what, and why cracked, is not passed over.
    r"|\bmy hands (?:are|were) (?:all |still |too |so )*(?:(?:wet|full|soaked|dirty|filthy|soapy|slippery|cracked)\b"
    r"(?! (?:in|with|of|from|by|after|and|but)\b)|(?:cold|freezing|tied|shaking|gloved|busy)\b)"
    r"|^(?:okay |ok |right |so |well )*deep breath\b"
    r"|^(?:\w+ ,? ?){0,2}scratch (?:that|it)\b|\bscratch (?:that|the|my)? ?(?:last )?(?:entry|note"
    r"|one|record|line)\b"
    r"|\bsick on the (?:stairs|floor|carpet|sofa|rug|bed)\b|\bnot (?:been |feeling )?ill\b"
    r"|\bgot asthma\b(?!.*\b(?:breathe|attack|tight|wheez\w*)\b)"
    r"|\bsmells? (?:is |has |have |are )?(?:all )?gone\b|\bsniffed\b(?! (?:the |some |a |up )?(?:AGENT"
    r"|STOCK|BOTTLE|fumes))"
    r"|\bdry\b[^.;!]*\breek\w*|\bsoak water\b(?=[^.;!]*\b(?:dump|pour|tip|empty|yard|garden|drain)\b)"
    r"|\bmight have ringworm\b|\b(?:put|popped|placed|let|got) (?:him|her|it|them) (?:straight )?back(?= (?:at"
    r"|since) NUMBER)"
    r"|\bsmell (?:the |some |any )?fumes\b|\bstill (?:some |a few )?fumes\b|\bfumes (?:are )?still (?:there|strong"
    r"|in)\b",
    *_HINTS,
)
"""Ordinary talk with the words of harm in it. Only these words are passed over: the rest of the text still counts."""


def only_idioms(text: str) -> bool:
    """Whether such talk is all there is: then its words all together are no cry either."""
    rest = IDIOMS.sub(" ", text)
    return rest != text and len(rest.split()) <= 1
