"""Coverages that are open: not in the terms though the organisation needs them, or on offer.

Abuse cover and the cover of a declared activity have rules of their own in the family ``people``,
and what the offer drops is told by ``terms.dropped``.
What could really hurt is told alone, up to a number; the other options are one finding together, so
that the agenda stays short. What the library misses beyond that goes to the broker.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from quarterday.core.figure import Node
from quarterday.core.file.records import Building, Terms
from quarterday.core.file.records.terms import EVERYWHERE, Option
from quarterday.core.money import Money
from quarterday.core.reference import CoverageType
from quarterday.core.review.case import Case
from quarterday.core.review.finding import Finding, Priority, Rule, Subject, Tier
from quarterday.core.review.need import Need, need
from quarterday.core.review.priority import ordered
from quarterday.core.review.rules.shortage import asked_about
from quarterday.core.review.rules.terms.abuse import is_abuse, waits_for_declaration
from quarterday.core.review.rules.terms.changes import (
    MOST_NAMED,
    TO_INSURE,
    is_gone,
    reasons,
    shortened,
)
from quarterday.core.review.rules.terms.evidence import cover
from quarterday.core.review.rules.terms.offers import (
    amounts_of,
    figures_of,
    option_facts,
    option_of,
    price_of,
    priced,
    row_of,
)
from quarterday.core.risk.choices import OptionRow
from quarterday.core.risk.told import option_told
from quarterday.core.terms.option import changes_deductible, without_deductible
from quarterday.core.terms.presence import gives
from quarterday.core.values.cost import number
from quarterday.core.words import Words, words

TOLD_ALONE = "terms.options-told-alone"
ACTIVITY_COVERAGES: tuple[str, ...] = (
    "travel",
    "hall-rental-liability",
    "non-owned-vehicle",
    "products-liability",
    "counselling-liability",
    "construction-in-progress",
)
_ABUSE = "abuse"


@dataclass(frozen=True, slots=True)
class Gap:
    """A coverage the terms do not give, whether it is needed, and the option on offer for it."""

    coverage: CoverageType
    need: Need
    option: Option | None
    building: Building | None = None

    @property
    def key(self) -> str:
        """The coverage, and the building when only one lacks it."""
        return f"{self.coverage.id}/{self.building.id}" if self.building else self.coverage.id


def gap_of(case: Case, terms: Terms, coverage: CoverageType) -> Gap | None:
    """Return the gap that ``terms`` leave at ``coverage``; None when they give it."""
    if gives(terms, coverage.id):
        return None
    return Gap(coverage, need(coverage.needed_when, case.file), option_of(terms, coverage.id))


def _gaps(case: Case, terms: Terms) -> Iterator[Gap]:
    for coverage in case.reference.coverages.values():
        found = gap_of(case, terms, coverage)
        if found and coverage.family != _ABUSE and not is_gone(case, coverage.id):
            yield found
        elif coverage.id == "building":
            yield from _uninsured_buildings(case, terms, coverage)


def _uninsured_buildings(case: Case, terms: Terms, coverage: CoverageType) -> Iterator[Gap]:
    """Yield a gap for each building that is theirs to insure and has no line of its own."""
    for building in case.file.buildings:
        if building.ownership in TO_INSURE and not gives(terms, coverage.id, building.id):
            option = option_of(terms, coverage.id, building.id)
            owned = words("reason-building-ownership", building=building.name)
            facts = (case.file.fact(building, "ownership", "text"),)
            yield Gap(coverage, Need("yes", (owned,), facts), option, building)


def _hurts(case: Case, gap: Gap) -> bool:
    condition = gap.coverage.hurts_when
    return condition is not None and need(condition, case.file).answer == "yes"


def option_open(case: Case) -> Iterator[Finding]:
    """Find needed coverages that are open, options on offer, and what must be asked first."""
    terms = case.terms
    if terms is None:
        return
    gaps = [g for g in _gaps(case, terms) if g.coverage.id not in ACTIVITY_COVERAGES]
    needed = [g for g in gaps if g.need.answer == "yes"]
    alone = ordered(_alone(case, terms, gap) for gap in needed if _hurts(case, gap))
    told = alone[: int(number(case.parameter(TOLD_ALONE)))]
    yield from told
    rest = [g for g in needed if g.key not in {f.subject.key for f in told}]
    yield from _together(case, terms, rest)
    yield from _for_broker(rest)
    yield from _questions(case, gaps, terms)


def _alone(case: Case, terms: Terms, gap: Gap) -> Finding:
    price = price_of(terms, gap.option)
    row, named = row_of(case, gap.option), _named(gap)
    limit = terms.money(gap.option.limit) if gap.option and gap.option.limit else None
    means = words("terms-option-open-means", **_why(gap.need), **_limited(limit))
    return Finding(
        rule="terms.option-open",
        subject=Subject("coverage", gap.key, named),
        audience=("leaders", "broker"),
        kind="decide",
        priority=Priority(
            tier=Tier.SAFETY_OR_DUTY if gap.coverage.safety else Tier.MONEY,
            at_risk=_at_risk(row) if row else limit,
            cost=price,
            reasons=reasons(gap.need),
        ),
        title=words("terms-option-open-title", coverage=named, **priced(price)),
        means=with_change(means, row),
        todo=words("terms-option-open-todo", case="ask" if price is None else "price"),
        evidence=(*figures_of(row), *option_facts(case, terms, gap.option), *gap.need.facts),
        encloses=("options", "decisions-form"),
    )


def _at_risk(row: OptionRow) -> Money | None:
    """Return what an option keeps from the organisation in a 1-in-100 year; None for nothing."""
    saved = row.saves_in_bad_year
    return saved if saved and saved.amount > 0 else None


def with_change(means: Words, row: OptionRow | None) -> Words:
    """Return ``means``, and after it what an option would change where that was measured."""
    told = option_told(row) if row else None
    return words("said-then", first=means, then=told) if told else means


def _named(gap: Gap) -> Words:
    if gap.building is None:
        return cover(gap.coverage.id)
    return words("coverage-at", coverage=cover(gap.coverage.id), place=gap.building.name)


def _limited(limit: Money | None) -> dict[str, str | Money]:
    return {"limit": limit, "case": "limit"} if limit else {"case": "plain"}


def _why(needed: Need) -> dict[str, str | tuple[Words, ...]]:
    if not needed.because:
        return {"why": "always"}
    return {"because": needed.because, "why": "because"}


def _together(case: Case, terms: Terms, rest: list[Gap]) -> Iterator[Finding]:
    """Yield one finding for the options on offer that are not told alone."""
    gaps = {(g.option.coverage, g.option.location) for g in rest if g.option}
    told = {d.coverage for d in case.changes if d.direction == "worse"} | asked_about(case)
    found = [
        option
        for option in terms.options
        if (option.coverage, option.location) in gaps
        or (
            (gives(terms, option.coverage) and option.coverage not in told)
            and not _told_with_the_plan(case, option)
        )
    ]
    if not found:
        return
    offers = shortened(case, [_offer(case, terms, option) for option in found])
    names = tuple(_name(case, option) for option in found)
    yield Finding(
        rule="terms.option-open",
        subject=Subject("terms", "others", words("options-together")),
        audience=("leaders", "broker"),
        kind="decide",
        priority=_of_together(case, terms, found),
        title=words("terms-options-together-title", count=len(found), options=names),
        means=words("terms-options-together-means", options=offers),
        todo=words("terms-options-together-todo", count=len(found)),
        evidence=tuple(_of_options(case, terms, found)),
        encloses=("options", "decisions-form"),
    )


def _of_together(case: Case, terms: Terms, found: list[Option]) -> Priority:
    """Return the priority of options told together: one alone has its price and what it saves."""
    reasons = (words("reason-smaller-options"),)
    if len(found) > 1:
        return Priority(Tier.MONEY, reasons=reasons)
    row = row_of(case, found[0])
    at_risk = _at_risk(row) if row else None
    return Priority(
        Tier.MONEY, at_risk=at_risk, cost=price_of(terms, found[0]), reasons=reasons
    )  # fmt: skip


def _of_options(case: Case, terms: Terms, found: list[Option]) -> Iterator[Node]:
    """Yield the facts of options and the figures of what they would change."""
    for option in found:
        yield from figures_of(row_of(case, option))
        yield from option_facts(case, terms, option)


def _offer(case: Case, terms: Terms, option: Option) -> Words:
    """Return an option in words: what it adds or raises, where, and its price."""
    return words(
        "option-offer",
        coverage=_name(case, option),
        **_act(terms, option),
        **priced(price_of(terms, option)),
    )


def _act(terms: Terms, option: Option) -> dict[str, str | Money | Words]:
    """Return whether an option adds or raises a cover, with the amounts that are known."""
    line = terms.find(option.coverage, option.location)
    has = gives(terms, option.coverage)
    if option.limit is None:
        return {"act": "widen" if has else "add"}
    amounts = amounts_of(terms, option)
    if not has:
        return {"act": "add-up-to", "amounts": amounts}
    if line is None or line.limit is None or line.limit >= option.limit:
        return {"act": "widen"}
    if not changes_deductible(line, option):  # it is the limit alone that changes
        amounts = amounts_of(terms, without_deductible(option))
    return {"act": "raise", "amounts": amounts, "now": terms.money(line.limit)}


def _name(case: Case, option: Option) -> Words:
    if option.location == EVERYWHERE:
        return cover(option.coverage)
    place = case.building_name(option.location)
    return words("coverage-at", coverage=cover(option.coverage), place=place)


def _told_with_the_plan(case: Case, option: Option) -> bool:
    """Tell whether the finding about the prevention plan tells an option for abuse cover."""
    return is_abuse(case, option.coverage) and waits_for_declaration(case)


def _for_broker(rest: list[Gap]) -> Iterator[Finding]:
    """Yield what the library says is needed and nobody has priced."""
    found = [g for g in rest if g.option is None]
    if not found:
        return
    yield Finding(
        rule="terms.option-open",
        subject=Subject("terms", "library", words("coverages-not-shown")),
        audience=("broker",),
        kind="know",
        priority=Priority(Tier.RECORD, reasons=(words("reason-maybe-inside-another"),)),
        title=words("terms-not-shown-title", count=len(found)),
        means=words("terms-not-shown-means", coverages=tuple(_named(g) for g in found)),
        todo=words("terms-not-shown-todo"),
        evidence=tuple({f.id: f for g in found for f in g.need.facts}.values()),
    )


def _questions(case: Case, gaps: list[Gap], terms: Terms) -> Iterator[Finding]:
    """Yield the questions nobody answered that decide whether a coverage is needed."""
    activities = (gap_of(case, terms, c) for c in case.reference.coverages.values()
                  if c.id in ACTIVITY_COVERAGES)  # fmt: skip
    unknown = [g for g in (*gaps, *activities) if g and g.need.answer == "unknown"]
    asked = tuple(dict.fromkeys(q for g in unknown for q in g.need.open_questions))
    if not asked:
        return
    of_buildings = any(subject == "building" for g in unknown for subject, _ in g.need.asks)
    yield Finding(
        rule="terms.option-open",
        subject=Subject("operations", "questions", words("open-questions")),
        audience=("leaders", "broker"),
        kind="send back",
        priority=Priority(Tier.RECORD, reasons=(words("reason-unanswered"),)),
        title=words("terms-questions-title", count=len(asked)),
        means=words("terms-questions-means", questions=shortened(case, asked)),
        todo=words("terms-questions-todo"),
        encloses=("operations-form", *(("statement-of-values",) if of_buildings else ())),
    )


RULES: tuple[Rule, ...] = (
    Rule("terms.option-open", "coverage", option_open, (TOLD_ALONE, MOST_NAMED)),
)
