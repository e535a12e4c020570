"""What a text tells of a clean: steps, wet or dry, smell, windows, and how the clean is to be begun."""

from __future__ import annotations

from dataclasses import replace

from assistant.contract import Slots
from assistant.core.round.rounds import is_open
from assistant.understand.air.openings import openings_in
from assistant.understand.air.windows_told import shut_before, windows_told
from assistant.understand.asked import Asked
from assistant.understand.named.animal_words import ONE_ANIMAL
from assistant.understand.named.chores_said import clean_in
from assistant.understand.parsing import Parsed
from assistant.understand.steps.apart import steps_apart
from assistant.understand.steps.claimed_steps import Claims
from assistant.understand.steps.part_told import seen_in_there
from assistant.understand.steps.told import Told, told_in
from assistant.understand.steps.with_what import of_an_old_mix
from assistant.understand.text.patterns import Pattern

_EVERY = Pattern(
    r"\bthey(?: are| have)? all\b"
    r"|\b(?:both|all|every|each)(?: of)?(?: the| my| these| those)? "
    r"(?:them|tubs?|tanks?|boxes|box|cages?|vivs?|vivariums?|enclosures?|homes?|of them|racks?|two|three|NUMBER"
    r"|animals?)\b|\b(?:everyone|everybody)\b|\beither(?: one| of them)?$"
    r"|\bboth\b(?! windows| doors| bottles| the windows)|\ball of (?:them|em)\b|\bthem all\b"
    r"|\ball (?:are|is|done|sprayed|rinsed|dry|washed)\b(?=.*\b(?:are|tubs|tanks|boxes)\b)"
    r"|\beverything is (?:sprayed|rinsed|washed)\b"
    r"|^(?:(?:ok|right|so|now|they) )*all (?:out|moved|tubbed|boxed|cleared|back|home)\b"
)
_CHILLED = Pattern(
    rf"\b(?:he|she|it|they|ANIMAL|ENCLOSURE|{ONE_ANIMAL}|little one)"
    r"(?: is| are| 's| looks?| feels?| seems?| was| getting| all| so| very| really| a bit| too)* "
    r"(?:cold|chilly|freezing|shivering|chilled)\b"
)
"""The animal, not the heater: "he is cold"."""

_WARMTH = Pattern(r"\b(?:cold|cool|chilly|freezing|warm|hot|temperature|degrees|heat)\b")
"""Of a waiting tub: how warm it may be is asked."""
_COLD = Pattern(
    r"\b(?:heat\w*|heat (?:mat|lamp)|lamps?|mats?|bulbs?)\b.*\b(?:off|cold|cool|unplugged)\b"
    r"|\b(?:off|unplugged) and cold\b"
)
_OVER = Pattern(
    r"\bstart (?:it |this |that |him |her |(?:the |my )?(?:ENCLOSURE|ANIMAL) )?(?:over|again|afresh|anew)\b"
    r"|\bfrom (?:scratch|the beginning|the start|the top)\b|\bbegin again\b|\brestart\b"
)
_ON = Pattern(r"\b(?:go on|carry on|continue|keep going|resume|pick up|go on with it)\b")
_THIS_ONE = Pattern(r"\b(?:pause|stop|leave|park|drop) (?:this|it|here|that)\b")
_PRESSED = Pattern(r"\b(?:just|please|only) (?:say|tell)\b|\bsay (?:yes|it is)\b|\bsurely\b|\bis not it\b|\bgo on\b")


_BOTH = Pattern(r"\b(?:both|the two|two of them|the pair)\b", "both", "two", "pair")


def is_of_every_one(plain: str) -> bool:
    """ "Both", "all of them": every enclosure that it may be about."""
    return _EVERY.search(plain) is not None


def with_the_round(slots: Slots, parsed: Parsed, asked: Asked) -> Slots:
    """The slots with what belongs to a clean, for the question that is asked or told."""
    plain, claims, intent = parsed.plain, asked.claims, asked.intent
    told = told_in(plain)
    smells = intent in ("still_smells", "return_check", "done")
    apart = steps_apart(parsed, asked.world) if intent == "done" and parsed.mentions else ()
    if apart:
        slots = replace(slots, enclosures=tuple(name for name, _ in apart), choices=(), apart=apart)
    if intent == "leave_off" and slots.enclosures and _THIS_ONE.search(plain):
        in_work = asked.world.state.rounds
        open_ones = tuple(name for name in slots.enclosures if is_open(in_work.get(name)))
        slots = replace(slots, enclosures=open_ones)  # "pause this, doing the river tank instead"
    over = True if _OVER.search(plain) else False if _ON.search(plain) else None
    return replace(
        slots,
        both=_BOTH.search(plain) is not None,
        steps=_steps(claims, told, intent),
        stayed_wet=_stayed_wet(claims, told, intent),
        too_early=(told.too_early and intent == "dried_early") or (intent == "outbreak" and seen_in_there(plain)),
        part=told.part if intent == "dried_early" else None,
        old_mix=intent == "done" and of_an_old_mix(plain),
        smell=told.smell if smells else None,
        wet=_wet(claims, told) if smells and intent != "done" else None,
        openings=_openings(parsed, asked) if intent == "done" else None,
        shut_before=intent == "done" and shut_before(parsed.plain),
        pressed=intent == "return_check" and bool(_PRESSED.search(plain)),
        cold=(intent == "return_check" and bool(_CHILLED.search(plain)))
        or (intent == "tub" and bool(_WARMTH.search(plain))),
        heat_cold=bool(_COLD.search(plain)),
        start_over=over if intent == "start" else None,
        clean_as=clean_in(plain) if intent in ("start", "hold_time") else None,
    )


def _steps(claims: Claims, told: Told, intent: str | None) -> tuple[str, ...]:
    if intent == "rewet":
        return ("apply",) if told.wet_kept == "sprayed" else ()
    if intent in ("dried_early", "still_smells", "clean_only", "leave_off"):
        return ()
    if intent == "start":
        return claims.done if claims.polarity == "claimed" else ()  # "start it with bleach, she is out already"
    return claims.done if intent == "done" else claims.mentioned or claims.done


def _stayed_wet(claims: Claims, told: Told, intent: str | None) -> bool | None:
    if intent in ("dried_early", "clean_only"):
        return False if told.dried else None
    return claims.stayed_wet if intent == "done" else None


def _openings(parsed: Parsed, asked: Asked) -> int | None:
    """How many windows or doors are open; of what is told without a step, as `windows_told` has it."""
    told = windows_told(parsed, asked.world)
    return told if told is not None else openings_in(parsed.plain)


def _wet(claims: Claims, told: Told) -> bool | None:
    """Wet or not after the rinse; "dry, bit of bleach" tells both."""
    return False if "dry" in claims.done and told.wet is None else told.wet
