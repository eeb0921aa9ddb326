"""Delivering a package: never without a licensed person's name under the review."""

from __future__ import annotations

from datetime import date

from quarterday.core.file.entry import Draft, Entry, Origin
from quarterday.core.file.records import Delivery, PackageBuilt
from quarterday.core.reference import Reference
from quarterday.core.words import words
from quarterday.office.reviewing import signature
from quarterday.office.trouble import Trouble
from quarterday.store import ledger


def deliver(
    id: str, reference: Reference, language: str, *, to: str, way: str, on: date, by: str
) -> Entry:
    """Record that the newest package in ``language`` went to somebody.

    Trouble when the review is not signed as the file stands, or the package was built before the
    signature or before the newest change.
    """
    file = ledger.load(id)
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
        raise Trouble(words("acts-not-signed", file=id))
    record = Delivery.model_validate(
        {"renewal": newest.renewal, "document": newest.document, "to": to, "way": way,
         "delivered_on": on}
    )  # fmt: skip
    draft = Draft(
        "deliver", record.kind, record.key, record.body(), Origin(way="office", person=by)
    )
    return ledger.append(id, [draft], by=by, expected_seq=file.seq)[0]
