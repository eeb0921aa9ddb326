"""Terms, put together from five sheets: conditions, coverages, premiums, totals, options.

Terms go on whole or not at all. Half a policy on file would make its missing coverages look
dropped, so one refused row holds back the terms it belongs to. The rows of a part are all of it: a
coverage on file that the workbook no longer lists is taken away, which a person must accept.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterator, Mapping
from typing import cast

from quarterday.core.file.entry import Place
from quarterday.core.file.layout import SHEETS, TERMS_KEY, Sheet
from quarterday.core.file.records import Terms
from quarterday.core.file.records.base import Part
from quarterday.core.file.records.terms import SharedLimit
from quarterday.core.words import Term, words
from quarterday.intake.assemble import (
    PART_KEYS,
    BadField,
    Group,
    Key,
    SaidOf,
    each_made,
    grouped,
    key_of,
    made,
    require,
)
from quarterday.intake.cells import BadCell, Said, Value
from quarterday.intake.cells.base import bad
from quarterday.intake.changes import by_key, part_key
from quarterday.intake.faults import Fault
from quarterday.intake.labels import field_label
from quarterday.intake.table import Line, place
from quarterday.intake.work import Work, says_all

TERMS = next(sheet for sheet in SHEETS if sheet.record is Terms and sheet.part is None)
PARTS: Mapping[str, Sheet] = {sheet.part: sheet for sheet in SHEETS if sheet.part}
_SHARED = "shared_limit_"
_Parts = dict[str, tuple[Part, ...]]


def terms(work: Work, *, held: bool) -> None:
    """Add the account's terms; ``held`` says that a whole sheet of terms could not be read."""
    rows = {sheet.name: _by_terms(work, sheet) for sheet in (TERMS, *PARTS.values())}
    unsure = held or any(_is_of_no_terms(line) for line in _lines(work))
    for key in sorted({key for found in rows.values() for key in found}):
        of_terms = {name: found.get(key, []) for name, found in rows.items()}
        _one(work, key, of_terms, unsure=unsure)


def _lines(work: Work) -> Iterator[Line]:
    for sheet in (TERMS, *PARTS.values()):
        yield from work.lines.get(sheet.name, ())


def _names_terms(line: Line) -> bool:
    return not any(isinstance(line.said.get(f, Said.BLANK), Said) for f in TERMS_KEY)


def _is_of_no_terms(line: Line) -> bool:
    """Tell whether a refused line may belong to any terms: it does not say to which."""
    return line.is_bad and not _names_terms(line)


def _by_terms(work: Work, sheet: Sheet) -> dict[Key, list[Line]]:
    found: dict[Key, list[Line]] = defaultdict(list)
    for line in work.lines.get(sheet.name, ()):
        if _names_terms(line) or require(line, TERMS_KEY):
            found[key_of(line.said, TERMS_KEY)].append(line)
    return found


def _one(work: Work, key: Key, of_terms: Mapping[str, list[Line]], *, unsure: bool) -> None:
    lines = [line for found in of_terms.values() for line in found]
    base = work.held(Terms, f"{key[0]}/{key[1]}")
    if base is None and not of_terms[TERMS.name]:
        _refuse_orphans(lines)
        return
    groups = grouped(_good(of_terms[TERMS.name]), TERMS_KEY, work.faults)
    parts = {
        n: _part(work, s, of_terms[s.name], base) for n, s in PARTS.items() if of_terms[s.name]
    }
    record = None if unsure or _any_bad(lines) else _whole(groups, parts, base, lines[0])
    if record is None:
        said = words("intake-terms-held", start=key[0], stage=Term("stage", key[1]))
        remedy = words("intake-mend-first-remedy")
        fault = Fault("refused", lines[0].spot(), said, remedy, account=work.account)
        work.faults.append(fault)
    else:
        work.add(record, _places(lines))


def _any_bad(lines: list[Line]) -> bool:
    return any(line.is_bad for line in lines)


def _good(lines: list[Line]) -> list[Line]:
    return [line for line in lines if not line.is_bad and says_all(line)]


def _refuse_orphans(lines: list[Line]) -> None:
    """Refuse lines of terms that are neither in the workbook nor on file."""
    for line in lines:
        if not line.is_bad:
            stage = Term("stage", str(line.said["stage"]))
            said = words("intake-no-terms", start=str(line.said["start"]), stage=stage)
            line.refuse(BadCell(said, words("intake-no-terms-remedy")), "start")


def _part(work: Work, sheet: Sheet, lines: list[Line], base: Terms | None) -> tuple[Part, ...]:
    """Return a part as the workbook lists it, each line over the same line on file."""
    name, model = str(sheet.part), cast("type[Part]", sheet.model)
    held: tuple[Part, ...] = getattr(base, name) if base else ()
    on_file = by_key(name, held)
    groups = grouped(_good(lines), PART_KEYS[name], work.faults)
    found = each_made(groups, lambda g: made(model, g.said, _held(name, g.key, on_file), sheet))
    new = tuple(part for _, part in found)
    return held if held and _sorted(name, new) == _sorted(name, held) else new


def _held(name: str, key: Key, on_file: Mapping[Key, Part]) -> Part | None:
    """Return the line on file that a row speaks of; a premium's reason may be new."""
    if key in on_file or name != "premiums":
        return on_file.get(key)
    same = [part for other, part in on_file.items() if other[:3] == key[:3]]
    return same[0] if len(same) == 1 else None


def _sorted(name: str, parts: tuple[Part, ...]) -> list[Part]:
    return sorted(parts, key=lambda part: part_key(name, part))


def _whole(groups: list[Group], parts: _Parts, base: Terms | None, first: Line) -> Terms | None:
    """Return the terms; None when they cannot be made, which their line is told."""
    said: SaidOf = groups[0].said if groups else {f: first.said[f] for f in TERMS_KEY}
    line = groups[0].first if groups else first
    try:
        shared = _shared_limit(said, base)
        return made(Terms, said, base, TERMS, **parts, shared_limit=shared)
    except BadField as error:
        if error.field:
            line.refuse(error.cell, error.field)
        else:  # the one thing terms as a whole can be wrong in
            line.refuse(bad("ends-early"), "end")
        return None


def _shared_limit(said: SaidOf, base: Terms | None) -> SharedLimit | None:
    """Return the shared additional limit: what is said of it over what is on file."""
    own: dict[str, Value] = {
        name.removeprefix(_SHARED): value
        for name, value in said.items()
        if name.startswith(_SHARED)
    }
    held = base.shared_limit if base else None
    if not own:
        return held
    if own.get("amount") is Said.UNKNOWN:
        return None
    known = {n: getattr(held, n) for n in SharedLimit.model_fields} if held else {}
    known |= {n: None if value is Said.UNKNOWN else value for n, value in own.items()}
    for must in ("amount", "tops_up"):
        if known.get(must) is None:
            named = words("intake-required", column=field_label(f"{_SHARED}{must}"))
            raise BadField(f"{_SHARED}{must}", BadCell(named, words("intake-required-remedy")))
    return SharedLimit.model_validate(known)


def _places(lines: list[Line]) -> Iterator[Place]:
    for line in lines:
        part = line.of.sheet.part
        key = "/".join(key_of(line.said, PART_KEYS[part])) if part else ""
        yield place(line, f"{part}/{key}" if part else "")
