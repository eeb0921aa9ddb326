"""Two versions of terms on the reference losses and on the account's own claims."""

from __future__ import annotations

from datetime import date
from decimal import Decimal
from typing import Any

import pytest
from tests.core.terms.losses.conftest import (
    CONTENTS,
    HALL,
    LINES,
    PROFILE,
    VALUED,
    Account,
    claim,
    version,
)

from quarterday.core.figure import Fact, Figure, walk
from quarterday.core.file.records import Terms
from quarterday.core.review.case import Case
from quarterday.core.terms.losses.loss import Loss
from quarterday.core.terms.settling.account import setting_of, values_on
from quarterday.core.terms.settling.outcomes import (
    Outcome,
    last_day,
    outcomes,
    past_outcomes,
    reference_outcomes,
)
from quarterday.core.terms.settling.refusals import Refused
from quarterday.core.terms.settling.settlement import Settlement, settle

BACKUP = Loss(
    id="b", cause="sewer-backup", place="hall", date_of_loss=date(2024, 5, 5),
    amounts={"building": Decimal(40_000)},
)  # fmt: skip


def changed(stage: str, number: int, **fields: Any) -> Terms:
    """Return terms with one line changed."""
    lines = [*LINES[:number], {**LINES[number], **fields}, *LINES[number + 1 :]]
    return version(stage, *lines)


def compared(case: Case, after: Terms, *losses: Loss) -> tuple[Outcome, ...]:
    assert case.expiring is not None
    return outcomes(case, case.expiring, after, losses)


def test_a_loss_is_settled_on_the_last_day_of_either_period(account: Account) -> None:
    (one,) = compared(account(), changed("offered", 2, limit=10_000), BACKUP)
    assert isinstance(one.before, Settlement)
    assert isinstance(one.after, Settlement)
    assert one.before.loss.date_of_loss == date(2027, 1, 30)
    assert one.after.loss.date_of_loss == date(2028, 1, 30)
    assert (one.before.paid.money.amount, one.after.paid.money.amount) == (
        Decimal(25_000), Decimal(10_000)
    )  # fmt: skip
    assert one.more_borne is not None
    assert one.more_borne.amount == 15_000
    assert one.can_say


def test_equal_terms_cost_the_same(account: Account) -> None:
    case = account()
    assert case.expiring is not None
    for _, one in reference_outcomes(case, case.expiring, version("offered")):
        if one is not None:
            assert one.more_borne is not None
            assert one.can_say


def test_where_a_wording_changed_nobody_can_say(account: Account) -> None:
    fall = Loss(cause="injury-on-premises", date_of_loss=BACKUP.date_of_loss,
                amounts={"compensatory": Decimal(5)})  # fmt: skip
    backup, hurt = compared(account(), changed("offered", 4, wording="GL 2025"), BACKUP, fall)
    assert backup.can_say
    assert hurt.reworded == ("general-liability",)
    assert not hurt.can_say
    assert hurt.more_borne is not None


def test_a_version_that_cannot_be_honoured_is_told_and_the_other_stays_settled(
    account: Account,
) -> None:
    (one,) = compared(account(), changed("offered", 2, limit=None), BACKUP)
    assert isinstance(one.before, Settlement)
    assert isinstance(one.after, Refused)
    assert one.after.words.id == "settling-refused-absent"
    assert one.more_borne is None
    assert not one.can_say


def test_terms_that_contradict_themselves_refuse_every_loss(account: Account) -> None:
    case, broken = account(), version("offered", LINES[0], LINES[0])
    (one,) = compared(case, broken, BACKUP)
    assert isinstance(one.after, Refused)
    assert case.expiring is not None
    with pytest.raises(Refused):
        reference_outcomes(case, case.expiring, broken)
    with_claim = account(claim("1", "fire", date(2025, 5, 5), 100))
    assert isinstance(past_outcomes(with_claim, broken, broken).outcomes[0].before, Refused)


