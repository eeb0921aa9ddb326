"""Reference data are read whole, checked, and changed by a brokerage's folder."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date
from decimal import Decimal
from pathlib import Path

import pytest

from quarterday.catalogue.load import data_credits, not_covered, reference
from quarterday.catalogue.problems import BadReference
from quarterday.core.reference import Reference
from quarterday.core.words import Rate

Write = Callable[[str, str], Path]
SOURCE = "{title: Board minute, publisher: Our office, checked_on: 2026-01-05}"
NEW = f"""
- id: office.own-test
  what: {{en: A test, fr: Un essai}}
  unit: months
  values: [{{since: 2026-01-01, value: 7, source: {SOURCE}}}]
"""


def test_canada_loads_with_all_its_catalogues(canada: Reference) -> None:
    assert canada.place == "canada"
    assert len(canada.provinces) == 13
    assert len(canada.causes) == 32
    assert canada.coverages
    assert canada.parameters
    assert "composite" in canada.indices


def test_reading_twice_gives_the_same_object() -> None:
    """Reading costs much more than asking, so what was read is kept."""
    assert reference() is reference("canada", None)


def test_an_unknown_place_is_named_with_those_known() -> None:
    with pytest.raises(
        BadReference, match="no reference data for 'atlantis'; there is for: canada"
    ):
        reference("atlantis")


def test_a_place_is_never_a_path_outside() -> None:
    with pytest.raises(BadReference, match="no reference data"):
        reference("../reference/nowhere")


def test_a_folder_that_is_not_there_is_told(tmp_path: Path) -> None:
    """A misspelt path must not silently mean: nothing of our own."""
    with pytest.raises(BadReference, match=r"There is no folder .*nowhere to read your own"):
        reference("canada", tmp_path / "nowhere")


def test_a_faulty_value_of_a_known_parameter_is_told(own: Write) -> None:
    with pytest.raises(BadReference, match=r"entry values.stale-years, field values.\d: "):
        reference("canada", own("parameters/a.yaml", "- id: values.stale-years\n  values: [3]\n"))


def test_an_empty_folder_of_a_brokerage_changes_nothing(tmp_path: Path, canada: Reference) -> None:
    assert reference("canada", tmp_path) == canada


def test_a_brokerage_adds_a_parameter(own: Write) -> None:
    found = reference("canada", own("parameters/ours.yaml", NEW))
    parameter = found.parameter("office.own-test", date(2026, 3, 1))
    assert parameter.value == Decimal(7)
    assert parameter.source.publisher == "Our office"


def test_a_brokerages_values_hold_from_their_first_date_and_the_shipped_ones_before(
    own: Write, canada: Reference
) -> None:
    """The past is not rewritten: a review of an earlier day finds what held then."""
    id = "values.stale-years"
    first = canada.parameters[id].values[0].since
    later = date(2027, 6, 1)
    text = f"- id: {id}\n  values: [{{since: {later}, value: 3, source: {SOURCE}}}]\n"
    found = reference("canada", own("parameters/ours.yaml", text))
    assert found.parameter(id, first).value == canada.parameter(id, first).value
    assert found.parameter(id, date(2027, 5, 31)).value == canada.parameter(id, first).value
    assert found.parameter(id, later).value == Decimal(3)
    assert found.parameters[id].what == canada.parameters[id].what


def test_a_brokerages_value_of_the_same_day_replaces_the_shipped_one(
    own: Write, canada: Reference
) -> None:
    id = "values.stale-years"
    first = canada.parameters[id].values[0].since
    text = f"- id: {id}\n  values: [{{since: {first}, value: 3, source: {SOURCE}}}]\n"
    found = reference("canada", own("parameters/ours.yaml", text))
    assert [dated.value for dated in found.parameters[id].values] == [Decimal(3)]


def test_a_brokerage_changes_one_field_of_a_cause_and_the_rest_stays(
    own: Write, canada: Reference
) -> None:
    text = "- id: glass\n  tips: [{en: Call Ann., fr: Appelez Ann.}]\n"
    found = reference("canada", own("causes/ours.yaml", text))
    assert [tip.en for tip in found.causes["glass"].tips] == ["Call Ann."]
    assert found.causes["glass"].name == canada.causes["glass"].name
    assert len(found.causes) == len(canada.causes)


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("- id: values.x\n  unit: rate\n", "parameters/a.yaml, entry values.x, field what: Field"),
        (NEW.replace("value: 7", "value: seven"), "entry office.own-test, field values.1.value"),
        (NEW.replace("months", "moons"), "entry office.own-test, field unit"),
        (NEW.replace("publisher: Our office, ", ""), "field values.1.source.publisher"),
        (NEW.replace("unit:", "units:"), "field units: Extra inputs"),
        (NEW + NEW, "entry office.own-test: stands in parameters/a.yaml already"),
        ("- what: {en: A, fr: B}\n", "parameters/a.yaml: an entry has no id"),
        ("- id: 12\n", "parameters/a.yaml: an entry has no id"),
        (NEW.replace("[{since", "[3, {since"), "entry office.own-test, field values.1: "),
        (NEW.replace("{since: 2026-01-01, value: 7", "{}]\n#"), "field values.1.since: Field"),
        ("- only text\n", "parameters/a.yaml: must be a list of entries"),
        ("- id: values.x\n  what: {en: A, fr: B}\n  unit: rate\n  values: []\n", "at least 1 item"),
        ("- id: values.stale-years\n  values: five\n", "entry values.stale-years, field values: "),
        ("id: values.x\n", "parameters/a.yaml: must be a list of entries"),
        ("- id: a\n  id: b\n", "parameters/a.yaml, line 2: the key 'id' stands here twice"),
    ],
)
def test_a_fault_is_told_with_file_entry_and_field(own: Write, text: str, said: str) -> None:
    with pytest.raises(BadReference) as caught:
        reference("canada", own("parameters/a.yaml", text))
    assert said in str(caught.value)


def test_all_faults_of_a_catalogue_are_told_at_once(own: Write) -> None:
    text = NEW.replace("months", "moons") + NEW.replace("own-test", "b").replace("7", "x")
    with pytest.raises(BadReference) as caught:
        reference("canada", own("parameters/a.yaml", text))
    assert len(caught.value.problems) == 2


def test_dates_of_a_parameter_must_rise(own: Write) -> None:
    twice = f"{{since: 2026-01-01, value: 1, source: {SOURCE}}}"
    text = f"- id: values.stale-years\n  values: [{twice}, {twice}]\n"
    with pytest.raises(BadReference, match="the dates must rise without repeating"):
        reference("canada", own("parameters/a.yaml", text))


def test_text_that_is_not_utf8_is_told_in_a_sentence(tmp_path: Path) -> None:
    (tmp_path / "causes").mkdir()
    (tmp_path / "causes" / "a.yaml").write_bytes("- id: été".encode("latin-1"))
    with pytest.raises(BadReference, match=r"causes/a.yaml: is not UTF-8; save it as UTF-8 text"):
        reference("canada", tmp_path)


COVERAGE = """
- id: building
  answers: [fire, earthquakes]
