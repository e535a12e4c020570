"""Text to reading: which question was asked, with which slots, and how sure that is.

The order is one of safety. Harm first, an animal that got out, agents that meet, a spill; then answers to what the tool
asked (`in_talk`); then a question of its own (`own_question`), where anything that isn't plainly a claim is kept from
counting; or none.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from functools import lru_cache

from assistant.contract import NO_SMELL, Doubt, Heard, Question, Reading, Slots, World
from assistant.core.facts import Facts
from assistant.core.harms import HARMS
from assistant.core.household import Household
from assistant.core.quantities.quantity import Gallon
from assistant.core.round.rounds import is_open, waits_on_hold
from assistant.understand.air.window_alone import window_alone
from assistant.understand.bottles import fills
from assistant.understand.bottles.as_the_dose import as_the_dose
from assistant.understand.bottles.asked_what_is_in import asked_what_is_in
from assistant.understand.bottles.to_be_filled import to_be_filled
from assistant.understand.bottles.wrong_mix import measured_wrong
from assistant.understand.certainty import best_of, with_doubts
from assistant.understand.harm import alarms, no_harm, unhurt
from assistant.understand.harm.after_a_mess import of_the_mess
from assistant.understand.harm.harm_told import dripped_in, escape_told, got_next_door, harm_told, like_harm, spill_told
from assistant.understand.harm.idioms import IDIOMS
from assistant.understand.harm.learned_cries import LearnedCries
from assistant.understand.harm.no_escape import no_escape
from assistant.understand.harm.parts import hits_nobody, may_be_harm
from assistant.understand.harm.sayings import is_a_saying
from assistant.understand.look import BY_RULE, ENOUGH, Look, without_troubles
from assistant.understand.matching.clauses import with_clauses
from assistant.understand.matching.matching import Matcher
from assistant.understand.matching.weights import opened
from assistant.understand.met.met_or_filled import another_product, filled_as_told, met_or_filled, met_there
from assistant.understand.met.not_that_bottle import not_that_bottle
from assistant.understand.named.items_said import asked_of_items
from assistant.understand.named.names import Names
from assistant.understand.named.referents import with_referent
from assistant.understand.named.unknown_germs import names_an_unknown_germ
from assistant.understand.named.unknown_names import asks_of_the_unknown
from assistant.understand.numbers.number_doubts import mean_posterior, with_guess_doubted
from assistant.understand.parsing import Parser
from assistant.understand.question.only_like import IS_IT
from assistant.understand.question.own_question import ABOUT_TALK, OwnQuestion, says_it_dried
from assistant.understand.rule_words import OF_THE_RULES
from assistant.understand.steps.after_spraying import came_to_nothing, done_over
from assistant.understand.steps.back_where import back_where
from assistant.understand.steps.before_spraying import without_the_rinse_before
from assistant.understand.steps.claimed_steps import claims_in
from assistant.understand.steps.denied import (
    but_for_a_part,
    contradicts_the_record,
    denied_beside,
    done_in_another_home,
    lied_about,
    meant_ahead,
)
from assistant.understand.steps.elsewhere import of_another_one, only_one_of_them, the_other_one, the_same_one
from assistant.understand.steps.label_minutes import label_told
from assistant.understand.steps.put_on_it import of_what_is_on_it
from assistant.understand.steps.remarks import a_surface_was_touched, is_remark, remarked_beside
from assistant.understand.steps.resumed import resumed
from assistant.understand.steps.smell_told import of_another_thing
from assistant.understand.steps.stayed_wet import cannot_tell
from assistant.understand.steps.still_inside import still_inside
from assistant.understand.steps.surface import asks_whether_wet, sprayed_where_it_dried, where_it_was_asked
from assistant.understand.steps.told import told_in
from assistant.understand.steps.told_by_rule import MOVED_OUT, told_by_rule
from assistant.understand.steps.touched import touched_in
from assistant.understand.steps.wet_answered import is_a_hedge, is_half_an_answer
from assistant.understand.steps.wet_apart import wet_apart
from assistant.understand.talk.goes_on import of_the_room
from assistant.understand.talk.in_talk import InTalk
from assistant.understand.talk.learned_on import Chances, LearnedOn
from assistant.understand.talk.likely_on import before_it, likely_on, rather_the_same, strays, told_on
from assistant.understand.talk.loosely_on import goes_on_loosely, likely_in_its_field, pleads, told_too
from assistant.understand.talk.plainly_on import plainly_on
from assistant.understand.talk.taken_back import smells_after_all, taken_back
from assistant.understand.talk.wished_on import wished_on
from assistant.understand.text.asking import asks
from assistant.understand.text.english_words import Usage
from assistant.understand.text.patterns import Pattern

HEARD_WELL = 0.7
"""Mean posterior of a hearing from which on a cry is heard by likeness too: below, words are mostly wrong ones."""


def parser_of(household: Household, facts: Facts, vocabulary: frozenset[str], usage: Usage) -> Parser:
    """What takes a text apart. vocabulary: what slips are mended to."""
    return Parser(Names(household, facts, usage, vocabulary), "US", vocabulary, usage)


class Reader:
    """Reads the turns of one household. Built once; knows nothing of the turn before but what the world holds."""

    def __init__(
        self,
        household: Household,
        facts: Facts,
        questions: Mapping[str, Question],
        weights: bytes,
        cries: bytes,
        follow_ups: bytes,
        usage: Usage,
    ) -> None:
        """weights, cries, follow_ups: what was learned of the questions, of harm, and of turns that go on.

        usage: how common a word of English is.
        """
        learned = opened(weights)
        self._weigh_harm = LearnedCries(cries)
        self._weigh_on = LearnedOn(follow_ups)
        self._matcher = Matcher(learned.texts, learned.model)
        vocabulary = self._matcher.vocabulary | OF_THE_RULES
        self._parser = parser = parser_of(household, facts, vocabulary, usage)
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
        chances, speak = with_clauses(parsed.marked, parsed.words, self._matcher.chances, ABOUT_TALK)
        look = Look(parsed, claims, chances, speak, told, self._weigh_harm(parsed.plain), world, spoken)
        before = " ".join(text.lower().split()).rsplit(" since ", 1)[0]
        if unhurt.aired_since(parsed.plain) and len(before) < len(text.strip()):
            return self._read(before, world, spoken, by_likeness=False)
        if is_a_saying(parsed.plain):
            return Reading(parsed.text, None, Slots(), 0.0, look.nearest, (), spoken)
        if unhurt.denies_harm(parsed.plain) or no_harm.ordinary(parsed.plain, world):
            return self._unhurt(look)
        asked_of_it = asks_whether_wet(world)  # then "it was too short" is an answer first
        reading = (
            no_escape(look)
            or still_inside(look)
            or asked_what_is_in(look)
            or met_there(look)
            or harm_told(look)
            or got_next_door(look)
            or of_the_room(look)
            or escape_told(look, by_likeness)
            or look.by_rule("undo", done_in_another_home(look))
            or not_that_bottle(look)
            or (came_to_nothing(look) if measured_wrong(look) else None)
            or another_product(look)
            or met_or_filled(look, lambda said: self._parse(said, _gallon(world)))
            or of_the_mess(look)
            or back_where(look)
            or dripped_in(look)
            or spill_told(look, by_likeness)
            or (like_harm(look) if by_likeness else None)
            or filled_as_told(look)
            or window_alone(look)
            or label_told(look)
            or wet_apart(look)
            or resumed(look)
            or (None if asked_of_it else came_to_nothing(look))
            or (look.reading("undo", Slots(), BY_RULE) if taken_back(look) else None)
            or look.by_rule("still_smells", smells_after_all(look))
            or plainly_on(look)
            or wished_on(look)
            or self._in_talk(look)
            or done_over(look)
            or (came_to_nothing(look) if asked_of_it else None)
            or self._question(look)
        )
        lost = reading.intent == "done" and bool(reading.slots.dried_apart)  # that opens the wet time by itself
        if not lost and remarked_beside(reading, look, world.questions):
            reading = replace(reading, slots=replace(reading.slots, remark=True))
        reading = as_the_dose(fills.but_for_water(reading), parsed.plain, world)
        reading = with_guess_doubted(reading, parsed) if parsed.guessed else reading
        return of_what_is_on_it(reading, world)

    def _unhurt(self, look: Look) -> Reading:
        """What denies a harm may be anything else, and is never one by its words all together."""
        safe = no_escape(look)
        if safe is not None:
            return safe
        reading = self._in_talk(look) or self._question(look)
        none = reading.intent in HARMS or (reading.intent == "done" and no_harm.on_nothing_here(look.parsed.plain))
        return reading if not none else replace(reading, intent=None, slots=Slots(), confidence=0.0)

    def _follows(self, look: Look) -> Chances:
        """Which question it is if it goes on from the one before; nothing where none was answered."""
        before = before_it(look)
        return self._weigh_on(before, look.parsed.words, look.chances, "?" in look.parsed.marked[-1:]) if before else {}

    @staticmethod
    def _goes_on(look: Look, intent: str | None, follows: Chances, *, unknown: bool, matters: bool) -> Reading | None:
        """What it is as a turn that goes on from the answer before; None: it stands by itself, or is nothing.

        intent: the question that it is by itself; unknown: none was near; matters: it tells what is to be kept.
        """
        if not matters and strays(look, intent, follows):
            return Reading(look.parsed.text, None, Slots(), 0.0, look.nearest, (), look.spoken)
        on = goes_on_loosely(look) if intent is None or pleads(look) else None
        on = on or (told_too(look) if intent in (None, "still_good", "in_bottle", "dose", "mixed") else None)
        if on is not None or not follows:
            return on
        if intent is not None:
            return rather_the_same(look, intent, follows)
        return likely_on(look, follows) if unknown and not matters else None

    def _asked_of_harm(self, plain: str) -> bool:
        """What is no question may be a cry: then "not sure" is no answer, and it is asked where it got to."""
        return not no_harm.only_a_germ(plain) and may_be_harm(IDIOMS.sub(" ", plain))

    def _question(self, look: Look) -> Reading:
        told = told_by_rule(look.parsed.plain, look.world.household)
        if told == MOVED_OUT:
            out = look.reading("done", replace(look.slots("done"), steps=look.claims.done or ("move out",)), BY_RULE)
            only = _ONLY.match(look.parsed.plain) is not None  # of two, one may be in its home still
            return replace(out, doubts=(Doubt("polarity", "move out"),)) if only else out
        if told is not None:
            return look.reading(told, look.slots(told), BY_RULE)
        filled = to_be_filled(look)
        if filled is not None:
            return filled
        intent, confidence, plainly = self._own_question(look)
        unknown = intent is None
        plain = look.parsed.plain
        if intent == "dried_early" and _is_a_doubtful_drying(look):
            intent = "done"
        if intent == "done" and _names_a_material_alone(look):
            intent = "surface"
        half_said = asks_whether_wet(look.world) and is_half_an_answer(plain)
        if half_said and is_a_hedge(plain):
            intent = None  # "nearly", asked whether it stayed wet, asks for no time
        idle = IDIOMS.search(plain) is not None and not self._asked_of_harm(plain)
        no_harm = (intent == "splash" and (hits_nobody(plain) or idle)) or (
            intent in ("splash", "wound") and look.is_no_cry
        )
        if intent == "return_check" and _WRONG_ONE.match(plain):
            intent = None
        if intent == "repeat" and _MISSED_A_BIT.search(plain) and a_surface_was_touched(look):
            intent = None  # of the glass, and not of what was said
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
        wrong = wrong or (denied_beside(look, look.slots("status")) if intent == "return_check" else None)
        wrong = wrong or meant_ahead(look) or but_for_a_part(look) or lied_about(look)
        if wrong is not None:
            return look.reading("undo", wrong, BY_RULE)
        follows, remark = self._follows(look), is_remark(look)
        touched = touched_in(look.parsed, look.world.household)
        matters = half_said or remark or bool(touched)
        on = self._goes_on(look, intent, follows, unknown=unknown, matters=matters)
        if on is not None:
            return on
        kept = half_said or remark
        if intent is None and unknown and not kept and (told_of := told_on(look, follows)) is not None:
            intent, confidence, plainly = told_of, ENOUGH, False
        if intent is None and unknown and not half_said and (near := likely_in_its_field(look)) is not None:
            intent, confidence = near, look.chances[near]
        if intent is None:
            slots = Slots(stayed_wet=False if half_said or says_it_dried(look) else None, touched=touched)
            slots = replace(slots, remark=remark, enclosures=look.slots("status").enclosures)
            return Reading(look.parsed.text, None, slots, confidence, look.nearest, (), look.spoken)
        slots = look.slots(intent)
        though = _THOUGH.search(plain) if intent == "return_check" else None
        if though is not None:
            supposed = told_in(plain[though.end() :].strip(" ?"))  # "even if it's a bit wet"
            slots = replace(slots, smell=supposed.smell or slots.smell, wet=supposed.wet or slots.wet)
        if intent in HARMS:
            slots = without_troubles(slots)
        slots = without_the_rinse_before(where_it_was_asked(intent, slots, look.world), look)
        slots = the_other_one(with_referent(slots, intent, look.parsed.plain, look.world), intent, look)
        slots = the_same_one(only_one_of_them(slots, look), intent, look)
        if intent == "start" and _WITH_IT.search(plain) and not (slots.bottles or slots.stocks or slots.agents):
            bottle = fills.bottle_of_before(look.world)
            slots = replace(slots, bottles=(bottle,) if bottle is not None else ())
        if intent == "done" and sprayed_where_it_dried(look):
            slots = replace(slots, too_early=True, steps=("apply",))
        if intent == "done" and not slots.steps and cannot_tell(plain):
            slots = replace(slots, steps=("hold",), stayed_wet=False)  # what nobody saw wet doesn't count
        one_side = look.claims.polarity == "not yet" and "dry" in look.claims.mentioned  # "dried one side"
        if intent == "dried_early" and (one_side or ("dry" not in look.claims.done and _is_served(look))):
            slots = replace(slots, part=slots.part or "dry part")  # "it was dry last time": of that, and not the step
        reading = look.reading(intent, slots, confidence)
        if intent == "rinsed_out" and fills.only_emptied(plain):
            reading = replace(reading, slots=replace(slots, steps=()), doubts=(fills.NOT_ONLY_EMPTIED,))
        tells_neither = intent == "still_smells" and slots.smell is None and slots.wet is None and not asks(plain)
        if (not plainly or tells_neither) and intent in IS_IT and not (intent == "done" and slots.steps):
            return _only_like(look, intent, slots, confidence)
        if intent == "done" and (look.claims.polarity == "doubtful" or of_another_one(slots, look)):
            step = slots.steps[0] if slots.steps else "done"
            reading = replace(reading, doubts=(Doubt("part" if look.claims.in_part else "polarity", step),))
        return reading


def _only_like(look: Look, intent: str, slots: Slots, confidence: float) -> Reading:
    """What is only like something told is asked about; since that may go unanswered, what matters in it is kept."""
    slots = replace(slots, steps=slots.steps if intent == "rewet" else (), remark=is_remark(look))
    of_the_dose = fills.of_the_dose(slots, look.world) if intent == "mixed" and not slots.bottles else None
    slots = of_the_dose[0] if of_the_dose is not None else slots
    if intent == "still_smells" and slots.smell is None and not slots.wet:
        gone = _GONE.search(look.parsed.plain) is not None
        slots = replace(slots, smell=not gone, wet=None if gone else True)
    told_of_it = intent == "still_smells" and bool(slots.smell or slots.wet)
    slots = replace(slots, remark=slots.remark or (told_of_it and not of_another_thing(look.parsed.plain)))
    meant = NO_SMELL if intent == "still_smells" and not told_of_it else intent
    return replace(look.reading(intent, slots, confidence), doubts=(Doubt("meaning", meant),))


_ONLY = Pattern(r"(?:(?:so|and|but|ok|well) )*(?:only|just)\b")
_GONE = Pattern(r"\b(?:no|not|none|nothing|never|gone|without|free|odou?rless|passe[sd]|longer|cleared|away)\b")
_MAY_DENY = (None, "status", "undo", "treat_item")
"""Questions that a text may be most like which says that a step on record never was."""


def _is_a_doubtful_drying(look: Look) -> bool:
    """ "I dried it last week", of what no wet time runs on: the step, and asked about, whatever it is most like."""
    doubtful = "dry" in look.claims.done and look.claims.polarity == "doubtful" and not look.claims.in_part
    return _is_served(look) and doubtful and not look.told.dried


def _is_served(look: Look) -> bool:
    """Something is rinsed, and no wet time waits: what is dry is so as a step, or it isn't all of it."""
    rounds = [round_ for round_ in look.world.state.rounds.values() if is_open(round_)]
    return any("rinse" in round_.done for round_ in rounds) and not any(map(waits_on_hold, rounds))


_WRONG_ONE = Pattern(
    r"(?:(?:oh|no|oops|sorry|wait|so) ,? ?)*(?:wrong \w+|i mixed (?:them|those) up|i swapped (?:them|those))\b"
)
""" "Wrong animal, I put the snake in the window cage": whatever is asked, nothing is vouched for."""
_MISSED_A_BIT = Pattern(r"\bmissed (?:a|one|some|that)\b")
_THOUGH = Pattern(r"\b(?:even )?(?:if|though|although|with)\b", "if", "though", "with")
_WITH_IT = Pattern(r"\b(?:with|using) (?:it|that|that one|this|this one)\b")


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
