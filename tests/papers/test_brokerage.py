"""The brokerage's own file: read whole, or refused in sentences."""

from __future__ import annotations

from pathlib import Path

import pytest

from quarterday.catalogue.problems import BadReference
from quarterday.invent.demo import book
from quarterday.papers.brokerage import read_brokerage
from quarterday.papers.press import HERE

EXAMPLE = (HERE / "example-brokerage.yaml").read_text("utf-8")


def written(folder: Path, text: str) -> Path:
    file = folder / "brokerage.yaml"
    file.write_text(text, "utf-8")
    return file


def test_the_example_is_whole_and_invented() -> None:
    """Telephone numbers 555-0100 to 555-0199 and example.org are kept free for fiction."""
    found = read_brokerage(HERE / "example-brokerage.yaml")
    assert found.named("fr") == "Lantern Street, courtiers d'assurance"
    assert found.named("en") == found.name
    assert "-555-01" in found.phone
    assert all(person.email.endswith(".example.org") for person in found.people)


def test_the_demo_book_s_brokerage_reads_too() -> None:
    found = read_brokerage(Path(book.__file__).parent / "brokerage.yaml")
    assert any(person.licence for person in found.people)


def test_only_a_licensed_person_has_a_licence() -> None:
    found = read_brokerage(HERE / "example-brokerage.yaml")
    ruth, piotr = found.person("Ruth Abernethy"), found.person("Piotr Zieliński")
    assert ruth is not None
    assert ruth.licence == "LIC-000141"
    assert piotr is not None
    assert piotr.licence is None
    assert found.person("Nobody") is None


@pytest.mark.parametrize(
    ("old", "new", "said"),
    [
        ("town: Elm Harbour\n", "", "field town"),
        ("phone: 519", "telephone: 519", "field telephone"),
        ('province: "ON"', "province: ON", "reads as yes or no"),
        ("name: Lantern", "name: [Lantern", "line"),
    ],
)
def test_what_is_wrong_is_said_with_file_and_field(
    old: str, new: str, said: str, tmp_path: Path
) -> None:
    assert old in EXAMPLE
    with pytest.raises(BadReference) as refused:
        read_brokerage(written(tmp_path, EXAMPLE.replace(old, new, 1)))
    assert said in str(refused.value)
    assert "brokerage.yaml" in str(refused.value)
