"""What the abuse prevention declaration asks: each step, done or not yet; dates; the chair's name.

The published standards beside the questions are guidance, not law; the wordings name them.
"""

from __future__ import annotations

from collections.abc import Iterator

from quarterday.core.words import Words
from quarterday.papers.asking import Questions, confirmation
from quarterday.papers.setting import Data, Setting

ID = "abuse-form"
# The parts of the form and the steps in each; those of NOTED have a published standard beside them.
PARTS: dict[str, tuple[str, ...]] = {
    "plan": ("written", "known", "reporting", "kept"),
    "screening": ("application", "interview", "references", "checks", "waiting"),
    "training": ("start", "yearly"),
    "together": ("two-adults", "open", "messages", "away", "renters"),
}
NOTED = ("references", "checks", "two-adults", "messages")
ANSWERS = ("abuse-form-do", "abuse-form-not-yet", "abuse-form-not-ours")
STORED = ("do", "not-yet", "not-ours")
DATES = ("prevention_plan_reviewed_on", "screening_training_on", "record_checks_on")
COUNTS = ("people", "checked", "trained")


def reason(setting: Setting) -> Words | None:
    """Return why it goes in: a finding brings it."""
    return setting.brought(ID)


def data(setting: Setting) -> Data:
    """Return the declaration; no answer is filled in, only the days that are on file."""
    asked = Questions(setting, ("abuse",), setting.name)
    title, lead = setting.say("abuse-form-title"), setting.say("abuse-form-lead")
    return {
        "opening": setting.opening(ID, title, lead),
        "first": [setting.say("caution-at-risk")],
        "parts": [_part(asked, part, steps) for part, steps in PARTS.items()],
        "numbers": {
            "heading": setting.say("abuse-form-numbers"),
            "fields": [*_days(setting), *_counts(asked)],
        },
        "open": asked.ask("remaining", setting.say("abuse-form-open"), "lines", height=46),
        "notes": [setting.say("abuse-form-standards"), setting.say("abuse-form-law")],
        "confirm": _signed(setting, asked),
    }


def _part(asked: Questions, part: str, steps: tuple[str, ...]) -> Data:
    heading = asked.setting.say(f"abuse-form-{part}")
    return {"heading": heading, "rows": [_step(asked, step) for step in steps]}


def _step(asked: Questions, step: str) -> Data:
    say = asked.setting.say
    label = say(f"abuse-form-step-{step}")
    note = say(f"abuse-form-note-{step}") if step in NOTED else None
    options = tuple(zip(STORED, map(say, ANSWERS), strict=True))
    return asked.ask(step.replace("-", "_"), label, "one of", "", options, note=note)


def _days(setting: Setting) -> Iterator[Data]:
    asked = Questions(setting, ("operations",), setting.name)
    for name in DATES:
        yield asked.of_record(setting.file.operations, name)


def _counts(asked: Questions) -> Iterator[Data]:
    for name in COUNTS:
        yield asked.ask(name, asked.setting.say(f"abuse-form-{name}"))


def _signed(setting: Setting, asked: Questions) -> Data:
    told = confirmation(setting, ID, heading="abuse-form-signed", lead="abuse-form-signed-lead")
    adopted = asked.ask("adopted_on", setting.say("abuse-form-adopted"))
    signature = asked.ask("signature", setting.say("abuse-form-signature"), span=2, height=26)
    return told | {"fields": [*told["fields"], adopted, signature]}
