"""The premium table adds up, and a table that does not is caught with both figures."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date
from decimal import Decimal
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from quarterday.core.file.records import Terms
from quarterday.core.money import CENT, Money, round_to
from quarterday.core.premium.table import PremiumTable, coverage_name, faults, signed, table
from quarterday.core.reference import Reference
from quarterday.core.words import Term

Make = Callable[..., Terms]
Cells = tuple[dict[str, Any], ...]


def cell(coverage: str, location: str, amount: str, **fields: Any) -> dict[str, Any]:
    return {"coverage": coverage, "location": location, "amount": Decimal(amount), **fields}


def stated(of: str, amount: str | Decimal, id: str = "*") -> dict[str, Any]:
    return {"of": of, "id": id, "amount": Decimal(amount)}


def cad(amount: str) -> Money:
    return Money(Decimal(amount))


PARISH: Cells = (
    cell("building", "hall", "2000.00", exposure=Decimal(1_000_000), rate=Decimal("0.002")),
    cell("building", "rectory", "600.00", exposure=Decimal(300_000), rate=Decimal("0.002")),
    cell("contents", "hall", "300.00"),
    cell("general-liability", "*", "500.00", kind="flat"),
    cell("building", "hall", "150.00", kind="surcharge", reason="flat roof"),
    cell("contents", "hall", "50.00", kind="discount", reason="alarm"),
    cell("general-liability", "*", "25.00", kind="fee"),
)
# Row building 2,750, row contents 250, row liability 500; column hall 2,400, rectory 600; subtotal
# 3,500; Ontario's 8 % of it 280; fee 25; total 3,805.
PARISH_TOTALS = (
    stated("coverage", "2750.00", "building"),
    stated("coverage", "250.00", "contents"),
    stated("location", "2400.00", "hall"),
    stated("location", "600.00", "rectory"),
    stated("subtotal", "3500.00"),
    stated("tax", "280.00"),
    stated("total", "3805.00"),
)


def with_total(of: str, amount: str, id: str = "*") -> Cells:
    """Return the parish's printed totals with one of them printed wrong."""
    return tuple(
        stated(of, amount, id) if (t["of"], t["id"]) == (of, id) else t for t in PARISH_TOTALS
    )


def test_the_table_adds_up_rows_columns_fees_tax_and_total(terms: Make, canada: Reference) -> None:
    found: PremiumTable = table(terms(PARISH), "ON", canada)
    assert found.cells["building", "hall"] == cad("2150.00")
    assert found.rows == {
        "building": cad("2750"), "contents": cad("250"), "general-liability": cad("500"),
    }  # fmt: skip
    assert found.columns == {"hall": cad("2400"), "rectory": cad("600"), "*": cad("500")}
    assert (found.subtotal, found.fees) == (cad("3500"), cad("25"))
    assert (found.tax.tax.money, found.total) == (cad("280"), cad("3805"))


def test_a_table_that_adds_up_has_no_fault(terms: Make, canada: Reference) -> None:
    assert faults(terms(PARISH, totals=PARISH_TOTALS), "ON", canada) == ()


@pytest.mark.parametrize(
    ("of", "id", "printed", "right"),
    [
        ("coverage", "building", "2760.00", "2750.00"),
        ("location", "hall", "2399.99", "2400.00"),
        ("subtotal", "*", "3450.00", "3500.00"),
    ],
)
def test_a_wrong_sum_is_found_with_both_figures_and_its_cells(
    terms: Make, canada: Reference, of: str, id: str, printed: str, right: str
) -> None:
    found = faults(terms(PARISH, totals=with_total(of, printed, id)), "ON", canada)
    assert [(f.of, f.stated, f.computed.money) for f in found] == [(of, cad(printed), cad(right))]
    assert sum(signed(part) for part in found[0].parts) == Decimal(right)


def test_a_cell_that_is_not_exposure_times_rate_is_found(terms: Make, canada: Reference) -> None:
    wrong = (
        cell("building", "hall", "2100.00", exposure=Decimal(1_000_000), rate=Decimal("0.002")),
    )
    (fault,) = faults(terms(wrong), "ON", canada)
    assert (fault.of, fault.coverage, fault.location) == ("cell", "building", "hall")
    assert (fault.stated, fault.computed.money) == (cad("2100.00"), cad("2000.00"))
    assert fault.difference == cad("100.00")


