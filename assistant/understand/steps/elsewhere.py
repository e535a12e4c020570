"""Another enclosure than the one told of: "no, just the window cage" after "sprayed both", or "did the box as well"."""

from __future__ import annotations

import re
from dataclasses import replace

from assistant.contract import Outcome, Slots
from assistant.understand.look import Look
from assistant.understand.named.by_kind import called_by_its_kind, open_homes, words_of_home
from assistant.understand.named.names import HOMES
from assistant.understand.text.patterns import Pattern

_HOME = f"(?:{'|'.join(sorted(HOMES))})"
_STEP = r"(?:did|sprayed|rinsed|washed|dried|cleared|wiped|moved out|emptied|cleaned|started|meant|mean|said)"
_OPENS = Pattern(
    r"^(?:(?:no|nope|wait|sorry|oops|oh|hang on|hold on|whoops|actually|not both|argh|my mistake|my bad|but"
    r"|(?:scrap|scratch|forget|strike|cancel) that) ,? ?)+"
)
_CORRECTS = Pattern(
    rf"^(?:(?:i (?:just |only )?{_STEP}|it was|that was|it is|i am (?:at|on|doing|in)|just|only|all|for|in|wrong one"
    rf"|wrong {_HOME}|the other one|,) ?)*(?:the |my )?(?P<home>(?:ENCLOSURE|ANIMAL)(?: 's (?:\w+ )?{_HOME})?"
    rf"|\w+ one|(?:\w+ )?{_HOME}"
    rf"|neighbou?r|wrong \w+"
    rf"|next door)"
    rf"(?: 's)?(?: (?:that )?i (?:just )?{_STEP})?"
    r"(?P<tail> (?:i meant|i mean|only|not both|that was|it was|instead)| ,? ?not (?:this|that|it|both|this one"
    r"|that one"
    r"|the (?:ENCLOSURE|ANIMAL|\w+)|ENCLOSURE|ANIMAL))*(?: ?[.!])*$"
)
_MARKED = Pattern(
    rf"^(?:i (?:meant|mean)|only|just the|wrong (?:one|{_HOME}))\b|\bnot (?:this|that|both|the|ENCLOSURE)\b"
    rf"|\bi meant$"
    rf"|^it was (?:the |my )?(?:ENCLOSURE|ANIMAL) (?:that )?i (?:just )?{_STEP}$"
)
"""What corrects without a "no" in front: "I meant basil", "only the river tank"."""


_NOT_THIS = Pattern(
    r"^not (?:the |my |in )*(?:ENCLOSURE|ANIMAL)(?: ?,| but)? (?:it was |in |but )*(?:the |my )?(?P<home>ENCLOSURE"
    r"|ANIMAL)$"
)
""" "Not the river tank, the desert box"."""
_TOO = Pattern(
    rf"(?:(?:and|also|so is|so are|same (?:for|with)|the same (?:for|with)|oh|,) )*(?:the |my )?(?:ENCLOSURE"
    rf"|ANIMAL|{_HOME})(?: 's)?"
    r"(?: (?:and|,) (?:the |my )?(?:ENCLOSURE|ANIMAL)(?: 's)?)*(?: (?:too|as well|also))+"
    r"|(?:and|same (?:for|with)|the same (?:for|with)) (?:the |my )?(?:ENCLOSURE|ANIMAL)"
    r"|(?:(?:no|actually|sorry|oh) ,? ?)*(?:both|all of them)(?: of them)?(?: actually| i mean| i meant)?"
)
""" "The desert box too", "no, both", right after a step of one."""


def _corrects(look: Look) -> re.Match[str] | None:
    plain = look.parsed.plain.strip(" .!")
    opened = _OPENS.match(plain)
    rest = plain[opened.end() :] if opened is not None else plain
    if (not_this := _NOT_THIS.match(rest)) is not None:
        return not_this
    return _CORRECTS.match(rest) if opened is not None or _MARKED.search(rest) else None


