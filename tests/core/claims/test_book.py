"""A book's experience is the sum of what its files show."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date
from decimal import Decimal

import pytest
from tests.core.claims.conftest import claim, policy

from quarterday.core.claims.book import AXES, BookExperience, tally
from quarterday.core.claims.experience import experience
from quarterday.core.file.records import Organisation
from quarterday.core.review.case import Case

CaseOf = Callable[..., Case]
ELM = Organisation(name="Elm", province="ON", organisation_class="hall")
OAK = Organisation(name="Oak", province="QC", organisation_class="worship")


@pytest.fixture
def book(case_of: CaseOf) -> BookExperience:
    """Two files: one with a fire and a large water claim, one without claims."""
    claims = (claim("A", date(2025, 3, 1), "fire"),
              claim("B", date(2024, 3, 1), paid=Decimal(150_000)))  # fmt: skip
    insured = policy(2026).model_copy(update={"insurer": "Larch Mutual"})
    return tally((case_of(ELM, insured, *claims), case_of(OAK, policy(2026))), 5)


def test_every_division_adds_up_to_the_whole(book: BookExperience) -> None:
    for axis in AXES:
        lines = [line for _, line in book.of(axis)]
        for name in ("claims", "incurred", "capped"):
            parts = sum((getattr(line, name) for line in lines), Decimal(0))
            assert parts == getattr(book.total, name), (axis, name)
        if axis != "cause":
            assert sum((line.premium for line in lines), Decimal(0)) == book.total.premium, axis


def test_the_book_is_the_sum_of_what_each_file_shows(case_of: CaseOf) -> None:
    cases = [
        case_of(ELM, policy(2026), claim("A", date(2025, 3, 1))),
        case_of(OAK, policy(2026, 9_000), claim("B", date(2025, 3, 1), paid=Decimal(170_000))),
    ]
    book, files = tally(cases, 10), [experience(case, 10) for case in cases]
    for mine, theirs in (("incurred", "incurred"), ("capped", "capped"), ("premium", "premium")):
        told = [getattr(found, theirs).money.amount for found in files if found]
        assert getattr(book.total, mine) == sum(told)


def test_a_large_claim_counts_in_full_and_up_to_the_cap(book: BookExperience) -> None:
    """The default cap is 100,000."""
    assert (book.total.incurred, book.total.capped) == (Decimal(160_000), Decimal(110_000))
    assert book.total.ratio == Decimal(160_000) / book.total.premium
    assert book.total.capped_ratio == Decimal(110_000) / book.total.premium


def test_a_cause_is_measured_by_the_premium_of_the_whole_book(book: BookExperience) -> None:
    found = dict(book.of("cause"))
    assert list(found) == ["water-escape", "fire"]  # the dearest first
    assert {line.premium for line in found.values()} == {book.total.premium}
    assert [line.files for line in found.values()] == [1, 1]


def test_years_are_in_order_and_a_quiet_file_counts_in_each(book: BookExperience) -> None:
    years = book.of("year")
    assert [name for name, _ in years] == ["2022", "2023", "2024", "2025", "2026"]
    assert {line.files for _, line in years} == {2}
    assert [line.claims for _, line in years] == [0, 0, 1, 1, 0]


def test_who_names_no_insurer_stands_apart(book: BookExperience) -> None:
    assert {name: line.claims for name, line in book.of("insurer")} == {"Larch Mutual": 2, "": 0}


def test_what_cannot_be_compared_is_counted_and_left_out(case_of: CaseOf) -> None:
    dollars = policy(2026).model_copy(update={"currency": "USD"})
    cases = [
        case_of(ELM, policy(2026, None), claim("A", date(2025, 3, 1))),
        case_of(ELM, dollars, claim("A", date(2025, 3, 1))),
        case_of(ELM),
    ]
    book = tally(cases, 5)
    assert (book.no_premium, book.other_currency, book.no_renewal) == (1, 1, 1)
    assert (book.total.files, book.total.claims, book.total.ratio) == (0, 0, None)


def test_an_empty_book_says_nothing() -> None:
    book = tally((), 5)
    assert all(not book.of(axis) for axis in AXES)
    assert book.total.ratio is book.total.capped_ratio is None
