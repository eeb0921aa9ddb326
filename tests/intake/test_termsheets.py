"""Terms are put together from five sheets, whole or not at all."""

from __future__ import annotations

from datetime import date
from decimal import Decimal

import pytest

from quarterday.core.file.fold import File
from quarterday.core.file.records import Building, Organisation, Terms
from quarterday.core.file.records.terms import Coverage, Option, Premium, SharedLimit, StatedTotal
from quarterday.intake.plan import Plan
from tests.intake.books import (
    ORGANISATIONS,
    Rows,
    Sheets,
    after,
    file_of,
    plan_of,
    previewed,
    refusals,
    said,
)

TERMS = ("account", "start", "end", "stage", "insurer")
COVERAGES = ("account", "start", "stage", "coverage", "location", "limit", "deductible")
PREMIUMS = ("account", "start", "stage", "coverage", "location", "kind", "amount", "reason")
TOTALS = ("account", "start", "stage", "of", "id", "amount")
OPTIONS = ("account", "start", "stage", "coverage", "location", "limit", "price")
START, END = date(2026, 1, 15), date(2027, 1, 15)
OF = ("0007", START, "issued")
HELD = Terms(
    stage="issued",
    start=START,
    end=END,
    insurer="Northlight Mutual",
    coverages=(
        Coverage(
            coverage="building", location="01", limit=Decimal(900_000), deductible=Decimal(1000)
        ),
        Coverage(coverage="sewer-backup", limit=Decimal(25_000)),
    ),
    premiums=(
        Premium(coverage="building", location="01", amount=Decimal(3000)),
        Premium(
            coverage="building", location="01", kind="surcharge", amount=Decimal(50), reason="stove"
        ),
    ),
)


def sheets(**more: Rows) -> Sheets:
    return {
        "Organisations": ORGANISATIONS,
        "Buildings": [("account", "id", "name"), ("0007", "01", "Hall")],
        "Terms": [TERMS, ("0007", START, END, "issued", "Northlight Mutual")],
        **more,
    }


def on_file(*terms: Terms) -> dict[str, File]:
    first = (Organisation(name="St. Brendan", province="ON"), Building(id="01", name="Hall"))
    return {"0007": file_of("0007", [*first, *terms])}


def terms_of(done: Plan) -> Terms:
    (found,) = (item.record for item in done.items if isinstance(item.record, Terms))
    return found


def status_of(done: Plan) -> str:
    (found,) = (item.status for item in done.items if isinstance(item.record, Terms))
    return found


def test_terms_hold_what_five_sheets_say_and_where_each_line_stood() -> None:
    done = plan_of(
        sheets(
            Coverages=[
                COVERAGES,
                (*OF, "Building", "01", 900_000, 1000),
                (*OF, "sewer back-up", "", 25_000, ""),
            ],
            Premiums=[PREMIUMS, (*OF, "building", "hall", "", 3000, "")],
            Totals=[TOTALS, (*OF, "total", "", 3000), (*OF, "coverage", "Building", 3000)],
            Options=[OPTIONS, (*OF, "overland-flood", "*", 50_000, "N/A")],
        )
    )
    assert terms_of(done) == Terms(
        stage="issued",
        start=START,
        end=END,
        insurer="Northlight Mutual",
        coverages=HELD.coverages,
        premiums=HELD.premiums[:1],
        totals=(
            StatedTotal(of="total", amount=Decimal(3000)),
            StatedTotal(of="coverage", id="building", amount=Decimal(3000)),
        ),
        options=(Option(coverage="overland-flood", limit=Decimal(50_000)),),
    )
    origin = next(i.origin for i in done.items if isinstance(i.record, Terms))
    assert [(p.sheet, p.row, p.part) for p in origin.places] == [
        ("Terms", 2, ""),
        ("Coverages", 2, "coverages/building/01"),
        ("Coverages", 3, "coverages/sewer-backup/*"),
        ("Premiums", 2, "premiums/building/01/premium/"),
        ("Totals", 2, "totals/total/*"),
        ("Totals", 3, "totals/coverage/building"),
        ("Options", 2, "options/overland-flood/*/50000"),
    ]


@pytest.mark.parametrize(
    ("headings", "said"),
    [
        (("deductible percent", "deductible percent of", "deductible minimum"), "value"),
        (("Deductible %", "Deductible % of", "Min deductible"), "of value"),
        (("Franchise en pourcentage", "Pourcentage appliqué à", "Franchise minimale"), "valeur"),
    ],
)
def test_an_option_says_a_percentage_deductible_as_a_coverage_does(
    headings: tuple[str, ...], said: str
) -> None:
    row = (*OF, "earthquake", "*", 50_000, 5_900, "5 %", said, 10_000)
    done = plan_of(sheets(Options=[(*OPTIONS, *headings), row]))
    assert terms_of(done).options == (
        Option(
            coverage="earthquake",
            limit=Decimal(50_000),
            price=Decimal(5_900),
            deductible_percent=Decimal("0.05"),
            deductible_percent_of="value",
            deductible_minimum=Decimal(10_000),
        ),
    )


