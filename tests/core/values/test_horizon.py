"""How far past its last figure an index is carried, and what is said beyond."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date, timedelta
from decimal import Decimal

import pytest

from quarterday.catalogue.speech import Speech
from quarterday.core.dates import Quarter, add_years
from quarterday.core.file.records import Building, Terms, Valuation
from quarterday.core.file.records.terms import Coverage
from quarterday.core.given import Unusable
from quarterday.core.reference import Reference
from quarterday.core.review.case import Case
from quarterday.core.review.rules.values.insured import below_replacement
from quarterday.core.values.calc import index_value
from quarterday.core.values.index import BeyondHorizonError, Index

YEARS = 8


def _last(canada: Reference) -> Quarter:
    return max(canada.indices["on"][-1].points)


def _end(canada: Reference) -> date:
    return add_years(_last(canada).middle, YEARS)


def _index(canada: Reference) -> Index:
    rate = canada.parameter("values.projected-index-rate", date(2026, 1, 1))
    return Index.of(canada.indices["on"][-1], rate, YEARS)


def test_the_last_day_of_the_horizon_is_projected_to_and_the_next_is_not(canada: Reference) -> None:
    index, start, end = _index(canada), date(2024, 2, 15), _end(canada)
    assert index.change(start, end).projected
    with pytest.raises(BeyondHorizonError, match=f"ends with {_last(canada)}"):
        index.change(start, end + timedelta(days=1))
    with pytest.raises(BeyondHorizonError):
        index.change(end + timedelta(days=1), start)


def _late(case_of: Callable[..., Case], year: int) -> Case:
    line = Coverage(coverage="building", location="hall", limit=Decimal(1))
    terms = Terms(
        stage="offered", start=date(year, 1, 31), end=date(year + 1, 1, 31), coverages=(line,)
    )
    valuation = Valuation(building="hall", amount=Decimal(1_000_000), valued_on=date(2024, 2, 15))
    hall = Building(id="hall", name="Hall")
    return case_of(hall, valuation, terms, as_of=date(year - 1, 11, 25))


def test_a_review_long_after_the_newest_release_says_so_and_invents_nothing(
    case_of: Callable[..., Case],
) -> None:
    """Rebuilt nine months after the term: the shipped index does not reach the end of 2035."""
    assert _late(case_of, 2032).pictures["hall"].costs is not None
    found = _late(case_of, 2034).pictures["hall"]
    assert found.costs is None
    assert found.shortfall is None
    assert found.not_indexed is not None
    assert found.not_indexed.id == "values-not-indexed-horizon"
    assert not list(below_replacement(_late(case_of, 2034)))


@pytest.mark.parametrize("language", ["en", "fr"])
def test_what_is_said_names_the_last_quarter(
    case_of: Callable[..., Case], canada: Reference, language: str
) -> None:
    said = _late(case_of, 2034).pictures["hall"].not_indexed
    assert said is not None
    assert "2026" in Speech(canada, language).say(said)


@pytest.mark.parametrize(
    "where",
    [
        {"geography": "ON"},
        {"points": {"2026Q1": "109.1", "2026Q2": "109.6"}, "projected_rate": "0.03"},
    ],
)
def test_the_calculation_refuses_a_day_beyond_the_horizon(
    canada: Reference, where: dict[str, object]
) -> None:
    base = {"value": 1000, "from": "2026-01-01", **where}
    end = _end(canada)
    assert index_value({**base, "to": end.isoformat()}, canada)["projected"]
    with pytest.raises(Unusable) as refused:
        index_value({**base, "to": (end + timedelta(days=1)).isoformat()}, canada)
    assert refused.value.words.id == "values-calc-horizon"
    said = Speech(canada, "en").say(refused.value.words)
    assert "8 years" in said
    assert f"{end:%Y}" in said


def test_a_day_before_any_parameter_is_refused_as_before_the_index(canada: Reference) -> None:
    with pytest.raises(Unusable) as refused:
        index_value(
            {"value": 1, "geography": "ON", "from": "1990-01-01", "to": "1999-01-01"}, canada
        )
    assert refused.value.words.id == "values-calc-before"
