"""Loading in the browser: preview first, then all of it or nothing."""

from __future__ import annotations

import io
from datetime import UTC, datetime, timedelta
from pathlib import Path
from typing import Any

import pytest
from django.core.files.uploadedfile import SimpleUploadedFile
from django.test import Client
from tests.desk.conftest import FLAGSHIP, OTHER, As

from quarterday.core.file.records import Building, Contact
from quarterday.intake.write import write_workbook
from quarterday.invent.demo.book import demo_book
from quarterday.people.models import Person, Upload
from quarterday.store import ledger
from quarterday.store.models import Original


def workbook(tmp_path: Path, *ids: str, **changed: Any) -> bytes:
    """Return accounts of the demo as a workbook; ``changed`` changes their buildings' fields."""
    path = tmp_path / "book.xlsx"
    chosen = [account for account in demo_book() if account.id in ids]
    records = [
        (a.id, r.model_copy(update=changed) if isinstance(r, Building) else r)
        for a in chosen for r in a.records
    ]  # fmt: skip
    write_workbook(iter(records), path)
    return path.read_bytes()


def send(browser: Client, content: bytes, name: str = "book.xlsx") -> Any:
    return browser.post("/load/", {"document": SimpleUploadedFile(name, content)})


def preview(browser: Client, content: bytes) -> Any:
    return browser.get(send(browser, content)["Location"])


def accept(browser: Client, page: Any, **form: str) -> Any:
    token, mark = page.context["preview"].token, page.context["preview"].mark
    return browser.post(f"/load/{token}/accept/", {"mark": mark, **form})


def test_a_workbook_is_previewed_then_accepted_and_its_rows_are_the_origin(
    db: None, signed_in: As, tmp_path: Path
) -> None:
    browser = signed_in("maria")
    page = preview(browser, workbook(tmp_path, FLAGSHIP))
    assert page.status_code == 200
    assert ledger.files() == ()
    assert accept(browser, page).status_code == 302
    assert ledger.files() == (FLAGSHIP,)
    entry = ledger.entries(FLAGSHIP)[0]
    assert entry.by == "Maria <maria@holliswren.example.org>"
    assert entry.origin.places[0].row
    assert Original.objects.filter(digest=entry.origin.document).exists()
    assert Upload.objects.count() == 0


def test_what_is_left_writes_nothing_and_is_forgotten(
    db: None, signed_in: As, tmp_path: Path
) -> None:
    browser = signed_in("maria")
    page = preview(browser, workbook(tmp_path, FLAGSHIP))
    browser.post(f"/load/{page.context['preview'].token}/")
    assert Upload.objects.count() == 0
    assert ledger.files() == ()
    assert Original.objects.count() == 0


def test_when_the_book_changed_since_the_preview_it_is_shown_again_instead_of_written(
    book: None, signed_in: As, tmp_path: Path
) -> None:
    browser = signed_in("maria")
    page = preview(browser, workbook(tmp_path, FLAGSHIP, storeys=None, year_built=1950))
    browser.post(f"/files/{FLAGSHIP}/note/", {"text": "meanwhile", "seen": "1"})
    before = len(ledger.entries(FLAGSHIP))
    answer = accept(browser, page)
    assert answer.status_code == 409
    assert answer.context["moved"]
    assert len(ledger.entries(FLAGSHIP)) == before
    assert accept(browser, answer).status_code == 302


def test_accepting_twice_writes_once(db: None, signed_in: As, tmp_path: Path) -> None:
    browser = signed_in("maria")
    page = preview(browser, workbook(tmp_path, FLAGSHIP))
    assert accept(browser, page).status_code == 302
    count = len(ledger.entries(FLAGSHIP))
    assert accept(browser, page).status_code == 422
    assert len(ledger.entries(FLAGSHIP)) == count


