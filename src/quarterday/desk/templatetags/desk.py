"""How templates speak: every sentence is a wording, every value is said in the reader's voice."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import asdict
from datetime import date
from decimal import Decimal
from functools import lru_cache
from typing import Any
from urllib.parse import quote, urlencode

from django import template
from django.template import Context
from django.urls import reverse
from django.utils.html import format_html, format_html_join

from quarterday.catalogue import formats
from quarterday.catalogue.speech import Speech
from quarterday.core.file.layout import Column
from quarterday.core.file.records import Record
from quarterday.core.money import Money
from quarterday.core.premium.instalments import AT_ONCE
from quarterday.core.words import Rate, Term, words
from quarterday.desk import charts
from quarterday.desk.filepage import anchor
from quarterday.intake.labels import choice, field_label
from quarterday.office import access
from quarterday.office.forms import columns, sheet_of
from quarterday.office.showing import house
from quarterday.papers.chart import Stacked

register = template.Library()


def _speech(context: Context) -> Speech:
    speech = context["speech"]
    assert isinstance(speech, Speech)
    return speech


@register.simple_tag(takes_context=True)
def say(context: Context, id: str, **args: Any) -> str:  # noqa: ANN401 - whatever a wording takes
    """Return the wording ``id`` in the reader's language."""
    return _speech(context).say(words(id, **args))


@register.simple_tag(takes_context=True)
def speak(context: Context, what: Any) -> str:  # noqa: ANN401 - anything that can be said
    """Return anything in words; nothing for None."""
    said = "" if what is None else _speech(context).say(what)
    return signed(said) if isinstance(what, Money | Rate) else said


@register.simple_tag(takes_context=True)
def change(context: Context, ratio: Rate) -> str:
    """Return a change with its sign, as wide as the others of its column."""
    return formats.change(ratio, _speech(context).language)


@register.simple_tag(takes_context=True)
def colon(context: Context) -> str:
    """Return a colon and its spaces as the reader's language sets them."""
    return "\u00a0: " if _speech(context).language == "fr" else ": "


@register.filter
def signed(said: str) -> str:
    """Return a figure in words with a minus sign, as wide as a plus, instead of a hyphen."""
    return f"{formats.MINUS}{said[1:]}" if said.startswith("-") else said


@register.simple_tag(takes_context=True)
def name(context: Context, catalogue: str, id: str) -> str:
    """Return the name of a catalogue's entry; the id itself where it has none."""
    speech = _speech(context)
    if not id:
        return ""
    known = {"coverage": speech.reference.coverages, "cause": speech.reference.causes,
             "province": speech.reference.provinces}  # fmt: skip
    if catalogue in known and id not in known[catalogue]:
        return id
    return speech.say(Term(catalogue, id))


@register.filter
def get(held: Any, key: Any) -> Any:  # noqa: ANN401 - a mapping's own types
    """Return what a mapping holds under a key, or a sequence at a place; None when nothing."""
    if isinstance(held, Sequence):
        return held[key] if key < len(held) else None
    return held.get(key) if held is not None else None


@register.filter
def holds(held: Any, kind: str) -> bool:  # noqa: ANN401 - a file's records
    """Tell whether a file holds the one record of a kind."""
    return (kind, "") in held


@register.filter(name="anchor")
def anchored(id: str) -> str:
    """Return a finding's id as an address's fragment."""
    return anchor(id)


@register.filter
def of_language(id: str) -> Term:
    """Return a language's name, to be spoken."""
    return Term("language", id)


@register.filter
def of_paper(id: str) -> Term:
    """Return a paper's name, to be spoken."""
    return Term("paper", id)


@register.simple_tag(takes_context=True)
def diary_step(context: Context, step: str) -> str:
    """Return what a step of the diary is called."""
    return _speech(context).say(words(f"diary-{step}"))


@register.simple_tag(takes_context=True)
def plan_name(context: Context, plan: str) -> str:
    """Return what a way of paying is called."""
    if plan == AT_ONCE or plan not in _speech(context).reference.plans:
        return _speech(context).say(words("payment-at-once")) if plan == AT_ONCE else plan
    return _speech(context).say(Term("plan", plan))


@register.simple_tag(takes_context=True)
def dollars(context: Context, amount: Decimal) -> str:
    """Return an amount in words."""
    return _speech(context).say(Money(amount))


@lru_cache(maxsize=64)
def _form_of(file: str) -> str:
    """Return where a file's facts are edited, which a page asks for hundreds of times."""
    return reverse("edit", args=[file])


@register.simple_tag(takes_context=True)
def edit_link(context: Context, record: Record) -> str:
    """Return the link to a record's form."""
    query = urlencode({"kind": record.kind, "key": record.key})
    address = f"{_form_of(context['file'].id)}?{query}"
    speech = _speech(context)
    what = speech.say(Term("record", record.kind))
    return format_html(
        '<a class="pen" href="{}">{}<span class="hidden"> {} {}</span></a>',
        address, speech.say(words("desk-edit-do")), what, record.key,
    )  # fmt: skip


