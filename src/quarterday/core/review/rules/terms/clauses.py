"""Clauses that can hurt by themselves: whose shared limit, damages, defence, claims-made."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date

from quarterday.core.figure import Fact, Node
from quarterday.core.file.records import Terms
from quarterday.core.file.records.terms import Coverage
from quarterday.core.review.case import Case
from quarterday.core.review.finding import Finding, Kind, Priority, Rule, Subject, Tier
from quarterday.core.review.rules.terms.abuse import leads
from quarterday.core.review.rules.terms.changes import TO_INSURE
from quarterday.core.review.rules.terms.evidence import cover, fact_of, line_of
from quarterday.core.terms.presence import lines_of
from quarterday.core.words import Term, Words, words

DAMAGES = ("punitive", "exemplary", "multiplied")


def _line_fact(case: Case, terms: Terms, line: Coverage, name: str, value: str | date) -> Fact:
    return fact_of(case.file, terms, line_of(*line.place), name, value)


def _names(lines: list[Coverage]) -> tuple[Words, ...]:
    return tuple(dict.fromkeys(cover(line.coverage) for line in lines))


def additional_limit_basis(case: Case) -> Iterator[Finding]:
    """Find a shared limit meant for an owner where they rent, or the reverse."""
    terms = case.terms
    shared = terms.shared_limit if terms else None
    owns = _owns(case)
    if terms is None or shared is None or shared.meant_for is None or owns is None:
        return
    if (shared.meant_for == "owner") == owns:
        return
    meant, amount = Term("meant-for", shared.meant_for), terms.money(shared.amount)
    yield Finding(
        rule="terms.additional-limit-basis",
        subject=Subject("terms", "shared-limit", words("shared-limit-name")),
        audience=("broker", "insurer"),
        kind="fix",
        priority=Priority(Tier.MONEY, reasons=(words("reason-wrong-basis"),)),
        title=words("terms-additional-limit-basis-title", owns="yes" if owns else "no"),
        means=words("terms-additional-limit-basis-means", meant=meant, amount=amount),
        todo=words("terms-additional-limit-basis-todo"),
        evidence=(
            fact_of(case.file, terms, "", "shared-limit-meant-for", meant),
            fact_of(case.file, terms, "", "shared-limit-amount", amount),
            *_ownership_facts(case),
        ),
    )


def _owns(case: Case) -> bool | None:
    """Tell whether a building is theirs to insure; None when the file does not say."""
    buildings = case.file.buildings
    if any(b.ownership in TO_INSURE for b in buildings):
        return True
    return False if buildings else case.file.operations.owns_premises


def _ownership_facts(case: Case) -> tuple[Fact, ...]:
    return tuple(case.file.fact(b, "ownership", "text") for b in case.file.buildings)


def damages(case: Case) -> Iterator[Finding]:
    """Find liability cover that leaves out kinds of damages, or does not say."""
    terms = case.terms
    if terms is None or lines_of(terms, "punitive-damages"):
        return
    lacking = [
        line
        for line in terms.coverages
        if set(DAMAGES) - set(DAMAGES if line.damages is None else line.damages)
    ]
    if lacking:
        yield _damages_missing(case, terms, lacking)
    elif _general(terms) and all(line.damages is None for line in terms.coverages):
        yield _damages_unstated()


def _general(terms: Terms) -> bool:
    return bool(lines_of(terms, "general-liability"))


def _damages_missing(case: Case, terms: Terms, lines: list[Coverage]) -> Finding:
    missing = [k for k in DAMAGES if any(k not in (line.damages or ()) for line in lines)]
    shown = tuple(Term("damages", kind) for kind in missing)
    return Finding(
        rule="terms.damages",
        subject=Subject("terms", "damages", words("damages-name")),
        audience=("leaders", "broker"),
        kind="know",
        priority=Priority(Tier.MONEY, reasons=(words("reason-liability-gap"),)),
        title=words("terms-damages-title", damages=shown),
        means=words("terms-damages-means", coverages=_names(lines)),
        todo=words("terms-damages-todo"),
        evidence=tuple(
            _line_fact(case, terms, line, "damages", ", ".join(line.damages or ()) or "-")
            for line in lines
        ),
    )


def _damages_unstated() -> Finding:
    return Finding(
        rule="terms.damages",
        subject=Subject("terms", "damages", words("damages-name")),
        audience=("broker",),
        kind="fix",
        priority=Priority(Tier.RECORD, reasons=(words("reason-wording-decides"),)),
        title=words("terms-damages-unstated-title"),
        means=words("terms-damages-unstated-means"),
        todo=words("terms-damages-unstated-todo"),
    )


def defence_inside(case: Case) -> Iterator[Finding]:
    """Find liability limits that lawyers' costs use up."""
    terms = case.terms
    lines = [line for line in terms.coverages if line.defence == "inside"] if terms else []
    if terms is None or not lines:
        return
    yield Finding(
        rule="terms.defence-inside",
        subject=Subject("terms", "defence", words("defence-name")),
        audience=("leaders", "broker"),
        kind="know",
        priority=Priority(Tier.MONEY, reasons=(words("reason-liability-gap"),)),
        title=words("terms-defence-inside-title", count=len(_names(lines))),
        means=words("terms-defence-inside-means", coverages=_names(lines)),
        todo=words("terms-defence-inside-todo"),
        evidence=tuple(_line_fact(case, terms, line, "defence", "inside") for line in lines),
    )


