"""What a book teaches: known parameters come back, and a thin book teaches nothing."""

from __future__ import annotations

import numpy as np
import pytest

from quarterday.core.risk.priors import (
    EVERY_CLASS,
    OwnRecord,
    fit_rate,
    fit_size,
    fitted,
)


def book(
    organisations: int,
    prior: tuple[float, float] | None,
    years: float = 10,
    kind: str = "hall",
    seed: int = 5,
) -> list[OwnRecord]:
    """A book whose rates follow a gamma of claims and years; None: all at 0.2 a year.

    Sizes of an organisation spread around a mean of its own, which spreads around 10,000.
    """
    numbers, made = np.random.default_rng(seed), []
    for _ in range(organisations):
        rate = numbers.gamma(prior[0], 1 / prior[1]) if prior else 0.2
        mean = numbers.gamma(4, 2_500)
        sizes = tuple(numbers.exponential(mean, numbers.poisson(rate * years)).tolist())
        made.append(OwnRecord(kind, years, {"water-escape": sizes} if sizes else {}))
    return made


def test_the_gamma_that_made_the_book_comes_back() -> None:
    """2,000 organisations over ten years from gamma (1.5 claims, 8 years): mean .1875."""
    fit = fit_rate(book(2_000, (1.5, 8)), "water-escape")
    assert fit.prior.mean == pytest.approx(1.5 / 8, rel=0.05)
    assert fit.prior.years == pytest.approx(8, rel=0.20)
    assert (fit.organisations, fit.years) == (2_000, 20_000)


def test_the_mean_size_and_its_credibility_come_back() -> None:
    """Exponential around means of gamma (4, 2,500): within E(m²) = 1.25e8, between 2.5e7: k 5."""
    fit = fit_size(book(4_000, (4, 10)), "water-escape")
    assert fit is not None
    assert fit.mean == pytest.approx(10_000, rel=0.05)
    assert fit.k == pytest.approx(5, rel=0.25)


def test_organisations_that_do_not_differ_give_their_record_no_weight() -> None:
    """All rates are the same; the variance between comes out near zero, and no record counts."""
    fit = fit_rate(book(3_000, None), "water-escape")
    assert fit.prior.mean == pytest.approx(0.2, rel=0.05)
    assert fit.prior.credibility(10) < 0.05


def test_a_thin_book_teaches_nothing_and_a_class_falls_back_on_the_whole() -> None:
    records = [*book(300, (2, 10)), *book(3, (2, 10), kind="camp", seed=6)]
    done = fitted(records, fewest=20)
    assert done.rate("water-escape", "camp") is done.rates["water-escape", EVERY_CLASS]
    assert done.rate("water-escape", "hall") is done.rates["water-escape", "hall"]
    assert done.size("water-escape", "camp") is done.sizes["water-escape", EVERY_CLASS]
    assert done.rate("fire", "hall") is None
    assert fitted(records, fewest=10_000).rates == {}
    assert fitted([], fewest=0).rates == {}


def test_records_without_years_are_left_out() -> None:
    empty = OwnRecord("hall", 0.0, {"water-escape": (5.0,) * 30})
    assert fitted([empty, *book(200, (2, 10))], 20) == fitted(book(200, (2, 10)), 20)


def test_sizes_need_an_organisation_with_two_claims() -> None:
    records = [OwnRecord("hall", 10, {"fire": (float(n),)}) for n in range(1, 30)]
    assert fit_size(records, "fire") is None
    assert fitted(records, 20).rate("fire", "hall") is not None
