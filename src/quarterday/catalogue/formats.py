"""Money, rates, days, numbers and lists as Canadians write them, in English and French."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date
from decimal import ROUND_HALF_UP, Decimal
from functools import lru_cache

from babel import Locale
from babel.dates import format_date
from babel.lists import format_list
from babel.numbers import NumberPattern, parse_pattern

from quarterday.core.money import Money, round_to
from quarterday.core.words import Rate

_LOCALES = {"en": "en_CA", "fr": "fr_CA"}
_MOST_DECIMALS = 6
MINUS = "\N{MINUS SIGN}"  # as wide as a plus sign
_KEPT = 20_000  # what was written once is written again on the next page


@lru_cache(maxsize=8)
def locale(language: str) -> Locale:
    """Return the Canadian locale of ``en`` or ``fr``; LookupError for another language."""
    if language not in _LOCALES:
        raise LookupError(f"{language!r} is not a language Quarterday speaks; use en or fr.")
    return Locale.parse(_LOCALES[language])


@lru_cache(maxsize=64)
def _currency_pattern(language: str, decimals: int) -> NumberPattern:
    standard = locale(language).currency_formats["standard"].pattern
    return parse_pattern(standard.replace("0.00", "0" + "." * bool(decimals) + "0" * decimals))


@lru_cache(maxsize=64)
def _number_pattern(decimals: int, sign: str) -> NumberPattern:
    after = "." + "#" * decimals if decimals else ""
    return parse_pattern(f"#,##0{after}{sign}")


@lru_cache(maxsize=_KEPT)
def money(amount: Money, language: str, *, cents: bool | None = None) -> str:
    """Return ``amount`` with its currency sign, rounded half-up to the cent.

    Cents are shown when there are any; ``cents`` True shows them always, False never.
    """
    exact = round_to(amount.amount, Decimal(1) if cents is False else Decimal("0.01"))
    show = cents if cents is not None else exact != exact.to_integral_value()
    pattern = _currency_pattern(language, 2 if show else 0)
    return str(
        pattern.apply(exact, locale(language), currency=amount.currency, currency_digits=False)
    )


def _rounded(value: Decimal, decimals: int) -> Decimal:
    """Return ``value`` rounded half-up, as Quarterday rounds everywhere (Babel rounds to even)."""
    return value.quantize(Decimal(1).scaleb(-decimals), rounding=ROUND_HALF_UP)


@lru_cache(maxsize=_KEPT)
def rate(ratio: Rate, language: str) -> str:
    """Return a ratio as a percentage with up to ``ratio.decimals`` decimals."""
    sign = "\N{NO-BREAK SPACE}%" if language == "fr" else "%"
    pattern = _number_pattern(ratio.decimals, sign)
    return str(pattern.apply(_rounded(ratio.value, ratio.decimals + 2), locale(language)))


def change(ratio: Rate, language: str) -> str:
    """Return a ratio as a percentage that stands under others: always its decimals and its sign."""
    sign = "\N{NO-BREAK SPACE}%" if language == "fr" else "%"
    exact = _rounded(ratio.value, ratio.decimals + 2)
    pattern = parse_pattern(f"#,##0.{'0' * ratio.decimals}{sign}")
    said = str(pattern.apply(abs(exact), locale(language)))
    return said if exact == 0 else f"{'+' if exact > 0 else MINUS}{said}"


@lru_cache(maxsize=_KEPT)
def number(value: Decimal | int, language: str, decimals: int = _MOST_DECIMALS) -> str:
    """Return a number with its groups of three and up to ``decimals`` decimals."""
    pattern = _number_pattern(decimals, "")
    return str(pattern.apply(_rounded(Decimal(value), decimals), locale(language)))


@lru_cache(maxsize=_KEPT)
def day(when: date, language: str) -> str:
    """Return a date in full; the first of a month is "1er" in French."""
    return _first(format_date(when, "long", locale=locale(language)), when, language)


@lru_cache(maxsize=_KEPT)
def short_day(when: date, language: str) -> str:
    """Return a date as short as its language writes it; "1er" as in full."""
    return _first(format_date(when, "medium", locale=locale(language)), when, language)


def _first(text: str, when: date, language: str) -> str:
    return text.replace("1 ", "1er ", 1) if language == "fr" and when.day == 1 else text


def listing(items: Sequence[str], language: str) -> str:
    """Return items as a list in a sentence: "a, b and c"."""
    return format_list(list(items), locale=locale(language))
