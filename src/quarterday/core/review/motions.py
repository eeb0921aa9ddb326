"""Draft motions for the minutes, from the agenda: each question put for it and against it.

A motion is put in the positive form and says what is done, by whom, and at what price (common
practice of meetings, no source). Where people's safety is the question, no motion against is
drafted: leaving it open is not something the papers propose.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from decimal import Decimal

from quarterday.core.dates import Period
from quarterday.core.money import Money
from quarterday.core.review.finding import Finding
from quarterday.core.words import Arg, Words, words

# The subjects that a motion can settle: how the title's wording of a finding begins.
SUBJECTS = (
    "people-abuse-unqualified",
    "people-activity-uncovered",
    "income-too-low",
    "income-too-low-offer",
    "income-extra-expense-low",
    "income-extra-expense-low-offer",
    "terms-claims-made-switched",
    "terms-claims-made-moved",
    "terms-dropped",
    "terms-option-open",
    "terms-options-together",
    "terms-vacancy",
    "terms-worse",
    "values-below-replacement",
    "values-below-replacement-together",
    "values-coinsurance",
    "values-valuation-stale",
)
NOT_AGAINST = ("people-abuse-unqualified",)
OTHER = "other"


@dataclass(frozen=True, slots=True)
class Motion:
    """A draft motion: the question it settles, its wording for it, and against it where drafted.

    ``question`` is a finding's id; empty for the motion to accept the renewal.
    """

    question: str
    about: Words
    moved: Words
    instead: Words | None = None


def motions(agenda: Iterable[Finding]) -> tuple[Motion, ...]:
    """Return a draft motion for each decision of the agenda, in its order."""
    return tuple(map(_motion, agenda))


def _motion(finding: Finding) -> Motion:
    subject = finding.title.id.partition("-title")[0]
    named = subject if subject in SUBJECTS else OTHER
    told = {"question": finding.title} if named == OTHER else dict(finding.title.args)
    priced = "no" if finding.priority.cost is None else "yes"
    args = told | dict(_of_money(finding)) | {"subject": finding.subject.name, "priced": priced}
    against = None if named in NOT_AGAINST else words(f"motion-{named}-instead", **args)
    return Motion(finding.id, finding.title, words(f"motion-{named}", **args), against)


def _of_money(finding: Finding) -> Iterator[tuple[str, Words]]:
    """Yield the price and what is at stake."""
    at_risk = finding.priority.at_risk
    yield "cost", at_cost(finding.priority.cost)
    yield "stake", words("motion-stake", amount=at_risk) if at_risk else words("motion-stake-open")


def at_cost(cost: Money | None) -> Words:
    """Return a price as a motion says it; None: nobody has named one yet."""
    if cost is None:
        return words("motion-cost-open")
    if not cost:
        return words("motion-cost-free")
    return words("motion-cost", cost=cost.rounded(Decimal(1)))


def accepting(insurer: str | None, term: Period, premium: Money | None, decisions: int) -> Motion:
    """Return the motion to accept a renewal with what ``decisions`` motions before it changed."""
    args: dict[str, Arg | Words] = {"start": term.start, "end": term.end, "count": decisions}
    args["insurer"] = insurer or words("motion-insurer")
    args["premium"] = words("motion-premium", premium=premium) if premium else words("motion-later")
    return Motion(
        "", words("motion-accept-about", start=term.start), words("motion-accept", **args)
    )
