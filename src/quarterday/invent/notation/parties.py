"""From an account's file to the organisation, its people, and what it does."""

from __future__ import annotations

import unicodedata
from collections.abc import Iterator, Mapping
from datetime import date
from typing import Any, get_args

from quarterday.core.file.records import Authority, Contact, Operations, Organisation
from quarterday.core.file.records.people import Role

Notation = Mapping[str, Any]
ROLES = frozenset(get_args(Role))
AREA_CODES = {
    "ON": "705", "QC": "819", "BC": "250", "AB": "780", "MB": "204", "SK": "306", "NS": "902",
    "NB": "506", "NL": "709", "PE": "902", "NT": "867", "YT": "867", "NU": "867",
}  # fmt: skip
YES_NO = tuple(
    name for name, field in Operations.model_fields.items() if field.annotation == bool | None
)


def organisation(told: Notation, office: str) -> Organisation:
    """Return the organisation; its named insured is its name unless the file says otherwise."""
    return Organisation.model_validate(
        {"named_insured": told["name"], "office": office, "confirmed_on": date(2026, 9, 1), **told}
    )


def mail(name: str, domain: str) -> str:
    """Return an address under example.org made from a person's name without its accents."""
    plain = unicodedata.normalize("NFKD", name).encode("ascii", "ignore").decode()
    kept = "".join(c if c.isalpha() else " " for c in plain.lower())
    return f"{'.'.join(kept.split())}@{domain}.example.org"


def contacts(told: Notation, domain: str, of: Organisation) -> Iterator[Contact]:
    """Yield the people of ``told`` (by id), each with an invented address and telephone number.

    Telephone numbers come from 555-0100 to 555-0199, which are kept free for fiction.
    """
    start = sum(domain.encode()) % 90
    for nth, (id, person) in enumerate(told.items()):
        made = {
            "id": id,
            "role": id if id in ROLES else "other",
            "email": mail(person["name"], domain),
            "phone": f"{AREA_CODES[of.province]}-555-01{start + nth:02d}",
            "language": of.language,
            "confirmed_on": date(2026, 9, 15),
        }
        yield Contact.model_validate({**made, **person})


def authorities(told: Notation) -> Iterator[Authority]:
    """Yield who may decide what; ``told`` gives for each area one contact or several.

    A contact may be followed by days: ``treasurer 2024-03-01 2026-07-01`` (since and until).
    """
    for area, given in told.items():
        for text in [given] if isinstance(given, str) else given:
            contact, *days = text.split()
            since, until = (*days, None, None)[:2]
            yield Authority.model_validate(
                {"contact": contact, "area": area, "since": since or "2024-02-01", "until": until}
            )


def operations(told: Notation) -> Operations:
    """Return the operations profile: what ``does`` lists is yes, ``unanswered`` unknown, else no.

    ``revenue`` holds amounts by kind; every other field stands under its own name.
    """
    plain = {k: v for k, v in told.items() if k not in {"does", "unanswered", "revenue"}}
    unanswered, does = set(told.get("unanswered", ())), set(told.get("does", ()))
    unknown = (does | unanswered) - set(YES_NO)
    if unknown:
        raise ValueError(f"The operations profile has no question {', '.join(sorted(unknown))}.")
    answers = {name: name in does for name in YES_NO if name not in unanswered}
    revenue = {f"revenue_{kind}": amount for kind, amount in told.get("revenue", {}).items()}
    return Operations.model_validate({"vehicles_owned": 0, **answers, **revenue, **plain})
