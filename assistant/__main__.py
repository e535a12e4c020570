"""`python -m assistant` is `rinseback`."""

from __future__ import annotations

import sys

from assistant.shells.cli import main

sys.exit(main())
