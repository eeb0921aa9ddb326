"""Rules of the family ``values``."""

from __future__ import annotations

from quarterday.core.review.finding import Rule
from quarterday.core.review.rules.values.buildings import area_mismatch, incomplete_building
from quarterday.core.review.rules.values.clause import agreed_value_lapsing, coinsurance
from quarterday.core.review.rules.values.contents import contents_too_low
from quarterday.core.review.rules.values.insured import below_replacement, index_too_low
from quarterday.core.review.rules.values.sources import (
    PLAUSIBLE,
    implausible_value,
    valuations_disagree,
)
from quarterday.core.review.rules.values.valuations import (
    contents_unlisted,
    special_features,
    valuation_stale,
)

_COSTS = (
    "values.projected-index-rate",
    "values.projection-horizon-years",
    "values.professional-fees-share",
    "values.small-building-m2",
    "values.large-building-m2",
    "values.rebuilding-months-small",
    "values.rebuilding-months-medium",
    "values.rebuilding-months-large",
    "values.rebuilding-share-counted",
)
_ERRORS = tuple(
    f"values.valuation-error-{basis}"
    for basis in (
        "formal-appraisal",
        "desk-valuation",
        "cost-manual",
        "owner-estimate",
        "indexed",
        "unknown",
    )
)
_DECIDING = ("values.shortfall-to-decide", "values.buildings-decided-apart", "values.stale-years")

RULES: tuple[Rule, ...] = (
    Rule(
        "values.below-replacement",
        "building",
        below_replacement,
        (*_COSTS, *_ERRORS, *_DECIDING, "values.safe-certainty"),
    ),
    Rule(
        "values.coinsurance",
        "building",
        coinsurance,
        (*_COSTS, *_ERRORS, "values.penalty-chance-to-decide", "values.safe-certainty"),
        "the clause as printed in the terms; the order of deductible and share is assumed",
    ),
    Rule(
        "values.agreed-value-lapsing",
        "building",
        agreed_value_lapsing,
        (*_COSTS, *_ERRORS, "values.safe-certainty"),
    ),
    Rule("values.index-too-low", "building", index_too_low, _COSTS[:3]),
    Rule("values.valuation-stale", "building", valuation_stale, ("values.stale-years",)),
    Rule("values.special-features", "building", special_features),
    Rule("values.contents-unlisted", "building", contents_unlisted),
    Rule("values.contents-too-low", "building", contents_too_low, ("values.shortfall-to-decide",)),
    Rule(
        "values.incomplete-building",
        "building",
        incomplete_building,
        ("values.updates-needed-after-years",),
    ),
    Rule(
        "values.area-mismatch",
        "building",
        area_mismatch,
        ("values.area-tolerance", "values.storeys-tolerance", "values.year-tolerance"),
    ),
    Rule(
        "values.valuations-disagree",
        "building",
        valuations_disagree,
        (_COSTS[0], "values.valuation-tolerance", "values.stale-years"),
    ),
    Rule("values.implausible-value", "building", implausible_value, PLAUSIBLE),
)
