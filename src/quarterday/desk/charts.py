"""The papers' charts on the desk: the same definitions, drawn as SVG without styles of its own.

Words stand in HTML, so that they wrap, grow and are read aloud; only lines and bars are drawn. The
message and the numbers of a picture are its text alternative.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any

from django.utils.html import format_html, format_html_join
from django.utils.safestring import SafeString

from quarterday.catalogue.speech import Speech
from quarterday.core.words import Term, words

WIDE, HIGH = 640, 220
LEFT, TOP, RIGHT, BOTTOM = 92, 10, 150, 44
Chart = Mapping[str, Any]


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
    """Return lines over time; what is projected is shaded, and each line is named at its end."""
    projected = chart["projected"]
    drawn = format_html(
        '<svg class="lines" viewBox="0 0 {} {}" role="img" aria-label="{}">{}{}{}{}</svg>',
        WIDE,
        HIGH,
        chart["alt"],
        _projected(projected) if projected else "",
        format_html_join("", *_ticks(chart["ticks"])),
        format_html_join("", *_days(chart["days"])),
        format_html_join("", *_series(chart["series"])),
    )
    body = format_html(
        '<div class="wide" role="group" tabindex="0" aria-label="{}">{}</div>',
        chart["title"],
        drawn,
    )
    return _figure(chart, format_html("{}{}", body, _in_words(chart, speech)))


def _x(share: float) -> float:
    return round(LEFT + share * (WIDE - LEFT - RIGHT), 1)


def _y(share: float) -> float:
    return round(TOP + (1 - share) * (HIGH - TOP - BOTTOM), 1)


def _projected(mark: Mapping[str, Any]) -> SafeString:
    at = _x(mark["at"])
    return format_html(
        '<rect class="shade" x="{}" y="{}" width="{}" height="{}"/>'
        '<text class="small" x="{}" y="{}">{}</text>',
        at,
        TOP,
        round(WIDE - RIGHT - at, 1),
        HIGH - TOP - BOTTOM,
        at + 4,
        HIGH - BOTTOM - 6,
        mark["label"],
    )


def _ticks(ticks: Sequence[Mapping[str, Any]]) -> tuple[str, list[tuple[Any, ...]]]:
    form = (
        '<line class="rule" x1="{}" x2="{}" y1="{}" y2="{}"/>'
        '<text class="axis" x="{}" y="{}" text-anchor="end">{}</text>'
    )
    return form, [
        (LEFT, WIDE - RIGHT, _y(t["at"]), _y(t["at"]), LEFT - 6, _y(t["at"]) + 4, t["label"])
        for t in ticks
    ]


def _days(days: Sequence[Mapping[str, Any]]) -> tuple[str, list[tuple[Any, ...]]]:
    """Return the marks of the days."""
    form = (
        '<line class="day" x1="{}" x2="{}" y1="{}" y2="{}"/>'
        '<text class="axis" x="{}" y="{}" text-anchor="{}">{}</text>'
        '<text class="axis" x="{}" y="{}" text-anchor="{}">{}</text>'
    )
    found = []
    for day in days:
        x, end = _x(day["at"]), "start" if day["at"] < 0.05 else "middle"  # noqa: PLR2004 - a share
        first, _, second = day["label"].partition("\n")
        y = HIGH - BOTTOM + 15
        found.append((x, x, TOP, HIGH - BOTTOM, x, y, end, first, x, y + 14, end, second))
    return form, found


def _series(series: Sequence[Mapping[str, Any]]) -> tuple[str, list[tuple[Any, ...]]]:
    form = '<polyline class="l-{}" points="{}"/><text class="label" x="{}" y="{}">{}</text>'
    return form, [
        (
            one["tone"],
            " ".join(f"{_x(x)},{_y(y)}" for x, y in one["points"]),
            WIDE - RIGHT + 6,
            _y(one["label_at"]) + 4,
            one["name"],
        )
        for one in series
    ]
