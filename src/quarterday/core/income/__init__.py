"""Income: what would stop coming in, and what living elsewhere would cost, while rebuilding."""
