"""The risk of an account: what it rests on, what it leaves out, and what it refuses."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date
from decimal import Decimal
from typing import Any

import pytest
from tests.core.risk.conftest import HALL, VALUED, RiskOf, building, claim, liability, terms_of

from quarterday.catalogue.speech import Speech
from quarterday.core.figure import Parameter, walk
from quarterday.core.file.records import Building, Operations, Organisation
from quarterday.core.money import Money
from quarterday.core.reference import Reference
from quarterday.core.review.case import Case
from quarterday.core.risk.choices import options
from quarterday.core.risk.credibility import GammaPrior
from quarterday.core.risk.figures import told
from quarterday.core.risk.own import own_record
from quarterday.core.risk.priors import Book, FittedRate, FittedSize
from quarterday.core.risk.risk import NoTerms
from quarterday.core.terms.settling.refusals import Refused

CaseOf = Callable[..., Case]
OFFER = terms_of("offered", building(), liability())
ISSUED = terms_of("issued", building(), liability())


def rates(risk: Any) -> dict[str, float]:
    return {peril.name: peril.rate for peril in risk.model.perils}


# --- the organisation's own record


def test_a_file_without_claims_has_the_years_of_its_terms(case_of: CaseOf) -> None:
    """Terms since 31 January 2026, seen on 25 November: 298 days."""
    own = own_record(case_of(ISSUED), 10)
    assert own.claims == ()
    assert own.years == pytest.approx(298 / 365.25)


def test_one_claim_opens_the_record_with_its_policy_year(case_of: CaseOf) -> None:
    own = own_record(case_of(HALL, claim("A", date(2021, 6, 1))), 10)
    assert [c.number for c in own.claims] == ["A"]
    assert own.years == pytest.approx((date(2026, 11, 25) - date(2021, 1, 31)).days / 365.25)


def test_a_file_with_neither_has_no_years_and_no_weight(risk_case: RiskOf, case_of: CaseOf) -> None:
    """Exposure of zero years: the others stand for it alone."""
    assert own_record(case_of(), 10).years == 0
    risk = risk_case(OFFER)
    likely = risk.likely["water-escape"]
    assert likely.credibility == 0
    assert likely.rate == pytest.approx(0.045)  # the default of the reference data
    said = dict(likely.rate_figure.how.args)["weight"]
    assert dict(said.args)["case"] == "none"  # type: ignore[union-attr]


def test_claims_before_the_organisation_existed_are_not_its_record(case_of: CaseOf) -> None:
    young = Organisation(name="Elm", province="ON", founded_year=2022, renewal_date=None)
    case = case_of(young, ISSUED, claim("A", date(2019, 1, 1)), claim("B", date(2023, 1, 1)))
    own = own_record(case, 10)
    assert [c.number for c in own.claims] == ["B"]
    assert own.years <= (date(2026, 11, 25) - date(2022, 1, 1)).days / 365.25


def test_the_record_moves_the_rate_by_its_weight(risk_case: RiskOf) -> None:
    """z = years / (years + 20); with four claims the rate is z × own + (1 − z) × .045."""
    claims = [claim(str(n), date(2019 + n, 5, 1)) for n in range(4)]
    risk = risk_case(OFFER, *claims)
    likely, years = risk.likely["water-escape"], (date(2026, 11, 25) - date(2019, 1, 31)).days
    z = years / 365.25 / (years / 365.25 + 20)
    assert likely.credibility == pytest.approx(z)
    assert likely.rate == pytest.approx(z * 4 / (years / 365.25) + (1 - z) * 0.045)
    figures = {node.id for _, node in walk(likely.rate_figure)}
    assert {"claim-incurred@0", "risk.prior-years", "cause.water-escape.rate"} <= figures


def test_claims_count_where_they_happened(risk_case: RiskOf) -> None:
    """All places together make the account's rate; the place with the claims has more of it."""
    annex = Building(id="annex", name="Annex", ownership="own")
    lines = (building(), building(location="annex"), liability())
    worth = VALUED.model_copy(update={"building": "annex"})
    risk = risk_case(annex, worth, terms_of("offered", *lines), claim("A", date(2024, 1, 1)))
    found = rates(risk)
    hall, other = found["water-escape@hall"], found["water-escape@annex"]
    assert hall + other == pytest.approx(risk.likely["water-escape"].rate)
    assert hall - other == pytest.approx(risk.likely["water-escape"].each)
    assert found["fire@hall"] == pytest.approx(found["fire@annex"])


# --- what a book taught


def test_a_fitted_book_takes_the_place_of_the_defaults(risk_case: RiskOf) -> None:
    key = ("water-escape", "")
    book = Book(
        {key: FittedRate(GammaPrior(0.8, 4), 900, 640, 3_000.0)},
        {key: FittedSize(7_000.0, 12.0, 640)},
    )
    risk = risk_case(OFFER, book=book)
    likely = risk.likely["water-escape"]
    assert likely.rate == pytest.approx(0.2)
    assert likely.severity.mean == pytest.approx(7_000)
    parameters = [n.id for _, n in walk(likely.rate_figure) if isinstance(n, Parameter)]
    assert parameters == []
    assert likely.rate_figure.caution is None
    assert risk.likely["fire"].rate_figure.caution is not None


# --- bad input


