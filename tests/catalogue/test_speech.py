"""What the core says is spoken whole, in the reader's language, or not at all."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date
from decimal import Decimal
from pathlib import Path
from typing import cast

import pytest
from fluent.runtime import resolver

from quarterday.catalogue.problems import BadReference
from quarterday.catalogue.speech import MissingWording, Speech, Spoken
from quarterday.core.figure import Fact, Figure, Parameter, Source, Unit, Value
from quarterday.core.file.entry import Origin, Place
from quarterday.core.money import Money
from quarterday.core.reference import Reference
from quarterday.core.words import Rate, Term, words

Write = Callable[[str, str], Path]
NB = "\N{NO-BREAK SPACE}"
SOURCE = Source("A table", "An office", "row 3", checked_on=date(2026, 1, 5))


def test_each_kind_of_thing_is_spoken(english: Speech, french: Speech) -> None:
    things: list[tuple[Spoken, str, str]] = [
        (Money(Decimal("1234.56")), "$1,234.56", f"1{NB}234,56{NB}$"),
        (Rate(Decimal("0.08")), "8%", f"8{NB}%"),
        (date(2027, 1, 1), "January 1, 2027", "1er janvier 2027"),
        (1234, "1,234", f"1{NB}234"),
        (Decimal("0.5"), "0.5", "0,5"),
        (True, "yes", "oui"),
        (False, "no", "non"),
        ("St. Brigid's", "St. Brigid's", "St. Brigid's"),
        (words("everywhere"), "everywhere", "partout"),
        (Term("cause", "sewer-backup"), "sewer backup", "refoulement d'égouts"),
        (Term("province", "QC"), "Quebec", "Québec"),
        (Term("role", "chair"), "board chair", "présidence du conseil"),
    ]
    for thing, en, fr in things:
        assert english.say(thing) == en
        assert french.say(thing) == fr


def test_several_things_become_a_list(english: Speech, french: Speech) -> None:
    things = (Money(Decimal(5)), words("yes"), "Ann")
    assert english.say(things) == "$5, yes and Ann"
    assert french.say(things) == f"5{NB}$, oui et Ann"


def test_a_list_too_long_for_a_wording_names_the_first_and_counts_the_rest(
    english: Speech, french: Speech
) -> None:
    """fluent.runtime refuses a variable of more than 2,500 characters (MAX_PART_LENGTH)."""
    names = tuple(f"Hall number {n} of the long road" for n in range(1, 201))
    said = english.say(words("source", title=names, publisher="", place=""))
    assert len(said) < resolver.MAX_PART_LENGTH
    shown = said.count("Hall number")
    assert said.startswith("Hall number 1 of the long road, Hall number 2")
    assert f"and {200 - shown} more" in said
    assert f"et {200 - shown} de plus" in french.say(names)


@pytest.mark.parametrize("length", [2500, 2501, 40_000])
def test_a_text_too_long_for_a_wording_is_cut_and_shows_it(english: Speech, length: int) -> None:
    """Found by spoiled inputs: a text of 40,000 characters stopped the sentence on it."""
    said = english.say(words("given-unknown", key="x" * length))
    assert ("…" in said) == (length > resolver.MAX_PART_LENGTH)
    assert said.count("x") >= resolver.MAX_PART_LENGTH - 1


def test_a_list_that_a_wording_can_hold_is_said_whole(english: Speech) -> None:
    names = tuple(f"Hall {n}" for n in range(90))
    assert english.say(names).count("Hall") == len(names)


@pytest.mark.parametrize(
    ("n", "en", "fr"),
    [(0, "0 days", "0 jour"), (1, "1 day", "1 jour"), (2, "2 days", "2 jours"),
     (1234, "1,234 days", f"1{NB}234 jours")],
)  # fmt: skip
def test_a_plural_follows_the_language(
    english: Speech, french: Speech, n: int, en: str, fr: str
) -> None:
    """Zero takes the singular in French and the plural in English (Unicode CLDR plural rules)."""
    assert english.say(words("unit-days", n=n)) == en
    assert french.say(words("unit-days", n=n)) == fr


def test_words_within_words_are_spoken(english: Speech) -> None:
    inner = words("source", title="A table", publisher="An office", place="")
    said = english.say(words("source-checked", source=inner, day=date(2026, 1, 5)))
    assert said == "A table, An office; checked January 5, 2026"


def test_names_hold_no_marks_of_direction(english: Speech) -> None:
    """Fluent's invisible isolation marks would break searching and copying in a PDF."""
    said = english.say(words("origin-row", sheet="Sheet1", row="4"))
    assert said == "sheet Sheet1, row 4"


