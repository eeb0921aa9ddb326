"""Lost income as a part of the damage that closes a building: against sums written out by hand."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date
from decimal import Decimal
from typing import Any

import numpy as np
import pytest
from tests.core.risk.conftest import HALL, VALUED, RiskOf, building, claim, liability, terms_of

from quarterday.catalogue.speech import Speech
from quarterday.core.figure import walk
from quarterday.core.file.records import Building, Operations, Record
from quarterday.core.income.closing import closing
from quarterday.core.money import Money
from quarterday.core.reference import LANGUAGES, Reference
from quarterday.core.review.case import Case
from quarterday.core.risk.choices import options
from quarterday.core.risk.closure import Lost, lost_income
from quarterday.core.risk.cost import Effort
from quarterday.core.risk.curves import Curve
from quarterday.core.risk.figures import told
from quarterday.core.risk.perils import Layered, Model, Peril
from quarterday.core.risk.sampling import mean_of
from quarterday.core.risk.severity import Capped, Floats, exponential
from quarterday.core.risk.together import together
from quarterday.core.risk.told import rests_on
from quarterday.core.risk.years import simulated
from quarterday.core.terms.losses.loss import HOURS_A_MONTH

CaseOf = Callable[..., Case]
INCOME = Operations(
    revenue_donations=Decimal(120_000), revenue_rents=Decimal(60_000), premises_share=Decimal(1),
    payroll=Decimal(40_000), payroll_kept=Decimal("0.5"),
)  # fmt: skip


def income(limit: int | None = 400_000, **more: Any) -> dict[str, Any]:
    return {"coverage": "loss-of-income", "limit": limit, "waiting_hours": 72, **more}


def lost_of(case_of: CaseOf, *lines: dict[str, Any], more: tuple[Record, ...] = ()) -> Lost:
    terms = terms_of("offered", building(), *lines)
    found = lost_income(case_of(HALL, VALUED, INCOME, *more, terms), terms, [terms])
    assert found is not None
    return found


def total(parts: list[Layered], size: float) -> float:
    return sum(p.share * (min(size, p.end) - min(size, p.start)) for p in parts)


def curve(risk: Any, cause: str, at: int = 0) -> tuple[Peril, Curve]:
    """What is borne of one loss of a cause under an alternative, and its peril."""
    numbers = [n for n, peril in enumerate(risk.model.perils) if peril.cause == cause]
    trial = risk.comparison.costs[at].trial
    return risk.model.perils[numbers[0]], trial.curves()[numbers[0]][0]


def borne(found: Curve, size: float) -> float:
    return float(np.interp(size, found.at, found.borne))


# --- the parts of a closure


def test_a_total_loss_stops_the_worksheet_s_average_closure(case_of: CaseOf) -> None:
    """The mean of the twelve closures that the income worksheet tells month by month."""
    lost = lost_of(case_of, income())
    terms = terms_of("offered", building(), income())
    of = closing(case_of(HALL, VALUED, INCOME, terms), terms)
    assert of is not None
    by_start = [float(outage.lost.amount) for outage in of.sheet.outages]
    assert lost.income == pytest.approx(sum(by_start) / 12)
    assert float(of.sheet.worst.lost.amount) == max(by_start) > lost.income
    assert (lost.place, lost.months) == ("hall", of.sheet.closure.months)


@pytest.mark.parametrize("share", [0.0, 0.001, 0.1, 0.4, 0.75, 0.9, 1.0])
def test_less_damage_closes_it_for_a_part_of_the_time(case_of: CaseOf, share: float) -> None:
    """In proportion up to three quarters of what stands there, all of it from there on."""
    lost, worth = lost_of(case_of, income()), 2_000_000.0
    parts = list(lost.parts(worth))
    assert total(parts, share * worth) == pytest.approx(lost.income * min(share / 0.75, 1))


def test_the_waiting_period_is_told_apart_and_no_later_month_meets_it(case_of: CaseOf) -> None:
    first, rest = lost_of(case_of, income()).parts(1_000_000.0)
    assert (first.month, first.hours, first.start) == (1, 72, 0)
    assert (rest.month, rest.start) == (2, first.end)
    (alone,) = lost_of(case_of, income(waiting_hours=None)).parts(1_000_000.0)
    assert (alone.month, alone.hours) == (1, HOURS_A_MONTH)


def test_each_month_is_told_apart_where_a_limit_holds_for_each(case_of: CaseOf) -> None:
    lost = lost_of(case_of, income(monthly_limit=Decimal("0.25")))
    parts = list(lost.parts(1_000_000.0))
    assert [p.month for p in parts] == [1, *range(2, lost.months + 2)]
    assert total(parts, 1e6) == pytest.approx(lost.income)
    whole = [p.share * (p.end - p.start) for p in parts[2:]]
    assert whole == pytest.approx([lost.income / lost.months] * len(whole))


@pytest.mark.parametrize(
    "more",
    [
        (Operations(),),
        (Operations(revenue_donations=Decimal(10_000), premises_share=Decimal(1),
                    expenses_stopping=Decimal(90_000)),),
    ],
)  # fmt: skip
def test_without_an_income_or_a_loss_by_closing_there_is_none(
    case_of: CaseOf, risk_case: RiskOf, canada: Reference, more: tuple[Record, ...]
) -> None:
    terms = terms_of("offered", building(), income())
    assert lost_income(case_of(HALL, VALUED, *more, terms), terms, [terms]) is None
    risk = risk_case(*more, terms)
    assert risk.lost is None
    assert "risk-left-out-income" in {said.id for said in risk.left_out}
    for language in LANGUAGES:
        assert all(map(Speech(canada, language).say, rests_on(risk)))


# --- what of it is borne


def test_what_nothing_insures_is_borne_whole(risk_case: RiskOf) -> None:
    """The building's deductible of 2,500, and all of the income."""
    risk = risk_case(INCOME, terms_of("offered", building(9_000_000), liability()))
    peril, found = curve(risk, "fire")
    assert risk.lost is not None
    worth = peril.parts[0].end
    for share in (0.1, 0.5, 0.75):
        expected = 2_500 + risk.lost.income * share / 0.75
        assert borne(found, share * worth) == pytest.approx(expected)


