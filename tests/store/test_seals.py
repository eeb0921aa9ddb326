"""Seals: signed once a day over what moved, with key and list outside the database."""

from __future__ import annotations

from collections.abc import Callable
from datetime import UTC, datetime
from pathlib import Path

import pytest
from cryptography.exceptions import InvalidSignature
from cryptography.hazmat.primitives.asymmetric.ed25519 import Ed25519PublicKey
from django.conf import settings
from django.db import connection, transaction

from quarterday.core.file.entry import Entry
from quarterday.core.file.records import Note, Organisation
from quarterday.store import guards, seal_keys, seals
from quarterday.store.models import Seal
from quarterday.store.verify import verify

Save = Callable[..., tuple[Entry, ...]]
CHURCH = Organisation(name="Pinebrook Chapel", province="ON")
DAY = datetime(2026, 11, 25, 18, tzinfo=UTC)


def home() -> Path:
    found: Path = settings.QUARTERDAY_HOME
    return found


def kinds() -> list[str]:
    return [kind for _, kind in seals.faults()]


def listed() -> list[str]:
    return (home() / seals.LIST_FILE).read_text(encoding="utf-8").splitlines()


@pytest.fixture
def sealed(own_store: str, save: Save) -> list[Seal]:
    """Three files, sealed on three days."""
    made = []
    for day, file in enumerate(("A1", "A2", "A3")):
        save(file, CHURCH)
        made.append(seals.seal(DAY.replace(day=20 + day)))
    return [one for one in made if one is not None]


def test_a_seal_holds_the_heads_that_moved_since_the_one_before(
    sealed: list[Seal], save: Save
) -> None:
    (note,) = save("A1", Note(id="n", text="moved"))
    made = seals.seal()
    assert made is not None
    assert seals.heads_of(made) == [seals.SealedHead("A1", 2, note.digest)]
    assert [seals.heads_of(one)[0].file for one in sealed] == ["A1", "A2", "A3"]
    assert made.previous == sealed[-1].digest


def test_nothing_is_sealed_when_nothing_moved(sealed: list[Seal]) -> None:
    assert seals.seal() is None
    assert Seal.objects.count() == len(sealed)


def test_an_empty_store_has_nothing_to_seal(own_store: str) -> None:
    assert seals.seal() is None
    assert not (home() / seals.LIST_FILE).exists()


def test_seals_are_genuine(sealed: list[Seal]) -> None:
    assert kinds() == []
    for one in sealed:  # by the cryptography library itself, which tests RFC 8032's vectors
        key = Ed25519PublicKey.from_public_bytes(bytes.fromhex(one.public_key))
        key.verify(bytes.fromhex(one.signature), bytes.fromhex(one.digest))
        with pytest.raises(InvalidSignature):
            key.verify(bytes.fromhex(one.signature), b"another text")


def test_the_list_outside_the_database_names_every_seal(sealed: list[Seal]) -> None:
    expected = [f"{one.number} {one.sealed_at.isoformat()} {one.digest}" for one in sealed]
    assert listed() == expected


def test_a_list_that_lacks_seals_is_completed_with_the_next_one(
    sealed: list[Seal], save: Save
) -> None:
    """The machine may stop between the seal and the list."""
    (home() / seals.LIST_FILE).write_text(listed()[0] + "\n", encoding="utf-8")
    assert kinds() == []
    save("A1", Note(id="n", text="moved"))
    seals.seal()
    assert [line.split()[0] for line in listed()] == ["1", "2", "3", "4"]


def test_a_seal_that_is_rolled_back_is_not_listed(own_store: str, save: Save) -> None:
    save("A1", CHURCH)
    with transaction.atomic():
        seals.seal()
        transaction.set_rollback(True)
    assert not (home() / seals.LIST_FILE).exists()
    assert verify().is_sound


def without_guards(statement: str) -> None:
    guards.drop()
    with connection.cursor() as cursor:
        cursor.execute(statement)
    guards.create()


