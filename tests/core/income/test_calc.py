"""The income worksheet on its own: published rows in and out, and inputs that cannot be used."""

from __future__ import annotations

from decimal import Decimal
from typing import Any

import pytest

from quarterday.catalogue.speech import Speech
from quarterday.core.given import Unusable
from quarterday.core.income.calc import income
from quarterday.core.reference import Reference

LANGUAGES = ("en", "fr")
GIVEN: dict[str, Any] = {"revenue": {"donations": 400_000}, "months": 1}


def test_a_years_giving_falls_on_the_months_as_published(canada: Reference) -> None:
    """abundance.ca, Plan to Give this Summer: about 30 % in December, about 4 % in July."""
    done = income(GIVEN, canada)
    assert (done["need"], done["worst_start"]) == ("120000.00", 12)
    assert done["starts"]["7"] == "16000.00"
    assert done["starts"]["1"] == "26400.00", "the ten other months share the rest: 6.6 % each"


def test_twelve_months_of_ones_own_count_before_the_season(canada: Reference) -> None:
    given = {"revenue": {"donations": [10_000] * 11 + [50_000]}, "months": 2}
    done = income(given, canada)
    assert (done["need"], done["worst_start"]) == ("60000.00", 11)
    assert [month["lost"] for month in done["by_month"]] == ["10000.00", "50000.00"]


def test_the_printed_rules_stand_beside_the_worksheet(canada: Reference) -> None:
    """1,375,000 and months over twelve are read (freebusiness.us); 9 months are computed."""
    done = income({"revenue": {"rents": 1_375_000}, "months": 9}, canada)
    assert done["published"] == {
        "exposure": "1375000.00", "maximum_coinsurance": "0.75", "largest_share": "0.75",
        "amount": "1031250.00",
    }  # fmt: skip
    assert done["need"] == "1031250.00"


def test_the_underinsured_textbook_case_pays_60_000(canada: Reference) -> None:
    """CP 00 30, Example 1 (City of Santa Ana, page 98): 400,000 a year, 50 %, limit 150,000 and a
    loss of 80,000: "We will pay no more than $60,000. The remaining $20,000 is not covered."."""
    given = {
        "revenue": {"other": [80_000] + [29_090] * 10 + [29_100]}, "months": 1,
        "limit": 150_000, "coinsurance": "0.5",
    }  # fmt: skip
    done = income(given, canada)
    assert done["published"]["exposure"] == "400000.00"
    assert done["settlement"] == {
        "required_amount": "200000.00", "share": "0.75", "paid": "60000.00", "borne": "20000.00",
        "lasts_months": 1,
    }  # fmt: skip


def test_the_adequate_textbook_case_pays_all(canada: Reference) -> None:
    """CP 00 30, Example 2: a limit of 200,000 meets the clause (result from memory)."""
    given = {
        "revenue": {"other": [80_000] + [29_090] * 10 + [29_100]}, "months": 1,
        "limit": 200_000, "coinsurance": "0.5",
    }  # fmt: skip
    assert income(given, canada)["settlement"]["paid"] == "80000.00"


def test_a_monthly_limit_stands_in_place_of_coinsurance(canada: Reference) -> None:
    """CP 00 30 (page 99): 120,000 and a quarter read; losses and the 80,000 from memory."""
    given = {
        "revenue": {"events": [40_000, 20_000, 30_000] + [0] * 9}, "months": 3, "limit": 120_000,
        "monthly_limit": "0.25", "coinsurance": "1",
    }  # fmt: skip
    done = income(given, canada)
    assert (done["need"], done["settlement"]["paid"]) == ("90000.00", "80000.00")
    assert done["settlement"]["borne"] == "10000.00"


