"""The machine against the open financial-terms kernels of oasislmf, for what both express.

Source: oasislmf 2.5.8 (BSD-3), ``oasislmf.pytools.fm``; its answers were recorded by the script
``oasis_kernels.py`` beside this file. What it does not know (under-insurance as a clause, amounts
shared by several covers, yearly amounts) rests on the interpreter of ``interpreter.py``.
"""

from __future__ import annotations

import json
from collections.abc import Callable, Mapping
from decimal import Decimal
from pathlib import Path
from typing import Any

import numpy as np
import pytest
from tests.core.terms.settling.conftest import terms_of

from quarterday.core.reference import Reference
from quarterday.core.terms.settling.machine import Settled
from quarterday.core.terms.settling.plan import compiled
from quarterday.core.terms.settling.routing import Item
from quarterday.core.terms.settling.rows import Column, Rows
from quarterday.core.terms.settling.values import Values

RECORDED = json.loads((Path(__file__).parent / "oasis.json").read_text(encoding="utf-8"))
CASES = RECORDED["cases"]
AMPLE = 10**9  # a limit above every loss: the kernel has none
CENT = 0.01
Told = Mapping[str, Any]
FIRE, INJURY = Item("building", "hall", "fire"), Item("compensatory", "*", "injury-on-premises")


def _hall(limit: float = AMPLE, **fields: Any) -> list[Told]:
    return [{"coverage": "building", "location": "hall", "limit": limit, **fields}]


def _of_the_loss(told: Told) -> list[Told]:
    fields = {
        "deductible_percent": Decimal(str(told["part"])),
        "deductible_percent_of": "loss",
        "deductible_minimum": told.get("least"),
        "deductible_maximum": told.get("most"),
    }
    return _hall(told.get("limit", AMPLE), **fields)


def _under_insured(told: Told) -> list[Told]:
    """The kernels' part of the loss is our penalty: the share that is not insured."""
    return _hall(told["limit"], deductible=told["deductible"], coinsurance=1)


def _excess(told: Told) -> list[Told]:
    return [
        {"coverage": "general-liability", "limit": told["attachment"]},
        {"coverage": "umbrella", "limit": told["limit"]},
    ]


LINES: Mapping[str, Callable[[Told], list[Told]]] = {
    "deductible and limit": lambda t: _hall(t["limit"], deductible=t["deductible"]),
    "limit": lambda t: _hall(t["limit"]),
    "deductible": lambda t: _hall(deductible=t["deductible"]),
    "part of the loss": _of_the_loss,
    "part of the loss, limit": _of_the_loss,
    "part of the loss, least, most, limit": _of_the_loss,
    "part of the loss, then deductible and limit": _under_insured,
    "excess": _excess,
}


def _worth(rule: str, told: Told) -> Values:
    """Return a value that leaves the limit enough, or short by the kernels' part of the loss."""
    short = rule == "part of the loss, then deductible and limit"
    worth = Decimal(told["limit"]) / Decimal(str(1 - told["part"])) if short else Decimal(AMPLE)
    return Values(worth={("building", "hall"): worth})


def _settled(case: Told, canada: Reference) -> Settled:
    rule, told = case["rule"], case["terms"]
    item = INJURY if rule == "excess" else FIRE
    plan = compiled(terms_of(*LINES[rule](told)), canada, (item,), _worth(rule, told))
    amount = np.array(case["losses"], dtype=np.float64)
    each = np.arange(len(amount))
    return plan.settle(Rows(amount, np.zeros(len(amount), dtype=np.int64), each, each))


def _paid(case: Told, canada: Reference) -> Column:
    """Return what we pay: all of it, or the umbrella's part above the cover below."""
    done = _settled(case, canada)
    return done.buckets["umbrella"] if case["rule"] == "excess" else done.paid


def test_every_rule_that_both_express_was_asked() -> None:
    assert RECORDED["version"] == "2.5.8"
    assert {case["rule"] for case in CASES} == set(LINES)
    assert sum(len(case["losses"]) for case in CASES) == 4416


@pytest.mark.parametrize("number", range(len(CASES)))
def test_the_kernels_and_the_machine_pay_the_same(number: int, canada: Reference) -> None:
    case = CASES[number]
    off = np.abs(_paid(case, canada) - np.array(case["paid"]))
    assert float(off.max()) < CENT / 10_000, (case["rule"], case["terms"])


@pytest.mark.parametrize("rule", LINES)
def test_the_recorded_losses_reach_every_part_of_a_rule(rule: str) -> None:
    """Some are paid nothing or in full, some in part: else the comparison would prove little."""
    told = [
        (loss, paid) for case in CASES if case["rule"] == rule
        for loss, paid in zip(case["losses"], case["paid"], strict=True)
    ]  # fmt: skip
    assert any(0 < paid < loss for loss, paid in told)
    assert len({round(paid, 2) for _, paid in told}) >= 50
