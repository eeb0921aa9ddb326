"""Signing in: the password, the second factor, the lock-out, the session."""

from __future__ import annotations

from base64 import b32encode
from datetime import UTC, datetime, timedelta

import pyotp
import pytest
from django.conf import settings
from django.test import Client
from tests.desk.conftest import FLAGSHIP, PASSWORD, As

from quarterday.people import factor, limits
from quarterday.people.models import Attempt, Grant, Person, RecoveryCode

ANN = "ann@holliswren.example.org"
NEXT = f"/files/{FLAGSHIP}/"


@pytest.fixture
def asks_for_factor(monkeypatch: pytest.MonkeyPatch) -> None:
    for module in ("guard", "views.signing_in"):
        monkeypatch.setattr(f"quarterday.desk.{module}.needs_factor", lambda: True)


def enter(browser: Client, email: str = ANN, password: str = PASSWORD, **more: str) -> int:
    form = {"email": email, "password": password, **more}
    return browser.post("/sign-in/", form).status_code


def with_factor(person: Person) -> str:
    """Set a second factor up, and return its secret."""
    secret = factor.new_secret()
    assert factor.set_up(person, secret, pyotp.TOTP(secret).now(), datetime.now(UTC))
    Person.objects.filter(pk=person.pk).update(factor_step=0)
    return secret


def test_a_right_password_lets_in_and_goes_on_where_the_person_was(people: object) -> None:
    browser = Client()
    answer = browser.post("/sign-in/", {"email": " ANN@Holliswren.example.org ",
                                        "password": PASSWORD, "next": NEXT})  # fmt: skip
    assert (answer.status_code, answer["Location"]) == (302, NEXT)


@pytest.mark.parametrize(
    "target", ["https://evil.example.org/", "//evil.example.org", "javascript:alert(1)", "\\\\evil"]
)
def test_nobody_is_sent_to_another_site(people: object, target: str) -> None:
    answer = Client().post("/sign-in/", {"email": ANN, "password": PASSWORD, "next": target})
    assert answer["Location"] == "/"


def test_the_session_gets_a_new_key_at_sign_in_and_ends_at_sign_out(people: object) -> None:
    """OWASP Session Management Cheat Sheet: renew the session id after any privilege change."""
    browser = Client()
    session = browser.session
    session["x"] = 1
    session.save()
    browser.cookies[settings.SESSION_COOKIE_NAME] = str(session.session_key)
    before = session.session_key
    enter(browser)
    after = browser.cookies[settings.SESSION_COOKIE_NAME].value
    assert after != before
    browser.post("/sign-out/")
    assert browser.get("/").status_code == 302
    again = Client()
    again.cookies[settings.SESSION_COOKIE_NAME] = after
    assert again.get("/").status_code == 302


def test_five_mistakes_lock_one_address_from_one_machine_and_nobody_else(people: object) -> None:
    browser = Client()
    assert [enter(browser, password="no") for _ in range(5)][:4] == [403] * 4
    assert enter(browser) == 429  # the right password, too late
    assert enter(browser, email="rhea@holliswren.example.org") == 302
    assert Client(REMOTE_ADDR="10.0.0.9").post(
        "/sign-in/", {"email": ANN, "password": PASSWORD}
    ).status_code == 302  # fmt: skip


def test_the_lock_opens_after_a_quarter_of_an_hour(people: object) -> None:
    browser = Client()
    for _ in range(5):
        enter(browser, password="no")
    Attempt.objects.update(at=datetime.now(UTC) - timedelta(minutes=15, seconds=1))
    assert enter(browser) == 302


def test_a_hundred_addresses_tried_from_one_machine_lock_the_machine(people: object) -> None:
    now = datetime.now(UTC)
    for _ in range(limits.LIMITS["sign-in-machine"].most):
        limits.count("sign-in-machine", "127.0.0.1", now)
    assert enter(Client()) == 429


def test_an_unknown_address_is_refused_in_the_words_of_a_wrong_password(people: object) -> None:
    pages = [Client().post("/sign-in/", {"email": email, "password": "no"}).content.decode()
             for email in (ANN, "nobody@example.org")]  # fmt: skip
    assert all("do not go together" in page for page in pages)


def test_passwords_are_kept_by_argon2id(people: dict[str, Person]) -> None:
    """OWASP Password Storage Cheat Sheet: argon2id first."""
    assert people["ann"].password.startswith("argon2$argon2id$")


def test_a_person_with_a_factor_is_not_in_before_the_code(
    people: dict[str, Person], asks_for_factor: None
) -> None:
    secret = with_factor(people["ann"])
    browser = Client()
    enter(browser, next=NEXT)
    assert browser.get("/").status_code == 302
    assert browser.post("/sign-in/code/", {"code": "000000"}).status_code == 403
    answer = browser.post("/sign-in/code/", {"code": pyotp.TOTP(secret).now()})
    assert (answer.status_code, answer["Location"]) == (302, NEXT)
    assert browser.get("/").status_code == 200


def test_five_wrong_codes_lock_the_second_step(
    people: dict[str, Person], asks_for_factor: None
) -> None:
    secret = with_factor(people["ann"])
    browser = Client()
    enter(browser)
    for _ in range(5):
        browser.post("/sign-in/code/", {"code": "12345"})
    assert browser.post("/sign-in/code/", {"code": pyotp.TOTP(secret).now()}).status_code == 403


