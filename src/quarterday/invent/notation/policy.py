"""From an account's file and the insurer's plan to the versions of its terms."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from decimal import Decimal
from typing import Any

from quarterday.core.dates import add_years
from quarterday.core.file.records import Terms
from quarterday.core.file.records.terms import (
    EVERYWHERE,
    Coverage,
    Option,
    Premium,
    SharedLimit,
    Stage,
    StatedTotal,
)
from quarterday.core.money import round_to
from quarterday.invent.tax import tax_on

Notation = Mapping[str, Any]
PRICING = frozenset({"rate", "price", "exposure"})
VERSIONS: dict[str, tuple[Stage, int]] = {  # stage, and years from the renewal to the start
    "last-offered": ("offered", -1),
    "expiring": ("issued", -1),
    "requested": ("requested", 0),
    "offered": ("offered", 0),
}


def merged(base: Any, over: Any) -> Any:  # noqa: ANN401 - YAML holds anything
    """Return ``base`` with ``over`` laid upon it, mapping by mapping; a null takes a key out."""
    if not (isinstance(base, Mapping) and isinstance(over, Mapping)):
        return over
    both = {**base, **{key: merged(base.get(key), value) for key, value in over.items()}}
    return {key: value for key, value in both.items() if value is not None}


def spelled_out(told: Notation) -> Notation:
    """Return a version with every line a mapping: a bare amount is its limit."""
    lines = {
        key: {"limit": line} if isinstance(line, int | Decimal) else line
        for key, line in told.get("lines", {}).items()
    }
    return {**told, "lines": lines}


def versions(told: Notation, plan: Notation) -> Iterator[tuple[str, Notation]]:
    """Yield the name and the whole notation of each version that an account's file tells of.

    ``expiring`` is laid upon the plan (already spelled out), every other version upon ``expiring``.
    """
    expiring = merged(plan, spelled_out(told["expiring"]))
    for name in VERSIONS:
        if name in told:
            over = {} if name == "expiring" else spelled_out(told[name] or {})
            yield name, merged(expiring, over)


@dataclass(frozen=True)
class Line:
    """One coverage of a version with what it costs."""

    coverage: str
    location: str
    fields: Notation

    @property
    def exposure(self) -> Decimal | None:
        """What the rate is multiplied by; None for a flat price."""
        if "rate" not in self.fields:
            return None
        return Decimal(self.fields.get("exposure", self.fields.get("limit", 0)))

    def record(self) -> Coverage:
        """Return the coverage as the terms hold it."""
        kept = {k: v for k, v in self.fields.items() if k not in PRICING}
        return Coverage.model_validate(
            {"coverage": self.coverage, "location": self.location, **kept}
        )

    def premium(self, unit: Decimal) -> Premium | None:
        """Return the cell of the premium table, rounded to ``unit``; None when it is included."""
        exposure = self.exposure
        rate = self.fields.get("rate")
        price = self.fields.get("price") if exposure is None or rate is None else exposure * rate
        if price is None:
            return None
        return Premium(
            coverage=self.coverage,
            location=self.location,
            amount=round_to(Decimal(price), unit),
            exposure=exposure,
            rate=rate,
        )


def lines(version: Notation) -> tuple[Line, ...]:
    """Return the lines of a version: ``coverage`` or ``coverage@location``, over its ``each``.

    Lines of one building come first. The limit ``values`` stands for all buildings and contents.
    """
    each, rates = version.get("each", {}), version.get("rates", {})
    found: list[Line] = []
    for key, own in version["lines"].items():
        coverage, _, location = key.partition("@")
        rated = {"rate": rates[coverage]} if coverage in rates else {}
        found.append(
            Line(coverage, location or EVERYWHERE, {**each.get(coverage, {}), **rated, **own})
        )
    found.sort(key=lambda line: line.location == EVERYWHERE)
    insured = sum(x.fields["limit"] for x in found if x.coverage in {"building", "contents"})
    return tuple(
        Line(x.coverage, x.location, {**x.fields, "limit": insured})
        if x.fields.get("limit") == "values"
        else x
        for x in found
    )


def _charges(version: Notation) -> Iterator[Premium]:
    for kind, place, amount, reason in version.get("charges", ()):
        coverage, _, location = place.partition("@")
        yield Premium(
            coverage=coverage,
            location=location or EVERYWHERE,
            kind=kind,
            amount=amount,
            reason=reason,
        )


def totals(premiums: tuple[Premium, ...], tax: Decimal) -> tuple[StatedTotal, ...]:
    """Return the totals an insurer prints: each coverage, each location, all, tax, and with tax."""
    by_coverage: dict[str, Decimal] = {}
    by_location: dict[str, Decimal] = {}
    for cell in premiums:
        by_coverage[cell.coverage] = by_coverage.get(cell.coverage, Decimal(0)) + cell.amount
        by_location[cell.location] = by_location.get(cell.location, Decimal(0)) + cell.amount
    before_tax = sum(by_coverage.values(), Decimal(0))
    return (
        *(StatedTotal(of="coverage", id=id, amount=a) for id, a in by_coverage.items()),
        *(StatedTotal(of="location", id=id, amount=a) for id, a in by_location.items()),
        StatedTotal(of="subtotal", amount=before_tax),
        StatedTotal(of="tax", amount=tax),
        StatedTotal(of="total", amount=before_tax + tax),
    )


def _printed(stated: tuple[StatedTotal, ...], wrong: Notation) -> tuple[StatedTotal, ...]:
    """Return the totals with those in ``wrong`` (``tax``, ``coverage glass``) misprinted."""
    return tuple(
        StatedTotal(of=t.of, id=t.id, amount=wrong[name])
        if (name := t.of if t.id == EVERYWHERE else f"{t.of} {t.id}") in wrong
        else t
        for t in stated
    )


def _mistyped(cells: tuple[Premium, ...], wrong: Notation) -> tuple[Premium, ...]:
    """Return the cells with those named in ``wrong`` mistyped after the totals were made."""
    return tuple(
        Premium.model_validate({**dict(c), "amount": wrong[name]})
        if (name := c.coverage if c.location == EVERYWHERE else f"{c.coverage}@{c.location}")
        in wrong
        else c
        for c in cells
    )


def _options(version: Notation) -> Iterator[Option]:
    for key, told in version.get("options", {}).items():
        coverage, _, location = key.partition("@")
        place = {"coverage": coverage, "location": location or EVERYWHERE}
        yield Option.model_validate({**place, **told})


def _shared(version: Notation) -> SharedLimit | None:
    told = version.get("shared")
    return SharedLimit.model_validate(told) if told else None


def _in_shared(line: Coverage, shared: SharedLimit | None) -> Coverage:
    member = shared is not None and line.coverage in shared.tops_up
    return line.model_copy(update={"in_shared_limit": member}) if member else line


PLAIN = ("instalments_available", "vacancy_days", "answer_by")


def terms(name: str, version: Notation, of: Notation, province: str) -> Terms:
    """Return one version of the policy ``of``: its number, and the renewal it starts or ends on."""
    stage, years = VERSIONS[name]
    start = add_years(of["renewal"], years)
    unit = Decimal(version["rounding"])
    found, shared = lines(version), _shared(version)
    priced = tuple(p for line in found if (p := line.premium(unit))) + tuple(_charges(version))
    stated = totals(priced, tax_on(priced, province, start))
    return Terms(
        stage=stage,
        start=start,
        end=add_years(start, 1),
        insurer=version["insurer"],
        policy_number=of["number"],
        coverages=tuple(_in_shared(line.record(), shared) for line in found),
        shared_limit=shared,
        premiums=() if stage == "requested" else _mistyped(priced, version.get("cells", {})),
        totals=() if stage == "requested" else _printed(stated, version.get("printed", {})),
        options=tuple(_options(version)),
        rounding=unit,
        **{field: version[field] for field in PLAIN if field in version},
    )
