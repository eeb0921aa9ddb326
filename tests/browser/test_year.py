"""The whole year of one account, from gathering to checked, through the desk alone.

A workbook is loaded, a form comes home, the insurer is asked, its offer loaded, the review signed,
the package sent through a real mail server, decisions and payment recorded, cover bound, and the
policy checked: first one that lacks what was agreed, then the corrected one. At the end the ledger
is read and verified. Days move as they would; nobody writes to the store but the desk.
"""

from __future__ import annotations

import io
import time
from collections.abc import Callable, Iterator
from dataclasses import dataclass, field
from datetime import date
from pathlib import Path

import pytest
from playwright.sync_api import Page, Route
from pypdf import PdfReader, PdfWriter
from tests.browser.conftest import SLOW, Enter
from tests.browser.wcag import violations
from tests.desk.conftest import FLAGSHIP
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
    """Wait for the page after an act; what went wrong is what the page says."""
    page.locator(".done, [role=alert]").first.wait_for()
    assert page.locator(".done").count(), page.locator("main").inner_text()[:600]


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


@dataclass
class Year:
    """The browser, the days, and what axe found on every page of the year."""

    page: Page
    on: On
    folder: Path
    offered: Terms
    found: dict[str, list[tuple[str, str]]] = field(default_factory=dict)

    def open(self, name: str) -> None:
        self.page.goto(f"{F}{name}")

    def axe(self) -> None:
        self.found[self.page.url.partition(FILE)[2]] = violations(self.page)

    def press(self, button: str = "main button.main") -> None:
        self.page.locator(button).click()
        done(self.page)


def gathering(year: Year, everything: list[Record]) -> bytes:
    year.on(date(2026, 9, 21))
    load(year.page, book_of(year.folder, "book", *(r for r in everything if r != year.offered)))
    assert stands(year.page) == "gathering"
    return draft(year.page, year.folder)


def the_forms_come_home(year: Year, pdf: bytes) -> None:
    year.on(date(2026, 10, 5))
    form = year.folder / "form.pdf"
    form.write_bytes(filled(pdf, {
        "contacts.treasurer.phone": "705-555-0188", "contacts-form.confirmed.by": "Priya Nathan",
        "operations.attendance": "180", "operations-form.confirmed.by": "Priya Nathan",
    }))  # fmt: skip
    year.open("forms/")
    year.axe()
    year.page.set_input_files("#document", str(form))
    year.page.locator("form[enctype] button.main").click()
    year.page.locator(".proposals").first.wait_for()
    year.axe()
    year.press("button[name=every]")
    assert stands(year.page) == "reviewing"


def the_insurer_is_asked(year: Year, expected: str) -> None:
    year.open("request/")
    year.axe()
    year.press("#recorded button.main")
    assert stands(year.page) == expected


def the_offer_comes(year: Year) -> None:
    year.on(date(2026, 11, 16))
    load(year.page, book_of(year.folder, "offer", year.offered))
    assert stands(year.page) == "offered"
    for name in ("compare/", "pay/", "premium/"):
        year.open(name)
        year.axe()


def the_review_is_signed_and_the_package_sent(year: Year, inbox: Inbox) -> None:  # noqa: F811
    year.on(date(2026, 11, 25))
    year.open("")
    year.page.check("#read")
    year.press("form[action$='/sign/'] button.main")
    draft(year.page, year.folder)
    year.open("send/?to=treasurer")
    year.axe()
    year.page.fill("#address", "priya@lanternhill.example.org")
    year.press("form.wider button.main")
    assert [message["To"].addresses[0].username for message in inbox.taken] == ["priya"]
    assert stands(year.page) == "with leaders"


def the_leaders_decide(year: Year) -> None:
    year.on(date(2026, 12, 10))
    year.open("decisions/")
    year.page.evaluate("document.querySelectorAll('details').forEach((one) => { one.open = true })")
    year.axe()
    question = year.page.locator("article", has=year.page.locator("[value='option/by-laws/*']"))
    question.locator("select[name=answer]").select_option("take-it")
    question.locator("input[name=by]").fill("The wardens")
    question.locator("button.main").click()
    done(year.page)
    year.page.check("#pl-ten-withdrawals")
    year.page.fill("#p-by", "Priya Nathan")
    year.press("form[action$='/payment/'] button.main")
    assert stands(year.page) == "settling"


def it_is_bound(year: Year) -> Terms:
    year.on(date(2027, 1, 12))
    year.open("bind/")
    assert year.page.locator("input[name=accepted]:checked").count() == 1
    year.axe()
    year.page.fill("#by", "Ines Marlow")
    year.page.fill("#binder", "B-77")
    year.press()
    assert stands(year.page) == "bound"
    (bound,) = ledger.load(FILE).all(Bound)
    return bound.agreed.model_copy(update={"stage": "issued", "options": ()})


def the_policy_comes_and_lacks_what_was_agreed(year: Year, policy: Terms) -> None:
    year.on(date(2027, 1, 28))
    thin = policy.model_copy(update={"coverages": year.offered.coverages})
    load(year.page, book_of(year.folder, "thin", thin))
    assert stands(year.page) == "bound"
    assert "less than was agreed" in year.page.locator("#matters").inner_text()
    year.open("check/")
    year.axe()
    assert year.page.locator("tbody tr").count() == 1
    year.page.fill("#words", "Asked Ines Marlow to correct it from the first day.")
    year.press()


def it_is_corrected_and_checked_again(year: Year, policy: Terms) -> None:
    load(year.page, book_of(year.folder, "policy", policy))
    year.open("check/")
    year.press()
    year.axe()


def the_ledger_tells_it(page: Page) -> None:
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
    assert (report.is_sound, report.entries) == (True, file.seq), report


def test_the_year_of_one_account(
    enter: Enter,
    on: On,
    tmp_path: Path,
    inbox: Inbox,  # noqa: F811
) -> None:
    everything = list(records())
    offered = next(r for r in everything if isinstance(r, Terms) and r.stage == "offered")
    year = Year(enter("ann"), on, tmp_path, offered)
    year.page.set_default_timeout(SLOW)
    the_forms_come_home(year, gathering(year, everything))
    the_insurer_is_asked(year, "asked")
    the_offer_comes(year)
    the_review_is_signed_and_the_package_sent(year, inbox)
    the_leaders_decide(year)
    the_insurer_is_asked(year, "settling")
    policy = it_is_bound(year)
    the_policy_comes_and_lacks_what_was_agreed(year, policy)
    it_is_corrected_and_checked_again(year, policy)
    assert year.found == {address: [] for address in year.found}
    the_ledger_tells_it(year.page)


def test_a_slow_network_and_an_impatient_hand_bind_once(enter: Enter) -> None:
    """Each answer takes a second; the button is pressed three times, then Back, and again."""
    page = enter("ann")
    page.set_default_timeout(SLOW)
    page.goto(f"/files/{FLAGSHIP}/bind/")

    def slow(route: Route) -> None:
        time.sleep(1)
        route.continue_()

    page.route("**/bind/", slow)
    page.fill("#by", "Ines Marlow")
    for _ in range(3):
        page.locator("main button.main").click(no_wait_after=True)
    done(page)
    page.go_back()
    page.locator("main button.main").wait_for()
    page.fill("#by", "Ines Marlow")
    page.locator("main button.main").click()
    page.locator(".done, [role=alert]").first.wait_for()
    assert [e.act for e in ledger.entries(FLAGSHIP) if e.kind == Bound.kind] == ["bind"]
