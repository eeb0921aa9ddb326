"""The claims record, the four losses and the draft motions, as the papers show them."""

from __future__ import annotations

import re
from datetime import date
from decimal import Decimal

import pytest

from quarterday.catalogue.load import reference
from quarterday.core.claims.record import record
from quarterday.core.file.records import Claim, Organisation, Record, Terms
from quarterday.core.file.records.terms import EVERYWHERE, Coverage
from quarterday.core.review.case import Case
from quarterday.core.review.motions import NOT_AGAINST, motions
from quarterday.core.review.review import review_of
from quarterday.core.terms.settling.account import setting_of
from quarterday.core.terms.settling.outcomes import reference_outcomes
from quarterday.core.terms.settling.settlement import Settlement, settle
from quarterday.papers.claims_record import data as claims
from quarterday.papers.motions import data as minutes
from quarterday.papers.setting import Setting
from quarterday.papers.what_would_it_pay import data as losses

from . import given
from .test_money_papers import number

LANGUAGES = ("en", "fr")
SETTINGS = [(id, language) for id in given.book() for language in LANGUAGES]


def amounts(text: str) -> list[Decimal]:
    return [number(found) for found in re.findall(r"\d[\d,.\u202f\u00a0]*", text)]


# Claims record


def test_the_table_holds_each_claim_of_ten_years_and_adds_up_to_the_core_s_total() -> None:
    for id, language in SETTINGS:
        of = given.setting(id, language)
        if claims.reason(of) is None:
            continue
        rows, found = claims.data(of)["table"]["rows"], record(of.case, 10)
        assert len(rows) == found.sums.count
        shown = sum(number(row[3]) for row in rows)
        assert abs(shown - found.sums.incurred.amount) <= Decimal("0.5") * len(rows)


@pytest.mark.parametrize("language", LANGUAGES)
def test_a_claim_that_was_reported_late_is_told_beneath_the_table(language: str) -> None:
    """HW-1030's rain of 12 December 2024 was reported on 21 February 2025: 71 days."""
    notes = claims.data(given.setting("HW-1030", language))["notes"]
    assert len(notes) == 2
    assert "71" in notes[0]
    assert len(claims.data(given.setting("HW-1001", language))["notes"]) == 1


def test_the_chart_s_bars_are_the_causes_and_water_is_drawn_apart() -> None:
    of = given.setting()
    chart, found = claims.data(of)["chart"], record(of.case, 10)
    assert chart is not None
    tones = [row["parts"][0]["tone"] for row in chart["rows"]]
    water = [cause in of.reference.water_causes for cause, _ in found.causes]
    assert [tone == "borne" for tone in tones] == water[: len(tones)]
    shares = [row["parts"][0]["share"] for row in chart["rows"]]
    assert shares == sorted(shares, reverse=True)
    assert shares[0] == 1


def test_the_title_counts_the_water_claims_of_the_record() -> None:
    of = given.setting()
    found = record(of.case, 10)
    title = claims.data(of)["opening"]["title"]
    assert title == f"{found.water.count} of your {found.sums.count} claims in 10 years were water"


def claim(cause: str, day: date = date(2024, 3, 1)) -> Claim:
    return Claim(number=cause, cause=cause, date_of_loss=day, paid=Decimal(500))


def with_claims(*held: Record, language: str = "en") -> Setting:
    organisation = Organisation(name="Quiet Hall", province="ON", renewal_date=date(2027, 1, 15))
    file = given.file_of("CLAIMS-1", [organisation, *held])
    case = Case(file, reference("canada"), given.AS_OF)
    return Setting(review_of(case), case, given.brokerage(), language, 1, given.AS_OF, None)


@pytest.mark.parametrize(
    ("held", "title"),
    [
        ((claim("theft"),), "You had one claim in 10 years, and it was not water"),
        ((claim("theft"), claim("glass")), "You had 2 claims in 10 years, none of them water"),
        ((claim("water-escape"),), "Your one claim in 10 years was water"),
        ((claim("theft"), claim("ice-damming")), "1 of your 2 claims in 10 years was water"),
    ],
)
def test_the_title_says_how_much_was_water(held: tuple[Claim, ...], title: str) -> None:
    assert claims.data(with_claims(*held))["opening"]["title"] == title


def test_without_a_claim_in_ten_years_there_is_no_record_to_enclose() -> None:
    assert claims.reason(with_claims()) is None
    assert claims.reason(with_claims(claim("theft", date(2010, 1, 1)))) is None


@pytest.mark.parametrize("language", LANGUAGES)
def test_what_prevents_a_cause_is_said_in_the_catalogue_s_own_words(language: str) -> None:
    of = with_claims(claim("sewer-backup"), language=language)
    prevention = claims.data(of)["prevention"]
    assert prevention is not None
    tips = [tip[language] for tip in reference("canada").causes["sewer-backup"].tips]
    assert prevention["items"][0]["tips"] == tips[: claims.MOST_TIPS]


def test_a_cause_of_which_nothing_is_known_gives_no_advice() -> None:
    assert claims.data(with_claims(claim("other")))["prevention"] is None


# What would it pay


