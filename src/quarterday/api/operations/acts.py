"""The acts on a file: each one is a right, an entry, and what was written."""

from collections.abc import Sequence
from typing import Any

from django.http import HttpRequest
from ninja import Router
from pydantic import ValidationError

from quarterday.api import inputs
from quarterday.api.asking import asked, file_shown
from quarterday.api.declaring import acts as declared
from quarterday.api.declaring import reads
from quarterday.api.problems import Problem
from quarterday.api.shapes.acts import Checked, Questions, Wish
from quarterday.api.shapes.files import Written
from quarterday.api.strict import record_refused
from quarterday.core.file.entry import Entry
from quarterday.core.file.fold import File
from quarterday.core.file.layout import SHEETS
from quarterday.core.file.records import Record
from quarterday.core.words import words
from quarterday.office import (
    acts,
    binding,
    checking,
    forms,
    plain,
    reviewing,
    standings,
    undoing,
)
from quarterday.office.demo_people import today
from quarterday.office.own_data import reference_in_use
from quarterday.store import ledger

router = Router(tags=["acts"])


def written(file: str, entries: Sequence[Entry]) -> dict[str, Any]:
    """Return what was written, after the file's standing was made anew."""
    standings.refresh(reference_in_use(), today(), of=[file])
    newest = ledger.entries(file)[-1].seq
    return {"file": file, "seq": newest, "entries": [plain.entry(entry) for entry in entries]}


def _record(sent: inputs.RecordSent, held: File) -> Record:
    sheet = forms.sheet_of(sent.kind)
    if sheet is None:
        kinds = tuple(dict.fromkeys(sheet.record.kind for sheet in SHEETS))
        raise Problem("refused", words("api-no-kind", kind=sent.kind[:80], kinds=kinds))
    if sent.key is not None and (sent.kind, sent.key) not in held.held:
        raise Problem("refused", words("api-no-record", kind=sent.kind[:80], key=sent.key[:80]))
    try:
        return sheet.record.model_validate(sent.record)
    except ValidationError as trouble:
        raise record_refused(trouble.errors(include_url=False)) from None


@declared(router, "/files/{file}/records", Written)
def edit(request: HttpRequest, file: str, sent: inputs.RecordSent) -> dict[str, Any]:
    """Record a fact, new or in place of the one that stands; nothing when it says the same."""
    held = file_shown(request, file, "edit").file
    record = _record(sent, held)
    was = None if sent.key is None else (sent.kind, sent.key)
    done = acts.edit(asked(request).person, held, record, sent.seen, was)
    return written(file, done)


@declared(router, "/files/{file}/withdrawals", Written)
def withdraw(request: HttpRequest, file: str, sent: inputs.Withdrawal) -> dict[str, Any]:
    """Take a record back; it stays readable in the entries."""
    held = file_shown(request, file, "edit").file
    if forms.sheet_of(sent.kind) is None or (sent.kind, sent.key) not in held.held:
        raise Problem("refused", words("api-no-record", kind=sent.kind[:80], key=sent.key[:80]))
    done = acts.withdraw(asked(request).person, held, sent.kind, sent.key, sent.seen)
    return written(file, done)


@declared(router, "/files/{file}/undo", Written)
def undo(request: HttpRequest, file: str, sent: inputs.TakenBack) -> dict[str, Any]:
    """Take the newest entry of a record back; what stood before it counts again."""
    done = undoing.undo(asked(request).person, file, sent.entry, sent.seen)
    return written(file, [done])


@declared(router, "/files/{file}/set-aside", Written)
def set_aside(request: HttpRequest, file: str, sent: inputs.SetAside) -> dict[str, Any]:
    """Set a finding aside for this renewal, with the reason."""
    shown = file_shown(request, file, "set-aside")
    done = acts.set_aside(
        asked(request).person, shown.file, shown.review, sent.finding, sent.reason, sent.seen
    )
    return written(file, done)


