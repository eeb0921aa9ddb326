"""Building values: one page a building, its sum insured against what it costs over time."""
