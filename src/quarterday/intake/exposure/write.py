"""Write files as a location file and an account file of Open Exposure Data."""

from __future__ import annotations

import csv
from collections import Counter
from collections.abc import Iterable, Iterator
from dataclasses import dataclass, field
from pathlib import Path

from quarterday.core.exposure.codes import Codes
from quarterday.core.exposure.location import (
    ACCOUNT_COLUMNS,
    LOCATION_COLUMNS,
    WIDTHS,
    Answers,
    Location,
    Lost,
    Row,
    account,
    in_force,
    location,
    lost_of_terms,
)
from quarterday.core.file.fold import File
from quarterday.core.file.records import Building
from quarterday.intake.cells.answers import guarded

LOCATIONS, ACCOUNTS = "location.csv", "account.csv"


@dataclass(slots=True)
class Written:
    """What was written, and what could not be: how often each thing, and ids too long for it."""

    locations: int = 0
    accounts: int = 0
    lost: Counter[Lost] = field(default_factory=Counter)
    left_out: list[str] = field(default_factory=list)


def write(files: Iterable[File], folder: Path, codes: Codes, answers: Answers) -> Written:
    """Write the two files into ``folder`` (UTF-8, commas) and return what they hold and lose.

    Files come one at a time and are not kept. A file without buildings has no row.
    """
    folder.mkdir(parents=True, exist_ok=True)
    done = Written()
    with (
        (folder / LOCATIONS).open("w", encoding="utf-8", newline="") as locations,
        (folder / ACCOUNTS).open("w", encoding="utf-8", newline="") as accounts,
    ):
        of_locations, of_accounts = csv.writer(locations), csv.writer(accounts)
        of_locations.writerow(LOCATION_COLUMNS)
        of_accounts.writerow(ACCOUNT_COLUMNS)
        for file in files:
            found = _found(file, codes, answers, done)
            if not found:
                continue
            perils = {peril for one in found for peril in one.row["LocPerilsCovered"].split(";")}
            of_accounts.writerow(_cells(
                account(file, in_force(file), tuple(sorted(perils)), codes), ACCOUNT_COLUMNS
            ))  # fmt: skip
            of_locations.writerows(_cells(one.row, LOCATION_COLUMNS) for one in found)
            done.accounts += 1
            done.locations += len(found)
    return done


def _found(file: File, codes: Codes, answers: Answers, done: Written) -> list[Location]:
    """Return a file's locations; count what they lose."""
    terms = in_force(file)
    buildings = list(_fitting(file, done))
    found = [location(file, building, terms, codes, answers) for building in buildings]
    done.lost.update(lost for one in found for lost in one.lost)
    if terms and found:
        done.lost.update(lost_of_terms(terms, tuple(building.id for building in buildings)))
    return found


def _fitting(file: File, done: Written) -> Iterator[Building]:
    """Yield the buildings whose numbers the standard has room for; a number is never cut."""
    for building in file.buildings:
        too_long = len(building.id) > WIDTHS["LocNumber"] or len(file.id) > WIDTHS["AccNumber"]
        if too_long:
            done.left_out.append(f"{file.id} {building.id}")
        else:
            yield building


def _cells(row: Row, columns: tuple[str, ...]) -> list[str]:
    return [guarded(row.get(column, "")) for column in columns]
