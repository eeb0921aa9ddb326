"""Each paper's folder: a template whose parameters are explained, and an example that sets."""

from __future__ import annotations

import json
import re
from typing import Any

import pytest

from quarterday.papers.alone import printed
from quarterday.papers.package import PAPERS, _data, _enclosed, house
from quarterday.papers.press import HERE, press

from . import given
from .reading import elements

IDS = ("letter", *(paper.id for paper in PAPERS))
ALONE = ("certificate", "change-request", "discharge-request")  # papers that go out by themselves


def folder(id: str) -> Any:
    return HERE / id.replace("-", "_")


def example(id: str) -> Any:
    return json.loads((folder(id) / "example.json").read_text("utf-8"))


@pytest.mark.parametrize("id", IDS)
def test_the_parameters_are_those_of_the_data_and_each_has_its_comment(id: str) -> None:
    template = (folder(id) / "template.typ").read_text("utf-8")
    body = template[template.index("#let paper(") :].partition(") =")[0]
    named = re.findall(r"^  (\w+): .+, // \S.+$", body, re.MULTILINE)
    assert len(named) == len([line for line in body.splitlines() if line.startswith("  ")])
    assert set(named) == set(example(id))


def test_the_examples_have_the_shape_of_the_data() -> None:
    made: dict[str, Any] = {}
    for of in map(given.setting, (given.RENTER, given.FLAGSHIP)):  # each has what the other lacks
        made |= {paper["id"]: paper["data"] for paper in _data(of, _enclosed(of))["papers"]}
    for id in IDS:
        assert _keys(example(id)) <= _keys(made[id]), id


def _keys(value: object, path: str = "") -> set[str]:
    if isinstance(value, dict):
        inner = (_keys(part, f"{path}.{name}") for name, part in value.items())
        return {path}.union(*inner)
    if isinstance(value, list | tuple):
        return {path}.union(*(_keys(part, path) for part in value))
    return {path}


def test_the_examples_set_as_a_package() -> None:
    papers = [{"id": id, "data": example(id)} for id in IDS]
    pdf = press().set({"house": house(given.setting()), "papers": papers}, given.AS_OF)
    assert [e.role for e in elements(pdf)].count("H1") == len(IDS)


def test_every_folder_is_a_paper_with_template_data_and_example() -> None:
    folders = {file.parent.name.replace("_", "-") for file in HERE.glob("*/data.py")}
    assert folders == {*IDS, *ALONE}
    for id in folders:
        assert {"template.typ", "example.json"} <= {file.name for file in folder(id).iterdir()}, id


@pytest.mark.parametrize("id", ALONE)
def test_an_example_that_goes_out_alone_sets_and_uses_all_it_is_given(id: str) -> None:
    told = example(id)
    pdf = printed(folder(id) / "template.typ", told, given.AS_OF)
    assert [e.role for e in elements(pdf)].count("H1") == 1
    used = set(re.findall(r"\bdata\.(\w+)", (folder(id) / "template.typ").read_text("utf-8")))
    assert used == set(told)
