"""Options: what a line becomes when one is taken, how it is said, and what was written before."""

from __future__ import annotations

import json
from datetime import date
from decimal import Decimal
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from quarterday.catalogue.speech import Speech
from quarterday.core.file.records import Terms
from quarterday.core.file.records.terms import PERCENT_DEDUCTIBLE, Coverage, Option
from quarterday.core.reference import Reference
from quarterday.core.terms.agreed import agreed, wishes
from quarterday.core.terms.calc import settle
from quarterday.core.terms.option import (
    DEDUCTIBLE,
    amounts_said,
    changes_deductible,
    deductible_said,
    is_bare,
    line_with,
    says_deductible,
    without_deductible,
)

START, END = date(2027, 1, 31), date(2028, 1, 31)
QUAKE: dict[str, Any] = {
    "coverage": "earthquake", "limit": 2_000_000, "deductible_percent": "0.15",
    "deductible_percent_of": "value", "deductible_minimum": 100_000,
}  # fmt: skip


def line(**more: Any) -> Coverage:
    return Coverage.model_validate({**QUAKE, **more})


def option(**said: Any) -> Option:
    return Option.model_validate({"coverage": "earthquake", **said})


def terms(*lines: Coverage, options: tuple[Option, ...] = ()) -> Terms:
    return Terms(stage="offered", start=START, end=END, coverages=lines, options=options)


# --- taking one


def test_a_smaller_percentage_takes_the_place_of_the_larger_and_keeps_what_it_is_of() -> None:
    taken = line_with(line(), option(deductible_percent="0.05"))
    assert taken == line(deductible_percent="0.05")


def test_bounds_that_an_option_says_replace_those_of_the_line() -> None:
    said = {"deductible_percent": "0.05", "deductible_minimum": 10_000,
            "deductible_maximum": 250_000}  # fmt: skip
    assert line_with(line(), option(**said)) == line(**said)
    lower = line_with(line(), option(deductible_minimum=50_000))
    assert lower == line(deductible_minimum=50_000)


def test_an_amount_takes_the_place_of_a_percentage_and_the_reverse() -> None:
    flat = line_with(line(), option(deductible=25_000))
    assert flat == Coverage.model_validate(
        {"coverage": "earthquake", "limit": 2_000_000, "deductible": 25_000}
    )
    percent = option(deductible_percent="0.15", deductible_percent_of="value",
                     deductible_minimum=100_000)  # fmt: skip
    assert line_with(flat, percent) == line()


def test_an_option_without_a_line_makes_one_and_one_for_a_place_narrows_it() -> None:
    said = {"limit": 500_000, "deductible_percent": "0.1", "deductible_percent_of": "limit"}
    assert line_with(None, option(**said)) == Coverage.model_validate(
        {"coverage": "earthquake", **said}
    )
    assert line_with(line(), option(location="hall", limit=5)).place == ("earthquake", "hall")


_AMOUNTS = st.none() | st.integers(0, 10**6).map(Decimal)
_RATIOS = st.none() | st.integers(0, 100).map(lambda n: Decimal(n) / 100)
_OPTIONS = st.builds(
    Option,
    coverage=st.just("earthquake"),
    limit=_AMOUNTS,
    deductible=_AMOUNTS,
    deductible_percent=_RATIOS,
    deductible_percent_of=st.sampled_from([None, "loss", "limit", "value"]),
    deductible_minimum=_AMOUNTS,
    deductible_maximum=_AMOUNTS,
)


@given(_OPTIONS)
def test_taking_one_twice_is_taking_it_once_and_what_it_says_stands(one: Option) -> None:
    taken = line_with(line(), one)
    assert line_with(taken, one) == taken
    for name in ("limit", *DEDUCTIBLE):
        said = getattr(one, name)
        assert said is None or getattr(taken, name) == said
    assert (taken == line()) >= is_bare(one)
    assert changes_deductible(line(), one) <= says_deductible(one)
    assert not says_deductible(without_deductible(one))


def test_what_was_agreed_holds_the_percentage_that_was_taken(case_of: Any) -> None:
    """Agreed with an amount before, the line kept its percentage beside it."""
    for said in ({"deductible_percent": "0.05"}, {"deductible": 25_000}):
        offered = terms(line(), options=(option(price=5_900, **said),))
        (wish,) = wishes(case_of(offered).file, offered)
        found = agreed(offered, (wish,)).find("earthquake")
        assert found == line_with(line(), option(**said))
        assert found is not None
        assert (found.deductible is None) == ("deductible" not in said)


# --- what it comes to


