"""What a terminal shows: sentences, tables, trees and JSON, at 80 columns or wider."""

from __future__ import annotations

import json
import sys
from collections.abc import Iterable, Iterator, Sequence
from contextlib import contextmanager
from dataclasses import dataclass
from functools import cached_property
from textwrap import wrap
from typing import Any, Literal, TypeVar

from rich.cells import cell_len
from rich.console import Console
from rich.markup import escape
from rich.progress import (
    BarColumn,
    MofNCompleteColumn,
    Progress,
    TextColumn,
    TimeRemainingColumn,
)
from rich.table import Table
from rich.text import Text

from quarterday.catalogue.speech import Speech
from quarterday.core.reference import Reference
from quarterday.core.words import Arg, Words, words
from quarterday.office.own_data import reference_in_use

T = TypeVar("T")
NARROWEST = 80


@dataclass(frozen=True)
class Screen:
    """Where a command speaks: results to stdout, messages and progress to stderr."""

    language: str

    @cached_property
    def reference(self) -> Reference:
        """The reference data of the place, the brokerage's own on top."""
        return reference_in_use()

    @cached_property
    def speech(self) -> Speech:
        """The voice in the person's language."""
        return Speech(self.reference, self.language)

    @cached_property
    def out(self) -> Console:
        """Results."""
        return _console(sys.stdout)

    @cached_property
    def err(self) -> Console:
        """Messages and progress."""
        return _console(sys.stderr)

    def words(self, id: str, **args: Arg | Words | tuple[Arg | Words, ...]) -> str:
        """Return the sentence ``id`` in the person's language."""
        return self.speech.say(words(id, **args))

    def say(self, id: str, **args: Arg | Words | tuple[Arg | Words, ...]) -> None:
        """Print the sentence ``id`` as a result."""
        self.line(self.words(id, **args))

    def tell(self, id: str, **args: Arg | Words | tuple[Arg | Words, ...]) -> None:
        """Print the sentence ``id`` as a message, beside the results."""
        self.err.print(self.words(id, **args), markup=False, highlight=False)

    def line(self, text: str = "", style: str | None = None, indent: int = 0) -> None:
        """Print a line of the result, wrapped under its own indent."""
        lines = wrap(text, self.out.width - indent, break_on_hyphens=False) or [""]
        for line in lines:
            self.out.print(Text(" " * indent + line if line else "", style=style or ""))

    def json(self, data: Any) -> None:  # noqa: ANN401 - whatever JSON can hold
        """Print ``data`` as JSON."""
        sys.stdout.write(json.dumps(data, ensure_ascii=False, indent=2) + "\n")

    def table(
        self, headings: Sequence[str], rows: Iterable[Sequence[str]], right: str = ""
    ) -> None:
        """Print a table; ``right`` lists the numbers of the columns set to the right ("23")."""
        listed = list(rows)
        gap = 2 if _wide(headings, listed, gap=2) <= self.out.width else 1
        made = Table(box=None, pad_edge=False, header_style="bold", padding=(0, gap, 0, 0))
        for number, heading in enumerate(headings):
            justify: Literal["left", "right"] = "right" if str(number) in right else "left"
            made.add_column(escape(heading), justify=justify, overflow="fold")
        for row in listed:
            made.add_row(*(escape(cell) for cell in row))
        self.out.print(made)

    def progress(self, things: Iterable[T], total: int, id: str) -> Iterator[T]:
        """Yield ``things`` while a bar with an estimate runs on the message side."""
        with self._bar() as bar:
            task = bar.add_task(self.words(id), total=total)
            for thing in things:
                yield thing
                bar.advance(task)

    @contextmanager
    def _bar(self) -> Iterator[Progress]:
        columns = (
            TextColumn("{task.description}"), BarColumn(), MofNCompleteColumn(),
            TimeRemainingColumn(),
        )  # fmt: skip
        with Progress(*columns, console=self.err, transient=True) as bar:
            yield bar


def _wide(headings: Sequence[str], rows: Sequence[Sequence[str]], gap: int) -> int:
    """Return how wide a table is with every cell on one line."""
    columns = zip(headings, *rows, strict=True)
    return sum(max(map(cell_len, column)) + gap for column in columns) - gap


def _console(stream: Any) -> Console:  # noqa: ANN401 - a text stream
    wide = None if stream.isatty() else NARROWEST
    return Console(file=stream, width=wide, highlight=False, soft_wrap=False)
