"""An organisation by chance: who it is, who speaks for it, what it does, who lends to it."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date, timedelta
from typing import Any

from quarterday.catalogue.load import reference
from quarterday.invent.chance import naming
from quarterday.invent.chance.data import likely, names
from quarterday.invent.chance.dice import Dice, rounded

YEAR = 365


@dataclass(frozen=True, slots=True)
class Who:
    """What every other part of an account rests on."""

    number: int
    province: str
    language: str
    kind: str
    rents: bool
    name: str
    town: str
    size: float  # one is an organisation of the usual size


def who(dice: Dice, number: int) -> Who:
    """Draw who organisation ``number`` is."""
    province = dice.weighted(likely()["provinces"])
    language = "fr" if dice.chance(likely()["french"].get(province, 0.0)) else "en"
    kind = dice.weighted(likely()["classes"])
    rents = dice.chance(likely()["rents"][kind])
    name, town = naming.organisation(number, kind, language)
    size = dice.spread(0.8, 0.7) * (0.6 if rents else 1.0)
    return Who(number, province, language, kind, rents, name, town, size)


def postal_code(dice: Dice, province: str) -> str:
    """Return a code that begins as the province's do; its last part, 9X and a digit, is made up."""
    letter = dice.one(reference().provinces[province].postal_letters)
    return f"{letter}0Z 9X{dice.whole(0, 9)}"


def organisation(dice: Dice, of: Who, as_of: date) -> dict[str, Any]:
    """Draw the organisation's own record."""
    told: dict[str, Any] = {
        "name": of.name,
        "organisation_class": of.kind,
        "province": of.province,
        "address": f"{dice.whole(1, 480)} {dice.one(names()['streets'][of.language])}",
        "town": of.town,
        "postal_code": postal_code(dice, of.province),
        "language": of.language,
        "founded_year": dice.whole(1840, 2019),
        "fiscal_year_end": "12-31" if dice.chance(0.7) else "03-31",
        "broker": dice.one(("Judith Hollis", "Amar Bhullar", "Maude Lachambre", "Colin MacIsaac")),
        "confirmed_on": _some_day_before(dice, as_of, 1.6),
    }
    if dice.chance(0.88):
        is_right = dice.chance(0.985)
        told["registration_number"] = naming.registration_number(of.number, is_right)
    if dice.chance(0.03):
        told["named_insured"] = f"{of.town} Trustees"
    return told


def _some_day_before(dice: Dice, day: date, most_years: float) -> date:
    return day - timedelta(days=dice.whole(5, int(most_years * YEAR)))


def contacts(dice: Dice, of: Who, as_of: date) -> dict[str, dict[str, Any]]:
    """Draw the people who speak for the organisation."""
    roles = ["chair", "treasurer"]
    roles += [role for role in ("minister", "administrator", "property") if dice.chance(0.4)]
    told = {}
    for role in roles:
        person: dict[str, Any] = {
            "name": naming.person(dice, of.language),
            "is_key": role in {"chair", "treasurer"},
            "confirmed_on": _some_day_before(dice, as_of, 1.3),
        }
        if dice.chance(0.05):
            person["left_on"] = _some_day_before(dice, as_of, 0.8)
        told[role] = person
    return told


def authorities(dice: Dice, people: dict[str, dict[str, Any]]) -> dict[str, str]:
    """Draw who may decide on coverage, accounts and claims; sometimes nobody may."""
    usual = {"coverage": "chair", "accounts": "treasurer", "claims": dice.one(tuple(people))}
    return {area: contact for area, contact in usual.items() if dice.chance(0.95)}


def operations(dice: Dice, of: Who, as_of: date) -> dict[str, Any]:
    """Draw the yearly profile."""
    does = [answer for answer, share in likely()["does"].items() if dice.chance(share)]
    does += ["rents_premises" if of.rents else "owns_premises"]
    does += [of.kind] if of.kind in {"camp", "school"} else []
    giving = rounded(dice.spread(150_000, 0.7) * of.size, 100)
    told: dict[str, Any] = {
        "confirmed_on": _some_day_before(dice, as_of, 1.5),
        "does": does,
        "attendance": rounded(120 * of.size, 5),
        "employees": int(3 * of.size * dice.random.random()),
        "volunteers": rounded(45 * of.size, 1),
        "largest_event": rounded(dice.spread(220, 0.5), 10),
        "revenue": {
            "donations": giving,
            "rents": rounded(giving * 0.12, 100) if "hall_rental" in does else 0,
            "tuition": rounded(giving * 1.5, 100) if of.kind in {"camp", "school"} else 0,
            "events": rounded(giving * 0.06, 100),
            "other": rounded(giving * 0.04, 100),
        },
    }
    if dice.chance(0.85):
        told["prevention_plan_reviewed_on"] = _some_day_before(dice, as_of, 1.4)
        told["screening_training_on"] = _some_day_before(dice, as_of, 1.4)
        told["record_checks_on"] = _some_day_before(dice, as_of, 3.4)
    return told


def interests(dice: Dice, of: Who, as_of: date, place: str) -> dict[str, dict[str, Any]]:
    """Draw a lender or a lessor, which most organisations do not have."""
    told: dict[str, dict[str, Any]] = {}
    if not of.rents and dice.chance(0.13):
        told["loan"] = {
            "role": "lender",
            "name": f"{of.town} Savings Society",
            "reference": f"L-{dice.whole(10000, 99999)}",
            "location": place,
            "amount": rounded(dice.spread(180_000, 0.9), 500),
            "status": dice.weighted({"active": 80, "paid-off": 12, "unknown": 8}),
            "confirmed_on": _some_day_before(dice, as_of, 3.0),
        }
    if dice.chance(0.06):
        told["lease"] = {
            "role": "lessor",
            "name": "Bluejay Fleet Leasing",
            "item": "Photocopier",
            "amount": rounded(dice.spread(9_000, 0.4), 100),
            "confirmed_on": _some_day_before(dice, as_of, 2.0),
        }
    return told
