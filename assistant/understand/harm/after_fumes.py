"""What is asked and told in the hours after fumes or a gas: who is out, who is still inside, when to go back in.

"May I go back in?" is then about the room and no animal's return; "can she go back in?" stays with the clean.
"""

from __future__ import annotations

from assistant.contract import World
from assistant.core.harms import gas_or_fumes
from assistant.core.harms import latest as latest_harm
from assistant.core.round.rounds import is_open
from assistant.understand.harm.cries import Cry
from assistant.understand.harm.patterns import ANIMAL
from assistant.understand.text.patterns import Pattern

_LEAD = r"^(?:(?:so|and|but|ok|okay|right|now|then|yes|phew|well|please|um) ,? ?)*"
_ROOM = (
    r"(?: (?:there|here|now|yet|again|today|tonight|soon|in|inside|(?:the|my|that|our) (?:\w+ )?"
    r"(?:room|house|kitchen|bathroom|shed|garage)))*"
)
_WE = (
    r"(?:i|we|you|my \w+|the (?:kids?|children|others)|any ?(?:one|body)|some ?(?:one|body)|every ?(?:one|body)"
    r"|people|anyone else)"
)
_GO_IN = Pattern(
    rf"(?:^.*[,.;] ?)?{_LEAD[1:]}(?:when |how soon |how long (?:before|until|till) |after how long )?"
    rf"(?:(?:can|could|may|should|shall|do|must) {_WE}|{_WE} (?:can|could|may)|(?:is|will|would) it (?:be )?(?:now )?"
    rf"(?:safe|ok|okay|fine|alright)(?: now| yet)?(?: for {_WE})? to|am i (?:ok|okay|allowed) to|"
    r"(?:safe|ok|okay) to) (?:now |just |all )*(?:go|get|come|walk|be|step|head|move|nip|pop|enter|re enter|return"
    rf"|breathe|use)(?: back)?(?: in(?:side|to)?)?{_ROOM}(?: ?[.?!])*$"
)
_STAY_OUT = Pattern(
    rf"{_LEAD}(?:for )?how long (?:do|should|must|shall|have|will) {_WE} (?:have |need )?(?:to )?"
    r"(?:stay|keep|be|wait|remain|stand) (?:out|outside|away|clear)\b"
    rf"|{_LEAD}(?:when (?:is|will) it (?:be )?safe|is it safe)(?: (?:again|now|yet|in there|to breathe))*"
    r"(?: ?[.?!])*$"
    rf"|{_LEAD}(?:is|are|has|have) (?:the |all the )?(?:gas|fumes|air)(?: all)? (?:gone|cleared|clear|safe|ok|fine)"
    r"(?: now| yet)*(?: ?[.?!])*$"
)
_IT_GOES_BACK = Pattern(
    rf"{_LEAD}(?:when )?(?:can|could|may|should) (?:(?:the |my )?(?:\w+ )?(?:{ANIMAL}|ENCLOSURE|animals)|he|she|they"
    rf"|it) (?:go|come|get|move|be)(?: back)?(?: in(?:side|to)?| home)?{_ROOM}(?: ?[.?!])*$"
)
"""Asked of an animal with no clean open: there is nothing but the air of the room to wait for."""
_I_AM_OUT = Pattern(
    rf"{_LEAD}(?:i am|we are|i have got|i got|we got|i went|i have gone|we have gone|everyone is|everybody is"
    r"|everyone 's|everybody 's)(?: all| both| now| safely)* out(?:side)?(?: of (?:there|it|the \w+))?"
    r"(?: now| safe\w*| again)*(?: ?[.!])*$"
    rf"|{_LEAD}(?:i|we) (?:have )?(?:all |both )?(?:left|got out of|come out of|came out of) (?:the )?"
    r"(?:room|house|building)\b"
)
_FETCH = Pattern(
    r"\b(?:can|could|should|shall|may|must|do) (?:i|we) (?:"
    r"(?:go|run|nip|pop|just|quickly|back|in|inside|and|to|at least) )*"
    r"(?:get|fetch|grab|rescue|save|take|bring|move|carry) "
    rf"(?:(?:the |my |our )?(?:\w+ )?(?:{ANIMAL}|ENCLOSURE|animals)|him|her)"
    r"(?: out(?:side)?| away| first| now| quickly)*(?: ?[.?!])*$"
    r"|\b(?:can|could|should|shall|may|must|do) (?:i|we) (?:(?:go|run|back|in|and) )*"
    r"(?:get|fetch|take|bring|move|carry) them (?:out|outside)\b"
    r"|\b(?:i am|i will|going to|i have to|let me) (?:going |go |just |run )*(?:back in|in again|in)(?: there)? "
    r"(?:for|to get|and get)\b"
)


def after_fumes(text: str, world: World) -> Cry | None:
    """The cry that a masked text is in the hours after fumes or a gas; None: it is about something else."""
    told = gas_or_fumes(world.talk.harms, world.now)
    if told is None:
        return None
    cleaning = any(is_open(round_) for round_ in world.state.rounds.values())
    if _GO_IN.match(text) or _STAY_OUT.match(text) or (not cleaning and _IT_GOES_BACK.match(text)):
        return Cry("splash", "lungs", "person", got_out=True)
    latest = latest_harm(world.talk.harms, world.now)
    if latest is None or latest.place != "lungs":
        return None
    if _I_AM_OUT.match(text):
        return Cry("splash", "lungs", "person", got_out=True)
    return Cry("splash", "lungs", "animal") if _FETCH.search(text) else None
