"""A whole risk costs the same to the byte in any order and any number of processes."""

from __future__ import annotations

import random
from concurrent.futures import ProcessPoolExecutor

from tests.bench.book import AS_OF, SEED, file_of, reviewed

from quarterday.catalogue.load import reference
from quarterday.core.review.case import Case
from quarterday.invent.book import account

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


def test_curves_of_many_perils_stay_short() -> None:
    """An account with many places whose expiring terms have corners less than a dime apart.

    Noise in one sum over all losses that were tried once split its straight stretches into 22,531.
    """
    risk = Case(file_of(account(48, SEED, AS_OF)), reference(), AS_OF).risk
    assert risk is not None
    base = risk.trials[0]
    for trial in risk.trials:
        curves = trial.curves(None if trial is base else base)
        assert max(len(curve.at) for of_peril in curves for curve in of_peril) <= 200
