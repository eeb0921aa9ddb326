"""The package of one renewal: the papers that apply, in one language, as one PDF."""

from __future__ import annotations

import json
from dataclasses import dataclass
from datetime import date

from quarterday.core.file.records import ReviewSigned
from quarterday.core.review.case import Case
from quarterday.core.review.review import Review
from quarterday.core.words import Term, Words
from quarterday.papers import press
from quarterday.papers.abuse_form import data as abuse_form
from quarterday.papers.brokerage import Brokerage
from quarterday.papers.building_values import data as building_values
from quarterday.papers.claims_record import data as claims_record
from quarterday.papers.contacts_form import data as contacts_form
from quarterday.papers.copies_for_lenders import data as copies_for_lenders
from quarterday.papers.coverage_summary import data as coverage_summary
from quarterday.papers.decisions_form import data as decisions_form
from quarterday.papers.dress import dress
from quarterday.papers.figures import data as figures
from quarterday.papers.interests_form import data as interests_form
from quarterday.papers.letter import data as letter
from quarterday.papers.motions import data as motions
from quarterday.papers.operations_form import data as operations_form
from quarterday.papers.options import data as options
from quarterday.papers.page_code import codes as page_codes
from quarterday.papers.parts import FORMS
from quarterday.papers.payment_form import data as payment_form
from quarterday.papers.premium_statement import data as premium_statement
from quarterday.papers.setting import Data, Paper, Setting
from quarterday.papers.statement_of_values import data as statement_of_values
from quarterday.papers.water_form import data as water_form
from quarterday.papers.what_changed import data as what_changed
from quarterday.papers.what_would_it_pay import data as what_would_it_pay

# In the order of the package; the letter comes before them and says why each is there.
PAPERS: tuple[Paper, ...] = tuple(
    Paper(paper.ID, paper.reason, paper.data)
    for paper in (
        what_changed,
        building_values,
        coverage_summary,
        options,
        what_would_it_pay,
        claims_record,
        motions,
        decisions_form,
        contacts_form,
        operations_form,
        statement_of_values,
        water_form,
        abuse_form,
        interests_form,
        payment_form,
        premium_statement,
        copies_for_lenders,
        figures,
    )
)


@dataclass(frozen=True, slots=True)
class Package:
    """A finished package: its bytes, and what is in it and why, in order."""

    pdf: bytes
    enclosed: tuple[tuple[str, Words], ...]


def build(
    review: Review,
    case: Case,
    brokerage: Brokerage,
    language: str,
    *,
    version: int,
    built_on: date,
    signed: ReviewSigned | None,
) -> Package:
    """Return the package of a reviewed case in one language (``en`` or ``fr``).

    The same input gives the same bytes. Without ``signed`` every page says that it is a draft and
    not for delivery. Unprintable when a text of the file has letters the fonts lack.
    """
    setting = Setting(review, case, brokerage, language, version, built_on, signed)
    enclosed = _enclosed(setting)
    brand = dress(brokerage, setting.speech, signed.reviewer if signed else None)
    set_pdf = press.press().set(_data(setting, enclosed), built_on, brand)
    hidden = _hidden(setting, enclosed)
    return Package(press.finished(set_pdf, setting.fields.described, hidden), enclosed)


def _enclosed(setting: Setting) -> tuple[tuple[str, Words], ...]:
    reasons = ((paper.id, paper.reason(setting)) for paper in PAPERS)
    applies = tuple((id, why) for id, why in reasons if why is not None)
    return ((letter.ID, letter.reason(setting)), *applies)


def _data(setting: Setting, enclosed: tuple[tuple[str, Words], ...]) -> Data:
    ids = {id for id, _ in enclosed}
    papers = [{"id": letter.ID, "data": letter.data(setting, enclosed)}]
    papers += [{"id": p.id, "data": p.data(setting)} for p in PAPERS if p.id in ids]
    codes = page_codes(setting, (id for id in FORMS if id in ids))
    return {"house": house(setting) | {"codes": codes}, "papers": papers}


def house(setting: Setting) -> Data:
    """Return what stands on every page: title, draft mark, feet."""
    organisation, renewal = setting.file.organisation, setting.review.renewal
    coming = setting.case.coming
    return {
        "language": setting.language,
        "title": setting.say("package-title", organisation=organisation.name, renewal=renewal),
        "author": setting.brokerage.named(setting.language),
        "draft": None if setting.signed else setting.say("package-draft"),
        "footer": [
            setting.say(
                "package-foot",
                organisation=setting.name,
                file=setting.file.id,
                start=coming.start,
                end=coming.end,
            ),
            setting.say(
                "package-built",
                language=Term("language", setting.language),
                built_on=setting.built_on,
                version=str(setting.version),
            ),
        ],
        "page_words": [setting.say("package-page"), setting.say("package-of")],
    }


def _hidden(setting: Setting, enclosed: tuple[tuple[str, Words], ...]) -> dict[str, str]:
    """Return the fields nobody sees, by which a returned file is recognised."""
    record = {
        "file": setting.file.id,
        "renewal": str(setting.review.renewal),
        "language": setting.language,
        "version": setting.version,
        "seq": setting.review.seq,
    }
    forms = [id for id, _ in enclosed if id in FORMS]
    return {"_form": " ".join(forms), "_record": json.dumps(record, sort_keys=True)}
