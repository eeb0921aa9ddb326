"""Asking the insurer: the next request, its letter, the same for a program, and that it went."""

from __future__ import annotations

import json
from collections.abc import Iterable, Mapping
from dataclasses import dataclass, replace
from datetime import date
from decimal import Decimal
from typing import Any

from django.db import transaction

from quarterday.catalogue.speech import Speech, Spoken
from quarterday.core.file.entry import Draft, Entry, Origin
from quarterday.core.file.fold import File, fold, renewal_period
from quarterday.core.file.layout import Cell, CellKind
from quarterday.core.file.records import (
    Answers,
    Building,
    Decision,
    PaymentChoice,
    Record,
    RequestSent,
    Terms,
)
from quarterday.core.money import Money
from quarterday.core.reference import Reference
from quarterday.core.review.review import Review, review
from quarterday.core.words import Said, Term, Words, words
from quarterday.intake.changes import Change
from quarterday.intake.labels import field_label
from quarterday.intake.preview import line_name, title, value_told
from quarterday.intake.tablefiles.plainfiles import csv_bytes
from quarterday.intake.tablefiles.table import of_rows
from quarterday.office import mailing, underway
from quarterday.office.called import question_told
from quarterday.office.delivering import Letter, check_whole
from quarterday.office.to_ask import Moved, to_tell
from quarterday.office.trouble import Moved as Changed
from quarterday.office.trouble import Trouble, made
from quarterday.papers.brokerage import Brokerage
from quarterday.papers.change_request.data import Asked, Earlier, Request, letter
from quarterday.store import ledger, originals

NONE = "–"
COLUMNS: Mapping[str, CellKind] = {
    "file": "text", "kind": "text", "key": "text", "part": "text", "line": "text", "field": "text",
    "was": "text", "now": "text", "since": "text", "entry": "integer", "way": "text",
    "ask": "text", "earlier": "text", "earlier_number": "integer", "earlier_on": "text",
}  # fmt: skip


@dataclass(frozen=True, slots=True)
class Prepared:
    """A request that is ready: what it asks for, its letter, and the same for a program."""

    request: Request
    seq: int
    moved: tuple[Moved, ...]
    pdf: bytes
    csv: bytes
    json: bytes

    @property
    def name(self) -> str:
        """What its files are called, without their endings."""
        return f"{self.request.file}-request-{self.request.term.start}-{self.request.number}"


def prepare(
    id: str, reference: Reference, brokerage: Brokerage, day: date, language: str
) -> Prepared:
    """Return the next request to the insurer; nothing is recorded.

    Trouble when nothing was changed or decided since the last one, or there are no terms.
    """
    entries = ledger.entries(id)
    file = fold(id, entries)
    renewal = file.renewal
    terms = (file.terms(renewal, "offered") or file.expiring(renewal)) if renewal else None
    if renewal is None or terms is None:
        raise Trouble(words("request-no-terms", file=id))
    sent = [r for r in file.all(RequestSent) if r.renewal == renewal]
    moved = to_tell(entries, file.all(RequestSent), renewal)
    if not moved:
        raise Trouble(words("request-nothing", file=id))
    done = review(file, reference, day)
    asked = tuple(_asked(one, file, done, reference) for one in moved)
    term, number = renewal_period(file, renewal), len(sent) + 1
    request = Request(id, file.organisation, terms, term, number, day, asked)
    rows = [_plain(one) for one in moved]
    pdf = letter(request, brokerage, Speech(reference, language))
    return Prepared(request, file.seq, moved, pdf, _as_csv(rows), _as_json(request, rows))


def require_seen(prepared: Prepared, seen: int) -> None:
    """Raise Moved unless a request says what a person read; ``seen`` was then the newest entry."""
    if prepared.seq != seen:
        raise Changed(words("acts-request-moved", file=prepared.request.file))


def usual_letter(
    file: File, prepared: Prepared, brokerage: Brokerage, speech: Speech, sender: str
) -> Letter:  # fmt: skip
    """Return the usual words that go with a request, to be changed before they are sent.

    They go where the file's last request by e-mail to the same insurer went.
    """
    request = prepared.request
    insurer = request.terms.insurer or ""
    sent = [r for r in file.all(RequestSent) if r.to == insurer and r.address]
    last = max(sent, key=lambda r: (r.sent_on, r.number), default=None)
    named = request.organisation.named_insured or request.organisation.name
    told: dict[str, str | int] = {
        "organisation": named, "renewal": str(request.term.start), "n": request.changes,
        "gone": request.gone,
        "policy": request.terms.policy_number or "–", "phone": brokerage.phone,
        "brokerage": brokerage.named(speech.language), "sender": sender, "number": request.number,
    }  # fmt: skip
    text = "\n\n".join(speech.say(words(f"mail-ask-{p}", **told)) for p in ("body", "close"))
    subject = speech.say(words("mail-ask-subject", **told))
    return Letter(insurer, last.address or "" if last else "", subject, text)


def mail(
    prepared: Prepared, letter: Letter, brokerage: Brokerage, language: str, *, by: str
) -> Entry:  # fmt: skip
    """Send a request by e-mail, its letter enclosed, and record it.

    Trouble without an address or words, or when the server does not take it: then nothing is
    recorded.
    """
    to = mailing.address(letter.address)
    check_whole(letter, ("subject", "words"))
    sent = replace(letter, to=prepared.request.terms.insurer or "–", address=to)
    key = f"request/{prepared.request.term.start}/{prepared.request.number}"
    mark = underway.begun(prepared.request.file, key, to)
    try:
        mailing.send(mailing.Message(
            (brokerage.named(language), brokerage.email), (sent.to, to), sent.subject, sent.words,
            ((f"{prepared.name}.pdf", prepared.pdf),),
        ))  # fmt: skip
    except BaseException:
        mark.delete()
        raise
    with transaction.atomic():
        entry = send(prepared, by=by, letter=sent)
        mark.delete()
    return entry


