"""Why a premium moved: exact to the cent, whatever the order, and mirrored when turned round."""

from __future__ import annotations

import random
from collections.abc import Callable
from dataclasses import replace
from datetime import date
from decimal import Decimal
from fractions import Fraction
from itertools import permutations
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from quarterday.core.file.records import Terms
from quarterday.core.money import MoneyError
from quarterday.core.premium.split import (
    EFFECTS,
    ChargedLine,
    ChargedTax,
    Split,
    between,
    split,
    two_factor,
)
from quarterday.core.premium.table import table
from quarterday.core.reference import Reference

Make = Callable[..., Terms]
HALL = ("building", "hall", "premium")


def line(key: tuple[str, str, str], amount: str, exposure: str | None = None) -> ChargedLine:
    return ChargedLine(key, Decimal(amount), Decimal(exposure) if exposure else None)


def cell(coverage: str, location: str, amount: str, **fields: Any) -> dict[str, Any]:
    return {"coverage": coverage, "location": location, "amount": Decimal(amount), **fields}


def effects(found: Split) -> dict[str, Decimal]:
    return {effect: value for effect, value in found.effects.items() if value}


def test_the_two_factor_split_is_the_mean_over_both_orders_of_change() -> None:
    """Shapley's value by its definition: average the marginal change over every order."""
    e0, r0, e1, r1 = Fraction(100), Fraction(3, 1000), Fraction(130), Fraction(5, 1000)
    owed = {"e": Fraction(0), "r": Fraction(0)}
    for order in permutations("er"):
        now, value = {"e": e0, "r": r0}, e0 * r0
        for factor in order:
            now[factor] = {"e": e1, "r": r1}[factor]
            owed[factor] += (now["e"] * now["r"] - value) / 2
            value = now["e"] * now["r"]
    assert two_factor(e0, r0, e1, r1) == (owed["e"], owed["r"])


def test_a_rated_line_is_split_between_its_exposure_and_its_rate() -> None:
    """1,000,000 at 0.2 % to 1,200,000 at 0.25 %: 200,000 × 0.225 %, then 1,100,000 × 0.05 %."""
    found = split([line(HALL, "2000", "1000000")], [line(HALL, "3000", "1200000")])
    assert effects(found) == {"exposure": Decimal("450.00"), "rate": Decimal("550.00")}


def test_without_tax_only_the_lines_count() -> None:
    found = split([line(HALL, "100")], [line(HALL, "130")])
    assert (found.before, found.after, found.change) == (Decimal(100), Decimal(130), Decimal(30))


def test_only_the_exposure_moved() -> None:
    found = split([line(HALL, "2000", "1000000")], [line(HALL, "2200", "1100000")])
    assert effects(found) == {"exposure": Decimal("200.00")}


@pytest.mark.parametrize(
    ("old", "new"), [(None, None), ("1000000", None), (None, "1000000"), ("0", "5")]
)
def test_a_line_without_an_exposure_on_both_sides_moved_by_its_rate(
    old: str | None, new: str | None
) -> None:
    before = ChargedLine(HALL, Decimal(100), Decimal(old) if old else None)
    after = ChargedLine(HALL, Decimal(130), Decimal(new) if new else None)
    assert effects(split([before], [after])) == {"rate": Decimal("30.00")}


def test_added_dropped_adjustments_and_fees_stand_on_their_own() -> None:
    before = [
        line(HALL, "100"),
        line(("building", "hall", "discount"), "-20"),
        line(("*", "*", "fee"), "10"),
    ]
    after = [
        line(("contents", "hall", "premium"), "70"),
        line(("building", "hall", "surcharge"), "5"),
        line(("*", "*", "fee"), "12"),
    ]
    assert effects(split(before, after)) == {
        "added": Decimal(70),
        "dropped": Decimal(-100),
        "adjustment": Decimal(25),
        "fee": Decimal(2),
    }


def test_the_tax_is_split_between_its_base_and_its_rate() -> None:
    """Quebec 2026 to 2027 on 4,000 to 4,400: 360.00 to 438.90; 400 × mean 9.4875 % = 37.95."""
    before = ChargedTax(Decimal("360.00"), Decimal(4000), Decimal("0.09"))
    after = ChargedTax(Decimal("438.90"), Decimal(4400), Decimal("0.09975"))
    found = split([line(HALL, "4000")], [line(HALL, "4400")], before, after)
    assert effects(found) == {
        "rate": Decimal(400), "tax-base": Decimal("37.95"), "tax-rate": Decimal("40.95"),
    }  # fmt: skip


def test_a_rate_that_stayed_never_shows_a_cent_of_its_own() -> None:
    """The tax's rounding belongs to the base when only the base moved."""
    before = ChargedTax(Decimal("0.08"), Decimal("1.04"), Decimal("0.08"))
    after = ChargedTax(Decimal("0.09"), Decimal("1.07"), Decimal("0.08"))
    found = split([line(HALL, "1.04")], [line(HALL, "1.07")], before, after)
    assert found.effects["tax-rate"] == 0
    assert found.effects["tax-base"] == Decimal("0.01")


def test_lines_of_the_same_key_are_taken_together() -> None:
    before = [line(HALL, "60", "600"), line(HALL, "40", "400")]
    assert effects(split(before, [line(HALL, "200", "2000")])) == {"exposure": Decimal(100)}


