"""What taking an answer into the file would write, and the records that come of it."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass
from typing import Any

from pydantic import ValidationError

from quarterday.core.file.entry import Draft, Origin, Place
from quarterday.core.file.fold import File, renewal_period
from quarterday.core.file.layout import SHEETS, Column, Sheet
from quarterday.core.file.records import Answer, Answers, Record, Terms
from quarterday.core.file.records.terms import Coverage
from quarterday.core.words import words
from quarterday.intake.assemble import BadField, made
from quarterday.intake.cells import BadCell

Held = Any  # a field's value: text, amount, date, yes or no, list or None
ACT = "read"
SHEET_OF: Mapping[str, Sheet] = {s.record.kind: s for s in SHEETS if s.part is None}
COLUMNS: Mapping[tuple[str, str], Column] = {
    (kind, column.field): column for kind, sheet in SHEET_OF.items() for column in sheet.columns
}
LIMIT = next(
    column for sheet in SHEETS if sheet.part == "coverages"
    for column in sheet.columns if column.field == "limit"
)  # fmt: skip


@dataclass(frozen=True, slots=True)
class Edit:
    """Fields to set in one record; ``start`` is what else it needs when it is not on file yet."""

    record: type[Record]
    key: str
    values: Mapping[str, Held]
    start: Mapping[str, Held]

    @property
    def ref(self) -> tuple[str, str]:
        """The kind and key of the record it changes."""
        return self.record.kind, self.key


@dataclass(frozen=True, slots=True)
class Ask:
    """A sum insured to ask the insurer for, in the terms requested for a renewal."""

    key: str
    line: Coverage

    @property
    def ref(self) -> tuple[str, str]:
        """The kind and key of the terms it changes."""
        return Terms.kind, self.key


@dataclass(frozen=True, slots=True)
class Keep:
    """An answer to keep in its own words with the others of its questionnaire."""

    key: str
    start: Mapping[str, Held]
    answer: Answer

    @property
    def ref(self) -> tuple[str, str]:
        """The kind and key of the answers it is kept with."""
        return Answers.kind, self.key


AnyEdit = Edit | Ask | Keep


def built(file: File, edits: Iterable[AnyEdit]) -> Record:
    """Return the record that ``edits`` of one record make of what is on file.

    BadField when they cannot all be.
    """
    given = tuple(edits)
    asks = [edit for edit in given if isinstance(edit, Ask)]
    keeps = [edit for edit in given if isinstance(edit, Keep)]
    if asks:
        return requested(file, [ask.line for ask in asks])
    if keeps:
        return _answers(file, keeps)
    return _record(file, [edit for edit in given if isinstance(edit, Edit)])


def _record(file: File, edits: list[Edit]) -> Record:
    first = edits[0]
    base = file.get(first.record, first.key)
    values: dict[str, Held] = {} if base else dict(first.start)
    for edit in edits:
        values |= {} if base else edit.start
    for edit in edits:
        values |= edit.values
    sheet = SHEET_OF.get(first.record.kind)
    if sheet is not None:
        return made(first.record, values, base, sheet)
    known = {name: getattr(base, name) for name in first.record.model_fields} if base else {}
    try:
        return first.record.model_validate(known | values)
    except ValidationError as error:
        where = error.errors(include_url=False)[0]["loc"]
        cell = BadCell(words("intake-not-possible"), words("intake-not-possible-remedy"))
        raise BadField(str(where[0]) if where else "", cell) from error


def _answers(file: File, keeps: list[Keep]) -> Record:
    first = keeps[0]
    base = file.get(Answers, first.key)
    known = {answer.question: answer for answer in (base.answers if base else ())}
    known |= {keep.answer.question: keep.answer for keep in keeps}
    return Answers.model_validate({**first.start, "answers": tuple(known.values())})


def asked_of(file: File) -> Terms | None:
    """Return the terms that a request would change: requested, else offered, else expiring."""
    day = file.renewal
    if day is None:
        return None
    return file.terms(day, "requested") or file.terms(day, "offered") or file.expiring(day)


def requested(file: File, lines: Iterable[Coverage]) -> Terms:
    """Return the terms to ask of the insurer for the coming renewal, with sums as in ``lines``."""
    day, base = file.renewal, asked_of(file)
    assert day is not None
    assert base is not None
    coverages = {line.place: line for line in base.coverages}
    for line in lines:
        there = coverages.get(line.place)
        limit = {"limit": line.limit}
        coverages[line.place] = Coverage.model_validate(dict(there) | limit) if there else line
    period = renewal_period(file, day)
    kept = ("insurer", "policy_number", "currency", "shared_limit", "deductible_rule",
            "vacancy_days")  # fmt: skip
    return Terms.model_validate(
        {
            "stage": "requested", "start": period.start, "end": period.end,
            "coverages": tuple(coverages.values()),
            **{name: getattr(base, name) for name in kept},
        }
    )  # fmt: skip


def drafts(
    file: File, taken: Iterable[tuple[str, AnyEdit]], origin: Origin
) -> Iterator[Draft]:  # fmt: skip
    """Yield one draft for each record that the taken answers change, naming their fields.

    ``taken`` are the fields' names with their edits; BadField when a record cannot be made.
    """
    by_ref: dict[tuple[str, str], list[tuple[str, AnyEdit]]] = {}
    for name, edit in taken:
        by_ref.setdefault(edit.ref, []).append((name, edit))
    for ref, named in by_ref.items():
        record = built(file, (edit for _, edit in named))
        held = file.held.get(ref)
        if held is None or held.record != record:
            places = tuple(Place(field=name) for name, _ in named)
            from_here = origin.model_copy(update={"places": places})
            yield Draft(ACT, record.kind, record.key, record.body(), from_here)
