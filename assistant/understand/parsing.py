"""One text taken apart: its words, its names and amounts, and its words once these are masked.

The same is done with a question's phrasings, so that both lie side by side when they are matched.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator, Sequence
from copy import copy
from dataclasses import dataclass, replace
from functools import lru_cache

from rapidfuzz import fuzz, process

from assistant.core.quantities.quantity import Gallon
from assistant.understand.named.animal_words import MATCHED_ALIKE
from assistant.understand.named.names import CONTAINERS, HOMES, TOOLS, Mention, Names
from assistant.understand.numbers.amounts import Amounts, amounts_in
from assistant.understand.numbers.said_again import with_numbers_said_again
from assistant.understand.numbers.spoken_numbers import NUMBER_WORDS, TENS
from assistant.understand.text.denied_after import denied_first
from assistant.understand.text.english_words import Usage, spelled_right
from assistant.understand.text.in_other_words import in_plain_words
from assistant.understand.text.known_words import ITEMS, MATERIALS, words_of
from assistant.understand.text.misheard import put_right
from assistant.understand.text.patterns import Pattern
from assistant.understand.text.short_for import SHORT_FOR
from assistant.understand.text.sounds import sound_of
from assistant.understand.text.words import ARTICLES, FILLERS, OPENERS, SIGNS, Token, tokens_of
from assistant.understand.times.said_times import SaidWhen, when_in
from assistant.understand.times.time_words import HINT

SLIP = 80.0
"""Cut-off of rapidfuzz's ratio for a slip of an ordinary word: "sprayd" 92, "rinced" 83, "strat" 80."""
_SHORTEST = 4
_SHORTEST_SWAP = 3
_SHORTEST_RUN = 5
_SMALL = 3
_SMALL_PARTS = words_of("it on of is in to at up my me he do go we by or an am us if ok")
"""Small words that run into the one beside them; "no" and "not" don't: "notable" denies nothing."""
BY_EAR = 55.0
"""The same for one that sounds alike: "nekst" and "next" 67, "torking" and "talking" 57."""
BY_EAR_LONG = 45.0
"""The same for a long one, which hardly sounds like another by chance: "kworanteen" and "quarantine" 50."""
_LONG = 8
_NEAREST = 200
MUCH_NEARER = 12.0
"""By how much a slip has to be nearer in letters than what sounds alike: "swalowd" is "swallowed", no "swilled"."""
SLIPPED_END = 85.0
"""The same for the word that a name ends in: "botle" and "bottel" for bottle 91 and 83, "battle" 83."""
_ENDS = tuple(sorted(word for word in CONTAINERS | HOMES | TOOLS if len(word) > _SHORTEST))

_SAME: dict[str, str] = {
    "she": "he",
    "they": "he",
    "her": "him",
    "them": "him",
    "hers": "his",
    "their": "his",
    "{stock}": "{agent}",
    "{stock_strength}": "{mix}",
    **dict.fromkeys(("okay", "alright", "k"), "ok"),
    **dict.fromkeys(("yeah", "yep", "yup", "yea", "ya", "aye"), "yes"),
    **dict.fromkeys(("nope", "nah", "naw"), "no"),
    **dict.fromkeys(("mils", "mil", "millilitres", "milliliters"), "ml"),
    **dict.fromkeys(MATCHED_ALIKE, "{animal}"),
}
_SAME |= dict.fromkeys(MATERIALS, "{material}") | dict.fromkeys(
    ITEMS - {"log", "logs"}, "{item}"
)  # "log it" is no branch
_PLAIN = Pattern(
    r"(?:[a-z]{3,}|\{\w+\}|it|is|in|on|to|do|my|of|at|he|me|so|ok|no|up|we|am|be|or|if|go|by|an|as|us|i|a| )+"
)
"""A phrasing that needs no evening out: no sign, no contraction."""


@dataclass(frozen=True)
class Parsed:
    """A text taken apart."""

    text: str
    tokens: tuple[Token, ...]
    mentions: tuple[Mention, ...]
    amounts: Amounts
    plain: str
    """Small words and signs, names and amounts in capitals: "rinsed ENCLOSURE , one window open"."""
    as_said: tuple[str, ...]
    """The words of `plain` before slips were mended."""
    words: tuple[str, ...]
    """For matching: no signs, articles or fillers; names and amounts in braces."""
    marked: tuple[str, ...]
    """The same with signs and small words."""
    when: SaidWhen | None = None
    """A date or time of day."""
    guessed: bool = False
    """A small word was taken for a number ("thirty too"), so its number is read back before it counts."""


