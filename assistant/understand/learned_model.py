"""The learned weights as a model; each feature's row is read when it is first needed."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from functools import lru_cache

from assistant.understand import learned as written
from assistant.understand.learning import Linear


class _Rows(Mapping[str, tuple[tuple[int, float], ...]]):
    """Rows as written, "feature<tab>place:weight ...", weights in hundredths."""

    def __init__(self, text: str) -> None:
        self._written: dict[str, str] = {}
        for line in text.splitlines():
            feature, _, row = line.partition("\t")
            self._written[feature] = row

    def __getitem__(self, feature: str) -> tuple[tuple[int, float], ...]:
        pairs = (pair.split(":") for pair in self._written[feature].split())
        return tuple((int(place), int(weight) / 100) for place, weight in pairs)

    def __contains__(self, feature: object) -> bool:
        return feature in self._written

    def __iter__(self) -> Iterator[str]:
        return iter(self._written)

    def __len__(self) -> int:
        return len(self._written)


@lru_cache(maxsize=1)
def learned() -> Linear:
    """The model that was trained last."""
    return Linear(written.LABELS, written.BIAS, _Rows(written.WEIGHTS))
