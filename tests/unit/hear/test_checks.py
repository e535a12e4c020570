from __future__ import annotations

import sys
from types import SimpleNamespace
from typing import Any

import pytest

from assistant.hear.checks import microphone_works
from assistant.hear.recogniser import CannotListen


class PortAudioError(Exception):
    pass


def devices(query: Any) -> SimpleNamespace:
    return SimpleNamespace(
        PortAudioError=PortAudioError, query_devices=query, check_input_settings=lambda **settings: None
    )


def test_a_microphone_is_named(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setitem(sys.modules, "sounddevice", devices(lambda kind: {"name": f"the desk's ({kind})"}))
    assert microphone_works() == "the desk's (input), 16000 samples a second"


def test_no_microphone_is_one_line_with_another_way(monkeypatch: pytest.MonkeyPatch) -> None:
    def none(kind: str) -> None:
        raise PortAudioError("Error querying device -1")

    monkeypatch.setitem(sys.modules, "sounddevice", devices(none))
    with pytest.raises(CannotListen, match="rinseback hear"):
        microphone_works()


def test_a_missing_package_is_one_line(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setitem(sys.modules, "sounddevice", None)
    with pytest.raises(CannotListen, match="pip install sounddevice"):
        microphone_works()
