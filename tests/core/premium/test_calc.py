"""The calculations on their own give the published rows, and refuse what they cannot use."""

from __future__ import annotations

from decimal import Decimal
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from quarterday.catalogue.speech import Speech
from quarterday.core.given import Unusable
from quarterday.core.premium.calc import apportion, tax
from quarterday.core.reference import Reference


def asked(province: str, amount: str, day: str = "2026-10-01", **line: Any) -> dict[str, Any]:
    return {
        "province": province,
        "date": day,
        "lines": [{"family": "property", "amount": amount, **line}],
    }


@pytest.mark.parametrize(
    ("province", "amount", "day", "expected", "whole"),
    [
        # Rates as cited in the shipped reference data; the cents are arithmetic on them.
        ("ON", "12345.67", "2026-10-01", "987.65", "13333.32"),
        ("QC", "12345.67", "2026-10-01", "1111.11", "13456.78"),
        ("NL", "12345.67", "2026-10-01", "1851.85", "14197.52"),
        # insurancebusinessmag.com: 39 dollars more a year on 4,000.
        ("QC", "4000", "2026-12-31", "360.00", "4360.00"),
        ("QC", "4000", "2027-01-01", "399.00", "4399.00"),
        ("NS", "4000", "2027-01-01", "0.00", "4000.00"),
        ("on", "100", "2026-10-01", "8.00", "108.00"),
    ],
)
def test_the_tax_comes_out_as_text_to_the_cent(
    canada: Reference, province: str, amount: str, day: str, expected: str, whole: str
) -> None:
    done = tax(asked(province, amount, day), canada)
    assert (done["tax"], done["total"]) == (expected, whole)


def test_each_line_says_whether_it_is_taxed_and_the_rate_is_text(canada: Reference) -> None:
    """Ontario exempts automobile insurance (Ministry of Finance, 2013)."""
    inputs = asked("ON", "100")
    inputs["lines"].append({"family": "vehicles", "amount": 50})
    done = tax(inputs, canada)
    assert done["lines"] == [
        {"family": "property", "amount": "100.00", "taxed": True},
        {"family": "vehicles", "amount": "50.00", "taxed": False},
    ]
    assert (done["rate"], done["base"], done["tax"]) == ("0.08", "100.00", "8.00")
    assert done["total"] == "158.00"


@pytest.mark.parametrize("language", ["en", "fr"])
def test_the_steps_can_be_said_and_a_straddling_payment_is_warned_of(
    canada: Reference, language: str
) -> None:
    steps = tax(asked("QC", "4000", "2026-12-01"), canada)["steps"]
    assert [step.id for step in steps] == [
        "money-tax-base-how", "money-tax-how", "money-tax-later", "calc-tax-total",
    ]  # fmt: skip
    assert all(map(Speech(canada, language).say, steps))


@pytest.mark.parametrize(
    ("inputs", "wording"),
    [
        (asked("ZZ", "1"), "calc-no-province"),
        (asked("ON", "1", "1999-01-01"), "calc-tax-not-known"),
        (asked("ON", "1", rate="0.08"), "given-unknown"),
        ({**asked("ON", "1"), "fees": "1"}, "given-unknown-of"),
        ({"province": "ON", "lines": []}, "given-missing-of"),
        ({"province": "ON", "date": "2026-10-01", "lines": []}, "given-wrong"),
        (asked("ON", "much"), "given-number"),
        ({**asked("ON", "1"), "lines": [{"family": "roof", "amount": "1"}]}, "given-choice"),
    ],
)
def test_inputs_that_cannot_be_taxed_are_refused(
    canada: Reference, inputs: dict[str, Any], wording: str
) -> None:
    with pytest.raises(Unusable) as refused:
        tax(inputs, canada)
    assert refused.value.words.id == wording
    assert Speech(canada, "fr").say(refused.value.words)


def test_apportioning_seats_gives_the_published_house(canada: Reference) -> None:
    """Hamilton's method with 60 seats, its three largest and two smallest states (electowiki.org).

    The full table is checked beside the function itself.
    """
    weights = {
        "VA": 630_560, "MA": 475_327, "PA": 432_879, "NC": 353_523, "NY": 331_589, "MD": 278_514,
        "CT": 236_841, "SC": 206_236, "NJ": 179_570, "NH": 141_822, "VT": 85_533, "GA": 70_835,
        "KY": 68_705, "RI": 68_446, "DE": 55_540,
    }  # fmt: skip
    parts = apportion({"total": 60, "weights": weights, "unit": "1"}, canada)["parts"]
    assert [parts[name] for name in ("VA", "MA", "PA", "RI", "DE")] == ["11", "8", "7", "1", "1"]


def test_parts_have_the_decimals_of_their_unit(canada: Reference) -> None:
    done = apportion({"total": "100", "weights": {"a": 1, "b": 1, "c": "1"}}, canada)
    assert done["parts"] == {"a": "33.34", "b": "33.33", "c": "33.33"}
    tens = apportion({"total": "100", "weights": {"a": 1, "b": 1}, "unit": "10"}, canada)
    assert tens["parts"] == {"a": "50", "b": "50"}


@pytest.mark.parametrize(
    ("inputs", "wording"),
    [
        ({"total": "1", "weights": {}}, "apportion-no-weight"),
        ({"total": "1", "weights": {"a": "0"}}, "apportion-no-weight"),
        ({"total": "1", "weights": {"a": "-1", "b": "2"}}, "apportion-negative"),
        ({"total": "0.001", "weights": {"a": 1}}, "apportion-not-whole"),
        ({"total": "1", "weights": {"a": 1}, "unit": "-1"}, "apportion-unit"),
        ({"total": "1", "weights": {"a": 1}, "ways": 2}, "given-unknown-of"),
        ({"weights": {"a": 1}}, "given-missing-of"),
        ({"total": "1", "weights": [1]}, "given-wrong"),
        ({"total": "1", "weights": {"a": "x"}}, "given-number"),
    ],
)
def test_inputs_that_cannot_be_apportioned_are_refused(
    canada: Reference, inputs: dict[str, Any], wording: str
) -> None:
    with pytest.raises(Unusable) as refused:
        apportion(inputs, canada)
    assert refused.value.words.id == wording
    assert Speech(canada, "en").say(refused.value.words)


@given(
    st.integers(-(10**9), 10**9),
    st.dictionaries(st.text("abc", min_size=1, max_size=3), st.integers(1, 10**6), min_size=1),
)
def test_the_parts_as_text_sum_to_the_total(
    canada: Reference, cents: int, weights: dict[str, int]
) -> None:
    total = Decimal(cents).scaleb(-2)
    parts = apportion({"total": str(total), "weights": weights}, canada)["parts"]
    assert sum(map(Decimal, parts.values())) == total
