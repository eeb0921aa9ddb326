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
from dataclasses import dataclass
from pathlib import Path
from shutil import copytree, rmtree

from quarterday.invent.demo.book import HERE as DEMO_DATA

CLI = [sys.executable, "-m", "quarterday.cli"]
DAY, SEED = "2026-11-25", 20261125
JOURNAL = "packages.run.jsonl"  # of a run; its module wants a store
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
# Prints the digest of every package that is recorded and kept.
KEPT = """
import sys
from quarterday.store import setup
setup.configure(sys.argv[1])
setup.start()
from quarterday.core.file.records import PackageBuilt
from quarterday.store import ledger, originals
for id in ledger.files():
    for built in ledger.load(id).all(PackageBuilt):
        assert originals.get(built.document)
        print(built.document)
"""


def command(home: Path, *words: str) -> list[str]:
    return [*CLI, "--store", str(home), *words]


def ran(home: Path, *words: str) -> str:
    """Run a command to its end; an AssertionError with what it said when it fails."""
    return _told(command(home, *words))


def _told(program: Sequence[str]) -> str:
    done = subprocess.run(program, capture_output=True, text=True, check=False)
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


@dataclass(frozen=True, slots=True)
class Toll:
    """What kills did: how many, what had been acknowledged before, and what of it was lost after.

    ``half`` counts what was there only in part; ``found`` says what the kills fell on.
    """

    kills: int
    acknowledged: int
    lost: int
    half: int
    found: str


def appended(home: Path, times: int) -> Toll:
    """Kill whoever adds entries; every entry that was acknowledged must be there."""
    chance, said_last, lost, unsaid = random.Random(SEED), 0, 0, 0
    ran(home, "start")
    for _ in range(times):
        going = started([sys.executable, "-c", APPENDER, str(home)])
        assert going.stdout is not None
        said = "".join(going.stdout.readline() for _ in range(chance.randint(1, 12)))
        time.sleep(chance.random() / 20)
        said += killed(going)
        whole = [int(line) for line in said.split("\n")[:-1] if line]
        said_last = max([said_last, *whole])
        there = sound(home)
        lost += max(said_last - there, 0)
        unsaid += there > said_last  # written, and killed before it was said
        said_last = max(said_last, there)
    return Toll(times, said_last, lost, 0, f"{unsaid} times an entry was written but not yet said")


def loaded(home: Path, times: int) -> Toll:
    """Kill loads into a store that holds a smaller book: it is as before, or the whole load is in.

    Each load starts from the same store; a load that ends before its kill is done again.
    """
    chance, before = random.Random(SEED), home / "before"
    ran(before, "start")
    for files in (60, 120):
        ran(before, "make-book", "--files", str(files), "--seed", "7", "--as-of", DAY,
            "--out", str(home / f"{files}.xlsx"))  # fmt: skip
    ran(before, "load", str(home / "60.xlsx"))
    acknowledged, book = sound(before), home / "120.xlsx"
    seconds, whole = _load(before, home / "whole", book)
    assert whole > acknowledged
    found: list[int] = []
    while len(found) < times:
        store = _copy(before, home / "killed")
        going = started(command(store, "load", str(book)))
        time.sleep(seconds * (0.2 + 0.8 * chance.random()))
        still_going = going.poll() is None
        killed(going)
        if still_going:
            found.append(sound(store))
    return Toll(
        kills=times,
        acknowledged=acknowledged,
        lost=sum(max(acknowledged - there, 0) for there in found),
        half=sum(acknowledged < there < whole for there in found),
        found=f"{found.count(acknowledged)} times nothing of the load was there, "
        f"{found.count(whole)} times all {whole - acknowledged} entries",
    )


def _load(before: Path, store: Path, book: Path) -> tuple[float, int]:
    """Return the seconds that a whole load takes, and the entries after it."""
    _copy(before, store)
    start = time.perf_counter()
    ran(store, "load", str(book))
    return time.perf_counter() - start, sound(store)


def _copy(store: Path, to: Path) -> Path:
    rmtree(to, ignore_errors=True)
    return copytree(store, to)


def built(home: Path, times: int) -> Toll:
    """Kill a run of packages, again and again while it has work; then let it end.

    A package is acknowledged once its line is in the run's journal.
    """
    chance, counts, lost, half = random.Random(SEED), [0], 0, 0
    store, out, files = home / "store", home / "packages", 4 * times + 4
    ran(store, "start")
    ran(store, "make-book", "--files", str(files), "--seed", "7", "--as-of", DAY,
        "--out", str(home / "book.xlsx"))  # fmt: skip
    ran(store, "load", str(home / "book.xlsx"))
    words = ("package", "--all", "--as-of", DAY, "--out", str(out), "--brokerage",
             str(DEMO_DATA / "brokerage.yaml"))  # fmt: skip
    while len(counts) <= times:
        going, wanted = started(command(store, *words)), counts[-1] + chance.randint(0, 2)
        while going.poll() is None and len(list(out.glob("*.pdf"))) < wanted:
            time.sleep(0.01)
        time.sleep(chance.random())
        assert going.poll() is None, "the run ended before it could be killed"
        killed(going)
        sound(store)
        state = _there(store, out)
        lost, half = lost + state.lost, half + state.half
        counts.append(state.acknowledged)
    told = json.loads(ran(store, *words, "--json"))
    end = _there(store, out)
    assert len(told["built"]) + len(told["withheld"]) == files
    assert end.acknowledged == len(told["built"])
    assert not list(out.glob("*.part"))
    return Toll(
        kills=times, acknowledged=end.acknowledged, lost=lost + end.lost, half=half + end.half,
        found=f"packages acknowledged after each kill: {', '.join(map(str, counts[1:]))}",
    )  # fmt: skip


def _there(store: Path, out: Path) -> Toll:
    """Return how many packages the journal tells of, how many of them are gone, how many half."""
    kept = set(_told([sys.executable, "-c", KEPT, str(store)]).split())
    whole = {hashlib.sha256(path.read_bytes()).hexdigest() for path in out.glob("*.pdf")}
    journal = out / JOURNAL
    lines = journal.read_text("utf-8").split("\n")[:-1] if journal.exists() else []
    told = {json.loads(line)["sha256"] for line in lines}
    return Toll(0, len(told), len(told - (whole & kept)), len(whole - kept), "")
