"""A premium: what it is, why it moved, who bears which part, how it is paid and used up."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from datetime import date
from decimal import Decimal
from pathlib import Path
from typing import TYPE_CHECKING

import click

from quarterday.cli.options import as_of_option, json_option, needs_store, screen_of
from quarterday.cli.screen import Screen
from quarterday.core.file.fold import File
from quarterday.core.money import Money, total
from quarterday.core.premium.allocation import FEES, ROUNDING, TAX, key_names
from quarterday.core.premium.instalments import Schedule, plan_name
from quarterday.core.premium.prepaid import by_fiscal_year
from quarterday.core.premium.rounding import TwoWay
from quarterday.core.premium.statement import Statement
from quarterday.core.premium.table import coverage_name
from quarterday.core.review.case import VERSIONS, Case, Version
from quarterday.core.words import Rate, Term, words

if TYPE_CHECKING:
    from quarterday.core.premium.explain import PremiumChange

EXTRA = {TAX: "allocation-tax", FEES: "allocation-fees", ROUNDING: "allocation-rounding"}


@click.command("premium")
@click.argument("file")
@click.option("--terms", "stage", type=click.Choice(VERSIONS),
              help="Which terms; default: the newest to judge.")  # fmt: skip
@click.option("--allocate", "key", metavar="KEY", help="Divide it by this allocation key.")
@click.option("--journal", type=click.Path(dir_okay=False, path_type=Path), metavar="FILE.csv",
              help="Write the journal lines to this file.")  # fmt: skip
@as_of_option
@json_option
@click.pass_context
@needs_store
def premium(
    context: click.Context, file: str, stage: Version | None, key: str | None, journal: Path | None,
    as_of: date, as_json: bool,
) -> None:  # fmt: skip
    """Show a FILE's premium: table, tax, why it changed, who pays, instalments, months."""
    from quarterday.office import premium as office

    screen = screen_of(context)
    case, made = office.premium_of(file, screen.reference, as_of, stage, key)
    if journal is not None:
        write_journal(screen, made, journal)
    if as_json:
        screen.json(office.premium(case, made, screen.speech))
    else:
        _show(screen, case, made, office.change_of(case, made))


def write_journal(screen: Screen, made: Statement, path: Path) -> None:
    """Write the journal lines of a premium, and tell that they balance."""
    from quarterday.office.journal import journal_csv

    lines = made.journal()
    path.write_text(journal_csv(lines, screen.speech), encoding="utf-8", newline="")
    debit = Money(sum((line.debit for line in lines), Decimal(0)), made.terms.currency)
    credit = Money(sum((line.credit for line in lines), Decimal(0)), made.terms.currency)
    screen.tell("cli-journal-written", file=str(path), count=len(lines), debit=debit, credit=credit)


def _show(screen: Screen, case: Case, made: Statement, change: PremiumChange | None) -> None:
    screen.line(f"{case.file.id}  {case.file.organisation.name}", style="bold")
    stage = Term("stage", made.terms.stage)
    screen.say("cli-premium-of", start=made.terms.start, stage=stage)
    _doubts(screen, made)
    _table(screen, case, made)
    _moved(screen, change)
    _allocation(screen, case, made)
    _plans(screen, made)
    _prepaid(screen, made)
    screen.line()
    screen.say("caution-wording-governs")


def _heading(screen: Screen, id: str, **args: str | Money | Rate) -> None:
    screen.line()
    screen.line(screen.words(id, **args), style="bold")


def _heads(screen: Screen, *ids: str) -> tuple[str, ...]:
    return tuple(screen.words(f"premium-head-{id}") for id in ids)


def _doubts(screen: Screen, made: Statement) -> None:
    faults = (
        words("money-fault", what=f.computed.label, stated=f.stated, right=f.computed.money)
        for f in made.faults
    )
    told = [*faults, *made.doubts]
    if told:
        _heading(screen, "cli-premium-doubts")
    for said in told:
        screen.line(f"- {screen.speech.say(said)}")


def _table(screen: Screen, case: Case, made: Statement) -> None:
    money = screen.speech.money
    summed = made.table
    _heading(screen, "cli-premium-table")
    rows = [
        (_row_name(screen, coverage), screen.speech.say(case.building_name(place)),
         money(amount, cents=True))
        for (coverage, place), amount in summed.cells.items()
    ]  # fmt: skip
    sums = {"allocation-fees": summed.fees, "allocation-tax": summed.tax.tax.money,
            "allocation-total": summed.total}  # fmt: skip
    rows += [(screen.words(id), "", money(amount, cents=True)) for id, amount in sums.items()]
    screen.table(_heads(screen, "coverage", "place", "premium"), rows, right="2")
    screen.line(screen.speech.say(summed.tax.tax.how))
    if summed.tax.tax.caution:
        screen.line(screen.speech.say(summed.tax.tax.caution))


