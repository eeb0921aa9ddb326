"""Buildings by chance, what they cost, when that was found out, and what they are insured for."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date, timedelta
from typing import Any

from quarterday.catalogue.load import reference
from quarterday.core.dates import Quarter
from quarterday.invent.chance.data import likely
from quarterday.invent.chance.dice import Dice, rounded
from quarterday.invent.chance.people import YEAR, Who

NAMES = {
    "en": {
        "main": "Main building",
        "hall": "Hall",
        "house": "House",
        "shed": "Shed",
        "rented": "Rented rooms",
    },
    "fr": {
        "main": "Bâtiment principal",
        "hall": "Salle",
        "house": "Maison",
        "shed": "Remise",
        "rented": "Locaux loués",
    },
}
ROOFS = ("asphalt shingle", "membrane", "steel")
HEATING = ("gas furnace", "gas boiler", "oil boiler", "electric")
HERITAGE_BEFORE = 1930
BEFORE_THE_INDEX = 0.98  # building costs a year earlier, before the first published quarter


@dataclass(frozen=True, slots=True)
class Premises:
    """One building as drawn: its facts, its valuations, and the amounts insured today."""

    id: str
    facts: dict[str, Any]
    valuations: tuple[dict[str, Any], ...]
    building: int  # zero for rented rooms
    contents: int  # zero when contents are not insured here
    automatic_increase: str


def cost_level(of: Who, day: date, as_of: date) -> float:
    """Return building costs on ``day`` as a share of those on ``as_of`` in a province."""
    release = reference().index(reference().provinces[of.province].index_geography, as_of)
    first, last = min(release.points), max(release.points)
    now = float(release.points[min(Quarter.of(as_of), last)])
    quarter = Quarter.of(day)
    if quarter < first:
        years = (first.first_day - day).days / YEAR
        return float(release.points[first]) / now * float(BEFORE_THE_INDEX**years)
    return float(release.points[min(quarter, last)]) / now


def premises(dice: Dice, of: Who, as_of: date) -> tuple[Premises, ...]:
    """Draw all buildings of an organisation, the main one first."""
    return tuple(_one(dice, of, as_of, kind, id) for kind, id in _kinds(dice, of))


def _kinds(dice: Dice, of: Who) -> Iterator[tuple[str, str]]:
    if of.rents:
        yield "rented", "rented"
        return
    yield "main", "main"
    for nth in range(2, int(dice.weighted(likely()["buildings_owned"])) + 1):
        kind = dice.weighted({"hall": 40, "house": 40, "shed": 20})
        yield kind, f"{kind}-{nth}"


def _one(dice: Dice, of: Who, as_of: date, kind: str, id: str) -> Premises:
    about = likely()["premises"][kind]
    scale = of.size if kind in {"main", "rented"} else 1.0
    area = rounded(dice.spread(about["area"], about["spread"]) * scale, 5)
    facts = _facts(dice, of, kind, area)
    share = dice.spread(0.085, 0.5)
    cost = area * dice.spread(likely()["cost_per_m2"]["median"], likely()["cost_per_m2"]["spread"])
    insures_contents = kind in {"main", "rented"} or dice.chance(0.25)
    contents = rounded(cost * min(share, 0.4), 1000) if insures_contents else 0
    increase = dice.one(("0.01", "0.02", "0.02", "0.03", "0.03", "0.04"))
    if kind == "rented":
        return Premises(
            id, facts, _contents_valued(dice, as_of, id, contents), 0, contents, increase
        )
    valued, insured = _valued(dice, of, as_of, cost, float(increase))
    valuation = {**valued, "building": id, **_seen_by_the_appraiser(dice, facts)}
    found = (valuation, *_contents_valued(dice, as_of, id, contents))
    return Premises(id, facts, found if dice.chance(0.92) else (), insured, contents, increase)


def _valued(
    dice: Dice, of: Who, as_of: date, cost: float, increase: float
) -> tuple[dict[str, Any], int]:
    """Return a valuation some years old and the sum insured that yearly increases made of it."""
    day = as_of - timedelta(days=min(int(dice.spread(3.9, 0.75) * YEAR), 22 * YEAR))
    found = rounded(cost * cost_level(of, day, as_of) * dice.spread(1.0, 0.09), 1000)
    years = (as_of - day).days // YEAR
    insured = rounded(found * (1 + increase) ** years * dice.spread(1.04, 0.06), 1000)
    return {"amount": found, "valued_on": day, "basis": dice.weighted(likely()["basis"])}, insured


def _seen_by_the_appraiser(dice: Dice, facts: dict[str, Any]) -> dict[str, Any]:
    area = facts.get("area_m2")
    if area is None or dice.chance(0.5):
        return {}
    return {"area_m2": area if dice.chance(0.95) else rounded(float(area) * 0.8, 5)}


def _contents_valued(dice: Dice, as_of: date, id: str, contents: int) -> tuple[dict[str, Any], ...]:
    if not contents or dice.chance(0.25):
        return ()
    day = dice.day(as_of - timedelta(days=8 * YEAR), as_of)
    told = {"building": id, "of": "contents", "amount": contents, "valued_on": day}
    return ({**told, "basis": "owner-estimate", "itemised": dice.chance(0.55)},)


def _facts(dice: Dice, of: Who, kind: str, area: int) -> dict[str, Any]:
    year = int(min(2024, max(1830, dice.random.triangular(1850, 2022, 1962))))
    features = dice.one(("pipe organ", "stained glass", "steeple", "tower bell"))
    facts: dict[str, Any] = {
        "name": NAMES[of.language][kind],
        "ownership": "rent" if kind == "rented" else "own",
        "construction": dice.weighted(likely()["construction"]),
        "year_built": year,
        "area_m2": area,
        "storeys": dice.weighted({1: 60, 2: 32, 3: 8}),
        "basement": "none" if kind == "shed" else dice.weighted(likely()["basement"]),
        "has": _has(dice, kind, year),
        "special_features": [features] if kind == "main" and dice.chance(0.3) else [],
        **_trades(dice, year),
    }
    return {name: fact for name, fact in facts.items() if not dice.chance(_gap(name))}


def _gap(field: str) -> float:
    """Return how often a fact is not on file."""
    return 0.0 if field in {"name", "ownership", "has", "special_features"} else 0.05


def _renewed(dice: Dice, built: int) -> int:
    return dice.whole(max(built, 1975), 2025)


def _trades(dice: Dice, built: int) -> dict[str, Any]:
    return {
        "roof": [dice.one(("gable", "flat", "hip")), dice.one(ROOFS), _renewed(dice, built)],
        "wiring": ["copper", _renewed(dice, built)],
        "plumbing": ["copper", _renewed(dice, built)],
        "heating": [dice.one(HEATING), _renewed(dice, built)],
        "water_reach": [rounded(dice.spread(110, 1.0), 5), rounded(dice.spread(3, 0.8), 1)],
    }  # fmt: skip


def _has(dice: Dice, kind: str, year: int) -> list[str]:
    shares = {
        "fire_alarm": 0.7, "alarm_monitored": 0.35, "burglar_alarm": 0.4, "sprinklers": 0.1,
        "backwater_valve": 0.3, "sump_pump": 0.4, "water_sensors": 0.06,
        "heritage": 0.2 if year < HERITAGE_BEFORE else 0.0, "contents_below_grade": 0.3,
    }  # fmt: skip
    return [] if kind == "shed" else [name for name, share in shares.items() if dice.chance(share)]
