"""Invented books: the forty organisations of the demo, and books of any size."""
