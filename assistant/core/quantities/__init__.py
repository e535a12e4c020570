"""Units, quantities and ratios, exact."""
