"""The command that checks the brand, and those for people outside."""

from __future__ import annotations

from pathlib import Path

from tests.cli.conftest import Run, printed
from tests.papers.test_brand import folder

from quarterday.core.file.records import EvidenceSent
from quarterday.invent.demo.book import HERE as DEMO_DATA
from quarterday.store import ledger

FILE, DAY = "HW-1001", "2026-11-25"
HOUSE = ("--brokerage", str(DEMO_DATA), "--as-of", DAY)


def test_brand_shows_what_is_set_and_stops_at_a_fault(loaded: Run, tmp_path: Path) -> None:
    file = folder(tmp_path)
    told = printed(loaded("brand", str(tmp_path), "--json"))
    assert told["logo"] == "logo.svg"
    assert told["colours"] == {"accent": "#5b2a6e", "tint": "#e3cfea"}
    assert told["signatures"] == ["Ruth Abernethy"]
    assert "Lantern Street" in loaded("brand", str(file)).stdout
    (tmp_path / "logo.svg").write_text("<svg><script/></svg>", "utf-8")
    refused = loaded("brand", str(file))
    assert refused.exit_code == 1
    assert "logo.svg" in refused.stderr


def test_a_certificate_is_written_and_recorded_only_when_it_went_out(
    loaded: Run, tmp_path: Path
) -> None:
    new = ("certificate", FILE, "town", "--name", "Town of Port Ellery", "--out", str(tmp_path))
    first = printed(loaded(*new, *HOUSE, "--json"))
    assert Path(first["path"]).read_bytes().startswith(b"%PDF-")
    assert not first["recorded"]
    assert ledger.load(FILE).all(EvidenceSent) == ()
    assert printed(loaded(*new, *HOUSE, "--sent", "--json"))["recorded"]
    (sent,) = ledger.load(FILE).all(EvidenceSent)
    assert (sent.holder, sent.name) == ("town", "Town of Port Ellery")


def test_who_is_unknown_or_owed_still_stops_with_a_sentence(loaded: Run, tmp_path: Path) -> None:
    out = ("--out", str(tmp_path), *HOUSE)
    unknown = loaded("certificate", FILE, "tonw", *out)
    assert unknown.exit_code == 1
    assert "tonw" in unknown.stderr
    lender = next(i.id for i in ledger.load(FILE).interests if i.status == "active")
    owed = loaded("discharge", FILE, lender, *out)
    assert owed.exit_code == 1
    assert "not paid off" in owed.stderr
    assert list(tmp_path.glob("*.pdf")) == []
