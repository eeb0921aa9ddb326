"""The catalogues with their sources, calculations on their own, and the kinds of problems."""

from typing import Any

from django.http import HttpRequest
from ninja import Router

from quarterday.api import inputs
from quarterday.api.asking import asked, day
from quarterday.api.declaring import asks, reads
from quarterday.api.problems import STATUSES, Problem, speech_of
from quarterday.api.shapes.catalogues import Open, Result, Rule
from quarterday.api.shapes.problem import ProblemKind
from quarterday.api.shapes.review import Node
from quarterday.api.strict import read_json
from quarterday.core.words import words
from quarterday.office import catalogues
from quarterday.office.calculating import CALCULATIONS, calculated
from quarterday.office.own_data import reference_in_use

router = Router(tags=["catalogues"])


@router.get("/problems", response=list[ProblemKind], auth=None)
def problems(request: HttpRequest) -> list[dict[str, Any]]:
    """List the kinds of problems that are told, with their titles; no key is needed."""
    speech = speech_of(request)
    return [
        {"id": id, "status": status, "title": speech.say(words(f"problem-{id}"))}
        for id, status in STATUSES.items()
    ]


@reads(router, "/rules", list[Rule])
def rules(request: HttpRequest) -> list[dict[str, Any]]:  # noqa: ARG001 - an operation's form
    """List the rules of the review and what they rest on."""
    return catalogues.rules()


@reads(router, "/causes", list[Open])
def causes(request: HttpRequest) -> list[dict[str, Any]]:  # noqa: ARG001 - an operation's form
    """List the causes of loss."""
    return catalogues.causes(reference_in_use())


@reads(router, "/coverages", list[Open])
def coverages(request: HttpRequest) -> list[dict[str, Any]]:  # noqa: ARG001 - an operation's form
    """List the coverage library."""
    return catalogues.coverages(reference_in_use())


@reads(router, "/parameters", list[Node])
def parameters(request: HttpRequest, as_of: inputs.AsOf = None) -> list[dict[str, Any]]:
    """List the dated parameters as in force on a day, with their sources."""
    return catalogues.parameters(reference_in_use(), day(as_of), asked(request).speech)


@asks(router, "/calculations/{name}", Result)
def calculate(request: HttpRequest, name: str, sent: inputs.Inputs) -> Any:  # noqa: ANN401, ARG001 - as said below
    """Run one calculation: its inputs as JSON, its result with the steps."""
    if name not in CALCULATIONS:
        said = words("api-no-calculation", name=name[:80], known=tuple(sorted(CALCULATIONS)))
        raise Problem("not-found", said)
    given = read_json(request.body)  # exact, as it was sent; any JSON object may come
    return calculated(name, given, reference_in_use(), asked(request).speech)
