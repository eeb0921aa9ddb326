"""Programs that are killed in the middle of their work, and what must hold after each time."""

from __future__ import annotations

import hashlib
import json
import os
import random
import signal
import subprocess
import sys
import time
from collections.abc import Sequence
from contextlib import suppress
from pathlib import Path

from quarterday.invent.demo.book import HERE as DEMO_DATA

CLI = [sys.executable, "-m", "quarterday.cli"]
DAY, SEED = "2026-11-25", 20261125
# Adds notes to one file for ever, and says the number of each entry once it is written.
APPENDER = """
import secrets
import sys
from quarterday.store import setup
setup.configure(sys.argv[1])
setup.start()
from quarterday.core.file.entry import Draft, Origin
from quarterday.core.file.records import Note, Organisation
from quarterday.store import ledger
def add(record):
    draft = Draft("edit", record.kind, record.key, record.body(), Origin(way="person", person="a"))
    (entry,) = ledger.append("HW-9000", [draft], by="a", expected_seq=None)
    print(entry.seq, flush=True)
if not ledger.files():
    add(Organisation(name="Hall", province="ON"))
while True:
    add(Note(id=secrets.token_hex(8), text="kept"))
"""


def command(home: Path, *words: str) -> list[str]:
    return [*CLI, "--store", str(home), *words]


def ran(home: Path, *words: str) -> str:
    """Run a command to its end; an AssertionError with what it said when it fails."""
    done = subprocess.run(command(home, *words), capture_output=True, text=True, check=False)
    assert done.returncode == 0, done.stderr + done.stdout
    return done.stdout


def started(program: Sequence[str]) -> subprocess.Popen[str]:
    return subprocess.Popen(program, stdout=subprocess.PIPE, stderr=subprocess.DEVNULL, text=True,
                            start_new_session=True, env=dict(os.environ))  # fmt: skip


def killed(going: subprocess.Popen[str]) -> str:
    """Kill a program and every process it started; return the rest of what it said."""
    with suppress(ProcessLookupError):
        os.killpg(going.pid, signal.SIGKILL)
    return going.communicate()[0]


def sound(home: Path) -> int:
    """Return the number of entries of a store that verifies."""
    told = json.loads(ran(home, "verify", "--json"))
    assert told["faults"] == []
    return int(told["entries"])


def appended(home: Path, times: int) -> int:
    """Kill whoever adds entries; return how many were acknowledged, all of which are there."""
    chance, newest = random.Random(SEED), 0
    ran(home, "start")
    for _ in range(times):
        going = started([sys.executable, "-c", APPENDER, str(home)])
        assert going.stdout is not None
        said = "".join(going.stdout.readline() for _ in range(chance.randint(1, 12)))
        time.sleep(chance.random() / 20)
        said += killed(going)
        whole = [int(line) for line in said.split("\n")[:-1] if line]
        newest = max([newest, *whole])
        there = sound(home)
        assert newest <= there <= newest + 1  # the last may be written and not yet said
        newest = there
    return newest


def loaded(home: Path, times: int) -> str:
    """Kill a load; the book is there whole or not at all, and after the last time whole."""
    chance, found = random.Random(SEED), []
    ran(home, "start")
    book = home / "book.xlsx"
    ran(home, "make-book", "--files", "60", "--seed", "7", "--as-of", DAY, "--out", str(book))
    whole: int | None = None
    whole_time = _time_of_a_load(home / "other", book)
    for _ in range(times):
        going = started(command(home, "load", str(book)))
        time.sleep(whole_time * (0.3 + 0.8 * chance.random()))
        killed(going)
        there = sound(home)
        whole = there or whole
        assert there in {0, whole}
        found.append(there)
    ran(home, "load", str(book))
    assert whole in {None, sound(home)}
    assert len(json.loads(ran(home, "list", "--json"))) == 60
    return f"{found.count(0)} times nothing was there, {times - found.count(0)} times all"


def _time_of_a_load(other: Path, book: Path) -> float:
    ran(other, "start")
    start = time.perf_counter()
    ran(other, "load", str(book))
    return time.perf_counter() - start


def built(home: Path, times: int) -> str:
    """Kill a run of packages; every package in the folder is whole, and the run goes on."""
    chance, counts = random.Random(SEED), []
    ran(home, "start")
    book, out = home / "book.xlsx", home / "packages"
    ran(home, "make-book", "--files", "14", "--seed", "7", "--as-of", DAY, "--out", str(book))
    ran(home, "load", str(book))
    words = ("package", "--all", "--as-of", DAY, "--out", str(out), "--brokerage",
             str(DEMO_DATA / "brokerage.yaml"))  # fmt: skip
    for _ in range(times):
        going, before = started(command(home, *words)), len(list(out.glob("*")))
        while going.poll() is None and len(list(out.glob("*"))) <= before + 1:
            time.sleep(0.01)
        time.sleep(chance.random() / 2)
        killed(going)
        counts.append(_whole(home, out))
        assert counts == sorted(counts)  # what was there stays
        sound(home)
    told = json.loads(ran(home, *words, "--json"))
    assert len(told["built"]) + len(told["withheld"]) == 14
    assert _whole(home, out) == len(told["built"])
    assert not list(out.glob("*.part"))
    return f"packages there after each: {counts}"


def _whole(home: Path, out: Path) -> int:
    """Return how many packages are in the folder, each of which is the one that was recorded."""
    found = sorted(out.glob("*.pdf")) if out.exists() else []
    for path in found:
        file = path.name.partition("-")[0]
        entries = json.loads(ran(home, "show", file, "--json"))["records"]
        kept = {r["record"]["document"] for r in entries if r["kind"] == "package built"}
        assert hashlib.sha256(path.read_bytes()).hexdigest() in kept, path.name
    return len(found)
