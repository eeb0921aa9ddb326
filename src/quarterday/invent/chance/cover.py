"""A policy by chance: its plan, what it carries, what it costs, and what is offered next."""

from __future__ import annotations

from datetime import date, timedelta
from decimal import Decimal
from typing import Any

from quarterday.core.dates import add_years
from quarterday.invent.chance.data import likely
from quarterday.invent.chance.dice import Dice, rounded
from quarterday.invent.chance.people import YEAR, Who
from quarterday.invent.chance.premises import Premises
from quarterday.invent.notation.plans import plan

OFFERED_WITHIN = 90  # days before the renewal by which the insurer has made its offer
ABUSE = ("abuse-liability", "abuse-defence", "abuse-therapy")
COVERED_BY = {
    "counselling": "counselling-liability",
    "food_service": "products-liability",
    "hall_rental": "hall-rental-liability",
    "volunteer_drivers": "non-owned-vehicle",
}
MOSTLY = 0.88
Notation = dict[str, Any]


def policy(
    dice: Dice, of: Who, places: tuple[Premises, ...], does: list[str], as_of: date
) -> Notation:
    """Draw the policy in force and, when its renewal is near, the insurer's offer.

    ``does`` are the answers of the operations profile: what is done is mostly covered.
    """
    renewal = as_of + timedelta(days=dice.whole(1, YEAR))
    name = _plan(dice, of)
    told: Notation = {
        "plan": name,
        "number": f"P-{of.number:07d}",
        "renewal": renewal,
        "expiring": _expiring(dice, places, _left_out(dice, name, does), add_years(renewal, -1)),
    }
    if (renewal - as_of).days <= OFFERED_WITHIN:
        told["offered"] = _offered(dice, places, told["expiring"])
    return told


def _plan(dice: Dice, of: Who) -> str:
    if of.language == "fr":
        return "locataire" if of.rents else "proprietaire"
    if of.rents:
        return "renter"
    return "brindlegate" if dice.chance(0.3) else "owner"


def _sums(places: tuple[Premises, ...], factor: float = 1.0) -> dict[str, Any]:
    """Return the lines of all buildings and contents at their sums insured."""
    lines: dict[str, Any] = {}
    for place in places:
        if place.building:
            lines[f"building@{place.id}"] = {
                "limit": rounded(place.building * factor, 1000),
                "automatic_increase": Decimal(place.automatic_increase),
            }
        if place.contents:
            lines[f"contents@{place.id}"] = {"limit": rounded(place.contents * factor, 1000)}
    return lines


def _expiring(
    dice: Dice, places: tuple[Premises, ...], left_out: dict[str, None], start: date
) -> Notation:
    lines = {**_sums(places), **left_out}
    if "sewer-backup" not in lines:
        drawn = dice.one((10_000, 25_000, 25_000, 50_000, 100_000))
        limit = min(drawn, _whole(lines) or drawn)
        lines["sewer-backup"] = {"limit": limit, "price": rounded(limit**0.5, 5)}
    if dice.chance(0.12) and any(place.building for place in places):
        lines["overland-flood"] = {"limit": 50_000, "price": 240}
    each: Notation = {"building": {"deductible": dice.one((1000, 2500, 2500, 5000))}}
    if dice.chance(0.35):
        each["building"]["agreed_value_until"] = add_years(start, dice.one((1, 2, 3)))
    if not dice.chance(0.8):
        lines |= {key: {"qualified": False} for key in ABUSE if key not in lines}
    rates = {"building": _rate(dice, 0.0022), "contents": _rate(dice, 0.0028)}
    return {"each": each if any(p.building for p in places) else {}, "rates": rates, "lines": lines}


def _whole(lines: Notation) -> int:
    """Return the sum of which a sewer backup is a part: the buildings, or a renter's contents."""
    sums = {key: line["limit"] for key, line in lines.items() if line and "@" in key}
    buildings = [limit for key, limit in sums.items() if key.startswith("building@")]
    return sum(buildings or sums.values())


def _rate(dice: Dice, median: float) -> Decimal:
    return Decimal(rounded(dice.spread(median, 0.25) * 1e6, 10)) / 1_000_000


def _left_out(dice: Dice, name: str, does: list[str]) -> dict[str, None]:
    """Return the plan's lines that this policy does not carry."""
    needed = {coverage for answer, coverage in COVERED_BY.items() if answer in does}
    shares = likely()["carried"]
    return {
        key: None
        for key in plan(name)["lines"]
        if not dice.chance(MOSTLY if key in needed else shares.get(key, 1.0))
    }


def _offered(dice: Dice, places: tuple[Premises, ...], expiring: Notation) -> Notation:
    """Draw an offer: values up, rates moved, now and then a worse condition and options."""
    moved = {k: _moved(dice, rate) for k, rate in expiring["rates"].items()}
    lines: dict[str, Any] = _sums(places, factor=1.03)
    if expiring["lines"]["sewer-backup"] and dice.chance(0.08):
        lines["sewer-backup"] = {"deductible": 10_000}
    if dice.chance(0.05):
        lines["volunteer-accident"] = None
    each = {}
    if expiring["each"] and dice.chance(0.12):
        each = {"building": {"deductible": expiring["each"]["building"]["deductible"] * 2}}
    return {"rates": moved, "lines": lines, "each": each, "options": _options(dice)}


def _moved(dice: Dice, rate: Decimal) -> Decimal:
    return Decimal(round(float(rate) * dice.spread(1.045, 0.08) * 1e6)) / 1_000_000


def _options(dice: Dice) -> Notation:
    priced = {
        "sewer-backup": {"limit": 250_000, "price": dice.whole(30, 120) * 10},
        "overland-flood": {"limit": 250_000, "price": dice.whole(40, 180) * 10},
        "by-laws": {"limit": 1_000_000, "price": dice.whole(20, 60) * 10},
        "earthquake": {"limit": 1_000_000},
    }
    return {key: option for key, option in priced.items() if dice.chance(0.35)}
