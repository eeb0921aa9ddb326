"""Choosing a store, starting it, and knowing whether it was started."""

from __future__ import annotations

import os
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from pathlib import Path

import django
from django.apps import apps
from django.conf import settings
from django.db import OperationalError, connections

from quarterday.core.words import words
from quarterday.store.place import DATABASE, HOME, Place, chosen
from quarterday.store.refusals import NotReached, NotStarted

SETTINGS = "quarterday.store.settings"


@dataclass(frozen=True, slots=True)
class Started:
    """A store that is ready: where it is, what was done to it, and its signing key's file."""

    place: Place
    migrations: tuple[str, ...]
    key: Path

    @property
    def is_new(self) -> bool:
        """Whether the store did not exist before."""
        return any(name.endswith(".0001_ledger") for name in self.migrations)


def configure(store: str | None = None) -> Place:
    """Choose the store to work on, before anything touches it: a folder, or a PostgreSQL URL.

    None takes what the environment says, or stays with the store in use. Processes that this one
    starts work on the same store. BadPlace when the text names no store.
    """
    if store is None and apps.ready:
        return _place()
    place = chosen(store, os.environ)
    os.environ[HOME], os.environ[DATABASE] = str(place.home), place.url
    os.environ.setdefault("DJANGO_SETTINGS_MODULE", SETTINGS)
    if apps.ready:
        _switch(place)
    else:
        django.setup()
    return place


def current() -> str:
    """Return the store in use as ``configure`` takes it."""
    place = _place()
    return place.url or str(place.home)


def _place() -> Place:
    return chosen(None, os.environ)


def _switch(place: Place) -> None:
    settings.QUARTERDAY_HOME = place.home
    if "default" in connections:
        connections["default"].close()
        del connections["default"]
    connections.settings["default"] = place.database()
    connections.configure_settings(connections.settings)


def start() -> Started:
    """Create the store, or bring it up to this version; what it holds stays.

    The folder is its owner's alone, for it holds personal data and the signing key. NotReached
    when the folder cannot be made or the database not opened.
    """
    from django.core.management import call_command

    from quarterday.store import guards, seal_keys, verify

    with _reached():
        settings.QUARTERDAY_HOME.mkdir(mode=0o700, parents=True, exist_ok=True)
        if not _place().url:
            _place().file.touch(mode=0o600)  # and its log files take after it
        waiting = _waiting()
        call_command("migrate", interactive=False, verbosity=0)
        guards.create()  # a migration that was interrupted may not have come to them
        started = Started(_place(), waiting, seal_keys.ensure())
        if waiting and not started.is_new:
            verify.rebuild()  # this version may index what the last one did not
    return started


@contextmanager
def _reached() -> Iterator[None]:
    try:
        yield
    except (OperationalError, OSError) as error:
        why = str(error).partition("\n")[0]
        raise NotReached(words("store-not-reached", place=_place().shown, why=why)) from error


def _waiting() -> tuple[str, ...]:
    """Return the names of the migrations that the store has not seen."""
    from django.db.migrations.executor import MigrationExecutor

    executor = MigrationExecutor(connections["default"])
    plan = executor.migration_plan(executor.loader.graph.leaf_nodes())
    return tuple(f"{migration.app_label}.{migration.name}" for migration, _ in plan)


def require_started() -> None:
    """Raise NotStarted unless the store exists and is of this version; NotReached when unknown."""
    connection = connections["default"]
    name = connection.settings_dict["NAME"]
    with _reached():
        if (connection.vendor == "sqlite" and not Path(name).exists()) or _waiting():
            raise NotStarted(words("store-not-started", place=_place().shown))
