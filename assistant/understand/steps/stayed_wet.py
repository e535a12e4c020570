"""What is said of whether a surface stayed wet all its time: "wet throughout", "it dried out", "I couldn't see"."""

from __future__ import annotations

from assistant.understand.text.patterns import Pattern

_STAYED = Pattern(
    r"\b(?:stayed|kept|remained|been)(?: \w+){0,3} wet\b|\bwet (?:the )?(?:whole|entire|full|all)\b"
    r"|^(?:yes|yeah|yep)?[ ,]*(?:it|they|that|all of it) (?:was|were)(?: still| all)? wet(?: throughout| all along)?$"
    r"|(?<!\bi )(?<!\bwe )\bnever dried\b(?! (?:it|the|that|this))|\bit did not dry\b"
)
_WENT_DRY = Pattern(
    r"\bdid not (?:stay|keep|remain)(?: \w+){0,2} wet\b|\bdried (?:out|up|off|early|too)\b|\bwent"
    r" dry\b|\bnothing (?:really )?(?:stayed|kept|was|is) wet\b|\bnot (?:stay |stayed |kept "
    r"|remained )?(?:\w+ )?wet\b|^(?:no )?(?:it )?dried$"
)
_NOT_SEEN = Pattern(
    r"\b(?:(?:do|did|could|can|would) not (?:really |even )?"
    r"(?:know|see|tell|say|remember|recall|look|notice|watch|check)"
    r"|not (?:so |too |very |really |quite )?(?:sure|certain)|no (?:idea|clue)|hard to (?:say|tell|see)"
    r"|(?:fell|was|been) asleep|was (?:away|out|not (?:there|here|in|looking|watching))"
    r"|(?:i|we) (?:must have )?(?:nodded|dozed) off|forgot to (?:look|check)|too dark|who knows"
    r"|(?:was|were) (?:on the (?:phone|toilet|loo)|upstairs|downstairs|outside|elsewhere|next door)"
    r"|(?:if|whether|hope) (?:it|that|they|the ENCLOSURE|ENCLOSURE))\b"
)


def cannot_tell(text: str) -> bool:
    """True when a text says that the keeper didn't see how it went: "it was dark, I couldn't see"."""
    return _NOT_SEEN.search(text) is not None


SIDE = r"(?:(?:left|right|back|front|top|bottom|far|near|one|other) )*"
"""Which one of several alike: "the back left"."""
SURFACE = (
    r"lid|floor|base|bottom|top|sides?|back|front|doors?|glass|walls?|corners?|ends?|hide|shelf|seams?|edges?|roof"
    r"|mesh|middle"
)
"""What may have dried alone, as alternatives."""
_NOT_ALL_WET = Pattern(
    r"\b(?:except|apart from|aside from|other than|but for|bar|save for|all but|mostly|most of|mainly|nearly all"
    r"|almost all|almost|nearly|partly|partially|in places|half of it|some of it|too early|too soon|at first"
    r"|to begin with|for a bit|for a while|until about|till about|but not)\b"
    r"|\bbut (?:\S+ ){1,4}(?:dried|dry|rinsed|wiped)\b"
    r"|\b(?:some|most|half|parts?|bits|much) of it(?: is| 's)? still wet\b|\bhere and there\b"
    rf"|\bonly (?:\w+ ){{0,2}}(?:{SURFACE})(?: is| 's| are)? still wet\b"
    rf"|\bstill wet (?:on|at|in) the (?:\w+ )?(?:{SURFACE})\b"
)
""" "Wet, but for the lid", "mostly": not all of it, or not all the time."""


NEVER_WET = r"\bnever (?:stayed|got|was|were|kept) (?:\w+ )?wet\b"
_PART = rf"{SIDE}(?:{SURFACE})"
_A_PART_DRIED = Pattern(rf"\b{_PART} (?:did not|never|not|no|was not|were not)\b(?! (?:dry|dried))|{NEVER_WET}")
_A_PART_ALONE = Pattern(rf"\b{_PART} (?:stayed|kept|was|were|remained)(?: \w+){{0,2}}? wet\b")
_AFTER_ALL_NOT = Pattern(
    r"\bwet\b.*\b(?:i mean|wait|no|actually|sorry|well|or rather)\b[ ,]*(?:it |that |they )?(?:did not|was not|were not"
    r"|not)(?: really| quite)?$"
)
""" "Stayed wet, I mean it didn't"."""
_NEVER_DRIED = Pattern(
    r"\b(?:(?<!\bi )(?<!\bwe )never dried|it did not dry|has not dried)\b(?! (?:it|the|that|this)\b)"
)
_WET_OR_YES = Pattern(r"\bwet\b|^(?:yes|yeah|yep)\b")
_ALL_OF_IT = Pattern(r"\b(?:all|everything|whole|every|throughout|too|as well)\b")
""" "The bottom stayed wet" tells nothing of the rest."""


def stayed_wet(text: str) -> bool | None:
    """Whether a surface is said to have stayed wet all its time; None: nothing is said, or nobody saw."""
    if cannot_tell(text):
        return None
    if _A_PART_DRIED.search(text) or _AFTER_ALL_NOT.search(text.strip(" .!")):
        return False
    if _A_PART_ALONE.search(text) and not _ALL_OF_IT.search(text):
        return None
    if _NOT_ALL_WET.search(text) and (_STAYED.search(text) or _WET_OR_YES.search(text)):
        return False
    if _NEVER_DRIED.search(text):
        return True
    if _WENT_DRY.search(text):
        return False
    return True if _STAYED.search(text) else None


PATTERNS = (_NOT_SEEN, _STAYED, _WENT_DRY)
"""Those whose words are known words."""
