"""Executable terms: what they pay for a loss, step by step, for one loss or for millions."""
