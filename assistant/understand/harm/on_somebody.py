"""A product that lies on somebody, a mix that reacts, an animal put back into what is still wet: told, and no wish.

"Chlorhexidine on her" is an accident; with a question, a treating or a reason beside it, it is a wish to treat.
"""

from __future__ import annotations

from assistant.understand.harm.patterns import ANIMAL, LIMBS, SOMEONE
from assistant.understand.text.known_words import words_of
from assistant.understand.text.patterns import Pattern

_OH = r"^(?:(?:oh|no|help|god|shit|damn|quick|and|now|,) ?)*"
_ON_IT = r"(?:AGENT|STOCK|BOTTLE|MIX|disinfectant|cleaner|concentrate|(?:over ?)?spray|mist|product)"
_BEING = rf"(?:him|her|them|himself|herself|me|(?:the |my |our |poor )*(?:\w+ )?{ANIMAL})"
_LIES_ON = Pattern(
    rf"\b(?:has|have|is|got|had|gets)\b(?: \S+){{0,3}}? {_ON_IT} (?:all )?(?:on|over|in|down) "
    r"(?:him|her|them|himself|herself)\b"
    rf"|{_OH}(?:my |our |the )?(?:\w+ )?{SOMEONE.pattern}(?: has| 's| is| got)* (?:got )?(?:it"
    rf"|some) (?:all )?(?:on|over|in) "
    rf"(?:his|her|their) (?:\w+ )?(?:{LIMBS}|eyes?|hair)(?: now)?(?: ?[.!])*$"
    rf"|{_OH}(?:there is )?(?:\w+ )?{_ON_IT} (?:all )?(?:on|over) (?:him|her|them|me|us)(?: now)?(?: ?[.!])*$"
    rf"|\b(?:{_ON_IT}|some(?: of it)?|drops?|droplets?) (?:has |have |just |must have )*"
    r"(?:drift\w*|blew|blown|float\w*|settled|carried|rained|came down|got|landed) (?:\w+ )?"
    rf"(?:on|onto|over|at) {_BEING}\b"
    rf"|{_OH}(?:there is )?{_ON_IT} (?:all )?(?:on|over) (?:his|her|its|their) (?:\w+ )?"
    r"(?:tail|belly|skin|back|head|face|feet|foot|legs?|shell|scales|nose|neck|side|body)(?: now)?(?: ?[.!])*$"
    rf"|{_OH}over ?spray (?:on|over|onto|hit|got|all over) {_BEING}\b"
    rf"|{_OH}(?:there is )?{_ON_IT} (?:got |is |went |has got )?(?:in|into) (?:a|the|my|his|her|this) (?:\w+ )?cut"
    r"(?: now)?(?: ?[.!])*$",
)
_REACTS = Pattern(
    r"\b(?:mixed|combined|put|poured|used|added) (?:them|the two|both|it all|the \w+)\b.*\b"
    r"(?:fizz\w*|bubbl\w*|smok\w*|foam\w*|steam\w*|hiss\w*|gas\w*)\b"
    r"|\b(?:BOTTLE|MIX|bottle|sprayer|bucket|jug|canister|container|mix|sink|drain|it)"
    r"(?: is| are| 's| has| started| keeps)* (?:fizzing|fizzed|bubbling(?: up| over)|hissing|steaming|swelling"
    r"(?: up)?|swollen up|bulging|blowing up|ballooning|about to burst)\b"
    r"(?!.* on (?:the |his |her )?(?:lime\w*|scale|urates?|stains?|glass|rocks?|poo\w*))"
    r"(?!.*\b(?:eye|skin|hand|face|lip|mouth|finger|arm|leg|foot)\w*\b)",
    *words_of("fizz bubbl smok foam steam hiss gas swel swollen bulg balloon blowing burst"),
)
"""A mix that fizzes or a bottle that swells: out first, whatever is in it."""
_PUT_BACK_WET = Pattern(
    rf"\b(?:put|popped|moved|let|placed) (?:him|her|them|(?:the |my )?(?:\w+ )?(?:{ANIMAL}|ENCLOSURE)) "
    r"(?:straight |right )?(?:back|in)\b.*\b(?:(?:wet|damp|dripping|slimy|covered|soaked)(?: \S+){0,2} "
    r"(?:with|in|from) (?:the |some )*(?:AGENT|STOCK|BOTTLE|MIX|spray|product|disinfectant)|"
    r"(?:never|not|forgot to|forgotten to|had not|did not|without)(?: been| ever| even)* rins\w+|"
    r"(?:AGENT|STOCK|BOTTLE|spray|product|disinfectant)(?: was| is)? (?:still )?(?:in|on) (?:it|there|everything))\b",
    *words_of("wet damp drip slimy covered soaked rins AGENT STOCK BOTTLE spray product disinf"),
)
_ASKED_OR_WISHED = Pattern(
    r"^(?:so |and |ok |please |just )*(?:can|could|should|may|might|shall|how|what|which|where|is|are|would|do|does"
    r"|will|put|use|dab|rub|apply|spray(?= (?:the|some|it|him|her|them|my|ENCLOSURE|ANIMAL|AGENT|BOTTLE))|pour|give"
    r"|try|safe|ok|best)\b|\bto (?:treat|heal|kill|help|clean)\b|\bfor (?:his|her|its|the|a)\b"
    r"|\b(?:want|wish|need|try|going|like|plan\w*) to\b|\b(?:ok|okay|safe|alright)$"
)


def lies_on_somebody(text: str) -> bool:
    """ "My husband has bleach on him", "overspray on the gecko": told, and no wish to put it there."""
    return _is_told(text) and _LIES_ON.search(text) is not None


def reacts(text: str) -> bool:
    """ "I mixed them and it's fizzing": out first, whatever is in it."""
    return _is_told(text) and _REACTS.search(text) is not None


def put_back_wet(text: str) -> bool:
    """ "I put her back and never rinsed": put back where the product still was."""
    return _PUT_BACK_WET.search(text) is not None and not text.endswith("?")


def _is_told(text: str) -> bool:
    return not text.endswith("?") and _ASKED_OR_WISHED.search(text) is None
