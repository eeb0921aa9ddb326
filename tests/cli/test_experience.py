"""The book's experience in the terminal."""

from __future__ import annotations

from decimal import Decimal

import pytest
from tests.cli.conftest import Run, printed

AS_OF = ("--as-of", "2026-11-25")


def test_the_provinces_add_up_to_the_book(loaded: Run) -> None:
    told = printed(loaded("experience", *AS_OF, "--json"))
    for field in ("incurred", "capped", "premium"):
        parts = sum(Decimal(line[field]) for line in told["province"].values())
        assert parts == Decimal(told["total"][field])


def test_it_begins_with_the_conclusion_and_says_what_it_rests_on(loaded: Run) -> None:
    told = loaded("experience", *AS_OF).stdout
    assert told.startswith("In 10 policy years up to today 3 files had")
    for said in ("By cause", "By insurer", "By year of loss", "earlier prices are seldom on file"):
        assert said in " ".join(told.split())


def test_fewer_years_hold_fewer_claims(loaded: Run) -> None:
    def count(years: str) -> int:
        told = printed(loaded("experience", *AS_OF, "--json", "--years", years))
        return int(told["total"]["claims"])

    assert count("1") < count("10")


@pytest.mark.parametrize(("language", "said"), [("en", "By cause"), ("fr", "Par cause")])
def test_it_can_be_divided_by_one_thing_alone(loaded: Run, language: str, said: str) -> None:
    told = loaded("--language", language, "experience", *AS_OF, "--by", "cause").stdout
    assert said in told
    assert "insurer" not in told.splitlines()[2]


def test_no_years_are_refused(loaded: Run) -> None:
    assert loaded("experience", "--years", "0").exit_code == 2


def test_an_empty_book_is_told_so(run: Run) -> None:
    run("start")
    told = run("experience", *AS_OF)
    assert told.exit_code == 0
    assert "nothing to compare" in told.stdout
