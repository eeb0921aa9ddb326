"""Money, rates, dates and lists as Canadians write them.

English: 1,234.56; French: 1 234,56 $ with spaces that do not break (Unicode CLDR locales en_CA and
fr_CA; for the euro and dollar sign after the amount, the Office québécois de la langue française).
"""

from __future__ import annotations

from datetime import date, timedelta
from decimal import ROUND_HALF_UP, Decimal

import pytest
from babel.numbers import format_currency, format_decimal, parse_decimal
from hypothesis import given
from hypothesis import strategies as st

from quarterday.catalogue import formats
from quarterday.core.money import Money
from quarterday.core.words import Rate

NB = "\N{NO-BREAK SPACE}"
AMOUNTS = st.decimals(min_value=-(10**12), max_value=10**12, places=2)


def cad(text: str) -> Money:
    return Money(Decimal(text))


@pytest.mark.parametrize(
    ("amount", "en", "fr"),
    [
        ("1234.56", "$1,234.56", f"1{NB}234,56{NB}$"),
        ("412000", "$412,000", f"412{NB}000{NB}$"),
        ("0", "$0", f"0{NB}$"),
        ("0.05", "$0.05", f"0,05{NB}$"),
        ("1234567.50", "$1,234,567.50", f"1{NB}234{NB}567,50{NB}$"),
        ("-39", "-$39", f"-39{NB}$"),
    ],
)
def test_money_has_its_sign_and_cents_only_when_there_are_any(
    amount: str, en: str, fr: str
) -> None:
    assert formats.money(cad(amount), "en") == en
    assert formats.money(cad(amount), "fr") == fr


def test_cents_can_be_asked_for_or_left_out() -> None:
    assert formats.money(cad("1234"), "en", cents=True) == "$1,234.00"
    assert formats.money(cad("1234.50"), "en", cents=False) == "$1,235"
    assert formats.money(cad("1234.50"), "fr", cents=False) == f"1{NB}235{NB}$"


def test_money_rounds_half_up_where_it_is_shown() -> None:
    """70,312.50 to the dollar is 70,313, and 0.125 is 0.13, never half to even."""
    assert formats.money(cad("70312.50"), "en", cents=False) == "$70,313"
    assert formats.money(cad("0.125"), "en") == "$0.13"


def test_another_currency_is_told_apart() -> None:
    assert formats.money(Money(Decimal(100), "USD"), "en") == "US$100"
    assert formats.money(Money(Decimal(100), "USD"), "fr") == f"100{NB}$ US".replace(" ", NB)


@given(AMOUNTS)
def test_money_with_cents_is_what_the_library_writes(amount: Decimal) -> None:
    """Babel's own currency formatting, an independent path through the same locale data."""
    for language, locale in (("en", "en_CA"), ("fr", "fr_CA")):
        said = formats.money(Money(amount), language, cents=True)
        assert said == format_currency(amount, "CAD", locale=locale)


@given(st.decimals(min_value=-(10**9), max_value=10**9, places=4))
def test_a_number_reads_back_as_itself(value: Decimal) -> None:
    for language, locale in (("en", "en_CA"), ("fr", "fr_CA")):
        assert parse_decimal(formats.number(value, language), locale=locale) == value


@given(st.integers(min_value=-(10**12), max_value=10**12))
def test_a_whole_number_is_what_the_library_writes(value: int) -> None:
    assert formats.number(value, "en") == format_decimal(value, locale="en_CA")
    assert formats.number(value, "fr") == format_decimal(value, locale="fr_CA")


def test_a_number_shows_the_decimals_it_is_allowed() -> None:
    assert formats.number(Decimal("1234.56789"), "en", 2) == "1,234.57"
    assert formats.number(Decimal("0.5"), "fr") == "0,5"
    assert formats.number(Decimal("2.500"), "en") == "2.5"
    assert formats.number(Decimal(2) / 3, "en") == "0.666667"


@pytest.mark.parametrize(
    ("ratio", "decimals", "en", "fr"),
    [
        ("0.08", 1, "8%", f"8{NB}%"),
        ("0.09975", 3, "9.975%", f"9,975{NB}%"),
        ("0.09975", 1, "10%", f"10{NB}%"),
        ("-0.1234", 1, "-12.3%", f"-12,3{NB}%"),
        ("1", 0, "100%", f"100{NB}%"),
        ("0.0005", 1, "0.1%", f"0,1{NB}%"),
        ("12.345", 1, "1,234.5%", f"1{NB}234,5{NB}%"),
    ],
)
def test_a_rate_is_a_percentage_with_up_to_its_decimals(
    ratio: str, decimals: int, en: str, fr: str
) -> None:
    """9 % becomes 9.975 % in Quebec on 2027-01-01: three decimals must be sayable."""
    rate = Rate(Decimal(ratio), decimals)
    assert formats.rate(rate, "en") == en
    assert formats.rate(rate, "fr") == fr


