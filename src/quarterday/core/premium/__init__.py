"""The premium: its table, its tax, why it moved, and how it is divided."""
