"""The tax on premiums: rates, what is exempt, the base, the rounding, and which day decides."""

from __future__ import annotations

from datetime import date
from decimal import Decimal

import pytest
from hypothesis import given
from hypothesis import strategies as st

from quarterday.core.figure import Figure
from quarterday.core.money import Money
from quarterday.core.premium.tax import TaxResult, percentage, tax
from quarterday.core.reference import Cited, Family, Province, ProvinceTax, Reference, TaxRate
from quarterday.core.words import Rate

NOTHING = Money(Decimal(0))
AUTUMN_2026 = date(2026, 10, 1)


def cad(amount: str) -> Money:
    return Money(Decimal(amount))


def of(
    canada: Reference, province: str, amount: str, start: date = AUTUMN_2026,
    pay_on: date | None = None, family: Family | None = "property", coverage: str = "building",
) -> TaxResult:  # fmt: skip
    line = (family, coverage, cad(amount))
    return tax(canada.provinces[province], start, pay_on or start, [line], NOTHING)


@pytest.mark.parametrize(
    ("province", "premium", "expected"),
    [
        # Rates as the shipped reference data cite them (Ontario Ministry of Finance, Revenu Québec,
        # Government of Newfoundland and Labrador, Manitoba Bulletin 061, Saskatchewan PST-73); the
        # cents of 12,345.67 are arithmetic on the published rate.
        ("ON", "12345.67", "987.65"),
        ("QC", "12345.67", "1111.11"),
        ("NL", "12345.67", "1851.85"),
        ("MB", "12345.67", "864.20"),
        ("SK", "12345.67", "740.74"),
        # "NO retail sales tax on insurance premiums in New Brunswick, Prince Edward Island or Nova
        # Scotia" (Canadian Federation of Independent Business, petition page).
        ("NB", "12345.67", "0.00"),
        ("NS", "12345.67", "0.00"),
        ("PE", "12345.67", "0.00"),
        # None payable by the insured on licensed insurers' premiums: from memory.
        ("BC", "12345.67", "0.00"),
        ("AB", "12345.67", "0.00"),
        ("YT", "12345.67", "0.00"),
        ("NT", "12345.67", "0.00"),
        ("NU", "12345.67", "0.00"),
    ],
)
def test_a_premium_bears_the_tax_of_its_province(
    canada: Reference, province: str, premium: str, expected: str
) -> None:
    result = of(canada, province, premium)
    assert result.tax.money == cad(expected)
    assert result.is_known


def test_quebec_takes_360_of_4000_in_2026_and_399_in_2027(canada: Reference) -> None:
    """Source: insurancebusinessmag.com, "for … $4,000 in annual premiums … an additional $39"."""
    before = of(canada, "QC", "4000", start=date(2026, 12, 31))
    after = of(canada, "QC", "4000", start=date(2027, 1, 1))
    assert before.tax.money == cad("360.00")
    assert after.tax.money == cad("399.00")


def test_in_quebec_the_day_of_payment_decides_and_not_the_start_of_the_policy(
    canada: Reference,
) -> None:
    """Source: Bill 99 (2025, c. 27): premiums paid after 2026-12-31."""
    start = date(2026, 12, 1)
    first = of(canada, "QC", "1000", start, pay_on=date(2026, 12, 31))
    second = of(canada, "QC", "1000", start, pay_on=date(2027, 1, 1))
    assert (first.tax.money, second.tax.money) == (cad("90.00"), cad("99.75"))


def test_a_quebec_policy_that_straddles_the_change_says_so(canada: Reference) -> None:
    straddles = of(canada, "QC", "1000", start=date(2026, 12, 1))
    assert straddles.later is not None
    assert straddles.later.value == Rate(Decimal("0.09975"), 3)
    assert straddles.tax.caution is not None
    assert straddles.tax.caution.id == "money-tax-later"


@pytest.mark.parametrize("start", [date(2026, 1, 1), date(2027, 1, 1)])
def test_a_quebec_policy_all_paid_under_one_rate_says_nothing(
    canada: Reference, start: date
) -> None:
    """A policy of 1 January 2026 ends on the day the rate begins: no payment of it comes later."""
    result = of(canada, "QC", "1000", start)
    assert result.later is None
    assert result.tax.caution is None


def test_elsewhere_the_start_of_the_policy_decides_whenever_it_is_paid(canada: Reference) -> None:
    """Source: Manitoba RST 7 % on policies effective after 2012-07-14 (Bulletin 061)."""
    early, late = date(2012, 7, 14), date(2012, 7, 15)
    assert not of(canada, "MB", "1000", start=early, pay_on=date(2012, 9, 1)).is_known
    assert of(canada, "MB", "1000", start=late).tax.money == cad("70.00")


def test_before_the_first_known_rate_no_tax_is_claimed_and_the_result_says_it_is_not_known(
    canada: Reference,
) -> None:
    result = of(canada, "ON", "1000", start=date(2005, 1, 1))
    assert not result.is_known
    assert result.rate is None
    assert not result.tax.money


