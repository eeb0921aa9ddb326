"""Whether valuations can be relied on: their age, their basis, features and contents."""

from __future__ import annotations

from collections.abc import Iterator

from quarterday.core.figure import Node
from quarterday.core.file.records import Building, Valuation
from quarterday.core.file.records.terms import EVERYWHERE, Coverage
from quarterday.core.review.case import Case
from quarterday.core.review.finding import Finding, Kind, Priority, Subject, Tier
from quarterday.core.review.rules.values.common import about, asked_by, for_answer, parameter_number
from quarterday.core.review.rules.values.doubt import Doubt, doubt, independent
from quarterday.core.review.rules.values.insured import below
from quarterday.core.review.told import telling
from quarterday.core.values.building import BuildingPicture
from quarterday.core.values.facts import basis_fact, line_fact
from quarterday.core.words import Words, words

STALE = "values.valuation-stale"
_TODO: dict[Kind, str] = {"decide": "todo", "know": "todo-know"}
FORMS = ("statement-of-values",)


def valuation_stale(case: Case) -> Iterator[Finding]:
    """Find each insured building without a valuation that can be relied on.

    One building is put to the leaders, the one insured for most: who values it can see the others
    on the same visit. A building whose gap is put to them already is not asked about twice.
    """
    doubted = [(p, why) for p in case.pictures.values() if (why := doubt(case, p)) is not None]
    short = {picture.building.id for picture in below(case)}
    free = [p for p, why in doubted if why != "unknown" and p.building.id not in short]
    first = max(free, key=lambda p: p.sum_insured.money.amount, default=None)
    for picture, why in doubted:
        kind: Kind = "decide" if picture is first else "know"
        yield _stale(case, picture, why, "send back" if why == "unknown" else kind)


def _stale(case: Case, picture: BuildingPicture, why: Doubt, kind: Kind) -> Finding:
    newest = independent(case, picture) or picture.valuation
    say = telling(
        STALE,
        building=picture.building.name,
        day=newest.valued_on if newest else case.renewal,
        years=int(parameter_number(case, "values.stale-years")),
        amount=picture.sum_insured.money,
    )
    return Finding(
        rule=STALE,
        subject=about(picture.building),
        audience=("leaders", "broker"),
        kind=kind,
        priority=Priority(Tier.RECORD, reasons=(say(f"reason-{why}"), *_unreached(picture))),
        title=say(f"title-{why}"),
        means=say("means"),
        todo=say("todo-unknown" if why == "unknown" else _TODO[kind]),
        evidence=(picture.sum_insured, *_valuation_facts(case, newest)),
        encloses=FORMS if kind == "send back" else ("building-values",),
        by=asked_by(case),
    )


def _unreached(picture: BuildingPicture) -> tuple[Words, ...]:
    """Return why a value on file cannot be brought to today's costs; nothing where it can."""
    if picture.valuation is None or picture.not_indexed is None:
        return ()
    return (picture.not_indexed,)


def _valuation_facts(case: Case, valuation: Valuation | None) -> tuple[Node, ...]:
    if valuation is None:
        return ()
    day = case.file.fact(valuation, "valued_on", "date")
    return (day, basis_fact(case.file, valuation))


def unvalued_features(case: Case, building: Building) -> tuple[str | Words, ...]:
    """Return the special features of a building that nobody valued, as people say them.

    A heritage building needs a formal appraisal: cost guides do not know its craft.
    """
    features = case.file.valuations(building.id, "feature")
    valued = {(v.feature or "").casefold() for v in features}
    missing: list[str | Words] = [
        f for f in building.special_features if f.casefold() not in valued
    ]
    appraised = any(v.basis == "formal-appraisal" for v in case.file.valuations(building.id))
    if building.heritage and not appraised:
        missing.insert(0, words("values-heritage"))
    return tuple(missing)


def special_features(case: Case) -> Iterator[Finding]:
    """Find each insured building with a feature, or a heritage building, nobody valued as such."""
    for picture in case.pictures.values():
        missing = unvalued_features(case, picture.building)
        if missing:
            yield _features(case, picture, missing)


def _features(case: Case, picture: BuildingPicture, missing: tuple[str | Words, ...]) -> Finding:
    rule = "values.special-features"
    building = picture.building
    say = telling(rule, building=building.name, features=missing, n=len(missing))
    return for_answer(case, rule, building, say, (picture.sum_insured,))


def contents_unlisted(case: Case) -> Iterator[Finding]:
    """Find each place whose contents are insured and were never listed item by item."""
    lines = case.terms.coverages if case.terms else ()
    for line in lines:
        insured = line.coverage == "contents" and line.limit
        if insured and not any(_listed(case, id) for id in _places(case, line)):
            yield _unlisted(case, line)


def _places(case: Case, line: Coverage) -> tuple[str, ...]:
    if line.location != EVERYWHERE:
        return (line.location,)
    return tuple(building.id for building in case.file.buildings)


def _listed(case: Case, building: str) -> bool:
    return any(v.itemised for v in case.file.valuations(building, "contents"))


def _unlisted(case: Case, line: Coverage) -> Finding:
    assert case.terms is not None
    assert line.limit is not None
    building = case.file.get(Building, line.location)
    rule = "values.contents-unlisted"
    amount = case.terms.money(line.limit)
    say = telling(rule, building=case.building_name(line.location), amount=amount)
    everywhere = Subject("organisation", "", case.file.organisation.name)
    ending = "" if building else "-everywhere"
    return Finding(
        rule=rule,
        subject=about(building) if building else everywhere,
        audience=("leaders", "broker"),
        kind="send back",
        priority=Priority(Tier.RECORD, reasons=(say("reason"),)),
        title=say(f"title{ending}"),
        means=say("means"),
        todo=say("todo"),
        evidence=(line_fact(case.file, case.terms, line, "limit", "money"),),
        encloses=FORMS,
        by=case.renewal,
    )
