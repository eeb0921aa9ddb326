"""A made book is realistic, the same for the same seed, and holds nobody twice."""

from __future__ import annotations

import math
import re
from collections import Counter
from collections.abc import Iterator, Sequence
from datetime import date
from decimal import Decimal
from statistics import median
from typing import TypeVar

import pytest
from stdnum.ca import bn

from quarterday.catalogue.load import reference
from quarterday.core.file.records import (
    Authority,
    Building,
    Claim,
    Contact,
    Interest,
    Organisation,
    Record,
    Terms,
    Valuation,
)
from quarterday.core.file.records.terms import EVERYWHERE
from quarterday.invent.account import Account
from quarterday.invent.book import make_book
from quarterday.invent.chance import naming

AS_OF = date(2026, 11, 25)
FILES = 1500
Book = Sequence[Account]
R = TypeVar("R", bound=Record)


@pytest.fixture(scope="module")
def book() -> Book:
    return tuple(make_book(FILES, seed=1, as_of=AS_OF))


def all_of(book: Book, kind: type[R]) -> Iterator[tuple[str, R]]:
    for account in book:
        yield from ((account.id, r) for r in account.records if isinstance(r, kind))


def within(share: float, expected: float, many: int) -> bool:
    """Tell whether a share lies within four standard errors of what is expected."""
    return abs(share - expected) < 4 * math.sqrt(expected * (1 - expected) / many)


def test_the_same_seed_makes_the_same_accounts() -> None:
    assert list(make_book(30, 3, AS_OF)) == list(make_book(30, 3, AS_OF))


def test_another_seed_makes_other_accounts() -> None:
    pairs = zip(make_book(30, 3, AS_OF), make_book(30, 4, AS_OF), strict=True)
    assert all(one.records != other.records for one, other in pairs)


def test_an_account_does_not_depend_on_how_many_are_made(book: Book) -> None:
    assert tuple(make_book(20, 1, AS_OF)) == book[:20]


def test_a_book_is_made_one_account_at_a_time() -> None:
    endless = make_book(10**9, 1, AS_OF)
    assert next(endless).id == "B000001"


def test_two_thirds_of_the_claims_are_water(book: Book) -> None:
    # Common practice, no source: about two thirds of claims by number are water.
    claims = [claim for _, claim in all_of(book, Claim)]
    water = sum(claim.cause in reference().water_causes for claim in claims) / len(claims)
    assert abs(water - 2 / 3) < 0.02


def test_a_file_has_as_many_buildings_claims_and_coverages_as_the_measured_book(
    book: Book,
) -> None:
    # 7,000 files, 15,000 buildings, 60,000 claims, 150,000 coverages: the size to be worked with.
    buildings = len(list(all_of(book, Building))) / FILES
    claims = len(list(all_of(book, Claim))) / FILES
    coverages = sum(len(terms.coverages) for _, terms in all_of(book, Terms)) / FILES
    assert buildings == pytest.approx(15 / 7, rel=0.06)
    assert claims == pytest.approx(60 / 7, rel=0.1)
    assert coverages == pytest.approx(150 / 7, rel=0.06)


