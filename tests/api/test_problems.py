"""Trouble has one shape (RFC 9457) and one clear sentence in the asked language."""

from __future__ import annotations

import json
from collections.abc import Callable
from decimal import Decimal
from typing import Any

import pytest
from django.conf import settings
from tests.api.conftest import FILE, FLAGSHIP, ROOT, Program

from quarterday.api import problems
from quarterday.people import access_keys, limits
from quarterday.people.models import AccessKey, Person
from quarterday.store import ledger

As = Callable[[str], Program]
NOTE = f"{FILE}/notes"


def told(answer: Any, status: int, kind: str) -> dict[str, Any]:
    """Return a problem, after checking what RFC 9457 asks of it."""
    assert answer.status_code == status, answer.content
    assert answer["Content-Type"] == "application/problem+json"
    found: dict[str, Any] = answer.json()
    assert found["status"] == status
    assert found["type"] == f"{ROOT}/problems#{kind}"
    assert found["title"]
    assert found["detail"].endswith((".", "…"))
    assert "Traceback" not in found["detail"]
    return found


@pytest.mark.parametrize(
    ("body", "words"),
    [
        (b"{", "breaks off"),
        (b"nothing", "breaks off"),
        (b'{"seen": 1, "seen": 2, "text": "x"}', '"seen" stands in it twice'),
        (b'{"seen": NaN, "text": "x"}', "not finite"),
        (b"\xff\xfe{}", "not UTF-8"),
        (b"[" * 100_000, "nested too deep"),
        (b'{"seen": ' + b"9" * 5000 + b"}", "too long"),
    ],
)
def test_what_is_not_json_is_told_with_the_reason(
    body: bytes, words: str, book: None, program: As
) -> None:
    answer = program("ann").post(NOTE, body)
    assert words in told(answer, 400, "bad-request")["detail"]


@pytest.mark.parametrize(
    ("said", "where", "words"),
    [
        ({"seen": 1}, "text", "is missing"),
        ({"seen": 1, "text": "x", "colour": "red"}, "colour", "not known here"),
        ({"seen": "1", "text": "x"}, "seen", "whole number"),
        ({"seen": True, "text": "x"}, "seen", "whole number"),
        ({"seen": 1.5, "text": "x"}, "seen", "whole number"),
        ({"seen": -1, "text": "x"}, "seen", "whole number"),
        ({"seen": 1, "text": 5}, "text", "no text that can be kept"),
        ({"seen": 1, "text": "a\0b"}, "text", "no text that can be kept"),
        ({"seen": 1, "text": "x" * 10_001}, "text", "no text that can be kept"),
        ([], "body", "wrong form"),
    ],
)
def test_what_is_wrong_with_the_input_is_told_by_name(
    said: object, where: str, words: str, book: None, program: As
) -> None:
    found = told(program("ann").post(NOTE, said), 400, "bad-input")
    assert words in found["detail"]
    assert [fault["where"] for fault in found["errors"]] == [where]


@pytest.mark.parametrize("number", ["999.0", "9.99e2", "99900E-2"])
def test_a_number_is_whole_by_its_value_not_its_writing(
    number: str, book: None, program: As
) -> None:
    """JSON Schema 2020-12, Validation 6.1.1: a number without a fraction is an integer."""
    answer = program("ann").post(NOTE, f'{{"seen": {number}, "text": "x"}}')
    assert answer.status_code == 200, answer.content


@pytest.mark.parametrize(
    "number", ["999.5", "-1.0", "1e10", "1e999", "1e99999999999999999999", "1e-9", '"999.0"']
)
def test_what_is_no_usable_whole_number_is_refused_however_it_is_written(
    number: str, book: None, program: As
) -> None:
    answer = program("ann").post(NOTE, f'{{"seen": {number}, "text": "x"}}')
    assert "whole number" in told(answer, 400, "bad-input")["detail"]


