"""A whole invented book reviewed: 1 and 2 processes, one digest, the cost a file by size.

Each file goes through all rules, and, over 10,000 simulated years and more where chance asks for
them, through every alternative of its terms. The files are made in memory, without a store: what is
measured is the review. ``BENCH_FILES`` gives the sizes of the book; of one above 10,000 some 2,000
files at even distances are reviewed, and the line says how many.
"""

from __future__ import annotations

import os
from collections.abc import Iterator, Sequence
from concurrent.futures import ProcessPoolExecutor
from datetime import UTC, date, datetime
from hashlib import sha256
from multiprocessing import get_context
from resource import RUSAGE_CHILDREN, RUSAGE_SELF, getrusage
from statistics import median
from time import perf_counter, process_time
from typing import NamedTuple

from quarterday.catalogue.load import reference
from quarterday.catalogue.speech import Speech
from quarterday.core.file.chain import Head, append
from quarterday.core.file.entry import Draft, Entry, Origin
from quarterday.core.file.fold import File, fold
from quarterday.core.review.case import Case
from quarterday.core.review.review import Review, review_of
from quarterday.invent.account import Account
from quarterday.invent.book import account

AS_OF, SEED = date(2026, 11, 25), 7
WHEN = datetime(2026, 11, 25, tzinfo=UTC)
ORIGIN = Origin(way="workbook", name="book.xlsx")
PART, SAMPLED_ABOVE, SAMPLE = 50, 10_000, 2_000
SIZES = "200"


class Done(NamedTuple):
    """One file reviewed: its digest, processor seconds, and how many years were simulated."""

    digest: str
    seconds: float
    years: int


def file_of(one: Account) -> File:
    """Return an invented account as the file that loading it makes."""
    head, entries = Head(), list[Entry]()
    for record in one.records:
        draft = Draft("load", record.kind, record.key, record.body(), ORIGIN)
        entry = append(head, draft, file=one.id, by="bench", recorded_at=WHEN, salt="00")
        entries.append(entry)
        head = Head(entry.seq, entry.digest)
    return fold(one.id, entries)


def said(done: Review) -> str:
    """Return everything a review says: its findings in words, and every figure behind them."""
    speech = Speech(reference(), "en")
    findings = [(f.id, *map(speech.say, (f.title, f.means, f.todo))) for f in done.findings]
    figures = sorted((id, str(node.value)) for id, node in done.figures().items())
    return repr((findings, [f.id for f in done.agenda], figures))


def costs(case: Case) -> str:
    """Return every figure of a file's risk, to the last bit; nothing where there is none."""
    if case.risk is None:
        return ""
    found = case.risk.comparison
    return repr([(c.id, c.mean, sorted(c.bad.items()), c.by_peril) for c in found.costs])


def reviewed(number: int) -> Done:
    """Return an account of the book reviewed; making it is not in the time."""
    case = Case(file_of(account(number, SEED, AS_OF)), reference(), AS_OF)
    start = process_time()
    told, risk = review_of(case), costs(case)
    spent = process_time() - start
    whole = (said(told) + risk).encode()
    years = case.risk.comparison.years if case.risk else 0
    return Done(sha256(whole).hexdigest(), spent, years)


def part(numbers: Sequence[int]) -> list[Done]:
    """Return a part of the book reviewed."""
    return [reviewed(number) for number in numbers]


def whole(numbers: Sequence[int], processes: int) -> tuple[list[Done], float]:
    """Return the book reviewed by so many processes, and the seconds it took by the clock."""
    parts = [numbers[start : start + PART] for start in range(0, len(numbers), PART)]
    start = perf_counter()
    with ProcessPoolExecutor(processes, get_context("spawn")) as pool:
        done = [one for found in pool.map(part, parts) for one in found]
    return done, perf_counter() - start


def run() -> Iterator[str]:
    """Yield what the bench measures."""
    first: float | None = None
    for size in map(int, os.environ.get("BENCH_FILES", SIZES).split()):
        step = size // SAMPLE if size > SAMPLED_ABOVE else 1
        numbers = range(1, size + 1, step)
        digests = set()
        for processes in (1, 2):
            done, seconds = whole(numbers, processes)
            digests.add(sha256("".join(one.digest for one in done).encode()).hexdigest()[:16])
            spent = [one.seconds for one in done]
            each = sum(spent) / len(spent)
            first = first or each
            yield (
                f"{size:>7,} files, {len(done):,} reviewed, {processes} process"
                f"{'es' if processes > 1 else ''}: {seconds:7.1f} s by the clock; a file"
                f" {each * 1000:.1f} ms of processor (median {median(spent) * 1000:.1f},"
                f" {sum(one.years for one in done) / len(done):,.0f} years),"
                f" {each / first:.2f} x the first line"
            )
        yield f"        digest {' and '.join(sorted(digests))}"
    most = max(getrusage(who).ru_maxrss for who in (RUSAGE_SELF, RUSAGE_CHILDREN)) // 1024
    yield f"memory of the largest process: {most} MB"
