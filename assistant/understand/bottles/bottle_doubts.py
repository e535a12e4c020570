"""What makes a bottle one that nobody knows any more: meddled with, topped up with anything, held what it isn't for.

Told and not asked. Where a clean has been sprayed from that very bottle, `other_product` comes first.
"""

from __future__ import annotations

from dataclasses import replace

from assistant.contract import Reading, World
from assistant.core.round.rounds import is_sprayed
from assistant.core.shelf.bottles import NOTHING
from assistant.understand.bottles import fills
from assistant.understand.look import BY_RULE, Look
from assistant.understand.named.by_colour import agents_of, products_by_colour
from assistant.understand.named.names import Thing
from assistant.understand.question.may_be import is_told
from assistant.understand.text.patterns import Pattern, words_in

_SOMETHING = (
    r"(?:something(?: else)?|some stuff|stuff|things|god knows what|who knows what|i do not know what|anything|whatever"
    r"|some other stuff|another (?:product|cleaner|one|thing)|a different (?:product|cleaner|one))"
)
_THE = r"(?:(?:the|my|our|that|this) )?"
_MEDDLED = Pattern(
    rf"\b(?:put|putting|added|poured|tipped|squirted|dropped|splashed|got|slipped|mixed|chucked)(?: \S+){{0,2}}?"
    rf" {_SOMETHING}(?: \S+)? (?:in|into|to|inside) {_THE}BOTTLE\b"
    rf"|\b(?:topped|filled|refilled|topped off|mixed|made)(?: up)? {_THE}BOTTLE (?:up )?with {_SOMETHING}\b"
    rf"|\bthere (?:is|was|'s) (?:something else|other stuff|another product) in {_THE}BOTTLE\b"
    rf"|\b(?:been at|got at|been into|mess(?:ed|ing) (?:about |around )?with|meddl\w+ with|tamper\w+ with"
    rf"|fiddl\w+ with|play(?:ed|ing) (?:about |around )?with|been in|got hold of) {_THE}BOTTLE\b",
    "BOTTLE",
)
_WATERED = Pattern(
    rf"\b(?:topped|topping|filled|thinned|watered|let|diluted|made|eked|stretched)"
    rf" (?:{_THE}BOTTLE |it |that )?(?:up |down |off |out )*(?:{_THE}BOTTLE |it |that )?(?:up |off )?"
    rf"with (?:(?!VOLUME|NUMBER|and\b|concentrate)\w+ ){{0,3}}water\b"
    rf"|\b(?:added|put|poured|tipped) (?:\w+ ){{0,4}}water (?:in|into|to) (?:{_THE}BOTTLE|it|that)\b"
    rf"|\bwatered (?:{_THE}BOTTLE |it |that )down\b|\bwatered down {_THE}BOTTLE\b",
    "water",
)
_MISMEASURED = Pattern(
    r"\b(?:put|used|poured|added|measured|drew|drawn|tipped)(?: in)?(?: \w+){0,2}? (?:double|triple|twice|(?:way |far "
    r"|a bit )?too (?:much|little|many)|half|the wrong (?:amount|number|line|mark|syringe|cap)|not enough)\b"
    r"|\b(?:put|poured|added|tipped|measured) (?:the |some )?(?:AGENT|STOCK|concentrate|it)(?: in)?(?: in)? (?:twice"
    r"|two times|again)\b"
    r"|\bforgot (?:to (?:add|put)(?: in)? )?(?:the |any )?water\b|\b(?:did not|never) (?:add|put)(?: in)?(?: the|"
    r" any)? water\b"
    r"|\bmis(?:read|measured|counted) (?:the |it|that)|\blost count\b"
    r"|\b(?:measured|read|drew) (?:it |that |the \w+ )?(?:up )?(?:wrong(?:ly)?|badly|to the wrong (?:line|mark))\b",
    *(
        "double",
        "triple",
        "twice",
        "two times",
        "too ",
        "half",
        "wrong",
        "enough",
        "again",
        "water",
        "mis",
        "count",
        "bad",
    ),
)
"""How much went into a fill isn't known after all."""
_LEFT_OUT = Pattern(
    r"\bforgot(?:ten)? (?:to (?:add|put)(?: in)? )?(?:the |any |some )?(?:AGENT|STOCK|concentrate)\b"
    r"|\b(?:double|triple|half) (?:a |the )?(?:measure|dose|amount|shot)\b|\b(?:two|three) (?:measures|doses) in\b"
)
""" "I forgot the bleach", "that was a double measure": no more known than a slip with the syringe."""
_HELD = Pattern(
    rf"\bBOTTLE(?: \w+){{0,2}}? (?:had|has|has got|held|holds|contained|contains)(?: actually| really| got|"
    rf" only| some)*"
    rf" (?:AGENT|STOCK)(?: in it| inside)?$"
    rf"|\b(?:it|there) (?:was|is|'s) (?:actually |really )*(?:AGENT|STOCK) in(?:side)? {_THE}BOTTLE$"
    r"|\bBOTTLE (?:is|was|'s) (?:(?:actually|really|in fact|only|just|half|mostly|partly|part|all|nearly all|mainly) )*"
    r"(?:AGENT|STOCK)(?: (?:and|half) (?:water|AGENT|STOCK))?(?: now| at the moment| really| actually| i think)*$"
    r"|\bBOTTLE (?:smells|smelt|reeks|stinks|whiffs)(?: \w+){0,2}? (?:of|like) (?:AGENT|STOCK)\b",
    "BOTTLE",
)
_DILUTED = Pattern(
    r"^(?:(?:i|we|ok|oh|so|and|have|has|just|my \w+|someone|somebody|he|she|they) ,? ?)*(?:diluted|watered|thinned"
    rf"|weakened|strengthened)(?: down)? {_THE}BOTTLE(?: (?:a|bit|little|some|down|more|further|too|much|again|slightly"
    r"|lot|with|water))*$",
    "BOTTLE",
)
""" "Diluted the pink bottle a bit": what was in it is weaker now, and nobody knows by how much."""
_MIXED_UP = Pattern(
    rf"\b(?:mixed up|muddled(?: up)?|confused|jumbled(?: up)?|swapped) {_THE}BOTTLE and {_THE}BOTTLE\b|"
    rf"\b(?:mixed|muddled|got) {_THE}BOTTLE and {_THE}BOTTLE (?:mixed )?up\b|"
    r"\b(?:mixed|muddled|swapped|confused|jumbled) (?:up )?(?:the|my|our|both|all the|those) (?:bottles"
    r"|sprays|sprayers)"
    r"(?: up| round| around| over)?\b|\b(?:can not|do not) tell (?:which|the) (?:bottle|spray)s? "
    r"(?:is which|apart)\b",
    *("bottle", "spray", "BOTTLE"),
)


