"""A text that tells of the surface or the air: which question it is, or which answer to one ("did it stay wet?")."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from assistant.contract import Pending, Reading, Slots, World
from assistant.core.record.state import Round
from assistant.core.round.rounds import a_hold_runs, is_open, waits_on_hold
from assistant.understand.steps.of_the_keeper import of_the_keeper
from assistant.understand.steps.rinsed_when import rinsed_before_its_end
from assistant.understand.steps.smell_told import says_it_is_wet, smell_in_short
from assistant.understand.steps.stayed_wet import cannot_tell
from assistant.understand.steps.wet_answered import before_the_rinse, wet_said
from assistant.understand.text.asking import asks
from assistant.understand.text.patterns import Pattern

if TYPE_CHECKING:
    from assistant.understand.look import Look

FITS = 0.2
"""Least chance of a question whose own rule speaks for it. Chosen, not measured."""
BY_RULE = 0.9
"""Confidence of a reading found so."""
OF_THE_SURFACE = frozenset({"rewet", "dried_early", "still_smells"})
"""Questions that tell of one surface; said right after the tool asked about one, they are of that one."""
_STILL = Pattern(r"^(?:(?:yes|yeah|ok|it is|it 's|they are|all) ?,? ?)*still\b(?!.*\b(?:again|respray\w*|topped)\b)")
""" "Still wet", when its time is over, is wet all the time; "misted it again, still wet" may not be."""
_AND_RETURN = Pattern(
    r"\b(?:can|may|could|shall|should|is) (?:he|she|it|they|i|we|ANIMAL|ENCLOSURE)\b.*"
    r"\b(?:go|put|pop|back|home|return)\b"
)


def of_the_surface(look: Look) -> tuple[str, float] | None:
    """The question and its confidence; None: nothing of the kind is told."""
    told, chances = look.told, look.chances
    if told.dried and told.gives_up:
        return "clean_only", max(chances["clean_only"], BY_RULE)
    if sprayed_where_it_dried(look):
        return "done", BY_RULE
    rounds = [round_ for round_ in look.world.state.rounds.values() if is_open(round_)]
    known = any(map(waits_on_hold, rounds))
    if told.dried and (known or chances["dried_early"] >= FITS):
        return "dried_early", max(chances["dried_early"], BY_RULE)
    if known and not set(look.claims.done) - {"dry", "hold", "apply"} and says_dry(look.parsed.plain):
        return "dried_early", max(chances["dried_early"], BY_RULE)
    vouched = look.claims.stayed_wet and "hold" in look.claims.done
    rinsed_too = bool(set(look.claims.done) - {"apply", "hold", "dry"})  # "juniper rinsed, pepper still wet"
    not_all = told.wet_kept == "seen" and look.claims.stayed_wet is False  # a doubt is noted, and no clock runs on it
    if (
        told.wet_kept
        and not not_all
        and not vouched
        and not rinsed_too
        and (known or chances["rewet"] + chances["done"] >= FITS)
    ):
        return "rewet", max(chances["rewet"], BY_RULE)
    runs = a_hold_runs(rounds, look.world.now)
    if runs and told.wet and told.smell is None and not look.claims.done and look.claims.stayed_wet is not False:
        return "rewet", max(chances["rewet"], BY_RULE)  # "corners are wet too": as they should be
    return _of_the_air(look, rounds) if told.smell is not None or told.wet is not None else None


def sprayed_where_it_dried(look: Look) -> bool:
    """ "The corner dried, so I sprayed it again", "a bit dry at the back, sprayed it": the wet time is from there."""
    if look.told.dried and look.told.sprayed_again:
        return True
    if "apply" not in look.claims.done:
        return False
    if _ON_THE_DRY.search(look.parsed.plain) is not None:
        return True
    return look.told.wet_kept == "sprayed" and _PARTLY_DRY.search(look.parsed.plain) is not None


_ON_THE_DRY = Pattern(
    r"\b(?:on|over) (?:the|those|some|any|a few) dry (?:bits?|patch(?:es)?|spots?|parts?|areas?|places?|corners?)\b"
)


_PARTLY_DRY = Pattern(
    r"\b(?:bit|little|slightly|partly|half|corner|back|front|lid|side|floor|edges?|patch(?:es)?|spots?) dry\b"
    r"|\bdry (?:at|on|in|along|round|near) the\b|\bdry (?:patch(?:es)?|spots?|bits?)\b"
)


def says_dry(plain: str) -> bool:
    """A part of the surface is told to be dry, whatever else is still wet; asked, feared or ahead it is not told."""
    if asks(plain):
        return False
    return _SAYS_DRY.search(_NOT_SAID_DRY.sub(" ", plain)) is not None


_NOT_SAID_DRY = Pattern(
    r"\b(?:before|until|till|unless|nearly|almost|about to|not|never|nothing|nowhere|so|stops?|keep|would|could"
    r"|will|going to|getting|starting|beginning|if|when|once|does|might|may|to|hand|hands|towel|cloth"
    r"|fresh)\b(?: \w+){0,4}?"
    r" (?:dry|dried|drying|drier)\b"
)
_SAYS_DRY = Pattern(
    r"(?:\b(?:is|are|was|were|went|gone|has|have)|'s)(?: \w+){0,2}? (?:dry|dried)\b(?! (?:side|skin|goods|run))"
    r"|\bno wet(?:ness)? left\b|\b(?:bone|all|already) dry\b|\bdid not stay wet\b"
)


def _of_the_air(look: Look, rounds: list[Round]) -> tuple[str, float] | None:
    chances = look.chances
    if look.top == "return_check" or _AND_RETURN.search(look.parsed.plain):
        return "return_check", max(chances["return_check"], BY_RULE)
    other = set(look.claims.done) - {"dry", "air", "hold"}
    if other and chances["still_smells"] < 0.5:
        return None  # "rinsed, no smell": the steps, with what was smelt
    rinsed = any({"rinse", "dry"} & set(round_.done) for round_ in rounds)
    if chances["still_smells"] >= FITS or "AGENT" in look.parsed.plain or rinsed:
        return "still_smells", max(chances["still_smells"], BY_RULE)
    return None


def asks_whether_wet(world: World) -> bool:
    """Whether it waits to be told if a surface stayed wet."""
    return world.waiting is not None and world.waiting.asks_whether_wet


def wet_answer(look: Look, pending: Pending) -> Reading | None:
    """ "It dried out" and "I couldn't see" answer "did it stay wet?"."""
    yes = pending.on_yes
    if not isinstance(yes, Reading) or yes.slots.stayed_wet is None:
        return None
    if yes.slots.stayed_wet is False and not isinstance(pending.on_no, Reading):
        return None  # it was asked whether it is really rinsed
    rounds = [r for name in yes.slots.enclosures if (r := look.world.state.rounds.get(name)) is not None]
    if rounds and not any(map(waits_on_hold, rounds)):
        return None  # it has been answered in other words meanwhile
    named = look.slots("done").enclosures
    if named and set(named).isdisjoint(yes.slots.enclosures):
        return None  # told of another one
    said = wet_said(look.parsed.plain)
    if said == "unsure":
        slots = Slots(enclosures=yes.slots.enclosures, stayed_wet=False)
        return Reading(look.parsed.text, "next", slots, BY_RULE, (), (), look.spoken)  # which asks it again
    unseen = cannot_tell(look.parsed.plain) and not look.parsed.plain.endswith("?")
    wet = False if unseen else look.claims.stayed_wet  # what nobody saw wet doesn't count
    if said is not None and not unseen:
        wet = said == "wet"
    elif wet is None and _YES_AND.match(look.parsed.plain) and set(look.claims.done) & set(AFTER_THE_HOLD):
        wet = True
    if wet is not False and (
        says_dry(before_the_rinse(look.parsed.plain)) or _for_less(look, yes) or rinsed_before_its_end(look)
    ):
        wet = False
    if wet is None and look.told.wet_kept and "apply" not in look.claims.done and _STILL.search(look.parsed.plain):
        wet = True
    if wet is None:
        return None
    answer = yes if yes.slots.stayed_wet is wet else pending.on_no
    if not isinstance(answer, Reading):
        answer = replace(yes, slots=replace(yes.slots, steps=("hold",), stayed_wet=wet))
    plainly = wet and look.claims.polarity == "claimed"
    further = tuple(step for step in look.claims.done if step in AFTER_THE_HOLD) if plainly else ()
    if further and answer.slots.steps == ("hold",):  # "rinsed it, and yes, it stayed wet"
        answer = replace(answer, slots=replace(answer.slots, steps=("hold", *further)))
    if further and look.slots("done").openings is not None:  # "stayed wet, rinsed, dried and opened both windows"
        answer = replace(answer, slots=replace(answer.slots, openings=look.slots("done").openings))
    return replace(answer, question=look.parsed.text, confidence=BY_RULE, spoken=look.spoken)


def seen_wet(look: Look, pending: Pending | None) -> Reading | None:
    """ "It's all wet", asked whether it is still wet, or while a wet time runs: so it was seen."""
    plain = look.parsed.plain
    if "wet" not in plain.split() and not _WET_IN_SHORT.search(plain):
        return None
    yes = pending.on_yes if pending is not None else None
    asked = isinstance(yes, Reading) and yes.intent == "rewet"
    runs = a_hold_runs(look.world.state.rounds.values(), look.world.now)
    if (
        not (asked or runs)
        or look.claims.done
        or look.claims.stayed_wet is False
        or wet_said(plain.replace(" looks ", " is ")) != "wet"
    ):
        return None
    if asked and isinstance(yes, Reading) and not look.parsed.mentions:
        return replace(yes, question=look.parsed.text, confidence=BY_RULE, spoken=look.spoken)
    named = look.slots("rewet")
    slots = Slots(enclosures=named.enclosures, every_enclosure=named.every_enclosure, choices=named.choices)
    return Reading(look.parsed.text, "rewet", slots, BY_RULE, (), (), look.spoken)


_WET_IN_SHORT = Pattern(r"\b(?:dripping|soaking|sopping|glistening|shiny|soaked)\b")
_YES_AND = Pattern(r"(?:yes|yeah|yep|yup|it did)\b")
AFTER_THE_HOLD = ("rinse", "wipe", "dry")
"""Steps that are told in one breath with the answer to whether it stayed wet."""


_HOW_LONG_WET = Pattern(
    r"\b(?:for|only|just|about|after|at|until|till|maybe|nearly|almost|like|wet) (?:\w+ )?(?:DURATION|NUMBER)\b"
    r"|\b(?:DURATION|NUMBER)(?: \w+)? (?:or so|at most|wet|max|tops|only)\b|^(?:DURATION|NUMBER)$",
    "DURATION",
    "NUMBER",
)


_A_MOMENT = Pattern(
    r"(?:(?:ok|yeah|yes|just|give me|hang on|hold on|wait|um) ,? ?)*(?:a|an|one|two|half a|1|2) ?(?:sec|secs"
    r"|second|seconds|min|mins"
    r"|minute|minutes|moment|mo|tick|ticks)(?: please)?"
)
""" "One sec": a delay, and no span that it stayed wet."""


def _for_less(look: Look, asked: Reading) -> bool:
    """ "It stayed wet for nine minutes", of a wet time of ten."""
    if not _HOW_LONG_WET.search(look.parsed.plain) or _A_MOMENT.fullmatch(look.parsed.text.casefold().strip(" .!,")):
        return False  # "yeah, one sec"
    said = look.parsed.amounts.spans_s
    rounds = [look.world.state.rounds.get(name) for name in asked.slots.enclosures]
    needed = [r.hold.seconds for r in rounds if r is not None and r.hold is not None and r.hold.seconds is not None]
    return bool(said and needed) and max(said) < max(needed)


def smell_answer(look: Look, pending: Pending) -> Reading | None:
    """ "Dry, bit of bleach", "none", after "Dry? Any smell?"."""
    if "smell" not in pending.missing:
        return None
    smell = look.told.smell if look.told.smell is not None else smell_in_short(look.parsed.plain)
    wet = False if look.claims.done == ("dry",) and not look.told.wet else look.told.wet
    wet = True if says_it_is_wet(look.parsed.plain) and not of_the_keeper(look.parsed.plain) else wet
    if (smell is None and wet is None) or set(look.claims.done) - {"dry"} or look.parsed.plain.endswith("?"):
        return None
    slots = replace(pending.reading.slots, smell=smell, wet=wet)
    return Reading(look.parsed.text, "still_smells", slots, BY_RULE, (), (), look.spoken)


def where_it_was_asked(intent: str, slots: Slots, world: World) -> Slots:
    """With no enclosure named, what is told of a surface is told of the one that the tool has just asked about."""
    pending, last = world.waiting, world.talk.last
    if intent not in OF_THE_SURFACE or slots.enclosures or slots.choices or slots.every_enclosure:
        return slots
    if intent == "rewet" and "apply" in slots.steps and last is not None and last.values.get("next") == "apply":
        return replace(slots, enclosures=(str(last.values["enclosure"]),))  # the one that is to be sprayed again
    if pending is None or pending.reading.intent not in (*OF_THE_SURFACE, "done"):
        return slots
    return replace(slots, enclosures=pending.reading.slots.enclosures)
