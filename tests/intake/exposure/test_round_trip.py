"""The demo book goes out as Open Exposure Data and comes in again."""

from __future__ import annotations

import csv
from collections.abc import Iterator
from functools import lru_cache
from pathlib import Path
from typing import Any

import pytest

from quarterday.catalogue.load import reference
from quarterday.core.exposure.location import PLACES, answers_of, in_force
from quarterday.core.file.fold import File
from quarterday.core.file.records import Building, Organisation, Terms, Valuation
from quarterday.intake.exposure.plan import is_exposure, plan
from quarterday.intake.exposure.tables import codes
from quarterday.intake.exposure.write import ACCOUNTS, LOCATIONS, Written, write
from quarterday.intake.parse import parse
from quarterday.intake.plan import Plan
from quarterday.invent.demo.book import demo_book
from tests.intake.books import Files, after, file_of


@lru_cache(maxsize=1)
def book() -> dict[str, File]:
    return {account.id: file_of(account.id, account.records) for account in demo_book()}


def written(folder: Path, files: Files) -> Written:
    return write(files.values(), folder, codes(), answers_of(reference()))


def read(folder: Path, files: Files) -> Plan:
    parsed = parse(folder)
    assert is_exposure(parsed)
    return plan(parsed, files.get, codes(), reference())


def rows(file: Path) -> list[dict[str, str]]:
    with file.open(encoding="utf-8", newline="") as text:
        return list(csv.DictReader(text))


def simple(building: Building) -> dict[str, Any]:
    """Return what the standard holds of a building that is not rented nor of an odd kind."""
    fields = ("id", "name", "address", "town", "postal_code", "construction", "year_built",
              "area_m2", "basement", "roof_year", "sprinklers")  # fmt: skip
    return {name: getattr(building, name) for name in fields}


def lines(terms: Terms | None) -> Iterator[tuple[Any, ...]]:
    """Yield the simple terms of buildings and contents."""
    for line in terms.coverages if terms else ():
        if line.coverage in PLACES:
            yield (line.place, line.limit, line.deductible, line.deductible_percent,
                   line.deductible_percent_of, line.deductible_minimum)  # fmt: skip


def newest(file: File) -> dict[tuple[str, str], Valuation]:
    """Return the newest valuation of each building and its contents, where it is insured."""
    insured = {line[0] for line in lines(in_force(file))}
    return {
        (thing, building.id): valuations[-1]
        for building in file.buildings
        for thing in PLACES
        if (valuations := file.valuations(building.id, thing)) and (thing, building.id) in insured
    }


@pytest.fixture(scope="module")
def folder(tmp_path_factory: pytest.TempPathFactory) -> Path:
    out = tmp_path_factory.mktemp("oed")
    done = written(out, book())
    assert (done.accounts, done.left_out) == (40, [])
    assert done.locations == sum(len(file.buildings) for file in book().values())
    return out


def test_over_the_same_files_nothing_changes(folder: Path) -> None:
    done = read(folder, book())
    assert {item.status for item in done.items} == {"unchanged"}
    assert len(done.items) > 150
    assert not done.needs_acceptance


def test_into_an_empty_store_the_buildings_values_and_simple_terms_are_the_same(
    folder: Path,
) -> None:
    done = read(folder, {})
    assert not done.needs_acceptance
    made = after(done)
    assert made.keys() == book().keys()
    for id, file in book().items():
        there = made[id]
        assert there.organisation.name == file.organisation.name
        assert there.organisation.province == file.organisation.province
        assert [*map(simple, there.buildings)] == [*map(simple, file.buildings)]
        assert sorted(lines(in_force(there))) == sorted(lines(in_force(file)))
        mine, theirs = newest(there), newest(file)
        assert mine.keys() == theirs.keys()
        assert all(
            (mine[k].amount, mine[k].valued_on) == (theirs[k].amount, theirs[k].valued_on)
            for k in mine
        )


def test_what_goes_out_again_is_the_same_but_for_the_occupancy(
    folder: Path, tmp_path: Path
) -> None:
    written(tmp_path, after(read(folder, {})))
    once, twice = rows(folder / LOCATIONS), rows(tmp_path / LOCATIONS)
    assert len(once) == len(twice)
    differing = {name for a, b in zip(once, twice, strict=True) for name in a if a[name] != b[name]}
    assert differing == {"OccupancyCode"}
    assert rows(folder / ACCOUNTS) == rows(tmp_path / ACCOUNTS)


def test_a_changed_limit_and_nothing_else_goes_on(folder: Path, tmp_path: Path) -> None:
    changed = rows(folder / LOCATIONS)
    changed[0]["LocLimit1Building"] = "6000000"
    with (tmp_path / LOCATIONS).open("w", encoding="utf-8", newline="") as text:
        out = csv.DictWriter(text, changed[0].keys())
        out.writeheader()
        out.writerows(changed)
    done = read(tmp_path, book())
    moved = done.with_status("changed")
    assert [(item.account, item.kind) for item in moved] == [("HW-1001", "terms")]
    assert [(c.field, c.line[:2]) for c in moved[0].changes] == [("limit", ("building", "church"))]
    assert not done.with_status("new")


def test_a_number_too_long_for_the_standard_is_left_out_and_named(tmp_path: Path) -> None:
    organisation = Organisation(name="St. Brendan", province="NS")
    building = Building(id="a-building-with-a-long-id", name="Hall")
    done = written(tmp_path, {"0007": file_of("0007", (organisation, building))})
    assert done.left_out == ["0007 a-building-with-a-long-id"]
    assert (done.accounts, done.locations) == (0, 0)


def test_a_text_that_a_spreadsheet_would_run_is_guarded_and_read_as_it_stood(
    tmp_path: Path,
) -> None:
    organisation = Organisation(name="St. Brendan", province="NS")
    files = {"0007": file_of("0007", (organisation, Building(id="h", name="=1+1")))}
    written(tmp_path, files)
    assert rows(tmp_path / LOCATIONS)[0]["LocName"] == "'=1+1"
    assert [b.name for b in after(read(tmp_path, {}))["0007"].buildings] == ["=1+1"]
