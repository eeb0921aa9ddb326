"""Amounts, numbers, ratios and whole numbers, as people and spreadsheets write them.

How Canadians write amounts in each language (spaces and a comma in French, commas and a point in
English, the sign after or before) is as Babel's CLDR data for fr_CA and en_CA has it: the tests
format with Babel and read the text back.
"""

from __future__ import annotations

import struct
from datetime import date
from decimal import Decimal

import pytest
from babel.numbers import format_currency, format_decimal
from hypothesis import given
from hypothesis import strategies as st

from quarterday.core.file.layout import CellKind
from quarterday.intake.cells.base import BadCell, Readings, Said, Value
from quarterday.intake.cells.numbers import NumberReader, from_float
from quarterday.intake.parse import CellError, Raw

CENTS = st.decimals(min_value=-(10**9), max_value=10**9, places=2)


def read(
    raw: Raw,
    kind: CellKind = "amount",
    others: tuple[Raw, ...] = (),
    language: str = "",
    field: str = "limit",
) -> Value:
    return NumberReader(kind, field, (raw, *others), language, Readings())(raw)


def refusal(
    raw: Raw,
    kind: CellKind = "amount",
    others: tuple[Raw, ...] = (),
    language: str = "",
    field: str = "limit",
) -> BadCell:
    with pytest.raises(BadCell) as caught:
        read(raw, kind, others, language, field)
    return caught.value


@pytest.mark.parametrize(
    ("text", "amount"),
    [
        ("1 234 567,00 $", "1234567.00"),
        ("1\u00a0234\u00a0567,00\u00a0$", "1234567.00"),
        ("1\u202f234\u202f567,50 $", "1234567.50"),
        ("$1,234,567.00", "1234567.00"),
        ("$ 1,234,567", "1234567"),
        ("(500)", "-500"),
        ("($1,234.56)", "-1234.56"),
        ("500-", "-500"),
        ("−12,50 $", "-12.50"),
        ("1'234'567.00", "1234567.00"),
        ("1’234.50", "1234.50"),
        ("2500 CAD", "2500"),
        ("C$ 10.50", "10.50"),
        ("10,5 $ CA", "10.5"),
        ("+75", "75"),
        (".5", "0.5"),
        ("0", "0"),
        ("1.234.567,89", "1234567.89"),
        ("12 dollars", "12"),
    ],
)
def test_an_amount_is_read_however_it_is_written(text: str, amount: str) -> None:
    assert read(text) == Decimal(amount)


@given(CENTS)
def test_what_babel_writes_in_french_is_read_back(amount: Decimal) -> None:
    text = format_currency(amount, "CAD", locale="fr_CA")
    assert read(text, language="fr") == amount


@given(CENTS)
def test_what_babel_writes_in_english_is_read_back(amount: Decimal) -> None:
    text = format_currency(amount, "CAD", locale="en_CA")
    assert read(text, language="en") == amount


@given(st.decimals(min_value=0, max_value=10**9, places=1))
def test_numbers_are_read_as_either_language_groups_them(number: Decimal) -> None:
    for language in ("en", "fr"):
        text = format_decimal(number, locale=f"{language}_CA", format="#,##0.0")
        assert read(text, "number", language=language) == number


def test_one_group_of_three_is_read_as_the_column_has_it() -> None:
    assert read("1,234", others=("12.50",)) == Decimal(1234)
    assert read("1.234", others=("1 000,50",)) == Decimal(1234)
    assert read("1,234", "number", others=("0,5",)) == Decimal("1.234")


def test_one_group_of_three_is_read_as_its_dollar_sign_stands() -> None:
    assert read("$1,234") == Decimal(1234)
    assert read("1.234 $") == Decimal(1234)
    assert read("$1,234", others=("12,50", "12.50")) == Decimal(1234)


def test_one_group_of_three_is_read_in_the_language_of_the_sheet() -> None:
    assert read("1,234", language="en") == Decimal(1234)
    assert read("1.234", language="fr") == Decimal(1234)
    assert read("1,234", "number", language="fr") == Decimal("1.234")


@pytest.mark.parametrize(
    ("others", "language"),
    [((), ""), (("12.50", "12,50"), "en"), (("12,50",), ""), ((), "fr")],
)
def test_what_could_be_two_amounts_is_refused_with_both(
    others: tuple[str, ...], language: str
) -> None:
    """Money has no thousandths: 250,000 in a French column is never taken for 250 dollars."""
    refused = refusal("250,000", others=others, language=language)
    assert refused.what.id == "intake-two-readings"
    assert dict(refused.what.args) == {"smaller": Decimal("250.000"), "larger": Decimal(250_000)}


