"""What losses cost an organisation: how often, how much, and how much of it stays with them."""
