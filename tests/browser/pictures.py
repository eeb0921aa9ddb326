"""``python -m tests.browser.pictures DEMO OUT [SCENE …]``: photograph the desk of a demo.

DEMO is a folder that ``quarterday demo`` has made; OUT gets one PNG a scene, width, shade and
language. Its visitors get new passwords, as each time that the demo is made.
"""

from __future__ import annotations

import socket
import subprocess
import sys
from collections.abc import Iterable, Iterator, Mapping, Sequence
from contextlib import contextmanager
from itertools import product
from pathlib import Path
from time import monotonic, sleep

import click
from playwright.sync_api import Browser, Page, sync_playwright
from tests.browser.chromium import CHROMIUM, FLAGS
from tests.browser.scenes import SCENES

WIDTHS = {"desk": 1280, "phone": 360}
SHADES = ("light", "dark")
LANGUAGES = ("en", "fr")
LOOKS = tuple(product(WIDTHS, SHADES, LANGUAGES))
PATIENCE = 30.0  # seconds until the server must answer


def visitors_of(store: str) -> Mapping[str, tuple[str, str]]:
    """Return by role the address and the new password of who may sign in to a demo."""
    from quarterday.store import setup

    setup.configure(store)
    from quarterday.office.demo_people import demo_day, visitors

    day = demo_day()
    if day is None:
        raise click.ClickException(f"{store} is not a demo's store")
    return {one.role: (one.email, one.password) for one in visitors(day)}


@contextmanager
def served(store: str, workers: int = 1) -> Iterator[str]:
    """Serve a store for a while, and yield its address."""
    with socket.socket() as free:
        free.bind(("127.0.0.1", 0))
        port = free.getsockname()[1]
    command = [sys.executable, "-m", "quarterday.cli", "--store", store, "serve"]
    server = subprocess.Popen([*command, "--port", str(port), "--workers", str(workers)])
    try:
        _wait_for(port)
        yield f"http://127.0.0.1:{port}"
    finally:
        server.terminate()
        server.wait()


def _wait_for(port: int) -> None:
    end = monotonic() + PATIENCE
    while monotonic() < end:
        with socket.socket() as one:
            if one.connect_ex(("127.0.0.1", port)) == 0:
                return
        sleep(0.2)
    raise click.ClickException("the desk was not served")


def enter(page: Page, email: str, password: str, language: str) -> None:
    """Sign in, and choose the language."""
    page.goto("/sign-in/")
    page.fill("#email", email)
    page.fill("#password", password)
    page.keyboard.press("Enter")
    page.wait_for_selector(".who")
    if page.evaluate("document.documentElement.lang") != f"{language}-CA":
        page.locator("form[action='/language/'] button").click()
        page.wait_for_selector(f"html[lang={language}-CA]")


def photograph(
    browser: Browser, base: str, people: Mapping[str, tuple[str, str]], names: Sequence[str],
    looks: Iterable[tuple[str, str, str]], out: Path,
) -> Iterator[Path]:  # fmt: skip
    """Yield each picture as it is taken; a look is a width, a shade and a language."""
    for width, shade, language in looks:
        context = browser.new_context(
            viewport={"width": WIDTHS[width], "height": 800}, base_url=base,
            color_scheme="dark" if shade == "dark" else "light",
        )  # fmt: skip
        page, inside = context.new_page(), ""
        for name in sorted(names, key=lambda one: SCENES[one].who):
            scene = SCENES[name]
            if inside != scene.who:
                context.clear_cookies()
                enter(page, *people[scene.who], language)
                inside = scene.who
            scene.show(page)
            path = out / f"{name}-{width}-{shade}-{language}.png"
            page.screenshot(path=path, full_page=True)
            yield path
        context.close()


@click.command()
@click.argument("demo", type=click.Path(exists=True, file_okay=False, path_type=Path))
@click.argument("out", type=click.Path(file_okay=False, path_type=Path))
@click.argument("names", nargs=-1, type=click.Choice(sorted(SCENES)), metavar="[SCENE]...")
@click.option("--look", "looks", multiple=True, help="Such as desk-light-en; all when not given.",
              type=click.Choice(["-".join(look) for look in LOOKS]))  # fmt: skip
def main(demo: Path, out: Path, names: tuple[str, ...], looks: tuple[str, ...]) -> None:
    """Photograph the desk of a demo: every scene, or those named."""
    out.mkdir(parents=True, exist_ok=True)
    chosen = [look for look in LOOKS if not looks or "-".join(look) in looks]
    people = visitors_of(str(demo / "store"))
    with served(str(demo / "store")) as base, sync_playwright() as playwright:
        browser = playwright.chromium.launch(executable_path=CHROMIUM, args=FLAGS)
        for path in photograph(browser, base, people, names or sorted(SCENES), chosen, out):
            click.echo(path)
        browser.close()


if __name__ == "__main__":
    main()
