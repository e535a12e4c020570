"""Of which enclosures a step is told: named, the only one that it fits, the one just spoken of; or it is asked."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace

from assistant.answer.asking import ask
from assistant.answer.which import open_rounds, which_rounds
from assistant.contract import Answer, Reading, World
from assistant.core.record.state import Round
from assistant.core.round.claims import judge
from assistant.core.round.rounds import hold_is_over, is_open


def of_its_own_bottle(claim: Reading, world: World) -> Reading:
    """ "Sprayed with the pink": of the one clean that waits for that, and nothing is put right elsewhere."""
    slots = claim.slots
    if slots.steps[:1] != ("apply",) or _says_which(claim) or len(slots.bottles) != 1:
        return claim
    rounds = open_rounds(world)
    theirs = [r for r in rounds if r.bottle in slots.bottles and "apply" not in r.done]
    if len(theirs) != 1 or len(rounds) < 2:
        return claim
    return replace(claim, slots=replace(slots, enclosures=(theirs[0].enclosure,), corrects=False))


def which_are_meant(claim: Reading, step: str, world: World) -> tuple[str, ...] | Answer:
    """The enclosures that a claim is of; the only one with that step still to do, or the only one that it fits."""
    if claim.slots.corrects:
        return which_rounds(claim, world, lambda round_: step in round_.done)
    if step == "hold" and claim.slots.stayed_wet:  # what still runs can't have stayed wet the whole time
        over = which_rounds(claim, world, lambda round_: hold_is_over(round_, world.now))
        if not isinstance(over, Answer):
            return over
    first = which_rounds(claim, world, lambda round_: _still_to_do(round_, step, world))
    if step == "apply" and not isinstance(first, Answer) and _is_anothers(first, claim, world):
        return _ask_which(claim, open_rounds(world), world)
    if step == "return" and not _says_which(claim):  # it may be the one whose home is wet still
        out = [r for r in open_rounds(world) if "move out" in r.done and not r.put_back]
        if len(out) > 1:
            return _ask_which(claim, out, world)
    found = first if not isinstance(first, Answer) else which_rounds(claim, world, lambda r: _would_fit(r, step, world))
    return found if isinstance(found, Answer) else _the_one_spoken_of(found, step, claim, world)


def _says_which(claim: Reading) -> bool:
    return bool(claim.slots.enclosures) or claim.slots.every_enclosure


def _ask_which(claim: Reading, rounds: Iterable[Round], world: World) -> Answer:
    candidates = tuple(round_.enclosure for round_ in rounds)
    return ask(claim, world, ("enclosure",), "the_round.which", {"candidates": candidates})


def _the_one_spoken_of(names: tuple[str, ...], step: str, claim: Reading, world: World) -> tuple[str, ...]:
    """ "Washed it", right after "pepper's out": of hers, where the only one that it fits has been washed before."""
    last = world.talk.last
    just = world.state.rounds.get(str(last.values.get("enclosure"))) if last is not None else None
    if _says_which(claim) or len(names) != 1 or just is None or not is_open(just):
        return names
    done_before = step in world.state.rounds[names[0]].done
    return (just.enclosure,) if done_before and step in just.steps and step not in just.done else names


def _is_anothers(names: tuple[str, ...], claim: Reading, world: World) -> bool:
    """Whether the bottle that is named is another open clean's, and of none of those: it is asked which is sprayed."""
    if _says_which(claim) or not claim.slots.bottles:
        return False
    theirs = {round_.enclosure for round_ in open_rounds(world) if round_.bottle in claim.slots.bottles}
    return bool(theirs) and theirs.isdisjoint(names)


def _would_fit(round_: Round, step: str, world: World) -> bool:
    return judge(round_, step, world.now).fit in ("fits", "vouch", "early")


def _still_to_do(round_: Round, step: str, world: World) -> bool:
    """It fits and isn't done yet: "rinsed" is of the one that waits to be rinsed, before the one that was."""
    return step not in round_.done and _would_fit(round_, step, world)
