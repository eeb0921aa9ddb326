"""Values: indexing, insurance to value, coinsurance."""
