"""The review: findings, agenda, figures and what they were made from; and bad years."""

from typing import Any

from django.http import HttpRequest
from ninja import Router

from quarterday.api.asking import asked, day, file_shown
from quarterday.api.declaring import reads
from quarterday.api.inputs import AsOf, Text
from quarterday.api.problems import Problem
from quarterday.api.shapes import review as shapes
from quarterday.api.shapes.terms import Risk
from quarterday.core.words import words
from quarterday.office import access, plain
from quarterday.office import risk as office
from quarterday.office.own_data import reference_in_use

router = Router(tags=["review"])


@reads(router, "/files/{file}/review", shapes.Review)
def review(request: HttpRequest, file: str, as_of: AsOf = None) -> dict[str, Any]:
    """Review a file: what was noticed, in order, and what the leaders decide."""
    shown = file_shown(request, file, as_of=as_of)
    return plain.review(shown.review, asked(request).speech)


@reads(router, "/files/{file}/figures", shapes.Figures)
def figures(request: HttpRequest, file: str, as_of: AsOf = None) -> dict[str, Any]:
    """List the figures of the review."""
    shown, speech = file_shown(request, file, as_of=as_of), asked(request).speech
    return {
        "file": file,
        "as_of": shown.as_of.isoformat(),
        "figures": [plain.named(node, speech) for node in shown.review.figures().values()],
    }


@reads(router, "/files/{file}/why", shapes.Node)
def why(request: HttpRequest, file: str, figure: Text, as_of: AsOf = None) -> dict[str, Any]:
    """Return what a figure of the review was made from, down to its sources."""
    found = file_shown(request, file, as_of=as_of).review.figures()
    if figure not in found:
        raise Problem("not-found", words("api-no-figure", figure=figure[:80]))
    return plain.node(found[figure], asked(request).speech)


@reads(router, "/files/{file}/risk", Risk)
def risk(request: HttpRequest, file: str, as_of: AsOf = None) -> dict[str, Any]:
    """Return what losses could cost next year, and what its options would change."""
    access.open_file(asked(request).person, file)
    _, found = office.risk_file(file, reference_in_use(), day(as_of))
    return office.as_plain(found, asked(request).speech)
