"""What all tests share: stores of their own, never the one of who runs them.

A test that only needs the database asks for ``db``: it is rolled back afterwards. A test with other
processes, crashes or commits asks for ``own_store``. Both are marked ``store`` by themselves, and
run on SQLite and, started by ``tests/postgres.sh``, on PostgreSQL.
"""

from __future__ import annotations

import os
from collections.abc import Callable, Iterator
from datetime import datetime
from pathlib import Path
from urllib.parse import urlsplit
from uuid import uuid4

import psycopg
import pytest
from django.conf import settings
from django.db import connection, connections
from pytest_django.plugin import DjangoDbBlocker

from quarterday.core.file.entry import Draft, Entry, Origin
from quarterday.core.file.records import Record
from quarterday.store import guards, ledger, setup
from quarterday.store.place import DATABASE, HOME

USES_STORE = {"db", "transactional_db", "own_store"}


def pytest_configure(config: pytest.Config) -> None:
    config.addinivalue_line("markers", "store: uses the store (set by itself)")


def pytest_collection_modifyitems(items: list[pytest.Item]) -> None:
    for item in items:
        if item.get_closest_marker("django_db") or USES_STORE & set(_fixtures(item)):
            item.add_marker(pytest.mark.store)


def _fixtures(item: pytest.Item) -> list[str]:
    return getattr(item, "fixturenames", [])


@pytest.fixture(scope="session", autouse=True)
def _home(tmp_path_factory: pytest.TempPathFactory) -> None:
    home = tmp_path_factory.mktemp("home")
    os.environ[HOME] = str(home)
    settings.QUARTERDAY_HOME = home


@pytest.fixture(autouse=True)
def _no_certificate_outlives_its_test() -> Iterator[None]:
    """Let no test seal because one before it did: the folder is the same, the ledger is not."""
    yield
    for name in ("certificate.key", "certificate.pem"):
        (Path(settings.QUARTERDAY_HOME) / name).unlink(missing_ok=True)


@pytest.fixture(scope="session")
def django_db_modify_db_settings(tmp_path_factory: pytest.TempPathFactory, worker_id: str) -> None:
    """Give each process of the tests a database of its own.

    SQLite's is a file: in memory there is no write-ahead log and no lock to meet.
    """
    kept = connection.settings_dict
    if connection.vendor == "sqlite":
        kept["TEST"]["NAME"] = str(tmp_path_factory.mktemp("store") / "test.sqlite3")
    else:
        kept["TEST"]["NAME"] = f"test_quarterday_{worker_id}"
    kept["CONN_MAX_AGE"] = 0


@pytest.fixture(autouse=True)
def _guards_give_way(request: pytest.FixtureRequest) -> Iterator[None]:
    """Let tests that commit be emptied afterwards, which the guards refuse.

    Emptying ends with the signal that brings the guards back.
    """
    marker = request.node.get_closest_marker("django_db")
    named = {"transactional_db", "live_server"} & set(request.fixturenames)
    if not named and not (marker and marker.kwargs.get("transaction")):
        yield
        return
    request.getfixturevalue("_django_db_helper")
    yield
    guards.drop()


@pytest.fixture
def own_store(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, django_db_blocker: DjangoDbBlocker
) -> Iterator[str]:
    """A started store of the test's own, named as ``setup.configure`` takes it."""
    server = os.environ.get(DATABASE, "")
    home = tmp_path / "store"
    before = connections["default"], connections.settings["default"], settings.QUARTERDAY_HOME
    monkeypatch.setenv(HOME, str(home))
    monkeypatch.setenv(DATABASE, server)
    name = f"own_{uuid4().hex}"
    with django_db_blocker.unblock():
        setup.configure(_new_database(server, name) if server else str(home))
        setup.start()
        yield setup.current()
        connections["default"].close()
    connections["default"], connections.settings["default"], settings.QUARTERDAY_HOME = before
    if server:
        _execute(server, f"DROP DATABASE {name} WITH (FORCE)")


def _new_database(server: str, name: str) -> str:
    _execute(server, f"CREATE DATABASE {name}")
    return urlsplit(server)._replace(path=f"/{name}").geturl()


def _execute(server: str, statement: str) -> None:
    with psycopg.connect(server, autocommit=True) as session:
        session.execute(statement.encode())


@pytest.fixture
def save() -> Callable[..., tuple[Entry, ...]]:
    """Append records to a file, typed by somebody who has seen everything unless said otherwise."""

    def append(
        file: str,
        *records: Record,
        by: str = "ann",
        seen: int | None = None,
        at: datetime | None = None,
    ) -> tuple[Entry, ...]:
        origin = Origin(way="person", person=by)
        drafts = [Draft("edit", one.kind, one.key, one.body(), origin) for one in records]
        return ledger.append(file, drafts, by=by, expected_seq=seen, at=at)

    return append