def test_a_file_without_terms_is_told_so(case_of: CaseOf, canada: Reference) -> None:
    from quarterday.core.risk.risk import risk_of

    with pytest.raises(NoTerms) as none:
        risk_of(case_of(HALL, VALUED))
    assert "holds no policy terms" in Speech(canada, "en").say(none.value.words)


def test_a_line_without_an_amount_is_left_out_of_every_alternative(
    risk_case: RiskOf, canada: Reference
) -> None:
    glass = {"coverage": "glass", "location": "hall"}
    risk = risk_case(terms_of("offered", building(), glass), ISSUED)
    assert not any(peril.cause == "glass" for peril in risk.model.perils)
    said = [Speech(canada, "en").say(words) for words in risk.left_out]
    assert any(text.startswith("Left out: glass") for text in said)
    assert len(risk.comparison.costs) == 2


def test_an_option_that_contradicts_the_terms_is_left_out_alone(risk_case: RiskOf) -> None:
    """A sublimit cannot exceed what it is part of."""
    sewer = building(50_000, coverage="sewer-backup", sublimit_of="building")
    option = {"coverage": "sewer-backup", "location": "hall", "limit": 9_000_000, "price": 100}
    risk = risk_case(terms_of("offered", building(), sewer, options=[option]))
    assert [cost.id for cost in risk.comparison.costs] == ["offered"]
    assert any(words.id == "risk-left-out-terms" for words in risk.left_out)
    (row,) = options(risk)
    assert row.why_not is not None
    assert dict(row.why_not.args)["case"] == "refused"


def test_an_offer_that_contradicts_itself_is_refused(risk_case: RiskOf) -> None:
    with pytest.raises(Refused):
        risk_case(terms_of("offered", building(deductible=-1)))


def test_no_loss_is_larger_than_what_stands_there(risk_case: RiskOf) -> None:
    """A claim of ten times the value moves the mean size, but total loss and by-laws bound it."""
    huge = claim("A", date(2024, 1, 1), "fire", paid=Decimal(20_000_000))
    risk = risk_case(OFFER, huge)
    (fire,) = (peril for peril in risk.model.perils if peril.cause == "fire")
    worth = fire.parts[0].end
    assert fire.severity.most == pytest.approx(worth + 0.2 * worth)
    assert risk.base.bad[100].value <= fire.severity.most * 2
    assert fire.severity.mean < fire.severity.most


def test_duplicates_across_two_loss_runs_count_once(risk_case: RiskOf) -> None:
    twins = [claim("WH-0417", date(2024, 3, 1)), claim("wh 0417", date(2024, 3, 1))]
    assert len(risk_case(OFFER, *twins).likely["water-escape"].claims) == 1


def test_harm_to_people_is_never_in_the_figures(risk_case: RiskOf) -> None:
    causes = {peril.cause for peril in risk_case(OFFER).model.perils}
    assert not causes & {"abuse-allegation", "volunteer-injury"}
    assert {"fire", "injury-on-premises"} <= causes


def test_a_renter_stands_to_lose_contents_alone(case_of: CaseOf, risk_case: RiskOf) -> None:
    rented = Building(id="hall", name="Hall", ownership="rent")
    contents = building(80_000, coverage="contents")
    risk = risk_case(rented, terms_of("offered", contents, liability()))
    (fire,) = (peril for peril in risk.model.perils if peril.cause == "fire")
    assert [part.component for part in fire.parts] == ["contents"]
    assert fire.severity.most == 80_000


def test_an_account_without_property_still_has_its_liability(risk_case: RiskOf) -> None:
    away = Building(id="hall", name="Hall", ownership="rent")
    causes = {p.cause for p in risk_case(away, terms_of("offered", liability())).model.perils}
    assert "injury-on-premises" in causes
    assert "fire" not in causes


def test_a_cause_that_cannot_concern_them_is_left_out(risk_case: RiskOf) -> None:
    """Who says there are no volunteer drivers needs no cover for their cars."""
    none = Operations(volunteer_drivers=False, vehicles_owned=0)
    assert "non-owned-vehicle@hall" not in rates(risk_case(OFFER, none))
    some = Operations(volunteer_drivers=True)
    assert "non-owned-vehicle@hall" in rates(risk_case(OFFER, some))


# --- honest words


def test_every_figure_says_what_it_rests_on_in_both_languages(
    risk_case: RiskOf, canada: Reference
) -> None:
    risk = risk_case(OFFER, ISSUED, claim("A", date(2024, 1, 1)))
    for language in ("en", "fr"):
        speech = Speech(canada, language)
        for one in told(risk):
            for figure in (one.mean, *one.bad):
                assert (
                    "model" in speech.parts(figure).caution
                    or "modèle" in speech.parts(figure).caution
                )
                for _, node in walk(figure):
                    assert speech.parts(node).label


def test_a_bad_year_is_told_with_its_interval_and_years(
    risk_case: RiskOf, canada: Reference
) -> None:
    (one,) = told(risk_case(OFFER))
    how = Speech(canada, "en").say(one.bad[1].how)
    assert how.startswith("One year in 100 costs this or more, in 4,000 simulated years.")
    assert "Chance alone puts it between" in how


def test_what_losses_cost_never_shows_more_than_two_digits(risk_case: RiskOf) -> None:
    for one in told(risk_case(OFFER, ISSUED)):
        for figure in (one.mean, *one.bad):
            digits = f"{figure.money.amount.normalize():f}".strip("0")
            assert len(digits) <= 2
            assert isinstance(figure.value, Money)
