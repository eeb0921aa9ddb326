"""Checking the policy that was issued against what was agreed."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date

from quarterday.catalogue.speech import Speech
from quarterday.core.file.entry import Draft, Entry, Origin
from quarterday.core.file.fold import File
from quarterday.core.file.records import Bound, PolicyChecked, Terms
from quarterday.core.review.case import Case
from quarterday.core.review.rules.terms.agreed import agreed_terms
from quarterday.core.terms.compare import compare
from quarterday.core.terms.difference import Difference
from quarterday.core.words import words
from quarterday.office.trouble import Moved, Trouble, made
from quarterday.store import ledger


@dataclass(frozen=True, slots=True)
class Check:
    """An issued policy beside what was agreed: bound by the insurer, else offered.

    ``checked`` is the check on record that covers the policy as it stands.
    """

    issued: Terms
    agreed: Terms
    bound: Bound | None
    differences: tuple[Difference, ...]
    checked: PolicyChecked | None

    @property
    def worse(self) -> tuple[Difference, ...]:
        """Where the policy gives less than was agreed."""
        return tuple(d for d in self.differences if d.direction == "worse")


def plain(found: Check, case: Case, speech: Speech) -> list[dict[str, str]]:
    """Return where the issued policy differs from what was agreed, as JSON can hold it."""
    said = [(d, d.sentence(case.building_name(d.location))) for d in found.differences]
    return [{"direction": d.direction, "sentence": speech.say(told)} for d, told in said]


def newest_issued(file: File) -> Terms | None:
    """Return the terms issued for the latest period."""
    issued = (terms for terms in file.all(Terms) if terms.stage == "issued")
    return max(issued, key=lambda terms: terms.start, default=None)


def check_of(file: File) -> Check:
    """Return the newest issued policy beside what was agreed.

    Trouble while no policy has come, or when nothing of its period was offered or bound.
    """
    issued = newest_issued(file)
    wanted = agreed_terms(file, issued.start) if issued else None
    if issued is None or wanted is None:
        raise Trouble(words("acts-nothing-to-check", file=file.id))
    on_record = file.get(PolicyChecked, str(issued.start))
    covers = on_record is not None and on_record.seq >= file.entry_of(issued).seq
    return Check(
        issued, wanted, file.get(Bound, str(issued.start)), compare(wanted, issued),
        on_record if covers else None,
    )  # fmt: skip


def check(
    file: File, *, on: date, today: date, said: str = "", by: str, seen: int | None
) -> Entry:  # fmt: skip
    """Record that somebody compared the issued policy, as it stands, with what was agreed.

    Where it gives less, ``said`` must tell what was done about it. Moved when the file changed
    after entry ``seen``: what was compared is not what stands.
    """
    found = check_of(file)
    if on > today:
        raise Trouble(words("acts-future", day=on))
    if found.worse and not said.strip():
        raise Trouble(words("acts-check-words", n=len(found.worse)))
    if seen is not None and seen != file.seq:
        raise Moved(words("acts-check-moved", file=file.id))
    record = made(
        PolicyChecked, renewal=found.issued.start, checked_on=on, by=by[:300],
        differences=len(found.worse), done_about=said.strip() or None, seq=file.seq,
    )  # fmt: skip
    draft = Draft("check", record.kind, record.key, record.body(), Origin(way="person", person=by))
    return ledger.append(file.id, [draft], by=by, expected_seq=file.seq)[0]
