"""The claims record: whole years back from the renewal, by date of loss, by year and by cause.

A claim stands in the file as the insurer's loss run showed it. Its incurred amount is what it costs
the insurer: net of the deductible. From the ground up it is what the loss came to in all.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import dataclass
from decimal import Decimal

from quarterday.core.claims.counted import counted
from quarterday.core.dates import Period, add_years
from quarterday.core.figure import Fact, Figure, Unit
from quarterday.core.file.fold import File
from quarterday.core.file.records import Claim
from quarterday.core.money import Money, total
from quarterday.core.review.case import Case
from quarterday.core.words import Rate, Term, Words, words


@dataclass(frozen=True, slots=True)
class Sums:
    """Claims counted together: how many, what they cost the insurer, and in all."""

    claims: tuple[Claim, ...]
    incurred: Money
    ground_up: Money

    @property
    def count(self) -> int:
        """The number of claims, those that came to nothing included."""
        return len(self.claims)


@dataclass(frozen=True, slots=True)
class ClaimsYear:
    """One year of the record, counted from one renewal to the next."""

    period: Period
    sums: Sums


@dataclass(frozen=True, slots=True)
class ClaimsRecord:
    """Claims whose date of loss lies in ``period``: newest year first, costliest cause first.

    ``water_share`` is the share of the number of claims that water caused, ``water_cost_share``
    that of their incurred amount; both None where there is nothing to share.
    """

    period: Period
    sums: Sums
    years: tuple[ClaimsYear, ...]
    causes: tuple[tuple[str, Sums], ...]
    water: Sums
    incurred: Figure
    ground_up: Figure
    water_share: Figure | None
    water_cost_share: Figure | None


def window(case: Case, years: int) -> Period:
    """Return the ``years`` whole years before the renewal, the renewal day not included."""
    if years < 1:
        raise ValueError(f"A claims record needs at least one year, not {years}.")
    return Period(add_years(case.renewal, -years), case.renewal)


def claims_in(case: Case, period: Period) -> tuple[Claim, ...]:
    """Return the claims whose date of loss lies in ``period``, oldest first, each event once."""
    found = (claim for claim in counted(case.file.claims) if claim.date_of_loss in period)
    return tuple(sorted(found, key=lambda claim: (claim.date_of_loss, claim.number)))


def currency_of(case: Case) -> str:
    """Return the currency of the account's terms, else Canadian dollars."""
    return case.terms.currency if case.terms else "CAD"


def summed(claims: Iterable[Claim], currency: str) -> Sums:
    """Return claims with their totals."""
    kept = tuple(claims)
    return Sums(
        kept,
        total((Money(claim.incurred, currency) for claim in kept), currency),
        total((Money(claim.ground_up, currency) for claim in kept), currency),
    )


def water_claims(case: Case, years: int) -> tuple[Claim, ...]:
    """Return the water claims of the last ``years`` whole years before the renewal."""
    return _of_water(case, claims_in(case, window(case, years)))


def _of_water(case: Case, claims: Iterable[Claim]) -> tuple[Claim, ...]:
    return tuple(claim for claim in claims if claim.cause in case.reference.water_causes)


def record(case: Case, years: int) -> ClaimsRecord:
    """Return the claims record of the last ``years`` whole years before the renewal."""
    period, currency = window(case, years), currency_of(case)
    claims = claims_in(case, period)
    sums = summed(claims, currency)
    water = summed(_of_water(case, claims), currency)
    figure = _Figures(case.file, period, sums, currency)
    return ClaimsRecord(
        period=period,
        sums=sums,
        years=tuple(_year(case, claims, back, currency) for back in range(1, years + 1)),
        causes=_by_cause(claims, currency),
        water=water,
        incurred=figure.of("claims-incurred", sums.incurred, incurred_figure),
        ground_up=figure.of("claims-ground-up", sums.ground_up, ground_up_figure),
        water_share=figure.share("water-share", water.count, sums.count),
        water_cost_share=figure.share(
            "water-cost-share", water.incurred.amount, sums.incurred.amount
        ),
    )


def _year(case: Case, claims: Iterable[Claim], back: int, currency: str) -> ClaimsYear:
    period = Period(add_years(case.renewal, -back), add_years(case.renewal, 1 - back))
    return ClaimsYear(period, summed((c for c in claims if c.date_of_loss in period), currency))


def _by_cause(claims: tuple[Claim, ...], currency: str) -> tuple[tuple[str, Sums], ...]:
    causes = {claim.cause for claim in claims}
    sums = {cause: summed((c for c in claims if c.cause == cause), currency) for cause in causes}
    return tuple(sorted(sums.items(), key=lambda item: (-item[1].incurred.amount, item[0])))


@dataclass(frozen=True, slots=True)
class _Figures:
    """Makes the figures of one record."""

    file: File
    period: Period
    sums: Sums
    currency: str

    def of(self, id: str, amount: Money, of_one: Callable[[File, Claim, str], Figure]) -> Figure:
        inputs = tuple(of_one(self.file, claim, self.currency) for claim in self.sums.claims)
        return self._made(id, amount, words(f"{id}-how", n=self.sums.count), inputs)

    def share(self, id: str, part: Decimal | int, whole: Decimal | int) -> Figure | None:
        if whole <= 0:
            return None
        inputs = tuple(incurred_figure(self.file, c, self.currency) for c in self.sums.claims)
        how = words(f"claims-{id}-how", n=self.sums.count)
        return self._made(f"claims-{id}", Rate(Decimal(part) / Decimal(whole)), how, inputs)

    def _made(self, id: str, value: Money | Rate, how: Words, inputs: tuple[Figure, ...]) -> Figure:
        label = words(f"{id}-label", start=self.period.start, end=self.period.end)
        unit: Unit = "money" if isinstance(value, Money) else "rate"
        return Figure(f"{id}/{self.period.start}", value, unit, label, how, inputs)


def _facts(file: File, claim: Claim, currency: str) -> tuple[Fact, ...]:
    """Return the amounts of a claim as facts, with its deductible where one is on file."""
    names = ["paid", "outstanding", "recovered"]
    names += ["deductible"] if claim.deductible is not None else []
    return tuple(file.fact(claim, name, "money", currency) for name in names)


def incurred_figure(file: File, claim: Claim, currency: str) -> Figure:
    """Return what one claim costs the insurer."""
    facts = _facts(file, claim, currency)
    return Figure(
        id=f"claim-incurred@{claim.number}",
        value=Money(claim.incurred, currency),
        unit="money",
        label=words("claims-claim-label", cause=Term("cause", claim.cause), day=claim.date_of_loss),
        how=words("claims-claim-how", case="less" if claim.includes_deductible else "as-shown"),
        inputs=facts if claim.includes_deductible else facts[:3],
    )


def ground_up_figure(file: File, claim: Claim, currency: str) -> Figure:
    """Return what one claim came to in all, the deductible included."""
    case = "shown" if claim.includes_deductible else "more"
    unknown = claim.deductible is None and not claim.includes_deductible
    return Figure(
        id=f"claim-ground-up@{claim.number}",
        value=Money(claim.ground_up, currency),
        unit="money",
        label=words(
            "claims-claim-ground-up-label", cause=Term("cause", claim.cause), day=claim.date_of_loss
        ),
        how=words("claims-claim-ground-up-how", case="unknown" if unknown else case),
        inputs=_facts(file, claim, currency),
    )
