"""Answers of a returned form, taken or refused: the document kept, the act recorded."""

from __future__ import annotations

from collections.abc import Collection, Iterable, Iterator, Mapping
from dataclasses import dataclass

from django.db import transaction

from quarterday.core.file.entry import Draft, Entry, Origin
from quarterday.core.file.records import FormReturned
from quarterday.core.words import words
from quarterday.intake.assemble import BadField
from quarterday.intake.forms.edits import ACT, drafts
from quarterday.intake.forms.proposal import Confirmed, Proposal
from quarterday.office.returning import Reading
from quarterday.office.trouble import Trouble
from quarterday.store import ledger, originals, seals


@dataclass(frozen=True, slots=True)
class Kept:
    """What accepting wrote: the entries, and the names of what was taken and refused."""

    entries: tuple[Entry, ...]
    taken: tuple[str, ...]
    refused: tuple[str, ...]


def accept(
    reading: Reading,
    *,
    by: str,
    every: bool = True,
    take: Collection[str] = (),
    refuse: Collection[str] = (),
) -> Kept:
    """Take answers into the file, keep the document, and record that the form came back.

    ``every`` takes all that is clear; ``take`` names more, which were asked; ``refuse`` names what
    is left out and stays refused. Conflict when a record was changed since the reading. What was
    taken before is not written again.
    """
    _known(reading, (*take, *refuse))
    refused = tuple(p.name for p in reading.proposals if _is_named(p, refuse))
    chosen = [p for p in reading.proposals if _is_taken(p, every, take) and p.name not in refused]
    names = {p.name for p in chosen}
    chosen = [p for p in chosen if not p.needs or p.needs in names]
    try:
        new = list(_drafts(reading, chosen))
    except BadField as bad:
        raise Trouble(bad.cell.what) from bad
    taken = tuple(p.name for p in chosen)
    with transaction.atomic():
        document = _keep(reading)
        new += _returned(reading, document, taken, refused)
        entries = ledger.append(reading.file, new, by=by, expected_seq=reading.seen) if new else ()
    if entries:
        seals.seal()
    return Kept(entries, taken, refused)


def _is_named(proposal: Proposal, names: Collection[str]) -> bool:
    return any(proposal.name == n or proposal.name.startswith(f"{n}.") for n in names)


def _is_taken(proposal: Proposal, every: bool, take: Collection[str]) -> bool:
    clear = every and proposal.status == "change"
    return proposal.edit is not None and (clear or _is_named(proposal, take))


def _known(reading: Reading, names: Iterable[str]) -> None:
    for name in names:
        if not any(_is_named(p, [name]) for p in reading.proposals):
            raise Trouble(words("returns-no-proposal", name=name[:80]))
    stuck = [p for p in reading.proposals if p.name in names and p.edit is None]
    if stuck:
        why = stuck[0].why or words("returns-nothing")
        raise Trouble(words("returns-cannot-take", label=stuck[0].label, why=why))


def _origin(reading: Reading) -> Origin:
    looked = reading.looked
    return Origin(
        way="form", document=looked.document if looked else None,
        name=looked.name if looked else "", person=reading.person,
    )  # fmt: skip


def _drafts(reading: Reading, chosen: Iterable[Proposal]) -> Iterator[Draft]:
    taken = [(p.name, p.edit) for p in chosen if p.edit is not None]
    yield from drafts(ledger.load(reading.file), taken, _origin(reading))


def _keep(reading: Reading) -> str | None:
    looked = reading.looked
    return originals.put(looked.data, looked.name[:200]) if looked else None


def _returned(
    reading: Reading, document: str | None, taken: tuple[str, ...], refused: tuple[str, ...]
) -> Iterator[Draft]:
    """Yield the record that each form which was filled in came back, unless it says so already."""
    if document is None:
        return
    form_of = {p.name: p.form for p in reading.proposals}
    for form in reading.proposed.filled:
        who = reading.proposed.confirmed.get(form, Confirmed())
        before = reading.kept.get(form)
        record = FormReturned(
            renewal=reading.stamp.renewal, form=form, document=document,
            returned_on=before.returned_on if before else reading.day,
            by=who.by or None, role=who.role or None, signed_on=who.on,
            taken=_joined(before.taken if before else (), taken, form_of, form),
            refused=tuple(
                name for name in _joined(before.refused if before else (), refused, form_of, form)
                if name not in taken
            ),
        )  # fmt: skip
        if record != before:
            yield Draft(ACT, record.kind, record.key, record.body(), _origin(reading))


def _joined(
    before: tuple[str, ...], names: tuple[str, ...], form_of: Mapping[str, str], form: str
) -> tuple[str, ...]:
    own = (name for name in names if form_of[name] == form)
    return tuple(dict.fromkeys((*before, *own)))