def test_a_name_may_begin_a_sentence(own: Write, canada: Reference) -> None:
    folder = own("wordings/en/ours.ftl", "origin-field = { CAPITAL($field) } and beyond.\n")
    speech = Speech(canada, "en", folder)
    assert speech.say(words("origin-field", field="your hall")) == "Your hall and beyond."
    assert speech.say(words("origin-field", field="")) == " and beyond."


def test_french_keeps_a_colon_with_its_word(french: Speech) -> None:
    said = french.say(Term("defence", "inside"))
    assert said == f"compris dans le montant{NB}: ils l'entament"


def test_a_catalogue_id_becomes_the_id_of_its_wording(english: Speech) -> None:
    assert english.say(Term("finding-kind", "send back")) == "send back"
    assert english.say(Term("way", "by hand")) == "by hand"
    assert english.say(Term("index", "ottawa_on")) == "Ottawa–Gatineau, Ontario part"
    assert english.say(Term("record", "package built")) == "package built"


def test_a_wording_that_is_missing_is_named(english: Speech) -> None:
    with pytest.raises(MissingWording, match="no wording 'no-such-wording' in 'en'"):
        english.say(words("no-such-wording"))


def test_a_variable_that_is_missing_is_named(french: Speech) -> None:
    with pytest.raises(MissingWording, match=r"'origin-row' in 'fr': .*row"):
        french.say(words("origin-row", sheet="A"))


@pytest.mark.parametrize("catalogue", ["coverage", "cause", "province", "role"])
def test_a_catalogue_entry_that_is_missing_is_named(english: Speech, catalogue: str) -> None:
    with pytest.raises(MissingWording, match="nothing-like-it"):
        english.say(Term(catalogue, "nothing-like-it"))


def test_a_language_that_is_not_spoken_is_refused(canada: Reference) -> None:
    with pytest.raises(LookupError, match="'de' is not a language"):
        Speech(canada, "de")


def test_one_can_ask_whether_a_wording_exists(english: Speech) -> None:
    assert english.can_say("everywhere")
    assert english.can_say("parameter-values-stale-years")
    assert not english.can_say("no-such-wording")


def test_a_parameter_is_named_by_the_reference_data(
    english: Speech, french: Speech, canada: Reference
) -> None:
    what = canada.parameters["values.stale-years"].what
    assert english.say(words("parameter-values-stale-years")) == what.en
    assert french.say(words("parameter-values-stale-years")).replace(NB, " ") == what.fr


@pytest.mark.parametrize(
    ("value", "unit", "en", "fr"),
    [
        (Money(Decimal("19750.00")), "money", "$19,750", f"19{NB}750{NB}$"),
        (Decimal("2500.50"), "money", "$2,500.50", f"2{NB}500,50{NB}$"),
        (Rate(Decimal("0.045")), "rate", "4.5%", f"4,5{NB}%"),
        (Decimal("0.045"), "rate", "4.5%", f"4,5{NB}%"),
        (Decimal("0.88888888"), "ratio", "0.8889", "0,8889"),
        (Decimal("109.87654"), "index", "109.88", "109,88"),
        (Decimal(1), "days", "1 day", "1 jour"),
        (30, "months", "30 months", "30 mois"),
        (Decimal(5), "years", "5 years", "5 ans"),
        (Decimal("612.5"), "m2", "612.5 m²", "612,5 m²"),
        (40, "count", "40", "40"),
        (date(2026, 11, 30), "date", "November 30, 2026", "30 novembre 2026"),
        ("frame", "text", "frame", "frame"),
        (Term("basis", "formal-appraisal"), "text", "formal appraisal", "évaluation en règle"),
        (True, "text", "yes", "oui"),
    ],
)
def test_a_value_is_spoken_with_its_unit(
    english: Speech, french: Speech, value: Value, unit: str, en: str, fr: str
) -> None:
    assert english.value(value, cast("Unit", unit)) == en
    assert french.value(value, cast("Unit", unit)) == fr


def test_a_figure_tells_its_label_value_how_and_caution(english: Speech) -> None:
    figure = Figure("x", Money(Decimal(5)), "money", words("everywhere"), words("yes"),
                    caution=words("caution-estimate"))  # fmt: skip
    said = english.parts(figure)
    assert (said.label, said.value, said.how) == ("everywhere", "$5", "yes")
    assert "estimate until" in said.caution


def test_a_fact_tells_where_it_came_from_down_to_the_row(english: Speech, french: Speech) -> None:
    places = (Place(sheet="Buildings", row=4), Place(field="area m2"), Place())
    origin = Origin(way="workbook", name="book.xlsx", places=places, person="Ann Ode")
    fact = Fact("x", Decimal(600), "m2", words("field-area-m2"), origin, date(2026, 9, 1))
    said = english.parts(fact)
    assert (said.label, said.value) == ("Floor area (m²)", "600 m²")
    assert said.how == (
        "From the workbook book.xlsx (Ann Ode), September 1, 2026 "
        "(sheet Buildings, row 4 and field area m2)"
    )
    assert french.parts(fact).how.startswith("Tiré du classeur book.xlsx (Ann Ode), le 1er sept")


