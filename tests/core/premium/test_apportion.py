"""An amount is divided by the largest remainder, exactly."""

from __future__ import annotations

from decimal import Decimal
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from quarterday.core.premium.apportion import CannotApportion, apportion, rounded_to

ONE = Decimal(1)
# The fifteen states of the United States' first census with their populations and the seats that
# Hamilton's method gives of 60 (electowiki.org, article "Hamilton method").
POPULATIONS = {
    "VA": 630_560, "MA": 475_327, "PA": 432_879, "NC": 353_523, "NY": 331_589, "MD": 278_514,
    "CT": 236_841, "SC": 206_236, "NJ": 179_570, "NH": 141_822, "VT": 85_533, "GA": 70_835,
    "KY": 68_705, "RI": 68_446, "DE": 55_540,
}  # fmt: skip
SEATS = [11, 8, 7, 6, 6, 5, 4, 3, 3, 2, 1, 1, 1, 1, 1]

names = st.text("abcdefgh", min_size=1, max_size=3)
weights = st.dictionaries(
    names, st.decimals(0, 10**6, places=3, allow_nan=False), min_size=1, max_size=12
).filter(lambda w: any(w.values()))
cents = st.integers(-(10**9), 10**9).map(lambda n: Decimal(n).scaleb(-2))


def _seats(populations: dict[str, int]) -> dict[str, Decimal]:
    return apportion(Decimal(60), {k: Decimal(v) for k, v in populations.items()}, ONE)


def test_the_house_of_1790_gets_the_published_seats() -> None:
    assert list(_seats(POPULATIONS).values()) == [Decimal(n) for n in SEATS]


def test_the_order_in_which_the_weights_are_given_does_not_matter() -> None:
    backwards = dict(reversed(POPULATIONS.items()))
    assert _seats(backwards) == _seats(POPULATIONS)


def test_three_equal_parts_of_a_dollar_give_the_odd_cent_to_the_first_name() -> None:
    """The rule for ties is our own: the larger part, then the name that sorts first."""
    parts = apportion(ONE, {"c": ONE, "a": ONE, "b": ONE})
    assert parts == {"c": Decimal("0.33"), "a": Decimal("0.34"), "b": Decimal("0.33")}


def test_between_equal_remainders_the_larger_part_is_rounded_up() -> None:
    """Shares 0.5 and 1.5 of 2 lose a half each; the cent goes to the larger one."""
    parts = apportion(Decimal(2), {"a": ONE, "z": Decimal(3)}, ONE)
    assert parts == {"a": Decimal(0), "z": Decimal(2)}


def test_a_part_without_weight_gets_nothing() -> None:
    parts = apportion(Decimal("0.01"), {"a": Decimal(0), "b": Decimal(7)})
    assert parts == {"a": Decimal(0), "b": Decimal("0.01")}


def test_a_tie_in_what_is_owed_falls_as_it_does_in_what_is_owing() -> None:
    half = {"b": Fraction(1, 2), "a": Fraction(1, 2)}
    owed = {name: -part for name, part in half.items()}
    assert rounded_to(half, ONE, ONE) == {"a": Decimal(1), "b": Decimal(0)}
    assert rounded_to(owed, -ONE, ONE) == {"a": Decimal(-1), "b": Decimal(0)}


def test_another_unit_divides_in_whole_units() -> None:
    parts = apportion(Decimal(100), {"a": ONE, "b": ONE, "c": ONE}, Decimal(5))
    assert parts == {"a": Decimal(35), "b": Decimal(35), "c": Decimal(30)}


@pytest.mark.parametrize(
    ("total", "given_weights", "unit", "says"),
    [
        (ONE, {"a": Decimal(0), "b": Decimal(0)}, ONE, "apportion-no-weight"),
        (ONE, {}, ONE, "apportion-no-weight"),
        (ONE, {"a": ONE, "b": Decimal(-1)}, ONE, "apportion-negative"),
        (Decimal("0.005"), {"a": ONE}, Decimal("0.01"), "apportion-not-whole"),
        (ONE, {"a": ONE}, Decimal(0), "apportion-unit"),
    ],
)
def test_what_cannot_be_divided_is_refused_in_a_sentence(
    total: Decimal, given_weights: dict[str, Decimal], unit: Decimal, says: str
) -> None:
    with pytest.raises(CannotApportion, match=says):
        apportion(total, given_weights, unit)


def test_parts_that_cannot_be_rounded_to_the_amount_are_refused() -> None:
    with pytest.raises(CannotApportion, match="apportion-wrong-sum"):
        rounded_to({"a": Fraction(1), "b": Fraction(2)}, Decimal(4), ONE)


@given(cents, weights)
def test_the_parts_sum_to_the_amount_and_each_is_within_a_cent_of_its_share(
    total: Decimal, given_weights: dict[str, Decimal]
) -> None:
    parts = apportion(total, given_weights)
    whole = sum(map(Fraction, given_weights.values()))
    assert sum(parts.values()) == total
    for name, part in parts.items():
        exact = Fraction(total) * Fraction(given_weights[name]) / whole
        assert abs(Fraction(part) - exact) < Fraction(1, 100)


@given(cents, weights)
def test_a_refund_divides_as_the_charge_did(
    total: Decimal, given_weights: dict[str, Decimal]
) -> None:
    charge, refund = apportion(total, given_weights), apportion(-total, given_weights)
    assert {name: -part for name, part in refund.items()} == charge


@given(st.dictionaries(names, st.fractions(-100, 100, max_denominator=997), min_size=1, max_size=9))
def test_signed_parts_round_to_their_sum_and_turn_round_with_their_signs(
    exact: dict[str, Fraction],
) -> None:
    total = Decimal(round(sum(exact.values())))
    parts = rounded_to(exact, total, ONE)
    mirrored = rounded_to({name: -part for name, part in exact.items()}, -total, ONE)
    assert sum(parts.values()) == total
    assert all(abs(Fraction(parts[name]) - exact[name]) < 1 for name in exact)
    assert mirrored == {name: -part for name, part in parts.items()}
