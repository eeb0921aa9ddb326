"""Lists, files, reviews and figures as the terminal shows them."""

from __future__ import annotations

import os
import re
import subprocess
import sys

import pytest
from tests.cli.conftest import Run, printed

DAY = ("--as-of", "2026-11-25")


def test_the_list_is_in_order_of_renewal(loaded: Run) -> None:
    days = [line["renewal"] for line in printed(loaded("list", "--json"))]
    assert days == sorted(days)
    assert len(days) == 3


def test_due_leaves_out_its_last_day(loaded: Run) -> None:
    assert len(printed(loaded("list", "--due", "2026-11-30..2026-12-08", "--json"))) == 1


def test_a_review_lists_findings_and_at_most_five_decisions(loaded: Run) -> None:
    done = printed(loaded("review", "HW-1001", *DAY, "--json"))
    assert len(done["findings"]) > 10
    assert 1 <= len(done["agenda"]) <= 5
    assert set(done["agenda"]) <= {finding["id"] for finding in done["findings"]}


def test_several_reviews_are_a_table(loaded: Run) -> None:
    result = loaded("review", "--all", *DAY)
    assert all(id in result.stdout for id in ("HW-1001", "HW-1010", "HW-1014"))


def test_why_goes_down_to_the_row_and_the_publisher(loaded: Run) -> None:
    text = " ".join(loaded("why", "HW-1001", "cost-rebuilt@hall", *DAY).stdout.split())
    assert "sheet Valuations, row" in text
    assert "Statistics Canada" in text


def test_why_of_an_unknown_figure_is_wrong_usage_and_names_what_is_close(loaded: Run) -> None:
    result = loaded("why", "HW-1001", "cost-rebuilt@shed", *DAY)
    assert result.exit_code == 2
    assert "cost-rebuilt@hall" in result.stderr


def test_no_line_is_wider_than_the_terminal(loaded: Run) -> None:
    for words in (("list",), ("show", "HW-1001"), ("review", "HW-1001", *DAY), ("coverages",),
                  ("causes",), ("rules",), ("parameters", *DAY)):  # fmt: skip
        for line in loaded(*words).stdout.splitlines():
            assert len(line) <= 80, line


def test_every_list_speaks_french(loaded: Run) -> None:
    for words in (("list",), ("show", "HW-1010"), ("review", "HW-1010", *DAY), ("coverages",),
                  ("causes",), ("history", "HW-1010"), ("verify",)):  # fmt: skip
        assert loaded("--language", "fr", *words).exit_code == 0


def test_show_as_known_before_the_load_has_no_organisation(loaded: Run) -> None:
    known = printed(loaded("show", "HW-1001", "--as-known", "2020-01-01", "--json"))
    assert known["records"] == []


def test_an_untouched_store_verifies(loaded: Run) -> None:
    report = printed(loaded("verify", "--json"))
    assert report["faults"] == []
    assert report["files"] == 3


@pytest.mark.parametrize(
    "words", [("review",), ("review", "HW-1001", "--all"), ("list", "--due", "x")]
)
def test_unclear_words_are_wrong_usage(loaded: Run, words: tuple[str, ...]) -> None:
    assert loaded(*words).exit_code == 2


@pytest.mark.parametrize(("language", "words"), [("en", "HW-9999"), ("fr", "HW-9999")])
def test_a_trouble_is_one_sentence_and_no_traceback(
    own_store: str, language: str, words: str
) -> None:
    program = [sys.executable, "-m", "quarterday.cli", "--language", language, "show", words]
    done = subprocess.run(
        program, env=dict(os.environ), capture_output=True, text=True, check=False
    )
    assert done.returncode == 1
    assert words in done.stderr
    assert "Traceback" not in done.stderr
    assert len(done.stderr.strip().splitlines()) == 1


def test_one_coverage_is_explained_and_an_unknown_one_is_wrong_usage(run: Run) -> None:
    assert "sewer" in run("coverages", "sewer-backup").stdout.lower()
    wrong = run("coverages", "sewer-backups")
    assert wrong.exit_code == 2
    assert "sewer-backups" in wrong.stderr


@pytest.mark.parametrize(
    ("language", "said"),
    [
        ("en", ["Kind of organisation: place of worship", "Language: English", "Role: treasurer",
                "Year built: 19", "Status: "]),
        ("fr", ["Fonction : personne responsable de la trésorerie", "anglais"]),
    ],
)  # fmt: skip
def test_show_names_choices_and_writes_years_as_years(
    loaded: Run, language: str, said: list[str]
) -> None:
    text = loaded("--language", language, "show", "HW-1001").stdout.replace("\u00a0", " ")
    assert not [one for one in said if one.casefold() not in text.casefold()], text
    years = re.findall(r"(?:Year|Année)[^:\n]*: (.*)", text)
    assert years
    assert not [year for year in years if not re.fullmatch(r"\d{4}", year)]
