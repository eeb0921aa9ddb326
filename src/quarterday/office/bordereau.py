"""The month's bordereau: what renews, what it costs, and what the insurers were asked."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import replace
from datetime import date
from decimal import Decimal
from pathlib import Path

from quarterday.core.dates import Period
from quarterday.core.file.fold import File, renewal_period
from quarterday.core.file.layout import Cell, CellKind
from quarterday.core.file.records import Organisation, RequestSent, Terms
from quarterday.intake.tablefiles.plainfiles import csv_bytes, write_workbook
from quarterday.intake.tablefiles.table import Table, of_rows

COLUMNS: Mapping[str, CellKind] = {
    "file": "text", "organisation": "text", "province": "text", "insurer": "text",
    "policy": "text", "renewal": "date", "term_start": "date", "term_end": "date",
    "currency": "text", "premium_expiring": "amount", "premium_offered": "amount",
    "requests": "integer", "last_request": "date", "changes_asked": "integer",
}  # fmt: skip


def bordereau(month: Period, files: Iterable[File]) -> Iterator[dict[str, Cell]]:
    """Yield a line for each file that renews, or of which the insurer was asked, in a month."""
    for file in files:
        if file.get(Organisation) is None or file.renewal is None:
            continue
        sent = [r for r in file.all(RequestSent) if r.sent_on in month]
        if sent or file.renewal in month:
            yield _of_file(file, file.renewal, sent)


def _of_file(file: File, renewal: date, sent: Sequence[RequestSent]) -> dict[str, Cell]:
    offered, expiring = file.terms(renewal, "offered"), file.expiring(renewal)
    terms, term = offered or expiring, renewal_period(file, renewal)
    organisation = file.organisation
    return {
        "file": file.id, "organisation": organisation.named_insured or organisation.name,
        "province": organisation.province, "insurer": terms.insurer if terms else None,
        "policy": terms.policy_number if terms else None, "renewal": renewal,
        "term_start": term.start, "term_end": term.end,
        "currency": terms.currency if terms else "CAD",
        "premium_expiring": _premium(expiring), "premium_offered": _premium(offered),
        "requests": len(sent), "last_request": max((r.sent_on for r in sent), default=None),
        "changes_asked": sum(r.changes for r in sent),
    }  # fmt: skip


def _premium(terms: Terms | None) -> Decimal | None:
    """Return the premium before tax."""
    lines = terms.premiums if terms else ()
    return sum((line.amount for line in lines), Decimal(0)) if lines else None


def write_bordereau(month: Period, rows: Iterable[Mapping[str, Cell]], folder: Path) -> list[Path]:
    """Write the month's bordereau as a workbook and as CSV; return both paths."""
    folder.mkdir(parents=True, exist_ok=True)
    stem = folder / f"bordereau-{month.start:%Y-%m}"
    table = of_rows("bordereau", COLUMNS, rows)
    paths = [stem.with_suffix(".xlsx"), stem.with_suffix(".csv")]
    with paths[0].open("wb") as out:
        write_workbook([_to_read(table)], out)
    paths[1].write_bytes(csv_bytes(table))
    return paths


def _to_read(table: Table) -> Table:
    """Return a table with headings for people."""
    fields = [replace(field, heading=field.id.replace("_", " ")) for field in table.fields]
    return replace(table, title="Bordereau", fields=fields)
