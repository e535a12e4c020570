"""Learned weights as a small file: packed by the development command that trains them, looked up as they lie.

A feature is kept by its checksum alone, in order, so that hardly anything is worked out at start-up: opening it takes
some twenty milliseconds, a look half a microsecond. Two features of a text fall on one checksum once in some hundred
thousand.

The file is base64 of: how many features there are and how long the head is; the head (JSON, deflated: labels, bias,
scale, the texts it was trained on); the lower halves of the checksums; and the rest, deflated: how many features have
each upper half and how many weights each feature has (a byte each), every weight's label and every weight (a byte
each).
"""

from __future__ import annotations

import binascii
import json
import sys
import zlib
from array import array
from bisect import bisect_left
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from itertools import accumulate

from assistant.understand.matching.learning import Linear, Row, Weights, by_label, fingerprint

_LINE = 120
_SIZES = 8
"""Bytes before the head."""
_HALF = 16
"""Bits of a checksum's lower half."""
_UPPER = 1 << _HALF
_LARGEST = 127


@dataclass(frozen=True)
class Learned:
    """A model and what it was trained on."""

    model: Linear
    texts: Mapping[str, Sequence[str]]
    """Texts it was trained on, by label, masked: start-up needn't read and mask thousands of phrasings again."""
    trained_on: str


def packed(
    labels: tuple[str, ...],
    bias: tuple[float, ...],
    weights: Mapping[str, Weights],
    rows: Sequence[Row] = (),
    keep: Sequence[Row] = (),
) -> bytes:
    """A model as it is kept in a file.

    labels: 255 at most.
    rows: what it was trained on, for the mark that tells whether the file is out of date.
    keep: those whose texts are kept with it.
    """
    scale = max((abs(weight) for row in weights.values() for _, weight in row), default=1.0) / _LARGEST
    by_checksum: dict[int, Weights] = {}
    for feature, row in weights.items():
        by_checksum.setdefault(zlib.crc32(feature.encode()), row)  # of two on one checksum the first stands for both
    uppers, lowers, counts, places, small = bytearray(_UPPER), array("H"), bytearray(), bytearray(), bytearray()
    for checksum in sorted(by_checksum):
        kept = [(place, whole) for place, weight in by_checksum[checksum] if (whole := round(weight / scale))]
        uppers[checksum >> _HALF] += 1
        lowers.append(checksum & (_UPPER - 1))
        counts.append(len(kept))
        places += bytes(place for place, _ in kept)
        small += bytes(weight & 0xFF for _, weight in kept)
    head = {"labels": labels, "bias": [round(one, 4) for one in bias], "scale": scale, "texts": by_label(keep)}
    first = zlib.compress(json.dumps({**head, "trained_on": fingerprint(rows)}).encode(), 9)
    rest = zlib.compress(bytes(uppers + counts + places + small), 9)
    sizes = _little(array("I", (len(lowers), len(first))))
    text = binascii.b2a_base64(sizes + first + _little(lowers) + rest, newline=False)
    return b"\n".join(text[at : at + _LINE] for at in range(0, len(text), _LINE)) + b"\n"


def opened(content: bytes) -> Learned:
    """A model from its file's content."""
    raw = binascii.a2b_base64(content)
    count, size = _from_little(array("I"), raw[:_SIZES])
    begin = _SIZES + size
    head = json.loads(zlib.decompress(raw[_SIZES:begin]))
    ends = begin + 2 * count
    lowers, rest = _from_little(array("H"), raw[begin:ends]), zlib.decompress(raw[ends:])
    look = _Looked(lowers, rest, head["scale"])
    return Learned(Linear(tuple(head["labels"]), tuple(head["bias"]), look), head["texts"], head["trained_on"])


class _Looked:
    """Looks a feature's weights up in the packed bytes."""

    def __init__(self, lowers: array[int], rest: bytes, scale: float) -> None:
        places = _UPPER + len(lowers)
        many = (len(rest) - places) // 2
        self._lowers = lowers
        self._buckets = array("I", accumulate(rest[:_UPPER], initial=0))
        self._begins = array("I", accumulate(rest[_UPPER:places], initial=0))
        self._places, self._weights = rest[places : places + many], rest[places + many :]
        self._weight_of = tuple(scale * (byte - 256 if byte > _LARGEST else byte) for byte in range(256)).__getitem__

    def __call__(self, feature: str) -> Weights | None:
        upper, lower = divmod(zlib.crc32(feature.encode()), _UPPER)
        end = self._buckets[upper + 1]
        at = bisect_left(self._lowers, lower, self._buckets[upper], end)
        if at == end or self._lowers[at] != lower:
            return None
        row = slice(self._begins[at], self._begins[at + 1])
        return zip(self._places[row], map(self._weight_of, self._weights[row]), strict=True)


def _from_little(numbers: array[int], raw: bytes) -> array[int]:
    numbers.frombytes(raw)
    if sys.byteorder == "big":
        numbers.byteswap()
    return numbers


def _little(numbers: array[int]) -> bytes:
    if sys.byteorder == "big":
        numbers.byteswap()
    return numbers.tobytes()
