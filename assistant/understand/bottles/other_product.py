"""Another product than the one on record, told after the fact: "I used the yellow one, not the pink", "wrong bottle".

Of a spraying the one that was meant stays known as a touch; of a fill the record is put right; of a clean that has
just begun the product is changed.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace

from assistant.contract import Outcome, Reading, Slots, World
from assistant.core.household import Household
from assistant.core.quantities.amounts import Mix
from assistant.core.round.rounds import is_open
from assistant.understand.bottles import fills
from assistant.understand.bottles.facts_asked import facts_were_asked
from assistant.understand.bottles.gas_there import makes_gas_there
from assistant.understand.bottles.puts_right import only_puts_right
from assistant.understand.look import BY_RULE, Look
from assistant.understand.named.by_colour import agents_of
from assistant.understand.named.named_at import MASKS, named_at
from assistant.understand.named.names import Mention, Thing
from assistant.understand.parsing import Parsed
from assistant.understand.text.asking import begins_as_asked
from assistant.understand.text.known_words import COLOURS
from assistant.understand.text.patterns import Pattern, words_in

_OPENS = Pattern(
    r"^(?:(?:no|nope|wait|oh|oops|sorry|actually|hang on|hold on|whoops|damn|dammit|shit|crap|god|um|uh|er|ah|argh|my"
    r" mistake|my bad|correction|(?:scratch|scrap|forget|strike|cancel) that|i was wrong|but|and|so) ,? ?)+"
)
_WRONG = Pattern(
    r"\bwrong (?:bottle|one|sprayer|spray|stuff|product|mix|cleaner|colou?r|BOTTLE|AGENT)\b|\bby (?:mistake"
    r"|accident)\b"
    r"|\b(?:accidentally|mistakenly)\b|\bmixed (?:them|the bottles|the two|the sprays) up\b|\bmixed up the bottles\b"
    r"|\bafter all\b|\bin the end\b|\bturn(?:s|ed) out\b",
    *("wrong", "by mis", "by acc", "accident", "mistake", "mixed", "after all", "in the end", "turn"),
)
_INSTEAD = Pattern(
    r"\binstead\b|^(?:no ,? ?)?make (?:it|that) (?:the )?(?:PRODUCT|BOTTLE|STOCK|AGENT|\w+)$|\b(?:switch\w*"
    r"|chang\w+|swap\w*) (?:over )?to\b|\b(?:ran|run|running) out\b",
    *("instead", "switch", "chang", "swap", "out", "make"),
)
""" "I'll use the yellow instead", "switching to bleach": of a clean in which nothing has been sprayed."""
_NOT_THAT = Pattern(
    r"(?:^| )(?:,? ?(?:and |but )?(?:not|instead of|rather than|in place of|was not|is not|in stead of"
    r"|should have been|meant to (?:use|grab|take|pick up|be)|thought (?:it|that|i|this) (?:was|had|grabbed|used))"
    r"(?: it)?(?: was| were)?(?: with| from)?) (?:(?:the|my|that|a|any) )?(?:BOTTLE|STOCK|AGENT|PRODUCT|\w+ one"
    rf"|that|this|it|those|{'|'.join(sorted(COLOURS))})(?: that was| it was)?(?= |$)",
    *("not", "instead", "rather", "in place", "in stead", "should", "meant", "thought"),
)
_WITH = (
    r"(?:with|from|out of|using|in)? ?(?:the |my |some |a bit of |it |that |accidentally |mistakenly )*"
    r"(?:BOTTLE|STOCK|AGENT|PRODUCT)"
)
_TELLS = Pattern(
    rf"\b(?:used|grabbed|took|taken|picked up|squirted|misted|spritzed|sprayed|had|did it|done it"
    rf"|reached for|went with)"
    rf"(?: it| that| this)? (?:accidentally |mistakenly |actually |all )*{_WITH}\b"
    rf"|\b(?:it|that|this|what i (?:used|sprayed|had)|the (?:spray|bottle|one|stuff)(?: i (?:used|had|sprayed))?)"
    rf" (?:was|is|'s|were) (?:actually |really |in fact |from |out of )*{_WITH}\b"
    rf"|^{_WITH}(?: one| bottle)?(?: it was| that was| i used| i meant| instead)?$"
    rf"|\bi (?:meant|mean) {_WITH}\b",
    *("BOTTLE", "STOCK", "AGENT", "PRODUCT"),
)
_TO_USE = Pattern(
    rf"^(?:(?:i am|i will be|i will|we will|it is|i|we are|make it|make that|do it|let us|actually|ok) )*"
    rf"(?:(?:using|use|with|going with|switch|switching|switched|change|changing|changed|swap|swapping|swapped"
    rf"|over|to"
    rf"|going for|meant|mean|said|taking|it) )*{_WITH}\b(?: one| bottle)?(?: instead| it is| i meant| for this"
    rf"| for this one| for it| for that| then| please)*(?: ,? ?(?:not|instead of|rather than) .*)?$"
)
""" "With the pink one", of a clean in which nothing has been sprayed."""
_ON_TOP = Pattern(
    r"\b(?:sprayed|misted|squirted|put|poured|got|used|splashed|spritzed)\b.*\b(?:too|as well|also|on top)\b"
    r"|\b(?:accidentally|by (?:mistake|accident)|oops|whoops)\b.*\b(?:sprayed|misted|squirted|put|poured|splashed"
    r"|spritzed)\b"
    r"(?: \S+){0,3} (?:on|over|onto) (?:it|that|there|the|ENCLOSURE)\b",
    *("too", "as well", "also", "on top", "accident", "mistake", "oops"),
)
""" "I accidentally sprayed vinegar on it too": put on beside what is on it."""
_I_THINK = r"(?:(?:i|so|now|oh|actually|do) )*(?:(?:think|reckon|believe|suspect|guess|fear)(?: that| now)? )?"
_IT_WAS = Pattern(
    rf"{_I_THINK}(?:i (?:just |now )?(?:see|saw|notice|noticed|realised|realized|realise) (?:that )?|turns out"
    rf" )?(?:it|that"
    rf"|this)"
    rf" (?:was|is|'s|must have been|may have been|might have been|could have been) (?:actually |really )?{_WITH}"
    rf"(?: bottle| one)?(?: (?:that )?i (?:used|sprayed|had))?(?: ?,? (?:by the way|btw|you know|though|actually))*"
    rf"|{_I_THINK}(?:i |we )?(?:(?:have|just|actually|really|probably|maybe|must|may|might|could) )*"
    rf"(?:used|picked up|grabbed|took|sprayed|had) {_WITH}(?: bottle| one)?(?: ?,? (?:by the way|btw|you know|though"
    rf"|actually|i see(?: now)?"
    rf"|i see it now|sorry|it seems|instead|i think|by mistake|in fact))*",
    *("it", "that", "this", "used", "picked", "grabbed", "took", "sprayed", "had"),
)
_WHICH_IS_NOT_KNOWN = Pattern(
    r"\b(?:not|hardly|forgot|forget|no idea)(?: really| even)?(?: (?:know|sure|remember|recall|certain"
    r"|tell))?(?: any ?more)?"
    r" (?:of )?(?:which|what) (?:bottle|one|sprayer|product|colou?r)? ?(?:it was|that was|i (?:used|sprayed|took"
    r"|grabbed|had))\b"
    r"|^(?:it |that )?(?:might|may|could) (?:well )?have been (?:the )?(?:BOTTLE|STOCK|AGENT|PRODUCT)\b(?! one in)"
    r"|^(?:it |that )?(?:might|may|could) (?:well )?have been (?:either|any)\b"
    r"|^(?:i )?(?:can |could |do )?(?:not|forgot|forget)(?: know| remember| recall)? (?:which|what) (?:bottle"
    r"|sprayer|spray)$"
    r"|\bnot (?:so |really )?(?:sure|certain)(?: if| whether| that)? it was (?:the )?(?:BOTTLE|PRODUCT"
    r"|AGENT)(?: one| bottle)?$"
    r"|\bnot (?:so |really )?(?:sure|certain) (?:if|whether) it was (?:the )?(?:BOTTLE|PRODUCT"
    r"|AGENT) or (?:the )?(?:BOTTLE|PRODUCT|AGENT)\b"
    r"|\bwas it (?:the )?(?:BOTTLE|PRODUCT|AGENT) or (?:the )?(?:BOTTLE|PRODUCT|AGENT)\b.*\b(?:not|forgot|no idea)\b",
    *("not", "hardly", "forgot", "forget", "no idea", "have been"),
)
""" "I don't know which bottle it was", of what has been sprayed."""
_FILLED = Pattern(
    rf"\b(?:filled|mixed|made up|refilled|topped up|put it in|went in(?:to)?|poured it in(?:to)?) {_WITH}\b"
)
_TO_COME = Pattern(
    r"\b(?:if|can i|could i|should i|may i|(?<!i )(?<!we )will|going to|about to|next time|tomorrow|later|want to"
    r"|would|is it ok"
    r"|what (?:if|now|happens)|whether|do i)\b"
)


@dataclass(frozen=True, slots=True)
class _Said:
    """What is said to have been used instead, and whether there is a word of it at all."""

    thing: Thing | None
    tells: bool
    fills: bool


def other_product(look: Look) -> Reading | None:
    """The spraying, the fill or the clean with the product that it is now said to have been; None: nothing of it."""
    world, plain = look.world, look.parsed.plain.strip(" .!,")
    if _is_not_known(look):
        return _not_known(look)
    swapped = _swapped(look)
    if swapped is not None:
        return swapped
    held = _held_another(look)
    if held is not None:
        return _sprayed(look, held)
    if _ON_TOP.search(plain) is not None:
        return None  # one on top of the other, which may make gas
    plainly = _WRONG.search(plain) is not None or _NOT_THAT.search(plain) is not None
    if look.parsed.plain.endswith("?") or _TO_COME.search(plain) or (world.waiting is not None and not plainly):
        return None
    if facts_were_asked(world) and not plainly:
        return None  # "and chlorhexidine", after what bleach kills
    fill = fills.before_it_is_put_right(world)
    if fill is None and _FILL_WAS_OF.search(_named_by_colour(plain, world.household)) is not None:
        fill = fills.last_on_record(world)
    rounds = [r for r in world.state.rounds.values() if is_open(r)]
    if fill is None and not rounds:
        return None
    said = _said(look.parsed, plain, world.household) or _it_was(look, plain)
    if said is None or (fill is None and said.fills):
        return None
    if fill is not None:
        return _filled(look, fill, said) if only_puts_right(look.parsed.plain) else None
    begun = _begun_just_now(world) or tuple(r.enclosure for r in rounds if "apply" not in r.done)[:2]
    sprayed = any("apply" in r.done for r in rounds)
    if said.thing is not None and not sprayed and (len(begun) == 1 or _begun_just_now(world)):
        told = _WRONG.sub("", _OPENS.sub("", _named_by_colour(plain, world.household))).strip(" .,")
        if _TO_USE.search(told) or _IT_WAS.fullmatch(told):  # before anything is sprayed, "it was" is what it will be
            return _begun(look, said.thing, begun)
        return look.reading("done", replace(_of(said.thing, look.slots("done")), steps=("apply",)), BY_RULE)
    return _sprayed(look, said.thing) if sprayed else None


def _is_not_known(look: Look) -> bool:
    """Whether it is said that nobody knows with what an enclosure was sprayed, of which the record tells a bottle."""
    sprayed = [r for r in look.world.state.rounds.values() if is_open(r) and "apply" in r.done]
    masked = _named_by_colour(look.parsed.plain.strip(" .!,"), look.world.household)
    return len(sprayed) == 1 and _WHICH_IS_NOT_KNOWN.search(masked) is not None


def _not_known(look: Look) -> Reading:
    """The spraying with its bottle to be asked; what may have been in it is kept as a touch."""
    things = [thing for _, thing in _things(look.parsed, look.world.household)]
    reading = _sprayed(look, None)
    bare = replace(reading.slots, bottles=(), stocks=(), agents=(), choices=(), unknown=())
    return replace(reading, slots=replace(bare, touched=agents_of(things, look.world)))


def _swapped(look: Look) -> Reading | None:
    """ "I swapped the bottles": of every clean that was sprayed nobody knows with what; None: nothing of the kind."""
    sprayed = tuple(r.enclosure for r in look.world.state.rounds.values() if is_open(r) and "apply" in r.done)
    plain = look.parsed.plain.strip(" .!,")
    if not sprayed or look.parsed.plain.endswith("?") or _SWAPPED.search(plain) is None:
        return None
    reading = _not_known(look)
    return replace(reading, slots=replace(reading.slots, enclosures=reading.slots.enclosures or sprayed))


_SWAPPED = Pattern(
    r"^(?:(?:oh|no|i|we|think|must|have|had|just|accidentally|may|might|shit|damn) )*(?:swapped|mixed|muddled|switched"
    r"|confused)(?: up)? (?:the|my|both|both the) (?:bottles|sprays|sprayers)\b"
    r"|\b(?:bottles|sprays) (?:were )?(?:the )?wrong way (?:round|around)\b",
    *("bottle", "spray"),
)


_FILL_WAS_OF = Pattern(
    r"\b(?:it|that) was (?:actually |really )?(?:the |my )?(?:BOTTLE|PRODUCT)(?: one| bottle)? (?:that )?(?:i"
    r"|we) (?:filled|mixed)\b"
    r"|^(?:(?:no|nope|wait|oops|sorry|actually|hang on|hold on|whoops|my mistake|i was wrong) ,? ?)+(?:i|we)"
    r" (?:actually )?"
    r"(?:filled|mixed|put it in(?:to)?|poured it in(?:to)?|meant) (?:actually )?(?:the |my )?(?:BOTTLE|PRODUCT)"
    r"(?: one| bottle)?(?: ,? ?(?:not|instead|rather).*)?$",
    *("filled", "mixed", "put", "poured", "meant"),
)
""" "It was the pink bottle I filled", however long after the fill was told."""


def _held_another(look: Look) -> Thing | None:
    """What the bottle of the only spraying is said to have held instead: "the pink bottle had vinegar in it"."""
    sprayed = [r for r in look.world.state.rounds.values() if is_open(r) and "apply" in r.done]
    plain = look.parsed.plain.strip(" .!,")
    if len(sprayed) != 1 or look.parsed.plain.endswith("?") or _HELD.search(plain) is None:
        return None
    things = [thing for _, thing in _things(look.parsed, look.world.household)]
    bottles = [thing.name for thing in things if thing.kind == "bottle"]
    others = [thing for thing in things if thing.kind != "bottle"]
    if bottles != [sprayed[0].bottle] or len(others) != 1 or others[0].name in (sprayed[0].stock, sprayed[0].agent):
        return None
    return others[0]


_HELD = Pattern(
    r"^(?:(?:oh|no|actually|i think|think|but|so|the|my|turns out|it turns out) )*BOTTLE(?: actually| really| still)*"
    r" (?:had|has|has got|held|holds|contained|contains|was full of)"
    r"(?: actually| really| got| only| some| still| a| bit| little| drop| of)* (?:AGENT|STOCK)(?: in it| inside)?$",
    "BOTTLE",
)


def _begun_just_now(world: World) -> tuple[str, ...]:
    """The enclosures that the turn before began to clean."""
    last = world.talk.last
    begun = last is not None and last.intent == "start" and last.outcome is Outcome.ANSWER
    return tuple(last.values["enclosures"]) if last is not None and begun and "enclosures" in last.values else ()


_THE_OTHER = Pattern(
    r"\b(?:sprayed|used|misted|squirted|did)(?: \w+){0,3}? (?:with|from|using) (?:the|a|an|my) (?:other|another"
    r"|different|wrong"
    r"|spare|new|old) (?:bottle|one|sprayer|spray|stuff)\b"
    r"|\b(?:sprayed|used|misted|squirted|did)(?: \w+){0,3}? (?:with|from|using) (?:something(?: else)?|anything|god"
    r" knows what"
    r"|who knows what|whatever|i do not know what|my own (?:mix|stuff|brew)|(?:the |some |a )?(?:stuff|thing|mix"
    r"|spray|one)"
    r" (?:from (?!last|yesterday)|that |i |my |he |she |the vet)"
    rf"|(?:the |a |my )?(?:{'|'.join(sorted(COLOURS))}) (?:bottle|one|sprayer|spray))\b"
)
""" "Sprayed with the other bottle", or one that nobody knows: which, is asked."""


def unnamed_product(look: Look) -> Reading | None:
    """A spraying from a bottle that isn't named, and isn't the one of the clean; None: nothing of the kind."""
    plain = look.parsed.plain
    open_ones = [r for r in look.world.state.rounds.values() if is_open(r)]
    slots = look.slots("done")
    if not open_ones or plain.endswith("?") or _THE_OTHER.search(plain) is None or "apply" not in look.claims.done:
        return None
    if slots.bottles or slots.stocks or slots.agents:
        return None
    return look.reading("done", replace(slots, steps=("apply",), unknown=(), choices=(), corrects=True), BY_RULE)


def _said(parsed: Parsed, plain: str, household: Household) -> _Said | None:
    opened, wrong, not_that = _OPENS.match(plain), _WRONG.search(plain), _NOT_THAT.search(plain)
    instead = _INSTEAD.search(plain) is not None
    if not (opened or wrong or not_that or instead):
        return None
    things = tuple(_things(parsed, household))
    masked = _named_by_colour(plain, household)
    rest = _OPENS.sub("", masked) if opened else masked
    if begins_as_asked(rest):
        return None
    denied = _NOT_THAT.search(masked)
    kept = [thing for place, thing in things if denied is None or not denied.start() <= place < denied.end()]
    if not kept:
        bare = wrong is not None and len(plain.split()) <= 8 and not things and "ENCLOSURE" not in plain
        return _Said(None, False, False) if bare else None
    told = _WRONG.sub(" ", _NOT_THAT.sub(" ", rest)).strip(" .!,")
    told = _OPENS.sub("", told).strip(" ,")
    tells = _TELLS.search(told) is not None or _TO_USE.search(told) is not None
    filled = _FILLED.search(told) is not None
    if not tells and not filled:
        return None
    if instead and not (opened or wrong or not_that) and not _TO_USE.search(told):
        return None
    if len({(thing.kind, thing.name) for thing in kept}) != 1:
        return None
    return _Said(kept[0], tells, filled)


def _it_was(look: Look, plain: str) -> _Said | None:
    """ "It was the yellow bottle", where the record of the only spraying tells another."""
    sprayed = [r for r in look.world.state.rounds.values() if is_open(r) and "apply" in r.done]
    if len(sprayed) != 1 or _IT_WAS.fullmatch(_named_by_colour(plain, look.world.household)) is None:
        return None
    if "rinse" in sprayed[0].done and plain.startswith("sprayed"):
        return None  # that one came off again: it is what was sprayed after it
    things = [thing for _, thing in _things(look.parsed, look.world.household)]
    if len(things) != 1 or things[0].name in (sprayed[0].bottle, sprayed[0].stock, sprayed[0].agent):
        return None
    return _Said(things[0], True, False)


def _things(parsed: Parsed, household: Household) -> Iterator[tuple[int, Thing]]:
    """Each product named, by name or by its bottle's colour alone, with its place in the masked text."""
    place = 0
    mentions = iter([mention for word, mention in named_at(parsed) if word in MASKS])
    masked = _named_by_colour(parsed.plain.strip(" .!,"), household)
    plain = parsed.plain.strip(" .!,").split()
    for index, word in enumerate(masked.split()):
        if word == "PRODUCT":
            yield place, Thing("bottle", _of_colour(plain[index], household) or "")
        elif word in MASKS:
            mention = next(mentions, None)
            thing = _product(mention) if mention is not None else None
            if thing is not None and word in _PRODUCTS:
                yield place, thing
        place += len(word) + 1


