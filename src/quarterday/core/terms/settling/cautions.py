"""What a settlement takes for granted, or cannot know, each said in a sentence."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence

from quarterday.core.file.records.terms import Coverage
from quarterday.core.terms.losses.components import COMPONENTS
from quarterday.core.terms.settling.asked import Asked
from quarterday.core.terms.settling.routing import Answer
from quarterday.core.terms.settling.shares import asks_coinsurance, lines_insured
from quarterday.core.words import Term, Words, words

Test = Callable[[Asked, Answer, Coverage], bool]


def cautions(
    asked: Asked, items: Sequence[int], moved: frozenset[tuple[str, str]]
) -> Iterator[Words]:
    """Yield the cautions about these items, each once.

    ``moved`` holds what moved money: the wording of a step and the coverage it is about.
    """
    told: dict[Words, None] = {}
    for number in items:
        answer = asked.answers[number]
        if answer.why_not == "damages-unstated":
            told[_about("damages", answer.coverage)] = None
        elif answer.line is not None:
            told |= dict.fromkeys(_of(asked, answer, answer.line))
    for said, coverage in sorted(moved):
        line = asked.terms.find(coverage) or _first(asked, coverage)
        if said == "coinsurance" and line is not None and _order_unknown(line):
            told[_about("order", coverage)] = None
    if asked.terms.deductible_rule is None and any(said == "highest" for said, _ in moved):
        told[words("settling-caution-highest")] = None
    yield from told


def _first(asked: Asked, coverage: str) -> Coverage | None:
    return next((line for line in asked.terms.coverages if line.coverage == coverage), None)


def _order_unknown(line: Coverage) -> bool:
    has_deductible = bool(line.deductible or line.deductible_percent)
    return line.settling_order is None and has_deductible


def _about(id: str, coverage: str) -> Words:
    return words(f"settling-caution-{id}", coverage=Term("coverage", coverage))


def _of(asked: Asked, answer: Answer, line: Coverage) -> Iterator[Words]:
    for id, holds in _TESTS.items():
        if holds(asked, answer, line):
            yield _about(id, line.coverage)


def _value(asked: Asked, answer: Answer, line: Coverage) -> bool:
    return asks_coinsurance(answer) and any(
        insured.place in asked.values.assumed for insured in lines_insured(asked, line)
    )


def _income(asked: Asked, answer: Answer, line: Coverage) -> bool:
    """Tell whether a clause of income could mean either of two measures."""
    is_share = asks_coinsurance(answer) and line.coinsurance_stated_amount is None
    return is_share and line.place in asked.values.unstated


def _wear(asked: Asked, answer: Answer, line: Coverage) -> bool:
    place = answer.item.component, answer.item.place
    return line.basis == "actual-cash-value" and place in asked.values.aged


def _functional(_: Asked, answer: Answer, line: Coverage) -> bool:
    return line.basis == "functional" and COMPONENTS[answer.item.component].kind == "property"


def _defence(_: Asked, answer: Answer, line: Coverage) -> bool:
    return COMPONENTS[answer.item.component].kind == "defence" and line.defence is None


def _no_retroactive_date(_: Asked, __: Answer, line: Coverage) -> bool:
    return bool(line.claims_made) and line.retroactive_date is None


def _not_qualified(_: Asked, __: Answer, line: Coverage) -> bool:
    return line.qualified is False


_TESTS: dict[str, Test] = {
    "value": _value,
    "income": _income,
    "wear": _wear,
    "functional": _functional,
    "defence": _defence,
    "retroactive": _no_retroactive_date,
    "qualified": _not_qualified,
}
