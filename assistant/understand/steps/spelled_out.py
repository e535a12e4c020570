"""Other ways to tell of a step as plain claims: "gave it a good rinse" is "rinsed it", "rinse: check" "rinse is done".

Only the form is changed: what stands around it ("not", "should I") is left, and judged in `claimed_steps`.
"""

from __future__ import annotations

import re

from assistant.understand.steps.step_patterns import DONE
from assistant.understand.text.patterns import Pattern

_STEP_NOUN = (
    r"(?:moving out|clearing(?: out)?|clear out|washing|wash|spraying|holding|hold|wet time|rinsing|rinse|wiping|wipe"
    r"|drying|airing)"
)
_SEVERAL = Pattern(
    rf"^((?:the )?{_STEP_NOUN}(?:(?: ?,)?(?: and)?(?: the)? {_STEP_NOUN})+) (?:is|are|have been) ({DONE})\b",
    *(
        "done",
        "finish",
        "over",
        "complete",
        "sorted",
        "taken care",
        "dealt",
        "ticked",
        "of the way",
        "seen to",
        "behind",
    ),
)
_TICKED = Pattern(
    rf"\b(?:(?:mark|put|log|record) (?:off )?(?:the )?({_STEP_NOUN})(?: of| for| on)?(?: the)?(?: ENCLOSURE)? "
    rf"(?:down )?as {DONE}|(?:tick|mark) off (?:the )?({_STEP_NOUN}))\b",
    *("mark ", "put ", "log ", "record ", "tick "),
)
_LISTED = Pattern(rf"\b({_STEP_NOUN}) : (?:check|done|yes|tick|ok|finished)\b", " : ")
_ROUGHLY = Pattern(
    r"\b(rinse|wash|wipe|clear out) (?:the )?(ENCLOSURE|it|that|this) (?:is )?(?:all )?(?:done|finished)$",
    *("done", "finished"),
)
_VERB_OF = {
    "rinse": "rinsed",
    "rinsing": "rinsed",
    "hose down": "rinsed",
    "hosing": "rinsed",
    "swill": "rinsed",
    "wash": "washed",
    "washing": "washed",
    "scrub": "washed",
    "scrubbing": "washed",
    "soaping": "washed",
    "spray": "sprayed",
    "spraying": "sprayed",
    "coat": "sprayed",
    "coating": "sprayed",
    "soaking": "sprayed",
    "dousing": "sprayed",
    "drenching": "sprayed",
    "wipe": "wiped",
    "wiping": "wiped",
    "drying": "dried",
    "towelling": "dried",
    "toweling": "dried",
    "rub down": "dried",
    "airing": "aired",
}
_NOMINAL = Pattern(
    r"\b(?:given|gave|had|got|done|did)(?: (?P<what>it|that|them|this|both|everything|all of it|(?:the )?ENCLOSURE"
    r"|the (?:lot|whole \w+|inside|glass|tank|tub|box|cage|walls|viv\w*)))? (?:a|an|the|its|his|her|their|another)"
    r"(?: (?:good|quick|thorough|proper|final|nice|second|full|decent|really|very|first|last|bit of a|right|complete"
    rf"|careful|hard|long|light|rough|gentle|hot|soapy|double))* (?P<noun>{'|'.join(_VERB_OF)})\b",
    *("given", "gave", "had ", "got ", "done ", "did "),
)


def spelled_out(text: str) -> str:
    """A masked text with its lists, ticks and nouns as plain claims."""
    if _SEVERAL.search(text):
        text = _SEVERAL.sub(lambda all_of: re.sub(rf"({_STEP_NOUN})", r"\1 is done", all_of.group(1)), text)
    text = _TICKED.sub(lambda ticked: f"{ticked.group(1) or ticked.group(2)} is done", text)
    text = _LISTED.sub(r"\1 is done", text)
    text = _NOMINAL.sub(lambda told: f"{_VERB_OF[told['noun']]} {told['what'] or 'it'}", text)
    return _ROUGHLY.sub(r"\1 is done", text)


WORDS_OF = (_SEVERAL, _TICKED, _LISTED, _NOMINAL)
"""The patterns here, for the words that they turn on."""
