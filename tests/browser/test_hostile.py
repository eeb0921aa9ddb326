"""Names as nobody has them: no page breaks under them, runs them, or loses what was typed."""

from __future__ import annotations

import pytest
from playwright.sync_api import Page
from tests.browser.conftest import SLOW, Enter
from tests.browser.scenes import F
from tests.browser.wcag import violations
from tests.desk.conftest import FLAGSHIP, PASSWORD

from quarterday.core.file.entry import Draft, Origin
from quarterday.core.file.records import Bound, Building, Contact, Organisation
from quarterday.store import ledger

NAMES = {
    "unbroken": "W" * 300,
    "markup": "<script>window.broken = 1</script><img src=x onerror=window.broken=1>" * 4,
    "right-to-left": "\u202eקהילת שלום\u202c العربية 🙏🏽👩‍👩‍👧‍👦 " * 7,
}
PAGES = ("/?from=&until=", "/diary/", F, f"{F}history/", f"{F}forms/", f"{F}request/",
         f"{F}compare/", f"{F}pay/", f"{F}premium/", f"{F}decisions/", f"{F}bind/",
         f"{F}edit/?kind=building&key=hall")  # fmt: skip


def rename(name: str) -> None:
    """Give the organisation, its hall and its first contact a name."""
    file = ledger.load(FLAGSHIP)
    hall = file.get(Building, "hall")
    assert hall is not None
    records: list[Organisation | Building | Contact] = [file.organisation, hall, file.contacts[0]]
    drafts = []
    for record in records:
        made = type(record).model_validate({**dict(record), "name": name[:300].strip()})
        drafts.append(Draft("edit", made.kind, made.key, made.body(), Origin(way="office")))
    ledger.append(FLAGSHIP, drafts, by="ann", expected_seq=None)


@pytest.mark.parametrize("name", NAMES)
def test_no_page_breaks_under_a_name_that_nobody_has(name: str, enter: Enter) -> None:
    page = enter("ann", width=320)
    page.set_default_timeout(SLOW)
    rename(NAMES[name])
    for address in PAGES:
        page.goto(address)
        wide = page.evaluate("document.documentElement.scrollWidth")
        assert wide <= 320, f"{address} is {wide} pixels wide"
        assert page.evaluate("window.broken") is None, address
        assert violations(page) == [], address


def typed(page: Page) -> dict[str, str]:
    return {"by": page.input_value("#by"), "words": page.input_value("#words")}


def test_what_was_typed_when_the_session_ran_out_is_sent_after_signing_in(enter: Enter) -> None:
    page = enter("ann")
    page.goto(f"{F}bind/")
    page.fill("#by", "Ines Marlow")
    page.fill("#words", "By telephone,\nat ten.")
    page.context.clear_cookies(name="quarterday_session")
    page.locator("main button.main").click()
    page.fill("#email", "ann@holliswren.example.org")
    page.fill("#password", PASSWORD)
    page.keyboard.press("Enter")
    page.locator("dl.pairs").wait_for()
    assert "By telephone," in page.locator("main").inner_text()
    page.locator("main button.main").click()
    page.locator(".done").wait_for()
    (bound,) = ledger.load(FLAGSHIP).all(Bound)
    assert (bound.by, bound.words) == ("Ines Marlow", "By telephone,\nat ten.")


def test_the_back_button_shows_what_was_typed_and_writes_nothing_twice(enter: Enter) -> None:
    page = enter("ann")
    page.goto(f"{F}bind/")
    page.fill("#by", "Ines Marlow")
    page.locator("main button.main").click()
    page.locator(".done").wait_for()
    before = ledger.load(FLAGSHIP).seq
    page.go_back()
    page.locator("main button.main").wait_for()
    page.fill("#by", "Ines Marlow")
    page.locator("main button.main").click()
    page.locator(".done, [role=alert]").first.wait_for()
    assert ledger.load(FLAGSHIP).seq == before


def test_a_refused_field_keeps_all_that_was_typed(enter: Enter) -> None:
    page = enter("ann")
    page.goto(f"{F}bind/")
    page.fill("#by", "Ines Marlow")
    page.fill("#words", "<b>At ten</b> 🙏🏽")
    page.locator("#on").evaluate(
        "(one) => { one.removeAttribute('max'); one.value = '2099-01-01' }"
    )
    page.locator("main button.main").click()
    page.locator("[role=alert]").wait_for()
    assert typed(page) == {"by": "Ines Marlow", "words": "<b>At ten</b> 🙏🏽"}