def test_reference_losses_are_told_with_those_left_out(account: Account) -> None:
    case = account()
    assert case.expiring is not None
    found = reference_outcomes(case, case.expiring, version("offered"))
    assert len(found) == len(case.reference.losses)
    assert [s.of.id for s, o in found if o is None] == ["camp-season", "earthquake", "river-flood"]
    total = next(o for s, o in found if o and s.of.id == "total-fire")
    assert isinstance(total.after, Settlement)
    assert total.after.paid.money.amount > 1_000_000


def test_past_claims_use_up_the_yearly_maximum_of_their_own_year(account: Account) -> None:
    """Three backups: two in one year share 30,000 a year, the third has a year of its own."""
    case = account(
        claim("1", "sewer-backup", date(2025, 3, 1), 20_000, deductible=Decimal(1000)),
        claim("2", "sewer-backup", date(2025, 9, 1), 20_000, deductible=Decimal(1000)),
        claim("3", "sewer-backup", date(2023, 9, 1), 20_000, deductible=Decimal(1000)),
    )
    assert case.expiring is not None
    record = past_outcomes(case, case.expiring, changed("offered", 2, aggregate=None))
    assert record.before.money.amount == 13_000
    assert record.after.money.amount == 3000
    assert record.more_borne.amount == -10_000
    assert [o.loss.id for o in record.outcomes] == ["3", "1", "2"]


def test_a_past_claim_falls_on_its_own_day_of_the_period(account: Account) -> None:
    case = account(
        claim("leap", "fire", date(2024, 2, 29), 100), claim("june", "fire", date(2020, 6, 3), 100)
    )
    assert case.expiring is not None
    record = past_outcomes(case, case.expiring, version("offered"))
    days = {o.loss.id: o.after.loss.date_of_loss for o in record.outcomes
            if isinstance(o.after, Settlement)}  # fmt: skip
    assert days == {"leap": date(2027, 2, 28), "june": date(2027, 6, 3)}


def test_a_claim_outside_a_short_period_falls_on_its_last_day(account: Account) -> None:
    case = account(claim("1", "fire", date(2024, 10, 1), 100))
    short = version("offered", end=date(2027, 5, 1))
    (one,) = past_outcomes(case, short, short).outcomes
    assert isinstance(one.after, Settlement)
    assert one.after.loss.date_of_loss == date(2027, 4, 30) == last_day(short)


def test_a_claim_the_terms_refuse_leaves_the_others_of_its_year_settled(account: Account) -> None:
    case = account(
        claim("good", "fire", date(2025, 3, 1), 100),
        claim("bad", "glass", date(2025, 4, 1), 100),
    )
    no_limit = version("offered", *LINES, {"coverage": "glass"})
    assert case.expiring is not None
    record = past_outcomes(case, case.expiring, no_limit)
    good, bad = record.outcomes
    assert isinstance(good.after, Settlement)
    assert isinstance(bad.after, Refused)
    assert bad.more_borne is None
    assert record.before.money.amount == record.after.money.amount == 100


def test_without_claims_nothing_would_have_been_borne(account: Account) -> None:
    case = account()
    assert case.expiring is not None
    record = past_outcomes(case, case.expiring, version("offered"))
    assert (record.outcomes, record.more_borne.amount) == ((), Decimal(0))


def test_values_are_those_of_the_day_and_say_where_they_come_from(account: Account) -> None:
    values = values_on(account(), version("offered"), date(2028, 1, 30))
    earlier = values_on(account(), version("offered"), date(2027, 1, 30))
    later, now = values.of("building", "hall"), earlier.of("building", "hall")
    assert later is not None
    assert now is not None
    assert later > now > 1_000_000
    assert values.of("contents", "hall") == 80_000
    assert earlier.of("loss-of-income", "*") == 120_000
    assert values.of("loss-of-income", "*") == 122_400, "a year's growth of 2 % later"
    assert isinstance(values.evidence["building", "hall"], Figure)
    assert isinstance(values.evidence["contents", "hall"], Fact)


