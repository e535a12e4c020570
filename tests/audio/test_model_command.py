"""`rinseback model`, with the small Korean model packed as an archive and served on this computer."""

from __future__ import annotations

import os
import subprocess
import sys
import zipfile
from pathlib import Path

import pytest
from audio.test_both_engines import korean_model
from web import Served, web_server

from assistant.hear.choose import find_model
from assistant.shells.model import bar
from assistant.store.unpacking import sha256

pytestmark = pytest.mark.audio
if os.environ.get("CI") != "true":
    pytest.importorskip("vosk")


def model(home: Path, *arguments: str) -> subprocess.CompletedProcess[str]:
    command = [sys.executable, "-m", "assistant", "model", *arguments, "--home", str(home)]
    return subprocess.run(command, capture_output=True, text=True, check=False, timeout=120)


@pytest.fixture(scope="module")
def archive(tmp_path_factory: pytest.TempPathFactory) -> Path:
    folder, path = korean_model(), tmp_path_factory.mktemp("packed") / "packed.zip"
    with zipfile.ZipFile(path, "w", zipfile.ZIP_STORED) as out:
        for file in sorted(folder.rglob("*")):
            if file.is_file():
                out.write(file, Path("small-korean") / file.relative_to(folder))
    return path


def test_it_is_fetched_checked_and_used_from_then_on(archive: Path, tmp_path: Path) -> None:
    with web_server(Served(archive.read_bytes(), breaks_after=10_000_000)) as served:
        broken = model(tmp_path, served.address)
        assert broken.returncode == 2
        assert "goes on from here" in broken.stderr
        assert find_model(tmp_path / "models").chosen is None
        served.breaks_after = None
        done = model(tmp_path, served.address, "--sha256", sha256(archive))
        assert done.returncode == 0, done.stderr
        assert served.asked[1] == "bytes=10000000-"
    assert "a spoken clip was decoded" in done.stdout
    assert find_model(tmp_path / "models").chosen == tmp_path / "models" / "small-korean"
    assert not (tmp_path / "cache" / "fetched").exists(), "the archive is left behind"
    check = [sys.executable, "-m", "assistant", "check", "--home", str(tmp_path)]
    found = subprocess.run(check, capture_output=True, text=True, check=False).stdout
    assert "vosk, model small-korean" in " ".join(found.split())


def test_a_wrong_checksum_puts_nothing_in_place(archive: Path, tmp_path: Path) -> None:
    refused = model(tmp_path, str(archive), "--sha256", "0" * 64)
    assert refused.returncode == 2
    assert "checksum" in refused.stderr
    assert archive.exists(), "the keeper's own file is left alone"
    assert find_model(tmp_path / "models").chosen is None


def test_a_model_that_doesnt_load_puts_nothing_in_place(tmp_path: Path) -> None:
    path = tmp_path / "broken.zip"
    with zipfile.ZipFile(path, "w") as out:
        for name in ("am/final.mdl", "conf/mfcc.conf", "graph/HCLG.fst"):
            out.writestr(f"broken/{name}", "no model")
    refused = model(tmp_path, str(path))
    assert refused.returncode == 2
    assert len(refused.stderr.splitlines()) == 1, refused.stderr
    assert "nothing was put into the models folder" in refused.stderr
    assert list((tmp_path / "models").iterdir()) == []


def test_the_bar_fills() -> None:
    assert bar(0, 40_000_000).startswith("[.....")
    assert bar(20_000_000, 40_000_000) == f"[{'#' * 15}{'.' * 15}] 20 of 40 MB"
    assert bar(5_000_000, None) == "5 MB"
