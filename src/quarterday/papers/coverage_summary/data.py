"""What the coverage summary says."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from quarterday.core.file.records import Terms
from quarterday.core.file.records.terms import Coverage
from quarterday.core.reference import CoverageType
from quarterday.core.review.need import Need
from quarterday.core.terms.option import deductible_said
from quarterday.core.terms.presence import lines_of, within
from quarterday.core.words import Term, Words, words
from quarterday.papers.setting import FAMILIES, Data, Setting

ID = "coverage-summary"
NONE = "–"
MOST_NAMED = 3  # coverages that another one is part of
MOST_REASONS = 2  # of a need, so that a row stays a row


@dataclass(frozen=True, slots=True)
class Checked:
    """A coverage of the library, the lines that give it, and whether it is needed.

    ``within`` are the other coverages whose clauses, or the shared limit, give it.
    """

    type: CoverageType
    lines: tuple[Coverage, ...]
    need: Need
    within: tuple[str, ...] = ()

    @property
    def mark(self) -> str:
        """``have``, ``needed``, ``ask`` or ``not-needed``."""
        if self.lines or self.within:
            return "have"
        return {"yes": "needed", "unknown": "ask", "no": "not-needed"}[self.need.answer]


def reason(setting: Setting) -> Words | None:
    """Return why it goes in: there are terms to check."""
    if setting.case.terms is None:
        return None
    gaps = sum(c.mark == "needed" for c in checked(setting, setting.case.terms))
    return words("coverage-summary-reason", count=gaps)


def checked(setting: Setting, terms: Terms) -> tuple[Checked, ...]:
    """Return every coverage of the library, checked against the terms and the file."""
    return tuple(
        Checked(
            type=known,
            lines=lines_of(terms, known.id),
            need=setting.needs[known.id],
            within=within(terms, known.id),
        )
        for known in setting.reference.coverages.values()
    )


def data(setting: Setting) -> Data:
    """Return the checklist by family."""
    terms = setting.case.terms
    assert terms is not None
    found = checked(setting, terms)
    gaps = sum(c.mark == "needed" for c in found)
    have = sum(c.mark == "have" for c in found)
    title = setting.say("coverage-summary-title", count=gaps)
    lead = setting.say("coverage-summary-lead", have=have, start=terms.start, end=terms.end)
    header = ("coverage", "state", "limit", "deductible")
    return {
        "opening": setting.opening(ID, title, lead),
        "header": [setting.say(f"coverage-summary-{id}") for id in header],
        "gaps": [setting.say(f"coverage-summary-{id}") for id in ("coverage", "pays", "why")],
        "families": [*_missing(setting, found), *_families(setting, terms, found)],
        "notes": [setting.say("caution-wording-governs")],
    }


def _missing(setting: Setting, found: tuple[Checked, ...]) -> Iterator[Data]:
    """Yield what is needed and not there, before everything else."""
    gaps = [c for c in found if c.mark == "needed"]
    if gaps:
        rows = [
            {
                "name": setting.coverage(c.type.id),
                "meaning": c.type.meaning[setting.language],
                "why": _because(setting, c),
            }
            for c in sorted(gaps, key=lambda c: setting.order(c.type.id))
        ]
        yield {"heading": setting.say("coverage-summary-gaps"), "rows": rows, "rest": None}


def _families(setting: Setting, terms: Terms, found: tuple[Checked, ...]) -> Iterator[Data]:
    for family in FAMILIES:
        here = [c for c in found if c.type.family == family]
        rows = [row for c in here for row in _rows(setting, terms, c)]
        rest = tuple(Term("coverage", c.type.id) for c in here if c.mark == "not-needed")
        if rows or rest:
            yield {
                "heading": setting.say("paper-name", paper=Term("family", family)),
                "rows": rows,
                "rest": setting.say("coverage-summary-rest", names=rest) if rest else None,
            }


def _rows(setting: Setting, terms: Terms, c: Checked) -> Iterator[Data]:
    """Yield the rows of a coverage that is there, or about which the file says too little."""
    if c.mark == "ask":
        why = " ".join(filter(None, (c.type.meaning[setting.language], _tell_us(setting, c))))
        yield _row(setting, setting.coverage(c.type.id), why, c.mark, (NONE, NONE))
    if c.within and not c.lines:
        name, meaning = setting.coverage(c.type.id), c.type.meaning[setting.language]
        yield _row(setting, name, f"{meaning} {_said_within(setting, c)}", c.mark, (NONE, NONE))
    for line in c.lines:
        name = setting.coverage_at(line.coverage, line.location)
        meaning = c.type.meaning[setting.language] if line is c.lines[0] else ""
        terms_of_it = _limit(setting, terms, line), _deductible(setting, terms, line)
        yield _row(setting, name, meaning, c.mark, terms_of_it)


def _row(
    setting: Setting, name: str, meaning: str, mark: str, terms_of_it: tuple[str, str]
) -> Data:
    state, (limit, deductible) = setting.say(f"coverage-summary-{mark}"), terms_of_it
    row = {"name": name, "meaning": meaning, "mark": mark, "state": state}
    return row | {"limit": limit, "deductible": deductible}


def _said_within(setting: Setting, c: Checked) -> str:
    """Return where a coverage without a line of its own is given."""
    covers = [Term("coverage", id) for id in c.within if id in setting.reference.coverages]
    case, more = "lines" if covers else "shared", len(covers) - MOST_NAMED
    rest = (words("listing-more", n=more),) if more > 0 else ()
    shown = (*covers[:MOST_NAMED], *rest)
    return setting.say("coverage-summary-within", case=case, covers=shown)


def _because(setting: Setting, c: Checked) -> str:
    if not c.need.because:
        return setting.say("coverage-summary-everyone")
    return setting.say("coverage-summary-because", reasons=c.need.because[:MOST_REASONS])


def _tell_us(setting: Setting, c: Checked) -> str:
    if not c.need.open_questions:
        return ""
    asked = c.need.open_questions[:MOST_REASONS]
    return setting.say("coverage-summary-tell-us", questions=asked)


def _limit(setting: Setting, terms: Terms, line: Coverage) -> str:
    if line.limit is not None:
        return setting.money(terms.money(line.limit))
    return setting.say("coverage-summary-shared") if line.in_shared_limit else NONE


def _deductible(setting: Setting, terms: Terms, line: Coverage) -> str:
    own = deductible_said(terms, line)
    if own is not None:
        return setting.spoken(own)
    if line.waiting_hours is not None:
        return setting.say("coverage-summary-hours", n=line.waiting_hours)
    return NONE