@declared(router, "/files/{file}/take-up", Written)
def take_up(request: HttpRequest, file: str, sent: inputs.TakeUp) -> dict[str, Any]:
    """Take up a finding that was set aside."""
    shown = file_shown(request, file, "set-aside")
    done = acts.take_up(asked(request).person, shown.file, shown.review, sent.finding, sent.seen)
    return written(file, done)


@declared(router, "/files/{file}/decisions", Written)
def decide(request: HttpRequest, file: str, sent: inputs.DecisionSent) -> dict[str, Any]:
    """Record the leaders' decision on one question."""
    shown = file_shown(request, file, "record")
    done = acts.decide(
        asked(request).person, shown.file, shown.review, question=sent.question,
        answer=sent.answer, by=sent.by, on=sent.on, said=sent.words, seen=sent.seen,
    )  # fmt: skip
    return written(file, done)


@declared(router, "/files/{file}/payment", Written)
def choose_payment(request: HttpRequest, file: str, sent: inputs.PaymentSent) -> dict[str, Any]:
    """Record how the organisation pays the premium."""
    shown = file_shown(request, file, "record")
    done = acts.choose_payment(
        asked(request).person, shown.file, shown.review, plan=sent.plan, by=sent.by, on=sent.on,
        seen=sent.seen,
    )  # fmt: skip
    return written(file, done)


@declared(router, "/files/{file}/notes", Written)
def note(request: HttpRequest, file: str, sent: inputs.NoteSent) -> dict[str, Any]:
    """Keep a note."""
    held = file_shown(request, file, "record").file
    return written(file, acts.note(asked(request).person, held, sent.text, sent.seen))


@declared(router, "/files/{file}/signature", Written)
def sign(request: HttpRequest, file: str, sent: inputs.Signature) -> dict[str, Any]:
    """Sign today's review as the licensed person whose key it is, who has read it."""
    shown, person = file_shown(request, file, "sign"), asked(request).person
    done = reviewing.sign(
        file, reference_in_use(), reviewer=person.name, licence=person.licence,
        as_of=shown.as_of, by=person.signed, seen=sent.seen,
    )  # fmt: skip
    return written(file, [done])


@reads(router, "/files/{file}/questions", Questions)
def questions(request: HttpRequest, file: str) -> dict[str, Any]:
    """List the questions that the leaders may answer: of the review, and options of the offer."""
    shown = file_shown(request, file)
    return {"file": file, "questions": sorted(acts.questions(shown.file, shown.review))}


@reads(router, "/files/{file}/binder", list[Wish])
def wishes(request: HttpRequest, file: str) -> list[dict[str, Any]]:
    """List the changes beyond the offer that the insurer may accept when it binds."""
    return binding.plain(binding.binder(file_shown(request, file).file))


@declared(router, "/files/{file}/binder", Written)
def bind(request: HttpRequest, file: str, sent: inputs.Binder) -> dict[str, Any]:
    """Record that the insurer bound the coming term, and on which terms."""
    shown = file_shown(request, file, "bind")
    done = binding.bind(
        shown.file, insurer_person=sent.confirmed_by, on=sent.on, today=shown.as_of,
        accepted=sent.accepted, number=sent.binder, said=sent.words,
        by=asked(request).person.signed, seen=sent.seen,
    )  # fmt: skip
    return written(file, [done])


@reads(router, "/files/{file}/check", Checked)
def issued(request: HttpRequest, file: str) -> dict[str, Any]:
    """Compare the issued policy with what was agreed; nothing is recorded."""
    shown = file_shown(request, file)
    found = checking.check_of(shown.file)
    return {
        "file": file,
        "recorded": found.checked is not None,
        "differences": checking.plain(found, shown.case, asked(request).speech),
    }


@declared(router, "/files/{file}/check", Written)
def check(request: HttpRequest, file: str, sent: inputs.CheckDone) -> dict[str, Any]:
    """Record that the issued policy, as it stands, was compared with what was agreed."""
    shown = file_shown(request, file, "check")
    done = checking.check(
        shown.file, on=sent.on, today=shown.as_of, said=sent.about,
        by=asked(request).person.signed, seen=sent.seen,
    )  # fmt: skip
    return written(file, [done])
