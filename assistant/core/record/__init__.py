"""What happened, as events, and the present folded out of them."""
