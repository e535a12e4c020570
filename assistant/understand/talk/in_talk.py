"""What a turn is to the talk before it: a yes or a no, an answer to what was asked, a correction, the same for another.

A full question beats what waits, so anything that would make one is left to `own_question`. How a short turn and the
question before it become one reading is `follow_up`.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import replace

from assistant.contract import Pending, Reading, Slots
from assistant.understand.bottles import fills
from assistant.understand.bottles.fill_times import on_the_same_day, only_a_time
from assistant.understand.bottles.puts_right import only_puts_right
from assistant.understand.look import BY_RULE, ENOUGH, Look, words_of
from assistant.understand.matching.learning import OUTSIDE
from assistant.understand.named.items_said import items_in
from assistant.understand.numbers.corrections import said_values
from assistant.understand.numbers.dose_again import strength_told, with_another_strength
from assistant.understand.numbers.dose_anew import asks_for_another_product
from assistant.understand.numbers.left_said import tells_what_is_left
from assistant.understand.numbers.same_as import same_as
from assistant.understand.numbers.scaled import factor_in
from assistant.understand.parsing import matched_words
from assistant.understand.question.may_be import may_be
from assistant.understand.question.slots import OF_ITEMS
from assistant.understand.steps.claimed_steps import steps_named
from assistant.understand.steps.elsewhere import begun_elsewhere, done_there_too, meant_elsewhere, not_done_there
from assistant.understand.steps.stayed_wet import cannot_tell
from assistant.understand.steps.surface import asks_whether_wet, seen_wet, smell_answer, wet_answer
from assistant.understand.steps.wet_answered import wet_said
from assistant.understand.talk import follow_up
from assistant.understand.talk.agreed import agreed_to, says_it_again
from assistant.understand.talk.follow_up import Answering
from assistant.understand.talk.goes_on import goes_on_in_its_field
from assistant.understand.talk.of_the_last import did_it, of_the_last_answer
from assistant.understand.talk.shared_on import shared_on
from assistant.understand.talk.takes import given_to
from assistant.understand.talk.treated_on import treated_on
from assistant.understand.text.asking import WHICH_WORDS, asks
from assistant.understand.text.parts_of_it import PART, WHICH
from assistant.understand.text.patterns import Pattern
from assistant.understand.text.short_slips import LONGEST, told_apart
from assistant.understand.text.words import ARTICLES


class InTalk:
    """Reads a turn as part of the talk. Built once from the questions."""

    def __init__(self, texts: Mapping[str, Sequence[str]], known: frozenset[str]) -> None:
        """texts: each question's phrasings, as matched."""
        self._known = known
        self._short_answers = frozenset((*texts["yes"], *texts["no"]))
        self._yes = words_of(texts["yes"])
        self._no = words_of(texts["no"])
        self._short = {text: name for name in _SHORT for text in texts[name] if len(text.split()) <= LONGEST}

    def __call__(self, look: Look) -> Reading | None:
        """What a turn answers, corrects or goes on from; None: it stands by itself."""
        pending = look.world.waiting
        reading = (
            (_what_waits(look, pending) if pending is not None else None)
            or self._yes_no_or_wet(look, pending)
            or same_as(look, pending)
            or self._of_the_answer_before(look, pending)
            or _elsewhere(look, pending)
        )
        if reading is not None:
            return reading
        plain = look.parsed.plain.strip(" .!?,")
        short = follow_up.is_short(look.parsed, _asked_before(look, pending))
        short = short or follow_up.asks_the_same(look.parsed)
        short = short or (pending is not None and "left" in pending.missing and tells_what_is_left(look.parsed))
        if not short or plain in _EXACT or (look.claims.done and not (pending and "step" in pending.missing)):
            return None
        return self._joined(look, pending)

    def _yes_no_or_wet(self, look: Look, pending: Pending | None) -> Reading | None:
        """A yes, a no, and what says as much: whether it stayed wet, whether it smells, whether it was rinsed."""
        if pending is not None and look.claims.done:  # "yes, rinsed, dry": the steps as well
            told = wet_answer(look, pending)
            if told is not None:
                return told
        if pending is not None and _YES_BUT.match(look.parsed.plain) and wet_said(look.parsed.plain) == "dried":
            told = wet_answer(look, pending)
            if told is not None:
                return told  # "yes, well the floor did"
        smelt = smell_answer(look, pending) if pending is not None else None
        if smelt is not None:
            return smelt  # "no smell except in the corner" is no "no", nor is "yes, a bit" or "no, it's wet"
        if pending is not None and fills.asks_whether_rinsed(pending):
            rinsed = fills.was_rinsed_first(look.parsed.plain)
            if rinsed is not None:
                return look.reading("yes" if rinsed else "no", Slots(), 0.9)
            told = fills.rinsed_and_how_strong(look.parsed.plain, look.slots("mixed"), pending)
            if told is not None:
                return replace(told, question=look.parsed.text, spoken=look.spoken)
        wet = seen_wet(look, pending) if pending is None or pending.on_no is not None else None
        if wet is not None and not asks_whether_wet(look.world):  # whether it was, all the time, is another matter
            return wet
        answer = did_it(look) if pending is None else None
        answer = answer or self._yes_or_no(look, pending) or shared_on(look, pending)
        answer = answer or treated_on(look) or of_the_last_answer(look)
        if answer is not None or pending is None:
            return answer
        return wet_answer(look, pending) or smell_answer(look, pending)

    def _of_the_answer_before(self, look: Look, pending: Pending | None) -> Reading | None:
        """The question before once more, with what is told: another strength, a tool, half of it."""
        before = pending.reading if pending is not None and pending.missing else look.world.talk.last_reading
        stronger = with_another_strength(before, look.parsed)
        if stronger is not None and before is not None and not (pending and _asks_the_strength(pending)):
            return replace(before, question=look.parsed.text, slots=stronger, spoken=look.spoken, doubts=())
        told_so = strength_told(look.parsed) if pending is None else None
        if told_so is not None:
            slots = replace(look.slots("stock_left"), stock_strength=told_so, mixes=(), numbers=())
            return Reading(look.parsed.text, None, slots, 0.9, (), (), look.spoken)
        on = goes_on_in_its_field(look) if pending is None or pending.reading == look.world.talk.last_reading else None
        return on or _tells_of_the_tool(look, pending) or self._share_of_it(look, pending)

    def _yes_or_no(self, look: Look, pending: Pending | None) -> Reading | None:
        """A yes or a no, and any other very short text that was misspelt or misheard."""
        asked = pending is not None or look.world.talk.takes_back
        slipped = told_apart(self._short, matched_words(look.parsed.as_said), self._known, asked)
        if slipped is not None:
            return look.reading(slipped, look.slots(slipped), 0.9)
        claims, waits = look.claims, pending is not None and pending.on_yes is not None
        of_a_step = _NO_STEP.match(look.parsed.plain) is not None and look.told.smell is None
        if waits and of_a_step and claims.polarity == "not yet" and not claims.done:
            return look.reading("no", Slots(), 0.9)  # "no, I haven't rinsed it"
        if pending is None and _YES_BOTH.fullmatch(look.parsed.plain.strip(" .!")):
            return look.reading("yes", Slots(), 0.9)
        if waits and _ONLY_A_PART.fullmatch(look.parsed.plain.strip(" .!")):
            yes = pending.on_yes if pending is not None else None
            lost = isinstance(yes, Reading) and yes.slots.stayed_wet is False  # asked whether it is really rinsed
            return look.reading("yes" if lost else "no", Slots(), 0.9)  # else, whether all of it is done
        waited = pending.on_yes if pending is not None else None
        out_first = isinstance(waited, Reading) and waited.slots.steps[:1] == ("move out",)
        if out_first and _STILL_OUT.fullmatch(look.parsed.plain.strip(" .!")):
            return look.reading("yes", Slots(), 0.9)  # asked whether it was moved out
        if waits and _ONLY_SOAP.match(look.parsed.plain):
            return look.reading("no", Slots(), 0.9)  # "no, just the soap", asked whether it was sprayed
        if pending is not None and _NEVER_MIND.fullmatch(look.parsed.plain.strip(" .!,")):
            return look.reading("no", Slots(), 0.95)
        if self._says(look, self._no) and look.told.smell is None and look.top in ("no", OUTSIDE, "undo", "status"):
            return look.reading("no", Slots(), 0.95)
        agreed = agreed_to(look, pending) if pending is not None else None
        if agreed is not None:
            return look.reading("yes" if agreed else "no", Slots(), 0.9)
        if self._says(look, self._yes) and look.top in ("yes", OUTSIDE):
            return look.reading("yes", Slots(), 0.95)
        if _repeats_what_waits(look, pending) or (pending is not None and says_it_again(look, pending)):
            return look.reading("yes", Slots(), 0.9)
        return None

    def _joined(self, look: Look, pending: Pending | None) -> Reading | None:
        """A short turn joined to the question that it answers, corrects or repeats."""
        before = pending.reading if pending is not None else look.world.talk.last_reading
        if before is None or before.intent is None:
            return None
        if pending is None and _asks_anew(look, before):
            return None
        full = _is_another(look, before) and look.top not in ("yes", "no") and not _is_an_answer(look, pending)
        full = full and (look.top != "tub" or may_be("tub", look.parsed, look.claims))
        full = full and not (look.top in _OF_AN_AMOUNT and follow_up.asks_for_another(look.parsed))
        full = full and not (look.top in _OF_AN_AMOUNT and _tells_the_mix(look, pending))
        full = full and not ((pending is None or pending.missing) and self._only_names(look, before))
        full = full and not follow_up.asks_the_same(look.parsed)
        full = full and not (before.intent in OF_ITEMS and _names_an_item(look))
        slots = replace(look.slots(before.intent), place=follow_up.place_in(look.parsed.plain))
        right = follow_up.corrects(look.parsed, before.intent)
        if (
            pending is not None
            and not right
            and asks_for_another_product(before.intent, before.slots, slots, look.world)
        ):
            return None
        if pending is not None and "step" in pending.missing:
            slots = replace(slots, steps=look.claims.done or steps_named(look.parsed.plain))
        answering = Answering(look.parsed, slots, look.spoken)
        fill = fills.before_it_is_put_right(look.world) if pending is None else None
        puts_right = follow_up.corrects(look.parsed, "mixed") and only_puts_right(look.parsed.plain)
        if fill is not None and (puts_right or only_a_time(look.parsed.words, slots)):
            if look.parsed.when is None or look.parsed.when.date is None:
                answering = replace(answering, slots=on_the_same_day(slots, fill))
            return follow_up.corrected(answering, fill, look.world)
        if pending is None and follow_up.goes_on_choosing(look.parsed, slots, before):
            return follow_up.corrected(answering, before, look.world)
        if follow_up.corrects(look.parsed, before.intent) and (
            pending is not None or follow_up.may_be_asked_again(before.intent, look.world)
        ):
            corrected = follow_up.corrected(answering, before, look.world)
            if corrected is not None:
                return corrected
        if pending is not None and pending.missing and (not full or follow_up.starts_with_yes(look.parsed.plain) == ""):
            return follow_up.supplied(answering, pending, look.world) or self._adds_to_it(answering, pending, look)
        if (
            follow_up.asks_for_another(look.parsed, before.intent)
            and follow_up.may_be_asked_again(before.intent, look.world)
            and not full
        ):
            return follow_up.corrected(answering, before, look.world)
        if pending is None and (self._same_again(look, before) or self._goes_on(look, before)):
            return follow_up.corrected(answering, before, look.world)
        if pending is not None and pending.reading.doubts:
            return follow_up.corrected(answering, before, look.world)
        return _goes_on_choosing(look, pending) if pending is not None else None

    def _adds_to_it(self, answering: Answering, pending: Pending, look: Look) -> Reading | None:
        """ "Bleach", when the mix was asked for: noted, and the mix is asked for again."""
        before = pending.reading
        if not follow_up.may_be_asked_again(before.intent, look.world) or not self._only_names(look, before):
            return None
        return follow_up.corrected(answering, before, look.world)

    def _only_names(self, look: Look, before: Reading) -> bool:
        """ "On glass?", "for the turtle": names that the question before takes, and small words."""
        question = look.world.questions.get(before.intent or "")
        bare = all(word[0] == "{" or word in _SMALL for word in look.parsed.words)
        return question is not None and bare and bool(given_to(question, look.slots(before.intent)))

    def _goes_on(self, look: Look, before: Reading) -> bool:
        last = look.world.talk.last
        just_before = last is not None and last.intent == before.intent
        begins = look.parsed.plain.split(" ", 1)[0] in _SMALL
        again = follow_up.may_be_asked_again(before.intent, look.world)
        return just_before and begins and again and self._only_names(look, before)

    def _share_of_it(self, look: Look, pending: Pending | None) -> Reading | None:
        """ "What about half of that", after an amount."""
        before = look.world.talk.last_reading
        if pending is not None or before is None or look.claims.mentioned or len(look.parsed.words) > LONGEST + 2:
            return None
        if look.parsed.mentions:
            return None  # "yellow bottle, only half full": of that bottle, and not of the answer before
        other = _is_another(look, before) and not follow_up.asks_for_another(look.parsed)
        if other or not follow_up.may_be_asked_again(before.intent, look.world):
            return None
        if factor_in(look.parsed.plain, said_values(look.parsed)) is None:
            return None
        return follow_up.corrected(Answering(look.parsed, Slots(), look.spoken), before, look.world)

    def _same_again(self, look: Look, before: Reading) -> bool:
        """ "1 in 50" right after an amount was given, or a bare name after a look: the same for that one.

        A question in full ("how much bleach at 500 ppm") asks anew: the bottle of the one before isn't taken for it.
        """
        last = look.world.talk.last
        if last is None or last.intent != before.intent or not follow_up.may_be_asked_again(before.intent, look.world):
            return False
        if set(look.parsed.words) <= _A_NAME and look.parsed.mentions:
            return True
        if before.intent == "treat_item" and set(look.parsed.words) <= _A_NAME | _AN_ITEM:
            return bool(look.parsed.mentions) or "{item}" in look.parsed.words
        amounts = any(found.kind in ("mix", "volume") for found in look.parsed.amounts.found)
        amounts = amounts or (before.intent == "dose" and bool(look.slots("dose").volumes))  # "for two bottles"
        return (
            before.intent == "dose"
            and amounts
            and not (look.top == "convert" and look.chances["convert"] >= ENOUGH)
            and look.parsed.words[0] not in _ASKS_IN_FULL
        )

    def _says(self, look: Look, words: frozenset[str]) -> bool:
        said, plain = look.parsed.words, look.parsed.plain
        asks = plain.endswith("?") or (not plain.startswith("do not") and plain.split(" ", 1)[0] in _ASKS_OR_TELLS)
        asks = (
            asks or not look.parsed.tokens or look.parsed.tokens[-1].text in ARTICLES - {"that", "this"}
        )  # "it is the" is cut short
        word_for_word = " ".join(said) in self._short_answers
        plainly = bool(set(said) & _YES_OR_NO) or word_for_word
        if set(said) & WHICH_WORDS and not word_for_word:
            return False  # "no wait what was I"
        short = 0 < len(said) <= 6 or word_for_word
        return short and set(said) <= words and plainly and not asks


