"""Which end of the way a place is, and which ends a follow-up keeps."""

from __future__ import annotations

import pytest

from assistant.understand.named.from_to import End, ends_after, ends_in, turned_round


@pytest.mark.parametrize(
    ("plain", "ends"),
    [
        ("from ENCLOSURE to ENCLOSURE", (End("a", "from"), End("b", "to"))),
        ("and the ENCLOSURE tongs in the ENCLOSURE", (End("a", "from"), End("b", "to"))),
        ("and ENCLOSURE 's tongs", (End("a", "from"),)),
        ("ENCLOSURE", (End("a", ""),)),
        ("and ENCLOSURE", (End("a", "to"),)),
        ("not from ENCLOSURE , from ENCLOSURE", (End("b", "from"),)),
        ("and from sick to healthy", (End("sick", "from"), End("healthy", "to"))),
        ("and the other way", ()),
    ],
)
def test_a_place_is_where_it_is_from_or_where_it_goes(plain: str, ends: tuple[End, ...]) -> None:
    assert ends_in(plain, ("a", "b")) == ends


@pytest.mark.parametrize(
    ("ends", "turned", "way"),
    [
        ((End("c", "from"), End("d", "to")), False, ("c", "d")),
        ((End("d", "to"), End("c", "from")), False, ("c", "d")),
        ((End("c", ""), End("d", "")), False, ("c", "d")),
        ((End("c", "from"),), False, ("c", "b")),
        ((End("c", "to"),), False, ("a", "c")),
        ((End("c", ""),), False, ("a", "c")),
        ((End("a", "to"),), False, ("b", "a")),
        ((End("b", "from"),), False, ("b", "a")),
        ((), True, ("b", "a")),
        ((), False, ("a", "b")),
    ],
)
def test_a_named_end_takes_the_place_of_its_own_end_alone(
    ends: tuple[End, ...], turned: bool, way: tuple[str, str]
) -> None:
    assert ends_after(("a", "b"), ends, turned) == way


def test_the_end_that_was_still_asked_for_is_the_one_a_bare_name_gives() -> None:
    assert ends_after(("", "b"), (End("c", ""),), turned=False) == ("c", "b")


def test_back_and_the_other_way_round_turn_it() -> None:
    assert turned_round("and back")
    assert turned_round("the other way round")
    assert not turned_round("and the others")
