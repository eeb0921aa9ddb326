"""Rules of the family ``money``: what the premium did, whether it adds up, how it can be paid."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import replace

from quarterday.core.diary.diary import diary
from quarterday.core.figure import Fact, Figure, Node
from quarterday.core.file.records import PaymentChoice, Terms
from quarterday.core.file.records.terms import Premium
from quarterday.core.premium.explain import PremiumChange, premium_change
from quarterday.core.premium.instalments import Schedule, cost, schedules, told
from quarterday.core.premium.table import TableFault, coverage_name, faults
from quarterday.core.review.case import Case
from quarterday.core.review.finding import Finding, Rule, Subject, Tier
from quarterday.core.review.priority import placed
from quarterday.core.words import Rate, Words, words

MOVED_SHARE = "money.moved-share"
MOST_TOLD = 3  # faults told in the sentence; the evidence has all of them


def premium_moved(case: Case) -> Iterator[Finding]:
    """Tell when the offered premium, with fees and tax, moved by more than the parameter."""
    change = premium_change(case)
    if change is None:
        return
    most = case.parameter(MOVED_SHARE)
    assert isinstance(most.value, Rate)
    if abs(change.share) > most.value.value:
        yield _moved(case, change, (*change.figures, most))


def _moved(case: Case, change: PremiumChange, evidence: tuple[Node, ...]) -> Finding:
    direction = "up" if change.change > change.change * 0 else "down"
    main = change.main
    return Finding(
        rule="money.premium-moved",
        subject=Subject("premium", str(case.renewal), words("money-premium")),
        audience=("leaders",),
        kind="know",
        priority=placed(Tier.MONEY),
        title=words(
            f"money-premium-moved-{direction}-title",
            change=abs(change.change),
            share=Rate(abs(change.share), 1),
        ),
        means=words("money-premium-moved-means", main=main.label, amount=main.money,
                    before=change.before, after=change.after),
        todo=words(f"money-premium-moved-{direction}-todo"),
        evidence=evidence,
        encloses=("what-changed",),
    )  # fmt: skip


def does_not_add_up(case: Case) -> Iterator[Finding]:
    """Tell what in the offer's premium table does not add up, all in one finding."""
    if case.offered is None or not _is_one_province(case):
        return
    province = case.file.organisation.province
    found = faults(case.offered, province, case.reference, case.building_name)
    if found:
        yield _wrong_table(case, case.offered, found)


def _is_one_province(case: Case) -> bool:
    """Tell whether one province taxes the whole premium; a premium over several is prorated."""
    return len({case.file.province_of(b) for b in case.file.buildings}) <= 1


def _premium_fact(case: Case, terms: Terms, premium: Premium) -> Fact:
    entry = case.file.entry_of(terms)
    return Fact(
        id=f"terms/{terms.key}/premiums/{'/'.join(premium.line)}",
        value=terms.money(premium.amount),
        unit="money",
        label=words("money-table-cell", coverage=coverage_name(case.reference, premium.coverage),
                    location=case.building_name(premium.location)),
        origin=entry.origin,
        recorded_on=entry.recorded_at.date(),
    )  # fmt: skip


def _stated_fact(case: Case, terms: Terms, fault: TableFault) -> Fact:
    entry = case.file.entry_of(terms)
    return Fact(
        id=f"terms/{terms.key}/totals/{fault.of}/{fault.coverage}/{fault.location}",
        value=fault.stated,
        unit="money",
        label=words("money-printed", what=fault.computed.label),
        origin=entry.origin,
        recorded_on=entry.recorded_at.date(),
    )


def _pair(case: Case, terms: Terms, fault: TableFault) -> tuple[Fact, Figure]:
    """Return what is printed and what it should be, the latter with the cells it is made of."""
    cells = tuple(_premium_fact(case, terms, part) for part in fault.parts)
    computed = replace(fault.computed, inputs=(*cells, *fault.computed.inputs))
    return _stated_fact(case, terms, fault), computed


def _fault_words(fault: TableFault) -> Words:
    return words("money-fault", what=fault.computed.label, stated=fault.stated,
                 right=fault.computed.money)  # fmt: skip


def _wrong_table(case: Case, terms: Terms, found: tuple[TableFault, ...]) -> Finding:
    by_size = sorted(found, key=lambda fault: -abs(fault.difference).amount)
    largest = by_size[0]
    largest_first = tuple(_fault_words(fault) for fault in by_size[:MOST_TOLD])
    return Finding(
        rule="money.does-not-add-up",
        subject=Subject("terms", terms.key, words("money-offer")),
        audience=("broker", "insurer"),
        kind="fix",
        priority=placed(Tier.MONEY, at_risk=abs(largest.difference), cost=largest.stated * 0),
        title=words(
            "money-does-not-add-up-title",
            count=len(found),
            what=largest.computed.label,
            difference=abs(largest.difference),
        ),
        means=words("money-does-not-add-up-means", faults=largest_first),
        todo=words("money-does-not-add-up-todo"),
        evidence=tuple(node for fault in found for node in _pair(case, terms, fault)),
    )


def instalments(case: Case) -> Iterator[Finding]:
    """Ask how the organisation wants to pay, once, when the offer has an instalment plan."""
    offered = case.offered
    if offered is None or not offered.instalments_available:
        return
    if case.file.get(PaymentChoice, str(case.renewal)):
        return
    due = next(due for due in diary(case) if due.id == "payment")
    plans = tuple(_plans(case, offered).values())
    yield Finding(
        rule="money.instalments",
        subject=Subject("premium", str(case.renewal), words("money-premium")),
        audience=("leaders",),
        kind="send back",
        priority=placed(Tier.MONEY),
        title=_plans_title(plans),
        means=_plans_means(plans),
        todo=words("money-instalments-todo", by=due.latest),
        evidence=(
            case.file.fact(offered, "instalments_available", "text"),
            *(cost(plan, offered.key) for plan in plans),
            due.figure,
        ),
        encloses=("payment-form",),
        by=due.latest,
    )


def _plans(case: Case, offered: Terms) -> Mapping[str, Schedule]:
    """Return the plans for an offer with a premium, in a province that is known."""
    province = case.file.organisation.province
    if not offered.premiums or province not in case.reference.provinces:
        return {}
    return schedules(offered, province, case.reference)


def _plans_title(plans: tuple[Schedule, ...]) -> Words:
    """Return what the cheapest plan costs, where anything is known of it."""
    if not plans:
        return words("money-instalments-title")
    return words("money-instalments-title-costs", extra=plans[0].extra,
                 rate=Rate(plans[0].effective))  # fmt: skip


def _plans_means(plans: tuple[Schedule, ...]) -> Words:
    if not plans:
        return words("money-instalments-means")
    at_once, ways = plans[0].at_once, tuple(told(plan) for plan in plans)
    return words("money-instalments-means-costs", at_once=at_once, plans=ways)


RULES: tuple[Rule, ...] = (
    Rule("money.premium-moved", "premium", premium_moved, (MOVED_SHARE,)),
    Rule("money.does-not-add-up", "terms", does_not_add_up, ()),
    Rule("money.instalments", "premium", instalments, ("diary.payment-due-days",)),
)
