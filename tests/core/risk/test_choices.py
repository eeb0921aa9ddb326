"""Options and deductibles: what is taken and open, what they change, and when they break even."""

from __future__ import annotations

from datetime import date
from decimal import Decimal
from typing import Any

import pytest
from tests.core.risk.conftest import RENEWAL, RiskOf, building, claim, liability, terms_of

from quarterday.catalogue.speech import Speech
from quarterday.core.file.records import Decision
from quarterday.core.file.records.terms import Option
from quarterday.core.money import Money
from quarterday.core.reference import Reference
from quarterday.core.risk.alternatives import with_option
from quarterday.core.risk.choices import deductibles, options, state_of
from quarterday.core.risk.cost import Effort
from quarterday.core.risk.risk import Risk
from quarterday.core.risk.told import deductible_told

LONG = Effort(20_000, 1)
FLOOD = {"coverage": "overland-flood", "location": "hall", "limit": 500_000,
         "deductible": 10_000, "price": 900}  # fmt: skip


def offer(*offered: dict[str, Any], **more: Any) -> Any:
    return terms_of("offered", building(**more), liability(), options=offered)


def flooded() -> list[Any]:
    """Four floods in seven years, so that flood is what hurts."""
    return [claim(str(n), date(2020 + n, 5, 1), "overland-flood") for n in range(4)]


def decided(answer: str, question: str) -> Decision:
    given = {"renewal": RENEWAL, "question": question, "answer": answer, "by": "the board",
             "decided_on": date(2026, 11, 1)}  # fmt: skip
    return Decision.model_validate(given)


# --- options


def test_an_option_shows_its_price_and_what_it_would_have_changed(risk_case: RiskOf) -> None:
    (row,) = options(risk_case(offer(FLOOD), *flooded(), effort=LONG))
    assert row.price == Money(Decimal(900))
    assert row.average is not None
    assert row.average.money < Money(Decimal(-1_000))
    assert row.bad[1].money < Money(Decimal(-10_000))
    assert row.saves_in_bad_year == -row.bad[1].money
    assert [figure.id for figure in (row.average, *row.bad)] == [
        "risk-change-mean@overland-flood/hall",
        "risk-change-1-in-10@overland-flood/hall",
        "risk-change-1-in-100@overland-flood/hall",
    ]


def test_without_a_price_the_row_says_ask(risk_case: RiskOf) -> None:
    (row,) = options(risk_case(offer({**FLOOD, "price": None})))
    assert row.price is None
    assert row.average is not None


@pytest.mark.parametrize(
    ("option", "case"),
    [
        ({"coverage": "volunteer-accident", "limit": 50_000, "price": 90}, "duty"),
        ({"coverage": "loss-of-income", "limit": 50_000, "price": 90}, "not-modelled"),
        ({"coverage": "earthquake", "price": 90}, "no-amount"),
    ],
)
def test_what_nobody_measured_says_why(
    risk_case: RiskOf, canada: Reference, option: dict[str, Any], case: str
) -> None:
    (row,) = options(risk_case(offer(option)))
    assert (row.average, row.bad, row.saves_in_bad_year) == (None, (), None)
    assert row.why_not is not None
    assert dict(row.why_not.args)["case"] == case
    for language in ("en", "fr"):
        assert Speech(canada, language).say(row.why_not)
        assert Speech(canada, language).say(row.name)


def test_what_is_taken_comes_first_and_the_rest_by_what_it_saves(risk_case: RiskOf) -> None:
    sewer = {"coverage": "sewer-backup", "location": "hall", "limit": 100_000, "price": 300}
    accident = {"coverage": "volunteer-accident", "limit": 50_000, "price": 90}
    given = (accident, FLOOD, sewer)
    open_ones = options(risk_case(offer(*given), *flooded()))
    assert [r.option.coverage for r in open_ones] == [
        "overland-flood", "sewer-backup", "volunteer-accident"
    ]  # fmt: skip
    taken = decided("take-it", "terms.option-open@sewer-backup")
    first, *_ = options(risk_case(offer(*given), *flooded(), taken))
    assert (first.option.coverage, first.state) == ("sewer-backup", "taken")


@pytest.mark.parametrize(
    ("answer", "question", "state"),
    [
        ("take-it", "terms.option-open@overland-flood", "taken"),
        ("take-it", "terms.option-open@overland-flood/hall", "taken"),
        ("leave-it", "terms.option-open@overland-flood", "left"),
        ("later", "terms.option-open@overland-flood", "open"),
        ("take-it", "terms.option-open@sewer-backup", "open"),
    ],
)
def test_the_state_is_what_the_leaders_decided(
    risk_case: RiskOf, answer: str, question: str, state: str
) -> None:
    risk = risk_case(offer(FLOOD), decided(answer, question))
    assert state_of(risk, Option.model_validate(FLOOD)) == state


