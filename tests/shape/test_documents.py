"""The documents tell what is there: commands, questions, and a sitting that comes out as printed."""

from __future__ import annotations

import re
from importlib.resources import files
from pathlib import Path

import pytest

from assistant.shells.cli import COMMANDS

ROOT = Path(__file__).parents[2]
README = (ROOT / "README.md").read_text(encoding="utf-8")


@pytest.mark.parametrize("command", sorted(COMMANDS))
def test_the_readme_names_every_command(command: str) -> None:
    assert "`rinseback`" in README if command == "chat" else f"`rinseback {command}" in README


def test_the_readmes_first_paragraph_states_the_job() -> None:
    first = README.split("\n\n")[1]
    for word in ("reptile keeper", "concentrate", "wet", "go back", "splash"):
        assert word in first


def test_the_readme_begins_with_the_two_commands() -> None:
    blocks = re.findall(r"^```sh\n(.*?)^```$", README, re.MULTILINE | re.DOTALL)
    assert len(blocks) == 2
    assert "rinseback --demo" in blocks[0]
    assert "pytest" in blocks[1]


def test_the_packaged_data_is_what_the_source_tree_holds() -> None:
    for package, folder in (("assistant.intents", "intents"), ("assistant.facts", "assistant/facts")):
        packaged = {path.name for path in files(package).iterdir() if path.name.endswith(".toml")}
        source = {path.name for path in (ROOT / folder).glob("*.toml")}
        assert packaged == source, f"{folder}: install again"


def test_the_documents_hold_no_path_of_one_machine() -> None:
    for path in (
        *ROOT.glob("*.md"),
        *ROOT.glob("docs/*.md"),
        ROOT / "models" / "README.md",
        *(ROOT / "tests" / "bench").glob("*.md"),
    ):
        assert not re.search(r"/(work|home/\w+|root|tmp/venv)\b", path.read_text(encoding="utf-8")), path.name
