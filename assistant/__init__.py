"""Rinseback: a hands-free assistant for cleaning and disinfecting reptile enclosures. See DEVELOPERS.md."""
