"""Which question a turn asks by itself: by what is told of the surface, claimed of steps, or else the nearest; or none.

A claim of a step never comes in by likeness: what isn't plainly one is kept from counting.
"""

from __future__ import annotations

import re
from collections.abc import Mapping, Sequence
from datetime import timedelta
from typing import NamedTuple

from assistant.contract import Question
from assistant.core.round.rounds import a_hold_runs, hold_is_over, is_open, waits_on_hold
from assistant.understand.air.openings import openings_in
from assistant.understand.bottles import fills
from assistant.understand.bottles.fill_words import wishes_for_a_mix
from assistant.understand.look import ENOUGH, Look, words_of
from assistant.understand.matching.learning import OUTSIDE
from assistant.understand.named.left_out import before_the_left_out
from assistant.understand.named.names import HOMES
from assistant.understand.question.may_be import LOOKS_BACK, is_told, may_be
from assistant.understand.question.only_like import A_STEP, IS_IT, SURELY_TOLD, denies_no_step, surely_told
from assistant.understand.steps.before_spraying import is_of_no_bottle
from assistant.understand.steps.claimed_steps import WORDS as CLAIM_WORDS
from assistant.understand.steps.claimed_steps import bare_done, dried_early, only_dried
from assistant.understand.steps.denied import only_partly
from assistant.understand.steps.in_the_middle import in_the_middle
from assistant.understand.steps.plainly_told import names_a_closing_step
from assistant.understand.steps.stayed_wet import cannot_tell
from assistant.understand.steps.surface import of_the_surface
from assistant.understand.text.known_words import CONNECTING
from assistant.understand.text.patterns import Pattern
from assistant.understand.times.moments import moment

STRANGE_ENOUGH = 0.85
"""The same for a question that names nothing, in a text with a word that no phrasing has: "next episode"."""
BY_ITS_WORDS = 0.33
"""The same for the likeliest question when it is asked in words that are hardly about anything else."""
CLEAR, LEAD, LITTLE = 0.3, 2.0, 0.08
"""What is enough for a question that only asks, with so many times the chance of the next, and so little of being
outside. Of 498 lines outside it lets none in; of 342 fresh phrasings 9 more are right and none more wrong."""
FEW_WORDS = 4
"""In a text of no more words a strange word is half of what was said, and hardly a likeness is enough: "next train"."""
STRANGE_BUT_SURE = 0.95
"""What is enough then, for a question that changes nothing: "whoa, too fast"."""
ANOTHER_QUESTION = 0.9
"""Chance from which on another question isn't taken for a claim that holds the words of a step..."""
EARLIER_HOURS = 8
"""A step said to be done yesterday, and so long ago, is none of a clean that is under way: past midnight it may be."""
SURELY = 0.85
"""The same where no clean is open, so that no step could be recorded anyway."""
HARDLY_A_CLAIM = 0.05
"""...where the chance of a claim is no more than this. What is asked again is recorded later; never the other way."""
NEVER = 1.0
"""A chance that none reaches."""
OUTSIDE_FOR_SURE = 0.80
"""A claim in a text that is this surely about something else is none."""
OUTSIDE_WITH_NO_CLEAN = 0.5
"""The same where no clean is open and no enclosure is named: "did anyone bring the washing in"."""
NOT_YET_OUTSIDE = 0.97
"""The same for "haven't rinsed", "will rinse later", which record nothing."""

A_BOTTLE = 0.4
"""Chance from which on what is told to be rinsed, where no clean is open, is a bottle."""


class Found(NamedTuple):
    """A question and its confidence; None: no question."""

    intent: str | None
    confidence: float
    plainly: bool = True
    """False: only like what is told so, and to be asked about."""


_BEGINS_AS_ASKED = Pattern(
    r"(?:so |and |but |ok )*(?:for |at |in |by |about |since )?(?:what|how|which|when|where|why)\b"
)
_ENDS_AS_ASKED = Pattern(
    r"[,.;!] (?:so |and |but |then |now )*(?:how (?:much|long|many|strong|old|soon|fast|quick\w*|often)|what|which"
    r"|when|where|can (?:i|it|they|he|she)|may i"
    r"|should i|is it)\b[^.;!]*$"
)


