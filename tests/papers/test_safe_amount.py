"""The building page names the amount that is safe from the clause, and only where it helps."""

from __future__ import annotations

import pytest

from quarterday.core.money import Money
from quarterday.papers.building_values import data as buildings
from quarterday.papers.setting import Data, Setting

from . import given


def _leads(of: Setting) -> dict[str, str]:
    """Return what each page says of the clause, by the building's name."""
    pages: list[Data] = buildings.data(of)["buildings"]
    names = {p.building.name for p in of.pictures}
    return {
        name: page["coinsurance"]["lead"]
        for page in pages
        if page["coinsurance"]
        for name in names
        if name in str(page["opening"])
    }


@pytest.mark.parametrize("language", ["en", "fr"])
def test_a_building_that_just_meets_its_clause_is_told_what_would_be_safe(language: str) -> None:
    of = given.setting("HW-1001", language)
    church = next(p for p in of.pictures if p.building.id == "church")
    assert church.coinsured is not None
    assert church.coinsured.safe is not None
    assert not church.coinsured.penalised
    lead = _leads(of)[church.building.name]
    assert of.dollars(church.coinsured.safe.money) in lead
    assert church.coinsured.price_of_safe is not None
    price = church.coinsured.price_of_safe.money
    assert of.dollars(Money(price.amount.quantize(church.coinsured.safe.money.amount))) in lead


@pytest.mark.parametrize("language", ["en", "fr"])
def test_a_building_that_is_penalised_has_one_message(language: str) -> None:
    """It is told to raise the amount to the cost; a second amount would only puzzle."""
    of = given.setting("HW-1001", language)
    hall = next(p for p in of.pictures if p.building.id == "hall")
    assert hall.coinsured is not None
    assert hall.coinsured.penalised
    assert hall.coinsured.safe is not None
    assert of.dollars(hall.coinsured.safe.money) not in _leads(of)[hall.building.name]
