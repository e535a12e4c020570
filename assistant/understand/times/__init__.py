"""Dates and times of day out of words."""
