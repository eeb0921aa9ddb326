"""Forms that come home: read, compared with the file, taken or refused, and kept."""

from __future__ import annotations

from collections.abc import Collection, Iterable, Iterator, Mapping
from dataclasses import dataclass, field, replace
from datetime import date

from django.db import transaction

from quarterday.catalogue.speech import Speech
from quarterday.core.file.entry import Draft, Entry, Origin
from quarterday.core.file.fold import File, fold
from quarterday.core.file.records import FormReturned, PackageBuilt
from quarterday.core.reference import Reference
from quarterday.core.review.case import Case
from quarterday.core.review.review import review, review_of
from quarterday.core.words import Term, Words, words
from quarterday.intake.assemble import BadField
from quarterday.intake.forms.edits import ACT, drafts
from quarterday.intake.forms.peek import Looked, look
from quarterday.intake.forms.propose import (
    Asked,
    Confirmed,
    Context,
    Proposal,
    Proposed,
    propose,
)
from quarterday.intake.forms.recognise import (
    Flat,
    Given,
    Returned,
    Stamp,
    Unstamped,
    recognise,
)
from quarterday.office.showing import house
from quarterday.office.trouble import Trouble
from quarterday.papers.fields import field_parts
from quarterday.papers.package import PAPERS
from quarterday.papers.parts import FORMS
from quarterday.papers.setting import Setting
from quarterday.store import ledger, originals, seals
from quarterday.store.refusals import UnknownFile

_LANGUAGES = ("en", "fr")


@dataclass(frozen=True, slots=True)
class Reading:
    """A returned form beside its file: what it proposes, and what has to be said of it.

    ``seen`` is the file's newest entry at the time; ``person`` who typed it in, when somebody did.
    """

    looked: Looked | None
    stamp: Stamp
    proposed: Proposed
    notes: tuple[Words, ...]
    seen: int
    day: date
    person: str = ""
    answers: Mapping[str, Given] = field(default_factory=dict, repr=False)
    kept: Mapping[str, FormReturned] = field(default_factory=dict, repr=False)

    @property
    def file(self) -> str:
        """The id of the file that the form is about."""
        return self.stamp.file

    @property
    def proposals(self) -> tuple[Proposal, ...]:
        """The proposals, in the order of the form."""
        return self.proposed.proposals


@dataclass(frozen=True, slots=True)
class Kept:
    """What accepting wrote: the entries, and the names of what was taken and refused."""

    entries: tuple[Entry, ...]
    taken: tuple[str, ...]
    refused: tuple[str, ...]


def read(
    data: bytes, name: str, reference: Reference, day: date, *, expected: str | None = None
) -> tuple[Reading, ...] | Flat:
    """Return what the forms in a returned PDF propose; Flat when it must be entered by hand.

    ``expected`` is the file it should be about. Unreadable, or Trouble, in a sentence when it is no
    form of ours, of another organisation, or of a package that was never built here.
    """
    looked = look(data, name)
    found = recognise(looked, titles(reference), ledger.files())
    if isinstance(found, Flat):
        return _flat(found, expected)
    if isinstance(found, Unstamped):
        found = (_by_its_feet(found, reference),)
    return tuple(_reading(one, reference, day, expected) for one in found)


def _flat(flat: Flat, expected: str | None) -> Flat:
    """Return a paper to be read by eye; Trouble where its codes are of another organisation."""
    name, files = flat.looked.name, ledger.files()
    for id in dict.fromkeys(code.file for code in flat.codes.values()):
        if id not in files:
            raise Trouble(words("returns-no-file", name=name, file=id))
        if expected is not None and id != expected:
            raise Trouble(words("returns-other-file", name=name, file=id, expected=expected))
    return flat


def flat_notes(flat: Flat) -> Iterator[Words]:
    """Yield what the printed codes say: which form of which package, on which pages."""
    for form in dict.fromkeys(code.form for code in flat.codes.values()):
        on = {page: code for page, code in flat.codes.items() if code.form == form}
        code = next(iter(on.values()))
        pages = tuple(str(page) for page in on)
        yield words("returns-flat-code", form=Term("paper", form), file=code.file, pages=pages,
                    n=len(pages), renewal=code.renewal, version=str(code.version))  # fmt: skip
    stamp = flat.stamp
    if stamp and ledger.load(stamp.file).renewal != stamp.renewal:
        yield words("returns-lapsed", renewal=stamp.renewal)
    without = [str(n) for n in range(1, flat.looked.pages + 1) if n not in flat.codes]
    if flat.codes and without:
        yield words("returns-flat-no-code", pages=tuple(without), n=len(without))


def titles(reference: Reference) -> Mapping[str, tuple[str, ...]]:
    """Return the printed names of each form in both languages."""
    speeches = [Speech(reference, language) for language in _LANGUAGES]
    return {id: tuple(_printed(s, id) for s in speeches) for id in FORMS}


def _printed(speech: Speech, form: str) -> str:
    return speech.say(words("paper-name", paper=Term("paper", form)))


def _reading(
    returned: Returned, reference: Reference, day: date, expected: str | None
) -> Reading:  # fmt: skip
    stamp = returned.stamp
    now = _file_of(returned, expected)
    built = now.get(PackageBuilt, f"{stamp.renewal}/{stamp.language}/{stamp.version}")
    if built is None or stamp.seq > now.seq:
        raise Trouble(words("returns-not-built", name=returned.looked.name, file=stamp.file))
    then = _as_built(stamp)
    asked = questions(then, reference, stamp, built.built_on, returned.forms)
    context = Context(stamp, returned.answers, asked, then, now, reference, day)
    return _beside(context, returned.looked, _marks(returned.looked))


