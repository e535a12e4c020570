"""Another product than the clean's, told as it is put on or as used on a part: "wiping it with vinegar first".

No step by itself, but it touched the surface: kept for the rule of agents that must not meet, and what "done" is of
right after it.
"""

from __future__ import annotations

from dataclasses import replace

from assistant.contract import Reading, Slots, World
from assistant.core.choice.together import uncleared
from assistant.core.round.rounds import is_open
from assistant.understand.look import BY_RULE, Look
from assistant.understand.met.meeting import ASKED
from assistant.understand.named.by_colour import agents_of, products_by_colour
from assistant.understand.named.names import Thing
from assistant.understand.named.unknown_names import OF_WHAT_NOBODY_KNOWS
from assistant.understand.steps.came_to_nothing import something_else_put_on
from assistant.understand.steps.claimed_steps import not_yet
from assistant.understand.text.patterns import Pattern

_SOME = r"(?:(?:the|my|some|of|a|bit|little|drop|splash|rest|more|neat|bare|plain|just|only|that|this|touch) )*"
_P = r"(?:AGENT|STOCK|BOTTLE|OTHER)"
_DOING = (
    r"(?:wiping|spraying|misting|scrubbing|cleaning|going over|doing|rubbing|dabbing|soaking|putting|using"
    r"|washing|squirting|hitting|treating|polishing|pouring|applying|getting|taking|loosening|softening|spritzing"
    r"|rinsing|hosing|dousing|drenching|dissolving|lifting)"
)
_DID = (
    r"(?:used|wiped|went over|put|got|took|cleaned|scrubbed|rubbed|dabbed|soaked|did|polished|gave|hit|treated|went at"
    r"|loosened|softened|removed|lifted|dissolved|washed|squirted|poured|splashed|dripped|tried|rinsed|spritzed"
    r"|neutrali[sz]ed)"
)
_CHOSEN = Pattern(rf"\b(?:doing (?:it|this|that)|using)(?: with)? {_SOME}{_P}(?: now)?$")
_LET_IN = (
    r"(?:emptied|tipped|poured|sloshed|splashed|squirted|chucked|put|added|dripped|got|dropped|dumped|trickled"
    r"|sprinkled)"
)
_GOT_IN = r"(?:went|gone|got|dripped|ran|fell|splashed|leaked|ended up|trickled|landed|stood|sat)"
_DONE = Pattern(rf"\b(?:{_DID}|{_LET_IN}|{_GOT_IN}|left|let|gave|given|been)\b")
"""Not only being done."""
_HERE = (
    r"(?: (?:it|that|this|there|ENCLOSURE|(?:the|its|one|a) (?:\w+ )?(?:tank|box|cage|viv\w*|enclosure|glass|walls?"
    r"|corners?|bottom|base|sides?|inside|lid|back|front|runners?|floor of it)))"
)
_END = (
    r"(?: (?:too|as well|now|already|first|by mistake|accidentally|just now|earlier"
    r"|to (?:boost|help|clean|lift|loosen|get|kill|shift|soften|dissolve|cut|make|take|be)\b(?: \w+){0,3}))*[ .!]*$"
)
_IT = r"(?:it|that|this|them|ENCLOSURE|the (?:\w+ ){0,2}\w+|a (?:\w+ ){0,2}\w+|one (?:\w+ )?\w+)"
_PUTTING = Pattern(
    rf"\b{_DOING} (?:\S+ ){{0,6}}?(?:with|using|in) {_SOME}{_P}\b"
    rf"|\b{_DOING} {_SOME}{_P}(?: (?:on|onto|over|now|first|all)\b|$)"
    rf"|\b{_DID} (?:\S+ ){{0,6}}?(?:with|using) {_SOME}{_P}\b"
    rf"|\b{_DID} {_SOME}{_P} (?:on|onto|over) {_IT}"
    rf"|^(?:(?:ok|so|and|now|just|there is|there 's|with|got) )*{_SOME}{_P}(?: (?:is|went|goes|'s))?(?: now| all)?"
    rf" (?:on|onto|over) {_IT}(?: now| first| already| as well| too)*$"
    # let in, left in, got in
    rf"|\b{_LET_IN} {_SOME}{_P}(?: straight| right| all)? (?:in|into|inside|on|onto|over){_HERE}?{_END}"
    rf"|\b(?:left|let) {_SOME}{_P}(?: to)? (?:in|on|stand|sit|soak|stay|pool|standing|sitting|soaking)"
    rf"(?: in| on)?{_HERE}?(?: for DURATION| a while)*{_END}"
    rf"|\b(?:added|gave{_HERE}) {_SOME}{_P}{_END}"
    rf"|\b{_P} (?:has |just |accidentally |must have )*{_GOT_IN} (?:in|into|on|onto|over|inside){_HERE}?{_END}"
    rf"|^(?:(?:ok|so|and|now|just|there is|then|quick) )*{_SOME}{_P} wipes? (?:on|over|for) {_IT}{_END}",
    *("AGENT", "STOCK", "BOTTLE", "OTHER"),
)
_NOT_ON_IT = Pattern(
    r"\b(?:bowls?|dish|dishes|tongs|hook|hooks|bucket|sink|kitchen|floor|counter|table|shelf|cupboard|hands?|gloves?"
    r"|arm|face|tub|tubs|towel|towels|cloths?|sponge|bath|bathroom|carpet|puddle|spill|yesterday|last|morning|ago"
    r"|outside|window|windows|door ?knob|handles?|desk|shoes?|jeans|wall behind|drain|toilet|car|skin|wound|cut|mites?"
    r"|VOLUME|MIX|how|which|what|when|why|never|no|without|fill\w*|refill\w*|top\w*|rinse|started?|starting|instead"
    r"|meant|thinking|planning|considering|plan|let me|let us|wrong|mistake"
    r"|tomorrow|later|next time|eyes?|mouth|tail|belly|ANIMAL|cage next|neutrali(?![sz]ed\b)\w*)\b"
    r"|\b(?:rins|dri|dry)\w* (?:it |that )?(?:off|again|since|after)\b|\band (?:rinsed|dried)\b|\b(?:not|nor) \w*",
)
_NO_PRODUCT = frozenset({"detergent", "water"})
"""What a clean may be washed with at any time."""


