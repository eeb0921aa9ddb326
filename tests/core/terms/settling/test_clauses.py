"""Each clause of the terms, alone and together, on losses computed by hand.

Where no source is named the rule is common practice, no source; the figures are computed.
"""

from __future__ import annotations

from datetime import date
from decimal import Decimal
from typing import Any

import pytest
from tests.core.terms.settling.conftest import DAY, Pay, payers, reasons

from quarterday.core.terms.settling.refusals import Refused
from quarterday.core.terms.settling.values import Values

HALL = {"coverage": "building", "location": "hall", "limit": 500_000}
SEWER = {"coverage": "sewer-backup", "limit": 25_000, "sublimit_of": "building"}
LIABILITY = {"coverage": "general-liability", "limit": 1_000_000}
INJURY = "injury-on-premises"


def line(coverage: str, limit: int | None = None, **fields: Any) -> dict[str, Any]:
    return {"coverage": coverage, **({} if limit is None else {"limit": limit}), **fields}


def test_a_cause_goes_to_the_coverage_that_answers_it(pay: Pay) -> None:
    done = pay([HALL, SEWER], "sewer-backup", {"building": 40_000}, place="hall")
    assert done.paid.money.amount == 25_000
    assert reasons(done) == {"over-limit": 15_000}


def test_what_no_line_answers_is_borne_and_said(pay: Pay) -> None:
    done = pay([HALL], "sewer-backup", {"building": 40_000, "debris": 10}, place="hall")
    assert reasons(done) == {"no-cover": 40_010}
    assert done.steps[0].id == "settling-step-no-cover"


def test_a_cause_that_a_line_leaves_out_is_borne_for_that_reason(pay: Pay) -> None:
    barred = {**HALL, "excluded_causes": ["fire"]}
    done = pay([barred], "fire", {"building": 40_000}, place="hall")
    assert reasons(done) == {"excluded-cause": 40_000}
    assert pay([barred], "smoke", {"building": 40_000}, place="hall").borne.money.amount == 0


def test_another_line_may_answer_what_the_first_leaves_out(pay: Pay) -> None:
    barred = {**HALL, "excluded_causes": ["vandalism"]}
    done = pay([barred, line("glass", 5000)], "vandalism", {"building": 9000}, place="hall")
    assert payers(done) == {"policy": 5000}


def test_a_limit_of_zero_gives_nothing(pay: Pay) -> None:
    done = pay([HALL, line("by-laws", 0)], "fire", {"by-laws": 100}, place="hall")
    assert reasons(done) == {"no-cover": 100}


def test_a_sublimit_uses_up_the_limit_it_is_part_of(pay: Pay) -> None:
    lines = [
        {**HALL, "limit": 30_000},
        line("earthquake", 20_000, sublimit_of="building"),
    ]
    done = pay(lines, "earthquake", {"building": 40_000}, place="hall")
    assert done.paid.money.amount == 20_000
    two = [*lines, line("sewer-backup", 25_000, sublimit_of="building")]
    both = pay(two, "earthquake", {"building": 40_000}, place="hall")
    assert both.paid.money.amount == 20_000


def test_a_sublimit_may_be_above_the_limit_of_one_place_if_not_of_all(pay: Pay) -> None:
    places = [{**HALL, "location": "hall"}, {**HALL, "location": "shed", "limit": 20_000}]
    done = pay([*places, SEWER], "sewer-backup", {"building": 40_000}, place="shed")
    assert done.paid.money.amount == 20_000
    with pytest.raises(Refused):
        pay([places[1], SEWER], "sewer-backup", {"building": 40_000}, place="shed")


def test_parts_of_one_limit_share_what_is_left_of_it(pay: Pay) -> None:
    lines = [
        {"coverage": "building", "location": "hall", "limit": 50_000},
        line("by-laws", 40_000, sublimit_of="building"),
    ]
    done = pay(lines, "fire", {"building": 30_000, "by-laws": 45_000}, place="hall")
    assert [part.paid.amount for part in done.parts] == [30_000, 20_000]
    assert reasons(done) == {"over-limit": 25_000}
    told = [step.id for step in done.parts[1].steps]
    assert told == ["settling-step-limit", "settling-step-limit-above"]


