"""Something burns or smokes: the alcohol, a lamp, a sleeve. No splash, so no running water is spoken of.

"My throat is on fire" is a splash or fumes, and "can alcohol catch fire?" is asked of the work.
"""

from __future__ import annotations

from assistant.understand.text.patterns import Pattern, words_in

_THINGS = (
    r"(?:AGENT|STOCK|BOTTLE|MEASURE|ENCLOSURE|bottle|sprayer|spray|it|that|this|something|everything|fumes?|vapours?"
    r"|cloth|rag|towel|paper|tank|box|tub|cage|viv|vivarium|enclosure|lid|mat|wood|bin|table|bench|worktop|floor"
    r"|carpet|curtains?|shelf|room|house|kitchen|lamp|bulb|heater|fixture|thermostat|plug|socket|cable|wire|lead"
    r"|extension|fan|ballast|sleeve|sleeves|shirt|jumper|trousers|jeans|top|dress|clothes|apron|hair|gloves?"
    r"|substrate|bedding|branch)"
)
_FIRE = Pattern(
    rf"\b{_THINGS}(?: has| have| is| are| was| 's| went| just| all| now| gone| got)* "
    r"(?:on fire|alight|ablaze|in flames|up in (?:flames|smoke)|burst into flames?|catching fire|caught "
    r"(?:fire|light|alight))\b"
    r"|\b(?:caught|catching|set|setting)(?: \S+){0,3}? (?:on fire|fire|alight|light to)\b(?! (?:belly|bellied|skink))"
    r"|\bthere (?:is|are)(?: \w+)? (?:fire|flames|smoke)\b"
    rf"|\b{_THINGS}(?: has| have| is| are| 's| just| started| all| now)* "
    r"(?:smoking|smouldering|smoldering|sparking|flaming)\b(?! hot)"
    r"|\b(?:AGENT|STOCK|alcohol)\b.*\b(?:lamp|bulb|heater|flame|candle|spark|cigarette|plug)\b.*\bwent up\b"
    r"|\b(?:AGENT|STOCK|alcohol) (?:just |has |all )*went up(?: in|$)"
    r"|\b(?:something|everything|tank|box|cage|viv|vivarium|enclosure|cloth|rag|towel|paper|mat|wood|bin|table|bench"
    r"|floor|carpet|curtains?|shelf|room|house|ENCLOSURE|plug|socket|cable|wire|heater)"
    r"(?: is| are| 's| started)* burning\b(?! hot)"
    r"|\bsparks?(?: (?:is|are|came|coming|flew|flying|shot|shooting))* (?:from|out of|off|at|in) (?:the |my "
    r"|a )?(?:\w+ )?"
    r"(?:plug|socket|cable|wire|lead|heater|lamp|thermostat|extension|fan|switch|ballast|bulb)\b"
    r"|\b(?:plug|socket|cable|wire|heater|lamp|thermostat|extension|fan|switch|ballast)(?: has| just| 's)* "
    r"(?:sparked|sparks|flashed|went bang|blew up|melted|melting|scorched)\b"
    r"|^(?:(?:help|oh|no|and|now|it|something|there|here|that) ?,? ?)*(?:smells?|smelling|smelt) (?:like "
    r"|of )?(?:\w+ )?"
    r"(?:burning|burnt|burned)(?: (?:in here|now|plastic|wire|rubber|electrics?|electrical|dust))*(?: ?[!.])*$"
    r"|\b(?:got|gave me|getting|had) (?:a |an )?(?:electric |electrical )?shock (?:from|off) (?:the |my )?(?:\w+ )?"
    r"(?:plug|socket|cable|wire|heater|lamp|thermostat|tank|ENCLOSURE|switch)\b"
    r"|^(?:(?:help|oh|no|god|shit|quick|there is|a|,) ?)*(?:fire|flames)(?: (?:fire|help|now|in here|in the \w+))*"
    r"(?: ?[!.])*$",
    *("fire", "alight", "ablaze", "flame", "smok", "smould", "smold", "spark", "went up", "burn", "shock"),
    *("flashed", "bang", "blew", "melt", "scorch"),
)
_ASKED_BEFOREHAND = Pattern(
    r"\b(?:what|how) (?:do|should|can|would|must) (?:i|we)\b.*\b"
    r"(?:(?:catch\w*|caught) (?:fire|light)|on fire|(?:put|fight|stop) (?:out )?(?:the |a |an )?(?:\w+ )?"
    r"(?:fire|flames))\b|\bwhat if\b.*\b(?:(?:catch\w*|caught) (?:fire|light)|fire starts)\b",
    *("fire", "light", "flames"),
)
"""What to do about one: the same words, whether or not it burns."""
_PUTS_IT_OUT = Pattern(
    r"\b(?:water|extinguish\w*|smother\w*|blanket|sand|towel|put (?:it|that|the fire) out|pour|throw)\b"
)
_ONLY_SPOKEN_OF = Pattern(
    r"^(?:so |and |but |ok |um )*(?:can|could|will|would|does|do|is|are|may|might|how|when|why|which|what "
    r"(?:if|happens)|if|should|am)\b(?! not)|\?$"
    r"|\b(?:no|not|never|nearly|almost|without|stop\w*|prevent\w*|risk of|in case of|if there|used to|called|last "
    r"(?:year|month|week))\b"
)
WORDS = words_in(_FIRE, _PUTS_IT_OUT) | {"flames", "smoking", "fire", "sparking", "alight"}


def burns(text: str) -> bool:
    """True when a masked text says that something burns or smokes."""
    if _ASKED_BEFOREHAND.search(text):
        return True
    return _FIRE.search(text) is not None and _ONLY_SPOKEN_OF.search(text) is None


def puts_it_out(text: str) -> bool:
    """Right after a fire was told of: "do I pour water on it?"."""
    return _PUTS_IT_OUT.search(text) is not None
