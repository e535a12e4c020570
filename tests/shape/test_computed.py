"""The page of calculations names what is there: modules, facts, tests; and no calculation of core is left off it."""

from __future__ import annotations

import ast
import re
from pathlib import Path

import pytest

from assistant.core.facts import Facts

ROOT = Path(__file__).parents[2]
CORE = ROOT / "assistant" / "core"
PAGE = (ROOT / "docs" / "how-numbers-are-computed.md").read_text(encoding="utf-8")
PARTS = ("Formula", "Units", "Source", "Limits", "Checked by")
FACT_ID = re.compile(r"[a-z]+(?:-[a-z0-9]+)+")
MODULE = re.compile(r"(?:core|answer)/(?:\w+/)?\w+\.py")
ENTRIES = dict(re.findall(r"^### (.+)\n((?:(?!##).*\n?)*)", PAGE, re.MULTILINE))
EXAMPLE = "code-type-with-dashes"
"""How the page's first lines show what an id looks like."""


def in_code(text: str) -> list[str]:
    return re.findall(r"`([^`\n]+)`", text)


def cites_a_source(module: Path) -> bool:
    """Whether a public function of it states a source in its docstring."""
    tree = ast.parse(module.read_text(encoding="utf-8"))
    public = (one for one in tree.body if isinstance(one, ast.FunctionDef) and not one.name.startswith("_"))
    return any(re.search(r"^\s*Source:", ast.get_docstring(one) or "", re.MULTILINE) for one in public)


CALCULATING = sorted(
    f"core/{module.relative_to(CORE).as_posix()}" for module in CORE.rglob("*.py") if cites_a_source(module)
)


@pytest.mark.parametrize("heading", ENTRIES)
def test_an_entry_names_its_module_and_has_all_its_parts(heading: str) -> None:
    modules = in_code(heading)
    assert len(modules) == 1
    assert MODULE.fullmatch(modules[0])
    assert (ROOT / "assistant" / modules[0]).is_file()
    assert tuple(re.findall(r"^- ([A-Z][a-z ]+):", ENTRIES[heading], re.MULTILINE)) == PARTS


@pytest.mark.parametrize("heading", ENTRIES)
def test_an_entry_is_checked_by_tests_that_exist(heading: str) -> None:
    tests = in_code(ENTRIES[heading].partition("- Checked by:")[2])
    assert tests
    assert [test for test in tests if not (test.startswith("tests/") and (ROOT / test).is_file())] == []


def test_every_fact_named_is_packaged(facts: Facts) -> None:
    named = {word for word in in_code(PAGE) if FACT_ID.fullmatch(word)} - {EXAMPLE}
    assert len(named) > 50
    assert named - {fact.id for fact in facts.all()} == set()


def test_what_the_page_calls_practice_or_memory_is_that_and_nothing_else_is(facts: Facts) -> None:
    """`a`, `b` (common practice ...): the bracket is for every id before it, back to the last bracket or semicolon."""
    kinds = {fact.id: fact.kind for fact in facts.all()}
    for heading, body in ENTRIES.items():
        source = " ".join(body.partition("- Source:")[2].partition("- Limits:")[0].split())
        for ids, bracket in re.findall(r"([^();]*)\(([^()]*)\)", source):
            told = {"common practice": "practice", "from memory": "memory"}
            kind = next((kind for words, kind in told.items() if bracket.startswith(words)), "published")
            wrong = {word: kinds[word] for word in in_code(ids) if FACT_ID.fullmatch(word) and kinds[word] != kind}
            assert wrong == {}, heading


@pytest.mark.parametrize("module", CALCULATING)
def test_a_module_that_cites_a_source_has_its_entry(module: str) -> None:
    assert module in {name for heading in ENTRIES for name in in_code(heading)}


def test_the_pages_that_lead_to_it_do() -> None:
    for name in ("README.md", "DEVELOPERS.md"):
        assert "docs/how-numbers-are-computed.md" in (ROOT / name).read_text(encoding="utf-8")
