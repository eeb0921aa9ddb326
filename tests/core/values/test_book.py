"""The book's automatic increases against the index: sums by province that add up."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from datetime import date
from decimal import Decimal
from typing import Any

import pytest

from quarterday.core.file.records import Building, Organisation, Terms, Valuation
from quarterday.core.file.records.terms import Coverage
from quarterday.core.review.case import Case
from quarterday.core.values.book import Line, tally

CaseOf = Callable[..., Case]
RENEWAL = date(2027, 1, 31)


def insured(*ids: str, increase: str | None = "0.02", **more: Any) -> Terms:
    lines = tuple(
        Coverage.model_validate(
            {"coverage": "building", "location": id, "limit": 1_000_000,
             "automatic_increase": increase}
        )
        for id in ids
    )  # fmt: skip
    return Terms(stage="offered", start=RENEWAL, end=date(2028, 1, 31), coverages=lines, **more)


def hall(id: str = "hall", province: str | None = None) -> Building:
    return Building(id=id, name=id.title(), province=province)


def valued(id: str = "hall", amount: int = 1_000_000, year: int = 2020) -> Valuation:
    return Valuation(building=id, amount=Decimal(amount), valued_on=date(year, 2, 15),
                     basis="formal-appraisal", includes_fees=True)  # fmt: skip


def test_a_buildings_line_is_what_its_own_page_says(case_of: CaseOf) -> None:
    case = case_of(hall(), valued(), insured("hall"))
    picture, line = case.pictures["hall"], tally([case]).provinces["ON"]
    assert picture.increases is not None
    assert picture.costs is not None
    assert picture.shortfall is not None
    assert line.valued == Decimal(1_000_000)
    assert line.cost == picture.costs.at_renewal.money.amount
    assert abs(line.gap - picture.increases.gap.money.amount) <= 1
    assert line.behind_share == pytest.approx(picture.increases.behind.number, abs=Decimal("1e-5"))
    assert line.increases == pytest.approx(picture.increases.applied.number, abs=Decimal("1e-5"))
    assert line.index == pytest.approx(picture.increases.index.number, abs=Decimal("1e-5"))
    assert line.short == picture.shortfall.money.amount


def test_two_per_cent_a_year_since_2020_stays_behind_in_ontario(case_of: CaseOf) -> None:
    """Seven renewals at 2 % are 14.9 %; the published index of 2021 and 2022 alone ran past it."""
    line = tally([case_of(hall(), valued(), insured("hall"))]).total
    assert line.behind == 1
    assert round(line.increases, 3) == Decimal("0.149")
    assert line.index > Decimal("0.3")


def test_buildings_are_counted_in_their_own_province(case_of: CaseOf) -> None:
    case = case_of(
        hall("a"), hall("b", "QC"), valued("a"), valued("b"), insured("a", "b")
    )  # fmt: skip
    book = tally([case, case])
    assert {p: line.buildings for p, line in book.provinces.items()} == {"ON": 2, "QC": 2}


def test_the_total_is_the_sum_of_the_provinces(case_of: CaseOf) -> None:
    case = case_of(
        hall("a"), hall("b", "QC"), hall("c", "MB"), valued("a"), valued("b", 2_345_678, 2021),
        valued("c", 777_777, 2025), insured("a", "b", "c"),
    )  # fmt: skip
    book, sums = tally([case]), Line()
    for line in book.provinces.values():
        sums += line
    assert sums == book.total
    assert book.total.gap == sum(line.gap for line in book.provinces.values())


def test_increases_that_ran_ahead_count_against_the_others(case_of: CaseOf) -> None:
    ahead = case_of(hall(), valued(year=2025), insured("hall", increase="0.2"))
    line = tally([ahead]).total
    assert line.behind == 0
    assert line.gap < 0


@pytest.mark.parametrize(
    "records",
    [
        (insured("hall"),),  # never valued
        (valued(), insured("hall", increase=None)),  # no increase known
        (valued(year=2001), insured("hall")),  # before the index
        (valued(), insured("hall", currency="USD")),
    ],
)
def test_what_cannot_be_compared_is_counted_as_left_out(
    case_of: CaseOf, records: tuple[Any, ...]
) -> None:
    book = tally([case_of(hall(), *records)])
    assert (book.left_out, book.total.buildings) == (1, 0)
    assert not book.provinces


def test_a_building_without_a_sum_insured_is_none_of_this(case_of: CaseOf) -> None:
    book = tally([case_of(hall(), valued())])
    assert (book.left_out, book.total.buildings) == (0, 0)


def test_a_file_without_a_renewal_date_is_counted(case_of: CaseOf) -> None:
    case = case_of(Organisation(name="Elm Grove Hall", province="ON"))
    assert tally([case]).no_renewal == 1


def test_a_book_of_any_size_streams_by(case_of: CaseOf) -> None:
    """No more than one case is alive at a time: each is let go before the next is asked for."""
    import gc
    import weakref

    seen: list[weakref.ref[Case]] = []

    def many() -> Iterator[Case]:
        for _ in range(4):
            assert sum(ref() is not None for ref in seen) <= 1
            case = case_of(hall(), valued(), insured("hall"))
            seen.append(weakref.ref(case))
            yield case
            del case
            gc.collect()

    assert tally(many()).total.buildings == 4


def test_an_empty_book_has_nothing_to_divide_by() -> None:
    line = tally([]).total
    assert not any((line.increases, line.index, line.behind_share, line.gap))
