"""Packages: built, listed, fetched, delivered; and requests to the insurer."""

import json
from dataclasses import replace
from typing import Any

from django.http import HttpRequest, HttpResponse
from ninja import Router

from quarterday.api import inputs
from quarterday.api.asking import READ, asked, day, file_shown
from quarterday.api.declaring import acts, reads
from quarterday.api.operations.acts import written
from quarterday.api.problems import Problem
from quarterday.api.shapes import papers as shapes
from quarterday.api.shapes.files import Record, Written
from quarterday.core.file.records import PackageBuilt
from quarterday.core.words import words
from quarterday.office import access, delivering, mailing, packages, plain, requesting, standings
from quarterday.office.brand import brokerage
from quarterday.office.demo_people import today
from quarterday.office.own_data import reference_in_use
from quarterday.office.trouble import Trouble
from quarterday.office.voices import voice
from quarterday.store import originals

router = Router(tags=["papers"])
PDF = {
    "responses": {
        200: {"content": {"application/pdf": {"schema": {"type": "string", "format": "binary"}}}}
    }
}


@reads(router, "/files/{file}/packages", list[Record])
def built(request: HttpRequest, file: str) -> list[dict[str, Any]]:
    """List the packages that were built; ``document`` is the address of each."""
    held = access.open_file(asked(request).person, file).held.values()
    return [plain.record(one) for one in held if one.record.kind == PackageBuilt.kind]


@router.get("/files/{file}/packages/{document}", auth=READ, openapi_extra=PDF)
def fetch(request: HttpRequest, file: str, document: str) -> HttpResponse:
    """Return a package as it was built."""
    held = access.open_file(asked(request).person, file)
    if not any(package.document == document for package in held.all(PackageBuilt)):
        raise Problem("not-found")
    response = HttpResponse(originals.get(document), content_type="application/pdf")
    response["Content-Disposition"] = f'attachment; filename="{document[:16]}.pdf"'
    return response


@acts(router, "/files/{file}/packages", shapes.Built, apart=True)
def build(request: HttpRequest, file: str, sent: inputs.Order) -> dict[str, Any]:
    """Build the package in one language; signed when the review is, else a draft."""
    done = packages.built_by(asked(request).person, file, sent.language, today())
    standings.refresh(reference_in_use(), today(), of=[file])
    return done


@acts(router, "/files/{file}/deliveries", Written)
def deliver(request: HttpRequest, file: str, sent: inputs.DeliverySent) -> dict[str, Any]:
    """Record that the newest signed package in a language went to somebody."""
    person = asked(request).person
    access.open_file(person, file, "deliver")
    if not sent.to.strip():
        raise Trouble(words("acts-empty", what=words("typed-to")))
    if sent.on > today():
        raise Trouble(words("acts-future", day=sent.on))
    done = delivering.deliver(
        file, reference_in_use(), sent.language, to=sent.to.strip(), way=sent.way, on=sent.on,
        by=person.signed, seen=sent.seen,
    )  # fmt: skip
    return written(file, [done])


@acts(router, "/files/{file}/messages", Written, apart=True)
def mail(request: HttpRequest, file: str, sent: inputs.MessageSent) -> dict[str, Any]:
    """Send the newest signed package in a language by e-mail; a second one since is held back."""
    person, data, house = asked(request).person, reference_in_use(), brokerage()
    held = access.open_file(person, file, "deliver")
    mailing.count(person)
    usual = delivering.usual_letter(
        held, data, sent.language, house, sent.to, sent.address, person.signed
    )
    letter = usual.worded(sent.subject or None, sent.message or None)
    done = delivering.send(
        file, data, sent.language, letter, brokerage=house, on=today(), by=person.signed,
        seen=sent.seen,
    )  # fmt: skip
    return written(file, [done])


@acts(router, "/files/{file}/came-back", Written)
def came_back(request: HttpRequest, file: str, sent: inputs.CameBack) -> dict[str, Any]:
    """Record that a delivery came back; it no longer counts as made."""
    person = asked(request).person
    access.open_file(person, file, "deliver")
    done = delivering.came_back(
        file, sent.key, why=sent.why, on=sent.on, today=today(), by=person.signed
    )
    return written(file, [done])


@reads(router, "/files/{file}/request", shapes.Request)
def request_ready(
    request: HttpRequest, file: str, language: inputs.Language = "en", as_of: inputs.AsOf = None
) -> Any:  # noqa: ANN401 - as the office says it
    """Return the next request to the insurer; nothing is recorded."""
    access.open_file(asked(request).person, file)
    made = requesting.prepare(file, reference_in_use(), brokerage(), day(as_of), language)
    return json.loads(made.json)


@acts(router, "/files/{file}/requests", shapes.RequestSent)
def request_sent(request: HttpRequest, file: str, sent: inputs.RequestOrder) -> dict[str, Any]:
    """Record that the next request went to the insurer, and keep its letter."""
    person = asked(request).person
    file_shown(request, file, "ask")
    made = requesting.prepare(file, reference_in_use(), brokerage(), today(), sent.language)
    requesting.require_seen(made, sent.seen)
    done = requesting.send(made, by=person.signed)
    return {**written(file, [done]), "request": json.loads(made.json)}


@acts(router, "/files/{file}/requests/messages", shapes.RequestSent, apart=True)
def request_mailed(request: HttpRequest, file: str, sent: inputs.RequestMessage) -> dict[str, Any]:
    """Send the next request to the insurer by e-mail, its letter enclosed, and record it."""
    person, data, house = asked(request).person, reference_in_use(), brokerage()
    held = access.open_file(person, file, "ask")
    made = requesting.prepare(file, data, house, today(), sent.language)
    requesting.require_seen(made, sent.seen)
    mailing.count(person)
    usual = requesting.usual_letter(held, made, house, voice(sent.language), person.name)
    letter = usual.worded(sent.subject or None, sent.message or None)
    letter = replace(letter, address=sent.address or usual.address)
    done = requesting.mail(made, letter, house, sent.language, by=person.signed)
    return {**written(file, [done]), "request": json.loads(made.json)}