def begun_elsewhere(look: Look) -> Slots | None:
    """ "No, the window cage", right after a clean was begun: the same there, and none where it was begun.

    None: no such thing.
    """
    last, before = look.world.talk.last, look.world.talk.last_reading
    if last is None or before is None or last.intent != "start" or last.outcome is not Outcome.ANSWER:
        return None
    begun = tuple(last.values.get("enclosures") or ())
    if not begun or before.intent != "start" or _corrects(look) is None or look.claims.done:
        return None
    named = _meant(look)
    if not named or named == begun:
        return None
    return replace(before.slots, enclosures=named, corrects=True, start_over=None)


def _meant(look: Look) -> tuple[str, ...]:
    """The enclosure that is said to be meant, without the one that is said not to be."""
    slots = look.slots("done")
    if len(slots.enclosures) < 2 or "not" not in look.parsed.plain.split():
        return slots.enclosures
    last = _NOT_THIS.match(_OPENS.sub("", look.parsed.plain.strip(" .!"))) is not None
    return slots.enclosures[-1:] if last else slots.enclosures[:1]


def meant_elsewhere(look: Look) -> Slots | None:
    """The steps recorded by the turn before and the enclosure they are said to be of instead; None: no such thing.

    Its enclosures are empty where it isn't told which: then the turn is only taken back.
    """
    last, before = look.world.talk.last, look.world.talk.last_reading
    if last is None or before is None or last.intent != "done" or last.outcome is not Outcome.ANSWER:
        return None
    recorded = last.values.get("enclosures") or ()
    found = _corrects(look)
    if found is None or last.values.get("recorded") is not True or set(look.claims.done) - set(before.slots.steps):
        return None
    named = _meant(look) or _by_its_looks(found["home"], look)
    if len(named) > 1 or tuple(recorded) == named:
        return None
    return replace(before.slots, enclosures=named)


_NOT_THERE = Pattern(
    r"^(?:(?:not|but not|except|all but|undo (?:that|it)|take (?:that|it) back|cancel (?:that|it)) (?:for |of |on |in"
    r" )?"
    r"(?:the |my )?|(?:scrap|scratch|strike) (?:that|it) (?:for|of|on|in) (?:the |my )?)(?:ENCLOSURE|ANIMAL)(?: 's)?"
    r"(?: yet| though| no)*$"
)
""" "Actually not the window cage", "undo that for the window cage", after a step of several."""
_ONLY_ONE_OF_THEM = Pattern(
    r"\b(?:both|all)\b.*\b(?:no|sorry|wait|actually|i mean|oops)\b.*\b(?:just|only) (?:the |my |for )*(?:ENCLOSURE"
    r"|ANIMAL)$"
)
""" "Rinsed both, no sorry, just the river tank"."""


def not_done_there(look: Look) -> Slots | None:
    """The steps recorded by the turn before, taken back of one of its enclosures; None: nothing of the kind."""
    last, before = look.world.talk.last, look.world.talk.last_reading
    if last is None or before is None or last.intent != "done" or last.values.get("recorded") is not True:
        return None
    plain = look.parsed.plain.strip(" .!")
    opened = _OPENS.match(plain)
    if _NOT_THERE.match(plain[opened.end() :] if opened is not None else plain) is None:
        return None
    named = look.slots("undo").enclosures
    if len(named) != 1 or named[0] not in (last.values.get("enclosures") or ()) or not before.slots.steps:
        return None
    return replace(look.slots("undo"), enclosures=named, steps=before.slots.steps[:1], corrects=True)


_NO_THE_OTHER = Pattern(
    r"\b(?:ENCLOSURE|ANIMAL)(?: 's)?(?: \w+)? ?,? ?(?:(?:no|nope|sorry|wait|oops|i mean|i meant|or rather|rather"
    r"|scratch that"
    r"|make that|that is|not that|not it|actually|um|er) ?,? ?)+(?:the |my |in |on |for |of |it was |it is )*"
    r"(?:ENCLOSURE|ANIMAL)(?: 's)?(?: \w+)?$"
)
""" "Sprayed the river tank, no, the desert box"."""