def put_on_it(look: Look) -> Reading | None:
    """A question whether that may meet what is there, with the touch kept; None: nothing of the kind is told."""
    plain, world = look.parsed.plain, look.world
    if plain.endswith("?") or ASKED.search(plain) is not None or "apply" in look.claims.done:
        return None
    if something_else_put_on(look) is not None:
        return None  # of a surface that was sprayed before it is a step of its own
    slots = look.slots("together")
    rounds = world.state.rounds
    homes = slots.enclosures or tuple(name for name, round_ in rounds.items() if is_open(round_))
    if len(homes) != 1 or not is_open(rounds.get(homes[0])):
        return None
    masked, things = _products(look)
    if not things or _PUTTING.search(masked) is None or _NOT_ON_IT.search(masked) is not None:
        return None
    if not_yet(_A_LITTLE.sub(" ", masked)):
        return None
    if "clear" not in rounds[homes[0]].done and _CHOSEN.search(masked) is not None:
        return None  # nothing is put on what isn't cleared yet: it is with what the clean is to be done
    agents = tuple(agent for agent in agents_of(things, world) if agent not in _NO_PRODUCT)
    if not agents or set(agents) <= {rounds[homes[0]].agent}:
        return None
    met = _DONE.search(masked) is not None and _on_another(agents, homes[0], world)
    bottles = tuple(thing.name for thing in things if thing.kind == "bottle" and thing.name and not met)
    slots = replace(slots, agents=agents, bottles=bottles, stocks=(), steps=(), choices=(), unknown=())
    slots = replace(slots, residues=(), enclosures=homes, touched=agents, met=met)
    return look.reading("together", slots, BY_RULE)


def lies_there(look: Look) -> Reading | None:
    """ "There's still vinegar on the window cage", of which no clean is open: kept for the next one."""
    if _LIES_THERE.fullmatch(look.parsed.plain.strip(" .!")) is None:
        return None
    slots = look.slots("done")
    if len(slots.enclosures) != 1 or is_open(look.world.state.rounds.get(slots.enclosures[0])):
        return None
    if not (slots.agents or slots.stocks):
        return None
    return look.reading("done", replace(slots, steps=("apply",)), BY_RULE)


_LIES_THERE = Pattern(
    r"(?:(?:ok|so|and|but|oh|wait|i think|there is|there 's|it has|has|got) ,? ?)*(?:(?:still|some|a bit of|a little"
    r"|dried"
    r"|old|wet) )*(?:AGENT|STOCK)(?: is| still| left| all)* (?:on|in|over|inside|all over) (?:(?:the|my|its) (?:\w+"
    r" ){0,2}"
    r"(?:of|in|inside) )?(?:the |my )?ENCLOSURE(?: still| from (?:before|last time|\w+))*",
    *("AGENT", "STOCK"),
)


def _on_another(agents: tuple[str, ...], home: str, world: World) -> bool:
    """Whether one that was put on met what is still on that surface."""
    touches = world.state.surfaces.get(home, ())
    known = (world.facts.agents.get(agent) or world.facts.agents["other"] for agent in agents)
    return any(uncleared(touches, agent, world.facts) is not None for agent in known)


def _products(look: Look) -> tuple[str, tuple[Thing, ...]]:
    """The masked text and its products; with one that nobody knows among them."""
    masked, things = products_by_colour(look.parsed, look.world.household)
    masked = OF_WHAT_NOBODY_KNOWS.sub("OTHER", masked)
    if "OTHER" not in masked:
        return masked, things
    return _TWICE.sub("OTHER", masked), (*things, Thing("agent", "other"))


_TWICE = Pattern(r"\b(?:AGENT|STOCK|BOTTLE) OTHER\b", "OTHER")


def of_what_is_on_it(reading: Reading, world: World) -> Reading:
    """ "Done", "sprayed" right after "spraying it with the green": that was sprayed with the green."""
    before, slots = world.talk.last_reading, reading.slots
    if reading.intent != "done" or before is None or before.intent != "together" or not before.slots.touched:
        return reading
    if slots.steps not in ((), ("apply",)) or slots.bottles or slots.stocks or slots.agents or slots.corrects:
        return reading
    if slots.openings is not None or slots.enclosures not in ((), before.slots.enclosures):
        return reading
    if slots.steps and _SPRAYS.search(before.said) is None:
        return reading  # wiped with one, then sprayed with the clean's own
    return replace(reading, slots=_with(before.slots, slots))


def _with(before: Slots, slots: Slots) -> Slots:
    of_a_bottle = len(before.bottles) == 1
    return replace(
        slots,
        steps=("apply",),
        bottles=before.bottles if of_a_bottle else (),
        agents=() if of_a_bottle else before.touched[:1],
        enclosures=before.enclosures,
    )


_SPRAYS = Pattern(r"^(?!.*\bfirst\b).*\b(?:spray|mist|squirt|spritz|hos|doing)\w*")
_A_LITTLE = Pattern(r"\b(?:just )?(?:a (?:tiny |little )?(?:bit|drop|little|touch|splash)|some) of\b")