def _row_name(screen: Screen, id: str) -> str:
    if id in EXTRA:
        return screen.words(EXTRA[id])
    return screen.speech.say(coverage_name(screen.reference, id))


def _place_name(screen: Screen, case: Case, id: str) -> str:
    return screen.words(EXTRA[id]) if id in EXTRA else screen.speech.say(case.building_name(id))


def _moved(screen: Screen, change: PremiumChange | None) -> None:
    if change is None:
        screen.line()
        screen.say("cli-premium-no-change")
        return
    _heading(screen, "cli-premium-moved", change=change.change, share=Rate(change.share, 1))
    say, money = screen.speech.say, screen.speech.money
    rows = [(say(effect.label), money(effect.money, cents=True)) for effect in change.effects]
    screen.table(_heads(screen, "effect", "amount"), rows, right="1")


def _allocation(screen: Screen, case: Case, made: Statement) -> None:
    if made.allocation is None:
        _keys(screen, case.file)
        return
    _heading(screen, "cli-premium-allocation", key=made.allocation.name)
    names = {row: _row_name(screen, row) for row in made.allocation.by_coverage.rows()}
    _two_way(screen, made.terms.currency, made.allocation.by_coverage, names, "coverage")
    _heading(screen, "cli-premium-by-place")
    places = {row: _place_name(screen, case, row) for row in made.allocation.by_location.rows()}
    _two_way(screen, made.terms.currency, made.allocation.by_location, places, "place")


def _keys(screen: Screen, file: File) -> None:
    keys = key_names(file)
    if keys:
        screen.line()
        screen.say("cli-premium-keys", keys=keys)


def _two_way(
    screen: Screen, currency: str, made: TwoWay[str, str], names: dict[str, str], head: str
) -> None:
    parties = tuple(made.columns())
    totals, columns = made.rows(), made.columns()
    last = screen.words("allocation-total")

    def shown(amounts: Iterable[Decimal]) -> Iterator[str]:
        return (screen.speech.money(Money(a, currency), cents=True) for a in amounts)

    rows = [
        (name, *shown([*(made.cells.get((row, p), Decimal(0)) for p in parties), totals[row]]))
        for row, name in names.items()
    ]
    rows.append((last, *shown([*(columns[p] for p in parties), made.total])))
    right = "".join(str(n) for n in range(1, len(parties) + 2))
    screen.table((*_heads(screen, head), *parties, last), rows, right=right)


def _plans(screen: Screen, made: Statement) -> None:
    if made.plans:
        _heading(screen, "cli-premium-plans")
    for plan in made.plans.values():
        _plan(screen, plan)


def _plan(screen: Screen, plan: Schedule) -> None:
    screen.say("cli-premium-plan", plan=plan_name(plan.plan), extra=plan.extra,
               canada=Rate(plan.canada.rate, 2), effective=Rate(plan.effective, 2))  # fmt: skip
    if plan.plan.illustrative:
        screen.say("caution-illustrative")
    money = screen.speech.money
    rows = [
        (payment.due.isoformat(), *(money(m, cents=True) for m in
         (payment.premium + payment.fees, payment.tax, payment.charge, payment.amount)))
        for payment in plan.payments
    ]  # fmt: skip
    heads = _heads(screen, "due", "premium", "tax", "charge", "amount")
    screen.table(heads, rows, right="1234")


def _prepaid(screen: Screen, made: Statement) -> None:
    _heading(screen, "cli-premium-prepaid")
    money, currency = screen.speech.money, made.terms.currency
    rows = [
        (part.days.start.isoformat(), str(part.days.days), part.fiscal_year.isoformat(),
         money(Money(part.total, currency), cents=True))
        for part in made.slices
    ]  # fmt: skip
    screen.table(_heads(screen, "from", "days", "fiscal-year", "amount"), rows, right="13")
    years = by_fiscal_year(made.slices)
    sums = [(str(y), money(Money(amount, currency), cents=True)) for y, amount in years.items()]
    whole = total(Money(amount, currency) for amount in years.values())
    sums.append((screen.words("allocation-total"), money(whole, cents=True)))
    screen.table(_heads(screen, "fiscal-year", "amount"), sums, right="1")
