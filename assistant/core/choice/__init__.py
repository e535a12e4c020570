"""What to use, on what, and what must not meet."""
