"""The income worksheet on its own: plain values in, plain values and steps out.

Amounts come in as text or whole numbers, never as floats, and go out as text: money with two
decimals, ratios with up to ten. ``steps`` are the sentences a person reads.
"""

from __future__ import annotations

from collections.abc import Mapping
from datetime import date
from decimal import ROUND_HALF_UP, Decimal
from typing import Annotated, Any

from pydantic import BeforeValidator, Field

from quarterday.core.file.records.base import Number, Part
from quarterday.core.file.records.terms import CoinsuranceOf
from quarterday.core.given import Unusable, read
from quarterday.core.income.published import amount_needed, maximum_coinsurance, paid_by_month
from quarterday.core.income.worksheet import (
    COUNTED,
    YEAR,
    Closure,
    Expense,
    Kept,
    Kind,
    Outage,
    Stream,
    Worksheet,
    counted_part,
)
from quarterday.core.money import CENT, Money
from quarterday.core.reference import Reference
from quarterday.core.values.coinsurance import Settlement, settle_partial
from quarterday.core.words import Rate, Term, Words, words

Done = Mapping[str, Any]
Amount = Annotated[Number, Field(ge=0)]
Share = Annotated[Number, Field(ge=0, le=1)]
SEASONS_OF = date(2026, 1, 1)  # any year: the calculation alone has no day of its own
TEN_PLACES = Decimal(1).scaleb(-10)


def _listed(given: object) -> object:
    return given if isinstance(given, list | tuple) else (given,)


def _even(given: object) -> object:
    return given if isinstance(given, Mapping) else {"first": given, "settled": given}


class KeptInputs(Part):
    """The share of an income kept: ``first``, then in a line to ``settled`` after ``months``."""

    first: Share
    settled: Share
    months: Annotated[int, Field(ge=0, le=60)] = 0


class ExpenseInputs(Part):
    """A yearly expense and the share of it that goes on while closed."""

    yearly: Amount
    continues: Share


Yearly = Annotated[tuple[Amount, ...], BeforeValidator(_listed), Field(min_length=1)]


class IncomeInputs(Part):
    """What ``calc income`` needs.

    ``revenue`` holds, by kind, a year's amount (which falls on the months as the reference data
    says) or the twelve months from January. ``kept`` holds a ratio by kind, or how it recovers.
    ``month`` is that in which the coming term begins. ``coinsurance_of`` says whether the clause
    counts a year's income whole or less the expenses that stop; unsaid, a parameter does.
    """

    revenue: Annotated[Mapping[Kind, Yearly], Field(min_length=1)]
    months: Annotated[int, Field(ge=1, le=60)]
    expenses: Mapping[str, ExpenseInputs] = Field(default_factory=dict)
    kept: Mapping[Kind, Annotated[KeptInputs, BeforeValidator(_even)]] = Field(default_factory=dict)
    growth: Annotated[Number, Field(gt=-1)] = Decimal(0)
    rent_elsewhere: Amount = Decimal(0)
    moving: Amount = Decimal(0)
    month: Annotated[int, Field(ge=1, le=12)] = 1
    limit: Amount | None = None
    coinsurance: Share | None = None
    coinsurance_of: CoinsuranceOf | None = None
    monthly_limit: Share | None = None


def income(given: Mapping[str, object], reference: Reference) -> Done:
    """Return the need, the worst month to begin in, and the months of that closure.

    Also ``starts`` (the loss by month of beginning), ``extra`` (living elsewhere), ``published``
    (what the rules of printed worksheets give), ``settlement`` where a ``limit`` is given, and
    ``steps``. Unusable for an unknown key or kind, a negative amount, or a year that has neither
    one amount nor twelve.
    """
    inputs = read(IncomeInputs, given)
    sheet = _worksheet(inputs, reference)
    worst, year = sheet.worst, _counted(inputs, sheet, reference)
    return {
        "need": _cents(worst.lost),
        "worst_start": worst.start.month,
        "by_month": [_month(worst, n) for n in range(inputs.months)],
        "starts": {str(o.start.month): _cents(o.lost) for o in sheet.outages},
        "extra": _cents(worst.extra),
        "published": _published(sheet, year),
        "settlement": _settlement(inputs, year, worst),
        "steps": (*_steps(inputs, sheet, year, worst), *_limited(inputs, year, worst)),
    }


def _counted(inputs: IncomeInputs, sheet: Worksheet, reference: Reference) -> Money:
    """Return the year's income that a coinsurance clause counts."""
    usual = reference.parameters[COUNTED].values[-1].value
    return sheet.year.counted(counted_part(inputs.coinsurance_of, usual))


def _worksheet(inputs: IncomeInputs, reference: Reference) -> Worksheet:
    return Worksheet(
        streams=tuple(_stream(inputs, kind, reference) for kind in inputs.revenue),
        expenses=tuple(Expense(Money(e.yearly), e.continues) for e in inputs.expenses.values()),
        closure=Closure(
            first=date(SEASONS_OF.year, inputs.month, 1),
            months=inputs.months,
            growth=inputs.growth,
            rent=Money(inputs.rent_elsewhere),
            moving=Money(inputs.moving),
        ),
    )


