"""Provinces and territories: names, index, taxes on premiums with their dates and sources."""

from __future__ import annotations

from datetime import date, timedelta
from decimal import ROUND_HALF_UP, Decimal

import pytest
from babel import Locale

from quarterday.catalogue.load import reference
from quarterday.core.reference import Province, Reference, TaxRate

CENT = Decimal("0.01")
TAXED = ("ON", "MB", "SK", "QC", "NL")


@pytest.fixture(scope="module")
def canada() -> Reference:
    return reference()


def in_force(province: Province, day: date) -> TaxRate:
    return [rate for rate in province.tax.rates if rate.since <= day][-1]


def tax(canada: Reference, code: str, premium: str, day: date) -> Decimal:
    rate = in_force(canada.provinces[code], day).rate
    return (Decimal(premium) * rate).quantize(CENT, rounding=ROUND_HALF_UP)


def test_all_thirteen_have_their_iso_codes(canada: Reference) -> None:
    """ISO 3166-2:CA, as the independent package holidays lists the subdivisions."""
    import holidays

    assert set(canada.provinces) == set(holidays.country_holidays("CA").subdivisions)


def test_names_are_those_of_the_unicode_locale_data(canada: Reference) -> None:
    """Unicode CLDR names Canada's provinces nowhere in Babel, so names are checked for shape only:
    present in both languages and unlike each other where the languages differ."""
    assert Locale.parse("fr_CA").territories["CA"] == "Canada"
    differing = {"NL", "PE", "NS", "NB", "QC", "BC", "NT"}
    for code, province in canada.provinces.items():
        assert (province.name.en != province.name.fr) == (code in differing)


def test_a_place_without_a_series_of_its_own_uses_the_composite(canada: Reference) -> None:
    """Statistics Canada publishes none for Prince Edward Island and the territories."""
    without = {c for c, p in canada.provinces.items() if p.index_geography == "composite"}
    assert without == {"PE", "YT", "NT", "NU"}
    for code, province in canada.provinces.items():
        assert province.index_geography == ("composite" if code in without else code.lower())


def test_first_letters_of_postal_codes(canada: Reference) -> None:
    """Canada Post's first letters: from memory. D F I O Q U are never used, W and Z never first."""
    letters = "".join(province.postal_letters for province in canada.provinces.values())
    assert set(letters) == set("ABCEGHJKLMNPRSTVXY")
    assert {c for c, p in canada.provinces.items() if "X" in p.postal_letters} == {"NT", "NU"}
    assert len(letters) == len(set(letters)) + 1  # only X is shared


def test_five_provinces_tax_premiums_and_the_others_do_not(canada: Reference) -> None:
    """ON, MB, SK, QC, NL by their governments' and advisers' pages; none in NB, NS, PE (CFIB)."""
    assert {c for c, p in canada.provinces.items() if p.tax.rates} == set(TAXED)
    for code in TAXED:
        assert canada.provinces[code].tax.name is not None


@pytest.mark.parametrize(
    ("code", "day", "cents"),
    [
        ("ON", date(2026, 11, 30), "987.65"),  # 8 %: Ontario Ministry of Finance, November 2013
        ("QC", date(2026, 12, 31), "1111.11"),  # 9 %: Revenu Québec
        ("NL", date(2026, 11, 30), "1851.85"),  # 15 %: Government of Newfoundland and Labrador
        ("MB", date(2026, 11, 30), "864.20"),  # 7 %: computed from the rate
        ("SK", date(2026, 11, 30), "740.74"),  # 6 %: computed from the rate
    ],
)
def test_tax_on_a_premium_to_the_cent(canada: Reference, code: str, day: date, cents: str) -> None:
    assert tax(canada, code, "12345.67", day) == Decimal(cents)


def test_quebecs_increase_costs_39_dollars_on_4000(canada: Reference) -> None:
    """Published: "for … $4,000 in annual premiums … an additional $39 per year"
    (insurancebusinessmag, on Quebec's Bill 99, 2025 c. 27)."""
    before = tax(canada, "QC", "4000", date(2026, 12, 31))
    after = tax(canada, "QC", "4000", date(2027, 1, 1))
    assert (before, after, after - before) == (Decimal(360), Decimal(399), Decimal(39))


def test_quebec_turns_on_the_day_of_payment_and_the_others_on_the_policys_start(
    canada: Reference,
) -> None:
    """Act respecting the Québec sales tax, s. 512: the tax is due when a premium is paid, and by
    instalments pro rata to the premium paid."""
    for code in TAXED:
        turns = {rate.turns_on for rate in canada.provinces[code].tax.rates}
        assert turns == {"payment-date" if code == "QC" else "policy-start"}