class OwnQuestion:
    """Finds the question of a turn that stands by itself. Built once from the questions."""

    def __init__(
        self, questions: Mapping[str, Question], texts: Mapping[str, Sequence[str]], vocabulary: frozenset[str]
    ) -> None:
        """texts: each question's phrasings, as matched."""
        self._vocabulary = vocabulary
        self._told = {name for name, question in questions.items() if question.told}
        self._own = {name: words_of(texts[name]) | CONNECTING for name in ABOUT_TALK}

    def __call__(self, look: Look) -> Found:
        """The question and its confidence."""
        if _rinsed_and_dry_soon(look):
            return Found("done", 0.9)
        if _is_drying(look) or in_the_middle(look):
            return Found("next", 0.9)  # which says what is left, and to keep it wet
        found = of_the_surface(look) or self._claimed(look)
        return Found(*found) if found is not None else self._nearest(look)

    def _claimed(self, look: Look) -> tuple[str | None, float] | tuple[str, float, bool] | None:
        """`done` or `status` for what is said of steps; None: nothing is."""
        claims, chances, plain = look.claims, look.chances, look.parsed.plain
        if _ASKS_OF_AN_ITEM.match(plain) and "ENCLOSURE" not in plain:
            return None  # "can I bake the branch, it's rinsed and dry": of the branch, and asked
        if self._unseen(look):
            return "done", 0.9
        if _surely_of_no_clean(look):
            return None
        if only_dried(plain):
            return "done", max(chances["done"], 0.9)
        if says_it_dried(look):
            return None
        under_way = claims.polarity == "not yet" and not claims.done and openings_in(plain) is not None
        if under_way and is_told(plain) and not _BEGINS_AS_ASKED.match(plain):
            return "done", 0.9  # "window's open, it's drying"
        if claims.polarity in ("asked", "not yet") and not claims.done:
            if _another_question(look):
                return None
            return self._of_steps(look) if claims.mentioned else None
        # What is said to be sprayed stays a claim: that it touched a surface must not be lost.
        if claims.done and "apply" not in claims.done and (_another_question(look) or _on_another_day(look)):
            return None
        told_first = _OPENS_AS_CLAIM.match(plain) is not None or "apply" in claims.done
        if claims.done and not _under_way(look) and not told_first and _asks_at_its_end(look):
            return None  # "I've wiped it twice and it keeps coming back, so which disinfectant does that call for?"
        if claims.done and not _of_a_clean(look) and _ENDS_AS_ASKED.search(plain) and _another_question(look):
            return None  # "I've just bleached two tanks, so how long does the room want airing"
        if claims.done and not _under_way(look) and chances["rinsed_out"] >= A_BOTTLE and is_told(plain):
            return "rinsed_out", chances["rinsed_out"]  # "both of them are rinsed out now, yellow and pink"
        if set(claims.done) <= {"move out"} and look.top == "return_check" and _MAY_IT.search(plain):
            return None  # "he's been out ages, tell me I can put him back"
        if claims.done and look.top == "log_clean" and _FOR_THE_LOG.search(plain) and "apply" not in claims.done:
            return None  # "wiped the front over, jot that in the record": the day's chore
        if claims.done and only_partly(plain):
            return "status", 0.9
        if claims.done == ("move out",) and look.top == "tub" and is_told(plain) and _waits_to_be_moved(look):
            return "done", max(chances["done"], 0.9)  # "they're both out, in a box each"
        if claims.done == ("clear",) and look.top == "log_clean" and not _under_way(look):
            return None  # "scooped poop in both": the day's chore
        if claims.done:
            sure = chances[OUTSIDE] < OUTSIDE_FOR_SURE or len(look.parsed.words) == 1 or _is_the_hold_awaited(look)
            no_bottle = look.top == "rinsed_out" and ("bottle" not in plain.lower() or _WITH_THE_BOTTLE.search(plain))
            no_bottle = no_bottle or (look.top == "rinsed_out" and is_of_no_bottle(look))
            beaten = look.top in _BEATS_A_CLAIM and chances[look.top] >= ENOUGH
            wins = not beaten or no_bottle or chances["done"] >= 0.25
            return ("done", max(chances["done"], 0.9)) if sure and wins else None
        told = (look.top == "air_time" and chances["done"] >= 0.25) or _tells_while_open(look)
        opened = openings_in(plain) is not None and (told or look.top in ("done", "hush", OUTSIDE))
        if (opened or bare_done(plain)) and not plain.endswith("?") and not _BEGINS_AS_ASKED.match(plain):
            return "done", max(chances["done"], 0.9)
        return None

    def _unseen(self, look: Look) -> bool:
        """ "I couldn't see if it stayed wet", where a wet time is over and nobody has vouched for it."""
        plain, now = look.parsed.plain, look.world.now
        over = any(is_open(r) and hold_is_over(r, now) for r in look.world.state.rounds.values())
        return over and cannot_tell(plain) and _NOT_WATCHED.search(plain) is not None

    def _of_steps(self, look: Look) -> tuple[str | None, float] | tuple[str, float, bool] | None:
        """`status` or `return_check`, for steps that are asked about or not done yet; None: neither."""
        chances, claims = look.chances, look.claims
        if _ANOTHER_MATTER.search(look.parsed.plain):
            return None
        about = chances["done"] + chances["status"]
        too_far = NOT_YET_OUTSIDE if claims.polarity == "not yet" else OUTSIDE_FOR_SURE
        if not _of_a_clean(look) and len(look.parsed.words) > FEW_WORDS and chances[OUTSIDE] >= OUTSIDE_WITH_NO_CLEAN:
            return None
        if chances[OUTSIDE] >= too_far or not _HAS_STEP_WORD.search(look.parsed.plain):
            return ("status", about) if about >= ENOUGH else None
        plain = look.parsed.plain
        if claims.polarity == "not yet" and chances["done"] >= SURELY_TOLD and denies_no_step(plain):
            return "done", chances["done"], False  # "scoured till it squeaked, no soap left"
        if claims.polarity == "not yet":
            fits = look.top in ("done", "status", "no", "start", "time_left", "next", "rinsed_out", OUTSIDE)
            return ("status", max(about, 0.8)) if fits else None
        if claims.mentioned == ("return",):
            return (
                ("return_check", max(chances["return_check"], 0.8))
                if max(chances["return_check"], chances["done"]) >= 0.2
                else None
            )
        looks_back = LOOKS_BACK.search(look.parsed.plain) is not None and not re.search(r"\btime\b", look.parsed.plain)
        if looks_back and (look.top in ("done", "status", OUTSIDE) or about >= 0.2):
            return "status", max(about, 0.8)
        return None

    def _nearest(self, look: Look) -> Found:
        """The likeliest question, if it is likely enough; a claim never comes in by likeness alone."""
        chances = dict(look.chances)
        done = chances.pop("done", 0.0)
        if done >= ENOUGH:
            likely = surely_told("done", look, A_STEP if _under_way(look) else SURELY_TOLD)
            likely = likely and not look.claims.mentioned and (_under_way(look) or len(look.parsed.words) >= FEW_WORDS)
            if likely and not names_a_closing_step(look.parsed.plain):
                return Found("done", done, plainly=False)
            return Found(None, chances[OUTSIDE])
        if "in_bottle" in chances and fills.asked(look.parsed.plain):
            chances["in_bottle"] += chances.pop("mixed", 0.0)
        if says_it_dried(look):
            chances["rewet"] = 0.0
        top = max(chances, key=lambda label: chances[label])
        needed = CLEAR if _stands_alone(top, chances) else self._needed(top, look.speak, look.parsed.plain)
        plain = before_the_left_out(look.parsed.plain) if top == "log_clean" else look.parsed.plain
        told = top not in self._told or is_told(_PLEASE_NOTE.sub("", plain) if top == "log_clean" else plain)
        fits = may_be(top, look.parsed, look.claims, chances[top])
        if top == "mixed" and chances[top] >= ENOUGH and told and not fits and wishes_for_a_mix(look.parsed):
            return Found("dose", chances[top])
        if top == OUTSIDE or chances[top] < needed or not told or not fits:
            if top in IS_IT and surely_told(top, look):
                return Found(top, chances[top], plainly=False)
            others = (chance for label, chance in chances.items() if label != OUTSIDE)
            return Found(None, chances[top] if top != OUTSIDE else max(others, default=0.0))
        named = set(look.parsed.words)
        if top == "measure_with" and "{volume}" not in named and named & {"{bottle}", "{mix}"}:
            return Found("dose", chances[top])  # what is to be measured for a bottle is its dose
        return Found(top, chances[top])

    def _needed(self, label: str, words: tuple[str, ...], plain: str) -> float:
        """Least chance of a question; a word that is strange to a question about the talk or the round counts against.

        In few words it must be one of the question's own ("undo my belt" is none); in more, where nothing is named, one
        that any phrasing has.
        """
        if label in _HALF_ENOUGH and _HALF_ENOUGH[label].search(plain):
            return BY_ITS_WORDS
        if label not in self._own:
            return ENOUGH
        few = len(words) <= FEW_WORDS
        if not few and any(word[0] == "{" for word in words):
            return ENOUGH
        steps = CLAIM_WORDS if label not in _OF_THE_TALK else frozenset()
        known = self._own[label] | steps if few else self._vocabulary
        strange = sum(word not in known and word[0] != "{" for word in words)
        if few and strange:
            return STRANGE_BUT_SURE if strange == 1 and label in _CHANGES_NOTHING else NEVER
        return STRANGE_ENOUGH if strange else ENOUGH


