"""What plainly goes on from the answer just given, in words that would be another question by themselves.

"What do I do first", after a mite was seen, is of the mite; "do I carry on spraying", after an escape, is of that.
"""

from __future__ import annotations

from assistant.contract import Reading
from assistant.understand.look import BY_RULE, Look
from assistant.understand.text.patterns import Pattern

_WHAT_DO_I_DO = r"(?:what|what else) (?:do|should|must|can|shall) (?:i|we) (?:need to |have to )?do"
_OPENS = r"(?:(?:and|so|ok|but|right|well|now|then|please|oh|god|help|,) ?)*"
_ON: dict[str, Pattern] = {
    "escape": Pattern(
        rf"{_OPENS}(?:do|should|can|shall|may|must) (?:i|we) (?:just )?(?:carry on|keep|continue|go on|stop|finish)\b"
        r"(?! (?:him|her|it|them)\b).*"
    ),
    "outbreak": Pattern(rf"{_OPENS}{_WHAT_DO_I_DO}(?: first| now| next| about it| then| with (?:him|her|it|them))*"),
    "unknown_bottle": Pattern(
        rf"{_OPENS}{_WHAT_DO_I_DO}(?: with| about) (?:it|that|this|the bottle|the thing)(?: then| now| instead)*"
    ),
    "spill": Pattern(
        rf"{_OPENS}(?:do|should|must|shall) (?:i|we) (?:need to |have to |got to )*(?:get|move|take|carry|bring"
        rf"|put) (?:all )?"
        r"(?:the |my )?(?:animals?|them|him|her|everyone|everybody|tubs?|ANIMAL|ENCLOSURE|others)\b.*\b(?:out"
        r"|away|next door"
        r"|another room|upstairs|elsewhere)\b.*"
    ),
    "top_up": Pattern(
        rf"{_OPENS}(?:it is only from this morning ,? ?)?{_OPENS}how much (?:of (?:each|both)|water and how much"
        rf"|of what"
        r"|(?:AGENT|STOCK) and how much)\b.*"
    ),
}
"""By the question just answered: what goes on from it."""


def plainly_on(look: Look) -> Reading | None:
    """The question before once more; None: it is something else, or nothing was answered just now."""
    before = look.world.talk.just_answered
    if before is None or before.intent not in _ON or before.doubts or look.claims.done:
        return None
    if _ON[before.intent].fullmatch(look.parsed.plain.strip(" .!?,")) is None:
        return None
    return Reading(look.parsed.text, before.intent, before.slots, BY_RULE, look.nearest, (), look.spoken)
