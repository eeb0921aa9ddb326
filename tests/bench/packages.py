"""Packages a second: one process and two, beside bare typesetting and an HTML-to-PDF engine.

Whole: of a reviewed file the papers' data, setting, fields; the review stands apart. Bare: setting
the same data, no more.
The engine gets the same words, tables, charts and codes as HTML, made beforehand (``_html.py`` says
what it does not do); it stands beside setting and fields, which is what it does. All in processor
time, the engine's that of its processes. The unit is twelve pages or so of the flagship's papers,
with charts and forms, as the design counts them.
"""

from __future__ import annotations

import io
import os
from collections.abc import Iterator, Mapping, Sequence
from concurrent.futures import ProcessPoolExecutor
from dataclasses import dataclass
from datetime import date
from multiprocessing import get_context
from pathlib import Path
from resource import RUSAGE_CHILDREN, getrusage
from statistics import median
from tempfile import TemporaryDirectory
from time import perf_counter, process_time
from typing import Any

import pikepdf

from quarterday.catalogue.load import reference
from quarterday.core.file.fold import File
from quarterday.core.review.case import Case
from quarterday.core.review.review import review_of
from quarterday.invent.demo.book import HERE as DEMO_DATA
from quarterday.papers import package, press
from quarterday.papers.brokerage import Brokerage, read_brokerage
from quarterday.papers.fields import Field
from quarterday.papers.page_code import codes as page_codes
from quarterday.papers.setting import Setting
from tests.bench._html import Chromium, Engine, as_html, feet

AS_OF = date(2026, 11, 25)
BRAND = DEMO_DATA / "brokerage.yaml"
BOOK, SINGLY = 24, 8
BY_ENGINE = 3
UNIT = ("what-changed", "premium-statement", "building-values", "coverage-summary",
        "decisions-form", "contacts-form")  # fmt: skip


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


@dataclass(frozen=True)
class Made:
    """One package made: processor seconds of each step, what it was set from, and the bytes."""

    reviewed: float
    gathered: float
    set: float
    filled: float
    data: Mapping[str, Any]
    fields: Sequence[Field]
    pdf: bytes

    @property
    def whole(self) -> float:
        """Seconds from the review to the bytes."""
        return self.gathered + self.set + self.filled

    @property
    def pages(self) -> int:
        with pikepdf.open(io.BytesIO(self.pdf)) as opened:
            return len(opened.pages)

    @property
    def charts(self) -> int:
        return str(self.data).count("'alt':")


def made(file: File, brand: Brokerage, papers: Sequence[str] | None = None) -> Made:
    """Make the package of a file step by step as ``package.build`` does, or ``papers`` of it."""
    start = process_time()
    case = Case(file, reference(), AS_OF)
    done = review_of(case)
    reviewed = process_time()
    setting = Setting(done, case, brand, file.organisation.language, 1, AS_OF, None)
    if papers is None:
        enclosed = package._enclosed(setting)
        data = package._data(setting, enclosed)
    else:
        enclosed = ()
        told = [{"id": p.id, "data": p.data(setting)} for p in package.PAPERS if p.id in papers]
        codes = page_codes(setting, (id for id in papers if id.endswith("-form")))
        data = {"house": package.house(setting) | {"codes": codes}, "papers": told}
    gathered = process_time()
    raw = press.press().set(data, AS_OF)
    was_set = process_time()
    fields = setting.fields.described
    pdf = press.finished(raw, fields, package._hidden(setting, enclosed))
    ended = process_time()
    return Made(
        reviewed - start, gathered - reviewed, was_set - gathered, ended - was_set,
        data, tuple(fields), pdf,
    )  # fmt: skip


