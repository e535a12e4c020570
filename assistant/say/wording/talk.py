"""How the talk about the talk is spoken."""

from __future__ import annotations

import re
from collections.abc import Callable

from assistant.contract import NO_SMELL, Answer, Line
from assistant.core.record.state import Deed
from assistant.say.wording.plain import MOST_WORDS, capital, clock, digits, listed
from assistant.say.wording.steps import NAMES, steps_done


def _help(answer: Answer) -> Line:
    shown = ["You can ask, in your own words:"]
    for question in answer.details["questions"]:
        shown += [f"  {question.name.replace('_', ' ')}: {question.about}", f'    "{question.example}"']
    shown.append("The product's label, your vet and the poison centre outrank anything said here.")
    say = "Ask how much to mix, what's next, how long is left, or may the animal go back. More on the screen."
    return Line(say, "\n".join(shown))


def _unsure(answer: Answer) -> Line:
    nearest = answer.details["nearest"]
    if not nearest:
        return Line("I didn't get that. Say help for what I know.")
    examples = [example for _, example in nearest]
    shown = listed((f'"{example}"' for example in examples), "or")
    show = f"I don't know that one. Nearest I have: {shown}."
    if answer.details["asked"]:
        return Line("I don't know that one. To what I asked: yes, or no?", f"{show}\nTo what I asked: yes, or no?")
    return Line(_nearest_aloud(examples), show)


def _nearest_aloud(examples: list[str]) -> str:
    """As many of the nearest questions as one breath holds, each in words that would ask it."""
    for some in range(len(examples), 0, -1):
        line = f"I don't know that one. Did you mean: {', or: '.join(examples[:some])}?"
        if len(line.split()) <= MOST_WORDS:
            return line
    return "I don't know that one. Say help for what I know."


def _remarked(answer: Answer) -> Line:
    say = "I don't know that one, but noted: I'll ask before it goes back. Wet, smells, missed, dirty? Tell me which."
    return Line(say, f"{say}\n{_unsure(answer).show}")


def _may_have_dried(answer: Answer) -> Line:
    say = "I can't take that as a step, but noted: it may have dried. At its end, tell me whether it stayed wet."
    return Line(say, f"{say}\n{_unsure(answer).show}")


def _did_it_stay_wet(answer: Answer) -> Line:
    return Line("I can't tell from that. Did it stay wet the whole time? Yes, no, or not sure.")


def _faulty(answer: Answer) -> Line:
    faulty = answer.details["faulty"]
    return Line(_spoken_fault(faulty.said, faulty.why), f'"{faulty.said}": {faulty.why}')


_TYPED = (
    (re.compile(r"\d,\d"), "Write the number with a point, not a comma."),
    (re.compile(r"\bM[Ll]\b"), "A big M is mega. Write it with a small m, or say mils."),
)
"""What is wrong with how an amount was typed, in words, since saying it again would change nothing."""


def _spoken_fault(said: str, why: str) -> str:
    """The fault as it may be spoken; one that holds symbols or is long is left to the screen."""
    typed = next((words for pattern, words in _TYPED if pattern.search(said)), None)
    if typed is not None:
        return typed
    spoken = why.replace(":", ",")
    if len(spoken.split()) <= MOST_WORDS and spoken.isascii() and not set('%/<>"') & set(spoken):
        return f"{capital(spoken)}."
    return "I can't take that amount. Say it again, please."


def _choose(answer: Answer) -> Line:
    choice = answer.details["choice"]
    if len(choice.candidates) > 4:
        return Line(f"Which {choice.kind}?", f"Which {choice.kind}: {listed(choice.candidates, 'or')}?")
    return Line(f"Which: {listed(choice.candidates, 'or')}?")


def _unknown(answer: Answer) -> Line:
    unknown, known = answer.details["unknown"], answer.details["known"]
    shown = f'I know no {unknown.kind} called "{unknown.said}".'
    shown += f" You have: {listed(known)}." if known else f" keeping.toml names no {unknown.kind} yet."
    return Line(f"I know no {unknown.kind} by that name. Which one is it?", shown)


def _confirm(answer: Answer) -> Line:
    steps = answer.details["steps"]
    doubts = answer.details["doubts"]
    numbers = [digits(doubt.heard) for doubt in doubts if doubt.kind == "number"]
    badly = [doubt.heard for doubt in doubts if doubt.kind == "hearing"]
    heard = badly[0] if badly else answer.details["heard"] if numbers else ""
    values = answer.details["answer"].values
    where = values.get("enclosure") or values.get("bottle")
    name = f"{capital(where)}: " if isinstance(where, str) else ""
    whole = f"I heard: {heard}. " if heard and len(heard.split()) <= LONGEST_READ_BACK else ""
    if numbers:
        said = listed(numbers) if whole else f"{name}{listed(numbers)}"
        return Line(f"{whole}{capital(said)}, is that right?")
    if whole:
        return Line(f"{whole}Is that right?")
    meant = [MEANT.get(doubt.heard) for doubt in doubts if doubt.kind == "meaning"]
    if meant:
        return Line(f"{capital(f'{name}{meant[0]}')}, is that it? Yes or no.")
    if steps == ("return",) and any(doubt.kind == "part" for doubt in doubts):
        return Line(f"{name}are all of them back in?")
    if steps and any(doubt.kind == "part" for doubt in doubts):
        too = {"wash": "and the soap rinsed off", "clear": "substrate and dishes too"}.get(steps[-1], "corners too")
        return Line(f"{name}is all of it {steps_done(steps)}, {too}?")
    if steps:
        said = steps_done(steps)
        return Line(f"{name}{said}, or not {said}?")
    untold = [doubt.heard for doubt in doubts if doubt.kind == "polarity"]
    return Line(f"{name}{untold[0]} as well?" if untold else f"{name}did I hear that right?")


