"""How an operation is declared: as a read, as a question with a body, or as an act."""

from collections.abc import Callable
from typing import Any, TypeVar

from ninja import Router

from quarterday.api.asking import ACT, READ
from quarterday.api.repeating import DESCRIBED, once

F = TypeVar("F", bound=Callable[..., Any])


def reads(router: Router, path: str, shape: Any, **more: Any) -> Callable[[F], F]:  # noqa: ANN401 - django-ninja's own
    """Declare a read: it changes nothing that anybody recorded."""
    return router.get(path, response=shape, auth=READ, exclude_unset=True, **more)


def asks(router: Router, path: str, shape: Any) -> Callable[[F], F]:  # noqa: ANN401 - as above
    """Declare a question that needs a body: it changes nothing either."""
    return router.post(path, response=shape, auth=READ, exclude_unset=True)


def acts(
    router: Router,
    path: str,
    shape: Any,  # noqa: ANN401 - as above
    *,
    apart: bool = False,
    method: str = "POST",
) -> Callable[[F], F]:
    """Declare an act: only a key that may act does it, and under one name it is done once.

    What stands ``apart`` takes long or reaches outside the store, so that it cannot be one
    transaction with its answer.
    """

    def declare(act: F) -> F:
        declared = router.api_operation(
            [method], path, response=shape, auth=ACT, exclude_unset=True, openapi_extra=DESCRIBED
        )
        declared(once(act, apart=apart))
        return act

    return declare
