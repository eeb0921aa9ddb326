"""Binding the coming term: who at the insurer confirmed it, and on which terms."""

from __future__ import annotations

from collections.abc import Collection
from dataclasses import dataclass
from datetime import date
from typing import Any

from quarterday.core.file.entry import Draft, Entry, Origin
from quarterday.core.file.fold import File
from quarterday.core.file.records import Bound, Terms
from quarterday.core.terms.agreed import Wish, agreed, wishes
from quarterday.core.words import words
from quarterday.office.plain import value
from quarterday.office.trouble import Trouble, made
from quarterday.store import ledger


@dataclass(frozen=True, slots=True)
class Binder:
    """What may be bound: the offer, and every change beyond it that the insurer may accept."""

    offered: Terms
    wishes: tuple[Wish, ...]

    def agreed(self, accepted: Collection[str]) -> Terms:
        """Return the offer with the accepted changes; Trouble when one of them is not there."""
        strange = [id for id in accepted if id not in {wish.id for wish in self.wishes}]
        if strange:
            raise Trouble(words("acts-no-wish", wish=strange[0][:80]))
        return agreed(self.offered, (wish for wish in self.wishes if wish.id in accepted))


def plain(found: Binder) -> list[dict[str, Any]]:
    """Return the changes that may be agreed, as JSON can hold them."""
    money = found.offered.money
    return [
        {"change": w.id, "limit": value(money(w.line.limit)) if w.line.limit else None,
         "price": value(money(w.price)) if w.price is not None else None, "taken": w.is_taken}
        for w in found.wishes
    ]  # fmt: skip


def binder(file: File) -> Binder:
    """Return what may be bound for the coming term; Trouble without an offer."""
    renewal = file.renewal
    offered = file.terms(renewal, "offered") if renewal else None
    if offered is None:
        raise Trouble(words("acts-no-offer", file=file.id))
    return Binder(offered, wishes(file, offered))


def bind(  # noqa: PLR0913 - a binder has these parts
    file: File,
    *,
    insurer_person: str,
    on: date,
    today: date,
    accepted: Collection[str] = (),
    number: str = "",
    said: str = "",
    by: str,
    seen: int | None,
) -> Entry:
    """Record that the insurer bound the coming term, on the offer with ``accepted`` changes.

    Trouble without an offer, for a day to come, or without the name of who confirmed it. Conflict
    when somebody else recorded a binder after entry ``seen``.
    """
    found = binder(file)
    if on > today:
        raise Trouble(words("acts-future", day=on))
    if not insurer_person.strip():
        raise Trouble(words("acts-empty", what=words("desk-bind-by")))
    record = made(
        Bound, renewal=found.offered.start, bound_on=on, by=insurer_person.strip(),
        binder=number.strip() or None, words=said.strip() or None,
        accepted=tuple(sorted(accepted)), agreed=found.agreed(accepted),
    )  # fmt: skip
    standing = file.held.get((record.kind, record.key))
    if standing is not None and standing.record == record:
        return standing.entry  # the same form, sent twice
    draft = Draft("bind", record.kind, record.key, record.body(), Origin(way="person", person=by))
    return ledger.append(file.id, [draft], by=by, expected_seq=seen)[0]
