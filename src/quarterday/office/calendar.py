"""The diary as a calendar that programs subscribe to (RFC 5545)."""

from __future__ import annotations

from collections.abc import Iterable
from datetime import UTC, date, datetime, time, timedelta

from icalendar import Calendar, Event

from quarterday.catalogue.speech import Speech
from quarterday.core.words import Term, words
from quarterday.store.day_list import Step

NAME = "-//Quarterday//Diary//EN"


def calendar(steps: Iterable[Step], speech: Speech, day: date, address: str) -> bytes:
    """Return the steps as whole-day events in the person's language.

    ``address`` is where a file's page lies, with ``{file}`` for its id. The same steps on the same
    day make the same bytes.
    """
    made = Calendar()
    made.add("prodid", NAME)
    made.add("version", "2.0")
    made.add("method", "PUBLISH")
    made.add("x-wr-calname", speech.say(words("desk-feed-name")))
    made.add("refresh-interval", timedelta(hours=4), parameters={"VALUE": "DURATION"})
    for step in steps:
        made.add_component(_event(step, speech, day, address))
    return bytes(made.to_ical())


def _event(step: Step, speech: Speech, day: date, address: str) -> Event:
    event = Event()
    event.add("uid", f"{step.file}/{step.renewal}/{step.step}@quarterday")
    event.add("dtstamp", datetime.combine(day, time(), UTC))
    event.add("dtstart", step.latest)
    event.add("dtend", step.latest + timedelta(days=1))
    what = words(f"diary-{step.step}")
    event.add("summary", speech.say(words("desk-feed-what", what=what, name=step.name)))
    who = Term("who", step.who)
    told = words("desk-feed-more", who=who, start=step.start_by, renewal=step.renewal)
    event.add("description", speech.say(told))
    event.add("transp", "TRANSPARENT")
    event.add("url", address.format(file=step.file))
    return event
