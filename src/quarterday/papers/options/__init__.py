"""Options: what the insurer would add or raise, at what price, and what it is for."""
