"""The clauses of a coverage line: how each is read, shown, and which way a change goes.

A restriction that the terms do not show (deductible, coinsurance, yearly maximum) counts as none;
a promise they do not show (limit, defence, damages) counts as not stated, and then nobody can say.
All directions here: common practice, no source.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from datetime import date
from decimal import Decimal
from typing import Any, NamedTuple

from quarterday.core.file.records import Terms
from quarterday.core.file.records.terms import Coverage
from quarterday.core.terms.difference import MIRRORED, DifferenceKind, Direction
from quarterday.core.words import Arg, Rate, Term

NONE, UNLIMITED = Decimal(0), Decimal("Infinity")


class Side(NamedTuple):
    """A coverage line and the terms it stands in."""

    line: Coverage
    terms: Terms


Raw = Any  # what a clause holds: an amount, a ratio, a date, a word, or None
Show = Callable[[Side, Raw], Arg]


@dataclass(frozen=True, slots=True)
class Scale:
    """Direct a change by size: whether ``more`` is better or worse, and what absence counts as."""

    more: Direction
    absent: Decimal | None

    def __call__(self, before: Raw, after: Raw) -> Direction:
        """Return the direction from ``before`` to ``after``."""
        sizes = self._size(before), self._size(after)
        if sizes[0] is None or sizes[1] is None:
            return "cannot say"
        if sizes[0] == sizes[1]:
            return "neutral"
        return self.more if sizes[1] > sizes[0] else MIRRORED[self.more]

    def _size(self, value: Raw) -> Decimal | None:
        if value is None:
            return self.absent
        return Decimal(value.toordinal() if isinstance(value, date) else value)


@dataclass(frozen=True, slots=True)
class Ranks:
    """Direct a change between words by their rank, higher is better; equals cannot be told apart.

    ``other`` is the rank of every value that is not named; None there means nobody can say.
    """

    ranks: Mapping[Raw, int]
    other: int | None = None

    def __call__(self, before: Raw, after: Raw) -> Direction:
        """Return the direction from ``before`` to ``after``."""
        old, new = self.ranks.get(before, self.other), self.ranks.get(after, self.other)
        if old is None or new is None or old == new:
            return "cannot say"
        return "better" if new > old else "worse"


@dataclass(frozen=True, slots=True)
class Clause:
    """A clause that a line has once: how it is read, shown and directed."""

    kind: DifferenceKind
    read: Callable[[Side], Raw]
    show: Show
    direct: Callable[[Raw, Raw], Direction]
    is_money: bool = False
    borne: int = 0  # the organisation bears this many times the rise of the amount
    within: str = ""  # a field that must be set on both sides, else the clause means nothing


def _field(name: str) -> Callable[[Side], Raw]:
    return lambda side: getattr(side.line, name)


def _money(side: Side, value: Raw) -> Arg:
    return side.terms.money(value)


def _rate(_: Side, value: Raw) -> Arg:
    return Rate(value)


def _plain(_: Side, value: Raw) -> Arg:
    shown: Arg = value
    return shown


def _yes_no(_: Side, value: Raw) -> Arg:
    return "yes" if value else "no"


def _named(catalogue: str) -> Show:
    return lambda _, value: Term(catalogue, value)


def _agreed_value_gap(side: Side) -> Raw:
    """Return the days of the period without agreed value; None when there is none at all.

    An agreed value is renewed with the policy, so the day it ends says nothing by itself.
    """
    until = side.line.agreed_value_until
    return None if until is None else max(0, (side.terms.end - until).days)


def _agreed_until(side: Side, _: Raw) -> Arg:
    until = side.line.agreed_value_until
    assert until is not None
    return until


def _in_shared_limit(side: Side) -> Raw:
    shared = side.terms.shared_limit
    return side.line.in_shared_limit or bool(shared and side.line.coverage in shared.tops_up)


def _amount(
    kind: DifferenceKind, name: str, more: Direction, absent: Decimal | None, borne: int = 0
) -> Clause:
    return Clause(kind, _field(name), _money, Scale(more, absent), is_money=True, borne=borne)


_UNCLEAR = Ranks({}, other=0)
_YES_IS_BETTER = Ranks({True: 1, False: 0})
_VALUATION = Ranks({"actual-cash-value": 0, "functional": 0, "replacement": 1, "reproduction": 2})
_LIMIT_BASIS = Ranks(
    {"aggregate": 0, "per-claim": 1, "per-occurrence": 1, "per-building": 1, "blanket": 2}
)

DEDUCTIBLES: tuple[Clause, ...] = (
    _amount("deductible", "deductible", "worse", NONE, borne=1),
    Clause("deductible-percent", _field("deductible_percent"), _rate, Scale("worse", NONE)),
    Clause(
        "deductible-percent-of",
        _field("deductible_percent_of"),
        _named("percent-of"),
        Ranks({"loss": 1, "limit": 0, "value": 0}),
    ),
    _amount("deductible-minimum", "deductible_minimum", "worse", NONE),
    _amount("deductible-maximum", "deductible_maximum", "worse", UNLIMITED),
)
CLAUSES: tuple[Clause, ...] = (
    _amount("limit", "limit", "better", None, borne=-1),
    Clause("limit-basis", _field("limit_basis"), _named("limit-basis"), _LIMIT_BASIS),
    _amount("aggregate", "aggregate", "better", UNLIMITED, borne=-1),
    Clause("sublimit", _field("sublimit_of"), _named("coverage"), Ranks({None: 1}, other=0)),
    Clause("waiting", _field("waiting_hours"), _plain, Scale("worse", NONE)),
    Clause("coinsurance", _field("coinsurance"), _rate, Scale("worse", NONE)),
    Clause(
        "coinsurance-of",
        _field("coinsurance_of"),
        _named("coinsurance-of"),
        Ranks({"whole-income": 0, "less-stopping": 1}),
        within="coinsurance",
    ),
    Clause(
        "stated-amount",
        _field("coinsurance_stated_amount"),
        _money,
        _UNCLEAR,
        is_money=True,
    ),
    Clause("agreed-value", _agreed_value_gap, _agreed_until, Scale("worse", UNLIMITED)),
    Clause("automatic-increase", _field("automatic_increase"), _rate, Scale("better", NONE)),
    Clause("basis", _field("basis"), _named("settlement-basis"), _VALUATION),
    Clause("blanket", _field("blanket"), _plain, Ranks({None: 0}, other=1)),
    Clause("margin", _field("margin"), _rate, Scale("better", UNLIMITED), within="blanket"),
    Clause("shared-limit", _in_shared_limit, _yes_no, _YES_IS_BETTER),
    Clause("defence", _field("defence"), _plain, Ranks({"inside": 0, "outside": 1})),
    Clause("claims-made", _field("claims_made"), _yes_no, Ranks({True: 0, False: 1})),
    Clause("retroactive-date", _field("retroactive_date"), _plain, Scale("worse", None)),
    Clause("reporting-period", _field("reporting_days"), _plain, Scale("better", None)),
    Clause("monthly-limit", _field("monthly_limit"), _rate, Scale("better", UNLIMITED)),
    _amount("coinsurance-waiver", "coinsurance_waived_up_to", "better", NONE),
    Clause(
        "coinsurance-waiver-share",
        _field("coinsurance_waived_share"),
        _rate,
        Scale("better", NONE),
    ),
    Clause(
        "settling-order",
        _field("settling_order"),
        _named("settling-order"),
        Ranks({"coinsurance-first": 0, "deductible-first": 1}),
    ),
    Clause("qualified", _field("qualified"), _yes_no, _YES_IS_BETTER),
    Clause("wording", _field("wording"), _plain, _UNCLEAR),
)
