"""What terms and losses cannot be honoured, each told in a sentence that names the clause."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from datetime import timedelta
from decimal import Decimal

from quarterday.core.file.records import Terms
from quarterday.core.file.records.terms import EVERYWHERE, Coverage
from quarterday.core.given import Unusable
from quarterday.core.reference import Reference
from quarterday.core.terms.losses.components import COMPONENTS
from quarterday.core.terms.losses.loss import Damage, Loss, is_monthly
from quarterday.core.words import Arg, Rate, Term, Words, words

AMOUNTS = (
    "limit",
    "aggregate",
    "deductible",
    "deductible_minimum",
    "deductible_maximum",
    "coinsurance_stated_amount",
    "coinsurance_waived_up_to",
)
RATIOS = ("deductible_percent", "monthly_limit", "coinsurance_waived_share")


class Refused(Unusable):
    """Raised when terms or a loss cannot be honoured; ``words`` names the clause and the remedy."""


def refused(id: str, **args: Arg | Words | tuple[Arg | Words, ...]) -> Refused:
    """Return the refusal ``settling-refused-{id}``."""
    return Refused(words(f"settling-refused-{id}", **args))


def named(line: Coverage) -> str:
    """Return how a line is written in the terms: ``coverage@location``."""
    return line.coverage if line.location == EVERYWHERE else f"{line.coverage}@{line.location}"


def check_terms(terms: Terms, reference: Reference) -> None:
    """Raise Refused for the first clause of ``terms`` that contradicts itself or another."""
    for fault in _faults(terms, reference):
        raise fault


def _faults(terms: Terms, reference: Reference) -> Iterator[Refused]:
    seen: set[tuple[str, str]] = set()
    for line in terms.coverages:
        if line.coverage not in reference.coverages:
            yield refused("coverage", coverage=line.coverage)
        if line.place in seen:
            yield refused("two-payers", line=named(line))
        seen.add(line.place)
        yield from _of_amounts(line)
        yield from _of_deductible(line)
        yield from _of_sublimit(terms, line)
        yield from _of_attachments(terms, line)
    yield from _of_shared(terms)


def _of_amounts(line: Coverage) -> Iterator[Refused]:
    for name in AMOUNTS:
        amount = getattr(line, name)
        if amount is not None and amount < 0:
            yield refused("negative", line=named(line), clause=_clause(name), amount=amount)
    for name in RATIOS:
        ratio = getattr(line, name)
        if ratio is not None and not 0 <= ratio <= 1:
            yield refused("ratio", line=named(line), clause=_clause(name), ratio=Rate(ratio))
    if line.margin is not None and line.margin < 0:
        yield refused("negative", line=named(line), clause=_clause("margin"), amount=line.margin)


def _clause(name: str) -> Words:
    return words(f"field-{name.replace('_', '-')}")


def _of_deductible(line: Coverage) -> Iterator[Refused]:
    if line.deductible_percent is None:
        return
    if line.deductible:
        yield refused("two-deductibles", line=named(line))
    if line.deductible_percent_of is None:
        yield refused("percent-of-what", line=named(line))
    if line.deductible_percent_of == "limit" and line.limit is None:
        yield refused("no-limit", line=named(line))
    least, most = line.deductible_minimum, line.deductible_maximum
    if least is not None and most is not None and least > most:
        yield refused("deductible-bounds", line=named(line), least=least, most=most)


def parents_of(terms: Terms, line: Coverage) -> tuple[Coverage, ...]:
    """Return the lines whose limit a sublimit is part of: at its place, or at every place."""
    if line.sublimit_of is None:
        return ()
    if line.location != EVERYWHERE:
        found = terms.find(line.sublimit_of, line.location)
        return (found,) if found else ()
    return tuple(c for c in terms.coverages if c.coverage == line.sublimit_of)


def _of_sublimit(terms: Terms, line: Coverage) -> Iterator[Refused]:
    if line.sublimit_of is None:
        return
    if _in_circle(terms, line):
        yield refused("sublimit-circle", line=named(line), of=line.sublimit_of)
        return
    parents = parents_of(terms, line)
    if not parents:
        yield refused("sublimit-of-nothing", line=named(line), of=line.sublimit_of)
    limits = [parent.limit for parent in parents]
    known = [limit for limit in limits if limit is not None]
    if line.limit is not None and known and len(known) == len(limits) and line.limit > max(known):
        yield refused(
            "sublimit-above",
            line=named(line),
            of=line.sublimit_of,
            limit=terms.money(line.limit),
            whole=terms.money(max(known)),
        )


def _in_circle(terms: Terms, line: Coverage) -> bool:
    parents: dict[str, set[str]] = {}
    for other in terms.coverages:
        if other.sublimit_of:
            parents.setdefault(other.coverage, set()).add(other.sublimit_of)
    reached, new = set[str](), {line.coverage}
    while new:
        new = {above for c in new for above in parents.get(c, ())} - reached
        reached |= new
    return line.coverage in reached


def _of_attachments(terms: Terms, line: Coverage) -> Iterator[Refused]:
    given = {other.coverage for other in terms.coverages}
    for coverage in line.attaches_to or ():
        if coverage not in given:
            yield refused("attaches-to-nothing", line=named(line), coverage=coverage)


def _of_shared(terms: Terms) -> Iterator[Refused]:
    shared = terms.shared_limit
    if shared is None:
        return
    if shared.amount < 0:
        yield refused("shared-negative", amount=shared.amount)
    if len(set(shared.tops_up)) < len(shared.tops_up):
        yield refused("shared-twice", coverages=shared.tops_up)


def check_loss(loss: Loss, reference: Reference, places: Iterable[str]) -> None:
    """Raise Refused where a loss names what nobody knows; ``places`` is the schedule."""
    known = set(places)
    if loss.cause not in reference.causes:
        raise refused("cause", cause=loss.cause, known=tuple(sorted(reference.causes)))
    if loss.reference is not None and loss.reference not in reference.losses:
        raise refused("reference", loss=loss.reference, known=tuple(reference.losses))
    damages = tuple(loss.damages)
    if not damages:
        raise refused("no-amounts", loss=loss.called)
    for damage in damages:
        _check_damage(loss, damage, known)


def _check_damage(loss: Loss, damage: Damage, places: set[str]) -> None:
    if damage.component not in COMPONENTS:
        raise refused("component", component=damage.component, known=tuple(COMPONENTS))
    if damage.amount < 0:
        raise refused("negative-loss", component=damage.component, amount=damage.amount)
    if damage.place != EVERYWHERE and damage.place not in places:
        raise refused("place", place=damage.place, known=tuple(sorted(places)))
    if damage.month > 1 and not is_monthly(damage.component):
        raise refused("months", component=damage.component, loss=loss.called)


def check_period(terms: Terms, line: Coverage | None, loss: Loss) -> None:
    """Raise Refused when ``line`` does not cover the time of ``loss``; None: nothing answers it."""
    if line is not None and line.claims_made:
        last = terms.end + timedelta(days=line.reporting_days or 0)
        if loss.date_of_loss >= terms.end or not terms.start <= loss.reported < last:
            coverage = Term("coverage", line.coverage)
            raise _outside(terms, "outside-claims-made", day=loss.reported, coverage=coverage)
    elif loss.date_of_loss not in terms.period:
        raise _outside(terms, "outside", day=loss.date_of_loss)


def _outside(terms: Terms, id: str, **args: Arg) -> Refused:
    return refused(id, start=terms.start, end=terms.end, **args)


def needed(amount: Decimal | None, id: str, line: Coverage) -> Decimal:
    """Return ``amount``; Refused by ``id`` where it is not known."""
    if amount is None:
        raise refused(id, line=named(line))
    return amount
