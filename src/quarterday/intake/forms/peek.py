"""What a PDF from outside holds, read where it can do no harm, or why it is refused."""

from __future__ import annotations

import hashlib
import sys
from dataclasses import dataclass, field

from pydantic import BaseModel, ConfigDict, ValidationError

from quarterday.intake.forms.confined import handled
from quarterday.intake.refusals import Unreadable

LARGEST = 60 * 1024**2
_CHILD = [sys.executable, "-m", "quarterday.intake.forms.apart"]
_HEAD = 1024  # bytes within which a PDF says that it is one


class Cell(BaseModel):
    """A field as one place shows it; ``value`` None when it cannot be handed on.

    ``size`` is its length in characters, ``state`` what a switch shows, ``shown`` whether the place
    is on a page: then ``page`` counts from 1, and ``spot`` is its rectangle there in points (left,
    bottom, right, top), None when it has none.
    """

    model_config = ConfigDict(frozen=True, extra="forbid")

    name: str
    kind: str
    value: str | None
    size: int
    state: str | None
    shown: bool
    page: int | None = None
    spot: tuple[float, float, float, float] | None = None


class _Seen(BaseModel):
    model_config = ConfigDict(frozen=True, extra="forbid")

    pages: int
    fields: tuple[Cell, ...]
    marks: tuple[str, ...]
    text: str
    digests: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Looked:
    """A document from outside: its bytes, name and digest, and what was seen in it.

    ``marks`` are what a form of ours never has: program, attachment, xfa. ``digests`` are of the
    pages, when they were asked for.
    """

    name: str
    data: bytes = field(repr=False)
    document: str
    pages: int
    cells: tuple[Cell, ...] = field(repr=False)
    marks: tuple[str, ...]
    text: str = field(repr=False)
    digests: tuple[str, ...] = field(default=(), repr=False)


def look(data: bytes, name: str, *, with_pages: bool = False) -> Looked:
    """Return what a PDF holds; ``with_pages`` adds each page's digest.

    Unreadable when it is none, is locked or broken, or is too large or takes too much to read.
    """
    if len(data) > LARGEST:
        raise Unreadable("returns-too-large", name=name, most=LARGEST // 1024**2)
    if b"%PDF-" not in data[:_HEAD]:
        raise Unreadable("returns-not-pdf", name=name)
    seen = _seen(data, name, ["pages"] if with_pages else [])
    document = hashlib.sha256(data).hexdigest()
    return Looked(
        name, data, document, seen.pages, seen.fields, seen.marks, seen.text, seen.digests
    )  # fmt: skip


def _seen(data: bytes, name: str, how: list[str]) -> _Seen:
    told = handled([*_CHILD, *how], data, name)
    try:
        return _Seen.model_validate_json(told)
    except ValidationError:
        raise Unreadable("returns-broken", name=name) from None