def test_a_code_counts_once(people: dict[str, Person]) -> None:
    """RFC 6238, section 5.2: the verifier must not accept the second attempt of a code."""
    ann, now = people["ann"], datetime.now(UTC)
    code = pyotp.TOTP(with_factor(ann)).at(now)
    assert factor.passes(ann, code, now)
    assert not factor.passes(ann, code, now)


def test_codes_are_those_of_the_standard() -> None:
    """RFC 6238, appendix B: SHA-1, time 59 s gives 94287082, of which six digits are 287082."""
    secret = b32encode(b"12345678901234567890").decode()
    at = datetime.fromtimestamp(59, UTC)
    assert factor.accepted_step(secret, "287082", at, 0) == 1
    assert factor.accepted_step(secret, "287 082", at, 0) == 1
    assert factor.accepted_step(secret, "287082", at, 1) is None
    assert factor.accepted_step(secret, "287082", at + timedelta(seconds=90), 0) is None


def test_a_recovery_code_counts_once_and_is_kept_as_a_digest(people: dict[str, Person]) -> None:
    ann, now, secret = people["ann"], datetime.now(UTC), factor.new_secret()
    codes = factor.set_up(ann, secret, pyotp.TOTP(secret).at(now), now) or ()
    assert len(codes) == factor.CODES
    assert not RecoveryCode.objects.filter(digest__contains=codes[0]).exists()
    assert factor.passes(ann, codes[0].upper(), now)
    assert not factor.passes(ann, codes[0], now)


def test_the_secret_lies_encrypted_in_the_database(people: dict[str, Person]) -> None:
    secret = with_factor(people["ann"])
    kept = Person.objects.get(email=ANN).factor
    assert kept
    assert secret not in kept
    key = settings.QUARTERDAY_HOME / factor.KEY_FILE
    assert key.stat().st_mode & 0o077 == 0


def test_who_has_no_factor_yet_gets_no_further_than_setting_it_up(
    people: dict[str, Person], asks_for_factor: None
) -> None:
    browser = Client()
    enter(browser)
    assert browser.get("/")["Location"] == "/factor/"
    secret = browser.get("/factor/").context["secret"]
    assert browser.post("/factor/", {"code": "000000"}).status_code == 403
    done = browser.post("/factor/", {"code": pyotp.TOTP(secret).now()})
    assert len(done.context["codes"]) == factor.CODES
    assert browser.get("/").status_code == 200


def test_a_password_made_by_somebody_else_is_changed_first(people: dict[str, Person]) -> None:
    Person.objects.filter(email=ANN).update(must_change=True)
    browser = Client()
    enter(browser)
    assert browser.get("/")["Location"] == "/password/"
    form = {"old": PASSWORD, "new": "quite another password", "again": "quite another password"}
    assert browser.post("/password/", {**form, "old": "no"}).status_code == 422
    assert browser.post("/password/", {**form, "new": "short", "again": "short"}).status_code == 422
    assert browser.post("/password/", {**form, "again": "differs entirely"}).status_code == 422
    assert browser.post("/password/", form).status_code == 302
    assert browser.get("/").status_code == 200


def test_a_new_password_ends_the_persons_other_sessions(people: object) -> None:
    here, there = Client(), Client()
    enter(here)
    enter(there)
    form = {"old": PASSWORD, "new": "quite another password", "again": "quite another password"}
    here.post("/password/", form)
    assert here.get("/").status_code == 200
    assert there.get("/").status_code == 302


def test_what_was_typed_when_the_session_ran_out_comes_back_after_signing_in(
    book: None, signed_in: As
) -> None:
    browser = signed_in("ann")
    whose = browser.get(NEXT).context["who_mark"]
    browser.post("/sign-out/")
    form = {"text": "The roof was mended.", "seen": "1", "_who": whose}
    assert browser.post(f"{NEXT}note/", form)["Location"].startswith("/sign-in/")
    assert enter(browser) == 302
    page = browser.get("/kept/").content.decode()
    assert "The roof was mended." in page
    assert f'action="{NEXT}note/"' in page


def test_what_one_person_typed_is_not_shown_to_another(book: None, signed_in: As) -> None:
    browser = signed_in("ann")
    whose = browser.get(NEXT).context["who_mark"]
    browser.post("/sign-out/")
    browser.post(f"{NEXT}note/", {"text": "Between us.", "seen": "1", "_who": whose})
    enter(browser, email="maria@holliswren.example.org")
    assert browser.get("/kept/").status_code == 302
    assert "Between us." not in browser.get("/").content.decode()


def test_a_stranger_cannot_make_the_desk_keep_anything(book: None) -> None:
    browser = Client()
    browser.post(f"{NEXT}note/", {"text": "x", "seen": "1", "_who": "forged"})
    assert "kept" not in browser.session


def test_a_person_without_a_grant_sees_an_empty_desk(book: None, signed_in: As) -> None:
    assert "Nothing fits" in signed_in("sid").get("/?from=&until=").content.decode()


def test_grants_are_looked_up_at_every_request(
    book: None, signed_in: As, people: dict[str, Person]
) -> None:
    browser = signed_in("ann")
    assert browser.get(NEXT).status_code == 200
    Grant.objects.filter(person=people["ann"]).delete()
    assert browser.get(NEXT).status_code == 404