def test_options_from_before_meet_a_workbook_with_the_new_columns_unchanged() -> None:
    """A workbook that says nothing in them leaves what is on file, and one without them too."""
    options = (Option(coverage="earthquake", limit=Decimal(1), deductible=Decimal(25_000)),)
    held = HELD.model_copy(update={"options": options})
    for headings, cells in (((), ()), (("deductible percent",), ("",))):
        row = (*OF, "earthquake", "*", 1, "", *cells)
        done = plan_of(sheets(Options=[(*OPTIONS, *headings), row]), on_file(held))
        assert terms_of(done).options == options


@pytest.mark.parametrize("of", ["whole-income", "Gross earnings", "revenus bruts"])
def test_a_coverage_says_what_its_coinsurance_of_income_counts(of: str) -> None:
    row = (*OF, "loss-of-income", "*", 50_000, "", "50 %", of)
    headings = (*COVERAGES, "coinsurance", "coinsurance of")
    (line,) = terms_of(plan_of(sheets(Coverages=[headings, row]))).coverages
    assert (line.coinsurance, line.coinsurance_of) == (Decimal("0.5"), "whole-income")


@pytest.mark.parametrize("stage", ["issued", "Expiring", "en vigueur", "Échue"])
def test_expiring_terms_are_the_issued_ones(stage: str) -> None:
    done = plan_of({**sheets(), "Terms": [TERMS, ("0007", START, END, stage, "")]})
    assert terms_of(done).stage == "issued"


def test_a_refused_row_holds_back_the_terms_it_belongs_to_and_no_others() -> None:
    offer = ("0007", END, "offered")
    done = plan_of(
        {
            **sheets(
                Coverages=[
                    COVERAGES,
                    (*OF, "building", "01", 900_000, ""),
                    (*OF, "flod", "01", 100, ""),
                    (*offer, "building", "01", 900_000, ""),
                ],
            ),
            "Terms": [
                TERMS,
                ("0007", START, END, "issued", ""),
                ("0007", END, date(2028, 1, 15), "offered", ""),
            ],
        }
    )
    assert terms_of(done).stage == "offered"
    held, fault = refusals(done)
    assert held == (
        "Terms, row 2: The issued terms that start on 2026-01-15 were held back, because a row that"
        " belongs to them was refused. Half a policy on file would show coverage as dropped. Mend"
        " that row first."
    )
    assert "“flod”" in fault


def test_a_row_that_does_not_say_its_terms_holds_back_all_of_the_account() -> None:
    done = plan_of(
        sheets(
            Coverages=[
                COVERAGES,
                (*OF, "building", "01", 1, ""),
                ("0007", "soon", "issued", "glass", "", 1, ""),
            ]
        )
    )
    assert not any(isinstance(item.record, Terms) for item in done.items)
    assert "intake-terms-held" in {fault.what.id for fault in done.of("refused")}


def test_a_sheet_of_terms_that_cannot_be_read_holds_back_all_terms() -> None:
    done = plan_of(
        sheets(Coverages=[("account", "start", "coverage", "limit"), ("0007", START, "glass", 1)])
    )
    assert not any(isinstance(item.record, Terms) for item in done.items)


def test_lines_of_terms_that_nobody_knows_are_refused() -> None:
    done = plan_of(sheets(Coverages=[COVERAGES, ("0007", END, "offered", "glass", "", 100, "")]))
    assert (
        "There are no offered terms (conditions of a policy) that start on 2027-01-15."
        in refusals(done)[0]
    )
    assert terms_of(done).stage == "issued"


def test_lines_may_be_of_terms_on_file() -> None:
    rows: Rows = [
        COVERAGES,
        (*OF, "building", "01", 950_000, ""),
        (*OF, "sewer-backup", "", "", ""),
    ]
    done = plan_of({"Coverages": rows}, on_file(HELD))
    changed = terms_of(done)
    assert changed.insurer == "Northlight Mutual"
    assert changed.premiums == HELD.premiums
    assert [line.limit for line in changed.coverages] == [950_000, 25_000]
    assert [line.deductible for line in changed.coverages] == [1000, None]
    assert previewed(done)[1] == (
        "0007, issued terms from January 15, 2026, coverages, Building (building 01): Limit was"
        " $900,000 and becomes $950,000."
    )


def test_the_order_of_rows_changes_nothing() -> None:
    rows: Rows = [
        COVERAGES,
        (*OF, "sewer-backup", "", 25_000, ""),
        (*OF, "building", "01", 900_000, 1000),
    ]
    assert status_of(plan_of({"Coverages": rows}, on_file(HELD))) == "unchanged"


