"""The inputs of a calculation on its own: read against a model, refused in a sentence."""

from __future__ import annotations

import re
from collections.abc import Mapping
from datetime import date
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
        raise Unusable(_sentence(error.errors()[0], tuple(model.model_fields))) from error


BOUNDS = {
    "greater_than_equal": "ge", "greater_than": "gt", "less_than_equal": "le", "less_than": "lt",
}  # fmt: skip
NUMBERS = ("decimal", "finite", "value_error")
CHOSEN = re.compile(r"\w+Inputs|str")  # pydantic puts the form it tried between the keys


def _sentence(fault: ErrorDetails, known: tuple[str, ...]) -> Words:
    told = fault.get("ctx", {}).get("error")
    if isinstance(told, Unusable):
        return told.words
    where = ".".join(p for p in map(str, fault["loc"]) if not CHOSEN.fullmatch(p))
    if fault["type"] in ("extra_forbidden", "missing"):
        lacks = "given-missing" if fault["type"] == "missing" else "given-unknown"
        inside = len(fault["loc"]) > 1
        return words(lacks, key=where) if inside else words(f"{lacks}-of", key=where, known=known)
    return _of_value(fault, where, str(fault["input"])[:80])


def _is_day(text: str) -> bool:
    try:
        return bool(date.fromisoformat(text))
    except ValueError:
        return False


def _of_value(fault: ErrorDetails, where: str, value: str) -> Words:
    kind, context = fault["type"], fault.get("ctx", {})
    if kind in BOUNDS:
        bound = BOUNDS[kind]
        return words(f"given-{bound}", key=where, value=value, bound=str(context[bound]))
    if kind == "literal_error":
        choices = tuple(re.findall("'([^']*)'", context["expected"]))
        return words("given-choice", key=where, value=value, choices=choices)
    if kind == "value_error" and _is_day(value):
        return words("given-far", key=where, value=value)
    if kind.startswith("date"):
        return words("given-date", key=where, value=value)
    number = kind.startswith(NUMBERS)
    return words("given-number" if number else "given-wrong", key=where, value=value)
