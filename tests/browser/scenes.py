"""Every page of the desk and the states it can be in, each with its way there.

The check for WCAG and the pictures walk the same list, so that a page is not looked at by one of
them alone. A way ends with the state on screen and adds no entry to a file; what a state needs has
come about before (``stage``).
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from urllib.parse import quote

import pyotp
from playwright.sync_api import FilePayload, Page, Route
from tests.browser.stage import (
    BARE,
    BOUND,
    BUSY,
    CHECKED,
    FLAGSHIP,
    NEW,
    OPTION,
    PASSWORD,
    THIN,
    Stage,
    error_page,
)

from quarterday.people.models import Person

F, B = f"/files/{FLAGSHIP}/", f"/files/{BUSY}/"
HALL = f"{F}edit/?kind=building&key=hall"
OFFER = "key=2027-01-15%2Foffered"
MAIN = "main button.main"
OLD = {"main input[name=seen]": "0"}  # as if the form had been opened long ago
PDF = "application/pdf"
Way = Callable[[Page, Stage], None]


@dataclass(frozen=True, slots=True)
class Scene:
    """One state of one page: where it is, what brings it about, and the role of who looks."""

    address: str
    way: Way | None = None
    who: str = "manager"  # empty: nobody has signed in

    def show(self, page: Page, stage: Stage, base: str) -> None:
        """Bring the state about."""
        stage.enter(page.context, base, self.who)
        page.goto(self.address)
        if self.way:
            self.way(page, stage)


def _open(page: Page, selector: str, most: int = 10_000) -> None:
    page.evaluate(
        "([what, most]) => [...document.querySelectorAll(what)].slice(0, most)"
        ".forEach((one) => { one.open = true })",
        [selector, most],
    )


def _open_everything(page: Page, _stage: Stage) -> None:
    """Open all that is folded, and some figures: each fetches what it was made from."""
    _open(page, "main details:not(.why)")
    _open(page, ".why:has([hx-get])", 6)
    page.wait_for_load_state("networkidle")


def _first_why(page: Page, _stage: Stage) -> None:
    _open(page, ".building details:has(.why)", 1)
    _open(page, ".building .why", 1)
    page.locator(".building .tree").first.wait_for()


def _press(selector: str = MAIN, _set: Mapping[str, str] | None = None, **typed: str) -> Way:
    """Return the way that fills fields by id (or ``_set`` by selector) and presses a button.

    The browser's own checks are passed by, as somebody without a browser could.
    """
    fields = {f"[id='{id}']": text for id, text in typed.items()} | dict(_set or {})

    def way(page: Page, _stage: Stage) -> None:
        for field, text in fields.items():
            page.locator(field).first.evaluate("(one, text) => { one.value = text }", text)
        _open(page, "main details")
        page.evaluate("document.querySelectorAll('form').forEach((f) => { f.noValidate = true })")
        with page.expect_navigation():
            page.locator(selector).first.click()

    return way


def _send(name: str, kind: str, document: str, form: str = "form[enctype]") -> Way:
    """Return the way that sends one of the stage's documents under a name."""

    def way(page: Page, stage: Stage) -> None:
        data = getattr(stage, document)
        sent: FilePayload = {"name": name, "mimeType": kind, "buffer": data}
        page.set_input_files("#document", files=[sent])
        with page.expect_navigation():
            page.locator(f"{form} button.main").click()

    return way


def _wait(selector: str) -> Way:
    return lambda page, _stage: page.locator(selector).first.wait_for()


def _then(*ways: Way) -> Way:
    def way(page: Page, stage: Stage) -> None:
        for one in ways:
            one(page, stage)

    return way


def _wrong(times: int) -> Way:
    """Return the way that gives a wrong password, of somebody who does not exist."""

    def way(page: Page, _stage: Stage) -> None:
        for _ in range(times):
            page.fill("#email", "nobody@example.org")
            page.fill("#password", "not this one")
            page.keyboard.press("Enter")
            page.locator("[role=alert]").wait_for()

    return way


def _code(code: str = "") -> Way:
    """Return the way to the second step, and past a wrong code."""

    def way(page: Page, stage: Stage) -> None:
        stage.carry(page.context, page.url, stage.half_way())
        page.goto("/sign-in/code/")
        if code:
            page.fill("#code", code)
            page.keyboard.press("Enter")
            page.locator("[role=alert]").wait_for()

    return way


def _factor(page: Page, stage: Stage) -> None:
    """Set the second factor up, as an authenticator would."""
    Person.objects.filter(pk=stage.people[NEW].pk).update(factor="", factor_step=0)
    page.fill("#code", pyotp.TOTP(page.locator(".secret").inner_text()).now())
    page.keyboard.press("Enter")
    page.locator(".codes").wait_for()


