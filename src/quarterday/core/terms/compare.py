"""Compare two versions of terms, coverage by coverage and place by place."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import zip_longest
from typing import get_args

from quarterday.core.file.records import Terms
from quarterday.core.file.records.terms import EVERYWHERE, Coverage
from quarterday.core.money import Money
from quarterday.core.terms.clauses import CLAUSES, DEDUCTIBLES, NONE, Clause, Ranks, Scale, Side
from quarterday.core.terms.deductible import change_of_form, same_currency
from quarterday.core.terms.difference import Difference, DifferenceKind, Direction
from quarterday.core.words import Arg, Term

Lines = dict[tuple[str, str], list[Coverage]]
_ORDER: dict[str, int] = {kind: n for n, kind in enumerate(get_args(DifferenceKind))}


def compare(before: Terms, after: Terms) -> tuple[Difference, ...]:
    """Return how ``after`` differs from ``before``, in order of coverage, location and kind.

    A coverage that one version gives at a place and the other everywhere is compared there. Equal
    terms have no difference; the order of lines does not matter; comparing the other way round
    gives the same differences with the opposite direction.
    """
    found = [*_of_terms(before, after), *_of_lines(before, after)]
    return tuple(sorted(found, key=_position))


def _position(difference: Difference) -> tuple[str, str, int, str]:
    d = difference
    return d.coverage, d.location, _ORDER[d.kind], f"{d.before}{d.after}"


def _by_place(terms: Terms) -> Lines:
    lines: Lines = {}
    for line in terms.coverages:
        lines.setdefault(line.place, []).append(line)
    for several in lines.values():
        if len(several) > 1:
            several.sort(key=Coverage.model_dump_json)
    return lines


def _of_lines(before: Terms, after: Terms) -> Iterator[Difference]:
    old, new = _by_place(before), _by_place(after)
    for place in old.keys() | new.keys():
        sides = _at(old, place), _at(new, place)
        if all(sides):
            for a, b in zip_longest(*sides):
                yield from _of_pair(_side(a, before), _side(b, after))
        elif place[1] == EVERYWHERE and _anywhere(old, place[0]) and _anywhere(new, place[0]):
            yield _moved(place[0], everywhere_before=bool(sides[0]))
        else:
            for line in sides[0]:
                yield from _of_pair(Side(line, before), None)
            for line in sides[1]:
                yield from _of_pair(None, Side(line, after))


def _at(lines: Lines, place: tuple[str, str]) -> list[Coverage]:
    return lines.get(place) or lines.get((place[0], EVERYWHERE)) or []


def _side(line: Coverage | None, terms: Terms) -> Side | None:
    return None if line is None else Side(line, terms)


def _anywhere(lines: Lines, coverage: str) -> bool:
    return any(place[0] == coverage for place in lines)


def _moved(coverage: str, *, everywhere_before: bool) -> Difference:
    """Return that cover for everywhere became cover for named places, or the reverse."""
    everywhere, named = Term("place", "everywhere"), Term("place", "named")
    shown = (everywhere, named) if everywhere_before else (named, everywhere)
    return Difference("place", coverage, EVERYWHERE, "cannot say", *shown)


def _of_pair(before: Side | None, after: Side | None) -> Iterator[Difference]:
    if before is None or after is None:
        yield _added_or_dropped(before, after)
        return
    place = max(before.line.location, after.line.location, key=lambda at: at != EVERYWHERE)
    form = change_of_form(before, after, place)
    if form:
        yield form
    for clause in CLAUSES if form else (*CLAUSES, *DEDUCTIBLES):
        yield from _of_clause(clause, before, after, place)
    yield from _of_items(before, after, place)


def _added_or_dropped(before: Side | None, after: Side | None) -> Difference:
    side = before or after
    assert side is not None
    line = side.line
    limit = None if line.limit is None else side.terms.money(line.limit)
    if before:
        return Difference("dropped", *line.place, "worse", limit, None, limit)
    return Difference("added", *line.place, "better", None, limit, limit and -limit)


def _of_clause(clause: Clause, before: Side, after: Side, place: str) -> Iterator[Difference]:
    old, new = clause.read(before), clause.read(after)
    comparable = not clause.is_money or same_currency(before, after)
    same = (old is None and new is None) or (old == new and comparable)
    if same or not _applies(clause, before, after):
        return
    yield Difference(
        kind=clause.kind,
        coverage=before.line.coverage,
        location=place,
        direction=clause.direct(old, new) if comparable else "cannot say",
        before=None if old is None else clause.show(before, old),
        after=None if new is None else clause.show(after, new),
        more_borne=_more_borne(clause, before, after) if comparable else None,
    )


def _applies(clause: Clause, before: Side, after: Side) -> bool:
    sides = (before, after)
    return not clause.within or all(getattr(side.line, clause.within) for side in sides)


def _more_borne(clause: Clause, before: Side, after: Side) -> Money | None:
    """Return how much more is borne, exactly, where both amounts are known or count as none."""
    if not clause.borne or not isinstance(clause.direct, Scale):
        return None
    absent = NONE if clause.direct.absent == NONE else None
    old, new = (absent if v is None else v for v in (clause.read(before), clause.read(after)))
    if old is None or new is None:
        return None
    return before.terms.money((new - old) * clause.borne)


def _of_items(before: Side, after: Side, place: str) -> Iterator[Difference]:
    """Yield a difference for each excluded cause and each kind of damages that changed."""
    coverage = before.line.coverage
    old, new = set(before.line.excluded_causes), set(after.line.excluded_causes)
    for cause in old ^ new:
        yield _item("exclusion", coverage, place, Term("cause", cause), gone=cause in old)
    damages = before.line.damages, after.line.damages
    if damages[0] is not None and damages[1] is not None:
        for kind in set(damages[0]) ^ set(damages[1]):
            gone = kind in damages[0]
            yield _item("damages", coverage, place, Term("damages", kind), gone=gone)
    elif damages[0] != damages[1]:
        yield _unstated("damages", coverage, place, stated_before=damages[0] is not None)
    yield from _of_umbrella(before, after, place)


def _of_umbrella(before: Side, after: Side, place: str) -> Iterator[Difference]:
    """Yield a difference for each coverage that an umbrella lies over no more, or newly."""
    kind: DifferenceKind = "umbrella-over"
    over = before.line.attaches_to, after.line.attaches_to
    if over[0] is not None and over[1] is not None:
        for coverage in set(over[0]) ^ set(over[1]):
            item, gone = Term("coverage", coverage), coverage in over[0]
            yield _item(kind, before.line.coverage, place, item, gone=gone)
    elif over[0] != over[1]:
        yield _unstated(kind, before.line.coverage, place, stated_before=over[0] is not None)


def _item(kind: DifferenceKind, coverage: str, place: str, item: Term, *, gone: bool) -> Difference:
    better = gone == (kind == "exclusion")
    shown = (item, None) if gone else (None, item)
    return Difference(kind, coverage, place, "better" if better else "worse", *shown)


def _unstated(
    kind: DifferenceKind, coverage: str, place: str, *, stated_before: bool
) -> Difference:
    """Return that only one version says what it covers."""
    stated, unstated = Term(kind, "stated"), Term(kind, "not-stated")
    shown = (stated, unstated) if stated_before else (unstated, stated)
    return Difference(kind, coverage, place, "cannot say", *shown)


def _of_terms(before: Terms, after: Terms) -> Iterator[Difference]:
    """Yield the differences of the terms as a whole."""
    yield from _whole("insurer", before.insurer, after.insurer, "cannot say")
    yield from _whole("currency", before.currency, after.currency, "cannot say")
    days = before.vacancy_days, after.vacancy_days
    yield from _whole("vacancy-days", *days, Scale("better", None)(*days))
    yield from _deductible_rule(before, after)
    yield from _shared_amount(before, after)
    yield from _shared_list(before, after)


def _deductible_rule(before: Terms, after: Terms) -> Iterator[Difference]:
    rules = before.deductible_rule, after.deductible_rule
    old, new = (None if rule is None else Term("deductible-rule", rule) for rule in rules)
    yield from _whole("deductible-rule", old, new, Ranks({"each": 0, "highest": 1})(*rules))


def _whole(
    kind: DifferenceKind, old: Arg | None, new: Arg | None, direction: Direction
) -> Iterator[Difference]:
    if old != new:
        yield Difference(kind, "", EVERYWHERE, direction, old, new)


def _shared_amount(before: Terms, after: Terms) -> Iterator[Difference]:
    old, new = (t.money(t.shared_limit.amount) if t.shared_limit else None for t in (before, after))
    if before.currency != after.currency:
        yield from _whole("shared-limit-amount", old, new, "cannot say")
        return
    if old == new:
        return
    less = (old or after.money(NONE)) - (new or after.money(NONE))
    direction = Scale("worse", NONE)(NONE, less.amount)
    yield Difference("shared-limit-amount", "", EVERYWHERE, direction, old, new, less)


def _shared_list(before: Terms, after: Terms) -> Iterator[Difference]:
    """Yield what the shared limit tops up no more, or newly, where no coverage line says it."""
    old, new = (set(t.shared_limit.tops_up) if t.shared_limit else set() for t in (before, after))
    with_line = {line.coverage for t in (before, after) for line in t.coverages}
    for coverage in (old ^ new) - with_line:
        shown = ("yes", "no") if coverage in old else ("no", "yes")
        direction: Direction = "worse" if coverage in old else "better"
        yield Difference("shared-limit", coverage, EVERYWHERE, direction, *shown)