def test_what_is_paid_and_borne_is_what_the_terms_settle() -> None:
    """Each loss of the paper, settled once more by itself under the same terms."""
    seen = 0
    for id in given.book():
        of = given.setting(id)
        terms = of.case.terms
        for one in losses.walked(of):
            assert terms is not None
            loss = one.now.loss
            again = settle(setting_of(of.case, terms, loss.date_of_loss), loss)
            assert again.borne.money == one.now.borne.money
            assert one.now.paid.money + one.now.borne.money == one.now.total.money
            seen += 1
    assert seen > 100


def test_four_losses_are_walked_through_a_fire_water_money_and_somebody_hurt() -> None:
    of = given.setting()
    assert [one.of.id for one in losses.walked(of)] == [ids[0] for ids in losses.FIRST]
    assert all(len(losses.walked(given.setting(id))) <= losses.MOST for id in given.book())


def test_what_is_walked_through_is_what_settling_every_loss_would_choose() -> None:
    """One of each kind, then those that leave the most, as found by settling the whole library."""
    for id in given.book():
        of = given.setting(id)
        if of.case.terms is None:
            continue
        before = of.case.expiring or of.case.terms
        told = reference_outcomes(of.case, before, of.case.terms)
        borne = {
            scaled.of.id: outcome.after.borne.money.amount
            for scaled, outcome in told
            if outcome is not None and isinstance(outcome.after, Settlement)
        }
        first = [next((i for i in ids if i in borne), None) for ids in losses.FIRST]
        rest = sorted((i for i in borne if i not in first), key=lambda i: (-borne[i], i))
        chosen = [*filter(None, first), *rest][: losses.MOST]
        assert [one.of.id for one in losses.walked(of)] == chosen


def test_only_the_losses_that_are_shown_are_settled() -> None:
    of = given.setting()
    shown = [one.of.id for one in losses.walked(of)]
    assert of.losses is not None
    assert len(of.losses.scaled) > len(shown)
    assert list(of.losses._done) == shown


def test_the_parts_and_the_reasons_of_a_loss_add_up_to_it() -> None:
    for id, language in SETTINGS:
        of = given.setting(id, language)
        for one, item in zip(losses.walked(of), losses.data(of)["items"], strict=True):
            lost, paid, borne = (
                sum((number(row[n]) for row in item["rows"]), Decimal(0)) for n in (1, 2, 3)
            )
            slack = Decimal(len(item["rows"]))
            assert abs(lost - one.now.total.money.amount) <= slack
            assert abs(paid - one.now.paid.money.amount) <= slack
            assert abs(borne - one.now.borne.money.amount) <= slack
            assert (item["why"] is None) == (not one.now.borne.money)


def test_this_year_s_policy_stands_beside_the_offer_only_where_it_can_be_compared() -> None:
    of = given.setting()
    table, found = losses.data(of)["table"], losses.walked(of)
    assert len(table["header"]) == 5
    for one, row in zip(found, table["rows"], strict=True):
        assert row[-1] == (of.dollars(one.before.borne.money) if one.before else "–")


def test_without_an_offer_this_year_s_policy_is_walked_through_alone() -> None:
    issued = Terms(
        stage="issued", start=date(2026, 1, 15), end=date(2027, 1, 15),
        coverages=(Coverage(coverage="general-liability", limit=Decimal(2_000_000)),),
    )  # fmt: skip
    of = with_claims(issued)
    assert len(losses.data(of)["table"]["header"]) == 4
    assert all(one.before is None for one in losses.walked(of))


def test_without_any_terms_nothing_is_walked_through() -> None:
    assert losses.reason(with_claims()) is None


def test_the_worst_of_the_losses_is_the_paper_s_conclusion() -> None:
    for id in given.book():
        of = given.setting(id)
        found = losses.walked(of)
        if not found:
            continue
        worst = max(found, key=lambda one: one.now.borne.money.amount)
        title = losses.data(of)["opening"]["title"]
        assert of.dollars(worst.now.borne.money.about()) in title


def test_a_loss_that_strikes_a_building_names_it() -> None:
    of = given.setting()
    for one, item in zip(losses.walked(of), losses.data(of)["items"], strict=True):
        place = one.now.loss.place
        assert (place == EVERYWHERE) or of.place(place) in item["heading"]


# Draft motions


@pytest.mark.parametrize("language", LANGUAGES)
def test_each_decision_has_its_motion_and_the_renewal_comes_last(language: str) -> None:
    for id in given.book():
        of = given.setting(id, language)
        if minutes.reason(of) is None:
            continue
        items = minutes.data(of)["items"]
        agenda = of.review.agenda
        assert len(items) == len(agenda) + bool(of.case.offered)
        for item, draft in zip(items, motions(agenda), strict=False):
            assert item["moved"] == of.spoken(draft.moved)
            assert (item["instead"] is None) == (draft.moved.id[7:] in NOT_AGAINST)


def test_no_motion_of_the_demo_book_falls_back_on_the_agenda_s_words() -> None:
    drafts = [m for id in given.book() for m in motions(given.reviewed(id).agenda)]
    assert len(drafts) > 80
    assert not [draft.question for draft in drafts if draft.moved.id == "motion-other"]


def test_the_motion_to_accept_tells_the_premium_of_the_offer() -> None:
    last = minutes.data(given.setting())["items"][-1]
    assert "$18,185.52" in last["moved"]
    assert "January 15, 2027 to January 15, 2028" in last["moved"]
