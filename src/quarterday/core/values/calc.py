"""Calculations about values on their own: plain values in, plain values and steps out.

Amounts come in as text or whole numbers, never as floats, and go out as text: money with two
decimals, ratios with up to ten. ``steps`` are the sentences a person reads.
"""

from __future__ import annotations

from collections.abc import Mapping
from datetime import date
from decimal import ROUND_HALF_UP, Decimal
from typing import Annotated, Any

from pydantic import Field

from quarterday.core.dates import Quarter, add_years
from quarterday.core.file.records.base import Day, Number, Part
from quarterday.core.given import Unusable, read
from quarterday.core.money import Money
from quarterday.core.reference import IndexRelease, Reference
from quarterday.core.values.coinsurance import Order, settle_partial
from quarterday.core.values.cost import HORIZON, number
from quarterday.core.values.index import SHOWN, Change, Curve, NotCoveredError, spoken
from quarterday.core.words import Rate, Term, Words, words

Done = Mapping[str, Any]
Positive = Annotated[Number, Field(ge=0)]
RATE = "values.projected-index-rate"
TEN_PLACES = Decimal(1).scaleb(-10)
SIX_PLACES = Decimal(1).scaleb(-6)


class CoinsuranceInputs(Part):
    """What ``calc coinsurance`` needs; without ``limit`` the amount carried is the most paid."""

    value: Positive
    required: Annotated[Number, Field(ge=0, le=1)]
    carried: Positive
    loss: Positive
    deductible: Positive = Decimal(0)
    limit: Positive | None = None
    order: Order = "coinsurance-first"


class IndexInputs(Part):
    """What ``calc index-value`` needs: ``geography`` (a province or a series) or ``points``."""

    value: Annotated[Number, Field(gt=0)]
    start: Day = Field(alias="from")
    to: Day
    geography: str | None = None
    points: Mapping[str, Annotated[Number, Field(gt=0)]] | None = Field(None, min_length=1)
    projected_rate: Annotated[Number, Field(gt=-1)] | None = None


def coinsurance(given: Mapping[str, object], _reference: Reference) -> Done:
    """Return ``required_amount``, ``share``, ``paid``, ``borne`` and ``steps``.

    Unusable for an unknown key, a negative amount or a percentage outside 0 to 1.
    """
    inputs = read(CoinsuranceInputs, given)
    done = settle_partial(
        Money(inputs.value),
        inputs.required,
        Money(inputs.carried),
        Money(inputs.loss),
        Money(inputs.deductible),
        None if inputs.limit is None else Money(inputs.limit),
        inputs.order,
    )
    return {
        "required_amount": _cents(done.required_amount),
        "share": _ratio(done.share),
        "paid": _cents(done.paid),
        "borne": _cents(done.borne),
        "steps": done.steps,
    }


def index_value(given: Mapping[str, object], reference: Reference) -> Done:
    """Return ``factor``, ``value``, ``projected``, ``release`` (None for points) and ``steps``.

    The newest release is used. Past its last figure, or that of a series in the reference data,
    costs are projected at ``projected_rate``, else at the dated parameter; own points past their
    last one need the rate. Unusable for an unknown key, geography or quarter, and for a day that
    the index says nothing about.
    """
    inputs = read(IndexInputs, given)
    release = _release(inputs, reference)
    curve = Curve.of(release.points) if release else _curve(inputs)
    rate = _rate(inputs, curve, release, reference)
    change = _change(curve, inputs, rate)
    result = (Money(inputs.value) * change.ratio).rounded()
    caution = _projected(curve, rate) if change.projected and rate is not None else ()
    return {
        "factor": _ratio(change.ratio),
        "value": _cents(result),
        "projected": change.projected,
        "release": _told(release) if release else None,
        "steps": (*_steps(inputs, curve, release, rate, change), *caution),
    }


def _rate(
    inputs: IndexInputs, curve: Curve, release: IndexRelease | None, reference: Reference
) -> Decimal | None:
    """Return the yearly rate to project at: the one given, else the dated one of a release."""
    latest = max(inputs.start, inputs.to)
    if latest <= curve.last:
        return inputs.projected_rate
    _within_horizon(curve, latest, reference)
    if inputs.projected_rate is not None or release is None:
        return inputs.projected_rate
    return number(reference.parameter(RATE, latest))


def _steps(
    inputs: IndexInputs, curve: Curve, release: IndexRelease | None, rate: Decimal | None,
    change: Change,
) -> tuple[Words, ...]:  # fmt: skip
    """Return the levels, the factor and the value moved by it, each in a sentence."""
    place = Term("index", release.geography if release else "given")
    days, value = (inputs.start, inputs.to), Money(inputs.value)
    first, second = (curve.at(day, rate).value.quantize(SHOWN) for day in days)
    factor, result = change.ratio.quantize(SIX_PLACES), (value * change.ratio).rounded()
    levels = {"first": first, "second": second}
    return (
        words("values-step-index", place=place, **levels, start=inputs.start, day=inputs.to),
        words("values-step-factor", **levels, factor=factor),
        words("values-step-indexed", value=value, factor=factor, result=result),
    )


def _projected(curve: Curve, rate: Decimal) -> tuple[Words]:
    last = spoken(curve.quarters[-1])
    return (words("values-caution-projected-index", last=last, rate=Rate(rate)),)


def _release(inputs: IndexInputs, reference: Reference) -> IndexRelease | None:
    """Return the newest release of the geography named, or None where points are given."""
    if (inputs.geography is None) == (inputs.points is None):
        raise Unusable(words("values-calc-one-of"))
    if inputs.geography is None:
        return None
    name = inputs.geography
    province = reference.provinces.get(name.upper())
    key = province.index_geography if province else name.lower()
    if key not in reference.indices:
        known = tuple(sorted(reference.indices))
        raise Unusable(words("values-calc-no-geography", geography=name, known=known))
    return reference.indices[key][-1]


def _curve(inputs: IndexInputs) -> Curve:
    assert inputs.points is not None
    return Curve.of({_quarter(text): level for text, level in inputs.points.items()})


def _quarter(text: str) -> Quarter:
    try:
        return Quarter.parse(text)
    except ValueError as error:
        raise Unusable(words("values-calc-quarter", quarter=text)) from error


def _within_horizon(curve: Curve, day: date, reference: Reference) -> None:
    """Refuse a day too far past the last figure; Unusable says how far is allowed."""
    years = int(number(reference.parameter(HORIZON, day)))
    end = add_years(curve.last, years)
    if day > end:
        last = spoken(curve.quarters[-1])
        raise Unusable(words("values-calc-horizon", last=last, day=day, end=end, years=years))


def _change(curve: Curve, inputs: IndexInputs, rate: Decimal | None) -> Change:
    try:
        return curve.change(inputs.start, inputs.to, rate)
    except NotCoveredError as error:
        first, last = curve.quarters[0], spoken(curve.quarters[-1])
        early = min(inputs.start, inputs.to)
        if early < first.first_day:
            said = words("values-calc-before", first=spoken(first), day=early)
        else:
            said = words("values-calc-no-rate", last=last, day=max(inputs.start, inputs.to))
        raise Unusable(said) from error


def _told(release: IndexRelease) -> dict[str, str]:
    return {
        "geography": release.geography,
        "base": release.base,
        "released_on": release.released_on.isoformat(),
        "last_quarter": str(max(release.points)),
    }


def _cents(money: Money) -> str:
    return f"{money.rounded().amount:.2f}"


def _ratio(ratio: Decimal) -> str:
    return f"{ratio.quantize(TEN_PLACES, rounding=ROUND_HALF_UP).normalize():f}"
