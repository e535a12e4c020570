"""Two wet times told of in one breath, and not alike: "the tank stayed wet, the box dried"."""

from __future__ import annotations

from dataclasses import replace

from assistant.contract import Reading
from assistant.core.round.rounds import hold_is_over, waits_on_hold
from assistant.understand.look import BY_RULE, Look
from assistant.understand.steps.named_in_clauses import named_in_clauses
from assistant.understand.steps.stayed_wet import cannot_tell
from assistant.understand.steps.wet_answered import is_half_an_answer, wet_said
from assistant.understand.text.patterns import Pattern

_ENDS = frozenset((",", ".", ";", "!", "and", "but", "while", "though", "whereas"))
_HOMES = frozenset(("ENCLOSURE", "ANIMAL"))
_DRIED = Pattern(
    r"\b(?:dried|dry|patchy|streaky|did not|was not|has not|not so|never stayed)\b"
    r"|\bnot (?:the |my )?(?:ENCLOSURE|ANIMAL)"
)
_WET = Pattern(r"\b(?:wet|fine|ok|good|did|was|stayed)\b")
_NOT_TOLD = Pattern(r"\b(?:nearly|almost|if|will|going to|about to|until|before|can|should|when|how|is it)\b|\?$")


def wet_apart(look: Look) -> Reading | None:
    """Each enclosure with its own answer, where one stayed wet and another didn't; None: nothing of the kind.

    Only of those whose wet time isn't served yet, and only where each clause names one of them.
    """
    answered = _answers_several(look)
    if answered is not None:
        return answered
    plain = look.parsed.plain
    if not look.parsed.mentions or ("wet" not in plain.split() and not _asked_lately(look)) or _NOT_TOLD.search(plain):
        return None
    on_hold = {name for name, round_ in look.world.state.rounds.items() if waits_on_hold(round_)}
    wet: dict[str, bool] = {}
    for clause, mentions in named_in_clauses(look.parsed, _ENDS, _HOMES):
        homes = {thing.name for mention in mentions for thing in mention.things} & on_hold
        if len(homes) > 1:
            return None
        dried = _DRIED.search(clause) is not None
        if homes and (dried or _WET.search(clause)):
            wet[homes.pop()] = not dried
    if len(wet) < 2 or len(set(wet.values())) < 2:
        return None
    return _told_apart(look, wet)


def _answers_several(look: Look) -> Reading | None:
    """What answers "did it stay wet?", put for several at once: "river yes, desert no", "nope", "no idea", "mostly".

    What says it of none of them by name is of all. A bare "yes" is left to be asked of each.
    """
    plain, world = look.parsed.plain.strip(" .!,"), look.world
    rounds = world.state.rounds.items()
    asked = tuple(name for name, one in rounds if waits_on_hold(one) and hold_is_over(one, world.now))
    said_last = world.talk.prompt or world.talk.last
    if len(asked) < 2 or world.waiting is not None or said_last is None or len(said_last.reminders) < 2:
        return None
    if not is_half_an_answer(plain):
        return None
    if look.claims.done and set(look.claims.done) - {"dry", "hold"}:
        return None
    wet: dict[str, bool] = {}
    names = False
    for clause, mentions in named_in_clauses(look.parsed, _ENDS, _HOMES):
        homes = {thing.name for mention in mentions for thing in mention.things}
        homes |= {name for name in asked if name.split()[0] in clause.split()}
        names = names or bool(homes)
        said = _NO_YES.search(clause)
        for home in homes & set(asked):
            if said is not None:
                wet[home] = said["yes"] is not None
    if wet and not all(wet.values()):
        return _told_apart(look, wet)
    if names or _NOT_TOLD.search(plain):
        return None
    of_all = _BOTH.sub(" ", plain).strip(" ,")
    if wet_said(of_all) not in ("dried", "unsure") and not cannot_tell(plain):
        return None
    slots = replace(look.slots("done"), steps=("hold",), enclosures=asked, choices=(), stayed_wet=False)
    return look.reading("done", slots, BY_RULE)


_NO_YES = Pattern(
    r"\b(?:no|nope|not|did not|dried|dry|patchy|unsure)\b"
    r"|\b(?P<yes>yes|yeah|yep|did|stayed|wet|fine|ok)\b"
)
_BOTH = Pattern(r"\b(?:both|all|of them|they|two)\b")


def _told_apart(look: Look, wet: dict[str, bool]) -> Reading:
    """Each enclosure with its own answer."""
    slots = replace(
        look.slots("done"),
        steps=("hold",),
        enclosures=tuple(wet),
        choices=(),
        stayed_wet=None,
        apart=tuple((name, ("hold",)) for name in wet),
        dried_apart=tuple(name for name, stayed in wet.items() if not stayed),
    )
    return look.reading("done", slots, BY_RULE)


def _asked_lately(look: Look) -> bool:
    """The tool has just asked whether they stayed wet: then "the tank was fine" is an answer."""
    return bool(look.claims.stayed_wet is not None or look.told.dried or "not" in look.parsed.plain.split())
