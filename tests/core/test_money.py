"""Money is exact: no binary floats, no mixed currencies, and rounding only where asked."""

from __future__ import annotations

from collections.abc import Callable
from decimal import ROUND_HALF_UP, Decimal
from fractions import Fraction
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from quarterday.core.money import Money, MoneyError, exact, round_to, total

AMOUNTS = st.decimals(-(10**12), 10**12, places=4)
MONEY = AMOUNTS.map(Money)


@pytest.mark.parametrize("value", [1.0, 0.1, float("nan"), True, False, None, b"1", 1j])
def test_only_exact_numbers_are_money(value: object) -> None:
    with pytest.raises(MoneyError):
        exact(value)  # type: ignore[arg-type]
    with pytest.raises(MoneyError):
        Money(value)  # type: ignore[arg-type]


@pytest.mark.parametrize("value", ["NaN", "Infinity", "-Infinity", "sNaN"])
def test_what_is_not_finite_is_no_money(value: str) -> None:
    with pytest.raises(MoneyError, match="finite"):
        exact(value)


def test_texts_and_whole_numbers_are_exact() -> None:
    assert exact("0.10") == Decimal("0.1")
    assert Money(5).amount == Decimal(5)  # type: ignore[arg-type] # taken as the Decimal it is
    assert Money(Decimal("0.1")) + Money(Decimal("0.2")) == Money(Decimal("0.3"))


def test_the_currency_is_canadian_dollars_unless_it_is_said() -> None:
    """ISO 4217: CAD."""
    assert Money(Decimal(1)).currency == "CAD"


@pytest.mark.parametrize("other", [Money(Decimal(1), "USD"), Decimal(1), 1, 1.0, "1", None])
@pytest.mark.parametrize("act", ["+", "-", "<", "<=", ">", ">=", "ratio"])
def test_money_meets_only_money_of_its_own_currency(act: str, other: Any) -> None:
    acts: dict[str, Callable[[Money, Any], object]] = {
        "+": Money.__add__, "-": Money.__sub__, "<": Money.__lt__, "<=": Money.__le__,
        ">": Money.__gt__, ">=": Money.__ge__, "ratio": Money.ratio,
    }  # fmt: skip
    with pytest.raises(MoneyError):
        acts[act](Money(Decimal(1)), other)


@pytest.mark.parametrize("factor", [0.5, True, Money(Decimal(2)), None])
def test_money_is_multiplied_and_divided_by_exact_numbers_only(factor: object) -> None:
    with pytest.raises(MoneyError):
        Money(Decimal(1)) * factor  # type: ignore[operator]
    with pytest.raises(MoneyError):
        Money(Decimal(1)) / factor  # type: ignore[operator]


def test_money_of_two_currencies_is_never_equal() -> None:
    assert Money(Decimal(1), "CAD") != Money(Decimal(1), "USD")
    assert Money(Decimal("1.0")) == Money(Decimal("1.00"))
    assert len({Money(Decimal("1.0")), Money(Decimal("1.00"))}) == 1


@given(MONEY, MONEY, MONEY)
def test_adding_obeys_the_laws_of_arithmetic(a: Money, b: Money, c: Money) -> None:
    assert a + b == b + a
    assert (a + b) + c == a + (b + c)
    assert a - b == a + -b
    assert a - a == Money(Decimal(0))


@given(MONEY, MONEY)
def test_money_is_ordered_as_its_amounts_are(a: Money, b: Money) -> None:
    pairs = [(a < b, a.amount < b.amount), (a <= b, a.amount <= b.amount)]
    pairs += [(a > b, a.amount > b.amount), (a >= b, a.amount >= b.amount)]
    assert all(one == other for one, other in pairs)
    assert abs(a) >= Money(Decimal(0))
    assert bool(a) == (a.amount != 0)


@given(AMOUNTS, st.integers(-1000, 1000))
def test_multiplying_agrees_with_exact_fractions(amount: Decimal, factor: int) -> None:
    """By the standard library's fractions, which know no rounding."""
    expected = Fraction(amount) * factor
    assert Fraction((Money(amount) * factor).amount) == expected
    assert Fraction((factor * Money(amount)).amount) == expected


def test_dividing_and_ratios_are_not_rounded() -> None:
    assert Money(Decimal(1)) / 8 == Money(Decimal("0.125"))
    assert Money(Decimal(3)).ratio(Money(Decimal(8))) == Decimal("0.375")


@pytest.mark.parametrize(
    ("amount", "unit", "rounded"),
    [
        ("2.345", "0.01", "2.35"),
        ("2.344999", "0.01", "2.34"),
        ("-2.345", "0.01", "-2.35"),  # half-up goes away from zero, as Python's decimal has it
        ("0.005", "0.01", "0.01"),
        ("12.5", "1", "13"),
        ("-12.5", "1", "-13"),
        ("1249.99", "500", "1000"),
        ("1250", "500", "1500"),
        ("0.125", "0.05", "0.15"),
    ],
)
def test_rounding_is_half_up_to_a_multiple_of_the_unit(
    amount: str, unit: str, rounded: str
) -> None:
    assert round_to(Decimal(amount), Decimal(unit)) == Decimal(rounded)
    assert Money(Decimal(amount)).rounded(Decimal(unit)) == Money(Decimal(rounded))


@given(AMOUNTS)
def test_rounding_to_the_cent_is_that_of_the_standard_library(amount: Decimal) -> None:
    assert round_to(amount) == amount.quantize(Decimal("0.01"), rounding=ROUND_HALF_UP)


@given(AMOUNTS, st.sampled_from(["0.01", "0.05", "1", "100", "500"]).map(Decimal))
def test_rounding_moves_by_half_a_unit_at_most_and_rests_there(
    amount: Decimal, unit: Decimal
) -> None:
    rounded = round_to(amount, unit)
    assert abs(rounded - amount) <= unit / 2
    assert rounded % unit == 0
    assert round_to(rounded, unit) == rounded


@given(st.lists(MONEY, max_size=20))
def test_a_total_is_the_exact_sum_in_any_order(amounts: list[Money]) -> None:
    assert Fraction(total(amounts).amount) == sum(Fraction(m.amount) for m in amounts)
    assert total(reversed(amounts)) == total(amounts)


def test_the_total_of_nothing_is_zero_of_the_currency_asked_for() -> None:
    assert total([]) == Money(Decimal(0))
    assert total([], "USD") == Money(Decimal(0), "USD")
    assert total([Money(Decimal(1), "USD")]) == Money(Decimal(1), "USD")
    with pytest.raises(MoneyError):
        total([Money(Decimal(1)), Money(Decimal(1), "USD")])


def test_money_cannot_be_changed() -> None:
    with pytest.raises(AttributeError):
        Money(Decimal(1)).amount = Decimal(2)  # type: ignore[misc]


@pytest.mark.parametrize(
    ("amount", "said"),
    [
        ("940070", "940000"),
        ("56349", "56300"),
        ("999500", "1000000"),
        ("12.34", "12.3"),
        ("0", "0"),
    ],
)
def test_an_estimate_is_said_to_three_leading_digits(amount: str, said: str) -> None:
    assert Money(Decimal(amount)).about() == Money(Decimal(said))
