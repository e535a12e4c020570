"""Hazard pictograms of the Globally Harmonized System: their codes, their symbols' names, and what each warns of.

The tool knows no product's hazards. It repeats those that the keeper copied from the stock's own label, never others.
Source: United Nations, Globally Harmonized System of Classification and Labelling of Chemicals, Annex 1 (codes and
symbols); the few words beside each are ours, from memory of the hazard classes that it stands for.
"""

from __future__ import annotations

from collections.abc import Mapping

SYMBOLS: Mapping[str, str] = {
    "GHS01": "exploding bomb",
    "GHS02": "flame",
    "GHS03": "flame over circle",
    "GHS04": "gas cylinder",
    "GHS05": "corrosion",
    "GHS06": "skull and crossbones",
    "GHS07": "exclamation mark",
    "GHS08": "health hazard",
    "GHS09": "environment",
}
"""Code to symbol, as the standard names it."""

WARNS: Mapping[str, str] = {
    "exploding bomb": "may explode",
    "flame": "catches fire easily",
    "flame over circle": "feeds fire",
    "gas cylinder": "gas under pressure",
    "corrosion": "burns skin and eyes, or eats metal",
    "skull and crossbones": "poisonous",
    "exclamation mark": "harmful or irritating",
    "health hazard": "may harm health for long",
    "environment": "harms water life",
}


def symbol_named(said: str) -> str | None:
    """A symbol's name from its code or name, however it is spaced or spelt in capitals; None: there is no such one."""
    plain = " ".join(said.lower().replace("-", " ").replace("_", " ").split())
    by_code = SYMBOLS.get(plain.replace(" ", "").upper())
    return by_code or (plain if plain in WARNS else None)
