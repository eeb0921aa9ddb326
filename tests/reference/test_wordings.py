"""Both languages say the same things, and every field and choice has its words."""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping
from typing import Any, get_args

import pytest
from pydantic import BaseModel

from quarterday.catalogue.load import place_folder, reference
from quarterday.catalogue.speech import Speech, wording_id
from quarterday.core import figure
from quarterday.core import reference as shapes
from quarterday.core.file import entry, layout
from quarterday.core.file.records import RECORDS, acts, buildings, people, terms
from quarterday.core.file.records.terms import Coverage, Option, Premium, SharedLimit, StatedTotal
from quarterday.core.review import finding
from quarterday.core.words import Term

LANGUAGES = ("en", "fr")
WORD = re.compile(r"[^\W\d_]+")
PAPERS = ["letter", "what-changed", "premium-statement", "coverage-summary", "options",
          "building-values", "copies-for-lenders", "figures", "contacts-form",
          "statement-of-values", "operations-form", "water-form", "abuse-form", "decisions-form",
          "payment-form", "interests-form"]  # fmt: skip
STATES = ["gathering", "reviewing", "asked", "offered", "with leaders", "settling", "bound",
          "checked", "lapsed"]  # fmt: skip
CATALOGUES: Mapping[str, Any] = {
    "language": get_args(people.Language),
    "organisation-class": get_args(people.OrganisationClass),
    "role": get_args(people.Role),
    "area": get_args(people.Area),
    "ownership": get_args(buildings.Ownership),
    "construction": get_args(buildings.Construction),
    "basement": get_args(buildings.Basement),
    "basis": get_args(buildings.Basis),
    "valuation-basis": get_args(buildings.Basis),
    "valued": get_args(buildings.ValuedThing),
    "stage": get_args(terms.Stage),
    "limit-basis": get_args(terms.LimitBasis),
    "settlement-basis": get_args(terms.ValuationBasis),
    "percent-of": get_args(terms.PercentOf),
    "damages": get_args(terms.Damages),
    "premium-kind": get_args(terms.PremiumKind),
    "answer": get_args(acts.Answer),
    "audience": get_args(finding.Audience),
    "finding-kind": get_args(finding.Kind),
    "subject": get_args(finding.SubjectKind),
    "tier": [tier.name for tier in finding.Tier],
    "family": get_args(shapes.Family),
    "paper": PAPERS,
    "state": STATES,
    "record": [record.kind for record in RECORDS],
    "kind": [record.kind for record in RECORDS],
    "party": get_args(shapes.Cause.model_fields["party"].annotation),
    "turns-on": get_args(shapes.TaxRate.model_fields["turns_on"].annotation),
    "defence": ("inside", "outside"),
    "meant-for": ("owner", "renter"),
    "claim-status": ("open", "closed"),
    "interest-role": ("lender", "lessor"),
    "interest-status": ("active", "paid-off", "unknown"),
    "way": get_args(acts.Delivery.model_fields["way"].annotation),
    "total-of": get_args(StatedTotal.model_fields["of"].annotation),
    "index": reference().indices,
    "origin": get_args(entry.Way),
    "unit": ("days", "months", "years", "m2"),
    "month": [str(n) for n in range(1, 13)],
}


def test_both_languages_have_the_same_areas(english: Any, french: Any) -> None:
    assert set(english.areas) == set(french.areas)
    assert {"common", "fields", "names"} <= set(english.areas)


def test_both_languages_have_the_same_wordings_in_each_area(english: Any, french: Any) -> None:
    for name, area in english.areas.items():
        assert set(area.messages) ^ set(french.areas[name].messages) == set(), name
        assert set(area.terms) ^ set(french.areas[name].terms) == set(), name


def test_both_languages_use_the_same_variables(english: Any, french: Any) -> None:
    differing = [
        id
        for id in english.messages.keys() & french.messages
        if english.variables(id) != french.variables(id)
    ]
    assert differing == []


@pytest.mark.parametrize("language", LANGUAGES)
def test_every_wording_can_be_read_and_stands_once(
    language: str, english: Any, french: Any
) -> None:
    wordings = english if language == "en" else french
    for area in wordings.areas.values():
        assert area.junk == (), area.name
        assert area.repeated == (), area.name
    assert len(wordings.messages) == sum(len(area.messages) for area in wordings.areas.values())


@pytest.mark.parametrize("language", LANGUAGES)
def test_every_wording_says_something_and_speaks_only_of_known_ones(
    language: str, english: Any, french: Any
) -> None:
    wordings = english if language == "en" else french
    known = {*wordings.messages, *wordings.terms}
    for id, message in wordings.messages.items():
        assert message.value is not None, id
        assert wordings.references(id) <= known, id
        assert wordings.text(id).strip(), id


def _is_sentence(text: str) -> bool:
    return len(WORD.findall(text)) >= 4


