"""An account's past claims as losses from the ground up, and what had to be assumed for it."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass

from quarterday.core.claims.record import claims_in, window
from quarterday.core.dates import Period, add_years
from quarterday.core.file.records import Building, Claim
from quarterday.core.file.records.terms import EVERYWHERE
from quarterday.core.review.case import Case
from quarterday.core.terms.losses.components import COMPONENTS
from quarterday.core.terms.losses.loss import Loss
from quarterday.core.words import Words, words

# What a claim of a cause is taken to be, as loss runs do not divide it. Common practice, no source.
AS_COMPONENT: Mapping[str, str] = {
    "theft": "contents",
    "theft-of-money": "money",
    "dishonesty": "money",
    "cyber-incident": "cyber-own-losses",
    "volunteer-injury": "volunteer-accident",
    "glass": "glass",
}


@dataclass(frozen=True, slots=True)
class Replay:
    """A past claim as a loss, and which year back from the renewal it fell in (1: the last)."""

    claim: Claim
    loss: Loss
    year: int


@dataclass(frozen=True, slots=True)
class History:
    """Past claims as losses, oldest first, and what was assumed to make them so."""

    period: Period
    replays: tuple[Replay, ...]
    assumed: tuple[Words, ...]


def history(case: Case, years: int) -> History:
    """Return the claims of the last ``years`` whole years before the renewal as losses.

    A claim that came to nothing is left out: the loss stayed below its deductible.
    """
    found = tuple(_replays(case, years))
    return History(window(case, years), found, tuple(_assumptions(found)))


def _replays(case: Case, years: int) -> Iterator[Replay]:
    for back in range(years, 0, -1):
        year = Period(add_years(case.renewal, -back), add_years(case.renewal, 1 - back))
        for claim in claims_in(case, year):
            if claim.ground_up > 0:
                yield Replay(claim, _loss(case, claim), back)


def component_of(case: Case, claim: Claim) -> str:
    """Return what a claim is taken to be: damages to others, money, contents, or the building."""
    if claim.cause in AS_COMPONENT:
        return AS_COMPONENT[claim.cause]
    cause = case.reference.causes.get(claim.cause)
    if cause is not None and cause.party == "third":
        return "compensatory"
    building = case.file.get(Building, claim.location or "")
    return "contents" if building is not None and building.ownership == "rent" else "building"


def _loss(case: Case, claim: Claim) -> Loss:
    component = component_of(case, claim)
    return Loss(
        id=claim.number,
        cause=claim.cause,
        place=_place(case, claim, component),
        date_of_loss=claim.date_of_loss,
        amounts={component: claim.ground_up},
    )


def _place(case: Case, claim: Claim, component: str) -> str:
    if claim.location and case.file.get(Building, claim.location):
        return claim.location
    buildings = case.file.buildings
    at_a_building = COMPONENTS[component].kind == "property"
    return buildings[0].id if at_a_building and len(buildings) == 1 else EVERYWHERE


def _assumptions(replays: tuple[Replay, ...]) -> Iterator[Words]:
    if not replays:
        return
    unknown = sum(
        replay.claim.deductible is None and not replay.claim.includes_deductible
        for replay in replays
    )
    if unknown:
        yield words("losses-assumed-deductible", n=unknown)
    yield words("losses-assumed-one-thing")
    if any(replay.claim.status == "open" for replay in replays):
        yield words("losses-assumed-open")
    yield words("losses-assumed-prices")
