"""Small workbooks, files on record, and plans of the one over the other."""

from __future__ import annotations

import io
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import replace
from datetime import UTC, datetime
from functools import lru_cache
from pathlib import Path

import openpyxl

from quarterday.catalogue.load import reference
from quarterday.catalogue.speech import Speech
from quarterday.core.file.chain import Head, append
from quarterday.core.file.entry import Draft, Entry, Origin
from quarterday.core.file.fold import File, fold
from quarterday.core.file.records import Record
from quarterday.intake.faults import Fault
from quarterday.intake.map import match
from quarterday.intake.parse import Parsed, parse, parse_workbook
from quarterday.intake.plan import Plan, plan
from quarterday.intake.preview import preview, sentence
from quarterday.intake.profile import NO_PROFILE, Profile

Rows = Sequence[Sequence[object]]
Sheets = Mapping[str, Rows]
Files = Mapping[str, File]
ORGANISATIONS: Rows = (
    ("account", "name", "province"),
    ("0007", "St. Brendan", "ON"),
    ("0012", "Hillside Hall", "NS"),
)


def workbook(sheets: Sheets) -> bytes:
    """Return an .xlsx workbook with these sheets, each a list of rows of cells."""
    book = openpyxl.Workbook()
    del book["Sheet"]
    for name, rows in sheets.items():
        page = book.create_sheet(name)
        for row in rows:
            page.append(list(row))
    out = io.BytesIO()
    book.save(out)
    return out.getvalue()


def parsed(sheets: Sheets) -> Parsed:
    """Return these sheets as read from a workbook."""
    return parse_workbook(workbook(sheets), "book.xlsx")


def csv_folder(folder: Path, files: Mapping[str, str | bytes]) -> Parsed:
    """Return CSV files as read from a folder."""
    folder.mkdir(exist_ok=True)
    for name, text in files.items():
        data = text if isinstance(text, bytes) else text.encode()
        (folder / name).write_bytes(data)
    return parse(folder)


def file_of(account: str, records: Iterable[Record]) -> File:
    """Return the file that holds ``records``."""
    head = Head()
    entries: list[Entry] = []
    for record in records:
        draft = Draft("load", record.kind, record.key, record.body(), Origin(way="office"))
        at = datetime(2026, 1, 5, 12, len(entries) % 60, tzinfo=UTC)
        entry = append(head, draft, file=account, by="Ada", recorded_at=at, salt="00")
        entries.append(entry)
        head = Head(entry.seq, entry.digest)
    return fold(account, entries)


def plan_of(
    what: Parsed | Sheets,
    files: Files | None = None,
    profile: Profile = NO_PROFILE,
    registrations: Mapping[str, str] | None = None,
) -> Plan:
    """Return the plan of a workbook over the files of a store; the workbook keeps its rows."""
    book = what if isinstance(what, Parsed) else parsed(what)
    book = replace(book, sheets=tuple(replace(s, rows=list(s.rows)) for s in book.sheets))
    on_file = files or {}
    return plan(
        book,
        match(book, profile),
        on_file.get,
        reference(),
        on_file=tuple(on_file),
        registrations=registrations,
    )


def after(done: Plan, files: Files | None = None) -> dict[str, File]:
    """Return the files once the plan's drafts are added to them."""
    found = dict(files or {})
    for account, drafts in done.drafts(accept_with_errors=True).items():
        before = found[account].held.values() if account in found else ()
        kept = {(h.record.kind, h.record.key): h.record for h in before}
        for item in done.items:
            if item.account == account and item.status != "unchanged":
                kept[item.record.kind, item.record.key] = item.record
        assert drafts
        found[account] = file_of(account, kept.values())
    return found


@lru_cache(maxsize=2)
def speech(language: str = "en") -> Speech:
    """Return speech in one language."""
    return Speech(reference(), language)


def said(faults: Iterable[Fault], language: str = "en") -> list[str]:
    """Return faults as a person reads them."""
    return [speech(language).say(sentence(fault)) for fault in faults]


def refusals(done: Plan, language: str = "en") -> list[str]:
    """Return what a plan refuses, as a person reads it."""
    return said(done.of("refused"), language)


def notes(done: Plan, language: str = "en") -> list[str]:
    """Return a plan's notes, as a person reads them."""
    return said(done.of("note"), language)


def previewed(done: Plan, language: str = "en") -> list[str]:
    """Return the whole preview, as a person reads it."""
    return [speech(language).say(line) for line in preview(done)]
