"""The history says what things are called: no key, digest or id of ours stands for a name."""

from __future__ import annotations

import re
from pathlib import Path

import pytest
from django.test import Client
from tests.browser.stage import BUSY, prepare
from tests.desk.conftest import DAY

from quarterday.catalogue.load import reference
from quarterday.catalogue.speech import Speech
from quarterday.office.called import leaf_told
from quarterday.people.models import Person

DIGEST = re.compile("[0-9a-f]{40}")
RAW = ("@", "option/", "/en/", "*/", "<")


@pytest.mark.parametrize("language", ["en", "fr"])
def test_every_line_names_its_record_as_people_do(
    language: str, certificate: Path, people: object, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setenv("QUARTERDAY_MAIL", "files")
    stage, browser = prepare(DAY), Client()
    Person.objects.update(language=language)
    browser.force_login(Person.objects.get(pk=stage.people["manager"].pk))
    page = browser.get(f"/files/{BUSY}/history/")
    lines = [(str(step["called"]), str(step["by"])) for step in page.context["steps"]]
    assert len(lines) > 60
    raw = [line for line in lines if any(mark in text for text in line for mark in RAW)]
    assert raw == []
    assert [line for line in lines if DIGEST.search(line[0])] == []
    called = {name for name, _ in lines}
    assert {"Priya Nathan", "The wardens"} < called
    assert ("English, version 2" if language == "en" else "anglais, version 2") in called


@pytest.mark.parametrize(
    ("kind", "path", "value", "said"),
    [
        ("decision", "answer", "take-it", "take it"),
        ("organisation", "province", "ON", "Ontario"),
        ("organisation", "language", "fr", "French"),
        ("organisation", "founded_year", 1884, "1884"),
        ("terms", "coverages[building/hall].limit", "1423000", "$1,423,000"),
        ("terms", "coverages[building/hall].coinsurance", "0.9", "90%"),
        ("terms", "coverages[building/hall].location", "*", "everywhere"),
        ("claim", "status", "open", "open"),
        ("contact", "is_key", True, "yes"),
        ("contact", "phone", None, "–"),
        ("decision", "answer", "no such", "no such"),
        ("unheard of", "field", "text", "text"),
    ],
)
def test_a_value_is_told_as_the_forms_show_it(
    kind: str, path: str, value: str | int | None, said: str
) -> None:
    assert leaf_told(kind, path, value, Speech(reference(), "en")) == said
