"""A run of packages: few wait at a time, it goes on where it stopped, and nothing is left half."""

from __future__ import annotations

import csv
import hashlib
import json
from collections.abc import Iterator
from dataclasses import replace
from datetime import UTC, date, datetime
from pathlib import Path

import pytest
from tests.office.conftest import DAY, edit

from quarterday.catalogue.load import reference
from quarterday.catalogue.speech import Speech
from quarterday.core.file.entry import Draft, Origin
from quarterday.core.file.records import Organisation, PackageBuilt, Record, Terms
from quarterday.core.given import Unusable
from quarterday.core.words import words
from quarterday.invent.demo.book import HERE as DEMO_DATA
from quarterday.invent.demo.book import demo_book
from quarterday.office import package_run, packages
from quarterday.office.brand import FILE_NAME, brokerage
from quarterday.office.package_run import JOURNAL, Done, Result
from quarterday.office.packages import Built, Composed, Order, Withheld
from quarterday.papers.press import Unprintable
from quarterday.store import ledger

FILES = ("HW-1001", "HW-1010")
BRAND = brokerage(DEMO_DATA / FILE_NAME)


@pytest.fixture(autouse=True)
def book(db: None) -> None:
    """Two organisations, and one of which nothing is known but its name."""
    for account in demo_book():
        if account.id in FILES:
            _put(account.id, *account.records)
    _put("HW-9000", Organisation(name="New Hall", province="ON"))


def _put(id: str, *records: Record) -> None:
    origin = Origin(way="workbook", name="book.xlsx")
    drafts = [Draft("load", r.kind, r.key, r.body(), origin) for r in records]
    moment = datetime(2026, 11, 25, tzinfo=UTC)
    ledger.append(id, drafts, by="ann", expected_seq=None, at=moment)


@pytest.fixture(autouse=True)
def here(monkeypatch: pytest.MonkeyPatch) -> list[str]:
    """Build in this process, whose store is the test's; return the ids as they are built."""
    built: list[str] = []

    def batch(
        orders: list[Order], brand: object, out: Path, *, by: str, workers: int
    ) -> Iterator[Built | Withheld]:
        for order in orders:
            built.append(order.file)
            made = packages._work(order, BRAND)
            yield made if isinstance(made, Withheld) else packages.keep(made, out, by)

    monkeypatch.setattr(packages, "batch", batch)
    return built


def orders(*files: str, as_of: date | None = DAY) -> list[Order]:
    return [Order(id, None, as_of, DAY) for id in files or ledger.files()]


def run(out: Path, wanted: list[Order] | None = None) -> list[Result]:
    return list(package_run.run(wanted or orders(), BRAND, out, by="ann"))


def done(results: list[Result]) -> list[Done]:
    return [one for one in results if isinstance(one, Done)]


def test_what_is_built_is_whole_and_what_is_not_has_its_reason(tmp_path: Path) -> None:
    results = run(tmp_path)
    assert {d.file for d in done(results)} == set(FILES)
    (withheld,) = (one for one in results if isinstance(one, Withheld))
    assert withheld.file == "HW-9000"
    assert "HW-9000" in Speech(reference(), "en").say(withheld.reason)
    for one in done(results):
        data = (tmp_path / one.name).read_bytes()
        assert (hashlib.sha256(data).hexdigest(), len(data)) == (one.sha256, one.bytes)
    assert not list(tmp_path.glob("*.part"))


def test_repeated_nothing_is_built_again_and_the_ledger_stays(
    tmp_path: Path, here: list[str]
) -> None:
    run(tmp_path)
    entries = {id: len(ledger.entries(id)) for id in FILES}
    here.clear()
    again = done(run(tmp_path))
    assert here == ["HW-9000"]
    assert [one.earlier_run for one in again] == [True, True]
    assert {id: len(ledger.entries(id)) for id in FILES} == entries


def test_stopped_after_one_it_goes_on_with_the_rest(tmp_path: Path, here: list[str]) -> None:
    going = package_run.run(orders(*FILES), BRAND, tmp_path, by="ann")
    first = next(going)
    assert isinstance(first, Done)
    going.close()  # type: ignore[attr-defined]
    here.clear()
    results = done(run(tmp_path, orders(*FILES)))
    assert here == [id for id in FILES if id != first.file]
    assert {one.file for one in results} == set(FILES)


def test_a_line_that_was_being_written_counts_for_nothing(tmp_path: Path, here: list[str]) -> None:
    run(tmp_path, orders(*FILES))
    journal = tmp_path / JOURNAL
    journal.write_text(journal.read_text("utf-8")[:-40], "utf-8")
    here.clear()
    assert len(done(run(tmp_path, orders(*FILES)))) == 2
    assert len(here) == 1


SPOILED = ["gone", "changed", "edited", "other day", "other brand", "journal elsewhere"]


