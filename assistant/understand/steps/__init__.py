"""What a text tells of the round's steps, the surface and the bottles."""
