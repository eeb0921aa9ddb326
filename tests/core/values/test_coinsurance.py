"""Coinsurance: the published examples, the chance of a penalty, and what must always hold."""

from __future__ import annotations

import math
import random
from datetime import date
from decimal import Decimal
from statistics import NormalDist

import pytest
from hypothesis import given
from hypothesis import strategies as st

from quarterday.core.money import Money
from quarterday.core.values.coinsurance import (
    HUNDREDTHS,
    Clause,
    Order,
    Position,
    Requirement,
    Settlement,
    expected_reduction,
    penalty_chance,
    percentage,
    settle,
    settle_partial,
    share_of,
    small_loss,
)
from quarterday.core.words import words

DAY = date(2027, 6, 1)


def cad(amount: str | int) -> Money:
    return Money(Decimal(amount))


def case(
    value: int, required: str, carried: int, loss: str | int, deductible: int = 0,
    order: Order = "coinsurance-first",
) -> Settlement:  # fmt: skip
    return settle_partial(
        cad(value), Decimal(required), cad(carried), cad(loss), cad(deductible), None, order
    )


# Each row: source; value, required, carried, loss, deductible; required amount, share, paid.
PUBLISHED = [
    # ISO CP 00 30, Example 1 (underinsurance), as read in a public record of the City of Santa
    # Ana (WebLink document 133111, page 98): "We will pay no more than $60,000."
    ("CP 00 30 example 1", (400_000, "0.5", 150_000, 80_000, 0), (200_000, "0.75", "60000.00")),
    # The same page, Example 2 (adequate insurance); the result is from memory.
    ("CP 00 30 example 2", (400_000, "0.5", 200_000, 80_000, 0), (200_000, "1", "80000.00")),
    # ISO CP 00 10, F.1, Example 1 (underinsurance), from memory.
    ("CP 00 10 example 1", (250_000, "0.8", 100_000, 40_000, 250), (200_000, "0.5", "19750.00")),
    # ISO CP 00 10, F.1, Example 2 (adequate), from memory.
    ("CP 00 10 example 2", (250_000, "0.8", 200_000, 40_000, 250), (200_000, "1", "39750.00")),
    # ISO CP 00 10, F.1, Example 3 (blanket of 75,000 + 100,000 + 75,000; losses 30,000 and
    # 20,000), from memory.
    ("CP 00 10 example 3", (250_000, "0.9", 180_000, 50_000, 1_000), (225_000, "0.8", "39000.00")),
    # scottsimmonds.com, a blog on coinsurance: 70,313 and a penalty of 4,687, to the dollar.
    ("a blog", (1_000_000, "0.8", 750_000, 75_000, 0), (800_000, "0.9375", "70312.50")),
    # broome-associates.com, 2018-02-02: pays 62,000.
    ("a page of 2018", (500_000, "0.8", 250_000, 100_000, 500), (400_000, "0.625", "62000.00")),
]


@pytest.mark.parametrize(("source", "given_", "expected"), PUBLISHED)
def test_published_examples_come_out_as_printed(
    source: str, given_: tuple[int, str, int, int, int], expected: tuple[int, str, str]
) -> None:
    done = case(*given_)
    required, share, paid = expected
    assert (done.required_amount, done.share) == (cad(required), Decimal(share)), source
    assert done.paid == cad(paid), source


def test_a_canadian_broker_s_example_pays_two_thirds() -> None:
    """crainsurance.ca, "What is co-insurance": 600,000 of 900,000 required, 200,000 of 300,000."""
    done = case(1_000_000, "0.9", 600_000, 300_000)
    assert (done.paid, done.borne) == (cad(200_000), cad(100_000))


def test_what_a_page_gets_wrong_is_put_right() -> None:
    """broome-associates.com, 2018-02-02, prints "37,000 not covered"; it is 100,000 - 62,000."""
    assert case(500_000, "0.8", 250_000, 100_000, 500).borne == cad(38_000)


def test_the_business_income_example_leaves_20_000_uncovered() -> None:
    """ISO CP 00 30, Example 1: "The remaining $20,000 is not covered." (City of Santa Ana)."""
    assert case(400_000, "0.5", 150_000, 80_000).borne == cad(20_000)


