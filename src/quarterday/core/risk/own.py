"""An organisation's own record of claims, as far as its file can tell."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date

from quarterday.core.claims.counted import counted
from quarterday.core.dates import Period, add_years
from quarterday.core.file.records import Claim, Terms
from quarterday.core.review.case import Case
from quarterday.core.risk.priors import OwnRecord

RECORD_YEARS = "risk.record-years"
DAYS_A_YEAR = 365.25


@dataclass(frozen=True, slots=True)
class Own:
    """The claims of the days that are on record, and the years these make (zero: no record)."""

    claims: tuple[Claim, ...]
    years: float

    def of(self, cause: str) -> tuple[Claim, ...]:
        """Return the claims of a cause."""
        return tuple(claim for claim in self.claims if claim.cause == cause)


def own_record(case: Case, most_years: int) -> Own:
    """Return the record of up to ``most_years`` before the renewal, as known on the review's day.

    It begins with the policy year of the oldest claim, or of the oldest terms on file, but not
    before the organisation existed. Claims without cost count too. Without either it has no years.
    """
    start = _first_day(case, most_years)
    end = min(case.as_of, case.renewal)
    if start is None or start >= end:
        return Own((), 0.0)
    period = Period(start, case.renewal)
    claims = tuple(c for c in counted(case.file.claims) if c.date_of_loss in period)
    return Own(claims, (end - start).days / DAYS_A_YEAR)


def _first_day(case: Case, most_years: int) -> date | None:
    founded = case.file.organisation.founded_year
    born = date(founded, 1, 1) if founded else date.min
    known = [c.date_of_loss for c in case.file.claims if c.date_of_loss >= born]
    known += [t.start for t in case.file.all(Terms) if t.stage == "issued"]
    for back in range(most_years, 0, -1):
        begins = add_years(case.renewal, -back)
        if any(day < add_years(begins, 1) for day in known):
            return max(begins, born)
    return None


def as_record(case: Case, most_years: int) -> OwnRecord:
    """Return the record as it is fitted to a book: claims that came to nothing are no size."""
    own = own_record(case, most_years)
    sizes = {
        cause: tuple(float(c.ground_up) for c in own.of(cause) if c.ground_up > 0)
        for cause in {claim.cause for claim in own.claims}
    }
    return OwnRecord(case.file.organisation.organisation_class, own.years, sizes)
