"""Loss runs of several years: which links they give, and which they do not."""

from __future__ import annotations

from datetime import date
from decimal import Decimal
from typing import Any

import pytest

from quarterday.core.claims.valuations import Valuations, by_year
from quarterday.core.file.records import Claim


def shown(run: int, paid: int, number: str = "A", loss: int = 2020, **more: Any) -> Claim:
    """A claim as the loss run of the first of November of a year shows it."""
    given = {"number": number, "cause": "fire", "date_of_loss": date(loss, 6, 1),
             "paid": Decimal(paid), "valued_on": date(run, 11, 1), **more}  # fmt: skip
    return Claim.model_validate(given)


def counted(*files: list[Claim]) -> Valuations:
    found = Valuations()
    for versions in files:
        found.add(versions)
    return found


def test_two_runs_give_a_link_from_age_to_age() -> None:
    found = counted([shown(2020, 100), shown(2021, 150)])
    assert found.links == {(2020, 0): (100.0, 150.0)}
    assert found.latest == {(2020, 1): 150.0}
    assert found.files == 1


def test_one_run_gives_no_link_and_nothing_can_be_told() -> None:
    found = counted([shown(2021, 150), shown(2021, 80, "B")])
    assert (found.links, found.files) == ({}, 0)
    assert by_year(found) is None


def test_a_year_without_a_run_gives_no_link() -> None:
    """Where 2021 was not valued nobody knows what the claim came to in between."""
    assert counted([shown(2020, 100), shown(2022, 180)]).links == {}


def test_of_several_runs_of_one_year_the_newest_day_counts() -> None:
    early = shown(2021, 400, valued_on=date(2021, 2, 1))
    found = counted([shown(2020, 100), shown(2021, 150), early])
    assert found.links == {(2020, 0): (100.0, 150.0)}


def test_a_correction_of_the_same_day_replaces_what_was_recorded_before() -> None:
    assert counted([shown(2020, 100), shown(2021, 999), shown(2021, 150)]).latest == {
        (2020, 1): 150.0
    }


def test_a_claim_first_shown_later_grew_from_nothing() -> None:
    found = counted([shown(2020, 100), shown(2021, 100), shown(2021, 50, "late")])
    assert found.links == {(2020, 0): (100.0, 150.0)}


def test_a_claim_that_a_run_leaves_out_stays_as_it_was() -> None:
    found = counted([shown(2020, 100), shown(2020, 30, "B"), shown(2021, 150)])
    assert found.links == {(2020, 0): (130.0, 180.0)}


def test_files_of_one_year_add_up_age_by_age() -> None:
    found = counted([shown(2020, 100), shown(2021, 150)], [shown(2020, 50), shown(2021, 50)])
    assert found.links == {(2020, 0): (150.0, 200.0)}
    assert found.files == 2


def test_a_claim_under_a_new_number_goes_on_under_it() -> None:
    """A second insurer writes the same event under another number: it is counted once."""
    old = shown(2020, 100, "OLD", location="hall")
    new = shown(2021, 100, "NEW", location="hall")
    found = counted([old, new])
    assert found.links == {(2020, 0): (100.0, 100.0)}
    assert sum(found.latest.values()) == 100


def test_what_no_day_was_valued_on_says_nothing() -> None:
    assert counted([shown(2020, 100, valued_on=None)]).latest == {}


def test_a_run_older_than_its_loss_is_left_out() -> None:
    assert counted([shown(2019, 100, loss=2021)]).latest == {}


def test_the_net_amount_develops() -> None:
    gross: dict[str, Any] = {"deductible": Decimal(40), "includes_deductible": True}
    assert counted([shown(2020, 100, **gross), shown(2021, 150, **gross)]).links == {
        (2020, 0): (60.0, 110.0)
    }


def test_years_of_loss_are_told_oldest_first_and_add_up() -> None:
    """2020 grew by half in its first year, so 2021 is expected to."""
    found = by_year(counted([
        shown(2020, 100), shown(2021, 150), shown(2021, 200, "B", loss=2021),
    ]))  # fmt: skip
    assert found is not None
    years, total = found
    assert [(y.year, y.latest) for y in years] == [(2020, 150.0), (2021, 200.0)]
    assert [y.ultimate for y in years] == pytest.approx([150.0, 300.0])
    assert [total.latest, total.ultimate] == pytest.approx([350.0, 450.0])
