"""Yearly insurance renewals: reviewed, explained, packaged, provable."""
