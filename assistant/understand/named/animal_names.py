"""What keepers call their animals for short: common practice, no source."""

from __future__ import annotations

_SHORT: dict[str, tuple[str, ...]] = {
    "bearded dragon": ("beardie",),
    "crested gecko": ("crestie",),
    "leopard gecko": ("leo",),
    "ball python": ("royal", "royal python"),
    "royal python": ("ball python",),
    "corn snake": ("corn",),
    "blue tongue skink": ("bluey",),
    "blue tongued skink": ("bluey",),
    "boa constrictor": ("boa",),
    "tortoise": ("tort",),
    "terrapin": ("terp",),
    "chameleon": ("cham",),
    "gargoyle gecko": ("garg",),
    "african fat tailed gecko": ("fat tail",),
    "hognose snake": ("hoggie", "hognose"),
}


def short_forms(animal: str) -> tuple[str, ...]:
    """Short names of a kind of animal, and their plurals; none where none is known."""
    said = " ".join(animal.lower().replace("-", " ").split())
    forms = next((forms for kind, forms in _SHORT.items() if said.endswith(kind)), ())
    return (*forms, *(f"{form}s" for form in forms))