def test_a_coverage_that_is_no_longer_listed_goes_only_when_a_person_accepts() -> None:
    rows: Rows = [COVERAGES, (*OF, "building", "01", 900_000, 1000)]
    done = plan_of({"Coverages": rows}, on_file(HELD))
    assert said(done.of("asks")) == [
        (
            "Coverages, row 2: One line on file is not in the workbook and would be taken away:"
            " sewer-backup · *. Check it, then accept or correct it."
        )
    ]
    assert terms_of(done).coverages == HELD.coverages[:1]
    assert "coverages, Sewer backup is taken away." in previewed(done)[2]


def test_sheets_that_are_not_there_take_nothing_away() -> None:
    done = plan_of({"Terms": [TERMS, ("0007", START, END, "issued", "Eastlight")]}, on_file(HELD))
    assert terms_of(done) == HELD.model_copy(update={"insurer": "Eastlight"})


def test_a_premium_without_its_reason_is_the_one_on_file() -> None:
    rows: Rows = [
        PREMIUMS[:-1],
        (*OF, "building", "01", "premium", 3000),
        (*OF, "building", "01", "surcharge", 60),
    ]
    done = plan_of({"Premiums": rows}, on_file(HELD))
    assert [line.reason for line in terms_of(done).premiums] == [None, "stove"]
    assert terms_of(done).premiums[1].amount == 60


def test_two_surcharges_with_two_reasons_are_two() -> None:
    rows: Rows = [
        PREMIUMS,
        (*OF, "building", "01", "surprime", 50, "stove"),
        (*OF, "building", "01", "surprime", 70, "claims"),
    ]
    assert len(terms_of(plan_of({"Premiums": rows}, on_file(HELD))).premiums) == 2


def test_coverages_that_contradict_each_other_are_refused() -> None:
    rows: Rows = [COVERAGES, (*OF, "glass", "", 100, ""), (*OF, "glass", "toutes", 200, "")]
    done = plan_of(sheets(Coverages=rows))
    assert [f.what.id for f in done.of("refused")].count("intake-contradicts") == 2


def test_terms_that_end_before_they_start_are_refused() -> None:
    done = plan_of({**sheets(), "Terms": [TERMS, ("0007", END, START, "issued", "")]})
    assert "The terms end on or before the day they start. Check both dates." in " ".join(
        refusals(done)
    )


SHARED = (*TERMS, "shared limit amount", "shared limit tops up", "shared limit meant for")


def shared(*cells: object, files: dict[str, File] | None = None) -> Plan:
    return plan_of(
        {**sheets(), "Terms": [SHARED, ("0007", START, END, "issued", "", *cells)]}, files
    )


def test_the_shared_limit_is_read_kept_changed_and_taken_away() -> None:
    limit = SharedLimit(
        amount=Decimal(100_000), tops_up=("by-laws", "extra-expense"), meant_for="owner"
    )
    assert (
        terms_of(shared("100 000", "By-laws; frais supplémentaires", "propriétaire")).shared_limit
        == limit
    )
    files = on_file(HELD.model_copy(update={"shared_limit": limit}))
    assert terms_of(shared("", "", "", files=files)).shared_limit == limit
    more = terms_of(shared(200_000, "", "", files=files)).shared_limit
    assert more == limit.model_copy(update={"amount": Decimal("200000.00")})
    assert terms_of(shared("N/A", "", "", files=files)).shared_limit is None


def test_a_shared_limit_without_its_amount_is_refused() -> None:
    assert "is missing" in " ".join(refusals(shared("", "by-laws", "")))


def test_terms_older_than_those_on_file_ask() -> None:
    older: Rows = [TERMS, ("0007", date(2025, 1, 15), START, "issued", "")]
    done = plan_of({"Terms": older}, on_file(HELD))
    assert said(done.of("asks")) == [
        (
            "Terms, row 2: These terms start on January 15, 2025, and later"
            " ones, which start on January"
            " 15, 2026, are on file. The workbook may be of another year. Check it, then accept or"
            " correct it."
        )
    ]


def test_older_terms_that_change_nothing_do_not_ask() -> None:
    old = HELD.model_copy(update={"start": date(2025, 1, 15), "end": START})
    rows: Rows = [TERMS, ("0007", date(2025, 1, 15), START, "issued", "Northlight Mutual")]
    done = plan_of({"Terms": rows}, on_file(old, HELD))
    assert not done.needs_acceptance


def test_terms_loaded_twice_change_nothing() -> None:
    book = sheets(
        Coverages=[COVERAGES, (*OF, "building", "01", 900_000, 1000)],
        Premiums=[PREMIUMS, (*OF, "building", "01", "", 3000, "")],
        Totals=[TOTALS, (*OF, "total", "", 3000)],
        Options=[OPTIONS, (*OF, "overland-flood", "*", 1, ""), (*OF, "overland-flood", "*", 2, "")],
    )
    again = plan_of(book, after(plan_of(book)))
    assert {item.status for item in again.items} == {"unchanged"}
