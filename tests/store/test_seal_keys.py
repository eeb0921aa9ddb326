"""A new key for the seals: the old one signs for it, and what it sealed stays proven."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest
from django.conf import settings

from quarterday.core.file.entry import Entry
from quarterday.core.file.records import Note, Organisation
from quarterday.store import guards, keys, seal_keys, seals
from quarterday.store.models import Seal
from quarterday.store.verify import verify

Save = Callable[..., tuple[Entry, ...]]
CHURCH = Organisation(name="Pinebrook Chapel", province="ON")


def home(name: str) -> Path:
    found: Path = settings.QUARTERDAY_HOME
    return found / name


@pytest.fixture
def moved(own_store: str, save: Save) -> Callable[[str], Seal]:
    """Return what makes a file move and seals it."""
    save("A1", CHURCH)

    def seal(note: str) -> Seal:
        save("A1", Note(id=note, text=note))
        made = seals.seal()
        assert made is not None
        return made

    return seal


def wrong() -> list[tuple[int, str]]:
    return [*seals.faults()]


def test_what_the_old_key_sealed_stays_sound_and_the_new_one_goes_on(
    moved: Callable[[str], Seal],
) -> None:
    first = moved("one")
    before = home(seal_keys.KEY_FILE).read_bytes()
    made = seals.change_key()
    second = moved("two")
    assert (made.old, made.new, made.last) == (first.public_key, second.public_key, 1)
    assert first.public_key != second.public_key
    assert verify().faults == []
    assert home(seal_keys.KEY_FILE).read_bytes() != before
    assert not home(seal_keys.NEXT_FILE).exists()


def test_a_key_can_be_changed_again_and_again_and_before_any_seal(
    moved: Callable[[str], Seal],
) -> None:
    seals.change_key()
    for note in ("one", "two", "three"):
        moved(note)
        seals.change_key()
        seals.change_key()
    assert wrong() == []
    assert len(seal_keys.handovers()) == 7
    assert {one.public_key for one in Seal.objects.all()} < {h.new for h in seal_keys.handovers()}


def test_the_old_key_may_not_seal_after_it_gave_way(moved: Callable[[str], Seal]) -> None:
    """Whoever stole it can make nothing that counts."""
    moved("one")
    stolen = home(seal_keys.KEY_FILE).read_bytes()
    seals.change_key()
    own = home(seal_keys.KEY_FILE).read_bytes()
    home(seal_keys.KEY_FILE).write_bytes(stolen)
    moved("two")
    home(seal_keys.KEY_FILE).write_bytes(own)
    assert wrong() == [(2, "key")]


def test_the_new_key_may_not_stand_under_what_was_sealed_before_it(
    moved: Callable[[str], Seal],
) -> None:
    moved("one")
    seals.change_key()
    guards.drop()
    Seal.objects.filter(number=1).update(public_key=seal_keys.public(seal_keys.in_use()))
    assert (1, "key") in wrong()


def test_a_change_of_keys_that_nobody_signed_is_no_change(moved: Callable[[str], Seal]) -> None:
    """With the list alone, a key cannot be slipped in: the old one must have signed for it."""
    moved("one")
    seals.change_key()
    moved("two")
    path = home(seal_keys.LIST_FILE)
    old, last, new, signature = path.read_text().split()
    path.write_text(f"{old} {last} {new} {signature[:-1]}{'0' if signature[-1] != '0' else '1'}\n")
    assert wrong() == [(1, "key")]
    path.write_text("nonsense\n")
    assert wrong() == [(1, "key")]


@pytest.mark.parametrize("done", ["next key made", "word given"])
def test_a_crash_between_leaves_a_key_that_holds(
    done: str, moved: Callable[[str], Seal], monkeypatch: pytest.MonkeyPatch
) -> None:
    moved("one")
    if done == "next key made":
        keys.ensure(home(seal_keys.NEXT_FILE), seal_keys._new)
    else:
        monkeypatch.setattr(seal_keys, "_finish", lambda: None)
        seals.change_key()
        monkeypatch.undo()
    moved("two")
    assert wrong() == []
    seals.change_key()
    moved("three")
    assert wrong() == []


def test_the_keys_are_their_owners_alone(moved: Callable[[str], Seal]) -> None:
    seals.change_key()
    assert home(seal_keys.KEY_FILE).stat().st_mode & 0o777 == 0o600
