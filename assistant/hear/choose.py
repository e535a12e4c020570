"""Which recogniser this computer gets: Vosk when the keeper has put a model in the models folder, else pocketsphinx."""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path

from assistant.hear.recogniser import CannotListen, Recogniser
from assistant.hear.vocabulary import Sayable, sentences


@dataclass(frozen=True)
class ModelsFound:
    """What lies in the models folder."""

    chosen: Path | None
    """The model to use, or None."""
    says: str
    """One line on what was found and what was chosen."""


def find_model(models: Path) -> ModelsFound:
    """Look for a Vosk model: the folder itself, or a folder in it. Of several, the first by name."""
    from assistant.hear.vosk_engine import looks_like_model

    if not models.is_dir():
        return ModelsFound(None, f"no models folder ({models})")
    if looks_like_model(models):
        return ModelsFound(models, f"a Vosk model in {models}")
    try:
        inside = sorted(models.iterdir())
    except OSError as fault:
        return ModelsFound(None, f"the models folder can't be read ({models}: {fault.strerror})")
    found = [folder for folder in inside if folder.is_dir() and looks_like_model(folder)]
    if found:
        more = f", chosen by name from {len(found)}" if len(found) > 1 else ""
        return ModelsFound(found[0], f"a Vosk model in {found[0]}{more}")
    packed = [path.name for path in inside if path.suffix.lower() in (".zip", ".gz", ".tgz", ".xz")]
    if packed:
        return ModelsFound(None, f"no unpacked model in {models}; unpack {packed[0]} there")
    return ModelsFound(None, f"no Vosk model in {models}")


def open_recogniser(said: Sayable, models: Path, cache: Path) -> Recogniser:
    """The recogniser to listen with.

    said: from `vocabulary.sayable`.
    models: where a Vosk model may lie; it need not exist.
    cache: where pocketsphinx keeps its vocabulary between starts, and which model was tried out; made when absent.
    Fails: CannotListen with one line. A broken model isn't passed over in silence: the keeper put it there to be used.
    """
    found = find_model(models)
    if found.chosen is not None:
        from assistant.hear.vosk_engine import Vosk, load_model, try_out

        try_out(found.chosen, cache)
        return Vosk(load_model(found.chosen), sentences(said), found.chosen.name)
    try:
        import pocketsphinx  # noqa: F401
    except (ImportError, OSError) as fault:
        raise CannotListen(
            f"no recogniser: the package pocketsphinx can't be loaded ({fault}), and there is {found.says}",
            str(models),
            "type instead, or put a Vosk model there; models/README.md says how",
        ) from fault
    from assistant.hear.pocketsphinx_engine import Pocketsphinx, vocabulary

    return Pocketsphinx(vocabulary(said, cache))
