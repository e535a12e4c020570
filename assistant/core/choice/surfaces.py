"""May this agent touch that material, and can the material be disinfected at all."""

from __future__ import annotations

from dataclasses import dataclass

from assistant.core.facts import Agent, ContactVerdict, Fact, Facts, Material

NOT_KNOWN = "material-unknown"

ANY = "any"


@dataclass(frozen=True, slots=True)
class Standing:
    """How one agent and one material get on."""

    material: Material
    verdict: ContactVerdict | None
    """None: nothing is known of the pair."""
    fact: Fact
    """The reason."""
    about: Fact | None = None
    """What holds for the material whatever touches it."""

    @property
    def disinfectable(self) -> bool | None:
        """Whether the material can be disinfected; False: it soaks in. None: nothing is known of it."""
        if self.material.porous:
            return False
        return True if self.verdict in ("fine", "short", "wipe") else None


def standing(agent: Agent, material: Material, facts: Facts) -> Standing:
    """How an agent and a material get on: by its family's own row, else the row for any, else that it soaks in.

    Gives: the verdict with its fact; None where nothing is known, which is never taken for leave.
    Source: the facts of materials.toml that the rows name.
    """
    about = facts[material.fact] if material.fact is not None else None
    row = facts.contacts.get((material.id, agent.family)) or facts.contacts.get((material.id, ANY))
    if row is not None:
        return Standing(material, row.verdict, facts[row.fact], about)
    if material.porous and about is not None:
        return Standing(material, "porous", about, about)
    return Standing(material, None, facts[NOT_KNOWN], about)
