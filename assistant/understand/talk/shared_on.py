"""What goes on from whether a thing may go from there to here: "and from the hospital tub?", "and back?", "the cloth?".

A way that is half the last question's and half this one's is a wrong answer, so both ends are looked at here, by rule.
"""

from __future__ import annotations

from dataclasses import replace

from assistant.contract import Outcome, Pending, Reading, Slots
from assistant.understand.asked import Asked
from assistant.understand.look import Look
from assistant.understand.named.from_to import ends_after, ends_in, turned_round
from assistant.understand.question.slots import homes_in
from assistant.understand.text.patterns import Pattern


def shared_on(look: Look, pending: Pending | None) -> Reading | None:
    """The reading with both ends as they are meant now; None: it isn't about that, or not only."""
    before = _asked_of_sharing(look, pending)
    plain = look.parsed.plain.strip(" .!,")
    if before is None or not _NOTHING_ELSE.fullmatch(plain):
        return None
    if look.claims.done and not _GOES_ON.match(plain):
        return None  # "clover's back", "pepper is out": told of the animal
    slots = look.slots("share_tool")
    ends = ends_in(plain, homes_in(look.parsed, Asked("share_tool", look.claims, look.world)))
    turned = turned_round(plain)
    if not ends and not turned and not slots.items:
        return None
    taken = ends_after(_last_way(before, look), ends, turned)
    meant = replace(
        before.slots,
        taken=taken,
        items=slots.items or before.slots.items,
        enclosures=(),
        choices=slots.choices,
        unknown=slots.unknown,
    )
    return replace(before, question=look.parsed.text, slots=meant, confidence=max(before.confidence, 0.9), doubts=())


def _asked_of_sharing(look: Look, pending: Pending | None) -> Reading | None:
    if pending is not None and pending.reading.intent == "share_tool" and "enclosure" in pending.missing:
        return pending.reading
    last, before = look.world.talk.last, look.world.talk.last_reading
    if last is None or before is None or last.intent != "share_tool" or before.intent != "share_tool":
        return None
    return before


def _last_way(before: Reading, look: Look) -> tuple[str, str]:
    """From where to where it was answered last, with what stood for an unsaid end; else what was said so far."""
    last = look.world.talk.last
    if last is not None and last.intent == "share_tool" and last.outcome is Outcome.ANSWER:
        return str(last.values["from"]), str(last.values["to"])
    return _said(before.slots)


def _said(slots: Slots) -> tuple[str, str]:
    if slots.taken is not None:
        return slots.taken
    return (slots.enclosures[0] if slots.enclosures else "", "")


_GOES_ON = Pattern(
    r"(?:(?:ok|so|no|sorry) )*(?:and|or|what|how|if|from|then)\b(?! (?:he|she|it|ENCLOSURE|ANIMAL) ?(?:is|'s)\b)"
)
_NOTHING_ELSE = Pattern(
    r"(?:(?:ENCLOSURE|ANIMAL|and|or|so|ok|no|nope|not|wait|sorry|actually|i|we|you|meant|mean|said|rather|what|how"
    r"|about|if|it|they|them|that|those|this|these|the|a|an|my|our|his|her|its|their|any|all|one|ones|same|same for"
    r"|was|were|been|has|have|had|can|could|may|should|use|used|using|go|goes|going|come|came|comes|then|now|from|to"
    r"|into|in|on|onto|of|off|out|after|for|with|at|over|between|back|again|round|around|other|opposite|wrong|way"
    r"|direction|vice|versa|reverse|too|also|as|well|instead|straight|new|quarantined?|isolation|newcomers?|arrivals?"
    r"|animals?|sick|ill|poorly|infected|hospital|crypto|positive|healthy|residents?|clean|normal|others|rest|tub"
    r"|tank|box|cage|viv|tongs?|tweezers|forceps|hooks?|scoops?|nets?|tools?|brush(?:es)?|cloths?|gloves?|sponges?"
    r"|rags?|bowls?|dish(?:es)?|hides?|branch(?:es)?|scissors|bucket|spatula)(?: ?'s)?(?: |$|(?= ?[,?]))|[,?] ?)+"
)
"""Places, things, and the small words between them: nothing that is another question."""
