"""The three parts of a package: what to read, what to send back, what to keep and look up."""

from __future__ import annotations

from collections.abc import Mapping

# Each in the order of the package; the letter comes before them.
PARTS: Mapping[str, tuple[str, ...]] = {
    "read": (
        "what-changed", "building-values", "coverage-summary", "options", "what-would-it-pay",
        "claims-record", "motions",
    ),
    "send": (
        "decisions-form", "contacts-form", "operations-form", "statement-of-values", "water-form",
        "abuse-form", "interests-form", "payment-form",
    ),
    "keep": ("premium-statement", "copies-for-lenders", "figures"),
}  # fmt: skip
ORDER = tuple(id for ids in PARTS.values() for id in ids)
FORMS = PARTS["send"]
