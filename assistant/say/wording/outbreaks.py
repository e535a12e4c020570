"""How an outbreak is spoken of, and a group that is changed."""

from __future__ import annotations

from collections.abc import Callable, Mapping

from assistant.contract import Answer, Line
from assistant.say.wording.alarms import NOT_INSTEAD
from assistant.say.wording.plain import capital, listed

FIRST = {
    "mites": "Nothing leaves that enclosure. Bag and bin its porous things, paper floor. Your vet treats the animal.",
    "crypto": "Nothing leaves that enclosure, its tools stay for good. Porous things binned. Ring your vet first.",
    "breathing": "Another room, its own air, no spray near it. Own tools, new gloves, cleaned last. Ring your vet.",
    "any": "Nothing leaves that enclosure: own tools, new gloves, cleaned last. Ring your vet before any treatment.",
}

AS = {
    "sick": "sick, cleaned last of all",
    "new": "as quarantine, after the healthy ones",
    "healthy": "healthy again, cleaned with the others",
}


def _first(answer: Answer) -> Line:
    details = answer.details
    home, facts = details["home"], details["facts"]
    asks = "Which enclosure?" if home is None else "" if details["sick"] else f"Mark {home.name} sick?"
    say = f"{FIRST[details['kind']]} {asks}".strip()
    shown = [say]
    if details["organism"] is not None:
        works = listed(details["works"]) or "nothing on my shelf of studies; ask your vet"
        shown.append(f"Works on {details['organism'].name}, as studied: {works}.")
    shown += [f"- {fact.says}." for fact in facts]
    shown += [f"Note: {fact.note}" for fact in facts if fact.note]
    shown += [f"Vet: {details['people'].vet or 'yours (set vet in keeping.toml)'}", NOT_INSTEAD]
    return Line(say, "\n".join(shown))


def _mark_which(answer: Answer) -> Line:
    group = {"sick": "sick", "new": "as quarantine", "healthy": "healthy"}[answer.details["group"]]
    return Line(f"Mark which enclosure {group}?")


def _mark(answer: Answer) -> Line:
    home, group = answer.details["home"], answer.details["group"]
    vet = " Only once your vet says so." if group == "healthy" else ""
    return Line(f"Mark {home.name} {AS[group]}?{vet} Yes?")


def _marked(answer: Answer) -> Line:
    home, group = answer.details["home"], answer.details["group"]
    say = f"{capital(home.name)}: {AS[group]}, noted."
    more = {"sick": " Own tools, new gloves.", "new": " Own tools.", "healthy": ""}[group]
    again = [other.name for other in answer.details["again"]]
    if again:
        more += f" Quarantine starts again: {listed(again[:2])}."
    kept = 'Kept on my record, over "group" in keeping.toml, until that line is changed.'
    return Line(say + more, f"{say}{more}\n{kept}")


def _already(answer: Answer) -> Line:
    group = {"sick": "sick", "new": "new, in quarantine", "healthy": "healthy"}[answer.details["group"]]
    return Line(f"{capital(answer.details['home'].name)} is {group} on my record already.")


STANDS = {"sick": "stays sick", "new": "stays in quarantine", "healthy": "stays healthy"}
IS = {"sick": "is sick", "new": "is in quarantine", "healthy": "is healthy"}


def _as_it_stands(answer: Answer) -> Line:
    """How it stands on record, and that nothing changes there."""
    home, good, fact = answer.details["home"], answer.details["good"], answer.details["fact"]
    if home is None:
        stands = "Nothing is changed on my record."
    elif good:
        stands = f"{capital(home.name)} {STANDS[home.group]} on my record, nothing is changed."
    else:
        stands = f"{capital(home.name)} {IS[home.group]} on my record."
    if fact is not None:
        return Line(f"{fact.says}. {stands.replace(', nothing is changed', '')}")
    return Line(f"Good. {stands}" if good else f"All right. {stands}" if answer.details["unmarked"] else stands)


def _over(answer: Answer) -> Line:
    fact = answer.details["fact"]
    if answer.details["mites"]:
        say = f"{fact.says}: practice, no trial. Ask your vet."
    else:
        say = "Only your vet can say, by tests, more than one. Until then it stays apart, cleaned last."
    return Line(say, f"{say}\n{fact.says}.")


LINES: Mapping[str, Callable[[Answer], Line]] = {
    "outbreaks.first": _first,
    "outbreaks.as_it_stands": _as_it_stands,
    "outbreaks.over": _over,
    "outbreaks.mark_which": _mark_which,
    "outbreaks.mark": _mark,
    "outbreaks.marked": _marked,
    "outbreaks.already": _already,
}
