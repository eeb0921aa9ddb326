"""The diary: what is due before a renewal, by when, and what can no longer be done in time."""
