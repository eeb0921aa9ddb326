"""The store as a Django application: its guards come back after every migration."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from django.apps import AppConfig
from django.core import checks
from django.db.models.signals import post_migrate


def _set_guards(using: str, **_: object) -> None:
    from quarterday.store import guards

    guards.create(using)


def _check_guards(
    *,
    databases: Sequence[str] | None = None,
    **_: Any,  # noqa: ANN401 - as Django calls it
) -> list[checks.CheckMessage]:
    from quarterday.store import guards

    return [
        checks.Error(f"The database {name} lacks the guard {missing}.", id="store.E001")
        for name in databases or ()
        for missing in guards.missing(name)
    ]


class StoreConfig(AppConfig):
    """The ledger's tables."""

    name = "quarterday.store"
    label = "store"

    def ready(self) -> None:
        """Put the guards back whenever Django may have rebuilt a table, and check for them."""
        post_migrate.connect(_set_guards, sender=self, dispatch_uid="store.guards")
        checks.register(_check_guards, checks.Tags.database)
