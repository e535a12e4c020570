"""Makes the golden files anew: `python tests/conversations/remake.py [NAME ...]`. Read the diff before committing."""

from __future__ import annotations

import json
import re
import sys
from pathlib import Path

HERE = Path(__file__).parent
sys.path.insert(0, str(HERE.parent))

from sitting import play  # noqa: E402

MEANING = ("question", "intent", "outcome", "values", "missing", "cautions", "reminders")


def meaning_of(replies: list[dict[str, object]]) -> str:
    """What each reply means, a line a turn: exact."""
    return "".join(json.dumps({key: reply[key] for key in MEANING}) + "\n" for reply in replies)


def wording_of(replies: list[dict[str, object]]) -> str:
    """What each reply says and shows, for reading; without the nearest questions, which shift with every phrasing."""
    text = "".join(f"K: {reply['question']}\nR: {reply['say']}\n{reply['show']}\n\n" for reply in replies)
    return re.sub(r"(?m)(Did you mean:|Nearest I have:) .*$", r"\1 ...", text)


def main(names: list[str]) -> None:
    for script in sorted(HERE.glob("*.txt")):
        if not names or script.stem in names:
            replies = play(script)
            script.with_suffix(".jsonl").write_text(meaning_of(replies), encoding="utf-8")
            script.with_suffix(".say").write_text(wording_of(replies), encoding="utf-8")


if __name__ == "__main__":
    main(sys.argv[1:])
