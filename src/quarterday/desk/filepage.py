"""What a file's page says, section by section, in the reader's words."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator, Mapping, Sequence
from decimal import Decimal
from typing import Any

from quarterday.catalogue.speech import Speech
from quarterday.core.figure import Node, walk
from quarterday.core.file.entry import Entry
from quarterday.core.file.records import (
    Authority,
    Decision,
    Delivery,
    EvidenceSent,
    Note,
    PackageSealed,
    PaymentChoice,
    Terms,
)
from quarterday.core.file.records.terms import EVERYWHERE, Coverage
from quarterday.core.money import Money
from quarterday.core.premium.table import PremiumTable
from quarterday.core.review.case import VERSIONS, Version
from quarterday.core.review.finding import Finding
from quarterday.core.terms.option import deductible_said
from quarterday.core.words import Rate, Term, Words, words
from quarterday.office.called import called_told, names_of
from quarterday.office.certifying import holders
from quarterday.office.showing import Shown
from quarterday.papers.building_values import data as building_values
from quarterday.papers.what_changed import data as what_changed
from quarterday.store.reading import entries

Told = dict[str, Any]
Versions = Sequence[tuple[Version, Terms]]
Differences = Mapping[tuple[str, str], list[Told]]
KINDS = ("decide", "send back", "fix", "know")
ANSWERS = ("take-it", "leave-it", "later", "ask-us")
WAYS = ("e-mail", "post", "by hand", "room")


def page(shown: Shown, speech: Speech) -> Told:
    """Return everything the page shows; only who and what when nothing can be reviewed."""
    file = shown.file
    told: Told = {"file": file, "seq": file.seq, "shown": shown, "as_of": shown.as_of}
    if not shown.is_reviewable:
        return told
    return {
        **told,
        "organisation": file.organisation,
        "head": _head(shown),
        "findings": [_finding(f, shown, speech) for f in shown.review.findings if not f.set_aside],
        "aside": [_finding(f, shown, speech) for f in shown.review.findings if f.set_aside],
        "diary": shown.diary,
        "buildings": list(_buildings(shown, speech)),
        "valuations": _valuations(shown),
        "terms": terms(shown, speech),
        "premium": premium(shown, speech),
        "claims": _claims(shown, speech),
        "authorities": _authorities(shown),
        "papers": _papers(shown, speech),
        "notes": [(note, file.entry_of(note)) for note in file.all(Note)][::-1],
        "answers": ANSWERS,
        "ways": WAYS,
    }


def _head(shown: Shown) -> Told:
    change, terms = shown.premium_change, shown.case.terms
    counts: Counter[str] = Counter(f.kind for f in shown.review.findings if f.set_aside is None)
    todo = [due for due in shown.diary if not due.is_done]
    return {
        "state": shown.state,
        "renewal": shown.at_work,
        "stage": "expiring" if terms is shown.case.expiring else terms.stage if terms else None,
        "terms": terms,
        "total": shown.premium_table.total if shown.premium_table else None,
        "change": Rate(change.share) if change else None,
        "signed": shown.signed,
        "found": counts.total(),
        "kinds": [(kind, counts[kind]) for kind in KINDS if counts[kind]],
        "matters": _matters(counts),
        "open": len(todo),
        "next": todo[0] if todo else None,
        "late": sum(due.is_late for due in shown.diary),
        "impossible": sum(due.is_impossible for due in shown.diary),
    }


def _matters(counts: Mapping[str, int]) -> Words:
    """Return what the findings come to: what is to be done, else how much there is to know."""
    todo = [kind for kind in ("decide", "send back", "fix") if counts[kind]] or ["know"]
    said = (words(f"desk-matters-{kind.replace(' ', '-')}", n=counts[kind]) for kind in todo)
    return words("desk-matters-title", what=tuple(said), n=sum(counts.values()))


def _finding(finding: Finding, shown: Shown, speech: Speech) -> Told:
    decided = shown.file.get(Decision, f"{shown.review.renewal}/{finding.id}")
    agenda = [one.id for one in shown.review.agenda]
    return {
        "finding": finding,
        "anchor": anchor(finding.id),
        "by": finding.by if finding.kind == "know" else shown.review.deadline(finding),
        "place": agenda.index(finding.id) + 1 if finding.id in agenda else None,
        "title": speech.say(finding.title),
        "means": speech.say(finding.means),
        "todo": speech.say(finding.todo),
        "reasons": [speech.say(reason) for reason in finding.priority.reasons],
        "evidence": [_evidence(node, speech) for node in finding.evidence],
        "decision": decided,
    }


def anchor(id: str) -> str:
    """Return a finding's id as an address's fragment."""
    return "f-" + "".join(c if c.isascii() and c.isalnum() else "-" for c in id)


def _evidence(node: Node, speech: Speech) -> Told:
    """Return a figure in words; ``deep`` when it was made from others, which are fetched later."""
    return {"id": node.id, "said": speech.parts(node), "deep": bool(getattr(node, "inputs", ()))}


def _buildings(shown: Shown, speech: Speech) -> Iterator[Told]:
    """Yield every building, with its picture, and the leaders' page of it where there is one."""
    pages = {
        page["name"]: page for page in _building_pages(shown)
    }  # fmt: skip
    for building in shown.file.buildings:
        picture = shown.case.pictures.get(building.id)
        figures = picture.figures() if picture else {}
        yield {
            "building": building,
            "picture": picture,
            "page": pages.get(building.id),
            "figures": [_evidence(figure, speech) for figure in figures.values()],
            "caution": picture is not None,
            "origin": _origin(shown.file.entry_of(building), speech),
        }