@lru_cache(maxsize=64)
def _why_of(file: str) -> str:
    return reverse("why", args=[file])


@register.simple_tag(takes_context=True)
def evidence(context: Context, row: Mapping[str, Any]) -> str:
    """Return a figure folded over how it was made; what it was made from is fetched when opened.

    A file's page holds some two hundred: as a template of its own they took a tenth of its time.
    """
    said = row["said"]
    caution = format_html('<p class="how caution">{}</p>', said.caution) if said.caution else ""
    return format_html(
        '<details class="why"><summary><span>{}</span> <strong class="fig">{}</strong></summary>'
        '<p class="how">{}</p>{}{}</details>',
        said.label, signed(said.value), said.how, caution, _deeper(context, row),
    )  # fmt: skip


def _deeper(context: Context, row: Mapping[str, Any]) -> str:
    if not row["deep"]:
        return ""
    address = f"{_why_of(context['file'].id)}?figure={quote(row['id'], safe='')}"
    return format_html(
        '<div class="how" hx-get="{}" hx-trigger="toggle from:closest details once"'
        ' hx-swap="innerHTML"><p><a href="{}">{}<span class="hidden"> {}</span></a></p></div>',
        address, address, say(context, "desk-why"), row["said"].label,
    )  # fmt: skip


@register.simple_tag(takes_context=True)
def record(context: Context, held: Record) -> str:
    """Return a record's known fields as a list of names and values."""
    speech, found = _speech(context), []
    sheet = sheet_of(held.kind)
    for column in columns(sheet) if sheet else ():
        value = getattr(held, column.field, None)
        if value not in (None, "", ()):
            said = speech.say(field_label(column.field, held.kind))
            found.append((said, _field(value, column, held.kind, speech)))
    if not found:
        return speech.say(words("desk-nothing-known"))
    return format_html(
        '<dl class="pairs">{}</dl>',
        format_html_join("", '<dt>{}</dt><dd class="pre">{}</dd>', found),
    )


def _field(value: Any, column: Column, kind: str, speech: Speech) -> str:  # noqa: ANN401 - any field
    if column.field == "office":
        return house().offices.get(value, value)
    if column.kind == "choice":
        return speech.say(choice(kind, column.field, value))
    if column.kind == "amount":
        return speech.say(Money(value))
    if column.refers == "province" and value in speech.reference.provinces:
        return speech.say(Term("province", value))
    if column.field.startswith("year") or column.field.endswith("_year"):
        return str(value)
    return value.isoformat() if isinstance(value, date) else speech.say(value)


@register.simple_tag(takes_context=True)
def lines(context: Context, chart: Mapping[str, Any]) -> str:
    """Return lines over time as a picture."""
    return charts.lines(chart, _speech(context))


YEAR: tuple[tuple[str, access.Act], ...] = (
    ("forms", "edit"), ("ask", "ask"), ("compare", "view"), ("pay", "view"), ("premium", "view"),
    ("send", "deliver"), ("decisions", "record"), ("bind", "bind"), ("check", "check"),
)  # fmt: skip


@register.simple_tag(takes_context=True)
def year_pages(context: Context) -> list[tuple[str, str]]:
    """Return the pages of the year's acts that the reader may open, in its order, with names."""
    office = access.office_of(context["file"])
    speech = _speech(context)
    return [
        (page, speech.say(words(f"desk-year-{page}")))
        for page, act in YEAR
        if access.may(context["person"], act, office)
    ]


@register.simple_tag(takes_context=True)
def paid_bars(context: Context, paid: Sequence[Mapping[str, Any]]) -> str:
    """Return what each version of the terms pays for one loss, beside what is borne."""
    return charts.paid(paid, _speech(context))


@register.simple_tag
def waterfall(chart: Mapping[str, Any], starts: str | None) -> str:
    """Return a waterfall as a picture."""
    return charts.waterfall(chart, starts)


@register.simple_tag(takes_context=True)
def definition(context: Context, chart: Stacked) -> str:
    """Return defined bars in parts as a picture, with its message and numbers in words."""
    return charts.told(asdict(chart), _speech(context))


@register.simple_tag(takes_context=True)
def exported(context: Context, topic: str, kind: str) -> str:
    """Return what a link to a file of a topic's table says."""
    speech = _speech(context)
    named = speech.say(Term("book-kind", kind))
    return speech.say(words("book-export-of", topic=topic, kind=named))


@register.simple_tag
def stacked(chart: Mapping[str, Any]) -> str:
    """Return bars in parts as a picture."""
    return charts.stacked(chart)


@register.simple_tag(takes_context=True)
def bars(context: Context, rows: Sequence[Mapping[str, Any]]) -> str:
    """Return plain bars as a picture."""
    return charts.bars(rows, _speech(context))
