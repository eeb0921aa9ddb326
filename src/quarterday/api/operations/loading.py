"""Loading: a document is sent, its preview read, and accepted or left."""

from datetime import UTC, datetime
from typing import Any

from django.conf import settings
from django.http import HttpRequest
from ninja import Router

from quarterday.api import inputs
from quarterday.api.asking import asked
from quarterday.api.declaring import acts
from quarterday.api.problems import Problem
from quarterday.api.shapes import papers as shapes
from quarterday.core.words import words
from quarterday.office import loading, uploads
from quarterday.office.own_data import reference_in_use
from quarterday.office.uploads import Preview

router = Router(tags=["loading"])


@acts(router, "/loads", shapes.LoadPreview, apart=True)
def send(request: HttpRequest, document: inputs.Document) -> dict[str, Any]:
    """Send a workbook or CSV file and see what loading it would do; nothing is written."""
    person, most = asked(request).person, settings.MOST_UPLOADED
    name, now = str(document.name or ""), datetime.now(UTC)
    token = uploads.keep(person, name, document.read(most + 1), most, now)
    return _shown(
        uploads.preview(person, token, reference_in_use(), asked(request).speech), request
    )


def _shown(preview: Preview, request: HttpRequest) -> dict[str, Any]:
    return {
        "token": preview.token,
        "mark": preview.mark,
        "needs_acceptance": preview.loading.plan.needs_acceptance,
        **loading.plain(preview.loading, asked(request).speech),
    }


@acts(router, "/loads/{token}/accept", shapes.Loaded, apart=True)
def accept(request: HttpRequest, token: str, sent: inputs.LoadAccepted) -> dict[str, Any]:
    """Write what the preview showed, in one transaction; 409 when the files changed since."""
    done = uploads.accept(
        asked(request).person, token, reference_in_use(), asked(request).speech, mark=sent.mark,
        with_errors=sent.with_errors,
    )  # fmt: skip
    if isinstance(done, Preview):
        raise Problem("conflict", words("api-load-moved", token=token[:80]))
    return {"files": done.files, "entries": done.entries}


@acts(router, "/loads/{token}", shapes.Left, method="DELETE")
def leave(request: HttpRequest, token: str) -> dict[str, Any]:
    """Leave a document that was sent; nothing of it is written."""
    uploads.kept(asked(request).person, token)
    uploads.forget(asked(request).person, token)
    return {"left": True}
