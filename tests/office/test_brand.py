"""The brand as the office checks it: one folder, every fault in a sentence, nothing by accident."""

from __future__ import annotations

from pathlib import Path
from shutil import copyfile

import pytest

from quarterday.catalogue.problems import BadReference
from quarterday.invent.demo.book import HERE as DEMO_DATA
from quarterday.office import brand, own_data
from quarterday.office.trouble import Trouble
from quarterday.store.place import HOME


@pytest.fixture
def home(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """A store's folder with the demo's brokerage."""
    monkeypatch.setenv(HOME, str(tmp_path))
    monkeypatch.delenv(own_data.FOLDER, raising=False)
    copyfile(DEMO_DATA / brand.FILE_NAME, tmp_path / brand.FILE_NAME)
    return tmp_path


def wording(home: Path, place: str, text: str) -> None:
    file = home / "reference" / "wordings" / place
    file.parent.mkdir(parents=True, exist_ok=True)
    file.write_text(text, "utf-8")


def test_a_brand_without_pictures_and_wordings_can_be_used(home: Path) -> None:
    found = brand.brand()
    assert found.brokerage.name == "Hollis Wren Insurance Brokers"
    assert found.path == home / brand.FILE_NAME
    assert found.wordings == {"en": (), "fr": ()}


def test_a_brokerage_is_named_by_its_file_or_by_its_folder(home: Path) -> None:
    file = home / brand.FILE_NAME
    assert brand.brokerage(home) == brand.brokerage(file) == brand.brokerage()
    with pytest.raises(Trouble):
        brand.brokerage(home / "nowhere")


def test_own_wordings_are_listed_by_language(home: Path) -> None:
    wording(home, "fr/ours.ftl", "letter-all = Chers amis,\n")
    assert brand.brand().wordings == {"en": (), "fr": ("letter-all",)}


def test_every_fault_of_file_and_wordings_is_told_at_once(home: Path) -> None:
    file = home / brand.FILE_NAME
    file.write_text(file.read_text("utf-8") + "logo: none.svg\n", "utf-8")
    wording(home, "en/ours.ftl", "letter-al = Dear friends,\n")
    wording(home, "fr/ours.ftl", "letter-dear = Bonjour,\n")
    wording(home, "en/notes.txt", "not a wording")
    wording(home, "de/ours.ftl", "letter-all = Liebe\n")
    with pytest.raises(BadReference) as refused:
        brand.brand()
    told = "\n".join(refused.value.problems)
    for part in (
        "there is no file none.svg",
        "no wording has the id letter-al; check its spelling",
        "the wording letter-dear leaves out $name",
        "en/notes.txt: nobody reads this file",
        "de/ours.ftl: nobody reads this file",
    ):
        assert part in told
    assert len(refused.value.problems) == 5
