"""Where a store is: its folder and its database."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from pathlib import Path
from typing import Any

import psycopg
from psycopg.conninfo import conninfo_to_dict

from quarterday.core.words import words
from quarterday.store.refusals import BadPlace

HOME, DATABASE = "QUARTERDAY_HOME", "QUARTERDAY_DATABASE"
FILE_NAME = "quarterday.sqlite3"

# Measured with eight writers: without IMMEDIATE most of them fail at once, and a short timeout
# fails some. FULL keeps every acknowledged entry through a power cut. Deleted bytes are
# overwritten, so that a redacted body does not live on in the file's free pages.
_SQLITE = {
    "timeout": 30,
    "transaction_mode": "IMMEDIATE",
    "init_command": (
        "PRAGMA journal_mode=WAL; PRAGMA synchronous=FULL; PRAGMA foreign_keys=ON;"
        "PRAGMA recursive_triggers=ON; PRAGMA secure_delete=ON;"
    ),
}
# As on SQLite, who cannot write within half a minute is told so.
_POSTGRESQL = {"application_name": "quarterday", "options": "-c lock_timeout=30s"}


@dataclass(frozen=True, slots=True)
class Place:
    """A store: the folder of its keys (and of the embedded database), and its database.

    ``url`` is that of a PostgreSQL database; empty for the embedded one.
    """

    home: Path
    url: str = ""

    @property
    def file(self) -> Path:
        """The embedded database's file."""
        return self.home / FILE_NAME

    @property
    def shown(self) -> str:
        """The database as a person reads it, without its password."""
        if not self.url:
            return str(self.file)
        parts = conninfo_to_dict(self.url)
        return f"PostgreSQL: {parts.get('dbname', '')} at {parts.get('host', 'this machine')}"

    def database(self) -> dict[str, Any]:
        """Return Django's settings of the database."""
        if not self.url:
            return {
                "ENGINE": "django.db.backends.sqlite3",
                "NAME": str(self.file),
                "OPTIONS": dict(_SQLITE),
            }
        parts = conninfo_to_dict(self.url)
        return {
            "ENGINE": "django.db.backends.postgresql",
            "NAME": parts.pop("dbname", ""),
            "USER": parts.pop("user", ""),
            "PASSWORD": parts.pop("password", ""),
            "HOST": parts.pop("host", ""),
            "PORT": parts.pop("port", ""),
            "OPTIONS": {**_POSTGRESQL, **parts},
            "CONN_MAX_AGE": 60,
        }


def default_home(environ: Mapping[str, str]) -> Path:
    """Return the folder of the user's own data, as the XDG base directory specification has it."""
    data = environ.get("XDG_DATA_HOME") or Path.home() / ".local" / "share"
    return Path(data) / "quarterday"


def _checked(url: str) -> str:
    try:
        conninfo_to_dict(url)
    except psycopg.ProgrammingError:
        raise BadPlace(words("store-bad-place", place=url.rpartition("@")[2])) from None
    return url


def chosen(store: str | None, environ: Mapping[str, str]) -> Place:
    """Return the place that ``store`` names: a folder, or the URL of a PostgreSQL database.

    None takes what the environment says: QUARTERDAY_DATABASE for the database, QUARTERDAY_HOME for
    the folder. BadPlace when a URL is of another kind of database or cannot be read.
    """
    home = Path(environ.get(HOME) or default_home(environ)).expanduser().absolute()
    text = environ.get(DATABASE, "") if store is None else store
    if text.startswith(("postgresql://", "postgres://")):
        return Place(home, _checked(text))
    if "://" in text:
        raise BadPlace(words("store-bad-place", place=text.rpartition("@")[2]))
    return Place(Path(text).expanduser().absolute() if text else home)
