"""The book's experience, out of a store that holds loss runs of several years."""

from __future__ import annotations

from datetime import UTC, date, datetime
from decimal import Decimal

import pytest
from tests.office.conftest import DAY

from quarterday.catalogue.load import reference
from quarterday.catalogue.speech import Speech
from quarterday.core.claims.experience import experience
from quarterday.core.file.entry import Draft, Origin
from quarterday.core.file.records import Claim
from quarterday.core.review.case import Case
from quarterday.office.experience import Found, name, of_the_book, plain, to_come
from quarterday.store import ledger


def run_of(file: str, year: int, paid: int, number: str = "LATE-1") -> None:
    """Load one claim of 2024 as the loss run of a year shows it."""
    record = Claim.model_validate({
        "number": number, "cause": "fire", "date_of_loss": date(2024, 2, 1),
        "paid": Decimal(paid), "valued_on": date(year, 11, 1),
    })  # fmt: skip
    origin = Origin(way="person", person="ben")
    draft = Draft("load", record.kind, record.key, record.body(), origin)
    at = datetime(2026, 11, 25, year - 2020, tzinfo=UTC)
    ledger.append(file, [draft], by="ben", expected_seq=None, at=at)


@pytest.fixture
def grown(flagship: str) -> str:
    """The flagship with a claim that loss runs of three years show, each higher."""
    for year, paid in ((2024, 1_000), (2025, 2_000), (2026, 3_000)):
        run_of(flagship, year, paid)
    return flagship


def found() -> Found:
    return of_the_book(reference(), DAY)


def test_the_book_of_one_file_is_that_file_s_experience(flagship: str) -> None:
    own = experience(Case(ledger.load(flagship), reference(), DAY), found().book.years)
    assert own is not None
    total = found().book.total
    assert total.incurred == own.incurred.money.amount
    assert total.premium == own.premium.money.amount
    assert total.capped == own.capped.money.amount


def test_several_loss_runs_on_file_show_how_claims_grow(grown: str) -> None:
    told = found()
    assert told.files == 1
    years = {one.year: one for one in told.forecasts}
    assert years[2024].latest >= 3_000
    assert told.total is not None
    assert told.total.latest == pytest.approx(sum(y.latest for y in told.forecasts))


def test_one_loss_run_shows_no_growth(flagship: str) -> None:
    told = found()
    assert (told.total, told.forecasts, told.files) == (None, (), 0)
    assert plain(told)["development"] is None


def test_a_claim_that_was_taken_back_does_not_develop(grown: str) -> None:
    origin = Origin(way="person", person="ben")
    ledger.append(grown, [Draft("withdraw", "claim", "LATE-1", None, origin)], by="ben",
                  expected_seq=None)  # fmt: skip
    assert found().total is None


def test_what_is_still_to_come_has_no_more_digits_than_chance_leaves(grown: str) -> None:
    told = found()
    assert told.total is not None
    amount = to_come(told.total, "CAD").amount
    assert amount == amount.to_integral_value()


@pytest.mark.parametrize("language", ["en", "fr"])
def test_every_line_has_a_name(flagship: str, language: str) -> None:
    speech, book = Speech(reference(), language), found().book
    for axis in book.lines:
        assert all(name(axis, key, speech) for key, _ in book.of(axis))
    assert name("insurer", "", speech) in {"not told", "non indiqué"}


def test_plain_amounts_are_text_with_cents(flagship: str) -> None:
    told = plain(found())
    assert told["total"]["premium"].count(".") == 1
    assert Decimal(told["total"]["premium"]) == found().book.total.premium
    assert set(told) >= {"cause", "province", "class", "insurer", "year", "left_out"}
