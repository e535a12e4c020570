"""Agents that meet, asked about or told; whoever put what onto what."""
