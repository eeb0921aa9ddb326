"""Packages a second: one process and two, beside bare typesetting and an HTML-to-PDF engine.

The engine is headless Chromium's own ``page.pdf`` through Playwright, warm, tagged, on the same
words: the papers' data written as plain HTML with headings, paragraphs, tables and inputs. It gets
no charts and no style but a font and a page size, so it has less to do than we have.
"""

from __future__ import annotations

import io
import os
from collections.abc import Callable, Iterator, Mapping, Sequence
from concurrent.futures import ProcessPoolExecutor
from datetime import date
from functools import partial
from html import escape
from multiprocessing import get_context
from pathlib import Path
from statistics import median
from tempfile import TemporaryDirectory
from time import perf_counter, process_time
from typing import Any

import pikepdf

from quarterday.invent.demo.book import HERE as DEMO_DATA
from quarterday.papers import press
from tests.browser.chromium import CHROMIUM, FLAGS

AS_OF = date(2026, 11, 25)
BRAND = DEMO_DATA / "brokerage.yaml"
BOOK, SINGLY = 24, 8
BY_ENGINE = 3
Engine = Callable[[str], bytes]


def run() -> Iterator[str]:
    """Yield what the bench measures."""
    from quarterday.store import setup

    with TemporaryDirectory() as folder:
        setup.configure(str(Path(folder) / "store"))
        setup.start()
        _load()
        yield from _in_process()
        yield from _in_processes(Path(folder))


def _load() -> None:
    from quarterday.core.file.entry import Draft, Origin
    from quarterday.invent.demo.book import demo_book
    from quarterday.store import ledger

    origin = Origin(way="workbook", name="book.xlsx")
    for account in demo_book():
        drafts = [Draft("load", r.kind, r.key, r.body(), origin) for r in account.records]
        ledger.append(account.id, drafts, by="bench", expected_seq=0)


def _in_process() -> Iterator[str]:
    """Yield processor milliseconds of whole packages and bare typesetting, and the engine's wall.

    Each package is made once: what Typst remembers of a document would flatter the second time. The
    first warms up and does not count; bare typesetting is done in a process that saw none of them.
    """
    from quarterday.office import packages
    from quarterday.office.brand import brokerage
    from quarterday.store import ledger

    brand, ids = brokerage(BRAND), ledger.files()[: SINGLY + 1]
    cpu, wall, taken, pages = [], [], [], []
    for id in ids:
        start, clock = process_time(), perf_counter()
        order = packages.Order(id, None, AS_OF, AS_OF)
        pdf, data = _composed(partial(packages.compose, order, brand))
        cpu.append(process_time() - start)
        wall.append(perf_counter() - clock)
        taken.append(data)
        pages.append(len(pikepdf.open(io.BytesIO(pdf)).pages))
    with ProcessPoolExecutor(1, get_context("spawn")) as pool:
        bare = pool.submit(bare_times, taken).result()
    yield f"{SINGLY} packages, each made once, {median(pages[1:]):.0f} pages in the median"
    yield f"  whole package     cpu {_ms(cpu[1:]):6.0f} ms in the median"
    yield f"  bare typesetting  cpu {_ms(bare[1:]):6.0f} ms"
    yield f"  whole / bare      {sum(cpu[1:]) / sum(bare[1:]):.2f}"
    with _Engine() as engine:
        engine(as_html(taken[0]))
        for data, count, ours in list(zip(taken, pages, wall, strict=True))[1 : BY_ENGINE + 1]:
            clock = perf_counter()
            made = engine(as_html(data))
            spent = perf_counter() - clock
            theirs = len(pikepdf.open(io.BytesIO(made)).pages)
            yield (f"  wall: ours {ours * 1000:.0f} ms for {count} pages, Chromium "
                   f"{spent * 1000:.0f} ms for {theirs}; ratio {spent / ours:.2f}")  # fmt: skip


def bare_times(taken: Sequence[Mapping[str, Any]]) -> list[float]:
    """Return the processor seconds that setting each package's data takes, and nothing else."""
    found = []
    for data in taken:
        start = process_time()
        press.press().set(data, AS_OF)
        found.append(process_time() - start)
    return found


