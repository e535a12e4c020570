"""What a calculation can't take. Each error carries its parts, so that a reply can name them; the text is one line."""

from __future__ import annotations


class WrongUnit(ValueError):
    """An amount of one kind where another is needed: a length for a volume, or a unit that isn't on the list."""

    def __init__(self, given: str, needed: str) -> None:
        super().__init__(f'"{given}" is no {needed}')
        self.given = given
        self.needed = needed


class OutOfRange(ValueError):
    """A figure for which the calculation doesn't hold."""

    def __init__(self, what: str, given: object, needed: str) -> None:
        super().__init__(f"{what} must be {needed}, not {given}")
        self.what = what
        self.given = given
        self.needed = needed
