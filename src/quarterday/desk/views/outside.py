"""Papers for people outside: a certificate, or a request for a discharge, made and recorded."""

from __future__ import annotations

from datetime import UTC, datetime

from django.http import HttpResponse
from django.views.decorators.http import require_POST

from quarterday.catalogue.speech import Speech
from quarterday.core.words import words
from quarterday.desk.request import LANGUAGES, DeskRequest
from quarterday.desk.views.acts import back, text
from quarterday.office import access, certifying
from quarterday.office.brand import brokerage
from quarterday.office.own_data import reference_in_use
from quarterday.office.trouble import Trouble
from quarterday.people import limits


@require_POST
def certify(request: DeskRequest, file: str) -> HttpResponse:
    """Make the paper that a holder needs, keep it, and record that it went out today."""
    held, now = access.open_file(request.person, file, "certify"), datetime.now(UTC)
    language = text(request, "language")
    if language not in LANGUAGES:
        raise Trouble(words("acts-not-possible"))
    if limits.is_over("build", request.person.email, now):
        raise Trouble(words("acts-too-often"))
    limits.count("build", request.person.email, now)
    name, address, purpose = (text(request, n).strip() for n in ("name", "address", "purpose"))
    holder = text(request, "holder").strip() or (certifying.short_name(name) if name else "")
    if not holder:
        raise Trouble(words("acts-empty", what=words("typed-name")))
    told = certifying.Stranger(name or None, address or None, purpose or None)
    made = certifying.asked(
        held, holder, told, brokerage(), Speech(reference_in_use(), language),
        day=request.today, by=request.person.name,
    )  # fmt: skip
    certifying.send(made, by=request.person.signed)
    return back(request, file, "papers", "desk-done-certify")
