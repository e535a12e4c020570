"""What is told of the window and since when: "it was shut the whole time", "blew shut", "been open since I rinsed".

How many openings there are is read by `openings`, from what is said to be open or shut by now.
"""

from __future__ import annotations

from datetime import datetime, timedelta

from assistant.contract import SaidTime, World
from assistant.core.air.airing import AIR_CHANGES, OPENINGS
from assistant.core.quantities.amounts import Amount
from assistant.core.quantities.units import convert
from assistant.core.round.rounds import is_open
from assistant.understand.air.openings import OF_NO_WINDOW, openings_in
from assistant.understand.parsing import Parsed
from assistant.understand.text.asking import ASKED
from assistant.understand.text.patterns import Pattern
from assistant.understand.times.moments import moment
from assistant.understand.times.said_times import when_in

_WINDOW = r"(?:windows?|doors?|skylight)"
_THE_WINDOW = rf"(?:the |a |my |that |this |our )?(?:\w+ )?{_WINDOW}"
_IS = r"(?: (?:is|was|'s|are|were|has|have|had|been|just|all))*"
_SHUT = Pattern(
    rf"\b{_WINDOW}{_IS} (?:blew|blown|slammed|fell|fallen|banged|swung|slid|got|gone|went|pushed|pulled)(?: itself)?"
    rf"(?: back)? (?:shut|closed|to)\b|\b(?:shut|close|closed|closing|shutting)(?: up)? {_THE_WINDOW}\b"
    rf"|\b{_WINDOW}{_IS}(?: \w+){{0,2}}? (?:shut|closed)\b"
    rf"|\b(?:forgot|never|did not|have not|had not)(?: \w+){{0,2}}? (?:opened|open|opening) {_THE_WINDOW}\b"
    rf"|\bnobody (?:opened|had opened) {_THE_WINDOW}\b|\bthought (?:i|we|he|she) (?:had )?opened {_THE_WINDOW} but\b"
    rf"|\b{_WINDOW}{_IS} (?:never|not)(?: been| even| really)? open(?:ed)?\b|\bnever aired\b",
    *("window", "door", "skylight", "aired"),
)
_SOMEBODY = (
    r"(?:(?:my |the )?(?:wife|husband|partner|mum|mom|dad|son|daughter|kids?|child|brother|sister|flatmate|wind"
    r"|draught|cat|dog)|someone|somebody|he|she|they|my \w+)"
)
_IT_SHUT = Pattern(
    rf"^(?:(?:oh|no|sorry|so|and|but|i|we|have|had to|{_SOMEBODY}|just|then) ?,? ?)*(?:shut|closed|close) "
    r"(?:it|one(?: of (?:them|the two))?)\b(?! down| up)|\bclosed (?:it |everything )?up$"
    rf"|^(?:\w+ ){{0,2}}?{_SOMEBODY}?(?: just)? ?(?:blew|blown|slammed|pushed|pulled|banged|knocked) (?:it|them"
    r"|both|all)"
    r"(?: \w+)? (?:shut|closed|to)\b"
    r"|^(?:it is |it was )?(?:only|just|barely) (?:open )?(?:a|an) (?:crack|slit|inch|tiny bit)(?: open)?$"
    r"|^(?:it is|they are|both|both are|both of them are|all) (?:shut|closed)$|\bnever opened it\b"
    r"|\bit is (?:not|no longer) open (?:any ?more|now)\b|\bit is (?:shut|closed) (?:again|now)\b"
    rf"|\b(?:so|and|then|,) ?(?:i|we|{_SOMEBODY})(?: have| has| had| just| to)* (?:shut|closed?) (?:it|them|both|one)\b"
    r"|\b(?:no|wait|but)\b.*\b(?:i|we) (?:have |had to |just )*(?:shut|closed) it\b"
    r"|\bwindow\b.*, ?(?:but )?it is not$|\bonly open for (?:a (?:minute|moment|bit|second)|DURATION)\b"
    r"|\bthen (?:one|it|both|they) (?:\w+ )?(?:blew|slammed|fell|banged) (?:shut|to|closed)\b"
    rf"|^(?:i |we )?(?:{_SOMEBODY} )?(?:has |have |had |just )*(?:shut|closed) (?:them|both|the lot)(?: of them)?\b"
    r"|^(?:(?:oh|but|and|now|only) )*one(?: of them)?(?: is| 's| got| blew| has blown)? (?:shut|closed)\b",
    *("it", "only", "then", "shut", "closed", "crack", "slit", "inch", "tiny"),
)
_NOT_AFTER_ALL = Pattern(
    r"^(?:(?:no|nope|oh|wait|sorry|actually|hang on|,) ?,? ?)+(?:it|they|that|the window)(?: is| 's| was| are)? ?"
    r"(?:not|n't|shut|closed)(?: open)?(?: (?:actually|after all|sorry|yet|at all))?$"
)
""" "No it's not", right after "window's open"."""
_ELSEWHERE = Pattern(
    rf"\b{_WINDOW} (?:(?:that |which )?(?:i|we|he|she) )?(?:(?:had |have )?opened |open )?(?:was|is|were|are)"
    r" (?:the one )?(?:in|of) (?:the|my|another|a) (?!room\b|same|right|ENCLOSURE)(?:\w+ ){0,2}"
    r"(?:kitchen|bathroom|bedroom|hall|hallway|landing|toilet|loo|garage|lounge|office|room|study|house|porch)\b",
    *("window", "door", "skylight"),
)
""" "The window I opened was in the kitchen": none here."""
_NONE = Pattern(
    r"\b(?:no|not a|without a|without any|not any) (?:window|windows|skylight)\b(?! (?:is |are )?(?:open|opened))"
    r"|\bwindows? (?:does not|do not|will not|can not|could not|would not|never) open(?:s)?\b"
    r"|\bwindows?(?: is| are| 's)? (?:painted|stuck|nailed|screwed) (?:shut|closed)\b",
    "window",
    "skylight",
)
""" "No window in here": shut all along."""
_OPEN = Pattern(
    rf"\b(?:crack|cracked|cracking|tilt|tilted|opened|opening)(?: up| open)? {_THE_WINDOW}\b"
    rf"|^(?:now |then |and |so )*(?:i|we) (?:now )?(?:open|crack) {_THE_WINDOW}\b"
    rf"|\b{_WINDOW}{_IS}(?: \w+)? (?:ajar|(?<!door is )(?<!door 's )cracked|tilted|on the latch|on tilt|open|opened)\b",
    *("window", "door", "skylight"),
)
_IT_OPEN = Pattern(
    r"^(?:(?:oh|no|sorry|so|and|but|i|we|have|just|then|only) ?,? ?)*(?:opened|reopened) it\b(?! and)"
    r"|^(?:just |only )one (?:is )?open(?: now)?$|\bit was (?:shut|closed) until (?:just )?now\b",
    *("opened it", "one ", "until"),
)
_ONLY_SINCE = Pattern(
    r"\bonly (?:just )?(?:now )?(?:opened|got round to opening|open)\b(?!.*\b(?:one|for|half)\b)"
    r"|\b(?:shut|closed) until (?:just )?now\b",
    *("only", "until"),
)
""" "I only opened it now": it was shut before."""
_NOT_TOLD = Pattern(
    rf"{ASKED}"
    r"|\b(?:going to|about to|will|need to|want to|have to (?!shut|close)|let me|should|if|unless|until|once|when|"
    r"(?<!right )(?<!straight )(?<!just )after(?! DURATION)|before)\b(?! i started)"
)
_ALL_ALONG = Pattern(
    r"\b(?:the whole|all the|the entire) time\b|\ball (?:along|day|night|morning|afternoon|evening)\b"
    r"|\b(?:never|forgot|did not|had not|already|always)\b"
    r"|\bsince (?:i|we|the start|the beginning|before|then|rinsing|spraying|drying|my)\b"
    r"|\bfrom the (?:start|beginning)\b|\bwhen i started\b"
)
_WAS_SHUT = Pattern(
    rf"\b{_WINDOW} (?:was|were|had been)(?: \w+){{0,2}}? (?:shut|closed|not open)\b|\b(?:nobody|thought)\b"
    r"|\ba while ago\b|\b(?:too|hours|ages) (?:early|ago)\b|\b(?:right|straight|just) after\b|\bsince\b"
    rf"|\b{_SOMEBODY}(?: \w+){{0,2}} (?:shut|closed)\b"
    r"|\b(?:blew|blown|slammed|swung|fell|banged) (?:\w+ )?(?:shut|closed|to)\b|\b(?:crack|slit|inch|tiny bit)\b"
)
_AFTER = Pattern(r"\bafter (?:about |only |just )*DURATION\b", "after")
""" "Shut after five minutes": so long after it was opened."""
_FOR = Pattern(r"\b(?:for|these|the (?:last|past)|about) (?:about |over |nearly )?DURATION\b", "DURATION")
_OF_THE_AIRING = ("air_time", "time_left", "next", "status", "return_check", "still_smells")