def send(prepared: Prepared, *, by: str, letter: Letter | None = None) -> Entry:
    """Record that a request went to the insurer (by e-mail: with ``letter``), and keep it."""
    request = prepared.request
    with transaction.atomic():
        document = originals.put(prepared.pdf, f"{prepared.name}.pdf")
        record = made(
            RequestSent, renewal=request.term.start, number=request.number, sent_on=request.day,
            to=request.terms.insurer or "–", document=document, seq=prepared.seq,
            changes=len(prepared.moved), taken_back=sum(one.is_gone for one in prepared.moved),
            address=letter.address if letter else None,
            subject=letter.subject if letter else None, message=letter.words if letter else None,
        )  # fmt: skip
        origin = Origin(way="office", person=by)
        draft = Draft("request", record.kind, record.key, record.body(), origin)
        (entry,) = ledger.append(request.file, [draft], by=by, expected_seq=prepared.seq)
    return entry


def _asked(one: Moved, file: File, done: Review, reference: Reference) -> Asked:
    record, change, earlier = one.record, one.change, one.earlier
    subject, what = _about(one, file, done)
    was, now = (_value(one, value, reference) for value in (change.old, change.new))
    if isinstance(record, Decision | PaymentChoice | Answers):
        was = NONE
    before = None
    if earlier:
        is_removed = earlier.value is None
        said = words("request-removed") if is_removed else _value(one, earlier.value, reference)
        before = Earlier(earlier.number, earlier.day, said)
    day = one.entry.recorded_at.date()
    return Asked(record.kind, subject, what, was, now, day, before, one.is_gone)


def _about(one: Moved, file: File, done: Review) -> tuple[Spoken, Spoken]:
    """Return what a change is about, and what of it."""
    record, change = one.record, one.change
    titles = {found.id: found.title for found in done.findings}
    match record:
        case Decision():
            return question_told(record.question, titles), words("request-decided")
        case PaymentChoice():
            return words("request-payment"), words("request-decided")
        case Answers():
            building = file.get(Building, record.subject)
            place = building.name if building else file.organisation.name
            return Term("paper", record.form), place
        case Building():
            subject: Spoken = record.name
        case Terms() if change.part == "coverages":
            return _covered(file, change), _limit(change)
        case _:
            subject = title(record)
    return subject, line_name(change) if change.part else field_label(change.field, record.kind)


def _value(one: Moved, value: Any, reference: Reference) -> Said:  # noqa: ANN401 - a field's value
    """Return a value of a change as it is spoken."""
    if value is None:
        return NONE
    match one.record:
        case Decision():
            return Term("answer", value)
        case PaymentChoice():
            return Term("plan", value) if value in reference.plans else words("payment-at-once")
        case Answers():
            return words("request-answers", n=len(value))
        case record:
            return _told(record, one.change, value)


def _covered(file: File, change: Change) -> Words:
    coverage, location = change.line[:2]
    building = file.get(Building, location)
    place = building.name if building else words("everywhere")
    return words("paper-coverage-at", coverage=Term("coverage", coverage), place=place)


def _limit(change: Change) -> Words:
    return field_label(change.field or "limit", Terms.kind)


def _told(record: Record, change: Change, value: Any) -> Said:  # noqa: ANN401 - a field's value
    limit = getattr(value, "limit", None) if change.part and not change.field else None
    if limit is not None and isinstance(record, Terms):
        return Money(limit, record.currency)
    return value_told(record, change, value) if change.field else words("request-there")


def _plain(one: Moved) -> dict[str, Any]:
    change, earlier = one.change, one.earlier
    return {
        "file": one.entry.file, "kind": one.record.kind, "key": one.record.key,
        "part": change.part, "line": "/".join(change.line), "field": change.field,
        "was": _json(change.old), "now": _json(change.new),
        "since": one.entry.recorded_at.date().isoformat(), "entry": one.entry.seq,
        "way": one.entry.origin.way,
        "ask": "disregard" if one.is_gone else "change",
        "earlier": _json(earlier.value) if earlier else None,
        "earlier_number": earlier.number if earlier else None,
        "earlier_on": earlier.day.isoformat() if earlier else None,
    }  # fmt: skip


def _json(value: Any) -> Any:  # noqa: ANN401 - a field's value
    match value:
        case Decimal():
            return f"{value:f}"
        case date():
            return value.isoformat()
        case tuple():
            return [_json(item) for item in value]
        case _ if hasattr(value, "model_dump"):
            return value.model_dump(mode="json", exclude_none=True)
        case _:
            return value


def _as_json(request: Request, rows: list[dict[str, Any]]) -> bytes:
    organisation, terms = request.organisation, request.terms
    told = {
        "file": request.file,
        "organisation": organisation.name,
        "named_insured": organisation.named_insured or organisation.name,
        "insurer": terms.insurer,
        "policy_number": terms.policy_number,
        "renewal": request.term.start.isoformat(),
        "number": request.number,
        "sent_on": request.day.isoformat(),
        "changes": rows,
    }
    return json.dumps(told, ensure_ascii=False, indent=2).encode() + b"\n"


def _as_csv(rows: Iterable[Mapping[str, Any]]) -> bytes:
    cells = ({name: _cell(value) for name, value in row.items()} for row in rows)
    return csv_bytes(of_rows("request", COLUMNS, cells))


def _cell(value: Any) -> Cell:  # noqa: ANN401 - a field's value
    is_nested = isinstance(value, list | dict)
    told: Cell = json.dumps(value, ensure_ascii=False) if is_nested else value
    return told
