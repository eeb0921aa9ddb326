"""The same pages for an HTML-to-PDF engine: a package's words, tables, fields, charts and codes.

The engine is headless Chromium's own ``page.pdf`` through Playwright, warm. It is given what our
template is given, and asked for tags, the feet of the pages and ``n of m``. It draws fields, but
makes none that can be filled in, and its files claim no standard.
"""

from __future__ import annotations

import os
from collections.abc import Callable, Iterator, Mapping, Sequence
from html import escape
from typing import Any

from tests.browser.chromium import CHROMIUM, FLAGS

Engine = Callable[[str, str], bytes]
WIDE, TALL = 480, 150  # of a chart, in points
STYLE = """
@page { size: letter; margin: 17mm 23mm 23mm }
body { font: 10.4pt/1.3 serif } section { break-before: page }
h1 { font-size: 20pt } h2 { font-size: 12.6pt } h3 { font-size: 10.4pt }
table { width: 100%; border-collapse: collapse; font: 9.2pt sans-serif }
td { border-bottom: .4pt solid #c2cbd2; padding: 3.6pt 4pt }
label { display: inline-block; width: 31%; font: 8.6pt sans-serif } input { width: 90% }
svg text { font: 8pt sans-serif }
p { margin: 3pt 0 } figure { margin: 6pt 0 } h1, h2, h3 { margin: 8pt 0 4pt }
"""


def as_html(data: Mapping[str, Any]) -> str:
    """Return a package as HTML: headings, paragraphs, tables, inputs, charts, codes of forms."""
    house = data["house"]
    body = "".join(_section(paper, house["codes"].get(paper["id"])) for paper in data["papers"])
    return (
        f'<!doctype html><html lang="{house["language"]}"><head><title>{escape(house["title"])}'
        f"</title><style>{STYLE}</style></head><body>{body}</body></html>"
    )


def feet(data: Mapping[str, Any]) -> str:
    """Return what stands at the foot of every page, as Chromium wants it."""
    of = [escape(word) for word in data["house"]["page_words"]]
    return (
        '<div style="font:7.6pt sans-serif;width:100%;margin:0 23mm">'
        f"{'<br>'.join(map(escape, data['house']['footer']))}<span style='float:right'>{of[0]} "
        f"<span class=pageNumber></span> {of[1]} <span class=totalPages></span></span></div>"
    )


def _section(paper: Mapping[str, Any], code: Mapping[str, str] | None) -> str:
    drawn = f'<figure aria-label="{escape(code["text"])}">{code["svg"]}</figure>' if code else ""
    return f"<section>{_html(paper['data'])}{drawn}</section>"


def _html(value: object, name: str = "") -> str:
    if isinstance(value, str):
        tag = {"title": "h1", "heading": "h2"}.get(name, "p")
        return f"<{tag}>{escape(value)}</{tag}>"
    if isinstance(value, Mapping):
        return _mapped(value)
    if isinstance(value, Sequence):
        rows = [_cells(part) for part in value]
        if rows and all(rows):
            return f"<table>{''.join(map(_row, rows))}</table>"
        return "".join(_html(part, name) for part in value)
    is_number = isinstance(value, int | float) and not isinstance(value, bool)
    return f"<p>{value}</p>" if is_number else ""


def _cells(part: object) -> list[object]:
    """Return the cells of a row: of a list, or of a dictionary of texts that is no field."""
    if isinstance(part, list | tuple):
        return list(part)
    texts = isinstance(part, Mapping) and all(isinstance(v, str) for v in part.values())
    return list(part.values()) if isinstance(part, Mapping) and texts else []


def _mapped(value: Mapping[str, Any]) -> str:
    if "alt" in value:
        shapes = "".join(_shapes(value))
        return (
            f'<figure><svg role=img aria-label="{escape(value["alt"])}" width={WIDE}pt '
            f'height={TALL + 20}pt viewBox="-52 -12 {WIDE + 60} {TALL + 32}">{shapes}</svg>'
            "</figure>"
        )
    if "number" in value and "kind" in value:
        label = escape(str(value.get("label", "")))
        return f'<label>{label} <input name="f{value["number"]}"></label>'
    return "".join(_html(part, key) for key, part in value.items())


def _row(cells: Sequence[object]) -> str:
    return f"<tr>{''.join(f'<td>{_html(cell)}</td>' for cell in cells)}</tr>"


def _shapes(chart: Mapping[str, Any]) -> Iterator[str]:
    """Yield the shapes of a chart's definition (``papers/chart.py``), as ``chart.typ`` has them."""
    yield _text(0, -4, chart["title"])
    for tick in chart.get("ticks", ()):
        y = TALL * (1 - tick["at"])
        yield f'<path d="M0 {y}H{WIDE}" stroke="#c2cbd2"/>{_text(-50, y, tick["label"])}'
    for n, bar in enumerate(chart.get("bars", ())):
        slot = WIDE / len(chart["bars"])
        yield _rect(slot * n, 1 - bar["high"], slot * 0.68, bar["high"] - bar["low"])
        yield _text(slot * n, TALL + 10, bar["label"]) + _text(slot * n, 8, bar["figure"])
    for series in chart.get("series", ()):
        points = " ".join(f"{x * WIDE},{TALL * (1 - y)}" for x, y in series["points"])
        yield f'<polyline points="{points}" fill="none" stroke="#17527a"/>'
        yield _text(WIDE - 80, TALL * (1 - series["label_at"]), series["name"])
    for day in chart.get("days", ()):
        yield _text(day["at"] * WIDE, TALL + 10, day["label"])
    for n, row in enumerate(chart.get("rows", ())):
        tall, from_ = 1 / len(chart["rows"]), 0.3
        yield _text(0, TALL * tall * (n + 0.7), row["label"] + " · " + row["note"])
        for part in row["parts"]:
            share = part["share"] * 0.4
            yield _rect(WIDE * from_, tall * n, WIDE * share, tall * 0.8)
            from_ += share


def _rect(x: float, y: float, wide: float, tall: float) -> str:
    return (
        f'<rect x="{x}" y="{y * TALL}" width="{wide}" height="{tall * TALL}" fill="#bcd3e2" '
        'stroke="#16232e"/>'
    )


def _text(x: float, y: float, text: str) -> str:
    return f'<text x="{x}" y="{y}">{escape(text)}</text>'


class Chromium:
    """A warm headless Chromium with one page."""

    def __enter__(self) -> Engine:
        from playwright.sync_api import sync_playwright

        os.environ["DJANGO_ALLOW_ASYNC_UNSAFE"] = "1"  # Playwright runs a loop beside us
        self._playwright = sync_playwright().start()
        self._browser = self._playwright.chromium.launch(executable_path=CHROMIUM, args=FLAGS)
        self._page = self._browser.new_page()
        return self._set

    def _set(self, html: str, foot: str) -> bytes:
        self._page.set_content(html)
        return self._page.pdf(
            prefer_css_page_size=True, tagged=True, display_header_footer=True,
            header_template="<span></span>", footer_template=foot,
        )  # fmt: skip

    def __exit__(self, *_: object) -> None:
        self._browser.close()
        self._playwright.stop()
