"""The papers about money show the figures that the core computes, whole and adding up."""

from __future__ import annotations

from decimal import Decimal

import pytest

from quarterday.catalogue.load import reference
from quarterday.core.premium.split import between
from quarterday.core.premium.table import table
from quarterday.core.terms.compare import compare
from quarterday.papers.letter.data import premium_of
from quarterday.papers.premium_statement import data as statement
from quarterday.papers.setting import Setting
from quarterday.papers.what_changed import data as what_changed

from . import given

LANGUAGES = ("en", "fr")
NARROW, NO_BREAK, MINUS = "\u202f", "\u00a0", "\u2212"


def number(text: str) -> Decimal:
    """Read an amount as either language writes it."""
    plain = text.replace(MINUS, "-").replace(NARROW, "").replace(NO_BREAK, "").replace("$", "")
    if "," in plain and "." not in plain and len(plain.rpartition(",")[2]) != 3:
        plain = plain.replace(",", ".")
    return Decimal(plain.replace(",", "").replace("+", ""))


def all_settings() -> list[Setting]:
    return [given.setting(id, language) for id in given.book() for language in LANGUAGES]


@pytest.mark.parametrize("language", LANGUAGES)
def test_the_cells_of_the_premium_statement_add_up_to_its_totals(language: str) -> None:
    for id in given.book():
        of = given.setting(id, language)
        if statement.reason(of) is None:
            continue
        panels = statement.data(of)["panels"]
        whole = [Decimal(0)] * len(panels[-1]["rows"])
        for panel in panels:
            last = panel is panels[-1]
            for n, row in enumerate(panel["rows"]):
                cells = [Decimal(0) if c == "–" else number(c) for c in row[1:]]
                whole[n] += sum(cells[:-1] if last else cells)
                if last:
                    assert whole[n] == cells[-1]
            columns = list(zip(*panel["rows"], strict=True))[1:]
            for column in columns:
                parts = [Decimal(0) if c == "–" else number(c) for c in column]
                assert sum(parts[:-1]) == parts[-1]


def test_the_summary_leads_from_the_premium_to_the_core_s_total() -> None:
    for of in all_settings():
        terms = of.case.terms
        if terms is None or not terms.premiums:
            continue
        rows = [number(row[1]) for row in statement.data(of)["summary"]["rows"]]
        expected = table(terms, of.file.organisation.province, reference("canada")).total
        assert sum(rows[:-1]) == rows[-1] == expected.amount


def test_a_statement_of_many_locations_is_told_in_parts_of_at_most_four() -> None:
    for of in all_settings():
        if statement.reason(of):
            panels = statement.data(of)["panels"]
            assert all(len(panel["header"]) <= 2 + statement.ACROSS for panel in panels)
            assert all(len(row) == len(p["header"]) for p in panels for row in p["rows"])


def test_the_waterfall_s_parts_are_the_core_s_split_and_end_at_the_offer() -> None:
    seen = 0
    for of in all_settings():
        expiring, offered = of.case.expiring, of.case.offered
        if not (expiring and offered and expiring.premiums and offered.premiums):
            continue
        seen += 1
        moved = between(expiring, offered, of.file.organisation.province, reference("canada"))
        rows = [number(row[1]) for row in what_changed.data(of)["premium"]["rows"]]
        assert rows[0] == moved.before
        assert rows[-1] == moved.after == sum(rows[:-1])
        now = premium_of(of, "offered")
        assert now is not None
        assert now.amount == moved.after
    assert seen > 40


def test_every_difference_of_the_terms_is_told_once_in_its_group() -> None:
    for of in all_settings():
        if what_changed.reason(of) is None:
            continue
        assert of.case.expiring is not None
        assert of.case.offered is not None
        differences = compare(of.case.expiring, of.case.offered)
        told = sum(
            len(places) * len(changes)
            for group in what_changed.data(of)["groups"]
            for places, changes, _ in group["rows"]
        )
        assert told == len(differences)


def test_an_increase_is_never_called_a_decrease() -> None:
    """The title of the flagship's paper: the offer costs more than this year's policy."""
    of = given.setting()
    before, now = premium_of(of, "expiring"), premium_of(of, "offered")
    assert before is not None
    assert now is not None
    assert now > before
    assert (
        what_changed.data(of)["opening"]["title"]
        == f"Your premium would go up by {of.money(now - before)}"
    )
