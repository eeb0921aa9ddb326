"""A premium is borne by who the key says, and rows and columns both add up."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date
from decimal import Decimal
from fractions import Fraction
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from quarterday.catalogue.speech import Speech
from quarterday.core.file.records import AllocationKey, Terms
from quarterday.core.given import Unusable
from quarterday.core.premium.allocation import (
    FEES,
    ROUNDING,
    TAX,
    Allocation,
    allocate,
    key_lines,
    key_names,
    shares,
)
from quarterday.core.premium.table import table
from quarterday.core.reference import Reference
from quarterday.core.review.case import Case

Make = Callable[..., Terms]
START_OF_NEXT = date(2027, 12, 1)


def line(party: str, measure: str | None = None, **fields: Any) -> AllocationKey:
    return AllocationKey.model_validate(
        {"name": "ministries", "party": party, "measure": measure, **fields}
    )


def cell(amount: str, coverage: str = "building", location: str = "*", **more: Any) -> Any:
    return {"amount": amount, "coverage": coverage, "location": location, **more}


EVEN = (line("a", "1"), line("b", "1"))


def test_fixed_shares_divide_everything(canada: Reference, terms: Make) -> None:
    done = allocate(terms((cell("100"),)), "NS", canada, [line("a", "60"), line("b", "40")])
    assert done.totals == {"a": 60, "b": 40}


def test_who_stands_in_a_building_bears_it_and_the_rest_goes_by_the_rest(
    canada: Reference, terms: Make
) -> None:
    offer = terms((cell("700", location="church"), cell("300", location="hall"), cell("90")))
    key = [
        line("worship", location="church", by="location"),
        line("youth", "260", location="hall", by="area"),
        line("supper", "40", location="hall", by="area"),
        line("worship", "2"),
        line("youth", "1"),
    ]
    done = allocate(offer, "NS", canada, key)
    assert done.totals == {"worship": 760, "youth": 290, "supper": 40}
    assert done.by_location.cells["hall", "youth"] == 260
    assert done.by_coverage.rows() == {"building": 1090}


def test_a_family_can_go_by_heads_and_another_by_revenue(canada: Reference, terms: Make) -> None:
    offer = terms((cell("120", "general-liability"), cell("80", "money-inside"), cell("50")))
    key = [
        line("a", "100", family="liability", by="headcount"),
        line("b", "20", family="liability", by="headcount"),
        line("a", "1000", family="crime", by="revenue"),
        line("b", "3000", family="crime", by="revenue"),
        line("b", "1"),
    ]
    done = allocate(offer, "NS", canada, key)
    assert done.by_coverage.cells["general-liability", "a"] == 100
    assert done.by_coverage.cells["money-inside", "b"] == 60
    assert done.totals == {"a": 120, "b": 130}


def test_the_closest_part_of_the_key_counts(canada: Reference, terms: Make) -> None:
    offer = terms((cell("1", location="hall"), cell("2", "sewer-backup", "hall"), cell("4")))
    key = [
        line("everything", "1"),
        line("property", "1", family="property"),
        line("hall", location="hall", by="location"),
    ]
    assert allocate(offer, "NS", canada, key).totals == {"everything": 0, "property": 4, "hall": 3}
    key.append(line("its property", "1", location="hall", family="property"))
    assert allocate(offer, "NS", canada, key).totals["its property"] == 3


def test_a_mix_divides_one_part_half_by_area_and_half_by_heads() -> None:
    mix = [
        line("a", "300", by="area", portion="0.5"),
        line("b", "100", by="area", portion="0.5"),
        line("a", "10", by="headcount", portion="0.5"),
        line("b", "30", by="headcount", portion="0.5"),
    ]
    assert shares(mix) == {"a": Fraction(1, 2), "b": Fraction(1, 2)}


def test_tax_follows_what_is_taxed_and_fees_the_whole_premium(
    canada: Reference, terms: Make
) -> None:
    """Ontario exempts automobile insurance: who bears only that bears no tax."""
    offer = terms((cell("100"), cell("100", "non-owned-vehicle"), cell("30", "*", kind="fee")))
    key = [line("drivers", "1", family="vehicles"), line("building", "1")]
    done = allocate(offer, "ON", canada, key)
    assert done.by_coverage.cells[TAX, "drivers"] == 0
    assert done.by_coverage.cells[TAX, "building"] == 8
    assert done.by_coverage.cells[FEES, "drivers"] == done.by_coverage.cells[FEES, "building"] == 15
    assert TAX in done.by_location.rows()


def test_discounts_lower_what_everybody_bears(canada: Reference, terms: Make) -> None:
    offer = terms((cell("100"), cell("10", kind="discount")))
    assert allocate(offer, "NS", canada, EVEN).totals == {"a": 45, "b": 45}


def test_a_fund_is_that_of_the_key_else_the_party(canada: Reference, terms: Make) -> None:
    done = allocate(terms((cell("2"),)), "NS", canada, [line("a", "1", fund="General"), EVEN[1]])
    assert done.funds == {"a": "General", "b": "b"}


def exact(done: Allocation) -> None:
    assert done.by_coverage.columns() == done.by_location.columns()
    assert done.by_coverage.total == done.by_location.total


@settings(max_examples=150, deadline=None)
@given(
    st.lists(
        st.tuples(
            st.integers(-3000, 900_000),
            st.sampled_from(["building", "contents", "general-liability", "non-owned-vehicle"]),
            st.sampled_from(["church", "hall", "*"]),
        ),
        min_size=1, max_size=9,
    ),
    st.lists(st.integers(1, 500), min_size=1, max_size=5),
    st.integers(0, 9999),
)  # fmt: skip
def test_rows_and_columns_add_up_and_every_coverage_comes_out_as_charged(
    canada: Reference, terms: Make, cells: list[tuple[int, str, str]], areas: list[int], fee: int
) -> None:
    told = [cell(str(Decimal(c) / 100), what, where) for c, what, where in cells]
    offer = terms((*told, cell("50000", "building"), cell(str(fee), "*", kind="fee")))
    key = [line(f"p{n}", str(area), by="area") for n, area in enumerate(areas)]
    key += [line("only", location="hall", by="location")]
    done, summed = allocate(offer, "ON", canada, key), table(offer, "ON", canada)
    exact(done)
    assert done.by_coverage.total == summed.total.amount
    rows = done.by_coverage.rows()
    assert {id: rows[id] for id in summed.rows} == {i: m.amount for i, m in summed.rows.items()}
    assert rows.get(TAX, Decimal(0)) == summed.tax.tax.money.amount
    places = done.by_location.rows()
    assert {p: places[p] for p in summed.columns} == {
        p: m.amount for p, m in summed.columns.items()
    }
    half = Fraction(summed.rows["building"].amount) - _at_hall(offer)
    share = Fraction(areas[0], sum(areas))
    assert abs(Fraction(done.by_coverage.cells["building", "p0"]) - half * share) < Fraction(1, 100)


def _at_hall(offer: Terms) -> Fraction:
    return sum(
        (Fraction(p.amount) for p in offer.premiums if (p.coverage, p.location) ==
         ("building", "hall")), Fraction(0)
    )  # fmt: skip


@pytest.mark.parametrize(
    ("key", "which"),
    [
        ([line("a", location="hall", by="location")], "left-over"),
        ([line("a", by="area")], "measure"),
        ([line("a", "0"), line("b", "0")], "nothing"),
        ([line("a", "1"), line("a", "1", by="area")], "portion"),
        (
            [line("a", "1", portion="0.5"), line("b", "1", by="area", portion="0.4")],
            "portions",
        ),
        ([line("a", "1", portion="0.5"), line("b", "1", portion="0.4"),
          line("b", "1", by="area", portion="0.5")], "portion"),
    ],
)  # fmt: skip
@pytest.mark.parametrize("language", ["en", "fr"])
def test_a_key_that_cannot_divide_is_refused_in_a_sentence(
    canada: Reference, terms: Make, key: list[AllocationKey], which: str, language: str
) -> None:
    with pytest.raises(Unusable) as refused:
        allocate(terms((cell("100"),)), "ON", canada, key)
    assert refused.value.words.id == f"allocation-{which}"
    assert "ministries" in Speech(canada, language).say(refused.value.words)


def test_a_premium_of_nothing_cannot_divide_a_fee(canada: Reference, terms: Make) -> None:
    offer = terms((cell("0"), cell("5", "*", kind="fee")))
    with pytest.raises(Unusable) as refused:
        allocate(offer, "NS", canada, EVEN)
    assert refused.value.words.id == "allocation-no-premium"


def test_keys_are_kept_on_the_file_and_found_by_name(case_of: Callable[..., Case]) -> None:
    file = case_of(*EVEN, line("c", "1").model_copy(update={"name": "funds"})).file
    assert key_names(file) == ("funds", "ministries")
    assert {kept.party for kept in key_lines(file, "ministries")} == {"a", "b"}


@pytest.mark.parametrize("kept", [(), EVEN])
def test_a_key_that_is_not_there_is_refused_with_those_that_are(
    case_of: Callable[..., Case], canada: Reference, kept: tuple[AllocationKey, ...]
) -> None:
    with pytest.raises(Unusable) as refused:
        key_lines(case_of(*kept).file, "funds")
    said = Speech(canada, "en").say(refused.value.words)
    assert '"funds"' in said
    assert ("ministries" in said) == bool(kept)


def test_two_lines_for_one_party_and_part_are_one_record() -> None:
    assert line("a", "1").key == line("a", "2").key == "ministries/*/*/share/a"
    assert line("a", "1", family="crime").key != line("a", "1").key


def test_cents_that_only_the_places_would_round_otherwise_are_shown_as_rounding(
    canada: Reference, terms: Make
) -> None:
    """Both tables have the same columns; whatever the second must move stands in its own row."""
    cells = [cell("0.01", what, where) for what in ("building", "contents", "glass")
             for where in ("church", "hall")]  # fmt: skip
    key = [line(party, "1") for party in "abcd"]
    done = allocate(terms(cells), "NS", canada, key)
    exact(done)
    moved = {c: a for c, a in done.by_location.cells.items() if c[0] == ROUNDING}
    assert sum(moved.values(), Decimal(0)) == 0
    assert all(abs(amount) <= Decimal("0.01") for amount in moved.values())


def test_the_same_key_divides_next_years_premium(canada: Reference, terms: Make) -> None:
    this, following = terms((cell("100"),)), terms((cell("250"),), start=START_OF_NEXT)
    key = [line("a", "3", by="area"), line("b", "1", by="area")]
    assert allocate(this, "NS", canada, key).totals == {"a": 75, "b": 25}
    assert allocate(following, "NS", canada, key).totals == {"a": Decimal("187.50"),
                                                             "b": Decimal("62.50")}  # fmt: skip


def test_the_order_of_the_lines_changes_nobodys_part(canada: Reference, terms: Make) -> None:
    offer = terms((cell("100.01"), cell("33.33", "glass"), cell("10.10", "contents", "hall")))
    key = [line("a", "1"), line("b", "1"), line("c", "1"), line("d", "1", location="hall")]
    there = allocate(offer, "ON", canada, key)
    back = allocate(offer, "ON", canada, key[::-1])
    assert there.by_coverage.cells == back.by_coverage.cells
    assert there.totals == back.totals


def test_fees_fall_on_who_bears_the_premium_even_where_nothing_is_taxed(
    canada: Reference, terms: Make
) -> None:
    offer = terms((cell("30", "non-owned-vehicle"), cell("9", "*", kind="fee")))
    done = allocate(offer, "ON", canada, [line("a", "2"), line("b", "1")])
    assert done.totals == {"a": 26, "b": 13}
    assert TAX not in done.by_coverage.rows()
