"""The whole book: how far automatic increases stayed behind building costs, by province."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import asdict
from datetime import date
from decimal import Decimal
from textwrap import wrap
from typing import Any
from xml.sax.saxutils import escape

from quarterday.catalogue.speech import Speech
from quarterday.core.file.fold import File
from quarterday.core.money import Money
from quarterday.core.reference import Reference
from quarterday.core.values.book import Book, Line, cases, tally
from quarterday.core.words import Rate, Term, Words, words
from quarterday.papers.chart import Scale
from quarterday.store import ledger

Watch = Callable[[Iterator[File], int], Iterator[File]]
INK, QUIET, HAIR, DEEP, AMBER = "#16232e", "#4d5b66", "#c2cbd2", "#17527a", "#e3a32f"
WIDE, LEFT, RIGHT, TOP, ROW, BAR, FOOT = 860, 210, 210, 152, 58, 18, 34


def of_the_book(reference: Reference, as_of: date, watch: Watch | None = None) -> Book:
    """Return the book's lines as on a day; ``watch`` sees the files go by, and how many there are.

    Files are read a few at a time, whatever the size of the book.
    """
    ids = ledger.files()
    files = ledger.many(ids)
    return tally(cases(watch(files, len(ids)) if watch else files, reference, as_of))


def ordered(book: Book) -> list[tuple[str, Line]]:
    """Return the provinces, the one with the largest gap first."""
    return sorted(book.provinces.items(), key=lambda item: (-item[1].gap, item[0]))


def plain(book: Book) -> dict[str, Any]:
    """Return the book as JSON can hold it: dollars and ratios as text."""
    return {
        "currency": book.currency,
        "provinces": {province: _plain(line) for province, line in ordered(book)},
        "total": _plain(book.total),
        "left_out": book.left_out,
        "no_renewal": book.no_renewal,
    }


def _plain(line: Line) -> dict[str, object]:
    amounts = {k: f"{v:.2f}" if isinstance(v, Decimal) else v for k, v in asdict(line).items()}
    ratios = {"increases": line.increases, "index": line.index, "behind_share": line.behind_share}
    return {
        **amounts,
        "gap": f"{line.gap:.2f}",
        **{name: f"{ratio:.4f}" for name, ratio in ratios.items()},
    }


def sentence(book: Book) -> Words:
    """Return the conclusion: what the chart and the table say."""
    total = book.total
    which = "none" if not total.buildings else "behind" if total.gap > 0 else "ahead"
    return words(
        f"shortfall-{which}",
        buildings=total.buildings,
        behind=total.behind,
        increases=Rate(total.increases),
        index=Rate(total.index),
        gap=book.money(abs(total.gap)),
        share=Rate(abs(total.behind_share)),
        short=book.money(total.short),
    )


def alternative(book: Book, speech: Speech) -> str:
    """Return what the chart shows, in words: a sentence a province."""
    rows = (_row(book, province, line) for province, line in ordered(book))
    return " ".join(map(speech.say, (words("shortfall-alternative"), *rows)))


def _row(book: Book, province: str, line: Line) -> Words:
    return words(
        "shortfall-row",
        province=Term("province", province),
        increases=Rate(line.increases),
        index=Rate(line.index),
        gap=book.money(line.gap),
    )


def svg(book: Book, speech: Speech) -> str:
    """Return the chart as SVG with its text alternative: two bars a province, the gap beside."""
    rows = ordered(book)
    ratios = [ratio for _, line in rows for ratio in (line.increases, line.index)]
    scale = Scale.over([Decimal(0), *ratios])
    height = TOP + ROW * len(rows) + FOOT
    body = [*_head(speech.say(sentence(book))), *_axis(scale, speech, height), *_keys(speech)]
    for number, (province, line) in enumerate(rows):
        body += _bars(_Place(scale, TOP + ROW * number, speech), province, line, book.currency)
    title, told = speech.say(sentence(book)), alternative(book, speech)
    head = (
        f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {WIDE} {height}"'
        f' role="img" aria-labelledby="title told" lang="{speech.language}-CA"'
        ' font-family="Source Sans 3, Source Sans Pro, Segoe UI, sans-serif">'
    )
    return "\n".join(
        (
            head,
            f'<title id="title">{escape(title)}</title>',
            f'<desc id="told">{escape(told)}</desc>',
            f'<rect width="{WIDE}" height="{height}" fill="#ffffff"/>',
            *body,
            "</svg>",
            "",
        )
    )


class _Place:
    """Where a province's bars stand: the scale across, and the top of its row."""

    def __init__(self, scale: Scale, top: int, speech: Speech) -> None:
        self.scale, self.top, self.speech = scale, top, speech

    def bar(self, value: Decimal, number: int, colour: str) -> Iterator[str]:
        y = self.top + number * (BAR + 4)
        zero, end = (_across(self.scale, ratio) for ratio in (Decimal(0), value))
        left, wide = min(zero, end), abs(end - zero)
        yield f'<rect x="{left:g}" y="{y}" width="{wide:g}" height="{BAR}" fill="{colour}"/>'
        label = self.speech.rate(Rate(value))
        yield _text(max(zero, end) + 6, y + BAR - 4, label, QUIET)


def _across(scale: Scale, value: Decimal) -> float:
    return round(LEFT + scale.share(value) * (WIDE - LEFT - RIGHT), 1)


def _bars(at: _Place, province: str, line: Line, currency: str) -> Iterator[str]:
    name = at.speech.say(Term("province", province))
    yield _text(LEFT - 12, at.top + BAR - 4, name, INK, "end", 15)
    count = at.speech.say(words("shortfall-buildings", n=line.buildings))
    yield _text(LEFT - 12, at.top + 2 * BAR, count, QUIET, "end")
    yield from at.bar(line.increases, 0, DEEP)
    yield from at.bar(line.index, 1, AMBER)
    gap = at.speech.money(Money(line.gap, currency), cents=False)
    yield _text(WIDE - 12, at.top + BAR + 6, gap, INK, "end", 15)


def _axis(scale: Scale, speech: Speech, height: int) -> Iterator[str]:
    for tick in scale.ticks(lambda value: speech.rate(Rate(value))):
        x = round(LEFT + tick.at * (WIDE - LEFT - RIGHT), 1)
        ends = f'y1="{TOP - 14}" y2="{height - FOOT}"'
        yield f'<line x1="{x:g}" x2="{x:g}" {ends} stroke="{HAIR}" stroke-width="1"/>'
        yield _text(x, height - FOOT + 18, tick.label, QUIET, "middle")


def _head(title: str) -> Iterator[str]:
    for number, text in enumerate(wrap(title, 100)):
        yield _text(12, 28 + 22 * number, text, INK, size=17)


def _keys(speech: Speech) -> Iterator[str]:
    for number, (key, colour) in enumerate((("increases", DEEP), ("index", AMBER))):
        y = TOP - 76 + number * 24
        yield f'<rect x="{LEFT}" y="{y}" width="{BAR}" height="{BAR}" fill="{colour}"/>'
        yield _text(LEFT + BAR + 8, y + BAR - 4, speech.say(words(f"shortfall-key-{key}")), INK)
    yield _text(WIDE - 12, TOP - 62, speech.say(words("shortfall-head-gap")), INK, "end")


def _text(x: float, y: int, text: str, colour: str, anchor: str = "start", size: int = 13) -> str:
    return (
        f'<text x="{x:g}" y="{y}" fill="{colour}" font-size="{size}" text-anchor="{anchor}">'
        f"{escape(text)}</text>"
    )