@lru_cache(maxsize=4000)
def phrasing_words(phrasing: str) -> tuple[str, ...]:
    """A phrasing's words as they are matched."""
    words = phrasing.split()
    plain = _PLAIN.fullmatch(phrasing) and " in to " not in phrasing and SHORT_FOR.keys().isdisjoint(words)
    if plain and not HINT.search(phrasing):
        return matched_words(words)  # most are so plain, and there are many to read at start-up
    tokens = tokens_of(phrasing)
    return matched_words(_masked(tokens, (), _NO_AMOUNTS, when_in(tokens)))


def matched_words(words: Iterable[str]) -> tuple[str, ...]:
    """Words without what carries nothing, and with what means the same spelled the same."""
    kept = [_SAME.get(word, word) for word in words if word not in SIGNS and word not in FILLERS]
    spare = [word for word in kept if word not in ARTICLES and word != "'s"] or kept
    while len(spare) > 1 and spare[0] in OPENERS and spare != ["now", "what"]:
        del spare[0]
    return tuple(
        word
        for word, after in zip(spare, [*spare[1:], ""], strict=False)
        if word != "{material}" or after not in ("{material}", "{item}")  # "cork hide", "stainless steel": one thing
    )


_NO_AMOUNTS = Amounts((), ())


class Parser:
    """Takes texts apart with one household's names."""

    def __init__(self, names: Names, gallon: Gallon, vocabulary: Iterable[str], usage: Usage) -> None:
        """vocabulary: what a slip is mended to. usage: of English words, which are none."""
        self._names = names
        self._usage = usage
        self._gallon: Gallon = gallon
        self._known = (
            frozenset(vocabulary)
            | ARTICLES
            | FILLERS
            | OPENERS
            | _SAME.keys()
            | names.words
            | NUMBER_WORDS
            | TENS.keys()
            | SIGNS
        )
        self._repairs: dict[str, list[str]] = {}
        self._spellings = sorted(word for word in set(vocabulary) if len(word) >= _SHORTEST - 1)
        for word in self._spellings:
            if len(word) >= _SHORTEST:
                self._repairs.setdefault(word[0], []).append(word)
        self._mend = lru_cache(maxsize=2000)(self._mended)

    def with_gallon(self, gallon: Gallon) -> Parser:
        """The same with another gallon: the keeper may change it by word of mouth."""
        other = copy(self)
        other._gallon = gallon
        return other

    def __call__(self, text: str) -> Parsed:
        """Takes one text apart."""
        mended_numbers = put_right(
            [part for token in tokens_of(denied_first(in_plain_words(text[:_LONGEST]))) for part in self._parted(token)]
        )
        tokens = tuple(self._with_its_end_mended(self._swapped_back(token)) for token in mended_numbers.tokens)
        mentions = self._names.in_text(tokens)
        taken = {place for mention in mentions for place in range(mention.start, mention.end)}
        when = when_in(tokens)
        if when is not None and is_a_mix(tokens, when, mentions):
            when = None
        if when is not None and taken.isdisjoint(range(when.start, when.end)):
            taken |= set(range(when.start, when.end))
        else:
            when = None
        amounts = amounts_in(tokens, self._gallon, taken)
        amounts = with_numbers_said_again(amounts, tokens, _products(mentions))
        mentions = tuple(mention for mention in mentions if not _inside(mention, amounts))
        masked = _masked(tokens, mentions, amounts)
        mended = [self._mend(word) for word in masked]
        marked = tuple(self._mend(word) for word in _masked(tokens, mentions, amounts, when))
        return Parsed(
            text=" ".join(text.split()),
            tokens=tokens,
            mentions=mentions,
            amounts=amounts,
            plain=" ".join(word[1:-1].upper() if word[0] == "{" else word for word in mended),
            as_said=tuple(masked),
            words=matched_words(marked),
            marked=marked,
            when=when,
            guessed=mended_numbers.guessed,
        )

    def _parted(self, token: Token) -> tuple[Token, ...]:
        """ "Nextstep", "undothe", "topit": two words typed as one, where they can be parted in one way alone."""
        word = token.text
        if len(word) < _SHORTEST_RUN or not word.isalpha() or word in self._known or self._right(word):
            return (token,)
        if word.endswith("in") and self._right(word + "g"):
            return (replace(token, text=word + "g"),)  # "talkin" isn't "talk in"
        halves = [(word[:at], word[at:]) for at in range(2, len(word) - 1)]
        halves = [pair for pair in halves if all(map(self._is_part, pair)) and max(map(len, pair)) >= _SMALL]
        halves = [
            pair for pair in halves if pair[0] != "in" and pair[1] not in ("less", "able")
        ]  # they turn a word round
        if len(halves) != 1 or self._swapped_back(token) != token:
            return (token,)
        first, second = halves[0]
        return replace(token, text=first, raw=first), replace(token, text=second, raw=second, glued=False)

    def _right(self, word: str) -> bool:
        return spelled_right(word, self._usage)

    def _is_part(self, word: str) -> bool:
        return word in _SMALL_PARTS or (len(word) >= _SMALL and word in self._known and self._right(word))

    def _swapped_back(self, token: Token) -> Token:
        """ "Teh", "nxet", "undo" typed as "udno": two letters side by side have changed places."""
        word = token.text
        if len(word) < _SHORTEST_SWAP or not word.isalpha() or word in self._known or self._right(word):
            return token
        swapped = {word[:at] + word[at + 1] + word[at] + word[at + 2 :] for at in range(len(word) - 1)}
        known = [other for other in swapped if other in self._known]
        known = [other for other in known if self._right(other)] if len(known) > 1 else known
        return replace(token, text=known[0]) if len(known) == 1 else token

    def _with_its_end_mended(self, token: Token) -> Token:
        """ "botle" and "tnak" are put right before names are looked for, since names end in them."""
        if (
            len(token.text) < _SHORTEST
            or token.text in self._known
            or self._right(token.text)
            or not token.text.isalpha()
        ):
            return token
        slip = process.extractOne(token.text, _ENDS, scorer=fuzz.ratio, score_cutoff=SLIPPED_END)
        if slip is None or self._mend(token.text) != slip[0]:
            return token  # "sprayd" is nearer to what was done than to a spray
        return replace(token, text=slip[0])

    def _mended(self, word: str) -> str:
        """A slip of a known word as that word; anything else as it is."""
        if len(word) < _SHORTEST or word in self._known or not word.isalpha() or self._right(word):
            return word
        by_ear = self._sounds_like(word)
        # Thumbs and ears mostly get the first letter right; "popped" is no "topped".
        alike = self._repairs.get(word[0], ())
        slip = process.extractOne(word, alike, scorer=fuzz.ratio, score_cutoff=SLIP)
        if by_ear is None:
            return slip[0] if slip is not None else word
        nearer = slip is not None and slip[1] >= fuzz.ratio(word, by_ear) + MUCH_NEARER
        return slip[0] if nearer and slip is not None else by_ear

    def _sounds_like(self, word: str) -> str | None:
        """The known word that sounds the same, the nearest in letters where there are several."""
        cut_off, most = (BY_EAR_LONG, 10 * _NEAREST) if len(word) >= _LONG else (BY_EAR, _NEAREST)
        near = process.extract(word, self._spellings, scorer=fuzz.ratio, score_cutoff=cut_off, limit=most)
        return next((known for known, *_ in near if sound_of(known) == sound_of(word)), None)