def _not_recorded(answer: Answer) -> Line:
    steps = answer.details["steps"]
    if "hold" in steps:
        return Line("All right. Nothing recorded; the wet time runs on.")
    return Line(f"Not {steps_done(steps)}. Nothing recorded." if steps else "All right. Nothing recorded.")


def _in_full(answer: Answer) -> Line:
    return Line("Still about that, I think, but I can't tell how. Nothing is changed. Say it in full, please.")


def _nothing_waiting(answer: Answer) -> Line:
    return Line("I asked nothing just now, so nothing changes. What is it?")


def _yes_or_no(answer: Answer) -> Line:
    return Line("Yes, or no? Nothing is recorded before you say.")


def _which_then(answer: Answer) -> Line:
    return Line("Which, then? I need a name or a number.")


def _nothing_said(answer: Answer) -> Line:
    return Line("I haven't said anything yet.")


def _repeat(answer: Answer) -> Line:
    return Line("Again.")  # the turn puts the last words in


MEANT = {
    "mixed": "filled afresh",
    "rinsed_out": "rinsed out and pumped through",
    "log_clean": "a chore for the log",
    "rewet": "sprayed again, and wet all the while",
    "dried_early": "it dried before its time",
    "still_smells": "still a smell, or wet",
    NO_SMELL: "no smell any more",
    "start": "a clean to begin",
    "leave_off": "a pause",
    "clean_only": "finished as a clean only",
    "tub": "waiting in that tub",
    "outbreak": "an illness or mites seen",
    "undo": "take the last one back",
}
"""What is asked about where it isn't plainly told."""
LONGEST_READ_BACK = 18
"""Words of what was heard that a reply has room for."""
KINDS = {
    "published": "published",
    "practice": "common practice, no published source",
    "memory": "from memory, so don't lean on it",
    "label": "its own label",
    "setting": "as you set it",
}
"""How far a source carries, in a few words."""


def _why(answer: Answer) -> Line:
    """The first source in its own words; the rest, and who says so, on the screen."""
    told = answer.details["told"]
    source, says = told[0]
    if source.kind == "memory":
        say = "That one is from memory, without a source: don't lean on it. Your label and vet decide."
    else:
        known = KINDS[source.kind]
        ending = f": {known}" if source.kind in ("practice", "label", "setting") and known not in says else ""
        say = _within(f"{says}{ending}.", len(told) - 1)
    lines = [f"Why: {answer.details['last'].say}"]
    lines += [f"- {one.text} [{KINDS[one.kind]}]" for one, _ in told]
    return Line(say, "\n".join(lines))


def _within(say: str, more: int) -> str:
    """As it is, with how much more is on the screen where that fits; what is long is left to the screen."""
    if len(say.split()) > MOST_WORDS or set('%/<>="') & set(say):
        return "The source is too long to say; it is on the screen."
    rest = f" {more} more on the screen." if more else " The source is on the screen."
    return say + rest if len((say + rest).split()) <= MOST_WORDS else say


def _why_unsourced(answer: Answer) -> Line:
    return Line(
        "That rests on what you told me and what is on record, with no published figure behind it.",
        f"Why: {answer.details['last'].say}\nIt rests on what you told me, your household file and the record; "
        "no published figure is behind it.",
    )


def _nothing_to_undo(answer: Answer) -> Line:
    return Line("There is nothing on record to take back.")


WHAT = {
    "AnimalLoose": "the escape",
    "AnimalFound": "found again",
    "TubUsed": "the tub",
    "TubLeft": "back from the tub",
    "TubCleaned": "cleaning the tub",
    "TubUnclean": "the tub as not clean",
    "GroupChanged": "the group",
    "QuarantineRestarted": "the new quarantine",
    "HabitChanged": "the setting",
    "ItemBegun": "the clock of the",
    "BottleUnsettled": "what went in",
    "BottleDoubted": "marked unknown",
    "RoundStarted": "the start",
    "DriedEarly": "dried early",
    "StepReopened": "what was to be done again",
    "KeptWet": "kept wet",
    "Sensed": "what you smelt or felt",
    "Paused": "the pause",
    "Resumed": "going on",
    "CleanOnly": "clean only",
    "StayedWet": "stayed wet",
    "HoldDoubted": "the doubt about the wet time",
    "BackTooSoon": "put back too soon",
    "WindowsOpened": "the window",
    "GasMade": "the mix",
    "BottleMixed": "the fill",
    "ChoreDone": "the chore",
    "AgentPoured": "what was poured in",
    "AgentsMet": "the mix",
    "BottleRinsed": "rinsed out",
    "RinseBegun": "the rinse timer",
    "RinseEnded": "the end of the rinse timer",
    "SurfaceRinsed": "rinsed",
    "SurfaceDried": "dry",
    "AgentTouched": "the spraying",
}


