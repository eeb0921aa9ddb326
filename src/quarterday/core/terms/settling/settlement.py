"""What terms pay for a loss: figures, reasons and steps.

Everything is exact until the end; the amount paid is rounded half-up to the cent once, and paid
plus borne is the loss.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, field
from decimal import Decimal
from fractions import Fraction
from functools import cached_property

import numpy as np

from quarterday.core.figure import Fact, Figure, Node
from quarterday.core.file.records import Terms
from quarterday.core.file.records.terms import EVERYWHERE
from quarterday.core.money import Money
from quarterday.core.premium.apportion import rounded_to
from quarterday.core.reference import Reference
from quarterday.core.terms.losses.loss import HOURS_A_MONTH, Damage, Loss, is_monthly
from quarterday.core.terms.settling.asked import Asked
from quarterday.core.terms.settling.cautions import cautions
from quarterday.core.terms.settling.explain import Group, Step, decimal, named, reason_named, steps
from quarterday.core.terms.settling.machine import CLAIM, Note, Payer, Settled
from quarterday.core.terms.settling.plan import asked_of, plan
from quarterday.core.terms.settling.refusals import check_loss, check_period, check_terms
from quarterday.core.terms.settling.routing import Item
from quarterday.core.terms.settling.rows import Rows
from quarterday.core.terms.settling.values import Values
from quarterday.core.words import Words, words

POLICY = "policy"  # who pays what is left of the claim
Facts = Callable[[Note], Iterable[Fact]]


def no_facts(_: Note) -> tuple[Fact, ...]:
    """Return no facts: these terms lie in no file."""
    return ()


@dataclass(frozen=True, slots=True)
class Setting:
    """What a loss is settled under: terms, reference data, true values, names and facts.

    Refused for terms with a clause that contradicts itself or another. ``names`` holds the names
    of places by id; ``facts`` returns a clause's fields as facts.
    """

    terms: Terms
    reference: Reference
    values: Values = field(default_factory=Values)
    names: Mapping[str, str] = field(default_factory=dict)
    facts: Facts = no_facts

    def __post_init__(self) -> None:
        check_terms(self.terms, self.reference)


@dataclass(frozen=True, slots=True)
class PartPaid:
    """One thing lost (its months together): how much of it is paid, and the steps to there."""

    component: str
    place: str
    what: Words
    lost: Money
    paid: Money
    steps: tuple[Words, ...]

    @property
    def borne(self) -> Money:
        """What the organisation bears of it."""
        return self.lost - self.paid


@dataclass(frozen=True, slots=True)
class Settlement:
    """A loss settled: ``paid`` plus ``borne`` is ``total`` to the cent.

    ``by_payer`` divides what is paid (policy, shared-limit, umbrella), ``by_reason`` what is borne,
    each the largest first, nothing left out but zeros. ``parts`` are the things lost one by one.
    """

    loss: Loss
    total: Figure
    paid: Figure
    borne: Figure
    by_payer: tuple[tuple[str, Figure], ...]
    by_reason: tuple[tuple[str, Figure], ...]
    parts: tuple[PartPaid, ...]
    cautions: tuple[Words, ...]

    @property
    def steps(self) -> tuple[Words, ...]:
        """All steps in order, and the result."""
        result = words(
            "settling-step-paid",
            total=self.total.money,
            paid=self.paid.money,
            borne=self.borne.money,
        )
        return (*(step for part in self.parts for step in part.steps), result)


def settle(setting: Setting, loss: Loss) -> Settlement:
    """Return what the terms pay for ``loss``; Refused for what they or the loss cannot honour."""
    return settle_year(setting, (loss,))[0]


def settle_year(setting: Setting, losses: Sequence[Loss]) -> tuple[Settlement, ...]:
    """Return what the terms pay for the losses of one policy year, in the order given.

    Yearly maximums and the shared limit are used up in order of the date of loss.
    """
    for loss in losses:
        check_loss(loss, setting.reference, schedule(setting))
    ordered = sorted(range(len(losses)), key=lambda n: losses[n].date_of_loss)
    table = _Table.of([losses[n] for n in ordered])
    asked = asked_of(setting.terms, setting.reference, table.items, setting.values)
    _check_periods(setting.terms, asked, table)
    done = plan(asked).settle(table.rows(), log=True)
    made = {n: _Maker(setting, asked, table, done, at).made() for at, n in enumerate(ordered)}
    return tuple(made[n] for n in range(len(losses)))


def schedule(setting: Setting) -> frozenset[str]:
    """Return the places that the terms, the values or the file know."""
    lines = {line.location for line in setting.terms.coverages} - {EVERYWHERE}
    return frozenset(lines | setting.values.places | set(setting.names))


@dataclass(frozen=True, slots=True)
class _Table:
    """Losses in order of date, and their amounts one by one, each with the number of its item."""

    losses: tuple[Loss, ...]
    damages: tuple[tuple[int, Damage], ...]  # with the number of the loss
    items: tuple[Item, ...]
    item_of: tuple[int, ...]

    @classmethod
    def of(cls, losses: Sequence[Loss]) -> _Table:
        damages = tuple((n, damage) for n, loss in enumerate(losses) for damage in loss.damages)
        numbers: dict[Item, int] = {}
        item_of = tuple(
            numbers.setdefault(_item(losses[n], damage), len(numbers)) for n, damage in damages
        )
        return cls(tuple(losses), damages, tuple(numbers), item_of)

    def rows(self) -> Rows:
        """Return the amounts as exact columns of one year."""
        amount = np.empty(len(self.damages), dtype=object)
        amount[:] = [Fraction(damage.amount) for _, damage in self.damages]
        return Rows(
            amount=amount,
            item=np.array(self.item_of, dtype=np.int64),
            occurrence=np.array([n for n, _ in self.damages], dtype=np.int64),
            year=np.zeros(len(self.damages), dtype=np.int64),
            day=np.array([self.losses[n].date_of_loss.toordinal() for n, _ in self.damages]),
        )

    def at(self, loss: int) -> Iterator[tuple[int, Damage]]:
        """Yield the rows of a loss with their amounts."""
        yield from ((row, damage) for row, (n, damage) in enumerate(self.damages) if n == loss)


def _item(loss: Loss, damage: Damage) -> Item:
    by_month = isinstance(loss.amounts.get(damage.component), tuple)
    hours = HOURS_A_MONTH if by_month or not is_monthly(damage.component) else loss.hours
    return Item(damage.component, damage.place, loss.cause, damage.month, hours)


def _check_periods(terms: Terms, asked: Asked, table: _Table) -> None:
    for (n, _), item in zip(table.damages, table.item_of, strict=True):
        check_period(terms, asked.answers[item].line, table.losses[n])


@dataclass(frozen=True)
class _Maker:
    """Makes the settlement of one loss from the settled columns."""

    setting: Setting
    asked: Asked
    table: _Table
    done: Settled
    number: int

    def made(self) -> Settlement:
        loss = self._loss
        paid = self._paid
        return Settlement(
            loss=loss,
            total=self._total,
            paid=self._figure("paid", paid, self._nodes()),
            borne=self._figure("borne", loss.total - paid, self._nodes()),
            by_payer=self._split("insurer", paid),
            by_reason=self._split("organisation", loss.total - paid),
            parts=self._parts(),
            cautions=tuple(cautions(self.asked, self._items, self._told)),
        )

    @property
    def _loss(self) -> Loss:
        return self.table.losses[self.number]

    @cached_property
    def _rows(self) -> tuple[tuple[int, Damage], ...]:
        return tuple(self.table.at(self.number))

    @cached_property
    def _paid(self) -> Decimal:
        return decimal(sum((self._paid_at(row) for row, _ in self._rows), Fraction(0)))

    def _paid_at(self, row: int) -> Fraction:
        payers = self.done.payers
        columns = (c for name, c in self.done.buckets.items() if payers[name] == "insurer")
        return sum((column[row] for column in columns), Fraction(0))

    @property
    def _items(self) -> tuple[int, ...]:
        return tuple(self.table.item_of[row] for row, _ in self._rows)

    @cached_property
    def _things(self) -> Mapping[tuple[str, str], tuple[int, ...]]:
        """The rows of each thing lost: a component at a place."""
        found: dict[tuple[str, str], tuple[int, ...]] = {}
        for row, damage in self._rows:
            key = damage.component, damage.place
            found[key] = (*found.get(key, ()), row)
        return found

    @cached_property
    def _steps(self) -> Mapping[tuple[str, str], tuple[Step, ...]]:
        """The steps of each thing lost."""
        names, currency = self.setting.names, self.setting.terms.currency
        return {
            thing: tuple(
                steps(
                    self.done.log,
                    Group(
                        rows=rows,
                        items=tuple(self.table.item_of[row] for row in rows),
                        day=self._loss.date_of_loss,
                        what=named(*thing, names),
                    ),
                    currency,
                )
            )
            for thing, rows in self._things.items()
        }

    @property
    def _told(self) -> frozenset[tuple[str, str]]:
        """What moved money: the wording of each step and the coverage it is about."""
        every = (step for told in self._steps.values() for step in told if step.moved)
        return frozenset((step.note.said, step.note.coverage) for step in every)

    def _parts(self) -> tuple[PartPaid, ...]:
        exact = {
            thing: sum((self._paid_at(row) for row in rows), Fraction(0))
            for thing, rows in self._things.items()
        }
        paid = rounded_to(exact, self._paid)
        return tuple(self._thing_paid(thing, paid[thing]) for thing in self._things)

    def _thing_paid(self, thing: tuple[str, str], paid: Decimal) -> PartPaid:
        component, place = thing
        money, what = self.setting.terms.money, named(component, place, self.setting.names)
        at = (d.amount for _, d in self._rows if (d.component, d.place) == thing)
        told = tuple(step.said for step in self._steps[thing])
        return PartPaid(
            component=component,
            place=place,
            what=what,
            lost=money(sum(at, Decimal(0))),
            paid=money(paid),
            steps=told or (words("settling-step-in-full", what=what, paid=money(paid)),),
        )

    def _nodes(self, reason: str | None = None) -> tuple[Node, ...]:
        """Return the loss and the facts of the clauses behind the steps (of one reason)."""
        every = (step for told in self._steps.values() for step in told)
        notes = [step.note for step in every if reason in (None, step.reason)]
        facts = {fact.id: fact for note in notes for fact in self.setting.facts(note)}
        measured = [note for note in notes if note.said == "coinsurance"]
        return (self._total, *facts.values(), *self._worths(measured))

    def _worths(self, notes: list[Note]) -> tuple[Node, ...]:
        """Return the evidence of the values that coinsurance was measured against."""
        evidence = self.setting.values.evidence
        keys = dict.fromkeys((note.coverage, note.location) for note in notes)
        return tuple(evidence[key] for key in keys if key in evidence)

    @cached_property
    def _total(self) -> Figure:
        return self._figure("total", self._loss.total, ())

    def _figure(self, what: str, amount: Decimal, inputs: tuple[Node, ...]) -> Figure:
        loss = self._loss
        return Figure(
            id=f"settling-{what}@{loss.id}",
            value=self.setting.terms.money(amount),
            unit="money",
            label=words(f"settling-{what}", loss=loss.called),
            how=words(f"settling-how-{what}"),
            inputs=inputs,
        )

    def _split(self, payer: Payer, whole: Decimal) -> tuple[tuple[str, Figure], ...]:
        """Return what a payer pays by bucket, the largest first; cents add up to ``whole``."""
        payers, buckets = self.done.payers, self.done.buckets
        exact = {
            POLICY if name == CLAIM else name: sum(
                (column[row] for row, _ in self._rows), Fraction(0)
            )
            for name, column in buckets.items()
            if payers[name] == payer
        }
        cents = rounded_to({k: v for k, v in exact.items() if v}, whole) if whole else {}
        ordered = sorted((k for k in cents if cents[k]), key=lambda k: (-cents[k], k))
        return tuple((reason, self._part(payer, reason, cents[reason])) for reason in ordered)

    def _part(self, payer: Payer, reason: str, amount: Decimal) -> Figure:
        loss = self._loss
        said = "by-payer" if payer == "insurer" else "by-reason"
        return Figure(
            id=f"settling-{said}-{reason}@{loss.id}",
            value=self.setting.terms.money(amount),
            unit="money",
            label=words(f"settling-{said}", of=reason_named(reason), loss=loss.called),
            how=words(f"settling-how-{said}"),
            inputs=self._nodes(None if reason == POLICY else reason),
        )
