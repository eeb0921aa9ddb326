"""The book in the terminal: topics in words and tables, JSON, and files."""

from __future__ import annotations

import csv
from decimal import Decimal
from pathlib import Path

import openpyxl
import pyarrow.parquet as pq
import pytest
from tests.cli.conftest import Run, printed

from quarterday.cli.commands.book import TOPIC_IDS
from quarterday.office.book.topics import TOPICS

AS_OF = ("--as-of", "2026-11-25")


def test_the_command_knows_the_topics_there_are() -> None:
    assert tuple(TOPICS) == TOPIC_IDS


@pytest.mark.parametrize("language", ["en", "fr"])
def test_the_book_fits_eighty_columns(language: str, loaded: Run) -> None:
    told = loaded("--language", language, "book", *AS_OF).stdout
    assert max(map(len, told.splitlines())) <= 80
    assert {"en": "3 files", "fr": "3 dossiers"}[language] in told


def test_one_topic_is_told_alone(loaded: Run) -> None:
    told = loaded("book", "work", *AS_OF).stdout
    assert "Work by week" in told
    assert "Coverage take-up" not in told


def test_json_has_every_topic_with_amounts_as_text(loaded: Run) -> None:
    told = printed(loaded("book", *AS_OF, "--json"))
    assert list(told["topics"]) == list(TOPIC_IDS)
    assert told["files"]["files"] == 3
    rows = told["topics"]["states"]["rows"]
    assert sum(row["renewals"] for row in rows) == 3
    assert all(Decimal(row["premium"]).as_tuple().exponent == -2 for row in rows)


def test_the_shortfall_is_that_of_its_own_command(loaded: Run) -> None:
    told = printed(loaded("book", "values", *AS_OF, "--json"))["topics"]["values"]["rows"]
    own = printed(loaded("shortfall", *AS_OF, "--json"))["provinces"]
    assert {row["province"]: row["gap"] for row in told} == {p: v["gap"] for p, v in own.items()}
    assert {row["province"]: row["short"] for row in told} == {
        p: v["short"] for p, v in own.items()
    }


@pytest.mark.parametrize(
    ("option", "value", "files"),
    [("--province", "QC", 2), ("--province", "YT", None), ("--office", "val-aubry", 2),
     ("--owner", "Nobody", None), ("--months", "2026-01..2027-12", 3),
     ("--months", "2030-01..2030-02", None)],
)  # fmt: skip
def test_options_narrow_it_to_the_files_that_fit(
    option: str, value: str, files: int | None, loaded: Run
) -> None:
    told = printed(loaded("book", "states", *AS_OF, option, value, "--json"))
    assert (told["files"] or {}).get("files") == files


def test_a_table_is_written_as_csv_and_parquet_and_all_as_a_workbook(
    loaded: Run, tmp_path: Path
) -> None:
    for kind in ("csv", "parquet"):
        done = loaded("book", "states", *AS_OF, "--to", kind, "--out", str(tmp_path / f"s.{kind}"))
        assert done.exit_code == 0
    with (tmp_path / "s.csv").open(encoding="utf-8-sig") as file:
        lines = list(csv.reader(file))
    table = pq.read_table(tmp_path / "s.parquet")
    assert len(lines) == 1 + table.num_rows == 10
    assert loaded("book", *AS_OF, "--to", "xlsx", "--out", str(tmp_path / "b.xlsx")).exit_code == 0
    assert len(openpyxl.load_workbook(tmp_path / "b.xlsx").worksheets) == len(TOPIC_IDS)


def test_several_tables_do_not_go_into_one_csv(loaded: Run, tmp_path: Path) -> None:
    done = loaded("book", *AS_OF, "--to", "csv", "--out", str(tmp_path / "b.csv"))
    assert done.exit_code == 1
    assert "name a topic" in " ".join(done.stderr.split())
    assert not (tmp_path / "b.csv").exists()


@pytest.mark.parametrize(
    "words",
    [("book", "nothing"), ("book", "--months", "2027-13..2027-14"), ("book", "--to", "csv"),
     ("book", "--months", "2027-02..2027-01"), ("book", "--out", "x.csv")],
)  # fmt: skip
def test_wrong_usage_is_said_so(words: tuple[str, ...], loaded: Run) -> None:
    assert loaded(*words).exit_code == 2


def test_the_day_moves_the_figures(loaded: Run) -> None:
    def late(day: str) -> int:
        rows = printed(loaded("book", "states", "--as-of", day, "--json"))["topics"]["states"]
        return sum(row["late"] for row in rows["rows"])

    assert late("2026-08-01") < late("2027-01-10")
