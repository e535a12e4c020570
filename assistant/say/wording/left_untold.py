"""That a part of what was told is not recorded: a chore told in one breath with a fill, or a fill with a chore.

And that something told of a surface was kept, to be asked about.
"""

from __future__ import annotations

from dataclasses import replace

from assistant.contract import Answer, Line
from assistant.say.wording.plain import MOST_WORDS

LEFT = {
    "chore": "The chore isn't logged: tell me that alone.",
    "bottle": "The bottle isn't recorded: tell me that alone.",
    "remark": "Noted too: I'll ask before it goes back.",
}


def with_what_is_left(line: Line, answer: Answer) -> Line:
    """The same line and what it leaves out; where both are too long to say, that much is said, and the rest shown."""
    left = LEFT.get(str(answer.details.get("left_untold")))
    if left is None:
        return line
    say = f"{line.say} {left}"
    if len(say.split()) > MOST_WORDS:
        say = line.say if left == LEFT["remark"] else left  # of a spill, what to do comes first
    return replace(line, say=say, show=f"{line.show or line.say}\n{left}")