@pytest.mark.parametrize(
    ("statement", "expected"),
    [
        ("UPDATE store_seal SET heads = '[]' WHERE number = 2", ["digest"]),
        ("UPDATE store_seal SET sealed_at = '2020-01-01' WHERE number = 2", ["digest"]),
        ("UPDATE store_seal SET signature = 'xyz' WHERE number = 2", ["signature"]),
        ("UPDATE store_seal SET previous = 'x' WHERE number = 2", ["previous", "digest"]),
        ("DELETE FROM store_seal WHERE number = 3", ["missing"]),
        ("DELETE FROM store_seal WHERE number = 2", ["number", "previous", "missing"]),
        ("DELETE FROM store_seal", ["missing"] * 3),
    ],
)
@pytest.mark.usefixtures("sealed")
def test_a_seal_changed_or_removed_by_hand_is_found(statement: str, expected: list[str]) -> None:
    without_guards(statement)
    assert kinds() == expected
    assert {fault.area for fault in verify().faults} == {"seal"}


def test_a_tail_cut_together_with_its_seal_is_found_through_the_list(
    sealed: list[Seal],
) -> None:
    without_guards("DELETE FROM store_seal WHERE number = 3")
    without_guards("DELETE FROM store_ledgerentry WHERE file = 'A3'")
    ids = {fault.words.id for fault in verify().faults}
    assert ids == {"store-seal-missing", "store-index-differs"}


def test_seals_forged_with_another_key_are_found(sealed: list[Seal], save: Save) -> None:
    """Whoever has the database but not the key cannot write the seals anew."""
    own = (home() / seal_keys.KEY_FILE).read_bytes()
    (home() / seal_keys.KEY_FILE).unlink()
    (home() / seals.LIST_FILE).rename(home() / "kept")
    without_guards("DELETE FROM store_seal")
    without_guards("DELETE FROM store_ledgerentry WHERE file = 'A3'")
    seals.seal()
    assert kinds() == []  # consistent in itself
    (home() / seal_keys.KEY_FILE).write_bytes(own)
    assert kinds() == ["key"]
    (home() / "kept").rename(home() / seals.LIST_FILE)
    assert kinds() == ["key", "missing", "missing", "missing"]


def test_a_copy_without_the_key_still_verifies_by_the_public_one(sealed: list[Seal]) -> None:
    (home() / seal_keys.KEY_FILE).unlink()
    assert kinds() == []
    assert not (home() / seal_keys.KEY_FILE).exists()


def test_the_key_is_its_owners_alone_and_stays(own_store: str) -> None:
    path = home() / seal_keys.KEY_FILE
    assert path.stat().st_mode & 0o777 == 0o600
    assert path.parent.stat().st_mode & 0o777 == 0o700
    before = path.read_bytes()
    assert seal_keys.ensure() == path
    assert path.read_bytes() == before
    assert sorted(p.name for p in path.parent.glob("seal*")) == ["seal.key"]


def test_the_key_that_somebody_else_made_meanwhile_counts(
    own_store: str, monkeypatch: pytest.MonkeyPatch
) -> None:
    path = home() / seal_keys.KEY_FILE
    kept = path.read_bytes()
    monkeypatch.setattr(Path, "exists", lambda _: False)
    seal_keys.ensure()
    assert path.read_bytes() == kept


def test_the_key_is_not_in_the_database(sealed: list[Seal]) -> None:
    if connection.vendor != "sqlite":
        pytest.skip("the embedded database is a file that can be looked into")
    secret = seal_keys.in_use().private_bytes_raw()
    public = bytes.fromhex(sealed[0].public_key)
    connection.close()
    held = (home() / "quarterday.sqlite3").read_bytes()
    assert public.hex().encode() in held  # so a key would be seen
    assert secret not in held
    assert secret.hex().encode() not in held