@pytest.mark.parametrize(
    ("said", "pays"),
    [
        # ISO windstorm or hail percentage deductible, Example 4 (City of Santa Ana, document
        # 126214, page 58): 2 % of a building worth 500,000 is 10,000; of a loss of 40,000 it
        # leaves 30,000.
        ({"deductible_percent": "0.02", "deductible_percent_of": "value"}, "30000.00"),
        # Computed from the same: 2 % of the limit of 1,000,000; the least; the most.
        ({"deductible_percent": "0.02", "deductible_percent_of": "limit"}, "20000.00"),
        ({"deductible_percent": "0.02", "deductible_percent_of": "value",
          "deductible_minimum": 15_000}, "25000.00"),
        ({"deductible_percent": "0.02", "deductible_percent_of": "value",
          "deductible_maximum": 5_000}, "35000.00"),
    ],
)  # fmt: skip
def test_a_taken_percentage_comes_off_as_on_a_line_of_the_terms(
    canada: Reference, said: dict[str, Any], pays: str
) -> None:
    flat = Coverage.model_validate(
        {"coverage": "building", "location": "hall", "limit": 1_000_000, "deductible": 1_000}
    )
    taken = line_with(flat, Option.model_validate({"coverage": "building", "location": "hall",
                                                   **said}))  # fmt: skip
    done = settle(
        {
            "terms": {"start": START, "coverages": [taken.model_dump(exclude_none=True)]},
            "values": [{"coverage": "building", "location": "hall", "value": 500_000}],
            "losses": [{"cause": "windstorm-hail", "place": "hall",
                        "date_of_loss": date(2027, 6, 1), "amounts": {"building": 40_000}}],
        },
        canada,
    )  # fmt: skip
    assert done["losses"][0]["paid"] == pays


# --- how it is said


@pytest.mark.parametrize(
    ("said", "english", "french"),
    [
        ({"deductible": 25_000}, "$25,000", "25 000 $"),
        ({"deductible_percent": "0.05", "deductible_percent_of": "value"},
         "5% of the value", "5 % de la valeur"),
        ({"deductible_percent": "0.05", "deductible_percent_of": "value",
          "deductible_minimum": 10_000},
         "5% of the value, at least $10,000", "5 % de la valeur, au moins 10 000 $"),
        ({"deductible_percent": "0.025", "deductible_percent_of": "loss",
          "deductible_minimum": 5_000, "deductible_maximum": 50_000},
         "2.5% of the loss, at least $5,000 and at most $50,000",
         "2,5 % du sinistre, au moins 5 000 $ et au plus 50 000 $"),
        ({"deductible_percent": "0.05", "deductible_maximum": 50_000},
         "5%, at most $50,000", "5 %, au plus 50 000 $"),
        ({"deductible_minimum": 50_000},
         "the percentage as offered, at least $50,000",
         "le pourcentage offert, au moins 50 000 $"),
    ],
)  # fmt: skip
def test_a_deductible_is_said_in_full(
    canada: Reference, said: dict[str, Any], english: str, french: str
) -> None:
    found = amounts_said(terms(), option(**said))["deductible"]
    for language, text in (("en", english), ("fr", french)):
        spoken = Speech(canada, language).say(found)
        assert spoken.replace("\xa0", " ").replace("\u202f", " ") == text


def test_an_option_that_names_nothing_says_nothing() -> None:
    assert amounts_said(terms(), option(price=5)) == {}
    assert deductible_said(terms(), line(**dict.fromkeys(PERCENT_DEDUCTIBLE))) is None


# --- what was written before options could say a percentage


BEFORE = {
    "currency": "CAD", "end": "2028-01-31", "options": [
        {"coverage": "earthquake", "deductible": "25000.00", "limit": "2000000.00",
         "location": "*", "price": "5900.00"}],
    "coverages": [{"coverage": "loss-of-income", "coinsurance": "0.5", "excluded_causes": [],
                   "in_shared_limit": False, "limit": "500000.00", "location": "*"}],
    "premiums": [], "rounding": "0.01", "stage": "offered", "start": "2027-01-31", "totals": [],
}  # fmt: skip


def test_an_entry_from_before_loads_and_is_written_again_to_the_byte() -> None:
    """The digest of the ledger is over these bytes: a field that is not known must not appear."""
    body = json.dumps(BEFORE, sort_keys=True, separators=(",", ":"))
    found = Terms.read(body)
    assert found.body() == body
    (one,) = found.options
    assert [getattr(one, name) for name in DEDUCTIBLE] == [Decimal(25_000), None, None, None, None]
    assert found.coverages[0].coinsurance_of is None


def test_an_entry_with_a_percentage_comes_back_as_it_went_in() -> None:
    told = option(limit=2_000_000, deductible_percent="0.05", deductible_percent_of="value",
                  deductible_minimum=10_000, price=5_900)  # fmt: skip
    found = terms(line(), options=(told,))
    assert Terms.read(found.body()) == found
    assert '"deductible_percent":"0.05"' in found.body()
