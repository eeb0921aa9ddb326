"""The letter, the pages of buildings, the checklist, options, copies, the register of figures."""

from __future__ import annotations

import pytest

from quarterday.catalogue.load import data_credits
from quarterday.core.figure import Figure, walk
from quarterday.core.review.need import need
from quarterday.core.risk.figures import caution
from quarterday.core.terms.presence import gives
from quarterday.papers.building_values import data as buildings
from quarterday.papers.copies_for_lenders import data as copies
from quarterday.papers.coverage_summary import data as summary
from quarterday.papers.figures import data as figures
from quarterday.papers.letter import data as letter
from quarterday.papers.options import data as options
from quarterday.papers.package import PAPERS, _enclosed
from quarterday.papers.parts import FORMS, ORDER, PARTS
from quarterday.papers.setting import Data, Setting

from . import given

LANGUAGES = ("en", "fr")
SETTINGS = [(id, language) for id in given.book() for language in LANGUAGES]


def written(of: Setting) -> Data:
    return letter.data(of, _enclosed(of))


@pytest.mark.parametrize("language", LANGUAGES)
def test_each_decision_has_its_price_its_consequence_and_its_day(language: str) -> None:
    for id in given.book():
        of = given.setting(id, language)
        told = letter.data(of, _enclosed(of))
        if not of.review.agenda:
            assert told["agenda"] is told["decisions"] is None
            continue
        items = told["decisions"]["items"]
        assert 1 <= len(items) <= 5
        for item, finding in zip(items, of.review.agenda, strict=True):
            assert item["title"] == of.spoken(finding.title)
            assert len(item["means"].split()) > 3
            labels = [label for label, _ in item["facts"]]
            assert labels[0] == of.say("letter-price")
            assert labels[-1] == of.say("letter-by")


def test_what_is_free_and_what_nobody_has_priced_are_not_confused() -> None:
    of = given.setting()
    for finding, row in zip(of.review.agenda, written(of)["agenda"]["rows"], strict=True):
        cost = finding.priority.cost
        if cost is None:
            assert row[2] == "ask us"
        else:
            assert row[2] == (of.dollars(cost) if cost else "no charge")


def test_every_paper_is_in_one_part_and_they_follow_each_other_in_order() -> None:
    assert tuple(paper.id for paper in PAPERS) == ORDER
    assert len(set(ORDER)) == len(ORDER)
    assert tuple(id for id in ORDER if id.endswith("-form") or id == "statement-of-values") == FORMS


def test_the_letter_goes_to_the_treasurer_before_others() -> None:
    assert written(given.setting())["greeting"] == "Dear Priya Nathan,"


def test_nothing_set_aside_and_nothing_for_others_reaches_the_leaders() -> None:
    for id, language in SETTINGS:
        of = given.setting(id, language)
        told = str(written(of))
        for finding in of.review.findings:
            if finding.set_aside and finding not in of.told:
                assert of.spoken(finding.title) not in told


def test_what_to_send_back_is_told_once_for_each_enclosed_form_with_its_page() -> None:
    for id, language in SETTINGS:
        of = given.setting(id, language)
        inside = [paper for paper, _ in _enclosed(of)]
        lists = [part["items"] for part in written(of)["lists"]]
        forms = [item["id"] for items in lists for item in items if item["id"]]
        assert len(forms) == len(set(forms))
        assert set(forms) <= set(inside)


def test_every_form_that_a_finding_asks_back_is_enclosed_and_told() -> None:
    """Nothing is promised for later: a form the leaders are asked for is in the package."""
    for id in given.book():
        of = given.setting(id)
        told = str(written(of)["lists"])
        inside = {paper for paper, _ in _enclosed(of)}
        for finding in of.told:
            if finding.kind == "send back" and finding not in of.review.agenda:
                assert not finding.encloses or inside & set(finding.encloses), (id, finding.id)
                assert of.spoken(finding.todo) in told


def test_what_is_enclosed_is_told_in_three_parts_in_the_order_of_the_pages() -> None:
    for id, language in SETTINGS:
        of = given.setting(id, language)
        told = written(of)["enclosed"]["parts"]
        assert [part["name"] for part in told] == [
            of.say(f"letter-part-{name}") for name, ids in PARTS.items()
            if {paper for paper, _ in _enclosed(of)} & set(ids)
        ]  # fmt: skip
        listed = [row["id"] for part in told for row in part["rows"]]
        assert listed == [paper for paper, _ in _enclosed(of)][1:]
        reasons = [row["reason"] for part in told for row in part["rows"]]
        assert all(reason[0] == reason[0].upper() for reason in reasons)
        assert all(reason.endswith((".", "?", "!")) for reason in reasons)


def test_findings_of_one_kind_are_told_once_with_their_number() -> None:
    of = given.setting()
    texts = [t for part in written(of)["lists"] for item in part["items"] for t in item["texts"]]
    assert len(texts) == len(set(texts))
    assert any("(and 2 more like it)" in text for text in texts)
    assert sum("needs the water questionnaire" in text for text in texts) == 1


