"""What was done, said and decided on a file."""

from __future__ import annotations

from typing import ClassVar, Literal

from pydantic import Field

from quarterday.core.file.records.base import Count, Day, Line, Part, Prose, Record, Slug
from quarterday.core.file.records.people import Language
from quarterday.core.file.records.terms import Terms

Choice = Literal["take-it", "leave-it", "later", "ask-us"]


class Decision(Record):
    """What the leaders decided on one question of a renewal, in their words."""

    kind: ClassVar[str] = "decision"

    renewal: Day
    question: Slug
    answer: Choice
    decided_on: Day
    by: Line
    words: Prose | None = None

    @property
    def key(self) -> str:
        """The renewal and the question."""
        return f"{self.renewal}/{self.question}"


class FindingSetAside(Record):
    """That the broker set a finding aside for a renewal, and why."""

    kind: ClassVar[str] = "finding set aside"

    renewal: Day
    finding: Slug
    reason: Prose

    @property
    def key(self) -> str:
        """The renewal and the finding."""
        return f"{self.renewal}/{self.finding}"


class ReviewSigned(Record):
    """That a named licensed person reviewed the file for a renewal, and what they saw."""

    kind: ClassVar[str] = "review signed"

    renewal: Day
    as_of: Day
    reviewer: Line
    licence: Line
    seq: int  # the file's newest entry at the time
    review_digest: Slug

    @property
    def key(self) -> str:
        """The renewal."""
        return str(self.renewal)


class PackageSealed(Record):
    """That a package was certified with the brokerage's certificate, as the last step."""

    kind: ClassVar[str] = "package sealed"

    renewal: Day
    language: Language
    version: int
    document: Slug  # SHA-256 of the unsealed bytes
    sealed: Slug  # SHA-256 of the sealed bytes
    sealed_on: Day
    certificate: Slug  # SHA-256 of the certificate

    @property
    def key(self) -> str:
        """The sealed document."""
        return self.sealed


class PackageBuilt(Record):
    """That a package was built: its language, version and digest."""

    kind: ClassVar[str] = "package built"

    renewal: Day
    language: Language
    version: int
    built_on: Day
    document: Slug  # SHA-256 of the unsealed bytes
    seq: int  # the file's newest change at the time
    reviewer: Line | None = None  # who had signed the review; None: a draft, not for delivery

    @property
    def key(self) -> str:
        """The renewal, the language and the version."""
        return f"{self.renewal}/{self.language}/{self.version}"


class Delivery(Record):
    """That a package went to somebody, and that it came back when it did.

    By e-mail, ``address``, ``subject`` and ``message`` are what was sent, ``attachments`` the
    SHA-256 of what was enclosed, as sent.
    """

    kind: ClassVar[str] = "delivery"

    renewal: Day
    document: Slug
    to: Line
    way: Literal["e-mail", "post", "by hand", "room"]
    delivered_on: Day
    address: Line | None = None
    subject: Line | None = None
    message: Prose | None = None
    attachments: tuple[Slug, ...] = ()
    came_back_on: Day | None = None
    came_back: Line | None = None  # what was said of why

    @property
    def key(self) -> str:
        """The document and who received it."""
        return f"{self.document}/{self.to}"


class PaymentChoice(Record):
    """How the organisation pays the premium of a renewal."""

    kind: ClassVar[str] = "payment choice"

    renewal: Day
    plan: Slug
    chosen_on: Day
    by: Line

    @property
    def key(self) -> str:
        """The renewal."""
        return str(self.renewal)


class FormReturned(Record):
    """That a form came back; the original is kept under its digest.

    ``by``, ``role`` and ``signed_on`` are what the form says of who filled it in; ``taken`` and
    ``refused`` name its fields whose answers were taken into the file, or were not.
    """

    kind: ClassVar[str] = "form returned"

    renewal: Day
    form: Slug
    document: Slug
    returned_on: Day
    by: Line | None = None
    role: Line | None = None
    signed_on: Day | None = None
    taken: tuple[Line, ...] = ()
    refused: tuple[Line, ...] = ()

    @property
    def key(self) -> str:
        """The form and the document."""
        return f"{self.form}/{self.document}"


