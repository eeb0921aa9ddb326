"""Reviews, findings and figures as plain data, spoken in a language, for JSON and terminals.

Money becomes text with two decimals, rates and numbers text, dates ISO 8601.
"""

from __future__ import annotations

from datetime import date
from decimal import Decimal
from typing import TYPE_CHECKING, Any

from quarterday.catalogue.speech import Speech
from quarterday.core.figure import Fact, Figure, Node, Parameter, Source
from quarterday.core.file.entry import Entry, Origin
from quarterday.core.file.fold import File, Held
from quarterday.core.money import Money
from quarterday.core.reference import IndexRelease
from quarterday.core.words import Rate, Term

if TYPE_CHECKING:
    from quarterday.core.review.finding import Finding
    from quarterday.core.review.review import Review

Plain = dict[str, Any]


def value(raw: object) -> object:
    """Return a figure's value as JSON can hold it."""
    if isinstance(raw, Money):
        return f"{raw.rounded().amount:.2f}"
    if isinstance(raw, Rate):
        return f"{raw.value:f}"
    if isinstance(raw, Term):
        return raw.id
    if isinstance(raw, Decimal):
        return f"{raw:f}"
    return raw.isoformat() if isinstance(raw, date) else raw


def origin(said: Origin) -> Plain:
    """Return where a fact came from."""
    return said.model_dump(mode="json", exclude_defaults=True)


def source(cited: Source) -> Plain:
    """Return where a published value was read."""
    checked = cited.checked_on.isoformat() if cited.checked_on else None
    return {
        "title": cited.title, "publisher": cited.publisher, "place": cited.place,
        "link": cited.link, "checked_on": checked,
    }  # fmt: skip


def named(figure: Node, speech: Speech) -> Plain:
    """Return a figure, fact or parameter alone."""
    return {
        "id": figure.id,
        "value": value(figure.value),
        "unit": figure.unit,
        "label": speech.say(figure.label),
        "shown": speech.value(figure.value, figure.unit),
    }


def node(figure: Node, speech: Speech) -> Plain:
    """Return a figure, fact or parameter with everything it was made from."""
    shared = named(figure, speech)
    if isinstance(figure, Fact):
        return {**shared, "origin": origin(figure.origin), "recorded_on": str(figure.recorded_on)}
    if isinstance(figure, Parameter):
        return {
            **shared, "source": source(figure.source), "since": str(figure.since),
            "illustrative": figure.illustrative,
        }  # fmt: skip
    return {**shared, **_made(figure, speech)}


def _made(figure: Figure, speech: Speech) -> Plain:
    return {
        "how": speech.say(figure.how),
        "caution": speech.say(figure.caution) if figure.caution else None,
        "inputs": [node(part, speech) for part in figure.inputs],
    }


def finding(found: Finding, speech: Speech) -> Plain:
    """Return a finding in words with its evidence."""
    at_risk, cost = found.priority.at_risk, found.priority.cost
    return {
        "id": found.id,
        "rule": found.rule,
        "subject": {"kind": found.subject.kind, "key": found.subject.key},
        "kind": found.kind,
        "audience": list(found.audience),
        "title": speech.say(found.title),
        "means": speech.say(found.means),
        "todo": speech.say(found.todo),
        "by": found.by.isoformat() if found.by else None,
        "tier": found.priority.tier.name.lower().replace("_", " "),
        "at_risk": value(at_risk) if at_risk else None,
        "cost": value(cost) if cost is not None else None,
        "reasons": [speech.say(reason) for reason in found.priority.reasons],
        "encloses": list(found.encloses),
        "evidence": [node(part, speech) for part in found.evidence],
        "set_aside": found.set_aside,
    }


def release(used: IndexRelease) -> Plain:
    """Return which index release was used: place, base, day of publication, last quarter."""
    return {
        "geography": used.geography,
        "base": used.base,
        "released_on": used.released_on.isoformat(),
        "last_quarter": str(max(used.points)),
    }


def review(done: Review, speech: Speech) -> Plain:
    """Return a whole review: findings in order, and the ids on the leaders' agenda."""
    return {
        "file": done.file,
        "seq": done.seq,
        "renewal": done.renewal.isoformat(),
        "as_of": done.as_of.isoformat(),
        "findings": [finding(found, speech) for found in done.findings],
        "agenda": [found.id for found in done.agenda],
        "releases": [release(used) for used in done.releases],
    }


def file(known: File) -> Plain:
    """Return what a file holds, record by record, each with where it came from."""
    held = [record(one) for one in known.held.values()]
    return {"file": known.id, "seq": known.seq, "records": held}


def record(held: Held) -> Plain:
    """Return a record of a file without the fields that are not known."""
    return {
        "kind": held.record.kind,
        "key": held.record.key,
        "seq": held.entry.seq,
        "record": held.record.model_dump(mode="json", exclude_none=True),
        "origin": origin(held.entry.origin),
    }


def entry(made: Entry) -> Plain:
    """Return an entry without its salt."""
    return {
        "seq": made.seq,
        "recorded_at": made.recorded_at.isoformat(),
        "by": made.by,
        "act": made.act,
        "kind": made.kind,
        "key": made.key,
        "redacted": made.is_redacted,
        "origin": origin(made.origin),
        "digest": made.digest,
    }
