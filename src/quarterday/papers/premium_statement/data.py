"""What the premium statement says."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import islice

from quarterday.core.file.records import Terms
from quarterday.core.file.records.terms import EVERYWHERE
from quarterday.core.premium.table import PremiumTable, coverage_name, table
from quarterday.core.premium.tax import TaxResult
from quarterday.core.words import Rate, Words, words
from quarterday.papers.payment_form import data as payment_form
from quarterday.papers.premium_statement.paying import made_of, sections
from quarterday.papers.setting import Data, Setting

ID = "premium-statement"
ACROSS = 4  # locations beside each other on one page
Row = list[str]


def reason(setting: Setting) -> Words | None:
    """Return why it goes in: the terms to judge have a premium."""
    terms = setting.case.terms
    return words("premium-statement-reason") if terms and terms.premiums else None


def data(setting: Setting) -> Data:
    """Return the statement of the terms to judge; a payment form that is enclosed has the plans."""
    terms = setting.case.terms
    assert terms is not None
    summed = table(terms, setting.file.organisation.province, setting.reference)
    issued = "-issued" if terms.stage == "issued" else ""
    title = setting.say(f"premium-statement-title{issued}", total=summed.total)
    made, refused = made_of(setting, terms)
    asked = payment_form.reason(setting) is not None
    elsewhere = [setting.say("premium-statement-plans-elsewhere")] if asked else []
    refusals = [refused] if refused else []
    lead = setting.say("premium-statement-lead", start=terms.start, end=terms.end)
    return {
        "opening": setting.opening(ID, title, lead),
        "panels": list(_panels(setting, summed)),
        "summary": _summary(setting, summed),
        "notes": [*_notes(setting, terms, summed.tax), *elsewhere, *refusals],
        "sections": list(sections(setting, made, with_plans=not asked)),
    }


def _groups(places: Sequence[str]) -> Iterator[tuple[str, ...]]:
    found = iter(places)
    while group := tuple(islice(found, ACROSS)):
        yield group


def _panels(setting: Setting, summed: PremiumTable) -> Iterator[Data]:
    """Yield tables of at most four locations, the last with the totals of all of them."""
    places = sorted(summed.columns, key=lambda place: (place == EVERYWHERE, place))
    groups = list(_groups(places))
    for number, group in enumerate(groups, start=1):
        last = number == len(groups)
        heading = setting.say("premium-statement-part", n=number, count=len(groups))
        yield {
            "heading": heading if len(groups) > 1 else None,
            "header": _header(setting, group, last=last),
            "rows": list(_rows(setting, summed, group, last=last)),
        }


def _header(setting: Setting, group: tuple[str, ...], *, last: bool) -> Row:
    all_of_it = [setting.say("premium-statement-all")] if last else []
    return [
        setting.say("premium-statement-coverage"),
        *(setting.say("paper-name", paper=setting.place(p)) for p in group),
        *all_of_it,
    ]


def _rows(
    setting: Setting, summed: PremiumTable, group: tuple[str, ...], *, last: bool
) -> Iterator[Row]:
    say = setting.amounts(money.amount for money in summed.cells.values())
    for coverage, whole in sorted(summed.rows.items(), key=lambda row: setting.order(row[0])):
        cells = [summed.cells.get((coverage, place)) for place in group]
        shown = [say(cell.amount) if cell else "–" for cell in cells]
        name = setting.spoken(coverage_name(setting.reference, coverage))
        yield [name, *shown, *([say(whole.amount)] if last else [])]
    totals = [say(summed.columns[place].amount) for place in group]
    end = [say(summed.subtotal.amount)] if last else []
    yield [setting.say("premium-statement-subtotal"), *totals, *end]


def _summary(setting: Setting, summed: PremiumTable) -> Data:
    tax = summed.tax
    lines = [("premium", summed.subtotal), ("fees", summed.fees), ("total", summed.total)]
    if not summed.fees:
        lines.pop(1)
    say = setting.amounts([*(money.amount for _, money in lines), tax.tax.money.amount])
    rows = [[setting.say(f"premium-statement-{key}"), say(money.amount)] for key, money in lines]
    rows.insert(-1, [_tax_label(setting, tax), say(tax.tax.money.amount)])
    header = ["premium-statement-what", "premium-statement-dollars"]
    return {
        "heading": setting.say("premium-statement-sum"),
        "header": [setting.say(id) for id in header],
        "rows": rows,
    }


def _tax_label(setting: Setting, tax: TaxResult) -> str:
    if tax.rate is None or not isinstance(tax.rate.value, Rate):
        return setting.say("premium-statement-no-tax")
    base = setting.money(tax.base.money)
    return setting.say("premium-statement-tax-at", rate=tax.rate.value, base=base)


def _notes(setting: Setting, terms: Terms, tax: TaxResult) -> Iterator[str]:
    yield setting.say(f"premium-statement-stage-{terms.stage}", insurer=terms.insurer or "–")
    if tax.tax.caution:
        yield setting.spoken(tax.tax.caution)
    if not tax.is_known:
        yield setting.say("premium-statement-tax-unknown")
    for premium in terms.premiums:
        if premium.reason and premium.kind in ("surcharge", "discount", "flat"):
            what = setting.spoken(coverage_name(setting.reference, premium.coverage))
            amount = terms.money(abs(premium.amount))
            id = f"premium-statement-{premium.kind}"
            yield setting.say(id, amount=amount, coverage=what, reason=premium.reason)
