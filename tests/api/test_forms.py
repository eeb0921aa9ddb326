"""Forms that come home to the interface: read and taken, or told what they are as scans."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

import pytest
from tests.api.conftest import FILE, FLAGSHIP, ROOT, Program
from tests.intake.forms import filling

from quarterday.core.file.page_code import page_code
from quarterday.store import ledger, originals

As = Callable[[str], Program]
SHEET = "contacts-form"


@pytest.fixture
def package(book: None, program: As) -> bytes:
    """The flagship's package in English, as the interface builds it."""
    built = program("ann").post(f"{FILE}/packages", {"language": "en"}).json()
    return bytes(originals.get(built["sha256"]))


def sent(asker: Program, content: bytes) -> dict[str, Any]:
    answer = asker.send(f"{ROOT}/forms", "form.pdf", content)
    assert answer.status_code == 200, answer.content
    found: dict[str, Any] = answer.json()
    return found


def test_a_scan_says_by_its_codes_which_forms_of_which_file_it_is(
    package: bytes, program: As
) -> None:
    before = len(ledger.entries(FLAGSHIP))
    found = sent(program("ann"), filling.scanned(package, 60, dots=110))
    (flat,) = found["read"]
    assert flat["files"] == [FLAGSHIP]
    assert len(flat["forms"]) > 3
    codes = [page_code(text) for text in flat["codes"].values()]
    assert {code.form for code in codes if code} == set(flat["forms"])
    assert all(page.isdigit() for page in flat["codes"])
    taken = program("ann").post(f"{ROOT}/forms/{found['token']}/accept", {})
    assert taken.json() == {"read": []}
    assert len(ledger.entries(FLAGSHIP)) == before


def test_what_gives_nothing_away_is_told_without_codes(package: bytes, program: As) -> None:
    (flat,) = sent(program("ann"), filling.scanned(package, 1, dots=20))["read"]
    assert flat["files"] == flat["forms"] == []
    assert flat["codes"] == {}
    assert len(flat["notes"]) == 2


def test_a_scan_of_another_office_s_file_is_not_told(package: bytes, program: As) -> None:
    scan = filling.scanned(package, 60, dots=110)
    assert program("cole").send(f"{ROOT}/forms", "form.pdf", scan).status_code == 404


def test_a_filled_form_is_read_and_taken(package: bytes, program: As) -> None:
    told = {f"{SHEET}.confirmed.by": "Ida Brandt", f"{SHEET}.confirmed.on": "2026-11-20"}
    found = sent(program("ann"), filling.with_pypdf(package, told))
    (form,) = found["read"]
    assert form["file"] == FLAGSHIP
    assert form["taken"] == []
    assert SHEET in form["forms"]
    (taken,) = program("ann").post(f"{ROOT}/forms/{found['token']}/accept", {}).json()["read"]
    assert taken["entries"] > 0
    gone = program("ann").post(f"{ROOT}/forms/{found['token']}/accept", {})
    assert gone.status_code == 422
