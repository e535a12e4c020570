"""Numbers, amounts, mixes and units out of words."""
