"""The index tables: what lists and searches need of each file, made from its entries alone."""

from __future__ import annotations

import unicodedata
from collections.abc import Iterable, Sequence
from decimal import Decimal

from django.db import models

from quarterday.core.file.chain import Head
from quarterday.core.file.fold import File
from quarterday.core.file.records import Building, Organisation, Terms
from quarterday.core.money import round_to
from quarterday.store.bulk import Row, insert, row
from quarterday.store.models import (
    IndexedBuilding,
    IndexedClaim,
    IndexedCoverage,
    IndexedFile,
)

TABLES: tuple[type[models.Model], ...] = (
    IndexedFile,
    IndexedBuilding,
    IndexedClaim,
    IndexedCoverage,
)
_LIGATURES = str.maketrans({"œ": "oe", "æ": "ae", "ø": "o", "ł": "l", "đ": "d"})
_LEFT_OUT = {"Mn", "Me", "Cs"}  # marks, and halves of characters that no database keeps
_LARGEST = Decimal(10) ** 13  # SQLite keeps fifteen digits exactly


Rows = dict[type[models.Model], list[Row]]


def folded(text: str) -> str:
    """Return ``text`` for search and sorting: without accents, capitals or doubled spaces.

    SQLite compares neither ``Érable`` with ``érable`` nor sorts them together; both databases
    compare this.
    """
    for _ in range(2):  # what comes apart may have capitals, and a small letter may come apart
        apart = unicodedata.normalize("NFKD", text.casefold().translate(_LIGATURES))
        text = "".join(c for c in apart if unicodedata.category(c) not in _LEFT_OUT)
    return " ".join(text.casefold().split())


def _fitting(amount: Decimal) -> Decimal | None:
    """Return ``amount``, or None when it is beyond what every database keeps exactly."""
    return amount if abs(amount) < _LARGEST else None


def _premium(terms: Terms | None) -> Decimal | None:
    """Return the premium before tax: the table's sum, else the subtotal the insurer printed."""
    if terms is None:
        return None
    if terms.premiums:
        return _fitting(sum((line.amount for line in terms.premiums), Decimal("0.00")))
    return next((stated.amount for stated in terms.totals if stated.of == "subtotal"), None)


def _renewal_terms(file: File) -> list[Terms]:
    """Return the expiring and the offered terms of the coming renewal, those that there are."""
    if file.get(Organisation) is None or file.renewal is None:
        return []
    found = (file.expiring(file.renewal), file.terms(file.renewal, "offered"))
    return [terms for terms in found if terms is not None]


def _sum_insured(terms: Sequence[Terms], building: str) -> Decimal | None:
    """Return the building's newest limit: it is held at the location of the building's id."""
    for one in reversed(terms):
        for line in one.coverages:
            if line.place == ("building", building) and line.limit is not None:
                return line.limit
    return None


def _file_row(file: File, head: Head, terms: Sequence[Terms]) -> Row:
    who = file.get(Organisation)
    by_stage = {one.stage: one for one in terms}
    names = (who.name, who.known_as, who.named_insured, who.town) if who else ()
    return row(
        IndexedFile,
        file=file.id,
        name=who.name if who else "",
        sort_name=folded(who.name)[:600] if who else "",
        search_text=folded(" ".join(filter(None, (file.id, *names)))),
        province=who.province if who else "",
        organisation_class=who.organisation_class if who else "",
        language=who.language if who else "",
        office=(who.office if who else None) or "",
        broker=(who.broker if who else None) or "",
        registration_number=(who.registration_number if who else None) or "",
        renewal_date=file.renewal if who else None,
        currency=terms[-1].currency if terms else "",
        premium_expiring=_premium(by_stage.get("issued")),
        premium_offered=_premium(by_stage.get("offered")),
        seq=head.seq,
        digest=head.digest,
    )


def _building_row(file: File, building: Building, terms: Sequence[Terms]) -> Row:
    known = file.get(Organisation) is not None
    return row(
        IndexedBuilding,
        file_id=file.id,
        building=building.id,
        name=building.name,
        town=building.town or "",
        province=file.province_of(building) if known else building.province or "",
        ownership=building.ownership,
        construction=building.construction or "",
        year_built=building.year_built,
        area_m2=None if building.area_m2 is None else round_to(building.area_m2),
        sum_insured=_sum_insured(terms, building.id),
    )


def _claim_rows(file: File) -> list[Row]:
    return [
        row(
            IndexedClaim,
            file_id=file.id,
            number=claim.number,
            cause=claim.cause,
            date_of_loss=claim.date_of_loss,
            location=claim.location or "",
            status=claim.status,
            paid=claim.paid,
            outstanding=claim.outstanding,
            incurred=claim.incurred,
        )
        for claim in file.claims
    ]


def _coverage_rows(file: File, terms: Sequence[Terms]) -> list[Row]:
    return [
        row(
            IndexedCoverage,
            file_id=file.id,
            stage=one.stage,
            start=one.start,
            coverage=line.coverage,
            location=line.location,
            limit=line.limit,
            deductible=line.deductible,
        )
        for one in terms
        for line in one.coverages
    ]


def rows(file: File, head: Head) -> Rows:
    """Return the rows of one file, by index table."""
    terms = _renewal_terms(file)
    return {
        IndexedFile: [_file_row(file, head, terms)],
        IndexedBuilding: [_building_row(file, building, terms) for building in file.buildings],
        IndexedClaim: _claim_rows(file),
        IndexedCoverage: _coverage_rows(file, terms),
    }


def replace(found: Iterable[tuple[File, Head]]) -> None:
    """Write the rows of these files in place of the kept ones, in the caller's transaction."""
    made = [(file.id, rows(file, head)) for file, head in found]
    IndexedFile.objects.filter(file__in=[id for id, _ in made]).delete()  # and all that is of them
    for model in TABLES:
        insert(model, (line for _, by_table in made for line in by_table[model]))
