"""What can be lost, and which coverages of the library may answer it, the first choice first.

The routes are common practice, no source. Which causes a coverage answers is data of the library.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Literal

Kind = Literal["property", "cost", "income", "money", "damages", "defence"]
BUILDING = ("building", "sewer-backup", "overland-flood", "earthquake", "equipment-breakdown")
CONTENTS = ("contents", *BUILDING[1:])
LIABILITY = (
    "general-liability",
    "abuse-liability",
    "directors-and-officers",
    "employment-practices",
    "counselling-liability",
    "personal-injury",
    "media-liability",
    "non-owned-vehicle",
    "cyber-liability",
    "tenants-liability",
    "pollution-liability",
    "hall-rental-liability",
    "products-liability",
)
PUNISHING = ("punitive", "exemplary", "multiplied")


@dataclass(frozen=True, slots=True)
class Component:
    """Something that can be lost: its kind, and the coverages that may answer it in order."""

    kind: Kind
    coverages: tuple[str, ...]


def _own(kind: Kind, *coverages: str) -> dict[str, Component]:
    """Return components that are each answered by the coverage of the same name."""
    return {coverage: Component(kind, (coverage,)) for coverage in coverages}


COMPONENTS: Mapping[str, Component] = {
    "building": Component("property", (*BUILDING, "glass")),
    "contents": Component("property", CONTENTS),
    "equipment": Component("property", ("equipment", *CONTENTS)),
    "stained-glass": Component("property", ("stained-glass", *BUILDING, "glass")),
    "organ-and-fine-arts": Component("property", ("organ-and-fine-arts", *CONTENTS)),
    **_own(
        "property",
        "outdoor-property",
        "property-away",
        "property-of-others",
        "valuable-papers",
        "lock-and-key",
        "construction-in-progress",
        "glass",
    ),
    "by-laws": Component("cost", ("by-laws",)),
    "debris": Component("cost", ("debris-removal",)),
    "fees": Component("cost", ("professional-fees",)),
    "extra-expense": Component("cost", ("extra-expense",)),
    "rent-elsewhere": Component("cost", ("alternate-premises", "extra-expense")),
    "income": Component("income", ("loss-of-income",)),
    **_own("income", "civil-authority", "off-premises-utilities"),
    "money": Component("money", ("money-inside", "employee-dishonesty", "volunteer-dishonesty")),
    "money-by-employee": Component("money", ("employee-dishonesty",)),
    "money-by-volunteer": Component("money", ("volunteer-dishonesty",)),
    "money-transferred": Component("money", ("forgery-and-funds-transfer",)),
    **_own("money", "money-outside", "offerings-in-transit", "counterfeit"),
    **_own("cost", "cyber-own-losses", "volunteer-accident", "travel", "key-person"),
    "compensatory": Component("damages", LIABILITY),
    **{kind: Component("damages", LIABILITY) for kind in PUNISHING},
    "defence": Component(
        "defence", (*LIABILITY, "abuse-defence", "defence-costs", "legal-expense")
    ),
    "therapy": Component("cost", ("abuse-therapy",)),
    "medical": Component("cost", ("medical-payments",)),
}