def _what_waits(look: Look, pending: Pending) -> Reading | None:
    """What only the question asked last makes an answer of: "go on", "that one", "concentrate", "I couldn't say"."""
    plain = look.parsed.plain.strip(" .!?,")
    if "start_over" in pending.missing and follow_up.goes_on(look.parsed):
        return follow_up.supplied(Answering(look.parsed, Slots(), look.spoken), pending)
    if "bottle" in pending.missing and _THAT_ONE.fullmatch(plain):
        bottle = fills.bottle_of_before(look.world)
        if bottle is not None:
            slots = replace(pending.reading.slots, bottles=(bottle,))
            return replace(pending.reading, question=look.parsed.text, slots=slots, spoken=look.spoken, doubts=())
    if "concentrate" in pending.missing:
        told = fills.concentrate_or_mix(look.parsed.plain, pending)
        told = told or fills.volume_put_right(look.parsed.plain, look.slots("mixed"), pending)
        if told is not None:
            return replace(told, question=look.parsed.text, spoken=look.spoken)
    if cannot_tell(look.parsed.plain):
        unseen = wet_answer(look, pending)
        if unseen is not None:
            return unseen
    cold = pending.on_yes if not look.parsed.plain.endswith("?") else None
    if isinstance(cold, Reading) and cold.slots.heat_cold and look.slots("done").heat_cold:
        return replace(cold, question=look.parsed.text, spoken=look.spoken)  # asked, and said in full
    return None


