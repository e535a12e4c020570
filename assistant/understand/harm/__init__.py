"""Harm first: cries, wounds, escapes and spills, found by rule."""
