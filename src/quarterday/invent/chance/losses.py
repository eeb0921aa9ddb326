"""Ten years of claims by chance: how many, of what, where, and how large."""

from __future__ import annotations

from datetime import date, timedelta
from decimal import Decimal
from typing import Any

from quarterday.catalogue.load import reference
from quarterday.invent.chance.data import likely, names
from quarterday.invent.chance.dice import Dice, rounded
from quarterday.invent.chance.people import YEAR, Who
from quarterday.invent.chance.premises import Premises

LARGEST_LIABILITY = 2_000_000
USUAL_FREQUENCY = 0.86  # makes the mean of the size's square root one
OPEN_FOR = 2 * YEAR


def losses(dice: Dice, of: Who, places: tuple[Premises, ...], run_on: date) -> list[list[Any]]:
    """Draw the claims of the ten years before the loss run, oldest first."""
    many = likely()["claims_in_ten_years"]
    mean = many["mean"] * of.size**0.5 / USUAL_FREQUENCY
    days = [
        dice.day(run_on - timedelta(days=10 * YEAR), run_on)
        for _ in range(dice.count(mean, many["shape"]))
    ]
    return [_one(dice, of, places, day, run_on) for day in sorted(days)]


def _one(dice: Dice, of: Who, places: tuple[Premises, ...], day: date, run_on: date) -> list[Any]:
    weights = {cause: about["weight"] for cause, about in likely()["causes"].items()}
    cause = dice.weighted(weights)
    place = dice.one(places)
    first_party = reference().causes[cause].party == "first"
    most = place.building + place.contents if first_party else LARGEST_LIABILITY
    amount = rounded(min(_amount(dice, cause), most), 50)
    says = names()["happened"][of.language]
    claim = [day, cause, place.id if first_party else "-", amount, says.get(cause, says["other"])]
    return [*claim, _settling(dice, day, run_on, amount)]


def _amount(dice: Dice, cause: str) -> float:
    about = likely()["causes"][cause]
    if "tail" in about:
        return dice.tail(about["least"], about["tail"])
    return dice.spread(about["median"], about["spread"])


def _settling(dice: Dice, day: date, run_on: date, amount: int) -> dict[str, Any]:
    """Return what is still open of a late claim; most are closed and paid."""
    deductible = {"deductible": Decimal(dice.one((1000, 1000, 2500, 5000)))}
    if (run_on - day).days > OPEN_FOR or dice.chance(0.8):
        return deductible
    paid = rounded(amount * dice.random.random(), 50)
    return {
        **deductible,
        "paid": paid,
        "outstanding": max(0, amount - paid),
        "status": "open",
        "last_movement_on": dice.day(day, run_on),
    }
