"""What losses could cost a file's organisation, and what the whole book teaches about it."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace
from datetime import date
from typing import Any

from quarterday.catalogue.speech import Speech
from quarterday.core.figure import Figure
from quarterday.core.file.fold import File
from quarterday.core.money import Money
from quarterday.core.reference import Reference
from quarterday.core.review.case import Case, NoRenewal
from quarterday.core.risk.choices import DeductibleChoice, OptionRow, deductibles, options
from quarterday.core.risk.figures import Told, told
from quarterday.core.risk.own import RECORD_YEARS, as_record
from quarterday.core.risk.priors import NO_BOOK, Book, OwnRecord, fitted
from quarterday.core.risk.risk import Risk, risk_of
from quarterday.core.values.cost import number
from quarterday.office import plain
from quarterday.store import ledger

FEWEST = "risk.fewest-claims"
Plain = dict[str, Any]


def risk_file(
    id: str, reference: Reference, as_of: date, book: Book = NO_BOOK
) -> tuple[File, Risk]:
    """Return a file and what losses could cost it as seen on a day.

    NoRenewal and NoTerms where the file lacks one; Refused where its terms contradict themselves.
    """
    file = ledger.load(id)
    return file, risk_of(Case(file, reference, as_of), book)


def fit_book(ids: Iterable[str], reference: Reference, as_of: date) -> Book:
    """Return what the records of these files teach; one without a renewal teaches nothing."""
    fewest = int(number(reference.parameter(FEWEST, as_of)))
    return fitted(_records(ids, reference, as_of), fewest)


def _records(ids: Iterable[str], reference: Reference, as_of: date) -> Iterable[OwnRecord]:
    years = int(number(reference.parameter(RECORD_YEARS, as_of)))
    for id in ids:
        try:
            yield as_record(Case(ledger.load(id), reference, as_of), years)
        except NoRenewal:
            continue


def as_plain(risk: Risk, speech: Speech) -> Plain:
    """Return the risk as plain data, spoken: alternatives, options, deductibles, what is left out.

    Figures come without what they were made from; that is asked for one at a time.
    """
    return {
        "file": risk.case.file.id,
        "renewal": risk.case.renewal.isoformat(),
        "as_of": risk.case.as_of.isoformat(),
        "years": risk.comparison.years,
        "alternatives": [_alternative(one, speech) for one in told(risk)],
        "options": [_option(row, speech) for row in options(risk)],
        "deductibles": [_deductible(row, speech) for row in deductibles(risk)],
        "left_out": [speech.say(said) for said in risk.left_out],
    }


def _alternative(one: Told, speech: Speech) -> Plain:
    return {
        "id": one.alternative.id,
        "kind": one.alternative.kind,
        "name": speech.say(one.name),
        "price": _money(one.alternative.price),
        "average": _node(one.mean, speech),
        "one_in_10": _node(one.bad[0], speech),
        "one_in_100": _node(one.bad[1], speech),
    }


def _option(row: OptionRow, speech: Speech) -> Plain:
    return {
        "coverage": row.option.coverage,
        "location": row.option.location,
        "name": speech.say(row.name),
        "state": row.state,
        "price": _money(row.price),
        "average": _node(row.average, speech),
        "one_in_10": _node(row.bad[0] if row.bad else None, speech),
        "one_in_100": _node(row.bad[1] if row.bad else None, speech),
        "why_not": speech.say(row.why_not) if row.why_not else None,
    }


def _deductible(row: DeductibleChoice, speech: Speech) -> Plain:
    return {
        "name": speech.say(row.name),
        "premium": _money(row.premium),
        "kept": _node(row.kept, speech),
        "one_in_100": _node(row.bad, speech),
        "per_loss": _money(row.per_loss),
        "expected_losses": _node(row.expected, speech),
        "break_even": _node(row.break_even, speech),
        "pays": row.pays,
    }


def _node(figure: Figure | None, speech: Speech) -> Plain | None:
    return plain.node(replace(figure, inputs=()), speech) if figure else None


def _money(amount: Money | None) -> object:
    return None if amount is None else plain.value(amount)
