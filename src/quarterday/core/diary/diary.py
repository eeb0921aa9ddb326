"""What is due around a renewal: from when, by when, and whether it can still be done in time.

Every date is counted back from the renewal by a dated parameter and falls on a business day of the
organisation's province: the first day rolls forwards, the last one backwards. ``latest`` is the
office's own aim; a step that misses it is late. A step is impossible when, begun today and with
every step before it taking its shortest time, it would end after the last business day before the
renewal (or, for the decisions, after the insurer's own last day).
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass
from datetime import date, timedelta
from typing import Literal

from quarterday.core.dates import add_years, next_business_day, previous_business_day
from quarterday.core.figure import Figure, Parameter
from quarterday.core.file.fold import File
from quarterday.core.file.records import (
    Bound,
    Building,
    Decision,
    Delivery,
    FormReturned,
    Interest,
    PaymentChoice,
    PolicyChecked,
    RequestSent,
    ReviewSigned,
)
from quarterday.core.review.case import Case
from quarterday.core.words import Words, words

Who = Literal["broker", "leaders", "insurer"]
STALE_YEARS = "values.stale-years"


@dataclass(frozen=True, slots=True)
class Due:
    """One thing to be done.

    ``earliest`` and ``latest`` are the days between which it is to be done; to meet ``latest`` it
    must be begun by ``start_by``. ``could_end`` is the first day on which it could be done if it
    were begun today. ``figure`` explains ``latest``.
    """

    id: str
    who: Who
    renewal: date
    what: Words
    earliest: date
    latest: date
    start_by: date
    could_end: date
    is_done: bool
    is_late: bool
    is_impossible: bool
    figure: Figure


@dataclass(frozen=True, slots=True)
class Step:
    """A step of the year: who does it, after what, when it applies, and when it is done."""

    id: str
    who: Who
    is_done: Callable[[Case], bool]
    after: tuple[str, ...] = ()
    applies: Callable[[Case], bool] = lambda _: True
    takes_time: bool = False


def _days(case: Case, step: str, what: str) -> Parameter:
    return case.parameter(f"diary.{step}-{what}-days")


def _number(parameter: Parameter) -> int:
    return int(str(parameter.value))


def opens_on(case: Case, step: str) -> date:
    """Return the day from which a step is to be done, before it is moved to a business day."""
    return case.renewal - timedelta(days=_number(_days(case, step, "opens")))


def updates_are_back(case: Case) -> bool:
    """Tell whether the organisation has confirmed what it does, for this renewal."""
    confirmed = case.file.operations.confirmed_on
    returned = (
        form for form in case.file.all(FormReturned)
        if form.renewal == case.renewal and form.form == "operations-form"
    )  # fmt: skip
    return any(returned) or (confirmed is not None and confirmed >= opens_on(case, "updates"))


def _insured_buildings(case: Case) -> Iterator[Building]:
    """Yield the buildings insured now or in the coming term that are not somebody else's."""
    lines = [line for terms in (case.expiring, case.terms) if terms for line in terms.coverages]
    insured = {line.location for line in lines if line.coverage == "building"}
    return (b for b in case.file.buildings if b.id in insured and b.ownership != "rent")


def _valued_on(case: Case, building: Building) -> date:
    """Return when a building was last valued, carrying an earlier value forward left aside."""
    made = (v.valued_on for v in case.file.valuations(building.id) if v.basis != "indexed")
    return max(made, default=date.min)


def _has_stale_valuation(case: Case) -> bool:
    """Tell whether a valuation will be older on the renewal day than the parameter allows."""
    oldest = add_years(case.renewal, -_number(case.parameter(STALE_YEARS)))
    return any(_valued_on(case, building) < oldest for building in _insured_buildings(case))


def _wants_valuation(case: Case) -> bool:
    """Tell whether a building's valuation is too old, or was renewed for this renewal."""
    first_day = opens_on(case, "valuations")
    valued = [_valued_on(case, building) for building in _insured_buildings(case)]
    return _has_stale_valuation(case) or any(day >= first_day for day in valued)


def _is_signed(case: Case) -> bool:
    return case.file.get(ReviewSigned, str(case.renewal)) is not None


def is_delivered(file: File, renewal: date) -> bool:
    """Tell whether a package of a renewal went out and did not come back."""
    sent = (one for one in file.all(Delivery) if one.renewal == renewal)
    return any(one.came_back_on is None for one in sent)


def was_asked(file: File, renewal: date) -> bool:
    """Tell whether a request for a renewal went to the insurer."""
    return any(sent.renewal == renewal for sent in file.all(RequestSent))


def _is_decided(case: Case) -> bool:
    answers = [d.answer for d in case.file.all(Decision) if d.renewal == case.renewal]
    return bool(answers) and all(answer in {"take-it", "leave-it"} for answer in answers)


def _is_paid_for(case: Case) -> bool:
    return case.file.get(PaymentChoice, str(case.renewal)) is not None


def _is_bound(case: Case) -> bool:
    return case.file.get(Bound, str(case.renewal)) is not None or case.issued is not None


STEPS: tuple[Step, ...] = (
    Step("updates", "leaders", updates_are_back, takes_time=True),
    Step(
        "valuations",
        "broker",
        lambda case: not _has_stale_valuation(case),
        applies=_wants_valuation,
        takes_time=True,
    ),
    Step(
        "request",
        "broker",
        lambda case: bool(case.requested or case.offered or was_asked(case.file, case.renewal)),
        after=("updates",),
    ),
    Step(
        "offer",
        "insurer",
        lambda case: case.offered is not None,
        after=("request",),
        takes_time=True,
    ),
    Step("signature", "broker", _is_signed, after=("offer",)),
    Step(
        "delivery",
        "broker",
        lambda case: is_delivered(case.file, case.renewal),
        after=("signature",),
    ),
    Step("decisions", "leaders", _is_decided, after=("delivery",), takes_time=True),
    Step(
        "payment",
        "leaders",
        _is_paid_for,
        after=("delivery",),
        applies=lambda case: case.offered is not None and bool(case.offered.instalments_available),
    ),
    Step("binding", "insurer", _is_bound, after=("decisions",)),
)


