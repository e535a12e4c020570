"""The room's air as it is told: windows, doors, damp, how often it is changed."""
