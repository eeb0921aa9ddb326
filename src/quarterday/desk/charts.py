"""The papers' charts on the desk: the same definitions, drawn as SVG without styles of its own.

Words stand in HTML, so that they wrap, grow and are read aloud; only lines and bars are drawn. The
message and the numbers of a picture are its text alternative.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any, NamedTuple

from django.utils.html import format_html, format_html_join
from django.utils.safestring import SafeString

from quarterday.catalogue.speech import Speech
from quarterday.core.words import Term, words

HIGH, TOP, BOTTOM = 220, 10, 44
Chart = Mapping[str, Any]


class Frame(NamedTuple):
    """How wide lines are drawn, and what is left of and right of them; in units of the picture."""

    style: str
    wide: int
    left: int
    right: int

    @property
    def end(self) -> int:
        """Where the lines end and their names begin."""
        return self.wide - self.right

    def x(self, share: float) -> float:
        """Return where a share of the time lies."""
        return round(self.left + share * (self.end - self.left), 1)


PAGE = Frame("lines", 640, 92, 150)
PHONE = Frame("lines small-frame", 320, 76, 14)  # the names of the lines stand above it
LEAST = 62  # units that a word in a picture takes


def _figure(chart: Chart, body: SafeString, note: str | None = None) -> SafeString:
    said = format_html('<p class="quiet">{}</p>', note) if note else SafeString("")
    return format_html(
        '<figure class="chart"><figcaption>{}</figcaption>{}{}</figure>', chart["title"], body, said
    )


def _bar(parts: Sequence[tuple[float, float, str]]) -> SafeString:
    """Return one bar: each part from a share of the width, so wide, in a tone."""
    drawn = format_html_join(
        "",
        '<rect class="t-{}" x="{}" y="1" width="{}" height="10"/>',
        ((tone, round(at * 100, 2), max(round(share * 100, 2), 0.4)) for at, share, tone in parts),
    )
    return format_html(
        '<svg class="bar" viewBox="0 0 100 12" preserveAspectRatio="none" aria-hidden="true" '
        'focusable="false">{}</svg>',
        drawn,
    )


def _rows(rows: Sequence[tuple[str, SafeString, str]]) -> SafeString:
    return format_html(
        '<table class="bars"><tbody>{}</tbody></table>',
        format_html_join(
            "", '<tr><th scope="row">{}</th><td>{}</td><td class="n">{}</td></tr>', rows
        ),
    )


def waterfall(chart: Chart, starts: str | None) -> SafeString:
    """Return steps from one total to another."""
    rows = [
        (bar["label"], _bar([(bar["low"], bar["high"] - bar["low"], bar["tone"])]), bar["figure"])
        for bar in chart["bars"]
    ]
    return _figure(chart, _rows(rows), starts)


def stacked(chart: Chart) -> SafeString:
    """Return bars in parts, with what each tone stands for."""
    return _figure(chart, _parts(chart))


def told(chart: Chart, speech: Speech) -> SafeString:
    """Return bars in parts, and below them the message and the numbers in words."""
    return _figure(chart, format_html("{}{}", _parts(chart), _in_words(chart, speech)))


def _in_words(chart: Chart, speech: Speech) -> SafeString:
    said = speech.say(words("desk-in-words"))
    return format_html("<details><summary>{}</summary><p>{}</p></details>", said, chart["alt"])


def _parts(chart: Chart) -> SafeString:
    rows = []
    for row in chart["rows"]:
        at, parts = 0.0, []
        for part in row["parts"]:
            parts.append((at, part["share"], part["tone"]))
            at += part["share"]
        rows.append((row["label"], _bar(parts), row["note"]))
    keys = format_html_join(
        " ",
        '<li><svg class="key" viewBox="0 0 12 12" aria-hidden="true" focusable="false">'
        '<rect class="t-{}" x="1" y="1" width="10" height="10"/></svg> {}</li>',
        ((key["tone"], key["label"]) for key in chart["keys"]),
    )
    return format_html('<ul class="legend">{}</ul>{}', keys, _rows(rows))


def paid(versions: Sequence[Mapping[str, Any]], speech: Speech) -> SafeString:
    """Return what several versions of the terms pay for one loss and what is borne; or why not."""
    keys = [{"tone": tone, "label": speech.say(words(f"building-values-{tone}"))}
            for tone in ("paid", "borne")]  # fmt: skip
    rows = [
        {"label": speech.say(Term("stage", one["version"])), "note": _paid_note(one, speech),
         "parts": [{"tone": "paid", "share": one["share"]}, {"tone": "borne", "share": one["rest"]}]
         if "done" in one else []}
        for one in versions
    ]  # fmt: skip
    return stacked({"title": speech.say(words("desk-pay-chart")), "keys": keys, "rows": rows})


def _paid_note(one: Mapping[str, Any], speech: Speech) -> str:
    if "done" not in one:
        return str(one["why"])
    done = one["done"]
    said = words("building-values-pays", paid=done.paid.money, borne=done.borne.money)
    return speech.say(said)


def bars(rows: Sequence[Mapping[str, Any]], speech: Speech) -> SafeString:
    """Return claims by cause, the largest first."""
    chart = {"title": speech.say(words("desk-claims-by-cause"))}
    drawn = [
        (row["label"], _bar([(0.0, row["share"], "paid")]), speech.say(row["amount"]))
        for row in rows
    ]
    return _figure(chart, _rows(drawn))


def lines(chart: Chart, speech: Speech) -> SafeString:
    """Return lines over time; what is projected is shaded, and each line is named at its end.

    Drawn twice, as words in a picture do not wrap: for a page and, narrower, for a telephone.
    """
    drawn = format_html(
        "{}{}{}", _drawn(chart, PAGE), _line_keys(chart["series"]), _drawn(chart, PHONE)
    )
    return _figure(chart, format_html("{}{}", drawn, _in_words(chart, speech)))


def _line_keys(series: Sequence[Mapping[str, Any]]) -> SafeString:
    keys = format_html_join(
        " ",
        '<li><svg class="key" viewBox="0 0 24 12" aria-hidden="true" focusable="false">'
        '<polyline class="l-{}" points="0,6 24,6"/></svg> {}</li>',
        ((one["tone"], one["name"]) for one in sorted(series, key=lambda one: one["tone"])),
    )
    return format_html('<ul class="legend small-frame">{}</ul>', keys)


def _drawn(chart: Chart, frame: Frame) -> SafeString:
    projected = chart["projected"]
    return format_html(
        '<svg class="{}" viewBox="0 0 {} {}" role="img" aria-label="{}">{}{}{}{}{}</svg>',
        frame.style,
        frame.wide,
        HIGH,
        chart["alt"],
        _projected(projected, frame) if projected else "",
        format_html_join("", *_ticks(chart["ticks"], frame)),
        format_html_join("", *_days(chart["days"], frame)),
        format_html_join("", *_series(chart["series"], frame)),
        format_html_join("", *_names(chart["series"])) if frame is PAGE else "",
    )


def _y(share: float) -> float:
    return round(TOP + (1 - share) * (HIGH - TOP - BOTTOM), 1)


def _projected(mark: Mapping[str, Any], frame: Frame) -> SafeString:
    at = frame.x(mark["at"])
    has_room = frame.end - at > LEAST
    return format_html(
        '<rect class="shade" x="{}" y="{}" width="{}" height="{}"/>'
        '<text class="small" x="{}" y="{}" text-anchor="{}">{}</text>',
        at,
        TOP,
        round(frame.end - at, 1),
        HIGH - TOP - BOTTOM,
        at + 4 if has_room else frame.end - 4,
        HIGH - BOTTOM - 6,
        "start" if has_room else "end",
        mark["label"],
    )


def _ticks(ticks: Sequence[Mapping[str, Any]], frame: Frame) -> tuple[str, list[tuple[Any, ...]]]:
    form = (
        '<line class="rule" x1="{}" x2="{}" y1="{}" y2="{}"/>'
        '<text class="axis" x="{}" y="{}" text-anchor="end">{}</text>'
    )
    left = frame.left
    return form, [
        (left, frame.end, _y(t["at"]), _y(t["at"]), left - 6, _y(t["at"]) + 4, t["label"])
        for t in ticks
    ]


def _days(days: Sequence[Mapping[str, Any]], frame: Frame) -> tuple[str, list[tuple[Any, ...]]]:
    """Return the marks of the days, their names beside each other."""
    form = (
        '<line class="day" x1="{}" x2="{}" y1="{}" y2="{}"/>'
        '<text class="axis" x="{}" y="{}" text-anchor="{}">{}</text>'
        '<text class="axis" x="{}" y="{}" text-anchor="{}">{}</text>'
    )
    marks = [frame.x(day["at"]) for day in days]
    found = []
    for day, x, after in zip(days, marks, [*marks[1:], float("inf")], strict=True):
        at, end = _named_at(x, after, frame)
        first, _, second = day["label"].partition("\n")
        y = HIGH - BOTTOM + 15
        found.append((x, x, TOP, HIGH - BOTTOM, at, y, end, first, at, y + 14, end, second))
    return form, found


def _named_at(x: float, after: float, frame: Frame) -> tuple[float, str]:
    """Return where the name of a mark stands: around it, or beside it where there is no room."""
    if x - LEAST / 2 < frame.left:
        return x, "start"
    is_last = after > frame.wide
    free = frame.wide if is_last else min(after - LEAST / 2, frame.wide - LEAST)
    return (x, "middle") if x + LEAST / 2 <= free else (free if is_last else min(x, free), "end")


def _series(series: Sequence[Mapping[str, Any]], frame: Frame) -> tuple[str, list[tuple[Any, ...]]]:
    form = '<polyline class="l-{}" points="{}"/>'
    return form, [
        (one["tone"], " ".join(f"{frame.x(x)},{_y(y)}" for x, y in one["points"])) for one in series
    ]


def _names(series: Sequence[Mapping[str, Any]]) -> tuple[str, list[tuple[Any, ...]]]:
    form = '<text class="label" x="{}" y="{}">{}</text>'
    return form, [(PAGE.end + 6, _y(one["label_at"]) + 4, one["name"]) for one in series]
