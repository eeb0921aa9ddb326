"""From an account's notation to the records of its file."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date

from quarterday.core.file.records import Organisation, Record, Terms
from quarterday.invent.notation import parties, places, policy
from quarterday.invent.notation.plans import plan
from quarterday.invent.notation.policy import Notation


def records(told: Notation, run_on: date) -> Iterator[Record]:
    """Yield the records that ``told`` describes; the loss run is of the day ``run_on``.

    ``told`` has the organisation, office and mail domain, contacts, authorities, operations,
    buildings, valuations, policy, claims, interests and allocation keys, each as its own function
    explains.
    """
    of = parties.organisation(told["organisation"], told["office"])
    yield of
    yield from parties.contacts(told["contacts"], told["mail"], of)
    yield from parties.authorities(told.get("authorities", {}))
    yield parties.operations(told["operations"])
    yield from places.buildings(told["buildings"], of)
    yield from places.valuations(told.get("valuations", []))
    yield from _terms(told["policy"], of)
    number, insurer = told["policy"]["number"], plan(told["policy"]["plan"])["insurer"]
    yield from places.claims(told.get("claims", []), number, insurer, run_on)
    yield from places.interests(told.get("interests", {}))
    yield from places.allocation(told.get("allocation", {}))


def _terms(told: Notation, of: Organisation) -> Iterator[Terms]:
    for name, version in policy.versions(told, plan(told["plan"])):
        yield policy.terms(name, version, told, of.province)