def test_rows_with_faults_go_on_only_when_the_person_accepts_leaving_them_out(
    db: None, signed_in: As, tmp_path: Path
) -> None:
    import openpyxl

    book = openpyxl.load_workbook(io.BytesIO(workbook(tmp_path, FLAGSHIP)))
    sheet = book["Contacts"]
    headings = [cell.value for cell in sheet[1]]
    sheet.cell(2, headings.index("role") + 1).value = "wizard of everything"
    out = io.BytesIO()
    book.save(out)
    browser = signed_in("maria")
    page = preview(browser, out.getvalue())
    assert page.context["needs_acceptance"]
    assert accept(browser, page).status_code == 422
    assert ledger.files() == ()
    assert accept(browser, page, with_errors="yes").status_code == 302
    demo = next(a for a in demo_book() if a.id == FLAGSHIP)
    contacts = [r for r in demo.records if isinstance(r, Contact)]
    assert len(ledger.load(FLAGSHIP).contacts) == len(contacts) - 1


@pytest.mark.parametrize("ids", [(OTHER,), (FLAGSHIP, OTHER)])
def test_nobody_loads_into_another_offices_files_old_or_new(
    ids: tuple[str, ...], db: None, signed_in: As, tmp_path: Path
) -> None:
    browser = signed_in("ann")
    answer = preview(browser, workbook(tmp_path, *ids))
    assert answer.status_code == 403
    token = Upload.objects.get().token
    assert browser.post(f"/load/{token}/accept/", {"mark": ""}).status_code == 403
    assert ledger.files() == ()


def test_a_waiting_document_is_its_persons_alone(db: None, signed_in: As, tmp_path: Path) -> None:
    token = send(signed_in("maria"), workbook(tmp_path, FLAGSHIP))["Location"].split("/")[2]
    assert signed_in("ann").get(f"/load/{token}/").status_code == 422
    signed_in("ann").post(f"/load/{token}/")
    assert Upload.objects.count() == 1


@pytest.mark.parametrize(
    ("name", "content", "says"),
    [
        ("book.pdf", b"%PDF-1.7", "of a kind that cannot be read"),
        ("book", b"x", "of a kind that cannot be read"),
        ("book.xlsx.exe", b"MZ", "of a kind that cannot be read"),
        ("book.xlsx", b"", "is empty"),
    ],
)
def test_a_document_of_the_wrong_kind_is_refused_in_a_sentence(
    name: str, content: bytes, says: str, db: None, signed_in: As
) -> None:
    answer = send(signed_in("maria"), content, name)
    # an empty file never reaches the act: the browser's form library drops its content
    assert answer.status_code == 422
    assert says in answer.content.decode()
    assert Upload.objects.count() == 0


@pytest.mark.parametrize("content", [b"not a workbook", b"PK\x03\x04 broken", b"\x00" * 500])
def test_a_document_that_cannot_be_read_is_told_in_a_sentence(
    content: bytes, db: None, signed_in: As
) -> None:
    answer = preview(signed_in("maria"), content)
    assert answer.status_code == 422
    assert "Traceback" not in answer.content.decode()


def test_a_document_that_is_too_large_is_refused(db: None, signed_in: As, settings: Any) -> None:
    settings.MOST_UPLOADED = 1024
    answer = send(signed_in("maria"), b"x" * 2000)
    assert answer.status_code == 422
    assert "megabytes" in answer.content.decode()


def test_a_name_cannot_lead_out_of_its_folder(db: None, signed_in: As, tmp_path: Path) -> None:
    browser = signed_in("maria")
    for name in ("../../evil.xlsx", "..\\..\\evil.xlsx", "/etc/evil.xlsx"):
        send(browser, workbook(tmp_path, FLAGSHIP), name)
    assert {upload.name for upload in Upload.objects.all()} == {"evil.xlsx"}


def test_what_nobody_accepted_is_forgotten_after_a_day(
    db: None, signed_in: As, tmp_path: Path, people: dict[str, Person]
) -> None:
    browser = signed_in("maria")
    send(browser, workbook(tmp_path, FLAGSHIP))
    Upload.objects.update(at=datetime.now(UTC) - timedelta(days=1, minutes=1))
    send(browser, workbook(tmp_path, OTHER))
    assert Upload.objects.count() == 1
