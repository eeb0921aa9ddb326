"""Costs under alternatives: against a machine written by hand, and against the transform."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date
from decimal import Decimal
from typing import Any

import numpy as np
import pytest
from tests.core.risk.compound import compound, lattice
from tests.core.risk.conftest import RENEWAL, building, liability, terms_of

from quarterday.core.file.records import Terms
from quarterday.core.reference import Reference
from quarterday.core.risk.cost import Effort, compared
from quarterday.core.risk.perils import Layered, Model, Peril
from quarterday.core.risk.sampling import mean_of
from quarterday.core.risk.severity import Capped, Floats, Lognormal, Pareto
from quarterday.core.risk.together import Together, together
from quarterday.core.risk.trial import Trial
from quarterday.core.risk.years import simulated
from quarterday.core.terms.settling.values import Values

WORTH = 1_200_000.0
FIRE = Peril(
    "fire",
    "hall",
    0.2,
    Capped(Lognormal(9.5, 1.9), WORTH),
    (Layered("building", 1.0, 0.0, WORTH),),
)
INJURY = Peril(
    "injury-on-premises",
    "hall",
    0.3,
    Capped(Pareto(2.2, 36_000), 5e6),
    (Layered("compensatory", 1.0, 0.0, 5e6),),
)
VALUES = Values(worth={("building", "hall"): Decimal(1_200_000)})


@pytest.fixture(scope="module")
def trial(canada: Reference) -> Callable[..., Trial]:
    def make(id: str, terms: Terms, *perils: Peril) -> Trial:
        return Trial.of(id, Model(perils), terms, canada, VALUES)

    return make


TrialOf = Callable[..., Trial]


def by_hand(size: Floats, deductible: float, limit: float, share: float = 1.0) -> Floats:
    """What is borne of one loss: the coinsurance share first, then the deductible, the limit."""
    paid = np.minimum(np.maximum(size * share - deductible, 0), limit)
    return size - paid


# --- one loss at a time


@pytest.mark.parametrize(
    ("line", "share"),
    [
        (building(), 1.0),
        (building(400_000), 1.0),
        (building(720_000, coinsurance="0.8"), 0.75),
        (building(1_500_000, deductible=25_000), 1.0),
    ],
)
def test_the_mean_in_closed_form_is_that_of_a_machine_by_hand(
    trial: TrialOf, line: dict[str, Any], share: float
) -> None:
    """Evenly spread quantiles through terms written out here; insured 720,000 of 960,000: 3/4."""
    one = trial("a", terms_of("offered", line), FIRE)
    sizes = FIRE.severity.quantile((np.arange(400_000) + 0.5) / 400_000)
    borne = by_hand(sizes, line["deductible"], line["limit"], share).mean()
    assert one.means() == pytest.approx([FIRE.rate * borne], rel=2e-3)
    assert not one.is_yearly


def test_what_nothing_covers_is_borne_whole(trial: TrialOf) -> None:
    one = trial("a", terms_of("offered", liability()), FIRE)
    assert one.means() == pytest.approx([FIRE.rate * FIRE.severity.mean])
    assert one.answered_by == frozenset()


def test_building_and_contents_share_the_deductible_of_one_event(trial: TrialOf) -> None:
    """The highest deductible counts once (the usual print), not one for each line."""
    whole = Capped(Lognormal(10, 1.2), WORTH)
    parts = (Layered("building", 0.8, 0.0, WORTH), Layered("contents", 0.2, 0.0, WORTH))
    both = Peril("fire", "hall", 0.1, whole, parts)
    lines = (building(), building(300_000, coverage="contents"))
    one = trial("a", terms_of("offered", *lines), both)
    sizes = whole.quantile((np.arange(200_000) + 0.5) / 200_000)
    allowed = np.minimum(sizes * 0.8, 2_500) + np.minimum(sizes * 0.2, 2_500)
    assert one.means()[0] == pytest.approx(0.1 * np.minimum(allowed, 2_500).mean(), rel=2e-3)


def test_an_agreed_value_that_ends_within_the_year_counts_for_its_days(trial: TrialOf) -> None:
    """151 days without penalty (to the first of July), the other 214 with three quarters."""
    line = building(720_000, coinsurance="0.8")
    full, agreed = (
        trial("a", terms_of("offered", {**line, **more}), FIRE).means()[0]
        for more in ({}, {"agreed_value_until": date(2027, 7, 1)})
    )
    free = trial("a", terms_of("offered", building(720_000)), FIRE).means()[0]
    days = (date(2027, 7, 1) - RENEWAL).days
    assert days == 151
    assert agreed == pytest.approx((days * free + (365 - days) * full) / 365, rel=1e-9)


# --- years


def kept(peril: Peril, deductible: float, limit: float, step: float, points: int) -> Floats:
    """What is borne of one loss on a lattice: its deductible, and what is over the limit."""
    grid = np.arange(points // 4) * step
    severity = peril.severity
    limited = severity.limited_mean(np.minimum(grid, deductible))
    limited = limited + severity.limited_mean(np.maximum(grid, deductible) + limit)
    return lattice(limited - float(severity.limited_mean(deductible + limit)), step)


def test_bad_years_are_those_of_the_transform(trial: TrialOf) -> None:
    """The distribution of a year by FFT on a lattice of 250 dollars; the oracle is tested apart."""
    one = trial("a", terms_of("offered", building(), liability()), FIRE, INJURY)
    (found,) = compared([one], "fft", Effort(100_000, 1)).costs
    step, points = 250.0, 2**15
    parts = [
        (peril.rate, kept(peril, deductible, limit, step, points))
        for peril, deductible, limit in ((FIRE, 2_500, 1_500_000), (INJURY, 500, 2_000_000))
    ]
    total = np.cumsum(compound(parts, points))
    for one_in, bad in found.bad.items():
        place = float(np.searchsorted(total, 1 - 1 / one_in)) * step
        assert bad.low - step <= place <= bad.high + step


def test_intervals_hold_the_transform_s_truth_as_often_as_they_say(trial: TrialOf) -> None:
    """Eighty accounts alike, 2,000 years each: a 95 % interval misses the truth 5 % of the time.

    The misses are binomial; beyond three standard deviations the intervals would lie.
    """
    often = Peril("fire", "hall", 0.6, FIRE.severity, FIRE.parts)
    one = trial("a", terms_of("offered", building(300_000)), often)
    step, points = 250.0, 2**15
    total = np.cumsum(compound([(0.6, kept(often, 2_500, 300_000, step, points))], points))
    held = dict.fromkeys((10, 100), 0)
    for account in range(80):
        (cost,) = compared([one], f"coverage {account}", Effort(2_000, 1)).costs
        for one_in, bad in cost.bad.items():
            truth = float(np.searchsorted(total, 1 - 1 / one_in)) * step
            held[one_in] += bad.low - step <= truth <= bad.high + step
    assert min(held.values()) / 80 >= 0.95 - 3 * (0.95 * 0.05 / 80) ** 0.5


def test_a_yearly_maximum_is_counted_over_all_losses_of_a_year(trial: TrialOf) -> None:
    """An aggregate of 60,000 a year, against losses settled year by year in plain Python."""
    line = liability(limit=50_000, aggregate=60_000)
    often = Peril("injury-on-premises", "hall", 2.5, INJURY.severity, INJURY.parts)
    one = trial("a", terms_of("offered", line), often)
    assert one.is_yearly
    events = simulated(one.model, "agg", 0, 3_000)
    expected = np.zeros(3_000)
    left = dict.fromkeys(range(3_000), 60_000.0)
    for year, size in zip(events.year, events.size, strict=True):
        paid = min(max(size - 500, 0), 50_000, left[year])
        left[year] -= paid
        expected[year] += size - paid
    assert one.yearly(events) == pytest.approx(expected)
    alone = np.bincount(events.year, by_hand(events.size, 500, 50_000), 3_000)
    assert one.together(events) == pytest.approx(expected - alone, abs=1e-6)


OFTEN = Peril("injury-on-premises", "hall", 2.5, INJURY.severity, INJURY.parts)


@pytest.mark.parametrize(
    "lines",
    [
        (liability(limit=50_000, aggregate=60_000),),
        (liability(limit=50_000, limit_basis="aggregate"),),
        (liability(limit=50_000, aggregate=60_000), building(200_000)),
    ],
)
def test_a_yearly_maximum_s_mean_in_closed_form_is_that_of_the_simulation(
    trial: TrialOf, lines: tuple[dict[str, Any], ...]
) -> None:
    one = trial("a", terms_of("offered", *lines), OFTEN, FIRE)
    found = together(one)
    assert found is not None
    events = simulated(one.model, "agg", 0, 100_000)
    more = mean_of(one.together(events))
    assert more.low * 0.97 <= found.total <= more.high * 1.03
    (cost,) = compared([one], "agg", Effort(1_000, 1)).costs
    assert cost.mean.error == 0
    assert cost.mean.value == pytest.approx(sum(one.means()) + found.total)
    assert cost.mean.value > sum(cost.by_peril)


def test_the_shared_limit_pays_once_a_year_in_closed_form(trial: TrialOf) -> None:
    shared = {"amount": 40_000, "tops_up": ("general-liability",)}
    one = trial("a", terms_of("offered", liability(limit=20_000), shared_limit=shared), OFTEN)
    found = together(one)
    assert found is not None
    more = mean_of(one.together(simulated(one.model, "shared", 0, 100_000)))
    assert more.low <= found.total <= more.high
    assert found.total > 0


def test_a_maximum_that_feeds_another_is_told_from_the_simulation(trial: TrialOf) -> None:
    """What the yearly maximum leaves goes to the shared limit: no closed form is claimed."""
    shared = {"amount": 40_000, "tops_up": ("general-liability",)}
    line = liability(limit=50_000, aggregate=60_000)
    one = trial("a", terms_of("offered", line, shared_limit=shared), OFTEN)
    assert together(one) is None
    (short,) = compared([one], "agg", Effort(2_000, 1)).costs
    (long,) = compared([one], "other", Effort(60_000, 1)).costs
    assert short.mean.low <= long.mean.value <= short.mean.high
    assert long.mean.error < short.mean.error / 3


def test_a_purse_that_can_hardly_bind_adds_nothing(trial: TrialOf) -> None:
    line = liability(limit=5_000_000, aggregate=1_000_000_000)
    found = together(trial("a", terms_of("offered", line), INJURY))
    assert found is not None
    assert found.total == 0


def test_a_purse_of_the_base_is_taken_from_there(trial: TrialOf) -> None:
    """An option on the building leaves the liability's yearly maximum alone."""
    line = liability(limit=50_000, aggregate=60_000)
    base = trial("base", terms_of("offered", building(), line), FIRE, OFTEN)
    other = trial("other", terms_of("offered", building(deductible=10_000), line), FIRE, OFTEN)
    of_base, anew = together(base), together(other)
    assert of_base is not None
    assert anew is not None
    taken = together(other, Together(base, dict.fromkeys(of_base.by_purse, 7.0)))
    assert taken is not None
    assert taken.total == 7 * len(of_base.by_purse)
    assert of_base.total == pytest.approx(anew.total)