def test_a_sublimit_of_a_sublimit_goes_through_both(pay: Pay) -> None:
    lines = [
        {"coverage": "building", "location": "hall", "limit": 50_000},
        line("by-laws", 40_000, sublimit_of="building"),
        line("debris-removal", 30_000, sublimit_of="by-laws"),
    ]
    amounts = {"debris": 35_000, "by-laws": 35_000, "building": 35_000}
    done = pay(lines, "fire", amounts, place="hall")
    assert [part.paid.amount for part in done.parts] == [30_000, 10_000, 10_000]


def test_a_line_for_everywhere_has_one_limit_an_event_unless_it_counts_by_building(
    pay: Pay,
) -> None:
    shared = line("by-laws", 10_000)
    amounts = {"by-laws@one": 8000, "by-laws@two": 8000}
    places = [{**HALL, "location": place} for place in ("one", "two")]
    assert pay([*places, shared], "fire", amounts).paid.money.amount == 10_000
    each = {**shared, "limit_basis": "per-building"}
    assert pay([*places, each], "fire", amounts).paid.money.amount == 16_000


def test_the_shared_limit_pays_in_the_order_of_the_terms(pay: Pay) -> None:
    lines = [HALL, line("by-laws", 10_000), line("extra-expense", 5000)]
    amounts = {"extra-expense": 25_000, "by-laws": 30_000}
    for order, paid in (
        (["by-laws", "extra-expense"], [10_000, 30_000]),
        (["extra-expense", "by-laws"], [25_000, 15_000]),
    ):
        shared = {"shared_limit": {"amount": 25_000, "tops_up": order}}
        done = pay(lines, "fire", amounts, terms=shared, place="hall")
        assert [part.paid.amount for part in done.parts] == paid
        assert payers(done) == {"shared-limit": 25_000, "policy": 15_000}
        assert reasons(done) == {"over-limit": 15_000}


def test_the_shared_limit_alone_gives_a_coverage_without_a_line(pay: Pay) -> None:
    shared = {"shared_limit": {"amount": 25_000, "tops_up": ["by-laws"]}}
    done = pay([HALL], "fire", {"by-laws": 30_000}, terms=shared, place="hall")
    assert payers(done) == {"shared-limit": 25_000}


def test_a_line_may_say_itself_that_it_is_in_the_shared_limit(pay: Pay) -> None:
    lines = [HALL, line("by-laws", 10_000, in_shared_limit=True)]
    shared = {"shared_limit": {"amount": 5000, "tops_up": []}}
    done = pay(lines, "fire", {"by-laws": 30_000}, terms=shared, place="hall")
    assert payers(done) == {"policy": 10_000, "shared-limit": 5000}


def test_the_shared_limit_pays_no_deductible_and_no_coinsurance(pay: Pay) -> None:
    lines = [{**HALL, "deductible": 1000, "coinsurance": "1", "in_shared_limit": True}]
    values = Values({("building", "hall"): Decimal(1_000_000)})
    shared = {"shared_limit": {"amount": 99_000, "tops_up": ["building"]}}
    done = pay(lines, "fire", {"building": 40_000}, values, shared, place="hall")
    assert reasons(done) == {"coinsurance": 20_000, "deductible": 1000}


def test_the_first_hours_of_an_interruption_are_not_paid(pay: Pay) -> None:
    """72 of 720 hours: a tenth of the first month; a month is thirty days (ISO CP 00 30)."""
    lines = [line("loss-of-income", 100_000, waiting_hours=72)]
    done = pay(lines, "fire", {"income": [10_000, 10_000]})
    assert reasons(done) == {"waiting": 1000}


def test_a_waiting_period_longer_than_a_month_reaches_into_the_next(pay: Pay) -> None:
    lines = [line("loss-of-income", 100_000, waiting_hours=1080)]
    done = pay(lines, "fire", {"income": [10_000, 10_000, 10_000]})
    assert reasons(done) == {"waiting": 15_000}


def test_one_amount_of_income_is_spread_over_its_hours(pay: Pay) -> None:
    lines = [line("off-premises-utilities", 100_000, waiting_hours=24)]
    done = pay(lines, "power-surge", {"off-premises-utilities": 8000}, hours=96)
    assert reasons(done) == {"waiting": 2000}
    short = pay(lines, "power-surge", {"off-premises-utilities": 8000}, hours=12)
    assert reasons(short) == {"waiting": 8000}


