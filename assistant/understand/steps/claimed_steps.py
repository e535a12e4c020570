"""What a text claims of the round's steps: which are said to be done, and which are not yet, asked or doubtful.

"Haven't rinsed", "about to rinse", "did I rinse?", "nearly dry" must never count as done, so every clause is judged for
itself, and in doubt against the claim. Which question it is decides `question.own_question`; this says what may count.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass
from functools import lru_cache
from typing import Literal, TypeAlias

from assistant.understand.steps.counts import EARLY, counts
from assistant.understand.steps.of_what import of_a_part, of_something_unknown
from assistant.understand.steps.part_told import cut_short, one_thing_out, something_left_out, whole_too
from assistant.understand.steps.plainly_told import beside_it, on_second_thoughts
from assistant.understand.steps.spelled_out import WORDS_OF, spelled_out
from assistant.understand.steps.stayed_wet import PATTERNS as WET_WORDS
from assistant.understand.steps.stayed_wet import stayed_wet
from assistant.understand.steps.step_patterns import DONE, MENTIONED, STEPS
from assistant.understand.steps.with_what import NO_SOAP
from assistant.understand.text.asking import ASKS_FIRST
from assistant.understand.text.patterns import Pattern, words_in

Polarity: TypeAlias = Literal["claimed", "not yet", "asked", "doubtful"]

_SUBJECTS = frozenset(
    {"i", "it", "he", "she", "they", "we", "you", "that", "this", "the", "ENCLOSURE", "ANIMAL", "AGENT"}
    | {"both", "all", "everyone", "everybody"}
)
_ASKED = Pattern(
    r"\b(?:is there any(?:body|one|thing)|is any(?:body|one|thing)|did i|have i|has (?:it|he|she|this|that)|had i|do"
    r" i|am i|was i|were we|did we|have we|did"
    r" you|do you|can (?:i|he|she|it|they|you)"
    r"|may i|should i|whether|remember if|know if|sure if|see if|check if|check that|make sure|(?<!that )is it"
    r"|(?<!that )was it|are they|is (?:he|she))\b"
    r"|\b(?:is|did|have|has|does|do|was) not (?:it|i|he|she|they)$|\bor (?:no|not)$"
    r"|, right \?$|, (?:yes|yeah|no|ok) \?$|\byes or no\b"
)
_NOT_YET = Pattern(
    r"\b(?:not|(?<!no )doubt|never|nothing|nobody|no one|cannot|without|unable|nor|neither|nearly|almost"
    r"|not quite|barely|hardly"
    r"|half"
    r"|halfway|partly|partially|mostly|about to"
    r"|going to|go to|will|would|shall|let me|let us|need to|needs to|need|needs|have to|has to|had"
    r" to|got to|must|want to|wants|ready to"
    r"|yet to|still to|still have|still need|still wet|still damp|still drying|still|before|forgot"
    r"|forget|forgotten|once|if|until|till|unless"
    r"|when|while|should|could|might|pretend|imagine|suppose|say i had|supposed|trying|try|tried"
    r"|remind|remember to|wish|hope|plan|planning|time to|meant to|later|soon|tomorrow"
    r"|in a (?:minute|sec|second|moment)|next up|waiting (?:for|on)|wait for|starting|start|started"
    r"|begun|beginning|except|apart from|bar|missed"
    r"|skipped|skip|instead|ought|most of|some of|part of|parts of|bits? of|all but|everything but"
    r"|everything except|one side"
    r"|(?:one|two|some|only one|half) of (?:them|the \w+|these|those)|only one)\b"
)
_UNDER_WAY = Pattern(
    r"\b(?:i am|am|we are|is|are|'s|just|now|still|busy|currently|i)? ?(?:washing|scrubbing"
    r"|spraying|applying|rinsing|wiping|drying|airing"
    r"|clearing|moving|hosing|misting|putting)\b"
    r"|\b(?:i|we) (?:now |just |then )?(?:spray|rinse|wipe|dry|wash|scrub|clear|mist|hose)\b(?! (?:it "
    r"|them )?(?:every|each|daily|always))"
)
_HEDGED = Pattern(
    r"\b(?:i think|i guess|just about|practically|virtually|probably|maybe|perhaps|pretty much|more or less"
    r"|i believe|should be|must be|looks|seems|kind of|sort of"
    r"|hopefully|fingers crossed|with (?:any |a bit of )?luck|i suppose|as good as|basically|ish|possibly|i reckon"
    r"|fairly sure|pretty sure|pretty|fairly|quite|reasonably"
    r"|(?:says|said|thinks|reckons|tells me|told me) (?:that )?(?:i|he|she|they|it|we))\b"
)
# A word like these opens a clause of its own after "and", so the "not" before it doesn't reach over.
_NEW_CLAUSE = Pattern(
    r"\s*(?:\b(?:but|though|however|only|then|so|because)\b|[.;!]|,(?! ?(?:or|nor)\b)"
    r"|\band (?=(?:i|it|he|she|they|we|that|the|this|ENCLOSURE|ANIMAL) ))\s*"
)
_ONLY_A_HEDGE = Pattern(
    r", (?:(?:or|so|at least) )?(?:i (?:think|guess|suppose|reckon|believe|hope)(?: so)?|maybe|perhaps|probably"
    r"|hopefully|fingers crossed|more or less|pretty much|ish)(?: anyway)?$"
)
""" "He's out, I think"."""
_NEW_SUBJECT = Pattern(r"(?:(?:i|it|he|she|they|we|that|the|ANIMAL|ENCLOSURE)\b|\{)")
"""The "not" of the clause before ends at such a word, and not at one that only begins like it: "wetted"."""
_DISCOURSE = Pattern(
    r"^(?:(?:yes|yeah|yep|yup|no|nope|ok|okay|right|alright|so|well|oh|and|great|good|cool|now"
    r"|hi)\b ?,? ?)+(?!\bnot\b)"
)


# Said of the whole sentence, whatever clause it stands in: not all of it, none of it, or only after something.
_NOT_ALL = Pattern(
    r"\b(?:none|neither|nothing|nobody|not all|not everything|not any) (?:of|is|are|has|have|was|'s)\b|\bnone$"
    r"|\bthe (?:rest|others?|other \w+) (?:is |are |was |were )?not\b"
    r"|^(?:and )?(?:after|as soon as|the moment|the minute) |\bwho knows\b|\bnot (?:so |too |very )?(?:sure"
    r"|certain)\b"
    r"|\bi (?:really )?doubt (?:it|that)\b|\bcan not remember\b"
    r"|^(?:is|are|was|were) (?:everything|anything|all|both|the|every)\b"
    r"|\bonly (?!(?:the )?(?:ANIMAL|ENCLOSURE) (?:is|'s) (?:back|in|home)\b)(?:the |one |a |half |part |this "
    r"|that |his |her )"
    r"(?:\w+ )?(?:is|are|'s|of)\b"
)


@dataclass(frozen=True, slots=True)
class Claims:
    """What a text says of steps."""

    done: tuple[str, ...] = ()
    """Said to be done, in the order said."""
    polarity: Polarity = "claimed"
    """Of the whole: "claimed" only when nothing stands against it."""
    mentioned: tuple[str, ...] = ()
    """Asked about or not done yet."""
    stayed_wet: bool | None = None
    in_part: bool = False
    """Of a part of what is cleaned, or not brought to its end: "rinsed the walls"."""


_DID_NOT_DRY = Pattern(r"\b(?:did not|has not|never) (?:\w+ )?(?:dry|dried)\b", "not", "never")


_ALL_BUT_ONE = Pattern(
    r"\b((?:all|everything|everyone|everybody|both|lot|them)(?: \w+){0,2}) ?,? but (?:the |my |for )*"
    r"((?:ENCLOSURE|ANIMAL)(?: 's)?(?: \w+)?)$"
)
""" "Sprayed all but pepper": "but" begins no clause of its own there."""


@lru_cache(maxsize=256)
def claims_in(text: str) -> Claims:
    """What a masked text says of steps.

    text: small words, names masked as ENCLOSURE, AGENT ..., signs apart.
    """
    stayed = stayed_wet(text)
    text = _ALL_BUT_ONE.sub(r"\1 except \2", text)
    plain = spelled_out(_OR_ONLY.sub(" or ", _DISCOURSE.sub("", text).strip()))
    clauses = [clause.strip(" ,") for clause in _NEW_CLAUSE.split(plain) if clause and clause.strip(" ,")]
    asks = _asks(plain)
    done: list[str] = []
    against: list[str] = []
    worst: Polarity = "claimed"
    negated = in_part = False
    whole = whole_too(plain)
    for number, clause in enumerate(clauses):
        steps = _steps_of(clause)
        if number and steps == ["hold"] and _SO_LONG.match(clause):
            steps = []  # "can I take him on the train, it's two hours"
        polarity = _polarity(clause, text)
        carried = negated and not _NEW_SUBJECT.match(clause) and "but" not in plain
        if polarity == "claimed" and (carried or (asks and number == 0)):
            polarity = "asked" if asks else "not yet"
        negated = polarity == "not yet"
        partly = bool(steps) and polarity in ("claimed", "doubtful") and not whole and of_a_part(clause)
        partly = partly or ("clear" in steps and one_thing_out(plain))
        strange = beside_it(clause, steps) is not None
        partly = partly and not strange
        in_part = in_part or partly
        if polarity == "claimed" and (partly or of_something_unknown(clause) or strange):
            polarity = "doubtful"
        if polarity in ("claimed", "doubtful"):
            done += [step for step in steps if step not in done]
            worst = "doubtful" if polarity == "doubtful" and steps else worst
        else:
            against += [step for step in _mentioned(clause, steps) if step not in against]
            if not done:
                worst = polarity
    if stayed and _DID_NOT_DRY.search(plain):
        done = [step for step in done if step != "dry"]
    done = _without_the_soap_rinse(done, soap=_SOAP.search(plain) is not None)
    if "wash" in done and NO_SOAP.search(plain):
        against, done, worst = (
            ["wash", *against],
            [step for step in done if step != "wash"],
            worst if done[1:] else "not yet",
        )
    taken_back = [step for step in done if step in against and _retracts(step, clauses)]
    done = [step for step in done if step not in taken_back]
    if done and worst in ("not yet", "asked"):
        worst = "claimed"
    if asks == "all" and done:
        against, done, worst = done + against, [], "asked"
    left_out = something_left_out(plain) and "return" not in done
    if done and (_NOT_ALL.search(plain) or (left_out and "apply" not in done)):
        against, done, worst = done + against, [], "not yet"
    whole_text = text.strip(" .!")
    if (_ONLY_A_HEDGE.search(plain.strip(" .!")) and done) or on_second_thoughts(whole_text, done, against):
        worst = "doubtful"
    if done and (left_out or cut_short(plain) or ("rinse" in against and done[-1:] == ["wash"])):
        worst, in_part = "doubtful", True  # that it touched a surface must not be lost
    return Claims(tuple(done), worst, tuple(against), stayed, in_part and bool(done))


_SO_LONG = Pattern(r"(?:that|it)(?: is| 's) (?:the |my |all )*DURATION$", "DURATION")
_SOAP = Pattern(r"\b(?:soap|soapy|suds|detergent|washing up liquid)\b", "soap", "suds", "detergent", "washing up")


def _without_the_soap_rinse(done: list[str], soap: bool) -> list[str]:
    """ "Washed, rinsed, sprayed": rinsed right after the washing and before the spraying is the soap rinsed off.

    soap: it is named, so that what follows the washing is its rinse whatever comes after.
    """
    at = done.index("wash") if "wash" in done else -1
    its_own = at >= 0 and done[at + 1 : at + 2] == ["rinse"] and (soap or "apply" in done[at + 2 :])
    return [*done[: at + 1], *done[at + 2 :]] if its_own else done


def _retracts(step: str, clauses: Sequence[str]) -> bool:
    """ "Rinsed, dry, hang on, not dry": the last clause that names the step denies it."""
    last = next(clause for clause in reversed(clauses) if step in _mentioned(clause, _steps_of(clause)))
    return _polarity(last, last) == "not yet" and step in _mentioned(last, _steps_of(last))


_OR_ONLY = Pattern(r" or (?:only|just|did i only|have i only) ", " or ")
""" "Have I sprayed it yet, or only washed it": the one question goes on."""


def steps_named(text: str) -> tuple[str, ...]:
    """The steps that a text names in whatever form: "the rinse", "washing"."""
    return tuple(step for step, pattern in MENTIONED if pattern.search(text))


def dried_early(text: str) -> bool:
    """It is said that it dried too soon, which is neither the step of drying nor a thing not done yet."""
    return (
        re.search(
            r"\bdr(?:y|ied) (?:out|up|early|too|before|already|again)|\b(?:drying|dries) (?:too|so) |\bwent dry", text
        )
        is not None
    )


_TAG = Pattern(
    r", ?(?:is|are|was|were|did|do|does|have|has|had) (?:not )?(?:it|i|he|she|they|we|you|that)(?: not)? ?\??$"
    r"|,? yes or no ?\??$",
    *(",", "yes or no"),
)
""" "It's dry, isn't it?" asks, however it begins."""


def _asks(text: str) -> str:
    """ "all": the whole is a question; "first": it begins like one; empty: it isn't."""
    if _TAG.search(text):
        return "all"
    if re.search(r"^\S+ (?:what|which|who|where|when)(?: one| with| bottle)? ?\??$", text):
        return "all"  # "sprayed what?"
    if text.endswith("?") and not re.search(
        r"[.,;!] ?(?:so |and )?(?:what|how|when|which|can|is|may|should|could|shall|do|does|now what)\b", text
    ):
        return "all"
    return ""


