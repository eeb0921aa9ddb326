"""Packages: build one, download one, record that one went out."""

from __future__ import annotations

from django.http import Http404, HttpResponse
from django.views.decorators.http import require_POST, require_safe

from quarterday.core.file.fold import File
from quarterday.core.file.records import EvidenceSent, PackageBuilt, PackageSealed
from quarterday.core.words import words
from quarterday.desk.request import DeskRequest
from quarterday.desk.views.acts import back, day, text
from quarterday.office import access, delivering, packages
from quarterday.office.own_data import reference_in_use
from quarterday.office.trouble import Trouble
from quarterday.store import originals


@require_POST
def build(request: DeskRequest, file: str) -> HttpResponse:
    """Build the package in one language; signed when the review is, else a draft."""
    made = packages.built_by(request.person, file, text(request, "language"), request.today)
    done = "desk-done-draft" if made["draft"] else "desk-done-build"
    return back(request, file, "papers", done)


def _name(held: File, document: str) -> str:
    """Return what a package or a paper of a file is called; 404 when the file has none such."""
    for built in held.all(PackageBuilt):
        if built.document == document:
            draft = "" if built.reviewer else "-draft"
            return f"{held.id}-{built.renewal}-{built.language}-v{built.version}{draft}"
    for seal in held.all(PackageSealed):
        if seal.sealed == document:
            return f"{held.id}-{seal.renewal}-{seal.language}-v{seal.version}-sealed"
    for sent in held.all(EvidenceSent):
        if sent.document == document:
            return f"{held.id}-{sent.paper}-{sent.holder}-{sent.sent_on}-{sent.language}"
    raise Http404


@require_safe
def download(request: DeskRequest, file: str, document: str) -> HttpResponse:
    """Answer with the bytes of a package, or of a paper that went to somebody outside."""
    name = _name(access.open_file(request.person, file), document)
    safe = "".join(c if c.isascii() and (c.isalnum() or c in "-_") else "-" for c in name)
    response = HttpResponse(originals.get(document), content_type="application/pdf")
    response["Content-Disposition"] = f'attachment; filename="{safe}.pdf"'
    return response


@require_POST
def deliver(request: DeskRequest, file: str) -> HttpResponse:
    """Record that the newest signed package in a language went to somebody."""
    access.open_file(request.person, file, "deliver")
    to, way = text(request, "to").strip(), text(request, "way")
    if not to:
        raise Trouble(words("acts-empty", what=words("typed-to")))
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
