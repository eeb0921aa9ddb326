"""Who is insured: the registration number and the name."""

from __future__ import annotations

import re
import unicodedata
from collections.abc import Iterator
from typing import Literal

from stdnum.ca import bn
from stdnum.exceptions import ValidationError

from quarterday.core.review.case import Case
from quarterday.core.review.finding import Finding, Subject, Tier
from quarterday.core.review.priority import placed
from quarterday.core.words import words

NumberFault = Literal["form", "check-digit"]
_CHARITY_NUMBER = re.compile(r"([0-9]{9})RR[0-9]{4}")
_LEGAL_ENDINGS = frozenset({
    "inc", "incorporated", "incorporee", "corp", "corporation", "ltd", "limited", "ltee",
    "limitee",
})  # fmt: skip
_SAME_WORD = {"&": "and", "et": "and", "st": "saint", "ste": "sainte"}


def number_fault(number: str) -> NumberFault | None:
    """Return what is wrong with a charity's registration number; None when nothing is.

    Its form is nine digits, RR and four digits (Canada Revenue Agency), spaces, points and hyphens
    aside. The nine digits carry a Luhn check digit. python-stdnum knows the digits but not the
    program RR, so it is given the digits alone.
    """
    match = _CHARITY_NUMBER.fullmatch(re.sub(r"[\s.\-]", "", number).upper())
    if not match:
        return "form"
    try:
        bn.validate(match[1])
    except ValidationError:
        return "check-digit"
    return None


def registration(case: Case) -> Iterator[Finding]:
    """Tell that the registration number on file cannot be right; a missing one is no fault."""
    organisation = case.file.organisation
    number = organisation.registration_number
    fault = number_fault(number) if number else None
    if not number or not fault:
        return
    yield Finding(
        rule="office.registration",
        subject=Subject("organisation", "", organisation.name),
        audience=("broker", "leaders"),
        kind="fix",
        priority=placed(Tier.RECORD),
        title=words("office-registration-title", number=number),
        means=words(f"office-registration-{fault}-means"),
        todo=words("office-registration-todo"),
        evidence=(case.file.fact(organisation, "registration_number", "text"),),
    )


def plain_name(name: str) -> str:
    """Return a name as it is compared: no case, accents, punctuation, article or legal ending.

    Words that are only written differently count as one: & and "and" and "et", St. and Saint.
    """
    apart = unicodedata.normalize("NFKD", name.casefold().replace("’", "'"))
    letters = "".join(c for c in apart if not unicodedata.combining(c))
    joined = letters.replace("'", "").replace(".", "")
    found = [_SAME_WORD.get(w, w) for w in re.findall(r"\w+|&", joined)]
    while len(found) > 1 and found[-1] in _LEGAL_ENDINGS:
        found.pop()
    if len(found) > 1 and found[0] in {"the", "le", "la", "les"}:
        found.pop(0)
    return " ".join(found)


def name_mismatch(case: Case) -> Iterator[Finding]:
    """Tell that the policy names somebody else than the organisation; silent if it names nobody."""
    organisation = case.file.organisation
    insured = organisation.named_insured
    if not insured or plain_name(insured) == plain_name(organisation.name):
        return
    yield Finding(
        rule="office.name-mismatch",
        subject=Subject("organisation", "", organisation.name),
        audience=("broker", "insurer"),
        kind="fix",
        priority=placed(Tier.RECORD),
        title=words("office-name-mismatch-title", insured=insured, legal=organisation.name),
        means=words("office-name-mismatch-means"),
        todo=words("office-name-mismatch-todo"),
        evidence=(
            case.file.fact(organisation, "named_insured", "text"),
            case.file.fact(organisation, "name", "text"),
        ),
    )