def _elsewhere(look: Look, pending: Pending | None) -> Reading | None:
    """Of another enclosure than the one just told of, or of that one too."""
    not_there = not_done_there(look)
    if not_there is not None:
        return look.reading("undo", not_there, BY_RULE)
    elsewhere = meant_elsewhere(look) if pending is None else None
    if elsewhere is not None:
        return look.reading("undo", elsewhere, BY_RULE)
    of_a_step = pending is not None and isinstance(pending.on_yes, Reading) and pending.on_yes.intent == "done"
    of_a_step = of_a_step or (pending is not None and pending.reading.intent == "start")
    too = done_there_too(look) if pending is None or pending.unasked or of_a_step else None
    if too is not None:
        return look.reading("done", too, BY_RULE)
    begun = begun_elsewhere(look) if pending is None else None
    return look.by_rule("start", begun)


def _is_another(look: Look, before: Reading) -> bool:
    """Whether it is likely enough another question; a step is never told by likeness alone."""
    told_by_likeness = look.top == "done" and not look.claims.mentioned
    return look.chances[look.top] >= ENOUGH and look.top not in (OUTSIDE, before.intent) and not told_by_likeness


def _is_an_answer(look: Look, pending: Pending | None) -> bool:
    """ "It's clover, the dragon", "a cap is 8 mils", when that was asked for: told, so no question that only asks."""
    asks_only = follow_up.may_be_asked_again(look.top, look.world)
    return pending is not None and bool(pending.missing) and asks_only and not asks(look.parsed.plain)


