"""``python -m tests.browser.pictures DEMO OUT [SCENE …]``: photograph the desk of a demo.

DEMO is a folder that ``quarterday demo`` has made, and stays as it is: the pictures are taken of a
copy. OUT gets one PNG a scene, width, shade and language.
"""

from __future__ import annotations

import os
import secrets
import socket
import subprocess
import sys
from collections.abc import Iterable, Iterator, Sequence
from contextlib import contextmanager
from itertools import product
from pathlib import Path
from shutil import copytree
from tempfile import TemporaryDirectory
from time import monotonic, sleep
from typing import TYPE_CHECKING

import click
from playwright.sync_api import Browser, sync_playwright
from tests.browser.chromium import CHROMIUM, FLAGS

if TYPE_CHECKING:
    from tests.browser.stage import Stage

WIDTHS = {"desk": 1280, "phone": 360}
SHADES = ("light", "dark")
LANGUAGES = ("en", "fr")
LOOKS = tuple(product(WIDTHS, SHADES, LANGUAGES))
PATIENCE = 120.0  # seconds until the server must answer
Look = tuple[str, str, str]


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


@contextmanager
def staged(demo: Path) -> Iterator[tuple[str, Stage]]:
    """Yield the store of a demo's copy, and what has come about in it."""
    with TemporaryDirectory() as passing:
        copy = Path(passing) / "demo"
        copytree(demo, copy, ignore=lambda *_: {"packages"})
        store = copy / "store"
        (store / "web.key").write_text(secrets.token_urlsafe(50), encoding="ascii")
        os.environ["DJANGO_SETTINGS_MODULE"] = "quarterday.desk.settings"
        os.environ["DJANGO_ALLOW_ASYNC_UNSAFE"] = "1"  # the browser's library has an event loop
        from quarterday.store import setup

        setup.configure(str(store))
        setup.start()
        from tests.browser.stage import prepare

        from quarterday.office.book import keeping
        from quarterday.office.demo_people import demo_day
        from quarterday.office.own_data import reference_in_use

        day = demo_day()
        if day is None:
            raise click.ClickException(f"{demo} is not a demo's folder")
        stage = prepare(day)
        while keeping.refresh(reference_in_use(), day, most=keeping.CHUNK):
            pass
        yield str(store), stage


def photograph(
    browser: Browser, base: str, stage: Stage, names: Sequence[str], looks: Iterable[Look],
    out: Path,
) -> Iterator[Path]:  # fmt: skip
    """Yield each picture as it is taken; a look is a width, a shade and a language."""
    from tests.browser.scenes import SCENES

    chosen = sorted(looks, key=lambda look: look[2])
    for language in dict.fromkeys(language for _, _, language in chosen):
        context = browser.new_context(base_url=base, locale=f"{language}-CA")
        page = context.new_page()
        for name in names:
            stage.speak(language)
            SCENES[name].show(page, stage, base)
            for width, shade, _ in (look for look in chosen if look[2] == language):
                page.set_viewport_size({"width": WIDTHS[width], "height": 800})
                page.emulate_media(color_scheme="dark" if shade == "dark" else "light")
                path = out / f"{name}-{width}-{shade}-{language}.png"
                page.screenshot(path=path, full_page=True)
                yield path
        context.close()


@click.command()
@click.argument("demo", type=click.Path(exists=True, file_okay=False, path_type=Path))
@click.argument("out", type=click.Path(file_okay=False, path_type=Path))
@click.argument("names", nargs=-1, metavar="[SCENE]...")
@click.option("--look", "looks", multiple=True, help="Such as desk-light-en; all when not given.",
              type=click.Choice(["-".join(look) for look in LOOKS]))  # fmt: skip
def main(demo: Path, out: Path, names: tuple[str, ...], looks: tuple[str, ...]) -> None:
    """Photograph the desk of a demo: every scene, or those named."""
    out.mkdir(parents=True, exist_ok=True)
    chosen = [look for look in LOOKS if not looks or "-".join(look) in looks]
    with staged(demo) as (store, stage), served(store) as base, sync_playwright() as playwright:
        from tests.browser.scenes import SCENES

        unknown = sorted(set(names) - set(SCENES))
        if unknown:
            raise click.ClickException(f"no such scene: {', '.join(unknown)}")
        browser = playwright.chromium.launch(executable_path=CHROMIUM, args=FLAGS)
        for path in photograph(browser, base, stage, names or tuple(SCENES), chosen, out):
            click.echo(path)
        browser.close()


if __name__ == "__main__":
    main()
