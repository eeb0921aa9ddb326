"""A real browser on a real server, with the desk's people and two files of the demo book.

These tests run in a call of their own (``tests/run.sh``): the browser's library leaves an event
loop behind, which the database layer refuses in the tests after it.
"""

from __future__ import annotations

import os
from collections.abc import Callable, Iterator
from concurrent.futures import ThreadPoolExecutor
from pathlib import Path

import pytest
from django.conf import settings
from django.db import connections
from playwright.sync_api import Browser, Page, sync_playwright
from pytest_django.live_server_helper import LiveServer
from tests.browser.chromium import CHROMIUM, FLAGS
from tests.browser.stage import Stage, prepare
from tests.desk.conftest import (  # noqa: F401 - fixtures
    DAY,
    PASSWORD,
    _today,
    book,
    certificate,
    figures,
    people,
    signed_in,
)

from quarterday.catalogue.load import reference
from quarterday.office.book import keeping
from quarterday.store import seals

os.environ["DJANGO_ALLOW_ASYNC_UNSAFE"] = "1"
Enter = Callable[..., Page]
SLOW = 90_000  # milliseconds: a busy machine is not a failure


@pytest.fixture(autouse=True)
def _seals_end_with_their_entries() -> Iterator[None]:
    """Forget what was sealed: the next test begins with an empty ledger in the same folder."""
    yield
    (Path(settings.QUARTERDAY_HOME) / seals.LIST_FILE).unlink(missing_ok=True)


@pytest.fixture(scope="session")
def chromium() -> Iterator[Browser]:
    if not CHROMIUM:
        if os.environ.get("CI") == "true":
            pytest.fail("Chromium is not installed: under CI its tests must run.")
        pytest.skip("Chromium is not installed.")
    with sync_playwright() as playwright:
        browser = playwright.chromium.launch(executable_path=CHROMIUM, args=FLAGS)
        yield browser
        browser.close()


@pytest.fixture
def enter(
    chromium: Browser, live_server: LiveServer, people: object, figures: None  # noqa: F811
) -> Iterator[Enter]:  # fmt: skip
    """Return a page on which a named person has signed in; it fails on any error in the console."""
    contexts, errors = [], []

    def page_of(
        who: str = "ann", *, width: int = 1280, dark: bool = False, scripts: bool = True
    ) -> Page:
        context = chromium.new_context(
            viewport={"width": width, "height": 800}, java_script_enabled=scripts,
            color_scheme="dark" if dark else "light", base_url=live_server.url,
        )  # fmt: skip
        contexts.append(context)
        page = context.new_page()
        page.on("console", lambda m: errors.append(m.text) if m.type == "error" else None)
        page.on("pageerror", lambda error: errors.append(str(error)))
        page.goto("/sign-in/")
        page.fill("#email", f"{who}@holliswren.example.org")
        page.fill("#password", PASSWORD)
        page.keyboard.press("Enter")
        page.wait_for_selector("h1")
        return page

    yield page_of
    for context in contexts:
        context.close()
    assert [text for text in errors if "status of 4" not in text] == []


@pytest.fixture
def stage(
    live_server: LiveServer, people: object, certificate: object, monkeypatch: pytest.MonkeyPatch  # noqa: F811
) -> Stage:  # fmt: skip
    """Let everything come about that the desk can show; mail is written into a folder."""
    monkeypatch.setenv("QUARTERDAY_MAIL", "files")
    with ThreadPoolExecutor(1) as beside:  # sealing runs a loop, and the browser's runs here
        return beside.submit(_prepared).result()


def _prepared() -> Stage:
    try:
        made = prepare(DAY)
        keeping.refresh(reference(), DAY)
        return made
    finally:
        connections.close_all()
