"""What claims cost beside the premium: the figures of ``quarterday experience``, kept."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from decimal import Decimal
from functools import partial

from quarterday.core.book.adds import CURRENCY, EXPERIENCE
from quarterday.core.book.sums import Experience, Sums, dollars, total
from quarterday.core.claims.experience import CAP
from quarterday.core.file.layout import Cell
from quarterday.core.money import Money
from quarterday.core.values.cost import number
from quarterday.core.words import Rate
from quarterday.office.book.topics.topic import (
    Bar,
    Columns,
    Keys,
    Tell,
    Teller,
    Topic,
    chart,
    money,
    ratio,
    table,
)

CAUSES: Columns = (
    ("cause", "choice"), ("name", "text"), ("files", "integer"), ("claims", "integer"),
    ("incurred", "amount"), ("capped", "amount"), ("share", "ratio"),
)  # fmt: skip
BESIDE: Columns = (
    ("files", "integer"), ("claims", "integer"), ("earned", "amount"), ("incurred", "amount"),
    ("capped", "amount"), ("ratio", "ratio"), ("capped_ratio", "ratio"),
)  # fmt: skip
WATER: Keys = (("borne", "water"), ("paid", "other"))
KEYS: Keys = (("borne", "capped"), ("paid", "left-of-premium"))
WHOLE = 10_000  # of premium, so that small and large can be compared


@dataclass(frozen=True, slots=True)
class By:
    """What lines are told apart by: the topic, its first column, and the catalogue of names."""

    topic: str
    column: str
    catalogue: str = ""


YEARS, CLASSES = By("years", "year"), By("classes", "class", "organisation-class")
INSURERS, PROVINCES = By("insurers", "company"), By("provinces", "province", "province")
Rows = Sequence[tuple[str, Experience]]


def causes(tell: Teller, sums: Sums) -> Topic:
    """Return the claims by cause, the costliest first, and what water did."""
    rows = sorted(sums.causes.items(), key=lambda item: (-item[1].incurred, item[0]))
    whole = total(Experience, sums.causes.values())
    water = tell.speech.reference.water_causes
    message = _water(tell, whole, sum(row.incurred for cause, row in rows if cause in water))
    made = table(tell, "causes", CAUSES, (
        (cause, tell.name("cause", cause), row.files, row.claims, dollars(row.incurred),
         dollars(row.capped), ratio(row.incurred, whole.incurred)) for cause, row in rows
    ))  # fmt: skip
    bars = [_cause_bar(tell, cause, row, is_water=cause in water) for cause, row in rows]
    return Topic(
        "causes", made.title, message, chart(tell, "causes", message, WATER, bars), made,
        ("name", "claims", "incurred", "share"), tuple(_notes(tell, sums, "causes")),
    )  # fmt: skip


def _water(tell: Teller, whole: Experience, water: int) -> str:
    share = ratio(water, whole.incurred)
    if share is None or whole.incurred <= 0:
        return tell.say("book-causes-none")
    return tell.say(
        "book-causes-message", share=Rate(share, 0), claims=whole.claims, years=_years(tell),
        water=money(water), incurred=money(whole.incurred),
    )  # fmt: skip


def _cause_bar(tell: Teller, cause: str, row: Experience, *, is_water: bool) -> Bar:
    note = tell.say("claims-record-counted", count=row.claims, amount=money(row.incurred))
    parts = (row.incurred, 0) if is_water else (0, row.incurred)
    return tell.name("cause", cause), note, parts


def by(what: By) -> Tell:
    """Return what tells claims beside premium by year, class, insurer or province."""
    return partial(_topic, what)


def _topic(what: By, tell: Teller, sums: Sums) -> Topic:
    found: Mapping[str, Experience] = getattr(sums, what.topic)
    rows = sorted(found.items(), key=lambda item: (-item[1].premium, item[0]))
    if what is YEARS:
        rows = sorted(found.items(), reverse=True)
    first: Columns = ((what.column, "integer"),)
    if what is not YEARS:
        first = ((what.column, "choice"), ("name", "text"))
    made = table(tell, what.topic, (*first, *BESIDE), (_row(tell, what, *row) for row in rows))
    message = _message(tell, what, rows)
    bars = list(_bars(tell, what, rows))
    shown = (first[-1][0], "files", "claims", "earned", "capped_ratio")
    return Topic(
        what.topic, made.title, message, chart(tell, what.topic, message, KEYS, bars), made,
        shown, tuple(_notes(tell, sums, "experience")),
    )  # fmt: skip


def _name(tell: Teller, what: By, id: str) -> str:
    if not id:
        return tell.say("experience-unknown")
    return tell.name(what.catalogue, id) if what.catalogue else id


def _row(tell: Teller, what: By, id: str, row: Experience) -> tuple[Cell, ...]:
    first: tuple[Cell, ...] = (int(id),) if what is YEARS else (id, _name(tell, what, id))
    amounts = map(dollars, (row.premium, row.incurred, row.capped))
    shares = (ratio(row.incurred, row.premium), ratio(row.capped, row.premium))
    return (*first, row.files, row.claims, *amounts, *shares)


def _bars(tell: Teller, what: By, rows: Rows) -> Iterator[Bar]:
    """Yield each bar as a share of its own premium."""
    for id, row in rows:
        share = ratio(row.capped, row.premium)
        if share is not None:
            part = int(share * WHOLE)
            note = tell.say("book-experience-bar", share=Rate(share, 0), claims=row.claims)
            yield _name(tell, what, id), note, (part, max(WHOLE - part, 0))


def _years(tell: Teller) -> int:
    return int(number(tell.speech.reference.parameter(EXPERIENCE, tell.as_of)))


def _cap(tell: Teller) -> Money:
    return Money(Decimal(number(tell.speech.reference.parameter(CAP, tell.as_of))), CURRENCY)


def _message(tell: Teller, what: By, rows: Rows) -> str:
    """Return the whole book's ratio, the costliest year, or who has the most premium."""
    if not any(row.premium for _, row in rows):
        return tell.say("book-experience-none")
    if what is CLASSES:
        whole = total(Experience, (row for _, row in rows))
        share = ratio(whole.capped, whole.premium) or Decimal(0)
        return tell.say("book-experience-message", share=Rate(share, 0), years=_years(tell),
                        cap=_cap(tell))  # fmt: skip
    if what is YEARS:
        year, row = max(rows, key=lambda item: (item[1].incurred, item[0]))
        return tell.say("book-years-message", year=year, amount=money(row.incurred), n=row.claims)
    id, row = rows[0]
    return tell.say("book-experience-largest", name=_name(tell, what, id), claims=row.claims,
                    share=Rate(ratio(row.capped, row.premium) or Decimal(0), 0))  # fmt: skip


def _notes(tell: Teller, sums: Sums, what: str) -> Iterator[str]:
    yield tell.say(f"book-{what}-note", cap=_cap(tell))
    left_out = sum(row.no_premium for row in sums.files.values())
    if left_out:
        yield tell.say("experience-left-out-no-premium", n=left_out)
