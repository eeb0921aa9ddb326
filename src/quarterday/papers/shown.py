"""The coverages that somebody outside asks about, and how an amount of theirs is said.

Which ones is common practice, no source.
"""

from __future__ import annotations

from collections.abc import Iterator

from quarterday.core.file.records import Terms
from quarterday.core.file.records.terms import EVERYWHERE, Coverage

# By what the holder is to the organisation, in the order they are shown.
SHOWN: dict[str, tuple[str, ...]] = {
    "lender": (
        "building", "contents", "earthquake", "overland-flood", "sewer-backup",
        "equipment-breakdown", "by-laws", "general-liability", "umbrella",
    ),
    "lessor": (
        "equipment", "contents", "equipment-breakdown", "property-away", "property-of-others",
        "tenants-liability", "general-liability", "umbrella",
    ),
    "third-party": (
        "general-liability", "products-liability", "tenants-liability", "medical-payments",
        "non-owned-vehicle", "umbrella",
    ),
}  # fmt: skip


def shown(terms: Terms, role: str, location: str | None) -> Iterator[Coverage]:
    """Yield the coverages a holder asks about: at their building, and those for everywhere.

    ``role`` is ``lender``, ``lessor`` or ``third-party``; ``location`` None means every building.
    """
    for coverage in SHOWN[role]:
        for line in terms.coverages:
            here = location is None or line.location in (EVERYWHERE, location)
            if line.coverage == coverage and here:
                yield line
