"""Lists come in parts that join to the whole, whatever comes and goes between two parts."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date

import pytest
from tests.api.conftest import ROOT, Program

from quarterday.api import pages
from quarterday.api.problems import Problem
from quarterday.core.file.entry import Draft, Origin
from quarterday.core.file.records import Organisation
from quarterday.store import ledger

As = Callable[[str], Program]
DATES = ["2027-03-01", "2027-01-15", "2027-01-15", None, "2027-02-01", None, "2027-01-15"]


def add(id: str, renewal: str | None) -> None:
    made = Organisation(name=f"Hall {id}", province="ON", office="port-ellery",
                        renewal_date=date.fromisoformat(renewal) if renewal else None)  # fmt: skip
    draft = Draft("load", made.kind, made.key, made.body(), Origin(way="workbook", name="x"))
    ledger.append(id, [draft], by="load", expected_seq=None)


@pytest.fixture
def halls(db: None) -> None:
    for number, renewal in enumerate(DATES):
        add(f"T-{number}", renewal)


def walk(program: Program, limit: int, between: Callable[[], None] | None = None) -> list[str]:
    found: list[str] = []
    after: str | None = ""
    while True:
        part = program.get(f"{ROOT}/files?limit={limit}&after={after}").json()
        found += [line["file"] for line in part["renewals"]]
        after = part["next"]
        if after is None:
            return found
        if between:
            between()


@pytest.mark.parametrize("limit", [1, 2, 3, 200])
def test_parts_of_any_size_join_to_the_list_by_date_then_id(
    limit: int, halls: None, program: As
) -> None:
    whole = ["T-1", "T-2", "T-6", "T-4", "T-0", "T-3", "T-5"]
    assert walk(program("ann"), limit) == whole


def test_a_file_that_comes_before_the_mark_shifts_nothing(halls: None, program: As) -> None:
    added: list[str] = []

    def one_more() -> None:
        added.append(f"T-00{len(added)}")
        add(added[-1], "2027-01-01")

    found = walk(program("ann"), 2, one_more)
    assert len(found) == len(set(found))
    assert set(found) == {f"T-{n}" for n in range(len(DATES))}
    assert added


def test_parts_of_the_diary_join_to_the_whole(book: None, program: As) -> None:
    address = f"{ROOT}/diary?until=2027-12-31"
    whole = program("maria").get(f"{address}&limit=200").json()["steps"]
    found: list[dict[str, str]] = []
    after: str | None = ""
    while after is not None:
        part = program("maria").get(f"{address}&limit=3&after={after}").json()
        found += part["steps"]
        after = part["next"]
    assert len(whole) > 3
    assert found == whole


@pytest.mark.parametrize("file", ["HW-1", "É 100 %", "a" * 80])
@pytest.mark.parametrize("on", [date(2027, 1, 15), None])
def test_a_mark_reads_back(file: str, on: date | None) -> None:
    assert pages.read(pages.mark(on, file), 1) == (on, [file])


@pytest.mark.parametrize("said", ["", "x", "====", "é", "W10", "e30", "WyIyMDI3LTAxLTE1Il0"])
def test_what_is_no_mark_is_refused(said: str) -> None:
    with pytest.raises(Problem):
        pages.read(said, 1)