def test_a_waiting_period_spares_costs_that_are_not_income(pay: Pay) -> None:
    lines = [line("extra-expense", 100_000, waiting_hours=72)]
    assert pay(lines, "fire", {"extra-expense": 5000}).borne.money.amount == 0


def test_actual_cash_value_takes_wear_off_before_anything_else(pay: Pay) -> None:
    lines = [{**HALL, "basis": "actual-cash-value", "deductible": 1000}]
    values = Values(depreciation={("building", "hall"): Decimal("0.25")})
    done = pay(lines, "fire", {"building": 40_000}, values, place="hall")
    assert reasons(done) == {"depreciation": 10_000, "deductible": 1000}


def test_wear_may_be_told_for_all_places_and_may_be_nothing(pay: Pay) -> None:
    lines = [{**HALL, "basis": "actual-cash-value"}]
    everywhere = {("building", "*"): Decimal("0.5")}
    done = pay(lines, "fire", {"building": 100}, Values(depreciation=everywhere), place="hall")
    assert done.paid.money.amount == 50
    as_new = Values(depreciation={**everywhere, ("building", "hall"): Decimal(0)})
    done = pay(lines, "fire", {"building": 100}, as_new, place="hall")
    assert done.paid.money.amount == 100


def test_wear_of_glass_in_a_building_is_its_own_before_the_buildings(pay: Pay) -> None:
    lines = [{**HALL, "basis": "actual-cash-value"}]
    wear = {("building", "hall"): Decimal("0.5"), ("stained-glass", "hall"): Decimal(0)}
    done = pay(lines, "fire", {"stained-glass": 100}, Values(depreciation=wear), place="hall")
    assert done.paid.money.amount == 100


@pytest.mark.parametrize(
    ("loss", "kept"), [(2000, 500), (10_000, 1000), (90_000, 5000), (300, 300)]
)
def test_a_deductible_may_be_a_share_of_the_loss_within_bounds(
    pay: Pay, loss: int, kept: int
) -> None:
    share = {"deductible_percent": "0.1", "deductible_percent_of": "loss"}
    bounds = {"deductible_minimum": 500, "deductible_maximum": 5000}
    done = pay([{**HALL, **share, **bounds}], "fire", {"building": loss}, place="hall")
    assert reasons(done) == {"deductible": kept}


@pytest.mark.parametrize(
    ("bounds", "kept"),
    [({}, 10_000), ({"deductible_minimum": 12_000}, 12_000), ({"deductible_maximum": 8000}, 8000)],
)
def test_a_deductible_may_be_a_share_of_the_limit_within_bounds(
    pay: Pay, bounds: dict[str, int], kept: int
) -> None:
    share = {"deductible_percent": "0.02", "deductible_percent_of": "limit"}
    done = pay([{**HALL, **share, **bounds}], "fire", {"building": 40_000}, place="hall")
    assert reasons(done) == {"deductible": kept}


def test_a_share_of_the_value_counts_all_property_of_the_place_for_a_cause_of_its_own(
    pay: Pay,
) -> None:
    """Earthquake: 5 % of building and contents at the place."""
    quake = line("earthquake", 900_000, deductible_percent="0.05", deductible_percent_of="value")
    values = Values({("building", "hall"): Decimal(800_000), ("contents", "hall"): Decimal(40_000)})
    done = pay([HALL, quake], "earthquake", {"building": 60_000}, values, place="hall")
    assert reasons(done) == {"deductible": 42_000}


def test_a_margin_of_nothing_pays_nothing_at_its_place(pay: Pay) -> None:
    lines = [{**HALL, "blanket": "all", "margin": 0}, {**HALL, "location": "b", "blanket": "all"}]
    done = pay(lines, "fire", {"building": 10}, place="hall")
    assert reasons(done) == {"over-margin": 10}


def test_a_share_of_nothing_is_no_deductible(pay: Pay) -> None:
    for of in ("loss", "limit", "value"):
        share = {"deductible_percent": "0", "deductible_percent_of": of}
        values = Values({("building", "hall"): Decimal(800_000)})
        done = pay([{**HALL, **share}], "fire", {"building": 60_000}, values, place="hall")
        assert done.borne.money.amount == 0


