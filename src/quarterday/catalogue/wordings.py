"""Fluent wordings of a place: one file an area, a brokerage's own wordings on top."""

from __future__ import annotations

from collections.abc import Iterator
from functools import lru_cache
from pathlib import Path
from typing import Any

from fluent.runtime import FluentBundle, FluentResource
from fluent.syntax.ast import Junk, Message, Resource, Term

from quarterday.catalogue.load import place_folder
from quarterday.catalogue.problems import BadReference
from quarterday.catalogue.text import read_text, set_french, short_name


class MissingWording(LookupError):
    """Raised when a wording or something it needs is not there."""


def _capital(text: Any) -> str:  # noqa: ANN401 - Fluent passes any of its types
    """Return ``text`` with a capital first: ``{ CAPITAL($cause) }`` begins a sentence."""
    said = str(text)
    return said[:1].upper() + said[1:]


def _junk(entry: Junk, file: Path) -> str:
    first = (entry.content or "").strip().partition("\n")[0]
    why = "; ".join(note.message or "" for note in entry.annotations or ())
    return f"{short_name(file)}: cannot read the wording that begins {first!r} ({why})."


def _entries(folder: Path) -> Iterator[tuple[Path, Resource]]:
    for file in sorted(folder.glob("*.ftl")):
        text = read_text(file)
        yield file, FluentResource(set_french(text) if folder.name == "fr" else text)


def _add(bundle: FluentBundle, folder: Path, *, over: bool) -> None:
    """Add the wordings of ``folder``; ``over`` lets them replace those already there."""
    problems: list[str] = []
    seen: dict[str, Path] = {}
    for file, resource in _entries(folder):
        for entry in resource.body:
            if isinstance(entry, Junk):
                problems.append(_junk(entry, file))
            elif isinstance(entry, Message | Term):
                id = f"-{entry.id.name}" if isinstance(entry, Term) else entry.id.name
                if id in seen:
                    problems.append(
                        f"{short_name(file)}: the wording {id} stands in {seen[id].name} already."
                    )
                seen[id] = file
        bundle.add_resource(resource, allow_overrides=over)
    if problems:
        raise BadReference(problems)


@lru_cache(maxsize=16)
def bundle(place: str, language: str, overrides: Path | None = None) -> FluentBundle:
    """Return all wordings of a language, a brokerage's own replacing the shipped ones.

    BadReference lists wordings that cannot be read or stand twice, and a brokerage's wordings with
    an id that no shipped wording has.
    """
    functions: dict[str, Any] = {"CAPITAL": _capital}  # the resolver takes plain text too
    found = FluentBundle([f"{language}-CA"], functions, use_isolating=False)
    _add(found, place_folder(place) / "wordings" / language, over=False)
    if overrides is not None:
        _only_known(found, overrides / "wordings" / language)
        _add(found, overrides / "wordings" / language, over=True)
    return found


def _only_known(shipped: FluentBundle, folder: Path) -> None:
    problems = [
        f"{short_name(file)}: no wording has the id {entry.id.name}; check its spelling."
        for file, resource in _entries(folder)
        for entry in resource.body
        if isinstance(entry, Message) and not shipped.has_message(entry.id.name)
    ]
    if problems:
        raise BadReference(problems)