def _out(page: Page, _stage: Stage) -> None:
    """Let the session run out with a binder half typed."""
    page.fill("#by", "Ines Marlow")
    page.fill("#words", "By telephone, at ten.")
    page.context.clear_cookies(name="quarterday_session")
    page.locator(MAIN).click()
    page.locator("#password").wait_for()


def _in_again(page: Page, stage: Stage) -> None:
    page.fill("#email", stage.people["owner"].email)
    page.fill("#password", PASSWORD)
    page.keyboard.press("Enter")
    page.locator("dl.pairs").wait_for()


def _fails(status: int) -> Way:
    """Return the way to a page that the desk shows when it fails, which no address brings about."""

    def way(page: Page, _stage: Stage) -> None:
        language = str(page.evaluate("document.documentElement.lang"))[:2]

        def answer(route: Route) -> None:
            route.fulfill(status=status, body=error_page(status, language),
                          content_type="text/html; charset=utf-8")  # fmt: skip

        page.route("**/fails/", answer)
        page.goto("/fails/")
        page.unroute("**/fails/", answer)

    return way


def _without_token(page: Page, stage: Stage) -> None:
    page.evaluate(
        "document.querySelectorAll('[name=csrfmiddlewaretoken]').forEach((t) => t.remove())"
    )
    _press("form[action$='/note/'] button", text="Hello.")(page, stage)


def _mark(way: Way, selector: str) -> Way:
    """Return the way that answers a preview which was made before the file changed."""
    return _then(way, _press(selector, {"main input[name=mark]": "old"}))


