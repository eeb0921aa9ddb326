"""What the operations form asks: every question of the profile, filled in as the file has it."""

from __future__ import annotations

from quarterday.core.words import Words
from quarterday.papers.abuse_form import data as abuse_form
from quarterday.papers.asking import YES_NO_UNKNOWN, Questions, columns, confirmation
from quarterday.papers.setting import Data, Setting

ID = "operations-form"
# The parts of the form and the questions of the profile in each. Yes-or-no questions are asked in
# rows, the others in columns of six, of which they take this many.
PARTS: dict[str, dict[str, int]] = {
    "people": {"attendance": 2, "employees": 2, "volunteers": 2, "largest_event": 2},
    "care": {
        "children": 0, "youth": 0, "vulnerable_adults": 0, "day_care": 0, "school": 0, "camp": 0,
        "overnight_stays": 0, "prevention_plan_reviewed_on": 2, "screening_training_on": 2,
        "record_checks_on": 2,
    },
    "premises": {
        "owns_premises": 0, "rents_premises": 0, "unoccupied_buildings": 0,
        "construction_planned": 0, "solar_panels": 0, "playground": 0, "cemetery": 0,
        "snow_by_volunteers": 0,
    },
    "doing": {
        "hall_rental": 0, "food_service": 0, "alcohol_at_events": 0, "counselling": 0,
        "social_media": 0, "personal_data_held": 0, "online_giving": 0,
    },
    "money": {"two_counters": 0, "safe": 0, "deposit_same_day": 0},
    "travel": {
        "trips_in_canada": 0, "trips_abroad": 0, "volunteer_drivers": 0, "trip_days": 2,
        "trip_people": 2, "vehicles_owned": 2,
    },
    "income": {
        "revenue_donations": 2, "revenue_rents": 2, "revenue_tuition": 2, "revenue_events": 2,
        "revenue_other": 2, "income_growth": 2,
    },
    "closed": {
        "premises_share": 3, "giving_kept": 3, "payroll": 3, "payroll_kept": 3,
        "expenses_stopping": 3, "rent_elsewhere": 3, "moving_costs": 3,
    },
}  # fmt: skip


def reason(setting: Setting) -> Words | None:
    """Return why it goes in: a finding brings it."""
    return setting.brought(ID)


def data(setting: Setting) -> Data:
    """Return every question of the profile once; what another form asks is left to that form."""
    title, lead = setting.say("operations-form-title"), setting.say("operations-form-lead")
    asked = Questions(setting, ("operations",), setting.name)
    return {
        "opening": setting.opening(ID, title, lead),
        "parts": [_part(setting, asked, part, fields) for part, fields in PARTS.items()],
        "more": asked.of_record(setting.file.operations, "notes", kind="lines", height=60),
        "confirm": confirmation(setting, ID),
    }


def _part(setting: Setting, asked: Questions, part: str, fields: dict[str, int]) -> Data:
    profile = setting.file.operations
    elsewhere = abuse_form.DATES if abuse_form.reason(setting) else ()
    here = {name: span for name, span in fields.items() if name not in elsewhere}
    yes_no = [n for n in here if columns(type(profile))[n].kind == "yes-no"]
    rest = {name: span for name, span in here.items() if name not in yes_no}
    return {
        "heading": setting.say(f"operations-form-{part}"),
        "lead": setting.say(f"operations-form-{part}-lead") if part == "closed" else None,
        "rows": [asked.of_record(profile, n, answers=YES_NO_UNKNOWN) for n in yes_no],
        "fields": [asked.of_record(profile, n, span=span) for n, span in rest.items()],
    }
