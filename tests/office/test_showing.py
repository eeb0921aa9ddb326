"""What a file shows is made once while nothing is added to it."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date

from quarterday.catalogue.load import reference
from quarterday.core.file.records import Note, Organisation
from quarterday.office.showing import shown_on
from quarterday.store import ledger

DAY = date(2026, 11, 25)
HALL = Organisation(name="Shore Road Hall", province="NS")


def test_the_same_file_is_made_up_once(db: None, save: Callable[..., object]) -> None:
    save("A1", HALL)
    first = shown_on(ledger.load("A1"), reference(), DAY, "en")
    assert shown_on(ledger.load("A1"), reference(), DAY, "en") is first


def test_another_day_or_language_is_another_view(db: None, save: Callable[..., object]) -> None:
    save("A1", HALL)
    first = shown_on(ledger.load("A1"), reference(), DAY, "en")
    assert shown_on(ledger.load("A1"), reference(), DAY, "fr").language == "fr"
    assert shown_on(ledger.load("A1"), reference(), date(2026, 11, 26), "en").as_of > first.as_of


def test_an_entry_more_is_seen_at_once(db: None, save: Callable[..., object]) -> None:
    save("A1", HALL)
    first = shown_on(ledger.load("A1"), reference(), DAY, "en")
    save("A1", Note(id="n1", text="They called."))
    second = shown_on(ledger.load("A1"), reference(), DAY, "en")
    assert (first.file.all(Note), len(second.file.all(Note))) == ((), 1)


def test_two_stores_with_the_same_numbers_are_not_confused(
    db: None, save: Callable[..., object]
) -> None:
    """The digests of the entries tell them apart, not the number of the newest."""
    from django.db import transaction

    names = []
    for name in ("Shore Road Hall", "Ferry Road Hall"):
        mark = transaction.savepoint()
        save("A1", HALL.model_copy(update={"name": name}))
        shown = shown_on(ledger.load("A1"), reference(), DAY, "en")
        names.append(shown.file.organisation.name)
        transaction.savepoint_rollback(mark)
    assert names == ["Shore Road Hall", "Ferry Road Hall"]
