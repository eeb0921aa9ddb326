"""The records a file can hold, by kind."""

from __future__ import annotations

from quarterday.core.file.records.acts import (
    Answer,
    Answers,
    Bound,
    Decision,
    Delivery,
    EvidenceSent,
    FindingSetAside,
    FormReturned,
    Note,
    OriginalErased,
    PackageBuilt,
    PackageSealed,
    PaymentChoice,
    PolicyChecked,
    Redaction,
    RequestSent,
    ReviewSigned,
)
from quarterday.core.file.records.allocation import AllocationKey
from quarterday.core.file.records.base import Record
from quarterday.core.file.records.buildings import Building, Valuation
from quarterday.core.file.records.claims import Claim
from quarterday.core.file.records.interests import Interest
from quarterday.core.file.records.operations import Operations
from quarterday.core.file.records.people import Authority, Contact, Organisation
from quarterday.core.file.records.terms import Terms

RECORDS: tuple[type[Record], ...] = (
    Organisation,
    Contact,
    Authority,
    Operations,
    Building,
    Valuation,
    Terms,
    Claim,
    Interest,
    AllocationKey,
    Answers,
    Bound,
    Decision,
    Delivery,
    EvidenceSent,
    FindingSetAside,
    FormReturned,
    Note,
    OriginalErased,
    PackageBuilt,
    PackageSealed,
    PaymentChoice,
    PolicyChecked,
    Redaction,
    RequestSent,
    ReviewSigned,
)
BY_KIND: dict[str, type[Record]] = {record.kind: record for record in RECORDS}

__all__ = [
    "BY_KIND",
    "RECORDS",
    "AllocationKey",
    "Answer",
    "Answers",
    "Authority",
    "Bound",
    "Building",
    "Claim",
    "Contact",
    "Decision",
    "Delivery",
    "EvidenceSent",
    "FindingSetAside",
    "FormReturned",
    "Interest",
    "Note",
    "Operations",
    "Organisation",
    "OriginalErased",
    "PackageBuilt",
    "PackageSealed",
    "PaymentChoice",
    "PolicyChecked",
    "Record",
    "Redaction",
    "RequestSent",
    "ReviewSigned",
    "Terms",
    "Valuation",
]
