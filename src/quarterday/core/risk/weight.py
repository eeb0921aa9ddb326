"""The weight of a record in words: how many parts are the organisation's own."""

from __future__ import annotations

from quarterday.core.words import Words, words

PARTS = 10
LEAST, MOST = 0.05, 0.95  # beyond these a part in ten would say too much


def record_weight(credibility: float) -> Words:
    """Return a credibility (0 to 1) in words: "7 parts your record, 3 parts …"."""
    if not credibility:
        return words("risk-weight", case="none", own=0, others=PARTS)
    own = int(credibility * PARTS + 0.5)
    case = "hardly" if credibility < LEAST else "almost" if credibility >= MOST else "parts"
    return words("risk-weight", case=case, own=own, others=PARTS - own)