def test_a_difference_that_chance_explains_is_not_shown(
    risk_case: RiskOf, canada: Reference
) -> None:
    """Flood at .004 a year changes nothing in a year that comes one time in ten."""
    (row,) = options(risk_case(offer(FLOOD)))
    assert row.bad[0].money == Money(Decimal(0))
    assert "no difference is shown" in Speech(canada, "en").say(row.bad[0].how)


# --- taking an option


def test_taking_an_option_replaces_its_own_line_alone() -> None:
    terms = terms_of("offered", building(), building(location="annex"), liability())
    option = Option(coverage="building", location="annex", limit=Decimal(900_000))
    taken = with_option(terms, option)
    assert taken is not None
    assert taken.find("building", "annex") == terms.coverages[1].model_copy(
        update={"limit": Decimal(900_000)}
    )
    assert taken.find("building", "hall") == terms.coverages[0]


def test_an_amount_takes_the_place_of_a_percentage() -> None:
    percent: dict[str, Any] = {
        "deductible": None,
        "deductible_percent": "0.02",
        "deductible_percent_of": "value",
        "deductible_minimum": 10_000,
    }
    terms = terms_of("offered", building(**percent))
    option = Option(coverage="building", location="hall", deductible=Decimal(5_000))
    taken = with_option(terms, option)
    assert taken is not None
    (line,) = taken.coverages
    assert line.deductible == Decimal(5_000)
    assert line.deductible_percent is None
    assert line.deductible_minimum is None


QUAKE: dict[str, Any] = {
    "coverage": "earthquake", "limit": 1_500_000, "deductible_percent": "0.15",
    "deductible_percent_of": "value", "deductible_minimum": 100_000,
}  # fmt: skip


def test_a_percentage_on_offer_is_measured_as_a_choice_of_deductible(
    risk_case: RiskOf, canada: Reference
) -> None:
    """Before, such an option named nothing that the terms do not give, and nobody measured it."""
    option = {"coverage": "earthquake", "limit": 1_500_000, "price": 5_900,
              "deductible_percent": "0.05", "deductible_minimum": 10_000}  # fmt: skip
    terms = terms_of("offered", building(), liability(), QUAKE, options=[option])
    risk = risk_case(terms)
    (row,), (choice,) = options(risk), deductibles(risk)
    assert row.why_not is None
    assert row.average is not None
    assert (risk.alternatives[-1].kind, choice.premium) == ("deductible", Money(Decimal(5_900)))
    peril = next(p for p in risk.model.perils if p.cause == "earthquake")
    worth = peril.parts[0].end
    more = min(Decimal("0.15") * Decimal(worth), Decimal("1e9")) - Decimal("0.05") * Decimal(worth)
    assert float(choice.per_loss.amount) == pytest.approx(float(more), rel=0.05)  # two digits shown
    for language, said in (("en", "deductible 5%, at least $10,000"), ("fr", "5 %, au moins")):
        assert said in Speech(canada, language).say(row.name).replace("\xa0", " ")


@pytest.mark.parametrize(
    ("language", "seldom", "asks"),
    [
        ("en", "less than once in 1,000 years", "whether you could pay that amount"),
        ("fr", "moins d'une fois en 1 000 ans", "si vous pourriez payer ce montant"),
    ],
)
def test_a_loss_rarer_than_anyone_knows_is_not_judged_by_averages(
    risk_case: RiskOf, canada: Reference, language: str, seldom: str, asks: str
) -> None:
    """An earthquake comes 0.0002 times a year in the catalogue: an example that nobody publishes.
    To say "never", and then "take the larger deductible", would rest advice on it."""
    option = {"coverage": "earthquake", "price": 5_900, "deductible_percent": "0.05"}
    terms = terms_of("offered", building(), liability(), QUAKE, options=[option])
    (choice,) = deductibles(risk_case(terms))
    assert 0 < choice.expected.number < Decimal("0.001")
    said = Speech(canada, language).say(list(deductible_told(choice))[-1])
    plain = said.replace("\xa0", " ").replace("\u202f", " ").replace("’", "'")
    assert seldom in plain
    assert asks in plain


def test_a_percentage_of_nothing_named_cannot_be_settled_and_says_so(risk_case: RiskOf) -> None:
    option = {"coverage": "building", "location": "hall", "deductible_percent": "0.05"}
    (row,) = options(risk_case(offer(option)))
    assert row.why_not is not None
    assert dict(row.why_not.args)["case"] == "refused"


def test_an_option_without_amounts_cannot_be_taken() -> None:
    terms = terms_of("offered", building())
    assert with_option(terms, Option(coverage="earthquake")) is None
    bare = Option(coverage="earthquake", deductible=Decimal(5))
    assert with_option(terms, bare) is None


# --- deductibles


def choice(deductible: int, price: int | None) -> dict[str, Any]:
    found = {"coverage": "building", "location": "hall", "deductible": deductible}
    return found if price is None else {**found, "price": price}


