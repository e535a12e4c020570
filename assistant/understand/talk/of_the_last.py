"""What goes on from the answer just given: "for how long?", "I already did", "did those two too", "it was sunday"."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta
from fractions import Fraction

from assistant.contract import Outcome, Reading, Reply, Slots
from assistant.core.quantities.amounts import Amount
from assistant.understand.look import BY_RULE, Look
from assistant.understand.numbers.of_the_dose import of_the_dose
from assistant.understand.numbers.other_system import in_another_unit, of_the_other_system
from assistant.understand.text.patterns import Pattern


def of_the_last_answer(look: Look) -> Reading | None:
    """ "Why that order?", "for how long?", about what was answered just now."""
    last, before = look.world.talk.last, look.world.talk.last_reading
    plain = look.parsed.plain.strip(" .!?,")
    if last is None or before is None or before.intent is None or last.intent not in (before.intent, "why", "repeat"):
        return None
    dose = of_the_dose(look)
    if dose is not None:
        return dose
    if plain.startswith("why ") and look.top == before.intent:
        return look.reading("why", Slots(), 0.9)
    if before.intent == "wound" and _AND_THAT.match(plain) and len(plain.split()) <= 6:
        return look.reading("wound", look.slots("wound"), 0.9)
    if _FOR_HOW_LONG.fullmatch(plain) and before.intent in _OF_A_GERM:
        return _for_how_long(look, before)
    if _FOR_HOW_LONG.fullmatch(plain) and "long" in plain and before.intent in _WITH_A_PRODUCT:
        return _how_long_with_it(look, before)
    if before.intent == "outbreak" and before.slots.of_illness is None and _ON_WHOM.fullmatch(plain):
        return _on_another(look, before)
    if before.intent == "outbreak" and before.slots.organisms and _ENOUGH_FOR_IT.match(plain):
        slots = replace(look.slots("works_on"), organisms=before.slots.organisms)
        return look.reading("works_on", slots, 0.9)
    if look.top == "choose_agent" and before.intent in _OF_A_GERM and before.slots.organisms:
        slots = look.slots("choose_agent")
        if not (slots.organisms or slots.job or slots.materials or slots.unknown):
            return look.reading("choose_agent", replace(slots, organisms=before.slots.organisms), 0.9)
    unit = in_another_unit(before, look.parsed, look.slots("convert").to_unit)
    if unit is not None and last.outcome is Outcome.ANSWER and last.intent == before.intent:
        return look.reading("convert", unit, 0.9)
    other = of_the_other_system(before, look.parsed.tokens) if not look.parsed.amounts.found else None
    if other is not None and last.intent == before.intent:
        return replace(before, question=look.parsed.text, slots=other, spoken=look.spoken)
    if before.intent == "log_clean" and last.values.get("recorded") is True:
        return _logged_too(look, before, plain)
    if before.intent == "dose" and last.outcome is Outcome.ANSWER:
        return _put_in_instead(look, last)
    return None


def _on_another(look: Look, before: Reading) -> Reading | None:
    """ "On pepper", right after a sign was told: it is that one's, whatever was taken for granted or asked of it."""
    slots = look.slots("outbreak")
    meant = replace(before.slots, enclosures=slots.enclosures, choices=slots.choices)
    return replace(before, question=look.parsed.text, slots=meant, doubts=(), spoken=look.spoken)


_ON_WHOM = Pattern(
    r"(?:(?:no|nope|sorry|wait|actually|and|it|that|he|is|was|i|mean|meant|saw) ,? ?)*(?:it )?(?:on|in|from|with) "
    r"(?:the |my )?(?:ENCLOSURE|ANIMAL)(?: one)?"
)


def did_it(look: Look) -> Reading | None:
    """ "I did", right after it was asked whether two may meet: they have."""
    last, before = look.world.talk.last, look.world.talk.last_reading
    if last is None or before is None or before.intent != "together" or before.slots.met:
        return None
    if last.intent not in ("together", "why", "repeat"):
        return None
    if last.outcome is not Outcome.ANSWER or _DID_IT.fullmatch(look.parsed.plain.strip(" .!,")) is None:
        return None
    return replace(before, question=look.parsed.text, slots=replace(before.slots, met=True), spoken=look.spoken)


def _for_how_long(look: Look, before: Reading) -> Reading | None:
    """Of the illness just spoken of, with what was just said to work on it."""
    if not before.slots.organisms or (before.intent != "works_on" and "long" not in look.parsed.plain):
        return None
    intent = "choose_agent" if before.intent == "outbreak" else before.intent
    slots = Slots(organisms=before.slots.organisms) if before.intent == "outbreak" else before.slots
    return replace(before, question=look.parsed.text, intent=intent, slots=slots, spoken=look.spoken)


