"""Amounts that would not last: the terms tried on losses that this account can meet.

A total fire is the library's reference loss, scaled to the account. Cover for one cause is tried
on the loss that the account's model meets once in a hundred years, and on its own largest claim of
ten years.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date
from decimal import Decimal
from typing import Literal

from quarterday.core.figure import Node
from quarterday.core.file.records import Terms
from quarterday.core.file.records.terms import EVERYWHERE, Coverage
from quarterday.core.money import Money, total
from quarterday.core.review.case import Case
from quarterday.core.review.finding import Finding, Priority, Rule, Subject, Tier
from quarterday.core.review.rules.terms.changes import shortened
from quarterday.core.review.rules.terms.evidence import cover, fact_of, line_of
from quarterday.core.review.rules.terms.offers import figures_of, option_of, row_of
from quarterday.core.risk.bad_loss import bad_loss
from quarterday.core.risk.choices import OptionRow
from quarterday.core.risk.risk import Risk
from quarterday.core.risk.told import option_told
from quarterday.core.terms.losses.history import history
from quarterday.core.terms.losses.loss import Loss
from quarterday.core.terms.losses.scaling import scaled
from quarterday.core.terms.settling.account import setting_of
from quarterday.core.terms.settling.asked import OF_ONE_CAUSE
from quarterday.core.terms.settling.outcomes import last_day
from quarterday.core.terms.settling.refusals import Refused
from quarterday.core.terms.settling.settlement import PartPaid, Setting, Settlement, settle
from quarterday.core.values.cost import number
from quarterday.core.words import Term, Words, words

GAP = "terms.total-loss-gap"
THIN = "terms.sublimit-thin"
LEAST, WORTH = "terms.total-loss-gap-share", "terms.change-worth-deciding"
THIN_COVERAGES = (*OF_ONE_CAUSE, "by-laws")
YEARS = 10
THOUSAND = Decimal(1000)
Whose = Literal["own", "model"]
OVER = ("over-limit", "over-aggregate")


@dataclass(frozen=True, slots=True)
class Tried:
    """A loss settled by the terms to judge: the account's own, or the model's with its figure."""

    settled: Settlement
    whose: Whose
    behind: tuple[Node, ...] = ()

    @property
    def over(self) -> Money:
        """What lies above limits, nothing else."""
        amounts = (f.money for reason, f in self.settled.by_reason if reason in OVER)
        return total(amounts, self.settled.total.money.currency)


def _setting(case: Case) -> Setting | Refused | None:
    """Return what losses are settled under; None where there are no terms to judge."""
    if case.terms is None:
        return None
    try:
        return setting_of(case, case.terms, last_day(case.terms))
    except Refused as refusal:
        return refusal


def _reference_loss(case: Case, setting: Setting, id: str) -> Loss | None:
    of = case.reference.losses.get(id)
    return scaled(case, setting, of, last_day(setting.terms)).loss if of else None


def total_loss_gap(case: Case) -> Iterator[Finding]:
    """Find what a total fire of the main building would leave to the organisation."""
    setting = _setting(case)
    if setting is None:
        return
    if isinstance(setting, Refused):
        yield _cannot_be_tried(setting)
        return
    loss = _reference_loss(case, setting, "total-fire")
    if loss is None:
        return
    try:
        done = settle(setting, loss)
    except Refused as refusal:
        yield _cannot_be_tried(refusal)
        return
    if done.borne.money.ratio(done.total.money) >= number(case.parameter(LEAST)):
        yield _gap(case, done)


def _cannot_be_tried(refusal: Refused) -> Finding:
    return Finding(
        rule=GAP,
        subject=Subject("terms", "losses", words("terms-as-a-whole")),
        audience=("broker",),
        kind="fix",
        priority=Priority(Tier.RECORD, reasons=(words("reason-cannot-be-tried"),)),
        title=words("terms-cannot-be-tried-title"),
        means=words("terms-cannot-be-tried-means", why=refusal.words),
        todo=words("terms-cannot-be-tried-todo"),
    )


def _gap(case: Case, done: Settlement) -> Finding:
    building, borne = case.building_name(done.loss.place), done.borne.money
    short = sorted((p for p in done.parts if _rounded(p.borne)), key=lambda p: -p.borne.amount)
    return Finding(
        rule=GAP,
        subject=Subject("building", done.loss.place, building),
        audience=("leaders", "broker"),
        kind="know",
        priority=Priority(Tier.MONEY, at_risk=borne, reasons=(words("reason-total-loss"),)),
        title=words("terms-total-loss-gap-title", building=building, borne=_rounded(borne)),
        means=words(
            "terms-total-loss-gap-means",
            lost=_rounded(done.total.money),
            paid=_rounded(done.paid.money),
            gaps=shortened(case, [_of_part(part) for part in short]),
        ),
        todo=words("terms-total-loss-gap-todo"),
        evidence=(done.borne, *(figure for _, figure in done.by_reason), done.paid),
    )


def _rounded(money: Money) -> Money:
    """Return an estimate to the thousand, as it is said."""
    return money.rounded(THOUSAND)


def _of_part(part: PartPaid) -> Words:
    what = words(f"settling-component-{part.component}")
    return words("terms-total-loss-gap-part", what=what, borne=_rounded(part.borne))


def sublimit_thin(case: Case) -> Iterator[Finding]:
    """Find cover for one cause (sewer backup, flood) that a loss like theirs would outrun."""
    setting = _setting(case)
    if setting is None or isinstance(setting, Refused):
        return
    for line in setting.terms.coverages:
        if line.coverage in THIN_COVERAGES and line.limit:
            worst = max(_tried(case, setting, line), key=lambda t: t.over.amount, default=None)
            if worst is not None and worst.over.amount >= number(case.parameter(WORTH)):
                yield _thin(case, setting.terms, line, worst)


def _tried(case: Case, setting: Setting, line: Coverage) -> Iterator[Tried]:
    """Yield the losses that a line may be too thin for, settled: modelled, and past claims."""
    causes = set(case.reference.coverages[line.coverage].answers) - set(line.excluded_causes)
    day = last_day(setting.terms)
    if case.risk is not None:
        yield from _modelled(case.risk, setting, line, day)
    if line.coverage in OF_ONE_CAUSE:
        for replay in history(case, YEARS).replays:
            loss = replay.loss if replay.claim.cause in causes else None
            moved = loss and loss.model_copy(update={"date_of_loss": day})
            yield from _settled(setting, line, moved, "own")


def _modelled(risk: Risk, setting: Setting, line: Coverage, day: date) -> Iterator[Tried]:
    """Yield the loss that the line is asked for once in a hundred years, where over its limit."""
    bad = bad_loss(risk, line)
    if bad is not None:
        loss = Loss(
            id="bad-year", cause=bad.cause, place=bad.place, date_of_loss=day, amounts=bad.amounts
        )
        yield from _settled(setting, line, loss, "model", (bad.figure,))


def _settled(
    setting: Setting,
    line: Coverage,
    loss: Loss | None,
    whose: Whose,
    behind: tuple[Node, ...] = (),
) -> Iterator[Tried]:
    """Yield a loss settled where it falls at the place of ``line``; nothing where refused."""
    if loss is None or line.location not in (EVERYWHERE, loss.place):
        return
    try:
        yield Tried(settle(setting, loss), whose, behind)
    except Refused:
        return


def _thin(case: Case, terms: Terms, line: Coverage, worst: Tried) -> Finding:
    done, over = worst.settled, worst.over
    assert line.limit is not None
    limit = terms.money(line.limit)
    row = row_of(case, option_of(terms, line.coverage, line.location, line.limit + 1))
    figures: tuple[Node, ...] = tuple(f for reason, f in done.by_reason if reason in OVER)
    of_limit = fact_of(case.file, terms, line_of(*line.place), "limit", limit)
    means = words(
        "terms-sublimit-thin-means",
        whose=worst.whose,
        loss=Term("cause", done.loss.cause),
        lost=_rounded(done.total.money),
        place=case.building_name(done.loss.place),
    )
    return Finding(
        rule=THIN,
        subject=Subject("coverage", "/".join(line.place), cover(line.coverage)),
        audience=("leaders", "broker"),
        kind="know",
        priority=Priority(Tier.MONEY, at_risk=over, reasons=(words("reason-sublimit-thin"),)),
        title=words(
            "terms-sublimit-thin-title", coverage=cover(line.coverage), limit=limit,
            over=_rounded(over),
        ),
        means=words("said-then", first=means, then=_raised(terms, row)) if row else means,
        todo=words("terms-sublimit-thin-todo", kind=line.coverage),
        evidence=(*worst.behind, *figures, *figures_of(row), of_limit),
    )  # fmt: skip


def _raised(terms: Terms, row: OptionRow) -> Words:
    """Return what the insurer offers instead, and what it would change."""
    assert row.option.limit is not None
    told = option_told(row)
    assert told is not None
    return words("terms-sublimit-thin-offer", limit=terms.money(row.option.limit), told=told)


RULES: tuple[Rule, ...] = (
    Rule(GAP, "building", total_loss_gap, (LEAST,)),
    Rule(THIN, "coverage", sublimit_thin, (WORTH,)),
)
