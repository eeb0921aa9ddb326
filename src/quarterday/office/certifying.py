"""Papers for people outside: what is in force for who asks, a discharge from who is paid off.

Only facts of the file and the policy in force go out, and the ledger says who got which paper when.
"""

from __future__ import annotations

import hashlib
import unicodedata
from collections.abc import Iterable
from dataclasses import dataclass
from datetime import date

from django.db import transaction
from pydantic import ValidationError

from quarterday.catalogue.speech import Speech
from quarterday.core.file.entry import Draft, Entry, Origin
from quarterday.core.file.fold import File
from quarterday.core.file.records import Bound, Building, EvidenceSent, Interest, Terms
from quarterday.core.words import words
from quarterday.office.trouble import Trouble
from quarterday.papers.alone import Alone, InForce
from quarterday.papers.brokerage import Brokerage
from quarterday.papers.certificate import data as certificate
from quarterday.papers.certificate.data import Certificate, Holder
from quarterday.papers.discharge_request import data as discharge_request
from quarterday.store import ledger, originals

THIRD_PARTY = "third-party"
PAID_OFF = "paid-off"


@dataclass(frozen=True, slots=True)
class Prepared:
    """A paper for somebody outside that is ready, and what the ledger would say of it."""

    file: str
    seq: int
    record: EvidenceSent
    pdf: bytes

    @property
    def name(self) -> str:
        """What its file is called."""
        told = self.record
        return f"{self.file}-{told.paper}-{_plain(told.holder)}-{told.sent_on}-{told.language}.pdf"


@dataclass(frozen=True, slots=True)
class Stranger:
    """What is told of a holder who is not on file."""

    name: str | None = None
    address: str | None = None
    purpose: str | None = None


def in_force(file: File, day: date) -> InForce:
    """Return the policy whose period holds ``day``: as issued, else as the insurer bound it.

    Trouble when there is none, or when nobody could look it up.
    """
    issued = [t for t in file.all(Terms) if t.stage == "issued" and day in t.period]
    bound = [b for b in file.all(Bound) if day in b.agreed.period and b.bound_on <= day]
    found = [InForce(t) for t in issued] or [InForce(b.agreed, b.binder or "") for b in bound]
    if not found:
        raise Trouble(words("certificate-not-in-force", file=file.id, day=day))
    policy = found[-1]
    number = policy.terms.policy_number if policy.binder is None else policy.binder
    if not (policy.terms.insurer and number):
        raise Trouble(words("certificate-no-number", file=file.id, day=day))
    return policy


def holder_of(file: File, id: str, told: Stranger) -> Holder:
    """Return who asks: a lender or lessor on file, somebody who asked before, or somebody new.

    Trouble when nobody is known under ``id`` and no name is told, when a name is told for somebody
    on file, or when they are paid off.
    """
    interest = file.get(Interest, id)
    if interest is not None:
        return _on_file(file, interest, told)
    before = [e for e in file.all(EvidenceSent) if (e.holder, e.role) == (id, THIRD_PARTY)]
    last = max(before, key=lambda e: e.sent_on, default=None)
    name = told.name or (last.name if last else None)
    if not name:
        ids = dict.fromkeys([*(i.id for i in file.interests), *_asked_before(file)])
        known = words("certificate-unknown-holder", file=file.id, holder=id[:80],
                      known=len(ids), names=tuple(ids) or "–")  # fmt: skip
        raise Trouble(known)
    address = told.address or (last.address if last else None)
    return Holder(id, THIRD_PARTY, name, address, told.purpose or (last.purpose if last else None))


def _on_file(file: File, interest: Interest, told: Stranger) -> Holder:
    if told.name or told.address:
        named = words("certificate-from-file", holder=interest.id, name=interest.name)
        raise Trouble(named)
    if interest.status == PAID_OFF:
        gone = words("certificate-paid-off", file=file.id, holder=interest.id, name=interest.name)
        raise Trouble(gone)
    building = file.get(Building, interest.location) if interest.location else None
    return Holder(interest.id, interest.role, interest.name, interest.address, told.purpose,
                  interest.reference, building, interest.item)  # fmt: skip


def _asked_before(file: File) -> Iterable[str]:
    return (e.holder for e in file.all(EvidenceSent) if e.role == THIRD_PARTY)


