"""A whole risk costs the same to the byte in any order and any number of processes."""

from __future__ import annotations

import random
from concurrent.futures import ProcessPoolExecutor

from tests.bench.book import reviewed

NUMBERS = range(1, 7)


def digest(number: int) -> str:
    """Return the digest of all that the review of an invented account says, figures to the bit."""
    return reviewed(number).digest


def test_reviews_and_costs_are_the_same_in_any_process_and_order() -> None:
    alone = {number: digest(number) for number in NUMBERS}
    shuffled = random.Random(5).sample(NUMBERS, len(NUMBERS))
    with ProcessPoolExecutor(2) as pool:
        spread = dict(zip(shuffled, pool.map(digest, shuffled), strict=True))
    assert spread == alone
    assert len(set(alone.values())) == len(NUMBERS)