def test_a_value_told_for_the_cause_itself_counts_before_all_property(pay: Pay) -> None:
    quake = line("earthquake", 900_000, deductible_percent="0.05", deductible_percent_of="value")
    values = Values({("building", "hall"): Decimal(800_000), ("earthquake", "hall"): Decimal(10)})
    done = pay([HALL, quake], "earthquake", {"building": 60_000}, values, place="hall")
    assert reasons(done) == {"deductible": Decimal("0.5")}


def test_percentages_of_the_value_count_each_even_where_the_highest_is_the_rule(pay: Pay) -> None:
    share = {"deductible_percent": "0.02", "deductible_percent_of": "value"}
    lines = [{**HALL, **share, "location": p} for p in ("one", "two")]
    values = Values({("building", p): Decimal(500_000) for p in ("one", "two")})
    amounts = {"building@one": 40_000, "building@two": 40_000}
    assert pay(lines, "fire", amounts, values).borne.money.amount == 20_000
    stated = {"deductible_rule": "highest"}
    assert pay(lines, "fire", amounts, values, stated).borne.money.amount == 10_000


def test_a_line_for_everywhere_takes_its_deductible_once_an_event(pay: Pay) -> None:
    places = [{**HALL, "location": place} for place in ("one", "two")]
    lines = [*places, line("contents", 100_000, deductible=1000)]
    done = pay(lines, "fire", {"contents@one": 5000, "contents@two": 5000})
    assert reasons(done) == {"deductible": 1000}


def test_orders_may_differ_from_line_to_line(pay: Pay) -> None:
    """(40,000 - 250) x 0.5 on the one, 40,000 x 0.5 - 250 on the other."""
    both = {"limit": 100_000, "coinsurance": "0.8", "deductible": 250}
    lines = [
        {**both, "coverage": "building", "location": "a", "settling_order": "deductible-first"},
        {**both, "coverage": "building", "location": "b"},
    ]
    values = Values({("building", place): Decimal(250_000) for place in "ab"})
    amounts = {"building@a": 40_000, "building@b": 40_000}
    done = pay(lines, "fire", amounts, values, {"deductible_rule": "each"})
    assert [part.paid.amount for part in done.parts] == [19_875, 19_750]


def test_coinsurance_of_a_blanket_over_all_buildings_counts_all_of_them(pay: Pay) -> None:
    values = Values({("building", place): Decimal(250_000) for place in "ab"})
    lines = [line("building", 300_000, coinsurance="0.8")]
    done = pay(lines, "fire", {"building": 40_000}, values, place="a")
    assert done.paid.money.amount == 30_000


def test_a_line_at_one_place_is_measured_against_that_place_alone(pay: Pay) -> None:
    values = Values({("building", "a"): Decimal(250_000), ("building", "b"): Decimal(9_000_000)})
    lines = [
        {"coverage": "building", "location": place, "limit": 100_000, "coinsurance": "0.8"}
        for place in "ab"
    ]
    done = pay(lines, "fire", {"building": 40_000}, values, place="a")
    assert done.paid.money.amount == 20_000


def test_costs_around_a_loss_are_never_coinsured(pay: Pay) -> None:
    lines = [line("by-laws", 10_000, coinsurance="0.9"), HALL]
    assert pay(lines, "fire", {"by-laws": 5000}, place="hall").borne.money.amount == 0


def test_money_is_paid_where_it_was(pay: Pay) -> None:
    lines = [line("money-inside", 5000, deductible=250), line("money-outside", 2000)]
    done = pay(lines, "theft-of-money", {"money": 6000, "money-outside": 6000})
    assert [part.paid.amount for part in done.parts] == [5000, 2000]


def test_dishonesty_goes_to_the_line_for_who_took_it(pay: Pay) -> None:
    lines = [line("employee-dishonesty", 50_000), line("volunteer-dishonesty", 10_000)]
    for component, paid in (
        ("money", 50_000), ("money-by-employee", 50_000), ("money-by-volunteer", 10_000)
    ):  # fmt: skip
        done = pay(lines, "dishonesty", {component: 60_000})
        assert done.paid.money.amount == paid


def test_defence_on_top_leaves_the_limit_to_the_person_harmed(pay: Pay) -> None:
    amounts = {"defence": 300_000, "compensatory": 1_000_000}
    outside = pay([{**LIABILITY, "defence": "outside"}], INJURY, amounts)
    inside = pay([{**LIABILITY, "defence": "inside"}], INJURY, amounts)
    assert outside.borne.money.amount == 0
    assert inside.borne.money.amount == 300_000


