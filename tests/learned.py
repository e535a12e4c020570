"""What is learned from: phrasings by the matcher; cries by harm's part, as they are read in the demo household; and
what was said right after an answer, as the matcher takes it."""

from __future__ import annotations

from talk import demo
from tool import FACTS, QUESTIONS

from assistant.store.english import usage
from assistant.store.packaged import cry_lines, follow_up_lines, outside_lines
from assistant.understand.harm.learned_cries import rows_of_cries
from assistant.understand.matching.clauses import with_clauses
from assistant.understand.matching.learning import Row, by_label, fingerprint
from assistant.understand.matching.matching import Matcher, rows_of
from assistant.understand.matching.weights import opened
from assistant.understand.parsing import phrasing_words
from assistant.understand.question.own_question import ABOUT_TALK
from assistant.understand.reader import parser_of
from assistant.understand.rule_words import OF_THE_RULES
from assistant.understand.talk.learned_on import Chances, FollowUp, Kinds, rows_of_follow_ups


def rows_of_questions() -> list[Row]:
    """Masked phrasings and lines outside, with their question."""
    return rows_of(QUESTIONS, outside_lines())


def rows_of_harm() -> list[Row]:
    """Cries and all that is none."""
    parse = parser_of(demo(), FACTS, Matcher(by_label(rows_of_questions()), None).vocabulary | OF_THE_RULES, usage)
    return rows_of_cries(cry_lines(), QUESTIONS, outside_lines(), lambda text: parse(text).plain)


def rows_of_talk() -> list[Row]:
    """Follow-ups as a mark is made of them; what they show depends on what was learned of the questions as well."""
    rows = [(f"{line.before} > {line.text}", line.meant) for line in _follow_ups()]
    return [*rows, (fingerprint(rows_of_questions()), "questions")]


def shown_in_talk(learned_of_questions: bytes) -> list[tuple[Kinds, str]]:
    """What every follow-up shows, and its label."""
    learned = opened(learned_of_questions)
    matcher = Matcher(learned.texts, learned.model)

    def looked_at(text: str) -> tuple[tuple[str, ...], Chances]:
        words = phrasing_words(text)
        return words, with_clauses(text.split(), words, matcher.chances, ABOUT_TALK).chances

    return rows_of_follow_ups(_follow_ups(), outside_lines(), looked_at)


def _follow_ups() -> list[FollowUp]:
    return [FollowUp(*line) for line in follow_up_lines()]
