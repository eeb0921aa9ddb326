"""The premium statement and the payment form tell what the core has worked out, and no more."""

from __future__ import annotations

from datetime import date
from decimal import Decimal
from typing import Any

import pytest

from quarterday.core.file.records import AllocationKey, PaymentChoice
from quarterday.core.premium.statement import statement
from quarterday.core.review.case import Case
from quarterday.core.review.review import review_of
from quarterday.papers.payment_form import data as form
from quarterday.papers.premium_statement import data as paper
from quarterday.papers.setting import Setting

from . import given

FLAGSHIP, QUEBEC = "HW-1001", "HW-1010"
LANGUAGES = ("en", "fr")


def number(text: str) -> Decimal:
    plain = text.replace("−", "-").replace("\xa0", "").replace("\u202f", "").replace("$", "")
    return Decimal(plain.replace(",", ".") if "," in plain[-3:] else plain.replace(",", ""))


def tables(of: Setting) -> list[Any]:
    return [table for section in paper.data(of)["sections"] for table in section["tables"]]


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("id", [FLAGSHIP, QUEBEC])
def test_the_columns_of_every_table_add_up_to_its_last_row(id: str, language: str) -> None:
    for table in tables(given.setting(id, language)):
        *rows, total = table["rows"]
        for column in range(1, len(table["header"])):
            cells = [row[column] for row in rows if row[column] != "–"]
            if not total[column] or any(c.isalpha() for c in "".join(cells)):
                continue
            assert sum(map(number, cells), Decimal(0)) == number(total[column])


def test_the_rows_of_the_allocation_add_up_too() -> None:
    for table in tables(given.setting(FLAGSHIP))[:2]:
        for row in table["rows"]:
            *parts, whole = (number(cell) for cell in row[1:] if cell != "–")
            assert sum(parts) == whole


@pytest.mark.parametrize("language", LANGUAGES)
def test_the_heading_tells_who_bears_most(language: str) -> None:
    of = given.setting(FLAGSHIP, language)
    terms = of.case.terms
    assert terms is not None
    allocation = statement(of.case, terms, "ministries").allocation
    assert allocation is not None
    party, amount = max(allocation.totals.items(), key=lambda borne: borne[1])
    heading = paper.data(of)["sections"][0]["heading"]
    assert party in heading
    assert of.money(terms.money(amount)) in heading


def with_more(id: str, *records: Any) -> Setting:
    """Return a setting of a demo file with records added."""
    held = [h.record for h in given.book()[id].held.values()]
    file = given.file_of(id, [*held, *records])
    of = given.setting(id)
    case = Case(file, of.reference, given.AS_OF)
    return Setting(review_of(case), case, of.brokerage, "en", 1, given.AS_OF, None)


def test_a_key_that_leaves_a_premium_over_is_told_and_the_paper_still_made() -> None:
    broken = AllocationKey(name="a", party="Choir", location="eglise", by="location")
    made = paper.data(with_more(QUEBEC, broken))
    assert any("Add a line" in note for note in made["notes"])
    assert len(made["sections"]) == 1  # months; the ways to pay are on the form


@pytest.mark.parametrize("language", LANGUAGES)
def test_the_payments_stand_once_on_the_form_or_else_in_the_statement(language: str) -> None:
    """While the form asks, it has the days; once the choice is on file, the statement has them."""
    of = given.setting(QUEBEC, language)
    on_form = form.data(of)["plans"]["tables"]
    assert len(on_form) == len(form.data(given.setting(QUEBEC, language))["rows"]) - 1
    told = paper.data(of)
    assert [t for s in told["sections"] for t in s["tables"] if t in on_form] == []
    assert of.say("premium-statement-plans-elsewhere") in told["notes"]
    choice = PaymentChoice(renewal=date(2026, 12, 8), plan="three-cheques",
                           chosen_on=given.AS_OF, by="trésorier")  # fmt: skip
    chosen = with_more(QUEBEC, choice)
    told = paper.data(chosen)
    assert len(told["sections"]) == 2
    assert [t["rows"] for t in told["sections"][0]["tables"]] == [
        t["rows"] for t in form.data(given.setting(QUEBEC))["plans"]["tables"]
    ]
    assert chosen.say("premium-statement-plans-elsewhere") not in told["notes"]


@pytest.mark.parametrize("language", LANGUAGES)
def test_each_plan_s_payments_add_up_to_what_the_form_says_of_it(language: str) -> None:
    for id in (FLAGSHIP, QUEBEC):
        made = form.data(given.setting(id, language))
        for way, plan in zip(made["rows"][1:], made["plans"]["tables"], strict=True):
            *payments, total = plan["rows"]
            assert sum(number(row[-1]) for row in payments) == number(total[-1]) == number(way[3])
            assert (payments[0][0], payments[-1][0]) == (way[1], way[2])


@pytest.mark.parametrize("language", LANGUAGES)
def test_the_form_asks_for_one_way_out_of_those_there_are(language: str) -> None:
    of = given.setting(QUEBEC, language)
    made = form.data(of)
    (field,) = [f for f in of.fields.described if f.name == "payment.plan"]
    assert [id for id, _ in field.options] == ["at-once", "three-cheques", "ten-withdrawals"]
    assert field.value == ""
    assert field.kind == "one of"
    assert len(made["rows"]) == len(field.options)
    assert len(made["notes"]) == 3


def test_a_choice_on_file_is_filled_in() -> None:
    choice = PaymentChoice(renewal=date(2026, 12, 8), plan="three-cheques",
                           chosen_on=given.AS_OF, by="trésorier")  # fmt: skip
    of = with_more(QUEBEC, choice)
    form.data(of)
    assert [f.value for f in of.fields.described if f.name == "payment.plan"] == ["three-cheques"]
    assert form.reason(of) is None  # nothing is asked any more


def test_the_form_goes_in_when_the_review_asks_for_it() -> None:
    assert form.reason(given.setting(QUEBEC)) is not None
