"""The code on a form's page: what it says comes back, and nothing else is taken for it.

QR code, alphanumeric mode: ISO/IEC 18004, table 5 (digits, capitals, space and $%*+-./:).
"""

from __future__ import annotations

import string
from datetime import date

import pytest
from hypothesis import given
from hypothesis import strategies as st

from quarterday.core.file.page_code import PageCode, page_code

ALPHANUMERIC = set(string.digits + string.ascii_uppercase + " $%*+-./:")
CODE = PageCode("HW-1001", date(2027, 1, 15), "en", 2, 412, "contacts-form")


def test_an_ordinary_code_takes_the_least_room() -> None:
    assert set(CODE.text) <= ALPHANUMERIC
    assert CODE.text == "QD1 HW-1001 2027-01-15 EN 2 412 CONTACTS-FORM"


@given(
    st.text(st.characters(exclude_categories=["Cs"]), min_size=1, max_size=20),
    st.dates(), st.sampled_from(["en", "fr"]), st.integers(1, 999_999), st.integers(1, 10**8),
)  # fmt: skip
def test_any_file_s_code_comes_back(
    file: str, renewal: date, language: str, version: int, seq: int
) -> None:
    code = PageCode(file, renewal, language, version, seq, "water-form")
    assert page_code(code.text) == code
    assert page_code(f" {code.text}\n") == code


@pytest.mark.parametrize(
    "text",
    ["", "https://example.org", CODE.text.lower(), CODE.text.replace("QD1", "QD2"),
     CODE.text.replace("2027-01-15", "2027-13-15"), f"{CODE.text} AND MORE!",
     CODE.text.replace("EN", "DE"), "QD1 " + "A" * 400],
)  # fmt: skip
def test_what_is_none_of_ours_says_nothing(text: str) -> None:
    assert page_code(text) is None