def _composed(compose: Callable[[], Any]) -> tuple[bytes, Mapping[str, Any]]:
    """Return a package's bytes, and what its template was given."""
    seen: list[Mapping[str, Any]] = []
    plain = press.Press.set

    def watched(
        self: press.Press,
        data: Mapping[str, Any],
        built_on: date,
        dress: Mapping[str, str] | None = None,
    ) -> bytes:
        seen.append(data)
        return plain(self, data, built_on, dress)

    press.Press.set = watched  # type: ignore[method-assign]
    try:
        return compose().pdf, seen[-1]
    finally:
        press.Press.set = plain  # type: ignore[method-assign]


def _ms(times: Sequence[float]) -> float:
    return median(times) * 1000


def as_html(data: Mapping[str, Any]) -> str:
    """Return a package's words as plain HTML: headings, paragraphs, tables, inputs."""
    body = "".join(_section(paper["data"]) for paper in data["papers"])
    return (
        f'<!doctype html><html lang="{data["house"]["language"]}"><head><title>'
        f"{escape(data['house']['title'])}</title><style>@page{{size:letter;margin:20mm}}"
        "body{font:10pt serif}section{break-before:page}td{border:1px solid}</style></head>"
        f"<body>{body}</body></html>"
    )


def _section(data: Mapping[str, Any]) -> str:
    return f"<section>{_html(data)}</section>"


def _html(value: object, name: str = "") -> str:
    if isinstance(value, str):
        tag = {"title": "h2", "heading": "h3"}.get(name, "p")
        return f"<{tag}>{escape(value)}</{tag}>"
    if isinstance(value, Mapping):
        if "number" in value and "kind" in value:
            label = escape(str(value.get("label", "")))
            return f'<label>{label} <input name="f{value["number"]}"></label>'
        return "".join(_html(part, key) for key, part in value.items())
    if isinstance(value, Sequence):
        rows = [row for row in value if isinstance(row, list | tuple)]
        if rows and len(rows) == len(value):
            return f"<table>{''.join(map(_row, rows))}</table>"
        return "".join(_html(part, name) for part in value)
    is_number = isinstance(value, int | float) and not isinstance(value, bool)
    return f"<p>{value}</p>" if is_number else ""


def _row(cells: Sequence[object]) -> str:
    return f"<tr>{''.join(f'<td>{_html(cell)}</td>' for cell in cells)}</tr>"


class _Engine:
    """A warm headless Chromium with one page."""

    def __enter__(self) -> Engine:
        from playwright.sync_api import sync_playwright

        os.environ["DJANGO_ALLOW_ASYNC_UNSAFE"] = "1"  # Playwright runs a loop beside us
        self._playwright = sync_playwright().start()
        self._browser = self._playwright.chromium.launch(executable_path=CHROMIUM, args=FLAGS)
        self._page = self._browser.new_page()
        return self._set

    def _set(self, html: str) -> bytes:
        self._page.set_content(html)
        return self._page.pdf(prefer_css_page_size=True, tagged=True)

    def __exit__(self, *_: object) -> None:
        self._browser.close()
        self._playwright.stop()


def _in_processes(folder: Path) -> Iterator[str]:
    """Yield packages a second with one worker process and with two, start-up included and not."""
    from quarterday.office import packages
    from quarterday.office.brand import brokerage
    from quarterday.store import ledger

    brand, ids = brokerage(BRAND), ledger.files()
    orders = [packages.Order(id, None, AS_OF, AS_OF) for id in ids][:BOOK]
    rate: dict[int, list[float]] = {1: [], 2: []}
    for turn in range(3):
        for workers, found in rate.items():
            out = folder / f"{turn}-{workers}"
            start, first, n = perf_counter(), 0.0, 0
            for _ in packages.batch(orders, brand, out, by="bench", workers=workers):
                first = first or perf_counter()
                n += 1
            found.append((n - 1) / (perf_counter() - first))
            yield (f"  {workers} process{'es' if workers > 1 else ''}: {n} packages in "
                   f"{perf_counter() - start:.1f} s, start-up included")  # fmt: skip
    one, two = median(rate[1]), median(rate[2])
    yield f"packages a second after the first: {one:.1f} with one process, {two:.1f} with two"
    yield f"two / one {two / one:.2f} on {os.cpu_count()} processors"