@pytest.mark.parametrize("limit", [400_000, 60_000])
def test_the_waiting_period_and_what_is_over_the_limit_are_borne(
    risk_case: RiskOf, limit: int
) -> None:
    """By hand: 72 of the closure's hours, then all that the limit does not pay."""
    line = income(limit)
    risk = risk_case(INCOME, terms_of("offered", building(9_000_000), line, liability()))
    peril, found = curve(risk, "fire")
    assert risk.lost is not None
    worth, whole = peril.parts[0].end, risk.lost.income
    waits = whole * 72 / (HOURS_A_MONTH * risk.lost.months)
    for share in (0.05, 0.3, 0.75, 1.0):
        stopped = whole * min(share / 0.75, 1)
        over = max(stopped - waits - limit, 0)
        assert borne(found, share * worth) == pytest.approx(2_500 + min(stopped, waits) + over)
    short = 0.25 * 72 / (HOURS_A_MONTH * risk.lost.months)  # closed for less than the wait
    stopped = whole * short / 0.75
    assert borne(found, short * worth) == pytest.approx(min(2_500, short * worth) + stopped)


def test_a_limit_for_each_month_holds_for_each(risk_case: RiskOf) -> None:
    line = income(120_000, monthly_limit=Decimal("0.01"), waiting_hours=None)
    risk = risk_case(INCOME, terms_of("offered", building(9_000_000), line, liability()))
    peril, found = curve(risk, "fire")
    assert risk.lost is not None
    each, months = risk.lost.income / risk.lost.months, risk.lost.months
    assert each > 1_200
    whole = borne(found, 0.75 * peril.parts[0].end)
    assert whole == pytest.approx(2_500 + months * (each - 1_200))


def test_the_mean_is_that_of_evenly_spread_losses(risk_case: RiskOf) -> None:
    risk = risk_case(INCOME, terms_of("offered", building(9_000_000), liability()))
    peril, found = curve(risk, "windstorm-hail")
    assert risk.lost is not None
    sizes = peril.severity.quantile((np.arange(400_000) + 0.5) / 400_000)
    worth = peril.parts[0].end
    stopped = risk.lost.income * np.minimum(sizes / (0.75 * worth), 1)
    by_laws = np.maximum(sizes - worth, 0)  # no line answers what today's building rules add
    expected = (np.minimum(sizes, 2_500) + stopped + by_laws).mean()
    assert found.mean(peril.severity) == pytest.approx(expected, rel=5e-3)


