"""The evidence of a file: complete, and to be checked by anybody without this program."""

from __future__ import annotations

import hashlib
import io
import json
import subprocess
import sys
import zipfile
from datetime import date
from pathlib import Path
from typing import Any

import pytest
from tests.intake.forms import filling
from tests.office.conftest import edit
from tests.office.test_returning import package

from quarterday.catalogue.load import reference
from quarterday.office import accepting, evidence, returning
from quarterday.store import ledger, seals

BACK = date(2026, 12, 3)


@pytest.fixture
def archive(flagship: str) -> evidence.Archive:
    """The flagship's evidence: a package, a returned form, an edit, a redaction."""
    data = filling.with_pypdf(package(flagship), {"contacts.warden.phone": "705-555-0177"})
    found = returning.read(data, "form.pdf", reference(), BACK)
    assert isinstance(found, tuple)
    accepting.accept(found[0], by="ann")
    edit(flagship, phone="705-555-0178", name="Zoë Boone")
    ledger.redact(flagship, 2, "asked to be forgotten", by="ann")
    seals.seal()
    return evidence.archive(flagship, reference())


def parts(archive: evidence.Archive) -> dict[str, bytes]:
    with zipfile.ZipFile(io.BytesIO(archive.data)) as opened:
        assert opened.testzip() is None
        return {name: opened.read(name) for name in opened.namelist()}


def entries(data: bytes) -> list[dict[str, Any]]:
    return [json.loads(line) for line in data.decode().split("\n") if line]


def sha(text: str) -> str:
    return hashlib.sha256(text.encode()).hexdigest()


def test_the_chain_can_be_checked_from_the_json_alone(archive: evidence.Archive) -> None:
    """Follows README.en.txt step by step; nothing of the program is used."""
    found = parts(archive)
    chain = entries(found["entries.jsonl"])
    previous, redacted = "0" * 64, []
    for number, entry in enumerate(chain, start=1):
        assert (entry["seq"], entry["previous"]) == (number, previous)
        if entry["salt"] is None:
            redacted.append(str(number))
        else:
            assert entry["body_digest"] == sha(f"{entry['salt']}\n{entry['body'] or ''}")
        kept = ("file", "seq", "recorded_at", "by", "act", "kind", "key", "origin")
        told = {name: entry[name] for name in kept} | {"withdraws": entry["act"] == "withdraw"}
        plain = json.dumps(told, sort_keys=True, separators=(",", ":"), ensure_ascii=False)
        assert entry["digest"] == sha(f"{previous}\n{entry['body_digest']}\n{plain}")
        previous = entry["digest"]
    assert redacted == [e["key"] for e in chain if e["kind"] == "redaction"] == ["2"]
    manifest = json.loads(found["manifest.json"])
    assert manifest["head"] == {"seq": len(chain), "digest": previous}
    assert previous in found["README.en.txt"].decode()
    assert manifest["sealed_heads"][-1]["digest"] == previous


def test_every_part_has_its_digest(archive: evidence.Archive) -> None:
    found = parts(archive)
    told = json.loads(found["manifest.json"])["sha256"]
    assert set(told) == set(found) - {"manifest.json"}
    assert told == {n: hashlib.sha256(found[n]).hexdigest() for n in told}


def test_packages_and_returned_forms_are_in_it(archive: evidence.Archive) -> None:
    documents = [name for name in parts(archive) if name.startswith("documents/")]
    assert sorted(name[75:] for name in documents) == ["form.pdf", "package.pdf"]
    for name in documents:
        assert hashlib.sha256(parts(archive)[name]).hexdigest() == name[10:74]


def test_the_same_file_makes_the_same_bytes(archive: evidence.Archive, flagship: str) -> None:
    assert evidence.archive(flagship, reference()).data == archive.data


def unpacked(archive: evidence.Archive, folder: Path) -> Path:
    with zipfile.ZipFile(io.BytesIO(archive.data)) as opened:
        opened.extractall(folder)
    return folder


def checked(folder: Path) -> tuple[int, str]:
    done = subprocess.run([sys.executable, "-I", "check.py"], cwd=folder, capture_output=True,
                          text=True, check=False)  # fmt: skip
    return done.returncode, done.stdout


def test_the_check_that_comes_with_it_finds_nothing(
    archive: evidence.Archive, tmp_path: Path
) -> None:
    assert checked(unpacked(archive, tmp_path)) == (0, "Nothing was altered.\n")


def _body(line: dict[str, Any]) -> None:
    line["body"] = str(line["body"]).replace("705", "706")


def _author(line: dict[str, Any]) -> None:
    line["by"] = "somebody else"


@pytest.mark.parametrize("change", [_body, _author])
def test_the_check_that_comes_with_it_finds_a_change(
    change: Any, archive: evidence.Archive, tmp_path: Path
) -> None:
    folder = unpacked(archive, tmp_path)
    path, manifest = folder / "entries.jsonl", folder / "manifest.json"
    lines = entries(path.read_bytes())
    before = json.dumps(lines[3])
    change(lines[3])
    assert json.dumps(lines[3]) != before
    path.write_text("".join(json.dumps(line) + "\n" for line in lines), "utf-8")
    told = json.loads(manifest.read_text("utf-8"))  # whoever changes one file changes the other
    told["sha256"]["entries.jsonl"] = hashlib.sha256(path.read_bytes()).hexdigest()
    manifest.write_text(json.dumps(told), "utf-8")
    code, said = checked(folder)
    assert code == 1
    assert "entry 4" in said


def test_the_check_finds_a_changed_document_and_a_cut_tail(
    archive: evidence.Archive, tmp_path: Path
) -> None:
    folder = unpacked(archive, tmp_path)
    document = next((folder / "documents").iterdir())
    document.write_bytes(document.read_bytes() + b" ")
    lines = (folder / "entries.jsonl").read_text("utf-8").split("\n")
    (folder / "entries.jsonl").write_text("\n".join(lines[:-3]) + "\n", "utf-8")
    code, said = checked(folder)
    assert code == 1
    assert f"{document.name} was changed" in said
    assert "is gone" in said


@pytest.mark.parametrize("language", evidence.LANGUAGES)
def test_it_is_to_be_read_in_both_languages(archive: evidence.Archive, language: str) -> None:
    found = parts(archive)
    history = found[f"history.{language}.txt"].decode()
    assert "705-555-0177" in history
    assert "{" not in history
    assert "<" not in found[f"README.{language}.txt"].decode()
    removed = {"en": "removed on lawful request", "fr": "retiré à la suite d'une demande"}
    assert removed[language] in history


@pytest.mark.parametrize(
    ("language", "words"),
    [("en", ("Telephone: 705-555-0141", ": yes")), ("fr", ("Téléphone : 705-555-0141", " : oui"))],
)
def test_the_history_calls_fields_as_people_do(
    language: str, words: tuple[str, ...], archive: evidence.Archive
) -> None:
    with zipfile.ZipFile(io.BytesIO(archive.data)) as parts:
        told = parts.read(f"history.{language}.txt").decode()
    for one in words:
        assert one in told.replace("\u00a0", " ")
    assert "is_key" not in told
    assert "True" not in told
