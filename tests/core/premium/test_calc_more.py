"""The calculations on their own give the published rows, and refuse what they cannot use."""

from __future__ import annotations

from collections.abc import Mapping
from decimal import Decimal
from typing import Any

import pytest

from quarterday.catalogue.speech import Speech
from quarterday.core.given import Unusable
from quarterday.core.premium.calc_payments import apr, earned, instalments
from quarterday.core.premium.calc_tables import apportion_table, split_change
from quarterday.core.reference import Reference

CALCULATIONS = {
    "apportion-table": apportion_table,
    "split-change": split_change,
    "instalments": instalments,
    "apr": apr,
    "earned": earned,
}
QUEBEC: dict[str, Any] = {
    "premium": "4000", "plan": "ten-withdrawals", "start": "2026-12-08", "province": "qc",
}  # fmt: skip
TERM = {"premium": "1500", "from": "2026-01-01", "to": "2027-01-01", "cancelled": "2026-08-08"}


def test_a_table_comes_back_with_its_sums_as_text(canada: Reference) -> None:
    given = {"cells": {"a": {"x": "3.333", "y": "1.111"}, "b": {"x": "2.5", "y": "0.056"}}}
    done = apportion_table(given, canada)
    assert done["cells"] == {"a": {"x": "3.33", "y": "1.11"}, "b": {"x": "2.50", "y": "0.06"}}
    assert done["rows"] == {"a": "4.44", "b": "2.56"}
    assert (done["columns"], done["total"]) == ({"x": "5.83", "y": "1.17"}, "7.00")


def test_whole_dollars_come_without_cents(canada: Reference) -> None:
    done = apportion_table({"cells": {"a": {"x": "0.4", "y": "0.6"}}, "unit": "1"}, canada)
    assert done["cells"] == {"a": {"x": "0", "y": "1"}}


def test_a_change_is_split_by_shapleys_rule(canada: Reference) -> None:
    """ΔE × mean R = 100,000 × 0.0021, ΔR × mean E = 0.0002 × 1,050,000 (arithmetic)."""
    done = split_change(
        {
            "before": [{"line": "building", "exposure": "1000000", "rate": "0.002"},
                       {"line": "glass", "amount": "50"}],
            "after": [{"line": "building", "exposure": "1100000", "rate": "0.0022"},
                      {"line": "media", "amount": "30"}],
            "tax_before": {"amount": "164", "base": "2050", "rate": "0.08"},
            "tax_after": {"amount": "245", "base": "2450", "rate": "0.1"},
        },
        canada,
    )  # fmt: skip
    assert done["effects"] == {
        "exposure": "210.00", "rate": "210.00", "added": "30.00", "dropped": "-50.00",
        "tax_base": "36.00", "tax_rate": "45.00",
    }  # fmt: skip
    assert done["total"] == "481.00"
    assert sum(Decimal(v) for v in done["effects"].values()) == Decimal(done["total"])
    assert [line["line"] for line in done["lines"]] == ["building", "glass", "media", "tax"]


def test_a_quebec_plan_bears_both_rates(canada: Reference) -> None:
    """9 % of 400 on 8 December 2026, 9.975 % of each 400 from January 2027 (Bill 99)."""
    done = instalments(QUEBEC, canada)
    assert [p["tax"] for p in done["payments"]] == ["36.00"] + ["39.90"] * 9
    assert (done["at_once"], done["extra_tax"], done["charge"]) == ("4360.00", "35.10", "108.00")
    assert Decimal(done["extra"]) == Decimal("143.10")
    assert Decimal(done["effective_rate"]) > Decimal(done["apr_canada"]) > 0


def test_a_plan_can_be_given_with_its_tax(canada: Reference) -> None:
    plan = {"deposit": "1000", "count": 11, "charge_each": "30"}
    given = {"premium": "12000", "tax": "960", "plan": plan, "start": "2026-01-15",
             "province": "ON"}  # fmt: skip
    done = instalments(given, canada)
    assert [p["amount"] for p in done["payments"]] == ["1080.00"] + ["1110.00"] * 11
    assert (done["total"], done["extra_tax"]) == ("13290.00", "0.00")
    assert len(done["steps"]) == 3  # nothing is said of tax that does not change


def test_each_method_gives_its_rate_and_its_rounding(canada: Reference) -> None:
    """Regulation Z, appendix J (c)(1)(ii): 11.82 %; the Canadian formula: 6.5048 %, or 6.5 %."""
    level = {"amount": 200, "t": 1, "f": "19/30", "count": 36}
    zed = apr({"method": "actuarial", "advance": "6000", "periods_per_year": 12,
               "payments": [level]}, canada)  # fmt: skip
    assert zed["rounded"] == "11.82"
    months = [{"amount": "1030", "years": f"{month}/12"} for month in range(1, 12)]
    ours = apr({"method": "canada", "financed": "10970", "payments": months}, canada)
    assert (ours["apr"][:6], ours["rounded"], ours["cost"]) == ("6.5047", "6.5", "360.00")
    flows = [{"amount": "100", "date": "2026-01-01"}, {"amount": "-108", "date": "2027-01-01"}]
    assert apr({"method": "effective", "flows": flows}, canada)["rounded"] == "8.00"


def test_advances_may_come_in_parts(canada: Reference) -> None:
    parts = [{"amount": "50", "t": 0}, {"amount": "50", "t": 0}]
    given = {"method": "actuarial", "periods_per_year": 1, "advances": parts,
             "payments": [{"amount": "110", "t": 1}]}  # fmt: skip
    assert apr(given, canada)["apr"] == "10"


