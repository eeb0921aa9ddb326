"""Everything the code asks to be said has its words, and gives what they need.

The sources are read as syntax trees. A wording is asked for by ``words("id", name=…)``, by a
surface's ``say("id", name=…)`` or ``tell``, or, within a rule, by ``say("title")`` after
``say = telling("rule.id", name=…)``.
"""

from __future__ import annotations

import ast
import re
from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from pathlib import Path
from typing import Any

import pytest

import quarterday
from quarterday.catalogue.load import reference
from quarterday.catalogue.speech import Speech

SOURCES = Path(quarterday.__file__).parent
ID = re.compile(r"[a-z0-9-]+")
SOME = "[a-z0-9-]+"


@dataclass(frozen=True)
class Use:
    """A place in the code that asks for a wording: its id, or a pattern of ids."""

    where: str
    id: str
    is_pattern: bool
    given: frozenset[str] | None  # None when the variables cannot be read off


@dataclass(frozen=True)
class Teller:
    """What ``telling`` was given: how its ids begin, and the variables of all its wordings."""

    prefix: str
    given: frozenset[str] | None


def constants(body: list[ast.stmt]) -> dict[str, str]:
    """Return the names that are set to a text in ``body``."""
    return {
        statement.targets[0].id: statement.value.value
        for statement in body
        if isinstance(statement, ast.Assign)
        and isinstance(statement.targets[0], ast.Name)
        and isinstance(statement.value, ast.Constant)
        and isinstance(statement.value.value, str)
    }


def _given(call: ast.Call) -> frozenset[str] | None:
    names = [keyword.arg for keyword in call.keywords]
    return None if None in names else frozenset(map(str, names))


def _ids(node: ast.expr) -> Iterator[tuple[str, bool]]:
    """Yield the wording ids an argument names, and whether each is a pattern."""
    if isinstance(node, ast.Constant) and isinstance(node.value, str):
        yield node.value, False
    elif isinstance(node, ast.IfExp):
        yield from _ids(node.body)
        yield from _ids(node.orelse)
    elif isinstance(node, ast.JoinedStr):
        texts = (getattr(part, "value", None) for part in node.values)
        yield "".join(text if isinstance(text, str) else SOME for text in texts), True


def _name(call: ast.Call) -> str:
    return getattr(call.func, "id", "") or getattr(call.func, "attr", "")


def _calls(node: ast.AST, name: str) -> list[ast.Call]:
    return [c for c in ast.walk(node) if isinstance(c, ast.Call) and _name(c) == name and c.args]


def _teller(function: ast.FunctionDef, names: Mapping[str, str]) -> Teller | None:
    calls = _calls(function, "telling")
    if len(calls) != 1:
        return None
    (rule,) = calls[0].args
    known = {**names, **constants(function.body)}
    text = str(getattr(rule, "value", known.get(getattr(rule, "id", ""), "")))
    return Teller(f"{text}-".replace(".", "-") if text else f"{SOME}-", _given(calls[0]))


def _told(tree: ast.Module, where: str) -> Iterator[Use]:
    """Yield what the rules of a module say through ``telling``."""
    names = constants(tree.body)
    for function in (f for f in ast.walk(tree) if isinstance(f, ast.FunctionDef)):
        teller = _teller(function, names)
        if teller is None:
            continue
        for call in (c for c in _calls(function, "say") if isinstance(c.func, ast.Name)):
            for id, is_pattern in _ids(call.args[0]):
                pattern = is_pattern or teller.prefix.startswith("[")
                yield Use(f"{where}:{call.lineno}", f"{teller.prefix}{id}", pattern, teller.given)


def _said(tree: ast.Module, where: str) -> Iterator[Use]:
    """Yield what a module says by the whole id of a wording."""
    for name in ("words", "Words", "tell", "say"):
        for call in _calls(tree, name):
            by_rule = name == "say" and isinstance(call.func, ast.Name)
            found = [] if by_rule else list(_ids(call.args[0]))
            if name in {"say", "tell"} and not all(p or ID.fullmatch(id) for id, p in found):
                continue
            given = None if len(call.args) > 1 else _given(call)
            yield from (Use(f"{where}:{call.lineno}", id, p, given) for id, p in found)


def _uses() -> Iterator[Use]:
    for file in sorted(SOURCES.rglob("*.py")):
        tree = ast.parse(file.read_text(encoding="utf-8"))
        where = str(file.relative_to(SOURCES))
        yield from _said(tree, where)
        yield from _told(tree, where)


USES = tuple(_uses())


def _known(speech: Speech, use: Use, ids: Mapping[str, object]) -> bool:
    if use.is_pattern:
        return use.id.startswith("parameter-") or any(re.fullmatch(use.id, id) for id in ids)
    return speech.can_say(use.id)


@pytest.mark.parametrize("language", ["en", "fr"])
def test_every_wording_the_code_asks_for_exists(language: str, english: Any, french: Any) -> None:
    """A guard for every part of the program: what is said has its words in both languages."""
    speech = Speech(reference(), language)
    messages = (english if language == "en" else french).messages
    assert len(USES) > 300
    assert [f"{u.where} asks for {u.id}" for u in USES if not _known(speech, u, messages)] == []


def test_the_code_gives_every_variable_that_a_wording_needs(english: Any) -> None:
    lacking = [
        f"{use.where}: {use.id} needs {sorted(needed - use.given)}"
        for use in USES
        if not use.is_pattern and use.given is not None and use.id in english.messages
        if (needed := english.needs(use.id)) - use.given
    ]
    assert lacking == []


def test_a_pattern_that_fits_only_some_wordings_must_have_their_variables(english: Any) -> None:
    """Of an id made at run time, some wording that fits is content with what is given."""
    lacking = [
        f"{use.where}: nothing like {use.id} is content with {sorted(use.given)}"
        for use in USES
        if use.is_pattern and use.given is not None and not use.id.startswith("parameter-")
        if (fit := [id for id in english.messages if re.fullmatch(use.id, id)])
        and not any(english.needs(id) <= use.given for id in fit)
    ]
    assert lacking == []


def test_the_reader_of_the_code_sees_each_way_of_asking() -> None:
    """The check of the check: ids, alternatives, patterns and rules are found with their names."""
    tree = ast.parse(
        'RULE = "values.x"\n'
        "def rule(a):\n"
        "    say = telling(RULE, n=1)\n"
        '    say("title")\n'
        '    words("one" if a else "two", b=1, **a)\n'
        '    self.say(f"kind-{a}", c=2)\n'
        '    speech.say("Not an id")\n'
    )
    found = {use.id: use for use in (*_said(tree, "f"), *_told(tree, "f"))}
    assert set(found) == {"one", "two", f"kind-{SOME}", "values-x-title"}
    assert found["values-x-title"].given == frozenset({"n"})
    assert found["one"].given is None
    assert found[f"kind-{SOME}"].given == frozenset({"c"})
