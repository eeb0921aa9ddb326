"""What the water questionnaire asks of each place that had a water claim."""

from __future__ import annotations

from collections.abc import Iterator

from quarterday.core.claims.record import summed, water_claims
from quarterday.core.file.records import Building, Claim
from quarterday.core.file.records.terms import EVERYWHERE
from quarterday.core.review.finding import Finding
from quarterday.core.words import Term, Words
from quarterday.papers.asking import YES_NO_UNKNOWN, Questions, confirmation, of_building
from quarterday.papers.fields import Kind
from quarterday.papers.setting import Data, Setting

ID = "water-form"
LOOKBACK = "claims.water-lookback-years"
# What the file itself can hold of a building, and what only this form asks.
FACTS = (
    "backwater_valve", "sump_pump", "sump_battery", "water_sensors", "automatic_shutoff",
    "contents_below_grade",
)  # fmt: skip
HABITS = ("off-floor", "warm", "shut", "hoses", "drains", "downspouts")
REPAIRED: dict[str, Kind] = {"repaired": "lines", "cause": "lines"}
CHECKED = ("valve-cleaned", "pump-tested", "roof-checked")


def reason(setting: Setting) -> Words | None:
    """Return why it goes in: a finding brings it."""
    return setting.brought(ID)


def data(setting: Setting) -> Data:
    """Return the questions for each place, the one with the most claims first."""
    title = setting.say("water-form-title", count=len(places(setting)))
    return {
        "opening": setting.opening(ID, title, setting.say("water-form-lead")),
        "header": [setting.say(f"water-form-{id}") for id in ("day", "happened", "incurred")],
        "places": [_place(setting, finding) for finding in _findings(setting).values()],
        "notes": [setting.say("water-form-caution")],
        "confirm": confirmation(setting, ID),
    }


def _findings(setting: Setting) -> dict[str, Finding]:
    """Return the findings that bring the form by the place they are about, in order."""
    found: dict[str, Finding] = {}
    for finding in setting.bringing(ID):
        key = finding.subject.key if finding.subject.kind == "building" else EVERYWHERE
        found.setdefault(key or EVERYWHERE, finding)
    return found


def places(setting: Setting) -> tuple[str, ...]:
    """Return the ids of the places asked about: buildings, or everywhere when none is named."""
    return tuple(_findings(setting))


def _place(setting: Setting, finding: Finding) -> Data:
    building = setting.file.get(Building, finding.subject.key)
    key = building.id if building else EVERYWHERE
    name = setting.spoken(finding.subject.name)
    asked = Questions(setting, ("water", key), name)
    facts = of_building(setting, building) if building else None
    return {
        "heading": name,
        "claims": [list(_told(setting, claim)) for claim in _claims(setting, key)],
        "repaired": [_written(asked, id, kind) for id, kind in REPAIRED.items()],
        "now": setting.say("water-form-now"),
        "rows": [*_facts(facts, building), *(_habit(asked, id) for id in HABITS)],
        "checked": [_written(asked, id, "line") for id in CHECKED],
        "more": _written(asked, "more", "lines"),
    }


def _claims(setting: Setting, key: str) -> tuple[Claim, ...]:
    years = int(str(setting.case.parameter(LOOKBACK).value))
    water = water_claims(setting.case, years)
    return tuple(claim for claim in water if (claim.location or EVERYWHERE) == key)


def _told(setting: Setting, claim: Claim) -> Iterator[str]:
    yield setting.short_day(claim.date_of_loss)
    yield setting.sentence(setting.spoken(Term("cause", claim.cause))).rstrip(".")
    currency = setting.case.terms.currency if setting.case.terms else "CAD"
    yield setting.dollars(summed((claim,), currency).incurred)


def _facts(asked: Questions | None, building: Building | None) -> Iterator[Data]:
    if asked and building:
        for name in FACTS:
            yield asked.of_record(building, name, answers=YES_NO_UNKNOWN)


def _habit(asked: Questions, id: str) -> Data:
    label = asked.setting.say(f"water-form-{id}")
    return asked.answers(id.replace("-", "_"), label, "", YES_NO_UNKNOWN)


def _written(asked: Questions, id: str, kind: Kind) -> Data:
    return asked.ask(id.replace("-", "_"), asked.setting.say(f"water-form-{id}"), kind)
