"""The chain: whatever is changed in it shows, and what is lawful in it does not."""

from __future__ import annotations

import hashlib
import json
from dataclasses import replace
from datetime import UTC, datetime, timedelta, timezone
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from quarterday.core.file import chain
from quarterday.core.file.chain import GENESIS, ChainFault, Head
from quarterday.core.file.entry import Draft, Entry, Origin, Place
from quarterday.core.file.records import Note, Redaction

NOW = datetime(2026, 11, 25, 9, 30, 15, 123456, tzinfo=UTC)
ORIGIN = Origin(way="form", document="f" * 64, name="réponse.pdf", places=(Place(field="phone"),))


def linked(*bodies: str | None, file: str = "A1") -> list[Entry]:
    """Return a chain of notes with these bodies; None withdraws."""
    head, made = Head(), []
    for number, body in enumerate(bodies, 1):
        act = "edit" if body is not None else "withdraw"
        draft = Draft(act, "note", f"n{number}", body, ORIGIN)
        salt = f"{number:032x}"
        entry = chain.append(head, draft, file=file, by="ann", recorded_at=NOW, salt=salt)
        made.append(entry)
        head = Head(entry.seq, entry.digest)
    return made


def note(text: str) -> str:
    return Note(id="n", text=text).body()


def kinds(entries: list[Entry]) -> list[tuple[int, str]]:
    return [(fault.seq, fault.kind) for fault in chain.faults(entries)]


def redacted(entries: list[Entry], seq: int) -> list[Entry]:
    """Return the chain with an entry's body gone and an entry at its end that says so."""
    gone = [replace(e, body=None, salt=None) if e.seq == seq else e for e in entries]
    record = Redaction(seq=seq, reason="asked")
    draft = Draft("redact", record.kind, record.key, record.body(), Origin(way="office"))
    head = Head(entries[-1].seq, entries[-1].digest)
    last = chain.append(head, draft, file="A1", by="bea", recorded_at=NOW, salt="s")
    return [*gone, last]


def test_a_chain_begins_at_zero_and_each_entry_seals_the_one_before() -> None:
    first, second = linked(note("a"), note("b"))
    assert (first.seq, first.previous) == (1, "0" * 64)
    assert (second.seq, second.previous) == (2, first.digest)
    assert GENESIS == "0" * 64


def test_the_digest_is_the_sha_256_that_anybody_can_compute() -> None:
    """By hashlib and json alone, from the description in the module."""
    (entry,) = linked(note("é"))
    body = hashlib.sha256(f"{entry.salt}\n{entry.body}".encode()).hexdigest()
    envelope = {
        "act": "edit", "by": "ann", "file": "A1", "key": "n1", "kind": "note",
        "origin": {
            "document": "f" * 64, "name": "réponse.pdf", "places": [{"field": "phone"}],
            "way": "form",
        },
        "recorded_at": "2026-11-25T09:30:15.123456+00:00", "seq": 1, "withdraws": False,
    }  # fmt: skip
    text = json.dumps(envelope, sort_keys=True, separators=(",", ":"), ensure_ascii=False)
    whole = hashlib.sha256(f"{'0' * 64}\n{body}\n{text}".encode()).hexdigest()
    assert (entry.body_digest, entry.digest) == (body, whole)


def test_the_hash_is_the_published_one() -> None:
    """FIPS 180-4, as in NIST's example for the message "abc"."""
    known = "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad"
    assert chain.hashed("abc") == known


def test_the_same_moment_in_another_time_zone_has_the_same_digest() -> None:
    (entry,) = linked(note("a"))
    eastern = replace(entry, recorded_at=NOW.astimezone(timezone(timedelta(hours=-5))))
    assert kinds([eastern]) == []


@given(st.lists(st.text(max_size=20) | st.none(), max_size=8))
def test_an_untouched_chain_has_no_fault(texts: list[str | None]) -> None:
    assert kinds(linked(*texts)) == []


