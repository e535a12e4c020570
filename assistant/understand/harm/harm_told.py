"""Harm as it is told, in whatever words: a cry, fire, an escape, a spill; each with what the talk before says of it."""

from __future__ import annotations

from dataclasses import replace

from assistant.contract import Reading, World
from assistant.core.harms import HarmTold, latest
from assistant.core.round.rounds import is_open
from assistant.understand.harm import alarms, fire, unhurt
from assistant.understand.harm.after_fumes import after_fumes
from assistant.understand.harm.called_for_help import called_for_help, called_slots
from assistant.understand.harm.cries import Cry, cry_after, cry_in, cry_like
from assistant.understand.harm.followed import followed, goes_on_from_it
from assistant.understand.harm.got_wet import keeper_wet, next_door, one_across, put_on_a_surface
from assistant.understand.harm.idioms import only_idioms
from assistant.understand.harm.no_harm import only_a_germ
from assistant.understand.harm.on_somebody import put_back_wet
from assistant.understand.harm.whom import hit_by_name, named_after, of_whom
from assistant.understand.look import BY_LIKENESS, BY_RULE, Look, without_troubles
from assistant.understand.named.by_name import names_a_home_itself, with_animals_by_name
from assistant.understand.named.tubs_said import into_a_tub
from assistant.understand.steps.came_to_nothing import wet_time_was_none
from assistant.understand.steps.done_over import got_in
from assistant.understand.steps.stayed_wet import cannot_tell
from assistant.understand.steps.surface import asks_whether_wet
from assistant.understand.text.patterns import Pattern


def got_next_door(look: Look) -> Reading | None:
    """A product that got to an enclosure where the animal is inside."""
    slots = next_door(look)
    return look.reading("spill", without_troubles(slots), BY_RULE) if slots is not None else None


def harm_told(look: Look) -> Reading | None:
    plain = look.parsed.plain
    if fire.burns(plain) or (_told_of_a_fire(look.world) and fire.puts_it_out(plain)):
        slots = replace(without_troubles(look.slots("splash")), asked_of_harm="fire")
        return look.reading("splash", slots, BY_RULE)
    if called_for_help(look.parsed) and followed(plain, look.world) is None:
        return look.reading("splash", called_slots(look), BY_RULE)
    if put_back_wet(plain) and any("move out" in r.done and is_open(r) for r in look.world.state.rounds.values()):
        return look.reading("done", replace(look.slots("done"), steps=("return",)), BY_RULE)  # and out again
    told = latest(look.world.talk.harms, look.world.now)
    just = look.world.talk.last is not None and look.world.talk.last.intent in ("splash", "spill")
    cry = cry_in(with_animals_by_name(look.parsed)) or cry_in(plain)
    if cry is not None and not cry.certain and (look.is_no_cry or look.evidence.is_another_alarm):
        cry = None
    supposed = _SUPPOSES.match(plain) is not None
    if cry is not None and _of_a_thing(look) and (cry.intent == "wound" or supposed):
        cry = None
    if cry is not None and cry.intent == "wound" and put_on_a_surface(look):
        cry = None
    cry = cry or hit_by_name(look.parsed)
    if cry is not None and cry.intent == "wound" and not cry.certain and look.evidence.is_rather("splash", "wound"):
        cry = cry_like("splash", plain)  # "there's bleach on her belly": no wish to put it there
    if cry is not None and cry.intent == "splash" and look.is_a_wish_to_treat:
        cry = cry_like("wound", plain)  # "her nose is raw, could I dab a bit of the pink on it"
    cry = cry or cry_after(plain, look.world.talk.last) or after_fumes(plain, look.world)
    cry = cry or keeper_wet(look) or one_across(look)
    named = named_after(plain, _spilled_on(look.world) or told, just=just)
    if named is not None and _spilled_on(look.world) is not None and names_a_home_itself(look.parsed):
        named = None  # "on the desert box": the spill
    cry = named or cry
    after = followed(look.parsed.plain, look.world)
    goes_on = after is not None and goes_on_from_it(after, cry.place if cry is not None else None, plain)
    if after is not None and not goes_on and cry is not None and cry.place is not None:
        after = None
    if after is not None and (cry is None or cry.intent == "splash" or goes_on):
        slots = without_troubles(look.slots("splash"))
        slots = replace(slots, place=after.place, victim=after.victim, asked_of_harm=after.asked)
        return look.reading("splash", slots, BY_RULE)
    if cry is None or (cry.intent == "splash" and got_in(look) is not None):
        return None
    return _cried(cry, look, BY_RULE)


def _of_a_thing(look: Look) -> bool:
    """ "What if I dip them in bleach first", right after it was asked of the tongs: them, and no animal."""
    before = look.world.talk.just_answered
    of_things = before is not None and before.intent in ("share_tool", "treat_item")
    return of_things and _THING.search(look.parsed.plain) is not None and _BEING.search(look.parsed.plain) is None