def test_defence_on_top_bears_no_deductible(pay: Pay) -> None:
    lines = [{**LIABILITY, "defence": "outside", "deductible": 1000}]
    assert pay(lines, INJURY, {"defence": 300}).borne.money.amount == 0
    inside = [{**LIABILITY, "defence": "inside", "deductible": 1000}]
    assert pay(inside, INJURY, {"defence": 300}).borne.money.amount == 300


def test_where_the_terms_are_silent_defence_is_taken_to_use_up_the_limit(pay: Pay) -> None:
    done = pay([LIABILITY], INJURY, {"defence": 300_000, "compensatory": 1_000_000})
    assert done.borne.money.amount == 300_000
    assert "settling-caution-defence" in [w.id for w in done.cautions]


@pytest.mark.parametrize("kind", ["punitive", "exemplary", "multiplied"])
def test_damages_that_punish_are_paid_only_where_the_terms_name_them(pay: Pay, kind: str) -> None:
    for damages, reason in (([kind], None), ([], "damages-excluded"), (None, "damages-unstated")):
        done = pay([{**LIABILITY, "damages": damages}], INJURY, {kind: 100})
        assert reasons(done) == ({reason: 100} if reason else {})
        told = "settling-caution-damages" in [w.id for w in done.cautions]
        assert told is (damages is None)


def test_a_line_for_punitive_damages_pays_them_where_the_liability_line_does_not(pay: Pay) -> None:
    lines = [{**LIABILITY, "damages": []}, line("punitive-damages", 40, aggregate=90)]
    done = pay(lines, INJURY, {"punitive": 100, "exemplary": 100})
    assert [part.paid.amount for part in done.parts] == [40, 0]


CLAIMS_MADE = line(
    "directors-and-officers", 2_000_000, limit_basis="per-claim", claims_made=True,
    retroactive_date=date(2020, 1, 1), reporting_days=90, defence="outside",
)  # fmt: skip


@pytest.mark.parametrize(
    ("happened", "claimed", "reason"),
    [
        (date(2020, 1, 1), date(2027, 1, 1), None),
        (date(2019, 12, 31), date(2027, 1, 1), "before-retroactive-date"),
        (date(2027, 12, 31), date(2028, 3, 30), None),
    ],
)
def test_claims_made_cover_counts_the_claim_in_the_period_and_the_event_since_its_date(
    pay: Pay, happened: date, claimed: date, reason: str | None
) -> None:
    done = pay(
        [CLAIMS_MADE], "wrongful-act", {"compensatory": 100}, date_of_loss=happened,
        claimed_on=claimed,
    )  # fmt: skip
    assert reasons(done) == ({reason: 100} if reason else {})


@pytest.mark.parametrize(
    ("happened", "claimed"),
    [
        (date(2026, 5, 1), date(2026, 12, 31)),
        (date(2027, 5, 1), date(2028, 3, 31)),
        (date(2028, 1, 1), date(2028, 1, 2)),
    ],
)
def test_a_claim_made_outside_the_period_and_its_reporting_is_refused(
    pay: Pay, happened: date, claimed: date
) -> None:
    with pytest.raises(Refused) as caught:
        pay(
            [CLAIMS_MADE], "wrongful-act", {"compensatory": 1}, date_of_loss=happened,
            claimed_on=claimed,
        )  # fmt: skip
    assert caught.value.words.id == "settling-refused-outside-claims-made"


def test_without_a_retroactive_date_earlier_events_count_and_that_is_said(pay: Pay) -> None:
    silent = {**CLAIMS_MADE, "retroactive_date": None}
    day = {"date_of_loss": date(1999, 1, 1), "claimed_on": date(2027, 2, 1)}
    done = pay([silent], "wrongful-act", {"compensatory": 1}, **day)
    assert done.borne.money.amount == 0
    assert [w.id for w in done.cautions] == ["settling-caution-retroactive"]