def test_the_deductible_may_come_first_when_the_terms_say_so() -> None:
    """Computed: (40,000 - 250) x 0.5 = 19,875 against 19,750 in the usual printed order."""
    first = case(250_000, "0.8", 100_000, 40_000, 250, order="deductible-first")
    assert (first.paid, first.borne) == (cad(19_875), cad(20_125))


def test_the_share_comes_before_the_deductible_and_the_limit_last() -> None:
    """ISO CP 00 10, D. Deductible, and its Example 1: 59,850 + 80,000 = 139,850.

    As read in a public record of the City of Santa Ana (WebLink document 133111, page 84); the
    inputs (deductible 250, limits 60,000 and 80,000, losses 60,100 and 90,000) are from memory.
    """
    none = percentage(cad(1), Decimal(0))
    first = settle(none, cad(60_000), cad(60_100), cad(250))
    second = settle(none, cad(80_000), cad(90_000), cad(0))
    assert (first.paid, second.paid) == (cad(59_850), cad(80_000))
    assert first.paid + second.paid == cad(139_850)


def test_a_larger_deductible_in_the_builders_risk_form() -> None:
    """Builders risk coverage form (docplayer.net/20124247): 59,100 + 80,000 = 139,100."""
    none = percentage(cad(1), Decimal(0))
    first = settle(none, cad(60_000), cad(60_100), cad(1_000))
    second = settle(none, cad(80_000), cad(90_000), cad(0))
    assert first.paid + second.paid == cad(139_100)


def test_a_percentage_deductible_comes_off_each_building() -> None:
    """ISO windstorm percentage deductible, Example 4 (City of Santa Ana, document 126214, page 58).

    2 % of 500,000 is 10,000 a building: 40,000 and 20,000 pay 30,000 and 10,000.
    """
    none, deductible = percentage(cad(1), Decimal(0)), cad(500_000) * Decimal("0.02")
    paid = [
        settle(none, cad(500_000), loss, deductible).paid for loss in (cad(40_000), cad(20_000))
    ]
    assert paid == [cad(30_000), cad(10_000)]


def test_without_a_limit_of_its_own_the_amount_carried_is_the_most_paid() -> None:
    assert case(100_000, "0.8", 80_000, 100_000, 1_000).paid == cad(80_000)


def test_a_limit_below_the_amount_carried_is_the_most_paid() -> None:
    done = settle_partial(
        cad(400_000), Decimal("0.5"), cad(200_000), cad(80_000), cad(0), limit=cad(50_000)
    )
    assert (done.paid, done.borne) == (cad(50_000), cad(30_000))


def test_exactly_enough_is_enough_and_a_cent_less_is_not() -> None:
    assert case(250_000, "0.8", 200_000, 40_000).share == 1
    short = settle_partial(cad(250_000), Decimal("0.8"), cad("199999.99"), cad(40_000), cad(0))
    assert short.share < 1


def test_a_loss_below_the_deductible_pays_nothing() -> None:
    done = case(250_000, "0.8", 200_000, 200, 250)
    assert (done.paid, done.borne) == (cad(0), cad(200))


def test_no_amount_insured_pays_nothing() -> None:
    assert case(250_000, "0.8", 0, 40_000, 250).paid == cad(0)


def test_the_steps_tell_each_move_in_its_order() -> None:
    ids = [step.id for step in case(250_000, "0.8", 100_000, 40_000, 250).steps]
    assert ids == [
        "values-step-required", "values-step-share", "values-step-reduced",
        "values-step-deductible", "values-step-limit-enough", "values-step-paid",
    ]  # fmt: skip
    first = case(250_000, "0.8", 100_000, 40_000, 250, order="deductible-first").steps
    assert [s.id for s in first][2:4] == ["values-step-deductible", "values-step-reduced"]


def test_the_steps_hold_the_money_of_each_move() -> None:
    steps = {s.id: dict(s.args) for s in case(250_000, "0.8", 100_000, 40_000, 250).steps}
    assert steps["values-step-required"]["required"] == cad(200_000)
    assert steps["values-step-reduced"]["after"] == cad(20_000)
    assert steps["values-step-deductible"]["after"] == cad(19_750)


