"""What an organisation says of its income and bills is read as people write it."""

from __future__ import annotations

from decimal import Decimal

import pytest

from quarterday.core.file.records import Operations
from tests.intake.books import ORGANISATIONS, plan_of

ENGLISH = (
    "account", "revenue growth", "income dependent on premises", "giving that continues",
    "annual payroll", "wages continued", "non-continuing expenses", "alternate rent",
    "set-up costs",
)  # fmt: skip
FRENCH = (
    "dossier", "Croissance des revenus", "Part des revenus liée au bâtiment", "dons maintenus",
    "Masse salariale", "salaires maintenus", "Dépenses qui cessent", "Loyer temporaire",
    "Frais de déménagement",
)  # fmt: skip
TOLD = ("0007", "2 %", "75%", "0.6", "$180,000", "100%", "24,500.50", "3200", "15000")
DIT = ("0007", "2 %", "75 %", "60 %", "180 000 $", "100 %", "24 500,50 $", "3 200", "15 000 $")
EXPECTED = Operations(
    income_growth=Decimal("0.02"), premises_share=Decimal("0.75"), giving_kept=Decimal("0.6"),
    payroll=Decimal("180000.00"), payroll_kept=Decimal(1), expenses_stopping=Decimal("24500.50"),
    rent_elsewhere=Decimal("3200.00"), moving_costs=Decimal("15000.00"),
)  # fmt: skip


@pytest.mark.parametrize(("heads", "cells"), [(ENGLISH, TOLD), (FRENCH, DIT)])
def test_answers_are_read_in_both_languages(heads: tuple[str, ...], cells: tuple[str, ...]) -> None:
    done = plan_of({"Organisations": ORGANISATIONS, "Operations": [heads, cells]})
    (read,) = (item.record for item in done.items if item.record.kind == "operations")
    assert read == EXPECTED


@pytest.mark.parametrize(
    ("head", "cell"),
    [("payroll kept", "120%"), ("premises share", "-5%"), ("giving kept", "most of it")],
)
def test_a_share_that_is_none_is_refused_or_asked(head: str, cell: str) -> None:
    rows = [("account", head), ("0007", cell)]
    done = plan_of({"Organisations": ORGANISATIONS, "Operations": rows})
    told = [item for item in done.items if item.record.kind == "operations"]
    assert not told or getattr(told[0].record, head.replace(" ", "_")) is None
    assert done.needs_acceptance
