"""Two versions of terms: what differs, which way it goes, and how much it moves.

Directions are common practice, no source, unless a test names one.
"""

from __future__ import annotations

from collections.abc import Callable
from datetime import date
from decimal import Decimal
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from quarterday.catalogue.load import reference
from quarterday.catalogue.speech import Speech
from quarterday.core.file.records import Terms
from quarterday.core.file.records.terms import Coverage, SharedLimit
from quarterday.core.money import Money
from quarterday.core.reference import LANGUAGES
from quarterday.core.terms.compare import compare
from quarterday.core.terms.difference import MIRRORED, Difference, DifferenceKind
from quarterday.core.words import Rate, Term

Changed = Callable[[dict[str, Any], dict[str, Any]], tuple[Difference, ...]]
TermsOf = Callable[..., Terms]
DAY, LATER = date(2010, 1, 1), date(2020, 1, 1)
END = date(2027, 12, 1)

# kind, before, after, direction
CASES: tuple[tuple[DifferenceKind, dict[str, Any], dict[str, Any], str], ...] = (
    ("limit", {"limit": 100}, {"limit": 200}, "better"),
    ("limit", {"limit": None}, {"limit": 200}, "cannot say"),
    ("limit-basis", {"limit_basis": "per-occurrence"}, {"limit_basis": "aggregate"}, "worse"),
    ("limit-basis", {"limit_basis": "per-building"}, {"limit_basis": "blanket"}, "better"),
    ("limit-basis", {"limit_basis": "per-claim"}, {"limit_basis": "per-occurrence"}, "cannot say"),
    ("limit-basis", {"limit_basis": "per-claim"}, {"limit_basis": None}, "cannot say"),
    ("aggregate", {"aggregate": 500}, {"aggregate": 400}, "worse"),
    ("aggregate", {"aggregate": None}, {"aggregate": 400}, "worse"),
    ("sublimit", {"sublimit_of": None}, {"sublimit_of": "contents"}, "worse"),
    ("sublimit", {"sublimit_of": "contents"}, {"sublimit_of": "equipment"}, "cannot say"),
    ("deductible", {"deductible": 1000}, {"deductible": 2500}, "worse"),
    ("deductible", {"deductible": None}, {"deductible": 2500}, "worse"),
    ("deductible", {"deductible": None}, {"deductible": 0}, "neutral"),
    (
        "deductible-percent",
        {"deductible_percent": "0.02"},
        {"deductible_percent": "0.05"},
        "worse",
    ),
    (
        "deductible-percent-of",
        {"deductible_percent": "0.02", "deductible_percent_of": "value"},
        {"deductible_percent": "0.02", "deductible_percent_of": "loss"},
        "better",
    ),
    (
        "deductible-percent-of",
        {"deductible_percent": "0.02", "deductible_percent_of": "value"},
        {"deductible_percent": "0.02", "deductible_percent_of": "limit"},
        "cannot say",
    ),
    ("deductible-minimum", {}, {"deductible_minimum": 5000}, "worse"),
    ("deductible-maximum", {}, {"deductible_maximum": 50000}, "better"),
    ("waiting", {"waiting_hours": 24}, {"waiting_hours": 72}, "worse"),
    ("coinsurance", {}, {"coinsurance": "0.9"}, "worse"),
    ("coinsurance", {"coinsurance": "0.9"}, {"coinsurance": "0.8"}, "better"),
    (
        "stated-amount",
        {"coinsurance_stated_amount": 90},
        {"coinsurance_stated_amount": 95},
        "cannot say",
    ),
    ("agreed-value", {"agreed_value_until": END}, {}, "worse"),
    ("agreed-value", {"agreed_value_until": END}, {"agreed_value_until": LATER}, "worse"),
    ("automatic-increase", {}, {"automatic_increase": "0.03"}, "better"),
    ("basis", {"basis": "replacement"}, {"basis": "actual-cash-value"}, "worse"),
    ("basis", {"basis": "replacement"}, {"basis": "reproduction"}, "better"),
    ("basis", {"basis": "functional"}, {"basis": "actual-cash-value"}, "cannot say"),
    ("blanket", {"blanket": "A"}, {}, "worse"),
    ("blanket", {"blanket": "A"}, {"blanket": "B"}, "cannot say"),
    ("margin", {"blanket": "A"}, {"blanket": "A", "margin": "1.25"}, "worse"),
    ("margin", {"blanket": "A", "margin": "1.1"}, {"blanket": "A", "margin": "1.25"}, "better"),
    ("shared-limit", {}, {"in_shared_limit": True}, "better"),
    ("exclusion", {}, {"excluded_causes": ["overland-flood"]}, "worse"),
    ("damages", {"damages": ["punitive"]}, {"damages": []}, "worse"),
    ("damages", {"damages": ["punitive"]}, {"damages": None}, "cannot say"),
    ("defence", {"defence": "outside"}, {"defence": "inside"}, "worse"),
    ("defence", {"defence": None}, {"defence": "inside"}, "cannot say"),
    ("claims-made", {"claims_made": False}, {"claims_made": True}, "worse"),
    ("retroactive-date", {"retroactive_date": DAY}, {"retroactive_date": LATER}, "worse"),
    ("retroactive-date", {"retroactive_date": DAY}, {}, "cannot say"),
    ("reporting-period", {"reporting_days": 60}, {"reporting_days": 365}, "better"),
    ("qualified", {"qualified": True}, {"qualified": False}, "worse"),
    ("qualified", {"qualified": None}, {"qualified": True}, "cannot say"),
    ("wording", {"wording": "Broad 2024"}, {"wording": "Broad 2026"}, "cannot say"),
)