class Answer(Part):
    """One question of a form, by its name, and what was answered."""

    question: Slug
    answer: Prose


class Answers(Record):
    """What a questionnaire or declaration of a renewal was answered about one thing."""

    kind: ClassVar[str] = "answers"

    renewal: Day
    form: Slug
    subject: Slug = "*"  # a building's id, a claim's number; * for the organisation
    answers: tuple[Answer, ...] = ()
    answered_on: Day
    by: Line | None = None

    @property
    def key(self) -> str:
        """The renewal, the form and what it is about."""
        return f"{self.renewal}/{self.form}/{self.subject}"


class RequestSent(Record):
    """That the insurer was asked to change the policy; the letter is kept under its digest.

    By e-mail, ``address``, ``subject`` and ``message`` are what was sent with the letter.
    ``taken_back`` counts the changes that an earlier request asked for and this one asks no more;
    None in a request that could not say so.
    """

    kind: ClassVar[str] = "request sent"

    renewal: Day
    number: Count  # counts from 1 within the renewal
    sent_on: Day
    to: Line
    document: Slug
    seq: int  # the newest entry that it speaks of
    changes: Count
    taken_back: Count | None = None
    address: Line | None = None
    subject: Line | None = None
    message: Prose | None = None

    @property
    def key(self) -> str:
        """The renewal and the number."""
        return f"{self.renewal}/{self.number}"


class Bound(Record):
    """That the insurer bound the coming term: who there said so, and on which terms.

    ``agreed`` is the offer with the changes that were ``accepted`` beyond it. ``by`` is a person of
    the insurer, ``binder`` the number of the binder or cover note.
    """

    kind: ClassVar[str] = "bound"

    renewal: Day
    bound_on: Day
    by: Line
    binder: Line | None = None
    words: Prose | None = None
    accepted: tuple[Line, ...] = ()
    agreed: Terms

    @property
    def key(self) -> str:
        """The renewal."""
        return str(self.renewal)


class PolicyChecked(Record):
    """That somebody compared the issued policy with what was agreed.

    ``differences`` counts where it gives less; ``done_about`` says what was done.
    """

    kind: ClassVar[str] = "policy checked"

    renewal: Day
    checked_on: Day
    by: Line
    differences: Count
    done_about: Prose | None = None
    seq: int  # the newest entry that was compared

    @property
    def key(self) -> str:
        """The renewal."""
        return str(self.renewal)


class EvidenceSent(Record):
    """That somebody outside got a paper on the insurance; the paper is kept under its digest.

    A certificate says what was in force on ``sent_on``; a discharge request asks a lender or
    lessor that is paid off to give up its interest.
    """

    kind: ClassVar[str] = "evidence sent"

    paper: Literal["certificate", "discharge-request"]
    holder: Slug  # an interest's id, or a short name for somebody else
    role: Literal["lender", "lessor", "third-party"]
    name: Line = Field(min_length=1)
    address: Line | None = None
    purpose: Line | None = None  # what the holder needs it for
    language: Language
    start: Day  # first day of the policy it speaks of
    sent_on: Day
    document: Slug
    seq: int  # the file's newest change at the time

    @property
    def key(self) -> str:
        """The document."""
        return self.document


class Note(Record):
    """Something worth keeping, in somebody's own words."""

    kind: ClassVar[str] = "note"

    id: Slug
    text: Prose

    @property
    def key(self) -> str:
        """The note's id within the file."""
        return self.id


class OriginalErased(Record):
    """That the content of a kept document was removed on lawful request, and why."""

    kind: ClassVar[str] = "original erased"

    document: Slug
    reason: Prose

    @property
    def key(self) -> str:
        """The SHA-256 of the document, which stays."""
        return self.document


class Redaction(Record):
    """That the body of an earlier entry was removed on lawful request, and why."""

    kind: ClassVar[str] = "redaction"

    seq: int
    reason: Prose

    @property
    def key(self) -> str:
        """The number of the entry that was redacted."""
        return str(self.seq)