DECIDE = f"article:has([value='{OPTION}'])"
READ = _send("forms.pdf", PDF, "form")
SHEETS = _wait(".sheet img")
FAULTY = _send("book.xlsx", "", "faulty")
SIGNING_IN: Mapping[str, Scene] = {
    "sign-in": Scene("/sign-in/", None, ""),
    "sign-in-wrong": Scene("/sign-in/", _wrong(1), ""),
    "sign-in-locked": Scene("/sign-in/", _wrong(6), ""),
    "sign-in-kept": Scene(f"{F}bind/", _out, "owner"),
    "kept": Scene(f"{F}bind/", _then(_out, _in_again), "owner"),
    "code": Scene("/sign-in/", _code(), ""),
    "code-wrong": Scene("/sign-in/", _code("000000"), ""),
    "password": Scene("/password/"),
    "password-must": Scene("/password/", None, NEW),
    "password-wrong": Scene("/password/", _press(old="x", new="y", again="z")),
    "factor": Scene("/factor/"),
    "factor-wrong": Scene("/factor/", _press(code="000000")),
    "factor-done": Scene("/factor/", _factor, NEW),
    "keys": Scene("/keys/"),
    "keys-made": Scene("/keys/", _press(name="My list")),
    "keys-wrong": Scene("/keys/", _press(name=" ")),
}
BOOK: Mapping[str, Scene] = {
    "day": Scene("/?from=&until="),
    "day-own": Scene("/", None, "owner"),
    "day-late": Scene("/?only=late&from=&until="),
    "day-none": Scene(f"/?from=&until=&q={quote('50%_')}"),
    "day-reader": Scene("/?from=&until=", None, "read-only"),
    "diary": Scene("/diary/"),
    "diary-none": Scene(f"/diary/?q={quote('50%_')}"),
    "diary-address": Scene("/diary/", _press("form[action='/diary/address/'] button")),
    "book": Scene("/book/"),
    "book-open": Scene("/book/", _open_everything),
    "book-nothing": Scene("/book/?first=2030-01"),
    "load": Scene("/load/"),
    "load-preview": Scene("/load/", FAULTY),
    "load-mapping": Scene("/load/", _then(FAULTY, _open_everything)),
    "load-same": Scene("/load/", _send("book.xlsx", "", "same")),
    "load-moved": Scene("/load/", _mark(FAULTY, "form[action$='/accept/'] button")),
    "load-wrong-kind": Scene("/load/", _send("photo.png", "image/png", "scan")),
    "people": Scene("/people/"),
    "people-open": Scene("/people/", _open_everything),
    "people-wrong": Scene("/people/", _press("main > form button.main", {"#n-name": " "})),
    "people-renewed": Scene("/people/", _press("details:has-text('Noor') button[name=renew]")),
}
A_FILE: Mapping[str, Scene] = {
    "file": Scene(F),
    "file-owner": Scene(F, None, "owner"),
    "file-open": Scene(F, _open_everything),
    "file-why": Scene(F, _first_why),
    "file-decide": Scene(f"{F}?only=decide&unfold=1"),
    "file-reader": Scene(F, None, "read-only"),
    "file-busy": Scene(B, _open_everything, "owner"),
    "file-checked": Scene(f"/files/{CHECKED}/"),
    "file-bare": Scene(f"/files/{BARE}/"),
    "why": Scene(f"{F}why/?figure={quote('shortfall@hall')}"),
    "history": Scene(f"{B}history/"),
    "history-open": Scene(f"{B}history/?kind=organisation", _open_everything),
    "history-known": Scene(f"{B}history/?known=2020-01-01"),
    "history-reader": Scene(f"{F}history/", None, "read-only"),
    "edit-building": Scene(HALL),
    "edit-faults": Scene(
        HALL, _press(MAIN, {"#f-year_built": "long ago", "#f-area_m2": "1,234,5"})
    ),
    "edit-conflict": Scene(HALL, _press(MAIN, {"#f-year_built": "1931", **OLD})),
    "edit-organisation": Scene(f"{F}edit/?kind=organisation&key="),
    "edit-operations": Scene(f"{F}edit/?kind=operations&key=", _open_everything),
    "edit-terms": Scene(f"{F}edit/?kind=terms"),
    "edit-coverage": Scene(f"{F}terms/?part=coverages&{OFFER}&line=0", _open_everything),
    "edit-coverage-new": Scene(f"{F}terms/?part=coverages&{OFFER}"),
    "edit-new": Scene(f"{F}edit/?kind=contact"),
    "edit-claim": Scene(f"{F}edit/?kind=claim"),
}
THE_YEAR: Mapping[str, Scene] = {
    "forms": Scene(f"{F}forms/", None, "owner"),
    "forms-came": Scene(f"{B}forms/", None, "owner"),
    "forms-other-file": Scene(f"{F}forms/", READ, "owner"),
    "form-read": Scene(f"{B}forms/", _then(READ, SHEETS), "owner"),
    "form-moved": Scene(f"{B}forms/", _mark(READ, MAIN), "owner"),
    "form-scanned": Scene(f"{B}forms/", _then(_send("scan.pdf", PDF, "scan"), SHEETS), "owner"),
    "form-by-hand": Scene(f"{F}forms/by-hand/operations-form/", None, "owner"),
    "form-typed": Scene(f"{F}forms/by-hand/contacts-form/", _press(q1="705-555-0123"), "owner"),
    "ask-nothing": Scene(f"{F}request/", None, "owner"),
    "ask": Scene(f"{B}request/", None, "owner"),
    "ask-stale": Scene(
        f"{B}request/", _press("#recorded button.main", {"#recorded [name=seen]": "0"}), "owner"
    ),
    "ask-refused": Scene(
        f"{B}request/", _press("form.wider button.main", address="nobody"), "owner"
    ),
    "compare": Scene(f"{F}compare/"),
    "compare-back": Scene(f"{F}compare/?before=offered&after=expiring", None, "read-only"),
    "pay": Scene(f"{F}pay/"),
    "pay-changed": Scene(f"{F}pay/", _press("form.fields button.main", am1="125000")),
    "pay-faults": Scene(f"{F}pay/", _press("form.fields button.main", am1="much")),
    "premium": Scene(f"{F}premium/"),
    "premium-open": Scene(f"{F}premium/?terms=expiring", _open_everything, "read-only"),
    "send-not-signed": Scene(f"/files/{CHECKED}/send/", None, "owner"),
    "send": Scene(f"{B}send/", _open_everything, "owner"),
    "send-refused": Scene(f"{B}send/", _press("form.wider button.main", address="nobody"), "owner"),
    "decisions": Scene(f"{F}decisions/", _open_everything, "owner"),
    "decisions-made": Scene(f"{B}decisions/", None, "owner"),
    "decisions-refused": Scene(
        f"{B}decisions/", _press(f"{DECIDE} button.main", {f"{DECIDE} [name=by]": " "}), "owner"
    ),
    "decisions-conflict": Scene(
        f"{B}decisions/",
        _press(
            f"{DECIDE} button.main",
            {
                f"{DECIDE} [name=seen]": "0",
                f"{DECIDE} [name=by]": "Cy",
                f"{DECIDE} [name=answer]": "leave-it",
            },
        ),
        "owner",
    ),
    "bind": Scene(f"{B}bind/", None, "owner"),
    "bind-refused": Scene(f"{B}bind/", _press(by=" "), "owner"),
    "bind-bound": Scene(f"/files/{BOUND}/bind/", None, "owner"),
    "check-nothing": Scene(f"{F}check/", None, "owner"),
    "check": Scene(f"/files/{THIN}/check/", None, "owner"),
    "check-refused": Scene(f"/files/{THIN}/check/", _press(words=" "), "owner"),
    "check-checked": Scene(f"/files/{CHECKED}/check/", None, "owner"),
}
ERRORS: Mapping[str, Scene] = {
    "error-404": Scene("/files/none/"),
    "error-403": Scene("/people/", None, "read-only"),
    "error-old-form": Scene(F, _without_token),
    "error-400": Scene("/", _fails(400)),
    "error-500": Scene("/", _fails(500)),
}
SCENES: Mapping[str, Scene] = {**SIGNING_IN, **BOOK, **A_FILE, **THE_YEAR, **ERRORS}
