"""What holds of any terms and any loss: conservation, bounds, and which way more cover goes."""

from __future__ import annotations

from collections.abc import Callable
from decimal import Decimal
from fractions import Fraction
from typing import Any

import numpy as np
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from tests.core.terms.settling.conftest import DAY, loss_of, terms_of
from tests.core.terms.settling.interpreter import Row, interpret

from quarterday.core.file.records import Terms
from quarterday.core.reference import Reference
from quarterday.core.terms.losses.loss import Loss
from quarterday.core.terms.settling.plan import compiled
from quarterday.core.terms.settling.routing import Item
from quarterday.core.terms.settling.rows import Rows
from quarterday.core.terms.settling.settlement import Setting, Settlement, settle_year
from quarterday.core.terms.settling.values import Values

Line = dict[str, Any]
Version = dict[str, Any]
Told = list[dict[str, str]]
dollars = st.integers(0, 400).map(lambda n: n * 250)
cents = st.integers(0, 10_000_000).map(lambda n: str(Decimal(n).scaleb(-2)))
ratios = st.sampled_from(["0.5", "0.8", "0.9", "1"])
PLACES = ("hall", "annex")
FIRE = ("building@hall", "building@annex", "contents@hall", "by-laws", "debris", "extra-expense")


def maybe(**fields: st.SearchStrategy[Any]) -> st.SearchStrategy[Line]:
    return st.fixed_dictionaries({}, optional=fields)


@st.composite
def deductibles(draw: st.DrawFn) -> Line:
    if draw(st.booleans()):
        return draw(maybe(deductible=dollars))
    share = draw(st.sampled_from(["0.01", "0.05", "0.1"]))
    of = draw(st.sampled_from(["loss", "limit", "value"]))
    least = draw(st.none() | dollars)
    return {
        "deductible_percent": share, "deductible_percent_of": of, "deductible_minimum": least,
        "deductible_maximum": draw(st.none() | dollars.map(lambda n: n + (least or 0))),
    }  # fmt: skip


@st.composite
def property_lines(draw: st.DrawFn) -> list[Line]:
    clauses = maybe(
        coinsurance=ratios,
        settling_order=st.sampled_from(["coinsurance-first", "deductible-first"]),
        basis=st.sampled_from(["replacement", "actual-cash-value"]),
        coinsurance_waived_up_to=dollars,
        agreed_value_until=st.sampled_from([DAY, DAY.replace(day=2)]),
    )
    blanket = maybe(blanket=st.just("all"), margin=st.sampled_from(["0.5", "1.2"]))
    lines = [
        {"coverage": "building", "location": place, "limit": draw(dollars),
         **draw(clauses), **draw(deductibles()), **draw(blanket)}
        for place in PLACES
    ]  # fmt: skip
    lines.append({"coverage": "contents", "limit": draw(dollars), **draw(deductibles())})
    for coverage in ("by-laws", "debris-removal", "extra-expense"):
        more = maybe(aggregate=dollars, deductible=dollars, in_shared_limit=st.booleans())
        lines.append({"coverage": coverage, "limit": draw(dollars), **draw(more)})
    ceiling = max(line["limit"] for line in lines[:2])
    if draw(st.booleans()):
        lines[3] |= {"sublimit_of": "building", "limit": min(lines[3]["limit"], ceiling)}
    return lines


@st.composite
def versions(draw: st.DrawFn) -> Version:
    """Draw what makes terms: lines, the shared limit, the rule for several deductibles."""
    shared = st.fixed_dictionaries(
        {"amount": dollars, "tops_up": st.permutations(["by-laws", "extra-expense"])}
    )
    lines = draw(property_lines())
    of_loss = any(line.get("deductible_percent_of") == "loss" for line in lines)
    rules = ["each", None] if of_loss else ["each", "highest", None]
    return {
        "lines": lines,
        "shared_limit": draw(st.none() | shared),
        "deductible_rule": draw(st.sampled_from(rules)),
    }


losses = st.lists(
    st.dictionaries(st.sampled_from(FIRE), cents, min_size=1, max_size=5), min_size=1, max_size=3
)
VALUES = Values(
    worth={
        ("building", "hall"): Decimal(60_000),
        ("building", "annex"): Decimal(90_000),
        ("contents", "hall"): Decimal(20_000),
        ("contents", "annex"): Decimal(10_000),
    },
    depreciation={("building", "hall"): Decimal("0.3"), ("building", "annex"): Decimal(0)},
)


def made(version: Version) -> Terms:
    more = {key: value for key, value in version.items() if key != "lines"}
    return terms_of(*version["lines"], **more)


def happened(told: Told) -> list[Loss]:
    return [
        loss_of("fire", amounts, id=f"loss-{n}", place="hall") for n, amounts in enumerate(told)
    ]


def settled(canada: Reference, version: Version, told: Told) -> list[Settlement]:
    return list(settle_year(Setting(made(version), canada, VALUES), happened(told)))


def whole(done: list[Settlement]) -> Decimal:
    return sum((one.paid.money.amount for one in done), Decimal(0))


often = settings(
    max_examples=100, deadline=None, suppress_health_check=[HealthCheck.function_scoped_fixture]
)


