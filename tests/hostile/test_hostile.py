"""Spoiled inputs are read or refused in a sentence: a few each time, ten thousand on demand."""

from __future__ import annotations

import io
import random

import pikepdf
import pytest

from tests.hostile import spoiling
from tests.hostile.reading import FORMATS, TooLong, run, tried
from tests.papers import given

FEW = {"workbook": 12, "csv": 12, "pdf": 3, "json": 150}


@pytest.mark.parametrize("format", FORMATS)
def test_spoiled_inputs_end_in_a_sentence_or_are_read(format: str) -> None:
    ends = list(run(format, FEW[format], seed=7))
    assert [(t.number, t.why) for t in ends if t.end in {"traceback", "too long"}] == []


def test_a_traceback_and_an_endless_loop_would_be_found(monkeypatch: pytest.MonkeyPatch) -> None:
    def endless() -> None:
        while True:
            pass

    monkeypatch.setattr("tests.hostile.reading.SECONDS", 0.2)
    assert tried("json", 0, endless).end == "too long"
    assert tried("json", 0, lambda: 1 / 0).end == "traceback"
    assert tried("json", 0, lambda: 1).end == "read"
    assert issubclass(TooLong, BaseException)


def test_the_same_seed_spoils_alike_and_most_inputs_are_truly_spoiled() -> None:
    sound = b"abc,def\n" * 50
    first = [spoiling.of_bytes(sound, random.Random(n)) for n in range(40)]
    again = [spoiling.of_bytes(sound, random.Random(n)) for n in range(40)]
    assert first == again
    assert sum(data != sound for data in first) > 25


def _held(data: bytes) -> list[tuple[str, list[str]]]:
    """Return what each field of a document holds, and its keys."""
    with pikepdf.open(io.BytesIO(data)) as pdf:
        widgets = [w for page in pdf.pages for w in page.obj.get("/Annots", ())]
        return [(str(w.get("/V", "")), sorted(w.keys())) for w in widgets]


def test_a_form_s_fields_are_spoiled_and_the_document_can_still_be_opened() -> None:
    sound = given.package().pdf
    made = [spoiling.of_form(sound, random.Random(number)) for number in range(8)]
    assert made[0] == spoiling.of_form(sound, random.Random(0))
    assert sum(_held(data) != _held(sound) for data in made) >= 4
