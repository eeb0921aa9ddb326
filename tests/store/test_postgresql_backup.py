"""A PostgreSQL store that was dumped and restored as docs/running.md says verifies."""

from __future__ import annotations

import shutil
import subprocess
from collections.abc import Callable
from pathlib import Path
from urllib.parse import urlsplit

import psycopg
import pytest
from django.db import connection

from quarterday.core.file.entry import Entry
from quarterday.core.file.records import Note, Organisation
from quarterday.store import guards, originals, seals, setup
from quarterday.store.verify import verify

Save = Callable[..., tuple[Entry, ...]]
NEW = "restored_here"


def _tool(name: str) -> str:
    """Return the newest version of one of PostgreSQL's own tools."""
    found = sorted(Path("/usr/lib/postgresql").glob(f"*/bin/{name}"))
    return str(found[-1]) if found else shutil.which(name) or pytest.skip(f"no {name}")


def test_a_dump_that_was_restored_is_the_whole_store(
    own_store: str, save: Save, tmp_path: Path
) -> None:
    if connection.vendor != "postgresql":
        pytest.skip("the embedded store has a backup of its own")
    save("A1", Organisation(name="Pinebrook Chapel", province="ON"))
    originals.put(b"a workbook", "book.xlsx")
    seals.seal()
    dump, there = (
        tmp_path / "quarterday.dump",
        urlsplit(own_store)._replace(path=f"/{NEW}").geturl(),
    )
    subprocess.run(
        [_tool("pg_dump"), "--format=custom", f"--file={dump}", own_store], check=True, timeout=60
    )
    connection.close()
    with psycopg.connect(own_store, autocommit=True) as session:
        session.execute(f"CREATE DATABASE {NEW}".encode())
    subprocess.run(
        [_tool("pg_restore"), "--no-owner", "--exit-on-error", f"--dbname={there}", str(dump)],
        check=True, timeout=60,
    )  # fmt: skip
    try:
        setup.configure(there)
        setup.start()
        report = verify()
        assert (report.faults, report.entries, report.originals, report.seals) == ([], 1, 1, 1)
        assert guards.missing() == []
        save("A1", Note(id="n", text="goes on"))
    finally:
        connection.close()
        setup.configure(own_store)
        with psycopg.connect(own_store, autocommit=True) as session:
            session.execute(f"DROP DATABASE {NEW} WITH (FORCE)".encode())