@often
@given(version=versions(), told=losses)
def test_paid_and_borne_are_the_loss_to_the_cent_and_neither_is_below_zero(
    canada: Reference, version: Version, told: Told
) -> None:
    for done in settled(canada, version, told):
        total, paid, borne = done.total.money, done.paid.money, done.borne.money
        assert paid + borne == total
        assert Decimal(0) <= paid.amount <= total.amount
        assert sum(f.money.amount for _, f in done.by_reason) == borne.amount
        assert sum(f.money.amount for _, f in done.by_payer) == paid.amount
        assert sum(part.paid.amount for part in done.parts) == paid.amount
        for part in done.parts:
            assert part.paid + part.borne == part.lost
            assert part.steps


@often
@given(version=versions(), told=losses)
def test_the_plan_of_any_terms_is_what_the_interpreter_makes_of_it(
    canada: Reference, version: Version, told: Told
) -> None:
    damages = [(n, d) for n, loss in enumerate(happened(told)) for d in loss.damages]
    items = tuple(dict.fromkeys(Item(d.component, d.place, "fire") for _, d in damages))
    rows = [
        Row(Fraction(d.amount), items.index(Item(d.component, d.place, "fire")), n, 0,
            DAY.toordinal())
        for n, d in damages
    ]  # fmt: skip
    found = compiled(made(version), canada, items, VALUES)
    exact = interpret(found, rows)
    floats = found.settle(
        Rows(
            amount=np.array([float(row.amount) for row in rows]),
            item=np.array([row.item for row in rows]),
            occurrence=np.array([row.occurrence for row in rows]),
            year=np.zeros(len(rows), np.int64),
            day=np.array([row.day for row in rows]),
        )
    )
    for name, column in floats.buckets.items():
        assert np.allclose(column, [float(x) for x in exact[name]], rtol=0, atol=1e-6), name


def bigger(
    change: Callable[[Line], Line | None],
) -> Callable[[Version], list[Version]]:
    """Return the versions in which one line is changed."""

    def changed(version: Version) -> list[dict[str, Any]]:
        found = []
        for n, line in enumerate(version["lines"]):
            new = change(line)
            if new is not None:
                lines = [*version["lines"][:n], new, *version["lines"][n + 1 :]]
                found.append({**version, "lines": lines})
        return found

    return changed


def more_limit(line: Line) -> Line | None:
    """A share of the limit as deductible grows with it; a sublimit may not outgrow its limit."""
    if line.get("deductible_percent_of") == "limit" or line.get("sublimit_of"):
        return None
    return {**line, "limit": line["limit"] + 10_000}


def more_deductible(line: Line) -> Line | None:
    if line.get("deductible_percent"):
        return None
    return {**line, "deductible": (line.get("deductible") or 0) + 700}


@often
@given(version=versions(), told=losses)
def test_a_higher_limit_never_pays_less(canada: Reference, version: Version, told: Told) -> None:
    before = whole(settled(canada, version, told))
    for more in bigger(more_limit)(version):
        assert whole(settled(canada, more, told)) >= before


@often
@given(version=versions(), told=losses)
def test_a_larger_deductible_never_pays_more(
    canada: Reference, version: Version, told: Told
) -> None:
    """Where each counts; where only the highest does, a higher one can switch another off."""
    each = {**version, "deductible_rule": "each"}
    before = whole(settled(canada, each, told))
    for more in bigger(more_deductible)(each):
        assert whole(settled(canada, more, told)) <= before


def test_of_several_deductibles_a_higher_one_can_switch_a_smaller_one_off(
    canada: Reference,
) -> None:
    """By hand: the building's limit of 1,000 hides its 700, and the contents' 250 falls away."""
    told = [{"building@hall": "5000", "contents@hall": "1000"}]
    contents = {"coverage": "contents", "limit": 5_000, "deductible": 250}
    paid = {}
    for deductible in (0, 700):
        hall = {"coverage": "building", "location": "hall", "limit": 1_000,
                "deductible": deductible}  # fmt: skip
        version = {"lines": [hall, contents], "shared_limit": None, "deductible_rule": "highest"}
        paid[deductible] = whole(settled(canada, version, told))
    assert paid == {0: Decimal(1_750), 700: Decimal(2_000)}


@often
@given(version=versions(), told=losses, amount=dollars)
def test_a_larger_shared_limit_never_pays_less(
    canada: Reference, version: Version, told: Told, amount: int
) -> None:
    before = whole(settled(canada, version, told))
    now = version["shared_limit"] or {"amount": 0, "tops_up": ["by-laws", "extra-expense"]}
    more = {**version, "shared_limit": {**now, "amount": now["amount"] + amount}}
    assert whole(settled(canada, more, told)) >= before


@often
@given(version=versions(), told=losses)
def test_the_order_in_which_losses_are_listed_does_not_matter_on_different_days(
    canada: Reference, version: Version, told: Told
) -> None:
    days = [loss.model_copy(update={"date_of_loss": DAY.replace(day=n + 1)})
            for n, loss in enumerate(happened(told))]  # fmt: skip
    setting = Setting(made(version), canada, VALUES)
    forwards = settle_year(setting, days)
    backwards = settle_year(setting, days[::-1])
    assert [s.paid.money for s in forwards] == [s.paid.money for s in backwards][::-1]