@pytest.mark.parametrize(
    ("printed", "count"), [("101.00", 0), ("100.00", 0), ("99.00", 1), ("102.00", 1)]
)
def test_a_cell_may_be_rounded_up_or_down_as_the_table_rounds(
    terms: Make, canada: Reference, printed: str, count: int
) -> None:
    """100.50 in a table of whole dollars may be printed as 100 or as 101."""
    half = (cell("building", "hall", printed, exposure=Decimal(50_250), rate=Decimal("0.002")),)
    assert len(faults(terms(half, rounding=Decimal(1)), "ON", canada)) == count


def test_a_table_said_to_round_to_nothing_rounds_to_the_cent(
    terms: Make, canada: Reference
) -> None:
    offer = terms(PARISH, totals=PARISH_TOTALS, rounding=Decimal(0))
    assert faults(offer, "ON", canada) == ()


def test_a_wrong_tax_is_one_fault_and_does_not_make_the_total_wrong_too(
    terms: Make, canada: Reference
) -> None:
    """8 % charged to a parish in Saskatchewan, where the rate is 6 % (PST-73)."""
    (fault,) = faults(terms(PARISH, totals=PARISH_TOTALS), "SK", canada)
    assert (fault.of, fault.stated, fault.computed.money) == ("tax", cad("280"), cad("210"))


def test_tax_rounded_line_by_line_is_no_fault_but_a_cent_more_is(
    terms: Make, canada: Reference
) -> None:
    """Three lines of 10.06 at 8 %: 0.80 or 0.81 each, 2.41 together; half a cent a line is left."""
    lines = tuple(cell("building", place, "10.06") for place in ("a", "b", "c"))
    assert not faults(terms(lines, totals=(stated("tax", "2.40"),)), "ON", canada)
    assert faults(terms(lines, totals=(stated("tax", "2.39"),)), "ON", canada)


@pytest.mark.parametrize(
    ("printed", "count"), [("315", 0), ("349.13", 0), ("330", 0), ("300", 1), ("360", 1)]
)
def test_a_quebec_policy_paid_partly_in_2027_may_bear_anything_between_both_rates(
    terms: Make, canada: Reference, printed: str, count: int
) -> None:
    """3,500 paid in 2026 bears 9 %, paid in 2027 9.975 % (Bill 99): 315.00 to 349.13."""
    offer = terms(PARISH, totals=(stated("tax", printed),))
    assert len(faults(offer, "QC", canada)) == count


def test_a_quebec_policy_of_2027_bears_the_new_rate_only(terms: Make, canada: Reference) -> None:
    offer = terms(PARISH, start=date(2027, 1, 15), totals=(stated("tax", "315"),))
    (fault,) = faults(offer, "QC", canada)
    assert fault.computed.money == cad("349.13")


def test_a_wrong_total_is_found_by_the_tax_as_printed(terms: Make, canada: Reference) -> None:
    (fault,) = faults(terms(PARISH, totals=with_total("total", "3850.00")), "ON", canada)
    assert (fault.of, fault.computed.money) == ("total", cad("3805.00"))


@pytest.mark.parametrize(("printed", "count"), [("3805", 0), ("3525", 0), ("3600", 1)])
def test_without_a_printed_tax_the_total_may_be_with_or_without_it(
    terms: Make, canada: Reference, printed: str, count: int
) -> None:
    offer = terms(PARISH, totals=(stated("total", printed),))
    assert len(faults(offer, "ON", canada)) == count


def test_where_no_rate_is_known_for_the_day_the_tax_is_not_judged(
    terms: Make, canada: Reference
) -> None:
    old = terms(PARISH, start=date(2005, 1, 1), totals=(stated("tax", "1.00"),))
    assert faults(old, "ON", canada) == ()


def test_tax_in_a_province_without_one_is_a_fault(terms: Make, canada: Reference) -> None:
    (fault,) = faults(terms(PARISH, totals=(stated("tax", "280"),)), "NS", canada)
    assert fault.computed.money == cad("0")