def test_alternatives_meet_the_same_losses(trial: TrialOf) -> None:
    """A deductible 10,000 higher keeps exactly that more in a year with one large loss."""
    low, high = (
        trial(id, terms_of("offered", building(deductible=d)), FIRE)
        for id, d in (("low", 2_500), ("high", 12_500))
    )
    events = simulated(low.model, "same", 0, 2_000)
    one_loss = np.bincount(events.year, minlength=2_000) == 1
    large = np.bincount(events.year, events.size > 12_500, 2_000) == 1
    gap = high.yearly(events) - low.yearly(events)
    assert gap[one_loss & large] == pytest.approx(10_000)
    assert (gap >= 0).all()


def test_what_an_option_leaves_alone_is_taken_from_the_base(trial: TrialOf) -> None:
    """The shortcut gives the same means as settling everything anew."""
    base = trial("base", terms_of("offered", building(), liability()), FIRE, INJURY)
    dear = terms_of("offered", building(deductible=10_000), liability())
    short, anew = (trial("option", dear, FIRE, INJURY) for _ in range(2))
    assert base.settles_like(short) == (False, True)
    assert short.means(base) == pytest.approx(anew.means(), rel=1e-9)
    umbrella = terms_of(
        "offered", building(), liability(), {"coverage": "umbrella", "limit": 5_000_000}
    )
    assert base.settles_like(trial("u", umbrella, FIRE, INJURY)) == (False, False)


