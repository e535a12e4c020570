"""Bottles, stocks, chores, and what a day leaves behind."""
