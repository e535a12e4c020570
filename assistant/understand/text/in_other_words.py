"""Turns of speech that every rule would have to know, put in the words that the rules know."""

from __future__ import annotations

import re

_PUT_AS = tuple(
    (re.compile(pattern, re.IGNORECASE), words)
    for pattern, words in (
        (r"\bnever (?:once |ever |really |actually )*(?:went|got|became|gone|turned|ran) dry\b", "never dried"),
        (
            r"\bbefore (?:it|they|that|the \w+) (?:could|can|would|had (?:a chance|time) to|got (?:a chance|time) to"
            r"|was able to|even )+ ?(?:go |get )?dry(?: (?:out|off|up))?\b",
            "before it dried",
        ),
        (r"\b(dry|dried) on top\b", r"\1 on the top"),
        (
            r"\b((?:have|has) (?:just |now |already )?)(spray|wash|clean|mist|clear|scrub|rins|wip)e?"
            r"(?= (?:all|it|the|him|her|them|everything|both|that|this)\b)",
            r"\1\2ed",
        ),
        (
            r"\b(yellow|pink|green|clear|red|blue|orange|white|black|purple|gr[ae]y|brown|other|same|big|small|little|tiny)"
            r" won\b",
            r"\1 one",
        ),
        (r"^know ?, ?(?=\w)", "no, "),
        (r"^write ?, ?(?=\w)", "right, "),
        (r"\bfreshened (?:up )?(the (?:\w+ )?\w+|it|that|them)(?: up)? again\b", r"misted \1 again"),
    )
)


def in_plain_words(text: str) -> str:
    """The text with such turns of speech in plain words.

    >>> in_plain_words("it never once went dry"), in_plain_words("misted it again before it could dry out")
    ('it never dried', 'misted it again before it dried')
    """
    for pattern, words in _PUT_AS:
        text = pattern.sub(words, text)
    return text
