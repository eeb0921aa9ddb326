"""Building packages: one, or a whole day's by several processes."""

from __future__ import annotations

import hashlib
import traceback
from collections.abc import Iterable, Iterator, Sequence
from concurrent.futures import (
    FIRST_COMPLETED,
    Future,
    ProcessPoolExecutor,
    as_completed,
    wait,
)
from concurrent.futures.process import BrokenProcessPool
from dataclasses import dataclass, replace
from datetime import UTC, date, datetime
from multiprocessing import get_context
from pathlib import Path
from tempfile import TemporaryDirectory
from typing import Any

from django.conf import settings
from django.db import transaction

from quarterday.core.file.entry import Draft, Origin
from quarterday.core.file.fold import File
from quarterday.core.file.records import PackageBuilt, ReviewSigned
from quarterday.core.given import Unusable
from quarterday.core.review.case import Case, NoRenewal
from quarterday.core.review.review import Review, review_of
from quarterday.core.words import Words, words
from quarterday.office import access, sealing, worker
from quarterday.office.brand import brokerage
from quarterday.office.own_data import reference_in_use
from quarterday.office.reviewing import claimed, signature
from quarterday.office.trouble import Trouble
from quarterday.office.voices import LANGUAGES
from quarterday.papers.brokerage import Brokerage
from quarterday.papers.package import Package, build
from quarterday.papers.press import Unprintable
from quarterday.people import limits
from quarterday.people.models import Person
from quarterday.store import ledger, originals, setup

_WAITING = 4  # orders in the pool for each worker
Enclosed = tuple[tuple[str, Words], ...]


@dataclass(frozen=True, slots=True)
class Order:
    """A package to build: whose, in which language (None: the organisation's), as on which day.

    ``as_of`` None means the day of the signed review where there is one, else ``today``.
    """

    file: str
    language: str | None
    as_of: date | None
    today: date


@dataclass(frozen=True, slots=True)
class Composed:
    """A package's bytes, not yet kept."""

    file: str
    renewal: date
    language: str
    version: int
    as_of: date
    seq: int
    reviewer: str | None
    pdf: bytes
    enclosed: Enclosed

    @property
    def is_draft(self) -> bool:
        """Whether nobody has signed the review that the package shows."""
        return self.reviewer is None


@dataclass(frozen=True, slots=True)
class Built:
    """A package that was kept and written to ``path``; ``head`` is the file's newest entry then."""

    composed: Composed
    document: str
    path: Path
    head: int

    @property
    def plain(self) -> dict[str, Any]:
        """What was built, as JSON can hold it, without where it was written."""
        made = self.composed
        return {
            "file": made.file, "renewal": made.renewal.isoformat(), "language": made.language,
            "version": made.version, "as_of": made.as_of.isoformat(), "draft": made.is_draft,
            "sha256": self.document, "enclosed": [paper for paper, _ in made.enclosed],
        }  # fmt: skip


@dataclass(frozen=True, slots=True)
class Withheld:
    """A package that was not built, and why."""

    file: str
    reason: Words


def compose(order: Order, brokerage: Brokerage) -> Composed:
    """Return the bytes of one package; NoRenewal when the file gives no renewal date.

    Without a valid signature for its day the package is a draft and says so on every page.
    """
    file = ledger.load(order.file)
    case, done, covering = _reviewed(file, order)
    as_of = case.as_of
    language = order.language or file.organisation.language
    reviewer = covering.reviewer if covering else None
    version = _version(file, (done.renewal, language), (file.last_change, as_of, reviewer))
    made: Package = build(
        done, case, brokerage, language, version=version, built_on=as_of, signed=covering
    )
    return Composed(
        file.id, done.renewal, language, version, as_of, file.last_change, reviewer,
        made.pdf, made.enclosed,
    )  # fmt: skip


def _reviewed(file: File, order: Order) -> tuple[Case, Review, ReviewSigned | None]:
    """Return the case of the order's day, its review, and the signature that covers both."""
    data, signed = reference_in_use(), claimed(file)
    case = Case(file, data, order.as_of or (signed.as_of if signed else order.today))
    done = review_of(case)
    if signed is None or signed.as_of != case.as_of:
        return case, done, None
    covering = signature(file, data, done)
    if covering is None and order.as_of is None and order.today != case.as_of:
        return _reviewed(file, replace(order, as_of=order.today))
    return case, done, covering


def _version(
    file: File, of: tuple[date, str], made_from: tuple[int, date, str | None]
) -> int:  # fmt: skip
    """Return the version: the newest one's again while nothing changed, else the next."""
    built = [p for p in file.all(PackageBuilt) if (p.renewal, p.language) == of]
    newest = max(built, key=lambda p: p.version, default=None)
    if newest is None:
        return 1
    same = (newest.seq, newest.built_on, newest.reviewer) == made_from
    return newest.version if same else newest.version + 1


