"""The calculations on their own: plain data in, plain data out, no store."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Any

from quarterday.catalogue.speech import Speech
from quarterday.core.income import calc as income
from quarterday.core.premium import calc as premium
from quarterday.core.premium import calc_payments as payments
from quarterday.core.premium import calc_tables as tables
from quarterday.core.reference import Reference
from quarterday.core.risk import calc as risk
from quarterday.core.terms import calc as terms
from quarterday.core.values import calc as values
from quarterday.core.words import Words

Calculation = Callable[..., Mapping[str, Any]]
CALCULATIONS: Mapping[str, Calculation] = {
    "coinsurance": values.coinsurance,
    "index-value": values.index_value,
    "income": income.income,
    "tax": premium.tax,
    "settle": terms.settle,
    "apportion": premium.apportion,
    "credibility": risk.credibility,
    "limited-mean": risk.limited_mean,
    "apportion-table": tables.apportion_table,
    "split-change": tables.split_change,
    "instalments": payments.instalments,
    "apr": payments.apr,
    "earned": payments.earned,
}


def calculated(name: str, given: Mapping[str, Any], reference: Reference, speech: Speech) -> Any:  # noqa: ANN401 - whatever JSON can hold
    """Return the result of the calculation ``name`` with its steps spoken.

    KeyError when there is none of that name; Unusable, in a sentence, for inputs that cannot be
    used.
    """
    return _spoken(CALCULATIONS[name](given, reference), speech)


def _spoken(done: Any, speech: Speech) -> Any:  # noqa: ANN401 - whatever JSON can hold
    if isinstance(done, Words):
        return speech.say(done)
    if isinstance(done, Mapping):
        return {key: _spoken(part, speech) for key, part in done.items()}
    if isinstance(done, list | tuple):
        return [_spoken(part, speech) for part in done]
    return done
