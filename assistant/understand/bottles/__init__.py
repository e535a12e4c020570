"""What is told of bottles and their mixes: filled, wrong, meddled with, another one used."""
