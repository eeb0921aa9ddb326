"""The plain form: what is written reads back as itself, through JSON and through YAML."""

from __future__ import annotations

import json
from datetime import date
from decimal import Decimal
from typing import Any

import yaml
from hypothesis import given
from hypothesis import strategies as st
from tests.core.terms.settling.test_properties import losses, made, versions

from quarterday.catalogue.strict import read_yaml
from quarterday.core.file.records import Terms
from quarterday.core.file.records.base import Part
from quarterday.core.terms.losses.loss import Loss
from quarterday.core.terms.settling.form import Given, Valued, values_of, written
from quarterday.core.terms.settling.form import given as read_given

ONE: dict[str, Any] = {
    "terms": {"start": "2027-01-15", "coverages": [{"coverage": "contents", "limit": 5}]},
    "losses": [{"cause": "fire", "date_of_loss": "2027-02-01", "amounts": {"contents": 5}}],
}


def there_and_back(what: Part) -> tuple[Part, Part]:
    plain = written(what)
    as_json = json.loads(json.dumps(plain))
    as_yaml = read_yaml(yaml.safe_dump(plain, allow_unicode=True), "terms.yaml")
    return type(what).model_validate(as_json), type(what).model_validate(as_yaml)


@given(versions())
def test_terms_are_read_back_as_they_were_written(version: dict[str, Any]) -> None:
    terms = made(version)
    assert there_and_back(terms) == (terms, terms)


@given(losses)
def test_losses_are_read_back_as_they_were_written(told: list[dict[str, str]]) -> None:
    for amounts in told:
        loss = Loss(cause="fire", place="hall", date_of_loss=date(2027, 6, 1), amounts=amounts)
        assert there_and_back(loss) == (loss, loss)


@given(st.lists(st.decimals(0, 10**6, places=2), min_size=1, max_size=5))
def test_months_of_income_are_read_back_in_order(months: list[Decimal]) -> None:
    loss = Loss(cause="fire", date_of_loss=date(2027, 6, 1), amounts={"income": tuple(months)})
    assert there_and_back(loss) == (loss, loss)
    assert [(d.month, d.amount) for d in loss.damages] == list(enumerate(months, start=1))


def test_a_whole_form_is_read_back_as_it_was_written() -> None:
    told = read_given({**ONE, "values": [{"coverage": "contents", "value": 9}]})
    assert there_and_back(told) == (told, told)


def test_terms_alone_are_issued_ones_of_a_year_and_losses_are_numbered() -> None:
    told = read_given({**ONE, "losses": [*ONE["losses"], {**ONE["losses"][0], "id": "mine"}]})
    assert (told.terms.stage, told.terms.end) == ("issued", date(2028, 1, 15))
    assert [loss.id for loss in told.losses] == ["loss-1", "mine"]


def test_a_day_may_be_told_as_a_day() -> None:
    terms = {**ONE["terms"], "start": date(2028, 2, 29)}
    assert read_given({**ONE, "terms": terms}).terms.end == date(2029, 2, 28)


def test_what_is_told_of_terms_is_kept() -> None:
    terms = {**ONE["terms"], "stage": "offered", "end": "2027-07-01"}
    told = read_given({**ONE, "terms": terms}).terms
    assert (told.stage, told.end) == ("offered", date(2027, 7, 1))


def test_values_are_told_by_coverage_and_location() -> None:
    told = values_of(
        (
            Valued(coverage="building", location="hall", value=Decimal(5)),
            Valued(coverage="building", location="shed", depreciation=Decimal("0.5")),
        )
    )
    assert told.worth == {("building", "hall"): Decimal(5)}
    assert told.depreciation == {("building", "shed"): Decimal("0.5")}
    assert told.places == {"hall"}


def test_defaults_are_left_out_of_what_is_written() -> None:
    terms = Terms(stage="issued", start=date(2027, 1, 1), end=date(2028, 1, 1))
    assert written(terms) == {"stage": "issued", "start": "2027-01-01", "end": "2028-01-01"}


def test_the_form_holds_at_least_one_loss() -> None:
    assert Given.model_fields["losses"].is_required()
