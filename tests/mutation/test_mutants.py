"""The wrongs that a mutation run does to code, and what becomes of them."""

from __future__ import annotations

from pathlib import Path

import pytest

from tests.mutation.mutants import mutants
from tests.mutation.trial import fate

CODE = '''"""A text with 1 number."""
LIMIT: "int" = 3

def capped(loss: int) -> int:
    """Return at most the limit."""
    assert loss >= 0, "not below zero"
    return min(loss, LIMIT) if loss > 2 and not loss == 9 else -loss
'''
CHECK = """
import sys
sys.path.insert(0, {folder!r})
def test_it():
    from capping_to_try import capped
    assert [capped(n) for n in (2, 3, 4, 9)] == [-2, 3, 3, -9]
"""


@pytest.fixture
def code(tmp_path: Path) -> Path:
    path = tmp_path / "capping_to_try.py"
    path.write_text(CODE, encoding="utf-8")
    return path


def test_every_sign_condition_and_number_is_made_wrong_once(code: Path) -> None:
    told = {(m.was, m.now) for m in mutants(code)}
    assert ("3", "4") in told
    assert ("loss > 2", "loss >= 2") in told
    assert ("min(loss, LIMIT)", "max(loss, LIMIT)") in told
    assert ("loss > 2 and (not loss == 9)", "loss > 2 or not loss == 9") in told
    assert ("not loss == 9", "loss == 9") in told
    assert ("-loss", "loss") in told


def test_texts_annotations_and_assertions_are_left_alone(code: Path) -> None:
    lines = CODE.splitlines()
    assert {lines[m.line - 1].split()[0] for m in mutants(code)} == {"LIMIT:", "return"}


def test_one_mutant_is_one_wrong(code: Path) -> None:
    import ast

    right = ast.unparse(ast.parse(CODE))
    texts = [ast.unparse(mutant.tree()) for mutant in mutants(code)]
    assert right not in texts
    assert len(set(texts)) == len(texts)


def test_the_tests_notice_what_is_wrong_and_pass_what_is_right(code: Path, tmp_path: Path) -> None:
    check = tmp_path / "test_capping.py"
    check.write_text(CHECK.format(folder=str(tmp_path)), encoding="utf-8")
    alone = ("-p", "no:django", f"--rootdir={tmp_path}", "-c", "/dev/null", str(check))
    assert fate(None, alone, 60) == "survived"
    fates = {(m.was, m.now): fate(m, alone, 60) for m in mutants(code)}
    assert fates["min(loss, LIMIT)", "max(loss, LIMIT)"] == "killed"
    assert fates["loss > 2", "loss >= 2"] == "killed"
    assert set(fates.values()) == {"killed"}
