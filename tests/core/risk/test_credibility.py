"""What weight a record deserves: the literature's examples, and the edges of the estimators."""

from __future__ import annotations

import csv
import math
from pathlib import Path

import numpy as np
import pytest
from scipy import integrate, stats

from quarterday.core.given import Unusable
from quarterday.core.risk.credibility import (
    Credibility,
    GammaPrior,
    Observed,
    buhlmann_straub,
    buhlmann_straub_poisson,
    credible,
    full_credibility,
    square_root_rule,
)
from quarterday.core.risk.weight import record_weight

DATA = Path(__file__).parent / "hachemeister.csv"


def states(*, weighted: bool) -> list[Observed]:
    """Hachemeister (1975): average claims of five states in twelve quarters, with their numbers."""
    with DATA.open(encoding="utf-8") as file:
        rows = list(csv.DictReader(file))
    assert len(rows) == 5

    def of(row: dict[str, str], name: str) -> list[float]:
        return [float(row[f"{name}.{quarter}"]) for quarter in range(1, 13)]

    return [Observed(of(r, "ratio"), of(r, "weight") if weighted else None) for r in rows]


def test_five_states_by_buhlmann() -> None:
    """R package actuar 3.3-7, vignette "Credibility theory features of actuar": 1671, 72310, 46040.

    The digits beyond were computed independently of this program.
    """
    done = buhlmann_straub(states(weighted=False))
    assert done.collective == pytest.approx(1671.0167, abs=1e-4)
    assert done.between == pytest.approx(72310.0246, abs=1e-4)
    assert done.within == pytest.approx(46040.4712, abs=1e-4)
    assert [g.credibility for g in done.groups] == pytest.approx([0.949614] * 5, abs=1e-6)


def test_five_states_by_buhlmann_and_straub() -> None:
    """The same vignette, unbiased estimator: 1684, 89639, 139120026; digits beyond computed."""
    done = buhlmann_straub(states(weighted=True))
    assert done.collective == pytest.approx(1683.7134, abs=1e-4)
    assert done.between == pytest.approx(89638.7262, abs=1e-4)
    assert done.within == pytest.approx(139120025.9253, abs=1e-3)
    assert done.k == pytest.approx(1552.0081, abs=1e-4)
    assert [g.credibility for g in done.groups] == pytest.approx(
        [0.98474, 0.92764, 0.89848, 0.72791, 0.95879], abs=1e-5
    )
    assert [g.estimate for g in done.groups] == pytest.approx(
        [2055.17, 1523.71, 1793.44, 1442.97, 1603.29], abs=0.01
    )
    assert [g.own for g in done.groups] == pytest.approx(
        [2060.92, 1511.22, 1805.84, 1352.98, 1599.83], abs=0.01
    )
    assert [g.weight for g in done.groups] == [100155, 19895, 13735, 4152, 36110]


# --- Open Actuarial Textbooks, Loss Data Analytics, chapter 9

A_AND_B = [Observed([0, 1, 0]), Observed([2, 1, 2])]


def test_two_policyholders_by_empirical_bayes() -> None:
    """Example 9.6.1: within 1/3, between 7/9, K 3/7, Z 7/8; estimates 5/12 and 19/12."""
    done = buhlmann_straub(A_AND_B)
    assert [done.within, done.between] == pytest.approx([1 / 3, 7 / 9])
    assert done.k == pytest.approx(3 / 7)
    assert [g.credibility for g in done.groups] == pytest.approx([7 / 8] * 2)
    assert [g.estimate for g in done.groups] == pytest.approx([5 / 12, 19 / 12])


def test_a_negative_between_variance_gives_no_record_any_weight() -> None:
    """Example 9.6.2: the variance between comes out at -1/2, and is shown as that."""
    done = buhlmann_straub([Observed([3, 0, 0]), Observed([3, 0, 3])])
    assert done.between == pytest.approx(-0.5)
    assert math.isinf(done.k)
    assert [g.credibility for g in done.groups] == [0, 0]
    assert [g.estimate for g in done.groups] == pytest.approx([1.5, 1.5])