def _is_the_hold_awaited(look: Look) -> bool:
    """ "Hold's done", where a wet time is still to be vouched for."""
    return look.claims.done == ("hold",) and any(map(waits_on_hold, look.world.state.rounds.values()))


def _is_drying(look: Look) -> bool:
    """ "It's drying on the left side", while a wet time runs: not dry yet."""
    runs = a_hold_runs(look.world.state.rounds.values(), look.world.now)
    plain = look.parsed.plain
    return runs and is_told(_NEARLY.sub(" ", plain)) and not look.told.dried and _DRYING.search(plain) is not None


_NEARLY = Pattern(r"\b(?:nearly|almost|about to)\b")
_DRYING = Pattern(
    r"^(?:(?:oh|no|um|but|and|help|,) ?)*(?:it|this|that|the \w+|ENCLOSURE|\w+ one)(?: is| are| 's| has| looks?)"
    r"(?: \w+){0,2}? (?:drying|(?:starting|beginning|going|about) to dry|getting dry|nearly dry|almost dry)\b"
    r"(?! (?:off|with|him|her))(?!.*\b(?:sprayed|misted|again|spritzed)\b)"
)


def _waits_to_be_moved(look: Look) -> bool:
    rounds = look.world.state.rounds.values()
    return any(is_open(round_) and "move out" not in round_.done for round_ in rounds)