@pytest.mark.parametrize(
    ("code", "day", "percent"),
    [
        ("MB", date(2012, 7, 15), "7"),  # contracts in effect after July 14, 2012 (Ryan, KPMG)
        ("MB", date(2013, 7, 1), "8"),  # Industrial Alliance, June 2013
        ("MB", date(2019, 6, 30), "8"),
        ("MB", date(2019, 7, 1), "7"),  # iA Financial Group, June 2019
        ("SK", date(2017, 8, 1), "6"),  # Saskatchewan Blue Cross, May 2017
        ("NL", date(2016, 6, 30), "0"),  # eliminated on January 1, 2008
        ("NL", date(2016, 7, 1), "15"),  # Mondaq 2016
        ("QC", date(2026, 12, 31), "9"),
        ("QC", date(2027, 1, 1), "9.975"),  # premiums paid after December 31, 2026
    ],
)
def test_a_rate_changes_on_its_day(canada: Reference, code: str, day: date, percent: str) -> None:
    assert in_force(canada.provinces[code], day).rate == Decimal(percent) / 100


@pytest.mark.parametrize("code", TAXED)
def test_there_is_one_rate_for_every_day_of_ten_years_of_claims(
    canada: Reference, code: str
) -> None:
    """No gap: each rate holds until the next, from August 2017, when the last tax began."""
    province = canada.provinces[code]
    day = date(2017, 8, 1)
    while day < date(2028, 1, 1):
        assert 0 < in_force(province, day).rate <= Decimal("0.15")
        day += timedelta(days=28)


@pytest.mark.parametrize(
    ("code", "coverage", "family"),
    [
        ("ON", None, "vehicles"),  # automobile insurance: Ministry of Finance by Ryan, 2014
        ("NL", None, "vehicles"),  # automobile since April 15, 2019: Government of NL
        ("NL", "volunteer-accident", None),  # accident and sickness: Government of NL
        ("NL", "employee-dishonesty", None),  # surety, guarantee, fidelity: Government of NL
        ("SK", "volunteer-accident", None),  # disability, accident and sickness: PwC 2018-11
        ("QC", "key-person", None),  # individual insurance of persons: Revenu Québec
        ("ON", "key-person", None),  # individual life: Ministry of Finance by Ryan, 2014
    ],
)
def test_what_is_exempt_is_exempt(
    canada: Reference, code: str, coverage: str | None, family: str | None
) -> None:
    rate = in_force(canada.provinces[code], date(2026, 11, 30))
    assert coverage is None or coverage in rate.exempt_coverages
    assert family is None or family in rate.exempt_families


@pytest.mark.parametrize("code", TAXED)
@pytest.mark.parametrize("coverage", ["building", "sewer-backup", "general-liability"])
def test_property_and_liability_are_taxed_everywhere(
    canada: Reference, code: str, coverage: str
) -> None:
    """Manitoba names flood and sewer backup as taxable (Bulletin 061 by Ryan, June 2012)."""
    for rate in canada.provinces[code].tax.rates:
        assert coverage not in rate.exempt_coverages
        assert canada.coverages[coverage].family not in rate.exempt_families


def test_exemptions_name_coverages_of_the_library(canada: Reference) -> None:
    for province in canada.provinces.values():
        for rate in province.tax.rates:
            assert set(rate.exempt_coverages) <= set(canada.coverages)


def test_newfoundland_taxed_vehicles_until_april_2019(canada: Reference) -> None:
    """Contracts entered into or renewed on or after April 15, 2019 (Government of NL)."""
    province = canada.provinces["NL"]
    assert "vehicles" not in in_force(province, date(2019, 4, 14)).exempt_families
    assert "vehicles" in in_force(province, date(2019, 4, 15)).exempt_families


def test_fees_are_not_taxed_unless_the_data_say_so(canada: Reference) -> None:
    """Ontario: reasonable financing, late and NSF fees are not taxed (Ryan, 2014)."""
    rates = [rate for p in canada.provinces.values() for rate in p.tax.rates]
    assert not any(rate.taxes_fees for rate in rates)


def test_what_is_from_memory_says_so(canada: Reference) -> None:
    """A statement nobody read in a source names no publisher but ourselves."""
    for code, province in canada.provinces.items():
        ours = province.tax.source.publisher == "Quarterday"
        assert ours == (code in {"AB", "YT", "NT", "NU"})
        assert ours == province.tax.source.title.startswith("From memory")
