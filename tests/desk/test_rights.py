"""Named people against every address: who may see and do what, and what another office shows."""

from __future__ import annotations

import re
from itertools import pairwise
from typing import Any

import pytest
from django.test import Client
from django.urls import URLPattern, get_resolver
from tests.desk.conftest import FLAGSHIP, OTHER, PEOPLE, As
from tests.rights import tell

from quarterday.desk.guard import OPEN, SETTING_UP
from quarterday.office import access
from quarterday.people.models import Person
from quarterday.store import ledger

TOKEN = re.compile('name="csrfmiddlewaretoken" value="[^"]*"')
IN = {200, 302, 409, 422}
EVERYBODY = dict.fromkeys(PEOPLE, "in")
SEES = {"ann": "in", "cole": "hidden", "maria": "in", "reed": "in", "rhea": "in",
        "sid": "hidden"}  # fmt: skip
DOES = {**SEES, "reed": "forbidden", "rhea": "forbidden"}
LOADS = {"ann": "in", "cole": "in", "maria": "in", "reed": "forbidden", "rhea": "forbidden",
         "sid": "forbidden"}  # fmt: skip
MANAGES = {**dict.fromkeys(PEOPLE, "forbidden"), "maria": "in"}
READS_ALL = {**MANAGES, "reed": "in"}
F = f"/files/{FLAGSHIP}/"
TERMS = "part=coverages&key=2027-01-15/offered"
# name of the address: method, address, form, and what becomes of each person who asks
MATRIX: dict[str, tuple[str, str, dict[str, str], dict[str, str]]] = {
    "day": ("get", "/", {}, EVERYBODY),
    "keep-view": ("post", "/views/", {"name": "mine", "query": "q=x"}, EVERYBODY),
    "forget-view": ("post", "/views/1/forget/", {}, EVERYBODY),
    "diary": ("get", "/diary/", {}, EVERYBODY),
    "feed-address": ("post", "/diary/address/", {}, EVERYBODY),
    "book": ("get", "/book/", {}, READS_ALL),
    "book-export": ("get", "/book/export/work/csv/", {}, READS_ALL),
    "load": ("get", "/load/", {}, LOADS),
    "load-preview": ("get", "/load/none/", {}, dict.fromkeys(PEOPLE, "in")),
    "load-accept": ("post", "/load/none/accept/", {}, dict.fromkeys(PEOPLE, "in")),
    "file": ("get", F, {}, SEES),
    "why": ("get", f"{F}why/?figure=none", {}, dict.fromkeys(PEOPLE, "hidden")),
    "history": ("get", f"{F}history/", {}, SEES),
    "undo": ("post", f"{F}undo/", {"seq": "1", "seen": "0"}, DOES),
    "edit": ("get", f"{F}edit/?kind=building", {}, DOES),
    "withdraw": ("post", f"{F}withdraw/?kind=organisation&key=", {}, DOES),
    "edit-part": ("get", f"{F}terms/?{TERMS}", {}, DOES),
    "remove-part": ("post", f"{F}terms/remove/?{TERMS}&line=0", {"seen": "999"}, DOES),
    "set-aside": ("post", f"{F}set-aside/", {"finding": "x", "reason": "y"}, DOES),
    "take-up": ("post", f"{F}take-up/", {"finding": "x"}, DOES),
    "decide": ("post", f"{F}decide/", {"question": "x", "on": "2026-11-25"}, DOES),
    "choose-payment": ("post", f"{F}payment/", {"plan": "", "on": "2026-11-25"}, DOES),
    "note": ("post", f"{F}note/", {"text": ""}, DOES),
    "sign": ("post", f"{F}sign/", {}, DOES),
    "build": ("post", f"{F}build/", {"language": "xx"}, DOES),
    "paper": ("get", f"{F}papers/none/", {}, dict.fromkeys(PEOPLE, "hidden")),
    "deliver": ("post", f"{F}deliver/", {"to": ""}, DOES),
    "certify": ("post", f"{F}certify/", {"language": "xx"}, DOES),
    "forms": ("get", f"{F}forms/", {}, DOES),
    "form-by-hand": ("get", f"{F}forms/by-hand/contacts-form/", {}, DOES),
    "form-read": ("get", f"{F}forms/none/", {}, DOES),
    "ask": ("get", f"{F}request/", {}, DOES),
    "ask-letter": ("get", f"{F}request/letter/pdf/", {}, DOES),
    "kept-document": ("get", f"{F}kept/none/", {}, dict.fromkeys(PEOPLE, "hidden")),
    "compare": ("get", f"{F}compare/", {}, SEES),
    "pay": ("get", f"{F}pay/", {}, SEES),
    "premium": ("get", f"{F}premium/", {}, SEES),
    "send": ("get", f"{F}send/", {}, DOES),
    "came-back": ("post", f"{F}came-back/", {"key": "x", "on": "2026-11-25"}, DOES),
    "decisions": ("get", f"{F}decisions/", {}, DOES),
    "bind": ("get", f"{F}bind/", {}, DOES),
    "check": ("get", f"{F}check/", {}, DOES),
    "keys": ("get", "/keys/", {}, EVERYBODY),
    "end-key": ("post", "/keys/0/end/", {}, EVERYBODY),
    "people": ("get", "/people/", {}, MANAGES),
    "change-person": ("post", "/people/0/", {}, {**MANAGES, "maria": "hidden"}),
    "kept": ("get", "/kept/", {}, EVERYBODY),
}


