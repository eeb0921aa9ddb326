"""Simulated years: the right numbers, and the same ones wherever and whenever they are drawn."""

from __future__ import annotations

import random
from concurrent.futures import ProcessPoolExecutor
from hashlib import sha256

import numpy as np
import pytest
from scipy import stats

from quarterday.core.risk.perils import Layered, Model, Peril
from quarterday.core.risk.severity import Capped, Lognormal
from quarterday.core.risk.years import Events, simulated


def peril(cause: str, rate: float, mu: float = 9) -> Peril:
    part = Layered("building", 1.0, 0.0, 1e6)
    return Peril(cause, "hall", rate, Capped(Lognormal(mu, 1.5), 1e6), (part,))


MODEL = Model((peril("fire", 0.3), peril("theft", 0.05, 8)))


def bytes_of(events: Events) -> bytes:
    columns = (events.peril, events.size, events.year, events.moment)
    return b"".join(column.tobytes() for column in columns)


def digest(account: str) -> str:
    return sha256(bytes_of(simulated(MODEL, account, 0, 2_000))).hexdigest()


ACCOUNTS = [f"file {n}" for n in range(24)]


def test_any_order_and_number_of_processes_draws_the_same_bytes() -> None:
    alone = {account: digest(account) for account in ACCOUNTS}
    shuffled = random.Random(3).sample(ACCOUNTS, len(ACCOUNTS))
    with ProcessPoolExecutor(2) as pool:
        for chunk in (1, 5, 24):
            spread = dict(zip(shuffled, pool.map(digest, shuffled, chunksize=chunk), strict=True))
            assert spread == alone
    assert len(set(alone.values())) == len(ACCOUNTS)


def test_another_cause_changes_nothing_of_the_others() -> None:
    """Each peril has a stream of its own, keyed by its name and not by its place in a list."""
    more = Model((peril("glass", 0.4), *MODEL.perils))
    before, after = (simulated(m, "a", 0, 5_000) for m in (MODEL, more))
    kept = after.peril > 0
    assert np.array_equal(after.size[kept], before.size)
    assert np.array_equal(after.year[kept], before.year)


def test_blocks_differ_and_a_block_can_be_drawn_again() -> None:
    first, second = (simulated(MODEL, "a", block, 1_000) for block in (0, 1))
    assert bytes_of(first) != bytes_of(second)
    assert bytes_of(simulated(MODEL, "a", 1, 1_000)) == bytes_of(second)


def test_numbers_are_poisson_and_sizes_follow_their_law() -> None:
    """SciPy's goodness of fit: chi-square for yearly counts, Kolmogorov and Smirnov for sizes.

    The random numbers are fixed, so the outcome is too; 0.001 guards against a broken sampler.
    """
    events = simulated(Model((peril("fire", 0.8),)), "fit", 0, 20_000)
    counts = np.bincount(np.bincount(events.year, minlength=20_000), minlength=7)[:7]
    chances = stats.poisson(0.8).pmf(np.arange(7))
    chances[-1] += 1 - chances.sum()
    assert stats.chisquare(counts, chances * counts.sum()).pvalue > 0.001
    inside = events.size[events.size < 1e6]
    law = stats.lognorm(1.5, scale=np.exp(9))
    assert stats.kstest(law.cdf(inside) / law.cdf(1e6), "uniform").pvalue > 0.001
    assert stats.kstest(events.moment, "uniform").pvalue > 0.001


def test_losses_are_in_order_of_time() -> None:
    events = simulated(MODEL, "a", 0, 3_000)
    assert (np.diff(events.year + events.moment) >= 0).all()
    assert events.moment.min() >= 0
    assert events.moment.max() < 1
    assert events.year.max() < 3_000


def test_only_years_with_several_losses_are_crowded() -> None:
    events = simulated(MODEL, "a", 0, 3_000)
    crowd = events.crowded()
    assert (np.bincount(crowd.year)[np.unique(crowd.year)] > 1).all()
    assert 0 < len(crowd.year) < len(events.year)


def test_an_account_without_perils_has_no_losses() -> None:
    events = simulated(Model(()), "a", 0, 100)
    assert (events.years, len(events.size)) == (100, 0)


@pytest.mark.parametrize("scale", [1.0, 3.0])
def test_a_parameter_that_moves_keeps_the_draws_comparable(scale: float) -> None:
    """Sizes are drawn by inverse, so another mean scales the same losses."""
    moved = Model((Peril("fire", "hall", 0.3, Capped(Lognormal(9, 1.5).scaled(scale), 1e9), ()),))
    plain = Model((Peril("fire", "hall", 0.3, Capped(Lognormal(9, 1.5), 1e9), ()),))
    a, b = (simulated(m, "a", 0, 1_000).size for m in (plain, moved))
    assert b == pytest.approx(scale * a)
