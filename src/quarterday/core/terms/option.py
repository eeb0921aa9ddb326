"""What an option of the insurer changes: the line it makes, and its deductible in words."""

from __future__ import annotations

from quarterday.core.file.records import Terms
from quarterday.core.file.records.terms import PERCENT_DEDUCTIBLE, Coverage, Option
from quarterday.core.money import Money
from quarterday.core.words import Rate, Term, Words, words

DEDUCTIBLE = ("deductible", *PERCENT_DEDUCTIBLE)


def says_deductible(option: Option) -> bool:
    """Tell whether an option says anything about a deductible."""
    return any(getattr(option, name) is not None for name in DEDUCTIBLE)


def is_bare(option: Option) -> bool:
    """Tell whether an option names neither a limit nor a deductible."""
    return option.limit is None and not says_deductible(option)


def without_deductible(option: Option) -> Option:
    """Return an option as if it said nothing about a deductible."""
    return option.model_copy(update=dict.fromkeys(DEDUCTIBLE))


def line_with(line: Coverage | None, option: Option) -> Coverage:
    """Return what ``line`` becomes at the option's place when the option is taken.

    An amount as deductible takes the place of a percentage, and the reverse. What an option does
    not say, a percentage's bounds among it, stays as the line has it.
    """
    found = line or Coverage(coverage=option.coverage, location=option.location)
    said = {name: getattr(option, name) for name in ("limit", *DEDUCTIBLE)}
    known = {name: value for name, value in said.items() if value is not None}
    gone = PERCENT_DEDUCTIBLE if "deductible" in known else ("deductible",)
    other = dict.fromkeys(gone) if says_deductible(option) else {}
    return found.model_copy(update={"location": option.location, **other, **known})


def changes_deductible(line: Coverage, option: Option) -> bool:
    """Tell whether taking an option gives ``line`` another deductible."""
    taken = line_with(line, option)
    return any(getattr(taken, name) != getattr(line, name) for name in DEDUCTIBLE)


def deductible_said(terms: Terms, of: Coverage | Option) -> Money | Words | None:
    """Return a deductible as people say it: an amount, or a percentage with what bounds it."""
    if of.deductible is not None:
        return terms.money(of.deductible)
    if all(getattr(of, name) is None for name in PERCENT_DEDUCTIBLE):
        return None
    bounds = {"least": of.deductible_minimum, "most": of.deductible_maximum}
    known = {name: terms.money(amount) for name, amount in bounds.items() if amount is not None}
    return words("deductible-share", case="-".join(known) or "alone", share=_share(of), **known)


def _share(of: Coverage | Option) -> Words:
    """Return the percentage and what it is of; an option may leave it as the line has it."""
    if of.deductible_percent is None:
        return words("deductible-share-same")
    percent = Rate(of.deductible_percent)
    if of.deductible_percent_of is None:
        return words("deductible-share-plain", percent=percent)
    return words("deductible-share-of", percent=percent,
                 of=Term("percent-of", of.deductible_percent_of))  # fmt: skip


def amounts_said(terms: Terms, of: Coverage | Option) -> dict[str, Money | Words]:
    """Return the ``limit`` and ``deductible`` that a line or option names, as people say them."""
    limit = None if of.limit is None else terms.money(of.limit)
    said = {"limit": limit, "deductible": deductible_said(terms, of)}
    return {name: amount for name, amount in said.items() if amount is not None}
