"""Packages: build one, download one, record that one went out."""

from __future__ import annotations

from datetime import UTC, datetime
from pathlib import Path
from tempfile import TemporaryDirectory

from django.conf import settings
from django.http import Http404, HttpResponse
from django.views.decorators.http import require_POST, require_safe

from quarterday.core.file.records import PackageBuilt
from quarterday.core.words import words
from quarterday.desk.request import LANGUAGES, DeskRequest
from quarterday.desk.views.acts import back, day, text
from quarterday.office import access, delivering, packages
from quarterday.office.brand import brokerage
from quarterday.office.own_data import reference_in_use
from quarterday.office.trouble import Trouble
from quarterday.people import limits
from quarterday.store import originals


@require_POST
def build(request: DeskRequest, file: str) -> HttpResponse:
    """Build the package in one language; signed when the review is, else a draft."""
    access.open_file(request.person, file, "build")
    language, now = text(request, "language"), datetime.now(UTC)
    if language not in LANGUAGES:
        raise Trouble(words("acts-not-possible"))
    if limits.is_over("build", request.person.email, now):
        raise Trouble(words("acts-too-often"))
    limits.count("build", request.person.email, now)
    order = packages.Order(file, language, None, request.today)
    composed = packages.compose(order, brokerage())
    home: Path = settings.QUARTERDAY_HOME
    with TemporaryDirectory(dir=home) as folder:
        packages.keep(composed, Path(folder), request.person.signed)
    done = "desk-done-draft" if composed.is_draft else "desk-done-build"
    return back(request, file, "papers", done)


def _built(request: DeskRequest, id: str, document: str) -> PackageBuilt:
    held = access.open_file(request.person, id)
    found = next((p for p in held.all(PackageBuilt) if p.document == document), None)
    if found is None:
        raise Http404
    return found


@require_safe
def download(request: DeskRequest, file: str, document: str) -> HttpResponse:
    """Answer with a package's bytes."""
    built = _built(request, file, document)
    draft = "" if built.reviewer else "-draft"
    safe = "".join(c if c.isascii() and (c.isalnum() or c in "-_") else "-" for c in file)
    name = f"{safe}-{built.renewal}-{built.language}-v{built.version}{draft}.pdf"
    response = HttpResponse(originals.get(document), content_type="application/pdf")
    response["Content-Disposition"] = f'attachment; filename="{name}"'
    return response


@require_POST
def deliver(request: DeskRequest, file: str) -> HttpResponse:
    """Record that the newest signed package in a language went to somebody."""
    access.open_file(request.person, file, "deliver")
    to, way = text(request, "to").strip(), text(request, "way")
    if not to:
        raise Trouble(words("acts-empty"))
    if way not in {"e-mail", "post", "by hand", "room"}:
        raise Trouble(words("acts-not-possible"))
    on = day(request, "on")
    if on > request.today:
        raise Trouble(words("acts-future", day=on))
    delivering.deliver(
        file, reference_in_use(), to=to, way=way, language=text(request, "language"), on=on,
        by=request.person.signed,
    )  # fmt: skip
    return back(request, file, "papers", "desk-done-deliver")
