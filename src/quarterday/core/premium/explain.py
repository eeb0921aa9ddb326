"""Why a file's premium moved, as figures that show every line behind every effect."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from decimal import Decimal

from quarterday.core.figure import Figure
from quarterday.core.file.records import Terms
from quarterday.core.money import Money
from quarterday.core.premium.split import EFFECTS, Effect, LineSplit, Split, between
from quarterday.core.premium.table import Namer, PremiumTable, coverage_name, place_name, table
from quarterday.core.reference import Reference
from quarterday.core.review.case import Case
from quarterday.core.words import words


@dataclass(frozen=True, slots=True)
class PremiumChange:
    """The change from the expiring to the offered premium, fees and tax included.

    ``share`` is the change as a ratio of ``before``. ``effects`` are those that are not nothing,
    largest first; they sum to ``change`` to the cent. ``split`` holds every line.
    """

    before: Money
    after: Money
    share: Decimal
    split: Split
    figures: tuple[Figure, ...]  # before, after, change, then the effects
    effects: tuple[Figure, ...]

    @property
    def change(self) -> Money:
        """After less before."""
        return self.after - self.before

    @property
    def main(self) -> Figure:
        """The largest effect in the direction of the change."""
        along = (e for e in self.effects if (e.money.amount > 0) == (self.change.amount > 0))
        return max(along, key=lambda effect: abs(effect.money))


@dataclass(frozen=True, slots=True)
class _Two:
    """The two versions being compared and how their parts are called."""

    before: Terms
    after: Terms
    reference: Reference
    place: Namer

    def id(self, *parts: str) -> str:
        return "/".join(("premium-change", self.after.key, *parts))


def premium_change(case: Case) -> PremiumChange | None:
    """Return why the premium moves at the renewal; None without two tables of one currency."""
    before, after = case.expiring, case.offered
    if not (before and after and before.premiums and after.premiums):
        return None
    if before.currency != after.currency:
        return None
    province = case.file.organisation.province
    return explained(before, after, province, case.reference, case.building_name)


def explained(
    before: Terms, after: Terms, province: str, reference: Reference, place: Namer = place_name
) -> PremiumChange | None:
    """Return why the premium moved between two versions; None when it was nothing before."""
    two = _Two(before, after, reference, place)
    found = between(two.before, two.after, province, two.reference)
    old = table(two.before, province, two.reference)
    new = table(two.after, province, two.reference)
    if old.total.amount <= 0:
        return None
    effects = _effects(two, found, (old.tax.tax, new.tax.tax))
    first = _total(two, "before", old), _total(two, "after", new)
    change = Figure(
        id=two.id("change"),
        value=new.total - old.total,
        unit="money",
        label=words("money-change"),
        how=words("money-change-how", before=old.total, after=new.total),
        inputs=(*first, *effects),
    )
    return PremiumChange(
        before=old.total,
        after=new.total,
        share=(new.total - old.total).ratio(old.total),
        split=found,
        figures=(*first, change, *effects),
        effects=effects,
    )


def _total(two: _Two, which: str, summed: PremiumTable) -> Figure:
    tax = summed.tax.tax
    return Figure(
        id=two.id(which),
        value=summed.total,
        unit="money",
        label=words(f"money-{which}"),
        how=words("money-total-how", subtotal=summed.subtotal, fees=summed.fees, tax=tax.money),
        inputs=(tax,),
    )


def _effects(two: _Two, found: Split, taxes: tuple[Figure, ...]) -> tuple[Figure, ...]:
    figures = [_effect(two, effect, found, taxes) for effect in EFFECTS if found.effects[effect]]
    return tuple(sorted(figures, key=lambda f: (-abs(f.money.amount), f.id)))


def _effect(two: _Two, effect: Effect, found: Split, taxes: tuple[Figure, ...]) -> Figure:
    value = two.after.money(found.effects[effect])
    is_tax = effect in {"tax-base", "tax-rate"}
    return Figure(
        id=two.id(effect),
        value=value,
        unit="money",
        label=words(f"effect-{effect}"),
        how=words(f"effect-{effect}-how"),
        inputs=taxes if is_tax else tuple(_lines(two, effect, found)),
    )


def _lines(two: _Two, effect: Effect, found: Split) -> Iterator[Figure]:
    for line in found.lines:
        if effect in line.effects:
            yield _line(two, effect, line)


def _line(two: _Two, effect: Effect, line: LineSplit) -> Figure:
    coverage, location, _kind = line.key
    money = two.after.money
    return Figure(
        id=two.id(effect, *line.key),
        value=money(line.effects[effect]),
        unit="money",
        label=words("money-table-cell", coverage=coverage_name(two.reference, coverage),
                    location=two.place(location)),
        how=words("money-line-how", before=money(line.before), after=money(line.after)),
    )  # fmt: skip
