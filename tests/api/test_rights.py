"""Named people and keys against every operation that the description has."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

import pytest
from tests.api.conftest import FILE, FLAGSHIP, KEYS, ROOT, Program
from tests.desk.conftest import As as Browsers
from tests.desk.conftest import signed_in
from tests.rights import tell

from quarterday.api.service import described
from quarterday.people.models import Grant, Person
from quarterday.store import ledger

__all__ = ["signed_in"]
As = Callable[[str], Program]
NO_KEY = dict.fromkeys(("over", "ended", "none"), "no key")
EVERYBODY = {**dict.fromkeys(KEYS, "in"), **NO_KEY}
OPEN = dict.fromkeys(KEYS, "in")
SEES = {**EVERYBODY, "cole": "hidden", "sid": "hidden"}
READ_ALONE = dict.fromkeys(("rhea", "reed", "reader"), "forbidden")
DOES = {**SEES, **READ_ALONE}
LOADS = {**EVERYBODY, **READ_ALONE, "sid": "forbidden"}
OWN = {**EVERYBODY, "reader": "forbidden"}  # what one sent oneself: others' is not there
HIDDEN = {**dict.fromkeys(KEYS, "hidden"), **NO_KEY}
SEEN = {"seen": 1}
DATED = {**SEEN, "by": "The board", "on": "2026-11-20"}
NOTHING: dict[str, Any] = {}
# operation: its address, its body (bytes: a document), and what becomes of each who asks
MATRIX: dict[str, tuple[str, Any, dict[str, str]]] = {
    "lists.me": ("/me", None, EVERYBODY),
    "lists.renewals": ("/files", None, EVERYBODY),
    "lists.the_day": ("/day", None, EVERYBODY),
    "lists.diary": ("/diary", None, EVERYBODY),
    "catalogues.problems": ("/problems", None, OPEN),
    "catalogues.rules": ("/rules", None, EVERYBODY),
    "catalogues.causes": ("/causes", None, EVERYBODY),
    "catalogues.coverages": ("/coverages", None, EVERYBODY),
    "catalogues.parameters": ("/parameters", None, EVERYBODY),
    "catalogues.calculate": ("/calculations/tax", NOTHING, EVERYBODY),
    "file.show": (f"/files/{FLAGSHIP}", None, SEES),
    "file.claims": (f"/files/{FLAGSHIP}/claims", None, SEES),
    "file.entries": (f"/files/{FLAGSHIP}/entries", None, SEES),
    "review.review": (f"/files/{FLAGSHIP}/review", None, SEES),
    "review.figures": (f"/files/{FLAGSHIP}/figures", None, SEES),
    "review.why": (f"/files/{FLAGSHIP}/why?figure=shortfall@hall", None, SEES),
    "review.risk": (f"/files/{FLAGSHIP}/risk", None, SEES),
    "terms.versions": (f"/files/{FLAGSHIP}/terms", None, SEES),
    "terms.comparison": (f"/files/{FLAGSHIP}/comparison", None, SEES),
    "terms.losses": (f"/files/{FLAGSHIP}/losses", None, SEES),
    "terms.pay": (f"/files/{FLAGSHIP}/pay", NOTHING, SEES),
    "terms.premium_of": (f"/files/{FLAGSHIP}/premium", None, SEES),
    "acts.edit": (f"/files/{FLAGSHIP}/records", {**SEEN, "kind": "x", "record": {}}, DOES),
    "acts.withdraw": (f"/files/{FLAGSHIP}/withdrawals", {**SEEN, "kind": "x", "key": "y"}, DOES),
    "acts.undo": (f"/files/{FLAGSHIP}/undo", {**SEEN, "entry": 1}, DOES),
    "acts.set_aside": (f"/files/{FLAGSHIP}/set-aside",
                       {**SEEN, "finding": "x", "reason": "y"}, DOES),
    "acts.take_up": (f"/files/{FLAGSHIP}/take-up", {**SEEN, "finding": "x"}, DOES),
    "acts.decide": (f"/files/{FLAGSHIP}/decisions",
                    {**DATED, "question": "x", "answer": "later"}, DOES),
    "acts.choose_payment": (f"/files/{FLAGSHIP}/payment", {**DATED, "plan": " "}, DOES),
    "acts.note": (f"/files/{FLAGSHIP}/notes", {**SEEN, "text": " "}, DOES),
    "acts.sign": (f"/files/{FLAGSHIP}/signature", {**SEEN, "read": True}, DOES),
    "acts.questions": (f"/files/{FLAGSHIP}/questions", None, SEES),
    "acts.wishes": (f"/files/{FLAGSHIP}/binder", None, SEES),
    "acts.bind": (f"/files/{FLAGSHIP}/binder", {**SEEN, "confirmed_by": " ", "on": "2026-11-20"},
                  DOES),
    "acts.issued": (f"/files/{FLAGSHIP}/check", None, SEES),
    "acts.check": (f"/files/{FLAGSHIP}/check", {**SEEN, "on": "2026-11-20"}, DOES),
    "papers.mail": (f"/files/{FLAGSHIP}/messages", {**SEEN, "language": "en", "to": "Lou",
                    "address": "lou@example.org"}, DOES),
    "papers.came_back": (f"/files/{FLAGSHIP}/came-back", {**SEEN, "key": "x", "why": "y",
                         "on": "2026-11-20"}, DOES),
    "papers.built": (f"/files/{FLAGSHIP}/packages", None, SEES),
    "papers.fetch": (f"/files/{FLAGSHIP}/packages/none", None, HIDDEN),
    "papers.build": (f"/files/{FLAGSHIP}/packages", {"language": "xx"}, {**DOES, "cole": "in",
                     "sid": "in", "rhea": "in", "reed": "in"}),  # refused before the look-up
    "papers.deliver": (f"/files/{FLAGSHIP}/deliveries",
                       {**SEEN, "language": "en", "to": "Lou", "way": "post",
                        "on": "2026-11-20"}, DOES),
    "papers.request_ready": (f"/files/{FLAGSHIP}/request", None, SEES),
    "papers.request_sent": (f"/files/{FLAGSHIP}/requests", {**SEEN, "language": "en"}, DOES),
    "papers.request_mailed": (f"/files/{FLAGSHIP}/requests/messages",
                              {**SEEN, "address": "changes@larkmoor.example.org"}, DOES),
    "forms.send": ("/forms", b"%PDF-1.7 no form", LOADS),
    "forms.accept": ("/forms/none/accept", NOTHING, OWN),
    "loading.send": ("/loads", b"no workbook", LOADS),
    "loading.accept": ("/loads/none/accept", {"mark": "x"}, OWN),
    "loading.leave": ("/loads/none", "delete", OWN),
}  # fmt: skip


def operations() -> dict[str, str]:
    found = described()["paths"]
    return {op["operationId"]: method for path in found.values() for method, op in path.items()}


def ask(program: Program, name: str) -> Any:
    path, said, _ = MATRIX[name]
    if said is None:
        return program.get(f"{ROOT}{path}")
    if said == "delete":
        return program.delete(f"{ROOT}{path}")
    if isinstance(said, bytes):
        return program.send(f"{ROOT}{path}", "x.pdf" if "forms" in path else "x.xlsx", said)
    return program.post(f"{ROOT}{path}", said)


def became(answer: Any) -> str:
    words = {401: "no key", 403: "forbidden", 404: "hidden", 200: "in", 400: "in", 409: "in",
             422: "in"}  # fmt: skip
    return words.get(answer.status_code, str(answer.status_code))


def test_every_operation_of_the_description_is_in_the_matrix() -> None:
    assert set(operations()) == set(MATRIX)


def test_each_row_asks_as_the_description_says() -> None:
    for name, method in operations().items():
        said = MATRIX[name][1]
        assert method == ("get" if said is None else "delete" if said == "delete" else "post")


@pytest.mark.parametrize("who", KEYS)
def test_each_key_gets_what_its_person_and_scope_give_and_nothing_else(
    who: str, book: None, program: As
) -> None:
    before = len(ledger.entries(FLAGSHIP))
    asker = program(who)
    found = {name: became(ask(asker, name)) for name in MATRIX}
    tell("api", who, found)
    assert found == {name: row[2][who] for name, row in MATRIX.items()}
    if MATRIX["acts.note"][2][who] != "in":
        assert len(ledger.entries(FLAGSHIP)) == before


def test_a_file_of_another_office_answers_as_one_that_does_not_exist(
    book: None, program: As
) -> None:
    theirs, none = (program("cole").get(f"{ROOT}/files/{id}") for id in (FLAGSHIP, "HW-9999"))
    assert theirs.status_code == none.status_code == 404
    said = theirs.json()["detail"].replace(FLAGSHIP, "?"), none.json()["detail"]
    assert said[0] == said[1].replace("HW-9999", "?")


def test_who_is_signed_in_to_the_desk_is_nobody_here(book: None, signed_in: Browsers) -> None:
    """No cookie opens the interface, so no page elsewhere can use one to act."""
    browser = signed_in("maria")
    assert browser.get(FILE).status_code == 401
    said = {"text": "hello", "seen": 1}
    answer = browser.post(f"{FILE}/notes", said, content_type="application/json")
    assert answer.status_code == 401
    assert "quarterday_session" not in answer.cookies


def test_a_right_that_is_taken_back_is_gone_with_the_next_request(
    book: None, program: As, people: dict[str, Person]
) -> None:
    assert program("ann").get(FILE).status_code == 200
    Grant.objects.filter(person=people["ann"]).delete()
    assert program("ann").get(FILE).status_code == 404


@pytest.mark.parametrize("change", [{"is_active": False}, {"must_change": True}])
def test_who_may_not_come_in_to_the_desk_does_not_come_in_by_a_key(
    change: dict[str, bool], book: None, program: As, people: dict[str, Person]
) -> None:
    Person.objects.filter(pk=people["ann"].pk).update(**change)
    assert program("ann").get(FILE).status_code == 401


def test_only_a_licensed_person_signs(book: None, program: As, people: dict[str, Person]) -> None:
    Person.objects.filter(pk=people["ann"].pk).update(licence="")
    answer = program("ann").post(f"{FILE}/signature", {"read": True, "seen": 1})
    assert answer.status_code == 422
    assert "licence" in answer.json()["detail"]


def test_a_file_is_not_moved_to_an_office_that_the_person_does_not_serve(
    book: None, program: As
) -> None:
    shown = program("ann").get(FILE).json()
    record = next(r["record"] for r in shown["records"] if r["kind"] == "organisation")
    said = {"kind": "organisation", "key": "", "record": {**record, "office": "val-aubry"},
            "seen": shown["seq"]}  # fmt: skip
    assert program("ann").post(f"{FILE}/records", said).status_code == 403
    assert ledger.load(FLAGSHIP).organisation.office == "port-ellery"


def test_what_one_person_sent_is_not_there_for_another(book: None, program: As) -> None:
    sent = program("cole").send(f"{ROOT}/loads", "book.csv", b"account,name\nX-1,Hall\n")
    assert sent.status_code == 200, sent.content
    token = sent.json()["token"]
    other = program("maria").post(f"{ROOT}/loads/{token}/accept", {"mark": sent.json()["mark"]})
    assert other.status_code == 422
    assert program("cole").delete(f"{ROOT}/loads/{token}").json() == {"left": True}
