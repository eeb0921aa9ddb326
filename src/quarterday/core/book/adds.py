"""What one file adds to the book's sums, as on a day. Amounts of another currency are left out."""

from __future__ import annotations

from collections.abc import Mapping
from datetime import date, timedelta

from quarterday.core.book.sums import (
    Cover,
    Experience,
    Files,
    Offers,
    Stood,
    Sums,
    Values,
    Work,
    cents,
)
from quarterday.core.claims.book import Axis, BookExperience, Line
from quarterday.core.claims.record import currency_of
from quarterday.core.diary.diary import Due, diary
from quarterday.core.file.records import Decision, Organisation, Terms
from quarterday.core.money import total
from quarterday.core.reference import CoverageType
from quarterday.core.review.case import Case
from quarterday.core.review.need import need
from quarterday.core.review.state import renewal_at_work, state
from quarterday.core.terms.answers import questions_of
from quarterday.core.terms.presence import gives
from quarterday.core.values.book import line_of
from quarterday.core.values.cost import number

CURRENCY = "CAD"
EXPERIENCE = "claims.experience-years"
AXIS_TOPICS: Mapping[Axis, str] = {
    "cause": "causes", "year": "years", "class": "classes", "insurer": "insurers",
    "province": "provinces",
}  # fmt: skip
WEEKS = 12  # that are told one by one
LATE, LATER, OTHER = "late", "later", "*"
ANSWERS = {"take-it": "taken", "leave-it": "left", "later": "later", "ask-us": "asked"}


def is_dated(case: Case) -> bool:
    """Tell whether a file says who it is about and when it renews."""
    return case.file.get(Organisation) is not None and case.file.renewal is not None


def adds(case: Case) -> Sums:
    """Return what one file adds to the book."""
    sums = Sums()
    if not is_dated(case):
        sums.count("files", "", Files(1, no_renewal=1))
        sums.count("stood", "gathering", Stood(1))
        return sums
    is_ours = currency_of(case) == CURRENCY
    sums.count("files", "", Files(1, other_currency=int(not is_ours)))
    at_work = renewal_at_work(case)
    steps = [due for due in diary(case) if not due.is_done]
    for due in steps:
        sums.count("work", week_of(due, case.as_of), Work(**{due.who: 1}))
    sums.count("stood", state(case, at_work), _stood(case, steps, is_ours=is_ours))
    _cover(case, sums)
    _offers(case, at_work, sums, is_ours=is_ours)
    _values(case, sums)
    if is_ours:
        _experience(case, sums)
    return sums


def week_of(due: Due, as_of: date) -> str:
    """Return the week in which a step is due: its Monday, ``late``, or ``later`` than twelve."""
    if due.is_late:
        return LATE
    monday = due.latest - timedelta(days=due.latest.weekday())
    first = as_of - timedelta(days=as_of.weekday())
    return LATER if monday >= first + timedelta(weeks=WEEKS) else monday.isoformat()


def _stood(case: Case, steps: list[Due], *, is_ours: bool) -> Stood:
    newest = case.offered or case.expiring
    return Stood(
        files=1,
        late=int(any(due.is_late for due in steps)),
        impossible=int(any(due.is_impossible for due in steps)),
        premium=_premium(newest) if newest and is_ours else 0,
    )


def _premium(terms: Terms) -> int:
    return cents(total((terms.money(line.amount) for line in terms.premiums), CURRENCY).amount)


def _values(case: Case, sums: Sums) -> None:
    for picture in case.pictures.values():
        line = line_of(picture) if picture.terms.currency == CURRENCY else None
        row = Values(left_out=1)
        if line is not None:
            amounts = map(cents, (line.valued, line.grown, line.cost, line.short))
            row = Values(line.buildings, line.behind, 0, *amounts)
        sums.count("values", case.file.province_of(picture.building), row)


def _experience(case: Case, sums: Sums) -> None:
    """Count the file's claims beside its premium, as the book's experience counts them."""
    book = BookExperience(int(number(case.parameter(EXPERIENCE))), CURRENCY)
    book.add(case)
    sums.count("files", "", Files(no_premium=book.no_premium))
    for axis, topic in AXIS_TOPICS.items():
        for key, line in book.lines[axis].items():
            sums.count(topic, key, _line(line))


def _line(line: Line) -> Experience:
    amounts = map(cents, (line.premium, line.incurred, line.capped))
    return Experience(line.files, line.claims, *amounts)


def _offers(case: Case, at_work: date, sums: Sums, *, is_ours: bool) -> None:
    """Count the options that stand beside the offer, and what was answered to each."""
    terms = case.file.terms(at_work, "offered")
    answers = {d.question: d.answer for d in case.file.all(Decision) if d.renewal == at_work}
    for option in terms.options if terms else ():
        questions = questions_of(option)
        found = next((answers[q] for q in questions if q in answers), None)
        price = cents(option.price) if option.price is not None and is_ours else 0
        sums.count("offers", option.coverage, _offer(found, price))
        answers = {q: a for q, a in answers.items() if q not in questions}
    for answer in answers.values():
        sums.count("offers", OTHER, _offer(answer, 0))


def _offer(answer: str | None, price: int) -> Offers:
    counted = {ANSWERS[answer] if answer else "unanswered": 1}
    if answer == "take-it":
        counted["price_taken"] = price
    if answer == "leave-it":
        counted["price_left"] = price
    return Offers(offered=1, price=price, **counted)


def _cover(case: Case, sums: Sums) -> None:
    """Count which coverages the terms in force give, and which the organisation needs."""
    terms = case.expiring or case.offered
    if terms is None:
        return
    for coverage in case.reference.coverages.values():
        sums.count("cover", coverage.id, _covered(case, terms, coverage))


def _covered(case: Case, terms: Terms, coverage: CoverageType) -> Cover:
    wanted = need(coverage.needed_when, case.file).answer
    held, needed = gives(terms, coverage.id), wanted == "yes"
    hurts = coverage.hurts_when if needed and not held else None
    return Cover(
        needed=int(needed),
        held=int(held),
        needed_held=int(needed and held),
        unknown=int(wanted == "unknown"),
        hurting=int(hurts is not None and need(hurts, case.file).answer == "yes"),
    )
