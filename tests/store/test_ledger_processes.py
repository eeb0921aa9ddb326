"""Several processes on one store: nothing is lost, nothing is half-written."""

from __future__ import annotations

import signal
import subprocess
import sys
from collections.abc import Callable
from pathlib import Path

import pytest
from django.db import OperationalError, connection

from quarterday.core.file.entry import Entry
from quarterday.core.file.records import Note, Organisation
from quarterday.store import ledger
from quarterday.store.refusals import Busy, NotReached
from quarterday.store.verify import verify

Save = Callable[..., tuple[Entry, ...]]
CHURCH = Organisation(name="Pinebrook Chapel", province="ON")
TIMES = 40

COMMON = """
import sys
from quarterday.store import setup
setup.configure(sys.argv[1])
from quarterday.core.file.entry import Draft, Origin
from quarterday.core.file.records import Note, Organisation
from quarterday.store import ledger
from quarterday.store.conflict import Conflict
def draft(record):
    return Draft("edit", record.kind, record.key, record.body(), Origin(way="office"))
"""
NOTES = """
who = sys.argv[2]
print("ready", flush=True)
sys.stdin.readline()
for n in range(int(sys.argv[3])):
    ledger.append("A1", [draft(Note(id=f"{who}-{n}", text=who))], by=who, expected_seq=None)
"""
COUNTING = """
print("ready", flush=True)
sys.stdin.readline()
done = 0
while done < int(sys.argv[3]):
    file = ledger.load("A1")
    note = file.get(Note, "count")
    number = int(note.text.split()[0]) if note else 0
    counted = draft(Note(id="count", text=f"{number + 1} {sys.argv[2]}"))
    try:
        ledger.append("A1", [counted], by=sys.argv[2], expected_seq=file.seq)
    except Conflict:
        continue
    done += 1
"""
LOADING = """
def batches():
    for n in range(2000):
        if n == 1200:
            print("half", flush=True)
            sys.stdin.readline()
        church = Organisation(name=f"Chapel {n}", province="ON")
        yield ledger.Batch(f"B{n:04}", [draft(church), draft(Note(id="n", text="x" * 200))])
print("ready", flush=True)
sys.stdin.readline()
ledger.append_many(batches(), by="loader")
print("done", flush=True)
"""


ACKNOWLEDGED = """
print("ready", flush=True)
sys.stdin.readline()
for n in range(100000):
    ledger.append("A1", [draft(Note(id=f"n{n}", text="x"))], by="ann", expected_seq=None)
    sys.stdout.write(f"n{n}\\n")
    sys.stdout.flush()
"""


def process(script: str, *args: str) -> subprocess.Popen[str]:
    running = subprocess.Popen(
        [sys.executable, "-c", COMMON + script, *args],
        stdin=subprocess.PIPE,
        stdout=subprocess.PIPE,
        text=True,
    )
    assert says(running) == "ready"
    return running


def says(running: subprocess.Popen[str]) -> str:
    assert running.stdout is not None
    return running.stdout.readline().strip()


def go(running: subprocess.Popen[str]) -> None:
    assert running.stdin is not None
    running.stdin.write("\n")
    running.stdin.flush()


def together(*running: subprocess.Popen[str]) -> None:
    """Let all processes go at once, and wait for all."""
    for one in running:
        go(one)
    assert [one.wait(120) for one in running] == [0] * len(running)
    for one in running:
        one.communicate()


def test_two_processes_that_append_to_one_file_at_once_lose_nothing(own_store: str) -> None:
    together(*(process(NOTES, own_store, who, str(TIMES)) for who in ("ann", "bea")))
    entries = ledger.entries("A1")
    assert [entry.seq for entry in entries] == list(range(1, 2 * TIMES + 1))
    expected = {f"{who}-{n}" for who in ("ann", "bea") for n in range(TIMES)}
    assert {entry.key for entry in entries} == expected
    for who in ("ann", "bea"):  # each one's own stay in the order they were written
        own = [entry.key for entry in entries if entry.by == who]
        assert own == [f"{who}-{n}" for n in range(TIMES)]
    assert verify().is_sound


