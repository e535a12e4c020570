"""What a turn is to the talk before it: agreed to, followed up, corrected, gone on from."""