def _how_long_with_it(look: Look, before: Reading) -> Reading:
    """ "For how long?", after a dose or a soak was told: how long that stays wet, and never how long to air."""
    if before.intent == "treat_item":
        return replace(before, question=look.parsed.text, spoken=look.spoken)
    slots = before.slots
    named = Slots(bottles=slots.bottles, stocks=slots.stocks, agents=slots.agents, enclosures=slots.enclosures)
    return look.reading("hold_time", replace(named, mixes=slots.mixes, stock_strength=slots.stock_strength), 0.9)


_WITH_A_PRODUCT = frozenset(
    {"dose", "treat_item", "make_up", "mixed", "in_bottle", "top_up", "surface", "mix_strength"}
)


def _logged_too(look: Look, before: Reading, plain: str) -> Reading | None:
    """ "Did juniper and pepper too", "actually it was sunday", right after a chore was logged."""
    slots = look.slots("log_clean")
    if look.parsed.plain.endswith("?"):
        return None
    if _DAY_BEFORE.fullmatch(plain) and before.slots.when is not None and before.slots.when.to_the != "week":
        day = replace(before.slots.when, at=before.slots.when.at - timedelta(days=1), others=())
        return look.reading("log_clean", replace(before.slots, when=day, corrects=True), BY_RULE)
    chore_too = _CHORE_TOO.fullmatch(plain)
    if chore_too is not None and slots.chores and not slots.enclosures and not before.slots.apart:
        meant_so = chore_too["meant"] is not None
        kept = replace(before.slots, chores=slots.chores, when=slots.when or before.slots.when, corrects=meant_so)
        return look.reading("log_clean", kept, BY_RULE)
    if (_TOO.fullmatch(plain) or _SHE_DID.fullmatch(plain) or _AND_THAT_ONE.fullmatch(plain)) and (
        slots.enclosures or slots.every_enclosure
    ):
        chores = slots.chores or (() if before.slots.apart else before.slots.chores)  # of several, which is asked
        kept = replace(before.slots, enclosures=slots.enclosures, every_enclosure=slots.every_enclosure, apart=())
        kept = replace(kept, when=slots.when or before.slots.when, chores=chores, groups=(), racks=())
        return look.reading("log_clean", replace(kept, choices=slots.choices, corrects=False), BY_RULE)
    if _ONLY_ANOTHER.fullmatch(plain) and slots.enclosures and not slots.chores:
        chores = () if before.slots.apart else before.slots.chores
        meant = replace(before.slots, enclosures=slots.enclosures, chores=chores, apart=(), corrects=True)
        return look.reading("log_clean", meant, BY_RULE)
    if (
        slots.when is not None
        and _IT_WAS.match(plain)
        and not _ASKS.match(plain)
        and not (slots.enclosures or slots.chores)
    ):
        return look.reading("log_clean", replace(before.slots, when=slots.when, corrects=True), BY_RULE)
    return None


def _put_in_instead(look: Look, dose: Reply) -> Reading | None:
    """ "Put in thirty instead of twenty-three", right after a dose: how strong that made it."""
    found = [found.value for found in look.parsed.amounts.found]
    if len(found) != 2 or not _PUT_IN.match(look.parsed.plain):
        return None
    poured, told = (value.amount if isinstance(value, Amount) else value for value in found)
    concentrate, total = dose.values.get("concentrate"), dose.values.get("total")
    if not isinstance(concentrate, Amount) or not isinstance(total, Amount):
        return None
    if not isinstance(poured, Fraction) or not isinstance(told, Fraction) or abs(told - concentrate.amount) > 1:
        return None
    before = look.world.talk.last_reading
    assert before is not None, "a dose was answered"
    volumes = (Amount(poured, concentrate.unit), total)
    slots = replace(before.slots, mixes=(), numbers=(), bottles=(), volumes=volumes, roles=("product", "total"))
    return look.reading("mix_strength", slots, BY_RULE)


