"""Programs that are killed in the middle of their work, and what must hold after each time."""

from __future__ import annotations

import hashlib
import json
import os
import random
import signal
import subprocess
import sys
from collections.abc import Sequence
from pathlib import Path

from quarterday.invent.demo.book import HERE as DEMO_DATA

CLI = [sys.executable, "-m", "quarterday.cli"]
DAY, SEED = "2026-11-25", 20261125
# Adds notes to one file for ever, and says the number of each entry once it is written.
APPENDER = """
import sys
from quarterday.store import setup
setup.configure(sys.argv[1])
setup.start()
from quarterday.core.file.entry import Draft, Origin
from quarterday.core.file.records import Note
from quarterday.store import ledger
while True:
    seq = len(ledger.entries("HW-9000")) + 1
    note = Note(id=str(seq), text="kept")
    draft = Draft("note", note.kind, note.key, note.body(), Origin(way="person", person="a"))
    (entry,) = ledger.append("HW-9000", [draft], by="a", expected_seq=None)
    print(entry.seq, flush=True)
"""


def command(home: Path, *words: str) -> list[str]:
    return [*CLI, "--store", str(home), *words]


def ran(home: Path, *words: str) -> str:
    """Run a command to its end; an AssertionError with what it said when it fails."""
    done = subprocess.run(command(home, *words), capture_output=True, text=True, check=False)
    assert done.returncode == 0, done.stderr + done.stdout
    return done.stdout


def killed(program: Sequence[str], seconds: float) -> str | None:
    """Kill a program and every process it started; return what it said, None if it ended first."""
    going = subprocess.Popen(program, stdout=subprocess.PIPE, stderr=subprocess.DEVNULL, text=True,
                             start_new_session=True, env=dict(os.environ))  # fmt: skip
    try:
        going.communicate(timeout=seconds)
    except subprocess.TimeoutExpired:
        os.killpg(going.pid, signal.SIGKILL)
        return going.communicate()[0]
    return None


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
        said = killed([sys.executable, "-c", APPENDER, str(home)], 2 + 2 * chance.random()) or ""
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
    for _ in range(times):
        killed(command(home, "load", str(book)), 1 + 6 * chance.random())
        there = sound(home)
        whole = there or whole
        assert there in {0, whole}
        found.append(there)
    ran(home, "load", str(book))
    assert whole in {None, sound(home)}
    assert len(json.loads(ran(home, "list", "--json"))) == 60
    return f"{found.count(0)} times nothing was there, {times - found.count(0)} times all"


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
        killed(command(home, *words), 4 + 8 * chance.random())
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
