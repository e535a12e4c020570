"""A product told, in whatever words, to have been on what is being cleaned: "did the last corner with the green".

Looked for by its parts, for there is no end to the words: a product, how it was used or came there, and where or what
for. It is a spraying with that product: the answer knows whether it makes gas there, only cleans, or starts anew.
"""

from __future__ import annotations

from dataclasses import replace

from assistant.contract import Reading, Slots, World
from assistant.core.round.rounds import is_open, is_sprayed
from assistant.understand.look import BY_RULE, Look
from assistant.understand.met.meeting import ASKED
from assistant.understand.named.by_colour import agents_of, products_by_colour
from assistant.understand.named.names import Thing
from assistant.understand.text.asking import ENDS_AS_ASKED
from assistant.understand.text.parts_of_it import PART, WHICH
from assistant.understand.text.patterns import Pattern

_SOME = (
    r"(?:(?:the|my|some|of|a|an|bit|little|drop|splash|rest|neat|just|only|that|this|touch|squirt|same|whole|wrong|dash"
    r"|spritz|old|any) )*"
)
_P = r"(?:AGENT|STOCK|BOTTLE)"
_HOME = r"(?:it|there|ENCLOSURE|(?:the |its )(?:\w+ )?(?:tank|cage|viv|vivarium|box|enclosure))"
_PLACE = (
    rf"(?:{_HOME}|(?:the |its )insides?|(?:(?:the|its|one|a|an|last|both|all) )*{WHICH}(?!floors?\b|shel){PART}\b"
    rf"|the (?:floor|shelf|ledge) (?:of|in) {_HOME})"
)
"""Itself, or a part of it; a floor or a shelf by itself may be the room's."""
_DID = (
    r"(?:used|using|did|done|doing|finished|cleaned|cleaning|wiped|wiping|rinsed|rinsing|sprayed|spraying|misted"
    r"|misting|spritzed|squirted|went over|gone over|touched up|hit|treated|scrubbed|polished|washed)"
)
_CAME = (
    r"(?:got knocked|was knocked|knocked|dripped|drifted|fell|dropped|leaked|leaking|ran|splashed|spilled|spilt|tipped"
    r"|trickled|landed|blew|got|went|came)"
)
_TOUCHED = Pattern(
    # used on it, for it, or all the while
    rf"\b(?:used|using) {_SOME}{_P} (?:\S+ )?(?:(?:on|in|for|over|inside) {_PLACE}"
    r"|(?:this|the) (?:whole|entire) time|all (?:along|this time)|to (?:rinse|clean|wipe|do|finish|spray|mist|wash))\b"
    rf"|\b(?:been|was|were|have|is) {_DID} (?:\w+ )?(?:with )?{_SOME}{_P}\b"
    rf"|\b(?:i|we|he|she) {_DID} (?:\S+ ){{0,2}}?with(?: was| is|'s)? {_SOME}{_P}\b"
    rf"|\b{_DID} (?:with )?(?:{_PLACE} )(?:\S+ )?with {_SOME}{_P}\b"
    rf"|\b{_PLACE} (?:i|we|he|she|was|were|got) (?:{_DID} )?(?:\S+ )?with {_SOME}{_P}\b"
    # put there, or come there of itself
    rf"|\b(?:squirt|spritz|splash|dab|spray|mist|blast|wipe|spot|drop|dash) of {_SOME}{_P} (?:on|in|over|onto|into)"
    rf" {_PLACE}"
    rf"|\b(?:splashed|spilled|spilt|dripped|dropped|knocked|tipped|squirted|slopped) {_SOME}{_P}"
    rf" (?:over )?(?:on|onto|in|into|over|inside|across) {_PLACE}"
    rf"|\b{_P} (?:has |have |have all |just |accidentally |must have )*{_CAME}(?: over| down| out| all)?"
    rf" (?:in|inside|in there|(?:in|into|on|onto|over|inside|across|down) {_PLACE})(?: and \w+|[ .!]*$)"
    rf"|\b(?:there is|there 's|found|have|has|with)(?: \w+){{0,2}}? {_SOME}(?:(?:puddle|pool|drips?|drops?|film"
    rf"|streaks?|splash(?:es)?|trace) of )?{_P}(?: \w+)? (?:in|on|inside|all over|over) {_PLACE}"
    # what it was, as it turns out
    rf"|^(?:(?:oh|no|god|shit|damn|oops|wait|hell|gosh|dear|sorry|argh|crap|help|and|but) ,? ?)+(?:it|that|this)"
    rf" (?:was|is) {_SOME}{_P}$",
    *("AGENT", "STOCK", "BOTTLE"),
)
_UNRINSED = Pattern(
    r"(?: and| but| ,)*(?: i| we)? (?:did not|never|have not|had not|without) (?:\w+ )?(?:rins|wip|wash)\w*(?: it"
    r"| that)?(?: off)?",
    "rins",
    "wip",
    "wash",
)
""" "And didn't rinse it": it is on there all the more."""
_OPENS = Pattern(r"^(?:(?:oh|no|god|shit|damn|oops|wait|hell|gosh|dear|sorry|argh|crap|yes|yeah|yep|but|and|so) ,? ?)+")
_TO_COME = Pattern(
    r"\b(?:if|can i|could i|should i|may i|will|going to|about to|next time|tomorrow|later|want to|would|might|whether"
    r"|not|never|no|nearly|almost|none|nothing|without|instead of|rather than|yesterday|last (?:week|month|year|time)"
    r"|remind|let me|let us|how|which|why|meant|planning|thinking|looks? like|smell\w*|label\w*)\b"
)
_TAKEN_OFF = Pattern(
    r"\b(?:rins|wip|wash|hos|flush|mopp|got|came|come|clean)\w*(?: \S+){0,4}? (?:off|away|out of)\b|\bis (?:off|gone)\b"
)
""" "Rinsed the bleach off the glass": nothing was put there."""
_NOT_ON_IT = Pattern(
    r"\b(?:bucket|sink|kitchen|counter|table|cupboard|carpet|hands?|gloves?|arm|face|skin|eyes?|mouth|nose|tail|belly"
    r"|hair|leg|foot|feet|shoes?|jeans|sleeve|clothes|tub|bowls?|dish(?:es)?|tongs|hooks?|towels?|bath|bathroom|car"
    r"|drain|toilet|me|him|her|them|us|myself|ANIMAL|fill\w*|refill\w*|topped|MIX|VOLUME|neighbou?r|drank|ate|lick\w*"
    r"|breath\w*|swallow\w*)\b|\bBOTTLE (?:now |still )*(?:has|have|had|holds)\b"
    r"|\bstill (?:has|have|got|on|in|there|AGENT|STOCK|BOTTLE)\b|\b(?:is|has|have|got|'s) still\b"
)
"""Of the room, the keeper or a bottle; or what is on it still, so that it wasn't rinsed off."""
_SPRAYED_ON = Pattern(
    r"\b(?:some|a bit|a little|it|spray|mist|overspray) (?:has |must have )?(?:drifted|blew|carried) in"
)
""" "Sprayed the neighbour and some drifted in": with what that one is being sprayed."""


