"""Open Exposure Data from the terminal: out, what is lost, and in again."""

from __future__ import annotations

from pathlib import Path

from tests.cli.conftest import Run, printed


def exported(run: Run, out: Path, *words: str) -> str:
    result = run(*words, "export", "--to", "oed", "--out", str(out))
    assert result.exit_code == 0
    return " ".join(result.stdout.split())


def test_an_export_says_by_name_what_it_loses(loaded: Run, tmp_path: Path) -> None:
    told = exported(loaded, tmp_path)
    assert f"6 locations of 3 accounts written to {tmp_path}." in told
    for name in ("Coinsurance", "Heritage building", "Sewer backup", "Basis", "Loss of income"):
        assert name in told
    assert " more." not in told  # no list is shortened


def test_an_export_speaks_french_with_the_same_names(loaded: Run, tmp_path: Path) -> None:
    told = exported(loaded, tmp_path, "--language", "fr")
    assert "6 emplacements de 3 comptes" in told
    assert "Refoulement d'égouts" in told


def test_what_went_out_changes_nothing_when_it_comes_in(loaded: Run, tmp_path: Path) -> None:
    exported(loaded, tmp_path)
    seen = printed(loaded("load", str(tmp_path), "--json"))
    assert (seen["new"], seen["changed"], seen["refused"], seen["asks"]) == (0, 0, 0, 0)
    assert seen["unchanged"] > 15


def test_a_location_file_of_an_unknown_account_writes_nothing(run: Run, tmp_path: Path) -> None:
    text = "AccNumber,LocNumber,CountryCode,LocCurrency,LocPerilsCovered\nX,1,CA,CAD,AA1\n"
    (tmp_path / "location.csv").write_text(text, "utf-8")
    result = run("load", str(tmp_path / "location.csv"))
    assert result.exit_code == 1
    assert "We do not know account X" in " ".join(result.stdout.split())
    assert printed(run("list", "--json")) == []


def test_an_account_known_from_its_account_file_is_listed(
    loaded: Run, tmp_path: Path, run: Run
) -> None:
    out = tmp_path / "oed"
    exported(loaded, out)
    for file in out.iterdir():
        file.write_text(file.read_text("utf-8").replace("HW-", "NEW-"), "utf-8")
    assert loaded("load", str(out)).exit_code == 0
    listed = {row["file"] for row in printed(run("list", "--json"))}
    assert {"NEW-1001", "NEW-1010", "NEW-1014", "HW-1001"} <= listed
