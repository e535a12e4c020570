"""A whole sitting, played through the real command line on the demo household."""

from __future__ import annotations

import contextlib
import io
import json
from pathlib import Path
from typing import Any

from assistant.shells.cli import main


def play(script: Path) -> list[dict[str, Any]]:
    """Every reply of a rehearsal script, as the JSON that a caller gets."""
    out = io.StringIO()
    with contextlib.redirect_stdout(out):
        code = main(["rehearse", str(script), "--demo", "--json"])
    assert code == 0, f"{script.name} ended with {code}"
    return [json.loads(line) for line in out.getvalue().splitlines()]
