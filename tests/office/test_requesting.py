"""Asking the insurer: what was changed and decided since the last request, and nothing else."""

from __future__ import annotations

import csv
import io
import json
import subprocess
from datetime import date
from decimal import Decimal
from pathlib import Path

import openpyxl
import pytest
from tests.office.conftest import edit
from tests.office.test_returning import back, package, take, write
from tests.papers.reading import reader

from quarterday.catalogue.load import reference
from quarterday.core.dates import Period
from quarterday.core.file.records import Building, Decision, RequestSent
from quarterday.core.money import Money
from quarterday.invent.demo.book import HERE as DEMO_DATA
from quarterday.office import bordereau, requesting, undoing
from quarterday.office.brand import FILE_NAME, brokerage
from quarterday.office.requesting import Prepared
from quarterday.office.trouble import Trouble
from quarterday.store import ledger

DAY = date(2026, 12, 4)
RENEWAL = date(2027, 1, 15)


def prepared(file: str, language: str = "en") -> Prepared:
    house = brokerage(DEMO_DATA / FILE_NAME)
    return requesting.prepare(file, reference(), house, DAY, language)


def asked(made: Prepared) -> set[tuple[str, str, str, str]]:
    rows = csv.DictReader(io.StringIO(made.csv.decode("utf-8-sig")))
    return {(r["kind"], r["field"], r["was"], r["now"]) for r in rows}


@pytest.fixture
def changed(flagship: str) -> str:
    """The flagship after a form came back: a new roof, and a larger sum for the hall."""
    answers = {"buildings.hall.roof_year": "2024", "sums.hall.building": "1650000",
               "contacts.warden.phone": "705-555-0122"}  # fmt: skip
    take(back(package(flagship), answers))
    return flagship


def test_what_a_form_changed_is_asked_and_who_the_contacts_are_is_not(changed: str) -> None:
    assert asked(prepared(changed)) == {
        ("building", "roof_year", "2021", "2024"),
        ("terms", "limit", "1423000.00", "1650000.00"),
    }


def test_what_a_workbook_brought_is_not_asked(flagship: str) -> None:
    with pytest.raises(Trouble) as refused:
        prepared(flagship)
    assert refused.value.words.id == "request-nothing"


def test_only_what_came_after_the_last_request_is_asked_again(changed: str) -> None:
    requesting.send(prepared(changed), by="ann")
    with pytest.raises(Trouble):
        prepared(changed)
    hall = ledger.load(changed).get(Building, "hall")
    assert hall is not None
    write(changed, Building.model_validate({**dict(hall), "sump_pump": True, "roof_year": 2025}))
    made = prepared(changed)
    assert made.request.number == 2
    assert ("building", "roof_year", "2021", "2025") in asked(made)
    assert not any(kind == "terms" for kind, *_ in asked(made))


def test_a_change_that_was_taken_back_is_not_asked(changed: str) -> None:
    hall = ledger.load(changed).get(Building, "hall")
    assert hall is not None
    write(changed, Building.model_validate({**dict(hall), "roof_year": 2021}))
    assert {kind for kind, *_ in asked(prepared(changed))} == {"terms"}


@pytest.mark.parametrize(("answer", "count"), [("take-it", 1), ("leave-it", 0), ("later", 0)])
def test_a_decision_is_passed_on_when_it_asks_for_cover(
    answer: str, count: int, flagship: str
) -> None:
    record = Decision.model_validate(
        {"renewal": RENEWAL, "question": "option/by-laws/*", "answer": answer,
         "decided_on": DAY, "by": "Priya Nathan"}
    )  # fmt: skip
    hall = ledger.load(flagship).get(Building, "hall")
    assert hall is not None
    write(flagship, record)
    write(flagship, Building.model_validate({**dict(hall), "roof_year": 2025}))
    found = [row for row in asked(prepared(flagship)) if row[0] == "decision"]
    assert len(found) == count


def test_the_request_is_kept_and_recorded_and_changes_nothing_of_the_review(changed: str) -> None:
    before = ledger.load(changed).last_change
    requesting.send(prepared(changed), by="ann")
    file = ledger.load(changed)
    (sent,) = file.all(RequestSent)
    assert (sent.number, sent.to, sent.changes) == (1, "Larkmoor Mutual Insurance", 2)
    assert file.last_change == before


def test_what_a_program_reads_says_the_same_as_the_table(changed: str) -> None:
    made = prepared(changed)
    told = json.loads(made.json)
    assert (told["policy_number"], told["renewal"], told["number"]) == ("LM-20417", "2027-01-15", 1)
    assert {
        (r["kind"], r["field"], str(r["was"]), str(r["now"])) for r in told["changes"]
    } == asked(made)
    assert {r["way"] for r in told["changes"]} == {"form"}


GONE = {
    "en": ("please change one thing in the policy, and disregard one that we asked for",
           "Please disregard", "take it 1, sent December 4, 2026",
           "2025, and no longer 2024 as", "in our request 1 of December 4, 2026"),
    "fr": ("modifier un point de la police et ne plus tenir compte d’un point demandé auparavant",
           "Veuillez ne plus tenir compte de ce qui suit", "accepter 1, envoyée le 4 décembre 2026",
           "2025, et non plus 2024 comme dans notre demande 1 du 4 décembre 2026"),
}  # fmt: skip


@pytest.fixture
def turned(flagship: str) -> str:
    """The flagship: an option was taken and asked, then undone; a fact was asked, then another."""
    write(flagship, taken())
    roof(flagship, 2024)
    requesting.send(prepared(flagship), by="ann")
    undoing.undo_at_terminal(flagship, ledger.load(flagship).entry_of(taken()).seq, by="ann")
    roof(flagship, 2025)
    return flagship