def test_a_bare_number_in_a_record_is_read_as_it_is_written(book: None, program: As) -> None:
    """The same as the number in quotation marks, which the guide shows."""
    record = next(
        one["record"] for one in program("ann").get(FILE).json()["records"]
        if one["kind"] == "building" and one["record"].get("area_m2")
    )  # fmt: skip
    said = json.dumps({"kind": "building", "key": record["id"], "seen": 999,
                       "record": {**record, "area_m2": "HERE"}})  # fmt: skip
    answer = program("ann").post(f"{FILE}/records", said.replace('"HERE"', "123.40"))
    assert answer.status_code == 200, answer.content
    kept = next(one for one in ledger.load(FLAGSHIP).buildings if one.id == record["id"])
    assert kept.area_m2 == Decimal("123.40")


@pytest.mark.parametrize(
    ("query", "words"),
    [
        ("colour=red", '"colour" is not known here'),
        ("limit=5&limit=6", '"limit" is given more than once'),
        ("limit=0", "whole number"),
        ("limit=many", "whole number"),
        ("since=tomorrow", "Write it like 2026-11-25"),
        ("since=1767225600", "Write it like 2026-11-25"),
        ("state=lost", "Write one of"),
    ],
)
def test_a_wrong_query_is_told_by_name(query: str, words: str, book: None, program: As) -> None:
    assert words in told(program("ann").get(f"{ROOT}/files?{query}"), 400, "bad-input")["detail"]


def test_a_mark_that_was_not_given_out_is_refused(book: None, program: As) -> None:
    for mark in ("x", "bnVsbA", "W251bGwsICJ4IiwgInkiXQ", "%00"):
        answer = program("ann").get(f"{ROOT}/files?after={mark}")
        assert answer.status_code in {400, 422}, mark


def test_a_day_out_of_all_reach_is_refused(book: None, program: As) -> None:
    for day in ("0001-01-01", "1900-01-01", "9999-12-31"):
        told(program("ann").get(f"{FILE}/review?as_of={day}"), 422, "refused")


def test_a_body_of_another_kind_is_refused(book: None, program: As) -> None:
    answer = program("ann").post(NOTE, "seen=1&text=x", kind="application/x-www-form-urlencoded")
    assert "application/json" in told(answer, 415, "bad-kind")["detail"]


def test_what_is_too_large_is_refused_unread(book: None, program: As) -> None:
    most = settings.DATA_UPLOAD_MAX_MEMORY_SIZE
    body = json.dumps({"seen": 1, "text": "x" * most})
    told(program("ann").post(NOTE, body), 413, "too-large")
    sent = program("ann").client.post(
        f"{ROOT}/loads", b"", content_type="multipart/form-data; boundary=x",
        headers=program("ann").headers, CONTENT_LENGTH=str(settings.MOST_UPLOADED * 2),
    )  # fmt: skip
    assert "30 MB" in told(sent, 413, "too-large")["detail"]


@pytest.mark.parametrize("path", ["/api/", "/api/v1/nothing", "/api/v2/files", "/api/v1/files/a/b"])
def test_an_address_where_nothing_is_has_its_problem_too(
    path: str, book: None, program: As
) -> None:
    told(program("ann").get(path), 404, "not-found")


def test_a_way_that_is_not_answered_is_named(book: None, program: As) -> None:
    answer = program("ann").delete(FILE)
    assert "DELETE" in told(answer, 405, "bad-method")["detail"]
    assert "GET" in answer["Allow"]


def test_a_failure_of_the_program_says_nothing_of_its_inside(
    book: None, program: As, monkeypatch: pytest.MonkeyPatch
) -> None:
    def fail(*_: object) -> None:
        raise ZeroDivisionError("secret inside")

    monkeypatch.setattr("quarterday.office.plain.review", fail)
    found = told(program("ann").get(f"{FILE}/review"), 500, "broken")
    assert "secret" not in str(found)


def test_trouble_speaks_the_asked_language_else_the_persons(
    book: None, secrets: dict[str, str], people: dict[str, Person]
) -> None:
    path = f"{ROOT}/files/HW-9999"
    for asked, language in (("fr-CA,fr;q=0.9,en;q=0.5", "fr"), ("de, en;q=0.5", "en")):
        answer = Program(secrets["ann"], asked).get(path)
        assert answer["Content-Language"] == language
    Person.objects.filter(pk=people["ann"].pk).update(language="fr")
    assert Program(secrets["ann"], "de").get(path)["Content-Language"] == "fr"
    assert "clé" in Program("", "fr").get(path).json()["detail"]


