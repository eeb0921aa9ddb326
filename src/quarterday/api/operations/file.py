"""A file: what it holds, its claims, its entries."""

from datetime import UTC, date, datetime, time, timedelta
from typing import Annotated, Any

from django.http import HttpRequest
from ninja import Router
from pydantic import Field

from quarterday.api.asking import asked, day
from quarterday.api.declaring import reads
from quarterday.api.inputs import AsOf
from quarterday.api.shapes.files import Entries, File, Record
from quarterday.core.file.records import Claim
from quarterday.office import access, plain, undoing
from quarterday.store import ledger

router = Router(tags=["a file"])
Limit = Annotated[int, Field(ge=1, le=500)]


def _end_of(said: date | None) -> datetime | None:
    """Return the last moment of a day in universal time, as entries are recorded; None for none."""
    if said is None:
        return None
    return datetime.combine(day(said) + timedelta(days=1), time(), UTC) - timedelta(microseconds=1)


@reads(router, "/files/{file}", File)
def show(request: HttpRequest, file: str, as_known: AsOf = None) -> dict[str, Any]:
    """Return what is known about an organisation, or was at the end of a day."""
    known = access.open_file(asked(request).person, file, known_at=_end_of(as_known))
    return plain.file(known)


@reads(router, "/files/{file}/claims", list[Record])
def claims(request: HttpRequest, file: str) -> list[dict[str, Any]]:
    """Return the claims on file."""
    held = access.open_file(asked(request).person, file).held.values()
    return [plain.record(one) for one in held if one.record.kind == Claim.kind]


@reads(router, "/files/{file}/entries", Entries)
def entries(
    request: HttpRequest,
    file: str,
    as_known: AsOf = None,
    after: Annotated[int, Field(ge=0, le=10**9)] = 0,
    limit: Limit = 100,
) -> dict[str, Any]:
    """Return the entries after number ``after``, or of those recorded by the end of a day."""
    person, moment = asked(request).person, _end_of(as_known)
    held, every = access.open_file(person, file), ledger.entries(file)
    found = [e for e in every if moment is None or e.recorded_at <= moment]
    undoable = frozenset() if moment else undoing.undoable_by(person, held, every)
    rest = [entry for entry in found if entry.seq > after]
    shown = rest[:limit]
    return {
        "file": file,
        "total": len(found),
        "entries": [plain.entry(entry) for entry in shown],
        "undoable": [entry.seq for entry in shown if entry.seq in undoable],
        "next": shown[-1].seq if len(rest) > limit else None,
    }