def _tells_the_mix(look: Look, pending: Pending | None) -> bool:
    """ "One to thirty-two, I suppose", when the mix was asked for: that, and not what it means."""
    asks = look.parsed.plain.endswith("?") or look.parsed.plain.split(" ", 1)[0] in _ASKS_IN_FULL - {"i"}
    return pending is not None and "mix" in pending.missing and not asks


def _asks_the_strength(pending: Pending) -> bool:
    """The strength of the concentrate, or the mix, was asked for: then that is answered."""
    return bool({"strength", "stock_strength", "mix"} & set(pending.missing))


def _tells_of_the_tool(look: Look, pending: Pending | None) -> Reading | None:
    """ "A cap holds 10 mils", right after a dose: the same, counted in caps."""
    before = pending.reading if pending is not None else look.world.talk.last_reading
    if before is None or before.intent not in ("dose", "mix_strength") or len(look.parsed.words) > 2 * LONGEST:
        return None
    slots, only = look.slots(before.intent), not look.parsed.mentions and len(look.parsed.amounts.found) == 1
    if not only or slots.scoops is None or slots.scoops.holds is None or slots.scoops.count is not None:
        return None
    answering = Answering(look.parsed, slots, look.spoken)
    supplied = follow_up.supplied(answering, pending) if pending is not None and pending.missing else None
    return supplied or follow_up.corrected(answering, before, look.world)


