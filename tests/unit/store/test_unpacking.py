"""Archives that somebody else made."""

from __future__ import annotations

import errno
import io
import stat
import tarfile
import zipfile
from pathlib import Path

import pytest

from assistant.store import unpacking
from assistant.store.unpacking import BadArchive, put_in_place, sha256, unpacked


def zipped(folder: Path, *names: str, content: bytes = b"x" * 10) -> Path:
    path = folder / "packed.zip"
    with zipfile.ZipFile(path, "w", zipfile.ZIP_DEFLATED) as out:
        for name in names:
            out.writestr(name, content)
    return path


def taped(folder: Path, *infos: tarfile.TarInfo) -> Path:
    path = folder / "packed.tar.gz"
    with tarfile.open(path, "w:gz") as out:
        for info in infos:
            out.addfile(info, io.BytesIO(bytes(info.size)))
    return path


def entry(name: str, kind: bytes = tarfile.REGTYPE, link: str = "", size: int = 0) -> tarfile.TarInfo:
    info = tarfile.TarInfo(name)
    info.type, info.linkname, info.size = kind, link, size
    return info


def test_files_and_folders_come_out_and_are_gone_afterwards(tmp_path: Path) -> None:
    archive = zipped(tmp_path, "model/am/final.mdl", "model/conf/")
    with unpacked(archive, tmp_path / "models") as place:
        assert (place / "model" / "am" / "final.mdl").read_bytes() == b"x" * 10
    assert list((tmp_path / "models").iterdir()) == []


def test_a_tape_comes_out_too(tmp_path: Path) -> None:
    with unpacked(taped(tmp_path, entry("model/am/final.mdl", size=7)), tmp_path) as place:
        assert (place / "model/am/final.mdl").read_bytes() == bytes(7)


OUTSIDE = ("../evil", "model/../../evil", "/evil", "C:\\evil", "..\\evil", "model\\..\\..\\evil")


@pytest.mark.parametrize("name", OUTSIDE)
def test_a_path_that_leads_out_is_refused(name: str, tmp_path: Path) -> None:
    models = tmp_path / "deep" / "models"
    for archive in (zipped(tmp_path, "model/fine", name), taped(tmp_path, entry("model/fine"), entry(name))):
        with pytest.raises(BadArchive, match="outside its folder"), unpacked(archive, models):
            pass
        assert not list(tmp_path.rglob("*evil*"))
        assert list(models.iterdir()) == []


@pytest.mark.parametrize("kind", [tarfile.SYMTYPE, tarfile.LNKTYPE, tarfile.CHRTYPE, tarfile.FIFOTYPE])
def test_links_and_devices_are_refused(kind: bytes, tmp_path: Path) -> None:
    archive = taped(tmp_path, entry("model/link", kind, "/etc"), entry("model/link/evil", size=3))
    with pytest.raises(BadArchive, match="link or a device"), unpacked(archive, tmp_path / "models"):
        pass


def test_a_link_in_a_zip_is_refused(tmp_path: Path) -> None:
    path = tmp_path / "packed.zip"
    with zipfile.ZipFile(path, "w") as out:
        info = zipfile.ZipInfo("model/link")
        info.external_attr = (stat.S_IFLNK | 0o777) << 16
        out.writestr(info, "/etc")
    with pytest.raises(BadArchive, match="link or a device"), unpacked(path, tmp_path / "models"):
        pass


def test_one_that_swells_beyond_measure_is_refused(tmp_path: Path) -> None:
    archive = zipped(tmp_path, "model/zeros", content=bytes(50_000_000))
    assert archive.stat().st_size < 60_000
    with pytest.raises(BadArchive, match="swells to 50 MB"), unpacked(archive, tmp_path / "models"):
        pass


def test_too_many_files_are_refused(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(unpacking, "MOST_FILES", 3)
    with pytest.raises(BadArchive, match="4 files"), unpacked(zipped(tmp_path, "a", "b", "c", "d"), tmp_path / "m"):
        pass


def test_a_broken_or_another_kind_of_file_is_one_line(tmp_path: Path) -> None:
    whole = zipped(tmp_path, "model/a", content=bytes(range(256)) * 100).read_bytes()
    spoilt = bytearray(whole)
    spoilt[60:90] = bytes(30)
    for content, says in ((b"hello", "neither a zip"), (bytes(spoilt), "broken"), (whole[:-30], "neither a zip")):
        path = tmp_path / "other.zip"
        path.write_bytes(content)
        with pytest.raises(BadArchive, match=says) as fault, unpacked(path, tmp_path / "models"):
            pass
        assert "\n" not in str(fault.value)


def test_a_full_disk_is_one_line_and_leaves_nothing(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    def full(*_: object) -> None:
        raise OSError(errno.ENOSPC, "no space left on device")

    monkeypatch.setattr(unpacking, "_write", full)
    archive, models = zipped(tmp_path, "model/a"), tmp_path / "models"
    with pytest.raises(BadArchive, match="disk is too full"), unpacked(archive, models):
        pass
    assert list(models.iterdir()) == []


def test_a_checksum_is_that_of_the_standard(tmp_path: Path) -> None:
    # FIPS 180-2, appendix B.1: SHA-256 of "abc".
    (tmp_path / "abc").write_bytes(b"abc")
    assert sha256(tmp_path / "abc") == "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad"


def test_what_was_in_its_place_is_replaced(tmp_path: Path) -> None:
    for name in ("new", "kept"):
        (tmp_path / name).mkdir()
        (tmp_path / name / "which").write_text(name)
    put_in_place(tmp_path / "new", tmp_path / "kept")
    assert (tmp_path / "kept" / "which").read_text() == "new"
    assert [path.name for path in tmp_path.iterdir()] == ["kept"]
