"""What a text names: the household's things, the facts' names, items, tubs, windows."""
