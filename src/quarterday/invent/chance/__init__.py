"""Accounts by chance: names, people, premises, losses and policies drawn from ``likely.yaml``."""
