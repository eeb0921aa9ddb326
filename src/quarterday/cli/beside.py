"""A returned form as one web page: each page's picture beside what it says and today's facts.

The page is whole in itself and runs nothing: pictures are inside it, and whatever came from the
form is written as text.
"""

from __future__ import annotations

from base64 import b64encode
from collections.abc import Iterable, Iterator
from html import escape
from typing import TYPE_CHECKING

from quarterday.cli.screen import Screen
from quarterday.core.words import Term
from quarterday.intake.forms.telling import answered, value

if TYPE_CHECKING:
    from quarterday.intake.forms.proposal import Asked, Proposal
    from quarterday.office.picturing import Beside, Pictured
    from quarterday.office.returning import Reading

STYLE = """
:root{color-scheme:light dark;--ink:#16232e;--page:#fbfcfc;--quiet:#4d5b66;--hair:#c2cbd2;--mark:#b03418}
@media (prefers-color-scheme:dark){:root{--ink:#e6ecf0;--page:#121b22;--quiet:#a9b6c0;--hair:#33424e;--mark:#ff9d80}}
*{box-sizing:border-box}body{margin:0;padding:1rem;font:1rem/1.45 system-ui,sans-serif;color:var(--ink);background:var(--page);overflow-wrap:anywhere}
h1{font-size:1.35rem;margin:0 0 .5rem}h2{font-size:1.1rem;margin:1.5rem 0 .5rem;border-top:1px solid var(--hair);padding-top:.75rem}
.pair{display:grid;grid-template-columns:minmax(0,3fr) minmax(0,2fr);gap:1rem;align-items:start}
img{width:100%;height:auto;border:1px solid var(--hair);background:#fff}ol,ul{list-style:none;margin:0;padding:0}
li{border-bottom:1px solid var(--hair);padding:.5rem 0}li b i{font-style:normal;color:var(--mark);margin-right:.4em}
dl{display:grid;grid-template-columns:max-content 1fr;gap:0 .75rem;margin:.2rem 0}dt{color:var(--quiet)}dd{margin:0;font-variant-numeric:tabular-nums}
code{font-size:.85rem;color:var(--quiet)}.state{font-weight:600}
@media (max-width:50rem){.pair{grid-template-columns:1fr}}
@media print{.pair{break-inside:avoid}}
"""  # noqa: E501 - a style sheet


def sheet(screen: Screen, reading: Reading, beside: Beside) -> str:
    """Return a reading as a web page."""
    say, name = screen.words, reading.looked.name if reading.looked else "–"
    title = say("returns-heading", name=name, file=reading.file, renewal=reading.stamp.renewal)
    notes = (f"<p>{escape(screen.speech.say(note))}</p>" for note in reading.notes)
    parts = [f"<h1>{escape(title)}</h1>", *notes]
    if not reading.proposals:
        parts.append(f"<p>{escape(say('returns-no-changes'))}</p>")
    parts += (_pair(screen, page, _proposals(screen, page.proposals)) for page in beside.pages)
    if beside.nowhere:
        parts.append(f"<h2>{escape(say('cli-beside-nowhere'))}</h2>")
        parts.append(_proposals(screen, beside.nowhere))
    return _page(screen, title, parts)


def entry_sheet(
    screen: Screen, title: str, pages: Iterable[Pictured], asked: Iterable[Asked]
) -> str:
    """Return the pages of a paper that has to be read by eye, beside the questions to answer."""
    listed = "".join(_question(screen, one) for one in asked)
    drawn = "".join(_image(screen, page) for page in pages)
    return _page(screen, title, [
        f"<h1>{escape(title)}</h1>",
        f'<div class="pair"><div>{drawn}</div><ul>{listed}</ul></div>',
    ])  # fmt: skip


def _page(screen: Screen, title: str, parts: Iterable[str]) -> str:
    return (
        f'<!doctype html>\n<html lang="{screen.language}"><head><meta charset="utf-8">'
        '<meta name="viewport" content="width=device-width,initial-scale=1">'
        "<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; "
        "img-src data:; style-src 'unsafe-inline'\">"
        f"<title>{escape(title)}</title><style>{STYLE}</style></head><body><main>"
        + "\n".join(parts) + "</main></body></html>\n"
    )  # fmt: skip


def _pair(screen: Screen, page: Pictured, told: str) -> str:
    head = screen.words("cli-beside-page", page=str(page.page))
    image = _image(screen, page)
    pair = f'<div class="pair"><div>{image}</div>{told}</div>'
    return f"<section><h2>{escape(head)}</h2>{pair}</section>"


def _image(screen: Screen, page: Pictured) -> str:
    if page.png is None:
        return f"<p>{escape(screen.words('cli-beside-undrawn', page=str(page.page)))}</p>"
    numbers = tuple(str(n) for n, _ in page.proposals)
    alt = screen.words("cli-beside-alt", page=str(page.page), numbers=numbers, n=len(numbers))
    data = b64encode(page.png).decode("ascii")
    return f'<img src="data:image/png;base64,{data}" alt="{escape(alt)}">'


def _proposals(screen: Screen, numbered: Iterable[tuple[int, Proposal]]) -> str:
    return f"<ol>{''.join(_proposal(screen, n, one) for n, one in numbered)}</ol>"


def _proposal(screen: Screen, number: int, one: Proposal) -> str:
    rows = "".join(
        f"<dt>{escape(label)}</dt><dd>{escape(text)}</dd>" for label, text in _facts(screen, one)
    )
    return (
        f"<li><b><i>{number}</i>{escape(one.label)}</b><dl>{rows}</dl>"
        f"<code>{escape(one.name)}</code></li>"
    )


def _facts(screen: Screen, one: Proposal) -> Iterator[tuple[str, str]]:
    say = screen.speech.say
    yield screen.words("cli-beside-now"), say(value(one, one.now))
    if one.status == "clash":
        yield screen.words("cli-beside-was"), say(value(one, one.was))
    yield screen.words("cli-beside-said"), say(answered(one))
    yield screen.words("cli-beside-state"), screen.words(f"cli-beside-{one.status}")
    if one.why:
        yield screen.words("cli-beside-why"), say(one.why)


def _question(screen: Screen, asked: Asked) -> str:
    choices = " / ".join(id for id, _ in asked.options if id)
    facts = [(screen.words("cli-beside-form"), screen.speech.say(Term("paper", asked.form)))]
    facts += [(screen.words("cli-beside-printed"), asked.printed or "–")]
    facts += [(screen.words("cli-beside-choices"), choices)] if choices else []
    rows = "".join(f"<dt>{escape(a)}</dt><dd>{escape(b)}</dd>" for a, b in facts)
    return f"<li><b>{escape(asked.label)}</b><dl>{rows}</dl><code>{escape(asked.name)}</code></li>"