CHANGES: dict[str, tuple[Any, str]] = {
    "file": ("A2", "envelope"),
    "seq": (7, "sequence"),
    "recorded_at": (NOW + timedelta(microseconds=1), "envelope"),
    "by": ("eve", "envelope"),
    "act": ("withdraw", "envelope"),
    "kind": ("claim", "envelope"),
    "key": ("n9", "envelope"),
    "body": (note("b."), "body"),
    "salt": ("0", "body"),
    "body_digest": ("0" * 64, "body"),
    "origin": (ORIGIN.model_copy(update={"name": "other.pdf"}), "envelope"),
    "digest": ("0" * 64, "envelope"),
    "previous": ("0" * 64, "previous"),
}


@pytest.mark.parametrize("field", CHANGES)
def test_every_field_of_an_entry_is_under_the_seal(field: str) -> None:
    entries = linked(note("a"), note("b"), note("c"))
    value, kind = CHANGES[field]
    entries[1] = replace(entries[1], **{field: value})
    assert (entries[1].seq, kind) in kinds(entries)


def test_no_field_of_an_entry_is_left_out_of_the_test_above() -> None:
    assert set(CHANGES) == set(Entry.__dataclass_fields__)


@given(st.integers(0, 4), st.text(max_size=10))
def test_a_changed_body_names_the_entry_and_no_other(at: int, text: str) -> None:
    entries = linked(*(note(str(n)) for n in range(5)))
    entries[at] = replace(entries[at], body=text)
    assert list(chain.faults(entries)) == [ChainFault("A1", at + 1, "body")]


@given(st.integers(0, 3))
def test_an_entry_taken_out_shows(at: int) -> None:
    entries = linked(*(note(str(n)) for n in range(5)))
    del entries[at]
    assert kinds(entries) == [(at + 2, "sequence"), (at + 2, "previous")]


@given(st.permutations(range(4)))
def test_entries_in_another_order_show(order: list[int]) -> None:
    entries = linked(*(note(str(n)) for n in range(4)))
    assert bool(kinds([entries[n] for n in order])) == (order != sorted(order))


def test_a_cut_tail_does_not_show_in_the_chain_alone() -> None:
    """That is what the seals outside the database are for."""
    assert kinds(linked(note("a"), note("b"))[:1]) == []


def test_a_redacted_body_leaves_the_chain_whole() -> None:
    entries = redacted(linked(note("a"), note("b")), 1)
    assert entries[0].is_redacted
    assert kinds(entries) == []


def test_a_body_that_is_gone_without_a_word_shows() -> None:
    entries = linked(note("a"), note("b"))
    entries[0] = replace(entries[0], body=None, salt=None)
    assert kinds(entries) == [(1, "redaction")]


def test_the_redaction_of_another_entry_is_no_excuse() -> None:
    entries = redacted(linked(note("a"), note("b")), 1)
    entries[1] = replace(entries[1], body=None, salt=None)
    assert kinds(entries) == [(2, "redaction")]


def test_a_body_put_in_place_of_a_redacted_one_shows() -> None:
    """Without its salt a body cannot be checked against its digest, so there may be none."""
    entries = redacted(linked(note("a"), note("b")), 1)
    entries[0] = replace(entries[0], body=note("forged"))
    assert kinds(entries) == [(1, "body")]


def test_a_body_gone_while_its_salt_stays_shows() -> None:
    entries = linked(note("a"))
    entries[0] = replace(entries[0], body=None)
    assert kinds(entries) == [(1, "body")]


def test_a_redaction_whose_key_is_no_number_is_a_fault_and_no_crash() -> None:
    entries = linked(note("a"))
    entries[0] = replace(entries[0], kind="redaction", key="no number")
    assert kinds(entries) == [(1, "envelope")]


def test_a_withdrawal_cannot_be_told_from_an_empty_body_by_its_digest_but_by_its_envelope() -> None:
    (gone,) = linked(None)
    assert gone.body_digest == chain.body_digest("", gone.salt or "")
    assert kinds([replace(gone, body="", act="edit")]) == [(1, "envelope")]


def test_two_bodies_alike_do_not_show_it_in_their_digests() -> None:
    """The salt keeps a redacted telephone number from being guessed by trying them all."""
    one, other = linked(note("555-0101"), note("555-0101"))
    assert one.body_digest != other.body_digest


def test_an_entry_does_not_print_what_it_holds() -> None:
    (entry,) = linked(note("555-0101"))
    assert "555-0101" not in repr(entry)
    assert str(entry.salt) not in repr(entry)