def _under_way(look: Look) -> bool:
    return any(is_open(round_) for round_ in look.world.state.rounds.values())


def _of_a_clean(look: Look) -> bool:
    """A clean is open, or an enclosure is named: what is told of a step then must not be lost."""
    return _under_way(look) or not (HOMES | {"ENCLOSURE", "ANIMAL"}).isdisjoint(look.parsed.plain.split())


def _tells_while_open(look: Look) -> bool:
    """ "Two windows open", "windows open, both of them", while a clean is open: told, not asked."""
    return _under_way(look) and len(look.parsed.words) <= 2 * FEW_WORDS and is_told(look.parsed.plain)


def _stands_alone(top: str, chances: Mapping[str, float]) -> bool:
    """Nothing else is half as likely, and nothing is recorded by it."""
    if top not in _ONLY_ASKS or chances[OUTSIDE] > LITTLE:
        return False
    others = max((chance for label, chance in chances.items() if label not in (top, OUTSIDE)), default=0.0)
    return chances[top] >= LEAD * others


def _another_question(look: Look) -> bool:
    """What is surely another question though a step is named in it: "what is best for crypto in a plastic tub"."""
    chances, top = look.chances, look.top
    told_first = len(look.parsed.words) <= FEW_WORDS + 1 or _OPENS_AS_CLAIM.match(look.parsed.plain) is not None
    if told_first or top in _LIKE_A_CLAIM or chances["done"] > HARDLY_A_CLAIM:
        return False
    return chances[top] >= ANOTHER_QUESTION