def addresses() -> set[str]:
    return {str(p.name) for p in get_resolver().url_patterns if isinstance(p, URLPattern)}


def ask(browser: Client, name: str) -> Any:
    method, address, form, _ = MATRIX[name]
    return getattr(browser, method)(address, form) if form else getattr(browser, method)(address)


def test_every_address_of_the_desk_is_in_the_matrix() -> None:
    assert addresses() == set(MATRIX) | OPEN | SETTING_UP


@pytest.mark.parametrize("who", PEOPLE)
def test_each_person_gets_what_their_role_gives_and_nothing_else(
    who: str, figures: None, signed_in: As
) -> None:
    browser, found = signed_in(who), {}
    for name in MATRIX:
        status = ask(browser, name).status_code
        found[name] = {403: "forbidden", 404: "hidden"}.get(
            status, "in" if status in IN else status
        )
    tell("desk", who, found)
    assert found == {name: row[3][who] for name, row in MATRIX.items()}


@pytest.mark.parametrize("name", sorted(MATRIX))
def test_nobody_gets_in_without_signing_in(name: str, book: None) -> None:
    answer = ask(Client(), name)
    assert answer.status_code == 302
    assert answer["Location"].startswith("/sign-in/")


@pytest.mark.parametrize("name", sorted(MATRIX))
def test_who_may_not_come_in_any_more_is_out_at_once(
    name: str, book: None, signed_in: As, people: dict[str, Person]
) -> None:
    browser = signed_in("maria")
    Person.objects.filter(pk=people["maria"].pk).update(is_active=False)
    assert ask(browser, name)["Location"].startswith("/sign-in/")


def test_nothing_was_written_by_any_refused_request(book: None, signed_in: As) -> None:
    before = len(ledger.entries(FLAGSHIP))
    for who in ("cole", "rhea", "sid"):
        for name in MATRIX:
            ask(signed_in(who), name)
    assert len(ledger.entries(FLAGSHIP)) == before


def test_a_file_of_another_office_answers_as_one_that_does_not_exist(
    book: None, signed_in: As
) -> None:
    browser = signed_in("cole")
    theirs, none = browser.get(F), browser.get("/files/HW-9999/")
    assert theirs.status_code == none.status_code == 404
    shown = [TOKEN.sub("", page.content.decode()) for page in (theirs, none)]
    assert shown[0].replace(FLAGSHIP, "?") == shown[1].replace("HW-9999", "?")


def test_the_list_and_the_diary_hold_the_files_of_the_persons_offices_alone(
    book: None, signed_in: As
) -> None:
    expected = {"ann": {FLAGSHIP}, "cole": {OTHER}, "maria": {FLAGSHIP, OTHER}, "sid": set()}
    for who, files in expected.items():
        for address in ("/?from=&until=", "/diary/"):
            page = signed_in(who).get(address).content.decode()
            assert {id for id in (FLAGSHIP, OTHER) if f"/files/{id}/" in page} == files, who


def test_only_a_licensed_person_signs_whatever_the_role(
    book: None, signed_in: As, people: dict[str, Person]
) -> None:
    Person.objects.filter(pk=people["ann"].pk).update(licence="")
    answer = signed_in("ann").post(f"{F}sign/", {"read": "yes", "seen": "1"})
    assert answer.status_code == 422
    assert "no licence number" in answer.content.decode()


def test_a_file_is_not_moved_to_an_office_that_the_person_does_not_serve(
    book: None, signed_in: As
) -> None:
    browser = signed_in("ann")
    form = browser.get(f"{F}edit/?kind=organisation&key=").context["fields"]
    said = {field.name: field.text for field in form} | {"office": "val-aubry", "seen": "999"}
    answer = browser.post(f"{F}edit/?kind=organisation&key=", said)
    assert answer.status_code == 403
    assert ledger.load(FLAGSHIP).organisation.office == "port-ellery"


def test_roles_hold_only_rights_that_exist_and_each_holds_those_of_the_one_before() -> None:
    order = [access.RIGHTS[role] for role in ("read-only", "colleague", "owner", "manager")]
    assert all(less < more for less, more in pairwise(order))
    assert access.RIGHTS["read-only-manager"] == access.RIGHTS["read-only"] | {"book"}
    assert order[-1] == {"view", "load", "edit", "record", "ask", "build", "deliver", "check",
                         "certify", "set-aside", "bind", "sign", "book", "people"}  # fmt: skip
