"""The offer against the present policy: what is gone, narrower, wider, and what needs reading."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from datetime import UTC, date, datetime
from decimal import Decimal
from typing import Any

import pytest

from quarterday.catalogue.speech import Speech
from quarterday.core.figure import Fact, Figure, walk
from quarterday.core.file.chain import Head, append
from quarterday.core.file.entry import Draft, Origin, Place
from quarterday.core.file.fold import fold
from quarterday.core.file.records import Building, Decision, Operations, Organisation, Terms
from quarterday.core.money import Money
from quarterday.core.reference import LANGUAGES, Reference
from quarterday.core.review.case import Case
from quarterday.core.review.finding import Finding, Tier
from quarterday.core.review.rules.people import RULES as PEOPLE_RULES
from quarterday.core.review.rules.terms import RULES, changes
from quarterday.core.review.rules.terms.agreed import not_as_agreed, not_as_requested
from quarterday.core.review.rules.terms.dropped import dropped
from quarterday.core.review.rules.terms.wider import added, better, unclear
from quarterday.core.review.rules.terms.worse import worse

CaseOf = Callable[..., Case]
TermsOf = Callable[..., Terms]
RENEWAL = date(2027, 1, 31)
SEWER = {"coverage": "sewer-backup", "limit": 100000, "deductible": 2500}
GLASS = {"coverage": "glass", "limit": 2000}
HALL = Building(id="hall", name="Main hall", basement="finished")


def the(findings: Iterable[Finding]) -> Finding:
    found = list(findings)
    assert len(found) == 1
    return found[0]


@pytest.fixture
def offered(case_of: CaseOf, terms_of: TermsOf) -> Callable[..., Case]:
    """A case with expiring and offered terms, each a list of lines."""

    def make(
        before: list[dict[str, Any]], after: list[dict[str, Any]], *records: Any, **fields: Any
    ) -> Case:
        return case_of(terms_of("issued", *before), terms_of("offered", *after, **fields), *records)

    return make


# terms.dropped


def test_a_coverage_that_is_not_offered_again_is_decided(
    offered: Callable[..., Case], canada: Reference
) -> None:
    found = the(dropped(offered([SEWER, GLASS], [GLASS], HALL)))
    assert (found.id, found.kind, found.by) == ("terms.dropped@sewer-backup", "decide", RENEWAL)
    assert found.priority.tier is Tier.LAPSES
    assert found.priority.at_risk == Money(Decimal(100000))
    say = Speech(canada, "en").say
    assert say(found.title) == "Gone from the new offer: Sewer backup"
    assert "up to $100,000" in say(found.means)
    assert [say(r) for r in found.priority.reasons] == [
        "This cover ends on January 31, 2027 unless something is done.",
        "This matters because there is a basement at Main hall.",
    ]


def test_nothing_is_dropped_when_all_is_offered_again_or_nothing_is_offered_yet(
    offered: Callable[..., Case], case_of: CaseOf, terms_of: TermsOf
) -> None:
    assert not list(dropped(offered([SEWER], [SEWER])))
    assert not list(dropped(case_of(terms_of("issued", SEWER))))
    assert not list(dropped(case_of(terms_of("offered", GLASS))))


def test_what_nobody_needs_may_go(offered: Callable[..., Case]) -> None:
    nothing = Operations(owns_premises=False, rents_premises=False)
    found = the(dropped(offered([SEWER], [], nothing)))
    assert (found.kind, found.priority.tier) == ("know", Tier.MONEY)


def test_whether_it_is_needed_and_nobody_knows_it_is_decided(offered: Callable[..., Case]) -> None:
    found = the(dropped(offered([SEWER], [])))
    assert found.kind == "decide"


@pytest.mark.parametrize(("limit", "kind"), [(4999, "know"), (5000, "decide"), (None, "decide")])
def test_a_small_coverage_that_goes_is_only_told(
    offered: Callable[..., Case], limit: int | None, kind: str
) -> None:
    assert the(dropped(offered([{**GLASS, "limit": limit}], []))).kind == kind


def test_cover_for_harm_to_people_ranks_by_duty_however_small(
    offered: Callable[..., Case],
) -> None:
    general = {"coverage": "general-liability", "limit": 1000}
    found = the(dropped(offered([general], [])))
    assert (found.kind, found.priority.tier) == ("decide", Tier.SAFETY_OR_DUTY)


def test_abuse_cover_is_left_to_its_own_rule_while_people_are_in_care(
    offered: Callable[..., Case],
) -> None:
    abuse = {"coverage": "abuse-liability", "limit": 500000}
    assert not list(dropped(offered([abuse], [], Operations(children=True))))
    assert not list(dropped(offered([abuse], [])))
    nobody = Operations(children=False, youth=False, vulnerable_adults=False,
                        day_care=False, school=False, camp=False)  # fmt: skip
    assert the(dropped(offered([abuse], [], nobody))).kind == "know"


def test_a_coverage_dropped_at_one_place_names_it(
    offered: Callable[..., Case], canada: Reference
) -> None:
    lines = [{"coverage": "glass", "location": at, "limit": 9000} for at in ("hall", "shed")]
    found = the(dropped(offered(lines, lines[1:], HALL)))
    assert Speech(canada, "en").say(found.title) == "Gone from the new offer for Main hall: Glass"


def test_the_price_of_taking_it_back_is_told_when_there_is_one(
    offered: Callable[..., Case], canada: Reference
) -> None:
    options = [{"coverage": "sewer-backup", "limit": 100000, "price": 310}]
    found = the(dropped(offered([SEWER], [], HALL, options=options)))
    assert found.priority.cost == Money(Decimal(310))
    assert Speech(canada, "en").say(found.todo).startswith("Decide: take it back for $310 a year")


def test_claims_made_cover_that_goes_calls_for_a_report_before_the_day(
    offered: Callable[..., Case], canada: Reference
) -> None:
    board = {"coverage": "directors-and-officers", "limit": 1000000, "claims_made": True}
    todo = Speech(canada, "en").say(the(dropped(offered([board], []))).todo)
    assert "Before January 31, 2027, report anything that might become a claim" in todo


# terms.worse


def test_a_narrower_coverage_is_one_finding_with_all_its_changes(
    offered: Callable[..., Case], canada: Reference
) -> None:
    after = {**SEWER, "limit": 50000, "deductible": 10000}
    found = the(worse(offered([SEWER, GLASS], [after, GLASS])))
    assert (found.id, found.kind) == ("terms.worse@sewer-backup", "decide")
    assert found.priority.at_risk == Money(Decimal(50000))
    say = Speech(canada, "en").say
    assert say(found.title) == "Sewer backup: up to $50,000 more of a loss would be yours"
    assert say(found.means) == (
        "Compared with your present policy: the limit (the most it pays) falls from $100,000 to "
        "$50,000 and the deductible (your own part of a loss) rises from $2,500 to $10,000."
    )


def test_nothing_is_worse_when_nothing_or_only_the_good_changed(
    offered: Callable[..., Case],
) -> None:
    assert not list(worse(offered([SEWER], [SEWER])))
    assert not list(worse(offered([SEWER], [{**SEWER, "deductible": 1000}])))


@pytest.mark.parametrize(("deductible", "kind"), [(7499, "know"), (7500, "decide")])
def test_a_worse_term_is_decided_from_the_parameter_s_amount_on(
    offered: Callable[..., Case], deductible: int, kind: str
) -> None:
    case = offered([SEWER], [{**SEWER, "deductible": deductible}])
    found = the(worse(case))
    assert found.kind == kind
    assert case.parameter(changes.WORTH_DECIDING) in found.evidence


@pytest.mark.parametrize(
    ("fields", "kind"),
    [
        ({"coinsurance": "0.9"}, "decide"),
        ({"basis": "actual-cash-value"}, "decide"),
        ({"excluded_causes": ("smoke",)}, "decide"),
        ({"waiting_hours": 24}, "know"),
        ({"deductible_percent": "0.02", "limit": None}, "know"),
    ],
)
def test_a_change_that_can_bite_is_decided_without_an_amount(
    offered: Callable[..., Case], fields: dict[str, Any], kind: str
) -> None:
    line = {**GLASS, "basis": "replacement", "limit": fields.get("limit", 2000)}
    found = the(worse(offered([line], [{**line, **fields}])))
    assert (found.kind, found.priority.at_risk) == (kind, None)


QUAKE = {"coverage": "earthquake", "limit": 5750000, "deductible_percent": "0.05",
         "deductible_percent_of": "value", "deductible_minimum": 10000}  # fmt: skip


def test_a_percentage_deductible_says_what_it_comes_to(
    offered: Callable[..., Case], canada: Reference
) -> None:
    # By hand: 15 % of 5,920,000 is 888,000; 5 % of 5,750,000 is 287,500; 600,500 lie between.
    after = {**QUAKE, "limit": 5920000, "deductible_percent": "0.15"}
    found = the(worse(offered([QUAKE], [after])))
    assert (found.kind, found.priority.at_risk) == ("decide", Money(Decimal(600500)))
    say = Speech(canada, "en").say
    assert say(found.title) == "Earthquake: up to $600,500 more of a loss would be yours"
    assert say(found.means).endswith(
        "Your own part of a loss could reach $888,000: 15% of the $5,920,000 insured. "
        "Today it is at most $287,500."
    )
    figure = found.evidence[0]
    assert isinstance(figure, Figure)
    assert (figure.id, figure.money) == ("terms.own-part/earthquake/*", Money(Decimal(888000)))
    assert [n.id.rpartition("/")[2] for n in figure.inputs] == ["deductible-percent", "limit"]


def test_an_amount_that_becomes_a_percentage_says_what_it_comes_to(
    offered: Callable[..., Case], canada: Reference
) -> None:
    # By hand: 2 % of 1,701,000 is 34,020, which is 31,520 more than 2,500.
    line = {"coverage": "building", "location": "hall", "limit": 1701000, "deductible": 2500}
    after = {**line, "deductible": None, "deductible_percent": "0.02",
             "deductible_percent_of": "value", "deductible_minimum": 10000}  # fmt: skip
    options = [{"coverage": "building", "location": "hall", "limit": 1701000, "deductible": 5000,
                "price": 620}]  # fmt: skip
    found = the(worse(offered([line], [after], HALL, options=options)))
    assert (found.kind, found.priority.at_risk) == ("decide", Money(Decimal(31520)))
    say = Speech(canada, "en").say
    assert say(found.means).endswith("could reach $34,020: 2% of the $1,701,000 insured. "
                                     "Today it is at most $2,500.")  # fmt: skip
    assert say(found.todo).endswith("The option gives a deductible (your own part of a loss) of "
                                    "$5,000, for $620 a year.")  # fmt: skip


@pytest.mark.parametrize(
    ("fields", "amount", "said"),
    [
        ({"deductible_minimum": 60000}, 60000, "less than the smallest deductible"),
        ({"deductible_maximum": 40000}, 40000, "a cap stops it: 10% of the $500,000 insured"),
        ({"deductible_maximum": 50000}, 50000, "could reach $50,000: 10% of the $500,000"),
    ],
)
def test_the_least_and_the_most_of_a_percentage_deductible_count(
    offered: Callable[..., Case],
    canada: Reference,
    fields: dict[str, int],
    amount: int,
    said: str,
) -> None:
    before = {**QUAKE, "limit": 500000, "deductible_percent": "0.02"}
    found = the(worse(offered([before], [{**before, "deductible_percent": "0.1", **fields}])))
    assert found.priority.at_risk == Money(Decimal(amount - 10000))
    for language in LANGUAGES:
        assert Speech(canada, language).say(found.means).endswith(".")
    assert said in Speech(canada, "en").say(found.means)


@pytest.mark.parametrize(
    ("was", "limit", "kind"), [("0.05", None, "know"), ("0.149", 5750000, "decide")]
)
def test_a_percentage_of_an_unknown_amount_stays_without_one(
    offered: Callable[..., Case], was: str, limit: int | None, kind: str
) -> None:
    before = {**QUAKE, "limit": limit, "deductible_percent": was}
    found = the(worse(offered([before], [{**before, "deductible_percent": "0.15"}])))
    assert (found.kind, found.priority.at_risk is None) == (kind, limit is None)


def test_clauses_with_a_rule_of_their_own_are_not_told_twice(offered: Callable[..., Case]) -> None:
    line = {"coverage": "general-liability"}
    before = {**line, "defence": "outside", "qualified": True, "damages": ("punitive",)}
    after = {**line, "defence": "inside", "qualified": False, "damages": ()}
    assert not list(worse(offered([before], [after])))


def test_the_same_change_at_several_buildings_is_told_once(
    offered: Callable[..., Case], canada: Reference
) -> None:
    before = [{"coverage": "building", "location": at, "deductible": 1000} for at in ("a", "b")]
    after = [{**line, "deductible": 9000} for line in before]
    buildings = (Building(id="a", name="Chapel"), Building(id="b", name="Manse"))
    found = the(worse(offered(before, after, *buildings)))
    said = Speech(canada, "en").say(found.means)
    assert said.endswith("rises from $1,000 to $9,000 (Chapel and Manse).")
    assert said.count("deductible") == 1


def test_a_change_at_one_building_names_it_in_the_title(
    offered: Callable[..., Case], canada: Reference
) -> None:
    line = {"coverage": "building", "location": "hall", "limit": 900000}
    found = the(worse(offered([line], [{**line, "limit": 850000}], HALL)))
    said = Speech(canada, "en").say(found.title)
    assert said == "Building (Main hall): up to $50,000 more of a loss would be yours"


def test_a_grave_change_is_the_title(offered: Callable[..., Case], canada: Reference) -> None:
    line = {"coverage": "building", "limit": 900000, "basis": "replacement"}
    after = {**line, "limit": 890000, "coinsurance": "0.9"}
    found = the(worse(offered([line], [after])))
    assert Speech(canada, "en").say(found.title) == (
        "Building: a coinsurance rule of 90% now applies "
        "(it cuts what is paid when the sum insured is too low)"
    )


def test_coverages_that_change_alike_share_a_finding(
    offered: Callable[..., Case], canada: Reference
) -> None:
    before = [{"coverage": id, "location": "hall"} for id in ("building", "contents", "glass")]
    after = [{**line, "coinsurance": "0.9"} for line in before[:2]] + before[2:]
    found = the(worse(offered(before, after, HALL)))
    assert found.id == "terms.worse@building+contents"
    assert Speech(canada, "en").say(found.title).startswith("Building and Contents (Main hall): ")
    assert {e.id.split("/")[4] for e in found.evidence if e.id.startswith("terms/")} == {
        "building",
        "contents",
    }
    apart = [{**after[0], "coinsurance": "0.8"}, *after[1:]]
    assert len(list(worse(offered(before, apart, HALL)))) == 2


@pytest.mark.parametrize(
    ("coverage", "until", "kind"),
    [
        ("building", None, "decide"),
        ("building", date(2027, 6, 1), None),
        ("contents", date(2027, 6, 1), "know"),
    ],
)
def test_an_agreed_value_that_ends_early_is_left_to_the_rule_about_values(
    offered: Callable[..., Case], coverage: str, until: date | None, kind: str | None
) -> None:
    line = {"coverage": coverage, "agreed_value_until": RENEWAL}
    found = list(worse(offered([line], [{**line, "agreed_value_until": until}])))
    assert [f.kind for f in found] == ([kind] if kind else [])


def test_the_key_of_many_coverages_stays_short(offered: Callable[..., Case]) -> None:
    """What sets a finding aside keeps its id in eighty characters."""
    ids = ("building", "contents", "equipment", "outdoor-property", "organ-and-fine-arts", "glass")
    before = [{"coverage": id} for id in ids]
    found = the(worse(offered(before, [{**line, "coinsurance": "0.9"} for line in before])))
    assert found.id == "terms.worse@building+5"


@pytest.mark.parametrize(("qualified", "kind"), [(True, "decide"), (False, "know")])
def test_abuse_cover_that_waits_for_the_declaration_is_decided_there(
    offered: Callable[..., Case], qualified: bool, kind: str
) -> None:
    abuse = {"coverage": "abuse-liability", "limit": 2000000, "qualified": True}
    after = {**abuse, "limit": 250000, "qualified": qualified}
    found = the(worse(offered([abuse], [after], Operations(children=True))))
    assert (found.kind, found.priority.tier) == (kind, Tier.SAFETY_OR_DUTY)


FAMILY = ("abuse-defence", "abuse-liability", "abuse-therapy")
IN_CARE = Operations(children=True)


def _changed(**fields: Any) -> list[dict[str, Any]]:
    line: dict[str, Any] = {"limit": 900000, "qualified": True, "claims_made": True,
                            "reporting_days": 90, "retroactive_date": date(2010, 1, 1)}  # fmt: skip
    return [{"coverage": id, **line, **fields} for id in FAMILY]


@pytest.mark.parametrize(
    ("after", "rule"),
    [
        (_changed(qualified=False, limit=50000), None),
        ([], None),
        (_changed()[1:2], "terms.dropped"),
        (_changed(retroactive_date=RENEWAL), "terms.claims-made"),
        ([{**line, "limit": 5000 * n} for n, line in enumerate(_changed(), 1)], "terms.worse"),
        ([{**_changed()[1], "limit": 5000, "retroactive_date": RENEWAL}], "terms.dropped"),
    ],
    ids=["unqualified", "all gone", "two gone", "past lost", "narrower", "all at once"],
)
def test_the_abuse_family_is_decided_once_and_first_by_the_prevention_plan(
    offered: Callable[..., Case], after: list[dict[str, Any]], rule: str | None
) -> None:
    case = offered(_changed(), after, IN_CARE)
    found = [f for r in (*RULES, *PEOPLE_RULES) for f in r.find(case)]
    decided = [f.rule for f in found if f.kind == "decide" and "abuse" in f.id]
    assert decided == [rule or "people.abuse-unqualified"]
    assert len([f for f in found if "abuse" in f.subject.key]) > 1


def test_narrower_abuse_cover_asks_for_the_declaration_and_nothing_else(
    offered: Callable[..., Case], canada: Reference
) -> None:
    case = offered(_changed()[:1], _changed(limit=5000)[:1], IN_CARE)
    for language, said in (("en", "declaration comes first"), ("fr", "passe d'abord")):
        todo = Speech(canada, language).say(the(worse(case)).todo).replace("\u2019", "'")
        assert said in todo


@pytest.mark.parametrize(("limit", "cost"), [(100000, 310), (99999, None)])
def test_an_option_counts_as_a_way_back_only_when_it_gives_as_much(
    offered: Callable[..., Case], limit: int, cost: int | None
) -> None:
    options = [{"coverage": "sewer-backup", "limit": limit, "price": 310}]
    found = the(worse(offered([SEWER], [{**SEWER, "limit": 50000}], options=options)))
    assert found.priority.cost == (None if cost is None else Money(Decimal(cost)))


def test_a_smaller_shared_limit_is_worse_for_the_terms_as_a_whole(
    case_of: CaseOf, terms_of: TermsOf, canada: Reference
) -> None:
    shared = {"amount": 250000, "tops_up": ["by-laws"]}
    found = the(
        worse(
            case_of(
                terms_of("issued", shared_limit=shared),
                terms_of("offered", shared_limit={**shared, "amount": 150000}),
            )
        )
    )
    assert (found.id, found.subject.kind, found.kind) == ("terms.worse", "terms", "decide")
    assert Speech(canada, "en").say(found.title).startswith("The terms as a whole: up to $100,000")


# Evidence


def test_what_moves_is_a_figure_made_of_both_versions(offered: Callable[..., Case]) -> None:
    found = the(worse(offered([SEWER], [{**SEWER, "limit": 50000}])))
    figure = found.evidence[0]
    assert isinstance(figure, Figure)
    assert (figure.id, figure.money) == ("terms.moved/sewer-backup/*/limit", Money(Decimal(50000)))
    assert [(n.id, n.value) for n in figure.inputs] == [
        ("terms/2026-01-31/issued/coverages/sewer-backup/*/limit", Money(Decimal(100000))),
        ("terms/2027-01-31/offered/coverages/sewer-backup/*/limit", Money(Decimal(50000))),
    ]


def test_a_fact_of_terms_knows_the_row_of_its_line(canada: Reference, terms_of: TermsOf) -> None:
    rows = {"coverages/sewer-backup/*": 12, "coverages/glass/*": 13}
    places = tuple(Place(sheet="Coverages", row=row, part=part) for part, row in rows.items())
    terms = (terms_of("issued", SEWER, GLASS), terms_of("offered", GLASS))
    head, entries = Head(), []
    for record in (Organisation(name="Elm Grove Hall", province="ON"), *terms):
        origin = Origin(way="workbook", name="book.xlsx", places=places)
        draft = Draft("load", record.kind, record.key, record.body(), origin)
        when = datetime(2026, 11, 1, 12, tzinfo=UTC)
        entry = append(head, draft, file="elm", by="test", recorded_at=when, salt="00")
        entries.append(entry)
        head = Head(entry.seq, entry.digest)
    found = the(dropped(Case(fold("elm", entries), canada, date(2026, 11, 25))))
    facts = [n for e in found.evidence for _, n in walk(e) if isinstance(n, Fact)]
    assert [p.row for p in facts[0].origin.places] == [12]


# terms.added, terms.better, terms.unclear


def test_all_that_is_better_is_one_finding(offered: Callable[..., Case], canada: Reference) -> None:
    after = [{**SEWER, "limit": 150000}, {**GLASS, "limit": 3000}, {"coverage": "travel"}]
    case = offered([SEWER, GLASS], after)
    found = the(better(case))
    assert (found.id, found.kind, found.priority.tier) == ("terms.better", "know", Tier.RECORD)
    say = Speech(canada, "en").say
    assert say(found.title) == "2 parts of the offer are better than your present policy"
    new = the(added(case))
    assert say(new.title) == "One cover is new in the offer"
    assert say(new.means) == "New: Travel and short-term trips: newly covered."


@pytest.mark.parametrize(("limit", "told"), [(945000, False), (945001, True)])
def test_the_usual_yearly_rise_of_a_sum_insured_is_not_better(
    offered: Callable[..., Case], limit: int, told: bool
) -> None:
    line = {"coverage": "building", "location": "hall", "limit": 900000}
    assert bool(list(better(offered([line], [{**line, "limit": limit}], HALL)))) is told


@pytest.mark.parametrize(
    ("contents", "said"),
    [(103000, "rise by about 3%, as"), (101000, "rise by about 1% to 3%, as")],
)
def test_the_usual_rise_of_all_sums_insured_is_one_phrase_beside_what_is_better(
    offered: Callable[..., Case], canada: Reference, contents: int, said: str
) -> None:
    sums = [{"coverage": "building", "limit": 900000}, {"coverage": "contents", "limit": 100000}]
    after = [{**sums[0], "limit": 927000}, {**sums[1], "limit": contents}]
    found = the(better(offered([*sums, SEWER], [*after, {**SEWER, "limit": 150000}])))
    say = Speech(canada, "en").say
    assert say(found.title) == "One part of the offer is better than your present policy"
    assert said in say(found.means)
    assert "Building" not in say(found.means)


def test_liability_that_rises_a_little_is_better(offered: Callable[..., Case]) -> None:
    line = {"coverage": "general-liability", "limit": 5000000}
    found = the(better(offered([line], [{**line, "limit": 5100000}])))
    assert (found.rule, found.kind) == ("terms.better", "know")


def test_nothing_better_and_nothing_new_is_no_finding(offered: Callable[..., Case]) -> None:
    case = offered([SEWER], [SEWER])
    assert not [*better(case), *added(case), *unclear(case)]


@pytest.mark.parametrize(("count", "more"), [(4, ""), (5, "and one more"), (7, "and 3 more")])
def test_a_long_list_says_how_many_more(
    offered: Callable[..., Case], canada: Reference, count: int, more: str
) -> None:
    ids = ("glass", "travel", "umbrella", "key-person", "counterfeit", "money-inside", "earthquake")
    found = the(added(offered([], [{"coverage": id} for id in ids[:count]])))
    said = Speech(canada, "en").say(found.means)
    assert said.endswith(f"{more}.") if more else "more" not in said


def test_what_only_the_wording_can_say_goes_to_the_broker(
    offered: Callable[..., Case], canada: Reference
) -> None:
    case = offered([{**GLASS, "wording": "G 2024"}], [{**GLASS, "wording": "G 2026"}])
    found = the(unclear(case))
    assert (found.audience, found.kind) == (("broker",), "fix")
    assert "the wording goes from G 2024 to G 2026" in Speech(canada, "en").say(found.means)
    assert not list(worse(case))


# terms.not-as-requested, terms.not-as-agreed


def test_an_offer_below_the_request_is_corrected(case_of: CaseOf, terms_of: TermsOf) -> None:
    asked = terms_of("requested", {**SEWER, "limit": 250000}, GLASS)
    given = terms_of("offered", {**SEWER, "limit": 100000, "deductible": 1000})
    found = the(not_as_requested(case_of(asked, given)))
    assert (found.kind, found.audience) == ("fix", ("broker", "insurer"))
    assert found.priority.at_risk == Money(Decimal(150000))
    assert dict(found.title.args)["count"] == 2
    assert not list(not_as_requested(case_of(given)))
    assert not list(not_as_requested(case_of(given, terms_of("requested", SEWER))))


def test_a_policy_below_its_offer_is_corrected(case_of: CaseOf, terms_of: TermsOf) -> None:
    offer = terms_of("offered", SEWER, start=date(2026, 1, 31))
    found = the(not_as_agreed(case_of(offer, terms_of("issued", {**SEWER, "limit": 1}))))
    assert (found.id, found.kind) == ("terms.not-as-agreed", "fix")
    assert not list(not_as_agreed(case_of(offer, terms_of("issued", SEWER))))
    assert not list(not_as_agreed(case_of(terms_of("issued", SEWER))))


@pytest.mark.parametrize(
    ("answer", "renewal", "count"),
    [
        ("take-it", date(2026, 1, 31), 1),
        ("leave-it", date(2026, 1, 31), 0),
        ("take-it", date(2025, 1, 31), 0),
    ],
)
def test_an_option_that_was_taken_must_be_in_the_policy(
    case_of: CaseOf, terms_of: TermsOf, answer: str, renewal: date, count: int
) -> None:
    decision = Decision.model_validate(
        {
            "renewal": renewal,
            "question": "terms.option-open@travel",
            "answer": answer,
            "decided_on": date(2026, 1, 10),
            "by": "the board",
        }
    )
    offer, issued = terms_of("offered", start=date(2026, 1, 31)), terms_of("issued")
    assert len(list(not_as_agreed(case_of(offer, issued, decision)))) == count
    with_it = terms_of("issued", {"coverage": "travel"})
    assert not list(not_as_agreed(case_of(offer, with_it, decision)))


# All of the family


def _everything(offered: Callable[..., Case]) -> list[Finding]:
    building = {"coverage": "building", "location": "hall", "limit": 900000}
    before = [
        SEWER, GLASS, building, {"coverage": "loss-of-income", "limit": 60000},
        {"coverage": "directors-and-officers", "claims_made": True, "defence": "outside",
         "retroactive_date": date(2010, 1, 1)},
    ]  # fmt: skip
    after = [
        {**SEWER, "limit": 40000}, {**GLASS, "limit": 3000, "wording": "G 2026"},
        {**building, "basis": "functional"}, {"coverage": "travel", "limit": 9},
        {"coverage": "directors-and-officers", "claims_made": True, "defence": "inside",
         "retroactive_date": date(2027, 1, 31)},
        {"coverage": "general-liability", "damages": ("punitive",)},
    ]  # fmt: skip
    shared = {"amount": 100, "tops_up": ["by-laws"], "meant_for": "renter"}
    options = [{"coverage": "umbrella", "price": 90}, {"coverage": "glass", "limit": 9000}]
    empty = HALL.model_copy(update={"unoccupied_since": date(2026, 10, 1)})
    case = offered(before, after, empty, Operations(volunteers=3, largest_event=400),
                   shared_limit=shared, options=options, vacancy_days=30)  # fmt: skip
    return [finding for rule in RULES for finding in rule.find(case)]


@pytest.mark.parametrize("language", LANGUAGES)
def test_every_sentence_of_the_family_can_be_spoken(
    offered: Callable[..., Case], canada: Reference, language: str
) -> None:
    speech = Speech(canada, language)
    findings = _everything(offered)
    assert {f.rule for f in findings} >= {
        "terms.dropped", "terms.worse", "terms.better", "terms.added", "terms.unclear",
        "terms.option-open", "terms.damages", "terms.defence-inside", "terms.claims-made",
        "terms.vacancy", "terms.additional-limit-basis",
    }  # fmt: skip
    for finding in findings:
        for words in (finding.means, finding.todo, *finding.priority.reasons):
            assert speech.say(words).endswith("."), finding.id
        assert not speech.say(finding.title).endswith("."), finding.id
        assert speech.say(finding.subject.name)
        for node in finding.evidence:
            assert speech.parts(node).label


def test_no_two_findings_of_the_family_share_an_id(offered: Callable[..., Case]) -> None:
    ids = [f.id for f in _everything(offered)]
    assert len(set(ids)) == len(ids)


def test_rules_name_only_parameters_that_exist(canada: Reference) -> None:
    for rule in RULES:
        assert set(rule.parameters) <= set(canada.parameters)
