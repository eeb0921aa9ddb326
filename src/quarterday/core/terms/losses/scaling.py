"""The library's reference losses, scaled to what an account has."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from datetime import date
from decimal import Decimal

from quarterday.core.file.records import Building, Terms
from quarterday.core.file.records.terms import EVERYWHERE
from quarterday.core.money import round_to
from quarterday.core.reference import ReferenceLoss, Scale
from quarterday.core.review.case import Case
from quarterday.core.review.need import need
from quarterday.core.terms.losses.components import COMPONENTS
from quarterday.core.terms.losses.loss import Loss
from quarterday.core.terms.settling.settlement import Setting
from quarterday.core.terms.settling.values import Values
from quarterday.core.words import Term, Words, words

HUNDRED, DOLLAR = Decimal(100), Decimal(1)
MONTHS, WEEKS = 12, 52


@dataclass(frozen=True, slots=True)
class Scaled:
    """A reference loss at an account: the loss, or why the account cannot meet it.

    ``assumed`` names the components whose size rests on no figure of the account.
    """

    of: ReferenceLoss
    loss: Loss | None
    assumed: tuple[str, ...] = ()
    why_not: Words | None = None


def scaled_losses(case: Case, setting: Setting, day: date) -> tuple[Scaled, ...]:
    """Return every reference loss of the library as it would strike the account on ``day``."""
    return tuple(scaled(case, setting, of, day) for of in case.reference.losses.values())


def scaled(case: Case, setting: Setting, of: ReferenceLoss, day: date) -> Scaled:
    """Return a reference loss as it would strike the account on ``day``."""
    terms, values = setting.terms, setting.values
    if of.fits_when is not None and need(of.fits_when, case.file).answer == "no":
        return Scaled(of, None, why_not=words("losses-not-yours"))
    if of.where_insured is not None and not _is_anywhere_insured(case, of.where_insured):
        return Scaled(
            of, None, why_not=words("losses-not-insured", what=Term("coverage", of.where_insured))
        )
    place = place_of(case, terms, values, of)
    if place is None:
        return Scaled(of, None, why_not=words(f"losses-no-{of.at}"))
    sized = {
        component: _size(case, values, scale, place)
        for component, scale in of.amounts.items()
        if _is_theirs(case, terms, component, place)
    }
    amounts = dict(_amounts(of, {c: amount for c, (amount, _) in sized.items()}))
    if not amounts:
        return Scaled(of, None, why_not=words("losses-nothing-lost"))
    loss = Loss(
        id=of.id,
        reference=of.id,
        cause=of.cause,
        place=place,
        date_of_loss=day,
        amounts=amounts,
    )
    assumed = tuple(c for c, (_, known) in sized.items() if not known)
    return Scaled(of, loss, assumed)


def _is_anywhere_insured(case: Case, coverage: str) -> bool:
    return any(line.coverage == coverage for t in case.file.all(Terms) for line in t.coverages)


def place_of(case: Case, terms: Terms, values: Values, of: ReferenceLoss) -> str | None:
    """Return the building a reference loss strikes; None when the account has none such."""
    if of.at == "anywhere":
        return EVERYWHERE
    buildings = [b for b in case.file.buildings if of.at != "basement" or _has_basement(b)]

    def worth(building: Building) -> tuple[bool, Decimal, Decimal, str]:
        own = values.of("building", building.id) if _is_insured(terms, building) else None
        contents = values.of("contents", building.id)
        finished = of.at == "basement" and building.basement == "finished"
        return finished, own or Decimal(0), contents or Decimal(0), building.id

    return max(buildings, key=worth).id if buildings else None


def _has_basement(building: Building) -> bool:
    return building.basement in ("finished", "unfinished")


def _is_insured(terms: Terms, building: Building) -> bool:
    """Tell whether the organisation bears the loss of a building: its own, or insured by it."""
    own_line = any(line.place == ("building", building.id) for line in terms.coverages)
    return building.ownership != "rent" or own_line


def _is_theirs(case: Case, terms: Terms, component: str, place: str) -> bool:
    """Leave out what befalls the owner of rented rooms: the building and what goes with it."""
    if component not in ("building", "by-laws", "debris", "fees") or place == EVERYWHERE:
        return True
    building = case.file.get(Building, place)
    return building is None or _is_insured(terms, building)


def _size(case: Case, values: Values, scale: Scale, place: str) -> tuple[Decimal | None, bool]:
    """Return an amount, and whether it rests on a figure of the account; None: nobody can say."""
    base = _base(case, values, scale, place)
    if base is None or scale.share is None:
        return scale.amount, scale.of is None
    size = max(base * scale.share, scale.least)
    size = size if scale.most is None else min(size, scale.most)
    return round_to(size, DOLLAR if scale.share == 1 else HUNDRED), True


def _base(case: Case, values: Values, scale: Scale, place: str) -> Decimal | None:
    match scale.of:
        case "building" | "contents":
            return values.of(scale.of, place)
        case "income-month":
            income = case.file.operations.yearly_income
            return income / MONTHS if income else None
        case "giving-week":
            giving = case.file.operations.revenue_donations
            return giving / WEEKS if giving else None
        case _:
            return None


def _amounts(
    of: ReferenceLoss, sizes: Mapping[str, Decimal | None]
) -> Iterator[tuple[str, Decimal | tuple[Decimal, ...]]]:
    for component, size in sizes.items():
        if size:
            by_month = COMPONENTS[component].kind == "income"
            yield component, (size,) * of.amounts[component].months if by_month else size
