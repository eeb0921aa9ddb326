"""Reference losses as they would strike an account."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date
from decimal import Decimal
from typing import Any

import pytest
from tests.core.terms.losses.conftest import HALL, PROFILE, ROOM, Account, version

from quarterday.core.file.records import Building, Operations
from quarterday.core.reference import ReferenceLoss
from quarterday.core.review.case import Case
from quarterday.core.terms.losses.loss import Loss
from quarterday.core.terms.losses.scaling import Scaled, scaled, scaled_losses
from quarterday.core.terms.settling.account import setting_of
from quarterday.core.words import Term, words

DAY = date(2028, 1, 30)
SOURCE = {"title": "Ours", "publisher": "Quarterday", "checked_on": date(2026, 11, 25)}


def of(amounts: dict[str, Any], **more: Any) -> ReferenceLoss:
    name = {"en": "Loss", "fr": "Sinistre"}
    whole = {"id": "loss", "name": name, "story": name, "cause": "fire", "amounts": amounts}
    return ReferenceLoss.model_validate({**whole, "source": SOURCE, **more})


def struck(case: Case, *args: Any, **more: Any) -> Scaled:
    assert case.offered is not None
    return scaled(case, setting_of(case, case.offered, DAY), of(*args, **more), DAY)


def loss(found: Scaled) -> Loss:
    assert found.loss is not None
    return found.loss


def amounts(found: Scaled) -> dict[str, Any]:
    return dict(loss(found).amounts)


def test_a_share_is_taken_of_what_the_account_has_rounded_to_the_hundred(account: Account) -> None:
    found = struck(account(), {"contents": {"of": "contents", "share": "0.0333"}})
    assert amounts(found) == {"contents": 2700}
    assert found.assumed == ()


def test_a_total_loss_is_the_value_itself_on_the_day(account: Account) -> None:
    case = account()
    assert case.offered is not None
    worth = setting_of(case, case.offered, DAY).values.of("building", "hall")
    found = struck(case, {"building": {"of": "building", "share": 1}})
    assert amounts(found) == {"building": worth}
    assert worth is not None
    assert worth > 1_000_000


def test_shares_stay_within_their_bounds(account: Account) -> None:
    for share, size in (("0.5", 9000), ("0.01", 5000), ("0.1", 8000)):
        scale = {"of": "contents", "share": share, "least": 5000, "most": 9000}
        assert amounts(struck(account(), {"contents": scale})) == {"contents": size}


def test_income_is_a_month_of_the_years_income_for_each_month(account: Account) -> None:
    """120,000 a year is 10,000 a month; a quarter of it for three months."""
    found = struck(account(), {"income": {"of": "income-month", "share": "0.25", "months": 3}})
    assert amounts(found) == {"income": (2500, 2500, 2500)}


def test_gifts_are_counted_by_the_week(account: Account) -> None:
    found = struck(account(), {"money": {"of": "giving-week", "share": "1.5"}}, at="anywhere")
    assert amounts(found) == {"money": 3000}


def test_what_nobody_knows_takes_the_amount_of_the_library_and_is_named(account: Account) -> None:
    case = account(Operations(employees=2))
    scale = {"of": "giving-week", "share": "1.5", "amount": 4000}
    found = struck(case, {"money": scale, "debris": {"amount": 7}})
    assert amounts(found) == {"money": 4000, "debris": 7}
    assert found.assumed == ("money",)


def test_what_nobody_knows_without_an_amount_is_left_out(account: Account) -> None:
    case = account(Operations(employees=2))
    found = struck(case, {"money": {"of": "giving-week", "share": "1.5"}})
    assert found.loss is None
    assert found.why_not is not None
    assert found.why_not.id == "losses-nothing-lost"


@pytest.mark.parametrize(
    ("camp", "told"), [(False, "losses-not-yours"), (True, None), (None, None)]
)
def test_a_loss_that_cannot_be_theirs_is_left_out_with_the_reason(
    account: Account, camp: bool | None, told: str | None
) -> None:
    case = account(PROFILE.model_copy(update={"camp": camp}))
    found = struck(case, {"debris": {"amount": 5}}, fits_when={"profile": "camp"})
    assert (found.why_not.id if found.why_not else None) == told


def test_the_building_worth_most_is_struck(account: Account) -> None:
    shed = Building(id="shed", name="Shed")
    assert loss(struck(account(shed), {"debris": {"amount": 5}})).place == "hall"


@pytest.mark.parametrize(
    ("hall", "annex", "place"),
    [
        ("unfinished", "finished", "annex"),
        ("unfinished", "none", "hall"),
        ("none", None, None),
        ("finished", "finished", "hall"),
    ],
)
def test_a_finished_basement_is_struck_before_any_other(
    account: Account, hall: str, annex: str | None, place: str | None
) -> None:
    buildings = (
        HALL.model_copy(update={"basement": hall}),
        Building.model_validate({"id": "annex", "name": "Annex", "basement": annex}),
    )
    found = struck(account(*buildings), {"building": {"amount": 5}}, at="basement")
    assert (found.loss.place if found.loss else None) == place
    assert (found.why_not.id if found.why_not else None) == (
        None if place else "losses-no-basement"
    )


def test_rented_rooms_lose_their_contents_but_not_the_building(
    case_of: Callable[..., Case],
) -> None:
    offered = version("offered", {"coverage": "contents", "location": "room", "limit": 9000})
    case = case_of(ROOM, PROFILE, offered)
    every = {c: {"amount": 5} for c in ("building", "by-laws", "debris", "fees", "contents")}
    assert amounts(struck(case, every)) == {"contents": 5}
    insured = version("offered", {"coverage": "building", "location": "room", "limit": 9000})
    assert len(amounts(struck(case_of(ROOM, PROFILE, insured), every))) == 5


def test_without_a_building_only_losses_anywhere_are_left(case_of: Callable[..., Case]) -> None:
    case = case_of(PROFILE, version("offered"))
    assert case.offered is not None
    found = scaled_losses(case, setting_of(case, case.offered, DAY), DAY)
    for one in found:
        if one.loss is None:
            assert one.why_not is not None
            assert one.why_not.id in {
                "losses-no-largest", "losses-no-basement", "losses-not-yours", "losses-not-insured",
            }  # fmt: skip
        else:
            assert one.loss.place == "*"
    assert [one.of.id for one in found if one.loss is not None] == [
        "fall-on-steps", "punitive-lawsuit", "wrongful-dismissal", "data-theft",
        "volunteer-hurt", "abuse-lawsuit",
    ]  # fmt: skip


def test_an_earthquake_is_tried_where_some_terms_insure_it(account: Account) -> None:
    asked = version("requested", {"coverage": "earthquake", "limit": 500_000})
    insured, bare = account(asked), account()
    amounts = {"building": {"amount": 1000}}
    assert struck(insured, amounts, where_insured="earthquake").loss is not None
    without = struck(bare, amounts, where_insured="earthquake")
    assert without.loss is None
    assert without.why_not == words("losses-not-insured", what=Term("coverage", "earthquake"))


def test_a_loss_bears_the_name_of_its_reference_loss(account: Account) -> None:
    case = account()
    assert case.offered is not None
    found = scaled_losses(case, setting_of(case, case.offered, DAY), DAY)
    assert [one.of.id for one in found] == list(case.reference.losses)
    for one in found:
        if one.loss is not None:
            assert (one.loss.id, one.loss.reference) == (one.of.id, one.of.id)
            assert one.loss.date_of_loss == DAY
            assert all(damage.amount > 0 for damage in one.loss.damages)
            assert all(damage.amount == Decimal(int(damage.amount)) for damage in one.loss.damages)
