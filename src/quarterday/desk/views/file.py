"""A file: what matters first, then everything it holds, each figure with its why."""

from __future__ import annotations

from django.http import Http404, HttpResponse
from django.shortcuts import render
from django.views.decorators.http import require_safe

from quarterday.core.figure import Figure, Node
from quarterday.desk import filepage
from quarterday.desk.request import DeskRequest
from quarterday.office import access
from quarterday.office.own_data import reference_in_use
from quarterday.office.showing import Shown, shown_on


def shown_of(request: DeskRequest, id: str, act: access.Act = "view") -> Shown:
    """Return a file as on the desk's day, for what the person is about to do with it."""
    file = access.open_file(request.person, id, act)
    return shown_on(file, reference_in_use(), request.today, request.speech.language)


@require_safe
def file(request: DeskRequest, file: str) -> HttpResponse:
    """Show a file."""
    shown = shown_of(request, file)
    office = access.office_of(shown.file)
    acts: tuple[access.Act, ...] = (
        "edit", "record", "build", "deliver", "certify", "set-aside", "sign",
    )  # fmt: skip
    may = {act.replace("-", "_"): access.may(request.person, act, office) for act in acts}
    may["sign"] = may["sign"] and bool(request.person.licence)
    told = filepage.page(shown, request.speech)
    template = "desk/file.html" if shown.is_reviewable else "desk/file_bare.html"
    only = request.GET.get("only", "")
    asked = {"only": only if only in filepage.KINDS else "", "unfolded": "unfold" in request.GET}
    return render(request, template, {**told, **asked, "may": may})


@require_safe
def why(request: DeskRequest, file: str) -> HttpResponse:
    """Show what a figure of the review was made from, down to its sources."""
    shown = shown_of(request, file)
    id = request.GET.get("figure", "")
    figures = {**shown.review.figures(), **filepage.premium_figures(shown)}
    if id not in figures:
        raise Http404
    told = {"node": _node(figures[id], request), "file": shown.file, "as_of": shown.as_of}
    partial = request.htmx and not request.htmx.boosted
    return render(request, "desk/why_tree.html" if partial else "desk/why.html", told)


def _node(node: Node, request: DeskRequest, depth: int = 0) -> dict[str, object]:
    said = request.speech.parts(node)
    inputs = node.inputs if isinstance(node, Figure) else ()
    return {
        "said": said,
        "inputs": [_node(part, request, depth + 1) for part in inputs],
        "opened": depth < 1,
    }
