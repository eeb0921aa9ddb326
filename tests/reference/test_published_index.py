"""The shipped construction index against what Statistics Canada published.

Source: Statistics Canada, The Daily of 2026-01-27, table 1, building construction price indexes,
non-residential, 2023=100 (www150.statcan.gc.ca/n1/daily-quotidien/260127/t001c-eng.htm). The
shipped series (table 18-10-0289-01) is a later release, so figures may have been revised.
"""

from __future__ import annotations

import csv
from collections.abc import Mapping
from datetime import date
from decimal import ROUND_HALF_UP, Decimal
from pathlib import Path

import pytest

from quarterday.catalogue.load import reference
from quarterday.catalogue.speech import Speech
from quarterday.core.dates import Quarter
from quarterday.core.reference import Reference
from quarterday.core.words import Term

DAY = date(2026, 11, 25)
# area: 2024Q4, 2025Q3, 2025Q4, q/q %, y/y %, as printed
TABLE = {
    "composite": ("105.6", "109.4", "109.9", "0.5", "4.1"),
    "halifax": ("103.0", "104.9", "105.4", "0.5", "2.3"),
    "montreal": ("103.8", "108.5", "108.8", "0.3", "4.8"),
    "ottawa_on": ("104.7", "107.7", "108.4", "0.6", "3.5"),
    "toronto": ("105.8", "109.1", "109.6", "0.5", "3.6"),
    "winnipeg": ("104.1", "107.8", "108.0", "0.2", "3.7"),
    "calgary": ("104.9", "108.1", "108.5", "0.4", "3.4"),
    "edmonton": ("106.0", "109.9", "110.1", "0.2", "3.9"),
    "vancouver": ("106.8", "109.6", "109.5", "-0.1", "2.5"),
}
REVISED = {("montreal", 2): Decimal("108.7")}  # 108.8 when first published
QUARTERS = (Quarter(2024, 4), Quarter(2025, 3), Quarter(2025, 4))


@pytest.fixture(scope="module")
def canada() -> Reference:
    return reference()


def series(canada: Reference, geography: str) -> Mapping[Quarter, Decimal]:
    return canada.index(geography, DAY).points


def change(new: Decimal, old: Decimal) -> Decimal:
    """Return the change in per cent as the table prints it, to one decimal."""
    return ((new / old - 1) * 100).quantize(Decimal("0.1"), rounding=ROUND_HALF_UP)


@pytest.mark.parametrize("area", TABLE)
def test_the_levels_are_the_published_ones_but_for_one_revision(
    canada: Reference, area: str
) -> None:
    """26 of 27 figures agree; Montréal's 2025Q4 is 108.7 here and was printed as 108.8."""
    for place, quarter in enumerate(QUARTERS):
        printed = Decimal(TABLE[area][place])
        assert series(canada, area)[quarter] == REVISED.get((area, place), printed)


@pytest.mark.parametrize("area", [area for area in TABLE if area != "montreal"])
def test_the_published_changes_follow_from_the_levels(canada: Reference, area: str) -> None:
    """Every printed quarterly and yearly change is the ratio of the levels to one decimal."""
    before, last, now = (series(canada, area)[quarter] for quarter in QUARTERS)
    assert change(now, last) == Decimal(TABLE[area][3])
    assert change(now, before) == Decimal(TABLE[area][4])


def test_montreals_revision_changes_its_printed_changes(canada: Reference) -> None:
    """With 108.7 the quarter's change is 0.2 % (printed 0.3) and the year's 4.7 % (printed 4.8)."""
    before, last, now = (series(canada, "montreal")[quarter] for quarter in QUARTERS)
    assert (change(now, last), change(now, before)) == (Decimal("0.2"), Decimal("4.7"))


@pytest.mark.parametrize("area", TABLE)
def test_the_printed_table_agrees_with_itself(area: str) -> None:
    """The check of the check: the table's changes follow from its own printed levels."""
    before, last, now, quarterly, yearly = map(Decimal, TABLE[area])
    assert (change(now, last), change(now, before)) == (quarterly, yearly)


def test_the_first_quarter_of_2026_differs_from_its_announcement(canada: Reference) -> None:
    """The Daily of 2026-04-28 announced +0.5 % in the quarter and +3.6 % in the year.

    The shipped series, retrieved four months later, says +0.9 % and +3.9 %. Quarters are revised in
    the next release; whether this is such a revision could not be checked. NOT-COVERED.md tells it.
    """
    composite = series(canada, "composite")
    now = composite[Quarter(2026, 1)]
    assert change(now, composite[Quarter(2025, 4)]) == Decimal("0.9")  # announced: 0.5
    assert change(now, composite[Quarter(2025, 1)]) == Decimal("3.9")  # announced: 3.6


def test_2023_is_the_base(canada: Reference) -> None:
    """The four quarters of 2023 average 100 in every series, to the rounding of the figures."""
    for geography, (release,) in canada.indices.items():
        assert release.base == "2023"
        year = [release.points[Quarter(2023, n)] for n in (1, 2, 3, 4)]
        assert abs(sum(year, Decimal(0)) / 4 - 100) <= Decimal("0.1"), geography


def test_eighteen_series_run_from_2017_to_the_second_quarter_of_2026(canada: Reference) -> None:
    assert len(canada.indices) == 18
    for (release,) in canada.indices.values():
        assert (min(release.points), max(release.points)) == (Quarter(2017, 1), Quarter(2026, 2))
        assert len(release.points) == 38


def test_the_peak_years_rose_at_double_digits(canada: Reference) -> None:
    """Published year-over-year changes of 2021-2022 were in double digits: from memory."""
    composite = series(canada, "composite")
    assert change(composite[Quarter(2022, 2)], composite[Quarter(2021, 2)]) > 10


