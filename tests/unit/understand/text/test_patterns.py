"""Patterns are compiled late and hinted at; neither may change what they find."""

from __future__ import annotations

import re
import tomllib
from pathlib import Path

from assistant.understand.air import openings
from assistant.understand.harm import idioms as harm_idioms
from assistant.understand.harm import patterns as harm_patterns
from assistant.understand.parsing import Parser
from assistant.understand.reader import Reader
from assistant.understand.steps import claimed_steps, step_patterns
from assistant.understand.text.patterns import Pattern

HERE = Path(__file__).parent
FOLDER = HERE.parents[2] / "phrasings"


def _hinted() -> dict[str, Pattern]:
    found = {f"{module.__name__}.{name}": value for module in (harm_patterns, harm_idioms, claimed_steps, openings)
             for name, value in vars(module).items() if isinstance(value, Pattern)}  # fmt: skip
    found |= {f"step {place} {step}": pattern for place, (step, pattern) in enumerate(step_patterns.STEPS)}
    return found


def test_no_hint_hides_what_a_pattern_would_find(reader: Reader) -> None:
    parse: Parser = reader._parser
    texts = [
        case["said"] for file in FOLDER.glob("*.toml") for case in tomllib.loads(file.read_text("utf-8"))["phrases"]
    ]
    texts += [text for module in ("harm/test_cries", "steps/test_claimed_steps", "text/test_short_slips")
              for text in (HERE.parent / f"{module}.py").read_text("utf-8").splitlines()]  # fmt: skip
    for said in texts:
        plain = parse(said).plain
        for name, pattern in _hinted().items():
            if re.search(pattern.source, plain):
                assert pattern.search(plain), (name, plain)


def test_a_pattern_finds_what_res_does() -> None:
    pattern = Pattern(r"\b(a+)b\b", "ab")
    assert pattern.search("x aab y") is not None
    assert pattern.match("aab") is not None
    assert pattern.search("b") is None
    assert pattern.sub("c", "aab d") == "c d"
    assert pattern.sub("c", "b d") == "b d"
    assert [found.group(1) for found in pattern.finditer("ab aab")] == ["a", "aa"]
    assert list(pattern.finditer("x")) == []
    assert Pattern(",").split("a,b") == ["a", "b"]
