"""Held against the standard's own package: Open Exposure Data specification 5.0.0.

``ods_tools`` is the standard's validator, published by its owners; it ships the specification, so
that nothing is fetched. Where it is not installed these tests are left out.
"""

from __future__ import annotations

from pathlib import Path
from typing import Any

import pytest

from quarterday.core.exposure.location import ACCOUNT_COLUMNS, LOCATION_COLUMNS, WIDTHS
from quarterday.intake.exposure.tables import codes
from quarterday.intake.exposure.write import ACCOUNTS, LOCATIONS
from tests.intake.exposure.test_round_trip import book, written

oed: Any = pytest.importorskip("ods_tools.oed")


@pytest.fixture(scope="module")
def spec() -> Any:
    return oed.OedSchema.from_oed_schema_info(codes().version).schema


def faults(folder: Path) -> list[Any]:
    exposure = oed.OedExposure(
        location=str(folder / LOCATIONS), account=str(folder / ACCOUNTS),
        oed_schema_info=codes().version,
    )  # fmt: skip
    config = [{"name": check["name"], "on_error": "return"}
              for check in oed.DEFAULT_VALIDATION_CONFIG]  # fmt: skip
    return list(exposure.check(config))


@pytest.fixture(scope="module")
def folder(tmp_path_factory: pytest.TempPathFactory) -> Path:
    out = tmp_path_factory.mktemp("standard")
    written(out, book())
    return out


def test_the_validator_finds_nothing_wrong_with_the_demo_book(folder: Path) -> None:
    assert faults(folder) == []


@pytest.mark.parametrize(
    ("right", "wrong"),
    [(",5100,", ",9999,"), (",CA,", ",XX,"), ("BBF;BFR", "BBF;ZZZ"), (",CAD,", ",,")],
)
def test_the_validator_does_find_what_is_wrong(
    folder: Path, tmp_path: Path, right: str, wrong: str
) -> None:
    spoiled = (folder / LOCATIONS).read_text("utf-8").replace(right, wrong)
    (tmp_path / LOCATIONS).write_text(spoiled, "utf-8")
    (tmp_path / ACCOUNTS).write_bytes((folder / ACCOUNTS).read_bytes())
    assert faults(tmp_path) != []


def test_every_code_has_the_standard_s_own_name(spec: Any) -> None:
    for construction in codes().construction:
        assert spec["construction"][str(construction.code)]["Name"] == construction.name
    for occupancy in codes().occupancy:
        name = " ".join(spec["occupancy"][str(occupancy.code)]["Name"].split())
        assert name == occupancy.name
    named = {code for cause in codes().perils for code in cause.codes}
    assert named <= spec["perils"]["info"].keys()


@pytest.mark.parametrize(("kind", "columns"), [("Loc", LOCATION_COLUMNS), ("Acc", ACCOUNT_COLUMNS)])
def test_every_column_is_the_standard_s_and_every_required_one_is_there(
    spec: Any, kind: str, columns: tuple[str, ...]
) -> None:
    fields = spec["input_fields"][kind]
    spelt = {field["Input Field Name"] for field in fields.values()}
    required = {f["Input Field Name"] for f in fields.values() if f["Property field status"] == "R"}
    assert set(columns) <= spelt
    assert required <= set(columns)


def test_texts_are_as_wide_as_the_standard_lets_them_be(spec: Any) -> None:
    fields = {**spec["input_fields"]["Acc"], **spec["input_fields"]["Loc"]}
    for column, width in WIDTHS.items():
        assert fields[column.lower()]["Data Type"].endswith(f"({width})")