def test_counts_of_claims_need_no_variance_of_their_own() -> None:
    """Example 9.6.4, semiparametric: K 9/5, Z 5/8; estimates 7/12 and 17/12.

    The data are those of 9.6.1, which give the printed answers.
    """
    done = buhlmann_straub_poisson(A_AND_B)
    assert done.k == pytest.approx(9 / 5)
    assert [g.credibility for g in done.groups] == pytest.approx([5 / 8] * 2)
    assert [g.estimate for g in done.groups] == pytest.approx([7 / 12, 17 / 12])


def test_three_types_of_known_structure() -> None:
    """Example 9.3.5: types 50/30/20 %, Poisson .5/1/2, exponential 1000/1500/2000.

    5,000 were lost in five years.

    Printed: K 2.89, Z .63, 1,185.00 with Z rounded; 1,182.97 unrounded (computed).
    """
    share, rate, size = np.array([[0.5, 0.3, 0.2], [0.5, 1, 2], [1000, 1500, 2000]])
    mean = float(share @ (rate * size))
    between = float(share @ (rate * size) ** 2) - mean**2
    within = float(share @ (rate * 2 * size**2))
    assert (mean, between, within) == pytest.approx((1500, 1_750_000, 5_050_000))
    z = credible(5, within / between)
    assert z == pytest.approx(0.63406, abs=1e-5)
    assert z * 1000 + (1 - z) * mean == pytest.approx(1182.97, abs=0.01)
    assert round(z, 2) * 1000 + (1 - round(z, 2)) * mean == pytest.approx(1185.00)


@pytest.mark.parametrize(
    ("chance", "within", "dispersion", "printed"),
    [
        (0.95, 0.05, 1, 1537),  # example 9.2.1, Poisson
        (0.95, 0.05, 2, 3074),  # 9.2.2, negative binomial with beta 1
        (0.95, 0.05, 0.75, 1153),  # 9.2.3, binomial with q 1/4
        (0.95, 0.05, 3, 4610),  # 9.2.6, sizes of a Pareto with shape 3: squared variation 3
        (0.90, 0.05, 1, 1083),  # 1,082.22: "that old, familiar number, 1,082", CAS PCAS LIX (1972)
        (0.90, 0.10, 1, 271),  # computed
        (0.99, 0.05, 1, 2654),  # computed
    ],
)
def test_claims_from_which_a_record_stands_for_itself(
    chance: float, within: float, dispersion: float, printed: int
) -> None:
    """Loss Data Analytics 9.2; the printed answers are rounded up to whole claims."""
    assert math.ceil(full_credibility(chance, within, dispersion)) == printed


def test_exposures_from_which_a_record_stands_for_itself() -> None:
    """Example 9.2.4: 0.20 claims an exposure, 7,683.20 exposures printed with z rounded to 1.96."""
    assert full_credibility(0.95, 0.05) / 0.2 == pytest.approx(7683.2, rel=1e-4)


def test_sizes_of_claims_add_to_what_is_needed() -> None:
    """1,082 × (1 + .9²) = 1,958 (a thread of practitioners, weak source); 1.645 for the normal."""
    assert full_credibility(0.90, 0.05, 1 + 0.9**2) == pytest.approx(1958.8, abs=0.1)


def test_the_square_root_rule() -> None:
    """Example 9.2.7: 1,000 claims where 6,147 are needed: .4033; 300 of 1,082: .5266 (computed)."""
    assert square_root_rule(1000, 6147) == pytest.approx(0.4033, abs=5e-5)
    assert square_root_rule(300, 1082) == pytest.approx(0.5266, abs=5e-5)
    assert square_root_rule(7000, 6147) == 1


# --- edges


def _same(a: Credibility, b: Credibility) -> None:
    assert [a.within, a.between] == pytest.approx([b.within, b.between])
    assert [g.estimate for g in a.groups] == pytest.approx([g.estimate for g in b.groups])


def test_a_period_that_was_not_observed_is_as_if_it_were_not_there() -> None:
    short = [Observed([1, 4], [2, 3]), Observed([2, 5, 6], [1, 1, 4])]
    unseen = [Observed([1, None, 4], [2, 9, 3]), Observed([2, 5, 99, 6], [1, 1, 0, 4])]
    _same(buhlmann_straub(short), buhlmann_straub(unseen))


