"""The whole book in sums: what one file adds, and how files add up."""