def test_an_option_for_more_income_is_measured(risk_case: RiskOf) -> None:
    """Before, nobody measured it; now it keeps what the smaller limit would not pay."""
    option = {"coverage": "loss-of-income", "limit": 400_000, "price": 300}
    line = income(20_000, waiting_hours=None)
    risk = risk_case(
        INCOME, terms_of("offered", building(9_000_000), line, liability(), options=[option])
    )
    (row,) = options(risk)
    assert row.why_not is None
    assert row.average is not None
    assert row.average.money < Money(Decimal(0))
    peril, low = curve(risk, "fire")
    _, high = curve(risk, "fire", 1)
    total_loss = peril.parts[0].end
    assert risk.lost is not None
    kept = borne(low, total_loss) - borne(high, total_loss)
    assert kept == pytest.approx(risk.lost.income - 20_000)


def test_only_the_building_that_takes_longest_stops_income(risk_case: RiskOf) -> None:
    large = Building(id="annex", name="Annex", ownership="own", area_m2=Decimal(4_000))
    lines = (building(), building(location="annex"), liability())
    worth = VALUED.model_copy(update={"building": "annex"})
    risk = risk_case(large, worth, INCOME, terms_of("offered", *lines))
    places = {p.place for p in risk.model.perils if any(q.component == "income" for q in p.parts)}
    assert places == {"annex"}
    causes = {p.cause for p in risk.model.perils if any(q.component == "income" for q in p.parts)}
    assert "earthquake" not in causes  # cover for income does not answer it here
    assert {"fire", "water-escape"} <= causes


def test_cover_that_cannot_be_settled_leaves_income_out_and_nothing_else(
    risk_case: RiskOf, canada: Reference
) -> None:
    """A line for income without a limit: fire stays in the figures, with a sentence why."""
    risk = risk_case(INCOME, terms_of("offered", building(), income(None), liability()))
    assert risk.lost is None
    assert "fire" in {peril.cause for peril in risk.model.perils}
    for language, begins in (("en", "Lost income is left out."), ("fr", "Les revenus perdus")):
        said = [Speech(canada, language).say(words) for words in risk.left_out]
        assert any(text.startswith(begins) and "loss-of-income" in text for text in said)


# --- what it rests on


def test_the_figures_say_what_they_hold_of_income(risk_case: RiskOf, canada: Reference) -> None:
    risk = risk_case(
        INCOME, terms_of("offered", building(), liability()), claim("A", date(2024, 1, 1))
    )

    found = {node.id: node for _, node in walk(told(risk)[0].mean)}
    assert {"risk-closure", "risk.closed-whole-from", "income.growth"} <= set(found)
    for language in LANGUAGES:
        speech = Speech(canada, language)
        assert speech.parts(found["risk-closure"]).caution
        said = [speech.say(words) for words in rests_on(risk)]
        assert any("Hall" in text for text in said)
        assert len(said) == 4


# --- steep losses in a yearly purse


def test_a_loss_that_grows_faster_than_the_damage_is_bounded_by_its_slope() -> None:
    part = (Layered("building", 1.0, 0.0, 100.0), Layered("income", 3.0, 20.0, 40.0))
    peril = Peril("fire", "hall", 1.0, Capped(exponential(30), 100), part)
    assert peril.steepest == 4.0
    assert Peril("fire", "hall", 1.0, Capped(exponential(30), 100), part[:1]).steepest == 1.0
    assert Model((peril,)).items[1].component == "income"


def test_a_yearly_maximum_on_income_has_its_mean_in_closed_form(risk_case: RiskOf) -> None:
    """Against the simulation's own sum of what the years' losses ask together."""
    line = income(150_000, aggregate=30_000, waiting_hours=None)
    claims = [claim(str(n), date(2019 + n, 5, 1), "fire") for n in range(7)]
    risk = risk_case(
        INCOME, *claims, terms_of("offered", building(9_000_000), line, liability()),
        effort=Effort(60_000, 1),
    )  # fmt: skip
    cost = risk.base
    found = together(cost.trial)
    assert found is not None
    assert found.total > 1
    more: Floats = cost.trial.together(simulated(risk.model, "income", 0, 200_000))
    sampled = mean_of(more)
    assert sampled.low <= found.total <= sampled.high