@pytest.mark.parametrize(("kind", "before", "after", "direction"), CASES)
def test_a_changed_clause_is_one_difference_with_its_direction(
    changed: Changed,
    kind: DifferenceKind,
    before: dict[str, Any],
    after: dict[str, Any],
    direction: str,
) -> None:
    found = changed(before, after)
    assert [(d.kind, d.direction) for d in found] == [(kind, direction)]
    assert (found[0].coverage, found[0].location) == ("building", "hall")


@pytest.mark.parametrize(("kind", "before", "after", "direction"), CASES)
def test_the_other_way_round_a_clause_goes_the_other_way(
    changed: Changed,
    kind: DifferenceKind,
    before: dict[str, Any],
    after: dict[str, Any],
    direction: str,
) -> None:
    back = changed(after, before)
    assert [(d.kind, d.direction) for d in back] == [(kind, MIRRORED.get(direction, direction))]  # type: ignore[call-overload]


def test_both_values_are_shown_as_what_they_are(changed: Changed) -> None:
    limit = changed({"limit": 100}, {"limit": 200})[0]
    assert (limit.before, limit.after) == (Money(Decimal(100)), Money(Decimal(200)))
    ratio = changed({"coinsurance": "0.9"}, {"coinsurance": "0.8"})[0]
    assert (ratio.before, ratio.after) == (Rate(Decimal("0.9")), Rate(Decimal("0.8")))
    basis = changed({"basis": "replacement"}, {"basis": "functional"})[0]
    assert basis.before == Term("settlement-basis", "replacement")
    gone = changed({"excluded_causes": ["earthquake"]}, {})[0]
    assert (gone.before, gone.after) == (Term("cause", "earthquake"), None)


def test_each_cause_and_each_kind_of_damages_counts_by_itself(changed: Changed) -> None:
    found = changed(
        {"excluded_causes": ["earthquake", "glass"], "damages": ["punitive", "multiplied"]},
        {"excluded_causes": ["glass", "smoke"], "damages": ["punitive", "exemplary"]},
    )
    assert [(d.kind, d.direction, d.before, d.after) for d in found] == [
        ("exclusion", "worse", None, Term("cause", "smoke")),
        ("exclusion", "better", Term("cause", "earthquake"), None),
        ("damages", "better", None, Term("damages", "exemplary")),
        ("damages", "worse", Term("damages", "multiplied"), None),
    ]


def test_an_agreed_value_renewed_with_the_policy_is_no_difference(terms: TermsOf) -> None:
    """ISO CP 00 30, agreed value: coinsurance is suspended until the earlier of twelve months and
    the policy's expiration date."""
    line = {"coverage": "building", "location": "hall"}
    before = terms({**line, "agreed_value_until": date(2026, 12, 1)}, start=date(2025, 12, 1))
    after = terms({**line, "agreed_value_until": date(2027, 12, 1)})
    assert compare(before, after) == ()
    short = terms({**line, "agreed_value_until": date(2027, 6, 1)})
    assert [(d.kind, d.direction) for d in compare(before, short)] == [("agreed-value", "worse")]


