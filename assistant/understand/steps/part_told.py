"""A step that is told of a part of an enclosure, or of all but one: "rinsed the walls", "sprayed but missed the lid".

It is not that step of the whole. Of which part a step is told is found in `of_what`; here stands what the rest of the
sentence says was left out, ran out, or is still to do.
"""

from __future__ import annotations

from assistant.understand.text.parts_of_it import FILLING, FITTING, PART, WHICH
from assistant.understand.text.patterns import Pattern, words_in

_DET = r"(?:the |its |his |her |their |that |this |a |one |an |some |two |both )*"
_CLEARED = Pattern(
    r"\b(?:clear\w*|emptied|empty|strip\w*|gutted|bare|substrate|bedding|litter|paper|sand|soil|everything|all|stuff"
    r"|things|bits|contents|nothing|lot|furniture|furnishings)\b"
)
"""Of what is cleared out all there is; "the bowl's out" is one thing."""
_WHOLE_TOO = Pattern(
    r"\b(?:everything(?: else)?|all of it|the (?:lot|rest|whole)|whole (?:thing|tank|box|cage|viv\w*|tub)"
    r"|inside and out|all over|everywhere|top to bottom|and (?:the |my )?"
    r"(?:ENCLOSURE|tank|box|cage|viv\w*|tub|enclosure))\b"
    r"|\b(?:all|every|each)(?: of)?(?: the| its)? (?:inch|surfaces?|corners?|sides?)\b|\bcorners too\b"
)
""" "The lid and everything else": all of it."""
LEFT_OUT = Pattern(
    r"\b(?:but|except|bar|save|not|minus|apart from|aside from|other than|without|not counting|not including"
    r"|leaving out)"
    r"(?: for)?(?: not)? "
    rf"(?:the |one |a |his |her |its |that |this |their )(?:\w+ )?(?:{PART}|{FITTING}|rest)\b"
    r"|\b(?:missed|skipped|forgot|left out|overlooked|could not reach|did not (?:get|do|reach|hit|cover))"
    rf"(?: (?:to do|about|at|to))? {_DET}{WHICH}(?:{PART}|{FITTING})\b"
    rf"|\bonly (?:\w+ed |did |done |got )?{_DET}{WHICH}(?:{PART}|{FITTING}|NUMBER)\b(?! (?:times?|minutes?|hours?))"
    rf"|\b{WHICH}{PART} (?:only|so far|first|for now)\b"
    rf"|\b{_DET}{WHICH}{PART}(?: is| are| 's)? (?:still )?(?:to go|to do|to come|left|next|waiting)\b"
    r"(?! to dry| open| ajar| week)"
    r"|\b(?:but|and|though|while) (?:the |his |her |its |their |my |one |some |that )?(?:\w+ ){1,3}"
    rf"(?:is|are|was|were|has|have) not(?: yet)?$|\bbut left {_DET}(?:\w+ )?(?:{PART}|{FITTING})\b"
    rf"|\b{_DET}(?:{PART}|{FITTING}|{FILLING})(?: is| are| 's) (?:staying|still in|not out)\b|\b{FITTING} stays\b"
    r"|\bnot (?:all|everything|everywhere)\b",
    *(
        "but",
        "except",
        "bar",
        "save",
        "not",
        "minus",
        "apart",
        "aside",
        "other",
        "without",
        "missed",
        "skipped",
        "leaving",
    ),
    *("forgot", "left", "overlooked", "only", "so far", "first", "for now", "to go", "to do", "to come", "next"),
    *("waiting", "staying", "still", "stays"),
)
"""What is said not to be done."""
CUT_SHORT = Pattern(
    r"\b(?:ran|run|running|runs) (?:out|dry|low)\b"
    r"|\b(?:nozzle|sprayer|trigger|bottle|pump|BOTTLE)(?: 's)?(?: \w+){0,2}? "
    r"(?:clogged|blocked|jammed|broke|broken|packed up|gave up|empty|died|stuck)\b|\bhalf ?way\b|\bpart way\b"
    r"|\b(?:sprayed|rinsed|washed|dried|misted|did) (?:it|that|them) (?:all )?"
    r"(?:wrong|badly|a bit|a little|roughly)\b|\bnot enough\b",
    *("ran ", "run", "clog", "block", "jam", "bro", "pack", "gave", "empty", "died", "stuck", "half", "part way"),
    *("wrong", "badly", "a bit", "a little", "roughly", "enough"),
)
"""Begun, and not brought to its end."""


_IN_THERE = Pattern(
    r"\bORGANISM (?:is |are |still |crawling |sitting )*(?:in there|in it|inside|(?:on|in|under|behind) "
    rf"(?:the |its |a )*{WHICH}(?:{PART}|{FITTING}|ENCLOSURE|tank|box|cage|viv\w*|tub)\b)",
    "ORGANISM",
)


def seen_in_there(plain: str) -> bool:
    """Whether a germ or a mite is told of as in the enclosure itself."""
    return _IN_THERE.search(plain) is not None


def something_left_out(plain: str) -> bool:
    """Whether a masked text that tells a step says that a part of it wasn't done."""
    return LEFT_OUT.search(plain) is not None


def cut_short(plain: str) -> bool:
    """Whether it says that the step wasn't brought to its end, or only roughly done."""
    return CUT_SHORT.search(plain) is not None


def one_thing_out(plain: str) -> bool:
    """Whether a text that tells of a clearing names only single things: dishes, a hide."""
    return _CLEARED.search(plain) is None


def whole_too(plain: str) -> bool:
    """Whether all of it is named beside a part, or the walls and the floor both."""
    return _WHOLE_TOO.search(plain) is not None or (_WALLS.search(plain) and _FLOOR.search(plain)) is not None


_WALLS = Pattern(
    r"(?<!\bone )(?<!\btwo )(?<!\bthree )(?<!\bback )(?<!\bside )(?<!\bfront )(?<!\bother )(?<!\bsome )"
    r"(?<!\bNUMBER )(?<!\bmost )(?<!\bof the )\b(?:walls|sides)\b",
    "wall",
    "sides",
)
_FLOOR = Pattern(r"\b(?:floor|base|bottom)\b", "floor", "base", "bottom")


WORDS = words_in(LEFT_OUT, CUT_SHORT)
"""Words that the rules here turn on."""
