"""From the answers of a returned form to changes that a person takes or refuses.

An answer counts as given when it is not what the form was printed with. What cannot be read in one
way only is asked, never guessed.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, replace
from datetime import date

from quarterday.core.file.records import Answers, Decision, Operations, PaymentChoice, Terms
from quarterday.core.words import Words, words
from quarterday.intake.assemble import BadField
from quarterday.intake.cells import BadCell, Value
from quarterday.intake.forms.answers import READERS, AtHand
from quarterday.intake.forms.edits import COLUMNS, built
from quarterday.intake.forms.mapping import CONFIRMED, Target, target
from quarterday.intake.forms.newcomers import NEW, new_records
from quarterday.intake.forms.proposal import Asked, Confirmed, Context, Proposal, read_one

LONGEST = 60  # characters of a foreign field's name that are shown
_DAY = COLUMNS[Operations.kind, "confirmed_on"]


@dataclass(frozen=True, slots=True)
class Proposed:
    """What a form says: the changes it proposes, what has to be said, and who filled it in.

    ``filled`` are the forms in which anything was answered.
    """

    proposals: tuple[Proposal, ...]
    notes: tuple[Words, ...]
    confirmed: Mapping[str, Confirmed]
    filled: tuple[str, ...]


def propose(context: Context) -> Proposed:
    """Return what the answers of a returned form would change."""
    confirmed, unclear = _confirmed(context)
    found: list[Proposal] = []
    for asked in context.asked.values():
        found += _of(context, asked, confirmed)
    found += new_records(context, confirmed)
    proposals = tuple(_checked(context, one) for one in found)
    filled = {one.form for one in proposals} | {f for f, who in confirmed.items() if who.by}
    notes = (*_notes(context), *unclear)
    return Proposed(proposals, notes, confirmed, tuple(sorted(filled)))


def _notes(context: Context) -> Iterator[Words]:
    missing = [name for name in context.asked if name not in context.answers]
    extra = [name for name in context.answers if name not in context.asked]
    if context.is_lapsed:
        yield words("returns-lapsed", renewal=context.stamp.renewal)
    if missing:
        first = context.asked[missing[0]].label
        yield words("returns-missing", n=len(missing), first=first)
    if extra:
        yield words("returns-unknown", n=len(extra), names=tuple(map(_shown, extra[:3])))


def _shown(name: str) -> str:
    """Return a foreign field's name so that it can stand in a sentence and on a terminal."""
    return "".join(c if c.isprintable() else "\N{REPLACEMENT CHARACTER}" for c in name[:LONGEST])


def _confirmed(context: Context) -> tuple[dict[str, Confirmed], list[Words]]:
    found: dict[str, Confirmed] = {}
    unclear: list[Words] = []
    for asked in context.asked.values():
        if len(asked.parts) != 3 or asked.parts[1:] != (CONFIRMED, "by"):  # noqa: PLR2004
            continue
        form = asked.parts[0]
        by, role, on = (context.text(f"{form}.{CONFIRMED}.{n}") for n in ("by", "role", "on"))
        day = _day(context, on)
        if isinstance(day, BadCell):
            unclear.append(words("returns-date-unclear", said=on[:60], what=day.what))
        known = day if isinstance(day, date) else None
        found[form] = Confirmed(" ".join(by.split())[:300], " ".join(role.split())[:300], known)
    return found, unclear


def _day(context: Context, text: str) -> Value | BadCell:
    value, _ = read_one(Operations.kind, _DAY, text, context.stamp.language)
    return value


def _of(context: Context, asked: Asked, by_form: Mapping[str, Confirmed]) -> Iterator[Proposal]:
    aim, given = target(asked.parts), context.answers.get(asked.name)
    if aim is None or given is None or aim.key.startswith(NEW):
        return
    blank = Proposal(asked.name, asked.form, asked.label, "", aim.key, aim.field, None, None, None)
    if given.text is None:
        stands = _standing(context, aim, blank)
        yield replace(stands, status="asks", why=given.why, is_unread=True)
    elif not _same(given.text, asked.printed):
        who = by_form.get(asked.form, Confirmed())
        read = AtHand(context, asked, aim, who, blank)
        yield from READERS[aim.way](read, asked.id_of(given.text))


def _standing(context: Context, aim: Target, blank: Proposal) -> Proposal:
    """Return a proposal that says nothing new of a field, and what stands in it."""
    if aim.record is None or (aim.record.kind, aim.field) not in COLUMNS:
        return blank
    then, now = (file.get(aim.record, aim.key) for file in (context.then, context.now))
    was, stands = (getattr(record, aim.field, None) for record in (then, now))
    return replace(blank, kind=aim.record.kind, was=was, now=stands)


def _same(one: str, other: str) -> bool:
    return one.split() == other.split()


_OF_RENEWAL = (Terms.kind, Decision.kind, PaymentChoice.kind, Answers.kind)


def _checked(context: Context, made: Proposal) -> Proposal:
    """Ask where the facts moved since the form was printed, or where the change cannot be made."""
    if made.edit is None:
        return replace(made, status="asks")
    try:
        built(context.now, [made.edit])
    except BadField as bad:
        why = words("returns-unclear", what=bad.cell.what, remedy=bad.cell.remedy)
        return replace(made, status="asks", why=why, edit=None)
    if context.is_lapsed:
        why = words("returns-lapsed-one", renewal=context.stamp.renewal)
        edit = None if made.kind in _OF_RENEWAL else made.edit
        return replace(made, status="asks", why=why, edit=edit)
    if made.was != made.now and made.status == "change":
        return replace(made, status="clash", why=words("returns-changed-since"))
    return made
