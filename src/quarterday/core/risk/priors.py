"""What a book of organisations teaches about one of them: how often, and how large.

Numbers of claims are Poisson, and their rates differ between organisations as a gamma does; sizes
follow Bühlmann and Straub. A cause that a class of organisations met too seldom is fitted to the
whole book, and where that is thin too, the reference data's default stands.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, field

from quarterday.core.given import Unusable
from quarterday.core.risk.credibility import (
    GammaPrior,
    Observed,
    buhlmann_straub,
    buhlmann_straub_poisson,
)

EVERY_CLASS = ""
SAME_FOR_ALL = 1e9  # years of prior where organisations show no difference: no record can weigh
Key = tuple[str, str]  # cause and class of organisation


@dataclass(frozen=True, slots=True)
class OwnRecord:
    """One organisation's record: its class, the years seen, and the sizes of claims by cause."""

    organisation_class: str
    years: float
    sizes: Mapping[str, tuple[float, ...]]

    def count(self, cause: str) -> int:
        """Return the number of claims of a cause."""
        return len(self.sizes.get(cause, ()))


@dataclass(frozen=True, slots=True)
class FittedRate:
    """How often a cause strikes: the prior, and the book it was fitted to."""

    prior: GammaPrior
    organisations: int
    claims: int
    years: float


@dataclass(frozen=True, slots=True)
class FittedSize:
    """How large claims of a cause are: their mean, and how many own ones weigh as much."""

    mean: float
    k: float
    claims: int


@dataclass(frozen=True, slots=True)
class Book:
    """What was fitted, by cause and class; what is not there was too thin."""

    rates: Mapping[Key, FittedRate] = field(default_factory=dict)
    sizes: Mapping[Key, FittedSize] = field(default_factory=dict)

    def rate(self, cause: str, organisation_class: str) -> FittedRate | None:
        """Return the rate fitted to the class, else to the whole book, else None."""
        return self.rates.get((cause, organisation_class)) or self.rates.get((cause, EVERY_CLASS))

    def size(self, cause: str, organisation_class: str) -> FittedSize | None:
        """Return the size fitted to the class, else to the whole book, else None."""
        return self.sizes.get((cause, organisation_class)) or self.sizes.get((cause, EVERY_CLASS))


NO_BOOK = Book()


def fitted(records: Iterable[OwnRecord], fewest: int) -> Book:
    """Return what ``records`` teach by cause, where at least ``fewest`` claims were seen."""
    every = tuple(record for record in records if record.years > 0)
    rates: dict[Key, FittedRate] = {}
    sizes: dict[Key, FittedSize] = {}
    for organisation_class in sorted({r.organisation_class for r in every} | {EVERY_CLASS}):
        chosen = [r for r in every if organisation_class in (r.organisation_class, EVERY_CLASS)]
        for cause in sorted({cause for r in chosen for cause in r.sizes}):
            claims = sum(r.count(cause) for r in chosen)
            if claims >= fewest and len(chosen) > 1:
                rates[cause, organisation_class] = fit_rate(chosen, cause)
                if (size := fit_size(chosen, cause)) is not None:
                    sizes[cause, organisation_class] = size
    return Book(rates, sizes)


def fit_rate(records: Sequence[OwnRecord], cause: str) -> FittedRate:
    """Return the gamma whose mean and variance the records show; all the same: no variance."""
    seen = [Observed([r.count(cause) / r.years], [r.years]) for r in records]
    done = buhlmann_straub_poisson(seen)
    claims, years = sum(r.count(cause) for r in records), sum(r.years for r in records)
    weight = min(done.k, SAME_FOR_ALL)
    return FittedRate(GammaPrior(claims / years * weight, weight), len(records), claims, years)


def fit_size(records: Sequence[OwnRecord], cause: str) -> FittedSize | None:
    """Return mean and credibility of sizes; None where no organisation had two claims."""
    seen = [Observed(r.sizes[cause]) for r in records if r.count(cause)]
    every = [size for r in records for size in r.sizes.get(cause, ())]
    try:
        k = buhlmann_straub(seen).k
    except Unusable:
        return None
    return FittedSize(sum(every) / len(every), k, len(every))