def _product(mention: Mention) -> Thing | None:
    """The one product that a name stands for; None: it stands for none, or for several."""
    for kind in ("bottle", "stock", "agent"):
        found = [thing for thing in mention.things if thing.kind == kind]
        if found:
            return found[0] if len(found) == 1 else None
    return None


_BEFORE_A_COLOUR = frozenset(
    {
        "",
        ",",
        "the",
        "my",
        "was",
        "is",
        "not",
        "with",
        "used",
        "from",
        "no",
        "that",
        "it",
        "meant",
        "mean",
        "than",
        "of",
        "or",
        "been",
    }
)
_AFTER_A_COLOUR = frozenset(
    {
        "",
        ",",
        "not",
        "instead",
        "and",
        "but",
        "by",
        "one",
        "rather",
        "it",
        "was",
        "bottle",
        "after",
        "in",
        "or",
        "?",
        "i",
        "actually",
    }
)


def _named_by_colour(plain: str, household: Household) -> str:
    """ "Not the pink": a colour that stands for its bottle, masked word for word."""
    words = plain.split()
    for index, word in enumerate(words):
        after = words[index + 1] if index + 1 < len(words) else ""
        before = words[index - 1] if index else ""
        if before in _BEFORE_A_COLOUR and after in _AFTER_A_COLOUR and _of_colour(word, household) is not None:
            words[index] = "PRODUCT"
    return " ".join(words)


