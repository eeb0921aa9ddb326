"""Settling losses: the machine against hand-written NumPy on the same losses and terms.

The hand-written code knows these terms alone, trusts its input and keeps no reasons. The machine is
timed on losses it never saw, which it checks and groups, and on losses that other terms were tried
on before, as when alternatives are compared.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from datetime import date
from decimal import Decimal
from fractions import Fraction
from functools import partial
from statistics import median
from time import perf_counter, process_time

import numpy as np

from quarterday.catalogue.load import reference
from quarterday.core.file.records import Terms
from quarterday.core.terms.losses.loss import Loss
from quarterday.core.terms.settling.machine import Plan
from quarterday.core.terms.settling.plan import compiled
from quarterday.core.terms.settling.routing import Item
from quarterday.core.terms.settling.rows import Column, Rows
from quarterday.core.terms.settling.settlement import Setting, settle
from quarterday.core.terms.settling.values import Values

ITEMS = (
    Item("building", "hall", "fire"),
    Item("building", "hall", "sewer-backup"),
    Item("by-laws", "hall", "fire"),
    Item("compensatory", "hall", "injury-on-premises"),
)
TERMS = Terms.model_validate(
    {
        "stage": "offered",
        "start": date(2027, 1, 1),
        "end": date(2028, 1, 1),
        "coverages": [
            {"coverage": "building", "location": "hall", "limit": 800_000, "deductible": 2500,
             "coinsurance": "0.9"},
            {"coverage": "sewer-backup", "limit": 50_000, "deductible": 5000,
             "aggregate": 75_000},
            {"coverage": "by-laws", "limit": 50_000, "deductible": 1000},
            {"coverage": "general-liability", "limit": 1_000_000, "deductible": 1000},
        ],
        "shared_limit": {"amount": 100_000, "tops_up": ["by-laws"]},
    }
)  # fmt: skip
VALUES = Values(worth={("building", "hall"): Decimal(1_200_000)})
SHARE = 800_000 / (0.9 * 1_200_000)
SIZES = (3_000, 30_000, 3_000_000)
ROUNDS = 9


def losses(count: int) -> Rows:
    """Return ``count`` losses, each an event of its own, three a year, from a fixed seed."""
    chance = np.random.default_rng(20270101)
    return Rows(
        amount=np.exp(chance.normal(10.0, 1.8, count)),
        item=chance.integers(0, len(ITEMS), count),
        occurrence=np.arange(count) % 3,
        year=np.arange(count) // 3,
    )


def by_hand(rows: Rows) -> tuple[Column, Column]:
    """Settle the same losses by NumPy written for these terms alone: paid and borne."""
    share = np.array([SHARE, 1.0, 1.0, 1.0])
    deductible = np.array([2500.0, 5000.0, 1000.0, 1000.0])
    limit = np.array([800_000.0, 50_000.0, 50_000.0, 1_000_000.0])
    claim = rows.amount * share[rows.item]
    claim = claim - np.minimum(claim, deductible[rows.item])
    paid = np.minimum(claim, limit[rows.item])
    over = claim - paid
    sewer = np.flatnonzero(rows.item == 1)
    paid[sewer] = _yearly(paid[sewer], rows.year[sewer], 75_000.0)
    by_laws = np.flatnonzero(rows.item == 2)
    paid[by_laws] += _yearly(over[by_laws], rows.year[by_laws], 100_000.0)
    return paid, rows.amount - paid


def _yearly(x: Column, year: Column, cap: float) -> Column:
    begins = np.flatnonzero(np.diff(year, prepend=-1))
    start = np.repeat(begins, np.diff(np.append(begins, len(x))))
    run = np.cumsum(x)
    run -= (run - x)[start]
    return np.minimum(run, cap) - np.minimum(run - x, cap)  # type: ignore[no-any-return]


def timed(work: Mapping[str, Callable[[], object]]) -> dict[str, float]:
    """Return the median processor seconds of each, run in turns so that all meet the same load."""
    seen: dict[str, list[float]] = {name: [] for name in work}
    for _ in range(ROUNDS):
        for name, do in work.items():
            start = process_time()
            do()
            seen[name].append(process_time() - start)
    return {name: median(times) for name, times in seen.items()}


def anew(terms: Plan, told: Rows) -> None:
    """Settle losses that were never seen: they are checked and grouped as well."""
    terms.settle(Rows(told.amount, told.item, told.occurrence, told.year))


def columns(terms: Plan) -> Iterator[str]:
    """Yield nanoseconds a loss by size, and the ratios to hand-written NumPy."""
    for count in SIZES:
        told = losses(count)

        paid, borne = by_hand(told)
        done = terms.settle(told)
        off = max(float(np.abs(done.paid - paid).max()), float(np.abs(done.borne - borne).max()))
        times = timed(
            {
                "machine": partial(anew, terms, told),
                "again": partial(terms.settle, told),
                "by hand": partial(by_hand, told),
            }
        )
        each = {name: seconds / count * 1e9 for name, seconds in times.items()}
        new, again = (times[name] / times["by hand"] for name in ("machine", "again"))
        yield (
            f"{count:>9,} losses: machine {each['machine']:.0f} ns a loss, other terms on the same "
            f"losses {each['again']:.0f} ns, by hand {each['by hand']:.0f} ns; "
            f"ratios {new:.2f} and {again:.2f}; largest difference {off:.1e}"
        )


def one_loss() -> str:
    """Return the time of one loss with its steps and figures, exact."""
    setting = Setting(TERMS, reference(), VALUES)
    amounts = {"building": Decimal(40_000), "by-laws": Decimal(60_000)}
    loss = Loss(cause="fire", place="hall", date_of_loss=date(2027, 6, 1), amounts=amounts)
    assert settle(setting, loss).total.money.amount == Fraction(100_000)
    times = []
    for _ in range(300):
        start = perf_counter()
        settle(setting, loss)
        times.append(perf_counter() - start)
    return f"one loss of two amounts, exact, with steps and figures: {median(times) * 1e6:.0f} µs"


def run() -> Iterator[str]:
    """Measure, and yield a line for each result."""
    yield f"NumPy {np.__version__}; medians of {ROUNDS} rounds in turns, processor time"
    yield from columns(compiled(TERMS, reference(), ITEMS, VALUES))
    yield one_loss()