def _polarity(clause: str, text: str) -> Polarity:
    words = clause.split()
    if not words:
        return "claimed"
    opening = words[0]
    if opening in ("will", "would", "shall", "might", "may") and len(words) > 1 and words[1] not in _SUBJECTS:
        return "not yet"  # "will rinse later", with the "I" left out
    if opening in ("have", "has", "had", "did") and len(words) > 2 and words[1] == "not" and words[2] not in _SUBJECTS:
        return "not yet"  # "haven't rinsed", with the "I" left out
    if opening in ASKS_FIRST:
        said_of = (
            len(words) > 1
            and words[1] not in _SUBJECTS
            and any(pattern.match(" ".join(words[1:])) for _, pattern in STEPS)
            and opening in ("have", "has", "is", "are")
        )
        if not said_of:
            return "asked"
        if not _NOT_YET.search(" ".join(words[1:])):
            return "doubtful"
    if _ASKED.search(clause):
        return "asked"
    hedged = _HEDGED.search(clause)
    if hedged:
        clause = _HEDGED.sub(" ", clause)
    clause = _without_harmless(clause)
    if _NOT_YET.search(clause) or (_UNDER_WAY.search(clause) and not re.search(rf"\b{DONE}\b", clause)):
        return "not yet"
    if re.match(r"no (?!more )", clause):
        return "not yet"
    # "He's out!" may be a cry that he escaped.
    cried = "!" in text and re.search(r"\bout$", clause) is not None
    return "doubtful" if hedged or cried else "claimed"


