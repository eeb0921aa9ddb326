"""A brokerage's own data: where it lies, and what a newer index release changes and does not."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date
from decimal import Decimal
from pathlib import Path

import pytest
from tests.office.conftest import DAY

from quarterday.catalogue.load import reference
from quarterday.catalogue.problems import BadReference
from quarterday.core.figure import Figure
from quarterday.core.review.review import Review
from quarterday.office import own_data, plain, reviewing
from quarterday.store import ledger
from quarterday.store.place import HOME

LATER = date(2026, 12, 15)
NOTE = """
file: autumn.csv
base: "2023"
released_on: {day}
source: {{title: Invented figures, publisher: Our office, checked_on: {day}}}
"""
Release = Callable[[date, str], None]


@pytest.fixture
def home(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """A store's folder of the test's own, and no folder named."""
    monkeypatch.setenv(HOME, str(tmp_path))
    monkeypatch.delenv(own_data.FOLDER, raising=False)
    return tmp_path


@pytest.fixture
def release(home: Path) -> Release:
    """Lay a release for Ontario beside the store: the quarter after the last one shipped."""
    quarter = max(reference().indices["on"][-1].points).shifted(1)

    def lay(day: date, index: str) -> None:
        folder = home / "reference" / "indices"
        folder.mkdir(parents=True)
        (folder / "autumn.yaml").write_text(NOTE.format(day=day), encoding="utf-8")
        text = f"geography,quarter,index\non,{quarter},{index}\n"
        (folder / "autumn.csv").write_text(text, encoding="utf-8")

    return lay


def _cost(done: Review) -> Decimal:
    figure = done.figures()["cost-at-renewal@hall"]
    assert isinstance(figure, Figure)
    return figure.money.amount


def test_without_a_folder_the_shipped_data_is_used(home: Path) -> None:
    assert own_data.own_folder() is None
    assert own_data.reference_in_use() == reference()


def test_the_folder_beside_the_store_is_found_by_itself(home: Path) -> None:
    (home / "reference").mkdir()
    assert own_data.own_folder() == home / "reference"


def test_a_folder_that_is_named_counts_before_the_one_beside_the_store(
    home: Path, tmp_path_factory: pytest.TempPathFactory, monkeypatch: pytest.MonkeyPatch
) -> None:
    (home / "reference").mkdir()
    monkeypatch.setenv(own_data.FOLDER, "")
    named = tmp_path_factory.mktemp("ours")
    own_data.choose(named)
    assert own_data.own_folder() == named


def test_a_folder_that_is_not_there_is_told_in_a_sentence(
    home: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setenv(own_data.FOLDER, str(home / "nowhere"))
    with pytest.raises(BadReference, match=r"There is no folder .*nowhere"):
        own_data.reference_in_use()


def test_a_newer_release_changes_the_review_of_a_later_day(flagship: str, release: Release) -> None:
    before = reviewing.review_file(flagship, own_data.reference_in_use(), LATER)[1]
    release(date(2026, 12, 1), "120.0")
    after = reviewing.review_file(flagship, own_data.reference_in_use(), LATER)[1]
    assert _cost(after) > _cost(before)
    assert [r.released_on for r in after.releases] == [date(2026, 12, 1)]
    assert [r.released_on for r in before.releases] == [reference().index("on", LATER).released_on]


def test_a_review_of_the_day_before_it_was_published_is_the_same(
    flagship: str, release: Release
) -> None:
    before = reviewing.review_file(flagship, own_data.reference_in_use(), DAY)[1]
    release(date(2026, 12, 1), "120.0")
    after = reviewing.review_file(flagship, own_data.reference_in_use(), DAY)[1]
    data = own_data.reference_in_use()
    assert data.indices["on"][-1].released_on == date(2026, 12, 1), "it is loaded"
    assert after.releases == before.releases
    assert reviewing.digest(after, data) == reviewing.digest(before, data)


def test_a_signed_review_keeps_the_release_it_used(flagship: str, release: Release) -> None:
    reviewing.sign(
        flagship, own_data.reference_in_use(), reviewer="Judith Hollis", licence="RIB-000417",
        as_of=DAY, by="judith",
    )  # fmt: skip
    release(date(2026, 12, 1), "120.0")
    signed = reviewing.signature(ledger.load(flagship), own_data.reference_in_use())
    assert signed is not None
    assert signed.as_of == DAY


def test_a_release_of_an_earlier_day_that_comes_late_ends_the_signature(
    flagship: str, release: Release
) -> None:
    """Published before the signed day: the review of that day would say something else now."""
    reviewing.sign(
        flagship, own_data.reference_in_use(), reviewer="Judith Hollis", licence="RIB-000417",
        as_of=DAY, by="judith",
    )  # fmt: skip
    release(date(2026, 11, 24), "120.0")
    assert reviewing.signature(ledger.load(flagship), own_data.reference_in_use()) is None


def test_the_plain_review_names_the_release(flagship: str, release: Release) -> None:
    release(date(2026, 12, 1), "120.0")
    done = reviewing.review_file(flagship, own_data.reference_in_use(), LATER)[1]
    (told,) = (plain.release(used) for used in done.releases)
    assert told == {
        "geography": "on", "base": "2023", "released_on": "2026-12-01",
        "last_quarter": str(max(reference().indices["on"][-1].points).shifted(1)),
    }  # fmt: skip