def product_told(look: Look) -> Reading | None:
    """The product as sprayed on what is being cleaned; None: nothing of the kind is told."""
    plain, world = look.parsed.plain.strip(" .!,"), look.world
    homes = tuple(name for name, one in world.state.rounds.items() if is_sprayed(one))
    if not homes or plain.endswith("?") or ENDS_AS_ASKED.search(plain) or ASKED.search(plain) is not None:
        return None
    if _SPRAYED_ON.search(plain) is not None:
        return look.reading("done", replace(look.slots("done"), steps=("apply",), enclosures=()), BY_RULE)
    masked, things = products_by_colour(look.parsed, world.household)
    masked = masked.strip(" .!,")
    rest = _UNRINSED.sub(" ", _OPENS.sub("", masked))
    told = _TOUCHED.search(masked)
    if told is None or _TO_COME.search(rest) or _TAKEN_OFF.search(rest) or _NOT_ON_IT.search(rest):
        return None
    slots = look.slots("done")
    if slots.enclosures and not any(is_open(world.state.rounds.get(name)) for name in slots.enclosures):
        return None
    if not slots.enclosures and len(homes) > 1:
        last = world.talk.last
        told_of = tuple(last.values.get("enclosures", ())) if last is not None else ()
        slots = replace(slots, enclosures=told_of if len(told_of) == 1 and told_of[0] in homes else (), remark=True)
    thing = _the_one(things, slots.enclosures or homes, world)
    return look.reading("done", _put_on(slots, thing), BY_RULE) if thing is not None else None


def _the_one(things: tuple[Thing, ...], homes: tuple[str, ...], world: World) -> Thing | None:
    """The one product named; of two the one that isn't the clean's own: "with vinegar before the bleach"."""
    named = tuple(dict.fromkeys(thing for thing in things if thing.name))
    if len(named) > 1:
        own = {world.state.rounds[name].agent for name in homes if name in world.state.rounds}
        named = tuple(thing for thing in named if not set(agents_of((thing,), world)) <= own)
    return named[0] if len(named) == 1 else None


def _put_on(slots: Slots, thing: Thing) -> Slots:
    bare = replace(slots, steps=("apply",), bottles=(), stocks=(), agents=(), choices=(), unknown=(), part=None)
    if thing.kind == "bottle":
        return replace(bare, bottles=(thing.name,))
    return replace(bare, stocks=(thing.name,)) if thing.kind == "stock" else replace(bare, agents=(thing.name,))
