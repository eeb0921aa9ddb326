"""The request to the insurer by e-mail, from the terminal."""

from __future__ import annotations

from pathlib import Path

import pytest
from click.testing import Result
from tests.cli.conftest import Run, printed
from tests.office.inbox import Inbox, inbox

from quarterday.core.file.records import RequestSent
from quarterday.invent.demo.book import HERE
from quarterday.store import ledger, originals

__all__ = ["inbox"]
FILE, DAY, ADDRESS = "HW-1001", "2026-11-25", "changes@larkmoor.example.org"


def sent() -> tuple[RequestSent, ...]:
    return ledger.load(FILE).all(RequestSent)


@pytest.fixture
def ask(loaded: Run, tmp_path: Path) -> Run:
    """Ask the insurer for the option that the board took."""
    loaded("decide", FILE, "option/by-laws/*", "take-it", "--said-by", "The board", "--on", DAY)

    def run(*words: str, language: str = "en", by: str = "Tess <t@x.example.org>") -> Result:
        return loaded("--language", language, "request", FILE, "--brokerage",
                      str(HERE / "brokerage.yaml"), "--as-of", DAY, "--out", str(tmp_path),
                      "--by", by, *words)  # fmt: skip

    return run


def test_it_goes_out_with_the_usual_words_and_is_recorded(
    ask: Run, inbox: Inbox, tmp_path: Path
) -> None:
    done = ask("--mail", ADDRESS)
    assert done.exit_code == 0, done.stderr
    told = " ".join(done.stdout.split())
    assert f"sent to Larkmoor Mutual Insurance at {ADDRESS}, and recorded" in told
    assert done.stderr == ""
    (message,), (record,) = inbox.taken, sent()
    (enclosed,) = message.iter_attachments()
    (paper,) = tmp_path.glob("*.pdf")
    assert enclosed.get_payload(decode=True) == originals.get(record.document) == paper.read_bytes()
    assert message["To"].addresses[0].addr_spec == record.address == ADDRESS
    assert (record.message or "").endswith("Tess, Hollis Wren Insurance Brokers")
    assert ledger.load(FILE).entry_of(record).by == "Tess <t@x.example.org>"


def test_words_of_ones_own_go_instead(ask: Run, inbox: Inbox, tmp_path: Path) -> None:
    words = tmp_path / "words.txt"
    words.write_text("Chers collègues,\n\nci-joint.", "utf-8")
    done = ask("--mail", ADDRESS, "--subject", "Our request", "--message", str(words))
    assert done.exit_code == 0
    (record,) = sent()
    assert (record.subject, record.message) == ("Our request", words.read_text("utf-8"))


def test_a_program_is_told_where_it_went(ask: Run, inbox: Inbox) -> None:
    told = printed(ask("--mail", ADDRESS, "--json"))
    assert (told["recorded"], told["address"], told["number"]) == (True, ADDRESS, 1)


def test_a_decision_that_was_asked_and_changed_is_told(ask: Run, loaded: Run) -> None:
    assert "takes back" not in ask("--sent").stdout
    loaded("decide", FILE, "option/by-laws/*", "leave-it", "--said-by", "The board", "--on", DAY)
    assert "It takes back what an earlier request asked for." in ask().stdout
    told = printed(ask("--sent", "--json"))
    assert (told["number"], told["changes"], told["taken_back"]) == (2, 1, 1)


def test_without_the_option_nothing_goes_and_nothing_is_recorded(ask: Run, inbox: Inbox) -> None:
    told = ask("--json")
    assert (printed(told)["recorded"], printed(told)["address"]) == (False, None)
    assert (sent(), inbox.taken) == ((), [])
    assert printed(ask("--sent", "--json"))["recorded"] is True
    assert ([record.address for record in sent()], inbox.taken) == ([None], [])


def test_a_second_one_finds_nothing_to_ask(ask: Run, inbox: Inbox) -> None:
    ask("--mail", ADDRESS)
    done = ask("--mail", ADDRESS)
    assert (done.exit_code, "nothing to ask" in done.stderr) == (1, True)
    assert (len(inbox.taken), len(sent())) == (1, 1)


@pytest.mark.parametrize("address", ["nobody", "", "a@b.example.org\nBcc: all@c.example.org"])
def test_an_address_that_is_none_is_told(address: str, ask: Run, inbox: Inbox) -> None:
    done = ask("--mail", address)
    assert (done.exit_code, "not an e-mail address" in done.stderr) == (1, True)
    assert (sent(), inbox.taken) == ((), [])


def test_what_the_server_does_not_take_is_told_and_not_recorded(ask: Run, inbox: Inbox) -> None:
    inbox.refuses = ADDRESS
    done = ask("--mail", ADDRESS)
    assert (done.exit_code, "no such mailbox" in done.stderr) == (1, True)
    assert sent() == ()


def test_words_without_an_address_are_a_usage_error(ask: Run, inbox: Inbox, tmp_path: Path) -> None:
    words = tmp_path / "words.txt"
    words.write_text("Hello.", "utf-8")
    for extra in (("--subject", "x"), ("--message", str(words)), ("--sent", "--subject", "x")):
        done = ask(*extra)
        assert (done.exit_code, "--mail" in done.stderr) == (2, True)
    assert sent() == ()


@pytest.mark.parametrize("language", ["en", "fr"])
def test_a_message_that_is_no_text_is_told(
    language: str, ask: Run, inbox: Inbox, tmp_path: Path
) -> None:
    words = tmp_path / "words.doc"
    words.write_bytes(b"\xd0\xcf\x11\xe0\xa1\xb1\x1a\xe1")
    done = ask("--mail", ADDRESS, "--message", str(words), language=language)
    assert (done.exit_code, "UTF-8" in done.stderr) == (1, True)
    assert (sent(), inbox.taken) == ((), [])


def test_an_empty_message_is_not_sent(ask: Run, inbox: Inbox, tmp_path: Path) -> None:
    (tmp_path / "words.txt").write_text("", "utf-8")
    done = ask("--mail", ADDRESS, "--message", str(tmp_path / "words.txt"))
    assert done.exit_code == 1
    assert (sent(), inbox.taken) == ((), [])


def test_nobodys_name_stands_under_the_usual_words(ask: Run, inbox: Inbox, tmp_path: Path) -> None:
    done = ask("--mail", ADDRESS, by="cli")
    assert (done.exit_code, "--by" in done.stderr) == (2, True)
    assert (sent(), inbox.taken) == ((), [])
    words = tmp_path / "words.txt"
    words.write_text("Signed by hand: Tess", "utf-8")
    assert ask("--mail", ADDRESS, "--message", str(words), by="cli").exit_code == 0
    assert [record.message for record in sent()] == ["Signed by hand: Tess"]
