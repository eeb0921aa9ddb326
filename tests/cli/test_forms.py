"""The commands for returned forms, seals, evidence, requests and exports."""

from __future__ import annotations

import json
from pathlib import Path

import pytest
from tests.cli.conftest import Run, printed
from tests.intake.forms import filling

from quarterday.invent.demo.book import HERE as DEMO_DATA
from quarterday.store import ledger

FILE, DAY = "HW-1001", "2026-11-25"
BRAND = ("--brokerage", str(DEMO_DATA / "brokerage.yaml"))


@pytest.fixture
def package(loaded: Run, tmp_path: Path) -> Path:
    """The flagship's signed package."""
    loaded("sign", FILE, "--reviewer", "Judith Hollis", "--licence", "RIB-000417", "--as-of", DAY)
    made = printed(loaded("package", FILE, "--out", str(tmp_path), *BRAND, "--json"))
    return Path(made["built"][0]["path"])


def filled(package: Path, **answers: str) -> str:
    path = package.with_name("filled.pdf")
    named = {name.replace("__", "."): text for name, text in answers.items()}
    path.write_bytes(filling.with_pypdf(package.read_bytes(), named))
    return str(path)


def test_read_shows_then_accepts_and_writes_once(loaded: Run, package: Path) -> None:
    form = filled(package, contacts__warden__phone="705-555-0122")
    shown = loaded("read", form)
    assert shown.exit_code == 0
    assert "Today: 705-555-0140. The form says: 705-555-0122." in " ".join(shown.stdout.split())
    assert ledger.load(FILE).contacts[-1].phone != "705-555-0122"
    told = printed(loaded("read", form, "--accept", "--json"))
    assert told[0]["taken"] == ["contacts.warden.phone"]
    assert told[0]["entries"] == 2  # the contact, and that the form came back
    again = printed(loaded("read", form, "--accept", "--json"))
    assert (again[0]["entries"], again[0]["proposals"]) == (0, [])
    assert loaded("verify").exit_code == 0


@pytest.mark.parametrize("language", ["en", "fr"])
def test_bad_forms_are_one_sentence_and_exit_one(
    language: str, loaded: Run, package: Path, tmp_path: Path
) -> None:
    bad = tmp_path / "letter.pdf"
    bad.write_bytes(b"not a pdf")
    stopped = loaded("--language", language, "read", str(bad))
    assert stopped.exit_code == 1
    assert stopped.stderr.startswith("letter.pdf")
    assert len(stopped.stderr.strip().split("\n")) == 1
    assert loaded("read", str(package), "--file", "HW-1010").exit_code == 1


def test_a_scan_is_entered_side_by_side(loaded: Run, package: Path, tmp_path: Path) -> None:
    scan = tmp_path / "scan.pdf"
    scan.write_bytes(filling.scanned(package.read_bytes(), 1))
    told = loaded("read", str(scan))
    assert told.exit_code == 1
    assert "--enter" in told.stdout
    shown = loaded("read", "--enter", "contacts-form", "--file", FILE, "--as-of", DAY)
    assert "contacts.warden.phone" in shown.stdout
    answers = tmp_path / "answers.json"
    answers.write_text(json.dumps({"contacts.warden.phone": "705-555-0122"}), "utf-8")
    done = printed(loaded("read", "--enter", "contacts-form", "--file", FILE, "--as-of", DAY,
                          "--answers", str(answers), str(scan), "--accept", "--json"))  # fmt: skip
    assert done[0]["taken"] == ["contacts.warden.phone"]
    answers.write_text("[1]", "utf-8")
    assert loaded("read", "--enter", "contacts-form", "--file", FILE, "--answers",
                  str(answers)).exit_code == 1  # fmt: skip


def test_reading_nothing_is_wrong_usage(loaded: Run) -> None:
    assert loaded("read").exit_code == 2


def test_seal_and_verify_tell_sealed_filled_and_tampered(loaded: Run, package: Path) -> None:
    made = printed(loaded("seal", FILE, "--out", str(package.parent), *BRAND, "--json"))
    sealed = Path(made["path"])
    assert printed(loaded("verify", str(sealed), "--json"))["state"] == "intact"
    data = sealed.read_bytes()
    changed = sealed.with_name("changed.pdf")
    changed.write_bytes(filling.later(data, {"contacts.warden.phone": "705-555-0122"}))
    assert printed(loaded("verify", str(changed), "--json"))["state"] == "filled"
    changed.write_bytes(filling.changed(data, lambda pdf: pdf.pages.reverse()))
    stopped = loaded("verify", str(changed), "--json")
    assert stopped.exit_code == 1
    assert printed(stopped)["state"] == "altered"