_SUPPOSES = Pattern(r"(?:(?:and|but|so|ok) ,? ?)*(?:what )?if\b")
_THING = Pattern(r"\b(?:it|them|that|those|these)\b")
_BEING = Pattern(r"\b(?:ANIMAL|ENCLOSURE|him|her|his|me|my|cut|wound|burn|sore|bite|skin|eyes?|mouth|nose)\b")


def dripped_in(look: Look) -> Reading | None:
    """A product that dripped or leaked onto what is being cleaned: it is on it, however it came there."""
    return look.by_rule("done", got_in(look))


def like_harm(look: Look) -> Reading | None:
    """A cry that no rule knows, by its words all together."""
    if asks_whether_wet(look.world) and cannot_tell(look.parsed.plain):
        return None  # "I don't know, I wasn't watching", asked whether it stayed wet
    if not look.is_cry or only_idioms(look.parsed.plain) or wet_time_was_none(look) is not None:
        return None
    cry = cry_like(look.evidence.harm, look.parsed.plain)
    if cry is None or (cry.intent == "wound" and put_on_a_surface(look)):
        return None
    return _cried(cry, look, BY_LIKENESS)


def _cried(cry: Cry, look: Look, sure: float) -> Reading | None:
    if cry.intent == "splash" and only_a_germ(look.parsed.plain):
        return None
    cry = of_whom(cry, with_animals_by_name(look.parsed), latest(look.world.talk.harms, look.world.now))
    slots = look.slots(cry.intent)
    if cry.intent == "splash" and cry.place is not None and unhurt.is_supposed(look.parsed.plain):
        slots = replace(slots, asked_of_harm="if")
    slots = replace(
        without_troubles(slots), place=cry.place, victim=cry.victim, got_out=cry.got_out, places_too=cry.too
    )
    slots = replace(slots, found=bool(look.world.state.loose) and alarms.found(look.parsed.plain))
    return look.reading(cry.intent, slots, sure)


def escape_told(look: Look, by_likeness: bool) -> Reading | None:
    """An animal that got out; with one loose on record also that it is found."""
    plain, state = look.parsed.plain, look.world.state
    if alarms.still_in_the_room(plain):
        return look.reading("protect", without_troubles(look.slots("protect")), BY_RULE)
    waits = any("move out" in r.done and is_open(r) for r in state.rounds.values())
    found = alarms.found(plain) and bool(state.loose)
    found = found and not (" out" in plain and _waits_to_be_moved(look))  # "got her out" may be another, moved out
    escaped = alarms.escaped(plain, one_waits=waits) and not look.is_no_cry
    like = by_likeness and look.is_cry and look.evidence.harm == "escape" and not into_a_tub(plain)
    like = like and not ("move out" in look.claims.done and _waits_to_be_moved(look))
    like = like and not alarms.plain_talk("escape", plain)
    if alarms.goes_into_a_tub(plain):
        went = alarms.went_into_a_tub(plain) and _waits_to_be_moved(look)
        slots = replace(look.slots("done"), steps=("move out",))
        return look.reading("done", slots, BY_RULE) if went else None
    if alarms.found(plain) and not state.loose and not escaped:
        return look.reading("escape", replace(look.slots("escape"), found=True), BY_RULE) if like else None
    if not found and not escaped and not like:
        return None
    slots = replace(without_troubles(look.slots("escape")), found=found)
    return look.reading("escape", slots, BY_RULE)


def spill_told(look: Look, by_likeness: bool) -> Reading | None:
    last, plain = look.world.talk.last, look.parsed.plain
    on_it = alarms.neutralises(plain) and ("neutral" in plain or (last is not None and last.intent == "spill"))
    spilled = alarms.spilled(plain) and not look.is_no_cry and not alarms.sprayed_everywhere(plain)
    like_a_spill = by_likeness and look.is_cry and look.evidence.harm == "spill"
    if not (on_it or spilled or like_a_spill):
        return None
    return look.reading("spill", without_troubles(look.slots("spill")), BY_RULE)


def _spilled_on(world: World) -> HarmTold | None:
    """What is told right after a spill, of somebody it got to: "on my foot", "the cat's in it"."""
    last = world.talk.last
    return HarmTold("skin", "person", world.now) if last is not None and last.intent == "spill" else None


def _told_of_a_fire(world: World) -> bool:
    """The turn before was about a fire."""
    return world.talk.last_reading is not None and world.talk.last_reading.slots.asked_of_harm == "fire"


def _waits_to_be_moved(look: Look) -> bool:
    """A clean is open whose animal is still to be moved out: "he's out" is that step."""
    return any(is_open(r) and "move out" not in r.done for r in look.world.state.rounds.values())