_ENOUGH_FOR_IT = Pattern(
    r"(?:so |and |but |ok )*(?:is|will|would|does|can) (?:the |my |some )?(?:BOTTLE|AGENT|STOCK) (?:be )?"
    r"(?:enough|do|ok|any good|strong enough|good enough|work|kill it|right|do it|fix it)\b"
    r"|(?:and |what about |or )(?:the )?(?:BOTTLE|AGENT|STOCK)$"
)
_OF_A_GERM = frozenset({"works_on", "choose_agent", "outbreak"})
_DAY_BEFORE = Pattern(
    r"(?:(?:no|nope|actually|wait|sorry|i meant|i mean|it was|make that|that was) ,? ?)*the day before(?: that)?"
    r"(?: sorry)?"
)
_AND_THAT_ONE = Pattern(
    r"(?:and|also|plus)(?: i)?(?: did)? (?:the |my )?(?:ENCLOSURE|ANIMAL)"
    r"(?:(?: ,)?(?: and)?(?: the| my)? (?:ENCLOSURE|ANIMAL))*"
)
_SHE_DID = Pattern(
    r"(?:(?:and|also|oh|plus) )*(?:the |my )?(?:ENCLOSURE|ANIMAL)(?: one)? ?,? (?:(?:i|he|she|we|they"
    r"|my \w+) )?(?:did|done|same again"
    r"|the same again)(?: (?:both|all|that|those|them|it|one|of))*(?: too| as well| also| again)*"
)
""" "And the geckos, she did both of those too"."""
_TOO = Pattern(
    r"(?:(?:and|i|we|also|then|oh|yes|plus) )*(?:(?:did|done|do|log|logged|same (?:for|with)|the same for"
    r"|as well as) )?(?:the )?(?:ENCLOSURE|ANIMAL)(?:(?: ,)?(?: and)?(?: the)? (?:ENCLOSURE|ANIMAL))*(?: \S+){0,3}? "
    r"(?:too|as well|also|the same)"
)
_CHORE_TOO = Pattern(
    r"(?:(?:and|i|we|also|oh|yes|plus|have|just) )*(?:did|gave|changed|done)(?: (?:him|her|it|them))? (?:(?:his"
    r"|her|its|their|the"
    r"|some|new|fresh) )*water(?: too| as well| also)*"
    r"|(?P<meant>(?:(?:no|sorry|wait|actually|well|oh|it was|that was|that one was|that is|i meant|i mean"
    r"|not) ,? ?)*(?:a )?"
    r"(?:proper |full )?(?:deep|spot|full)(?: one| clean)*(?: ,? ?(?:i mean|i meant|not a \w+(?: clean)?|actually|sorry"
    r"|put it down as that|not \w+))*)",
)
""" "Did their water as well", "deep clean I mean", right after a chore was logged."""
_ONLY_ANOTHER = Pattern(
    r"(?:(?:no|nope|wait|sorry|oops|actually|not that one|i meant|i mean|it was|that was) ,? ?)+(?:the |my )?"
    r"(?:ENCLOSURE|ANIMAL)(?: i meant| it was| i mean)?"
)
_IT_WAS = Pattern(
    r"(?:(?:no|actually|wait|sorry|oh|that is wrong|but|well) ,? ?)*"
    r"(?:(?:it|that|this) (?:was|were)|was|i (?:did|meant)(?: it| that)?|make (?:it|that)|no|actually|sorry)"
    r"(?: on| actually| ,)* ?\S+(?: \S+){0,3}$"
)
_ASKS = Pattern(r"(?:what|which|who|when|how|is|are|did|do|does|can|should|any)\b")
_PUT_IN = Pattern(
    r"(?:(?:oh|no|oops|but|i|we|have|just|ok|well|wait) ,? ?)*(?:put|poured|added|used|measured|drew|got|gave|tipped)"
    r"(?: it| in| up)* (?:NUMBER|VOLUME) (?:in )?(?:,? ?(?:instead of|not|rather than)) (?:NUMBER|VOLUME)"
)


_DID_IT = Pattern(
    r"(?:(?:um|uh|oh|oh no|well|but|ok|no|yes|sorry|too late|god|shit|help) ?,? ?)*"
    r"(?:(?:(?:i|we|he|she|they|my \w+) |(?=already|just))(?:think |might |may |must )*(?:(?:i|we) )?(?:have )?"
    r"(?:already |just )*"
    r"(?:did|done|mixed|put|poured|tipped|used|sprayed)"
    r"(?: it| that| them| both| this| the two)?"
    r"(?: one)?(?: already| just now| together| now| before| (?:in|into|on|onto|over) (?:the other|each other"
    r"|one another)(?: one)?)*"
    r"|(?:i|we|they|he|she) (?:might |may |must )?have(?: already)|too late|it is (?:already )?"
    r"(?:done|mixed)(?: already)?)"
)
""" "I already did", right after it was asked whether two may meet."""
_AND_THAT = Pattern(
    r"(?:and|or|so|ok|but) (?!i |he |she |it |the timer)|(?:what|how) about\b"
    r"|(?:how much|how strong|what strength|diluted|weaker|watered down|just (?:a |one )?(?:bit|little|drop|dab)"
    r"|only (?:a )?(?:bit|little|drop|dab)|even (?:a |one )?(?:bit|little|drop)|at what|which one|what with)\b"
)
""" "What about iodine?", right after a wish to treat an animal was refused."""
_FOR_HOW_LONG = Pattern(r"(?:and |ok )?(?:for )?how long(?: for| then)?|how (?:hot|strong|warm)(?: then)?")
