"""Forms that come home: recognised, read, and compared with the file as it stands."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass, field, replace
from datetime import date

from quarterday.catalogue.speech import Speech
from quarterday.core.file.fold import File, fold
from quarterday.core.file.records import FormReturned, PackageBuilt
from quarterday.core.reference import Reference
from quarterday.core.words import Term, Words, words
from quarterday.intake.forms.peek import Looked, look
from quarterday.intake.forms.proposal import Context, Proposal
from quarterday.intake.forms.propose import Proposed, propose
from quarterday.intake.forms.recognise import (
    Flat,
    Given,
    Returned,
    Stamp,
    Unstamped,
    recognise,
    said,
)
from quarterday.office.form_questions import questions, sheet, titles
from quarterday.office.trouble import Trouble
from quarterday.papers.parts import FORMS
from quarterday.store import ledger
from quarterday.store.refusals import UnknownFile


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
    told = {name: said(text) for name, text in typed.items()}
    context = Context(stamp, printed | told, asked, now, now, reference, day)
    looked = look(*scan) if scan else None
    return replace(_beside(context, looked, ()), person=person)