def claims_made(case: Case) -> Iterator[Finding]:
    """Find claims-made cover that lost past years, does not say since when, or is new."""
    if case.terms is None:
        return
    for line in case.terms.coverages:
        if line.claims_made:
            yield from _claims_made(case, case.terms, line)


def _claims_made(case: Case, terms: Terms, line: Coverage) -> Iterator[Finding]:
    before = _expiring_line(case, line)
    since, was = line.retroactive_date, before.retroactive_date if before else None
    kind: Kind = "decide" if leads(case, "terms.claims-made", line.coverage) else "know"
    if before and before.claims_made is False:
        yield _made(case, terms, line, "switched", kind)
    elif since and was and since > was:
        yield _made(case, terms, line, "moved", kind, since=since, was=was)
    elif since is None:
        yield _made(case, terms, line, "missing", "fix")
    if line.reporting_days is None:
        yield _no_reporting(line)


def _expiring_line(case: Case, line: Coverage) -> Coverage | None:
    if case.expiring is None or case.terms is case.expiring:
        return None
    return case.expiring.find(*line.place)


def _made(case: Case, terms: Terms, line: Coverage, what: str, kind: Kind, **days: date) -> Finding:
    facts: list[Node] = [_line_fact(case, terms, line, "claims-made", "yes")]
    if line.retroactive_date:
        facts.append(_line_fact(case, terms, line, "retroactive-date", line.retroactive_date))
    return Finding(
        rule="terms.claims-made",
        subject=Subject("coverage", line.coverage, cover(line.coverage)),
        audience=("broker",) if kind == "fix" else ("leaders", "broker"),
        kind=kind,
        priority=Priority(
            tier=Tier.RECORD if kind == "fix" else Tier.LAPSES,
            by=case.renewal,
            reasons=(words("reason-past-years"),),
        ),
        title=words(f"terms-claims-made-{what}-title", coverage=cover(line.coverage)),
        means=words(f"terms-claims-made-{what}-means", **days),
        todo=words(f"terms-claims-made-{what}-todo", day=case.renewal),
        evidence=tuple(facts),
        by=None if kind == "fix" else case.renewal,
    )


def _no_reporting(line: Coverage) -> Finding:
    return Finding(
        rule="terms.claims-made",
        subject=Subject("coverage", f"{line.coverage}/reporting", cover(line.coverage)),
        audience=("broker",),
        kind="fix",
        priority=Priority(Tier.RECORD, reasons=(words("reason-wording-decides"),)),
        title=words("terms-reporting-title", coverage=cover(line.coverage)),
        means=words("terms-reporting-means"),
        todo=words("terms-reporting-todo"),
    )


RULES: tuple[Rule, ...] = (
    Rule("terms.additional-limit-basis", "terms", additional_limit_basis),
    Rule("terms.damages", "terms", damages),
    Rule("terms.defence-inside", "terms", defence_inside),
    Rule("terms.claims-made", "coverage", claims_made),
)
