"""Rinseback: a hands-free assistant for cleaning and disinfecting reptile enclosures. DEVELOPERS.md tells the way in."""