_HARMLESS = Pattern(
    r"\b(?:it did not dry(?: out)?|it never dried|not (?:a|one) (?:bubble|trace|drop|speck|sud|smear|bit)(?: of"
    r" \w+)?(?: is)?(?: left)?|not (?:a )?(?:problem|bad)|no problem|half (?:an hour|a"
    r" litre|the (?:bottle|bleach|mix|stock|time))|wet the whole time|whole time"
    r"|nothing (?:is )?left|nothing else|still wet when|stayed wet|and a half|not long ago|too soon|too early"
    r"|no need to ask|half past|if you (?:must"
    r"|want to) know"
    r"|as you said|when you said)\b"
)


def _without_harmless(clause: str) -> str:
    return _HARMLESS.sub(" ", clause)


def _steps_of(clause: str) -> list[str]:
    """The steps that a clause names as done, in the order said."""
    if _OF_ANOTHER.match(clause):
        return []
    found: list[tuple[int, str]] = []
    rest = clause
    for step, pattern in STEPS:
        for match in pattern.finditer(rest):
            if step == "clear" and "bottle" in match.string[match.end() :]:
                continue
            if not counts(step, match):
                continue
            found.append((match.start(), step))
        # What one pattern took is not read again, but the places of the words stay.
        if any(other == step for _, other in found):
            rest = pattern.sub(lambda taken: "#" * len(taken.group()), rest)
    ordered = [step for _, step in sorted(found)]
    return list(dict.fromkeys(ordered))


