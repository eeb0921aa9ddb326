"""The picture of a building: costs through time, the gap, increases, the clause, blankets."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date
from decimal import ROUND_HALF_UP, Decimal
from itertools import pairwise
from typing import Any

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from quarterday.catalogue.speech import Speech
from quarterday.core.figure import Fact, Parameter, walk
from quarterday.core.file.records import Building, Terms, Valuation
from quarterday.core.file.records.terms import Coverage, Premium
from quarterday.core.money import Money
from quarterday.core.reference import Reference
from quarterday.core.review.case import Case
from quarterday.core.values.building import BuildingPicture, picture
from quarterday.core.values.index import Curve

CaseOf = Callable[..., Case]
RENEWAL, END = date(2027, 1, 31), date(2028, 1, 31)
HALL = Building(id="hall", name="Hall", area_m2=Decimal(600), year_built=1950)
VALUED = date(2022, 2, 15)


def cad(amount: str | int) -> Money:
    return Money(Decimal(amount))


def valued(amount: int = 1_000_000, **more: Any) -> Valuation:
    given_ = {"building": "hall", "amount": Decimal(amount), "valued_on": VALUED,
              "basis": "desk-valuation", "includes_fees": True, **more}  # fmt: skip
    return Valuation.model_validate(given_)


def line(limit: int = 1_000_000, **more: Any) -> Coverage:
    given_ = {"coverage": "building", "location": "hall", "limit": Decimal(limit), **more}
    return Coverage.model_validate(given_)


def offered(*lines: Coverage, **more: Any) -> Terms:
    return Terms(stage="offered", start=RENEWAL, end=END, coverages=lines, **more)


def hall(case: Case) -> BuildingPicture:
    found = picture(case, next(b for b in case.file.buildings if b.id == "hall"))
    assert found is not None
    return found


def _level(canada: Reference, day: date, geography: str = "on") -> Decimal:
    return Curve.of(canada.indices[geography][-1].points).at(day, Decimal("0.035")).value


def _dollars(amount: Decimal) -> Money:
    return Money(amount.quantize(Decimal(1), rounding=ROUND_HALF_UP))


def test_the_four_costs_follow_the_index_from_the_valuation(
    case_of: CaseOf, canada: Reference
) -> None:
    """600 m² counts as middle-sized: 18 months to rebuild, nine of them counted."""
    found = hall(case_of(HALL, valued(), offered(line())))
    assert found.costs is not None
    costs, start = found.costs, _level(canada, VALUED)
    assert costs.at_valuation.money == cad(1_000_000)
    assert costs.rebuilt_on == date(2028, 10, 30)
    days = {costs.at_renewal: RENEWAL, costs.at_term_end: date(2028, 1, 30),
            costs.rebuilt: date(2028, 10, 30)}  # fmt: skip
    for figure, day in days.items():
        assert figure.money == _dollars(1_000_000 * _level(canada, day) / start), figure.id


def test_the_figures_are_named_by_what_they_are_and_the_building(case_of: CaseOf) -> None:
    clause: dict[str, Any] = {"coinsurance": Decimal("0.9"), "automatic_increase": Decimal("0.02")}
    found = hall(case_of(HALL, valued(), offered(line(**clause))))
    assert {figure.id for figure in found.figures().values()} == {
        f"{what}@hall"
        for what in (
            "sum-insured", "shortfall", "cost-at-valuation", "cost-at-renewal", "cost-at-term-end",
            "cost-rebuilt", "increases-applied", "index-change", "increases-behind",
            "increases-gap", "share", "required", "margin", "penalty-10", "penalty-25",
            "penalty-50", "penalty-100", "penalty-chance", "penalty-expected", "safe-amount",
        )
    }  # fmt: skip


def test_the_gap_is_the_cost_rebuilt_less_the_sum_insured(case_of: CaseOf) -> None:
    found = hall(case_of(HALL, valued(), offered(line(900_000))))
    assert found.costs is not None
    assert found.shortfall is not None
    assert found.shortfall.money == found.costs.rebuilt.money - cad(900_000)


def test_there_is_no_gap_when_enough_is_insured(case_of: CaseOf) -> None:
    found = hall(case_of(HALL, valued(), offered(line(9_000_000))))
    assert found.shortfall is not None
    assert found.shortfall.money == cad(0)


@pytest.mark.parametrize(
    ("area", "rebuilt_on"),
    [
        ("299.9", date(2028, 7, 30)),  # small: 12 months, six counted
        ("300", date(2028, 10, 30)),  # middle: 18, nine counted
        ("1499", date(2028, 10, 30)),
        ("1500", date(2029, 1, 30)),  # large: 24, twelve counted
        (None, date(2028, 10, 30)),
        ("0", date(2028, 10, 30)),  # no building has none: not known
    ],
)
def test_a_larger_building_takes_longer_to_rebuild(
    case_of: CaseOf, area: str | None, rebuilt_on: date
) -> None:
    building = HALL.model_copy(update={"area_m2": None if area is None else Decimal(area)})
    found = hall(case_of(building, valued(), offered(line())))
    assert found.costs is not None
    assert found.costs.rebuilt_on == rebuilt_on


@pytest.mark.parametrize(
    ("includes", "amount", "caution"),
    [(True, 1_000_000, None), (False, 1_080_000, None),
     (None, 1_000_000, "values-caution-fees-unknown")],
)  # fmt: skip
def test_professional_fees_are_added_only_where_the_valuation_leaves_them_out(
    case_of: CaseOf, includes: bool | None, amount: int, caution: str | None
) -> None:
    """The index leaves design fees out (Statistics Canada, The Daily, 2015-11-10); 8 % is ours."""
    found = hall(case_of(HALL, valued(includes_fees=includes), offered(line())))
    assert found.costs is not None
    base = found.costs.at_valuation
    assert base.money == cad(amount)
    assert (base.caution.id if base.caution else None) == caution
    added = "values.professional-fees-share" in {node.id for _, node in walk(base)}
    assert added == (includes is False)


def test_what_by_laws_ask_is_never_added(case_of: CaseOf) -> None:
    """No typical published uplift was found, so none is made up."""
    with_, without = (
        hall(case_of(HALL, valued(includes_by_laws=included), offered(line())))
        for included in (True, False)
    )
    assert with_.figures()["cost-rebuilt"].value == without.figures()["cost-rebuilt"].value


def test_without_a_valuation_there_is_a_sum_insured_and_no_cost(case_of: CaseOf) -> None:
    found = hall(case_of(HALL, offered(line(coinsurance=Decimal("0.9")))))
    assert found.sum_insured.money == cad(1_000_000)
    assert (found.costs, found.shortfall, found.coinsured, found.increases) == (None,) * 4
    assert found.not_indexed is not None
    assert found.not_indexed.id == "values-not-indexed-none"
    assert found.series == ()


def test_a_valuation_older_than_the_index_gives_no_cost_and_says_why(case_of: CaseOf) -> None:
    found = hall(case_of(HALL, valued(valued_on=date(2016, 12, 31)), offered(line())))
    assert found.costs is None
    assert found.not_indexed is not None
    assert found.not_indexed.id == "values-not-indexed-old"


def test_a_valuation_made_after_the_review_s_day_is_not_known_yet(case_of: CaseOf) -> None:
    later = valued(2_000_000, valued_on=date(2026, 12, 1))
    found = hall(case_of(HALL, valued(), later, offered(line())))
    assert found.valuation is not None
    assert found.valuation.amount == 1_000_000


@pytest.mark.parametrize("lines", [(), (Coverage(coverage="building", location="hall"),)])
def test_a_building_insured_for_no_amount_has_no_picture(
    case_of: CaseOf, lines: tuple[Coverage, ...]
) -> None:
    case = case_of(HALL, valued(), offered(*lines))
    assert picture(case, HALL) is None
    assert case.pictures == {}


def test_without_terms_there_is_no_picture(case_of: CaseOf) -> None:
    assert picture(case_of(HALL, valued()), HALL) is None


def test_a_place_without_an_index_of_its_own_says_that_it_uses_the_composite(
    case_of: CaseOf, canada: Reference
) -> None:
    building = HALL.model_copy(update={"province": "PE"})
    found = hall(case_of(building, valued(), offered(line())))
    assert found.costs is not None
    rebuilt = found.costs.rebuilt
    assert rebuilt.caution is not None
    assert rebuilt.caution.id == "values-caution-projected-composite-index"
    levels = (_level(canada, day, "composite") for day in (date(2028, 10, 30), VALUED))
    end, start = levels
    assert rebuilt.money == _dollars(1_000_000 * end / start)


def test_every_leaf_is_a_fact_with_its_origin_or_a_parameter_with_its_source(
    case_of: CaseOf,
) -> None:
    clause: dict[str, Any] = {"coinsurance": Decimal("0.9"), "automatic_increase": Decimal("0.02")}
    found = hall(case_of(HALL, valued(includes_fees=False), offered(line(**clause))))
    for figure in found.figures().values():
        leaves = [node for _, node in walk(figure) if not getattr(node, "inputs", ())]
        assert leaves, figure.id
        for leaf in leaves:
            assert isinstance(leaf, Fact | Parameter), f"{figure.id} ends in the figure {leaf.id}"
            named = leaf.origin.name if isinstance(leaf, Fact) else leaf.source.title
            assert named, leaf.id


@pytest.mark.parametrize("language", ["en", "fr"])
def test_every_figure_of_a_picture_can_be_said(
    case_of: CaseOf, canada: Reference, language: str
) -> None:
    speech = Speech(canada, language)
    clause: dict[str, Any] = {"coinsurance": Decimal("0.9"), "automatic_increase": Decimal("0.02")}
    stated: dict[str, Any] = {
        "coinsurance_stated_amount": Decimal(900_000),
        "margin": Decimal("1.1"),
    }
    cases = (
        case_of(HALL, valued(includes_fees=False), offered(line(**clause))),
        case_of(HALL, valued(includes_fees=None), offered(line(blanket="all", **stated))),
        case_of(HALL, valued(), offered(line(agreed_value_until=END, **clause))),
    )
    for case in cases:
        for figure in hall(case).figures().values():
            for _, node in walk(figure):
                parts = speech.parts(node)
                assert parts.label, node.id
                assert parts.how, node.id


# --- the chart


def test_the_chart_runs_monthly_from_the_valuation_until_rebuilt(case_of: CaseOf) -> None:
    found = hall(case_of(HALL, valued(), offered(line())))
    days = [point.day for point in found.series]
    assert (days[0], days[1], days[-1]) == (VALUED, date(2022, 3, 15), date(2028, 10, 30))
    assert all(a < b for a, b in pairwise(days))
    assert found.series[0].cost == cad(1_000_000)
    assert found.costs is not None
    assert found.series[-1].cost == found.costs.rebuilt.money


def test_the_chart_tells_what_is_projected_from_what_is_published(case_of: CaseOf) -> None:
    """The shipped index ends with 2026Q2, which stands for 15 May 2026."""
    points = hall(case_of(HALL, valued(), offered(line()))).series
    assert all(point.projected == (point.day > date(2026, 5, 15)) for point in points)


def test_the_sums_insured_of_earlier_terms_come_first(case_of: CaseOf) -> None:
    issued = Terms(stage="issued", start=date(2026, 1, 31), end=RENEWAL, coverages=(line(800_000),))
    asked = Terms(
        stage="offered", start=date(2025, 1, 31), end=RENEWAL, coverages=(line(1),)
    )  # an offer is not what was insured
    later = Terms(stage="issued", start=END, end=date(2029, 1, 31), coverages=(line(2),))
    case = case_of(HALL, valued(), issued, asked, offered(line(820_000)))
    found = hall(case)
    assert hall(case_of(HALL, valued(), issued, later)).history[-1].amount == cad(2)
    steps = [(step.start, step.end, step.amount) for step in found.history]
    assert steps == [
        (date(2026, 1, 31), RENEWAL, cad(800_000)), (RENEWAL, END, cad(820_000)),
    ]  # fmt: skip


# --- automatic increases


def test_increases_are_set_against_the_index_up_to_the_renewal(
    case_of: CaseOf, canada: Reference
) -> None:
    issued = Terms(
        stage="issued", start=date(2026, 1, 31), end=RENEWAL,
        coverages=(line(automatic_increase=Decimal("0.03")),),
    )  # fmt: skip
    case = case_of(HALL, valued(), issued, offered(line(automatic_increase=Decimal("0.02"))))
    found = hall(case).increases
    assert found is not None
    grown = Decimal("1.03") ** 4 * Decimal("1.02")
    index = _level(canada, RENEWAL) / _level(canada, VALUED)
    assert found.applied.number == grown - 1
    assert found.index.number == index - 1
    assert found.behind.number == 1 - grown / index
    assert found.gap.money == _dollars(1_000_000 * (index - grown))
    assert found.applied.how.id == "values-how-increases-assumed", "three renewals are not on file"


def test_without_an_automatic_increase_there_is_nothing_to_compare(case_of: CaseOf) -> None:
    assert hall(case_of(HALL, valued(), offered(line()))).increases is None


def test_a_valuation_made_since_the_last_renewal_meets_this_renewal_s_increase(
    case_of: CaseOf,
) -> None:
    """Made in July 2026, it is raised once before the coming term starts."""
    recent = valued(valued_on=date(2026, 7, 1))
    found = hall(case_of(HALL, recent, offered(line(automatic_increase=Decimal("0.02")))))
    assert found.increases is not None
    assert found.increases.applied.number == Decimal("0.02")


# --- the coinsurance clause


def test_the_clause_is_judged_on_the_last_day_of_the_term(case_of: CaseOf) -> None:
    found = hall(case_of(HALL, valued(), offered(line(coinsurance=Decimal("0.9")))))
    assert found.costs is not None
    assert found.coinsured is not None
    worth = found.costs.at_term_end.money
    assert found.coinsured.required.money == _dollars(worth.amount * Decimal("0.9"))
    assert found.coinsured.share.number == 1_000_000 / (worth.amount * Decimal("0.9"))
    assert found.coinsured.penalised


def test_penalties_are_shown_at_four_losses(case_of: CaseOf) -> None:
    """Each is what the loss pays without the clause less what it pays with it."""
    terms = offered(line(coinsurance=Decimal("0.9"), deductible=Decimal(5_000)))
    found = hall(case_of(HALL, valued(), terms)).coinsured
    assert found is not None
    share, worth = found.share.number, found.position.worth
    for part, penalty in zip(("0.1", "0.25", "0.5"), found.penalties, strict=False):
        loss = (worth * Decimal(part)).rounded(Decimal(1))
        assert abs(penalty.money.amount - loss.amount * (1 - share)) <= Decimal("0.01")
    ids = [penalty.id for penalty in found.penalties]
    assert ids == [f"penalty-{percent}@hall" for percent in (10, 25, 50, 100)]
    assert found.worst.money == max(p.money for p in found.penalties)


def test_the_margin_says_how_far_costs_may_rise(case_of: CaseOf) -> None:
    found = hall(case_of(HALL, valued(), offered(line(2_000_000, coinsurance=Decimal("0.9")))))
    assert found.coinsured is not None
    margin = found.coinsured.margin.number
    risen = found.coinsured.position.value * (1 + margin) * Decimal("0.9")
    assert margin > 0
    assert found.coinsured.margin.how.id == "values-how-margin"
    assert abs(risen.amount - 2_000_000) < 1


def test_an_agreed_value_for_the_whole_term_means_no_penalty_and_no_chance(
    case_of: CaseOf,
) -> None:
    terms = offered(line(500_000, coinsurance=Decimal("0.9"), agreed_value_until=END))
    found = hall(case_of(HALL, valued(), terms)).coinsured
    assert found is not None
    assert found.share.number == 1
    assert found.chance is not None
    assert found.chance.number == 0
    assert all(not penalty.money for penalty in found.penalties)
    assert found.margin.how.id == "values-how-margin-none"


def test_a_better_valuation_leaves_less_chance_around_the_same_figure(case_of: CaseOf) -> None:
    """With some margin left, a formal appraisal makes a penalty less likely than an estimate."""

    def chance(basis: str) -> Decimal:
        terms = offered(line(1_300_000, coinsurance=Decimal("0.9")))
        found = hall(case_of(HALL, valued(basis=basis), terms)).coinsured
        assert found is not None
        assert found.chance is not None
        return found.chance.number

    assert 0 < chance("formal-appraisal") < chance("desk-valuation") < chance("owner-estimate")


@pytest.mark.parametrize("percentage", [None, Decimal("0.9")])
def test_a_stated_amount_needs_no_chance(case_of: CaseOf, percentage: Decimal | None) -> None:
    stated = Decimal(1_000_000)
    terms = offered(line(800_000, coinsurance_stated_amount=stated, coinsurance=percentage))
    found = hall(case_of(HALL, valued(), terms)).coinsured
    assert found is not None
    assert (found.share.number, found.chance, found.expected) == (Decimal("0.8"), None, None)


@pytest.mark.parametrize(
    ("terms", "deductible"),
    [
        ({"deductible": Decimal(2_500)}, 2_500),
        ({}, 0),
        ({"deductible_percent": Decimal("0.02"), "deductible_percent_of": "limit"}, 20_000),
        ({"deductible_percent": Decimal("0.02"), "deductible_percent_of": "limit",
          "deductible_minimum": Decimal(25_000)}, 25_000),
        ({"deductible_percent": Decimal("0.05"), "deductible_percent_of": "limit",
          "deductible_maximum": Decimal(30_000)}, 30_000),
    ],
)  # fmt: skip
def test_the_deductible_is_an_amount_or_a_share_within_bounds(
    case_of: CaseOf, terms: dict[str, Any], deductible: int
) -> None:
    found = hall(case_of(HALL, valued(), offered(line(coinsurance=Decimal("0.9"), **terms))))
    assert found.coinsured is not None
    assert found.coinsured.position.deductible == cad(deductible)


# --- blankets

CHURCH = Building(id="church", name="Church")


def _church(limit: int | None = 3_000_000, **more: Any) -> Coverage:
    amount = None if limit is None else Decimal(limit)
    return Coverage.model_validate(
        {"coverage": "building", "location": "church", "limit": amount, **more}
    )


def test_the_scheduled_amounts_of_a_blanket_add_up_for_each_building(case_of: CaseOf) -> None:
    lines = (line(blanket="all"), _church(blanket="all"))
    found = hall(case_of(HALL, CHURCH, valued(), offered(*lines)))
    assert found.sum_insured.money == cad(1_000_000)
    assert found.available.money == cad(4_000_000)
    assert found.shortfall is not None
    assert not found.shortfall.money


def test_a_margin_clause_caps_what_one_building_gets_from_the_blanket(case_of: CaseOf) -> None:
    """Margin clause, from memory: at most 110 to 125 % of the value reported for the item."""
    lines = (line(blanket="all", margin=Decimal("1.1")), _church(blanket="all"))
    found = hall(case_of(HALL, CHURCH, valued(), offered(*lines)))
    assert found.available.money == cad(1_100_000)
    assert found.available.how.id == "values-how-blanket-margin"


def test_a_line_whose_limit_is_the_blanket_counts_once(case_of: CaseOf) -> None:
    whole: dict[str, Any] = {"blanket": "all", "limit_basis": "blanket"}
    lines = (line(4_000_000, **whole), _church(4_000_000, **whole))
    found = hall(case_of(HALL, CHURCH, valued(), offered(*lines)))
    assert found.available.money == cad(4_000_000)


def test_coinsurance_under_a_blanket_compares_totals(case_of: CaseOf) -> None:
    """As in ISO CP 00 10, F.1, Example 3 (from memory): totals of value and limit, 90 %.

    The church has no valuation, so it counts with its scheduled amount; contents with theirs.
    """
    clause: dict[str, Any] = {"blanket": "all", "coinsurance": Decimal("0.9")}
    contents = Coverage(coverage="contents", location="hall", limit=Decimal(200_000), blanket="all")
    lines = (line(**clause), _church(**clause), contents)
    listed = Valuation(
        building="hall", valued="contents", amount=Decimal(300_000), valued_on=VALUED
    )
    found = hall(case_of(HALL, CHURCH, valued(), listed, offered(*lines)))
    assert found.coinsured is not None
    assert found.costs is not None
    position = found.coinsured.position
    assert position.carried == cad(4_200_000)
    assert position.value == found.costs.at_term_end.money + cad(3_300_000)
    assert position.share == 4_200_000 / (position.value.amount * Decimal("0.9"))


def test_a_line_for_every_place_insures_what_is_owned_and_not_what_is_rented(
    case_of: CaseOf,
) -> None:
    rented = Building(id="shop", name="Shop", ownership="rent")
    everywhere = Coverage(coverage="building", limit=Decimal(5_000_000))
    case = case_of(HALL, CHURCH, rented, valued(), offered(everywhere))
    assert set(case.pictures) == {"hall", "church"}
    assert case.pictures["hall"].available.how.id == "values-how-blanket"


# --- properties


@settings(max_examples=25, suppress_health_check=[HealthCheck.function_scoped_fixture])
@given(amount=st.integers(1, 10**8), limit=st.integers(1, 10**8), more=st.integers(0, 10**7))
def test_insuring_more_never_widens_the_gap_nor_lowers_the_share(
    case_of: CaseOf, amount: int, limit: int, more: int
) -> None:
    less, full = (
        hall(
            case_of(HALL, valued(amount), offered(line(limit + extra, coinsurance=Decimal("0.9"))))
        )
        for extra in (0, more)
    )
    assert less.shortfall is not None
    assert full.shortfall is not None
    assert full.shortfall.money <= less.shortfall.money
    assert less.coinsured is not None
    assert full.coinsured is not None
    assert full.coinsured.share.number >= less.coinsured.share.number
    assert full.coinsured.chance is not None
    assert less.coinsured.chance is not None
    assert full.coinsured.chance.number <= less.coinsured.chance.number


def test_the_premium_of_another_building_does_not_price_this_one(case_of: CaseOf) -> None:
    from quarterday.core.review.rules.values.insured import price_of_raising

    other = Premium(coverage="building", location="church", amount=Decimal(9_000))
    found = hall(case_of(HALL, valued(), offered(line(900_000), premiums=(other,))))
    assert price_of_raising(found) is None