def _deed(deed: Deed) -> str:
    """ "Rinsing" by its step; what reopened one by what it did."""
    step = NAMES.get(deed.step) if deed.event != "StepReopened" else None
    return step or WHAT.get(deed.event, "that")


def _undone(answer: Answer) -> Line:
    deeds = answer.details["deeds"]
    told = [", ".join(filter(None, (_deed(d), d.thing))) for d in deeds]
    spoken = told[0] if len(told) == 1 else f"{told[0]} and {len(told) - 1} more"
    if all(d.event in ("GasMade", "AgentsMet") for d in deeds):
        say = f"That stays on record: an unknown mix, {deeds[0].thing}, until it's rinsed out."
        return Line(say)
    shown = f"Taken back: {'; '.join(told)} ({clock(answer.details['at'], answer.details['now'])})."
    if any(d.event in ("AgentTouched", "GasMade") or d.step == "apply" for d in deeds):
        shown += "\nWhat touched the surface stays on record until a rinse: agents must not meet."
    if any(d.event in ("BottleMixed", "AgentPoured") for d in deeds):
        shown += "\nWhat was in the bottle stays on record until it's rinsed out: agents must not meet."
    inside = " If it's still inside, take it out before anything else." if any(map(_moved_out, deeds)) else ""
    return Line(f"Taken back: {spoken}.{inside}", f"{shown}{inside}")


def _moved_out(deed: Deed) -> bool:
    return (deed.event, deed.step) == ("StepDone", "move out")


def _not_done_where(answer: Answer) -> Line:
    candidates, steps = answer.details["candidates"], answer.details["steps"]
    return Line(f"Which wasn't {steps_done(steps)}: {listed(candidates, 'or')}?")


def _undone_instead(answer: Answer) -> Line:
    """Taken back, and whether it is so of the enclosure named."""
    back, named = _undone(answer), answer.details["enclosures"]
    did = steps_done(answer.details["steps"])
    more = f"{capital(named[0])} {did}, then?" if named else f"Which one was {did}, then?"
    return Line(f"{back.say} {more}", f"{back.show or back.say}\n{more}")


def _hushed(answer: Answer) -> Line:
    return Line("Quiet. The clocks run on.")


def _pace(answer: Answer) -> Line:
    return Line("I'll speak slower." if answer.details["slow"] else "Back to the usual speed.")


SETTINGS = {
    ("gallon", "imperial"): "gallons, pints and fluid ounces imperial",
    ("gallon", "US"): "gallons, pints and fluid ounces US",
    ("ratio", "in"): "a colon as one part in so many",
    ("ratio", "to"): "a colon as one part to so many",
}


def _setting(answer: Answer) -> str:
    return SETTINGS[answer.details["habit"], answer.details["value"]]


def _which_units(answer: Answer) -> Line:
    return Line(f"Gallons are {answer.details['gallon']} now. US or imperial?")


def _metric(answer: Answer) -> Line:
    return Line("I answer in mils already. Say mils or litres, and I take them as they are.")


def _set_confirm(answer: Answer) -> Line:
    return Line(f"From now on {_setting(answer)}. Right?")


def _set(answer: Answer) -> Line:
    say = f"Set: {_setting(answer)}."
    return Line(say, f"{say}\nKept on my record, over that line of keeping.toml, until the line is changed.")


def _set_already(answer: Answer) -> Line:
    return Line(f"That's how it is: {_setting(answer)}.")


LINES: dict[str, Callable[[Answer], Line]] = {
    "talk.help": _help,
    "talk.hushed": _hushed,
    "talk.pace": _pace,
    "talk.repeat_at_pace": _pace,
    "talk.which_units": _which_units,
    "talk.metric": _metric,
    "talk.set_confirm": _set_confirm,
    "talk.set": _set,
    "talk.set_already": _set_already,
    "talk.unsure": _unsure,
    "talk.may_have_dried": _may_have_dried,
    "talk.remarked": _remarked,
    "talk.did_it_stay_wet": _did_it_stay_wet,
    "talk.in_full": _in_full,
    "talk.faulty": _faulty,
    "talk.choose": _choose,
    "talk.unknown": _unknown,
    "talk.confirm": _confirm,
    "talk.not_recorded": _not_recorded,
    "talk.nothing_waiting": _nothing_waiting,
    "talk.which_then": _which_then,
    "talk.yes_or_no": _yes_or_no,
    "talk.nothing_said": _nothing_said,
    "talk.repeat": _repeat,
    "talk.why": _why,
    "talk.why_unsourced": _why_unsourced,
    "talk.nothing_to_undo": _nothing_to_undo,
    "talk.undone": _undone,
    "talk.undone_instead": _undone_instead,
    "talk.not_done_where": _not_done_where,
}