def test_a_child_at_risk_comes_before_us_where_children_are_in_care() -> None:
    for id, file in given.book().items():
        cautions = str(written(given.setting(id))["cautions"])
        assert ("child protection" in cautions) == file.operations.works_with_vulnerable


def test_every_insured_building_has_its_page_the_shortest_first() -> None:
    for id, language in SETTINGS:
        of = given.setting(id, language)
        pages = buildings.data(of)["buildings"]
        assert len(pages) == len(of.pictures)
        short = [p.shortfall.money.amount if p.shortfall else 0 for p in of.pictures]
        if short and max(short) > 0:
            most = of.pictures[short.index(max(short))]
            assert most.building.name in pages[0]["opening"]["title"]


def test_a_building_s_page_says_its_shortfall_as_the_finding_does() -> None:
    """An estimate is said to three digits wherever it stands in a heading."""
    seen = 0
    for id, language in SETTINGS:
        of = given.setting(id, language)
        titles = {page["opening"]["title"] for page in buildings.data(of)["buildings"]}
        short = [f for f in of.told if f.title.id == "values-below-replacement-title"]
        assert {of.spoken(finding.title) for finding in short} <= titles
        seen += len(short)
    assert seen > 20


def test_only_the_first_page_of_a_paper_is_what_the_list_of_enclosures_names() -> None:
    pages = buildings.data(given.setting())["buildings"]
    assert [page["opening"]["id"] for page in pages] == ["building-values"] + [None] * (
        len(pages) - 1
    )


def test_a_coverage_is_either_there_or_missing_or_asked_about_or_not_called_for() -> None:
    of = given.setting()
    assert of.case.terms is not None
    for checked in summary.checked(of, of.case.terms):
        answer = need(checked.type.needed_when, of.file).answer
        expected = {"yes": "needed", "unknown": "ask", "no": "not-needed"}[answer]
        is_there = gives(of.case.terms, checked.type.id)
        assert checked.mark == ("have" if is_there else expected)


def test_what_a_clause_of_another_line_gives_is_not_missing_and_says_where_it_is() -> None:
    """Defence costs and punitive damages, stated on the liability lines of the flagship's offer."""
    of = given.setting()
    assert of.case.terms is not None
    found = {c.type.id: c for c in summary.checked(of, of.case.terms)}
    assert any(line.defence for line in of.case.terms.coverages)
    assert found["defence-costs"].mark == "have"
    assert "general-liability" in found["defence-costs"].within
    rows = [row for family in summary.data(of)["families"] for row in family["rows"]]
    (told,) = [row for row in rows if row["name"] == "Defence costs"]
    assert "It is part of this:" in told["meaning"]


def test_every_line_of_the_terms_is_on_the_checklist() -> None:
    for id in given.book():
        of = given.setting(id)
        if of.case.terms is None:
            continue
        rows = [row for family in summary.data(of)["families"] for row in family["rows"]]
        known = [c for c in of.case.terms.coverages if c.coverage in of.reference.coverages]
        within = [c for c in summary.checked(of, of.case.terms) if c.within and not c.lines]
        assert sum(row.get("mark") == "have" for row in rows) == len(known) + len(within)


def test_an_option_without_a_price_says_ask_us_and_never_zero() -> None:
    seen = set()
    for id in given.book():
        of = given.setting(id)
        if options.reason(of) is None:
            continue
        for item in options.data(of)["items"]:
            price = item["facts"][0][1]
            seen.add(price == "ask us")
            assert price == "ask us" or price.endswith("a year before tax")
    assert seen == {True, False}


@pytest.mark.parametrize(
    ("language", "offered", "now"),
    [
        ("en", "5% of the value, at least $10,000",
         "$5,920,000, deductible 15% of the value, at least $100,000"),
        ("fr", "5 % de la valeur, au moins 10 000 $",
         "5 920 000 $, franchise de 15 % de la valeur, au moins 100 000 $"),
    ],
)  # fmt: skip
def test_an_option_that_restores_a_percentage_says_it_beside_what_stands_and_is_measured(
    language: str, offered: str, now: str
) -> None:
    """Cedar Inlet Mandir: the earthquake deductible went from 5 % to 15 % of the value."""
    told = options.data(given.setting("HW-1005", language))
    (item,) = told["items"]
    facts = [value.replace("\xa0", " ").replace("\u202f", " ") for _, value in item["facts"]]
    assert facts[2:] == [offered, now]
    (row,) = told["table"]["rows"]
    assert not any("not measured" in cell or "non mesuré" in cell for cell in row)
    assert len(told["deductibles"]["items"]) == 1


def test_a_copy_shows_the_lender_its_own_building_only() -> None:
    of = given.setting()
    (interest,) = [i for i in of.file.interests if i.status == "active"]
    (page,) = copies.data(of)["copies"]
    others = [b.name for b in of.file.buildings if b.id != interest.location]
    assert interest.name in page["to"]
    assert not any(name in row[0] for row in page["rows"] for name in others)
    assert any("Parish hall" in row[0] for row in page["rows"])


def test_a_copy_of_an_offer_says_that_it_is_not_in_force() -> None:
    page = copies.data(given.setting())["copies"][0]
    assert "not in force" in page["opening"]["lead"]


