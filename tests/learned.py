"""What is learned from: phrasings by the matcher; by harm's part cries, as they are read in the demo household."""

from __future__ import annotations

from talk import demo
from tool import FACTS, QUESTIONS

from assistant.store.english import usage
from assistant.store.packaged import cry_lines, outside_lines
from assistant.understand.harm.learned_cries import rows_of_cries
from assistant.understand.matching.learning import Row, by_label
from assistant.understand.matching.matching import Matcher, rows_of
from assistant.understand.reader import parser_of
from assistant.understand.rule_words import OF_THE_RULES


def rows_of_questions() -> list[Row]:
    """Masked phrasings and lines outside, with their question."""
    return rows_of(QUESTIONS, outside_lines())


def rows_of_harm() -> list[Row]:
    """Cries and all that is none."""
    parse = parser_of(demo(), FACTS, Matcher(by_label(rows_of_questions()), None).vocabulary | OF_THE_RULES, usage)
    return rows_of_cries(cry_lines(), QUESTIONS, outside_lines(), lambda text: parse(text).plain)