def _surely_of_no_clean(look: Look) -> bool:
    """Surely another question, where no clean is open that a step could be told of; a spraying again is one as well."""
    top, plain = look.top, look.parsed.plain
    if _under_way(look) or look.chances[top] < SURELY or top in _LIKE_A_CLAIM - {"return_check", "time_left"}:
        return False
    if _OPENS_AS_CLAIM.match(plain) or "hold" in look.claims.done or (top == "return_check" and is_told(plain)):
        return False
    return "apply" not in look.claims.done or top in ("rewet", "mixed")


def _asks_at_its_end(look: Look) -> bool:
    """Whether a turn ends as a question that is likely another than a step told, where no step could be recorded."""
    plain = look.parsed.plain
    ends = plain.endswith("?") or _ENDS_AS_ASKED.search(plain) is not None
    return ends and look.top not in _LIKE_A_CLAIM and look.chances[look.top] >= ENOUGH


def _on_another_day(look: Look) -> bool:
    """ "Rinsed juniper last Tuesday" is no step of what is being done now."""
    when = look.parsed.when
    said = moment(when, look.world.now) if when is not None else None
    if said is None or said.others:
        return False
    now = look.world.now
    return said.at.astimezone(now.tzinfo).date() < now.date() and now - said.at > timedelta(hours=EARLIER_HOURS)


def _rinsed_and_dry_soon(look: Look) -> bool:
    """ "Rinsed, dry in a minute": rinsed, and nothing dried before its time."""
    rinsed = "rinse" in look.claims.done and "dry" not in look.claims.done
    return rinsed and _SOON.search(look.parsed.plain) is not None


_SOON = Pattern(r"\bdry in (?:about |another |a )*(?:minute|moment|sec|second|few|DURATION|NUMBER|jiffy|tick)\b")


def says_it_dried(look: Look) -> bool:
    """That a surface didn't stay wet: no step, and not taken down as one, but not to be forgotten either."""
    stayed = look.claims.stayed_wet
    rinsed = "rinse" in look.claims.done or _all_rinsed(look)
    if "dry" in look.claims.done and _DRIED_OFF.search(look.parsed.plain) and rinsed:
        return False  # after the rinse "it's all dried off" is the step
    return stayed is False or (stayed is None and dried_early(look.parsed.plain))


def _all_rinsed(look: Look) -> bool:
    sprayed = [r for r in look.world.state.rounds.values() if is_open(r) and "apply" in r.done]
    return bool(sprayed) and all("rinse" in r.done for r in sprayed)


