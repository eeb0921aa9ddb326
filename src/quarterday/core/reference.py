"""The shape of the reference data of a place: dated, sourced, in both languages.

These are types only; ``quarterday.catalogue`` reads the data from the folder ``reference``.
"""

from __future__ import annotations

from bisect import bisect_right
from collections.abc import Mapping, Sequence
from datetime import date
from decimal import Decimal
from itertools import pairwise
from typing import Annotated, Literal, Self, TypeVar

from pydantic import BaseModel, BeforeValidator, ConfigDict, Field, model_validator

from quarterday.core.dates import Quarter, Roll
from quarterday.core.figure import Parameter, Source, Unit
from quarterday.core.words import Rate, Term, words

LANGUAGES = ("en", "fr")
Family = Literal[
    "property", "crime", "income", "liability", "management", "abuse", "people", "cyber",
    "vehicles", "umbrella",
]  # fmt: skip


def _quarter(value: object) -> object:
    return Quarter.parse(value) if isinstance(value, str) else value


QuarterField = Annotated[Quarter, BeforeValidator(_quarter)]


class Shape(BaseModel):
    """A frozen, validated piece of reference data."""

    model_config = ConfigDict(frozen=True, extra="forbid", arbitrary_types_allowed=True)


class Both(Shape):
    """A text in English and French."""

    en: str = Field(min_length=1)
    fr: str = Field(min_length=1)

    def __getitem__(self, language: str) -> str:
        return self.fr if language == "fr" else self.en


class Cited(Shape):
    """Where a value was read."""

    title: str = Field(min_length=1)
    publisher: str = Field(min_length=1)
    place: str = ""
    link: str = ""
    checked_on: date

    def source(self) -> Source:
        """Return the citation as a figure carries it."""
        return Source(self.title, self.publisher, self.place, self.link, self.checked_on)


class Dated(Shape):
    """A value from a day on, until the next one; ``illustrative`` when nobody published it."""

    since: date
    value: Decimal
    source: Cited
    illustrative: bool = False


D = TypeVar("D", Dated, "DatedSeason")


def _must_rise(id: str, dates: Sequence[date]) -> None:
    if list(dates) != sorted(set(dates)):
        raise ValueError(f"{id}: the dates must rise without repeating")


def _in_force(id: str, values: Sequence[D], day: date) -> D:
    """Return the value in force on ``day``; LookupError before the first date."""
    index = bisect_right([dated.since for dated in values], day)
    if not index:
        raise LookupError(f"{id} has no value on {day}; its first is {values[0].since}.")
    return values[index - 1]


class ParameterSeries(Shape):
    """One parameter: what it is, its unit, its dated values (dates strictly rising)."""

    id: str
    what: Both
    unit: Unit
    values: tuple[Dated, ...] = Field(min_length=1)

    @model_validator(mode="after")
    def _rising(self) -> Self:
        _must_rise(self.id, [dated.since for dated in self.values])
        return self

    def on(self, day: date) -> Parameter:
        """Return the value in force on ``day``; LookupError before the first date."""
        dated = _in_force(self.id, self.values, day)
        return Parameter(
            id=self.id,
            value=Rate(dated.value) if self.unit == "rate" else dated.value,
            unit=self.unit,
            label=words(f"parameter-{self.id.replace('.', '-')}"),
            source=dated.source.source(),
            since=dated.since,
            illustrative=dated.illustrative,
        )


