"""What the statement of values asks, filled in as the file has it."""

from __future__ import annotations

from collections.abc import Iterator
from decimal import Decimal
from typing import Any, get_args

from quarterday.core.file.layout import SHEETS
from quarterday.core.file.records import Building
from quarterday.core.file.records.buildings import Basement, Construction
from quarterday.core.words import Term, Words
from quarterday.papers.contacts_form.data import confirmation
from quarterday.papers.fields import Field, Kind, field_name
from quarterday.papers.setting import Data, Setting

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
CHOICES: dict[str, tuple[str, ...]] = {
    "construction": get_args(Construction), "basement": get_args(Basement),
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
    parts = [
        {
            "heading": setting.say(f"statement-of-values-{part}"),
            "fields": [_field(setting, building, name, span) for name, span in fields.items()],
        }
        for part, fields in PARTS.items()
    ]
    return {
        "heading": building.name,
        "known": list(_known(setting, building)),
        "parts": [*parts, _sums(setting, building)],
    }


def _known(setting: Setting, building: Building) -> Iterator[tuple[str, str]]:
    where = ", ".join(filter(None, (building.address, building.town, building.postal_code)))
    if where:
        yield setting.say("field-address"), where


def _field(setting: Setting, building: Building, name: str, span: int) -> Data:
    label = setting.say(f"field-{name.replace('_', '-')}")
    tip = setting.say("form-tip", field=label, subject=building.name)
    kind, options = _kind(setting, name)
    value = _written(getattr(building, name))
    described = Field(field_name("buildings", building.id, name), kind, tip, value, options)
    return setting.fields.add(described, label, span=span)


def _kind(setting: Setting, name: str) -> tuple[Kind, tuple[tuple[str, str], ...]]:
    if name in CHOICES:
        named = ((id, setting.spoken(Term(name, id))) for id in CHOICES[name])
        return "choice", (("", "–"), *named)
    if name in YES_NO:
        return "one of", tuple((id, setting.say(id)) for id in ("yes", "no"))
    return ("lines" if name in LONG else "line"), ()


YES_NO = {
    column.field for sheet in SHEETS if sheet.record is Building
    for column in sheet.columns if column.kind == "yes-no"
}  # fmt: skip


def _written(value: Any) -> str:  # noqa: ANN401 - a record's field may hold any cell
    if isinstance(value, bool):
        return "yes" if value else "no"
    if isinstance(value, tuple):
        return "; ".join(value)
    return "" if value is None else f"{value:f}" if isinstance(value, Decimal) else str(value)


def _sums(setting: Setting, building: Building) -> Data:
    fields = [_sum(setting, building, coverage) for coverage in INSURED]
    label = setting.say("field-updates")
    tip = setting.say("form-tip", field=label, subject=building.name)
    name = field_name("buildings", building.id, "updates")
    described = Field(name, "lines", tip, building.updates or "")
    updates = setting.fields.add(described, label, span=4)
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
