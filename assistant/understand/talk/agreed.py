"""A yes or a no in other words than those: "go on then", "sorted", "everything", "yes, most of it", "hang on, no".

What they agree to depends on what was asked: a step that nobody told takes more than a nod.
"""

from __future__ import annotations

from assistant.contract import Pending, Reading
from assistant.understand.look import Look
from assistant.understand.steps.denied import only_partly
from assistant.understand.text.patterns import Pattern
from assistant.understand.text.short_slips import LONGEST


def agreed_to(look: Look, pending: Pending) -> bool | None:
    """Whether what waits is agreed to; None: nothing is said of it in such words."""
    plain, waits = look.parsed.plain, pending.on_yes is not None
    if waits and _ON_SECOND_THOUGHT.match(plain):
        return False  # "hang on, no, I'll spray it"
    if _agrees(plain, pending, look):
        return True
    return False if waits and _YES_AND.match(plain) and _MOST_OF_IT.search(plain) else None


def _agrees(plain: str, pending: Pending, look: Look) -> bool:
    """ "Go on then", asked whether to finish it as a clean: a yes to what isn't a step, and no "what's next"."""
    yes = pending.on_yes
    if isinstance(yes, Reading) and yes.intent == "return_check" and yes.slots.confirmed:
        dry_alone = _ONLY_DRY.fullmatch(plain.strip(" .!,")) is not None
        return _PUT_RIGHT.fullmatch(plain.strip(" .!,")) is not None and not (dry_alone and not _was_wet(look, yes))
    if isinstance(yes, Reading) and yes.intent == "done" and any(one.kind == "part" for one in pending.reading.doubts):
        return _ALL_OF_IT.fullmatch(plain.strip(" .!,")) is not None
    of_no_step = isinstance(yes, Reading) and yes.intent in _AGREED_TO and not pending.unasked
    return of_no_step and _GO_AHEAD.fullmatch(plain.strip(" .!,")) is not None


def _was_wet(look: Look, yes: Reading) -> bool:
    """Whether all that was told and not understood is of something wet, which drying puts right."""
    rounds = (look.world.state.rounds.get(name) for name in yes.slots.enclosures)
    return all(_WET.search(said) for round_ in rounds if round_ is not None for said in round_.remarks)


def says_it_again(look: Look, pending: Pending) -> bool:
    """ "Yes, I rinsed it", when it was asked whether it is really rinsed, or was done before."""
    yes = pending.on_yes
    if not isinstance(yes, Reading) or yes.intent != "done" or yes.slots.stayed_wet:
        return False
    before = look.world.talk.last_reading
    claimed = before.slots.steps if before is not None and before.intent == "done" else ()
    asked = {*claimed, *pending.reading.slots.steps, *yes.slots.steps}
    did = _YES_I_DID.fullmatch(look.parsed.plain.strip(" .!,"))
    if did is not None:
        return did["step"] is None or any(did["step"] in _STEM_OF[step] for step in asked & _STEM_OF.keys())
    opened = _YES_AND.match(look.parsed.plain) is not None
    told = bool(look.claims.done) and set(look.claims.done) <= asked and not look.parsed.mentions
    return opened and told and len(look.parsed.words) <= LONGEST + 2 and not only_partly(look.parsed.plain)


_STEM_OF = {
    "move out": ("move", "take"),
    "clear": ("clear", "empty"),
    "wash": ("wash", "scrub"),
    "apply": ("spray", "mist"),
    "rinse": ("rinse", "wipe"),
    "dry": ("dry",),
    "air": ("air",),
}
_YES_I_DID = Pattern(
    r"(?:yes|yeah|yep|yup|aye|of course)(?: ,)? (?:i|we) (?:did|have|had)"
    r"(?: (?P<step>move|take|clear|empty|wash|scrub|spray|mist|rinse|wipe|dry|air))?"
    r"(?: (?:it|that|them|him|her|one|all|already|too|earlier|before|first|off|out))*"
)
""" "Yes, I did wash it"; of no step, whatever was asked."""
_YES_AND = Pattern(r"(?:(?:oh|um|er|ah|well) )*(?:yes|yeah|yep|yup|aye|yah)\b")
_AGREED_TO = frozenset({"clean_only", "leave_off", "start", "units", "outbreak", "quarantine", "measure_with"})
_GO_AHEAD = Pattern(
    r"(?:(?:ok|oh|well|yes|right) ,? ?)*(?:go on(?: then)?|go for it|go ahead|do (?:it|that|so)"
    r"|alright(?: then)?|all right(?: then)?"
    r"|ok then|fine then|why not|might as well|let us do (?:it|that)|suppose so|i suppose|i guess so)(?: please)?"
)
_WET = Pattern(r"\b(?:wet|damp|moist|soggy|soak\w*|puddl\w*|drip\w*|pool\w*|water)\b")
_ONLY_DRY = Pattern(r"(?:(?:yes|oh|ok|it is|all|that is|now) ,? ?)*(?:dry|dried)(?: (?:it|now|again|off|all))*")
_PUT_RIGHT = Pattern(
    r"(?:(?:yes|yeah|oh|ok) ,? ?)*(?:(?:it is|that is|it was|all|everything is) )*(?:sorted|done|fixed|put right"
    r"|dealt with|fine|ok|all right"
    r"|alright|good|nothing|gone|clean|dry)(?: now| again)*"
)
""" "Sorted", asked whether what wasn't understood is put right."""
_ALL_OF_IT = Pattern(
    r"(?:(?:yes|yeah|yep|oh|ok) ,? ?)*(?:(?:that is|it is|and|did|done) )*(?:everything|all(?: of it)?|the lot"
    r"|the whole (?:thing|lot)|every bit"
    r"|everywhere|(?:the )?corners(?: and all)?|(?:the )?(?:lid|floor|roof|rest|top|bottom|back|front|walls"
    r"|sides|glass))(?: of it)?(?: too| as well)?"
)
""" "Everything", asked whether it is all of it."""
_ON_SECOND_THOUGHT = Pattern(r"(?:(?:hang on|hold on|wait|actually|oh|sorry) ,? ?)+no\b(?! (?:one|smell|idea))")
_MOST_OF_IT = Pattern(
    r"\b(?:most|some|half|part|parts|bits?|nearly|almost|mostly|partly)(?: of (?:it|them|that))?$"
    r"|\b(?:except|apart from|all but|but not|but for|not the)\b"
)
""" "Yes, most of it" is no yes."""