def windows_told(parsed: Parsed, world: World) -> int | None:
    """How many windows or doors are told of as open, 0 as shut; None: nothing is told, or no clean here has to air."""
    plain = parsed.plain
    if not any(is_open(one) and "air" in one.steps for one in world.state.rounds.values()):
        return None
    if (_NOT_TOLD.search(plain) is not None and not _ONLY_SINCE.search(plain)) or OF_NO_WINDOW.search(
        plain
    ) is not None:
        return None
    if (
        openings_in(plain) == 0
        or not_open_after_all(plain, world)
        or _NONE.search(plain) is not None
        or _SHUT.search(plain) is not None
        or ((_spoken_of(world) or _NAMED.search(plain) is not None) and _IT_SHUT.search(plain) is not None)
    ):
        return _but_one(plain, world) if _ONE_OF_THEM_SHUT.search(plain) else 0
    if _OPEN.search(plain) is not None or (_spoken_of(world) and _IT_OPEN.search(plain) is not None):
        return openings_in(plain) or 1
    return None


def not_open_after_all(plain: str, world: World) -> bool:
    """Whether what was told to be open is said not to be, or not in this room."""
    before = world.talk.last_reading
    just_told = before is not None and bool(before.slots.openings)
    elsewhere = _ELSEWHERE.search(plain) is not None and not _is_the_room(plain, world)
    return elsewhere or (just_told and _NOT_AFTER_ALL.fullmatch(plain.strip(" .!")) is not None)


