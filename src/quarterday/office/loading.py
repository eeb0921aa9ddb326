"""Loading a workbook, CSV folder or locations: plan, preview; then write all of it or nothing."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from django.db import transaction

from quarterday.catalogue.speech import Speech
from quarterday.core.file.entry import Draft
from quarterday.core.file.fold import File
from quarterday.core.reference import Reference
from quarterday.intake.exposure import plan as exposure
from quarterday.intake.exposure.tables import codes
from quarterday.intake.map import match
from quarterday.intake.parse import Parsed, parse
from quarterday.intake.plan import NotAccepted, Plan, plan
from quarterday.intake.preview import preview as sentences
from quarterday.intake.preview import understood
from quarterday.intake.profile import NO_PROFILE, Profile
from quarterday.store import ledger, originals, seals, setup, whole_book

Watch = Callable[[Iterator[ledger.Batch], int], Iterator[ledger.Batch]]


@dataclass(frozen=True, slots=True)
class Loading:
    """What a document holds and what loading it would do; ``seen`` is each file's newest entry."""

    parsed: Parsed
    plan: Plan
    seen: Mapping[str, int]


@dataclass(frozen=True, slots=True)
class Loaded:
    """What was written: into how many files, and how many entries."""

    files: int
    entries: int


def preview(path: Path, reference: Reference, profile: Profile = NO_PROFILE) -> Loading:
    """Return what loading ``path`` would do; nothing is written.

    Unreadable when nothing of it can be read; NotStarted when there is no store yet.
    """
    setup.require_started()
    parsed = parse(path)
    seen: dict[str, int] = {}
    on_file = frozenset(ledger.files())

    def existing(account: str) -> File | None:
        file = ledger.load(account) if account in on_file else None
        seen[account] = file.seq if file else 0
        return file

    if exposure.is_exposure(parsed):
        planned = exposure.plan(parsed, existing, codes(), reference)
    else:
        planned = plan(
            parsed,
            match(parsed, profile),
            existing,
            reference,
            on_file=on_file,
            registrations=whole_book.registrations(),
        )
    return Loading(parsed, planned, seen)


def plain(planned: Loading, speech: Speech) -> dict[str, Any]:
    """Return what loading would do, as JSON can hold it: counts, the mapping, and the sentences."""
    made = planned.plan
    counts = {status: len(made.with_status(status)) for status in ("new", "changed", "unchanged")}
    counts |= {kind: len(made.of(kind)) for kind in ("refused", "asks", "note")}
    return {
        "document": planned.parsed.document,
        **counts,
        "mapping": [speech.say(sentence) for sentence in understood(made.map)],
        "sentences": [speech.say(sentence) for sentence in sentences(made)],
    }


def accept(
    loading: Loading, *, by: str, accept_with_errors: bool, watch: Watch | None = None
) -> Loaded:
    """Write what the preview showed, in one transaction, and keep the document it came from.

    NotAccepted when something was refused or asked and nobody accepted it; Conflict when a record
    was changed since the preview. ``watch`` sees the files go by, and how many there are.
    """
    drafts = loading.plan.batches(accept_with_errors=accept_with_errors)
    files, batches = loading.plan.accounts, _batches(drafts, loading.seen)
    if loading.plan.needs_acceptance and not accept_with_errors:
        raise NotAccepted
    if not files:
        return Loaded(0, 0)
    with transaction.atomic():
        originals.put(loading.parsed.original, loading.parsed.name)
        watched = watch(batches, files) if watch else batches
        entries = ledger.append_many(watched, by=by)
    seals.seal()
    return Loaded(files, entries)


def _batches(
    drafts: Iterator[tuple[str, list[Draft]]], seen: Mapping[str, int]
) -> Iterator[ledger.Batch]:
    for account, of_account in drafts:
        yield ledger.Batch(account, of_account, seen[account])
