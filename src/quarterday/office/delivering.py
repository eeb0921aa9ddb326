"""Delivering a package: never without a licensed person's name under the review.

What went by e-mail is recorded with its words and what was enclosed. A message is sent first and
recorded at once after; until then a mark outside the ledger holds a second one back.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, replace
from datetime import UTC, date, datetime
from typing import Literal, get_args

from django.db import transaction

from quarterday.catalogue.speech import Speech
from quarterday.core.file.entry import Draft, Entry, Origin
from quarterday.core.file.fold import File
from quarterday.core.file.records import Delivery, PackageBuilt, PackageSealed
from quarterday.core.reference import Reference
from quarterday.core.words import words
from quarterday.office import mailing, sealing, underway
from quarterday.office.reviewing import signature
from quarterday.office.telling import signer
from quarterday.office.trouble import Trouble, made
from quarterday.papers.brokerage import Brokerage
from quarterday.store import ledger, originals

Way = Literal["e-mail", "post", "by hand", "room"]
WAYS: tuple[Way, ...] = get_args(Way)


@dataclass(frozen=True, slots=True)
class Letter:
    """What goes with a package by e-mail: to whom, where to, and in which words."""

    to: str
    address: str
    subject: str
    words: str

    def worded(self, subject: str | None, text: str | None) -> Letter:
        """Return it with a subject and words of one's own; None keeps those that it has."""
        subject = self.subject if subject is None else subject
        return replace(self, subject=subject, words=self.words if text is None else text)


_LETTER = {"to": "typed-to", "subject": "typed-subject", "words": "typed-message"}


def check_whole(letter: Letter, fields: Iterable[str] = tuple(_LETTER)) -> None:
    """Raise Trouble that names the first of a letter's fields that was left empty."""
    for field in fields:
        if not getattr(letter, field).strip():
            raise Trouble(words("acts-empty", what=words(_LETTER[field])))


def usual_letter(
    file: File, reference: Reference, language: str, brokerage: Brokerage, to: str, address: str,
    sender: str,
) -> Letter:  # fmt: skip
    """Return the usual words that go with a package, to be changed before they are sent."""
    speech = Speech(reference, language)
    organisation = file.organisation
    called = organisation.known_as or organisation.name
    told = {
        "organisation": called, "renewal": str(file.renewal), "to": to, "phone": brokerage.phone,
        "brokerage": brokerage.named(language), "sender": signer(sender),
    }  # fmt: skip
    parts = ("greeting", "body", "forms", "caution", "close")
    text = "\n\n".join(speech.say(words(f"mail-{part}", **told)) for part in parts)
    return Letter(to, address, speech.say(words("mail-subject", **told)), text)


def parcel(file: File, reference: Reference, language: str) -> PackageBuilt:
    """Return the newest package in ``language`` when it may be delivered.

    Trouble when the review is not signed as the file stands, or the package was built before the
    signature or before the newest change.
    """
    signed = signature(file, reference)
    built = [
        package for package in file.all(PackageBuilt)
        if package.language == language and package.renewal == file.renewal
    ]  # fmt: skip
    newest = max(built, key=lambda package: package.version, default=None)
    covered = (
        signed is not None
        and newest is not None
        and (newest.seq, newest.built_on) == (file.last_change, signed.as_of)
        and newest.reviewer == signed.reviewer
    )
    if newest is None or not covered:
        raise Trouble(words("acts-not-signed", file=file.id))
    return newest


def deliver(  # noqa: PLR0913 - a delivery has these parts
    id: str,
    reference: Reference,
    language: str,
    *,
    to: str,
    way: str,
    on: date,
    by: str,
    seen: int | None = None,
) -> Entry:
    """Record that the newest package in ``language`` went to somebody by post, by hand or so.

    Trouble as ``parcel`` says, or when it went to them since ``seen``.
    """
    file = ledger.load(id)
    package = parcel(file, reference, language)
    record = made(Delivery, renewal=package.renewal, document=package.document, to=to, way=way,
                  delivered_on=on)  # fmt: skip
    _not_twice(file, record, seen)
    standing = file.held.get((record.kind, record.key))
    if standing is not None and standing.record == record:
        return standing.entry  # the same form, sent twice
    return _recorded(id, record, by)


def send(  # noqa: PLR0913 - a message has these parts
    id: str, reference: Reference, language: str, letter: Letter, *, brokerage: Brokerage,
    on: date, by: str, seen: int | None = None,
) -> Entry:  # fmt: skip
    """Send the newest package in ``language`` by e-mail, and record it.

    It is sealed first where the brokerage has a certificate. Trouble as ``parcel`` says, when the
    server does not take it, or when it went to them since ``seen``: then nothing is recorded.
    """
    package = parcel(ledger.load(id), reference, language)
    if sealing.is_ready():
        sealing.seal_package(id, language, brokerage, by=by, now=datetime.now(UTC))
    file = ledger.load(id)
    document, name = _as_sent(file, package)
    record = made(
        Delivery, renewal=package.renewal, document=package.document, to=letter.to, way="e-mail",
        delivered_on=on, address=mailing.address(letter.address), subject=letter.subject,
        message=letter.words, attachments=(document,),
    )  # fmt: skip
    check_whole(letter)
    _not_twice(file, record, seen)
    mark = underway.begun(id, record.key, record.to)
    try:
        mailing.send(mailing.Message(
            (brokerage.named(language), brokerage.email), (letter.to, str(record.address)),
            letter.subject, letter.words, ((name, originals.get(document)),),
        ))  # fmt: skip
    except BaseException:
        mark.delete()
        raise
    with transaction.atomic():
        entry = _recorded(id, record, by)
        mark.delete()
    return entry


def _as_sent(file: File, package: PackageBuilt) -> tuple[str, str]:
    """Return the digest and name of what is enclosed: the sealed package where there is one."""
    sealed = [s for s in file.all(PackageSealed) if s.document == package.document]
    name = f"{file.id}-{package.renewal}-{package.language}-v{package.version}.pdf"
    safe = "".join(c if c.isascii() and (c.isalnum() or c in "-_.") else "-" for c in name)
    return (sealed[-1].sealed if sealed else package.document), safe


def _not_twice(file: File, record: Delivery, seen: int | None) -> None:
    """Raise Trouble when the same went to the same person after entry ``seen``."""
    before = file.held.get((record.kind, record.key))
    if before is not None and seen is not None and before.entry.seq > seen:
        day = before.entry.recorded_at.date()
        raise Trouble(words("acts-went-already", to=record.to, day=day))


def _recorded(id: str, record: Delivery, by: str, act: str = "deliver") -> Entry:
    draft = Draft(act, record.kind, record.key, record.body(), Origin(way="office", person=by))
    return ledger.append(id, [draft], by=by, expected_seq=None)[0]


def came_back(id: str, key: str, *, why: str, on: date, today: date, by: str) -> Entry:
    """Record that a delivery came back, and what was said of why; it no longer counts as made.

    Trouble when there is no such delivery, it came back already, or the day is still to come.
    """
    sent = ledger.load(id).get(Delivery, key)
    if sent is None or sent.came_back_on is not None:
        raise Trouble(words("acts-no-delivery"))
    if on > today:
        raise Trouble(words("acts-future", day=on))
    if not why.strip():
        raise Trouble(words("acts-empty", what=words("typed-why")))
    record = made(Delivery, **{**dict(sent), "came_back_on": on, "came_back": why})
    return _recorded(id, record, by, "came-back")
