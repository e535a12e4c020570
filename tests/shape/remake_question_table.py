"""Writes the README's table of questions anew from intents/; run it after adding or renaming a question.

python tests/shape/remake_question_table.py
"""

from __future__ import annotations

import re
from pathlib import Path

from assistant.say.wording import FAMILIES
from assistant.store.packaged import read_questions

README = Path(__file__).parents[2] / "README.md"
HEAD = "| question | what it answers | say, for example |\n|---|---|---|\n"
TABLE = re.compile(re.escape(HEAD) + r"(?:\|.*\n)*")


def question_table() -> str:
    """The table as it should stand: family by family, in each by name."""
    questions = sorted(read_questions().values(), key=lambda one: (FAMILIES.index(one.family), one.name))
    return HEAD + "".join(f"| `{one.name}` | {one.about} | {one.example} |\n" for one in questions)


def main() -> None:
    text = README.read_text(encoding="utf-8")
    README.write_text(TABLE.sub(lambda _: question_table(), text, count=1), encoding="utf-8")


if __name__ == "__main__":
    main()