def test_everything_together_by_hand(canada: Reference) -> None:
    """12,000 of rents a month, 2 % growth, a tenth kept, wages of 36,000 kept to two thirds, and
    three months: (12,240 × 0.9 − 1,020) × 3 = 29,988 from January; from the twelfth month two of
    them lie a year further: 9,996 + 2 × 10,195.92 = 30,387.84."""
    given = {
        "revenue": {"rents": [12_000] * 12}, "months": 3, "growth": "0.02",
        "kept": {"rents": "0.1"}, "rent_elsewhere": 1_500, "moving": 2_000,
        "expenses": {"wages": {"yearly": 36_000, "continues": Decimal(2) / 3}},
    }  # fmt: skip
    done = income(given, canada)
    assert (done["starts"]["1"], done["need"]) == ("29988.00", "30387.84")
    assert (done["worst_start"], done["extra"]) == (12, "6500.00")
    assert done["by_month"][0] == {
        "month": 12, "income": "12240.00", "kept": "1224.00", "saved": "1020.00",
        "lost": "9996.00", "extra": "3500.00",
    }  # fmt: skip


def test_giving_that_recovers_is_given_as_a_curve(canada: Reference) -> None:
    kept = {"donations": {"first": "0.5", "settled": "0.8", "months": 3}}
    given = {"revenue": {"donations": [10_000] * 12}, "months": 4, "kept": kept}
    assert [m["lost"] for m in income(given, canada)["by_month"]] == [
        "5000.00", "4000.00", "3000.00", "2000.00"
    ]  # fmt: skip


def test_the_term_begins_in_the_month_that_is_given(canada: Reference) -> None:
    starts = income({**GIVEN, "month": 5}, canada)["starts"]
    assert list(starts)[:2] == ["5", "6"]


def test_a_kind_without_income_changes_nothing(canada: Reference) -> None:
    more = {**GIVEN, "revenue": {"donations": 400_000, "rents": 0, "events": [0] * 12}}
    assert income(more, canada)["need"] == income(GIVEN, canada)["need"]


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize(
    "more",
    [
        {},
        {"limit": 10, "coinsurance": "0.5"},
        {"limit": 130_000},
        {"limit": 400_000, "months": 2},
        {"limit": 120_000, "monthly_limit": "0.25", "months": 14},
    ],
)
def test_the_steps_can_be_said(canada: Reference, language: str, more: dict[str, Any]) -> None:
    speech = Speech(canada, language)
    steps = income({**GIVEN, **more}, canada)["steps"]
    assert len(steps) >= 5
    assert all(speech.say(step) for step in steps)


@pytest.mark.parametrize(
    ("change", "said"),
    [
        ({"revenue": {}}, "given-wrong"),
        ({"revenue": {"bingo": 1}}, "given-choice"),
        ({"revenue": {"rents": [1, 2, 3]}}, "income-calc-months"),
        ({"revenue": {"rents": []}}, "given-wrong"),
        ({"revenue": {"rents": -1}}, "given-ge"),
        ({"revenue": {"rents": "many"}}, "given-number"),
        ({"months": 0}, "given-ge"),
        ({"months": 61}, "given-le"),
        ({"month": 13}, "given-le"),
        ({"growth": "-1"}, "given-gt"),
        ({"kept": {"donations": "1.5"}}, "given-le"),
        ({"kept": {"donations": {"first": "0.1"}}}, "given-missing"),
        ({"expenses": {"wages": {"yearly": 5}}}, "given-missing"),
        ({"coinsurance": 80}, "given-le"),
        ({"wages": 5}, "given-unknown-of"),
    ],
)
def test_what_cannot_be_used_is_refused_in_a_sentence(
    canada: Reference, change: dict[str, Any], said: str
) -> None:
    with pytest.raises(Unusable) as refused:
        income({**GIVEN, **change}, canada)
    assert refused.value.words.id == said
    assert all(Speech(canada, language).say(refused.value.words) for language in LANGUAGES)


def test_three_amounts_for_a_year_are_told_with_their_count(canada: Reference) -> None:
    with pytest.raises(Unusable) as refused:
        income({"revenue": {"rents": [1, 2, 3]}, "months": 1}, canada)
    assert Speech(canada, "en").say(refused.value.words) == (
        '"revenue" of rents has 3 amounts. Give one for the year, or twelve from January.'
    )


def test_months_are_missing_is_told(canada: Reference) -> None:
    with pytest.raises(Unusable) as refused:
        income({"revenue": {"rents": 1}}, canada)
    assert refused.value.words.id == "given-missing-of"
