"""Seasons of income: shares that make a year, published ones told from the rest."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date
from decimal import Decimal
from pathlib import Path

import pytest

from quarterday.catalogue.load import reference
from quarterday.catalogue.problems import BadReference
from quarterday.catalogue.speech import Speech
from quarterday.core.figure import Parameter
from quarterday.core.reference import Reference
from quarterday.core.words import Rate, words

Write = Callable[[str, str], Path]
DAY = date(2026, 11, 25)
SOURCE = "{title: Books, publisher: Office, checked_on: 2026-11-02}"


def share(parameter: Parameter) -> Decimal:
    assert isinstance(parameter.value, Rate)
    return parameter.value.value


def test_the_shares_of_every_season_make_a_whole_year(canada: Reference) -> None:
    for season in canada.seasons.values():
        months = season.on(DAY)
        assert len(months) == 12
        assert abs(sum((share(m) for m in months), Decimal(-1))) < Decimal("1e-20"), season.id


def test_every_kind_of_income_has_a_season(canada: Reference) -> None:
    kinds = {"donations", "rents", "tuition", "events", "other"}
    assert kinds <= canada.seasons.keys()
    assert {id.partition("-")[0] for id in canada.seasons} == kinds


def test_december_and_july_of_giving_are_published_and_the_rest_is_not(canada: Reference) -> None:
    """abundance.ca, Plan to Give this Summer: about 30 % in December, only about 4 % in July."""
    months = canada.seasons["donations"].on(DAY)
    published = {n: share(m) for n, m in enumerate(months, 1) if not m.illustrative}
    assert published == {7: Decimal("0.04"), 12: Decimal("0.30")}
    assert all(m.source.publisher == "Quarterday" for m in months if m.illustrative)


def test_a_class_may_have_a_season_of_its_own(canada: Reference) -> None:
    july = {of: share(canada.season("tuition", of).on(DAY)[6]) for of in ("camp", "school")}
    assert july["camp"] > Decimal("0.4")
    assert not july["school"]
    assert canada.season("rents", "camp") == canada.seasons["rents"]


@pytest.mark.parametrize("language", ["en", "fr"])
def test_each_share_has_a_name_in_both_languages(canada: Reference, language: str) -> None:
    speech = Speech(canada, language)
    for season in canada.seasons.values():
        assert all(speech.parts(month).label for month in season.on(DAY))


def test_before_its_first_day_a_season_says_nothing(canada: Reference) -> None:
    with pytest.raises(LookupError, match="donations has no value on 1999-12-31"):
        canada.seasons["donations"].on(date(1999, 12, 31))


def test_a_brokerages_season_holds_from_its_first_day_on(own: Write) -> None:
    text = (
        "- id: rents\n  values:\n    - since: 2027-01-01\n"
        f'      shares: {{"9": 0.5}}\n      source: {SOURCE}\n      rest_source: {SOURCE}\n'
    )
    data = reference("canada", own("seasons/ours.yaml", text))
    before, after = (data.seasons["rents"].on(day) for day in (DAY, date(2027, 1, 1)))
    assert share(after[8]) == Decimal("0.5")
    assert share(after[0]) == Decimal("0.5") / 11
    assert share(before[8]) == Decimal(1) / 12


@pytest.mark.parametrize(
    ("shares", "rest", "why"),
    [
        ('{"13": 0.1}', True, "months run from 1 to 12"),
        ('{"0": 0.1}', True, "months run from 1 to 12"),
        ('{"1": 0.7, "2": 0.4}', True, "add up to 1.1, not to 1"),
        ('{"1": 0.7}', False, "give rest_source"),
        ('{"1": 1.7}', True, "less than or equal to 1"),
        ('{"1": -0.1}', True, "greater than or equal to 0"),
    ],
)
def test_shares_that_make_no_year_are_refused_in_a_sentence(
    own: Write, shares: str, rest: bool, why: str
) -> None:
    more = f"      rest_source: {SOURCE}\n" if rest else ""
    text = (
        "- id: rents\n  values:\n    - since: 2027-01-01\n"
        f"      shares: {shares}\n      source: {SOURCE}\n{more}"
    )
    with pytest.raises(BadReference) as refused:
        reference("canada", own("seasons/ours.yaml", text))
    assert any("ours.yaml" in told and why in told for told in refused.value.problems)


def test_twelve_shares_must_be_the_whole_year(own: Write) -> None:
    twelve = ", ".join(f'"{n}": 0.08' for n in range(1, 13))
    text = (
        "- id: rents\n  values:\n    - since: 2027-01-01\n"
        f"      shares: {{{twelve}}}\n      source: {SOURCE}\n"
    )
    with pytest.raises(BadReference, match=r"0\.96, not to 1"):
        reference("canada", own("seasons/ours.yaml", text))


def test_the_reference_says_where_a_brokerages_wordings_are(own: Write) -> None:
    """Whoever speaks with that reference speaks them, without being told again."""
    folder = own("wordings/en/ours.ftl", "everywhere = at every location\n")
    data = reference("canada", folder)
    assert data.own_wordings == str(folder)
    assert Speech(data, "en").say(words("everywhere")) == "at every location"
    assert Speech(reference(), "en").say(words("everywhere")) == "everywhere"
