"""Strict input: a key that is not known is refused by name, and so is one that stands twice."""

import json
from collections.abc import Iterable, Iterator, Mapping
from decimal import Decimal
from typing import Any

from django.http import HttpRequest
from ninja.errors import ValidationError
from ninja.parser import Parser

from quarterday.api.problems import Problem
from quarterday.core.words import Words, words

JSON, FORM = "application/json", "multipart/form-data"
MOST_TOLD = 20  # faults told at a time
_FORMS = {"missing": "api-missing", "extra_forbidden": "api-unknown"}


class Fraction(str):
    """A number that JSON wrote with a point or an exponent, kept as it was written."""

    __slots__ = ()

    def whole(self, most: int) -> int | None:
        """Return the number where it is whole, as 12.0 is (JSON Schema 2020-12), and up to most."""
        try:
            value = Decimal(self)
        except ArithmeticError:  # an exponent beyond what can be reckoned with
            return None
        fits = -most <= value <= most and value == value.to_integral_value()
        return int(value) if fits else None


class StrictJson(Parser):
    """Reads a body: exact numbers, no key twice, nothing that is not JSON."""

    def parse_body(self, request: HttpRequest) -> Any:  # noqa: ANN401 - whatever JSON can hold
        """Return the body; Problem says why it cannot be read."""
        return read_json(request.body)


def read_json(body: bytes) -> Any:  # noqa: ANN401 - whatever JSON can hold
    """Return what ``body`` says, fractions as text; Problem says why it cannot be read."""
    try:
        return json.loads(
            body.decode("utf-8"), parse_float=Fraction, parse_constant=_not_finite,
            object_pairs_hook=_once,
        )  # fmt: skip
    except UnicodeDecodeError:
        raise _unread(words("api-json-not-utf")) from None
    except json.JSONDecodeError as error:
        raise _unread(words("api-json-form", at=error.pos)) from None
    except (RecursionError, ValueError):
        raise _unread(words("api-json-deep")) from None


def _unread(why: Words) -> Problem:
    return Problem("bad-request", words("api-bad-json", why=why))


def _not_finite(_said: str) -> None:
    raise _unread(words("api-json-not-finite"))


def _once(pairs: list[tuple[str, Any]]) -> dict[str, Any]:
    found = dict(pairs)
    if len(found) != len(pairs):
        seen: set[str] = set()
        twice = next(key for key, _ in pairs if key in seen or seen.add(key))  # type: ignore[func-returns-value]
        raise _unread(words("api-json-twice", key=_safe(twice)))
    return found


def check(request: HttpRequest) -> None:
    """Raise Problem when the address, the kind of content or the form says what is not known."""
    operation = _operation(request)
    names = {p["name"] for p in operation.get("parameters", ()) if p["in"] == "query"}
    _names(request.GET.lists(), names)
    kinds = tuple(operation.get("requestBody", {}).get("content", ()))
    if not kinds:
        return
    if request.content_type not in kinds:
        raise Problem("bad-kind", words("api-kind", kind=kinds[0]))
    if kinds[0] == FORM:
        known = operation["requestBody"]["content"][FORM]["schema"]["properties"]
        _names([*request.POST.lists(), *request.FILES.lists()], known)


def _operation(request: HttpRequest) -> Mapping[str, Any]:
    from quarterday.api.service import described

    match = request.resolver_match
    address = "/" + (match.route if match else "").replace("<", "{").replace(">", "}")
    found: Mapping[str, Any] = described()["paths"][address][str(request.method).lower()]
    return found


def _names(sent: Iterable[tuple[str, list[Any]]], known: Iterable[str]) -> None:
    for name, values in sent:
        if name not in known:
            raise _bad([(name, words("api-unknown", key=_safe(name)))])
        if len(values) > 1:
            raise _bad([(name, words("api-twice", key=_safe(name)))])


def _bad(faults: Iterable[tuple[str, Words]]) -> Problem:
    found = list(faults)[:MOST_TOLD]
    return Problem("bad-input", *(said for _, said in found), where=[_safe(w) for w, _ in found])


def refused(trouble: ValidationError) -> Problem:
    """Return the problem that tells what of an input is wrong, and where."""
    return _bad(_faults(trouble.errors))


def record_refused(errors: Iterable[Mapping[str, Any]]) -> Problem:
    """Return the problem that tells what of a record is wrong: the interface cannot describe it."""
    found = list(_faults({**e, "loc": ("body", "record", *e["loc"])} for e in errors))[:MOST_TOLD]
    return Problem("refused", *(said for _, said in found), where=[_safe(w) for w, _ in found])


def _faults(errors: Iterable[Mapping[str, Any]]) -> Iterator[tuple[str, Words]]:
    for fault in errors:
        steps = [str(step) for step in fault["loc"]]
        where = ".".join(steps[2:] if steps[:2] == ["body", "sent"] else steps[1:]) or "body"
        yield where, _sentence(_safe(where), fault)


def _sentence(key: str, fault: Mapping[str, Any]) -> Words:  # noqa: PLR0911 - one a kind of fault
    kind, value = str(fault["type"]), _safe(str(fault.get("input", "")))
    if kind in _FORMS:
        return words(_FORMS[kind], key=key)
    if kind.startswith("date"):
        return words("api-date", key=key, value=value)
    if kind.startswith(("int", "greater", "less", "finite")):
        return words("api-number", key=key, value=value)
    if kind.startswith("bool"):
        return words("api-yes-no", key=key, value=value)
    if kind.startswith("string"):
        return words("api-text", key=key)
    if kind == "literal_error":
        choices = tuple(str(fault["ctx"]["expected"]).replace("'", "").split(", "))
        return words("api-choice", key=key, value=value, choices=choices)
    return words("api-wrong", key=key, value=_safe(str(fault["msg"])))


def _safe(text: str) -> str:
    """Return text that can be shown: no control characters, not long."""
    shown = "".join(c if c.isprintable() else "�" for c in text[:120])
    return shown if len(text) <= 120 else f"{shown}…"  # noqa: PLR2004 - as above
