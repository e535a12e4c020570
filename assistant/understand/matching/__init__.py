"""Which question a text is most like: learned weights and likeness."""