def test_more_blocks_are_simulated_until_the_digits_are_honest(trial: TrialOf) -> None:
    one = trial("a", terms_of("offered", building(200_000)), FIRE)
    rough = compared([one], "more", Effort(2_000, 12, error=10))
    fine = compared([one], "more", Effort(2_000, 12, error=0.05))
    assert rough.years == 2_000
    assert fine.years > rough.years
    bad = fine.costs[0].bad[100]
    assert fine.years == 24_000 or bad.error <= 0.05 * bad.value


def test_the_same_account_costs_the_same_to_the_byte(trial: TrialOf) -> None:
    one = trial("a", terms_of("offered", building(), liability()), FIRE, INJURY)
    first, second = (compared([one], "same", Effort(3_000, 2)) for _ in range(2))
    assert first.costs[0].mean == second.costs[0].mean
    assert first.costs[0].bad == second.costs[0].bad


def test_a_change_is_the_difference_of_the_means(trial: TrialOf) -> None:
    base, other = (
        trial(id, terms_of("offered", building(deductible=d)), FIRE)
        for id, d in (("base", 2_500), ("other", 10_000))
    )
    done = compared([base, other], "change", Effort(4_000, 1))
    closed = sum(other.means()) - sum(base.means())
    assert done.changes["other"].mean.value == pytest.approx(closed)
    assert done.changes["other"].bad[10].value >= 0
    assert "base" not in done.changes