def test_two_processes_that_read_and_change_one_record_never_overwrite_each_other(
    own_store: str, save: Save
) -> None:
    """On PostgreSQL, reading and writing without the check loses most of such changes."""
    save("A1", CHURCH)
    together(*(process(COUNTING, own_store, who, str(TIMES)) for who in ("ann", "bea")))
    notes = [Note.read(entry.body or "") for entry in ledger.entries("A1")[1:]]
    assert [int(note.text.split()[0]) for note in notes] == list(range(1, 2 * TIMES + 1))
    assert verify().is_sound


def test_a_load_and_a_writer_at_once_lose_nothing(own_store: str) -> None:
    loading = process(LOADING, own_store)
    writing = process(NOTES, own_store, "ann", str(TIMES))
    go(loading)
    assert says(loading) == "half"  # the load is in the middle of its transaction
    go(writing)
    together(loading, writing)
    assert len(ledger.files()) == 2001
    assert len(ledger.entries("A1")) == TIMES
    assert verify().is_sound


def test_who_waits_too_long_for_a_load_is_told_and_has_written_nothing(
    own_store: str, save: Save
) -> None:
    loading = process(LOADING, own_store)
    go(loading)
    assert says(loading) == "half"
    with connection.cursor() as cursor:
        wait = {"sqlite": "PRAGMA busy_timeout = 50", "postgresql": "SET lock_timeout = 50"}
        cursor.execute(wait[connection.vendor])
    with pytest.raises(Busy):
        save("A1", CHURCH)
    go(loading)
    assert says(loading) == "done"
    loading.communicate()
    assert "A1" not in ledger.files()
    save("A1", CHURCH)


def test_a_database_that_cannot_be_written_is_said_to_be_so(own_store: str, save: Save) -> None:
    save("A1", CHURCH)
    with connection.cursor() as cursor:
        full = {
            "sqlite": "PRAGMA max_page_count = 1",  # as if the disk were full
            "postgresql": "SELECT pg_terminate_backend(pg_backend_pid())",
        }
        try:
            cursor.execute(full[connection.vendor])
        except OperationalError:
            assert connection.vendor == "postgresql"
    with pytest.raises(NotReached) as caught:
        save("A1", Note(id="n", text="x" * 10_000), Note(id="m", text="x" * 10_000))
    assert caught.value.words.id == "store-not-written"
    connection.close()
    assert len(ledger.entries("A1")) == 1
    assert verify().is_sound


def test_a_load_killed_in_the_middle_leaves_nothing_half_written(
    own_store: str, save: Save
) -> None:
    save("A1", CHURCH)
    loading = process(LOADING, own_store)
    go(loading)
    assert says(loading) == "half"
    loading.send_signal(signal.SIGKILL)
    assert loading.wait(30) == -signal.SIGKILL
    loading.communicate()
    assert ledger.files() == ("A1",)
    report = verify()
    assert (report.files, report.entries, report.faults) == (1, 1, [])
    save("A2", CHURCH)  # and the next one is not kept waiting
    again = process(LOADING, own_store)
    go(again)
    assert says(again) == "half"
    go(again)
    assert says(again) == "done"
    again.communicate()
    assert len(ledger.files()) == 2002
    assert verify().is_sound


@pytest.mark.parametrize("lines", [1, 7, 30])
def test_a_writer_killed_at_any_moment_loses_no_acknowledged_entry(
    own_store: str, lines: int
) -> None:
    writing = process(ACKNOWLEDGED, own_store)
    go(writing)
    acknowledged = [says(writing) for _ in range(lines)]
    writing.send_signal(signal.SIGKILL)
    rest, _ = writing.communicate()
    acknowledged += rest.split()
    keys = [entry.key for entry in ledger.entries("A1")]
    assert keys[: len(acknowledged)] == acknowledged
    assert len(keys) <= len(acknowledged) + 1  # written, and killed before it could say so
    assert verify().is_sound


def test_a_process_works_on_the_store_that_it_was_told(own_store: str, tmp_path: Path) -> None:
    """The two stores of one machine do not meet."""
    other = tmp_path / "other"
    script = "setup.start()\nprint('ready', flush=True)\nsys.stdin.readline()\n"
    running = process(script + "print(len(ledger.files()))\n", str(other))
    go(running)
    assert says(running) == "0"
    running.communicate()
    assert (other / "quarterday.sqlite3").exists()
