"""Why a premium moved, as figures: every effect shows its lines, and all of it adds up."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date
from decimal import Decimal
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from quarterday.catalogue.speech import Speech
from quarterday.core.figure import Figure, walk
from quarterday.core.file.records import Terms
from quarterday.core.money import Money, total
from quarterday.core.premium.explain import PremiumChange, explained
from quarterday.core.premium.table import table
from quarterday.core.reference import Reference

Make = Callable[..., Terms]
YEAR_BEFORE = date(2025, 12, 1)


def cell(coverage: str, location: str, amount: str, **fields: Any) -> dict[str, Any]:
    return {"coverage": coverage, "location": location, "amount": Decimal(amount), **fields}


def cad(amount: str) -> Money:
    return Money(Decimal(amount))


def effect(change: PremiumChange, name: str) -> Figure:
    return next(e for e in change.effects if e.id.endswith(f"/{name}"))


@pytest.fixture
def parish(terms: Make, canada: Reference) -> PremiumChange:
    """A parish in Ontario whose hall was revalued, whose rate rose, and that took flood cover.

    Hall 1,000,000 at 0.2 % to 1,200,000 at 0.25 %; glass 40 taken out; flood 210 added; a fee of
    20 to 25. Before 2,040 + 20 + tax 163.20; after 3,210 + 25 + tax 256.80 (8 %).
    """
    before = terms(
        (
            cell("building", "hall", "2000", exposure=Decimal(1_000_000)),
            cell("glass", "hall", "40"),
            cell("*", "*", "20", kind="fee"),
        ),
        start=YEAR_BEFORE,
    )
    after = terms((
        cell("building", "hall", "3000", exposure=Decimal(1_200_000)),
        cell("overland-flood", "hall", "210"),
        cell("*", "*", "25", kind="fee"),
    ))  # fmt: skip
    change = explained(before, after, "ON", canada)
    assert change is not None
    return change


def test_before_after_change_and_share_are_those_of_the_whole_bill(parish: PremiumChange) -> None:
    assert (parish.before, parish.after) == (cad("2223.20"), cad("3491.80"))
    assert parish.change == cad("1268.60")
    assert parish.share == Decimal("1268.60") / Decimal("2223.20")
    assert [figure.money for figure in parish.figures[:3]] == [
        parish.before, parish.after, parish.change,
    ]  # fmt: skip


def test_the_effects_come_largest_first(parish: PremiumChange) -> None:
    found = [(e.id.rsplit("/", 1)[-1], e.money) for e in parish.effects]
    assert found == [
        ("rate", cad("550")),
        ("exposure", cad("450")),
        ("added", cad("210")),
        ("tax-base", cad("93.60")),
        ("dropped", cad("-40")),
        ("fee", cad("5")),
    ]


def test_the_main_effect_is_the_largest_in_the_direction_of_the_change(
    parish: PremiumChange, terms: Make, canada: Reference
) -> None:
    assert parish.main.id.endswith("/rate")
    cheaper = explained(
        terms((cell("glass", "*", "500"), cell("building", "*", "300")), start=YEAR_BEFORE),
        terms((cell("building", "*", "700"),)),
        "NS",
        canada,
    )
    assert cheaper is not None
    assert (cheaper.change, cheaper.main.money) == (cad("-100"), cad("-500"))


def test_an_effect_shows_the_lines_it_comes_from_with_before_and_after(
    parish: PremiumChange, canada: Reference
) -> None:
    (hall,) = effect(parish, "rate").inputs
    said = Speech(canada, "en").parts(hall)
    assert said.label == "Building (hall)"
    assert (said.value, said.how) == (
        "$550",
        "This line of the premium table was $2,000 and is now $3,000.",
    )


def test_the_effect_of_tax_shows_both_taxes_with_their_rates(parish: PremiumChange) -> None:
    old, new = effect(parish, "tax-base").inputs
    assert (old.value, new.value) == (cad("163.20"), cad("256.80"))
    assert {node.id for _, node in walk(old)} >= {"tax.ON"}


def test_nothing_before_cannot_be_compared(terms: Make, canada: Reference) -> None:
    free = terms((cell("building", "hall", "0"),), start=YEAR_BEFORE)
    assert explained(free, terms((cell("building", "hall", "9"),)), "ON", canada) is None


def test_an_unchanged_premium_has_no_effects(terms: Make, canada: Reference) -> None:
    same = (cell("building", "hall", "900"),)
    change = explained(terms(same, start=YEAR_BEFORE), terms(same), "ON", canada)
    assert change is not None
    assert (change.effects, change.share) == ((), Decimal(0))


cells = st.lists(
    st.fixed_dictionaries({
        "coverage": st.sampled_from(["building", "contents", "non-owned-vehicle", "*"]),
        "location": st.sampled_from(["hall", "camp", "*"]),
        "kind": st.sampled_from(["premium", "flat", "surcharge", "discount", "fee"]),
        "amount": st.integers(0, 900_000).map(lambda n: Decimal(n).scaleb(-2)),
        "exposure": st.none() | st.integers(1, 10**7).map(Decimal),
    }),
    min_size=1,
    max_size=9,
)  # fmt: skip
provinces = st.sampled_from(["ON", "QC", "NL", "MB", "SK", "NB", "AB", "NU"])


@given(cells, cells, provinces)
def test_the_figures_add_up_to_the_cent_at_every_level(
    terms: Make, canada: Reference, old: list[Any], new: list[Any], province: str
) -> None:
    before, after = terms(tuple(old), start=YEAR_BEFORE), terms(tuple(new), start=date(2027, 2, 1))
    change = explained(before, after, province, canada)
    if change is None:
        assert table(before, province, canada).total <= cad("0")
        return
    assert total(e.money for e in change.effects) == change.change
    for one in change.effects:
        if "/tax-" not in one.id:
            lines = [node.money for node in one.inputs if isinstance(node, Figure)]
            assert total(lines) == one.money
    ids = [node.id for node in change.effects]
    assert len(set(ids)) == len(ids)