def _building_pages(shown: Shown) -> Iterator[Told]:
    """Yield the pages that the leaders' paper has of the buildings, each with its building's id."""
    if not shown.case.pictures:
        return
    order = sorted(shown.setting.pictures, key=lambda p: -_short(p))
    for picture, told in zip(order, building_values.data(shown.setting)["buildings"], strict=True):
        yield {"name": picture.building.id, **told}


def _short(picture: Any) -> Decimal:  # noqa: ANN401 - a building's picture
    short = picture.shortfall
    return short.money.amount if short and short.money else Decimal(0)


def _valuations(shown: Shown) -> list[Told]:
    found = [v for b in shown.file.buildings for valued in ("building", "contents", "feature")
             for v in shown.file.valuations(b.id, valued)]  # fmt: skip
    return [{"valuation": v, "name": shown.case.building_name(v.building)} for v in found]


def _origin(entry: Entry, speech: Speech) -> str:
    return speech.origin(entry.origin, entry.recorded_at.date())


def terms(shown: Shown, speech: Speech) -> Told:
    """Return the versions side by side: a row a coverage and place, a column a version."""
    case = shown.case
    versions = [(name, terms) for name in VERSIONS if (terms := case.version(name)) is not None]
    differences = _differences(shown, speech)
    changed = what_changed.data(shown.setting) if case.expiring and case.offered else None
    return {
        "versions": versions,
        "rows": list(_rows(shown, speech, versions, differences)),
        "whole": differences.get(("", ""), []) + differences.get(("", EVERYWHERE), []),
        "changed": changed,
        "all": shown.file.all(Terms),
    }


def _rows(
    shown: Shown, speech: Speech, versions: Versions, differences: Differences
) -> Iterator[Told]:
    """Yield what the versions say of each coverage at each place, as the papers order them."""
    places = dict.fromkeys(line.place for _, terms in versions for line in terms.coverages)
    for coverage, at in sorted(places, key=lambda p: (shown.setting.order(p[0]), p[1])):
        yield {
            "coverage": coverage,
            "name": shown.setting.coverage(coverage),
            "place": None if at == EVERYWHERE else speech.say(shown.case.building_name(at)),
            "cells": [_cell(terms, (coverage, at), speech) for _, terms in versions],
            "changes": differences.get((coverage, at), []),
        }


def _differences(shown: Shown, speech: Speech) -> Differences:
    found: dict[tuple[str, str], list[Told]] = {}
    for difference in shown.case.changes:
        said = {
            "direction": difference.direction,
            "text": speech.say(difference.phrase),
            "more": abs(borne) if (borne := difference.more_borne) else None,
            "is_more": borne is not None and borne.amount > 0,
        }
        found.setdefault((difference.coverage, difference.location), []).append(said)
    return found


def _cell(terms: Terms, place: tuple[str, str], speech: Speech) -> list[Told]:
    """Return what one version says at a place, a line for each of its coverages there."""
    found = []
    for number, line in enumerate(terms.coverages):
        if line.place == place:
            found.append({"number": number, "terms": terms.key, **_limits(line, terms, speech)})
    return found


def _limits(line: Coverage, terms: Terms, speech: Speech) -> Told:
    clauses = []
    if line.coinsurance is not None:
        clauses.append(speech.say(words("desk-coinsurance", share=Rate(line.coinsurance))))
    if line.basis is not None:
        clauses.append(speech.say(Term("settlement-basis", line.basis)))
    return {
        "limit": None if line.limit is None else terms.money(line.limit),
        "deductible": deductible_said(terms, line),
        "clauses": clauses,
    }