@pytest.mark.parametrize(
    ("province", "family", "coverage", "expected"),
    [
        # Ontario: automobile exempt (Ministry of Finance, "Insurance and Benefits Plans", 2013).
        ("ON", "vehicles", "non-owned-vehicle", "0.00"),
        ("ON", "liability", "general-liability", "80.00"),
        # Saskatchewan: accident and sickness exempt (Leader-Post, 2018-02-26).
        ("SK", "people", "volunteer-accident", "0.00"),
        ("SK", "vehicles", "non-owned-vehicle", "60.00"),
        # Newfoundland and Labrador: automobile exempt since 2019-04-15, fidelity exempt (Ryan).
        ("NL", "vehicles", "non-owned-vehicle", "0.00"),
        ("NL", "crime", "employee-dishonesty", "0.00"),
        # Manitoba: liability and sewer backup are taxable (Bulletin 061).
        ("MB", "property", "sewer-backup", "70.00"),
    ],
)
def test_what_a_province_exempts_bears_no_tax(
    canada: Reference, province: str, family: Family, coverage: str, expected: str
) -> None:
    result = of(canada, province, "1000", family=family, coverage=coverage)
    assert result.tax.money == cad(expected)


def test_a_line_of_unknown_family_is_taxed(canada: Reference) -> None:
    assert of(canada, "ON", "1000", family=None, coverage="odd").tax.money == cad("80.00")


def test_the_tax_is_rounded_once_on_the_whole_base_and_not_line_by_line(canada: Reference) -> None:
    """Three lines of 0.07 at 8 %: line by line 0.01 + 0.01 + 0.01, on the base 0.0168 = 0.02."""
    lines: list[tuple[Family | None, str, Money]] = [("property", "building", cad("0.07"))] * 3
    result = tax(canada.provinces["ON"], AUTUMN_2026, AUTUMN_2026, lines, NOTHING)
    assert result.base.money == cad("0.21")
    assert result.tax.money == cad("0.02")


def test_half_a_cent_of_tax_is_rounded_up(canada: Reference) -> None:
    """0.50 at 9 % is 0.045; banker's rounding would give 0.04."""
    assert of(canada, "QC", "0.50").tax.money == cad("0.05")


def test_fees_are_taxed_only_where_the_province_taxes_them(canada: Reference) -> None:
    """Ontario does not tax reasonable financing fees (Ministry of Finance, 2013)."""
    lines: list[tuple[Family | None, str, Money]] = [("property", "building", cad("1000"))]
    ontario = canada.provinces["ON"]
    cited = Cited(title="test", publisher="test", checked_on=AUTUMN_2026)
    rate = TaxRate(
        since=date(2020, 1, 1), rate=Decimal("0.10"), turns_on="policy-start", taxes_fees=True,
        source=cited,
    )  # fmt: skip
    taxing = ontario.model_copy(update={"tax": ProvinceTax(rates=(rate,), source=cited)})
    assert tax(ontario, AUTUMN_2026, AUTUMN_2026, lines, cad("50")).tax.money == cad("80.00")
    assert tax(taxing, AUTUMN_2026, AUTUMN_2026, lines, cad("50")).tax.money == cad("105.00")


def test_the_tax_carries_its_rate_with_source_and_its_base(canada: Reference) -> None:
    result = of(canada, "ON", "1000")
    assert result.rate is not None
    assert result.rate.value == Rate(Decimal("0.08"), 0)
    assert result.rate.source.publisher
    assert result.tax.inputs == (result.base, result.rate)
    assert isinstance(result.tax, Figure)


@pytest.mark.parametrize(
    ("ratio", "decimals"), [("0.09975", 3), ("0.08", 0), ("0.1", 0), ("0.125", 1), ("1", 0)]
)
def test_a_rate_is_read_with_the_decimals_it_has(ratio: str, decimals: int) -> None:
    assert percentage(Decimal(ratio)) == Rate(Decimal(ratio), decimals)


def _provinces(canada: Reference) -> list[Province]:
    return list(canada.provinces.values())


@given(
    st.lists(st.integers(-(10**7), 10**8).map(lambda n: Decimal(n).scaleb(-2)), max_size=8),
    st.dates(date(2017, 9, 1), date(2030, 1, 1)),
)
def test_the_tax_is_within_half_a_cent_of_base_times_rate_in_every_province(
    canada: Reference, amounts: list[Decimal], start: date
) -> None:
    lines: list[tuple[Family | None, str, Money]] = [
        ("property", "building", Money(a)) for a in amounts
    ]
    for province in _provinces(canada):
        result = tax(province, start, start, lines, NOTHING)
        rate = result.rate.value.value if result.rate and isinstance(result.rate.value, Rate) else 0
        assert abs(result.tax.money.amount - sum(amounts) * rate) <= Decimal("0.005")