def test_without_a_clause_no_step_speaks_of_a_share() -> None:
    ids = [step.id for step in case(250_000, "0", 100_000, 40_000).steps]
    assert ids == ["values-step-no-clause", "values-step-limit-enough", "values-step-paid"]


def test_enough_insured_is_told_as_enough() -> None:
    ids = [step.id for step in case(250_000, "0.8", 200_000, 40_000, 250).steps]
    assert ids[1:3] == ["values-step-full-share", "values-step-deductible"]


def test_a_limit_that_is_reached_is_told() -> None:
    ids = [step.id for step in case(100_000, "0.8", 80_000, 100_000).steps]
    assert "values-step-limit-reached" in ids


@pytest.mark.parametrize("required", ["1.01", "-0.1", "80"])
def test_a_percentage_outside_0_to_1_is_refused(required: str) -> None:
    with pytest.raises(ValueError, match=r"0\.8 is 80 %"):
        case(250_000, required, 100_000, 40_000)


@pytest.mark.parametrize("at", [2, 3, 4])
def test_a_negative_amount_is_refused_by_its_name(at: int) -> None:
    amounts = [cad(250_000), Decimal("0.8"), cad(100_000), cad(40_000), cad(250)]
    amounts[at] = cad(-1)
    name = {2: "carried", 3: "loss", 4: "deductible"}[at]
    with pytest.raises(ValueError, match=rf"cannot be negative: .*{name}"):
        settle_partial(*amounts)  # type: ignore[arg-type]


# --- properties

AMOUNTS = st.decimals(min_value=0, max_value=10**8, places=2).map(Money)
ORDERS = st.sampled_from(["coinsurance-first", "deductible-first"])
RATES = st.decimals(min_value=0, max_value=1, places=2)


@given(AMOUNTS, RATES, AMOUNTS, AMOUNTS, AMOUNTS, st.none() | AMOUNTS, ORDERS)
def test_paid_and_borne_are_the_loss_to_the_cent(
    value: Money, required: Decimal, carried: Money, loss: Money, deductible: Money,
    limit: Money | None, order: Order,
) -> None:  # fmt: skip
    done = settle_partial(value, required, carried, loss, deductible, limit, order)
    assert done.paid + done.borne == loss
    assert cad(0) <= done.paid <= loss
    assert done.paid == done.paid.rounded()
    assert done.paid <= (carried if limit is None else limit)


@given(AMOUNTS, RATES, AMOUNTS, AMOUNTS, AMOUNTS, AMOUNTS, ORDERS)
def test_more_insured_never_pays_less(
    value: Money, required: Decimal, carried: Money, more: Money, loss: Money, deductible: Money,
    order: Order,
) -> None:  # fmt: skip
    less = settle_partial(value, required, carried, loss, deductible, None, order)
    full = settle_partial(value, required, carried + more, loss, deductible, None, order)
    assert full.paid >= less.paid


@given(AMOUNTS, RATES, AMOUNTS, AMOUNTS, AMOUNTS, AMOUNTS, ORDERS)
def test_a_larger_deductible_never_pays_more(
    value: Money, required: Decimal, carried: Money, loss: Money, deductible: Money, more: Money,
    order: Order,
) -> None:  # fmt: skip
    small = settle_partial(value, required, carried, loss, deductible, None, order)
    large = settle_partial(value, required, carried, loss, deductible + more, None, order)
    assert large.paid <= small.paid


@given(AMOUNTS, RATES, AMOUNTS, AMOUNTS, AMOUNTS)
def test_the_deductible_first_never_pays_less(
    value: Money, required: Decimal, carried: Money, loss: Money, deductible: Money
) -> None:
    """(loss - d) x share is at least loss x share - d for any share of at most 1."""
    usual = settle_partial(value, required, carried, loss, deductible)
    other = settle_partial(value, required, carried, loss, deductible, None, "deductible-first")
    assert other.paid >= usual.paid


@given(AMOUNTS, AMOUNTS)
def test_the_share_is_never_more_than_all_nor_less_than_nothing(carried: Money, req: Money) -> None:
    assert 0 <= share_of(carried, req) <= 1


# --- clauses


