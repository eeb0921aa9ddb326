"""The inputs of a calculation on its own: read against a model, refused in a sentence."""

from __future__ import annotations

import re
from collections.abc import Mapping
from typing import TypeVar

from pydantic import BaseModel, ValidationError
from pydantic_core import ErrorDetails

from quarterday.core.words import Words, words

M = TypeVar("M", bound=BaseModel)


class Unusable(ValueError):
    """Raised when inputs cannot be used; ``words`` says where, what and what to do."""

    def __init__(self, said: Words) -> None:
        super().__init__(str(said))
        self.words = said


def read(model: type[M], given: Mapping[str, object]) -> M:
    """Return ``given`` as ``model``; Unusable names the first key that is unknown or wrong."""
    try:
        return model.model_validate(given)
    except ValidationError as error:
        raise Unusable(_sentence(error.errors()[0])) from error


def _sentence(fault: ErrorDetails) -> Words:
    where = ".".join(map(str, fault["loc"]))
    value = str(fault["input"])[:80]
    kind = fault["type"]
    if kind == "extra_forbidden":
        return words("given-unknown", key=where)
    if kind == "missing":
        return words("given-missing", key=where)
    if kind.startswith("date"):
        return words("given-date", key=where, value=value)
    if kind == "literal_error":
        choices = tuple(re.findall("'([^']*)'", fault["ctx"]["expected"]))
        return words("given-choice", key=where, value=value, choices=choices)
    if kind.startswith(("decimal", "finite", "value_error")):
        return words("given-number", key=where, value=value)
    return words("given-wrong", key=where, value=value)
