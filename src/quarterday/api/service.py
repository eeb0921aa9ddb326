"""The interface as a whole, and its description in OpenAPI."""

from functools import lru_cache
from typing import Any

from django.http import Http404, HttpRequest, HttpResponse
from ninja import NinjaAPI
from ninja.errors import HttpError, ValidationError, ValidationErrorContext
from ninja.operation import Operation

from quarterday.api import operations
from quarterday.api.problems import MEDIA, answer
from quarterday.api.shapes.problem import Problem as ProblemShape
from quarterday.api.strict import FORM, StrictJson, refused

TITLE = "Quarterday"
ABOUT = (
    "The renewals of a brokerage as JSON: the same reads and acts as at the desk and from the "
    "terminal. Every request carries an access key that a person made, as a bearer token. Money is "
    "text with two decimals, rates and numbers are text, days are ISO 8601. What goes wrong is "
    "told as a problem (RFC 9457) with one sentence in the language of Accept-Language."
)


class Service(NinjaAPI):
    """The interface; its description says of every operation how trouble is told."""

    def get_openapi_operation_id(self, operation: Operation) -> str:
        """Return the module and name of an operation: ``acts.decide``."""
        view = operation.view_func
        return f"{view.__module__.rpartition('.')[2]}.{view.__name__}"

    def validation_error_from_error_contexts(
        self, error_contexts: list[ValidationErrorContext[Any]]
    ) -> ValidationError:
        """Return what is wrong with an input, where, and what was said there."""
        told = super().validation_error_from_error_contexts(error_contexts)
        found = [e for c in error_contexts for e in c.pydantic_validation_error.errors()]
        for fault, whole in zip(told.errors, found, strict=True):
            fault["input"] = whole["input"]
        return told

    def get_openapi_schema(self, **named: Any) -> Any:  # noqa: ANN401 - as django-ninja has it
        """Return the description in OpenAPI 3.1."""
        made = super().get_openapi_schema(**named)
        problem = ProblemShape.model_json_schema(ref_template="#/components/schemas/{model}")
        made["components"]["schemas"] |= {**problem.pop("$defs", {}), "Problem": problem}
        content = {MEDIA: {"schema": {"$ref": "#/components/schemas/Problem"}}}
        told = {"description": "What went wrong, and what to do.", "content": content}
        for methods in made["paths"].values():
            for operation in methods.values():
                _close(operation)
                operation["responses"] |= {"4XX": told, "5XX": told}
        return made


def _close(operation: dict[str, Any]) -> None:
    """Say of a form that it has no other parts, which is refused by name."""
    form = operation.get("requestBody", {}).get("content", {}).get(FORM)
    if form is not None:
        form["schema"] = {**form["schema"], "additionalProperties": False}


service = Service(
    title=TITLE,
    version="1",
    description=ABOUT,
    docs_url=None,
    openapi_url="openapi.json",
    urls_namespace="api",
    parser=StrictJson(),
)
for router in operations.ROUTERS:
    service.add_router("", router)


@service.exception_handler(ValidationError)
def _bad_input(request: HttpRequest, trouble: ValidationError) -> HttpResponse:
    return answer(request, refused(trouble))


@service.exception_handler(Http404)
@service.exception_handler(HttpError)
@service.exception_handler(Exception)
def _trouble(request: HttpRequest, trouble: Exception) -> HttpResponse:
    return answer(request, trouble)


@lru_cache(maxsize=1)
def described() -> Any:  # noqa: ANN401 - an OpenAPI document
    """Return the description, made once."""
    return service.get_openapi_schema()
