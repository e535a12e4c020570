"""The parts of an enclosure, in one table: what may be sprayed, rinsed, dried or left out by itself."""

from __future__ import annotations

from assistant.understand.text.known_words import words_of
from assistant.understand.text.patterns import any_of

PARTS = words_of(
    """
    lid base bottom top side sides wall walls back front door doors glass corner corners edge edges seam seams end ends
    floor floors lids bases bottoms tops backs fronts roof ceiling
    mesh screen panel panels pane panes frame rim rims ledge ledges shelf shelves background runner
    runners track tracks vent vents silicone sealant grout gap gaps groove grooves hinge hinges lip middle
    half quarter third part parts bit bits patch patches spot spots area areas section sections compartment
    """
)
"""One word for each; "the back left corner" is known by its last."""
PART = any_of(PARTS)
"""Any of them, as alternatives."""
FITTING = (
    r"(?:hides?|(?:water |food )?(?:bowls?|dish(?:es)?)|branch(?:es)?|decor|logs?|rocks?|plants?|cork|furniture|moss"
    r"|caves?|vines?|perch(?:es)?|slates?|tiles?|ornaments?|leaves|liner|mat)"
)
"""What stands in it and is put back, as alternatives."""
FILLING = r"(?:substrate|soil|bedding|sand|coir|litter|paper)"
WHICH = (
    r"(?:(?:left|right|top|bottom|back|front|far|near|other|one|inside|last|odd|same|little|plastic|wooden|mesh|upper"
    r"|lower|first|second|third|big|small) )*"
)
"""Which one of several alike, before its name."""
ALONG_IT_ALL = frozenset({"side", "sides", "corner", "corners", "edge", "edges", "bit", "bits", "part", "parts"}) | {
    *("area", "areas", "spot", "spots", "patch", "seam", "seams", "gap", "gaps")
}
"""With "all" or "every" before them they go all over it: "every corner", "all sides"."""