def _of_colour(word: str, household: Household) -> str | None:
    bottles = [bottle.name for bottle in household.bottles if bottle.colour == word]
    return bottles[0] if len(bottles) == 1 else None


def _of(thing: Thing, slots: Slots) -> Slots:
    """The slots with that product and no other."""
    bare = replace(slots, bottles=(), stocks=(), agents=(), choices=(), unknown=())
    if thing.kind == "bottle":
        return replace(bare, bottles=(thing.name,))
    return replace(bare, stocks=(thing.name,)) if thing.kind == "stock" else replace(bare, agents=(thing.name,))


def _sprayed(look: Look, thing: Thing | None) -> Reading:
    slots = replace(look.slots("done"), steps=("apply",), corrects=thing is None or not makes_gas_there(look, thing))
    slots = _of(thing, slots) if thing is not None else slots
    last = look.world.talk.last
    told = last.values.get("enclosures") if last is not None and last.intent in ("done", "rewet") else None
    rounds = look.world.state.rounds
    if not slots.enclosures and told and all(is_open(rounds.get(n)) and "apply" in rounds[n].done for n in told):
        slots = replace(slots, enclosures=tuple(told))
    return look.reading("done", slots, BY_RULE)


def _filled(look: Look, fill: Reading, said: _Said) -> Reading | None:
    """The fill told before, of the other bottle, or with the other product."""
    if said.thing is None or not (said.fills or said.tells):
        return None
    slots = fill.slots
    if said.thing.kind == "bottle":
        if slots.bottles == (said.thing.name,):
            return None
        named = slots.agents or slots.stocks or slots.volumes
        mixes = slots.mixes if named else _said_mixes(look.world, slots)
        return look.reading("mixed", replace(slots, bottles=(said.thing.name,), mixes=mixes), BY_RULE)
    return look.reading("mixed", replace(_of(said.thing, slots), bottles=slots.bottles), BY_RULE)


def _said_mixes(world: World, slots: Slots) -> tuple[Mix, ...]:
    """The mixes that the keeper said themselves: the other bottle has a ratio of its own."""
    before = world.talk.last_reading
    return slots.mixes if before is not None and before.slots.mixes else ()


def _begun(look: Look, thing: Thing, homes: tuple[str, ...]) -> Reading:
    round_ = look.world.state.rounds[homes[0]]
    slots = replace(_of(thing, look.slots("start")), enclosures=homes, start_over=True, corrects=True)
    organisms = (round_.organism,) if round_.organism is not None else ()
    slots = replace(slots, organisms=organisms, clean_as=round_.job or None)
    return look.reading("start", slots, BY_RULE)


_PRODUCTS = frozenset({"BOTTLE", "STOCK", "AGENT"})
WORDS = words_in(_WRONG, _NOT_THAT, _TELLS)
"""Words that the rules here turn on."""
