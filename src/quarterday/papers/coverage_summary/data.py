"""What the coverage summary says."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from typing import get_args

from quarterday.core.file.records import Terms
from quarterday.core.file.records.terms import Coverage
from quarterday.core.reference import CoverageType, Family
from quarterday.core.review.need import Need, need
from quarterday.core.words import Rate, Term, Words, words
from quarterday.papers.setting import Data, Setting

ID = "coverage-summary"
NONE = "–"


@dataclass(frozen=True, slots=True)
class Checked:
    """A coverage of the library, the lines that give it, and whether it is needed."""

    type: CoverageType
    lines: tuple[Coverage, ...]
    need: Need

    @property
    def mark(self) -> str:
        """``have``, ``needed``, ``ask`` or ``not-needed``."""
        if self.lines:
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
            lines=tuple(line for line in terms.coverages if line.coverage == known.id),
            need=need(known.needed_when, setting.file),
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
        "families": list(_families(setting, terms, found)),
        "notes": [setting.say("coverage-summary-caution")],
    }


def _families(setting: Setting, terms: Terms, found: tuple[Checked, ...]) -> Iterator[Data]:
    for family in get_args(Family):
        here = [c for c in found if c.type.family == family]
        shown = [c for c in here if c.mark != "not-needed"]
        rest = tuple(Term("coverage", c.type.id) for c in here if c.mark == "not-needed")
        if here:
            yield {
                "heading": setting.spoken(Term("family", family)),
                "rows": [row for c in shown for row in _rows(setting, terms, c)],
                "rest": setting.say("coverage-summary-rest", names=rest) if rest else None,
            }


def _rows(setting: Setting, terms: Terms, c: Checked) -> Iterator[Data]:
    meaning = c.type.meaning[setting.language]
    state = setting.say(f"coverage-summary-{c.mark}")
    if not c.lines:
        why = " ".join(filter(None, (meaning, _because(setting, c))))
        yield _row(setting.coverage(c.type.id), why, c.mark, state, (NONE, NONE))
    for line in c.lines:
        name = setting.coverage_at(line.coverage, line.location)
        terms_of_it = _limit(setting, terms, line), _deductible(setting, terms, line)
        yield _row(name, meaning if line is c.lines[0] else "", c.mark, state, terms_of_it)


def _row(name: str, meaning: str, mark: str, state: str, terms_of_it: tuple[str, str]) -> Data:
    limit, deductible = terms_of_it
    row = {"name": name, "meaning": meaning, "mark": mark, "state": state}
    return row | {"limit": limit, "deductible": deductible}


def _because(setting: Setting, c: Checked) -> str:
    if c.mark == "needed" and c.need.because:
        return setting.say("coverage-summary-because", reasons=c.need.because)
    if c.mark == "ask" and c.need.open_questions:
        return setting.say("coverage-summary-tell-us", questions=c.need.open_questions)
    return ""


def _limit(setting: Setting, terms: Terms, line: Coverage) -> str:
    if line.limit is not None:
        return setting.money(terms.money(line.limit))
    return setting.say("coverage-summary-shared") if line.in_shared_limit else NONE


def _deductible(setting: Setting, terms: Terms, line: Coverage) -> str:
    if line.deductible_percent is not None:
        return setting.spoken(Rate(line.deductible_percent))
    if line.deductible is not None:
        return setting.money(terms.money(line.deductible))
    if line.waiting_hours is not None:
        return setting.say("coverage-summary-hours", n=line.waiting_hours)
    return NONE