@pytest.mark.parametrize(
    ("before", "after", "moved"),
    [
        ({"limit": 250000}, {"limit": 100000}, 150000),
        ({"limit": 100000}, {"limit": 250000}, -150000),
        ({"deductible": 1000}, {"deductible": 2500}, 1500),
        ({}, {"deductible": 2500}, 2500),
        ({"aggregate": 500}, {"aggregate": 400}, 100),
        ({}, {"aggregate": 400}, None),
        ({}, {"limit": 400}, None),
        ({"coinsurance": "0.8"}, {"coinsurance": "0.9"}, None),
        ({}, {"deductible_minimum": 400}, None),
    ],
)
def test_what_moves_to_the_organisation_is_told_only_where_it_is_exact(
    changed: Changed, before: dict[str, Any], after: dict[str, Any], moved: int | None
) -> None:
    expected = None if moved is None else Money(Decimal(moved))
    assert changed(before, after)[0].more_borne == expected


def test_a_margin_means_nothing_outside_a_blanket(changed: Changed) -> None:
    found = changed({"blanket": "A", "margin": "1.25"}, {"margin": "1.1"})
    assert [(d.kind, d.direction) for d in found] == [("blanket", "worse")]


# An amount of 5,000 against a percentage: two per cent of the limit of 1,000,000 is 20,000.
FORMS: tuple[tuple[dict[str, Any], str], ...] = (
    ({"deductible_percent_of": "limit"}, "worse"),
    ({"deductible_percent_of": "limit", "deductible_maximum": 4000}, "better"),
    ({"deductible_percent_of": "limit", "deductible_maximum": 5000}, "neutral"),
    ({"deductible_percent_of": "value"}, "cannot say"),
    ({"deductible_percent_of": "loss", "deductible_minimum": 5001}, "worse"),
    ({"deductible_percent_of": "loss", "deductible_minimum": 5000}, "worse"),
    ({"deductible_percent_of": "loss", "deductible_minimum": 4999}, "cannot say"),
    ({"deductible_percent_of": "loss", "deductible_maximum": 4999}, "better"),
    ({"deductible_percent_of": "value", "deductible_maximum": 5000}, "better"),
    ({"deductible_percent_of": "value", "deductible_maximum": 5001}, "cannot say"),
)


@pytest.mark.parametrize(("fields", "direction"), FORMS)
def test_an_amount_that_becomes_a_percentage_is_one_change_judged_where_it_can_be(
    changed: Changed, fields: dict[str, Any], direction: str
) -> None:
    amount = {"limit": 1000000, "deductible": 5000}
    percent = {"limit": 1000000, "deductible_percent": "0.02", **fields}
    there, back = changed(amount, percent), changed(percent, amount)
    assert [(d.kind, d.direction) for d in there] == [("deductible-form", direction)]
    assert (there[0].before, there[0].after) == (Money(Decimal(5000)), Rate(Decimal("0.02")))
    assert back[0].direction == MIRRORED.get(direction, direction)  # type: ignore[call-overload]


def test_no_deductible_that_becomes_a_percentage_is_simply_new(changed: Changed) -> None:
    found = changed({}, {"deductible_percent": "0.02"})
    assert [(d.kind, d.direction) for d in found] == [("deductible-percent", "worse")]


def test_a_line_that_is_gone_or_new_moves_its_limit(terms: TermsOf) -> None:
    with_it = terms({"coverage": "sewer-backup", "limit": 50000})
    gone, new = compare(with_it, terms())[0], compare(terms(), with_it)[0]
    assert (gone.kind, gone.direction, gone.more_borne) == ("dropped", "worse", gone.before)
    assert (new.kind, new.direction, new.after) == ("added", "better", Money(Decimal(50000)))
    assert new.more_borne == Money(Decimal(-50000))
    unlimited = compare(terms({"coverage": "glass"}), terms())[0]
    assert (unlimited.kind, unlimited.more_borne) == ("dropped", None)


def test_cover_everywhere_is_compared_at_the_places_the_other_names(terms: TermsOf) -> None:
    everywhere = terms({"coverage": "glass", "limit": 5000})
    named = terms(
        {"coverage": "glass", "location": "hall", "limit": 5000},
        {"coverage": "glass", "location": "shed", "limit": 4000},
    )
    found = compare(everywhere, named)
    assert [(d.location, d.kind, d.direction) for d in found] == [
        ("*", "place", "cannot say"),
        ("shed", "limit", "worse"),
    ]
    assert [d.kind for d in compare(named, everywhere)] == ["place", "limit"]