def _goes_on_choosing(look: Look, pending: Pending) -> Reading | None:
    """ "And vinegar?", after "does bleach work on it?", while something else still waits for a yes or a no."""
    before = look.world.talk.last_reading
    if before is None or before.intent is None or before.intent == pending.reading.intent:
        return None
    slots = look.slots(before.intent)
    if not follow_up.goes_on_choosing(look.parsed, slots, before):
        return None
    return follow_up.corrected(Answering(look.parsed, slots, look.spoken), before, look.world)


def _names_an_item(look: Look) -> bool:
    """ "And the gloves?": hardly more than a thing."""
    items = items_in(look.parsed.plain, look.world.facts)
    return bool(items) and follow_up.asks_for_another(look.parsed)


def _repeats_what_waits(look: Look, pending: Pending | None) -> bool:
    """ "Yes, pause", when it was asked whether to pause."""
    yes = pending.on_yes if pending is not None else None
    plain = look.parsed.plain
    bare = not look.parsed.mentions and not look.parsed.amounts.found and not plain.endswith("?")
    opened = follow_up.starts_with_yes(plain) != plain and len(look.parsed.words) <= 3 and not look.claims.done
    return isinstance(yes, Reading) and opened and bare and look.top == yes.intent


def _asks_anew(look: Look, before: Reading) -> bool:
    """ "Bleach on acrylic", "what for yellow fungus": whole by themselves, whatever was asked before."""
    if before.intent in ("works_on", "choose_agent", "protect", "together") and _WHOLE.match(look.parsed.plain):
        slots = look.slots("surface")
        return bool(slots.materials and (slots.agents or slots.bottles or slots.stocks))
    return before.intent == "works_on" and _WHAT_FOR.match(look.parsed.plain) is not None


