"""Where replies and complaints go: stdout for the one, one line on stderr for the other."""

from __future__ import annotations

import shutil
import sys

from assistant.contract import Reply
from assistant.shells.json_reply import json_line
from assistant.shells.options import Options
from assistant.shells.screen import screen_lines


def show(reply: Reply, options: Options) -> None:
    """The reply on stdout, as one line of JSON or as the screen shows it, at once."""
    if options.json:
        print(json_line(reply), flush=True)
    else:
        print("\n".join(screen_lines(reply, shutil.get_terminal_size().columns)), flush=True)


def complain(what: str) -> None:
    """One line on stderr."""
    print(f"rinseback: {' '.join(what.split())}", file=sys.stderr, flush=True)