class DatedSeason(Shape):
    """How a year's income falls on its months, from a day on.

    ``shares`` are ratios by month (1 to 12). Months that are not named share the rest evenly, which
    ``rest_source`` answers for; it is ``illustrative`` in any case.
    """

    since: date
    shares: Mapping[int, Annotated[Decimal, Field(ge=0, le=1)]] = Field(default_factory=dict)
    source: Cited
    illustrative: bool = False
    rest_source: Cited | None = None

    @model_validator(mode="after")
    def _a_whole_year(self) -> Self:
        if not set(self.shares) <= set(range(1, 13)):
            raise ValueError("months run from 1 to 12")
        named, whole = sum(self.shares.values(), Decimal(0)), len(self.shares) == len(_MONTHS)
        if named > 1 or (whole and named != 1):
            raise ValueError(f"the shares of the months add up to {named}, not to 1")
        if not whole and self.rest_source is None:
            raise ValueError("months are left out: give rest_source, which answers for the rest")
        return self

    def share(self, month: int) -> Decimal:
        """Return the share of a month (1 to 12)."""
        if month in self.shares:
            return self.shares[month]
        rest = 1 - sum(self.shares.values(), Decimal(0))
        return rest / (len(_MONTHS) - len(self.shares))


_MONTHS = range(1, 13)


class Season(Shape):
    """How one kind of income falls on the months; ``id`` is the kind, or ``kind-class``.

    The second form is for organisations of one class, such as the fees of camps.
    """

    id: str
    what: Both
    values: tuple[DatedSeason, ...] = Field(min_length=1)

    @model_validator(mode="after")
    def _rising(self) -> Self:
        _must_rise(self.id, [dated.since for dated in self.values])
        return self

    def on(self, day: date) -> tuple[Parameter, ...]:
        """Return the shares of January to December in force on ``day``; LookupError before."""
        dated = _in_force(self.id, self.values, day)
        return tuple(self._parameter(dated, month) for month in _MONTHS)

    def _parameter(self, dated: DatedSeason, month: int) -> Parameter:
        rest = dated.rest_source if month not in dated.shares else None
        kind = Term("income-kind", self.id.partition("-")[0])
        return Parameter(
            id=f"season/{self.id}/{month}",
            value=Rate(dated.share(month)),
            unit="rate",
            label=words("income-share-of-month", kind=kind, month=Term("month", str(month))),
            source=(rest or dated.source).source(),
            since=dated.since,
            illustrative=dated.illustrative or rest is not None,
        )


class IndexRelease(Shape):
    """A construction index for one geography as published in one release."""

    geography: str
    base: str  # what equals 100, e.g. "2023"
    released_on: date
    points: Mapping[QuarterField, Decimal]  # quarters without a gap
    source: Cited

    @model_validator(mode="after")
    def _no_gap(self) -> Self:
        quarters = sorted(self.points)
        if any(a.shifted(1) != b for a, b in pairwise(quarters)):
            raise ValueError(f"index {self.geography}: a quarter is missing")
        if any(value <= 0 for value in self.points.values()):
            raise ValueError(f"index {self.geography}: a value is zero or negative")
        return self


class TaxRate(Shape):
    """A premium tax rate: families taxed, from when, and which date it turns on.

    ``turns_on`` says whose date decides the rate: the start of the policy or the day of payment.
    ``families`` None means every family that is not named in ``exempt_families``.
    """

    since: date
    rate: Decimal
    turns_on: Literal["policy-start", "payment-date"]
    exempt_families: tuple[Family, ...] = ()
    exempt_coverages: tuple[str, ...] = ()
    taxes_fees: bool = False
    source: Cited
    note: Both | None = None


class ProvinceTax(Shape):
    """The tax a province lays on premiums paid by the insured; no rates means none."""

    name: Both | None = None
    rates: tuple[TaxRate, ...] = ()
    source: Cited  # of the statement as a whole, for provinces without a tax too


class Province(Shape):
    """A province or territory: names, index, tax."""

    code: str  # ISO 3166-2 letters
    name: Both
    index_geography: str  # "composite" where the province has no series of its own
    postal_letters: str
    tax: ProvinceTax


class Cause(Shape):
    """A cause of loss."""

    id: str
    name: Both
    party: Literal["first", "third"]
    water: bool = False
    frequency: Dated | None = None  # claims a year of an average organisation
    mean_severity: Dated | None = None  # of one claim, in dollars
    tips: tuple[Both, ...] = Field(default=(), max_length=5)