def _asked_before(look: Look, pending: Pending | None) -> str | None:
    """The question that this turn may go on from."""
    before = pending.reading if pending is not None else look.world.talk.last_reading
    return before.intent if before is not None else None


_WHOLE = Pattern(r"^(?:can |is )?(?:the |some |neat )?(?:AGENT|BOTTLE|STOCK) (?:ok |safe |fine )?(?:on|onto|for) ")
_WHAT_FOR = Pattern(r"^(?:and |so )?(?:what|which|which one) (?:for|against|kills|works on)\b")
_SHORT = ("help", "undo", "next", "repeat", "status", "yes", "no")
_NEVER_MIND = Pattern(
    r"(?:(?:oh|ok|no|well|actually|just) ?,? ?)*(?:never mind|forget (?:it|that)|leave (?:it|that)(?: then)?"
    r"|skip (?:it|that)"
    r"|it does not matter|does not matter|no matter|cancel(?: that)?|drop it)(?: then| now| please)*"
)
""" "Never mind", when something was asked; alone it is about nothing."""
_YES_BOTH = Pattern(
    r"(?:yes|yeah|yep|yup)(?: ,)? (?:(?:to|for|they|it) )?(?:both|all|both of them|all of them)(?: of them)?"
    r"(?: (?:did|were|stayed wet|are|wet))?"
)
""" "Yes, both", after two wet times were asked about at once."""
_ONLY_SOAP = Pattern(
    r"(?:(?:um|er|oh|sorry|no|nope|not yet) ,? ?)*(?:i )?(?:only|just)(?: (?:rinsed|washed))?(?: off)?(?: the"
    r"| off)* (?:soap|suds"
    r"|detergent|washing)\b"
)
_ONLY_A_PART = Pattern(
    rf"(?:(?:um|er|oh|sorry|no|nope|nah|not yet|not quite) ,? ?)*(?:i )?(?:only|just|not)(?: (?:did|rinsed|washed"
    rf"|dried|sprayed))?"
    rf" (?:the |one |a |its |his |her )*{WHICH}{PART}(?: (?:so far|for now|yet))?"
)
""" "No, just the sides"."""
_STILL_OUT = Pattern(
    r"(?:(?:yes|no|well|oh) ,? ?)*(?:(?:the |my )?(?:ANIMAL|ENCLOSURE)|he|she|they|it|both)(?: is| are| 's)+"
    r" (?:still|already) out"
)
_YES_BUT = Pattern(r"(?:yes|yeah|yep) ?,? \w")
_NO_STEP = Pattern(r"(?:um |er |oh )*no\b")
_THAT_ONE = Pattern(
    r"(?:(?:ok|yes|right|then|so) ,? ?)*(?:(?:use|with|take|using|go with|i will use|i will take) )?(?:that|this"
    r"|the same)(?: one| bottle)?"
    r"(?: then| please)?|(?:use|with|take) it(?: then| please)?"
)
""" "Ok, use that one", after a bottle was looked into."""
_ASKS_OR_TELLS = frozenset({"is", "was", "did", "do", "are", "they"})
_YES_OR_NO = frozenset(
    {"yes", "ok", "right", "correct", "sure", "exactly", "affirmative", "indeed", "absolutely", "definitely", "confirm"}
    | {"confirmed", "true", "no", "not", "negative", "wrong", "incorrect", "never", "false"}
)
"""Words without one of which only a phrasing of yes or no, word for word, is one."""
_OF_AN_AMOUNT = frozenset({"read_ratio", "mix_strength", "measure_with", "convert"})
"""Questions that "what about one in fifty?" would be by itself, but not after another."""
_SMALL = frozenset({"on", "for", "in", "at", "with", "from", "to", "against", "after", "and", "what", "about", "then"})
"""Words before a name that is put to the question before."""
_A_NAME = frozenset({"{enclosure}", "{animal}", "{bottle}", "{agent}", "{stock}"})
_AN_ITEM = frozenset({"in", "with", "using", "{item}", "water", "food"})
_ASKS_IN_FULL = frozenset({"how", "what", "which", "can", "could", "do", "does", "i", "give", "tell"})
_EXACT = frozenset({"next", "help", "undo", "repeat", "status", "again", "pardon", "what now", "now what"})