def _is_the_room(plain: str, world: World) -> bool:
    """Whether the room named is the one that airs."""
    room = world.household.room
    name = room.name.casefold() if room is not None else ""
    return bool(name) and (name in plain or not set(name.split()).isdisjoint(_ROOMS.findall(plain)))


_ROOMS = Pattern(r"\b(?:kitchen|bathroom|bedroom|hall|hallway|landing|garage|lounge|office|study|porch)\b")
_NAMED = Pattern(rf"\b{_WINDOW}\b", "window", "door", "skylight")
_ONE_OF_THEM_SHUT = Pattern(
    r"\b(?:shut|closed|close) (?:just |only )?one(?: of (?:them|the \w+))?\b"
    r"|\bone(?: of them)?(?: is| 's| got| blew| has blown)? (?:shut|closed)\b",
    "one",
)


def _but_one(plain: str, world: World) -> int:
    """ "Shut one of them", "both open, then one blew shut": how many of those that stood open are left.

    None, where nothing was said of any.
    """
    told_open = openings_in(plain)
    if told_open:
        return told_open - 1
    rates = [
        one.openings[-1].air_changes_per_hour for one in world.state.rounds.values() if is_open(one) and one.openings
    ]
    stood = [many for many in range(len(OPENINGS)) if rates and _rate(many, world) <= min(rates)]
    return max(0, max(stood, default=1) - 1)


def _rate(many: int, world: World) -> float:
    return float(world.facts[AIR_CHANGES[OPENINGS[many]]].value)


def shut_before(plain: str) -> bool:
    """Whether the window is said to have been shut until it was opened."""
    return _ONLY_SINCE.search(plain) is not None


def stood_so_since(parsed: Parsed, openings: int, world: World) -> SaidTime | None:
    """Since when the windows have stood so; None: from now on.

    What nobody dates counts for an airing only from now, and against it from the start.
    """
    plain, now = parsed.plain, world.now
    when = parsed.when or when_in(parsed.tokens, bare=True)
    said = moment(when, now) if when is not None else None
    if said is not None and said.to_the == "minute":
        past = [at for at in (said.at, *said.others) if at <= now]
        if past:
            return SaidTime(min(past) if openings == 0 else max(past))
    spans = [found.value for found in parsed.amounts.found if found.kind == "duration"]
    if openings == 0 and len(spans) == 1 and isinstance(spans[0], Amount) and _AFTER.search(plain) is not None:
        return SaidTime(min(now, _opened(world) + timedelta(seconds=float(convert(spans[0], "s").amount))))
    if len(spans) == 1 and isinstance(spans[0], Amount) and _FOR.search(plain) is not None:
        return SaidTime(now - timedelta(seconds=float(convert(spans[0], "s").amount)))
    if openings == 0 and not_open_after_all(plain, world):
        return SaidTime(_begun(world), "part")
    if _ALL_ALONG.search(plain) is not None or (openings == 0 and (_WAS_SHUT.search(plain) or _NONE.search(plain))):
        return SaidTime(_begun(world), "part")
    return None


def _begun(world: World) -> datetime:
    """When the first step of any open clean was done."""
    return min(
        (at for one in world.state.rounds.values() if is_open(one) for at in one.done.values()), default=world.now
    )


def _opened(world: World) -> datetime:
    """When a window was last opened for any open clean."""
    opened = (one.openings[-1].at for one in world.state.rounds.values() if is_open(one) and one.openings)
    return max(opened, default=_begun(world))


def _spoken_of(world: World) -> bool:
    """Whether "it" may be the window: the airing was the last thing spoken of, or a window stands open."""
    last, before = world.talk.last, world.talk.last_reading
    spoken = last is not None and ("window" in last.say or "airing" in last.say or last.intent in _OF_THE_AIRING)
    return spoken or (before is not None and before.slots.openings is not None)
