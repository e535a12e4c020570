"""What is said first while an animal is loose: nothing is sprayed before it is found."""

from __future__ import annotations

from assistant.contract import Answer, Line
from assistant.say.wording.plain import MOST_WORDS, capital, listed


def while_loose(line: Line, answer: Answer) -> Line:
    """The line after a word on the animals that are loose, if the answer names any; `next` is then to find them."""
    homes = answer.details.get("loose", ())
    if not homes:
        return line
    animals = listed(home.animal if home is not None and home.animal else "an animal" for home in homes)
    first = f"{capital(animals)} still loose: spray nothing, find it first, tell me when it's found."
    say = f"{first} {line.say}"
    only = answer.message == "the_round.next" or len(say.split()) > MOST_WORDS
    return Line(first if only else say, f"{first}\n{line.show or line.say}")
