"""The command ``premium`` shows a file's premium and writes its journal."""

from __future__ import annotations

import csv
import json
from decimal import Decimal
from pathlib import Path

import pytest
from tests.cli.conftest import Run, printed

AS_OF = ("--as-of", "2026-11-25")


def test_the_flagship_is_divided_over_five_ministries_and_three_buildings(loaded: Run) -> None:
    done = printed(loaded("premium", "HW-1001", *AS_OF, "--allocate", "ministries", "--json"))
    by_coverage, by_location = (done["allocation"][k] for k in ("by_coverage", "by_location"))
    totals = done["allocation"]["totals"]
    assert len(totals) == 5
    assert {"church", "hall", "rectory"} <= set(by_location)
    for table in (by_coverage, by_location):
        for party, amount in totals.items():
            assert sum(Decimal(row.get(party, "0")) for row in table.values()) == Decimal(amount)
    assert sum(map(Decimal, totals.values())) == Decimal(done["total"])
    building = [Decimal(c["amount"]) for c in done["cells"] if c["coverage"] == "building"]
    assert sum(map(Decimal, by_coverage["building"].values())) == sum(building)


def test_what_is_used_up_by_fiscal_year_is_the_total(loaded: Run) -> None:
    done = printed(loaded("premium", "HW-1001", *AS_OF, "--json"))
    assert sum(map(Decimal, done["fiscal_years"].values())) == Decimal(done["total"])
    assert list(done["fiscal_years"]) == ["2027-12-31", "2028-12-31"]
    assert done["allocation"] is None


def test_the_quebec_plan_straddles_the_new_tax(loaded: Run) -> None:
    """9.975 % on payments from 1 January 2027 (Bill 99, 2025, c. 27)."""
    done = printed(loaded("premium", "HW-1010", *AS_OF, "--json"))
    for plan in done["plans"]:
        first, *later = plan["payments"]
        assert first["due"] < "2027-01-01" <= min(p["due"] for p in later)
        rates = {round(Decimal(p["tax"]) / Decimal(p["premium"]), 3) for p in later[:-1]}
        assert (Decimal(first["tax"]) / Decimal(first["premium"])).quantize(Decimal("0.001")) == (
            Decimal("0.090")
        )
        assert rates == {Decimal("0.100")}
        assert Decimal(plan["extra_tax"]) > 0


@pytest.mark.parametrize("language", ["en", "fr"])
def test_the_journal_is_written_and_balances(loaded: Run, tmp_path: Path, language: str) -> None:
    path = tmp_path / "j.csv"
    done = loaded("--language", language, "premium", "HW-1001", *AS_OF, "--allocate",
                  "ministries", "--journal", str(path))  # fmt: skip
    assert done.exit_code == 0
    assert str(path) in done.stderr.replace("\n", "")
    with path.open(encoding="utf-8", newline="") as file:
        rows = list(csv.reader(file))[1:]
    debit, credit = (sum(Decimal(row[n] or 0) for row in rows) for n in (3, 4))
    assert debit == credit > 0
    assert {row[2] for row in rows} == {"General", "Youth", "Outreach", "Hall", "Property"}


@pytest.mark.parametrize("language", ["en", "fr"])
@pytest.mark.parametrize("stage", ["offered", "expiring"])
def test_it_is_shown_in_both_languages(loaded: Run, language: str, stage: str) -> None:
    words = ("premium", "HW-1001", *AS_OF, "--terms", stage, "--allocate", "ministries")
    done = loaded("--language", language, *words)
    assert done.exit_code == 0
    assert "St. Ebba" in done.stdout
    assert all(len(line) <= 80 for line in done.stdout.splitlines())


def test_a_key_that_is_not_there_stops_with_those_that_are(loaded: Run) -> None:
    done = loaded("premium", "HW-1001", "--allocate", "funds")
    assert done.exit_code == 1
    assert "ministries" in done.stderr


def test_terms_that_are_not_there_or_have_no_premium_stop(loaded: Run) -> None:
    done = loaded("premium", "HW-1001", *AS_OF, "--terms", "requested")
    assert done.exit_code == 1
    assert "no requested terms" in done.stderr
    assert "name other terms" in done.stderr


@pytest.mark.parametrize(
    ("name", "given"),
    [
        ("apportion-table", {"cells": {"a": {"x": "1.005"}}}),
        ("split-change", {"before": [], "after": []}),
        ("instalments", {"premium": "100", "plan": "three-cheques", "start": "2026-12-01",
                         "province": "ON"}),
        ("apr", {"method": "canada", "financed": 1, "payments": [{"amount": 2, "years": 1}]}),
        ("earned", {"premium": "1", "from": "2026-01-01", "to": "2027-01-01",
                    "cancelled": "2026-06-01"}),
    ],
)  # fmt: skip
def test_the_calculations_run_on_their_own(run: Run, name: str, given: object) -> None:
    assert printed(run("calc", name, "--json", json.dumps(given)))["steps"]


def test_journals_of_the_whole_book_are_exported(loaded: Run, tmp_path: Path) -> None:
    out = tmp_path / "journals"
    done = loaded("export", "--to", "journal", "--out", str(out))
    assert done.exit_code == 0
    assert (out / "HW-1001.csv").exists()
    for path in out.iterdir():
        with path.open(encoding="utf-8", newline="") as file:
            rows = list(csv.reader(file))[1:]
        debit, credit = (sum(Decimal(row[n] or 0) for row in rows) for n in (3, 4))
        assert debit == credit > 0
