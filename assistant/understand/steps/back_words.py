"""How an animal is said to be back, in words: in a tub, a hide, or home. Whose home it is knows `back_where`."""

from __future__ import annotations

from assistant.understand.named.animal_words import ONE_ANIMAL
from assistant.understand.named.tub_words import TUBS
from assistant.understand.text.asking import ASKED
from assistant.understand.text.patterns import Pattern

_DET = r"(?:the|a|an|his|her|their|its|my|that)"
_WAITS_IN = rf"(?:{TUBS}|bath|bathtub|bathroom|sink|hall|kitchen)"
HIDE = r"(?:hides?|cork(?: bark)?|burrow|cave|log)"
_IN = rf"(?: safe| safely| now)?(?: in| into| inside| to| under)(?: {_DET})?(?: (?!\b(?:and|or|but|is)\b)\w+){{0,2}}?"
_THERE = Pattern(rf"{_IN} (?P<where>{_WAITS_IN}|{HIDE})\b")
_NOT_IN = Pattern(
    r" (?:in )?(?:DURATION|NUMBER|(?:a|an|one) (?:minute|min|sec|second|moment|bit|while|tick|hour))\b(?! ago)"
    r"| (?:asleep|to sleep|on|off|up|down|to normal|from|with|later|soon|then)\b"
)
""" "Back in a minute", "back asleep", "back on"."""
_NOBODY = Pattern(r"\b(?:nobody|no one|noone|none of us)(?: \w+){0,3} $", "no")
_ONE = (
    rf"(?:he|she|they|it|him|her|them|ANIMAL|ENCLOSURE|(?:the |my )?(?:animal|{ONE_ANIMAL}|baby|guy|girl|boy)|both"
    r"(?: of them)?|all of them)"
)
IS_BACK = Pattern(
    rf"\b{_ONE}(?: is| are| 's| has| have| was| went| goes| got| climbed| crawled| slipped| put| gone| safe| safely"
    rf"| now| straight| right| all| both)* (?:back|home)(?P<there>{_IN} (?P<where>{_WAITS_IN}|{HIDE}))\b"
    rf"|(?:^|, )(?:ok |and |phew |,)*back(?P<there_too>{_IN} (?P<where_too>{_WAITS_IN}))\b",
    "back",
    "home",
)
IT_IS_IN = Pattern(r"^(?:ok |and |so |now )*it(?: is| 's)(?: now| all)* in(?: now| again)?$", "it")
""" "It's in": the animal, or the bowl."""
UNSURE = Pattern(
    rf"{ASKED}"
    r"|\b(?:not|never|nobody|no one|if|unless|until|till|before|will|would|going to|about to|let me|want|wants|should"
    r"|tries|trying|soon|later|once|when)\b"
)


def is_no_return(before: str, after: str) -> bool:
    """Whether "back" is told of something else than the way home, or of nobody.

    before, after: the clause on both sides of what would be the step.
    """
    return bool(_THERE.match(after) or _NOT_IN.match(after) or _NOBODY.search(before))


WAITING = Pattern(
    r"\b(?:holding|spare|travel|travelling|temporary|temp|waiting|plastic|carry|transport|feeding|other|shoe ?box"
    r"|blue|grey|gray|red|green|white|black|clear|small|big|little)\b"
)
"""A tub that no home is called by."""
