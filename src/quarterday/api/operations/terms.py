"""Terms, what they pay for a loss, how two versions differ, and the premium."""

from typing import Any

from django.http import HttpRequest
from ninja import Router

from quarterday.api.asking import asked, file_shown
from quarterday.api.declaring import asks, reads
from quarterday.api.inputs import AsOf, Pay, Text, Version
from quarterday.api.problems import Problem
from quarterday.api.shapes import terms as shapes
from quarterday.core.given import read
from quarterday.core.review.case import VERSIONS
from quarterday.core.terms.losses.loss import Loss
from quarterday.core.words import words
from quarterday.office import outcomes, plain, premium
from quarterday.office import terms as office
from quarterday.office.own_data import reference_in_use

router = Router(tags=["terms and premium"])


@reads(router, "/files/{file}/terms", shapes.Versions)
def versions(request: HttpRequest, file: str, as_of: AsOf = None) -> dict[str, Any]:
    """Return the versions of the terms that play a part in the renewal."""
    case = file_shown(request, file, as_of=as_of).case
    found: dict[str, Any] = {"file": file, "renewal": case.renewal.isoformat()}
    for name in VERSIONS:
        terms = case.version(name)
        held = case.file.held.get((terms.kind, terms.key)) if terms else None
        found[name] = plain.record(held) if held else None
    return found


@reads(router, "/files/{file}/comparison", shapes.Comparison)
def comparison(
    request: HttpRequest, file: str, before: Version = "expiring", after: Version = "offered",
    as_of: AsOf = None,
) -> dict[str, Any]:  # fmt: skip
    """Compare two versions of the terms: clauses, and what the same losses would cost."""
    case = file_shown(request, file, as_of=as_of).case
    found = office.compared(case, office.version(case, before), office.version(case, after))
    return outcomes.compared(case, found, asked(request).speech)


@reads(router, "/files/{file}/losses", list[shapes.Settled])
def losses(
    request: HttpRequest, file: str, terms: Version = "offered", as_of: AsOf = None
) -> list[dict[str, Any]]:
    """Return what the terms would pay for each loss of the library at this account."""
    case = file_shown(request, file, as_of=as_of).case
    tried = office.tried_losses(case, office.version(case, terms))
    return [outcomes.tried(*one, asked(request).speech) for one in tried]


@asks(router, "/files/{file}/pay", shapes.Settled)
def pay(request: HttpRequest, file: str, sent: Pay) -> dict[str, Any]:
    """Return what the terms pay for one loss, step by step, and what is borne."""
    case = file_shown(request, file, as_of=sent.as_of).case
    terms = office.version(case, sent.terms)
    loss = _loss(sent, office.tried_losses(case, terms) if sent.loss else ())
    return outcomes.settled(office.paid(case, terms, loss), asked(request).speech)


def _loss(sent: Pay, tried: office.Tried) -> Loss:
    if (sent.loss is None) == (sent.told is None):
        raise Problem("refused", words("api-one-loss"))
    if sent.told is not None:
        return read(Loss, sent.told)
    can = {scaled.of.id: scaled.loss for scaled, _ in tried if scaled.loss is not None}
    if sent.loss not in can:
        said = words("api-no-loss", loss=(sent.loss or "")[:80], known=tuple(can))
        raise Problem("refused", said)
    return can[sent.loss]


@reads(router, "/files/{file}/premium", shapes.Premium, by_alias=True)
def premium_of(
    request: HttpRequest, file: str, terms: Version | None = None, allocate: Text = "",
    as_of: AsOf = None,
) -> dict[str, Any]:  # fmt: skip
    """Return the premium: table, tax, why it moved, who pays, instalments, prepaid months."""
    shown = file_shown(request, file, as_of=as_of)
    case, made = premium.premium_of(file, reference_in_use(), shown.as_of, terms, allocate or None)
    return premium.premium(case, made, asked(request).speech)
