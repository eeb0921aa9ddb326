"""Fluent wordings of a place: one file an area, a brokerage's own wordings on top."""

from __future__ import annotations

from collections.abc import Iterator
from functools import lru_cache
from pathlib import Path
from typing import Any

from fluent.runtime import FluentBundle, FluentResource
from fluent.syntax.ast import Junk, Message, Resource, Term, VariableReference
from fluent.syntax.visitor import Visitor

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


class _Variables(Visitor):
    """Collects the names of the variables below a node."""

    def __init__(self) -> None:
        self.names: set[str] = set()

    def visit_VariableReference(self, node: VariableReference) -> None:  # noqa: N802 - its name
        self.names.add(f"${node.id.name}")


def _messages(folder: Path) -> Iterator[tuple[Path, str, frozenset[str]]]:
    """Yield each wording of a folder: its file, its id and the variables it uses."""
    for file, resource in _entries(folder):
        for entry in resource.body:
            if isinstance(entry, Message):
                found = _Variables()
                found.visit(entry)
                yield file, entry.id.name, frozenset(found.names)


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
    an id or a variable that the shipped ones do not have.
    """
    functions: dict[str, Any] = {"CAPITAL": _capital}  # the resolver takes plain text too
    found = FluentBundle([f"{language}-CA"], functions, use_isolating=False)
    folder = place_folder(place) / "wordings" / language
    _add(found, folder, over=False)
    if overrides is not None:
        _only_known(folder, overrides / "wordings" / language)
        _add(found, overrides / "wordings" / language, over=True)
    return found


def _only_known(shipped: Path, own: Path) -> None:
    """Refuse a brokerage's wordings whose id or variables are not those of the shipped ones."""
    known = {id: used for _, id, used in _messages(shipped)}
    problems = []
    for file, id, used in _messages(own):
        if id not in known:
            problems.append(f"{short_name(file)}: no wording has the id {id}; check its spelling.")
        elif used - known[id]:
            extra, there = (", ".join(sorted(names)) for names in (used - known[id], known[id]))
            problems.append(
                f"{short_name(file)}: the wording {id} uses {extra}; it is given {there or 'none'}."
            )
        elif known[id] - used:
            lost = ", ".join(sorted(known[id] - used))
            problems.append(
                f"{short_name(file)}: the wording {id} leaves out {lost}; readers would miss it. "
                "Put it in."
            )
    if problems:
        raise BadReference(problems)


def own_wordings(overrides: Path, language: str) -> tuple[str, ...]:
    """Return the ids of the wordings that a brokerage has of its own, in order."""
    folder = overrides / "wordings" / language
    return tuple(sorted(id for _, id, _ in _messages(folder)))
