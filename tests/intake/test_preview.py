"""The preview says what changes in the reader's words: money, percentages, days, names."""

from __future__ import annotations

from datetime import date
from decimal import Decimal

import pytest

from quarterday.core.file.entry import Origin
from quarterday.core.file.records import (
    Building,
    Claim,
    Contact,
    Interest,
    Operations,
    Organisation,
    Record,
    Terms,
    Valuation,
)
from quarterday.core.file.records.terms import Coverage, Option, Premium, SharedLimit, StatedTotal
from quarterday.intake.changes import item_of
from quarterday.intake.preview import NAMED_AT_MOST, changed, title
from tests.intake.books import plan_of, previewed, speech

START, END = date(2026, 1, 15), date(2027, 1, 15)


def told(old: Record, new: Record, language: str = "en") -> list[str]:
    item = item_of("0007", old, new, Origin(way="workbook"), ())
    return [speech(language).say(line) for line in changed(item)]


def terms(**parts: object) -> Terms:
    return Terms.model_validate({"stage": "offered", "start": START, "end": END, **parts})


OF_TERMS = "0007, offered terms from January 15, 2026"


def test_amounts_days_and_choices_are_said_as_people_say_them() -> None:
    old = Claim(number="C-1", cause="fire", date_of_loss=date(2024, 5, 5), status="open")
    new = old.model_copy(
        update={"cause": "theft", "paid": Decimal("12.50"), "status": "closed", "valued_on": END}
    )
    lines = told(old, new)
    assert lines[0].startswith("0007, claim C-1: Cause was ")
    assert lines[1:] == [
        "0007, claim C-1: Paid was $0 and becomes $12.50.",
        "0007, claim C-1: Status was open and becomes closed.",
        "0007, claim C-1: Valued on was not known and becomes January 15, 2027.",
    ]


def test_a_year_has_no_thousands_mark_and_a_number_has() -> None:
    old, new = (
        Building(id="01", name="Hall"),
        Building(
            id="01",
            name="Hall",
            year_built=1921,
            area_m2=Decimal("1412.5"),
            special_features=("organ",),
        ),
    )
    assert told(old, new) == [
        "0007, building Hall: Year built was not known and becomes 1921.",
        "0007, building Hall: Floor area (m²) was not known and becomes 1,412.5.",
        "0007, building Hall: Special features was none and becomes organ.",
    ]


def test_lines_of_terms_are_named_by_what_and_where_they_cover() -> None:
    old = terms(
        coverages=(Coverage(coverage="building", location="01", coinsurance=Decimal("0.8")),),
        totals=(StatedTotal(of="total", amount=Decimal(10)),),
        premiums=(Premium(coverage="glass", amount=Decimal(1)),),
    )
    new = terms(
        coverages=(
            Coverage(coverage="building", location="01", coinsurance=Decimal("0.9")),
            Coverage(coverage="glass", limit=Decimal(100)),
        ),
        totals=(StatedTotal(of="total", amount=Decimal(20)),),
        options=(Option(coverage="glass", price=Decimal(5)),),
    )
    assert told(old, new) == [
        f"{OF_TERMS}, coverages, Building (building 01): Coinsurance was 80% and becomes 90%.",
        f"{OF_TERMS}: coverages, Glass is added.",
        f"{OF_TERMS}: premiums, Glass is taken away.",
        f"{OF_TERMS}, totals, total *: Amount was $10 and becomes $20.",
        f"{OF_TERMS}: options, Glass is added.",
    ]


def test_the_shared_limit_is_told_whole_when_it_comes_and_by_field_when_it_changes() -> None:
    limit = SharedLimit(amount=Decimal(100_000), tops_up=("by-laws",))
    more = limit.model_copy(update={"amount": Decimal(150_000), "meant_for": "owner"})
    assert told(terms(), terms(shared_limit=limit))[0].endswith(
        "was not known and becomes $100,000 for several coverages."
    )
    lines = told(terms(shared_limit=limit), terms(shared_limit=more))
    assert lines[0].endswith("was $100,000 and becomes $150,000.")
    assert lines[1].endswith("was not known and becomes an organisation that owns its buildings.")


def test_amounts_are_in_the_currency_of_the_terms() -> None:
    old = terms(currency="USD", coverages=(Coverage(coverage="glass", limit=Decimal(1)),))
    new = terms(currency="USD", coverages=(Coverage(coverage="glass", limit=Decimal(2)),))
    assert "US$" in told(old, new)[0]


def test_changes_are_said_in_french() -> None:
    old = Operations(children=False, revenue_donations=Decimal(1000))
    new = Operations(children=True, revenue_donations=Decimal("2500.5"))
    assert told(old, new, "fr") == [
        "0007, activités\u00a0: Dons par année, de 1\u00a0000\u00a0$ à 2\u00a0500,50\u00a0$.",
        "0007, activités\u00a0: Travaille avec des enfants, de non à oui.",
    ]


@pytest.mark.parametrize(
    ("record", "name"),
    [
        (Organisation(name="St. Brendan", province="ON"), "organisation St. Brendan"),
        (Operations(), "activities"),
        (Contact(id="a", name="Ada"), "contact Ada"),
        (Interest(id="x", role="lender", name="Caisse"), "lender or lessor Caisse"),
        (
            Valuation(building="01", amount=Decimal(1), valued_on=START),
            "valuation 01/building/2026-01-15",
        ),
        (terms(), "offered terms from January 15, 2026"),
    ],
)
def test_a_record_is_called_by_its_kind_and_name(record: Record, name: str) -> None:
    assert speech().say(title(record)) == name


@pytest.mark.parametrize(("more", "named"), [(1, NAMED_AT_MOST + 1), (2, NAMED_AT_MOST)])
def test_of_many_new_accounts_the_rest_is_told_in_one_sentence(more: int, named: int) -> None:
    accounts = [f"N-{n:02}" for n in range(NAMED_AT_MOST + more)]
    rows = [(account, f"Hall {account}", "ON") for account in accounts]
    plan = plan_of({"organisations": [("account", "name", "province"), *rows]})
    lines = [line for line in previewed(plan) if " new: " in line]
    assert [line.partition(",")[0] for line in lines[:named]] == accounts[:named]
    rest = ["And 2 more accounts, all new: organisation (2)."] if named == NAMED_AT_MOST else []
    assert lines[named:] == rest
    told = previewed(plan, "fr")
    assert ("Et 2 autres comptes, tous nouveaux\N{NO-BREAK SPACE}: organisme (2)." in told) == bool(
        rest
    )
