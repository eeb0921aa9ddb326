"""What the forms of a package ask: every question as it was put, or would be put today."""

from __future__ import annotations

import re
from collections.abc import Iterable, Mapping
from datetime import date

from quarterday.catalogue.speech import Speech
from quarterday.core.file.fold import File
from quarterday.core.reference import Reference
from quarterday.core.review.case import Case
from quarterday.core.review.review import review, review_of
from quarterday.core.words import Term, words
from quarterday.intake.forms.proposal import Asked
from quarterday.intake.forms.recognise import Stamp
from quarterday.office.showing import house
from quarterday.office.trouble import Trouble
from quarterday.papers.fields import field_parts
from quarterday.papers.package import PAPERS
from quarterday.papers.parts import FORMS
from quarterday.papers.setting import Setting

_LANGUAGES = ("en", "fr")
_AFTER_A_STOP = re.compile("([?.])\u00a0?:")  # a question needs no colon before what it is about


def titles(reference: Reference) -> Mapping[str, tuple[str, ...]]:
    """Return the printed names of each form in both languages."""
    speeches = [Speech(reference, language) for language in _LANGUAGES]
    return {id: tuple(_printed(s, id) for s in speeches) for id in FORMS}


def _printed(speech: Speech, form: str) -> str:
    return speech.say(words("paper-name", paper=Term("paper", form)))


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
            label = _AFTER_A_STOP.sub(r"\1", one.tip)
            found[one.name] = Asked(form, one.name, parts, label, one.value, one.options)
    return found


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
