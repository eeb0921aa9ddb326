"""Who bears which part of the premium, how it can be paid, and how it is used up."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from decimal import Decimal
from itertools import islice

from quarterday.core.file.records import Terms
from quarterday.core.given import Unusable
from quarterday.core.money import Money
from quarterday.core.premium.allocation import FEES, ROUNDING, TAX, Allocation, key_names
from quarterday.core.premium.instalments import Schedule, plan_name
from quarterday.core.premium.prepaid import by_fiscal_year
from quarterday.core.premium.rounding import TwoWay
from quarterday.core.premium.statement import Statement, statement
from quarterday.core.premium.table import coverage_name
from quarterday.core.words import Rate
from quarterday.papers.setting import Data, Setting

ACROSS = 5  # parties beside each other on one page
EXTRA = {TAX: "allocation-tax", FEES: "allocation-fees", ROUNDING: "allocation-rounding"}
NOTHING = "–"
Row = list[str]


def made_of(setting: Setting, terms: Terms) -> tuple[Statement, str | None]:
    """Return the statement by the file's first allocation key, and why when it cannot be used."""
    keys = key_names(setting.file)
    try:
        return statement(setting.case, terms, keys[0] if keys else None), None
    except Unusable as refused:
        return statement(setting.case, terms), setting.spoken(refused.words)


def sections(setting: Setting, made: Statement, *, with_plans: bool = True) -> Iterator[Data]:
    """Yield the sections after the premium itself, each with a heading, a lead and tables."""
    if made.allocation:
        yield _allocation(setting, made, made.allocation)
    if made.plans and with_plans:
        yield _plans(setting, made)
    yield _months(setting, made)


def _section(heading: str, lead: str, tables: Sequence[Data], notes: Sequence[str] = ()) -> Data:
    return {"heading": heading, "lead": lead, "tables": list(tables), "notes": list(notes)}


def _table(
    header: Row, rows: list[Row], heading: str | None = None, *, halves: bool = False
) -> Data:  # fmt: skip
    """Return a table that ends with its total; ``halves`` may stand beside each other on paper."""
    return {"heading": heading, "header": header, "rows": rows, "total": True, "halves": halves}


def _allocation(setting: Setting, made: Statement, allocation: Allocation) -> Data:
    most = max(allocation.totals.items(), key=lambda borne: borne[1])
    heading = setting.say("premium-statement-bears", party=most[0],
                          amount=Money(most[1], made.terms.currency))  # fmt: skip
    lead = setting.say("premium-statement-bears-lead", key=allocation.name)
    coverages = {
        row: setting.spoken(coverage_name(setting.reference, row))
        for row in sorted(allocation.by_coverage.rows(), key=setting.order)
    }
    places = {
        row: setting.say("paper-name", paper=setting.place(row))
        for row in allocation.by_location.rows()
    }
    tables = [
        *_two_way(setting, allocation, allocation.by_coverage, coverages, "coverage"),
        *_two_way(setting, allocation, allocation.by_location, places, "place"),
    ]
    return _section(heading, lead, tables)


def _two_way(
    setting: Setting, allocation: Allocation, made: TwoWay[str, str], names: dict[str, str],
    head: str,
) -> Iterator[Data]:  # fmt: skip
    """Yield a table of at most five parties each, the last with the sums of all of them."""
    for number, extra in EXTRA.items():
        if number in names:
            names[number] = setting.say(extra)
    parties = iter(allocation.parties)
    groups = list(iter(lambda: tuple(islice(parties, ACROSS)), ()))
    for group in groups:
        last = group is groups[-1]
        sums = [setting.say("premium-statement-all")] if last else []
        header = [setting.say(f"premium-statement-{head}"), *group, *sums]
        yield _table(header, list(_borne(setting, made, names, group, last=last)))


def _borne(
    setting: Setting, made: TwoWay[str, str], names: dict[str, str], group: tuple[str, ...],
    *, last: bool,
) -> Iterator[Row]:  # fmt: skip
    say = setting.amounts(made.cells.values())
    rows, columns = made.rows(), made.columns()
    for row, name in names.items():
        cells = [made.cells.get((row, party), Decimal(0)) for party in group]
        shown = [say(cell) if cell else NOTHING for cell in cells]
        yield [name, *shown, *([say(rows[row])] if last else [])]
    end = [say(made.total)] if last else []
    yield [setting.say("allocation-total"), *(say(columns[p]) for p in group), *end]


def _plans(setting: Setting, made: Statement) -> Data:
    plans = list(made.plans.values())
    heading = setting.say("premium-statement-plans", extra=plans[0].extra)
    lead = setting.say("premium-statement-plans-lead", at_once=plans[0].at_once)
    examples = [p for p in plans if p.plan.illustrative]
    notes = [setting.say("premium-statement-plans-example")] if examples else []
    return _section(heading, lead, [plan_table(setting, plan) for plan in plans], notes)


def plan_table(setting: Setting, plan: Schedule) -> Data:
    """Return a plan's payments, day by day, under a heading that says what it costs."""
    heading = setting.say(
        "premium-statement-plan",
        plan=setting.say("paper-name", paper=plan_name(plan.plan)),
        extra=plan.extra,
        canada=Rate(plan.canada.rate, 2),
        effective=Rate(plan.effective, 2),
    )
    whole = plan.payments[0].amount * 0
    amounts = [(p.premium + p.fees, p.tax, p.charge, p.amount) for p in plan.payments]
    sums = [sum(column, whole) for column in zip(*amounts, strict=True)]
    say = setting.amounts(m.amount for row in (*amounts, sums) for m in row)
    rows = [
        [setting.short_day(p.due), *(say(m.amount) for m in row)]
        for p, row in zip(plan.payments, amounts, strict=True)
    ]
    rows.append([setting.say("allocation-total"), *(say(m.amount) for m in sums)])
    heads = ("due", "paid-premium", "paid-tax", "paid-charge", "paid")
    return _table([setting.say(f"premium-statement-{head}") for head in heads], rows, heading)


def _months(setting: Setting, made: Statement) -> Data:
    years = by_fiscal_year(made.slices)
    year, amount = next(iter(years.items()))
    money = made.terms.money(amount)
    heading = setting.say("premium-statement-months", amount=money, year=year)
    say = setting.amounts([*(s.total for s in made.slices), *years.values()])
    rows = [
        [setting.short_day(s.days.start), str(s.days.days), setting.short_day(s.fiscal_year),
         say(s.total)]
        for s in made.slices
    ]  # fmt: skip
    days = sum(s.days.days for s in made.slices)
    rows.append(
        [setting.say("allocation-total"), str(days), "", say(sum(years.values(), Decimal(0)))]
    )
    heads = ("from", "days", "year", "used")
    header = [setting.say(f"premium-statement-{head}") for head in heads]
    lead = setting.say("premium-statement-months-lead")
    return _section(heading, lead, [_table(header, rows, halves=True)])
