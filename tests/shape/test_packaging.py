"""What is installed: every folder of code that the program has."""

from __future__ import annotations

import tomllib
from pathlib import Path

ROOT = Path(__file__).parents[2]


def test_every_folder_of_code_is_packaged() -> None:
    packaged = set(tomllib.loads((ROOT / "pyproject.toml").read_text("utf-8"))["tool"]["setuptools"]["packages"])
    folders = {".".join(file.parent.relative_to(ROOT).parts) for file in (ROOT / "assistant").rglob("__init__.py")}
    assert packaged == folders | {"assistant.intents"}
