"""The store and people of the desk's tests, with a program for each: each test says whose key asks.

Beside ann, cole, maria, rhea and sid: ``reader`` is ann's key that may only read, ``over`` her key
that is over, ``ended`` one that was ended, and ``none`` asks without a key.
"""

from __future__ import annotations

import json
from collections.abc import Callable
from datetime import UTC, datetime, timedelta
from typing import Any

import pytest
from django.core.files.uploadedfile import SimpleUploadedFile
from django.test import Client
from tests.desk.conftest import DAY, FLAGSHIP, OTHER, PEOPLE, book, make_person, people

from quarterday.office import demo_people
from quarterday.people import access_keys
from quarterday.people.models import Person

__all__ = ["DAY", "FLAGSHIP", "OTHER", "PEOPLE", "book", "make_person", "people"]
NOW = datetime.now(UTC)
ROOT = "/api/v1"
FILE = f"{ROOT}/files/{FLAGSHIP}"
KEYS = (*PEOPLE, "reader", "over", "ended", "none")


class Program:
    """A program that asks with a key, or without one; what it gets back is read as JSON."""

    def __init__(self, secret: str = "", language: str = "en") -> None:
        self.client = Client(enforce_csrf_checks=True, raise_request_exception=True)
        self.headers = {"Accept-Language": language}
        if secret:
            self.headers["Authorization"] = f"Bearer {secret}"

    def get(self, path: str, **headers: str) -> Any:
        return self.client.get(path, headers={**self.headers, **headers})

    def post(
        self, path: str, said: object, *, kind: str = "application/json", **headers: str
    ) -> Any:
        body = said if isinstance(said, bytes | str) else json.dumps(said)
        return self.client.post(
            path, body, content_type=kind, headers={**self.headers, **headers}
        )  # fmt: skip

    def delete(self, path: str, **headers: str) -> Any:
        return self.client.delete(path, headers={**self.headers, **headers})

    def send(self, path: str, name: str, content: bytes, **headers: str) -> Any:
        document = SimpleUploadedFile(name, content)
        return self.client.post(
            path, {"document": document}, headers={**self.headers, **headers}
        )  # fmt: skip


@pytest.fixture(autouse=True)
def _demo_day(monkeypatch: pytest.MonkeyPatch) -> None:
    """Hold the day to the demo's, on which no second factor is asked for."""
    monkeypatch.setattr(demo_people, "demo_day", lambda: DAY)


@pytest.fixture
def secrets(people: dict[str, Person]) -> dict[str, str]:
    """Make each person's key that may act, and ann's others."""
    until = NOW + timedelta(days=90)
    made = {
        name: access_keys.new(person, f"{name}'s program", "act", until, NOW)[1]
        for name, person in people.items()
    }
    ann = people["ann"]
    made["reader"] = access_keys.new(ann, "a list", "read", until, NOW)[1]
    made["over"] = access_keys.new(ann, "of last year", "act", NOW, NOW - timedelta(days=9))[1]
    key, made["ended"] = access_keys.new(ann, "lost", "act", until, NOW)
    access_keys.revoke(ann, key.pk, NOW)
    return {**made, "none": ""}


@pytest.fixture
def program(secrets: dict[str, str]) -> Callable[[str], Program]:
    """Return the program that asks with a named key."""
    return lambda name: Program(secrets[name])