@pytest.mark.parametrize("how", SPOILED)
def test_what_does_not_stand_any_more_is_built_again(
    how: str, tmp_path: Path, here: list[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    (one,) = done(run(tmp_path, orders(FILES[0])))
    wanted, path = orders(FILES[0]), tmp_path / one.name
    match how:
        case "gone":
            path.unlink()
        case "changed":
            path.write_bytes(path.read_bytes()[:-1])
        case "edited":
            edit(FILES[0], phone="705-555-0177")
        case "other day":
            wanted = orders(FILES[0], as_of=DAY.replace(day=26))
        case "other brand":
            monkeypatch.setattr(package_run, "digest_of", lambda _: "another")
        case _:
            line = json.loads((tmp_path / JOURNAL).read_text("utf-8"))
            line["name"] = f"../{tmp_path.name}/{one.name}"
            (tmp_path / JOURNAL).write_text(json.dumps(line) + "\n", "utf-8")
    here.clear()
    (again,) = done(run(tmp_path, wanted))
    assert here == [FILES[0]]
    assert not again.earlier_run
    assert hashlib.sha256((tmp_path / again.name).read_bytes()).hexdigest() == again.sha256


def test_a_crash_between_keeping_and_writing_leaves_one_entry_and_a_whole_package(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    with monkeypatch.context() as patch:
        patch.setattr(packages, "_write", _killed)
        with pytest.raises(KeyboardInterrupt):
            run(tmp_path, orders(FILES[0]))
    assert not list(tmp_path.glob("*.pdf"))
    (one,) = done(run(tmp_path, orders(FILES[0])))
    assert (tmp_path / one.name).is_file()
    assert len(ledger.load(FILES[0]).all(PackageBuilt)) == 1


def _killed(*_: object) -> Path:
    raise KeyboardInterrupt


def test_terms_that_contradict_themselves_withhold_one_package_and_say_which_clause(
    tmp_path: Path,
) -> None:
    offered = ledger.load(FILES[0]).terms(date(2027, 1, 15), "offered")
    assert offered is not None
    first = offered.coverages[0]
    twice = replace_terms(offered, (*offered.coverages, first))
    _put(FILES[0], twice)
    results = run(tmp_path, orders(*FILES))
    assert [d.file for d in done(results)] == [FILES[1]]
    (withheld,) = (one for one in results if isinstance(one, Withheld))
    assert withheld.reason.id == "package-unusable"


def replace_terms(terms: Terms, coverages: tuple[object, ...]) -> Terms:
    return Terms.model_construct(**{**dict(terms), "coverages": coverages})


FAULTS = [
    (Unusable(words("yes")), "package-unusable"),
    (Unprintable("no letter"), "package-unprintable"),
    (ZeroDivisionError("secret name"), "package-failed"),
]


@pytest.mark.parametrize(("fault", "why"), FAULTS, ids=lambda v: str(v)[:20])
def test_one_file_s_fault_does_not_stop_the_others_and_tells_nothing_personal(
    fault: Exception, why: str, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    compose = packages.compose

    def failing(order: Order, brand: object) -> Composed:
        if order.file == FILES[0]:
            raise fault
        return compose(order, BRAND)

    monkeypatch.setattr(packages, "compose", failing)
    results = run(tmp_path, orders(*FILES))
    assert [d.file for d in done(results)] == [FILES[1]]
    (withheld,) = (one for one in results if isinstance(one, Withheld))
    said = [Speech(reference(), language).say(withheld.reason) for language in ("en", "fr")]
    assert withheld.reason.id == why
    assert not [text for text in said if "secret" in text or "{" in text]


def test_the_report_names_what_was_built_and_what_was_withheld_and_why(tmp_path: Path) -> None:
    path = package_run.report(run(tmp_path), tmp_path, Speech(reference(), "en"))
    rows = list(csv.DictReader(path.read_text("utf-8-sig").splitlines()))
    assert [row["file"] for row in rows] == ["HW-1001", "HW-1010", "HW-9000"]
    assert [bool(row["sha256"]) for row in rows] == [True, True, False]
    assert [bool(row["withheld"]) for row in rows] == [False, False, True]
    again = package_run.report(run(tmp_path), tmp_path, Speech(reference(), "fr"))
    assert [row["earlier_run"] for row in csv.DictReader(again.open(encoding="utf-8-sig"))] == [
        "yes", "yes", "",
    ]  # fmt: skip


def test_few_packages_wait_in_memory_however_many_are_ordered() -> None:
    class Pool:
        most = waiting = 0

        def submit(self, _: object, order: Order, *__: object) -> object:
            from concurrent.futures import Future

            self.waiting += 1
            self.most = max(self.most, self.waiting)
            future: Future[Withheld] = Future()
            future.set_result(Withheld(order.file, words("yes")))
            return future

    pool, many = Pool(), [Order(str(n), None, DAY, DAY) for n in range(50)]
    found = []
    for one in packages._flowing(pool, many, BRAND, 4):  # type: ignore[arg-type]
        pool.waiting -= 1
        found.append(one.file)
    assert sorted(found, key=int) == [str(n) for n in range(50)]
    assert pool.most <= 5


def test_the_digest_changes_with_the_brokerage() -> None:
    other = BRAND.model_copy(update={"phone": "705-555-0199"})
    assert package_run.digest_of(BRAND) == package_run.digest_of(BRAND)
    assert package_run.digest_of(BRAND) != package_run.digest_of(other)
    assert replace(orders()[0], language="fr") != orders()[0]