def test_some_series_are_one_series_under_two_names(canada: Reference) -> None:
    """They are no second opinion; the names of these geographies say so."""
    assert series(canada, "ns") == series(canada, "halifax")
    assert series(canada, "mb") == series(canada, "winnipeg")


@pytest.mark.parametrize(("province", "city"), [("qc", "montreal"), ("bc", "vancouver")])
def test_before_2023_a_province_moves_with_its_city(
    canada: Reference, province: str, city: str
) -> None:
    """One ratio from 2017 to 2022, to the rounding of the figures."""
    of_province, of_city = series(canada, province), series(canada, city)
    early = [of_province[q] / of_city[q] for q in of_province if q.year < 2023]
    assert max(early) - min(early) < Decimal("0.003")


def test_quebec_parts_from_montreal_after_2023_and_british_columbia_hardly_from_vancouver(
    canada: Reference,
) -> None:
    newest = Quarter(2026, 2)
    quebec = series(canada, "qc")[newest] / series(canada, "montreal")[newest]
    pacific = series(canada, "bc")[newest] / series(canada, "vancouver")[newest]
    assert quebec > Decimal("1.01")
    assert pacific < Decimal("1.003")


def institutional(city: str) -> dict[Quarter, Decimal]:
    """Return the archived table's institutional buildings, 2017=100 (table 18-10-0276-01)."""
    file = Path(__file__).parent / "data" / "bcpi_institutional_calgary_edmonton_2017eq100.csv"
    with file.open(encoding="utf-8", newline="") as rows:
        return {
            Quarter.parse(row["quarter"]): Decimal(row[f"{city}_institutional"])
            for row in csv.DictReader(rows)
        }


@pytest.mark.parametrize("city", ["calgary", "edmonton"])
def test_the_archived_institutional_series_has_2017_as_its_base(city: str) -> None:
    points = institutional(city)
    assert sum(points[Quarter(2017, n)] for n in (1, 2, 3, 4)) == 400
    assert (min(points), max(points)) == (Quarter(2017, 1), Quarter(2024, 2))


@pytest.mark.parametrize("city", ["calgary", "edmonton"])
def test_institutional_buildings_moved_much_as_all_non_residential_ones(
    canada: Reference, city: str
) -> None:
    """Two Statistics Canada tables on different bases tell the same story from 2017 to 2023.

    18-10-0276-01 (institutional) against 18-10-0289-01 (all non-residential): the growth differs by
    less than six per cent, which says how far the index may stand in for a church or a hall.
    """
    narrow, broad = institutional(city), series(canada, city)
    first, last = Quarter(2017, 1), Quarter(2023, 4)
    ratio = (narrow[last] / narrow[first]) / (broad[last] / broad[first])
    assert abs(ratio - 1) < Decimal("0.06")


def test_a_limit_trended_by_the_institutional_index() -> None:
    """Calgary 2019Q4 to 2023Q4 is a factor of 1.1729 (121.4 / 103.5)."""
    points = institutional("calgary")
    factor = points[Quarter(2023, 4)] / points[Quarter(2019, 4)]
    assert factor.quantize(Decimal("0.0001")) == Decimal("1.1729")


@pytest.mark.parametrize("language", ["en", "fr"])
def test_a_province_measured_in_one_city_says_so(canada: Reference, language: str) -> None:
    """Wherever the index of Nova Scotia or Manitoba is named, its city is named with it."""
    speech = Speech(canada, language)
    assert "Halifax" in speech.say(Term("index", "ns"))
    assert "Winnipeg" in speech.say(Term("index", "mb"))


# Statistics Canada, The Daily, building construction price indexes, releases of 2024-11 to 2025-11,
# as first published on 2023=100 (transcribed in the public repository chiKeka/aiio-canada-public)
FIRST_PUBLISHED = {
    "calgary": ("104.8", "104.9", "105.9", "107.5", "107.9"),
    "edmonton": ("105.4", "106.0", "106.8", "108.5", "109.6"),
}


@pytest.mark.parametrize("city", FIRST_PUBLISHED)
def test_revisions_since_the_first_publication_are_small(canada: Reference, city: str) -> None:
    """Quarters 2024Q3 to 2025Q3 were revised upwards by 0.0 to 0.3 points: a release has a day."""
    points, quarter = series(canada, city), Quarter(2024, 3)
    for printed in map(Decimal, FIRST_PUBLISHED[city]):
        assert 0 <= points[quarter] - printed <= Decimal("0.3")
        quarter = quarter.shifted(1)


# Statistics Canada, The Daily of 2023-11-01, chart 1: change in the third quarter of 2023, 2017=100
THIRD_OF_2023 = {
    "composite": "0.9", "toronto": "1.1", "vancouver": "1.2", "montreal": "0.3", "ottawa_on": "1.1",
    "winnipeg": "0.7", "halifax": "0.2", "calgary": "0.8", "edmonton": "1.0",
}  # fmt: skip


@pytest.mark.parametrize("area", THIRD_OF_2023)
def test_the_new_base_changed_some_announced_changes_by_up_to_a_point(
    canada: Reference, area: str
) -> None:
    """The series on 2023=100 is not the old one rescaled; NOT-COVERED.md tells it.

    Calgary and Edmonton agree with what was announced; Ottawa is a whole point away.
    """
    points = series(canada, area)
    now = change(points[Quarter(2023, 3)], points[Quarter(2023, 2)])
    away = abs(now - Decimal(THIRD_OF_2023[area]))
    assert away <= 1
    assert away == 0 or area not in {"calgary", "edmonton"}
