"""Reviewing a file, and the licensed person's signature under the review."""

from __future__ import annotations

from datetime import date

from quarterday.catalogue.speech import Speech
from quarterday.core.file.chain import hashed
from quarterday.core.file.entry import Draft, Entry, Origin, canonical
from quarterday.core.file.fold import File
from quarterday.core.file.records import ReviewSigned
from quarterday.core.reference import Reference
from quarterday.core.review.review import Review, review
from quarterday.core.words import words
from quarterday.office import plain
from quarterday.office.trouble import Moved
from quarterday.store import ledger


def review_file(id: str, reference: Reference, as_of: date) -> tuple[File, Review]:
    """Return a file and its review as on a day; UnknownFile when there is no such file."""
    file = ledger.load(id)
    return file, review(file, reference, as_of)


def digest(done: Review, reference: Reference) -> str:
    """Return the digest of everything a review says."""
    return hashed(canonical(plain.review(done, Speech(reference, "en"))))


def sign(
    id: str,
    reference: Reference,
    *,
    reviewer: str,
    licence: str,
    as_of: date,
    by: str,
    seen: int | None = None,
) -> Entry:
    """Record that a named licensed person reviewed the file as on a day.

    ``seen`` is the newest entry of the file that was read; Moved when there is a newer one.
    """
    file, done = review_file(id, reference, as_of)
    if seen is not None and seen != file.seq:
        raise Moved(words("acts-moved", file=id))
    record = ReviewSigned(
        renewal=done.renewal,
        as_of=as_of,
        reviewer=reviewer,
        licence=licence,
        seq=file.last_change,
        review_digest=digest(done, reference),
    )
    draft = Draft("sign", record.kind, record.key, record.body(), Origin(way="office", person=by))
    return ledger.append(id, [draft], by=by, expected_seq=file.seq)[0]


def claimed(file: File) -> ReviewSigned | None:
    """Return the signature that no change of the file came after, whatever it now covers."""
    renewal = file.renewal
    signed = file.get(ReviewSigned, str(renewal)) if renewal else None
    return signed if signed is not None and signed.seq == file.last_change else None


def signature(file: File, reference: Reference, known: Review | None = None) -> ReviewSigned | None:
    """Return the signature that covers the file as it stands, or None.

    A signature lapses as soon as a later entry, or newer reference data, changes what the review
    of its day says. ``known`` is a review of the file that need not be made again for its day.
    """
    signed = claimed(file)
    if signed is None:
        return None
    is_known = known is not None and known.as_of == signed.as_of
    done = known if known and is_known else review(file, reference, signed.as_of)
    return signed if digest(done, reference) == signed.review_digest else None
