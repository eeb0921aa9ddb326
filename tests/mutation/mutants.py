"""Small wrongs that can be done to code, one at a time, on its syntax tree.

The kinds are the usual ones: a comparison, an arithmetic or a logical sign exchanged, a condition
turned round, a number moved by one, a truth value flipped, ``min`` and ``max`` exchanged. Texts,
annotations, assertions, decorators and what is raised are left alone: they are not the computation.
"""

from __future__ import annotations

import ast
import copy
from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass
from pathlib import Path
from typing import Any

Change = Callable[[ast.AST], ast.AST]
SIGNS: Mapping[type[ast.AST], Any] = {
    ast.Lt: ast.LtE, ast.LtE: ast.Lt, ast.Gt: ast.GtE, ast.GtE: ast.Gt,
    ast.Eq: ast.NotEq, ast.NotEq: ast.Eq, ast.Is: ast.IsNot, ast.IsNot: ast.Is,
    ast.In: ast.NotIn, ast.NotIn: ast.In,
    ast.Add: ast.Sub, ast.Sub: ast.Add, ast.Mult: ast.Div, ast.Div: ast.Mult,
    ast.FloorDiv: ast.Mult, ast.Mod: ast.Mult, ast.Pow: ast.Mult,
    ast.BitAnd: ast.BitOr, ast.BitOr: ast.BitAnd,
    ast.And: ast.Or, ast.Or: ast.And,
}  # fmt: skip
NAMES = {"min": "max", "max": "min", "minimum": "maximum", "maximum": "minimum",
         "any": "all", "all": "any"}  # fmt: skip
LEFT_ALONE = (ast.Assert, ast.Raise, ast.Import, ast.ImportFrom, ast.JoinedStr)


@dataclass(frozen=True, slots=True)
class Mutant:
    """One wrong: the file, the number of the node in it, and the change."""

    path: Path
    line: int
    was: str
    now: str
    node: int
    change: Change

    def tree(self) -> ast.Module:
        """Return the file's syntax tree with this one wrong in it."""
        made = ast.parse(self.path.read_text(encoding="utf-8"))
        nodes = list(computing(made))
        put(made, nodes[self.node], self.change(nodes[self.node]))
        return ast.fix_missing_locations(made)


def mutants(path: Path) -> Iterator[Mutant]:
    """Yield every wrong that can be done to a file, in the order of its lines."""
    tree = ast.parse(path.read_text(encoding="utf-8"))
    for number, node in enumerate(computing(tree)):
        for change in changes(node):
            made = change(copy.deepcopy(node))
            was, now = ast.unparse(node), ast.unparse(made)
            line = getattr(node, "lineno", 0)
            yield Mutant(path, line, was, now, number, change)


def computing(node: ast.AST) -> Iterator[ast.AST]:
    """Yield the nodes that compute something, annotations and texts left out."""
    for name, held in ast.iter_fields(node):
        if name in {"annotation", "returns", "decorator_list", "type_params", "bases"}:
            continue
        for child in held if isinstance(held, list) else [held]:
            if isinstance(child, ast.AST) and not isinstance(child, LEFT_ALONE):
                yield child
                yield from computing(child)


def put(tree: ast.AST, old: ast.AST, new: ast.AST) -> None:
    """Put a node in the place of another."""
    for parent in ast.walk(tree):
        for name, held in ast.iter_fields(parent):
            if held is old:
                setattr(parent, name, new)
            elif isinstance(held, list):
                held[:] = [new if child is old else child for child in held]


def changes(node: ast.AST) -> Iterator[Change]:
    """Yield what can be done wrong at one node."""
    if isinstance(node, ast.Compare):
        yield from (_compared(n) for n in range(len(node.ops)))
    elif isinstance(node, ast.BinOp | ast.AugAssign | ast.BoolOp) and type(node.op) in SIGNS:
        yield _signed
    elif isinstance(node, ast.UnaryOp) and isinstance(node.op, ast.Not | ast.USub):
        yield _bare
    elif isinstance(node, ast.If | ast.IfExp | ast.While):
        yield _turned
    elif isinstance(node, ast.Constant):
        yield from _of_constant(node)
    elif _named(node) in NAMES:
        yield _renamed


def _compared(number: int) -> Change:
    def change(node: ast.AST) -> ast.AST:
        assert isinstance(node, ast.Compare)
        node.ops[number] = SIGNS[type(node.ops[number])]()
        return node

    return change


def _signed(node: ast.AST) -> ast.AST:
    assert isinstance(node, ast.BinOp | ast.AugAssign | ast.BoolOp)
    node.op = SIGNS[type(node.op)]()
    return node


def _bare(node: ast.AST) -> ast.AST:
    assert isinstance(node, ast.UnaryOp)
    return node.operand


def _turned(node: ast.AST) -> ast.AST:
    assert isinstance(node, ast.If | ast.IfExp | ast.While)
    node.test = ast.UnaryOp(ast.Not(), node.test)
    return node


def _of_constant(node: ast.Constant) -> Iterator[Change]:
    if isinstance(node.value, bool):
        yield lambda _: ast.Constant(not node.value)
    elif isinstance(node.value, int | float):
        moved = node.value + 1
        yield lambda _: ast.Constant(moved)


def _named(node: ast.AST) -> str:
    if not isinstance(node, ast.Call):
        return ""
    called = node.func
    return called.id if isinstance(called, ast.Name) else getattr(called, "attr", "")


def _renamed(node: ast.AST) -> ast.AST:
    assert isinstance(node, ast.Call)
    other = NAMES[_named(node)]
    if isinstance(node.func, ast.Name):
        node.func.id = other
    else:
        assert isinstance(node.func, ast.Attribute)
        node.func.attr = other
    return node
