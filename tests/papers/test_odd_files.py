"""Files that are nearly empty, very large, or full of characters that mean something elsewhere."""

from __future__ import annotations

from collections.abc import Iterable
from datetime import date
from decimal import Decimal
from pathlib import Path

import pytest

from quarterday.catalogue.load import reference
from quarterday.core.file.records import (
    Building,
    Contact,
    Interest,
    Organisation,
    Record,
    Terms,
    Valuation,
)
from quarterday.core.file.records.terms import Coverage, Option, Premium
from quarterday.core.review.case import Case
from quarterday.core.review.review import review_of
from quarterday.papers.package import Package, build
from quarterday.papers.press import Unprintable

from . import given
from .reading import page_texts, values

RENEWAL = date(2027, 1, 15)
MARKUP = r'#let x = $a_1$ *b* _c_ [d] @e <f> `g` \ "h" // i'
LONG = "Société de bienfaisance interparoissiale de la vallée " * 4


def made(records: Iterable[Record], language: str = "en") -> Package:
    file = given.file_of("ODD-1", records)
    case = Case(file, reference("canada"), given.AS_OF)
    told = review_of(case)
    return build(
        told, case, given.brokerage(), language, version=1, built_on=given.AS_OF,
        signed=given.signature(told),
    )  # fmt: skip


def organisation(name: str = "Quiet Hall Society") -> Organisation:
    return Organisation(name=name, province="ON", renewal_date=RENEWAL)


def terms(buildings: int, stage: str = "offered", name: str = "hall") -> Terms:
    places = [f"{name}-{n}" for n in range(buildings)]
    return Terms.model_validate(
        {
            "stage": stage,
            "start": RENEWAL if stage == "offered" else date(2026, 1, 15),
            "end": date(2028, 1, 15) if stage == "offered" else RENEWAL,
            "insurer": "Larkmoor Mutual Insurance",
            "coverages": [
                Coverage(coverage="building", location=p, limit=Decimal(900_000)) for p in places
            ],
            "premiums": [
                Premium(coverage="building", location=p, amount=Decimal("1234.56")) for p in places
            ],
            "options": [Option(coverage="overland-flood")],
        }
    )


@pytest.mark.parametrize("language", ["en", "fr"])
def test_a_file_that_knows_only_a_name_and_a_day_has_a_letter(
    language: str, tmp_path: Path
) -> None:
    package = made([organisation()], language)
    text = page_texts(package.pdf, tmp_path)[0]
    assert package.enclosed[0][0] == "letter"
    assert "Quiet Hall Society" in text
    assert "None" not in text


def test_characters_that_mean_something_to_a_typesetter_are_printed_as_they_are(
    tmp_path: Path,
) -> None:
    people = [Contact(id="a.b/c%", name=MARKUP, is_key=True, phone="(613) 555-0100")]
    text = " ".join(page_texts(made([organisation(MARKUP), *people]).pdf, tmp_path)[0].split())
    assert MARKUP in text


@pytest.mark.parametrize("language", ["en", "fr"])
def test_a_dozen_buildings_with_long_names_have_their_pages(language: str, tmp_path: Path) -> None:
    halls = [Building(id=f"hall-{n}", name=f"{LONG[:60]} {n}") for n in range(12)]
    valued = [
        Valuation(building=hall.id, amount=Decimal(1_000_000), valued_on=date(2019, 5, 1))
        for hall in halls
    ]
    records = [organisation(LONG[:200]), *halls, *valued, terms(12), terms(12, "issued")]
    package = made(records, language)
    texts = page_texts(package.pdf, tmp_path)
    assert {"premium-statement", "building-values", "options"} <= {id for id, _ in package.enclosed}
    assert all(f" {n}" in "".join(texts) for n in range(12))


def test_a_building_s_id_with_a_full_stop_is_still_one_part_of_its_fields_names() -> None:
    hall = Building(id="hall.1", name="Hall", ownership="own")
    valued = Valuation(building="hall.1", amount=Decimal(1_000), valued_on=date(2012, 5, 1))
    found = values(made([organisation(), hall, valued, terms(1, name="hall.1")]).pdf)
    years = [name for name in found if name.endswith(".year_built")]
    assert all(name.count(".") == 2 for name in years)


def test_a_lender_without_terms_gets_no_evidence() -> None:
    lender = Interest(id="bank", role="lender", name="Harbour Light Credit Union")
    assert "copies-for-lenders" not in {id for id, _ in made([organisation(), lender]).enclosed}


def test_a_name_no_font_can_print_is_refused_in_a_sentence() -> None:
    with pytest.raises(Unprintable, match="cannot be printed"):
        made([organisation("教会")])