def _by_its_feet(found: Unstamped, reference: Reference) -> Returned:
    """Return pages that lost their mark as forms of the package that the feet of its pages name."""
    text = " ".join(found.looked.text.split())
    of = [(id, p) for id in found.files for p in ledger.load(id).all(PackageBuilt)]
    named = [(id, p) for id, p in of if _foot(p, reference) in text]
    if len(named) != 1:
        raise Trouble(words("returns-no-feet", name=found.looked.name))
    id, package = named[0]
    told = {"file": id, "renewal": package.renewal, "language": package.language,
            "version": package.version, "seq": package.seq}  # fmt: skip
    stamp = Stamp.model_validate(told)
    built_on = package.built_on
    asked = questions(_as_built(stamp), reference, stamp, built_on, FORMS, enclosed=True)
    forms = (asked[name].form for name in found.answers if name in asked)
    return found.stamped(stamp, tuple(dict.fromkeys(forms)))


def _as_built(stamp: Stamp) -> File:
    """Return the file as it stood when the package was built."""
    return fold(stamp.file, (e for e in ledger.entries(stamp.file) if e.seq <= stamp.seq))


def _foot(package: PackageBuilt, reference: Reference) -> str:
    speech = Speech(reference, package.language)
    said = words(
        "package-built", language=Term("language", package.language),
        built_on=package.built_on, version=str(package.version),
    )  # fmt: skip
    return " ".join(speech.say(said).split())


def _file_of(returned: Returned, expected: str | None) -> File:
    name, id = returned.looked.name, returned.stamp.file
    if expected is not None and expected != id:
        raise Trouble(words("returns-other-file", name=name, file=id, expected=expected))
    try:
        return ledger.load(id)
    except UnknownFile:
        raise Trouble(words("returns-no-file", name=name, file=id)) from None


def _marks(looked: Looked) -> Iterator[Words]:
    for mark in looked.marks:
        yield words(f"returns-holds-{mark}", name=looked.name)


def questions(
    file: File, reference: Reference, stamp: Stamp, as_of: date, forms: Iterable[str],
    *, enclosed: bool = False,
) -> Mapping[str, Asked]:  # fmt: skip
    """Return every question that ``forms`` put, by the name of its field.

    ``enclosed`` leaves out the forms that the package of that day does not have.
    """
    case = Case(file, reference, as_of)
    done = review_of(case)
    setting = Setting(done, case, house(), stamp.language, stamp.version, as_of, None)
    papers = {paper.id: paper for paper in PAPERS}
    found: dict[str, Asked] = {}
    for form in forms:
        if form not in papers or (enclosed and papers[form].reason(setting) is None):
            continue
        before = len(setting.fields.described)
        papers[form].data(setting)
        for one in setting.fields.described[before:]:
            parts = field_parts(one.name)
            label = one.tip.replace("?:", "?").replace("?\u00a0:", "?")
            found[one.name] = Asked(form, one.name, parts, label, one.value, one.options)
    return found


def _beside(context: Context, looked: Looked | None, notes: Iterable[Words]) -> Reading:
    proposed = propose(context)
    document = looked.document if looked else ""
    kept = {
        form.form: form for form in context.now.all(FormReturned)
        if form.document == document
    }  # fmt: skip
    refused = {name for form in kept.values() for name in form.refused}
    known = [replace(p, status="refused") if p.name in refused else p for p in proposed.proposals]
    again = [words("returns-again", day=form.returned_on) for form in kept.values()][:1]
    return Reading(
        looked, context.stamp, replace(proposed, proposals=tuple(known)),
        (*notes, *again, *proposed.notes), context.now.seq, context.day,
        answers=context.answers, kept=kept,
    )  # fmt: skip


def enter(  # noqa: PLR0913 - what is typed in has these parts
    file: str,
    form: str,
    typed: Mapping[str, str],
    reference: Reference,
    day: date,
    *,
    language: str,
    person: str,
    scan: tuple[bytes, str] | None = None,
) -> Reading:
    """Return what a form proposes that somebody typed in from paper; ``scan`` is its picture.

    What was not typed counts as left as it is. Trouble when an answer is to no question of it.
    """
    now = ledger.load(file)
    stamp, asked = sheet(now, form, reference, day, language)
    unknown = [name for name in typed if name not in asked]
    if unknown:
        raise Trouble(words("returns-no-question", name=unknown[0][:80], form=Term("paper", form)))
    printed = {name: Given(one.printed) for name, one in asked.items()}
    said = {name: Given(text.strip()) for name, text in typed.items()}
    context = Context(stamp, printed | said, asked, now, now, reference, day)
    looked = look(*scan) if scan else None
    return replace(_beside(context, looked, ()), person=person)


def sheet(
    file: File, form: str, reference: Reference, day: date, language: str
) -> tuple[Stamp, Mapping[str, Asked]]:
    """Return the questions of one form as it would be printed today, to type its answers beside.

    Trouble when there is no such form, or nothing in it to ask.
    """
    if form not in FORMS:
        raise Trouble(words("returns-no-form", form=form[:80], forms=tuple(FORMS)))
    done = review(file, reference, day)
    stamp = Stamp.model_validate(
        {"file": file.id, "renewal": done.renewal, "language": language, "version": 1,
         "seq": file.seq}
    )  # fmt: skip
    return stamp, questions(file, reference, stamp, day, [form])


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
