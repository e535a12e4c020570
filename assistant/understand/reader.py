"""Text to reading: which question was asked, with which slots, and how sure that is.

The order is one of safety. Harm first, an animal that got out, agents that meet, a spill; then answers to what the tool
asked (`in_talk`); then a question of its own (`own_question`), where anything that isn't plainly a claim is kept from
counting; or none.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from functools import lru_cache

from assistant.contract import Doubt, Heard, Question, Reading, Slots, World
from assistant.core.facts import Facts
from assistant.core.harms import HARMS, latest
from assistant.core.household import Household
from assistant.core.quantities.quantity import Gallon
from assistant.core.round.rounds import is_open
from assistant.understand.air.windows_told import windows_told
from assistant.understand.bottles import fills
from assistant.understand.bottles.bottle_doubts import bottle_doubted
from assistant.understand.bottles.fills_apart import fills_apart
from assistant.understand.bottles.other_product import other_product, unnamed_product
from assistant.understand.certainty import best_of, with_doubts
from assistant.understand.harm import alarms, fire, no_harm, unhurt
from assistant.understand.harm.after_fumes import after_fumes
from assistant.understand.harm.called_for_help import called_for_help, called_slots
from assistant.understand.harm.cries import Cry, cry_after, cry_in, cry_like
from assistant.understand.harm.followed import followed, goes_on_from_it
from assistant.understand.harm.got_wet import animal_across, keeper_wet, next_door, put_on_a_surface
from assistant.understand.harm.idioms import IDIOMS, only_idioms
from assistant.understand.harm.learned_cries import LearnedCries
from assistant.understand.harm.no_escape import no_escape
from assistant.understand.harm.on_somebody import put_back_wet
from assistant.understand.harm.parts import hits_nobody, may_be_harm
from assistant.understand.harm.whom import hit_by_name, named_after, of_whom
from assistant.understand.look import BY_LIKENESS, BY_RULE, ENOUGH, Look, without_troubles
from assistant.understand.matching.clauses import with_clauses
from assistant.understand.matching.matching import Matcher
from assistant.understand.matching.weights import opened
from assistant.understand.met.meeting import (
    is_put_on,
    meets,
    met_in_that_bottle,
    never_together,
    speaks_of_products,
    unknown_bottle_again,
)
from assistant.understand.met.met_told import bottles_mixed, met_told
from assistant.understand.met.poured_across import poured_across
from assistant.understand.named.by_name import with_animals_by_name
from assistant.understand.named.drains import stored
from assistant.understand.named.items_said import asked_of_items
from assistant.understand.named.names import Names
from assistant.understand.named.referents import with_referent
from assistant.understand.named.unknown_germs import names_an_unknown_germ
from assistant.understand.named.unknown_names import asks_of_the_unknown
from assistant.understand.named.waiting import into_a_tub, neutralises, only_a_germ
from assistant.understand.numbers.number_doubts import mean_posterior, with_guess_doubted
from assistant.understand.parsing import Parser
from assistant.understand.question.own_question import OwnQuestion, says_it_dried
from assistant.understand.rule_words import OF_THE_RULES
from assistant.understand.steps.after_spraying import came_to_nothing, done_over
from assistant.understand.steps.back_where import back_where
from assistant.understand.steps.before_spraying import without_the_rinse_before
from assistant.understand.steps.came_to_nothing import wet_time_was_none
from assistant.understand.steps.claimed_steps import claims_in
from assistant.understand.steps.denied import but_for_a_part, contradicts_the_record, meant_ahead
from assistant.understand.steps.done_over import got_in
from assistant.understand.steps.elsewhere import the_other_one
from assistant.understand.steps.label_minutes import label_told
from assistant.understand.steps.over_dirt import over_dirt
from assistant.understand.steps.put_on_it import of_what_is_on_it, put_on_it
from assistant.understand.steps.remarks import is_remark
from assistant.understand.steps.resumed import resumed
from assistant.understand.steps.stayed_wet import cannot_tell
from assistant.understand.steps.still_inside import still_inside
from assistant.understand.steps.surface import asks_whether_wet, sprayed_where_it_dried, where_it_was_asked
from assistant.understand.steps.told import told_in
from assistant.understand.steps.told_by_rule import MOVED_OUT, told_by_rule
from assistant.understand.steps.touched import touched_in
from assistant.understand.steps.wet_apart import wet_apart
from assistant.understand.talk.goes_on import of_the_room
from assistant.understand.talk.in_talk import InTalk
from assistant.understand.text.patterns import Pattern

HEARD_WELL = 0.7
"""Mean posterior of a hearing from which on a cry is heard by likeness too: below, words are mostly wrong ones."""


def parser_of(household: Household, facts: Facts, vocabulary: frozenset[str]) -> Parser:
    """What takes a text apart. vocabulary: what slips are mended to."""
    return Parser(Names(household, facts, vocabulary), "US", vocabulary)


class Reader:
    """Reads the turns of one household. Built once; knows nothing of the turn before but what the world holds."""

    def __init__(
        self, household: Household, facts: Facts, questions: Mapping[str, Question], weights: bytes, cries: bytes
    ) -> None:
        """weights, cries: what was learned of the questions, and of harm."""
        learned = opened(weights)
        self._weigh_harm = LearnedCries(cries)
        self._matcher = Matcher(learned.texts, learned.model)
        vocabulary = self._matcher.vocabulary | OF_THE_RULES
        self._parser = parser = parser_of(household, facts, vocabulary)
        self._parse = lru_cache(maxsize=64)(lambda text, gallon="US": parser.with_gallon(gallon)(text))
        self._facts = facts
        self._in_talk = InTalk(learned.texts, vocabulary)
        self._own_question = OwnQuestion(questions, learned.texts, self._matcher.vocabulary)

    def __call__(self, heard: Heard, world: World) -> Reading:
        """The reading of one turn; for a heard one, of its likeliest alternative, with its doubts."""
        if not heard.spoken:
            return self._read(heard.text, world, spoken=False)
        well = mean_posterior(heard) >= HEARD_WELL
        text, reading = best_of(heard, lambda said: self._read(said, world, spoken=True, by_likeness=well))
        if not well:  # what was hardly heard is no remark to be kept
            reading = replace(reading, slots=replace(reading.slots, remark=False))
        return with_doubts(reading, text, heard, lambda said: self._parse(said, _gallon(world)))

    def _read(self, text: str, world: World, spoken: bool, by_likeness: bool = True) -> Reading:
        """by_likeness: whether a cry may be found by its words all together; in what was hardly heard it is none."""
        parsed = self._parse(text, _gallon(world))
        claims = claims_in(parsed.plain)
        told = told_in(parsed.plain)
        chances = with_clauses(parsed.marked, self._matcher.chances(parsed.words), self._matcher.chances)
        look = Look(parsed, claims, chances, told, self._weigh_harm(parsed.plain), world, spoken)
        before = " ".join(text.lower().split()).rsplit(" since ", 1)[0]
        if unhurt.aired_since(parsed.plain) and len(before) < len(text.strip()):
            return self._read(before, world, spoken, by_likeness=False)
        if unhurt.denies_harm(parsed.plain) or no_harm.ordinary(parsed.plain, world):
            return self._unhurt(look)
        asked_of_it = asks_whether_wet(world)  # then "it was too short" is an answer first
        reading = (
            no_escape(look)
            or still_inside(look)
            or self._met_there(look)
            or self._harm(look)
            or self._next_door(look)
            or of_the_room(look)
            or self._escape(look, by_likeness)
            or self._other_product(look)
            or self._meeting(look)
            or back_where(look)
            or self._got_in(look)
            or self._spill(look, by_likeness)
            or (self._like_harm(look) if by_likeness else None)
            or self._filled(look)
            or self._windows(look)
            or label_told(look)
            or wet_apart(look)
            or resumed(look)
            or (None if asked_of_it else came_to_nothing(look))
            or self._in_talk(look)
            or done_over(look)
            or (came_to_nothing(look) if asked_of_it else None)
            or self._question(look)
        )
        return of_what_is_on_it(fills.but_for_water(reading), world)

    # ------------------------------------------------------------ before anything else

    def _unhurt(self, look: Look) -> Reading:
        """What denies a harm may be anything else, and is never one by its words all together."""
        safe = no_escape(look)
        if safe is not None:
            return safe
        reading = self._in_talk(look) or self._question(look)
        none = reading.intent in HARMS or (reading.intent == "done" and no_harm.on_nothing_here(look.parsed.plain))
        return reading if not none else replace(reading, intent=None, slots=Slots(), confidence=0.0)

    def _next_door(self, look: Look) -> Reading | None:
        """A product that got to an enclosure where the animal is inside."""
        slots = next_door(look)
        return look.reading("spill", without_troubles(slots), BY_RULE) if slots is not None else None

    def _harm(self, look: Look) -> Reading | None:
        plain = look.parsed.plain
        if fire.burns(plain) or (_told_of_a_fire(look.world) and fire.puts_it_out(plain)):
            slots = replace(without_troubles(look.slots("splash")), asked_of_harm="fire")
            return look.reading("splash", slots, BY_RULE)
        if called_for_help(look.parsed) and followed(plain, look.world) is None:
            return look.reading("splash", called_slots(look), BY_RULE)
        if put_back_wet(plain) and any("move out" in r.done and is_open(r) for r in look.world.state.rounds.values()):
            return look.reading("done", replace(look.slots("done"), steps=("return",)), BY_RULE)  # and out again
        told = latest(look.world.talk.harms, look.world.now)
        just = look.world.talk.last is not None and look.world.talk.last.intent == "splash"
        cry = cry_in(with_animals_by_name(look.parsed)) or cry_in(plain)
        if cry is not None and (look.is_no_cry or look.evidence.is_another_alarm):
            cry = None
        if cry is not None and cry.intent == "wound" and put_on_a_surface(look):
            cry = None
        cry = cry or hit_by_name(look.parsed)
        if cry is not None and cry.intent == "wound" and look.evidence.is_rather("splash", "wound"):
            cry = cry_like("splash", plain)  # "there's bleach on her belly": no wish to put it there
        if cry is not None and cry.intent == "splash" and look.is_a_wish_to_treat:
            cry = cry_like("wound", plain)  # "her nose is raw, could I dab a bit of the pink on it"
        cry = cry or cry_after(plain, look.world.talk.last) or after_fumes(plain, look.world)
        cry = cry or keeper_wet(look) or animal_across(look)
        cry = named_after(plain, told, just=just) or cry
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
        return self._cried(cry, look, BY_RULE)

    def _got_in(self, look: Look) -> Reading | None:
        """A product that dripped or leaked onto what is being cleaned: it is on it, however it came there."""
        slots = got_in(look)
        return look.reading("done", slots, BY_RULE) if slots is not None else None

    def _like_harm(self, look: Look) -> Reading | None:
        """A cry that no rule knows, by its words all together."""
        if asks_whether_wet(look.world) and cannot_tell(look.parsed.plain):
            return None  # "I don't know, I wasn't watching", asked whether it stayed wet
        if not look.is_cry or only_idioms(look.parsed.plain) or wet_time_was_none(look) is not None:
            return None
        cry = cry_like(look.evidence.harm, look.parsed.plain)
        if cry is None or (cry.intent == "wound" and put_on_a_surface(look)):
            return None
        return self._cried(cry, look, BY_LIKENESS)

    def _cried(self, cry: Cry, look: Look, sure: float) -> Reading | None:
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

    def _escape(self, look: Look, by_likeness: bool) -> Reading | None:
        """An animal that got out; with one loose on record also that it is found."""
        plain, state = look.parsed.plain, look.world.state
        if alarms.still_in_the_room(plain):
            return look.reading("protect", without_troubles(look.slots("protect")), BY_RULE)
        waits = any("move out" in r.done and is_open(r) for r in state.rounds.values())
        found = alarms.found(plain) and bool(state.loose)
        escaped = alarms.escaped(plain, one_waits=waits) and not look.is_no_cry
        like = by_likeness and look.is_cry and look.evidence.harm == "escape" and not into_a_tub(plain)
        like = like and not ("move out" in look.claims.done and _waits_to_be_moved(look))
        like = like and not alarms.plain_talk("escape", plain)
        if alarms.goes_into_a_tub(plain):
            went = alarms.went_into_a_tub(plain) and _waits_to_be_moved(look)
            slots = replace(look.slots("done"), steps=("move out",))
            return look.reading("done", slots, BY_RULE) if went else None
        if not found and not escaped and not like:
            return None
        slots = replace(without_troubles(look.slots("escape")), found=found)
        return look.reading("escape", slots, BY_RULE)

    def _met_there(self, look: Look) -> Reading | None:
        """ "It was in the yellow bottle", told after the gas: that bottle holds what nobody knows."""
        slots = met_in_that_bottle(look.parsed, look.slots("together"), look.world)
        return look.reading("together", slots, BY_RULE) if slots is not None else None

    def _other_product(self, look: Look) -> Reading | None:
        """What was used is said to have been another product than the one on record."""
        return poured_across(look) or bottle_doubted(look) or other_product(look) or unnamed_product(look)

    def _spill(self, look: Look, by_likeness: bool) -> Reading | None:
        last, plain = look.world.talk.last, look.parsed.plain
        on_it = neutralises(plain) and ("neutral" in plain or (last is not None and last.intent == "spill"))
        spilled = alarms.spilled(plain) and not look.is_no_cry and not alarms.sprayed_everywhere(plain)
        like_a_spill = by_likeness and look.is_cry and look.evidence.harm == "spill"
        if not (on_it or spilled or like_a_spill):
            return None
        return look.reading("spill", without_troubles(look.slots("spill")), BY_RULE)

    def _meeting(self, look: Look) -> Reading | None:
        if stored(look.parsed.plain):
            return look.reading("store_it", look.slots("store_it"), BY_RULE)
        if (mixed := bottles_mixed(look) or over_dirt(look)) is not None:
            return look.reading("together", mixed, BY_RULE)
        apart = self._filled_apart(look)
        if apart is not None:
            return apart
        if (both := met_told(look)) is not None:
            return look.reading("together", both, BY_RULE)
        if fills.tells(look.parsed.plain):
            return look.reading("mixed", look.slots("mixed"), BY_RULE)
        into = fills.poured_into_it(look.parsed.plain, look.world) or fills.filled_it(look.parsed.plain, look.world)
        out = fills.rinsed_out_too(look.parsed.plain, look.world)
        if out is not None and not look.parsed.mentions:
            reading = look.reading("rinsed_out", replace(look.slots("rinsed_out"), bottles=(out,), steps=()), BY_RULE)
            emptied = fills.only_emptied(look.parsed.plain)
            return replace(reading, doubts=(NOT_ONLY_EMPTIED,)) if emptied else reading
        if into is not None:
            slots = look.slots("mixed")
            return look.reading("mixed", replace(slots, bottles=slots.bottles or (into,), steps=()), BY_RULE)
        if (touching := put_on_it(look)) is not None:
            return touching
        if not speaks_of_products(look.parsed) and not look.world.state.unknown_mixes:
            return None
        slots = look.slots("together")
        again = unknown_bottle_again(look.parsed.plain, slots, look.world)
        if again is not None:
            return look.reading("together", replace(slots, bottles=(again,), agents=(), steps=()), BY_RULE)
        met = meets(look.parsed, slots, look.world, look.chances.get("together", 0.0))
        if met and fills.put_into(look.parsed.plain) and not never_together(slots, look.world):
            return look.reading("mixed", replace(look.slots("mixed"), steps=()), BY_RULE)
        if met is None and fills.put_into(look.parsed.plain):
            return look.reading("mixed", replace(look.slots("mixed"), steps=()), BY_RULE)
        if met is None and not look.claims.done and is_put_on(look.parsed, slots, look.world):
            met = False  # which of the two it is that is on the surface, the answer knows
        if met is None:
            return None
        return look.reading("together", replace(slots, met=met, steps=()), BY_RULE)

    def _windows(self, look: Look) -> Reading | None:
        """What is told of the window alone, since when too."""
        if look.claims.done or windows_told(look.parsed, look.world) is None:
            return None
        return look.reading("done", replace(look.slots("done"), steps=()), BY_RULE)

    def _filled_apart(self, look: Look) -> Reading | None:
        """ "Filled yellow with bleach and pink with chlorhexidine": each by itself, and nothing met."""
        texts = fills_apart(look.parsed) if fills.may_be_fill(look.parsed.plain) else ()
        if not texts:
            return None
        whole = look.slots("mixed")
        looks = (replace(look, parsed=self._parse(text, _gallon(look.world)), _slots={}) for text in texts)
        each = tuple(replace(one.slots("mixed"), steps=()) for one in looks)
        each = tuple(
            replace(one, when=one.when or whole.when, some_time_ago=one.some_time_ago or whole.some_time_ago)
            for one in each  # told of one, it may be of all: the older
        )
        if any(len(one.bottles) != 1 or one.choices or one.unknown or one.faulty for one in each):
            return None
        return look.reading("mixed", Slots(bottles=whole.bottles, each=each), BY_RULE)

    def _filled(self, look: Look) -> Reading | None:
        """ "Filled", right after a dose was told: that is what went in."""
        undone = fills.undone(look.parsed.plain, look.world)
        if undone is not None:
            return look.reading("undo", Slots(bottles=(undone,)), BY_RULE)
        if not fills.bare_fill(look.parsed.plain):
            return None
        told = fills.of_the_dose(look.slots("mixed"), look.world)
        if told is None:
            return None
        slots, doubts = told
        return replace(look.reading("mixed", slots, BY_RULE), doubts=doubts)

    # ------------------------------------------------------------ a question of its own

    def _asked_of_harm(self, plain: str) -> bool:
        """What is no question may be a cry: then "not sure" is no answer, and it is asked where it got to."""
        return not only_a_germ(plain) and may_be_harm(IDIOMS.sub(" ", plain))

    def _question(self, look: Look) -> Reading:
        told = told_by_rule(look.parsed.plain, look.world.household)
        if told == MOVED_OUT:
            return look.reading("done", replace(look.slots("done"), steps=look.claims.done or ("move out",)), BY_RULE)
        if told is not None:
            return look.reading(told, look.slots(told), BY_RULE)
        intent, confidence = self._own_question(look)
        plain = look.parsed.plain
        if intent == "done" and _names_a_material_alone(look):
            intent = "surface"
        no_harm = (intent == "splash" and hits_nobody(plain)) or (intent in ("splash", "wound") and look.is_no_cry)
        if intent is not None and (alarms.plain_talk(intent, plain) or no_harm):
            intent = None
        if intent is None and (thing := asked_of_items(look.parsed.plain, self._facts)) is not None:
            intent, confidence = thing, max(confidence, ENOUGH)
        if intent is None and names_an_unknown_germ(plain):
            intent, confidence = "choose_agent", ENOUGH
        if intent in (None, "choose_agent") and asks_of_the_unknown(plain):
            intent, confidence = "surface", ENOUGH
        unsure = (intent is None or confidence < ENOUGH) and not look.is_no_cry
        if unsure and self._asked_of_harm(plain):  # barely a question hides no cry
            return look.reading("splash", replace(without_troubles(look.slots("splash")), place=None), ENOUGH)
        wrong = contradicts_the_record(look, look.slots("status")) if intent in _MAY_DENY else None
        wrong = wrong or meant_ahead(look) or but_for_a_part(look)
        if wrong is not None:
            return look.reading("undo", wrong, BY_RULE)
        if intent is None:
            touched = touched_in(look.parsed, look.world.household)
            slots = Slots(stayed_wet=False if says_it_dried(look) else None, touched=touched)
            slots = replace(slots, remark=is_remark(look), enclosures=look.slots("status").enclosures)
            return Reading(look.parsed.text, None, slots, confidence, look.nearest, (), look.spoken)
        slots = look.slots(intent)
        if intent in HARMS:
            slots = without_troubles(slots)
        slots = without_the_rinse_before(where_it_was_asked(intent, slots, look.world), look)
        slots = the_other_one(with_referent(slots, intent, look.parsed.plain, look.world), intent, look)
        if intent == "start" and _WITH_IT.search(plain) and not (slots.bottles or slots.stocks or slots.agents):
            bottle = fills.bottle_of_before(look.world)
            slots = replace(slots, bottles=(bottle,) if bottle is not None else ())
        if intent == "done" and sprayed_where_it_dried(look):
            slots = replace(slots, too_early=True, steps=("apply",))
        if intent == "done" and not slots.steps and cannot_tell(plain):
            slots = replace(slots, steps=("hold",), stayed_wet=False)  # what nobody saw wet doesn't count
        if intent == "dried_early" and look.claims.polarity == "not yet" and "dry" in look.claims.mentioned:
            slots = replace(slots, part=slots.part or "dry part")  # "dried one side": of that, and not the step
        reading = look.reading(intent, slots, confidence)
        if intent == "rinsed_out" and fills.only_emptied(plain):
            reading = replace(reading, slots=replace(slots, steps=()), doubts=(NOT_ONLY_EMPTIED,))
        if intent == "done" and look.claims.polarity == "doubtful":
            step = slots.steps[0] if slots.steps else "done"
            reading = replace(reading, doubts=(Doubt("part" if look.claims.in_part else "polarity", step),))
        return reading if not look.parsed.guessed else with_guess_doubted(reading, look.parsed)


_MAY_DENY = (None, "status", "undo", "treat_item")
"""Questions that a text may be most like which says that a step on record never was."""
NOT_ONLY_EMPTIED = Doubt("polarity", "rinsed out and pumped through")
_WITH_IT = Pattern(r"\b(?:with|using) (?:it|that|that one|this|this one)\b")


def _told_of_a_fire(world: World) -> bool:
    """The turn before was about a fire."""
    return world.talk.last_reading is not None and world.talk.last_reading.slots.asked_of_harm == "fire"


def _waits_to_be_moved(look: Look) -> bool:
    """A clean is open whose animal is still to be moved out: "he's out" is that step."""
    return any(is_open(r) and "move out" not in r.done for r in look.world.state.rounds.values())


def _names_a_material_alone(look: Look) -> bool:
    """ "Peroxide on glass" with no clean open: nothing that was done, but whether it may be."""
    under_way = any(is_open(round_) for round_ in look.world.state.rounds.values())
    return (
        not under_way and _ON_A_MATERIAL.match(look.parsed.plain) is not None and bool(look.slots("surface").materials)
    )


_ON_A_MATERIAL = Pattern(r"^(?:AGENT|BOTTLE|STOCK) on (?:the |a |some )?(?:\w+ )?\w+(?: ?\?)?$")


def _gallon(world: World) -> Gallon:
    """The gallon meant when it isn't said: the keeper's, else the shipped default."""
    return world.household.habits.gallon or "US"
