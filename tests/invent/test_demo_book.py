"""The demo book is whole: what it names exists, its amounts hang together, nobody in it is real."""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Iterator, Mapping
from datetime import date
from decimal import Decimal
from typing import TypeVar

import pytest
from stdnum.ca import bn

from quarterday.catalogue.load import reference
from quarterday.core.dates import years_between
from quarterday.core.file.records import (
    Authority,
    Building,
    Claim,
    Contact,
    Interest,
    Operations,
    Organisation,
    Record,
    Terms,
    Valuation,
)
from quarterday.core.file.records.terms import EVERYWHERE
from quarterday.invent.account import Account
from quarterday.invent.demo import AS_OF, Tale
from quarterday.invent.demo.book import HERE
from quarterday.papers.brokerage import read_brokerage

Demo = Mapping[str, Account]
R = TypeVar("R", bound=Record)
BROKERAGE = read_brokerage(HERE / "brokerage.yaml")
PROVINCES = {"ON", "QC", "BC", "AB", "MB", "SK", "NS", "NB", "NL", "PE"}


def all_of(demo: Demo, kind: type[R]) -> Iterator[tuple[str, R]]:
    for account in demo.values():
        yield from ((account.id, r) for r in account.records if isinstance(r, kind))


def test_forty_organisations_in_every_province_and_two_territories(demo: Demo) -> None:
    found = {org.province for _, org in all_of(demo, Organisation)}
    assert len(demo) == 40
    assert found >= PROVINCES
    assert len(found - PROVINCES) >= 2


def test_no_two_records_of_an_account_share_their_kind_and_key(demo: Demo) -> None:
    for account in demo.values():
        places = Counter((record.kind, record.key) for record in account.records)
        assert [place for place, times in places.items() if times > 1] == []


def test_names_of_organisations_and_policy_numbers_are_unique(demo: Demo) -> None:
    names = Counter(org.name for _, org in all_of(demo, Organisation))
    policies = Counter({(id, terms.policy_number) for id, terms in all_of(demo, Terms)})
    assert max(names.values()) == 1
    assert len({number for _, number in policies}) == 40


def test_every_place_that_a_record_names_is_a_building_of_its_account(demo: Demo) -> None:
    buildings = {(id, b.id) for id, b in all_of(demo, Building)}
    named = {(id, v.building) for id, v in all_of(demo, Valuation)}
    named |= {(id, c.location) for id, c in all_of(demo, Claim) if c.location}
    named |= {(id, i.location) for id, i in all_of(demo, Interest) if i.location}
    for id, terms in all_of(demo, Terms):
        named |= {(id, c.location) for c in terms.coverages}
        named |= {(id, p.location) for p in terms.premiums}
        named |= {(id, o.location) for o in terms.options}
    assert {(id, place) for id, place in named if place != EVERYWHERE} - buildings == set()


def test_every_coverage_and_cause_is_in_the_catalogues(demo: Demo) -> None:
    known = reference()
    coverages = {c.coverage for _, t in all_of(demo, Terms) for c in t.coverages}
    coverages |= {o.coverage for _, t in all_of(demo, Terms) for o in t.options}
    coverages |= {p.coverage for _, t in all_of(demo, Terms) for p in t.premiums}
    shared = {c for _, t in all_of(demo, Terms) if t.shared_limit for c in t.shared_limit.tops_up}
    causes = {claim.cause for _, claim in all_of(demo, Claim)}
    assert (coverages | shared) - set(known.coverages) == set()
    assert causes - set(known.causes) == set()


def test_every_authority_names_a_contact_of_its_account(demo: Demo) -> None:
    contacts = {(id, contact.id) for id, contact in all_of(demo, Contact)}
    assert {(id, a.contact) for id, a in all_of(demo, Authority)} - contacts == set()


def test_renewals_fall_between_the_end_of_november_and_the_end_of_march(demo: Demo) -> None:
    ends = {id: t.end for id, t in all_of(demo, Terms) if t.stage == "issued"}
    assert len(ends) == 40
    assert (min(ends.values()), max(ends.values())) == (date(2026, 11, 30), date(2027, 3, 25))
    assert abs((ends["HW-1001"] - date(2027, 1, 15)).days) <= 7


def test_every_account_has_expiring_terms_and_an_offer_that_follows_them(demo: Demo) -> None:
    for account in demo.values():
        terms = [r for r in account.records if isinstance(r, Terms)]
        (issued,) = (t for t in terms if t.stage == "issued")
        assert issued.end in {t.start for t in terms if t.stage == "offered"}


def test_a_quebec_policy_starts_before_and_is_paid_after_the_tax_change(demo: Demo) -> None:
    # Quebec taxes by the day of payment, 9 % until 2026-12-31, then 9.975 % (Revenu Québec; Bill
    # 99, 2025, c. 27, as told by Mondaq, 2025-12-01).
    offered = next(t for id, t in all_of(demo, Terms) if id == "HW-1010" and t.stage == "offered")
    assert offered.start < date(2027, 1, 1) < offered.end
    assert offered.instalments_available


def test_rated_cells_are_exposure_times_rate_rounded_to_the_dollar(demo: Demo) -> None:
    wrong = [
        (id, cell.line)
        for id, terms in all_of(demo, Terms)
        for cell in terms.premiums
        if cell.rate is not None
        and cell.exposure is not None
        and abs(cell.amount - cell.exposure * cell.rate) > Decimal("0.50")
    ]
    assert wrong == [("HW-1019", ("contents", "ferry-street", "premium"))]  # planted


PLANTED_SUMS = {"HW-1011", "HW-1017", "HW-1019", "HW-1029", "HW-1038"}