def test_a_named_place_that_falls_back_on_cover_everywhere_is_not_dropped(
    terms: TermsOf,
) -> None:
    everywhere = {"coverage": "glass", "limit": 5000}
    hall = {"coverage": "glass", "location": "hall", "limit": 8000}
    found = compare(terms(everywhere, hall), terms(everywhere))
    assert [(d.location, d.kind, d.more_borne) for d in found] == [
        ("hall", "limit", Money(Decimal(3000)))
    ]


def test_two_lines_for_one_place_are_both_compared(terms: TermsOf) -> None:
    first, second = {"coverage": "glass", "limit": 100}, {"coverage": "glass", "limit": 900}
    assert compare(terms(first, second), terms(second, first)) == ()
    assert [d.kind for d in compare(terms(first, second), terms(first))] == ["dropped"]


def test_the_terms_as_a_whole_are_compared_too(terms: TermsOf) -> None:
    before = terms(
        vacancy_days=30, insurer="North", shared_limit={"amount": 250, "tops_up": ["by-laws"]}
    )
    after = terms(
        vacancy_days=60, insurer="South", shared_limit={"amount": 150, "tops_up": ["glass"]}
    )
    assert [(d.kind, d.coverage, d.direction, d.more_borne) for d in compare(before, after)] == [
        ("shared-limit-amount", "", "worse", Money(Decimal(100))),
        ("vacancy-days", "", "better", None),
        ("insurer", "", "cannot say", None),
        ("shared-limit", "by-laws", "worse", None),
        ("shared-limit", "glass", "better", None),
    ]
    lost = compare(before, terms(vacancy_days=30, insurer="North"))
    assert [(d.kind, d.direction) for d in lost] == [
        ("shared-limit-amount", "worse"),
        ("shared-limit", "worse"),
    ]


def test_amounts_of_two_currencies_are_not_compared(terms: TermsOf) -> None:
    fields = {"coverage": "glass", "limit": 100, "deductible": 10}
    shared = {"amount": 5, "tops_up": []}
    found = compare(
        terms(fields, shared_limit=shared), terms(fields, shared_limit=shared, currency="USD")
    )
    assert {d.kind for d in found} == {"currency", "limit", "deductible", "shared-limit-amount"}
    assert {d.direction for d in found} == {"cannot say"}
    assert {d.more_borne for d in found} == {None}
    percent = {"coverage": "glass", "deductible_percent": "0.02", "deductible_minimum": 900}
    form = compare(terms(fields), terms(percent, currency="USD"))
    assert [d.direction for d in form if d.kind == "deductible-form"] == ["cannot say"]


def _amounts() -> st.SearchStrategy[Decimal | None]:
    return st.none() | st.integers(0, 3).map(lambda n: Decimal(n * 1000))


def _ratios() -> st.SearchStrategy[Decimal | None]:
    return st.none() | st.sampled_from([Decimal("0.5"), Decimal("0.9")])


COVERAGES = st.builds(
    Coverage,
    coverage=st.sampled_from(["building", "sewer-backup", "general-liability"]),
    location=st.sampled_from(["*", "hall", "shed"]),
    limit=_amounts(),
    limit_basis=st.none() | st.sampled_from(["aggregate", "per-claim", "blanket"]),
    aggregate=_amounts(),
    sublimit_of=st.none() | st.sampled_from(["contents", "glass"]),
    deductible=_amounts(),
    deductible_percent=_ratios(),
    deductible_percent_of=st.none() | st.sampled_from(["loss", "limit", "value"]),
    deductible_minimum=_amounts(),
    deductible_maximum=_amounts(),
    waiting_hours=st.none() | st.integers(0, 2),
    coinsurance=_ratios(),
    coinsurance_stated_amount=_amounts(),
    agreed_value_until=st.none() | st.sampled_from([DAY, LATER, END]),
    automatic_increase=_ratios(),
    basis=st.none()
    | st.sampled_from(["replacement", "actual-cash-value", "functional", "reproduction"]),
    blanket=st.none() | st.sampled_from(["A", "B"]),
    margin=_ratios(),
    in_shared_limit=st.booleans(),
    excluded_causes=st.sets(st.sampled_from(["glass", "smoke"])).map(lambda s: tuple(sorted(s))),
    damages=st.none()
    | st.sets(st.sampled_from(["punitive", "exemplary"])).map(lambda s: tuple(sorted(s))),
    defence=st.none() | st.sampled_from(["inside", "outside"]),
    claims_made=st.none() | st.booleans(),
    retroactive_date=st.none() | st.sampled_from([DAY, LATER]),
    reporting_days=st.none() | st.integers(0, 2),
    qualified=st.none() | st.booleans(),
    wording=st.none() | st.sampled_from(["Broad 2024", "Broad 2026"]),
)
SHARED = st.builds(
    SharedLimit,
    amount=st.integers(0, 3).map(Decimal),
    tops_up=st.sets(st.sampled_from(["building", "by-laws"])).map(lambda s: tuple(sorted(s))),
)
TERMS = st.builds(
    Terms,
    stage=st.just("offered"),
    start=st.just(date(2026, 12, 1)),
    end=st.just(END),
    insurer=st.none() | st.sampled_from(["North", "South"]),
    currency=st.sampled_from(["CAD", "CAD", "USD"]),
    coverages=st.lists(COVERAGES, max_size=4).map(tuple),
    shared_limit=st.none() | SHARED,
    vacancy_days=st.none() | st.integers(0, 2),
)


