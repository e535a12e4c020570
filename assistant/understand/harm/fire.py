"""Something burns or smokes: the alcohol, a lamp, a sleeve. No splash, so no running water is spoken of.

"My throat is on fire" is a splash or fumes, and "can alcohol catch fire?" is asked of the work.
"""

from __future__ import annotations

from assistant.understand.text.patterns import Pattern, words_in

_THINGS = (
    r"(?:AGENT|STOCK|BOTTLE|MEASURE|ENCLOSURE|bottle|sprayer|spray|it|that|this|something|everything|fumes?|vapours?"
    r"|cloth|rag"
    r"|towel|paper|tank|box|tub|cage|viv|vivarium|enclosure|lid|mat|wood|bin|table|bench|worktop|floor|carpet|curtains?"
    r"|shelf|room|house|kitchen|lamp|bulb|heater|fixture|thermostat|plug|socket|cable|wire|lead|extension|fan|ballast"
    r"|sleeve|sleeves|shirt|jumper|trousers|jeans|top|dress|clothes|apron|hair|gloves?|substrate|bedding|branch)"
)
_FIRE = Pattern(
    rf"\b{_THINGS}(?: has| have| is| are| was| 's| went| just| all| now| gone| got)* (?:on fire|alight|ablaze|in flames"
    r"|up in (?:flames|smoke)|burst into flames?|catching fire|caught (?:fire|light|alight))\b"
    r"|\b(?:caught|catching|set|setting)(?: \S+){0,3}? (?:on fire|fire|alight|light to)\b(?! (?:belly|bellied|skink))"
    r"|\bthere (?:is|are)(?: \w+)? (?:fire|flames|smoke)\b"
    rf"|\b{_THINGS}(?: has| have| is| are| 's| just| started| all| now)* (?:smoking|smouldering|smoldering|sparking"
    rf"|flaming)"
    r"\b(?! hot)"
    r"|\b(?:AGENT|STOCK|alcohol)\b.*\b(?:lamp|bulb|heater|flame|candle|spark|cigarette|plug)\b.*\bwent up\b"
    r"|\b(?:AGENT|STOCK|alcohol) (?:just |has |all )*went up(?: in|$)"
    r"|^(?:(?:help|oh|no|god|shit|quick|there is|a|,) ?)*(?:fire|flames)(?: (?:fire|help|now|in here|in the \w+))*(?:"
    r" ?[!.])*$",
    *("fire", "alight", "ablaze", "flame", "smok", "smould", "smold", "spark", "went up"),
)
_ONLY_SPOKEN_OF = Pattern(
    r"^(?:so |and |but |ok |um )*(?:can|could|will|would|does|do|is|are|may|might|how|when|why|which|what (?:if"
    r"|happens)|if"
    r"|should|am)\b(?! not)|\?$|\b(?:no|not|never|nearly|almost|without|stop\w*|prevent\w*|risk of|in case of|if there"
    r"|used to|called|last (?:year|month|week))\b"
)
WORDS = words_in(_FIRE) | {"flames", "smoking", "fire", "sparking", "alight"}


def burns(text: str) -> bool:
    """True when a masked text says that something burns or smokes."""
    return _FIRE.search(text) is not None and _ONLY_SPOKEN_OF.search(text) is None