def explained(of: Setting) -> list[dict[str, str]]:
    """Return every figure, fact and published value of the register, each with its number."""
    told = figures.data(of)
    groups = [group for part in told["sources"] for group in part["groups"]]
    return [
        *told["computed"]["rows"],
        *(item for group in groups for line in group["lines"] for item in line["items"]),
    ]


def test_every_figure_behind_the_leaders_findings_is_in_the_register_once() -> None:
    of = given.setting()
    behind = {
        node.id
        for finding in of.told
        for root in finding.evidence
        if isinstance(root, Figure)
        for _, node in walk(root)
    }
    numbers = [item["number"] for item in explained(of)]
    assert len(numbers) == len(set(numbers)) == len(behind)


def test_a_caution_that_figures_share_is_said_once_and_each_of_them_bears_its_mark() -> None:
    for id, language in SETTINGS[:4]:
        told = figures.data(given.setting(id, language))
        groups = [group for part in told["sources"] for group in part["groups"]]
        cautioned = [one for one in (*told["computed"]["rows"], *groups) if one["caution"]]
        said = {one["mark"]: one["text"] for one in told["cautions"]}
        assert len(set(said.values())) == len(said) == len(told["cautions"]) > 1
        for one in cautioned:
            alike = sum(other["caution"] == one["caution"] for other in cautioned)
            assert said.get(one["mark"]) == (one["caution"] if alike > 1 else None)
        assert all(one["mark"] == "" for one in told["computed"]["rows"] if not one["caution"])


def test_a_figure_names_the_numbers_of_what_it_was_made_from() -> None:
    of = given.setting()
    rows = figures.data(of)["computed"]["rows"]
    numbers = {item["number"] for item in explained(of)}
    named = [
        row["how"].rpartition("From ")[2].rstrip(".") for row in rows if "From F" in row["how"]
    ]
    assert named
    for text in named:
        assert set(text.replace(" and ", ", ").split(", ")) <= numbers


def test_an_illustrative_value_is_called_one() -> None:
    groups = figures.data(given.setting())["sources"][-1]["groups"]
    assumed = [group for group in groups if "illustrative" in group["origin"]]
    assert assumed
    assert all("Nobody publishes" in group["caution"] for group in assumed)


def test_what_facts_have_in_common_is_said_once_and_no_value_is_lost() -> None:
    """Two facts of one row of the workbook stand under one mention of that row."""
    sources = figures.data(given.setting())["sources"]
    assert len(sources) == 2
    for part in sources:
        said = [(group["origin"], group["caution"]) for group in part["groups"]]
        assert len(said) == len(set(said))
        assert all(line["items"] for group in part["groups"] for line in group["lines"])
    values = {item["value"] for item in explained(given.setting())}
    assert {"$5,387,000", "$45,000", "3.5%"} <= values


@pytest.mark.parametrize("language", LANGUAGES)
def test_the_appendix_credits_the_published_index_as_its_licence_asks(language: str) -> None:
    """Statistics Canada Open Licence: the source must be named with the adapted data."""
    lines = figures.data(given.setting(language=language))["credits"]
    assert len(lines) == len(data_credits(language))
    assert all(credit in line for credit, line in zip(data_credits(language), lines, strict=True))
    assert any(
        ("Statistics Canada" if language == "en" else "Statistique Canada") in x for x in lines
    )


def test_the_options_table_has_every_option_once_and_its_change_as_the_finding_has_it() -> None:
    of = given.setting()
    table = options.data(of)["table"]
    rows = of.case.options
    assert len(table["rows"]) == len(rows) == len(options.offered(of))
    for shown, row in zip(table["rows"], rows, strict=True):
        assert len(shown) == len(table["header"])
        if row.average is None:
            assert shown[-2:] == ["not measured"] * 2
        elif row.average.money:
            assert of.money(abs(row.average.money)) in shown[3]


@pytest.mark.parametrize("language", LANGUAGES)
def test_what_was_not_measured_says_why_and_the_model_says_what_it_is(language: str) -> None:
    of = given.setting(language=language)
    notes = " ".join(options.data(of)["table"]["notes"])
    for row in of.case.options:
        assert row.why_not is None or of.spoken(row.why_not) in notes
    assert of.spoken(caution()) in notes


def test_a_bad_year_shows_where_chance_alone_puts_it() -> None:
    of = given.setting()
    cells = [row[-1] for row in options.data(of)["table"]["rows"] if "less" in row[-1]]
    assert cells
    assert all("(" in cell and " to " in cell for cell in cells)


@pytest.mark.parametrize("language", LANGUAGES)
def test_a_choice_of_deductible_tells_when_both_ways_cost_the_same(language: str) -> None:
    """HW-1023 may buy back the deductible that the offer raised."""
    told = options.data(given.setting("HW-1023", language))["deductibles"]
    (sentences,) = told["items"]
    both = {"en": "Both ways cost the same", "fr": "Les deux choix coûtent autant"}[language]
    assert any(both in sentence for sentence in sentences)
    assert options.data(given.setting())["deductibles"] is None