def test_rows_that_follow_each_other_are_told_as_one_run(english: Speech, french: Speech) -> None:
    rows = [("Coverages", 5), ("Coverages", 6), ("Coverages", 7), ("Coverages", 9), ("Terms", 10)]
    places = tuple(Place(sheet=sheet, row=row) for sheet, row in rows)
    origin = Origin(way="workbook", places=places)
    assert english.origin(origin, date(2026, 9, 1)).endswith(
        "(sheet Coverages, rows 5 to 7, sheet Coverages, row 9 and sheet Terms, row 10)"
    )
    assert "feuille Coverages, lignes 5 à 7" in french.origin(origin, date(2026, 9, 1))


def test_a_sheet_without_a_row_is_not_given_one(english: Speech) -> None:
    origin = Origin(way="workbook", places=(Place(sheet="Buildings"),))
    assert english.origin(origin, date(2026, 9, 1)) == "From the workbook, September 1, 2026"


def test_a_number_keeps_six_decimals_unless_told_otherwise(english: Speech) -> None:
    third = Decimal(1) / 3
    assert english.number(third) == "0.333333"
    assert english.number(third, 2) == "0.33"
    assert english.value(third, "count") == "0.333333"


@pytest.mark.parametrize("way", ["workbook", "csv", "form", "person", "room", "office"])
def test_every_way_in_can_be_told(english: Speech, french: Speech, way: str) -> None:
    origin = Origin.model_validate({"way": way})
    for speech in (english, french):
        said = speech.origin(origin, date(2026, 9, 1))
        assert "2026" in said
        assert "  " not in said
        assert " ," not in said


def test_a_parameter_tells_its_source_and_that_nobody_publishes_it(english: Speech) -> None:
    value = Rate(Decimal("0.09975"))
    parameter = Parameter(
        "tax.QC", value, "rate", words("everywhere"), SOURCE, date(2027, 1, 1), True
    )
    said = english.parts(parameter)
    assert said.value == "9.975%"  # as exact as it is kept, whatever decimals the rate asks for
    assert said.how == (
        "In force since January 1, 2027. "
        "Source: A table, An office, row 3; checked January 5, 2026."
    )
    assert said.caution.startswith("Nobody publishes this figure")


def test_a_published_parameter_has_no_caution(english: Speech) -> None:
    source = Source("A table", "An office")
    parameter = Parameter("x", Decimal(3), "years", words("everywhere"), source, date(2027, 1, 1))
    said = english.parts(parameter)
    assert said.caution == ""
    assert said.how == "In force since January 1, 2027. Source: A table, An office."


def test_a_brokerage_says_it_in_its_own_words(own: Write, canada: Reference) -> None:
    folder = own("wordings/fr/ours.ftl", "everywhere = en tout lieu\n")
    assert Speech(canada, "fr", folder).say(words("everywhere")) == "en tout lieu"
    assert Speech(canada, "en", folder).say(words("everywhere")) == "everywhere"
    assert Speech(canada, "fr").say(words("everywhere")) == "partout"


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("evrywhere = x\n", "en/ours.ftl: no wording has the id evrywhere; check its spelling"),
        ("everywhere = { $place\n", "en/ours.ftl: cannot read the wording that begins"),
        (
            "origin-row = page { $page } of { $sheet }\n",
            "en/ours.ftl: the wording origin-row uses $page; it is given $row, $sheet",
        ),
        ("yes = { $no }\n", "the wording yes uses $no; it is given none"),
        ("origin-row = { $sheet }\n", "the wording origin-row leaves out $row; readers would miss"),
        ("yes = a\nyes = b\n", "en/ours.ftl: the wording yes stands in ours.ftl already"),
    ],
)
def test_a_brokerages_faulty_wording_is_refused_in_a_sentence(
    own: Write, canada: Reference, text: str, said: str
) -> None:
    with pytest.raises(BadReference) as caught:
        Speech(canada, "en", own("wordings/en/ours.ftl", text))
    assert said in str(caught.value)


def test_a_wording_without_a_text_is_refused(own: Write, canada: Reference) -> None:
    folder = own("wordings/en/ours.ftl", "everywhere =\n    .tip = x\n")
    with pytest.raises(MissingWording, match="'everywhere' is empty"):
        Speech(canada, "en", folder).say(words("everywhere"))
