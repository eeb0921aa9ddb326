"""The wordings of both languages as syntax trees, and what they say as plain text."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass, field
from pathlib import Path

import pytest
from fluent.syntax import FluentParser, ast

from quarterday.catalogue.load import place_folder

SAMPLE = "one"  # stands for a variable when sentences are measured


@dataclass(frozen=True)
class Area:
    """The wordings of one area in one language."""

    name: str
    messages: Mapping[str, ast.Message]
    terms: Mapping[str, ast.Term]
    junk: tuple[str, ...]
    repeated: tuple[str, ...]


@dataclass(frozen=True)
class Wordings:
    """All wordings of one language."""

    language: str
    areas: Mapping[str, Area]
    messages: Mapping[str, ast.Message] = field(default_factory=dict)
    terms: Mapping[str, ast.Term] = field(default_factory=dict)

    def variables(self, id: str) -> frozenset[str]:
        """Return the variables a wording needs, also those of the wordings it speaks."""
        return frozenset(self._variables(self.messages[id].value))

    def needs(self, id: str) -> frozenset[str]:
        """Return the variables a wording cannot do without, whichever variant is chosen."""
        return self._needs(self.messages[id].value)

    def references(self, id: str) -> frozenset[str]:
        """Return the other wordings that a wording speaks."""
        return frozenset(
            node.id.name
            for node in walk(self.messages[id].value)
            if isinstance(node, ast.MessageReference | ast.TermReference)
        )

    def text(self, id: str) -> str:
        """Return what a wording says, a sample in place of each variable."""
        return self._text(self.messages[id].value)

    def _variables(self, pattern: ast.Pattern | None) -> Iterator[str]:
        for node in walk(pattern):
            if isinstance(node, ast.VariableReference):
                yield node.id.name
            elif isinstance(node, ast.MessageReference) and node.id.name in self.messages:
                yield from self._variables(self.messages[node.id.name].value)

    def _needs(self, node: object) -> frozenset[str]:
        if isinstance(node, ast.VariableReference):
            return frozenset({node.id.name})
        if isinstance(node, ast.MessageReference):
            return self._needs(getattr(self.messages.get(node.id.name), "value", None))
        if isinstance(node, ast.SelectExpression):
            chosen = [self._needs(variant.value) for variant in node.variants]
            return self._needs(node.selector) | frozenset.intersection(*chosen)
        below = vars(node).values() if isinstance(node, ast.BaseNode) else node
        parts = below if isinstance(below, Iterable) and not isinstance(below, str) else ()
        return frozenset[str]().union(*map(self._needs, parts))

    def _text(self, node: object) -> str:
        match node:
            case ast.Pattern(elements=parts):
                return "".join(map(self._text, parts))
            case ast.Placeable(expression=inner):
                return self._text(inner)
            case ast.SelectExpression(variants=variants):
                return self._text(next(v.value for v in variants if v.default))
            case ast.MessageReference(id=of):
                return self._text(self.messages[of.name].value)
            case ast.TermReference(id=of):
                return self._text(self.terms[of.name].value)
        return node.value if isinstance(node, ast.TextElement | ast.StringLiteral) else SAMPLE


def walk(node: object) -> Iterator[ast.BaseNode]:
    """Yield a node of the tree and everything below it."""
    if isinstance(node, ast.BaseNode):
        yield node
        for below in vars(node).values():
            yield from walk(below)
    elif isinstance(node, list):
        for below in node:
            yield from walk(below)


def _area(file: Path) -> Area:
    body = FluentParser().parse(file.read_text(encoding="utf-8")).body
    messages = [entry for entry in body if isinstance(entry, ast.Message)]
    names = [message.id.name for message in messages]
    return Area(
        file.stem,
        {message.id.name: message for message in messages},
        {entry.id.name: entry for entry in body if isinstance(entry, ast.Term)},
        tuple(entry.content or "" for entry in body if isinstance(entry, ast.Junk)),
        tuple(sorted({name for name in names if names.count(name) > 1})),
    )


def read(language: str) -> Wordings:
    """Return the shipped wordings of a language."""
    folder = place_folder("canada") / "wordings" / language
    areas = {file.stem: _area(file) for file in sorted(folder.glob("*.ftl"))}
    messages = {id: m for area in areas.values() for id, m in area.messages.items()}
    terms = {id: t for area in areas.values() for id, t in area.terms.items()}
    return Wordings(language, areas, messages, terms)


@pytest.fixture(scope="session")
def english() -> Wordings:
    return read("en")


@pytest.fixture(scope="session")
def french() -> Wordings:
    return read("fr")
