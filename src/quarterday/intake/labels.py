"""How fields and choices are named to people."""

from __future__ import annotations

from quarterday.core.words import Term, Words, words

_CATALOGUES = {
    "deductible_percent_of": "percent-of",
    "kind": "premium-kind",
    "of": "total-of",
    "shared_limit_meant_for": "meant-for",
}
_CATALOGUES_BY_KIND = {
    ("allocation key", "by"): "allocation-by",
    ("interest", "role"): "interest-role",
    ("interest", "status"): "interest-status",
    ("claim", "status"): "claim-status",
    ("valuation", "basis"): "valuation-basis",
    ("terms", "basis"): "settlement-basis",
}


def field_label(field: str, kind: str = "") -> Words:
    """Return the name of a field of a record of this kind, as people read it."""
    if field == "name" and kind != "organisation":
        return words("intake-name")
    return words(f"field-{field.replace('_', '-')}")


def choice(kind: str, field: str, id: str) -> Term:
    """Return the name of one of a field's choices."""
    catalogue = _CATALOGUES_BY_KIND.get((kind, field)) or _CATALOGUES.get(field)
    return Term(catalogue or field.replace("_", "-"), id)