def only_one_of_them(slots: Slots, look: Look) -> Slots:
    """The same, but of the one that is named last."""
    plain = look.parsed.plain.strip(" .!?")
    if len(slots.enclosures) > 1 and not slots.apart and _NO_THE_OTHER.search(plain) is not None:
        return replace(slots, enclosures=slots.enclosures[-1:])
    if not slots.every_enclosure or _ONLY_ONE_OF_THEM.search(look.parsed.plain.strip(" .!")) is None:
        return slots
    return replace(slots, every_enclosure=False)


def done_there_too(look: Look) -> Slots | None:
    """The steps told by the turn before, told of another enclosure as well; None: nothing of the kind.

    Those that weren't recorded, since something before them is asked about, only where the other one is named.
    """
    last, before = look.world.talk.last, look.world.talk.last_reading
    if last is None or before is None or last.intent != "done" or "recorded" not in last.values:
        return None
    if not before.slots.steps or _TOO.fullmatch(look.parsed.plain.strip(" .!")) is None:
        return None
    slots = look.slots("done")
    meant = slots.enclosures or called_by_its_kind(look.parsed.plain, look.world)
    named = tuple(name for name in meant if name not in (last.values.get("enclosures") or ()))
    if last.values["recorded"] is not True and not named:
        return None
    others = named or tuple(home.name for home in open_homes(look.world) if home.name not in last.values["enclosures"])
    if not others or slots.choices:
        return None
    return replace(slots, enclosures=others, every_enclosure=False, steps=before.slots.steps, wiped=before.slots.wiped)


_IT_AGAIN = Pattern(r"(?:(?:yes|ok|i|have|just|and|so|now) )*\w+ (?:it|that one|this one)(?: now| too| again)?$")


def the_same_one(slots: Slots, intent: str, look: Look) -> Slots:
    """ "Rinsed it", right after "rinsed the window cage": that one, and no other that waits to be rinsed."""
    last = look.world.talk.last
    if intent != "done" or last is None or last.values.get("recorded") is not True or slots.every_enclosure:
        return slots
    just = tuple(last.values.get("enclosures") or ())
    again = bool(slots.steps) and set(slots.steps) <= set(last.values.get("steps") or ())
    if slots.enclosures or slots.choices or len(just) != 1 or not again:
        return slots
    return replace(slots, enclosures=just) if _IT_AGAIN.match(look.parsed.plain.strip(" .!")) else slots


_THE_OTHER = Pattern(rf"\bthe other (?:one|{_HOME})\b", "other")


def the_other_one(slots: Slots, intent: str, look: Look) -> Slots:
    """ "Dried the other one", of two cleans: the one that the turn before wasn't of."""
    last = look.world.talk.last
    homes = [home.name for home in open_homes(look.world)]
    if (
        intent not in ("done", "rewet", "dried_early", "still_smells", "return_check")
        or len(homes) != 2
        or last is None
    ):
        return slots
    if slots.enclosures or slots.choices or _THE_OTHER.search(look.parsed.plain) is None:
        return slots
    just = last.values.get("enclosures") or (last.values.get("enclosure"),)
    others = tuple(name for name in homes if name not in just)
    return replace(slots, enclosures=others, unknown=()) if len(others) == 1 else slots


_ANOTHER_ONE = Pattern(
    rf"\bthe (?:other|wrong|next) (?:one|{_HOME})\b(?! bottle)|\bnext door\b|\b(?:another|a different) (?:one"
    rf"|{_HOME})\b",
    *("other", "wrong", "next", "different"),
)


def of_another_one(slots: Slots, look: Look) -> bool:
    """ "Sprayed the other tank", with no other one open: whether it is of the one that is, only the keeper knows."""
    return not slots.enclosures and _ANOTHER_ONE.search(look.parsed.plain) is not None


def _by_its_looks(said: str, look: Look) -> tuple[str, ...]:
    """ "The glass one", "the cage": the only enclosure with an open clean that is made of that, or called so."""
    word = said.split()[-1] if said.split()[-1] != "one" else said.split()[0]
    fitting = [home.name for home in open_homes(look.world) if word in words_of_home(home)]
    return tuple(fitting) if len(fitting) == 1 else ()
