"""Access keys: made with the second factor, shown once, listed, over or ended; kept as digests."""

from __future__ import annotations

import json
from collections.abc import Callable
from datetime import UTC, datetime, timedelta

import pyotp
import pytest
from tests.api.conftest import NOW, ROOT, Program
from tests.desk.conftest import As as Browsers
from tests.desk.conftest import signed_in

from quarterday.office import access_keys as office
from quarterday.office.trouble import Trouble
from quarterday.people import access_keys, factor
from quarterday.people.models import AccessKey, Person

__all__ = ["signed_in"]
As = Callable[[str], Program]


def test_a_key_is_kept_as_a_digest_alone(people: dict[str, Person]) -> None:
    made, secret = access_keys.new(people["ann"], "x", "read", NOW + timedelta(days=1), NOW)
    kept = json.dumps(list(AccessKey.objects.values()), default=str)
    assert secret not in kept
    assert secret.removeprefix(access_keys.PREFIX) not in kept
    assert len(made.digest) == 64
    assert len(secret) >= 43 + len(access_keys.PREFIX)  # 256 bits in base 64


def test_a_key_counts_until_its_last_moment(people: dict[str, Person]) -> None:
    until = NOW + timedelta(days=1)
    _, secret = access_keys.new(people["ann"], "x", "read", until, NOW)
    assert access_keys.holder(secret, until - timedelta(seconds=1)) is not None
    assert access_keys.holder(secret, until) is None
    assert access_keys.holder(secret + "x", NOW) is None


def test_the_desk_shows_a_new_key_once_and_lists_it(
    book: None, people: dict[str, Person], signed_in: Browsers
) -> None:
    browser = signed_in("ann")
    page = browser.post("/keys/", {"name": "My list", "scope": "read", "days": "30"})
    secret = page.context["secret"]
    assert secret in page.content.decode()
    again = browser.get("/keys/").content.decode()
    assert secret not in again
    assert "My list" in again
    assert "never" in again
    assert Program(secret).get(f"{ROOT}/me").json()["key"]["name"] == "My list"
    assert "never" not in browser.get("/keys/").content.decode()


def test_the_desk_ends_a_key_at_once_but_only_ones_own(
    book: None, program: As, people: dict[str, Person], signed_in: Browsers
) -> None:
    key = people["ann"].access_keys.get(name="ann's program")
    assert signed_in("maria").post(f"/keys/{key.pk}/end/").status_code == 422
    assert program("ann").get(f"{ROOT}/me").status_code == 200
    assert signed_in("ann").post(f"/keys/{key.pk}/end/").status_code == 302
    assert program("ann").get(f"{ROOT}/me").status_code == 401


@pytest.mark.parametrize(
    ("field", "value", "words"),
    [("name", " ", "needs a name"), ("days", "0", "1 to 366"), ("days", "367", "1 to 366"),
     ("days", "many", "1 to 366"), ("scope", "all", "")],
)  # fmt: skip
def test_a_key_that_cannot_be_is_refused_and_what_was_typed_stays(
    field: str, value: str, words: str, book: None, people: object, signed_in: Browsers
) -> None:
    form = {"name": "My list", "scope": "read", "days": "30", field: value}
    page = signed_in("ann").post("/keys/", form)
    assert page.status_code == 422
    assert words in page.content.decode()
    assert not AccessKey.objects.exists()


def test_a_key_is_made_with_the_code_of_the_second_factor(
    people: dict[str, Person], monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(office, "needs_factor", lambda: True)
    ann, now, secret = people["ann"], datetime.now(UTC), pyotp.random_base32()

    def make(code: str) -> object:
        return office.make(ann, name="x", scope="act", days=1, code=code, now=now)

    with pytest.raises(Trouble, match="keys-no-factor"):
        make("123456")
    earlier = now - timedelta(minutes=2)
    assert factor.set_up(ann, secret, pyotp.TOTP(secret).at(earlier), earlier)
    with pytest.raises(Trouble, match="desk-code-wrong"):
        make("000000")
    assert make(pyotp.TOTP(secret).at(now))


def test_without_a_second_factor_no_key_counts_where_one_is_needed(
    book: None, program: As, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(office, "needs_factor", lambda: True)
    assert program("ann").get(f"{ROOT}/me").status_code == 401


def test_nobody_has_keys_without_end(people: dict[str, Person]) -> None:
    until = NOW + timedelta(days=2)
    for number in range(office.MOST):
        access_keys.new(people["ann"], str(number), "read", until, NOW)
    with pytest.raises(Trouble, match="keys-too-many"):
        office.make(people["ann"], name="x", scope="read", days=1, code="", now=NOW)


def test_what_was_last_used_is_shown(book: None, program: As) -> None:
    program("ann").get(f"{ROOT}/me")
    shown = program("ann").get(f"{ROOT}/me").json()["key"]
    assert shown["last_used"] is not None
    assert shown["scope"] == "act"
    assert shown["state"] == "counts"
