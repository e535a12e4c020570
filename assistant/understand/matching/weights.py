"""Learned weights as a small file: packed by the development command that trains them, looked up as they lie.

A feature is kept by its checksum alone, in order, so that hardly anything is unpacked at start-up: opening it takes a
few milliseconds, a look half a microsecond. Two features of a text fall on one checksum once in some hundred thousand.

The file is base64 of: how many features there are and how long the head is, the head (JSON, deflated: labels, bias,
scale, the texts it was trained on), the checksums, how many weights each feature has (a byte), and the weights as
pairs of bytes, label's place and weight.
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
    checksums, counts, pairs = array("I"), bytearray(), bytearray()
    for checksum, row in sorted((zlib.crc32(feature.encode()), row) for feature, row in weights.items()):
        if checksums and checksums[-1] == checksum:
            continue  # two features on one checksum: the first stands for both
        checksums.append(checksum)
        small = [(place, round(weight / scale)) for place, weight in row]
        kept = [(place, weight) for place, weight in small if weight]
        counts.append(len(kept))
        for place, weight in kept:
            pairs += bytes((place, weight & 0xFF))
    head = {"labels": labels, "bias": [round(one, 4) for one in bias], "scale": scale, "texts": by_label(keep)}
    first = zlib.compress(json.dumps({**head, "trained_on": fingerprint(rows)}).encode(), 9)
    sizes = _little(array("I", (len(checksums), len(first))))
    text = binascii.b2a_base64(sizes + first + _little(checksums) + bytes(counts) + bytes(pairs), newline=False)
    return b"\n".join(text[at : at + _LINE] for at in range(0, len(text), _LINE)) + b"\n"


def opened(content: bytes) -> Learned:
    """A model from its file's content."""
    raw = binascii.a2b_base64(content)
    count, size = _array(raw[:_SIZES])
    begin = _SIZES + size
    head = json.loads(zlib.decompress(raw[_SIZES:begin]))
    checksums = _array(raw[begin : begin + 4 * count])
    ends = begin + 4 * count
    begins = array("I", accumulate(raw[ends : ends + count], initial=0))
    look = _Looked(checksums, begins, raw[ends + count :], head["scale"])
    return Learned(Linear(tuple(head["labels"]), tuple(head["bias"]), look), head["texts"], head["trained_on"])


class _Looked:
    """Looks a feature's weights up in the packed bytes."""

    def __init__(self, checksums: array[int], begins: array[int], pairs: bytes, scale: float) -> None:
        self._checksums = checksums
        self._begins = begins
        self._pairs = pairs
        self._weight_of = tuple(scale * (byte - 256 if byte > _LARGEST else byte) for byte in range(256)).__getitem__

    def __call__(self, feature: str) -> Weights | None:
        checksum = zlib.crc32(feature.encode())
        at = bisect_left(self._checksums, checksum)
        if at == len(self._checksums) or self._checksums[at] != checksum:
            return None
        row = self._pairs[2 * self._begins[at] : 2 * self._begins[at + 1]]
        return zip(row[::2], map(self._weight_of, row[1::2]), strict=True)


def _array(raw: bytes) -> array[int]:
    numbers = array("I", raw)
    if sys.byteorder == "big":
        numbers.byteswap()
    return numbers


def _little(numbers: array[int]) -> bytes:
    if sys.byteorder == "big":
        numbers.byteswap()
    return numbers.tobytes()