def test_the_umbrella_pays_above_what_lies_below_it(pay: Pay) -> None:
    lines = [{**LIABILITY, "deductible": 1000}, line("umbrella", 500_000)]
    done = pay(lines, INJURY, {"compensatory": 1_700_000})
    assert payers(done) == {"policy": 1_000_000, "umbrella": 500_000}
    assert reasons(done) == {"over-limit": 199_000, "deductible": 1000}


def test_one_umbrella_lies_over_several_coverages_but_only_those_it_names(pay: Pay) -> None:
    below = [LIABILITY, line("non-owned-vehicle", 1_000_000)]
    named = line("umbrella", 500_000, attaches_to=["non-owned-vehicle"])
    amounts = {"compensatory": 1_200_000}
    for cause, by_cause, by_name in (
        (INJURY, 200_000, 0), ("non-owned-vehicle", 200_000, 200_000)
    ):  # fmt: skip
        done = pay([*below, line("umbrella", 500_000)], cause, amounts)
        assert payers(done).get("umbrella", 0) == by_cause
        assert payers(pay([*below, named], cause, amounts)).get("umbrella", 0) == by_name


def test_the_umbrella_covers_nothing_that_is_not_covered_below(pay: Pay) -> None:
    lines = [{**LIABILITY, "damages": []}, line("umbrella", 500_000)]
    done = pay(lines, INJURY, {"compensatory": 1, "punitive": 100})
    assert reasons(done) == {"damages-excluded": 100}


def test_the_umbrella_may_leave_out_damages_and_causes_of_its_own(pay: Pay) -> None:
    below = {**LIABILITY, "limit": 10, "damages": ["punitive"]}
    amounts = {"compensatory": 100, "punitive": 100}
    assert payers(pay([below, line("umbrella", 500)], INJURY, amounts))["umbrella"] == 190
    no_damages = line("umbrella", 500, damages=[])
    assert payers(pay([below, no_damages], INJURY, amounts))["umbrella"] == 90
    no_cause = line("umbrella", 500, excluded_causes=[INJURY])
    assert "umbrella" not in payers(pay([below, no_cause], INJURY, amounts))


def test_the_umbrella_has_a_yearly_maximum_too(pay: Pay) -> None:
    lines = [{**LIABILITY, "limit": 10}, line("umbrella", 500, aggregate=60)]
    done = pay(lines, INJURY, {"compensatory": 100})
    assert payers(done) == {"umbrella": 60, "policy": 10}
    assert reasons(done) == {"over-limit": 30}
    yearly = [{**LIABILITY, "limit": 10}, line("umbrella", 50, limit_basis="aggregate")]
    assert payers(pay(yearly, INJURY, {"compensatory": 100}))["umbrella"] == 50


def test_what_a_yearly_maximum_leaves_open_the_umbrella_pays_too(pay: Pay) -> None:
    lines = [{**LIABILITY, "aggregate": 600_000}, line("umbrella", 500_000)]
    done = pay(lines, INJURY, {"compensatory": 1_000_000})
    assert payers(done) == {"policy": 600_000, "umbrella": 400_000}


def test_the_yearly_maximum_of_the_whole_limit_counts_for_its_parts(pay: Pay) -> None:
    lines = [
        {**HALL, "aggregate": 30_000},
        line("by-laws", 50_000, sublimit_of="building", aggregate=20_000),
    ]
    done = pay(lines, "fire", {"by-laws": 40_000, "building": 40_000}, place="hall")
    assert [part.paid.amount for part in done.parts] == [20_000, 10_000]


def test_a_yearly_limit_is_the_lesser_of_both_where_both_are_given(pay: Pay) -> None:
    for aggregate, paid in ((None, 500), (300, 300), (900, 500)):
        cyber = line("cyber-own-losses", 500, aggregate=aggregate)  # by the library: a year's limit
        done = pay([cyber], "cyber-incident", {"cyber-own-losses": 1000})
        assert done.paid.money.amount == paid
        assert set(reasons(done)) == {"over-aggregate"}


def test_therapy_and_medical_costs_have_lines_of_their_own(pay: Pay) -> None:
    lines = [line("abuse-therapy", 50), line("medical-payments", 30), LIABILITY]
    assert pay(lines, "abuse-allegation", {"therapy": 80}).paid.money.amount == 50
    assert pay(lines, INJURY, {"medical": 80}).paid.money.amount == 30