def test_totals_without_any_cell_are_not_judged(terms: Make, canada: Reference) -> None:
    assert faults(terms((), totals=PARISH_TOTALS), "ON", canada) == ()


@pytest.mark.parametrize("typed", ["50.00", "-50.00"])
def test_a_discount_lowers_the_premium_whichever_sign_was_typed(
    terms: Make, canada: Reference, typed: str
) -> None:
    cells = (cell("building", "hall", "200"), cell("building", "hall", typed, kind="discount"))
    assert table(terms(cells), "NS", canada).total == cad("150")


def test_a_coverage_has_its_name_the_whole_policy_its_words_and_an_unknown_id_itself(
    canada: Reference,
) -> None:
    assert coverage_name(canada, "building") == Term("coverage", "building")
    assert getattr(coverage_name(canada, "*"), "id", "") == "money-whole-policy"
    assert coverage_name(canada, "bell-tower") == "bell-tower"


coverages = st.sampled_from(["building", "contents", "general-liability", "non-owned-vehicle"])
places = st.sampled_from(["hall", "rectory", "camp", "*"])
kinds = st.sampled_from(["premium", "flat", "surcharge", "discount", "fee"])
amounts = st.integers(0, 5_000_000).map(lambda n: Decimal(n).scaleb(-2))
rated = st.builds(
    lambda exposure, rate: {
        "exposure": exposure,
        "rate": rate,
        "amount": round_to(exposure * rate),
    },
    st.integers(1, 10**7).map(Decimal),
    st.integers(1, 900).map(lambda n: Decimal(n).scaleb(-5)),
)
charged = st.one_of(
    rated.map(lambda fields: {**fields, "kind": "premium"}),
    st.builds(lambda kind, amount: {"kind": kind, "amount": amount}, kinds, amounts),
)
cells = st.lists(
    st.builds(lambda c, p, f: {"coverage": c, "location": p, **f}, coverages, places, charged),
    min_size=1, max_size=12,
).filter(lambda some: any(c["kind"] != "fee" for c in some))  # fmt: skip
provinces = st.sampled_from(["ON", "QC", "NL", "MB", "SK", "NS", "AB"])


def consistent(make: Make, rows: list[dict[str, Any]], province: str, canada: Reference) -> Terms:
    """Return terms whose printed totals are those of their own cells, summed here by hand."""
    offer = make(tuple(rows))
    sign = {"discount": -1}
    value = [(r, r["amount"] * sign.get(r["kind"], 1)) for r in rows]
    inside = [(r, v) for r, v in value if r["kind"] != "fee"]
    by = {of: {r[of] for r, _ in inside} for of in ("coverage", "location")}
    totals = [
        stated(of, sum((v for r, v in inside if r[of] == id), Decimal(0)), id)
        for of in ("coverage", "location")
        for id in by[of]
    ]
    tax = table(offer, province, canada).tax.tax.money.amount
    subtotal = sum((v for _, v in inside), Decimal(0))
    totals += [stated("subtotal", subtotal), stated("tax", tax)]
    totals += [stated("total", sum((v for _, v in value), tax))]
    return make(tuple(rows), totals=tuple(totals))


@given(cells, provinces)
def test_a_consistent_table_never_has_a_fault(
    terms: Make, canada: Reference, rows: list[dict[str, Any]], province: str
) -> None:
    assert faults(consistent(terms, rows, province, canada), province, canada) == ()


@given(cells, provinces, st.data(), st.integers(1, 10**6))
def test_a_printed_sum_that_is_off_is_always_found_and_nothing_else_is(
    terms: Make, canada: Reference, rows: list[dict[str, Any]], province: str, data: st.DataObject,
    cents: int,
) -> None:  # fmt: skip
    right = consistent(terms, rows, province, canada)
    off = data.draw(st.sampled_from([t for t in right.totals if t.of != "tax"]))
    wrong = off.model_copy(update={"amount": off.amount + cents * CENT})
    totals = tuple(wrong if t is off else t for t in right.totals)
    found = faults(right.model_copy(update={"totals": totals}), province, canada)
    assert [(f.of, f.difference.amount) for f in found] == [(off.of, cents * CENT)]