def bottle_doubted(look: Look) -> Reading | None:
    """A bottle marked as one that nobody knows; None: nothing of the kind is told."""
    plain = look.parsed.plain.strip(" .!,")
    if look.parsed.plain.endswith("?") or look.world.waiting is not None or not is_told(plain):
        return None
    masked, things = products_by_colour(look.parsed, look.world.household)
    masked = masked.strip(" .!,")
    names = tuple(dict.fromkeys(thing.name for thing in things if thing.kind == "bottle" and thing.name))
    if _MEDDLED.search(masked) is not None and len(names) == 1:
        return _unknown(look, names)
    badly = _MISMEASURED.search(masked) is not None or _LEFT_OUT.search(masked) is not None
    if badly and (mismeasured := _last_filled(look, names)) is not None:
        return _of_no_known_strength(look, (mismeasured,))
    if _HELD.search(masked) is not None and len(names) == 1 and not _sprayed_from(names[0], look.world):
        return _unknown(look, names) if _is_for_another(names[0], things, look.world) else None
    # "Mixed up yellow and green" is poured together.
    apart = "bottles" in look.parsed.text.lower() or "mixed" not in masked
    if apart and _MIXED_UP.search(masked) is not None and not any(_sprayed_from(name, look.world) for name in names):
        every = tuple(bottle.name for bottle in look.world.household.bottles)
        if names or not any(map(is_sprayed, look.world.state.rounds.values())):
            return _unknown(look, names or every)
    if _DILUTED.search(masked) is not None and len(names) == 1 and not _sprayed_from(names[0], look.world):
        filled = look.world.state.bottles.get(names[0], NOTHING).fill is not None
        return _of_no_known_strength(look, names) if filled else _unknown(look, names)
    return _watered_down(look, masked, names)


def _last_filled(look: Look, names: tuple[str, ...]) -> str | None:
    """The bottle with a fill on record that is named, or that the turn before was about."""
    before = fills.bottle_of_before(look.world)
    name = names[0] if len(names) == 1 else before if not names else None
    on_record = name is not None and look.world.state.bottles.get(name, NOTHING).fill is not None
    sprayed = name is not None and _sprayed_from(name, look.world)  # then it is the wet time that didn't count
    return name if on_record and not sprayed else None


def _watered_down(look: Look, masked: str, names: tuple[str, ...]) -> Reading | None:
    """ "Topped it up with water", of a bottle with a fill on record; the end of a filling is none."""
    if _WATERED.search(masked) is None or not {"AGENT", "STOCK", "MIX", "ENCLOSURE"}.isdisjoint(masked.split()):
        return None
    if not names:
        before = fills.bottle_of_before(look.world)
        filled = [name for name, holds in look.world.state.bottles.items() if holds.fill is not None]
        names = (before,) if before is not None else tuple(filled)
    if len(names) != 1 or look.world.state.bottles.get(names[0], NOTHING).fill is None:
        return None
    return _of_no_known_strength(look, names)


def _of_no_known_strength(look: Look, names: tuple[str, ...]) -> Reading:
    """As if water had been poured onto the mix: how strong it is now, nobody knows."""
    slots = replace(
        look.slots("mixed"), bottles=names, plain_water=True, topped_up=True, steps=(), choices=(), unknown=()
    )
    return look.reading("mixed", slots, BY_RULE)


def _unknown(look: Look, names: tuple[str, ...]) -> Reading:
    slots = replace(
        look.slots("unknown_bottle"), bottles=names, wish=None, choices=(), unknown=(), agents=(), stocks=()
    )
    return look.reading("unknown_bottle", slots, BY_RULE)


def _is_for_another(name: str, things: tuple[Thing, ...], world: World) -> bool:
    """Whether what it is said to have held isn't what it holds on record, or is meant for."""
    bottle = world.household.bottle(name)
    stock = world.household.stock(bottle.stock) if bottle is not None else None
    fill = world.state.bottles.get(name, NOTHING).fill
    own = fill.agent if fill is not None else stock.agent if stock is not None else ""
    said = agents_of((thing for thing in things if thing.kind != "bottle"), world)
    return bool(said) and own not in said


def _sprayed_from(name: str, world: World) -> bool:
    return any(is_sprayed(r) and r.bottle == name for r in world.state.rounds.values())


WORDS = words_in(_MEDDLED, _WATERED, _MIXED_UP, _MISMEASURED)
"""Words that the rules here turn on."""
