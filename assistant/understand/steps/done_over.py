"""What is told after the spraying and names no step: a part done over ("touched up the corner") or left out.

Both open the round again, as sprayed anew or as never wetted: whatever was meant, that is the reading that can't make
anything ready too early.
"""

from __future__ import annotations

from dataclasses import replace

from assistant.contract import Slots
from assistant.core.round.rounds import a_hold_runs, is_open, is_sprayed
from assistant.understand.look import Look
from assistant.understand.named.animal_words import ONE_ANIMAL
from assistant.understand.question.may_be import is_told
from assistant.understand.text.asking import BEGINS_AS_ASKED
from assistant.understand.text.parts_of_it import FITTING, PART, WHICH
from assistant.understand.text.patterns import Pattern, words_in

PARTS = rf"{WHICH}(?:{PART}|{FITTING}|place|insides?|rest|remainder|others?)"
"""What is missed or done over: a part of an enclosure."""
_HOME = r"(?:ENCLOSURE|it|that|this|them|the (?:tank|cage|viv|vivarium|box|tub|enclosure|lot|whole thing))"
THING = rf"(?:{_HOME}|(?:(?:the|his|her|its|that|this|a|an|one|two|some|few|couple|of|both|all|those) )*{PARTS})"
"""The whole of it, or a part."""
_SPRAYED_OVER = Pattern(
    rf"\b(?:touched up|patched up|redid|re did|redone|retouched|resprayed|went (?:back )?over) (?:on )?{THING}\b"
    rf"|\btouched {THING} up\b"
    rf"|\b(?:did|done|hit|got|caught|gone over|been over|went over) {THING}"
    r"(?: (?:again|once more|one more time|a second time|over again|over|twice|another time))+\b"
    rf"|\b(?:given|gave) {THING} (?:another|a second|one more|an extra|a|one last|a last|a final|a quick"
    r")(?: \w+)? (?:go|once over|going over|coat|round|squirt|blast|hit|layer|touch up|bit|lick|do)\b"
    rf"|\b(?:spritzed|squirted|blasted|dabbed|daubed) {THING}\b"
    rf"|\bmissed {THING}(?: \w+){{0,3}},? (?:so|and|but) (?:\w+ ){{0,3}}(?:did|done|got|hit|sprayed|caught) "
    r"(?:it|that|them)\b"
    rf"|\bmissed {THING} ,? ?(?:so |and |but |then )*(?:i (?:have )?)?(?:just )?(?:sprayed|did|done|hit|got|caught"
    rf"|misted)"
    r" (?:it|that|them|those|there)\b"
    r"|\b(?:another|one more|a second|a fresh|an extra|one last)(?: quick| light| little)?"
    r" (?:round|go|coat|layer|lick|blast|dose) (?:of|with) (?:the |some )*(?:AGENT|STOCK|BOTTLE)\b"
    r"|\b(?:is|are|'s|there is|have got|has got) (?:more|fresh|new|some more)(?: \w+)? (?:AGENT|STOCK)"
    r" (?:on|in) (?:it|there|ENCLOSURE|the \w+)\b"
    rf"|\btopped up (?:the (?:spray|wet|film|AGENT) on )?{THING}(?: with (?:the |some )*(?:bottle|spray|BOTTLE|AGENT"
    r"|STOCK))?$"
    r"|\b(?:did|put on|laid|gave (?:it|them)|sprayed|added|needed|got)"
    r" (?:a|an|another|one more|DURATION)(?: second| third| further"
    r"| extra| quick| light| last)* (?:coat|layer|squirt|spray|misting|mist|pass|lick)\b"
    r"|\b(?:quick|little|light|extra|another|one more|a last|a final) (?:squirt|spritz|spray|mist|blast) (?:on|of"
    r"|in|over"
    r"|at|to)\b|\bsprayed (?:a (?:bit|little|touch)|some|a few) more\b"
    rf"|\bhad to (?:do|redo|re do|spray|respray|go over|hit|get) {THING}(?: \w+)?(?: again)?$"
    rf"|\b(?:gave|given) {THING} (?:a|one|another)(?: \w+){{1,3}} with (?:the |some )*(?:AGENT|STOCK|BOTTLE)\b"
    rf"|\b(?:went over|did|done|cleaned|gone over) {THING}(?: \w+){{0,2}} (?:again )?(?:with|using)"
    r" (?:the |some |a bit of |a little )*(?:AGENT|STOCK|BOTTLE)\b",
    *("touch", "patched", "redid", "re did", "redone", "respray", "over", "again", "twice", "once more", "time"),
    *(
        "coat",
        "layer",
        "squirt",
        "spray",
        "mist",
        "pass",
        "had to",
        "topped",
        "gave",
        "given",
        "spritz",
        "squirt",
        "blast",
        "dab",
        "daub",
        "missed",
        "AGENT",
        "STOCK",
        "BOTTLE",
    ),
)
_GOT_IN = Pattern(
    r"\b(?:splashed|dripped|spilled|spilt|leaked|tipped|knocked|dropped|squirted|splashes|drips|drops|ran|got)\b"
    r"(?: \w+){0,4}? (?:in|into|inside|on|onto|over|down) (?:it|there|in there|(?:the )?ENCLOSURE|the (?:\w+"
    r" )?(?:tank|cage|viv"
    r"|vivarium|box|enclosure|glass)|(?:the )?(?:floor|wall|side|sides|lid|bottom|back|door) of (?:it|ENCLOSURE))\b"
    r"|\b(?:splashed|dripped|leaked|dropped|squirted|fell|ran|got)(?: straight| right| back)? in$",
    *("splash", "drip", "spil", "leak", "tipped", "knocked", "drop", "squirt", "ran", "got", "fell"),
)
_ITS_CLOTH = Pattern(
    r"\b(?:left|used|wiped|gave|given|put|went over|there is|is|are|'s)\b.*\b(?:AGENT|STOCK|BOTTLE|bleachy|vinegary)"
    r"(?: soaked| wet)* (?:rags?|cloths?|sponges?|towels?|tissues?|brush|mop|wipe|rub|polish|once over)\b"
    r"|\b(?:rags?|cloths?|sponges?|towels?|tissues?|brush|mop|bucket|bowl)(?: is| are| 's)?(?: still)?"
    r" (?:soaked|dipped|wet|damp|full|dripping) (?:in|of|with) (?:the |some )?(?:AGENT|STOCK|BOTTLE)\b.*\b(?:in|on)\b"
    r"|\b(?:rag|cloth|sponge|towel|brush|mop)s?(?: that| which)?(?: i| we)?(?: had| have)? (?:used|soaked|dipped)"
    r" (?:for|with|on|in) (?:the |some )?(?:AGENT|STOCK|BOTTLE)\b",
    *("rag", "cloth", "sponge", "towel", "tissue", "brush", "mop", "bucket", "bowl", "wipe", "rub", "polish", "over"),
)
""" "Left a bleach rag in the corner": what is on a cloth is on the surface."""
_A_PRODUCT = Pattern(r"\b(?:AGENT|STOCK|BOTTLE)\b", "AGENT", "STOCK", "BOTTLE")
_NONE_DID = Pattern(r"^(?:(?:ok|and|but|luckily) ,? ?)*(?:none|nothing|hardly)\b")
_A_BODY = Pattern(
    rf"\b(?:ANIMAL|{ONE_ANIMAL}|me|him|her|them|us|myself|eyes?|hands?|arms?"
    r"|face"
    r"|mouth|skin|legs?|feet|foot|fingers?|nose|hair|tail|belly|child|kid|son|daughter|cat|dog|clothes|shirt"
    r"|sleeve)\b"
)
_WITH_WATER = Pattern(
    r"\b(?:with|of|in|using) (?:some |the |a |clean |plain |fresh |warm |hot |cold )*"
    r"(?:water|towels?|cloths?|paper|rag)\b"
    r"|\b(?:rins\w+|wash\w+|dri\w+|dry\w*|wip\w+|hos\w+|towel\w*|scrub\w*|soap)\b",
)
"""Done over with water or a cloth, or as a step that has a name: no spraying."""
_LEFT_OUT = Pattern(
    rf"\b(?:missed|skipped|left out|overlooked|forgot|forgot about|forgotten)(?: (?:to (?:do|spray|get|hit|cover"
    rf"|mist|wet)|spraying|doing))? (?P<part>{THING})\b"
    rf"|\b(?:did not|had not|have not|never) (?:do|done|did|get|got|hit|spray|sprayed|cover|covered|reach|reached"
    rf"|mist"
    rf"|wet) (?P<part_b>{THING})\b"
    rf"|\b(?:still (?:need|needs|have|has|got)|(?:have|has) still got|still) to (?:do|spray|mist|cover|get|hit)"
    rf" (?P<part_e>{THING})\b|\b(?P<part_f>{THING})(?: is| are| 's)? still to (?:do|spray|be (?:done|sprayed))\b"
    rf"|\b(?:only|just) (?:did|sprayed|misted|covered|hit|reached) (?P<part_g>{THING})\b"
    rf"|\b(?P<part_c>{THING})(?: was| were| has| have| had| got| is| are| 's| did)? (?:not|never|n't)(?: been| actually"
    rf"| even)*"
    r" (?:get |got )?(?:done|sprayed|covered|got|hit|reached|misted|wetted|touched|any)\b"
    rf"|\b(?P<part_d>{THING}) (?:was|were|got|has been|had been|is|are) (?:missed|skipped|left out|forgotten|left)\b",
    *("miss", "skip", "left", "overlook", "forgot", "not", "never", "still", "only", "just"),
)
_CUT_SHORT = Pattern(
    r"\bran out (?:half ?way|part ?way|before|while|during|in the middle|of (?:spray|mix|solution|stuff|it))\b"
    r"|\b(?:sprayer|nozzle|trigger|pump)(?: \w+){0,2}? (?:blocked|clogged|jammed|broken|broke|stuck)\b"
    r"|\b(?:bottle|BOTTLE|sprayer)(?: \w+){0,2}? (?:nearly|almost|practically|pretty much) empty\b",
    *("ran out", "block", "clog", "jam", "bro", "stuck", "empty"),
)
"""The spraying wasn't brought to its end, as it turns out."""
_NO_PART = frozenset({"ENCLOSURE", "it", "that", "this", "them", "the lot"})


