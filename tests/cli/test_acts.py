"""The acts of the year from a terminal: decide, pay, deliver, bind, check."""

from __future__ import annotations

from pathlib import Path

import pytest
from tests.cli.conftest import Run, printed

from quarterday.core.file.entry import Draft, Origin
from quarterday.core.file.records import Bound, Decision, Delivery, PaymentChoice, PolicyChecked
from quarterday.invent.demo.book import HERE
from quarterday.store import ledger

FILE, DAY = "HW-1001", "2026-11-25"
HOUSE = str(HERE / "brokerage.yaml")


def test_the_questions_are_listed_and_one_is_answered(loaded: Run) -> None:
    questions = printed(loaded("decide", FILE, "--on", DAY, "--json"))
    assert "option/by-laws/*" in questions
    done = loaded("decide", FILE, "option/by-laws/*", "take-it", "--said-by", "The board",
                  "--words", "Carried.", "--on", DAY, "--by", "tess")  # fmt: skip
    assert done.exit_code == 0
    (made,) = ledger.load(FILE).all(Decision)
    assert (made.answer, made.by, made.words) == ("take-it", "The board", "Carried.")
    entry = ledger.load(FILE).entry_of(made)
    assert (entry.by, entry.act) == ("tess", "decide")


def test_an_answer_without_its_question_or_its_speaker_is_a_usage_error(loaded: Run) -> None:
    assert loaded("decide", FILE, "option/by-laws/*", "take-it", "--on", DAY).exit_code == 2
    assert loaded("decide", FILE, "option/by-laws/*", "--said-by", "x", "--on", DAY).exit_code == 2


def test_a_question_that_nobody_asked_is_refused(loaded: Run) -> None:
    done = loaded("decide", FILE, "option/moon/*", "take-it", "--said-by", "x", "--on", DAY)
    assert (done.exit_code, "Load the page again" in done.stderr) == (1, True)


@pytest.mark.parametrize(("plan", "code"), [("at-once", 0), ("three-cheques", 0), ("gold", 1)])
def test_a_payment_choice_names_a_plan(plan: str, code: int, loaded: Run) -> None:
    done = loaded("payment", FILE, plan, "--said-by", "Treasurer", "--on", DAY)
    assert done.exit_code == code
    assert len(ledger.load(FILE).all(PaymentChoice)) == 1 - code


def test_a_package_is_sent_and_one_that_went_by_hand_is_recorded(
    loaded: Run, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setenv("QUARTERDAY_MAIL", "files")
    early = loaded("deliver", FILE, "--to", "Priya Nathan", "--on", DAY)
    assert (early.exit_code, "no licensed person" in early.stderr) == (1, True)
    loaded("sign", FILE, "--reviewer", "Judith Hollis", "--licence", "RIB-000417", "--as-of", DAY)
    loaded("package", FILE, "--out", str(tmp_path), "--brokerage", HOUSE)
    sent = loaded("deliver", FILE, "--to", "Priya Nathan", "--mail", "p@st-ebba.example.org",
                  "--brokerage", HOUSE, "--on", DAY, "--by", "Tess <t@x.example.org>")  # fmt: skip
    assert (sent.exit_code, "p@st-ebba.example.org" in sent.stdout) == (0, True)
    nobody = loaded("deliver", FILE, "--to", "Lou", "--mail", "lou@example.org", "--on", DAY)
    wordy = loaded("deliver", FILE, "--to", "Lou", "--subject", "Hello", "--on", DAY)
    assert (nobody.exit_code, wordy.exit_code) == (2, 2)
    by_hand = loaded("deliver", FILE, "--to", "Harriet Boone", "--on", DAY)
    assert by_hand.exit_code == 0
    found = {d.to: d for d in ledger.load(FILE).all(Delivery)}
    assert [found[n].way for n in ("Priya Nathan", "Harriet Boone")] == ["e-mail", "by hand"]
    assert "Dear Priya Nathan," in (found["Priya Nathan"].message or "")


def test_what_may_be_agreed_is_listed_then_bound_then_checked(loaded: Run) -> None:
    listed = printed(loaded("bind", FILE, "--json"))
    assert {"change": "option/by-laws/*", "limit": "1000000.00", "price": "410.00",
            "taken": False} in listed  # fmt: skip
    assert "option/by-laws/*" in loaded("bind", FILE).stdout
    done = loaded("bind", FILE, "--confirmed-by", "Ines Marlow", "--accept", "option/by-laws/*",
                  "--on", DAY, "--as-of", DAY)  # fmt: skip
    assert (done.exit_code, "one change" in done.stdout) == (0, True)
    assert loaded("check", FILE, "--as-of", DAY).exit_code == 1  # no policy yet
    (bound,) = ledger.load(FILE).all(Bound)
    thin = tuple(c for c in bound.agreed.coverages if c.coverage != "cyber-own-losses")
    issued = bound.agreed.model_copy(update={"stage": "issued", "coverages": thin, "options": ()})
    draft = Draft("load", issued.kind, issued.key, issued.body(), Origin(way="workbook"))
    ledger.append(FILE, [draft], by="ann", expected_seq=None)
    told = printed(loaded("check", FILE, "--as-of", DAY, "--json"))
    assert [d["direction"] for d in told["differences"]] == ["worse"]
    silent = loaded("check", FILE, "--done", "--on", DAY, "--as-of", DAY)
    assert (silent.exit_code, "one point" in silent.stderr) == (1, True)
    said = loaded("check", FILE, "--done", "--about", "Asked for a correction.", "--on", DAY,
                  "--as-of", DAY)  # fmt: skip
    assert said.exit_code == 0
    assert [c.differences for c in ledger.load(FILE).all(PolicyChecked)] == [1]
    assert loaded("verify").exit_code == 0
