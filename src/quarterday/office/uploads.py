"""Loading at the desk: a document waits for its person, is previewed, and is accepted or left."""

from __future__ import annotations

import secrets
from dataclasses import dataclass
from datetime import datetime, timedelta
from pathlib import Path
from tempfile import TemporaryDirectory

from django.core.files.uploadedfile import UploadedFile

from quarterday.catalogue.speech import Speech
from quarterday.core.file.chain import hashed
from quarterday.core.file.entry import canonical
from quarterday.core.reference import Reference
from quarterday.core.words import words
from quarterday.intake.preview import preview as sentences
from quarterday.intake.preview import understood
from quarterday.office import loading
from quarterday.office.access import require_anywhere, require_drafts
from quarterday.office.loading import Loaded, Loading
from quarterday.office.trouble import Trouble
from quarterday.people import limits
from quarterday.people.models import Person, Upload

KEPT = timedelta(days=1)
BOOK, FORM = "book", "form"
SUFFIXES = {BOOK: {".xlsx", ".csv", ".tsv", ".txt"}, FORM: {".pdf"}}


@dataclass(frozen=True, slots=True)
class Preview:
    """What accepting a document would do, in words; ``mark`` changes when that does."""

    token: str
    loading: Loading
    sentences: tuple[str, ...]
    mapping: tuple[str, ...]
    mark: str


def sent(document: UploadedFile[bytes] | None, most: int) -> tuple[str, bytes]:
    """Return the name and bytes of what was sent; Trouble when nothing was, or it is too large."""
    if document is None:
        raise Trouble(words("acts-upload-none"))
    name = str(document.name)[:200]
    if (document.size or 0) > most:
        raise Trouble(words("acts-upload-large", name=name, most=most // 1024 // 1024))
    return name, document.read()


def keep(
    person: Person, name: str, content: bytes, most: int, now: datetime, kind: str = BOOK
) -> str:  # fmt: skip
    """Keep a document for its preview and return its token.

    Trouble when it is of another kind, empty, or larger than ``most`` bytes. Older ones go.
    """
    require_anywhere(person, "load" if kind == BOOK else "record")
    plain = Path(name.replace("\\", "/")).name[:200] or "workbook"
    if limits.is_over("upload", person.email, now):
        raise Trouble(words("acts-too-often"))
    if Path(plain).suffix.lower() not in SUFFIXES[kind]:
        raise Trouble(words(f"acts-upload-kind-{kind}", name=plain))
    if not content:
        raise Trouble(words("acts-upload-empty", name=plain))
    if len(content) > most:
        raise Trouble(words("acts-upload-large", name=plain, most=most // 1024 // 1024))
    limits.count("upload", person.email, now)
    Upload.objects.filter(at__lt=now - KEPT).delete()
    token = secrets.token_urlsafe(24)
    Upload.objects.create(token=token, person=person, name=plain, content=content, at=now)
    return token


def _loading(upload: Upload, reference: Reference) -> Loading:
    with TemporaryDirectory() as folder:
        path = Path(folder) / upload.name
        path.write_bytes(bytes(upload.content))
        return loading.preview(path, reference)


def kept(person: Person, token: str) -> Upload:
    """Return a document that a person sent and has not accepted yet; Trouble when it is gone."""
    found = Upload.objects.filter(person=person, token=token).first()
    if found is None:
        raise Trouble(words("acts-upload-gone"))
    return found


def preview(person: Person, token: str, reference: Reference, speech: Speech) -> Preview:
    """Return what accepting a kept document would do; Forbidden where it reaches too far."""
    planned = _loading(kept(person, token), reference)
    for account, drafts in planned.plan.drafts(accept_with_errors=True).items():
        require_drafts(person, "load", account, drafts)
    said = tuple(speech.say(sentence) for sentence in sentences(planned.plan))
    mapping = tuple(speech.say(sentence) for sentence in understood(planned.plan.map))
    mark = hashed(canonical([dict(sorted(planned.seen.items())), list(said)]))
    return Preview(token, planned, said, mapping, mark)


def accept(
    person: Person,
    token: str,
    reference: Reference,
    speech: Speech,
    *,
    mark: str,
    with_errors: bool,
) -> Loaded | Preview:
    """Write what the preview showed, or return the new preview when it would do something else."""
    found = preview(person, token, reference, speech)
    if found.mark != mark:
        return found
    done = loading.accept(found.loading, by=person.signed, accept_with_errors=with_errors)
    forget(person, token)
    return done


def forget(person: Person, token: str) -> None:
    """Remove a kept document."""
    Upload.objects.filter(person=person, token=token).delete()
