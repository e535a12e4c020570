"""Words as they are said and spelled, before anything is read in them."""