def test_agreed_value_suspends_the_clause_until_its_date_and_not_on_it() -> None:
    """IRMI glossary, "agreed value": suspends coinsurance "until a specified expiration date"."""
    clause = Clause(Decimal("0.9"), agreed_until=DAY)
    before = clause.requirement(cad(100), cad(10), date(2027, 5, 31))
    assert (before.amount, before.why.id) == (cad(0), "values-step-agreed")
    assert clause.requirement(cad(100), cad(10), DAY).amount == cad(90)


def test_a_stated_amount_replaces_the_percentage_of_the_true_value() -> None:
    """Stated amount co-insurance in Canada, from memory: no penalty while the amount is carried."""
    clause = Clause(Decimal("0.9"), stated=cad(500_000))
    asked = clause.requirement(cad(2_000_000), cad(10), DAY)
    assert asked == Requirement(cad(500_000), words("values-step-stated", required=cad(500_000)))
    assert settle(asked, cad(500_000), cad(80_000), cad(1_000)).paid == cad(79_000)
    assert settle(asked, cad(400_000), cad(80_000), cad(0)).paid == cad(64_000)


def test_a_stated_amount_alone_is_a_clause() -> None:
    assert Clause(stated=cad(1)).asks
    assert not Clause().asks
    assert not Clause(Decimal(0)).asks


@pytest.mark.parametrize(("loss", "asked"), [(15_000, 0), ("15000.01", 90_000)])
def test_a_small_loss_is_left_alone(loss: str | int, asked: int) -> None:
    """A Canadian mutual's "Commercial Building and Contents Broad Form": waived up to 15,000."""
    clause = Clause(Decimal("0.9"), waived_up_to=cad(15_000))
    assert clause.requirement(cad(100_000), cad(loss), DAY).amount == cad(asked)


@pytest.mark.parametrize(("carried", "most"), [(200_000, 4_000), (400_000, 5_000)])
def test_the_waiver_is_the_lesser_of_two_per_cent_and_an_amount(carried: int, most: int) -> None:
    """IBC forms 4037 and 4042, from memory: the lesser of 2 % of the amount insured and 5,000."""
    assert small_loss(cad(carried), Decimal("0.02"), cad(5_000)) == cad(most)


def _position(carried: int, clause: Clause) -> Position:
    value, carried_money = cad(1_000_000), cad(carried)
    return Position(value, carried_money, clause, cad(1_000), carried_money, value, DAY)


def test_the_curve_runs_from_no_loss_to_a_total_one() -> None:
    curve = _position(600_000, Clause(Decimal("0.9"))).curve(HUNDREDTHS)
    assert len(curve) == 101
    assert (curve[0].loss, curve[0].paid) == (cad(0), cad(0))
    assert (curve[100].loss, curve[100].paid) == (cad(1_000_000), cad(600_000))
    paid = [point.paid.amount for point in curve]
    assert paid == sorted(paid)


def test_the_penalty_is_what_the_clause_takes_and_nothing_else() -> None:
    """600,000 of 900,000 required: a loss of 300,000 pays 199,000 instead of 299,000."""
    position = _position(600_000, Clause(Decimal("0.9")))
    assert position.penalty(Decimal("0.3")) == cad(100_000)
    assert position.penalty(Decimal(1)) == cad(0), "a total loss reaches the limit either way"
    assert _position(900_000, Clause(Decimal("0.9"))).penalty(Decimal("0.3")) == cad(0)


def test_no_penalty_while_an_agreed_value_holds() -> None:
    agreed = Clause(Decimal("0.9"), agreed_until=date(2028, 1, 1))
    assert _position(600_000, agreed).penalty(Decimal("0.3")) == cad(0)
    assert _position(600_000, agreed).share == 1


# --- the chance of a penalty


def _log_sd(relative_error: float) -> float:
    return math.sqrt(math.log1p(relative_error**2))


CASES = [(1_000_000, 900_000, "0.9", 0.12), (1_000_000, 1_000_000, "0.9", 0.12),
         (1_000_000, 700_000, "0.8", 0.25), (800_000, 900_000, "0.9", 0.07)]  # fmt: skip


@pytest.mark.parametrize(("value", "carried", "required", "error"), CASES)
def test_the_chance_is_that_of_the_standard_library_s_normal(
    value: int, carried: int, required: str, error: float
) -> None:
    enough = carried / float(required)
    expected = 1 - NormalDist(math.log(value), _log_sd(error)).cdf(math.log(enough))
    found = penalty_chance(cad(value), cad(carried), Decimal(required), error)
    assert math.isclose(found, expected, abs_tol=1e-12)


