"""How common an English word is, from the word list that comes with pyspellchecker.

That library's own reader takes a third of a second for the list; one word is found in it as it lies in a millisecond,
and most turns hold none that isn't known already. The list counts words in film subtitles: people talking.
"""

from __future__ import annotations

import gzip
from functools import cache, lru_cache
from importlib.util import find_spec
from pathlib import Path

_LIST = "resources/en.json.gz"
_DIGITS = 12
"""More than any count has."""


@lru_cache(maxsize=4000)
def usage(word: str) -> int:
    """How often a word was counted; 50 for one that is right and hardly ever met, 0 for one that isn't in the list.

    word: in small letters.
    """
    words, entry = _words(), f'\n"{word}": '.encode()
    at = words.find(entry)
    return int(words[at + len(entry) : at + len(entry) + _DIGITS].partition(b",")[0]) if at >= 0 else 0


@cache
def _words() -> bytes:
    """The list, a word a line; empty where it isn't installed."""
    spec = find_spec("spellchecker")  # its folder, without importing what reads it all
    folders = spec.submodule_search_locations if spec is not None else None
    file = Path(folders[0]) / _LIST if folders else None
    return gzip.decompress(file.read_bytes()) if file is not None and file.exists() else b""
