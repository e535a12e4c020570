"""What goes on from how a thing is cleaned: "how hot?", "and the cork", "can I just bleach them", "if it's wet"."""

from __future__ import annotations

from dataclasses import replace

from assistant.contract import Reading
from assistant.understand.look import Look
from assistant.understand.text.patterns import Pattern


def treated_on(look: Look) -> Reading | None:
    """The question before, with what is named now; None: it is about something else."""
    last, before = look.world.talk.last, look.world.talk.last_reading
    if last is None or before is None or last.intent != "treat_item" or before.intent != "treat_item":
        return None
    plain = look.parsed.plain.strip(" .!?,")
    slots = look.slots("treat_item")
    kept = before.slots
    if _HOW_MUCH_OF_IT.fullmatch(plain):
        meant = kept
    elif slots.items and _ANOTHER.fullmatch(plain):
        meant = replace(kept, items=slots.items, enclosures=slots.enclosures or kept.enclosures, begun=False)
    elif _IN_A_PRODUCT.fullmatch(plain):
        meant = replace(
            kept, ways=("soak",), agents=slots.agents, stocks=slots.stocks, bottles=slots.bottles, begun=False
        )
    elif _WET.fullmatch(plain):
        meant = replace(kept, still_wet=True, begun=False)
    else:
        return None
    return replace(before, question=look.parsed.text, slots=meant, spoken=look.spoken, doubts=())


_HOW_MUCH_OF_IT = Pattern(
    r"(?:(?:and|ok|so|but|then) )*(?:for )?(?:how (?:hot|long|warm)|how many (?:degrees|minutes|hours)|"
    r"(?:at |to )?what (?:temperature|heat)|what oven temperature)(?: is that| then| for| in all)?"
)
_A_THING = (
    r"(?:tongs?|tweezers|forceps|hooks?|scoops?|brush(?:es)?|cloths?|gloves?|sponges?|bowls?|dish(?:es)?|hides?"
    r"|branch(?:es)?|cork(?: bark| hides?)?|wood|driftwood|plants?|rocks?|stones?|slate|log|logs|tiles?|towels?"
    r"|hammock|substrate)"
)
_ANOTHER = Pattern(
    r"(?:(?:and|or|ok|so|then|what about|how about|same for|the same for) )*(?:(?:the|my|his|her|its|a|an|some) )*"
    rf"(?:(?:water|food|feeding|plastic|ENCLOSURE|ANIMAL)(?: 's)? )*{_A_THING}(?: too| as well| then)?"
)
_IN_A_PRODUCT = Pattern(
    r"(?:(?:and|or|ok|so|then|what about|how about) )*(?:(?:can|could|may|should) i )?(?:just |only )*"
    r"(?:(?:soak|dunk|dip|clean|do|use|put) (?:it |them |that |those )?)?(?:in|with|into) (?:the |some )?"
    r"(?:AGENT|STOCK|BOTTLE)(?: instead| then| too)?"
    r"|(?:(?:and|ok|so) )*(?:can|could|may|should) i (?:just |only )*AGENT (?:it|them|that|those)(?: instead)?"
)
_WET = Pattern(
    r"(?:(?:and|but|ok|so) )*(?:(?:what if|even if|if) )?(?:it|they|that|those) (?:is|are|was|were) "
    r"(?:still |just |a bit )*(?:wet|damp|sprayed|soaked)"
    r"(?: with (?:AGENT|STOCK)| from (?:the )?(?:AGENT|STOCK|BOTTLE|spray))?"
)