_A_PART_NOW = Pattern(
    rf"^(?:(?:ok|and|now|then|next|also|i|have|just|,) ?)*(?:sprayed|misted|did|done|squirted|finished|covered|got)"
    rf" (?:the |its |his "
    rf"|her ){PARTS}"
    rf"(?: (?:as well|too|now|next|also))*$|^(?:and |now |then )+(?:the |its ){PARTS}(?: (?:as well|too|also"
    rf"|is sprayed|is done))*$"
)


def a_part_now(look: Look) -> bool:
    """ "Sprayed the lid", while the rest has been wet for a while: of the lid the wet time begins only now."""
    return _A_PART_NOW.search(look.parsed.plain.strip(" .!")) is not None and is_kept_wet(look)


def sprayed_over(look: Look) -> Slots | None:
    """The slots of a part sprayed again; None: nothing of the kind is told, or nothing has been sprayed yet."""
    plain = look.parsed.plain
    if not _sprayed(look) or _WITH_WATER.search(plain) or set(look.claims.done) - {"apply"}:
        return None
    if plain.endswith("?") or not (is_told(plain.removeprefix("did ")) or a_part_now(look)):
        return None
    over = _SPRAYED_OVER.search(plain) is not None or a_part_now(look)
    return replace(look.slots("done"), steps=("apply",)) if over else None