@settings(deadline=None)
@given(TERMS)
def test_terms_do_not_differ_from_themselves(one: Terms) -> None:
    assert compare(one, one) == ()


@settings(deadline=None)
@given(TERMS, TERMS, st.randoms())
def test_the_order_of_lines_does_not_matter(a: Terms, b: Terms, random: Any) -> None:
    shuffled = list(b.coverages)
    random.shuffle(shuffled)
    assert compare(a, b) == compare(a, b.model_copy(update={"coverages": tuple(shuffled)}))


def _turned(difference: Difference) -> tuple[Any, ...]:
    d = difference
    kinds: dict[str, str] = {"added": "dropped", "dropped": "added"}
    moved = None if d.more_borne is None else -d.more_borne
    direction = MIRRORED.get(d.direction, d.direction)
    return kinds.get(d.kind, d.kind), d.coverage, d.location, direction, d.after, d.before, moved


def _told(d: Difference) -> tuple[Any, ...]:
    return d.kind, d.coverage, d.location, d.direction, d.before, d.after, d.more_borne


@settings(deadline=None)
@given(TERMS, TERMS)
def test_comparing_the_other_way_round_turns_every_difference(a: Terms, b: Terms) -> None:
    there, back = compare(a, b), compare(b, a)
    assert sorted(map(str, map(_told, back))) == sorted(map(str, map(_turned, there)))


@settings(deadline=None)
@given(TERMS, TERMS)
def test_what_moves_and_the_direction_agree(a: Terms, b: Terms) -> None:
    for difference in compare(a, b):
        if difference.more_borne is not None:
            amount = difference.more_borne.amount
            assert amount <= 0 or difference.direction == "worse"
            assert amount >= 0 or difference.direction == "better"


@settings(deadline=None)
@given(TERMS, TERMS, st.sampled_from(LANGUAGES))
def test_every_difference_can_be_said_as_a_clause_and_as_a_sentence(
    a: Terms, b: Terms, language: str
) -> None:
    speech = Speech(reference("canada"), language)
    for difference in compare(a, b):
        clause = speech.say(difference.phrase)
        assert not clause.endswith(".")
        assert clause[0].islower(), clause
        sentence = speech.say(difference.sentence("Main hall"))
        assert sentence.endswith(".")
        assert clause in sentence
        assert ("Main hall" in sentence) == bool(difference.coverage)


def test_a_sentence_reads_as_people_speak(changed: Changed) -> None:
    found = changed({"limit": 1200000, "deductible": 1000}, {"limit": 950000, "deductible": 2500})
    english, french = (Speech(reference("canada"), language) for language in LANGUAGES)
    assert [english.say(d.sentence("Main hall")) for d in found] == [
        "Building, Main hall: the limit (the most it pays) falls from $1,200,000 to $950,000.",
        (
            "Building, Main hall: the deductible (your own part of a loss) rises from $1,000 "
            "to $2,500."
        ),
    ]
    said = french.say(found[1].sentence("Salle")).replace("\N{NO-BREAK SPACE}", " ")
    assert (
        said
        == "Bâtiment, Salle : la franchise (votre part du sinistre) monte de 1 000 $ à 2 500 $."
    )
