"""Building packages: drafts, signed ones, versions, and what is kept of them."""

from __future__ import annotations

import hashlib
from collections import Counter
from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest
from tests.office.conftest import DAY, edit

from quarterday.catalogue.load import reference
from quarterday.core.file.records import PackageBuilt
from quarterday.core.risk import risk
from quarterday.core.values import building
from quarterday.invent.demo.book import HERE as DEMO_DATA
from quarterday.office import packages, reviewing
from quarterday.office.brand import FILE_NAME, brokerage
from quarterday.store import ledger, originals


def built(file: str, out: Path, language: str = "en") -> packages.Built:
    order = packages.Order(file, language, DAY, DAY)
    return packages.keep(packages.compose(order, brokerage(DEMO_DATA / FILE_NAME)), out, by="ann")


def sign(file: str) -> None:
    reviewing.sign(file, reference(), reviewer="Judith Hollis", licence="RIB-000417", as_of=DAY,
                   by="judith")  # fmt: skip


def test_a_package_is_a_draft_until_the_review_is_signed(flagship: str, tmp_path: Path) -> None:
    assert built(flagship, tmp_path).composed.is_draft
    sign(flagship)
    assert not built(flagship, tmp_path).composed.is_draft


def test_the_bytes_are_written_and_kept_under_their_digest(flagship: str, tmp_path: Path) -> None:
    made = built(flagship, tmp_path)
    data = made.path.read_bytes()
    assert data.startswith(b"%PDF-")
    assert hashlib.sha256(data).hexdigest() == made.document
    assert originals.get(made.document) == data


def counting(worked: Counter[str], name: str, plain: Callable[..., Any]) -> Callable[..., Any]:
    """Return ``plain``, its calls counted."""

    def counted(*of: Any) -> Any:
        worked[name] += 1
        return plain(*of)

    return counted


@pytest.mark.parametrize("is_signed", [False, True])
def test_what_the_review_worked_out_is_not_worked_out_again(
    flagship: str, monkeypatch: pytest.MonkeyPatch, is_signed: bool
) -> None:
    """Simulated years and the costs of buildings are what a package waits for."""
    if is_signed:
        sign(flagship)
    worked = Counter[str]()
    for module, name in ((risk, "risk_of"), (building, "picture")):
        monkeypatch.setattr(module, name, counting(worked, name, getattr(module, name)))
    packages.compose(packages.Order(flagship, "en", DAY, DAY), brokerage(DEMO_DATA / FILE_NAME))
    assert worked == {"risk_of": 1, "picture": len(ledger.load(flagship).buildings)}


def test_building_again_gives_the_same_bytes_and_no_second_entry(
    flagship: str, tmp_path: Path
) -> None:
    first = built(flagship, tmp_path / "one")
    entries = len(ledger.entries(flagship))
    second = built(flagship, tmp_path / "two")
    assert second.path.read_bytes() == first.path.read_bytes()
    assert len(ledger.entries(flagship)) == entries


def test_a_change_or_a_signature_makes_the_next_version(flagship: str, tmp_path: Path) -> None:
    versions = [built(flagship, tmp_path).composed.version]
    sign(flagship)
    versions.append(built(flagship, tmp_path).composed.version)
    edit(flagship, phone="705-555-0177")
    versions.append(built(flagship, tmp_path).composed.version)
    assert versions == [1, 2, 3]


def test_each_language_counts_its_own_versions(flagship: str, tmp_path: Path) -> None:
    assert built(flagship, tmp_path, "en").composed.version == 1
    assert built(flagship, tmp_path, "fr").composed.version == 1
    kept = ledger.load(flagship).all(PackageBuilt)
    assert {package.language for package in kept} == {"en", "fr"}


def test_a_signed_package_is_built_as_of_the_day_of_the_signature(
    flagship: str, tmp_path: Path
) -> None:
    sign(flagship)
    order = packages.Order(flagship, "en", None, DAY.replace(day=30))
    made = packages.keep(
        packages.compose(order, brokerage(DEMO_DATA / FILE_NAME)), tmp_path, by="ann"
    )
    assert made.composed.as_of == DAY
    assert not made.composed.is_draft


def test_a_package_whose_signature_lapsed_is_a_draft_as_of_today(
    flagship: str, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Newer reference data changed what the review of the signed day says."""
    sign(flagship)
    monkeypatch.setattr(reviewing, "digest", lambda *_: "another")
    today = DAY.replace(day=30)
    made = packages.compose(
        packages.Order(flagship, "en", None, today), brokerage(DEMO_DATA / FILE_NAME)
    )
    assert (made.as_of, made.is_draft) == (today, True)


def test_no_half_package_is_left_in_the_folder(flagship: str, tmp_path: Path) -> None:
    made = built(flagship, tmp_path)
    assert [path.name for path in tmp_path.iterdir()] == [made.path.name]