def is_a_mix(tokens: Sequence[Token], when: SaidWhen, mentions: Sequence[Mention]) -> bool:
    """ "The yellow bottle at 1:50": where something to mix is named, one to fifty and no time of day."""
    said = "".join(token.text for token in tokens[when.start : when.end])
    products = any(thing.kind in ("bottle", "stock", "agent") for mention in mentions for thing in mention.things)
    return products and re.fullmatch(r"(?:at|of)?1:\d+", said) is not None


_LONGEST = 400
"""Letters of a text that are read; a turn is a sentence or two."""


def _products(mentions: Sequence[Mention]) -> Iterator[tuple[int, int]]:
    for mention in mentions:
        if mention.things[0].kind in ("agent", "stock"):
            yield mention.start, mention.end


def _inside(mention: Mention, amounts: Amounts) -> bool:
    return any(
        found.start < mention.end and mention.start < found.end for found in amounts.found if found.kind != "mix"
    )


def _masked(
    tokens: Sequence[Token], mentions: Sequence[Mention], amounts: Amounts, when: SaidWhen | None = None
) -> list[str]:
    """The words with every name and amount as one word in braces."""
    spans = {mention.start: (mention.end, _kind_of(mention)) for mention in mentions}
    for found in amounts.found:
        kind = "number" if found.kind == "length" else found.kind
        spans[found.start] = (found.end, f"{{{kind}}}")
    for start, end in amounts.faulty_spans:
        spans[start] = (end, "{volume}")
    if when is not None and not when.literal:
        spans[when.start] = (when.end, "{when}")
    masked: list[str] = []
    at = 0
    while at < len(tokens):
        if at in spans:
            end, word = spans[at]
            masked += word.split()
            at = max(end, at + 1)
        else:
            masked.append(tokens[at].text)
            at += 1
    return masked


SOAPS = frozenset(
    {"soap", "detergent", "dish soap", "soapy", "soapy water", "washing up liquid", "dish liquid", "dishwashing liquid"}
)
"""Names of a product that are left as words."""


def _kind_of(mention: Mention) -> str:
    """A mention as a masked word; soap is a word of the washing as well, so it stays."""
    if mention.said in SOAPS:
        return "dish soap" if mention.said.endswith("liquid") else mention.said  # "washing up" is no washing told
    kinds = [thing.kind for thing in mention.things]
    for kind in ("bottle", "enclosure", "animal"):
        if kind in kinds:
            return f"{{{kind}}}"
    return f"{{{kinds[0]}}}"