def test_amounts_beyond_a_cent_are_rounded_half_up_once_and_all_adds_up(pay: Pay) -> None:
    """Two thirds of 100.01 and of 0.02: 66.6733… + 0.0133… = 66.6866… paid.

    The cent that rounding the parts down would lose goes to the larger of two equal remainders.
    """
    clause = {"limit": 200, "coinsurance": "1"}
    lines = [
        {"coverage": "building", "location": "hall", **clause},
        {"coverage": "contents", "location": "hall", **clause},
    ]
    values = Values({(c, "hall"): Decimal(300) for c in ("building", "contents")})
    amounts = {"building": "100.01", "contents": "0.02"}
    done = pay(lines, "fire", amounts, values, place="hall")
    assert (done.paid.money.amount, done.borne.money.amount) == (Decimal("66.69"), Decimal("33.34"))
    assert [part.paid.amount for part in done.parts] == [Decimal("66.68"), Decimal("0.01")]
    assert reasons(done) == {"coinsurance": Decimal("33.34")}


def test_half_a_cent_is_paid(pay: Pay) -> None:
    lines = [{"coverage": "building", "location": "hall", "limit": 100, "coinsurance": "1"}]
    values = Values({("building", "hall"): Decimal(200)})
    done = pay(lines, "fire", {"building": "0.01"}, values, place="hall")
    assert done.paid.money.amount == Decimal("0.01")
    assert done.borne.money.amount == 0


@pytest.mark.parametrize(
    ("fields", "caution"),
    [
        ({"basis": "functional"}, "settling-caution-functional"),
        ({"qualified": False}, "settling-caution-qualified"),
        ({}, None),
    ],
)
def test_what_is_taken_for_granted_is_said(
    pay: Pay, fields: dict[str, Any], caution: str | None
) -> None:
    done = pay([{**HALL, **fields}], "fire", {"building": 1}, place="hall")
    assert [w.id for w in done.cautions] == ([caution] if caution else [])


def test_one_value_under_a_blanket_that_nobody_knows_is_enough_to_say_so(pay: Pay) -> None:
    lines = [{**HALL, "location": place, "blanket": "all", "coinsurance": "0.5"} for place in "ab"]
    worth = {("building", place): Decimal(500_000) for place in "ab"}
    values = Values(worth, assumed=frozenset({("building", "b")}))
    done = pay(lines, "fire", {"building": 1}, values, place="a")
    assert [w.id for w in done.cautions] == ["settling-caution-value"]
    assert not pay(lines, "fire", {"building": 1}, Values(worth), place="a").cautions


def test_steps_tell_why_coinsurance_takes_nothing(pay: Pay) -> None:
    values = Values({("building", "hall"): Decimal(1_000_000)})
    for fields, told in (
        ({"coinsurance": "0.5"}, "enough"),
        ({"coinsurance": "0.9", "agreed_value_until": date(2027, 6, 2)}, "agreed"),
        ({"coinsurance": "0.5", "agreed_value_until": DAY}, "enough"),
        ({"coinsurance": "0.9", "coinsurance_waived_up_to": 100}, "small"),
        ({"coinsurance": "0.5", "coinsurance_waived_up_to": 99}, "enough"),
    ):
        done = pay([{**HALL, **fields}], "fire", {"building": 100}, values, place="hall")
        assert done.steps[0].id == f"settling-step-coinsurance-{told}"
        assert done.borne.money.amount == 0


@pytest.mark.parametrize(("lost", "told"), [(99, "-in-part"), (100, ""), (101, "")])
def test_a_step_tells_when_a_deductible_takes_only_a_part_of_itself(
    pay: Pay, lost: int, told: str
) -> None:
    done = pay([{**HALL, "deductible": 100}], "fire", {"building": lost}, place="hall")
    assert done.steps[0].id == f"settling-step-deductible{told}"
    assert done.borne.money.amount == min(lost, 100)


def test_functional_replacement_is_of_property_alone(pay: Pay) -> None:
    lines = [{**LIABILITY, "basis": "functional", "defence": "outside"}]
    done = pay(lines, INJURY, {"defence": 100})
    assert not done.cautions


def test_what_is_paid_without_any_clause_is_said_too(pay: Pay) -> None:
    done = pay([{**LIABILITY, "defence": "outside"}], INJURY, {"defence": 100})
    assert [w.id for w in done.parts[0].steps] == ["settling-step-in-full"]
