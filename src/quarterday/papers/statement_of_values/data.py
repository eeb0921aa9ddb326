"""What the statement of values asks, filled in as the file has it."""

from __future__ import annotations

from collections.abc import Iterator

from quarterday.core.file.records import Building
from quarterday.core.words import Term, Words
from quarterday.papers.asking import confirmation, of_building
from quarterday.papers.fields import Field, field_name
from quarterday.papers.setting import Data, Setting
from quarterday.papers.water_form.data import FACTS
from quarterday.papers.water_form.data import places as water_places

ID = "statement-of-values"
# The parts of the form and the building's fields in each, with the columns of four they take.
PARTS: dict[str, dict[str, int]] = {
    "what": {
        "use": 2, "construction": 2, "year_built": 1, "area_m2": 1, "storeys": 1, "basement": 1,
        "special_features": 4,
    },
    "updated": {
        "roof_cover": 2, "roof_year": 1, "wiring_year": 1, "heating_type": 2, "heating_year": 1,
        "plumbing_year": 1,
    },
    "protection": {
        "sprinklers": 2, "fire_alarm": 2, "burglar_alarm": 2, "alarm_monitored": 2,
        "backwater_valve": 2, "sump_pump": 2, "hydrant_m": 1, "fire_hall_km": 1,
        "contents_below_grade": 2, "heritage": 2, "unoccupied_since": 2,
    },
}  # fmt: skip
LONG = ("special_features",)
INSURED = ("building", "contents")


def reason(setting: Setting) -> Words | None:
    """Return why it goes in: a finding brings it and there is a building to state."""
    return setting.brought(ID) if _buildings(setting) else None


def data(setting: Setting) -> Data:
    """Return the form with every building that is owned or looked after."""
    title, lead = setting.say("statement-of-values-title"), setting.say("statement-of-values-lead")
    return {
        "opening": setting.opening(ID, title, lead),
        "buildings": [_building(setting, building) for building in _buildings(setting)],
        "confirm": confirmation(setting, ID),
    }


def _buildings(setting: Setting) -> tuple[Building, ...]:
    """Return what the organisation must state: what it owns or looks after, and what it insures."""
    insured = {line.location for line in setting.case.terms.coverages} if setting.case.terms else {}
    return tuple(b for b in setting.file.buildings if b.ownership != "rent" or b.id in insured)


def _building(setting: Setting, building: Building) -> Data:
    return {
        "heading": building.name,
        "known": list(_known(setting, building)),
        "parts": [*_parts(setting, building), _sums(setting, building)],
    }


def _known(setting: Setting, building: Building) -> Iterator[tuple[str, str]]:
    where = ", ".join(filter(None, (building.address, building.town, building.postal_code)))
    if where:
        yield setting.say("field-address"), where
    if building.id in water_places(setting):
        yield setting.say("statement-of-values-water"), setting.say("statement-of-values-elsewhere")


def _parts(setting: Setting, building: Building) -> Iterator[Data]:
    """Yield the parts of the form, without what the water questionnaire asks of this building."""
    asked = of_building(setting, building)
    elsewhere = FACTS if building.id in water_places(setting) else ()
    for part, fields in PARTS.items():
        here = {name: span for name, span in fields.items() if name not in elsewhere}
        yield {
            "heading": setting.say(f"statement-of-values-{part}"),
            "fields": [
                asked.of_record(building, name, kind="lines" if name in LONG else "line", span=span)
                for name, span in here.items()
            ],
        }


def _sums(setting: Setting, building: Building) -> Data:
    fields = [_sum(setting, building, coverage) for coverage in INSURED]
    updates = of_building(setting, building).of_record(building, "updates", kind="lines", span=4)
    return {"heading": setting.say("statement-of-values-sums"), "fields": [*fields, updates]}


def _sum(setting: Setting, building: Building, coverage: str) -> Data:
    label = setting.say("form-sum", coverage=Term("coverage", coverage))
    tip = setting.say("form-tip", field=label, subject=building.name)
    described = Field(field_name("sums", building.id, coverage), "line", tip)
    note = " ".join(_known_sums(setting, building, coverage))
    return setting.fields.add(described, label, span=2, note=note)


def _known_sums(setting: Setting, building: Building, coverage: str) -> Iterator[str]:
    """Yield what the terms insure today, and for a building what it would cost."""
    terms = setting.case.terms
    line = terms.find(coverage, building.id) if terms else None
    if terms and line and line.limit is not None:
        yield setting.say("form-sum-now", amount=terms.money(line.limit))
    else:
        yield setting.say("form-sum-none")
    shown = [p for p in setting.pictures if p.building.id == building.id]
    if coverage == "building" and shown and shown[0].costs:
        costs = shown[0].costs
        amount, day = costs.rebuilt.money, costs.rebuilt_on
        yield setting.say("form-sum-cost", amount=amount, day=day)