def got_in(look: Look) -> Slots | None:
    """The slots of a product that got onto a surface by accident, of which a clean is open; None: nothing is told."""
    plain, last = look.parsed.plain, look.world.talk.last
    if not any(is_open(r) for r in look.world.state.rounds.values()) or not is_told(plain):
        return None
    if (last is not None and last.intent in ("splash", "spill")) or _A_BODY.search(plain):
        return None
    by_cloth = _ITS_CLOTH.search(plain) is not None and _sprayed(look) and "rins" not in plain
    if not by_cloth and (not _A_PRODUCT.search(plain) or not _GOT_IN.search(plain)):
        return None
    if _NONE_DID.match(plain):
        return None
    slots = look.slots("done")
    rounds = look.world.state.rounds
    if _IN_IT.search(plain) and not any(is_open(rounds.get(name)) for name in slots.enclosures):
        slots = replace(slots, enclosures=())  # "splashed some in it doing the river tank"
    return replace(slots, steps=("apply",))


_IN_IT = Pattern(r"\b(?:in|into|on|onto|over) it\b")


def is_kept_wet(look: Look) -> bool:
    """Sprayed over while a wet time runs."""
    return a_hold_runs(look.world.state.rounds.values(), look.world.now)


def left_out(look: Look) -> Slots | None:
    """The slots of a part that was never sprayed; None: nothing of the kind is told, or nothing has been sprayed."""
    plain = look.parsed.plain
    if not _sprayed(look) or plain.endswith("?") or set(look.claims.mentioned) - {"apply", "return"}:
        return None
    if _ASKS_OR_AHEAD.search(plain) or set(look.claims.done) - {"return", "apply" if look.claims.in_part else ""}:
        return None
    if _CUT_SHORT.search(plain) is not None:
        return replace(look.slots("dried_early"), part=None, too_early=True)
    found = _LEFT_OUT.search(plain)
    part = next((said for said in found.groups() if said is not None), None) if found is not None else None
    if part is None or part in _NO_PART:
        return None
    bare = part
    for word in ("the ", "his ", "her ", "its ", "that ", "this ", "a "):
        bare = bare.removeprefix(word)
    return replace(look.slots("dried_early"), part=bare, too_early=True)


def _sprayed(look: Look) -> bool:
    return any(map(is_sprayed, look.world.state.rounds.values()))


_ASKS_OR_AHEAD = Pattern(
    rf"{BEGINS_AS_ASKED}(?! not\b)|\b(?:if|in case|make sure|nothing|nowhere|about to|going to|will|until|not sure"
    r"|before(?! i)|do not know|think|might)\b"
)
WORDS = words_in(_SPRAYED_OVER, _LEFT_OUT, _GOT_IN, _CUT_SHORT, _ITS_CLOTH)
"""Words that the rules here turn on."""
