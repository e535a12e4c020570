"""Concentrate and water, chlorine and its age, tools and marks."""