_AFTER = ("policy-check", "lender-copies")
FOLLOW_UP = "diary.follow-up-days"
PARAMETERS: tuple[str, ...] = (
    *(f"diary.{step.id}-{what}-days" for step in STEPS for what in ("opens", "due")),
    *(
        f"diary.{s.id}-{what}-days"
        for s in STEPS
        if s.takes_time
        for what in ("shortest", "longest")
    ),
    *(f"diary.{step}-due-days" for step in _AFTER),
    FOLLOW_UP,
    STALE_YEARS,
)
"""Every parameter the diary may use."""


def last_day(case: Case, step: str = "") -> date:
    """Return the last day that helps: the last business day before the renewal.

    For the decisions it is the insurer's own last day when that comes first.
    """
    province = case.file.organisation.province
    day = case.renewal - timedelta(days=1)
    answer_by = case.offered.answer_by if case.offered else None
    if step == "decisions" and answer_by:
        day = min(day, answer_by)
    return previous_business_day(day, province)


def _could_end(case: Case, step: Step, ends: Mapping[str, date]) -> date:
    """Return when a step could be done, begun once those before it could be done."""
    province = case.file.organisation.province
    begin = max(
        [next_business_day(case.as_of, province), *(ends[s] for s in step.after if s in ends)]
    )
    shortest = _number(_days(case, step.id, "shortest")) if step.takes_time else 0
    return next_business_day(begin + timedelta(days=shortest), province)


def _latest(case: Case, step: Step) -> Figure:
    days = _days(case, step.id, "due")
    raw = case.renewal - timedelta(days=_number(days))
    return Figure(
        id=f"diary/{case.renewal}/{step.id}",
        value=previous_business_day(raw, case.file.organisation.province),
        unit="date",
        label=words(f"diary-{step.id}"),
        how=words("diary-how", days=_number(days), renewal=case.renewal),
        inputs=(days, *((_days(case, step.id, "shortest"),) if step.takes_time else ())),
    )


def _due(case: Case, step: Step, could_end: date) -> Due:
    province = case.file.organisation.province
    figure = _latest(case, step)
    latest = figure.value
    assert isinstance(latest, date)
    takes = _number(_days(case, step.id, "longest")) if step.takes_time else 0
    done = step.is_done(case)
    return Due(
        id=step.id,
        who=step.who,
        renewal=case.renewal,
        what=figure.label,
        earliest=next_business_day(opens_on(case, step.id), province),
        latest=latest,
        start_by=previous_business_day(latest - timedelta(days=takes), province),
        could_end=could_end,
        is_done=done,
        is_late=not done and case.as_of > latest,
        is_impossible=not done and could_end > last_day(case, step.id),
        figure=figure,
    )


def diary(case: Case) -> tuple[Due, ...]:
    """Return what is due around the case's renewal, in order of the day by which it is due.

    A step that does not apply (no stale valuation, no instalment plan) is left out. Steps that
    follow the binding of the term that has just begun come from ``follow_up``.
    """
    ends: dict[str, date] = {}
    found = []
    for step in STEPS:
        if not step.applies(case):
            continue
        could_end = _could_end(case, step, ends)
        if not step.is_done(case):
            ends[step.id] = could_end
        found.append(_due(case, step, could_end))
    return tuple(sorted([*found, *follow_up(case)], key=lambda due: (due.latest, due.id)))


def follow_up(case: Case) -> tuple[Due, ...]:
    """Return what is still to do for the term that has just begun; nothing once it is old."""
    begun = case.expiring.start if case.expiring else None
    span = timedelta(days=_number(case.parameter(FOLLOW_UP)))
    if begun is None or not begun <= case.as_of < begun + span:
        return ()
    found = [_after(case, begun, _AFTER[0], is_checked(case, begun))]
    lenders = {i.name for i in case.file.all(Interest) if i.status == "active"}
    if lenders:
        sent = {
            d.to for d in case.file.all(Delivery) if (d.renewal, d.came_back_on) == (begun, None)
        }
        found.append(_after(case, begun, _AFTER[1], lenders <= sent))
    return tuple(found)


def is_checked(case: Case, start: date) -> bool:
    """Tell whether the terms issued from ``start`` were checked as they stand."""
    issued, checked = case.file.terms(start, "issued"), case.file.get(PolicyChecked, str(start))
    if issued is None or checked is None:
        return False
    return checked.seq >= case.file.entry_of(issued).seq


def _after(case: Case, begun: date, step: str, done: bool) -> Due:
    province = case.file.organisation.province
    days = _days(case, step, "due")
    latest = previous_business_day(begun + timedelta(days=_number(days)), province)
    label = words(f"diary-{step}")
    how = words("diary-after-how", days=_number(days), renewal=begun)
    figure = Figure(f"diary/{begun}/{step}", latest, "date", label, how, (days,))
    return Due(
        id=step,
        who="broker",
        renewal=begun,
        what=label,
        earliest=next_business_day(begun, province),
        latest=latest,
        start_by=latest,
        could_end=next_business_day(case.as_of, province),
        is_done=done,
        is_late=not done and case.as_of > latest,
        is_impossible=False,
        figure=figure,
    )