def certify(
    file: File,
    holder: str,
    told: Stranger,
    brokerage: Brokerage,
    speech: Speech,
    *,
    day: date,
    by: str,
) -> Prepared:
    """Return a certificate of what is in force on ``day``; nothing is recorded.

    Trouble when nothing is in force, nothing of it concerns the holder, or nobody knows them.
    """
    policy, asking = in_force(file, day), holder_of(file, holder, told)
    if not certificate.lines(policy.terms, asking):
        raise Trouble(words("certificate-nothing", file=file.id, day=day, name=asking.name))
    of = _alone(file, policy.terms, day, (certificate.ID, asking.id))
    names = {building.id: building.name for building in file.buildings}
    issuer = brokerage.person(by)
    made = Certificate(of, policy, asking, issuer if issuer and issuer.licence else None, names)
    pdf = certificate.pdf(made, brokerage, speech)
    return _prepared(file, policy.terms, asking, certificate.ID, pdf, day, speech.language)


def ask_discharge(
    file: File, id: str, brokerage: Brokerage, speech: Speech, day: date
) -> Prepared:  # fmt: skip
    """Return the letter that asks a paid-off lender or lessor to let go; nothing is recorded.

    Trouble when nobody on file has this id, they are not paid off, or no policy is in force.
    """
    interest = file.get(Interest, id)
    if interest is None:
        ids = tuple(i.id for i in file.interests)
        unknown = words("discharge-unknown", file=file.id, holder=id[:80], known=len(ids),
                        names=ids or "–")  # fmt: skip
        raise Trouble(unknown)
    if interest.status != PAID_OFF:
        raise Trouble(words("discharge-not-paid-off", name=interest.name))
    policy = in_force(file, day)
    terms = policy.terms
    of = _alone(file, terms, day, (discharge_request.ID, id))
    building = file.get(Building, interest.location) if interest.location else None
    pdf = discharge_request.pdf(of, policy, interest, building, brokerage, speech)
    asked = Holder(id, interest.role, interest.name, interest.address)
    return _prepared(file, terms, asked, discharge_request.ID, pdf, day, speech.language)


def _alone(file: File, terms: Terms, day: date, of: tuple[str, str]) -> Alone:
    """Return what a paper is of; its number counts those to the same holder on earlier days."""
    sent = (e for e in file.all(EvidenceSent) if (e.paper, e.holder) == of)
    earlier = {(e.sent_on, e.seq) for e in sent if (e.sent_on, e.seq) != (day, file.last_change)}
    return Alone(file.id, file.organisation, terms.period, day, len(earlier) + 1)


def _prepared(
    file: File, terms: Terms, holder: Holder, paper: str, pdf: bytes, day: date, language: str
) -> Prepared:  # fmt: skip
    told = {
        "paper": paper, "holder": holder.id, "role": holder.role, "name": holder.name,
        "address": holder.address, "purpose": holder.purpose, "language": language,
        "start": terms.start, "sent_on": day, "document": hashlib.sha256(pdf).hexdigest(),
        "seq": file.last_change,
    }  # fmt: skip
    try:
        record = EvidenceSent.model_validate(told)
    except ValidationError:
        raise Trouble(words("acts-not-possible")) from None
    return Prepared(file.id, file.seq, record, pdf)


def send(prepared: Prepared, *, by: str) -> Entry | None:
    """Record that a paper went out, and keep it; None when the ledger says so already."""
    record = prepared.record
    with transaction.atomic():
        if ledger.load(prepared.file).get(EvidenceSent, record.key) == record:
            return None
        originals.put(prepared.pdf, prepared.name)
        origin = Origin(way="office", person=by)
        draft = Draft("certify", record.kind, record.key, record.body(), origin)
        (entry,) = ledger.append(prepared.file, [draft], by=by, expected_seq=prepared.seq)
    return entry


def asked(
    file: File,
    holder: str,
    told: Stranger,
    brokerage: Brokerage,
    speech: Speech,
    *,
    day: date,
    by: str,
) -> Prepared:
    """Return the paper that a holder needs: a discharge request when they are paid off."""
    interest = file.get(Interest, holder)
    if interest is not None and interest.status == PAID_OFF:
        return ask_discharge(file, holder, brokerage, speech, day)
    return certify(file, holder, told, brokerage, speech, day=day, by=by)


def short_name(name: str) -> str:
    """Return a holder's id made from its name: lower-case letters and digits, joined by hyphens."""
    plain = unicodedata.normalize("NFKD", name).encode("ascii", "ignore").decode().lower()
    return "-".join("".join(c if c.isalnum() else " " for c in plain).split())[:60] or "holder"


def holders(file: File) -> dict[str, tuple[str, str]]:
    """Return whom a paper could go to, by id: their name, and the paper they would get."""
    known = {e.holder: (e.name, certificate.ID) for e in file.all(EvidenceSent)}
    for interest in file.interests:
        paper = discharge_request.ID if interest.status == PAID_OFF else certificate.ID
        known[interest.id] = (interest.name, paper)
    return known


def _plain(text: str) -> str:
    return "".join(c if c.isascii() and (c.isalnum() or c in "-_") else "-" for c in text)
