"""Airing and drying."""