@pytest.mark.parametrize(
    ("rule", "kept", "share"),
    # sapling.com/6404336: 1,500 a year, 219 days in force.
    [("pro-rata", "900.00", "0.6"), ("ninety-per-cent", "960.00", "0.64"),
     ("table-25", "1035.00", "0.69")],
)  # fmt: skip
def test_earned_and_returned_as_published(
    canada: Reference, rule: str, kept: str, share: str
) -> None:
    done = earned({**TERM, "rule": rule}, canada)
    assert (done["earned"], done["share"]) == (kept, share)
    assert Decimal(done["earned"]) + Decimal(done["returned"]) == 1500
    assert (done["days"], done["of_days"]) == (219, 365)


def test_a_leap_year_is_said(canada: Reference) -> None:
    leap = {"premium": "366", "from": "2028-01-01", "to": "2029-01-01", "cancelled": "2028-03-01"}
    done = earned(leap, canada)
    assert done["earned"] == "60.00"
    assert "midterm-leap" in {step.id for step in done["steps"]}
    assert "midterm-leap" not in {step.id for step in earned(TERM, canada)["steps"]}


ASKED: list[tuple[str, Mapping[str, Any]]] = [
    ("apportion-table", {"cells": {"a": {"x": "1"}}}),
    ("split-change", {"before": [], "after": [{"line": "a", "amount": "1"}]}),
    ("instalments", QUEBEC),
    ("apr", {"method": "canada", "financed": "1", "payments": [{"amount": "2", "years": "1"}]}),
    ("apr", {"method": "actuarial", "advance": 1, "periods_per_year": 1,
             "payments": [{"amount": "2", "t": 1}]}),
    ("earned", TERM),
]  # fmt: skip


@pytest.mark.parametrize(("name", "given"), ASKED)
@pytest.mark.parametrize("language", ["en", "fr"])
def test_the_steps_can_be_said(
    canada: Reference, name: str, given: Mapping[str, Any], language: str
) -> None:
    done = CALCULATIONS[name](given, canada)
    assert all(Speech(canada, language).say(step) for step in done["steps"])


def test_a_tax_given_as_an_amount_was_laid_on_all_lines(canada: Reference) -> None:
    """8 % of 1,000 and of 1,320: the whole change of the tax is its base's."""
    lines = {
        "before": [{"line": "building", "exposure": "1000000", "rate": "0.001"}],
        "after": [{"line": "building", "exposure": "1100000", "rate": "0.0012"}],
    }
    alone = CALCULATIONS["split-change"](
        {**lines, "tax_before": "80", "tax_after": "105.60"}, canada
    )
    told = CALCULATIONS["split-change"](
        {
            **lines,
            "tax_before": {"amount": "80", "base": "1000", "rate": "0.08"},
            "tax_after": {"amount": "105.60", "base": "1320", "rate": "0.08"},
        },
        canada,
    )
    assert alone == told
    assert alone["effects"] == {
        "exposure": "110.00", "rate": "210.00", "added": "0.00", "dropped": "0.00",
        "tax_base": "25.60", "tax_rate": "0.00",
    }  # fmt: skip


BAD: list[tuple[str, Mapping[str, Any], str]] = [
    ("apportion-table", {"cells": {}}, "cells"),
    ("apportion-table", {"cells": {"a": {"x": "one"}}}, "one"),
    ("apportion-table", {"cells": {"a": {"x": 1}}, "unit": "0"}, "0"),
    ("split-change", {"before": [{"line": "hall"}], "after": []}, "hall"),
    ("split-change", {"before": [], "after": [], "why": 1}, "why"),
    ("instalments", {**QUEBEC, "province": "ZZ"}, "ZZ"),
    ("instalments", {**QUEBEC, "plan": "weekly"}, "weekly"),
    ("instalments", {**QUEBEC, "plan": {"count": 3}}, "deposit"),
    ("instalments", {**QUEBEC, "plan": {"count": 3, "often": 1}}, '"plan.often"'),
    ("instalments", {**QUEBEC, "plan": {"count": 0}}, '"plan.count" is 0. It must be 1 or more.'),
    ("instalments", {**QUEBEC, "plan": {"count": 3, "deposit": "5000"}}, "$5,000"),
    ("instalments", {**QUEBEC, "plan": {"count": 12, "deposit": "1"}}, "December 8, 2027"),
    ("instalments", {**QUEBEC, "end": "2026-12-08"}, "December 8, 2026"),
    ("apr", {"method": "guess"}, "guess"),
    ("apr", {"method": "canada", "financed": "1", "payments": [{"amount": 1, "years": "1/0"}]},
     "1/0"),
    ("apr", {"method": "effective", "flows": [
        {"amount": "100", "date": "2026-01-01"}, {"amount": "-230", "date": "2027-01-01"},
        {"amount": "132", "date": "2028-01-01"}]}, "2 times"),
    ("earned", {**TERM, "cancelled": "2027-08-08"}, "August 8, 2027"),
    ("earned", {**TERM, "to": "2025-01-01"}, "January 1, 2025"),
    ("earned", {**TERM, "rule": "ours"}, "ours"),
    ("earned", {**TERM, "cancelled": "2026-02-30"}, "2026-02-30"),
    ("earned", {**TERM, "cancelled": "2026-03-02", "rule": "table-25"}, "60"),
]  # fmt: skip


@pytest.mark.parametrize(("name", "given", "named"), BAD)
def test_bad_input_is_refused_in_a_sentence_that_names_it(
    canada: Reference, name: str, given: Mapping[str, Any], named: str
) -> None:
    with pytest.raises(Unusable) as refused:
        CALCULATIONS[name](given, canada)
    assert named in Speech(canada, "en").say(refused.value.words)
    assert Speech(canada, "fr").say(refused.value.words)
