"""What is said before going on with the work: an eye or skin to be rinsed first, an animal loose to be found first."""

from __future__ import annotations

from assistant.contract import Answer, Line
from assistant.say.wording.plain import MOST_WORDS, capital, listed, span


def told_first(line: Line, answer: Answer) -> Line:
    """The line after what comes before the work."""
    return _with_others_noted(_while_loose(_while_rinsing(line, answer), answer), answer)


def _with_others_noted(line: Line, answer: Answer) -> Line:
    """The line with what else was told in the same breath: bottles that are noted, and those to be told of again."""
    noted, again = answer.details.get("noted_too", ()), answer.details.get("tell_again", ())
    told = f"{capital(listed(noted))}: noted." if noted else ""
    told = f"{told} Tell me of the {listed(again)} again.".strip() if again else told
    if not told:
        return line
    say = f"{line.say} {told}"
    return Line(line.say if len(say.split()) > MOST_WORDS else say, f"{line.show or line.say}\n{told}")


def _while_rinsing(line: Line, answer: Answer) -> Line:
    """The line after a word on who is still being rinsed, if the answer names any."""
    rinsing = answer.details.get("rinsing", ())
    if not rinsing:
        return line
    first = f"{capital(rinsing[0].step)} first: keep rinsing, {span(rinsing[0].seconds)} left."
    say = f"{first} {line.say}"
    return Line(first if len(say.split()) > MOST_WORDS else say, f"{first}\n{line.show or line.say}")


def _while_loose(line: Line, answer: Answer) -> Line:
    """The line after a word on the animals that are loose, if the answer names any; `next` is then to find them."""
    homes = answer.details.get("loose", ())
    if not homes:
        return line
    animals = listed(home.animal if home is not None and home.animal else "an animal" for home in homes)
    first = f"{capital(animals)} still loose: spray nothing, find it first, tell me when it's found."
    say = f"{first} {line.say}"
    only = answer.message == "the_round.next" or len(say.split()) > MOST_WORDS
    return Line(first if only else say, f"{first}\n{line.show or line.say}")
