"""A run of packages in one folder: it goes on where it was stopped, and says what came of it."""

from __future__ import annotations

import hashlib
import json
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import asdict, dataclass
from pathlib import Path

import quarterday
from quarterday.catalogue.speech import Speech
from quarterday.core.file.layout import Cell, CellKind
from quarterday.intake.tablefiles.plainfiles import csv_bytes
from quarterday.intake.tablefiles.table import of_rows
from quarterday.office import packages
from quarterday.office.own_data import own_folder
from quarterday.office.packages import Built, Order, Withheld
from quarterday.papers.brokerage import Brokerage
from quarterday.store import seals, whole_book

JOURNAL, REPORT = "packages.run.jsonl", "packages.csv"
COLUMNS: Mapping[str, CellKind] = {
    "file": "text", "language": "text", "renewal": "text", "version": "integer", "as_of": "text",
    "draft": "yes-no", "bytes": "integer", "sha256": "text", "name": "text",
    "earlier_run": "yes-no", "withheld": "text",
}  # fmt: skip


@dataclass(frozen=True, slots=True)
class Done:
    """A package that this run or an earlier one wrote into the folder.

    ``head`` is the file's newest entry after it was kept; ``made_with`` is the digest of the
    program, the reference data and the brokerage's description.
    """

    file: str
    wanted: str
    made_with: str
    head: int
    language: str
    renewal: str
    version: int
    as_of: str
    draft: bool
    bytes: int
    sha256: str
    name: str
    enclosed: tuple[str, ...] = ()
    earlier_run: bool = False

    @property
    def plain(self) -> dict[str, object]:
        """What was built, as JSON can hold it, without where it was written."""
        names = (
            "file",
            "renewal",
            "language",
            "version",
            "as_of",
            "draft",
            "sha256",
            "earlier_run",
        )
        return {name: getattr(self, name) for name in names} | {"enclosed": list(self.enclosed)}


Result = Done | Withheld


def run(
    orders: Sequence[Order], brokerage: Brokerage, out: Path, *, by: str, workers: int = 2
) -> Iterator[Result]:
    """Build what is not there yet, in ``workers`` processes; yield each package or why it is not.

    What an earlier run wrote, and what nothing has changed since, is yielded first and not built
    again. The journal is written package by package, each after the package is whole; seals are
    set at the end.
    """
    out.mkdir(parents=True, exist_ok=True)
    made_with = digest_of(brokerage)
    there = _there(out, made_with)
    wanted = {_wanted(order): order for order in orders}
    kept = {key: done for key, done in there.items() if key in wanted}
    yield from kept.values()
    left = [order for key, order in wanted.items() if key not in kept]
    yield from _build(left, brokerage, out, made_with, by, workers)
    seals.seal()


def _build(
    orders: Sequence[Order], brokerage: Brokerage, out: Path, made_with: str, by: str, workers: int
) -> Iterator[Result]:  # fmt: skip
    asked = {(order.file, order.language): _wanted(order) for order in orders}
    with (out / JOURNAL).open("a", encoding="utf-8") as journal:
        for made in packages.batch(orders, brokerage, out, by=by, workers=workers):
            if isinstance(made, Withheld):
                yield made
                continue
            done = _done(made, asked, made_with)
            journal.write(json.dumps(asdict(done), sort_keys=True) + "\n")
            journal.flush()
            yield done


def _wanted(order: Order) -> str:
    day = order.as_of or f"{order.today}?"
    return f"{order.file} {order.language or '-'} {day}"


def _done(built: Built, asked: dict[tuple[str, str | None], str], made_with: str) -> Done:
    made = built.composed
    wanted = asked.get((made.file, made.language)) or asked[made.file, None]
    return Done(
        made.file, wanted, made_with, built.head, made.language, str(made.renewal), made.version,
        str(made.as_of), made.is_draft, len(made.pdf), built.document, built.path.name,
        tuple(paper for paper, _ in made.enclosed),
    )  # fmt: skip


def _there(out: Path, made_with: str) -> dict[str, Done]:
    """Return what the journal says is there, and is, by what was wanted."""
    path, heads = out / JOURNAL, whole_book.heads()
    found: dict[str, Done] = {}
    for line in path.read_text("utf-8").splitlines() if path.exists() else ():
        done = _line(line)
        if done and done.made_with == made_with:
            found[done.wanted] = done
    return {key: done for key, done in found.items() if _stands(done, out, heads.get(done.file))}


def _line(text: str) -> Done | None:
    try:
        return Done(**(json.loads(text) | {"earlier_run": True}))
    except (ValueError, TypeError):
        return None  # the line that was being written when the run was stopped


def _stands(done: Done, out: Path, head: int | None) -> bool:
    path = out / done.name
    if done.head != head or Path(done.name).name != done.name or not path.is_file():
        return False
    return hashlib.sha256(path.read_bytes()).hexdigest() == done.sha256


def digest_of(brokerage: Brokerage) -> str:
    """Return the digest of everything a package is made with besides its file."""
    seen = hashlib.sha256(repr(brokerage).encode())
    for root in filter(None, (Path(quarterday.__file__).parent, own_folder())):
        for path in sorted(root.rglob("*")):
            if path.is_file() and path.suffix != ".pyc":
                seen.update(str(path.relative_to(root)).encode() + b"\0")
                seen.update(hashlib.sha256(path.read_bytes()).digest())
    return seen.hexdigest()


def report(results: Iterable[Result], out: Path, speech: Speech) -> Path:
    """Write what was built and what was withheld, and why, as CSV into the folder."""
    rows = [_row(one, speech) for one in results]
    path = out / REPORT
    part = path.with_suffix(".part")
    ordered = sorted(rows, key=lambda row: (str(row["file"]), str(row.get("language", ""))))
    part.write_bytes(csv_bytes(of_rows("packages", COLUMNS, ordered)))
    return part.replace(path)


def _row(one: Result, speech: Speech) -> dict[str, Cell]:
    if isinstance(one, Withheld):
        return {"file": one.file, "withheld": speech.say(one.reason)}
    return {name: value for name, value in asdict(one).items() if name in COLUMNS}
