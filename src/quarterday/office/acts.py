"""The acts on one file: edit a fact, take one back, set a finding aside, record a decision."""

from __future__ import annotations

from datetime import date
from typing import Protocol

from quarterday.core.file.entry import Draft, Entry, Origin
from quarterday.core.file.fold import File
from quarterday.core.file.records import (
    Decision,
    FindingSetAside,
    Note,
    Organisation,
    PaymentChoice,
    Record,
)
from quarterday.core.premium.instalments import check_offered
from quarterday.core.review.review import Review
from quarterday.core.terms.agreed import option_id
from quarterday.core.words import words
from quarterday.office.access import require_drafts
from quarterday.office.own_data import reference_in_use
from quarterday.office.trouble import Trouble, made
from quarterday.people.models import Person
from quarterday.store import ledger


class Signer(Protocol):
    """Who acts: ``signed`` is how entries name them."""

    @property
    def signed(self) -> str:
        """Name and address."""
        ...


def _origin(person: Signer) -> Origin:
    return Origin(way="person", person=person.signed)


def _add(
    person: Signer, file: File, act: str, record: Record, seen: int | None
) -> tuple[Entry, ...]:
    """Add a record; nothing is written when it says what stands, as a form sent twice does."""
    standing = file.held.get((record.kind, record.key))
    if standing is not None and standing.record == record:
        return ()
    draft = Draft(act, record.kind, record.key, record.body(), _origin(person))
    return ledger.append(file.id, [draft], by=person.signed, expected_seq=seen)


def edit(
    person: Person, file: File, record: Record, seen: int, was: tuple[str, str] | None = None
) -> tuple[Entry, ...]:
    """Record a fact as it was typed; nothing is written when it says what stands already.

    ``was`` is the kind and key the form was opened on. Conflict when the record was changed after
    entry ``seen``; Trouble when a new record bears the key of another.
    """
    ref = (record.kind, record.key)
    if was is None and ref in file.held:
        raise Trouble(words("acts-same-key", key=record.key))
    if was is not None and ref != was:
        raise Trouble(words("acts-key-fixed", key=was[1]))
    standing = file.held.get(ref)
    if standing is not None and standing.record == record:
        return ()
    draft = Draft("edit", record.kind, record.key, record.body(), _origin(person))
    require_drafts(person, "edit", file.id, [draft])
    return ledger.append(file.id, [draft], by=person.signed, expected_seq=seen)


def withdraw(person: Person, file: File, kind: str, key: str, seen: int) -> tuple[Entry, ...]:
    """Take a record back; it stays readable in the history. Conflict as for ``edit``."""
    if kind == Organisation.kind:
        raise Trouble(words("acts-keeps-organisation"))
    draft = Draft("withdraw", kind, key, None, _origin(person))
    return ledger.append(file.id, [draft], by=person.signed, expected_seq=seen)


def set_aside(
    person: Person, file: File, done: Review, finding: str, reason: str, seen: int
) -> tuple[Entry, ...]:
    """Set a finding aside for this renewal, for a reason; Trouble without one."""
    if not any(found.id == finding for found in done.findings):
        raise Trouble(words("acts-no-finding", finding=finding[:80]))
    record = made(
        FindingSetAside, renewal=done.renewal, finding=finding, reason=_said("reason", reason)
    )
    return _add(person, file, "set-aside", record, seen)


def take_up(
    person: Person, file: File, done: Review, finding: str, seen: int
) -> tuple[Entry, ...]:  # fmt: skip
    """Take up again a finding that was set aside."""
    key = f"{done.renewal}/{finding}"
    if (FindingSetAside.kind, key) not in file.held:
        raise Trouble(words("acts-no-finding", finding=finding[:80]))
    return withdraw(person, file, FindingSetAside.kind, key, seen)


def decide(  # noqa: PLR0913 - a decision has these parts
    person: Signer,
    file: File,
    done: Review,
    *,
    question: str,
    answer: str,
    by: str,
    on: date,
    said: str,
    seen: int | None,
) -> tuple[Entry, ...]:
    """Record what the leaders decided on one question, who of them said so, and when.

    A question is a decision of the review, or an option of the offer.
    """
    if on > done.as_of:
        raise Trouble(words("acts-future", day=on))
    if question not in questions(file, done):
        raise Trouble(words("acts-no-finding", finding=question[:80]))
    record = made(Decision, renewal=done.renewal, question=question, answer=answer,
                   decided_on=on, by=_said("by", by), words=said.strip() or None)  # fmt: skip
    return _add(person, file, "decide", record, seen)


def questions(file: File, done: Review) -> frozenset[str]:
    """Return every question that the leaders may answer."""
    offered = file.terms(done.renewal, "offered")
    options = {option_id(option) for option in (offered.options if offered else ())}
    return frozenset(options | {f.id for f in done.findings if f.kind == "decide"})


def choose_payment(
    person: Signer, file: File, done: Review, *, plan: str, by: str, on: date, seen: int | None
) -> tuple[Entry, ...]:
    """Record how the organisation pays; Trouble when no such plan was offered."""
    if on > done.as_of:
        raise Trouble(words("acts-future", day=on))
    terms = file.terms(done.renewal, "issued") or file.terms(done.renewal, "offered")
    wrong = check_offered(plan, terms, file.organisation.province, reference_in_use())
    if wrong is not None:
        raise Trouble(wrong)
    record = made(PaymentChoice, renewal=done.renewal, plan=plan, chosen_on=on,
                   by=_said("by", by))  # fmt: skip
    return _add(person, file, "choose-payment", record, seen)


def note(person: Person, file: File, text: str, seen: int) -> tuple[Entry, ...]:
    """Keep something in somebody's own words; the same words sent twice are kept once."""
    said = _said("text", text)
    later = (n for n in file.all(Note) if file.entry_of(n).seq > seen)
    if any((n.text, file.entry_of(n).by) == (said, person.signed) for n in later):
        return ()
    number = 1 + max((int(n.id) for n in file.all(Note) if n.id.isdigit()), default=0)
    return _add(person, file, "note", made(Note, id=str(number), text=said), seen)


def _said(field: str, text: str) -> str:
    """Return what was typed; Trouble that names the form's field when nothing was."""
    if not text.strip():
        raise Trouble(words("acts-empty", what=words(f"typed-{field}")))
    return text.strip()
