"""The words that dates and times of day are said in, and their patterns over a text's words with blanks between."""

from __future__ import annotations

from collections.abc import Sequence

from assistant.understand.text.patterns import Pattern

_NAMES = ("january", "february", "march", "april", "may", "june", "july", "august", "september", "october")
MONTHS = {name: place for place, name in enumerate((*_NAMES, "november", "december"), start=1)}
SHORT_MONTHS = {name[:3]: place for name, place in MONTHS.items() if name != "may"} | {"sept": 9}
WEEKDAYS = {
    name: place
    for place, name in enumerate(("monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday"))
}
SHORT_DAYS = {"mon": 0, "tue": 1, "tues": 1, "weds": 2, "thu": 3, "thur": 3, "thurs": 3, "fri": 4}
ORDINALS = {
    word: place
    for place, word in enumerate(
        (
            *("first", "second", "third", "fourth", "fifth", "sixth", "seventh", "eighth", "ninth", "tenth"),
            *("eleventh", "twelfth", "thirteenth", "fourteenth", "fifteenth", "sixteenth", "seventeenth"),
            *("eighteenth", "nineteenth", "twentieth"),
        ),
        start=1,
    )
}
ORDINALS |= {f"twenty {word}": 20 + place for word, place in ORDINALS.items() if place < 10}
ORDINALS |= {"thirtieth": 30, "thirty first": 31}
PARTS = {"morning": 9, "afternoon": 15, "evening": 19, "night": 21, "lunchtime": 13}
"""Hour that a part of the day stands for; a round figure within it, nothing is reckoned from it to the minute."""
MINUTES = {"minute": 1.0, "min": 1.0, "hour": 60.0, "hr": 60.0, "day": 1440.0, "week": 10080.0, "fortnight": 20160.0}
_DAYPARTS = r"morning|afternoon|evening|night|lunchtime"


def _any(words: Sequence[str]) -> str:
    return "|".join(sorted(words, key=len, reverse=True))


_HOUR = "one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|0?[1-9]|1[0-9]|2[0-3]"
_MINUTE = r"[0-5][0-9]|oh five|ten|fifteen|twenty(?: five)?|thirty(?: five)?|forty(?: five)?|fifty(?: five)?"
_HALF = r"(?:am|pm|a \. ?m(?: \.)?|p \. ?m(?: \.)?|in the (?:morning|afternoon|evening)|at night)"
_ORDINAL = rf"(?:{_any(tuple(ORDINALS))}|(?:[12]?[0-9]|3[01]) ?(?:st|nd|rd|th))"
_MONTH = rf"(?:{_any((*MONTHS, *SHORT_MONTHS))})"
_LONG_MONTH = rf"(?:{_any([name for name in (*MONTHS, *SHORT_MONTHS) if name != 'may'])})"
_YEAR = r"(?: ,)?(?: (?P<year>20[0-9][0-9]))?"
_DAY_NAME = rf"(?:{_any((*WEEKDAYS, *SHORT_DAYS))})"