def test_few_large_claims_make_much_of_the_cost(book: Book) -> None:
    # Heavy tails: common practice, no source. Were claims exponential, the largest hundredth would
    # make 5.6 % of the cost: the integral of the upper 1 % is 0.01 × (1 + ln 100).
    amounts = sorted(float(claim.incurred) for _, claim in all_of(book, Claim))
    largest = sum(amounts[-len(amounts) // 100 :]) / sum(amounts)
    assert largest > 2 * 0.01 * (1 + math.log(100))
    assert sum(amounts) / len(amounts) > 1.7 * median(amounts)


def test_claims_vary_more_between_files_than_chance_alone_would(book: Book) -> None:
    # Poisson counts of one mean have a variance equal to their mean.
    counts = Counter(id for id, _ in all_of(book, Claim))
    each = [counts[account.id] for account in book]
    mean = sum(each) / FILES
    assert sum((n - mean) ** 2 for n in each) / FILES > 2 * mean


@pytest.mark.parametrize(("province", "share"), [("ON", 0.39), ("QC", 0.222), ("BC", 0.138)])
def test_files_are_spread_as_people_are(book: Book, province: str, share: float) -> None:
    # Shares of the population from memory.
    found = sum(org.province == province for _, org in all_of(book, Organisation)) / FILES
    assert within(found, share, FILES)


def test_most_of_quebec_is_french_and_hardly_anybody_in_the_west(book: Book) -> None:
    orgs = [org for _, org in all_of(book, Organisation)]
    french = [org.language == "fr" for org in orgs if org.province == "QC"]
    assert within(sum(french) / len(french), 0.86, len(french))
    assert {org.language for org in orgs if org.province in {"BC", "AB", "SK"}} == {"en"}


def test_names_are_unique_in_every_class_and_language() -> None:
    for language, kinds in (("en", ("worship", "camp", "school")), ("fr", ("worship", "mission"))):
        made = [naming.organisation(n, kind, language)[0] for kind in kinds for n in range(1, 9000)]
        assert len(set(made)) == len(made)


def test_names_mail_and_registration_numbers_are_unique_in_a_book(book: Book) -> None:
    orgs = [org for _, org in all_of(book, Organisation)]
    numbers = [org.registration_number for org in orgs if org.registration_number]
    assert len({org.name for org in orgs}) == FILES
    assert len(set(numbers)) == len(numbers)
    domains = {(c.email or "").partition("@")[2] for _, c in all_of(book, Contact)}
    assert len(domains) == FILES


def test_registration_numbers_are_right_but_for_a_few_and_never_anybodys(book: Book) -> None:
    # python-stdnum checks the nine digits; that no real number begins with zero is from memory.
    numbers = [o.registration_number for _, o in all_of(book, Organisation)]
    known = [number for number in numbers if number]
    wrong = sum(not bn.is_valid(number[:9]) for number in known)
    assert 0 < wrong < 0.04 * len(known)
    assert all(re.fullmatch(r"01\d{7}RR0001", number) for number in known)


def test_telephones_and_mail_cannot_be_anybodys(book: Book) -> None:
    # 555-0100 to 555-0199 are kept for fiction (from memory); example.org by RFC 2606.
    for _, contact in all_of(book, Contact):
        assert re.fullmatch(r"\d{3}-555-01\d\d", contact.phone or "")
        assert re.fullmatch(r"[a-z.]+@b\d{6}\.example\.org", contact.email or "")


def test_every_id_names_something_that_exists(book: Book) -> None:
    known = reference()
    for account in book:
        buildings = {r.id for r in account.records if isinstance(r, Building)} | {EVERYWHERE}
        people = {r.id for r in account.records if isinstance(r, Contact)}
        for record in account.records:
            if isinstance(record, Terms):
                assert {c.location for c in record.coverages} <= buildings
                assert {c.coverage for c in record.coverages} <= set(known.coverages)
            elif isinstance(record, Claim):
                assert (record.location or EVERYWHERE) in buildings
                assert record.cause in known.causes
            elif isinstance(record, Valuation):
                assert record.building in buildings
            elif isinstance(record, Interest):
                assert (record.location or EVERYWHERE) in buildings
            elif isinstance(record, Authority):
                assert record.contact in people


def test_premium_tables_add_up(book: Book) -> None:
    for _, terms in all_of(book, Terms):
        stated = {t.of: t.amount for t in terms.totals if t.id == EVERYWHERE}
        premiums = sum((cell.amount for cell in terms.premiums), Decimal(0))
        assert stated["subtotal"] == premiums
        assert stated["total"] == premiums + stated["tax"]


def test_renewals_fill_the_year_and_near_ones_have_an_offer(book: Book) -> None:
    for account in book:
        terms = [r for r in account.records if isinstance(r, Terms)]
        (issued,) = (t for t in terms if t.stage == "issued")
        assert 0 < (issued.end - AS_OF).days <= 366
        offered = [t.start for t in terms if t.stage == "offered"]
        assert offered == ([issued.end] if (issued.end - AS_OF).days <= 90 else [])
    months = Counter(t.end.month for _, t in all_of(book, Terms) if t.stage == "issued")
    assert min(months.values()) > 0.5 * FILES / 12


def test_no_property_claim_costs_more_than_what_is_insured(book: Book) -> None:
    for account in book:
        issued = next(r for r in account.records if isinstance(r, Terms) and r.stage == "issued")
        insured: Counter[str] = Counter()
        for line in issued.coverages:
            if line.coverage in {"building", "contents"}:
                insured[line.location] += int(line.limit or 0)
        for claim in account.records:
            if isinstance(claim, Claim) and claim.location:
                assert claim.incurred <= max(50, insured[claim.location])


def test_valuations_are_of_all_ages_and_none_lies_in_the_future(book: Book) -> None:
    ages = [(AS_OF - v.valued_on).days / 365 for _, v in all_of(book, Valuation)]
    assert min(ages) >= 0
    assert 0.2 < sum(age > 5 for age in ages) / len(ages) < 0.6
