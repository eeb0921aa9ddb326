"""Access keys from the terminal: made with the second factor, listed, ended."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta

import pyotp
import pytest
from click.testing import Result
from tests.cli.conftest import Run, printed

from quarterday.people import access_keys, factor
from quarterday.people.models import Person

EMAIL = "ann@example.org"


@pytest.fixture
def ann(run: Run) -> str:
    """Let ann in, set up her second factor, and return its secret."""
    added = run("person", "--name", "Ann", "--email", EMAIL, "--role", "owner")
    assert added.exit_code == 0
    secret, earlier = pyotp.random_base32(), datetime.now(UTC) - timedelta(minutes=3)
    code = pyotp.TOTP(secret).at(earlier)
    assert factor.set_up(Person.objects.get(email=EMAIL), secret, code, earlier)
    return secret


def make(run: Run, secret: str, *more: str) -> Result:
    return run("key", EMAIL, "--new", "A list", "--code", pyotp.TOTP(secret).now(), *more)


def test_a_key_is_shown_once_and_then_listed_without_its_secret(run: Run, ann: str) -> None:
    made = make(run, ann)
    assert made.exit_code == 0
    secret = made.stdout.strip()
    assert access_keys.holder(secret, datetime.now(UTC)) is not None
    listed = run("key", EMAIL)
    assert "A list" in listed.stdout
    assert secret not in listed.stdout
    assert max(map(len, listed.stdout.splitlines())) <= 80


def test_a_key_is_ended_by_its_number(run: Run, ann: str) -> None:
    made = printed(make(run, ann, "--json", "--scope", "act", "--days", "2"))
    assert made["scope"] == "act"
    ended = run("key", EMAIL, "--end", str(made["number"]), "--json")
    assert [one["state"] for one in printed(ended)] == ["ended"]
    assert access_keys.holder(made["key"], datetime.now(UTC)) is None


@pytest.mark.parametrize("language", ["en", "fr"])
@pytest.mark.parametrize(
    ("words", "told"),
    [
        (("key", "nobody@example.org"), "nobody@example.org"),
        (("key", EMAIL, "--end", "77"), "77"),
        (("key", EMAIL, "--new", "x", "--code", "000000"), "code"),
        (("key", EMAIL, "--new", "x", "--days", "999"), "366"),
    ],
)
def test_what_cannot_be_is_told_in_a_sentence(
    words: tuple[str, ...], told: str, language: str, run: Run, ann: str
) -> None:
    done = run("--language", language, *words)
    assert done.exit_code == 1
    assert told in done.stderr
    assert not done.stdout