def test_a_same_key_line_without_exposure_makes_the_whole_unrated() -> None:
    before = [line(HALL, "60", "600"), line(HALL, "40")]
    assert effects(split(before, [line(HALL, "200", "2000")])) == {"rate": Decimal(100)}


def test_nothing_moved_means_no_effects() -> None:
    lines = [line(HALL, "2000", "1000000"), line(("*", "*", "fee"), "10")]
    assert effects(split(lines, lines)) == {}


def test_two_versions_of_terms_are_split_with_their_provinces_tax(
    terms: Make, canada: Reference
) -> None:
    before = terms((cell("building", "hall", "4000"),), start=date(2025, 12, 1))
    after = terms((cell("building", "hall", "4400"),), start=date(2027, 1, 15))
    found = between(before, after, "QC", canada)
    assert (found.before, found.after) == (Decimal("4360.00"), Decimal("4838.90"))
    assert found.effects["tax-rate"] == Decimal("40.95")
    assert found.after == table(after, "QC", canada).total.amount


def test_terms_of_two_currencies_are_not_compared(terms: Make, canada: Reference) -> None:
    with pytest.raises(MoneyError, match="cannot be compared"):
        between(terms(), terms(currency="USD"), "ON", canada)


cents = st.integers(-2_000_000, 9_000_000).map(lambda n: Decimal(n).scaleb(-2))
exposures = st.none() | st.integers(1, 10**8).map(lambda n: Decimal(n).scaleb(-2))
keys = st.tuples(
    st.sampled_from(["building", "contents", "building-annex"]),
    st.sampled_from(["hall", "camp", "*"]),
    st.sampled_from(["premium", "flat", "surcharge", "discount", "fee"]),
)
lines = st.lists(
    st.builds(ChargedLine, keys, cents, exposures), max_size=10, unique_by=lambda c: c.key
)
rates = st.sampled_from([Decimal(0), Decimal("0.08"), Decimal("0.09"), Decimal("0.09975")])


def taxed(some: list[ChargedLine], rate: Decimal) -> ChargedTax:
    base = sum((one.amount for one in some), Decimal(0))
    return ChargedTax((base * rate).quantize(Decimal("0.01")), base, rate)


@given(lines, lines, rates, rates)
def test_the_effects_sum_to_the_change_in_every_line_and_in_total(
    before: list[ChargedLine], after: list[ChargedLine], t0: Decimal, t1: Decimal
) -> None:
    tax0, tax1 = taxed(before, t0), taxed(after, t1)
    found = split(before, after, tax0, tax1)
    whole = sum(a.amount for a in after) + tax1.amount - sum(b.amount for b in before) - tax0.amount
    assert found.change == whole == sum(found.effects.values())
    for part in found.lines:
        assert sum(part.effects.values()) == part.after - part.before
    for effect in EFFECTS:
        assert found.effects[effect] == sum(p.effects.get(effect, 0) for p in found.lines)


@given(lines, lines, rates, st.randoms(use_true_random=False))
def test_the_order_of_the_lines_does_not_matter(
    before: list[ChargedLine], after: list[ChargedLine], rate: Decimal, luck: random.Random
) -> None:
    tax0, tax1 = taxed(before, rate), taxed(after, rate)
    mixed = luck.sample(before, len(before)), luck.sample(after, len(after))
    assert split(*mixed, tax0, tax1) == split(before, after, tax0, tax1)


@given(lines, lines, rates, rates)
def test_turning_before_and_after_round_turns_every_effect_round(
    before: list[ChargedLine], after: list[ChargedLine], t0: Decimal, t1: Decimal
) -> None:
    tax0, tax1 = taxed(before, t0), taxed(after, t1)
    forth, back = split(before, after, tax0, tax1), split(after, before, tax1, tax0)
    other = {"added": "dropped", "dropped": "added"}
    for effect, value in forth.effects.items():
        assert back.effects[other.get(effect, effect)] == -value  # type: ignore[index]


@given(lines, st.data())
def test_each_shown_effect_is_within_a_cent_of_its_exact_value_and_so_is_its_sum(
    before: list[ChargedLine], data: st.DataObject
) -> None:
    before = [
        replace(one, key=(*one.key[:2], "premium"), exposure=one.exposure or Decimal(7))
        for one in before
    ]
    before = list({one.key: one for one in before}.values())
    after = [
        replace(one, amount=data.draw(cents), exposure=data.draw(exposures) or Decimal(3))
        for one in before
    ]
    exact = {
        b.key: two_factor(
            Fraction(b.exposure or 0), Fraction(b.amount) / Fraction(b.exposure or 1),
            Fraction(a.exposure or 0), Fraction(a.amount) / Fraction(a.exposure or 1),
        )[0]
        for b, a in zip(before, after, strict=True)
    }  # fmt: skip
    found = split(before, after)
    for part in found.lines[:-1]:
        assert abs(Fraction(part.effects.get("exposure", Decimal(0))) - exact[part.key]) < Fraction(
            1, 100
        )
    whole = sum(exact.values(), Fraction(0))
    assert abs(Fraction(found.effects["exposure"]) - whole) <= Fraction(1, 200)