def test_evidence_request_bordereau_and_export(loaded: Run, package: Path, tmp_path: Path) -> None:
    form = filled(package, buildings__hall__roof_year="2024")
    loaded("read", form, "--accept")
    out = ("--out", str(tmp_path))
    asked = printed(loaded("request", FILE, *out, *BRAND, "--as-of", "2026-12-04", "--sent",
                           "--json"))  # fmt: skip
    assert (asked["changes"], asked["recorded"]) == (1, True)
    assert {Path(p).suffix for p in asked["paths"]} == {".pdf", ".csv", ".json"}
    assert loaded("request", FILE, *out, *BRAND, "--as-of", "2026-12-04").exit_code == 1
    assert printed(loaded("bordereau", "--month", "2026-12", *out, "--json"))["lines"] == 2
    told = printed(loaded("evidence", FILE, *out, "--json"))
    assert told["documents"] == 3  # the package, the form, the letter
    assert len(told["not_enclosed"]) == 1
    book = tmp_path / "book.xlsx"
    assert loaded("export", "--out", str(book)).exit_code == 0
    again = printed(loaded("load", str(book), "--preview", "--json"))
    assert (again["new"], again["changed"], again["refused"]) == (0, 0, 0)
    loaded("export", "--to", "csv", "--out", str(tmp_path / "csv"), FILE)
    assert (tmp_path / "csv" / "Buildings.csv").exists()


def test_a_form_is_shown_beside_the_pictures_of_its_pages(
    loaded: Run, package: Path, tmp_path: Path
) -> None:
    form, page = filled(package, contacts__warden__phone="<b>705</b>"), tmp_path / "beside.html"
    shown = loaded("read", form, "--beside", str(page))
    assert str(page) in " ".join(shown.stderr.split()).replace(" ", "")
    text = page.read_text("utf-8")
    assert text.count("data:image/png;base64,") == 1
    assert "705-555-0140" in text  # today
    assert "&lt;b&gt;705&lt;/b&gt;" in text  # what came from outside is text, never markup
    assert "<b>705" not in text
    assert "<script" not in text
    assert "default-src 'none'" in text


@pytest.mark.parametrize("language", ["en", "fr"])
def test_a_scan_is_shown_beside_the_questions_it_has_to_answer(
    language: str, loaded: Run, package: Path, tmp_path: Path
) -> None:
    scan, page = tmp_path / "scan.pdf", tmp_path / "beside.html"
    scan.write_bytes(filling.scanned(package.read_bytes(), 2))
    assert loaded("--language", language, "read", "--enter", "contacts-form", "--file", FILE,
                  "--as-of", DAY, "--beside", str(page), str(scan)).exit_code == 0  # fmt: skip
    text = page.read_text("utf-8")
    assert f'<html lang="{language}"' in text
    assert text.count("data:image/png;base64,") == 2
    assert "contacts.warden.phone" in text
    assert "705-555-0140" in text
    assert loaded("read", str(scan), "--beside", str(page)).exit_code == 1
    assert page.read_text("utf-8").count("data:image/png;base64,") == 2


def test_two_forms_in_two_files_get_a_page_each(loaded: Run, package: Path, tmp_path: Path) -> None:
    form = filled(package, contacts__warden__phone="705-555-0122")
    loaded("read", form, form, "--beside", str(tmp_path / "beside.html"))
    assert {p.name for p in tmp_path.glob("*.html")} == {"beside-1.html", "beside-2.html"}


def test_export_to_parquet_holds_what_the_workbook_holds(loaded: Run, tmp_path: Path) -> None:
    import pandas as pd

    assert loaded("export", "--to", "parquet", "--out", str(tmp_path / "p")).exit_code == 0
    loaded("export", "--to", "csv", "--out", str(tmp_path / "c"))
    for name in ("Buildings", "Claims", "Coverages", "Premiums"):
        frame = pd.read_parquet(tmp_path / "p" / f"{name}.parquet")
        assert len(frame) == len(pd.read_csv(tmp_path / "c" / f"{name}.csv"))


def test_the_packages_of_a_month_and_of_a_day_are_a_run_with_a_report(
    loaded: Run, tmp_path: Path
) -> None:
    renewals = {row["file"]: row["renewal"] for row in printed(loaded("list", "--json"))}
    day = renewals[FILE]
    for due in (day, day[:7]):
        wanted = [file for file, of in renewals.items() if of.startswith(due)]
        told = printed(loaded("list", "--due", due, "--json"))
        assert {row["file"] for row in told} == set(wanted)
    assert loaded("list", "--due", "2026-13").exit_code == 2
    assert loaded("list", "--due", "2026-12-01..2026-12-01").exit_code == 2
