"""Database triggers that refuse to change or delete what may only be added to.

Django drops a table's triggers when it rebuilds the table on SQLite, so they are created after
every migration, and a check finds any that is gone.
"""

from __future__ import annotations

from dataclasses import dataclass

from django.db import connections, models

from quarterday.core.file.records import OriginalErased
from quarterday.store.models import LedgerEntry, Original, Seal, columns_of, table_of

GUARDED: tuple[type[models.Model], ...] = (LedgerEntry, Original, Seal)
_REDACTABLE = ("body", "salt")


@dataclass(frozen=True, slots=True)
class Guard:
    """A trigger: its name, its table, the statement that makes it, and its function's body.

    SQLite's triggers hold their own body, PostgreSQL's call a function of the same name.
    """

    name: str
    table: str
    sql: str
    function: str = ""

    @property
    def statements(self) -> list[str]:
        """What to execute, in order."""
        if not self.function:
            return [self.sql]
        head = f"CREATE OR REPLACE FUNCTION {self.name}() RETURNS trigger LANGUAGE plpgsql AS "
        return [f"{head}$${self.function}$$", self.sql]


def _redaction(table: str, differs: str, as_text: str) -> str:
    """Return the only permitted change of an entry: its body and salt go, as a later entry says."""
    kept = [column for column in columns_of(LedgerEntry) if column not in _REDACTABLE]
    changed = " OR ".join(f'NEW."{column}" {differs} OLD."{column}"' for column in kept)
    return (
        f"NEW.body IS NULL AND NEW.salt IS NULL AND OLD.salt IS NOT NULL AND NOT ({changed}) "  # noqa: S608 - table and columns are our own
        f"AND EXISTS (SELECT 1 FROM {table} AS r WHERE r.file = OLD.file AND r.kind = 'redaction' "
        f"AND r.seq > OLD.seq AND r.key = CAST(OLD.seq AS {as_text}))"
    )


def _erasure(differs: str, ledger: str) -> str:
    """Return the only permitted change of an original: its content goes, as an entry says."""
    kept = [column for column in columns_of(Original) if column != "content"]
    changed = " OR ".join(f'NEW."{column}" {differs} OLD."{column}"' for column in kept)
    return (
        f"LENGTH(NEW.content) = 0 AND NOT ({changed}) AND EXISTS (SELECT 1 FROM {ledger} AS r "  # noqa: S608 - as above
        f"WHERE r.kind = '{OriginalErased.kind}' AND r.key = OLD.digest)"
    )


def _permitted(model: type[models.Model], differs: str, as_text: str) -> str:
    """Return when a row of a model's table may be changed, as a condition; empty for never."""
    table = table_of(LedgerEntry)
    if model is LedgerEntry:
        return _redaction(table, differs, as_text)
    return _erasure(differs, table) if model is Original else ""


def _sqlite(model: type[models.Model]) -> list[Guard]:
    table = table_of(model)
    key = columns_of(model)[0]
    same = f'"{key}" = NEW."{key}"'
    permitted = _permitted(model, "IS NOT", "TEXT") or "0"
    if model is LedgerEntry:
        same += " OR (file = NEW.file AND seq = NEW.seq)"
    refuse = f"BEGIN SELECT RAISE(ABORT, '{table} is only ever added to'); END"
    return [
        Guard(name, table, f"CREATE TRIGGER {name} {when} {refuse}")
        for name, when in (
            (f"{table}_no_update", f"BEFORE UPDATE ON {table} WHEN NOT ({permitted})"),
            (f"{table}_no_delete", f"BEFORE DELETE ON {table}"),
            # INSERT OR REPLACE deletes without a delete trigger
            (
                f"{table}_no_replace",
                f"BEFORE INSERT ON {table} WHEN EXISTS (SELECT 1 FROM {table} WHERE {same})",  # noqa: S608 - as above
            ),
        )
    ]


def _postgresql(model: type[models.Model]) -> list[Guard]:
    table = table_of(model)
    permitted = _permitted(model, "IS DISTINCT FROM", "text") or "FALSE"
    refuse = (
        f"RAISE EXCEPTION '{table} is only ever added to' "
        "USING ERRCODE = 'integrity_constraint_violation';"
    )
    no_change, no_truncate = f"{table}_no_change", f"{table}_no_truncate"
    bodies = {
        no_change: f"IF TG_OP = 'UPDATE' THEN IF {permitted} THEN RETURN NEW; END IF; END IF; ",
        no_truncate: "",
    }
    when = {
        no_change: f"BEFORE UPDATE OR DELETE ON {table} FOR EACH ROW",
        no_truncate: f"BEFORE TRUNCATE ON {table} FOR EACH STATEMENT",
    }
    return [
        Guard(
            name,
            table,
            f"CREATE TRIGGER {name} {when[name]} EXECUTE FUNCTION {name}()",
            f" BEGIN {bodies[name]}{refuse} END ",
        )
        for name in (no_change, no_truncate)
    ]


def guards(using: str = "default") -> list[Guard]:
    """Return the guards of all guarded tables, for the database's own kind."""
    make = _sqlite if connections[using].vendor == "sqlite" else _postgresql
    return [guard for model in GUARDED for guard in make(model)]


def create(using: str = "default") -> None:
    """Create the guards anew; tables that a half-made migration has not made are left out."""
    tables = set(connections[using].introspection.table_names())
    drop(using)
    with connections[using].cursor() as cursor:
        for guard in guards(using):
            if guard.table in tables:
                for statement in guard.statements:
                    cursor.execute(statement)


def drop(using: str = "default") -> None:
    """Drop the guards: for tests that empty the tables, and for a migration that must."""
    connection = connections[using]
    tables = set(connection.introspection.table_names())
    with connection.cursor() as cursor:
        for guard in guards(using):
            if guard.table in tables:
                of_table = f" ON {guard.table}" if connection.vendor == "postgresql" else ""
                cursor.execute(f"DROP TRIGGER IF EXISTS {guard.name}{of_table}")


_FOUND_SQLITE = "SELECT name, sql FROM sqlite_master WHERE type = 'trigger'"
_FOUND_POSTGRESQL = (
    "SELECT t.tgname, p.prosrc FROM pg_trigger t JOIN pg_proc p ON p.oid = t.tgfoid "
    "WHERE t.tgenabled IN ('O', 'A')"
)


def missing(using: str = "default") -> list[str]:
    """Return the names of guards that are gone, rewritten or switched off."""
    embedded = connections[using].vendor == "sqlite"
    with connections[using].cursor() as cursor:
        cursor.execute(_FOUND_SQLITE if embedded else _FOUND_POSTGRESQL)
        found = dict(cursor.fetchall())
    return [
        guard.name
        for guard in guards(using)
        if found.get(guard.name) != (guard.sql if embedded else guard.function)
    ]
