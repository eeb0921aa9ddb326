"""The options an insurer offers beside its terms."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from decimal import Decimal
from functools import partial

from quarterday.core.figure import Node, Value
from quarterday.core.file.records import Terms
from quarterday.core.file.records.terms import EVERYWHERE, Option
from quarterday.core.money import Money
from quarterday.core.review.case import Case
from quarterday.core.review.rules.terms.evidence import fact_of
from quarterday.core.risk.choices import OptionRow
from quarterday.core.terms.option import DEDUCTIBLE, amounts_said, is_bare
from quarterday.core.words import Rate, Term, Words, words


def option_of(
    terms: Terms, coverage: str, location: str | None = None, at_least: Decimal | None = None
) -> Option | None:
    """Return the cheapest option for a coverage; one without a price comes last.

    ``location`` leaves out options for other places, ``at_least`` those with a smaller limit.
    """
    found = [
        option
        for option in terms.options
        if option.coverage == coverage
        and (location is None or option.location in {location, EVERYWHERE})
        and (at_least is None or (option.limit or Decimal(0)) >= at_least)
    ]
    return min(found, key=lambda o: (o.price is None, o.price or Decimal(0)), default=None)


def row_of(case: Case, option: Option | None) -> OptionRow | None:
    """Return what an option would change; None where nobody measured it, or there is none."""
    if option is None:
        return None
    found = (row for row in case.options if row.option == option and row.average is not None)
    return next(found, None)


def figures_of(row: OptionRow | None) -> tuple[Node, ...]:
    """Return the figures of what an option would change in an average and in a bad year."""
    return (row.average, row.bad[-1]) if row and row.average else ()


def price_of(terms: Terms, option: Option | None) -> Money | None:
    """Return what an option costs a year; None means: ask."""
    return terms.money(option.price) if option and option.price is not None else None


def a_year(price: Money) -> Words:
    """Return a yearly price as a phrase: for how much, or at no charge."""
    return words("yearly-price", case="priced" if price else "free", price=price)


def priced(price: Money | None) -> dict[str, str | Words]:
    """Return the arguments of a wording that tells a price, or that it must be asked."""
    return {"case": "ask"} if price is None else {"case": "price", "price": a_year(price)}


def amounts_of(terms: Terms, option: Option) -> Words:
    """Return an option's limit and deductible, as far as it says; it says one at least."""
    shown = amounts_said(terms, option)
    return words("option-amounts", case="-".join(shown), **shown)


def gives_back(terms: Terms | None, option: Option | None) -> dict[str, str | Words]:
    """Return the arguments of a wording that tells a priced option, or that it must be asked."""
    price = price_of(terms, option) if terms else None
    if terms is None or option is None or price is None:
        return {"case": "ask"}
    line = terms.find(option.coverage, option.location)
    same = line is not None and line.limit == option.limit
    told = option.model_copy(update={"limit": None}) if same else option
    if is_bare(told):
        return priced(price)
    return {"case": "amounts", "price": a_year(price), "amounts": amounts_of(terms, told)}


def option_facts(case: Case, terms: Terms, option: Option | None) -> tuple[Node, ...]:
    """Return an option's price, limit and deductible as facts."""
    if option is None:
        return ()
    part = f"options/{option.coverage}/{option.location}"
    return tuple(
        fact_of(case.file, terms, part, name.replace("_", "-"), value)
        for name, value in _shown(terms, option)
    )


def _shown(terms: Terms, option: Option) -> Iterator[tuple[str, Value]]:
    """Yield the fields that an option says, each as it is shown."""
    for name in ("price", "limit", *DEDUCTIBLE):
        value = getattr(option, name)
        if value is not None:
            yield name, _SHOWN.get(name, terms.money)(value)


_SHOWN: dict[str, Callable[..., Value]] = {
    "deductible_percent": Rate,
    "deductible_percent_of": partial(Term, "percent-of"),
}