@given(st.decimals(min_value=-10, max_value=10, places=6), st.integers(min_value=0, max_value=4))
def test_a_rate_rounds_half_up(ratio: Decimal, decimals: int) -> None:
    said = parse_decimal(formats.rate(Rate(ratio, decimals), "en").rstrip("%"), locale="en_CA")
    unit = Decimal(1).scaleb(-decimals)
    assert said == (ratio * 100).quantize(unit, rounding=ROUND_HALF_UP)


@pytest.mark.parametrize(
    ("ratio", "en", "fr"),
    [
        ("0.198", "+19.8%", f"+19,8{NB}%"),
        ("0.02", "+2.0%", f"+2,0{NB}%"),
        ("-0.108", "−10.8%", f"−10,8{NB}%"),
        ("0.0004", "0.0%", f"0,0{NB}%"),
        ("12.5", "+1,250.0%", f"+1{NB}250,0{NB}%"),
    ],
)
def test_a_change_has_its_sign_and_as_many_decimals_as_its_neighbours(
    ratio: str, en: str, fr: str
) -> None:
    """A minus sign is as wide as a plus (the Unicode standard's mathematical operators)."""
    assert formats.change(Rate(Decimal(ratio)), "en") == en
    assert formats.change(Rate(Decimal(ratio)), "fr") == fr


def test_a_date_is_written_out() -> None:
    assert formats.day(date(2026, 11, 25), "en") == "November 25, 2026"
    assert formats.day(date(2026, 11, 25), "fr") == "25 novembre 2026"


def test_the_first_of_a_month_is_1er_in_french() -> None:
    """Office québécois de la langue française: 1er janvier, but 2 janvier, 11 and 21 janvier."""
    assert formats.day(date(2027, 1, 1), "fr") == "1er janvier 2027"
    assert formats.day(date(2027, 1, 1), "en") == "January 1, 2027"
    assert formats.day(date(2027, 1, 11), "fr") == "11 janvier 2027"
    assert formats.day(date(2027, 1, 21), "fr") == "21 janvier 2027"


@given(st.dates(min_value=date(1900, 1, 1), max_value=date(2200, 1, 1)))
def test_two_days_are_never_written_the_same(day: date) -> None:
    for language in ("en", "fr"):
        assert formats.day(day, language) != formats.day(day + timedelta(days=1), language)
        assert str(day.year) in formats.day(day, language)


def test_a_short_day_is_as_the_language_writes_it() -> None:
    """CLDR en_CA and fr_CA, medium."""
    assert formats.short_day(date(2027, 1, 31), "en") == "Jan 31, 2027"
    assert formats.short_day(date(2027, 1, 31), "fr") == "31 janv. 2027"
    assert formats.short_day(date(2027, 2, 1), "en") == "Feb 1, 2027"


@pytest.mark.parametrize(
    ("day", "said"),
    [
        (date(2027, 2, 1), "1er févr. 2027"),
        (date(2027, 2, 11), "11 févr. 2027"),
        (date(2027, 2, 21), "21 févr. 2027"),
        (date(2027, 1, 1), "1er janv. 2027"),
    ],
)
def test_the_first_of_a_month_is_an_ordinal_in_french(day: date, said: str) -> None:
    """Banque de dépannage linguistique (OQLF), "date": only the first day is an ordinal; memory."""
    assert formats.short_day(day, "fr") == said


def test_a_list_ends_with_and() -> None:
    """CLDR en_CA has no comma before "and"."""
    assert formats.listing(["a", "b", "c"], "en") == "a, b and c"
    assert formats.listing(["a", "b", "c"], "fr") == "a, b et c"
    assert formats.listing(["a", "b"], "fr") == "a et b"
    assert formats.listing(["a"], "en") == "a"
    assert formats.listing([], "en") == ""


def test_a_language_that_is_not_spoken_is_refused() -> None:
    with pytest.raises(LookupError, match="'de' is not a language Quarterday speaks; use en or fr"):
        formats.locale("de")
