"""From an account's file to its buildings, valuations, claims, interests and allocation keys."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from datetime import date, timedelta
from decimal import Decimal
from typing import Any

from quarterday.core.file.records import (
    AllocationKey,
    Building,
    Claim,
    Interest,
    Organisation,
    Valuation,
)

Notation = Mapping[str, Any]
HAS = (
    "sprinklers", "fire_alarm", "burglar_alarm", "alarm_monitored", "backwater_valve", "sump_pump",
    "sump_battery", "water_sensors", "automatic_shutoff", "heritage", "contents_below_grade",
)  # fmt: skip
TRADES = {
    "roof": ("roof_shape", "roof_cover", "roof_year"),
    "wiring": ("wiring_type", "wiring_year"),
    "plumbing": ("plumbing_type", "plumbing_year"),
    "heating": ("heating_type", "heating_year"),
    "water_reach": ("hydrant_m", "fire_hall_km"),
}


def buildings(told: Notation, of: Organisation) -> Iterator[Building]:
    """Yield the buildings by id; what ``has`` lists is yes, ``unknown`` not known, all else no.

    ``roof``, ``wiring``, ``plumbing`` and ``heating`` are lists that end with the year of the last
    renewal; ``water_reach`` is metres to the hydrant and kilometres to the fire hall.
    """
    for id, facts in told.items():
        made = {"id": id, "town": of.town, "postal_code": of.postal_code}
        yield Building.model_validate({**made, **_facts(facts)})


def _facts(told: Notation) -> dict[str, Any]:
    unknown, has = set(told.get("unknown", ())), set(told.get("has", ()))
    strange = (unknown | has) - set(HAS)
    if strange:
        raise ValueError(f"A building has no feature {', '.join(sorted(strange))}.")
    facts: dict[str, Any] = {name: name in has for name in HAS if name not in unknown}
    for name, value in told.items():
        if name in TRADES:
            facts |= zip(TRADES[name], value, strict=True)
        elif name not in {"has", "unknown"}:
            facts[name] = value
    return facts


def valuations(told: list[Notation]) -> Iterator[Valuation]:
    """Yield the valuations; ``of`` is ``building``, ``contents`` or a feature's name."""
    for given in told:
        fields = dict(given)
        of = fields.pop("of", "building")
        thing = of if of in {"building", "contents"} else "feature"
        feature = None if thing == of else of
        yield Valuation.model_validate({**fields, "valued": thing, "feature": feature})


def claims(told: list[list[Any]], prefix: str, insurer: str, run_on: date) -> Iterator[Claim]:
    """Yield the claims of a loss run of ``run_on``.

    Each is a list: day of loss, cause, building (``-`` for none), paid, what happened, and for a
    claim that is more than closed and paid, a mapping with the fields that differ.
    """
    for nth, (lost_on, cause, place, paid, happened, *rest) in enumerate(told, start=1):
        settled = min(lost_on + timedelta(days=90 + 17 * nth), run_on)
        made = {
            "number": f"{prefix}-{lost_on:%y}{nth:03d}",
            "cause": cause,
            "date_of_loss": lost_on,
            "reported_on": lost_on + timedelta(days=1 + nth % 4),
            "location": None if place == "-" else place,
            "description": happened,
            "paid": paid,
            "deductible": Decimal(1000),
            "valued_on": run_on,
            "last_movement_on": settled,
            "insurer": insurer,
        }
        yield Claim.model_validate({**made, **(rest[0] if rest else {})})


def interests(told: Notation) -> Iterator[Interest]:
    """Yield lenders and lessors by id."""
    for id, given in told.items():
        yield Interest.model_validate({"id": id, **given})


def allocation(told: Notation) -> Iterator[AllocationKey]:
    """Yield the lines of allocation keys, by the key's name, the part of the premium and the party.

    A part is a building's id (``*`` for wherever no part names one) or ``building/family``. Its
    ``by`` is the unit; ``of`` gives each party its measure, null where the unit needs none.
    ``funds`` of the key says where the books carry a party.
    """
    for name, key in told.items():
        funds = key.get("funds", {})
        for part, parties in key["parts"].items():
            location, _, family = part.partition("/")
            for party, measure in parties["of"].items():
                yield AllocationKey.model_validate(
                    {"name": name, "party": party, "location": location, "family": family or None,
                     "by": parties["by"], "measure": measure, "fund": funds.get(party)}
                )  # fmt: skip