class Condition(Shape):
    """When a coverage matters to an organisation: one test, or several joined by any / all.

    ``profile`` names a field of the operations profile, ``building`` one of any building,
    ``organisation`` one of the organisation; the tests ``equals``, ``at_least``, ``at_most`` and
    ``one_of`` apply to it, and with none of them it is true when the field is true, above zero or
    not empty. ``one_of`` asks for a text (or an item of a list) in which a word begins with one of
    these; a list that is empty says none.
    """

    profile: str | None = None
    building: str | None = None
    organisation: str | None = None
    equals: str | bool | None = None
    at_least: Decimal | None = None
    at_most: Decimal | None = None
    one_of: tuple[str, ...] | None = None
    any: tuple[Condition, ...] | None = None
    all: tuple[Condition, ...] | None = None
    always: bool | None = None


class CoverageType(Shape):
    """An entry of the coverage library."""

    id: str
    family: Family
    name: Both
    meaning: Both  # one sentence, plain words
    not_covered: Both
    question: Both  # what a board should ask
    needed_when: Condition
    hurts_when: Condition | None = None  # a gap here could break the organisation: told alone
    basis: Literal["per-occurrence", "per-claim", "per-building", "blanket", "aggregate"]
    answers: tuple[str, ...]  # ids of causes
    may_share_limit: bool = False
    safety: bool = False  # harm to people stands behind it: ranks by duty


class InstalmentPlan(Shape):
    """A way of paying a premium over time.

    The deposit (``deposit_amount`` dollars, or ``deposit_rate`` of the premium) is due on the
    first day, with all fees; the rest follows in ``count`` equal payments, ``months_between``
    apart, whole ``unit``s each, the last with the rounding. Charges fall on the payments after the
    deposit: ``charge_flat`` and ``charge_rate`` (of the premium left after the deposit, before tax)
    spread over them, ``charge_each`` on each. ``tax_due``: all with the deposit, or each payment's
    own with it. A due date that is no business day moves as ``roll`` says. ``insurers`` names those
    whose plan it is; without any it is the default, for every insurer that has no plan of its own.
    """

    id: str
    name: Both
    way: Literal["post-dated-cheques", "direct-withdrawal"]
    deposit_amount: Decimal | None = Field(default=None, ge=0)
    deposit_rate: Decimal | None = Field(default=None, ge=0, le=1)
    count: int = Field(ge=1, le=60)
    months_between: int = Field(default=1, ge=1, le=12)
    charge_flat: Decimal = Field(default=Decimal(0), ge=0)
    charge_rate: Decimal = Field(default=Decimal(0), ge=0, le=1)
    charge_each: Decimal = Field(default=Decimal(0), ge=0)
    tax_due: Literal["deposit", "each"] = "each"
    roll: Roll = "forwards"
    unit: Decimal = Field(default=Decimal("0.01"), gt=0)
    source: Cited
    illustrative: bool = False
    insurers: tuple[str, ...] = ()

    @model_validator(mode="after")
    def _one_deposit(self) -> Self:
        if (self.deposit_amount is None) == (self.deposit_rate is None):
            raise ValueError(f"plan {self.id}: give deposit_amount or deposit_rate, and one only")
        return self


class ShortRateStep(Shape):
    """Days in force from ``first`` to ``last`` (both included) and the ratio the insurer keeps."""

    first: int = Field(ge=1)
    last: int
    kept: Decimal = Field(ge=0, le=1)
    source: Cited | None = None  # where it is not the table's own


