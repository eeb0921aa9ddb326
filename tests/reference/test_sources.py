"""Every figure of the reference data says where it comes from and since when."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from datetime import date
from itertools import pairwise
from pathlib import Path

import pytest
from pydantic import BaseModel

from quarterday.catalogue.load import place_folder, reference
from quarterday.catalogue.strict import read_yaml
from quarterday.core.reference import Cited, Dated, ParameterSeries

CANADA = reference()
DEMO_DAY = date(2026, 11, 25)
LAST_CHECK = date(2026, 11, 28)  # the newest day on which somebody read a source
OURS = "Quarterday"


def _found(node: object, kind: type[BaseModel], path: str = "") -> Iterator[tuple[str, BaseModel]]:
    """Yield every piece of ``kind`` in the reference data, with its place."""
    if isinstance(node, kind):
        yield path, node
    if isinstance(node, BaseModel):
        for name in type(node).model_fields:
            yield from _found(getattr(node, name), kind, f"{path}.{name}")
    elif isinstance(node, Mapping):
        for key, value in node.items():
            yield from _found(value, kind, f"{path}.{key}")
    elif isinstance(node, tuple):
        for n, value in enumerate(node):
            yield from _found(value, kind, f"{path}.{n}")


CITED = {place: c for place, c in _found(CANADA, Cited) if isinstance(c, Cited)}
DATED = {place: d for place, d in _found(CANADA, Dated) if isinstance(d, Dated)}


def test_there_is_something_to_check() -> None:
    assert len(CITED) > 80
    assert len(DATED) > 60


def test_every_figure_has_a_source_with_a_title_and_a_publisher() -> None:
    """The types demand it; this says that blanks do not pass for it."""
    for place, cited in CITED.items():
        assert cited.title.strip(), place
        assert cited.publisher.strip(), place


def test_a_source_was_checked_on_a_day_that_has_come() -> None:
    for place, cited in CITED.items():
        assert date(2026, 1, 1) <= cited.checked_on <= LAST_CHECK, place


def test_a_link_is_a_web_address_and_nothing_else() -> None:
    for place, cited in CITED.items():
        assert cited.link == "" or cited.link.startswith(("https://", "http://")), place
        assert " " not in cited.link, place


def test_what_nobody_published_says_that_it_is_illustrative() -> None:
    """And what is our own is never shown as published."""
    for place, dated in DATED.items():
        if dated.source.publisher == OURS:
            assert dated.illustrative, place


def test_our_own_defaults_have_no_link() -> None:
    for place, cited in CITED.items():
        assert not (cited.publisher == OURS and cited.link), place


@pytest.mark.parametrize("series", CANADA.parameters.values(), ids=lambda s: s.id)
def test_a_parameter_has_one_value_for_each_day_from_its_first_on(series: ParameterSeries) -> None:
    """No gap and no overlap: a value holds until the next begins."""
    since = [dated.since for dated in series.values]
    assert all(a < b for a, b in pairwise(since))
    for dated in series.values:
        assert series.on(dated.since).value is not None
    with pytest.raises(LookupError):
        series.on(date(1900, 1, 1))


@pytest.mark.parametrize("series", CANADA.parameters.values(), ids=lambda s: s.id)
def test_a_parameter_is_in_force_for_the_demo(series: ParameterSeries) -> None:
    assert series.values[0].since <= DEMO_DAY


@pytest.mark.parametrize("series", CANADA.parameters.values(), ids=lambda s: s.id)
def test_a_parameter_stands_in_the_file_of_its_family(series: ParameterSeries) -> None:
    family, _, name = series.id.partition(".")
    assert name
    file = place_folder("canada") / "parameters" / f"{family}.yaml"
    assert series.id in {entry["id"] for entry in read_yaml(file.read_text("utf-8"), file.name)}


@pytest.mark.parametrize("series", CANADA.parameters.values(), ids=lambda s: s.id)
def test_a_rate_is_a_ratio_and_not_a_percentage(series: ParameterSeries) -> None:
    """0.08 is 8 %: a rate of 8 would be 800 %."""
    if series.unit == "rate":
        assert all(-1 <= dated.value <= 3 for dated in series.values)


def test_folders_hold_only_what_the_loader_reads() -> None:
    """A misspelt suffix would silently leave a file out."""
    suffixes = {
        "provinces": {".yaml"}, "causes": {".yaml"}, "coverages": {".yaml"},
        "parameters": {".yaml"}, "indices": {".csv", ".yaml"},
    }  # fmt: skip
    for folder, allowed in suffixes.items():
        files = list((place_folder("canada") / folder).iterdir())
        assert files, folder
        assert {file.suffix for file in files} <= allowed, folder


def test_the_index_credits_statistics_canada() -> None:
    """The Statistics Canada Open Licence asks for the source and that no endorsement is implied."""
    text = Path(place_folder("canada") / "indices" / "bcpi_nonres.yaml").read_text("utf-8")
    note = read_yaml(text, "bcpi_nonres.yaml")
    assert note["source"]["publisher"] == "Statistics Canada"
    assert "Open Licence" in note["attribution"]["en"]
    assert "not\n" not in note["attribution"]["en"]
    assert "does not constitute an endorsement" in note["attribution"]["en"]
    assert "Licence ouverte" in note["attribution"]["fr"]
    assert "ne constitue pas une approbation" in note["attribution"]["fr"]