def _in_process() -> Iterator[str]:
    """Yield processor milliseconds of whole packages, of bare typesetting and of the engine.

    Each package is made once: what Typst remembers of a document would flatter the second time. The
    first warms up and does not count; bare typesetting is done in a process that saw none of them.
    """
    from quarterday.store import ledger

    brand, files = read_brokerage(BRAND), [ledger.load(id) for id in ledger.files()]
    warm, flagship, *others = [
        made(file, brand) for file in (files[1], files[0], *files[2 : SINGLY + 2])
    ]
    unit = made(files[0], brand, UNIT)
    with ProcessPoolExecutor(1, get_context("spawn")) as pool:
        every = [warm, flagship, *others, unit]
        bare = pool.submit(bare_times, [one.data for one in every]).result()
    yield from _line("flagship", [flagship], bare[1:2])
    yield from _line(f"{len(others)} others", others, bare[2:-1])
    yield from _line("the unit", [unit], bare[-1:])
    with Chromium() as engine:
        _by_engine(engine, warm)
        for name, one in (("flagship", flagship), ("another", others[0]), ("the unit", unit)):
            spent, pages = _by_engine(engine, one)
            ours, each = one.set + one.filled, spent / pages
            yield (f"  {name}: ours {ours * 1000:.0f} ms for {one.pages} pages, Chromium "
                   f"{spent * 1000:.0f} ms for {pages}; a page {each / ours * one.pages:.2f} x "
                   f"ours, all {spent / ours:.2f} x")  # fmt: skip


def _line(name: str, every: Sequence[Made], bare: Sequence[float]) -> Iterator[str]:
    pages, fields = (
        median(n) for n in zip(*((o.pages, len(o.fields)) for o in every), strict=True)
    )
    parts = {
        "review": [one.reviewed for one in every], "papers' data": [o.gathered for o in every],
        "set": [one.set for one in every], "fields": [one.filled for one in every], "bare": bare,
    }  # fmt: skip
    told = ", ".join(f"{part} {_ms(times):.0f}" for part, times in parts.items())
    whole, review = sum(one.whole for one in every), sum(one.reviewed for one in every)
    ratios = whole / sum(bare), (whole + review) / sum(bare)
    yield (f"{name}: {pages:.0f} pages, {every[0].charts} charts, {fields:.0f} fields; cpu ms: "
           f"{told}; whole / bare {ratios[0]:.2f}, with the review {ratios[1]:.2f}")  # fmt: skip


def _by_engine(engine: Engine, one: Made) -> tuple[float, int]:
    """Return the processor seconds of the engine's processes for a package, and its pages."""
    html, foot = as_html(one.data), feet(one.data)
    before = _spent_below()
    pdf = engine(html, foot)
    spent = _spent_below() - before
    with pikepdf.open(io.BytesIO(pdf)) as opened:
        return spent, len(opened.pages)


def _spent_below() -> float:
    """Return the processor seconds of every living process below this one (Linux)."""
    parents, spent = {}, {}
    for stat in Path("/proc").glob("[0-9]*/stat"):
        try:
            number, rest = stat.parent.name, stat.read_text().rpartition(")")[2].split()
        except OSError:  # it has ended
            continue
        parents[number], spent[number] = rest[1], int(rest[11]) + int(rest[12])
    here = str(os.getpid())
    below = (n for n in spent if n != here and here in _above(n, parents))
    return sum(spent[n] for n in below) / os.sysconf("SC_CLK_TCK")


def _above(number: str, parents: Mapping[str, str]) -> Iterator[str]:
    while number in parents:
        number = parents[number]
        yield number


def bare_times(taken: Sequence[Mapping[str, Any]]) -> list[float]:
    """Return the processor seconds that setting each package's data takes, and nothing else."""
    found = []
    for data in taken:
        start = process_time()
        press.press().set(data, AS_OF)
        found.append(process_time() - start)
    return found


def _ms(times: Sequence[float]) -> float:
    return median(times) * 1000


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
    most = getrusage(RUSAGE_CHILDREN).ru_maxrss // 1024
    yield f"memory of the largest process: {most} MB"
