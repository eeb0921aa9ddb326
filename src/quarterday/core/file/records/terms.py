"""One version of one policy period's conditions: coverages, premium table, options."""

from __future__ import annotations

from decimal import Decimal
from typing import ClassVar, Literal, Self

from pydantic import Field, model_validator

from quarterday.core.dates import Period
from quarterday.core.file.records.base import Amount, Count, Day, Line, Number, Part, Record, Slug
from quarterday.core.money import Money

Stage = Literal["requested", "offered", "issued"]
LimitBasis = Literal["per-occurrence", "per-claim", "per-building", "blanket", "aggregate"]
ValuationBasis = Literal["replacement", "actual-cash-value", "functional", "reproduction"]
PercentOf = Literal["loss", "limit", "value"]
Damages = Literal["punitive", "exemplary", "multiplied"]
SettlingOrder = Literal["coinsurance-first", "deductible-first"]
CoinsuranceOf = Literal["whole-income", "less-stopping"]
DeductibleRule = Literal["highest", "each"]
PremiumKind = Literal["premium", "flat", "surcharge", "discount", "fee"]
EVERYWHERE = "*"
PERCENT_DEDUCTIBLE = ("deductible_percent", "deductible_percent_of", "deductible_minimum",
                      "deductible_maximum")  # fmt: skip


class Coverage(Part):
    """One coverage at one location (``*`` for everywhere) as these terms give it."""

    coverage: Slug  # id of the coverage library
    location: Slug = EVERYWHERE
    limit: Amount | None = None
    limit_basis: LimitBasis | None = None
    aggregate: Amount | None = None
    sublimit_of: Slug | None = None
    deductible: Amount | None = None
    deductible_percent: Number | None = None  # a ratio: 0.02 is 2 %
    deductible_percent_of: PercentOf | None = None
    deductible_minimum: Amount | None = None
    deductible_maximum: Amount | None = None
    waiting_hours: Count | None = None
    monthly_limit: Number | None = None  # the most for thirty days, a ratio of the limit
    coinsurance: Number | None = Field(default=None, ge=0, le=1)  # a ratio
    coinsurance_of: CoinsuranceOf | None = None  # of income; None: the terms do not say
    coinsurance_stated_amount: Amount | None = None
    coinsurance_waived_up_to: Amount | None = None  # losses up to this amount are spared
    coinsurance_waived_share: Number | None = None  # the same as a ratio of the amount insured
    settling_order: SettlingOrder | None = None  # None: coinsurance first, the usual print
    agreed_value_until: Day | None = None
    automatic_increase: Number | None = None  # a ratio a year
    basis: ValuationBasis | None = None
    blanket: Slug | None = None  # name of the blanket this belongs to
    margin: Number | None = None  # a ratio of the scheduled value
    in_shared_limit: bool = False
    excluded_causes: tuple[Slug, ...] = ()
    damages: tuple[Damages, ...] | None = None  # None: the terms do not say
    defence: Literal["inside", "outside"] | None = None
    claims_made: bool | None = None
    retroactive_date: Day | None = None
    reporting_days: Count | None = None
    attaches_to: tuple[Slug, ...] | None = None  # umbrella: the coverages it lies over
    qualified: bool | None = None  # abuse: whether the prevention plan was accepted
    wording: Line | None = None  # form and edition

    @property
    def place(self) -> tuple[str, str]:
        """The coverage and location, which match lines of two versions."""
        return self.coverage, self.location

    @property
    def is_coinsured(self) -> bool:
        """Whether a coinsurance clause stands over it: a monthly limit takes the clause's place."""
        clause = bool(self.coinsurance) or self.coinsurance_stated_amount is not None
        return clause and self.monthly_limit is None


class SharedLimit(Part):
    """One extra amount a year that may top up several coverages, in this order."""

    amount: Amount
    tops_up: tuple[Slug, ...]
    meant_for: Literal["owner", "renter"] | None = None


class Premium(Part):
    """One cell of the premium table."""

    coverage: Slug
    location: Slug = EVERYWHERE
    kind: PremiumKind = "premium"
    amount: Amount
    exposure: Amount | None = None
    rate: Number | None = None  # premium for each dollar of exposure
    reason: Line | None = None

    @property
    def line(self) -> tuple[str, str, str]:
        """Coverage, location and kind, which match lines of two versions."""
        return self.coverage, self.location, self.kind


class StatedTotal(Part):
    """A total as the insurer printed it."""

    of: Literal["coverage", "location", "subtotal", "tax", "total"]
    id: Slug = EVERYWHERE  # the coverage or the location
    amount: Amount


class Option(Part):
    """A coverage the insurer would add or change; ``price`` None means: ask.

    A deductible is an amount, or a percentage as a coverage line holds it.
    """

    coverage: Slug
    location: Slug = EVERYWHERE
    limit: Amount | None = None
    deductible: Amount | None = None
    deductible_percent: Number | None = None  # a ratio: 0.02 is 2 %
    deductible_percent_of: PercentOf | None = None
    deductible_minimum: Amount | None = None
    deductible_maximum: Amount | None = None
    price: Amount | None = None


class Terms(Record):
    """One version of one policy period's conditions.

    ``issued`` terms whose period ends on a renewal date are that renewal's expiring terms.
    """

    kind: ClassVar[str] = "terms"

    stage: Stage
    start: Day
    end: Day
    insurer: Line | None = None
    policy_number: Line | None = None
    currency: Slug = "CAD"
    coverages: tuple[Coverage, ...] = ()
    shared_limit: SharedLimit | None = None
    deductible_rule: DeductibleRule | None = None  # of several in one event
    premiums: tuple[Premium, ...] = ()
    totals: tuple[StatedTotal, ...] = ()
    options: tuple[Option, ...] = ()
    rounding: Amount = Decimal("0.01")  # to what the insurer's table rounds
    instalments_available: bool | None = None
    vacancy_days: Count | None = None
    answer_by: Day | None = None

    @model_validator(mode="after")
    def _ends_after_it_starts(self) -> Self:
        if self.end <= self.start:
            raise ValueError("the terms must end after they start")
        return self

    @property
    def key(self) -> str:
        """The first day of the period and the stage."""
        return f"{self.start}/{self.stage}"

    @property
    def period(self) -> Period:
        """The policy period, its last day not included."""
        return Period(self.start, self.end)

    def money(self, amount: Decimal) -> Money:
        """Return ``amount`` in the terms' currency."""
        return Money(amount, self.currency)

    def find(self, coverage: str, location: str = EVERYWHERE) -> Coverage | None:
        """Return the coverage at the location, else the one for everywhere, else None."""
        found = None
        for line in self.coverages:
            if line.coverage == coverage:
                if line.location == location:
                    return line
                if line.location == EVERYWHERE:
                    found = line
        return found
