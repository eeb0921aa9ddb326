"""A loss as people tell it."""

from __future__ import annotations

from datetime import date
from decimal import Decimal
from typing import Any

import pytest
from pydantic import ValidationError

from quarterday.core.reference import Reference
from quarterday.core.terms.losses.components import COMPONENTS
from quarterday.core.terms.losses.loss import Loss, is_monthly
from quarterday.core.words import Term, words

DAY = date(2027, 6, 1)


def told(**fields: Any) -> Loss:
    amounts = fields.pop("amounts", {"building": 5})
    return Loss.model_validate({"cause": "fire", "date_of_loss": DAY, "amounts": amounts, **fields})


def test_an_amount_may_be_of_another_place() -> None:
    loss = told(place="hall", amounts={"building": 5, "building@shed": 6})
    assert {d.place: d.amount for d in loss.damages} == {"hall": Decimal(5), "shed": Decimal(6)}
    assert loss.total == 11


def test_months_are_counted_from_the_first() -> None:
    loss = told(amounts={"income": [5, 6]})
    assert [d.month for d in loss.damages] == [1, 2]
    assert [d.amount for d in loss.damages] == [Decimal(5), Decimal(6)]


def test_a_loss_is_called_by_its_name_else_its_reference_else_its_cause_and_day() -> None:
    assert told(name="The big one", reference="total-fire").called == "The big one"
    assert told(reference="total-fire").called == Term("loss", "total-fire")
    assert told().called == words("settling-loss", cause=Term("cause", "fire"), day=DAY)


def test_a_claim_is_made_on_the_day_of_loss_unless_told_otherwise() -> None:
    assert told().reported == DAY
    assert told(claimed_on=date(2028, 1, 1)).reported == date(2028, 1, 1)


@pytest.mark.parametrize("fields", [{"amounts": {"income": []}}, {"hours": 0}, {"colour": "red"}])
def test_what_makes_no_sense_is_refused(fields: dict[str, Any]) -> None:
    with pytest.raises(ValidationError):
        told(**fields)


def test_only_income_comes_month_by_month() -> None:
    assert [c for c in COMPONENTS if is_monthly(c)] == [
        "income", "civil-authority", "off-premises-utilities"
    ]  # fmt: skip


def test_every_coverage_that_may_answer_is_of_the_library(canada: Reference) -> None:
    for component in COMPONENTS.values():
        for coverage in component.coverages:
            assert coverage in canada.coverages


def test_every_cause_is_answered_for_some_component(canada: Reference) -> None:
    reached = {
        cause
        for component in COMPONENTS.values()
        for coverage in component.coverages
        for cause in canada.coverages[coverage].answers
    }
    assert reached == set(canada.causes)