def taken() -> Decision:
    return Decision.model_validate(
        {"renewal": RENEWAL, "question": "option/by-laws/*", "answer": "take-it",
         "decided_on": DAY, "by": "Priya Nathan"}
    )  # fmt: skip


def roof(file: str, year: int) -> None:
    hall = ledger.load(file).get(Building, "hall")
    assert hall is not None
    write(file, Building.model_validate({**dict(hall), "roof_year": year}))


@pytest.mark.parametrize("language", ["en", "fr"])
def test_the_letter_says_what_is_asked_no_more(language: str, turned: str, tmp_path: Path) -> None:
    text = told_by(prepared(turned, language), tmp_path)
    for wanted in GONE[language]:
        assert wanted in text


def test_a_program_is_told_what_is_asked_no_more_and_the_record_counts_it(turned: str) -> None:
    made = prepared(turned)
    table = {r["kind"]: r for r in csv.DictReader(io.StringIO(made.csv.decode("utf-8-sig")))}
    names = ("ask", "was", "now", "earlier", "earlier_number", "earlier_on")
    assert {kind: tuple(row[name] for name in names) for kind, row in table.items()} == {
        "decision": ("disregard", "", "", "take-it", "1", "2026-12-04"),
        "building": ("change", "2021", "2025", "2024", "1", "2026-12-04"),
    }
    for row in json.loads(made.json)["changes"]:
        assert {k: "" if v is None else str(v) for k, v in row.items()} == table[row["kind"]]
    requesting.send(made, by="ann")
    assert [(r.changes, r.taken_back) for r in ledger.load(turned).all(RequestSent)] == [
        (2, 0), (2, 1)
    ]  # fmt: skip
    with pytest.raises(Trouble):
        prepared(turned)


def test_a_sum_that_a_form_brought_and_that_is_undone_is_asked_no_more(changed: str) -> None:
    requesting.send(prepared(changed), by="ann")
    file = ledger.load(changed)
    wished = file.terms(RENEWAL, "requested")
    assert wished is not None
    undoing.undo_at_terminal(changed, file.entry_of(wished).seq, by="ann")
    (gone,) = prepared(changed).request.asked
    assert gone.is_gone
    assert gone.earlier is not None
    assert (gone.earlier.number, gone.earlier.value) == (1, Money(Decimal(1650000), "CAD"))


def told_by(made: Prepared, folder: Path) -> str:
    """Return a letter's text, read by poppler."""
    path = folder / "letter.pdf"
    path.write_bytes(made.pdf)
    told = subprocess.run(["pdftotext", str(path), "-"], capture_output=True,
                          check=True).stdout.decode()  # fmt: skip
    return " ".join(told.split())


LETTER = {
    "en": ("Parish hall: Year the roof was renewed", "Building, Parish hall", "$1,650,000", "2024"),
    "fr": ("Parish hall : Année de réfection du toit", "1 650 000 $", "Veuillez inscrire"),
}


@pytest.mark.parametrize("language", ["en", "fr"])
def test_the_letter_says_it_in_both_languages(language: str, changed: str, tmp_path: Path) -> None:
    made = prepared(changed, language)
    text = told_by(made, tmp_path)
    for wanted in LETTER[language]:
        assert wanted in text
    assert "LM-20417" in text
    assert len(reader(made.pdf).pages) == 1


def test_the_same_request_makes_the_same_bytes(changed: str) -> None:
    assert prepared(changed).pdf == prepared(changed).pdf


def test_a_text_that_looks_like_a_formula_is_guarded(flagship: str) -> None:
    hall = ledger.load(flagship).get(Building, "hall")
    assert hall is not None
    write(flagship, Building.model_validate({**dict(hall), "use": "=HYPERLINK(1)"}))
    assert ("building", "use", hall.use or "", "'=HYPERLINK(1)") in asked(prepared(flagship))


DECEMBER, JANUARY = (
    Period(date(2026, 12, 1), date(2027, 1, 1)), Period(date(2027, 1, 1), date(2027, 2, 1)),
)  # fmt: skip


def test_the_bordereau_lists_renewals_and_requests_of_the_month(
    changed: str, tmp_path: Path
) -> None:
    """The workbook is read back by openpyxl, the table by the csv module."""
    requesting.send(prepared(changed), by="ann")
    (row,) = bordereau.bordereau(DECEMBER, ledger.many())  # asked in December
    assert (row["file"], row["requests"], row["changes_asked"]) == (changed, 1, 2)
    assert row["premium_expiring"] == Decimal("14059.00")
    (renews,) = bordereau.bordereau(JANUARY, ledger.many())  # renews in January
    assert renews["requests"] == 0
    book, table = bordereau.write_bordereau(DECEMBER, [row], tmp_path)
    sheet = openpyxl.load_workbook(book).active
    assert sheet is not None
    values = [[cell.value for cell in line] for line in sheet.iter_rows()]
    assert values[0][0] == "file"
    assert values[1][0] == changed
    assert values[1][9] == 14059
    lines = list(csv.DictReader(io.StringIO(table.read_text("utf-8-sig"))))
    assert [line["premium_expiring"] for line in lines] == ["14059.00"]
    assert (
        list(bordereau.bordereau(Period(date(2026, 3, 1), date(2026, 4, 1)), ledger.many())) == []
    )


def test_editing_a_contact_alone_asks_nothing(flagship: str) -> None:
    edit(flagship, phone="705-555-0100")
    with pytest.raises(Trouble):
        prepared(flagship)
