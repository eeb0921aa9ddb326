"""A mapping that is kept: which sheet and column of somebody's workbooks means which of ours."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from pathlib import Path

import yaml
from pydantic import BaseModel, ConfigDict, ValidationError

from quarterday.catalogue.problems import BadReference
from quarterday.catalogue.strict import read_yaml
from quarterday.core.file.layout import SHEETS
from quarterday.intake.refusals import Unreadable
from quarterday.intake.vocabulary import normal, targets

LEFT_OUT = ""


@dataclass(frozen=True, slots=True)
class Profile:
    """Sheets by their name and columns by sheet and heading, names as they are compared.

    A value of "" leaves the sheet or column out.
    """

    sheets: Mapping[str, str] = field(default_factory=dict)
    columns: Mapping[tuple[str, str], str] = field(default_factory=dict)

    def sheet(self, name: str) -> str | None:
        """Return the layout's sheet for a workbook's sheet, "" to leave it out, None if unsaid."""
        return self.sheets.get(normal(name))

    def column(self, sheet: str, heading: str) -> str | None:
        """Return the layout's column for a heading, "" to leave it out, None if unsaid."""
        return self.columns.get((normal(sheet), normal(heading)))


NO_PROFILE = Profile()


class _KeptSheet(BaseModel):
    model_config = ConfigDict(extra="forbid")
    sheet: str
    columns: dict[str, str] = {}


def save(profile: Profile, path: Path) -> None:
    """Write a profile as YAML that a person can read and correct."""
    kept = {
        name: {
            "sheet": sheet,
            "columns": {h: c for (s, h), c in profile.columns.items() if s == name},
        }
        for name, sheet in profile.sheets.items()
    }
    path.write_text(yaml.safe_dump(kept, allow_unicode=True, sort_keys=False), "utf-8")


def load(path: Path) -> Profile:
    """Read a profile; Unreadable when it is no profile or names what the layout does not have."""
    try:
        data = read_yaml(path.read_text("utf-8"), path.name)
        kept = {name: _KeptSheet.model_validate(entry) for name, entry in dict(data or {}).items()}
    except (OSError, ValueError, TypeError, BadReference, ValidationError) as error:
        raise Unreadable("intake-profile-broken", name=path.name, why=str(error)) from error
    for name, entry in kept.items():
        _check(path.name, name, entry)
    return Profile(
        sheets={normal(name): entry.sheet for name, entry in kept.items()},
        columns={
            (normal(name), normal(heading)): column
            for name, entry in kept.items()
            for heading, column in entry.columns.items()
        },
    )


def _check(file: str, name: str, entry: _KeptSheet) -> None:
    sheets = {sheet.name: sheet for sheet in SHEETS}
    if entry.sheet == LEFT_OUT:
        return
    if entry.sheet not in sheets:
        raise Unreadable("intake-profile-sheet", name=file, sheet=name, unknown=entry.sheet)
    known = {t.name for t in targets(sheets[entry.sheet]).values()} | {LEFT_OUT}
    for column in entry.columns.values():
        if column not in known:
            raise Unreadable("intake-profile-column", name=file, sheet=name, unknown=column)
