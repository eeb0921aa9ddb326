"""What a certificate says: the policy in force on one day, and that it promises nothing more."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path

from quarterday.catalogue.speech import Speech
from quarterday.core.file.records import Building, Terms
from quarterday.core.file.records.terms import Coverage
from quarterday.core.terms.option import deductible_said
from quarterday.core.words import Term, words
from quarterday.papers import alone
from quarterday.papers.alone import Alone, InForce
from quarterday.papers.brokerage import Brokerage, Person
from quarterday.papers.dress import dress
from quarterday.papers.setting import Data
from quarterday.papers.shown import shown

ID = "certificate"
TEMPLATE = Path(__file__).parent / "template.typ"
NONE = "–"
HEADER = ("copies-coverage", "copies-limit", "certificate-applies", "copies-deductible")


@dataclass(frozen=True, slots=True)
class Holder:
    """Who asks to see the insurance, and what of it is theirs to see.

    ``role`` is ``lender``, ``lessor`` or ``third-party``; ``building`` None means every building.
    """

    id: str
    role: str
    name: str
    address: str | None = None
    purpose: str | None = None
    reference: str | None = None
    building: Building | None = None
    item: str | None = None


@dataclass(frozen=True, slots=True)
class Certificate:
    """A certificate: of which policy in force, for whom, by whom; names of the buildings by id."""

    of: Alone
    policy: InForce
    holder: Holder
    issuer: Person | None
    buildings: dict[str, str]


def lines(terms: Terms, holder: Holder) -> tuple[Coverage, ...]:
    """Return the coverages in force that a holder asks about."""
    building = holder.building.id if holder.building else None
    return tuple(shown(terms, holder.role, building))


def pdf(certificate: Certificate, brokerage: Brokerage, speech: Speech) -> bytes:
    """Return the certificate as PDF; the same certificate makes the same bytes."""
    brand = dress(brokerage, speech, certificate.issuer.name if certificate.issuer else None)
    return alone.printed(TEMPLATE, data(certificate, brokerage, speech), certificate.of.day, brand)


def data(certificate: Certificate, brokerage: Brokerage, speech: Speech) -> Data:
    """Return what the certificate says, part by part."""
    of, policy, holder = certificate.of, certificate.policy, certificate.holder
    say = speech.say
    title = say(words("certificate-title", organisation=of.organisation.name, day=of.day))
    notes = ("certificate-day", "certificate-no-rights", "certificate-used")
    return {
        "house": alone.house(of, title, brokerage, speech),
        "sender": list(alone.sender(brokerage, speech.language)),
        "to": [speech.day(of.day), holder.name, *filter(None, [holder.address])],
        "kicker": say(words("paper-name", paper=Term("paper", ID))),
        "title": title,
        "lead": say(words(_lead(policy), day=of.day)),
        "facts": [[say(words(id)), text] for id, text in _facts(certificate, speech) if text],
        "header": [say(words(id)) for id in HEADER],
        "rows": [_row(certificate, line, speech) for line in lines(policy.terms, holder)],
        "meanings": say(words("certificate-words")),
        "notes": [say(words(id)) for id in notes],
        "closing": list(_closing(certificate, brokerage, speech)),
    }


def _lead(policy: InForce) -> str:
    return "certificate-lead" if policy.binder is None else "certificate-lead-bound"


def _facts(certificate: Certificate, speech: Speech) -> Iterator[tuple[str, str | None]]:
    organisation = certificate.of.organisation
    terms, holder = certificate.policy.terms, certificate.holder
    yield "copies-insured", organisation.named_insured or organisation.name
    yield "copies-address", ", ".join(alone.street(organisation))
    yield "copies-insurer", terms.insurer
    yield certificate.policy.named()
    yield "copies-term", speech.say(words("copies-from-to", start=terms.start, end=terms.end))
    yield "copies-reference", holder.reference
    yield "copies-location", holder.building.name if holder.building else None
    yield "copies-item", holder.item
    yield "certificate-purpose", holder.purpose


def _row(certificate: Certificate, line: Coverage, speech: Speech) -> list[str]:
    terms, place = certificate.policy.terms, certificate.buildings.get(line.location)
    name = Term("coverage", line.coverage)
    at = words("paper-coverage-at", coverage=name, place=place) if place else name
    limit = speech.money(terms.money(line.limit)) if line.limit is not None else NONE
    basis = speech.say(Term("limit-basis", line.limit_basis)) if line.limit_basis else NONE
    if line.aggregate is not None:
        most = terms.money(line.aggregate)
        basis = speech.say(words("certificate-aggregate", basis=basis, aggregate=most))
    own = deductible_said(terms, line)
    return [speech.say(at), limit, basis, NONE if own is None else speech.say(own)]


def _closing(of: Certificate, brokerage: Brokerage, speech: Speech) -> Iterator[str]:
    issuer = of.issuer
    if issuer is not None:
        yield speech.say(words("certificate-by", name=issuer.name, licence=issuer.licence or "–"))
    yield from alone.closing(brokerage, speech.language)