_DATES: tuple[tuple[str, str], ...] = (
    ("iso", r"(?P<year>20[0-9]{2}) - (?P<month>[01][0-9]) - (?P<day>[0-3][0-9])"),
    ("figures", r"(?P<pair>[0-3]?[0-9]/[0-3]?[0-9])(?: / (?P<year>20[0-9]{2}))"),
    ("dated", rf"(?:on )?(?:the )?(?P<ordinal>{_ORDINAL}) (?:of )?(?P<name>{_MONTH}){_YEAR}"),
    ("dated", rf"(?:on )?(?P<ordinal>[12]?[0-9]|3[01]) (?:of )?(?P<name>{_LONG_MONTH}){_YEAR}"),
    ("dated", r"(?:on )?(?P<ordinal>[12]?[0-9]|3[01]) (?P<name>may)(?=$| [.?!,]|(?: ,)? 20[0-9][0-9])" + _YEAR),
    ("dated", rf"(?:on )?(?P<name>{_MONTH}) (?:the )?(?P<ordinal>{_ORDINAL}){_YEAR}"),
    ("dated", rf"(?:on )?(?P<name>{_LONG_MONTH}) (?P<ordinal>[12]?[0-9]|3[01])(?! ?[:.]){_YEAR}"),
    ("before", r"(?:the )?day before yesterday"),
    ("after", r"(?:the )?day after tomorrow"),
    ("near", rf"(?P<near>yesterday|tomorrow)(?: (?P<part>{_DAYPARTS}))?"),
    ("near", rf"(?P<near>last) (?P<part>night|evening)|(?P<near2>this|earlier this) (?P<part2>{_DAYPARTS})"),
    ("near", r"(?:earlier )?(?P<near>today|tonight)|earlier on"),
    ("ago", r"(?P<count>(?:\S+ ){1,5})ago"),
    ("ahead", r"in (?P<count>(?:\S+ ){0,2}(?:days?|weeks?|fortnight|months?))"),
    ("span", r"(?P<which>last|next|this) (?P<size>week|month|weekend)"),
    ("weekday", rf"(?:on |since )?(?P<which>last |next |this )?(?P<weekday>{_DAY_NAME})(?P<last> last)?"
     rf"(?: (?P<part>{_DAYPARTS}))?"),
    ("weekday", r"(?:on |since )?(?P<which>last |next |this )(?P<weekday>wed|sat|sun)"),
    ("of month", rf"on the (?P<ordinal>{_ORDINAL})(?! (?:of|one|window|door|tub|tank|box|shelf|bottle|go|try))"),
    ("just", r"just (?:now|this (?:minute|second))|a (?:moment|minute|second) ago"),
)  # fmt: skip
_CLOCKS: tuple[str, ...] = (
    r"(?:at )?(?P<to>half|quarter|five|ten|twenty(?: five)?|[1-5]?[0-9])(?: minutes?)? (?P<side>past|after) "
    rf"(?P<hour>{_HOUR})(?: o'clock)?(?: (?P<half>{_HALF}))?",
    rf"at (?:a )?(?P<to>quarter|five|ten|twenty(?: five)?)(?: minutes?)? (?P<side>to|before) (?P<hour>{_HOUR})"
    rf"(?: o'clock)?(?: (?P<half>{_HALF}))?",
    rf"(?:a )?(?P<to>quarter) (?P<side>to) (?P<hour>{_HOUR})(?: (?P<half>{_HALF}))?",
    rf"(?:at |around |about )*(?P<hour>{_HOUR})(?:(?: : | )(?P<minute>{_MINUTE}))? (?P<half>{_HALF})",
    rf"(?:at |around |about )*(?P<hour>{_HOUR}) o'clock(?: (?P<half>{_HALF}))?",
    rf"(?:at )(?P<to>half) (?P<hour>{_HOUR})",
    r"(?:at )?(?P<named>noon|midday|midnight)",
    rf"(?:at|around|about) (?P<hour>1[3-9]|2[0-3]) : (?P<minute>{_MINUTE})",
)
_BARE_CLOCK = (
    rf"(?:at |around |about )+(?P<hour>{_HOUR})(?: half| (?P<half_past>thirty)|(?: : | )(?P<minute>{_MINUTE}))?"
)
HINT = Pattern(
    rf"\b(?:{_any((*WEEKDAYS, *SHORT_DAYS))}|yesterday|tomorrow|today|tonight|ago|am|pm|a \.|p \.|o'clock|noon|midday"
    rf"|midnight|past|after|earlier|week|month|weekend|(?:last|this) (?:{_DAYPARTS})|{_any(tuple(MONTHS))}"
    rf"|{_any(tuple(SHORT_MONTHS))}|on the|20[0-9][0-9]|quarter to|at (?:{_HOUR}|half|ten|five|twenty)|in \w+ "
    r"(?:days?|weeks?|months?)|just now)\b"
)
"""Words without one of which a text holds no date or time."""

DATES = tuple((kind, Pattern(rf"(?<!\S)(?:{pattern})(?!\S)")) for kind, pattern in _DATES)
CLOCKS = tuple(Pattern(rf"(?<!\S)(?:{pattern})(?!\S)") for pattern in _CLOCKS)
BARE_CLOCK = Pattern(rf"(?<!\S)(?:{_BARE_CLOCK})(?!\S)")
