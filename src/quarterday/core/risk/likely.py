"""How often a cause strikes an organisation and how large its claims are, as figures.

The organisation's own record and what is known of others are weighed by credibility. What is known
of others is fitted to the book, or else a default of the reference data; each figure says which.
"""

from __future__ import annotations

from dataclasses import dataclass, field
from decimal import Decimal

from quarterday.core.claims.record import incurred_figure
from quarterday.core.claims.trend import trended
from quarterday.core.figure import Figure, Node, Parameter, Unit
from quarterday.core.file.records import Claim
from quarterday.core.reference import Cause, Dated
from quarterday.core.review.case import Case
from quarterday.core.risk.credibility import GammaPrior, credible
from quarterday.core.risk.own import RECORD_YEARS, Own, own_record
from quarterday.core.risk.priors import NO_BOOK, Book
from quarterday.core.risk.sampling import exact, shown
from quarterday.core.risk.severity import Lognormal, Pareto, Severity
from quarterday.core.risk.weight import record_weight
from quarterday.core.values.cost import number
from quarterday.core.words import Term, Words, words

PRIOR_YEARS, PRIOR_CLAIMS = "risk.prior-years", "risk.prior-claims"
SPREAD, TAIL = "risk.damage-spread", "risk.liability-tail"
FOUR_PLACES = 4


@dataclass(frozen=True, slots=True)
class Likely:
    """One cause for one organisation: losses a year, their sizes, and the figures of both.

    ``credibility`` is the weight of the own record in the rate (0 to 1). ``expected`` is the part
    of the rate that is not of the own record, ``each`` what one claim on record adds to it.
    """

    cause: str
    expected: float
    each: float
    claims: tuple[Claim, ...]
    severity: Severity
    credibility: float
    rate_figure: Figure
    size_figure: Figure

    @property
    def rate(self) -> float:
        """Losses a year."""
        return self.expected + self.each * len(self.claims)

    def rate_at(self, place: str, share: float) -> float:
        """Return the losses a year at a place that has ``share`` of what can be damaged.

        Claims on record count where they happened, everything else by share: each place has the
        prior's part of its own, so that all places together make ``rate``.
        """
        here = sum(claim.location == place for claim in self.claims)
        anywhere = sum(not claim.location for claim in self.claims)
        return self.expected * share + self.each * (here + anywhere * share)


@dataclass(frozen=True)
class Believed:
    """What is known before one cause's claims are looked at: mean, weight, and the evidence."""

    mean: float
    weight: float
    evidence: tuple[Node, ...]


