"""Packages, requests, forms that came home, and documents to load."""

from typing import Any

from quarterday.api.shapes.base import Day, Shape
from quarterday.api.shapes.files import Entry


class Built(Shape):
    """A package that was built; ``sha256`` is the address under which it is fetched."""

    file: str
    renewal: Day
    language: str
    version: int
    as_of: Day
    draft: bool
    sha256: str
    enclosed: list[str]


class Request(Shape):
    """A request to the insurer: what was changed and decided since the one before.

    Each change says in ``ask`` whether it asks (``change``) or takes back what an earlier request
    asked for (``disregard``).
    """

    file: str
    organisation: str
    named_insured: str
    insurer: str | None
    policy_number: str | None
    renewal: Day
    number: int
    sent_on: Day
    changes: list[dict[str, Any]]


class RequestSent(Shape):
    """A request that was recorded as sent."""

    file: str
    seq: int
    entries: list[Entry]
    request: Request


class Proposal(Shape):
    """One answer of a returned form beside what the file says."""

    field: str
    form: str
    kind: str
    key: str
    of: str
    status: str
    can_be_taken: bool
    was: str
    now: str
    said: str
    sentence: str
    why: str | None


class FormRead(Shape):
    """What a returned form proposes, and what of it was taken."""

    file: str
    renewal: Day
    document: str | None
    forms: list[str]
    notes: list[str]
    proposals: list[Proposal]
    taken: list[str]
    refused: list[str]
    entries: int


class FlatForm(Shape):
    """A form without answers that a program can read: whose it may be, and what to do.

    ``codes`` are the texts of the codes that are printed on its pages, by the number of the page.
    """

    document: str
    files: list[str]
    forms: list[str]
    notes: list[str]
    codes: dict[str, str]


class FormsKept(Shape):
    """A returned document that waits for its answers to be taken; ``token`` names it for a day."""

    token: str
    read: list[FormRead | FlatForm]


class Accepted(Shape):
    """What was taken from a returned document."""

    read: list[FormRead]


class LoadPreview(Shape):
    """What loading a document would do; ``mark`` must be sent back to accept exactly this."""

    token: str
    mark: str
    needs_acceptance: bool
    document: str
    new: int
    changed: int
    unchanged: int
    refused: int
    asks: int
    note: int
    mapping: list[str]
    sentences: list[str]


class Loaded(Shape):
    """What was written: into how many files, how many entries."""

    files: int
    entries: int


class Left(Shape):
    """A document that was left."""

    left: bool
