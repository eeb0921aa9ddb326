"""Losses: what happened, where, when, and how much of what was lost."""
