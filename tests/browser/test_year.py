"""The whole year of one account, from gathering to checked, through the desk alone.

A workbook is loaded, a form comes home, the insurer is asked, its offer loaded, the review signed,
the package sent through a real mail server, decisions and payment recorded, cover bound, and the
policy checked: first one that lacks what was agreed, then the corrected one. At the end the ledger
is read and verified. Days move as they would; nobody writes to the store but the desk.
"""

from __future__ import annotations

import io
from collections.abc import Callable, Iterator
from datetime import date
from pathlib import Path

import pytest
from playwright.sync_api import Page
from pypdf import PdfReader, PdfWriter
from tests.browser.conftest import Enter
from tests.browser.test_desk import violations
from tests.office.inbox import Inbox, inbox  # noqa: F401 - a fixture

from quarterday.catalogue.load import reference
from quarterday.core.file.records import Bound, Operations, Organisation, Record, Terms
from quarterday.core.review.case import Case
from quarterday.core.review.state import renewal_at_work, state
from quarterday.intake.write import write_workbook
from quarterday.invent.demo.book import demo_book
from quarterday.store import ledger
from quarterday.store.verify import verify

FILE, RENEWAL = "HW-2001", date(2027, 1, 15)
F = f"/files/{FILE}/"
On = Callable[[date], None]
SLOW = 240_000  # milliseconds: a busy machine is not a failure


@pytest.fixture
def on(monkeypatch: pytest.MonkeyPatch) -> On:
    """Move the desk to a day."""

    def move(day: date) -> None:
        for module in ("guard", "views.diary"):
            monkeypatch.setattr(f"quarterday.desk.{module}.today", lambda: day)

    return move


def records() -> Iterator[Record]:
    """Yield the flagship's records under another name, its operations not confirmed yet."""
    account = next(account for account in demo_book() if account.id == "HW-1001")
    for record in account.records:
        if isinstance(record, Organisation):
            changed = {"name": "The Lantern Hill Fellowship", "registration_number": None}
            yield record.model_copy(update={**changed, "known_as": "Lantern Hill"})
        elif isinstance(record, Operations):
            yield record.model_copy(update={"confirmed_on": None})
        else:
            yield record


def book_of(folder: Path, name: str, *kept: Record) -> str:
    """Write records as a workbook, as somebody would keep it, and return its path."""
    path = folder / f"{name}.xlsx"
    write_workbook(((FILE, record) for record in kept), path)
    return str(path)


def load(page: Page, path: str) -> None:
    page.goto("/load/")
    page.set_input_files("#document", path)
    page.locator("main button.main").click()
    page.locator("form[action$='/accept/']").wait_for()
    tick = page.locator("#with_errors")
    if tick.count():
        tick.check()
    page.locator("form[action$='/accept/'] button").click()
    page.locator(".done").wait_for()


def stands(page: Page) -> str:
    page.goto(F)
    return page.locator(".filehead .state").inner_text()


def done(page: Page) -> None:
    page.locator(".done").wait_for()


def draft(page: Page, folder: Path) -> bytes:
    """Build the package on the file's page and download it."""
    page.goto(F)
    page.locator("form[action$='/build/'] button.main").click()
    done(page)
    with page.expect_download() as coming:
        page.locator("#papers table a").first.click()
    path = folder / "package.pdf"
    coming.value.save_as(path)
    return path.read_bytes()


def filled(pdf: bytes, answers: dict[str, str]) -> bytes:
    """Return the package with fields filled in by a common program for PDF (pypdf)."""
    writer = PdfWriter(clone_from=PdfReader(io.BytesIO(pdf)))
    for sheet in writer.pages:
        writer.update_page_form_field_values(sheet, answers, auto_regenerate=False)
    out = io.BytesIO()
    writer.write(out)
    return out.getvalue()


def axe(page: Page, found: dict[str, list[tuple[str, str]]]) -> None:
    found[page.url.partition(FILE)[2]] = violations(page)


