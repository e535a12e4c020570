"""Change the rate of sound without letting one pitch pass for another.

A windowed-sinc filter cuts everything above half the lower rate before samples are dropped. Written here in a few
lines, since the resamplers in libraries would bring much more than this one job.
"""

from __future__ import annotations

from math import gcd

import numpy as np
from numpy.typing import NDArray

Samples = NDArray[np.float64]

_ZEROS = 24
"""Zero crossings of the sinc on each side: the longer, the steeper the cut."""
_KAISER = 8.6
"""Shape of the window: about 90 dB down beyond the cut (Kaiser's formula, 0.1102 (A - 8.7); from memory)."""
_PASSED = 0.94
"""Of half the lower rate, so that the slope of the cut lies below it."""
_BLOCK = 1 << 12
"""Output samples worked out at once, which bounds the memory."""


def resample(samples: Samples, from_hz: int, to_hz: int) -> Samples:
    """The same sound at another rate; its length in seconds is kept to within one sample.

    Each output sample is the filter, laid over the input at that moment. The moments fall on `up` places between two
    samples, so that many filters are made once and shared.
    """
    if from_hz == to_hz or not len(samples):
        return samples
    shared = gcd(from_hz, to_hz)
    up, down = to_hz // shared, from_hz // shared
    cut = _PASSED * min(1.0, up / down)
    reach = int(np.ceil(_ZEROS / cut))
    filters = _filters(up, cut, reach)
    padded = np.concatenate([np.zeros(reach), samples, np.zeros(reach + 1)])
    count = -(-len(samples) * up // down)
    out = np.empty(count)
    windows = np.lib.stride_tricks.sliding_window_view(padded, 2 * reach + 1)
    for begin in range(0, count, _BLOCK):
        place = np.arange(begin, min(begin + _BLOCK, count), dtype=np.int64) * down
        out[begin : begin + len(place)] = np.einsum("st,st->s", windows[place // up], filters[place % up])
    return out


def _filters(up: int, cut: float, reach: int) -> Samples:
    """One filter for each place between two samples, each passing a steady level unchanged."""
    taps = np.arange(-reach, reach + 1)
    distance = taps[None, :] - np.arange(up)[:, None] / up
    inside = np.clip(1 - (distance / (reach + 1)) ** 2, 0, None)
    filters = cut * np.sinc(cut * distance) * np.i0(_KAISER * np.sqrt(inside)) / np.i0(_KAISER)
    return np.asarray(filters / filters.sum(axis=1, keepdims=True), dtype=np.float64)