@pytest.mark.parametrize(
    ("text", "id"),
    [
        ("about 500", "not-a-number"),
        ("1,23,456", "not-a-number"),
        ("12.345.67", "not-a-number"),
        ("500k", "not-a-number"),
        ("--", None),
        ("US$500", "other-currency"),
        ("500 €", "other-currency"),
        ("12 %", "percent-here"),
        ("1000000000000", "trillion"),
        ("12,345.678", "fraction-of-cent"),
    ],
)
def test_what_is_no_amount_is_refused_and_says_why(text: str, id: str | None) -> None:
    if id is None:
        assert read(text) is Said.UNKNOWN
    else:
        assert refusal(text).what.id == f"intake-{id}"


@pytest.mark.parametrize("amount", [10**15, 1e15, 1e12, -1e12])
def test_an_amount_of_a_trillion_or_more_is_refused(amount: float) -> None:
    assert refusal(amount).what.id == "intake-trillion"


def test_a_spreadsheets_number_is_exact_to_what_it_shows() -> None:
    """Fifteen significant digits are exact in a double (IEEE 754, Table 3.1: 53 bits)."""
    assert from_float(0.1 + 0.2) == Decimal("0.3")
    assert from_float(1234.56) == Decimal("1234.56")
    assert from_float(1234567.8900000001) == Decimal("1234567.89")
    assert from_float(999999999999.99) == Decimal("999999999999.99")


@given(st.decimals(min_value=-(10**12) + 1, max_value=10**12 - 1, places=2))
def test_every_amount_survives_a_spreadsheets_eight_bytes(amount: Decimal) -> None:
    stored = struct.unpack("<d", struct.pack("<d", float(amount)))[0]
    assert from_float(stored) == amount


def test_a_number_that_is_not_finite_is_refused() -> None:
    assert refusal(float("nan")).what.id == "intake-not-a-number"
    assert refusal(float("inf")).what.id == "intake-not-a-number"


def test_fractions_of_a_cent_are_refused_in_amounts_and_kept_in_numbers() -> None:
    assert refusal(12.345).what.id == "intake-fraction-of-cent"
    assert read(12.345, "number") == Decimal("12.345")


@pytest.mark.parametrize("blank", ["", "   ", "\u00a0", "\u200b"])
def test_a_blank_cell_says_nothing(blank: str) -> None:
    assert read(blank) is Said.BLANK


@pytest.mark.parametrize("unknown", ["N/A", "n/d", "N/D", "-", "–", "?", "inconnu", "s/o", "TBD"])
def test_not_known_is_said_in_both_languages(unknown: str) -> None:
    assert read(unknown) is Said.UNKNOWN


@pytest.mark.parametrize("why", ["error-cell", "uncalculated", "merged-number"])
def test_an_error_cell_is_never_read_as_blank(why: str) -> None:
    refused = refusal(CellError("#REF!", why))  # type: ignore[arg-type]
    assert refused.what.id == f"intake-{why}"


@pytest.mark.parametrize(
    ("raw", "ratio"),
    [
        ("12,5 %", "0.125"),
        ("80%", "0.8"),
        ("0,9", "0.9"),
        (0.9, "0.9"),
        (1, "1"),
        ("2.5 %", "0.025"),
    ],
)
def test_a_ratio_is_read_from_a_share_or_a_percentage(raw: Raw, ratio: str) -> None:
    assert read(raw, "ratio", field="coinsurance") == Decimal(ratio)


def test_bare_percentages_are_told_by_the_column() -> None:
    assert read(90, "ratio", (80, 100), field="coinsurance") == Decimal("0.9")
    assert read("90", "ratio", ("80",), field="coinsurance") == Decimal("0.9")
    assert read(1, "ratio", (2, 5), field="deductible_percent") == Decimal("0.01")


def test_a_column_that_mixes_shares_and_percentages_is_refused_with_both() -> None:
    refused = refusal(0.9, "ratio", (80,), field="coinsurance")
    assert refused.what.id == "intake-two-ratios"
    assert dict(refused.what.args) == {"ratio": Decimal("90.0"), "percent": Decimal("0.9")}


def test_a_margin_above_one_is_a_share_of_the_scheduled_value() -> None:
    assert read(1.15, "ratio", field="margin") == Decimal("1.15")
    assert read(115, "ratio", field="margin") == Decimal("1.15")


@pytest.mark.parametrize(("raw", "whole"), [("1 200", 1200), (12.0, 12), ("12.0", 12), (0, 0)])
def test_a_whole_number_is_read(raw: Raw, whole: int) -> None:
    value = read(raw, "integer")
    assert value == whole
    assert isinstance(value, int)


@pytest.mark.parametrize("raw", [2.5, "2,5", "1/2"])
def test_what_is_not_whole_is_refused(raw: Raw) -> None:
    assert refusal(raw, "integer").what.id in {"intake-not-whole", "intake-not-a-number"}


def test_the_year_of_a_date_is_taken_where_a_year_belongs() -> None:
    assert read(date(1958, 1, 1), "integer", field="year_built") == 1958
    assert (
        refusal(date(1958, 1, 1), "integer", field="employees").what.id == "intake-date-for-number"
    )


def test_true_is_no_number() -> None:
    assert refusal(True).what.id == "intake-not-a-number"
