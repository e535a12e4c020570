"""What is told later on and takes a wet time or an airing back: too short, the wrong mix, dirty again.

None of it names a step. The wet time is then one that didn't hold; the airing is open until the keeper says that
nothing smells.
"""

from __future__ import annotations

from dataclasses import replace

from assistant.contract import Slots
from assistant.core.quantities.amounts import Amount
from assistant.core.quantities.units import convert
from assistant.core.round.rounds import is_open
from assistant.understand.look import Look
from assistant.understand.may_be import is_told
from assistant.understand.named.unknown_names import OF_WHAT_NOBODY_KNOWS
from assistant.understand.steps.wrong_mix import mix_was_wrong
from assistant.understand.text.patterns import Pattern, words_in

_ONLY_SO_LONG = Pattern(
    r"\b(?:only|just|barely|hardly|about)? ?(?:stayed|kept|was|left) (?:it )?(?:only |just |barely |about )*(?:wet )?"
    r"(?:only |just |barely |about |for )*DURATION\b|\bonly (?:waited|gave it|had it on|left it)(?: \w+)* DURATION\b",
    "DURATION",
)
_NO_WET_TIME = Pattern(
    r"\b(?:lied|made (?:it |that )?up|was wrong|fibbed|guessed|cheated) (?:about|on) (?:the )?(?:wet time|time"
    r"|timer|minutes"
    r"|waiting|hold)\b|\b(?:did not|never) (?:wait|time it|really wait|leave it)\b|\bskipped the (?:wait|wet time"
    r"|timer)\b",
    *("lied", "made", "wrong", "fibbed", "guessed", "cheated", "wait", "time", "leave"),
)
_NO_MIX = Pattern(
    r"\b(?:BOTTLE|bottle|it|that|mix|spray|stuff) (?:was|is|had|has|held)(?: \w+){0,2}? (?:only |just "
    r"|plain )+water\b"
    r"|\b(?:BOTTLE|bottle|sprayer) (?:was|had) (?:\w+ )?(?:empty|run out|ran out|almost nothing)\b"
    r"|\b(?:it|that|this|BOTTLE|the mix|mix) was (?:\w+ )?(?:old|an old|expired|out of date|past it|stale"
    r"|yesterday 's)"
    r"(?: (?:mix|batch|stuff|fill))?\b"
    r"|\b(?:mix|it|that|BOTTLE) was (?:\w+ )?(?:too weak|half strength|mixed wrong|diluted wrong"
    r"|the wrong strength)\b"
    r"|\b(?:misted|sprayed|wetted|topped|kept)(?: (?:it|that|them|everything|all of it|ENCLOSURE|the glass"
    r"|the walls?|again|wet|up|down|over))* with (?:just |only |some |plain |clean |a bit of "
    r"|a little )*water\b"
    r"|\badded (?:some |a bit of |a little |more )*water\b(?! to the (?:bottle|mix|BOTTLE))"
    r"|\b(?:mixed|diluted|made) (?:it|that) (?:up )?(?:wrong|too weak|too thin)\b",
    *(
        "water",
        "empty",
        "ran out",
        "run out",
        "old",
        "expired",
        "date",
        "past it",
        "stale",
        "yesterday",
        "weak",
        "half",
    ),
    *("wrong", "nothing", "thin"),
)
_DIRTY_AGAIN = Pattern(
    r"\b(?:peed|pooped|pooed|pood|pissed|weed|shat|crapped|urinated|threw up|vomited|puked|sneezed|been sick"
    r"|was sick)"
    r" (?:in|on|into|inside|all over) (?:it|there|that|the \w+|ENCLOSURE)\b"
    r"|\b(?:cat|dog|kitten|puppy|child|kid|toddler|son|daughter|baby|hamster|rabbit|bird|ANIMAL|snake|gecko|lizard)"
    r"(?: \w+){0,2}? (?:was|got|has been|jumped|climbed|slept|sat|walked|lay|went|crawled"
    r"|trampled)(?: \w+){0,2}? (?:in|on"
    r"|into|inside|through|over) (?:it|there|that|the (?:clean|tank|box|cage|tub|viv\w*))\b"
    r"|\b(?:dropped|spilled|spilt|tipped|got) (?:some |the |his |her |a |dirty )*(?:dirt|soil|substrate|food|mice"
    r"|mouse|rat"
    r"|blood|poo|poop|droppings|urates|muck) (?:in|on|into|inside) (?:it|there|the \w+)\b",
    *("peed", "poo", "piss", "weed", "shat", "crap", "urinat", "threw", "vomit", "puke", "sneez", "sick", "cat", "dog"),
    *("kitten", "puppy", "child", "kid", "toddler", "son", "daughter", "baby", "hamster", "rabbit", "bird", "ANIMAL"),
    *("snake", "gecko", "lizard", "dropped", "spil", "tipped", "got"),
)
_PUT_ON = Pattern(
    r"\b(?:polished|cleaned|wiped|sprayed|used|buffed|washed|went over|treated|put|finished)\b",
    *("ed", "used", "put", "went"),
)


def wet_time_was_none(look: Look) -> Slots | None:
    """The slots of a wet time that is said not to have held, or of what has got dirty again; None: nothing is told."""
    plain = look.parsed.plain
    if not any(is_open(r) and "apply" in r.done for r in look.world.state.rounds.values()) or not _is_told(plain):
        return None
    short = _ONLY_SO_LONG.search(plain) is not None and _too_short(look)
    wrong = mix_was_wrong(look) or _NO_MIX.search(plain) is not None
    if not (short or wrong or _NO_WET_TIME.search(plain) or _DIRTY_AGAIN.search(plain)):
        return None
    slots = look.slots("dried_early")
    homes = slots.enclosures if "ENCLOSURE" in plain else ()  # "a snake was in it" names no tank
    return replace(slots, enclosures=homes, choices=(), too_early=True, bottles=(), part=None)


def _too_short(look: Look) -> bool:
    spans = [found.value for found in look.parsed.amounts.found if found.kind == "duration"]
    said = [convert(span, "s").amount for span in spans if isinstance(span, Amount)]
    rounds = look.world.state.rounds.values()
    needed = [r.hold.seconds for r in rounds if is_open(r) and r.hold is not None and r.hold.seconds is not None]
    return bool(said and needed) and max(said) < max(needed)


def something_else_put_on(look: Look) -> Slots | None:
    """The slots of a product that nobody knows, put on what is being cleaned: "polished it with glass cleaner"."""
    plain = look.parsed.plain
    rounds = [r for r in look.world.state.rounds.values() if is_open(r)]
    if not rounds or not _is_told(plain) or OF_WHAT_NOBODY_KNOWS.search(plain) is None or not _PUT_ON.search(plain):
        return None
    if not any("apply" in r.done for r in rounds) or look.slots("done").agents:
        return None
    return replace(look.slots("done"), steps=("apply",), agents=("other",), bottles=(), stocks=())


def _is_told(plain: str) -> bool:
    return not plain.endswith("?") and (is_told(plain) or _DENIED.search(plain) is not None)


_DENIED = Pattern(r"\b(?:did not|never|forgot)\b", "not", "never", "forgot")
WORDS = words_in(_ONLY_SO_LONG, _NO_WET_TIME, _NO_MIX, _DIRTY_AGAIN)
"""Words that the rules here turn on."""