_DRIED_OFF = Pattern(r"\bdried (?:off|up)\b(?!.*\b(?:early|soon|too|before|again)\b)", "dried")
_HALF_ENOUGH = {
    "dry_time": re.compile(
        r"\b(?:how|when|will|does|do|going to)\b.*\b(?:dry|dries|dried|drying|evaporates?|(?:stay|keep)\w* "
        r"(?:it )?wet)\b|\b(?:dry|drying) times?\b"
    ),
    "air_time": re.compile(
        r"\b(?:how|when|will|would|is|what|for)\b.*\b(?:air|aired|airing|ventilat\w+|windows?|fumes|smell)\b"
    ),
}
_MAY_IT = Pattern(r"\b(?:can|may|could) (?:i|we|he|she|they|it) (?:\w+ ){0,3}(?:back|home|in)\b")
_FOR_THE_LOG = Pattern(
    r"\b(?:jot|put|pop|note|write|log|stick|record|enter)(?: \w+){0,3} (?:down|in the (?:record|log|book|diary))\b"
)
_PLEASE_NOTE = Pattern(
    r"^(?:(?:can|could|would|will) you (?:please )?(?:just )?(?:put|log|note|write|record|mark|jot|add)"
    r"(?: (?:it|this|that|down|in|on|the|my|book|record|log|diary))* (?:that )?|did "
    r"(?=(?:the|both|all|everyone|ENCLOSURE|ANIMAL)\b))|\bbefore i forget(?: it)?\b"
)
"""Words around a chore that is told, and is neither asked nor still to come."""
_OF_THE_TALK = frozenset({"undo", "repeat", "help"})
"""Questions that no word of the round belongs to: "undo the lid" is none."""
_ONLY_ASKS = frozenset(
    {"dose", "mix_strength", "top_up", "make_up", "convert", "read_ratio", "bleach_now", "measure_with"}
    | {"choose_agent", "works_on", "surface", "together", "protect", "treat_item", "share_tool"}
    | {"hold_time", "time_left", "dry_time", "air_time", "return_check", "status"}
    | {"due", "order", "last_done", "quarantine", "in_bottle", "still_good", "stock_left", "unknown_bottle"}
    | {"store_it", "pour_away", "leave_off", "units", "why", "spill"}
)
_CHANGES_NOTHING = frozenset({"hush", "slower"})
ABOUT_TALK = frozenset({"next", "repeat", "help", "undo", "start", "status", "hush", "slower"})
_LIKE_A_CLAIM = frozenset(
    {OUTSIDE, "done", "status", "yes", "no", "log_clean", "splash", "wound", "escape", "spill"}
    | {"next", "return_check", "time_left", "start"}
)
"""Questions that a claim is mistaken for, or that follow one in the same breath: "rinsed it, what's next"."""
_OPENS_AS_CLAIM = Pattern(
    r"(?:(?:ok|right|so|and|now) ,? ?)*(?:(?:i|we)(?: have)? )?(?:rinsed|washed|wiped|cleared|aired)\b(?! out)"
)
"""What a turn opens with is told, whatever is asked after it: "rinsed it, what should I use for mites"."""
_BEATS_A_CLAIM = frozenset(
    {"rinsed_out", "start", "dose", "hold_time", "help", "repeat", "undo"}
    | {"mix_strength", "top_up", "make_up", "bleach_now", "measure_with"}
)
"""Questions that aren't a claim of a step though they hold the words of one."""
_WITH_THE_BOTTLE = Pattern(r"\b(?:with|from|using) (?:the |my )?BOTTLE\b")
""" "Rinsed with the green bottle": what was sprayed, not rinsed out."""
_ANOTHER_MATTER = Pattern(
    r"^(?:so |right |ok |now )*(?:start|begin) (?:the |my |with |on )*(?:ENCLOSURE|ANIMAL)\b"
    r"|\bwhat (?:then|next|now|comes next)\b ?\??$|\band then \?$|^(?:scratch|undo|cancel|strike) (?:that|it)\b"
)
"""Not about whether a step was done, though one is named in it."""
_ASKS_OF_AN_ITEM = Pattern(
    r"^(?:so |and |ok )*(?:can|could|may|should|how|what|is it ok|do) .*\b"
    r"(?:bake|boil|soak|freeze|microwave|oven|dishwasher)\b"
)
"""Asked what may be done with a branch or a bowl."""
_NOT_WATCHED = Pattern(
    r"\bwet\b|\basleep\b|\bdry\b|\btoo dark\b"
    r"|\b(?:could|did) not (?:really |even )?(?:see|tell|look|watch|check)(?: it)?(?: ?[,.]|$)"
    r"|^(?:i )?(?:do not know|am not sure|have no idea)$|^(?:no idea|not sure)$"
)
"""Of a surface that nobody watched; alone, right after it was asked."""
_HAS_STEP_WORD = Pattern(
    r"\b(?:rins\w+|wash\w*|spray\w*|dry|dried|drying|wet|damp|wip\w+|air\w*|clear\w*|appl\w+|scrub\w*|mist\w*|back"
    r"|hos\w+)\b"
)
