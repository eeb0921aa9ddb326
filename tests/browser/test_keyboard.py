"""The desk without a mouse: a renewal from the day to the message, and each stop of the focus."""

from __future__ import annotations

from typing import Any

import pytest
from playwright.sync_api import Page
from tests.browser.conftest import SLOW, Enter
from tests.browser.scenes import F
from tests.desk.conftest import FLAGSHIP
from tests.office.inbox import Inbox, inbox  # noqa: F401 - a fixture

from quarterday.core.file.records import Decision, Delivery, FindingSetAside, ReviewSigned
from quarterday.store import ledger

MOST = 600  # stops of the focus on one page
STOP = """() => {
  const one = document.activeElement, style = getComputedStyle(one);
  const at = one.getBoundingClientRect();
  const x = Math.min(Math.max(at.left + Math.min(at.width, 12) / 2, 0), innerWidth - 1);
  const y = Math.min(Math.max(at.top + Math.min(at.height, 24) / 2, 0), innerHeight - 1);
  const top = document.elementFromPoint(x, y);
  const all = [...document.querySelectorAll('*')];
  return {
    place: one === document.body ? -1 : all.indexOf(one), html: one.outerHTML.slice(0, 120),
    marked: style.outlineStyle !== 'none' && parseFloat(style.outlineWidth) > 0
      || one.matches("input[type='date']"), // the button of its calendar, inside, is marked alone
    seen: Boolean(top) && (one.contains(top) || top.contains(one)),
  };
}"""


def tab_to(page: Page, selector: str) -> None:
    """Press Tab until the focus is on what the selector names; it must be marked there."""
    for _ in range(MOST):
        page.keyboard.press("Tab")
        if page.evaluate("(what) => document.activeElement.matches(what)", selector):
            assert page.evaluate(STOP)["marked"], selector
            return
    pytest.fail(f"Tab never comes to {selector}")


def enter_key(page: Page) -> None:
    with page.expect_navigation():
        page.keyboard.press("Enter")
    assert page.locator(".done").count(), page.locator("main").inner_text()[:400]


def test_a_renewal_is_worked_from_the_day_to_the_message_with_keys_alone(
    enter: Enter,
    inbox: Inbox,  # noqa: F811
) -> None:
    page = enter("ann")
    page.set_default_timeout(SLOW)
    the_file_is_found(page)
    a_finding_is_set_aside(page)
    a_decision_is_recorded(page)
    the_review_is_signed_and_the_package_built(page)
    the_package_is_sent(page)
    file = ledger.load(FLAGSHIP)
    assert [one.reason for one in file.all(FindingSetAside)] == ["Asked twice."]
    assert [(one.by, one.answer) for one in file.all(Decision)] == [("The wardens", "leave-it")]
    assert len(file.all(ReviewSigned)) == 1
    assert [one.way for one in file.all(Delivery)] == ["e-mail"]
    assert len(inbox.taken) == 1


def the_file_is_found(page: Page) -> None:
    page.goto("/?from=&until=")
    page.keyboard.press("/")
    page.keyboard.type("ebba")
    page.wait_for_function("document.querySelectorAll('#list tbody tr').length === 1")
    tab_to(page, ".list tbody th a")
    page.keyboard.press("Enter")
    page.wait_for_url(f"**{F}")


def a_finding_is_set_aside(page: Page) -> None:
    tab_to(page, ".finding > summary")
    page.keyboard.press("Enter")
    tab_to(page, ".finding details.act:has(form[action$='/set-aside/']) > summary")
    page.keyboard.press("Enter")
    tab_to(page, "[name=reason]")
    page.keyboard.type("Asked twice.")
    tab_to(page, "form[action$='/set-aside/'] button")
    enter_key(page)


def a_decision_is_recorded(page: Page) -> None:
    tab_to(page, ".finding:has(form[action$='/decide/']) > summary")
    page.keyboard.press("Enter")
    tab_to(page, ".finding details.act:has(form[action$='/decide/']) > summary")
    page.keyboard.press("Enter")
    tab_to(page, "[name=answer]")
    page.keyboard.press("ArrowDown")
    tab_to(page, "form[action$='/decide/'] [name=by]")
    page.keyboard.type("The wardens")
    tab_to(page, "form[action$='/decide/'] button")
    enter_key(page)


def the_review_is_signed_and_the_package_built(page: Page) -> None:
    tab_to(page, "#read")
    page.keyboard.press("Space")
    tab_to(page, "form[action$='/sign/'] button")
    enter_key(page)
    tab_to(page, "form[action$='/build/'] button.main")
    enter_key(page)


def the_package_is_sent(page: Page) -> None:
    page.goto(F)
    tab_to(page, "nav.year a[href$='/send/']")
    with page.expect_navigation():
        page.keyboard.press("Enter")
    tab_to(page, "#address")
    page.keyboard.press("Control+a")
    page.keyboard.type("priya@example.org")
    tab_to(page, "form.wider button.main")
    enter_key(page)


def stops(page: Page) -> list[dict[str, Any]]:
    """Return every stop of the focus from the page's beginning until it leaves the page."""
    page.evaluate("document.activeElement.blur()")
    found: list[dict[str, Any]] = []
    for _ in range(MOST):
        page.keyboard.press("Tab")
        stop = page.evaluate(STOP)
        if stop["place"] < 0 or (found and stop["place"] == found[0]["place"]):
            return found
        found.append(stop)
    pytest.fail("The focus never leaves the page.")


PAGES = (
    "/?from=&until=", "/diary/", "/load/", "/keys/", F, f"{F}forms/", f"{F}decisions/",
    f"{F}bind/", f"{F}pay/", f"{F}premium/", f"{F}history/",
    f"{F}edit/?kind=building&key=hall",
)  # fmt: skip


@pytest.mark.parametrize("width", [1280, 320])
def test_the_focus_goes_through_each_page_in_its_order_marked_and_in_sight(
    width: int, enter: Enter
) -> None:
    """WCAG 2.1.2 (no trap), 2.4.3 (order), 2.4.7 (visible), 2.4.11 (not under the fixed bar)."""
    page = enter("ann", width=width)
    page.set_default_timeout(SLOW)
    for address in PAGES:
        page.goto(address)
        found = stops(page)
        assert len(found) > 5, address
        places = [stop["place"] for stop in found]
        assert places == sorted(places), address
        assert [stop["html"] for stop in found if not stop["marked"]] == [], address
        assert [stop["html"] for stop in found if not stop["seen"]] == [], address