def _stream(inputs: IncomeInputs, kind: Kind, reference: Reference) -> Stream:
    yearly = inputs.revenue[kind]
    kept = inputs.kept.get(kind) or KeptInputs(first=Decimal(0), settled=Decimal(0))
    curve = Kept(kept.first, kept.settled, kept.months)
    return Stream(kind, Money(sum(yearly, Decimal(0))), _shares(kind, yearly, reference), curve)


def _shares(kind: Kind, yearly: tuple[Decimal, ...], reference: Reference) -> tuple[Decimal, ...]:
    whole = sum(yearly, Decimal(0))
    if len(yearly) == YEAR:
        return tuple(amount / whole if whole else whole for amount in yearly)
    if len(yearly) > 1:
        raise Unusable(
            words("income-calc-months", kind=Term("income-kind", kind), count=len(yearly))
        )
    return tuple(dated.share(month) for dated in reference.seasons[kind].values[-1:]
                 for month in range(1, YEAR + 1))  # fmt: skip


def _month(outage: Outage, number: int) -> dict[str, object]:
    month = outage.months[number]
    return {
        "month": month.first_day.month,
        "income": _cents(month.income),
        "kept": _cents(month.kept),
        "saved": _cents(month.saved),
        "lost": _cents(outage.shown(CENT)[number]),
        "extra": _cents(month.extra),
    }


def _published(sheet: Worksheet, year: Money) -> dict[str, str]:
    months, share = sheet.closure.months, min(Decimal(1), sheet.largest_share())
    return {
        "exposure": _cents(year),
        "maximum_coinsurance": _ratio(maximum_coinsurance(months)),
        "largest_share": _ratio(share),
        "amount": _cents(amount_needed(year, months, share)),
    }


def _settlement(inputs: IncomeInputs, year: Money, worst: Outage) -> dict[str, object] | None:
    if inputs.limit is None:
        return None
    limit, lost = Money(inputs.limit), worst.lost
    done = _settled(inputs, year, worst)
    paid = done.paid
    if inputs.monthly_limit is not None:
        paid = paid_by_month(limit, inputs.monthly_limit, (m.lost for m in worst.months))
    return {
        "required_amount": _cents(done.required_amount),
        "share": _ratio(done.share),
        "paid": _cents(paid),
        "borne": _cents(lost - paid),
        "lasts_months": worst.lasts(limit),
    }


def _settled(inputs: IncomeInputs, year: Money, worst: Outage) -> Settlement:
    """Return what the coinsurance clause pays of the loss; a monthly limit stands in its place."""
    clause = inputs.coinsurance if inputs.monthly_limit is None else None
    assert inputs.limit is not None
    none = worst.lost * 0
    return settle_partial(year, clause or Decimal(0), Money(inputs.limit), worst.lost, none)


def _steps(inputs: IncomeInputs, sheet: Worksheet, year: Money, worst: Outage) -> tuple[Words, ...]:
    start = Term("month", str(worst.start.month))
    income, kept, saved = (
        sum((getattr(month, name) for month in worst.months), worst.extra * 0).rounded()
        for name in ("income", "kept", "saved")
    )
    return (
        words("income-step-exposure", exposure=year.rounded(), case=_counts(inputs, sheet)),
        words("income-step-worst", start=start, months=inputs.months),
        words("income-step-need", income=income, kept=kept, saved=saved, need=worst.lost.rounded()),
        words("income-step-extra", extra=worst.extra.rounded()),
        words("income-step-share", months=inputs.months,
              share=Rate(maximum_coinsurance(inputs.months))),
    )  # fmt: skip


def _counts(inputs: IncomeInputs, sheet: Worksheet) -> str:
    """Return what to say of the expenses that stop: nothing where there are none."""
    if not sheet.year.stops:
        return "none"
    return "unsaid" if inputs.coinsurance_of is None else inputs.coinsurance_of


def _limited(inputs: IncomeInputs, year: Money, worst: Outage) -> tuple[Words, ...]:
    if inputs.limit is None:
        return ()
    limit = Money(inputs.limit)
    said = words("income-step-lasts", limit=limit, lasts=worst.lasts(limit))
    if inputs.monthly_limit is not None:
        most = limit * inputs.monthly_limit
        paid = paid_by_month(limit, inputs.monthly_limit, (m.lost for m in worst.months))
        return said, words("income-step-monthly", most=most, paid=paid)
    return said, *_settled(inputs, year, worst).steps


def _cents(money: Money) -> str:
    return f"{money.rounded().amount:.2f}"


def _ratio(ratio: Decimal) -> str:
    return f"{ratio.quantize(TEN_PLACES, rounding=ROUND_HALF_UP).normalize():f}"
