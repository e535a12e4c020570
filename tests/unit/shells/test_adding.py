"""`add` in the chat: asked there, written with what stands in the file kept, known at once, and never deaf to a cry."""

from __future__ import annotations

import asyncio
import json
from collections.abc import Iterator
from pathlib import Path

import pytest
from prompt_toolkit.history import InMemoryHistory

from assistant.contract import Heard
from assistant.shells.chat import Chat
from assistant.shells.cli import main
from assistant.shells.folder import Folder
from assistant.shells.sitting import Sitting, open_sitting

from .conftest import HOUSEHOLD
from .test_chat import HandClock, Terminal, terminal


@pytest.fixture
def keeping(tmp_path: Path) -> Path:
    path = tmp_path / "keeping.toml"
    path.write_bytes(HOUSEHOLD.read_bytes())
    return path


@pytest.fixture
def sitting(keeping: Path) -> Iterator[Sitting]:
    with open_sitting(Folder(keeping.parent)) as opened:
        yield opened


def typed(sitting: Sitting, keeping: Path, *turns: tuple[str, str]) -> str:
    """What a chat shows while each line is typed once the text before it has come up."""

    async def talk(at: Terminal) -> str:
        chat = Chat(sitting, HandClock(), InMemoryHistory(), keeping=keeping)
        running = asyncio.create_task(chat.run())
        for awaited, line in turns:
            await at.until(awaited)
            at.keys.send_text(line + "\r")
        await asyncio.sleep(0.05)
        at.keys.send_text("\x04")
        await running
        return at.shown.getvalue()

    with terminal(120) as at:
        return asyncio.run(talk(at))


A_BOTTLE = (("no clock is running", "add a bottle"), ("by name", "amber bottle"), ("How much does it hold", "300 mL"))


def test_a_bottle_is_asked_for_written_and_known_at_once(sitting: Sitting, keeping: Path) -> None:
    before = keeping.read_text(encoding="utf-8")
    typed(
        sitting, keeping, *A_BOTTLE, ("Which product", "shed bleach"), ("At what mix", "stop"), ("is in", "how are you")
    )
    after = keeping.read_text(encoding="utf-8")
    assert all(line in after for line in before.splitlines())  # comments too
    assert 'name = "amber bottle"' in after
    added = sitting.household.bottle("amber bottle")
    assert added is not None
    assert added.stock == "shed bleach"
    reply = sitting.hear(Heard("how much bleach for the amber bottle at one in ten"), HandClock()())
    assert reply.intent == "dose"
    assert float(reply.values["total"].amount) == 300


def test_a_cry_among_the_questions_is_answered_and_the_question_asked_again(sitting: Sitting, keeping: Path) -> None:
    shown = typed(
        sitting,
        keeping,
        *A_BOTTLE[:2],
        ("How much does it hold", "bleach in my eye"),
        ("Rinse that eye", "300 mL"),
        ("Which product", "stop"),
        ("is in", "hush"),
    )
    assert shown.count("How much does it hold") >= 2
    assert [clock.place for clock in sitting.state().rinses] == ["eye"]
    assert sitting.household.bottle("amber bottle") is not None


def test_gas_that_is_told_among_the_questions_is_no_answer(sitting: Sitting, keeping: Path) -> None:
    shown = typed(
        sitting,
        keeping,
        *A_BOTTLE[:2],
        ("How much does it hold", "I just mixed bleach and vinegar in the bucket"),
        ("Get out", "300 mL"),
        ("Which product", "stop"),
        ("is in", "hush"),
    )
    assert shown.count("How much does it hold") >= 2
    assert sitting.household.bottle("amber bottle") is not None


def test_stopped_before_its_size_is_known_nothing_is_kept(sitting: Sitting, keeping: Path) -> None:
    before = keeping.read_bytes()
    shown = typed(sitting, keeping, *A_BOTTLE[:2], ("How much does it hold", "stop"), ("Stopped", "hush"))
    assert "is not kept" in shown
    assert keeping.read_bytes() == before


def test_control_c_among_the_questions_ends_them_and_not_the_chat(sitting: Sitting, keeping: Path) -> None:
    before = keeping.read_bytes()
    shown = typed(sitting, keeping, ("no clock is running", "add a tank"), ("by name", "\x03"), ("Stopped", "help"))
    assert "outrank anything" in shown
    assert keeping.read_bytes() == before


def test_what_sort_of_thing_is_asked_when_it_is_not_said(sitting: Sitting) -> None:
    now = HandClock()()
    asked = sitting.hear(Heard("add something to my household"), now)
    assert (asked.outcome.value, asked.missing) == ("ask", ("adds",))
    assert sitting.hear(Heard("a syringe"), now).values["adds"] == "measure"


def test_where_nobody_can_be_asked_it_tells_where(keeping: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["ask", "add a bottle", "--home", str(keeping.parent), "--json"]) == 0
    reply = json.loads(capsys.readouterr().out)
    assert reply["values"] == {"adds": "bottle", "recorded": False}
    assert "rinseback setup" in reply["say"]