def test_the_year_of_one_account(
    enter: Enter, on: On, tmp_path: Path, inbox: Inbox  # noqa: F811
) -> None:
    found: dict[str, list[tuple[str, str]]] = {}
    everything = list(records())
    offered = next(r for r in everything if isinstance(r, Terms) and r.stage == "offered")
    page = enter("ann")
    page.set_default_timeout(SLOW)

    on(date(2026, 9, 21))  # gathering
    load(page, book_of(tmp_path, "book", *(r for r in everything if r is not offered)))
    assert stands(page) == "gathering"
    pdf = draft(page, tmp_path)

    on(date(2026, 10, 5))  # the forms come home
    form = tmp_path / "form.pdf"
    form.write_bytes(filled(pdf, {
        "contacts.treasurer.phone": "705-555-0188", "contacts-form.confirmed.by": "Priya Nathan",
        "operations.attendance": "180", "operations-form.confirmed.by": "Priya Nathan",
    }))  # fmt: skip
    page.goto(f"{F}forms/")
    axe(page, found)
    page.set_input_files("#document", str(form))
    page.locator("form[enctype] button.main").click()
    page.locator(".proposals").first.wait_for()
    axe(page, found)
    page.locator("button[name=every]").click()
    done(page)
    assert stands(page) == "reviewing"

    page.goto(f"{F}request/")  # asked
    axe(page, found)
    page.locator("form.box button.main").click()
    done(page)
    assert stands(page) == "asked"

    on(date(2026, 11, 16))  # the offer comes
    load(page, book_of(tmp_path, "offer", offered))
    assert stands(page) == "offered"
    for name in ("compare", "pay", "premium"):
        page.goto(f"{F}{name}/")
        axe(page, found)

    on(date(2026, 11, 25))  # signed, built, sent
    page.goto(F)
    page.check("#read")
    page.locator("form[action$='/sign/'] button.main").click()
    done(page)
    draft(page, tmp_path)
    page.goto(f"{F}send/?to=treasurer")
    axe(page, found)
    page.fill("#address", "priya@lanternhill.example.org")
    page.locator("form.wider button.main").click()
    done(page)
    assert [message["To"].addresses[0].username for message in inbox.taken] == ["priya"]
    assert stands(page) == "with leaders"

    on(date(2026, 12, 10))  # the leaders decide, and choose how to pay
    page.goto(f"{F}decisions/")
    page.evaluate("document.querySelectorAll('details').forEach((one) => { one.open = true })")
    axe(page, found)
    question = page.locator("article", has=page.locator("input[value='option/by-laws/*']"))
    question.locator("select[name=answer]").select_option("take-it")
    question.locator("input[name=by]").fill("The wardens")
    question.locator("button.main").click()
    done(page)
    page.check("#pl-ten-withdrawals")
    page.fill("#p-by", "Priya Nathan")
    page.locator("form[action$='/payment/'] button.main").click()
    done(page)
    assert stands(page) == "settling"
    page.goto(f"{F}request/")
    page.locator("form.box button.main").click()
    done(page)

    on(date(2027, 1, 12))  # bound
    page.goto(f"{F}bind/")
    assert page.locator("input[name=accepted]:checked").count() == 1
    axe(page, found)
    page.fill("#by", "Ines Marlow")
    page.fill("#binder", "B-77")
    page.locator("button.main").click()
    done(page)
    assert stands(page) == "bound"

    on(date(2027, 1, 28))  # the policy comes, and lacks what was agreed
    (bound,) = ledger.load(FILE).all(Bound)
    policy = bound.agreed.model_copy(update={"stage": "issued", "options": ()})
    load(page, book_of(tmp_path, "thin", policy.model_copy(
        update={"coverages": offered.coverages})))  # fmt: skip
    assert stands(page) == "bound"
    assert "less than was agreed" in page.locator("#matters").inner_text()
    page.goto(f"{F}check/")
    axe(page, found)
    assert page.locator("tbody tr").count() == 1
    page.fill("#words", "Asked Ines Marlow to correct it from the first day.")
    page.locator("button.main").click()
    done(page)

    load(page, book_of(tmp_path, "policy", policy))  # corrected: to be checked again
    page.goto(f"{F}check/")
    page.locator("button.main").click()
    done(page)
    axe(page, found)
    assert found == {address: [] for address in found}

    file = ledger.load(FILE)
    case = Case(file, reference(), date(2027, 1, 28))
    assert state(case, RENEWAL) == "checked"
    assert renewal_at_work(case) == date(2028, 1, 15)
    acts = [entry.act for entry in ledger.entries(FILE) if entry.act != "load"]
    assert list(dict.fromkeys(acts)) == [
        "build", "read", "request", "sign", "deliver", "decide", "choose-payment", "bind", "check",
    ]  # fmt: skip
    assert all(entry.by.startswith("Ann <") for entry in ledger.entries(FILE))
    page.goto(f"{F}history/")
    assert page.locator(".entries > li").count() == min(100, file.seq)
    report = verify(FILE)
    assert (report.is_sound, report.entries) == (True, file.seq)
