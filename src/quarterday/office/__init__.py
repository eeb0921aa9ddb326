"""Use cases: one function an act, with its entry and its transaction."""
