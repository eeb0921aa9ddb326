"""The rights matrices in numbers, for who runs their tests with ``-s``."""

from __future__ import annotations

import sys
from collections import Counter
from collections.abc import Mapping


def tell(surface: str, who: str, found: Mapping[str, str]) -> None:
    """Print on one line what became of one person's requests, each way in one of a surface."""
    counts = ", ".join(f"{n} {outcome}" for outcome, n in sorted(Counter(found.values()).items()))
    sys.stdout.write(f"rights: {surface:4} {who:7} {len(found)} ways in: {counts}\n")