@dataclass(frozen=True)
class Learner:
    """Weighs an organisation's record against the book, or the defaults where that is thin."""

    case: Case
    currency: str
    book: Book = NO_BOOK
    own: Own = field(init=False)

    def __post_init__(self) -> None:
        years = int(number(self.case.parameter(RECORD_YEARS)))
        object.__setattr__(self, "own", own_record(self.case, years))

    def of(self, cause: Cause) -> Likely | None:
        """Return what is likely of a cause; None where nothing is known of it."""
        rate, size = self._rate(cause), self._size(cause)
        if rate is None or size is None:
            return None
        claims = self.own.of(cause.id)
        sizes = tuple(trended(self.case, claim, self.currency) for claim in claims)
        after = GammaPrior(rate.mean * rate.weight, rate.weight).after(len(claims), self.own.years)
        z = credible(self.own.years, rate.weight)
        mean = _mean_size(size, sizes)
        shape = self.case.parameter(SPREAD if cause.party == "first" else TAIL)
        return Likely(
            cause=cause.id,
            expected=rate.mean * rate.weight / after.years,
            each=1 / after.years,
            claims=claims,
            severity=_severity(cause, mean, float(number(shape))),
            credibility=z,
            rate_figure=self._rate_figure(cause, after.mean, rate, z),
            size_figure=self._size_figure(cause, mean, (*size.evidence, shape, *sizes)),
        )

    def _rate(self, cause: Cause) -> Believed | None:
        fit = self.book.rate(cause.id, self._class)
        if fit is not None:
            told = Figure(
                id=f"risk-book-rate@{cause.id}",
                value=_places(fit.prior.mean),
                unit="ratio",
                label=words("risk-book-rate", cause=Term("cause", cause.id)),
                how=words("risk-how-book-rate", organisations=fit.organisations,
                          claims=fit.claims, years=round(fit.years)),
            )  # fmt: skip
            return Believed(fit.prior.mean, fit.prior.years, (told,))
        if cause.frequency is None:
            return None
        weight = self.case.parameter(PRIOR_YEARS)
        default = _default(cause, "rate", cause.frequency, "ratio")
        return Believed(float(cause.frequency.value), float(number(weight)), (default, weight))

    def _size(self, cause: Cause) -> Believed | None:
        fit = self.book.size(cause.id, self._class)
        if fit is not None:
            told = Figure(
                id=f"risk-book-size@{cause.id}",
                value=shown(exact(fit.mean), self.currency),
                unit="money",
                label=words("risk-book-size", cause=Term("cause", cause.id)),
                how=words("risk-how-book-size", claims=fit.claims),
            )
            return Believed(fit.mean, fit.k, (told,))
        if cause.mean_severity is None:
            return None
        weight = self.case.parameter(PRIOR_CLAIMS)
        default = _default(cause, "size", cause.mean_severity, "money")
        return Believed(float(cause.mean_severity.value), float(number(weight)), (default, weight))

    @property
    def _class(self) -> str:
        return self.case.file.organisation.organisation_class

    def _claims(self, cause: str) -> tuple[Figure, ...]:
        file = self.case.file
        return tuple(incurred_figure(file, claim, self.currency) for claim in self.own.of(cause))

    def _rate_figure(self, cause: Cause, mean: float, known: Believed, z: float) -> Figure:
        return Figure(
            id=f"risk-rate@{cause.id}",
            value=_places(mean),
            unit="ratio",
            label=words("risk-rate", cause=Term("cause", cause.id)),
            how=words("risk-how-rate", claims=len(self.own.of(cause.id)),
                      years=round(Decimal(repr(self.own.years)), 1), weight=record_weight(z)),
            inputs=(*known.evidence, *self._claims(cause.id)),
            caution=rests_on(known.evidence),
        )  # fmt: skip

    def _size_figure(self, cause: Cause, mean: float, inputs: tuple[Node, ...]) -> Figure:
        return Figure(
            id=f"risk-size@{cause.id}",
            value=shown(exact(mean), self.currency),
            unit="money",
            label=words("risk-size", cause=Term("cause", cause.id)),
            how=words("risk-how-size", law="damage" if cause.party == "first" else "liability"),
            inputs=inputs,
            caution=rests_on(inputs),
        )


def _mean_size(known: Believed, of_claims: tuple[Figure, ...]) -> float:
    """Return the mean size, own claims at the prices of the coming term."""
    sizes = [float(cost.money.amount) for cost in of_claims if cost.money.amount > 0]
    if not sizes:
        return known.mean
    z = credible(len(sizes), known.weight)
    return z * sum(sizes) / len(sizes) + (1 - z) * known.mean


def rests_on(inputs: tuple[Node, ...]) -> Words | None:
    """Return the caution for what rests on examples that nobody published; None for none."""
    illustrative = any(isinstance(node, Parameter) and node.illustrative for node in inputs)
    return words("risk-caution-illustrative") if illustrative else None


def _default(cause: Cause, what: str, dated: Dated, unit: Unit) -> Parameter:
    return Parameter(
        id=f"cause.{cause.id}.{what}",
        value=dated.value,
        unit=unit,
        label=words(f"risk-default-{what}", cause=Term("cause", cause.id)),
        source=dated.source.source(),
        since=dated.since,
        illustrative=dated.illustrative,
    )


def _severity(cause: Cause, mean: float, shape: float) -> Severity:
    """Return lognormal sizes for damage, Pareto for what others claim: common practice."""
    return Lognormal.of_mean(mean, shape) if cause.party == "first" else Pareto.of_mean(mean, shape)


def _places(value: float) -> Decimal:
    return round(Decimal(repr(value)), FOUR_PLACES)
