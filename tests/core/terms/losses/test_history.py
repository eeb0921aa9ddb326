"""Past claims as losses from the ground up."""

from __future__ import annotations

from datetime import date
from decimal import Decimal

import pytest
from tests.core.terms.losses.conftest import ROOM, Account, claim

from quarterday.core.file.records import Building
from quarterday.core.terms.losses.history import history

DAY = date(2025, 3, 1)


@pytest.mark.parametrize(
    ("paid", "outstanding", "recovered", "deductible", "whole"),
    [(1000, 0, 0, 500, 1500), (1000, 0, 0, None, 1000), (0, 0, 0, 500, 0), (900, 300, 200, 0, 1000),
     (100, 0, 100, 500, 0)],
)  # fmt: skip
def test_a_loss_is_what_was_incurred_and_the_deductible_where_anything_was(
    paid: int, outstanding: int, recovered: int, deductible: int | None, whole: int
) -> None:
    one = claim(
        "1", "fire", DAY, paid, outstanding=Decimal(outstanding), recovered=Decimal(recovered),
        deductible=None if deductible is None else Decimal(deductible),
    )  # fmt: skip
    assert one.ground_up == whole


def test_claims_of_the_last_years_are_losses_oldest_first(account: Account) -> None:
    case = account(
        claim("new", "fire", date(2027, 1, 30), 100),
        claim("old", "fire", date(2017, 1, 31), 100),
        claim("older", "fire", date(2017, 1, 30), 100),
        claim("nothing", "fire", DAY, 0),
        claim("first-day", "fire", date(2026, 1, 31), 100),
        claim("last-day", "fire", date(2026, 1, 30), 100),
    )
    told = history(case, 10)
    assert [(r.claim.number, r.year) for r in told.replays] == [
        ("old", 10), ("last-day", 2), ("first-day", 1), ("new", 1)
    ]  # fmt: skip
    assert told.period.start == date(2017, 1, 31)


@pytest.mark.parametrize(
    ("cause", "location", "component", "place"),
    [
        ("fire", "hall", "building", "hall"),
        ("fire", None, "building", "hall"),
        ("theft", "hall", "contents", "hall"),
        ("theft-of-money", "hall", "money", "hall"),
        ("dishonesty", None, "money", "*"),
        ("injury-on-premises", "hall", "compensatory", "hall"),
        ("injury-away", None, "compensatory", "*"),
        ("cyber-incident", None, "cyber-own-losses", "*"),
        ("volunteer-injury", None, "volunteer-accident", "*"),
        ("fire", "sold", "building", "hall"),
    ],
)
def test_what_a_claim_was_follows_from_its_cause(
    account: Account, cause: str, location: str | None, component: str, place: str
) -> None:
    (one,) = history(account(claim("1", cause, DAY, 100, location=location)), 10).replays
    (damage,) = one.loss.damages
    assert (damage.component, damage.place) == (component, place)
    assert damage.amount == 100


def test_water_in_a_rented_room_is_a_loss_of_contents(account: Account) -> None:
    case = account(ROOM, claim("1", "water-escape", DAY, 100, location="room"))
    (one,) = history(case, 10).replays
    assert dict(one.loss.amounts) == {"contents": 100}


def test_a_claim_without_a_place_stays_without_one_where_there_are_several(
    account: Account,
) -> None:
    case = account(Building(id="shed", name="Shed"), claim("1", "fire", DAY, 100))
    (one,) = history(case, 10).replays
    assert one.loss.place == "*"


def test_what_is_assumed_is_told(account: Account) -> None:
    known = claim("1", "fire", DAY, 100, deductible=Decimal(500))
    case = account(known)
    assert [w.id for w in history(case, 10).assumed] == [
        "losses-assumed-one-thing", "losses-assumed-prices"
    ]  # fmt: skip
    case = account(known, claim("2", "theft", DAY, 100, status="open"))
    assert [w.id for w in history(case, 10).assumed] == [
        "losses-assumed-deductible",
        "losses-assumed-one-thing",
        "losses-assumed-open",
        "losses-assumed-prices",
    ]
    assert history(account(), 10).assumed == ()
