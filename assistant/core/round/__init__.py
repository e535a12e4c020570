"""One enclosure's clean: its steps, its wet time, and the gate."""
