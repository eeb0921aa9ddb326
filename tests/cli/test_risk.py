"""What losses could cost, as the terminal shows it."""

from __future__ import annotations

import pytest
from tests.cli.conftest import Run, printed

DAY = ("--as-of", "2026-11-25")
SAID = {
    "en": ("The offer as it stands", "Sewer backup", "$640", "This is a model, not a forecast."),
    "fr": ("L'offre telle quelle", "Refoulement", "640 $", "C'est un modèle"),
}


def test_the_tables_say_what_they_rest_on_in_both_languages(loaded: Run) -> None:
    for language, said in SAID.items():
        text = loaded("--language", language, "risk", "HW-1001", *DAY).stdout
        plain = " ".join(text.replace("\xa0", " ").replace("\u202f", " ").replace("’", "'").split())
        assert [part for part in said if part not in plain] == []


def test_json_holds_the_same_twice(loaded: Run) -> None:
    first, second = (loaded("risk", "HW-1001", *DAY, "--json").stdout for _ in range(2))
    assert first == second
    done = printed(loaded("risk", "HW-1001", *DAY, "--json"))
    assert [one["id"] for one in done["alternatives"][:2]] == ["offered", "expiring"]
    states = {row["coverage"]: row["state"] for row in done["options"]}
    assert states["sewer-backup"] == "open"
    assert done["years"] >= 10_000


def test_a_figure_goes_down_to_the_claim_and_the_publisher(loaded: Run) -> None:
    text = loaded("risk", "HW-1001", *DAY, "--why", "risk-1-in-100@offered").stdout
    plain = " ".join(text.split())
    assert "sheet Claims, row" in plain
    assert "Loss Data Analytics" in plain
    assert "Chance alone puts it between" in plain


def test_an_unknown_figure_names_those_that_there_are(loaded: Run) -> None:
    result = loaded("risk", "HW-1001", *DAY, "--why", "risk-mean@nothing")
    assert result.exit_code == 2
    assert "risk-mean@offered" in result.stderr


@pytest.mark.parametrize("name", ["credibility", "limited-mean"])
def test_a_calculation_refuses_in_a_sentence(run: Run, name: str) -> None:
    result = run("calc", name, "--json", "{}")
    assert result.exit_code == 1
    assert "Traceback" not in result.stderr
    assert result.stderr.strip()