def keep(composed: Composed, out: Path, by: str) -> Built:
    """Keep a package's bytes, record that it was built, and write it into the folder ``out``.

    Building the same package again writes the same bytes and records nothing new.
    """
    name = f"{composed.file}-{composed.renewal}-{composed.language}-v{composed.version}.pdf"
    digest = hashlib.sha256(composed.pdf).hexdigest()
    record = PackageBuilt.model_validate(
        {
            "renewal": composed.renewal, "language": composed.language,
            "version": composed.version, "built_on": composed.as_of,
            "document": digest, "seq": composed.seq, "reviewer": composed.reviewer,
        }
    )  # fmt: skip
    with transaction.atomic():
        originals.put(composed.pdf, name)
        held = ledger.load(composed.file)
        head = held.seq
        if held.get(PackageBuilt, record.key) != record:
            draft = Draft("build", record.kind, record.key, record.body(), Origin(way="office"))
            head = ledger.append(composed.file, [draft], by=by, expected_seq=None)[-1].seq
    return Built(composed, digest, _write(out / name, composed.pdf), head)


def built_by(person: Person, id: str, language: str, today: date) -> dict[str, Any]:
    """Build a file's package in one language for a person, and return what was built.

    One that may be delivered is sealed too where the brokerage has a certificate.

    Trouble when there is no such language, or the person builds more often than may be.
    """
    access.open_file(person, id, "build")
    now = datetime.now(UTC)
    if language not in LANGUAGES:
        raise Trouble(words("acts-not-possible"))
    if limits.is_over("build", person.email, now):
        raise Trouble(words("acts-too-often"))
    limits.count("build", person.email, now)
    composed = compose(Order(id, language, None, today), brokerage())
    home: Path = settings.QUARTERDAY_HOME
    with TemporaryDirectory(dir=home) as folder:
        built = keep(composed, Path(folder), person.signed)
    if composed.reviewer and sealing.is_ready():
        sealing.seal_package(id, language, brokerage(), by=person.signed, now=now)
    return built.plain


def _write(path: Path, data: bytes) -> Path:
    """Write a file so that it is there whole or not at all."""
    path.parent.mkdir(parents=True, exist_ok=True)
    part = path.with_suffix(".part")
    part.write_bytes(data)
    return part.replace(path)


def _work(order: Order, brokerage: Brokerage) -> Composed | Withheld:
    try:
        return compose(order, brokerage)
    except NoRenewal as missing:
        return Withheld(order.file, missing.words)
    except Unusable as unfit:
        return Withheld(order.file, words("package-unusable", file=order.file, why=unfit.words))
    except Unprintable as unfit:
        return Withheld(
            order.file, words("package-unprintable", file=order.file, why=unfit.words or str(unfit))
        )
    except Exception as fault:  # noqa: BLE001 - one file's fault must not stop the book's night
        at = traceback.extract_tb(fault.__traceback__)[-1]
        where = f"{type(fault).__name__}, {Path(at.filename).name}:{at.lineno}"
        return Withheld(order.file, words("package-failed", file=order.file, where=where))


def batch(
    orders: Sequence[Order], brokerage: Brokerage, out: Path, *, by: str, workers: int = 2
) -> Iterator[Built | Withheld]:
    """Build packages in ``workers`` processes, keeping each as it is finished.

    Only this process writes, and few packages wait in memory. A run that was interrupted can be
    repeated: what is already there is built to the same bytes and recorded once. Trouble when a
    worker was ended from outside; what was kept stays kept.
    """
    pool = ProcessPoolExecutor(
        min(workers, max(len(orders), 1)), get_context("spawn"), worker.start, (setup.current(),)
    )
    with pool:
        try:
            for made in _flowing(pool, orders, brokerage, workers * _WAITING):
                yield made if isinstance(made, Withheld) else keep(made, out, by)
        except BrokenProcessPool as broken:
            raise Trouble(words("package-worker-gone")) from broken


def _flowing(
    pool: ProcessPoolExecutor, orders: Iterable[Order], brokerage: Brokerage, most: int
) -> Iterator[Composed | Withheld]:
    """Yield what comes out of the pool, with at most ``most`` orders in it."""
    waiting: set[Future[Composed | Withheld]] = set()
    for order in orders:
        if len(waiting) >= most:
            done, waiting = wait(waiting, return_when=FIRST_COMPLETED)
            yield from (future.result() for future in done)
        waiting.add(pool.submit(_work, order, brokerage))
    yield from (future.result() for future in as_completed(waiting))
