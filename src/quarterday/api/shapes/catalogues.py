"""The catalogues."""

from typing import Any

from pydantic import RootModel

from quarterday.api.shapes.base import Shape


class Rule(Shape):
    """A rule of the review."""

    id: str
    looks_at: str
    parameters: list[str]
    basis: str


class Open(RootModel[dict[str, Any]]):
    """An entry of a catalogue, with the fields that its data file has."""


class Result(RootModel[dict[str, Any]]):
    """What a calculation returns, with its steps as sentences; the guide lists them by name."""