"""
PROVINCE = """
- code: "ON"
  index_geography: mars
"""


@pytest.mark.parametrize(
    ("name", "text", "said"),
    [
        ("coverages/a.yaml", COVERAGE, "entry building: there is no cause 'earthquakes' to answer"),
        ("provinces/a.yaml", PROVINCE, "entry ON: uses the index 'mars'"),
        (
            "coverages/a.yaml",
            "- id: building\n  needed_when: {any: [{profile: owns_a_boat}, {building: use}]}\n",
            "entry building: tests profile owns_a_boat; records have no such field",
        ),
        (
            "coverages/a.yaml",
            "- id: building\n  hurts_when: {all: [{building: use}, {building: moat}]}\n",
            "entry building: tests building moat; records have no such field",
        ),
    ],
)
def test_a_name_that_another_catalogue_lacks_is_refused(
    own: Write, name: str, text: str, said: str
) -> None:
    with pytest.raises(BadReference) as caught:
        reference("canada", own(name, text))
    assert said in str(caught.value)


def test_a_tax_with_dates_out_of_order_is_refused(own: Write, canada: Reference) -> None:
    rate = f"{{since: 2020-01-01, rate: 0.05, turns_on: policy-start, source: {SOURCE}}}"
    text = f'- code: "AB"\n  tax: {{source: {SOURCE}, rates: [{rate}, {rate}]}}\n'
    with pytest.raises(BadReference, match="entry AB: the dates of its tax must rise"):
        reference("canada", own("provinces/a.yaml", text))


def test_rates_speak_as_percentages_and_other_values_as_numbers(own: Write) -> None:
    text = NEW.replace("months", "rate").replace("value: 7", "value: 0.0325")
    found = reference("canada", own("parameters/a.yaml", text))
    value = found.parameter("office.own-test", date(2026, 3, 1)).value
    assert isinstance(value, Rate)
    assert value.value == Decimal("0.0325")


@pytest.mark.parametrize("language", ["en", "fr"])
def test_the_licences_of_the_data_can_be_credited(language: str) -> None:
    (credit,) = data_credits(language)
    assert "18-10-0289-01" in credit


@pytest.mark.parametrize(("language", "heading"), [("en", "# What"), ("fr", "# Ce que")])
def test_what_is_not_covered_can_be_read_in_both_languages(language: str, heading: str) -> None:
    text = not_covered(language)
    assert text.startswith(heading)
    assert text.count("\n## ") == 6