def test_without_a_key_it_is_said_how_to_send_one(book: None, program: As) -> None:
    answer = program("none").get(FILE)
    assert "Bearer" in told(answer, 401, "no-key")["detail"]
    assert answer["WWW-Authenticate"] == "Bearer"


@pytest.mark.parametrize("header", ["Basic YTpi", "Bearer", "Bearer  ", "bearer x y", "\u00e9"])
def test_what_is_no_key_is_told_so(header: str, book: None) -> None:
    asker = Program()
    asker.headers["Authorization"] = header
    told(asker.get(FILE), 401, "no-key")


def test_a_key_that_asks_too_often_waits_a_minute(
    book: None, program: As, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(access_keys, "MOST_A_MINUTE", 3)
    for _ in range(3):
        assert program("ann").get(f"{ROOT}/me").status_code == 200
    answer = program("ann").get(f"{ROOT}/me")
    told(answer, 429, "too-often")
    assert answer["Retry-After"] == "60"
    assert program("maria").get(f"{ROOT}/me").status_code == 200
    AccessKey.objects.update(minute="2026-01-01T00:00:00Z")
    assert program("ann").get(f"{ROOT}/me").status_code == 200


def test_wrong_keys_do_not_shut_out_a_right_one(book: None, program: As) -> None:
    most = limits.LIMITS["key-wrong"].most
    for _ in range(most):
        told(Program("quarterday_wrong").get(FILE), 401, "no-key")
    told(Program("quarterday_wrong").get(FILE), 429, "too-often")
    assert program("ann").get(FILE).status_code == 200


def test_every_answer_has_its_safe_headers(book: None, program: As) -> None:
    for answer in (program("ann").get(FILE), program("none").get(FILE)):
        assert answer["Cache-Control"] == "private, no-store"
        assert answer["X-Content-Type-Options"] == "nosniff"
        assert "default-src 'none'" in answer["Content-Security-Policy"]
        assert answer["Vary"] == "Accept-Language, Authorization"
        assert not answer.cookies


def test_every_kind_of_problem_has_its_title_in_both_languages(book: None) -> None:
    for language in ("en", "fr"):
        found = Program("", language).get(f"{ROOT}/problems").json()
        assert {one["id"]: one["status"] for one in found} == problems.STATUSES
        assert all(one["title"] for one in found)


def test_no_secret_and_no_query_reaches_the_log(
    book: None, secrets: dict[str, str], caplog: pytest.LogCaptureFixture
) -> None:
    Program(secrets["ann"]).get(f"{ROOT}/files/none?colour=red")
    assert secrets["ann"] not in caplog.text
    assert ledger.load(FLAGSHIP).organisation.name not in caplog.text


def test_a_wrong_value_is_told_with_what_was_said(book: None, program: As) -> None:
    found = told(program("ann").post(NOTE, {"seen": "many", "text": "x"}), 400, "bad-input")
    assert '"seen" is "many"' in found["detail"]


def test_a_span_without_a_day_is_refused(book: None, program: As) -> None:
    for query in ("since=2027-02-01&until=2027-01-01", "since=2027-02-01&until=2027-02-01"):
        assert (
            "until" in told(program("ann").get(f"{ROOT}/files?{query}"), 422, "refused")["detail"]
        )


@pytest.mark.parametrize(
    ("path", "name", "words"),
    [("forms", "form.pdf", "is empty"), ("loads", "book.xlsx", "is empty"),
     ("forms", "document", "no PDF")],
)  # fmt: skip
def test_an_empty_document_is_told(
    path: str, name: str, words: str, book: None, program: As
) -> None:
    """The body is written out as RFC 2046 has it: not every encoder can write an empty part."""
    head = f'--x\r\nContent-Disposition: form-data; name="document"; filename="{name}"\r\n'
    sent = program("ann").post(
        f"{ROOT}/{path}", f"{head}\r\n\r\n--x--\r\n", kind="multipart/form-data; boundary=x"
    )
    assert words in told(sent, 422, "refused")["detail"]
