"""What records and their values are called by people, who do not know keys and ids."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field
from datetime import date
from decimal import Decimal

from quarterday.catalogue.speech import MissingWording, Speech, Spoken
from quarterday.core.file.difference import Leaf
from quarterday.core.file.entry import Entry
from quarterday.core.file.fold import File, read
from quarterday.core.file.layout import Column
from quarterday.core.file.records import (
    AllocationKey,
    Answers,
    Authority,
    Bound,
    Claim,
    Decision,
    Delivery,
    EvidenceSent,
    FindingSetAside,
    FormReturned,
    Organisation,
    PackageBuilt,
    PackageSealed,
    PaymentChoice,
    PolicyChecked,
    Record,
    Redaction,
    RequestSent,
    ReviewSigned,
    Terms,
    Valuation,
)
from quarterday.core.file.records.terms import EVERYWHERE
from quarterday.core.money import Money
from quarterday.core.premium.instalments import AT_ONCE
from quarterday.core.review.review import Review
from quarterday.core.words import Rate, Term, Words, words
from quarterday.intake.labels import choice
from quarterday.office.forms import sheet_of
from quarterday.office.telling import signer

OPTION = "option"
_CATALOGUES: Mapping[tuple[str, str], str] = {
    ("decision", "answer"): "answer",
    ("delivery", "way"): "way",
    ("payment choice", "plan"): "plan",
    ("form returned", "form"): "paper",
    ("answers", "form"): "paper",
    ("evidence sent", "paper"): "paper",
    ("evidence sent", "role"): "interest-role",
}


@dataclass(frozen=True, slots=True)
class Names:
    """What the things of a file are called that its records name by id."""

    places: Mapping[str, str] = field(default_factory=dict)
    people: Mapping[str, str] = field(default_factory=dict)
    findings: Mapping[str, Words] = field(default_factory=dict)


def names_of(file: File, done: Review | None = None) -> Names:
    """Return the names of a file's buildings, people and, of a review, findings."""
    return Names(
        {building.id: building.name for building in file.buildings},
        {contact.id: contact.name for contact in file.contacts},
        {found.id: found.title for found in done.findings} if done else {},
    )


def records_of(entries: Iterable[Entry]) -> dict[int, Record]:
    """Return by entry, the oldest first, the record it tells of: of a withdrawal, the one it took.

    Nothing for an entry whose content was removed and that had none before it.
    """
    standing: dict[tuple[str, str], Record] = {}
    found = {}
    for entry in entries:
        ref = entry.kind, entry.key
        if entry.body is not None:
            standing[ref] = read(entry.kind, entry.body)
        if ref in standing:
            found[entry.seq] = standing[ref]
    return found


def question_told(question: str, findings: Mapping[str, Words]) -> Spoken:
    """Return what a question asks about: an option's coverage, or a finding by its title."""
    first, _, rest = question.partition("/")
    if first == OPTION:
        return Term("coverage", rest.partition("/")[0])
    return findings.get(question, question.rpartition("@")[0] or question)


def called(record: Record, names: Names) -> Spoken:  # noqa: C901, PLR0911, PLR0912 - a line a kind
    """Return what a record is called beside its kind; nothing when there is one of the kind."""
    match record:
        case Terms():
            return words("called-terms", stage=record.stage, day=record.start)
        case Decision():
            return question_told(record.question, names.findings)
        case FindingSetAside():
            return question_told(record.finding, names.findings)
        case Delivery():
            return record.to
        case RequestSent():
            return words("called-number", n=record.number)
        case Redaction():
            return words("called-number", n=record.seq)
        case PackageBuilt() | PackageSealed():
            language = Term("language", record.language)
            return words("called-package", language=language, version=str(record.version))
        case FormReturned() | Answers():
            return Term("paper", record.form)
        case ReviewSigned():
            return record.reviewer
        case Bound() | PolicyChecked():
            return signer(record.by)
        case PaymentChoice():
            at_once = record.plan == AT_ONCE
            return words("payment-at-once") if at_once else Term("plan", record.plan)
        case AllocationKey():
            return record.party
        case Claim():
            return record.number
        case Valuation():
            return names.places.get(record.building, record.building)
        case Authority():
            return names.people.get(record.contact, record.contact)
        case EvidenceSent():
            return record.name
        case _:
            return str(getattr(record, "name", "") or "")


def called_told(record: Record, names: Names, speech: Speech) -> str:
    """Return what a record is called in words; its key where a catalogue lost a name."""
    try:
        return speech.say(called(record, names))
    except MissingWording:
        return record.key


def leaf_told(kind: str, path: str, value: Leaf, speech: Speech) -> str:
    """Return a value of a record's field, named by its path, as people read it."""
    if value is None or value == "":
        return "–"
    if isinstance(value, bool):
        return speech.say(value)
    if (kind, path) == (Organisation.kind, "office"):
        from quarterday.office.showing import house  # it needs a store, which the sentences do not

        return house().offices.get(str(value), str(value))
    part, _, name = path.rpartition(".")
    column = _column(kind, part.partition("[")[0], name or path)
    catalogue = _CATALOGUES.get((kind, path)) or ("language" if path == "language" else "")
    if catalogue:
        return _named(Term(catalogue, str(value)), speech)
    return _cell(kind, column, value, speech) if column else str(value)


def _column(kind: str, part: str, name: str) -> Column | None:
    sheet = sheet_of(kind, part)
    return next((c for c in sheet.columns if c.field == name), None) if sheet else None


def _cell(kind: str, column: Column, value: str | int, speech: Speech) -> str:
    text = str(value)
    if column.kind == "amount" and text.lstrip("-").replace(".", "").isdigit():
        return speech.say(Money(Decimal(text)))
    if column.kind == "ratio" and text.replace(".", "").isdigit():
        return speech.say(Rate(Decimal(text), 2))
    if column.choices and text in column.choices:
        return _named(choice(kind, column.field, text), speech)
    if column.refers in {"coverage", "cause", "province"}:
        return _named(Term(column.refers, text), speech)
    if column.kind == "date" and len(text) == len("2026-11-25"):
        return speech.say(date.fromisoformat(text))
    return speech.say(words("everywhere")) if text == EVERYWHERE else text


def _named(term: Term, speech: Speech) -> str:
    """Return a term's name; its id where the catalogue has none any more."""
    try:
        return speech.say(term)
    except MissingWording:
        return term.id
