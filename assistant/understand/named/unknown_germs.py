"""Germs and illnesses that are asked about and that no fact tells of: "giardia", "ringworm", "black mould".

Left unread, such a word is answered with the germ of the turn before, or with no germ at all.
"""

from __future__ import annotations

from assistant.contract import Slots, Unknown
from assistant.understand.parsing import Parsed
from assistant.understand.text.known_words import ITEMS, MATERIALS, words_of
from assistant.understand.text.patterns import Pattern

OF_A_GERM = frozenset({"works_on", "choose_agent", "hold_time"})
"""Questions that may name one."""

_KNOWN_TO_PEOPLE = Pattern(
    r"\b(?:(?:black|green|white|grey|gray|pink|red|blue|toxic|slime) )?"
    r"(?:giardia|ringworms?|listeria|e ?\.? ?coli|moulds?|molds?|mildew|algae|fung(?:us|i|al infections?)|yeasts?"
    r"|candida|aspergill(?:us|osis)|trichophyton|dermatophytes?|flagellates?|trichomonas|hexamita|staph(?:ylococcus)?"
    r"|mrsa|strep(?:tococcus)?|klebsiella|campylobacter|legionella|citrobacter|aeromonas|proteus|chlamydia|norovirus"
    r"|parvo(?:virus)?|covid|coronavirus(?:es)?|influenza|flu|rotavirus|hepatitis|rabies|sunshine virus|"
    r"(?:(?:tape|round|hook|whip|lung|thread|tongue) ?)?worms?|nematodes?|strongyl\w+|cestodes?|trematodes?|flukes?"
    r"|parasites?|protozoa|lice|louse|ticks|fleas?|ants|gnats?|springtails?|fruit flies|scale rot|shell rot|mouth rot"
    r"|stomatitis|blister disease|respiratory infections?|tetanus|botulism|anthrax|prions?|tuberculosis|tb"
    r"|leptospirosis|toxoplasma|toxoplasmosis|biofilms?)\b"
)
"""What keepers worry about by name; the facts' own names are masked before this is looked for."""
_ON_A_WORD = Pattern(
    r"\b(?:works?|effective|good|any good|ok|enough|strong enough|do anything|does anything|active|help) "
    r"(?:on|against|for|with) (?:the |a |any |some |that )?(?P<germ>[a-z]{3,}(?: [a-z]{3,})?)$"
    r"|\b(?:kills?|killing|against) (?:the |a |any |some |off )?(?P<killed>[a-z]{3,}(?: [a-z]{3,})?)$"
)
"""Any other word where a germ is named."""
_NO_GERM = words_of(
    """
    it that them this those these him her both all everything anything something germs germ bacteria bacterias bugs bug
    virus viruses microbes spores eggs time times now real sure long two too well best better most more surfaces surface
    things thing plastic glass wood skin fabric dirt smell smells stain stains scale limescale poop poo urine urates
    mess blood slime grease rust fish plants plant people person fun here there once today next one ones mixing cleaning
    spraying soaking disinfecting use using routine sick new healthy illness disease infection quarantine
    """
)


def unknown_germ(parsed: Parsed, intent: str | None, slots: Slots) -> Unknown | None:
    """The germ named that no fact tells of; None: none is, or one that is known."""
    if intent not in OF_A_GERM or slots.organisms:
        return None
    # As it was said: mended, "fleas" would be fleeces.
    plain = " ".join(word[1:-1].upper() if word[0] == "{" else word for word in parsed.as_said).strip(" .?!")
    known = _KNOWN_TO_PEOPLE.search(plain)
    if known is not None:
        return Unknown("organism", known.group().replace(" . ", ". ").strip())
    if intent == "hold_time" or slots.materials or slots.job or slots.enclosures or slots.residues or slots.methods:
        return None
    found = _ON_A_WORD.search(plain)
    said = (found["germ"] or found["killed"]) if found is not None else ""
    none = _NO_GERM | ITEMS | MATERIALS
    return Unknown("organism", said) if said and not set(said.split()) & none else None


def names_an_unknown_germ(plain: str) -> bool:
    """ "There's mould in the desert box": told of, whatever is asked. Feeder worms and a tick on a list are no germ."""
    return _SEEN.search(plain) is not None


_SEEN = Pattern(
    r"\b(?:moulds?|molds?|mouldy|moldy|mildew|algae|ringworm|fung(?:us|i)|giardia|listeria|e ?\.? ?coli|flagellates?"
    r"|parasites|roundworms?|tapeworms?|hookworms?)\b"
)