_OF_ANOTHER = Pattern(
    r"(?:(?:and|but|so|ok|well|oh|also) )*(?:(?:my |the |our )?(?:friend|mum|mom|dad|sister|brother|neighbou?r|mate"
    r"|boss)"
    r" 's \w+|the other (?!one\b|animals?|ANIMAL)\w+|my (?:hands?|gloves|hair|car|kitchen|bath\w*))\b"
)


def _mentioned(clause: str, steps: Sequence[str]) -> list[str]:
    """The steps that a clause is about, in whatever form."""
    return list(steps) or [step for step, pattern in MENTIONED if pattern.search(clause)]


_BARE = Pattern(
    r"^(?:i am |that is |that 's |it is |all |ok |okay |right |and |yes |yep |yeah |got that |just |i"
    r" have )*(?:done|finished|did it|done it|done that"
    r"|did that|complete|completed|all done|sorted)(?: now| then| with that| that| it| here)*$"
)


def only_dried(text: str) -> bool:
    """ "Dried", and no more: the step, unless it was asked whether it stayed wet."""
    return text.strip(" .!,") in ("dried", "all dried", "now dried")


def not_yet(text: str) -> bool:
    """True when a text speaks of what isn't so yet, or not at all."""
    return _NOT_YET.search(text) is not None


def bare_done(text: str) -> bool:
    """ "done", "finished", "that's done": the step that was asked for last."""
    return _BARE.match(text.strip(" .!,")) is not None


WORDS = words_in(
    *(pattern for _, pattern in (*STEPS, *MENTIONED)),
    *(
        _ASKED,
        _NOT_YET,
        _UNDER_WAY,
        _HEDGED,
        _HARMLESS,
        _BARE,
        EARLY,
        *WET_WORDS,
        *WORDS_OF,
    ),
)
"""Every word that a rule here turns on: known words, so that "mostly" is never mended into "most"."""
