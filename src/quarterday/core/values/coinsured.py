"""How one building stands under its coinsurance clause, as figures."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from decimal import Decimal

from quarterday.core.figure import Figure, Node, Parameter, Unit
from quarterday.core.file.records import Terms
from quarterday.core.file.records.terms import Coverage
from quarterday.core.money import Money
from quarterday.core.review.case import Case
from quarterday.core.terms.percentage import part_of
from quarterday.core.values import blanket
from quarterday.core.values.coinsurance import (
    HUNDREDTHS,
    Clause,
    Position,
    Settlement,
    expected_reduction,
    penalty_chance,
    safe_amount,
)
from quarterday.core.values.cost import Costs, last_day, number
from quarterday.core.values.facts import Maker, basis_fact, line_fact
from quarterday.core.values.index import DOLLAR
from quarterday.core.values.price import own_rate, priced
from quarterday.core.words import Rate, words

LOSSES = (Decimal("0.10"), Decimal("0.25"), Decimal("0.50"), Decimal("1.00"))
Chance = Callable[[Money, Money, Decimal, float], float]


@dataclass(frozen=True, slots=True)
class Coinsured:
    """How a building stands under its coinsurance clause at the end of the coming term.

    ``margin`` is how much costs may still rise before a penalty starts (a ratio, negative when one
    applies already); ``penalties`` what losses of 10, 25, 50 and 100 % of the building lose to the
    clause; ``chance``, ``expected`` and ``safe`` are None where it asks for a stated amount.
    ``safe`` is the amount that meets the clause with the certainty of a parameter, and
    ``price_of_safe`` what it adds a year; None when it is carried already, or the rate not known.
    """

    position: Position
    required: Figure
    share: Figure
    margin: Figure
    penalties: tuple[Figure, ...]
    settlements: tuple[Settlement, ...]
    chance: Figure | None
    expected: Figure | None
    safe: Figure | None
    price_of_safe: Figure | None

    def curve(self) -> tuple[Settlement, ...]:
        """Return what losses of 0, 1, 2 … 100 % of the building pay."""
        return self.position.curve(HUNDREDTHS)

    @property
    def penalised(self) -> bool:
        """Whether a partial loss would be paid short on the figures as they stand."""
        return self.share.number < 1

    @property
    def worst(self) -> Figure:
        """The largest of the four penalties."""
        return max(self.penalties, key=lambda figure: figure.money.amount)

    def figures(self) -> tuple[Figure, ...]:
        """Return all figures, the share first."""
        found = (self.chance, self.expected, self.safe, self.price_of_safe)
        more = (figure for figure in found if figure is not None)
        return (self.share, self.required, self.margin, *self.penalties, *more)


def clause_of(terms: Terms, line: Coverage) -> Clause:
    """Return the coinsurance clause of a line of the terms; small losses it may spare aside."""
    if not line.is_coinsured:
        return Clause()
    stated = line.coinsurance_stated_amount
    return Clause(
        required=line.coinsurance,
        stated=None if stated is None else terms.money(stated),
        agreed_until=line.agreed_value_until,
    )


def deductible_of(terms: Terms, line: Coverage, worth: Money) -> Money:
    """Return the deductible of a total loss: an amount, or a share of limit or value in bounds."""
    if line.deductible_percent is None:
        return terms.money(line.deductible or Decimal(0))
    of_limit = line.deductible_percent_of == "limit" and line.limit is not None
    base = line.limit if of_limit and line.limit is not None else worth.amount
    return terms.money(part_of(line, base)).rounded()


def coinsured(
    case: Case, terms: Terms, line: Coverage, costs: Costs, make: Maker
) -> Coinsured | None:
    """Return how a building stands under its clause; None when its line has none."""
    clause = clause_of(terms, line)
    if not clause.asks:
        return None
    worth = costs.at_term_end.money
    shared = blanket.shares_amount(line)
    position = Position(
        value=blanket.value_under(case, terms, line) if shared else worth,
        carried=blanket.carried(terms, line),
        clause=clause,
        deductible=deductible_of(terms, line, worth),
        limit=blanket.most_for(terms, line),
        worth=worth,
        on=last_day(case),
    )
    return _Coinsurance(case, terms, line, costs, make, position).picture()


@dataclass(frozen=True, slots=True)
class _Coinsurance:
    """Makes the figures of one building's coinsurance."""

    case: Case
    terms: Terms
    line: Coverage
    costs: Costs
    make: Maker
    position: Position

    def picture(self) -> Coinsured:
        required = self._required()
        share, safe = self._share(required), self._safe()
        return Coinsured(
            position=self.position,
            required=required,
            share=share,
            margin=self._margin(required),
            penalties=tuple(self._penalty(part, share) for part in LOSSES),
            settlements=self.position.curve(LOSSES),
            chance=self._chance("penalty-chance", penalty_chance),
            expected=self._chance("penalty-expected", expected_reduction),
            safe=safe,
            price_of_safe=self._price_of(safe) if safe else None,
        )

    def _clause_facts(self) -> tuple[Node, ...]:
        fields: tuple[tuple[str, Unit], ...] = (
            ("coinsurance", "rate"),
            ("coinsurance_stated_amount", "money"),
            ("agreed_value_until", "date"),
        )
        return tuple(
            line_fact(self.case.file, self.terms, self.line, name, unit)
            for name, unit in fields
            if getattr(self.line, name) is not None
        )

    def _carried(self) -> Figure:
        shared = blanket.shares_amount(self.line)
        limit = line_fact(self.case.file, self.terms, self.line, "limit", "money")
        how = words("values-how-carried-blanket" if shared else "values-how-carried")
        return self.make("carried", self.position.carried, "money", how, (limit,))

    def _required(self) -> Figure:
        asked = self.position.asked
        inputs = (self.costs.at_term_end, *self._clause_facts())
        return self.make("required", asked.amount.rounded(DOLLAR), "money", asked.why, inputs)

    def _share(self, required: Figure) -> Figure:
        how = words("values-how-share")
        share = Rate(self.position.share)
        return self.make("share", share, "rate", how, (self._carried(), required))

    def _margin(self, required: Figure) -> Figure:
        """Return how much costs may rise until the amount carried is what the clause asks for."""
        free = not required.money
        ratio = Decimal(1) if free else self.position.carried.ratio(required.money) - 1
        how = words(f"values-how-margin{'-none' if free else ''}")
        return self.make("margin", Rate(ratio), "rate", how, (self._carried(), required))

    def _penalty(self, part: Decimal, share: Figure) -> Figure:
        percent = int(part * 100)
        loss = self.position.settle(part).loss
        how = words("values-how-penalty", loss=loss, share=share.value)
        name = f"penalty-{percent}"
        label = words("values-penalty", building=self.make.building.name, percent=Rate(part))
        amount = self.position.penalty(part)
        return self.make(name, amount, "money", how, (self.costs.at_term_end, share), label)

    def _error(self) -> Parameter:
        return self.case.parameter(f"values.valuation-error-{self.costs.valuation.basis}")

    def _chance(self, what: str, chance: Chance) -> Figure | None:
        clause, at = self.position.clause, self.position
        if clause.stated is not None or not clause.required:
            return None
        error = self._error()
        found = 0.0 if clause.suspended(at.on) else chance(
            at.value, at.carried, clause.required, float(number(error))
        )  # fmt: skip
        how = words(f"values-how-{what}", error=Rate(number(error)))
        inputs = (
            self.costs.at_term_end, self._carried(), *self._clause_facts(),
            basis_fact(self.case.file, self.costs.valuation), error,
        )  # fmt: skip
        return self.make(what, Rate(Decimal(repr(round(found, 4)))), "rate", how, inputs)

    def _safe(self) -> Figure | None:
        """Return what must be insured for the clause to be met with the parameter's certainty."""
        clause, at = self.position.clause, self.position
        if clause.stated is not None or not clause.required:
            return None
        error, certainty = self._error(), self.case.parameter("values.safe-certainty")
        amount = safe_amount(
            at.value, clause.required, float(number(error)), float(number(certainty))
        )
        how = words("values-how-safe-amount", certainty=certainty.value, error=Rate(number(error)))
        inputs = (
            self.costs.at_term_end, *self._clause_facts(),
            basis_fact(self.case.file, self.costs.valuation), error, certainty,
        )  # fmt: skip
        label = words(
            "values-safe-amount", building=self.make.building.name, certainty=certainty.value
        )
        return self.make("safe-amount", amount, "money", how, inputs, label)

    def _price_of(self, safe: Figure) -> Figure | None:
        gap = safe.money - self.position.carried
        rate = own_rate(self.terms, self.line, self.make.building.id)
        if gap.amount <= 0:
            return None
        return priced("price-of-safe", gap, rate, self.make, safe, self._carried())
