"""A journal written as CSV reads back as it was, and no spreadsheet runs what stands in it."""

from __future__ import annotations

import csv
import io
from datetime import date
from decimal import Decimal

import pytest

from quarterday.catalogue.load import reference
from quarterday.catalogue.speech import Speech
from quarterday.core.dates import Period
from quarterday.core.premium.prepaid import Due, journal, spread
from quarterday.office.journal import journal_csv

YEAR = Period(date(2027, 1, 15), date(2028, 1, 15))


def written(funds: dict[str, Decimal], language: str = "en") -> list[dict[str, str]]:
    lines = journal(funds, spread(funds, YEAR), [Due(YEAR.start, sum(funds.values(), Decimal(0)))])
    text = journal_csv(lines, Speech(reference(), language))
    return list(csv.DictReader(io.StringIO(text, newline="")))


def test_debits_equal_credits_and_each_line_has_one_side() -> None:
    rows = written({"General": Decimal("123.45"), "Youth": Decimal("0.07")})
    assert set(rows[0]) == {"date", "account", "fund", "debit", "credit", "memo"}
    assert all(bool(row["debit"]) != bool(row["credit"]) for row in rows)
    sides = [sum(Decimal(row[side] or 0) for row in rows) for side in ("debit", "credit")]
    assert sides[0] == sides[1] == 3 * Decimal("123.52")  # owed, paid, used up


def test_days_are_iso_and_the_months_end_on_their_last_day() -> None:
    days = {row["date"] for row in written({"": Decimal(365)}) if "expense" in row["account"]}
    assert {"2027-01-31", "2027-02-28", "2028-01-14"} <= days
    assert len(days) == 13


@pytest.mark.parametrize("fund", ["=1+1", "@cmd", "+44", "-1", "\t=1", '=HYPERLINK("x")'])
def test_a_fund_that_looks_like_a_formula_is_marked_as_text(fund: str) -> None:
    rows = written({fund: Decimal(10)})
    assert {row["fund"] for row in rows} == {"'" + fund.strip()}


def test_a_french_journal_has_french_headings_and_accounts() -> None:
    rows = written({"Œuvres": Decimal(10)}, "fr")
    assert set(rows[0]) == {"date", "compte", "fonds", "débit", "crédit", "libellé"}
    assert {row["fonds"] for row in rows} == {"Œuvres"}
    assert "Banque" in {row["compte"] for row in rows}