def test_no_french_sentence_is_the_english_one(english: Any, french: Any) -> None:
    same = [
        id for id in english.messages.keys() & french.messages
        if _is_sentence(english.text(id)) and english.text(id) == french.text(id)
    ]  # fmt: skip
    assert same == []


def _both(node: object, path: str = "") -> Iterator[tuple[str, shapes.Both]]:
    """Yield every text in two languages of the reference data, with its place."""
    if isinstance(node, shapes.Both):
        yield path, node
    elif isinstance(node, BaseModel):
        for name in type(node).model_fields:
            yield from _both(getattr(node, name), f"{path}.{name}")
    elif isinstance(node, Mapping):
        for key, value in node.items():
            yield from _both(value, f"{path}.{key}")
    elif isinstance(node, tuple):
        for n, value in enumerate(node):
            yield from _both(value, f"{path}.{n}")


BOTH = dict(_both(reference()))


def test_no_french_sentence_of_the_catalogues_is_the_english_one() -> None:
    assert len(BOTH) > 300
    assert [p for p, b in BOTH.items() if _is_sentence(b.en) and b.en == b.fr] == []


def test_texts_of_the_catalogues_have_no_loose_ends() -> None:
    """No space at an end, none doubled, no placeholder left."""
    for place, both in BOTH.items():
        for text in (both.en, both.fr):
            assert text == " ".join(text.split()), place
            assert not re.search(r"TODO|XXX|lorem", text), place


def test_french_puts_no_space_before_a_semicolon_or_a_mark(french: Any) -> None:
    """Canadian French, Office québécois de la langue française: none before ; ! ? but before : ."""
    texts = {id: french.text(id) for id in french.messages}
    texts |= {place: both.fr for place, both in BOTH.items()}
    spaced = [id for id, text in texts.items() if re.search(r"[\s\u00a0\u202f][;!?]", text)]
    tight = [id for id, text in texts.items() if re.search(r"[^\W\d]:(?!//)", text)]
    assert (spaced, tight) == ([], [])


FIELDS = sorted(
    {
        *(name for record in RECORDS for name in record.model_fields),
        *(n for p in (Coverage, SharedLimit, Premium, StatedTotal, Option) for n in p.model_fields),
        *(c.field for sheet in layout.SHEETS for c in sheet.columns if c.field != layout.ACCOUNT),
    }
)


@pytest.mark.parametrize("language", LANGUAGES)
def test_every_field_of_every_record_has_a_label(language: str) -> None:
    speech = Speech(reference(), language)
    missing = [name for name in FIELDS if not speech.can_say(f"field-{name.replace('_', '-')}")]
    assert missing == []


def test_no_label_is_kept_for_a_field_that_is_gone(english: Any) -> None:
    kept = {id.removeprefix("field-") for id in english.areas["fields"].messages}
    assert kept == {name.replace("_", "-") for name in FIELDS}


@pytest.mark.parametrize("catalogue", CATALOGUES)
def test_every_choice_has_a_name_in_both_languages(catalogue: str, english: Any) -> None:
    for id in CATALOGUES[catalogue]:
        assert wording_id(catalogue, id) in english.messages, id


@pytest.mark.parametrize("language", LANGUAGES)
def test_every_coverage_cause_and_province_is_spoken(language: str) -> None:
    canada = reference()
    speech = Speech(canada, language)
    for catalogue, entries in (
        ("coverage", canada.coverages), ("cause", canada.causes), ("province", canada.provinces),
    ):  # fmt: skip
        for id in entries:
            assert speech.say(Term(catalogue, id))


@pytest.mark.parametrize("language", LANGUAGES)
def test_the_usual_cautions_can_be_given(language: str) -> None:
    """The wording governs, it is an estimate, a broker reviewed it, local rules, people first."""
    speech = Speech(reference(), language)
    for caution in ("wording-governs", "estimate", "reviewed", "local-rules", "at-risk"):
        assert speech.can_say(f"caution-{caution}")


def test_people_come_first_when_somebody_is_at_risk(english: Any, french: Any) -> None:
    """Emergency services and child protection stand before the broker."""
    said = english.text("caution-at-risk")
    assert said.index("emergency services") < said.index("then us")
    assert "child protection" in said
    assert "protection de l'enfance, puis nous" in french.text("caution-at-risk")


def test_units_of_figures_are_covered() -> None:
    """Each unit is spoken by a wording or by a format of its own."""
    spoken = {"days", "months", "years", "m2"}
    formats = {"money", "rate", "ratio", "index", "date", "count", "text"}
    assert spoken | formats == set(get_args(figure.Unit))


def test_wordings_live_where_they_are_looked_for() -> None:
    folder = place_folder("canada") / "wordings"
    assert {file.name for file in folder.iterdir()} == set(LANGUAGES)
    assert all(file.suffix == ".ftl" for lang in LANGUAGES for file in (folder / lang).iterdir())
