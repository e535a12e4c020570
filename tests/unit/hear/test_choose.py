from __future__ import annotations

import sys
from pathlib import Path

import pytest

from assistant.hear.choose import find_model, open_recogniser
from assistant.hear.recogniser import CannotListen, pieces
from assistant.hear.vocabulary import Sayable
from assistant.hear.vosk_engine import lacking

SAID = Sayable({"next": ("what is next",)}, {})


def model(folder: Path) -> Path:
    for name in ("am/final.mdl", "conf/mfcc.conf", "graph/HCLG.fst"):
        (folder / name).parent.mkdir(parents=True, exist_ok=True)
        (folder / name).write_bytes(b"not a model")
    return folder


def test_no_folder_and_an_empty_folder_choose_no_model(tmp_path: Path) -> None:
    assert find_model(tmp_path / "none").chosen is None
    assert find_model(tmp_path).chosen is None
    assert str(tmp_path) in find_model(tmp_path).says


def test_a_model_in_the_folder_is_chosen_and_of_two_the_first_by_name(tmp_path: Path) -> None:
    model(tmp_path / "b")
    assert find_model(tmp_path).chosen == tmp_path / "b"
    model(tmp_path / "a")
    found = find_model(tmp_path)
    assert found.chosen == tmp_path / "a"
    assert "from 2" in found.says


def test_the_models_folder_may_itself_be_the_model(tmp_path: Path) -> None:
    assert find_model(model(tmp_path)).chosen == tmp_path


def test_an_archive_that_was_not_unpacked_is_pointed_out(tmp_path: Path) -> None:
    (tmp_path / "some-model.zip").touch()
    found = find_model(tmp_path)
    assert found.chosen is None
    assert "unpack some-model.zip" in found.says


def test_what_a_model_lacks_is_named(tmp_path: Path) -> None:
    model(tmp_path)
    assert lacking(tmp_path) == ()
    (tmp_path / "graph" / "HCLG.fst").unlink()
    (tmp_path / "conf" / "mfcc.conf").write_bytes(b"")
    assert lacking(tmp_path) == ("conf/mfcc.conf", "graph/HCLG.fst")


def test_a_broken_model_is_one_line_and_never_passed_over(tmp_path: Path) -> None:
    broken = model(tmp_path / "models" / "broken")
    (broken / "graph" / "HCLG.fst").unlink()
    with pytest.raises(CannotListen) as caught:
        open_recogniser(SAID, tmp_path / "models", tmp_path / "cache")
    line = str(caught.value)
    assert "\n" not in line
    assert "graph/HCLG.fst" in line
    assert str(broken) in line


def test_without_any_engine_the_line_says_to_type(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setitem(sys.modules, "pocketsphinx", None)
    with pytest.raises(CannotListen, match="type instead"):
        open_recogniser(SAID, tmp_path, tmp_path / "cache")


def test_pieces_are_what_a_microphone_hands_over_and_nothing_is_lost() -> None:
    sound = bytes(range(256)) * 5
    cut = list(pieces(sound, 20))
    assert [len(piece) for piece in cut] == [640, 640]
    assert b"".join(pieces(sound[:1001])) == sound[:1001]
