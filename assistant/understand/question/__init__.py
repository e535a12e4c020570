"""Which question a turn asks by itself, and the slots that question takes from it."""