def premium(shown: Shown, speech: Speech) -> Told | None:
    """Return the premium table and why it moved; None without a table."""
    summed, change = shown.premium_table, shown.premium_change
    if summed is None:
        return None
    changed = what_changed.data(shown.setting)["premium"] if change else None
    return {
        "table": _table(shown, summed, speech),
        "summed": summed,
        "change": change,
        "changed": changed,
        "effects": [_evidence(f, speech) for f in (change.effects if change else ())],
    }


def _table(shown: Shown, summed: PremiumTable, speech: Speech) -> Told:
    places = sorted(summed.columns, key=lambda place: (place == EVERYWHERE, place))
    order = sorted(summed.rows, key=shown.setting.order)
    return {
        "places": [speech.say(shown.case.building_name(place)) for place in places],
        "rows": [
            {
                "name": shown.setting.coverage(id) if id != EVERYWHERE
                else speech.say(words("money-whole-policy")),
                "cells": [summed.cells.get((id, place)) for place in places],
                "total": summed.rows[id],
            }
            for id in order
        ],
        "totals": [summed.columns[place] for place in places],
    }  # fmt: skip


def premium_figures(shown: Shown) -> Mapping[str, Node]:
    """Return every figure behind the premium and the buildings, by id."""
    change = shown.premium_change if shown.is_reviewable else None
    tops: list[Node] = list(change.figures) if change else []
    for picture in shown.case.pictures.values() if shown.is_reviewable else ():
        tops += picture.figures().values()
    return {node.id: node for top in tops for _, node in walk(top)}


def _claims(shown: Shown, speech: Speech) -> Told:
    claims = sorted(shown.file.claims, key=lambda c: c.date_of_loss, reverse=True)
    rows = [
        {
            "claim": claim,
            "cause": shown.setting.spoken(Term("cause", claim.cause))
            if claim.cause in shown.reference.causes else claim.cause,
            "place": speech.say(shown.case.building_name(claim.location or EVERYWHERE)),
            "paid": Money(claim.paid), "outstanding": Money(claim.outstanding),
            "incurred": Money(claim.incurred),
        }
        for claim in claims
    ]  # fmt: skip
    total = sum((claim.incurred for claim in claims), Decimal(0))
    by_cause: dict[str, Decimal] = {}
    for row in rows:
        cause = str(row["cause"])
        by_cause[cause] = by_cause.get(cause, Decimal(0)) + row["claim"].incurred  # type: ignore[attr-defined]
    most = max(by_cause.values(), default=Decimal(0))
    bars = [
        {"label": cause, "amount": Money(amount), "share": _share(amount, most)}
        for cause, amount in sorted(by_cause.items(), key=lambda pair: -pair[1])
    ]
    return {"rows": rows, "total": Money(total), "bars": bars}


def _share(amount: Decimal, most: Decimal) -> float:
    return max(round(float(amount / most), 4), 0.0) if most else 0.0


def _authorities(shown: Shown) -> list[Told]:
    names = {contact.id: contact.name for contact in shown.file.contacts}
    return [
        {"authority": a, "name": names.get(a.contact, a.contact)}
        for a in shown.file.all(Authority)
    ]  # fmt: skip


def _papers(shown: Shown, speech: Speech) -> Told:
    deliveries, names = shown.file.all(Delivery), names_of(shown.file, shown.review)
    sent: dict[str, list[Delivery]] = {}
    for delivery in deliveries:
        sent.setdefault(delivery.document, []).append(delivery)
    return {
        "packages": [(p, sent.get(p.document, [])) for p in shown.packages()],
        "sealed": {s.document: s.sealed for s in shown.file.all(PackageSealed)},
        "decisions": [(d, called_told(d, names, speech)) for d in shown.file.all(Decision)],
        "payment": shown.file.get(PaymentChoice, str(shown.review.renewal)),
        "people": [c for c in shown.file.contacts if c.left_on is None],
        "outside": sorted(shown.file.all(EvidenceSent), key=lambda e: e.sent_on, reverse=True),
        "holders": holders(shown.file),
    }


def changed_since(shown: Shown, seen: int) -> tuple[Entry, ...]:
    """Return the entries that somebody added after entry ``seen``."""
    return tuple(entry for entry in entries(shown.file.id) if entry.seq > seen)