def test_a_group_with_one_period_is_shrunk_though_it_shows_no_variance() -> None:
    """It adds no degree of freedom to the variance within, and its weight follows the same k."""
    groups = states(weighted=True)
    one = Observed(groups[3].values[:1], (groups[3].weights or ())[:1])
    done = buhlmann_straub([*groups[:3], one, groups[4]])
    others = buhlmann_straub([*groups[:3], groups[4]])
    assert done.within == pytest.approx(others.within)
    assert done.groups[3].credibility == pytest.approx(407 / (407 + done.k))
    assert done.groups[3].own == 1223


def test_a_group_without_any_period_takes_the_collective() -> None:
    done = buhlmann_straub([*A_AND_B, Observed([None, None])])
    unseen = done.groups[2]
    assert (unseen.own, unseen.credibility, unseen.estimate) == (None, 0, done.collective)


@pytest.mark.parametrize(
    ("groups", "id"),
    [
        ([], "risk-two-groups"),
        ([Observed([1, 2])], "risk-two-groups"),
        ([Observed([1, 2]), Observed([None])], "risk-two-groups"),
        ([Observed([1]), Observed([2])], "risk-two-periods"),
        ([Observed([1, 2], [1]), Observed([2])], "risk-weights-count"),
        ([Observed([1, 2], [1, -1]), Observed([2])], "risk-weights-negative"),
    ],
)
def test_groups_that_show_no_structure_are_refused(groups: list[Observed], id: str) -> None:
    with pytest.raises(Unusable) as refused:
        buhlmann_straub(groups)
    assert refused.value.words.id == id


def test_one_period_each_is_enough_for_counts() -> None:
    done = buhlmann_straub_poisson([Observed([0], [5]), Observed([3], [5])])
    assert done.within == pytest.approx(1.5)
    assert 0 < done.groups[0].credibility < 1


# --- gamma and Poisson


def test_a_gamma_prior_after_a_record_is_what_quadrature_finds() -> None:
    """Bayes' rule itself: the mean of prior × likelihood, integrated by SciPy."""
    prior, claims, years = GammaPrior(2.5, 20), 3, 9.0

    def weight(rate: float) -> float:
        likely = stats.poisson.pmf(claims, rate * years)
        return float(stats.gamma.pdf(rate, 2.5, scale=1 / 20) * likely)

    whole, _ = integrate.quad(weight, 0, 5)
    mean, _ = integrate.quad(lambda rate: rate * weight(rate), 0, 5)
    assert prior.after(claims, years).mean == pytest.approx(mean / whole, rel=1e-8)


def test_the_weight_of_a_record_is_its_years_beside_those_of_the_prior() -> None:
    """The posterior mean is z × own + (1 − z) × prior with z = years / (years + prior years)."""
    prior = GammaPrior(1.2, 8)
    z = prior.credibility(12)
    assert z == pytest.approx(12 / 20)
    assert prior.after(5, 12).mean == pytest.approx(z * 5 / 12 + (1 - z) * prior.mean)


def test_no_years_of_record_leave_the_prior_as_it_was() -> None:
    prior = GammaPrior(1.2, 8)
    assert prior.credibility(0) == 0
    assert prior.after(0, 0) == prior


@pytest.mark.parametrize(("claims", "years"), [(-1, 1), (1, -1)])
def test_a_record_cannot_be_negative(claims: int, years: float) -> None:
    with pytest.raises(ValueError, match="negative"):
        GammaPrior(1, 1).after(claims, years)


@pytest.mark.parametrize(("claims", "years"), [(-1, 1), (1, 0)])
def test_a_prior_cannot_be_negative_or_without_years(claims: float, years: float) -> None:
    with pytest.raises(ValueError, match="prior"):
        GammaPrior(claims, years)


@pytest.mark.parametrize(
    ("z", "case", "own"),
    [(0, "none", 0), (0.02, "hardly", 0), (0.05, "parts", 1), (0.7, "parts", 7), (0.74, "parts", 7),
     (0.75, "parts", 8), (0.94, "parts", 9), (0.95, "almost", 10), (0.99, "almost", 10)],
)  # fmt: skip
def test_the_weight_is_told_in_parts_of_ten(z: float, case: str, own: int) -> None:
    said = dict(record_weight(z).args)
    assert (said["case"], said["own"], said["others"]) == (case, own, 10 - own)