def test_what_nobody_valued_counts_as_scheduled_and_that_is_said(case_of: Any) -> None:
    lines = ({**LINES[0], "coinsurance": "0.9"}, LINES[1])
    terms = version("offered", *lines)
    case = case_of(HALL, PROFILE, terms)
    setting = setting_of(case, terms, date(2027, 6, 1))
    assert setting.values.of("building", "hall") == 1_200_000
    fire = Loss(cause="fire", place="hall", date_of_loss=date(2027, 6, 1),
                amounts={"building": Decimal(10_000)})  # fmt: skip
    done = settle(setting, fire)
    assert done.paid.money.amount == 7500
    assert "settling-caution-value" in [w.id for w in done.cautions]
    valued = case_of(HALL, PROFILE, VALUED, terms)
    done = settle(setting_of(valued, terms, date(2027, 6, 1)), fire)
    assert "settling-caution-value" not in [w.id for w in done.cautions]


def test_a_valuation_made_after_the_review_is_not_known_yet(case_of: Any) -> None:
    late = CONTENTS.model_copy(update={"valued_on": date(2026, 12, 1)})
    case = case_of(HALL, PROFILE, late, version("offered"))
    values = values_on(case, version("offered"), date(2027, 6, 1))
    assert ("contents", "hall") in values.assumed


@pytest.mark.parametrize(
    ("built", "wear"), [(1977, "0.5"), (2027, "0"), (1900, "0.6"), (None, "0.6"), (2030, "0")]
)
def test_wear_follows_the_buildings_age_up_to_a_most(
    case_of: Any, built: int | None, wear: str
) -> None:
    """Illustrative: a hundredth a year, at most 0.6; the most where nobody knows."""
    old = HALL.model_copy(update={"year_built": built})
    terms = version("offered", {**LINES[0], "basis": "actual-cash-value", "deductible": None})
    setting = setting_of(case_of(old, PROFILE, VALUED, terms), terms, date(2027, 6, 1))
    assert setting.values.wear("building", "hall") == Decimal(wear)
    fire = Loss(cause="fire", place="hall", date_of_loss=date(2027, 6, 1),
                amounts={"building": Decimal(1000)})  # fmt: skip
    done = settle(setting, fire)
    assert done.borne.money.amount == Decimal(wear) * 1000
    assert "settling-caution-wear" in [w.id for w in done.cautions]


def test_figures_lead_to_the_facts_of_the_clauses(account: Account) -> None:
    case = account()
    assert case.offered is not None
    done = settle(setting_of(case, case.offered, last_day(case.offered)),
                  BACKUP.model_copy(update={"date_of_loss": last_day(case.offered)}))  # fmt: skip
    ids = {node.id for _, node in walk(done.paid)}
    start = case.offered.key
    assert f"terms/{start}/sewer-backup@*/limit" in ids
    assert f"terms/{start}/sewer-backup@*/deductible" in ids
    by_reason = dict(done.by_reason)
    assert {n.id for _, n in walk(by_reason["deductible"]) if isinstance(n, Fact)} == {
        f"terms/{start}/sewer-backup@*/deductible"
    }


def test_terms_that_lie_in_no_file_have_no_facts(account: Account) -> None:
    terms = changed("offered", 2, limit=9999)
    day = last_day(terms)
    moved = BACKUP.model_copy(update={"date_of_loss": day})
    done = settle(setting_of(account(), terms, day), moved)
    assert not [n for _, n in walk(done.paid) if isinstance(n, Fact)]
    assert done.paid.money.amount == 9999


def test_places_are_called_by_their_names(account: Account) -> None:
    case = account()
    assert case.offered is not None
    day = last_day(case.offered)
    done = settle(setting_of(case, case.offered, day),
                  BACKUP.model_copy(update={"date_of_loss": day}))  # fmt: skip
    assert ("place", "Elm Grove Hall") in done.parts[0].what.args
