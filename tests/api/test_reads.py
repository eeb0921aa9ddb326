"""What is read over the interface is what the commands print with ``--json``."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

import pytest
from tests.api.conftest import DAY, FILE, FLAGSHIP, OTHER, ROOT, Program

from quarterday.catalogue.speech import Speech
from quarterday.core.review.case import Case
from quarterday.office import catalogues, outcomes, plain, premium, reviewing, risk, terms
from quarterday.office.own_data import reference_in_use
from quarterday.store import ledger

As = Callable[[str], Program]
READS = [
    f"{ROOT}/me", f"{ROOT}/files", f"{ROOT}/day", f"{ROOT}/diary", f"{ROOT}/rules",
    f"{ROOT}/causes", f"{ROOT}/coverages", f"{ROOT}/parameters", f"{ROOT}/problems", FILE,
    f"{FILE}/claims", f"{FILE}/entries", f"{FILE}/review", f"{FILE}/figures", f"{FILE}/risk",
    f"{FILE}/terms", f"{FILE}/comparison", f"{FILE}/losses", f"{FILE}/premium", f"{FILE}/packages",
]  # fmt: skip


@pytest.mark.parametrize("path", READS)
def test_each_read_answers_in_json_that_is_described(book: None, program: As, path: str) -> None:
    answer = program("ann").get(path)
    assert answer.status_code == 200, answer.content[:600]
    assert answer["Content-Type"].startswith("application/json")


def said(name: str, speech: Speech) -> Any:
    """Return what the command of this name prints with ``--json``, from the same functions."""
    data = reference_in_use()
    case = Case(ledger.load(FLAGSHIP), data, DAY)
    match name:
        case "":
            return plain.file(case.file)
        case "/review":
            return plain.review(reviewing.review_file(FLAGSHIP, data, DAY)[1], speech)
        case "/premium":
            return premium.premium(*premium.premium_of(FLAGSHIP, data, DAY), speech)
        case "/risk":
            return risk.as_plain(risk.risk_file(FLAGSHIP, data, DAY)[1], speech)
        case "/comparison":
            sides = terms.version(case, "expiring"), terms.version(case, "offered")
            return outcomes.compared(case, terms.compared(case, *sides), speech)
        case _:
            tried = terms.tried_losses(case, terms.version(case, "offered"))
            return [outcomes.tried(*one, speech) for one in tried]


@pytest.mark.parametrize("language", ["en", "fr"])
@pytest.mark.parametrize("name", ["", "/review", "/premium", "/risk", "/comparison", "/losses"])
def test_it_is_word_for_word_what_the_command_prints(
    book: None, secrets: dict[str, str], name: str, language: str
) -> None:
    answer = Program(secrets["ann"], language).get(f"{FILE}{name}")
    assert answer.json() == said(name, Speech(reference_in_use(), language))


def test_a_figure_can_be_asked_why_down_to_its_sources(book: None, program: As) -> None:
    ids = [one["id"] for one in program("ann").get(f"{FILE}/figures").json()["figures"]]
    assert "shortfall@hall" in ids
    tree = program("ann").get(f"{FILE}/why?figure=shortfall@hall").json()
    assert tree["id"] == "shortfall@hall"
    assert tree["inputs"]
    unknown = program("ann").get(f"{FILE}/why?figure=nothing")
    assert unknown.status_code == 404
    assert "/figures" in unknown.json()["detail"]


def test_the_catalogues_are_those_of_the_commands(book: None, program: As) -> None:
    data, speech = reference_in_use(), Speech(reference_in_use(), "en")
    assert program("rhea").get(f"{ROOT}/rules").json() == catalogues.rules()
    assert program("rhea").get(f"{ROOT}/causes").json() == catalogues.causes(data)
    assert program("rhea").get(f"{ROOT}/coverages").json() == catalogues.coverages(data)
    found = program("rhea").get(f"{ROOT}/parameters?as_of={DAY}").json()
    assert found == catalogues.parameters(data, DAY, speech)


def test_the_list_holds_the_files_of_the_persons_offices_alone(book: None, program: As) -> None:
    expected = {"ann": {FLAGSHIP}, "cole": {OTHER}, "maria": {FLAGSHIP, OTHER}, "sid": set()}
    for who, files in expected.items():
        found = program(who).get(f"{ROOT}/files").json()
        assert {line["file"] for line in found["renewals"]} == files
        assert found["total"] == len(files)
        steps = program(who).get(f"{ROOT}/diary?limit=200").json()["steps"]
        assert {step["file"] for step in steps} <= files


def test_a_file_as_known_earlier_lacks_what_came_later(book: None, program: As) -> None:
    note = {"text": "Called the treasurer.", "seen": 999}
    before = program("ann").get(FILE).json()
    assert program("ann").post(f"{FILE}/notes", note).status_code == 200
    then = program("ann").get(f"{FILE}?as_known={DAY}").json()
    assert then["seq"] == before["seq"]
    assert program("ann").get(FILE).json()["seq"] == before["seq"] + 1


def test_the_entries_come_in_parts_that_join_to_the_whole(book: None, program: As) -> None:
    found: list[int] = []
    after: int | None = 0
    while after is not None:
        part = program("ann").get(f"{FILE}/entries?limit=17&after={after}").json()
        found += [entry["seq"] for entry in part["entries"]]
        after = part["next"]
    assert found == [entry.seq for entry in ledger.entries(FLAGSHIP)]


def test_what_a_loss_pays_is_told_step_by_step(book: None, program: As) -> None:
    told = {"id": "mine", "cause": "fire", "place": "hall", "date_of_loss": "2026-06-01",
            "amounts": {"building": "10000"}}  # fmt: skip
    answer = program("reader").post(f"{FILE}/pay", {"told": told, "terms": "expiring"})
    assert answer.status_code == 200, answer.content
    done = answer.json()
    assert done["total"] == "10000.00"
    assert done["steps"]
    neither = program("reader").post(f"{FILE}/pay", {})
    assert neither.status_code == 422
    unknown = program("reader").post(f"{FILE}/pay", {"loss": "no-such"})
    assert "Use one of" in unknown.json()["detail"]