class ShortRate(Shape):
    """A rule for what an insurer keeps when the insured ends the policy early.

    Either a table for a term of ``term_days`` (steps rising, gaps where nothing was published), or
    ``returned_share``, the ratio of the pro rata return that is paid back.
    """

    id: str
    name: Both
    term_days: int = 365
    steps: tuple[ShortRateStep, ...] = ()
    returned_share: Decimal | None = Field(default=None, ge=0, le=1)
    source: Cited

    @model_validator(mode="after")
    def _table_or_share(self) -> Self:
        if bool(self.steps) == (self.returned_share is not None):
            raise ValueError(f"short rate {self.id}: give steps or returned_share, and one only")
        ends = [day for step in self.steps for day in (step.first, step.last)]
        kept = [step.kept for step in self.steps]
        starts = [step.first for step in self.steps]
        if ends != sorted(ends) or kept != sorted(kept) or len(set(starts)) != len(starts):
            raise ValueError(f"short rate {self.id}: days and ratios must rise")
        return self


class Scale(Shape):
    """How large an amount of a reference loss is.

    ``share`` of what the account has (``of``), within ``least`` and ``most``; ``amount`` dollars
    where that is not known, or where there is no share. Lost income is spread over ``months``.
    """

    of: Literal["building", "contents", "income-month", "giving-week"] | None = None
    share: Decimal | None = Field(default=None, ge=0)
    amount: Decimal | None = Field(default=None, ge=0)
    least: Decimal = Field(default=Decimal(0), ge=0)
    most: Decimal | None = Field(default=None, ge=0)
    months: int = Field(default=1, ge=1, le=36)

    @model_validator(mode="after")
    def _one_size(self) -> Self:
        if (self.of is None) != (self.share is None) or (self.of is None and self.amount is None):
            raise ValueError("an amount needs a share and what it is of, or dollars")
        if self.most is not None and self.most < self.least:
            raise ValueError("the most is below the least")
        return self


class ReferenceLoss(Shape):
    """A loss that terms are tried on, scaled to each account's own values.

    ``at``: the building worth most, one with a basement, or no place. ``fits_when`` leaves it out
    for organisations that cannot meet it, ``where_insured`` for those that no terms on file insure
    with this coverage.
    """

    id: str
    name: Both
    story: Both
    cause: str
    at: Literal["largest", "basement", "anywhere"] = "largest"
    fits_when: Condition | None = None
    where_insured: str | None = None
    amounts: Mapping[str, Scale] = Field(min_length=1)
    source: Cited
    illustrative: bool = False


class Reference(Shape):
    """All reference data of one place."""

    place: str
    provinces: Mapping[str, Province]
    causes: Mapping[str, Cause]
    coverages: Mapping[str, CoverageType]
    parameters: Mapping[str, ParameterSeries]
    indices: Mapping[str, tuple[IndexRelease, ...]]  # by geography, releases oldest first
    seasons: Mapping[str, Season] = Field(default_factory=dict)
    plans: Mapping[str, InstalmentPlan] = Field(default_factory=dict)
    short_rates: Mapping[str, ShortRate] = Field(default_factory=dict)
    losses: Mapping[str, ReferenceLoss] = Field(default_factory=dict)
    own_wordings: str | None = None  # the brokerage's folder, where it has wordings of its own

    def parameter(self, id: str, day: date) -> Parameter:
        """Return parameter ``id`` as in force on ``day``; LookupError when there is none."""
        if id not in self.parameters:
            raise LookupError(f"There is no parameter {id}.")
        return self.parameters[id].on(day)

    def season(self, kind: str, organisation_class: str) -> Season:
        """Return how a kind of income falls on the months for a class of organisation."""
        return self.seasons.get(f"{kind}-{organisation_class}") or self.seasons[kind]

    def index(self, geography: str, as_of: date) -> IndexRelease:
        """Return the newest release of a geography published by ``as_of``."""
        releases = [r for r in self.indices[geography] if r.released_on <= as_of]
        return releases[-1] if releases else self.indices[geography][0]

    @property
    def water_causes(self) -> frozenset[str]:
        """The ids of the causes that count as water."""
        return frozenset(cause.id for cause in self.causes.values() if cause.water)
