"""Forms that come home: sent, read into proposals, taken."""

from datetime import UTC, datetime
from typing import Any

from django.conf import settings
from django.http import HttpRequest
from ninja import Router

from quarterday.api import inputs
from quarterday.api.asking import asked
from quarterday.api.declaring import acts
from quarterday.api.shapes import papers as shapes
from quarterday.intake.forms.recognise import Flat
from quarterday.office import accepting, access, proposals, returning, standings, uploads
from quarterday.office.demo_people import today
from quarterday.office.own_data import reference_in_use
from quarterday.office.returning import Reading
from quarterday.people.models import Person

router = Router(tags=["forms"])


def _read(person: Person, token: str) -> tuple[Reading, ...] | Flat:
    """Return what a kept document proposes to files that the person may write to."""
    kept = uploads.kept(person, token)
    found = returning.read(bytes(kept.content), kept.name, reference_in_use(), today())
    of = found.files if isinstance(found, Flat) else [one.file for one in found]
    for id in of:
        access.open_file(person, id, "record")
    return found


@acts(router, "/forms", shapes.FormsKept, apart=True)
def send(request: HttpRequest, document: inputs.Document) -> dict[str, Any]:
    """Send a returned form (PDF) and see what it proposes; nothing is written to a file."""
    person, most = asked(request).person, settings.MOST_UPLOADED
    name, now = str(document.name or ""), datetime.now(UTC)
    token = uploads.keep(person, name, document.read(most + 1), most, now, uploads.FORM)
    found, speech = _read(person, token), asked(request).speech
    if isinstance(found, Flat):
        return {"token": token, "read": [proposals.flat(found, speech)]}
    return {"token": token, "read": [proposals.reading(one, None, speech) for one in found]}


@acts(router, "/forms/{token}/accept", shapes.Accepted, apart=True)
def accept(request: HttpRequest, token: str, sent: inputs.Taken) -> dict[str, Any]:
    """Take answers of a sent form into the file."""
    person, speech = asked(request).person, asked(request).speech
    found = _read(person, token)
    done = []
    for one in () if isinstance(found, Flat) else found:
        kept = accepting.accept(
            one, by=person.signed, every=sent.every, take=sent.take, refuse=sent.refuse
        )
        standings.refresh(reference_in_use(), today(), of=[one.file])
        done.append(proposals.reading(one, kept, speech))
    if done:
        uploads.forget(person, token)
    return {"read": done}
