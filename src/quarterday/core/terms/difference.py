"""One difference between two versions of terms: typed, directed, in words."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from quarterday.core.money import Money
from quarterday.core.words import Arg, Term, Words, words

Direction = Literal["better", "worse", "neutral", "cannot say"]
DifferenceKind = Literal[
    "added", "dropped", "place", "limit", "limit-basis", "aggregate", "sublimit",
    "deductible", "deductible-form", "deductible-percent", "deductible-percent-of",
    "deductible-minimum", "deductible-maximum", "waiting",
    "coinsurance", "stated-amount", "agreed-value", "automatic-increase", "basis", "blanket",
    "margin", "shared-limit", "exclusion", "damages", "defence", "claims-made",
    "retroactive-date", "reporting-period", "qualified", "wording",
    "monthly-limit", "coinsurance-waiver", "coinsurance-waiver-share", "settling-order",
    "coinsurance-of", "umbrella-over", "shared-limit-amount", "deductible-rule", "vacancy-days",
    "insurer", "currency",
]  # fmt: skip


@dataclass(frozen=True, slots=True)
class Difference:
    """How one clause of ``after`` differs from ``before``, seen from the organisation.

    ``coverage`` is empty for a clause of the terms as a whole. ``before`` and ``after`` are None
    where that version shows nothing. ``more_borne`` is the most that the organisation would bear
    more of a single loss (of a year's losses for a yearly maximum; negative: less), and is None
    where the clause does not fix it exactly.
    """

    kind: DifferenceKind
    coverage: str
    location: str
    direction: Direction
    before: Arg | None = None
    after: Arg | None = None
    more_borne: Money | None = None

    @property
    def phrase(self) -> Words:
        """The difference as a clause that begins in lower case and ends without a stop."""
        shown = {"before": self.before, "after": self.after}
        known = {name: value for name, value in shown.items() if value is not None}
        way = self.direction.replace(" ", "-")
        return words(f"difference-{self.kind}", case=self._case, direction=way, **known)

    @property
    def _case(self) -> str:
        if self.before is None:
            return "bare" if self.after is None else "new"
        return "gone" if self.after is None else "changed"

    def sentence(self, place: str | Words) -> Words:
        """Return the difference as a sentence that names the coverage and its ``place``."""
        if not self.coverage:
            return words("difference-of-terms", change=self.phrase)
        cover = Term("coverage", self.coverage)
        return words("difference-of-coverage", coverage=cover, place=place, change=self.phrase)


MIRRORED: dict[Direction, Direction] = {"better": "worse", "worse": "better"}
