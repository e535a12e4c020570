"""Words for an animal that is inside though it should be out, and for one of several. `still_inside` reads them."""

from __future__ import annotations

from assistant.understand.named.animal_words import ONE_ANIMAL
from assistant.understand.named.names import HOMES
from assistant.understand.text.patterns import Pattern

ANY_HOME = "|".join(sorted(HOMES - {"tub", "box", "bin", "hall", "rack", "house"}))
"""What nobody waits in."""
_THE_HOME = rf"(?:in|inside|into) (?:the |his |her |their |its |my )?(?:ENCLOSURE|{ANY_HOME})"
_ANIMAL = rf"(?:ANIMAL|(?:the |my )?(?:animal|{ONE_ANIMAL}))"
_NAMED = rf"(?:(?:the |my |a )?{_ANIMAL}|ENCLOSURE)"
_HE = rf"(?:he|she|they|{_NAMED})"
_UNDER = (
    r"(?:under|behind|in|inside) (?:the |his |her |a |that )?"
    r"(?:cork(?: bark)?|hides?|log|bark|branch(?:es)?|rock|leaves|moss|substrate|background|decor|plants?)"
)
_ALL_ALONG = r"(?:the (?:whole|entire) time|all (?:along|the time|this time|through))"
_ALARM = r"(?:oh (?:my )?(?:god|no|dear|gosh|shit|crap)|god|help|wait|shit|crap|damn|no|hang on|hold on|argh)"
INSIDE = Pattern(
    rf"\b{_HE}(?: is| 's| are| was| were)(?: actually| really| still)* {_THE_HOME}\b"
    rf"|^(?:{_ALARM} ?,? ?)+(?:the |my )?{_HE}(?: is| 's| are)(?: still)? (?:in there|inside|in it)\b"
    rf"|\b{_NAMED}(?: is| 's| are) (?:in there|inside)(?: ?!|$)"
    rf"|\b(?:i )?(?:completely |totally )?forgot (?:about )?(?:the |my )?(?:{_ANIMAL}|ENCLOSURE|him|her|them)"
    rf"(?: ?!)?$|\bforgot to (?:take|get|move) (?:the |my )?(?:{_ANIMAL}|ENCLOSURE|him|her|them) out\b"
    rf"|\b{_HE} never left(?! the)\b"
    rf"|\b{_HE}(?: is| was| 's| were| has been)(?: still)? "
    rf"(?:inside|in there|in it|{_THE_HOME}|{_UNDER}) {_ALL_ALONG}\b|\b{_HE}(?: is| 's| are) still {_UNDER}\b"
    rf"|\b{_HE}(?: is| 's| are) (?:still )?hiding {_UNDER} still\b"
    r"|\b(?:can |just )?(?:see|saw|spotted) (?:a |his |her |the |its |my |ANIMAL 's )*"
    rf"(?:tail|head|nose|tongue|{_ANIMAL}|him|her|something moving)\b.* (?:in there|inside|in it)\b"
    r"|\b(?:both|both ANIMAL|all (?:three|NUMBER|of them)|they)(?: are| 're)?(?: both| all)? (?:still )?"
    r"(?:inside|in there)\b|^(?:they are )?both(?: are)? (?:still |back )?in$"
    r"|^one(?: of (?:them|ANIMAL))?(?: is| has| 's)?(?: got| went| gone| climbed| crawled)?(?: back)? "
    rf"(?:in|inside|in there|{_THE_HOME})$"
    r"|\bone(?: of (?:them|(?:the )?ANIMAL))? (?:went|got|climbed|crawled) back (?:in|inside|into)\b"
    r"|\b(?:put|popped|placed) one(?: of (?:them|the two))? (?:straight )?back\b"
    r"(?! in(?:to)? (?:the|a|his|her|its) (?:\w+ )?(?:tub|box|shoebox))"
    r"|\bneither(?: of them| ANIMAL)? (?:is|are|was|were) out\b",
    *("in", "forgot", "one", "never left", "neither", "see", "spotted", "saw", "under", "behind"),
)
ONE_OUT = Pattern(
    r"\b(?:can )?only (?:find|found|see|count|counted|got|have) (?:one|1)(?: of them)?$"
    r"|^(?:ok |so |right |and |well |now |just )*(?:only )?"
    r"(?:one|(?:the )?first|one of (?:them|(?:the |my )?ANIMAL)|1)(?: one| ANIMAL)?"
    r"(?: is| 's| has| got| came| moved)*(?: out| in (?:the|a|his|her) \w+)\b"
    r"|\bonly (?:got |have |moved |taken )*(?:one|ENCLOSURE|1)(?: of (?:them|(?:the |my )?ANIMAL))?"
    r"(?: is| 's| are)? out\b"
    r"|\b(?:only )?(?:got|moved|took|have) (?:only |just )?one(?: of (?:them|(?:the |my )?ANIMAL))? out\b",
    "out",
    " in ",
    "only",
)
"""One of several is out, or only so many."""
OTHER_NOT = Pattern(
    r"\b(?:the |a )?(?:other|second|last)(?: one| ANIMAL)?(?: is| 's| are)?(?: still)? "
    rf"(?:not|hiding|in there|inside|in$|in (?:the |his |her )?(?:ENCLOSURE|{ANY_HOME})|{_UNDER})\b"
    rf"|\bone(?: is| 's) (?:still )?(?:hiding|{_THE_HOME})"
    r"|\bthe (?:other|second)(?: one| ANIMAL)? (?:is )?still (?:in|inside|hiding)\b",
    *("other", "second", "last", "one"),
)
"""The other is not."""
OTHER_TOO = Pattern(
    r"^(?:(?:ok|and|so|now|right|got|there) ,? ?)*(?:the |my )?(?:other|second)(?: one| ANIMAL)?(?: is| 's)?"
    r"(?: out| in (?:the|a|his|her) \w+)?(?: too| now| as well| also)*$",
    "other",
    "second",
)
BOTH_AFTER_ALL = Pattern(
    r"\b(?:other|second)(?: one| ANIMAL)?(?: is| 's)?(?: (?:in the \w+|out))?"
    r"(?: (?:too|as well|also|out|in the \w+))\b|\bboth\b.*\bout\b",
    "other",
    "second",
    "both",
)
NO_INSIDE = Pattern(
    r"\b(?:nobody|no one|nothing|not|no) (?:\w+ ){0,3}(?:inside|in there|in it)\b|\b(?:if|unless|make sure|check\w*)\b"
)