def _adds_up(terms: Terms) -> bool:
    stated = {t.of: t.amount for t in terms.totals if t.id == EVERYWHERE and t.of != "location"}
    premiums = sum((cell.amount for cell in terms.premiums), Decimal(0))
    return stated["subtotal"] == premiums and stated["total"] == premiums + stated["tax"]


def test_premium_tables_add_up_but_for_the_planted_ones(demo: Demo) -> None:
    off = {id for id, t in all_of(demo, Terms) if t.totals and not _adds_up(t)}
    assert off == {"HW-1019", "HW-1029", "HW-1038"}


TAXES = {  # per cent; the tables of the provinces' own notices named in the reference data
    "ON": Decimal("0.08"),  # Ontario Ministry of Finance, Insurance and Benefits Plans, 2013
    "MB": Decimal("0.07"),  # Manitoba Bulletin 061 as told by Ryan, 2012; still 7 % from memory
    "SK": Decimal("0.06"),  # Saskatchewan PST-73 as told by Ryan, 2017 and 2018
    "NL": Decimal("0.15"),  # Government of Newfoundland and Labrador, FAQ on RST on premiums
}


@pytest.mark.parametrize("province", sorted(PROVINCES | {"NT", "YT"}))
def test_no_insurer_prints_more_tax_than_the_province_lays(demo: Demo, province: str) -> None:
    for id, terms in all_of(demo, Terms):
        org = next(r for r in demo[id].records if isinstance(r, Organisation))
        if org.province != province or not terms.totals or id in PLANTED_SUMS:
            continue
        rate = TAXES.get(province, Decimal(0))
        if province == "QC":
            rate = Decimal("0.09") if terms.start < date(2027, 1, 1) else Decimal("0.09975")
        tax = next(t.amount for t in terms.totals if t.of == "tax")
        premiums = sum((cell.amount for cell in terms.premiums), Decimal(0))
        exempt = sum((c.amount for c in terms.premiums if _may_be_exempt(c.coverage)), Decimal(0))
        cent = Decimal("0.01")
        assert rate * (premiums - exempt) - cent <= tax <= rate * premiums + cent


def _may_be_exempt(coverage: str) -> bool:
    family = reference().coverages[coverage].family
    return family in {"vehicles", "people"} or coverage.endswith("-dishonesty")


def test_claims_lie_within_ten_years_and_two_thirds_of_them_are_water(demo: Demo) -> None:
    # Common practice, no source: about two thirds of claims by number are water.

    claims = [claim for _, claim in all_of(demo, Claim)]
    assert all(0 <= years_between(c.date_of_loss, AS_OF) < 10 for c in claims)
    water = sum(claim.cause in reference().water_causes for claim in claims)
    assert 0.6 < water / len(claims) < 0.72


def test_telephones_and_mail_cannot_be_anybodys(demo: Demo) -> None:
    # 555-0100 to 555-0199 are kept for fiction (from memory); example.org by RFC 2606.
    people = [contact for _, contact in all_of(demo, Contact)]
    phones = [p.phone for p in people if p.phone] + [p.phone for p in BROKERAGE.people]
    mails = [p.email for p in people if p.email] + [p.email for p in BROKERAGE.people]
    assert [p for p in phones if not re.fullmatch(r"\d{3}-555-01\d\d", p)] == []
    assert [m for m in mails if not re.fullmatch(r"[a-z.]+@[a-z0-9-]+\.example\.org", m)] == []


def test_mail_addresses_differ_within_the_book(demo: Demo) -> None:
    mails = Counter(c.email for _, c in all_of(demo, Contact) if c.email)
    assert [mail for mail, times in mails.items() if times > 1] == []


def _is_right(number: str) -> bool:
    return bn.is_valid(number[:9]) and bool(re.fullmatch(r"\d{9}RR\d{4}", number))


def test_registration_numbers_pass_an_independent_check_but_for_the_planted(
    demo: Demo, told: Mapping[str, Tale]
) -> None:
    # python-stdnum checks the nine digits (Luhn); the letters RR and four digits of a charity's
    # program account are from memory.
    bad = {
        id
        for id, org in all_of(demo, Organisation)
        if org.registration_number and not _is_right(org.registration_number)
    }
    assert bad == {id for id, tale in told.items() if "office.registration" in tale.plants}
    assert all(o.registration_number[:2] == "00" for _, o in all_of(demo, Organisation)
               if o.registration_number)  # fmt: skip


def test_postal_codes_begin_as_their_province_does(demo: Demo) -> None:
    for _, org in all_of(demo, Organisation):
        letters = reference().provinces[org.province].postal_letters
        assert org.postal_code
        assert re.fullmatch(r"[A-Z]\dZ 9X\d", org.postal_code)
        assert org.postal_code[0] in letters


def test_french_organisations_of_quebec_new_brunswick_and_ontario(demo: Demo) -> None:
    french = {id: org for id, org in all_of(demo, Organisation) if org.language == "fr"}
    assert {org.province for org in french.values()} == {"QC", "NB", "ON"}
    speakers = [c for id, c in all_of(demo, Contact) if id in french]
    assert {contact.language for contact in speakers} == {"fr"}


def test_every_organisation_tells_what_it_does_and_who_leads_it(demo: Demo) -> None:
    for account in demo.values():
        kinds = Counter(type(record) for record in account.records)
        assert kinds[Operations] == kinds[Organisation] == 1
        assert kinds[Contact] >= 2
        assert kinds[Building] >= 1


def test_the_broker_of_every_account_works_at_the_brokerage(demo: Demo) -> None:
    brokers = {person.name for person in BROKERAGE.people if person.licence}
    assert {org.broker for _, org in all_of(demo, Organisation)} <= brokers
    assert {org.office for _, org in all_of(demo, Organisation)} <= set(BROKERAGE.offices)
