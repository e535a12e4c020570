"""Whether a turn says nothing but what a fill was instead of what was just recorded."""

from __future__ import annotations

from assistant.understand.text.known_words import words_of


def only_puts_right(plain: str) -> bool:
    """Whether a turn says nothing but what a fill was instead: "no, the green", "sorry, I meant one in fifty".

    "No, don't use the green" and "not sure what's in the yellow now" name a bottle, and put no fill right.
    """
    return not plain.endswith("?") and set(plain.split()) <= _PUTTING_RIGHT


_PUTTING_RIGHT = words_of(
    """
    no nope not wait sorry oops whoops actually i we meant mean said say should it was is that this the my a an one in
    into with at to make rather instead bottle hang hold on oh um er ah of and for have hm ok okay well yes time full up
    filled refilled mixed put poured went 's , . ! ; : - correction mistake scratch undiluted neat strength percent
    bad wrong only just about parts part water caps cap capfuls spoons scoops half more like really fact used
    took grabbed
    BOTTLE STOCK AGENT MIX NUMBER VOLUME MEASURE WHEN DURATION
    """
)
