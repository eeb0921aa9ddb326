"""Every page of the desk and the states it can be in, each with its way there.

The check for WCAG and the pictures walk the same list, so that a page is not looked at by one of
them alone. A way ends with the state on screen and writes nothing to a file.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from urllib.parse import quote

from playwright.sync_api import Page

FLAGSHIP = "HW-1001"
F = f"/files/{FLAGSHIP}/"
HALL = f"{F}edit/?kind=building&key=hall"
Way = Callable[[Page], None]


@dataclass(frozen=True, slots=True)
class Scene:
    """One state of one page: who looks, where it is, and what brings it about."""

    address: str
    way: Way | None = None
    who: str = "manager"  # the role of who looks

    def show(self, page: Page) -> None:
        """Bring the state about."""
        page.goto(self.address)
        if self.way:
            self.way(page)


def _open(page: Page, selector: str, most: int = 10_000) -> None:
    page.evaluate(
        "([what, most]) => [...document.querySelectorAll(what)].slice(0, most)"
        ".forEach((one) => { one.open = true })",
        [selector, most],
    )


def _open_everything(page: Page) -> None:
    """Open all that is folded, and some figures: each fetches what it was made from."""
    _open(page, "main details:not(.why)")
    _open(page, ".why:has([hx-get])", 6)
    page.wait_for_load_state("networkidle")


def _first_why(page: Page) -> None:
    _open(page, ".building details:has(.why)", 1)
    _open(page, ".building .why", 1)
    page.locator(".building .tree").first.wait_for()


def _press(selector: str, **typed: str) -> Way:
    """Return the way that fills fields by id and presses a button, past the browser's own check."""

    def way(page: Page) -> None:
        for id, text in typed.items():
            page.locator(f"#{id}").evaluate("(one, text) => { one.value = text }", text)
        page.evaluate("document.querySelectorAll('form').forEach((f) => { f.noValidate = true })")
        page.locator(selector).first.click()
        page.wait_for_load_state("networkidle")

    return way


SCENES: Mapping[str, Scene] = {
    "day": Scene("/?from=&until="),
    "day-late": Scene("/?only=late&from=&until="),
    "day-none": Scene(f"/?from=&until=&q={quote('50%_')}"),
    "diary": Scene("/diary/"),
    "book": Scene("/book/"),
    "book-open": Scene("/book/", _open_everything),
    "book-nothing": Scene("/book/?first=2030-01"),
    "load": Scene("/load/"),
    "people": Scene("/people/", _open_everything),
    "keys": Scene("/keys/"),
    "keys-made": Scene("/keys/", _press("main button.main", name="My list")),
    "keys-wrong": Scene("/keys/", _press("main button.main", name=" ")),
    "password": Scene("/password/"),
    "password-wrong": Scene("/password/", _press("main button.main", old="x", new="y", again="z")),
    "factor": Scene("/factor/"),
    "file": Scene(F),
    "file-open": Scene(F, _open_everything),
    "file-why": Scene(F, _first_why),
    "history": Scene(f"{F}history/"),
    "history-open": Scene(f"{F}history/", _open_everything),
    "edit-building": Scene(HALL),
    "edit-faults": Scene(HALL, _press("form.fields button.main", **{"f-year_built": "long ago"})),
    "edit-terms": Scene(f"{F}edit/?kind=terms"),
    "edit-new": Scene(f"{F}edit/?kind=contact"),
    "missing": Scene("/files/none/"),
}
