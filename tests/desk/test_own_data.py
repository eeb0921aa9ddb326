"""A brokerage's own reference data counts on every page, and in the papers the desk builds."""

from __future__ import annotations

from pathlib import Path

import pytest
from tests.desk.conftest import DAY, FLAGSHIP, As
from tests.own_reference import FOUND, SAID, lay
from tests.papers.reading import page_texts

from quarterday.desk.filepage import anchor
from quarterday.invent.demo.book import HERE
from quarterday.office import own_data, packages
from quarterday.papers.brokerage import read_brokerage

F = f"/files/{FLAGSHIP}/"


@pytest.fixture
def own(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """Use the brokerage's own data."""
    monkeypatch.setenv(own_data.FOLDER, str(lay(tmp_path / "ours")))


@pytest.fixture
def shipped(monkeypatch: pytest.MonkeyPatch) -> None:
    """Use the data as shipped."""
    monkeypatch.delenv(own_data.FOLDER, raising=False)


def _page(signed_in: As, address: str) -> str:
    return signed_in("maria").get(address).content.decode()


def test_the_shipped_data_finds_no_old_valuation_of_the_rectory(
    book: None, signed_in: As, shipped: None
) -> None:
    told = _page(signed_in, F)
    assert anchor(FOUND) not in told
    assert SAID not in told


def test_the_file_speaks_and_finds_by_the_brokerages_own_data(
    book: None, signed_in: As, own: None
) -> None:
    told = _page(signed_in, F)
    assert anchor(FOUND) in told
    assert SAID in told


def test_the_package_speaks_by_the_brokerages_own_data(
    book: None, own: None, tmp_path: Path
) -> None:
    order = packages.Order(FLAGSHIP, "en", DAY, DAY)
    made = packages.compose(order, read_brokerage(HERE / "brokerage.yaml"))
    assert SAID in " ".join(" ".join(page_texts(made.pdf, tmp_path)).split())