@pytest.mark.parametrize(("value", "carried", "required", "error"), CASES)
def test_chance_and_mean_reduction_agree_with_simulation(
    value: int, carried: int, required: str, error: float
) -> None:
    """100,000 draws from a fixed seed; the tolerance is four standard errors."""
    rng, enough, n = random.Random(1777), carried / float(required), 100_000
    draws = [rng.lognormvariate(math.log(value), _log_sd(error)) for _ in range(n)]
    args = (cad(value), cad(carried), Decimal(required), error)
    chance = penalty_chance(*args)
    share = sum(draw > enough for draw in draws) / n
    assert abs(share - chance) <= 4 * math.sqrt(chance * (1 - chance) / n) + 1e-9
    cuts = [max(0.0, 1 - enough / draw) for draw in draws]
    mean = sum(cuts) / n
    spread = math.sqrt(sum((cut - mean) ** 2 for cut in cuts) / n)
    assert abs(mean - expected_reduction(*args)) <= 4 * spread / math.sqrt(n) + 1e-9


@pytest.mark.parametrize(("value", "carried", "required", "error"), CASES)
def test_the_mean_reduction_agrees_with_quadrature(
    value: int, carried: int, required: str, error: float
) -> None:
    """Simpson's rule from the point where the penalty starts, 2,000 steps over twelve spreads."""
    normal, enough = NormalDist(math.log(value), _log_sd(error)), carried / float(required)
    start = math.log(enough)
    end = max(start, normal.mean) + 12 * normal.stdev
    n = 2_000
    h = (end - start) / n
    total = sum(
        (1 if k in (0, n) else 4 if k % 2 else 2)
        * (1 - enough / math.exp(start + k * h))
        * normal.pdf(start + k * h)
        for k in range(n + 1)
    )
    found = expected_reduction(cad(value), cad(carried), Decimal(required), error)
    assert math.isclose(found, total * h / 3, abs_tol=1e-9)


def test_with_no_margin_the_chance_is_one_half() -> None:
    assert penalty_chance(cad(1_000_000), cad(900_000), Decimal("0.9"), 0.12) == 0.5


def test_a_certain_value_leaves_no_chance_in_between() -> None:
    enough = penalty_chance(cad(100), cad(90), Decimal("0.9"), 0)
    short = penalty_chance(cad(100), cad(89), Decimal("0.9"), 0)
    assert (enough, short) == (0.0, 1.0)
    assert expected_reduction(cad(100), cad(90), Decimal("0.9"), 0) == 0.0
    assert math.isclose(expected_reduction(cad(100), cad(45), Decimal("0.9"), 0), 0.5)


def test_nothing_insured_is_a_sure_penalty() -> None:
    assert penalty_chance(cad(100), cad(0), Decimal("0.9"), 0.1) == 1.0
    assert expected_reduction(cad(100), cad(0), Decimal("0.9"), 0.1) == 1.0


def test_a_negative_error_is_refused() -> None:
    with pytest.raises(ValueError, match="cannot be negative"):
        penalty_chance(cad(100), cad(90), Decimal("0.9"), -0.1)


WORTH = st.integers(1, 10**8).map(cad)
ERRORS = st.floats(min_value=0, max_value=1)


@given(WORTH, WORTH, WORTH, st.sampled_from(["0.5", "0.8", "0.9", "1"]), ERRORS)
def test_more_insured_never_raises_the_chance(
    value: Money, carried: Money, more: Money, required: str, error: float
) -> None:
    rate = Decimal(required)
    assert penalty_chance(value, carried + more, rate, error) <= penalty_chance(
        value, carried, rate, error
    )


@given(WORTH, WORTH, st.sampled_from(["0.5", "0.8", "0.9", "1"]), ERRORS)
def test_the_mean_reduction_lies_between_nothing_and_the_chance(
    value: Money, carried: Money, required: str, error: float
) -> None:
    args = (value, carried, Decimal(required), error)
    assert -1e-12 <= expected_reduction(*args) <= penalty_chance(*args) + 1e-12
