"""An invented book, written, is the same book when it is read, and the same bytes every time."""

from __future__ import annotations

import zipfile
from collections import Counter
from collections.abc import Iterable, Iterator
from pathlib import Path

import openpyxl
import pytest
from python_calamine import CalamineWorkbook

from quarterday.catalogue.load import reference
from quarterday.core.file.layout import SHEETS, rows
from quarterday.core.file.records import Organisation, Record
from quarterday.intake.map import match
from quarterday.intake.parse import parse
from quarterday.intake.plan import Plan, plan
from quarterday.intake.profile import NO_PROFILE
from quarterday.intake.write import write_csv, write_workbook
from quarterday.invent.account import Account
from quarterday.invent.book import make_book
from quarterday.invent.demo import AS_OF, demo_book
from quarterday.office.books import pairs, reviewer, write_book

Key = tuple[str, str, str]
NAMES = ("book.xlsx", "book")
LANGUAGES = ("en", "fr")


def written(accounts: Iterable[Account], path: Path, language: str = "en") -> Path:
    write = write_workbook if path.suffix else write_csv
    write(pairs(accounts), path, language)
    return path


def planned(path: Path) -> Plan:
    parsed = parse(path)
    return plan(parsed, match(parsed, NO_PROFILE), lambda _: None, reference())


def bodies(records: Iterable[tuple[str, Record]]) -> Iterator[tuple[Key, str]]:
    yield from (((account, r.kind, r.key), r.body()) for account, r in records)


def read(found: Plan) -> dict[Key, str]:
    return dict(bodies((item.account, item.record) for item in found.items))


def contents(path: Path) -> dict[str, bytes]:
    files = sorted(path.iterdir()) if path.is_dir() else [path]
    return {file.name if path.is_dir() else "": file.read_bytes() for file in files}


@pytest.fixture(scope="module")
def demo() -> tuple[Account, ...]:
    return tuple(demo_book())


@pytest.fixture(scope="module")
def workbook(demo: tuple[Account, ...], tmp_path_factory: pytest.TempPathFactory) -> Path:
    return written(demo, tmp_path_factory.mktemp("book") / "demo.xlsx")


def test_every_record_goes_with_the_id_of_its_account(demo: tuple[Account, ...]) -> None:
    found = list(pairs(demo))
    assert len(found) == sum(len(account.records) for account in demo)
    names = [(id, r.name) for id, r in found if isinstance(r, Organisation)]
    assert len(names) == 40
    assert names[0] == ("HW-1001", "The Incumbent and Churchwardens of St. Ebba-by-the-Water")


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("name", NAMES)
def test_the_demo_book_is_read_back_whole(
    name: str, language: str, demo: tuple[Account, ...], tmp_path: Path
) -> None:
    """Every record, and nothing is refused or asked."""
    found = planned(written(demo, tmp_path / name, language))
    assert [fault for fault in found.faults if fault.severity != "note"] == []
    assert read(found) == dict(bodies(pairs(demo)))


@pytest.mark.parametrize("name", NAMES)
def test_a_made_book_is_read_back_whole(name: str, tmp_path: Path) -> None:
    found = planned(write_book(60, 11, AS_OF, tmp_path / name))
    assert [fault for fault in found.faults if fault.severity != "note"] == []
    assert read(found) == dict(bodies(pairs(make_book(60, 11, AS_OF))))


def test_an_independent_reader_finds_every_row_under_the_headings_of_the_layout(
    workbook: Path, demo: tuple[Account, ...]
) -> None:
    # python-calamine reads the file without our code.
    book = CalamineWorkbook.from_path(workbook)
    wanted = Counter(sheet.name for pair in pairs(demo) for sheet, _ in rows(*pair))
    assert book.sheet_names == [sheet.name for sheet in SHEETS]
    for sheet in SHEETS:
        first, *others = book.get_sheet_by_name(sheet.name).to_python()
        assert first == [column.heading for column in sheet.columns]
        assert len(others) == wanted[sheet.name]


def test_a_workbook_holds_no_formula_and_no_link(workbook: Path) -> None:
    book = openpyxl.load_workbook(workbook)
    kinds = Counter(cell.data_type for sheet in book for row in sheet.rows for cell in row)
    assert kinds["f"] == 0
    assert [name for name in zipfile.ZipFile(workbook).namelist() if "external" in name] == []


@pytest.mark.parametrize("name", NAMES)
def test_the_same_accounts_give_the_same_bytes(
    name: str, demo: tuple[Account, ...], tmp_path: Path
) -> None:
    once, again = (written(demo, tmp_path / part / name) for part in _folders(tmp_path))
    assert contents(once) == contents(again)


@pytest.mark.parametrize("name", NAMES)
def test_a_made_book_gives_the_same_bytes_for_the_same_seed_and_others_for_another(
    name: str, tmp_path: Path
) -> None:
    books = zip(("a", "b", "c"), (5, 5, 6), strict=True)
    a, b, c = (contents(write_book(25, seed, AS_OF, tmp_path / at / name)) for at, seed in books)
    assert a == b
    assert a != c


def _folders(under: Path) -> tuple[str, str]:
    for name in ("once", "again"):
        (under / name).mkdir()
    return "once", "again"


def test_the_one_who_signs_in_the_demo_is_licensed() -> None:
    name, licence = reviewer()
    assert name in {r.broker for _, r in pairs(demo_book()) if isinstance(r, Organisation)}
    assert licence
