"""Exporting what the files hold in an open standard."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from pathlib import Path

from quarterday.core.exposure.location import Lost, answers_of
from quarterday.core.reference import Reference
from quarterday.core.words import Arg, Term, Words, words
from quarterday.intake.exposure.tables import codes
from quarterday.intake.exposure.write import Written, write
from quarterday.intake.labels import field_label
from quarterday.store import reading, setup

_TOGETHER = 24  # names in a sentence; a longer list would be spoken shortened
_RECORDS = ("building", "valuation", "terms")


def export_oed(files: Iterable[str], out: Path, reference: Reference) -> Written:
    """Write the locations of ``files`` in Open Exposure Data into the folder ``out``."""
    setup.require_started()
    return write(reading.many(files), out, codes(), answers_of(reference))


def lost(written: Written) -> Iterator[Words]:
    """Yield in sentences, by name and number, what the written files do not hold."""
    for of in _RECORDS:
        named = _named(written, of)
        if named:
            yield words("oed-lost", record=Term("record", of), fields=named)
    coverages = tuple(
        _counted(Term("coverage", one.name), n)
        for one, n in sorted(written.lost.items(), key=lambda item: item[0].name)
        if one.of == "coverage"
    )
    for n in range(0, len(coverages), _TOGETHER):
        yield words("oed-lost-coverages", coverages=coverages[n : n + _TOGETHER])
    if written.left_out:
        yield words("oed-left-out", buildings=tuple(written.left_out))
    yield words("oed-lost-records")


def _named(written: Written, of: str) -> tuple[Words, ...]:
    found = sorted((one.name, one, n) for one, n in written.lost.items() if one.of == of)
    return tuple(_counted(_label(one), n) for _, one, n in found)


def _label(one: Lost) -> Words:
    return field_label(one.name, one.of) if one.name else words("oed-lost-valuation")


def _counted(name: Arg | Words, times: int) -> Words:
    return words("oed-lost-times", name=name, times=times)