@pytest.fixture(scope="module")
def larger(risk_case: RiskOf) -> Risk:
    return risk_case(offer(choice(10_000, -400)), effort=LONG)


def test_a_larger_deductible_saves_premium_and_keeps_cost(larger: Risk) -> None:
    """2,500 becomes 10,000: 7,500 more of a loss; 400 saved is one such loss in 19 years."""
    (row,) = deductibles(larger)
    assert row.premium == Money(Decimal(-400))
    assert row.per_loss == Money(Decimal(7_500))
    assert row.break_even is not None
    assert row.break_even.number == pytest.approx(Decimal(400) / 7_500, abs=Decimal("0.0005"))
    assert row.kept.money > Money(Decimal(0))
    assert row.pays == (row.kept.money < Money(Decimal(400)))


def test_the_losses_it_touches_are_those_above_the_smaller_deductible(larger: Risk) -> None:
    (row,) = deductibles(larger)
    of_building = [p for p in larger.model.perils if p.parts[0].component == "building"]
    above = sum(
        p.rate * float(p.severity.beyond(2_500))
        for p in of_building
        if p.cause not in {"sewer-backup", "overland-flood", "earthquake", "equipment-breakdown"}
    )
    assert float(row.expected.number) == pytest.approx(above, abs=0.002)


def test_what_it_keeps_is_never_more_than_its_losses_could(larger: Risk) -> None:
    (row,) = deductibles(larger)
    most = float(row.expected.number) * 7_500
    assert 0 < float(row.kept.money.amount) <= most * 1.05


def test_a_smaller_deductible_costs_premium(risk_case: RiskOf) -> None:
    (row,) = deductibles(risk_case(offer(choice(1_000, 150)), effort=LONG))
    assert row.kept.money < Money(Decimal(0))
    assert row.per_loss == Money(Decimal(1_500))
    assert row.pays is (150 + row.kept.money.amount < 0)


def test_a_deductible_without_a_price_has_no_break_even(risk_case: RiskOf) -> None:
    (row,) = deductibles(risk_case(offer(choice(10_000, None))))
    assert (row.premium, row.break_even, row.pays) == (None, None, None)


def test_a_limit_that_moves_too_is_no_choice_of_deductible(risk_case: RiskOf) -> None:
    both = {**choice(10_000, -400), "limit": 2_000_000}
    assert deductibles(risk_case(offer(both))) == ()


TITLES = {
    "en": "Another deductible (the part of a loss you pay yourself): Building (Hall): "
    "deductible $10,000",
    "fr": "Une autre franchise (la part d'un sinistre que vous payez vous-même) : "
    "Bâtiment (Hall) : franchise de 10 000 $",
}
PREMIUMS = {"en": "The premium falls by $400 a year.", "fr": "La prime baisse de 400 $ par an."}


@pytest.mark.parametrize("language", TITLES)
def test_the_choice_is_told_in_sentences(larger: Risk, canada: Reference, language: str) -> None:
    (row,) = deductibles(larger)
    said = [Speech(canada, language).say(words) for words in deductible_told(row)]
    plain = [text.replace("\xa0", " ").replace("\u202f", " ").replace("’", "'") for text in said]
    assert plain[:2] == [TITLES[language], PREMIUMS[language]]
    assert len(plain) == 5
    assert ("19 years" if language == "en" else "19 ans") in plain[4]
    assert "100" in plain[3]


@pytest.mark.parametrize("price", [-400, 0, 150, None])
@pytest.mark.parametrize("deductible", [1_000, 10_000])
def test_every_choice_can_be_told(
    risk_case: RiskOf, canada: Reference, price: int | None, deductible: int
) -> None:
    (row,) = deductibles(risk_case(offer(choice(deductible, price))))
    for language in ("en", "fr"):
        assert all(Speech(canada, language).say(words) for words in deductible_told(row))


def test_the_sentence_and_the_figure_name_the_same_years(larger: Risk, canada: Reference) -> None:
    (choice,) = deductibles(larger)
    assert choice.break_even is not None
    years = dict(choice.break_even.how.args)["years"]
    speech = Speech(canada, "en")
    told = " ".join(map(speech.say, deductible_told(choice)))
    assert f"such a loss once in {years} years" in told


def test_the_break_even_goes_back_to_the_price_and_the_largest_gap(
    larger: Risk, canada: Reference
) -> None:
    """A premium of 400 less, over a deductible 7,500 larger: one such loss in about 19 years."""
    (row,) = deductibles(larger)
    assert row.break_even is not None
    price, most = row.break_even.inputs
    assert price.value == Money(Decimal(-400))
    assert most.value == row.per_loss == Money(Decimal(7_500))
    for language in ("en", "fr"):
        assert all(Speech(canada, language).parts(node).label for node in (price, most))
