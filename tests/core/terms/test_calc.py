"""``calc settle``: published examples through the documented form, and what it refuses."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

import pytest

from quarterday.catalogue.speech import Speech
from quarterday.core.given import Unusable
from quarterday.core.reference import Reference
from quarterday.core.terms.calc import settle

DAY = "2027-06-01"
Done = Mapping[str, Any]
HALL = {"coverage": "building", "location": "hall"}


def form(
    *coverages: dict[str, Any],
    values: Mapping[str, Any] | None = None,
    terms: Mapping[str, Any] | None = None,
    **loss: Any,
) -> dict[str, Any]:
    """Return the plain form: lines, true values by ``coverage@location``, and one fire."""
    valued = [
        {"coverage": key.partition("@")[0], "location": key.partition("@")[2] or "*", "value": v}
        for key, v in (values or {}).items()
    ]
    happened = {"cause": "fire", "place": "hall", "date_of_loss": DAY, **loss}
    return {
        "terms": {"start": "2027-01-01", "coverages": list(coverages), **(terms or {})},
        "values": valued,
        "losses": [happened],
    }


def paid(given: Mapping[str, object], canada: Reference) -> Done:
    """Return the one loss of a form settled."""
    (done,) = settle(given, canada)["losses"]
    assert isinstance(done, Mapping)
    return done


def building(value: int, required: str, limit: int, deductible: int = 0, **more: Any) -> Done:
    return {
        "coverages": [
            {**HALL, "coinsurance": required, "limit": limit, "deductible": deductible, **more}
        ],
        "values": {"building@hall": value},
    }


# Each row: source; true value, share required, limit, deductible, loss; paid, borne.
PUBLISHED = [
    # ISO CP 00 10, F.1, Example 1 (underinsurance), from memory.
    ("CP 00 10 example 1", (250_000, "0.8", 100_000, 250), 40_000, "19750.00", "20250.00"),
    # ISO CP 00 10, F.1, Example 2 (adequate), from memory.
    ("CP 00 10 example 2", (250_000, "0.8", 200_000, 250), 40_000, "39750.00", "250.00"),
    # scottsimmonds.com, a blog on coinsurance: 70,313 paid and a penalty of 4,687, to the dollar.
    ("a blog", (1_000_000, "0.8", 750_000, 0), 75_000, "70312.50", "4687.50"),
    # broome-associates.com, 2018-02-02: pays 62,000. The page prints "37,000 not covered", which
    # does not add up; 100,000 less 62,000 is 38,000.
    ("a page of 2018", (500_000, "0.8", 250_000, 500), 100_000, "62000.00", "38000.00"),
    # crainsurance.ca, "What is co-insurance": 600,000 of 900,000 required.
    ("a Canadian broker", (1_000_000, "0.9", 600_000, 0), 300_000, "200000.00", "100000.00"),
]


@pytest.mark.parametrize(("source", "clause", "loss", "pays", "bears"), PUBLISHED)
def test_published_coinsurance_examples_come_out_as_printed(
    canada: Reference, source: str, clause: tuple[int, str, int, int], loss: int, pays: str,
    bears: str,
) -> None:  # fmt: skip
    given = building(*clause)
    done = paid(
        form(*given["coverages"], values=given["values"], amounts={"building": loss}), canada
    )
    assert (done["paid"], done["borne"]) == (pays, bears), source


INCOME = {"coverage": "loss-of-income", "coinsurance": "0.5"}


@pytest.mark.parametrize(
    ("limit", "pays", "bears"),
    [
        # ISO CP 00 30, Example 1 (underinsurance), as read in a public record of the City of Santa
        # Ana (WebLink document 133111, page 98): "We will pay no more than $60,000. The remaining
        # $20,000 is not covered."
        (150_000, "60000.00", "20000.00"),
        # The same page, Example 2 (adequate insurance); the result is from memory.
        (200_000, "80000.00", "0.00"),
        # The same page: Step 3 "or the limit of insurance, whichever is less"; computed: the share
        # is 70,000 / 200,000 of 80,000, below the limit.
        (70_000, "28000.00", "52000.00"),
    ],
)
def test_the_business_income_examples_measure_a_year_of_income(
    canada: Reference, limit: int, pays: str, bears: str
) -> None:
    given = form(
        {**INCOME, "limit": limit},
        values={"loss-of-income": 400_000},
        place="*",
        amounts={"income": 80_000},
    )
    done = paid(given, canada)
    assert (done["paid"], done["borne"]) == (pays, bears)


def test_income_beyond_the_limit_is_not_paid(canada: Reference) -> None:
    """ISO CP 00 30: the share or the limit, "whichever is less" (City of Santa Ana, page 98)."""
    line = {**INCOME, "limit": 50_000, "coinsurance": "0.1"}
    values = {"loss-of-income": 400_000}
    done = paid(form(line, values=values, place="*", amounts={"income": 80_000}), canada)
    assert done["paid"] == "50000.00"


def test_the_monthly_limit_of_indemnity_caps_each_thirty_days(canada: Reference) -> None:
    """ISO CP 00 30, Monthly Limit of Indemnity (City of Santa Ana, document 133111, page 99).

    Limit 120,000 and fraction 1/4 as read there; losses of 40,000, 20,000 and 30,000 and the result
    of 80,000 paid and 10,000 not covered are from memory.
    """
    line = {"coverage": "loss-of-income", "limit": 120_000, "monthly_limit": "0.25"}
    done = paid(form(line, place="*", amounts={"income": [40_000, 20_000, 30_000]}), canada)
    assert (done["paid"], done["borne_by_reason"]) == ("80000.00", {"monthly-limit": "10000.00"})


def test_a_blanket_counts_all_it_covers_and_one_deductible_an_event(canada: Reference) -> None:
    """ISO CP 00 10, F.1, Example 3 (blanket, 90 %), from memory.

    75,000 + 100,000 + 75,000 insured for 180,000; losses 30,000 + 20,000; pays 39,000.
    """
    shared = {"blanket": "all", "coinsurance": "0.9", "deductible": 1000}
    lines = (
        {**shared, "coverage": "building", "location": "one", "limit": 180_000,
         "limit_basis": "blanket"},
        {**shared, "coverage": "building", "location": "two"},
        {**shared, "coverage": "contents", "location": "two"},
    )  # fmt: skip
    values = {"building@one": 75_000, "building@two": 100_000, "contents@two": 75_000}
    amounts = {"building@one": 30_000, "building@two": 20_000}
    done = paid(form(*lines, values=values, place="one", amounts=amounts), canada)
    assert (done["paid"], done["borne"]) == ("39000.00", "11000.00")
    assert done["borne_by_reason"] == {"coinsurance": "10000.00", "deductible": "1000.00"}


def two_buildings(deductible: int) -> tuple[dict[str, Any], ...]:
    return tuple(
        {"coverage": "building", "location": place, "limit": limit, "deductible": deductible}
        for place, limit in (("one", 60_000), ("two", 80_000))
    )


@pytest.mark.parametrize(
    ("deductible", "first", "pays"),
    [
        # ISO CP 00 10, D. Deductible, Example 1 (City of Santa Ana, document 133111, page 84):
        # "$59,850 + $80,000 = $139,850"; the inputs are from memory.
        (250, 60_100, "139850.00"),
        # Builders risk coverage form (docplayer.net/20124247), Example 1: 59,100 + 80,000.
        (1000, 60_100, "139100.00"),
        # The same form, Example 2: 60,000 + 80,000; its losses (70,000 and 90,000) from memory.
        (1000, 70_000, "140000.00"),
    ],
)
def test_one_deductible_for_two_buildings_comes_off_the_first(
    canada: Reference, deductible: int, first: int, pays: str
) -> None:
    amounts = {"building@one": first, "building@two": 90_000}
    done = paid(form(*two_buildings(deductible), place="one", amounts=amounts), canada)
    assert done["paid"] == pays


def test_a_percentage_of_the_value_comes_off_each_building(canada: Reference) -> None:
    """ISO windstorm percentage deductible, Example 4 (City of Santa Ana, document 126214, page 58).

    2 % of 500,000 is 10,000 a building: losses of 40,000 and 20,000 pay 30,000 and 10,000.
    """
    percent = {"deductible_percent": "0.02", "deductible_percent_of": "value"}
    lines = [
        {"coverage": "building", "location": place, "limit": value, **percent}
        for place, value in (("one", 500_000), ("two", 500_000), ("three", 1_000_000))
    ]
    values = {f"building@{line['location']}": line["limit"] for line in lines}
    amounts = {"building@one": 40_000, "building@two": 20_000}
    done = paid(
        form(*lines, values=values, cause="windstorm-hail", place="one", amounts=amounts), canada
    )
    assert [part["paid"] for part in done["amounts"]] == ["30000.00", "10000.00"]
    assert done["paid"] == "40000.00"


@pytest.mark.parametrize(
    ("order", "pays"), [(None, "19750.00"), ("coinsurance-first", "19750.00"),
                        ("deductible-first", "19875.00")]
)  # fmt: skip
def test_the_order_of_coinsurance_and_deductible_is_data_of_the_terms(
    canada: Reference, order: str | None, pays: str
) -> None:
    """Computed on the inputs of CP 00 10 Example 1: (40,000 - 250) x 0.5 = 19,875.

    Coinsurance first: CP 00 10, D. Deductible (City of Santa Ana, document 133111, page 84): "we
    will first reduce the amount of loss if required by the Coinsurance Condition". No Canadian text
    that was read states an order, so the default is said aloud.
    """
    given = building(250_000, "0.8", 100_000, 250, settling_order=order)
    done = paid(
        form(*given["coverages"], values=given["values"], amounts={"building": 40_000}), canada
    )
    assert done["paid"] == pays
    assert [w.id for w in done["cautions"]] == ([] if order else ["settling-caution-order"])


DEDUCTIBLES = (
    {**HALL, "limit": 500_000, "deductible": 1000},
    {"coverage": "contents", "location": "hall", "limit": 100_000, "deductible": 2500},
)


@pytest.mark.parametrize(
    ("rule", "contents", "bears"),
    [
        # "only the highest deductible will be applied …" (a Canadian "Commercial Building and
        # Contents Broad Form", financedocbox.com/Insurance/113840869)
        ("highest", 20_000, "2500.00"),
        (None, 20_000, "2500.00"),
        # "… unless applying more than one deductible benefits the insured": 1,000 + 700 is less.
        ("highest", 700, "1700.00"),
        ("each", 20_000, "3500.00"),
        ("each", 700, "1700.00"),
    ],
)
def test_of_several_deductibles_the_highest_counts_unless_all_together_are_less(
    canada: Reference, rule: str | None, contents: int, bears: str
) -> None:
    amounts = {"building": 50_000, "contents": contents}
    terms = {"deductible_rule": rule} if rule else {}
    done = paid(form(*DEDUCTIBLES, terms=terms, amounts=amounts), canada)
    assert done["borne"] == bears
    told = rule is None and contents == 20_000
    assert any(w.id == "settling-caution-highest" for w in done["cautions"]) is told


@pytest.mark.parametrize(
    ("loss", "pays"), [("15000", "15000.00"), ("15000.01", "7500.01"), ("40000", "20000.00")]
)
def test_coinsurance_is_waived_unless_the_loss_exceeds_an_amount(
    canada: Reference, loss: str, pays: str
) -> None:
    """The same Canadian form: waived unless the loss exceeds 15,000; the share is computed."""
    given = building(250_000, "0.8", 100_000, coinsurance_waived_up_to=15_000)
    done = paid(
        form(*given["coverages"], values=given["values"], amounts={"building": loss}), canada
    )
    assert done["paid"] == pays


@pytest.mark.parametrize(("loss", "pays"), [(2000, "2000.00"), (2001, "1000.50")])
def test_the_waiver_may_be_the_lesser_of_a_share_and_an_amount(
    canada: Reference, loss: int, pays: str
) -> None:
    """IBC forms 4037 and 4042, from memory: the lesser of 2 % of the amount insured and 5,000."""
    waiver: dict[str, Any] = {"coinsurance_waived_share": "0.02", "coinsurance_waived_up_to": 5000}
    given = building(250_000, "0.8", 100_000, **waiver)
    done = paid(
        form(*given["coverages"], values=given["values"], amounts={"building": loss}), canada
    )
    assert done["paid"] == pays


@pytest.mark.parametrize(
    ("until", "pays"), [("2027-06-02", "40000.00"), ("2027-06-01", "20000.00")]
)
def test_an_agreed_value_suspends_coinsurance_until_its_date(
    canada: Reference, until: str, pays: str
) -> None:
    """CP 00 30 (City of Santa Ana, page 99): coinsurance is suspended until the date agreed."""
    given = building(250_000, "0.8", 100_000, agreed_value_until=until)
    done = paid(
        form(*given["coverages"], values=given["values"], amounts={"building": 40_000}), canada
    )
    assert done["paid"] == pays


def test_a_stated_amount_replaces_the_percentage_of_the_value(canada: Reference) -> None:
    """Stated amount coinsurance, from memory: no penalty while the stated amount is carried."""
    line = {**HALL, "limit": 100_000, "coinsurance_stated_amount": 100_000}
    assert paid(form(line, amounts={"building": 40_000}), canada)["paid"] == "40000.00"
    line["coinsurance_stated_amount"] = 160_000
    assert paid(form(line, amounts={"building": 40_000}), canada)["paid"] == "25000.00"


def test_a_margin_clause_caps_one_place_under_a_blanket(canada: Reference) -> None:
    """Margin clause, from memory: at most 120 % of the value reported for a place."""
    lines = [
        {"coverage": "building", "location": place, "limit": limit, "blanket": "all",
         "margin": "1.2"}
        for place, limit in (("one", 100_000), ("two", 300_000))
    ]  # fmt: skip
    done = paid(form(*lines, place="one", amounts={"building": 150_000}), canada)
    assert (done["paid"], done["borne_by_reason"]) == ("120000.00", {"over-margin": "30000.00"})


@pytest.mark.parametrize(
    ("given", "id", "said"),
    [
        (form({**HALL, "limit": -5}, amounts={"building": 1}), "negative", "building@hall"),
        (form({**HALL}, amounts={"building": 1}), "absent", "building@hall"),
        (
            form({**HALL, "limit": 5}, {**HALL, "limit": 5}, amounts={"building": 1}),
            "two-payers",
            "building@hall",
        ),
        (
            form(
                {**HALL, "limit": 5},
                {"coverage": "sewer-backup", "limit": 6, "sublimit_of": "building"},
                amounts={"building": 1},
            ),
            "sublimit-above",
            "sewer-backup",
        ),
        (
            form(
                {**HALL, "limit": 5, "sublimit_of": "contents"},
                {"coverage": "contents", "location": "hall", "limit": 5, "sublimit_of": "building"},
                amounts={"building": 1},
            ),
            "sublimit-circle",
            "building@hall",
        ),
        (
            form({**HALL, "limit": 5, "sublimit_of": "contents"}, amounts={"building": 1}),
            "sublimit-of-nothing",
            "contents",
        ),
        (form({**HALL, "limit": 5}, cause="meteor", amounts={"building": 1}), "cause", "meteor"),
        (
            form({**HALL, "limit": 5}, date_of_loss="2028-01-01", amounts={"building": 1}),
            "outside",
            "2028",
        ),
        (
            form({**HALL, "limit": 5}, date_of_loss="2026-12-31", amounts={"building": 1}),
            "outside",
            "2026",
        ),
        (form({**HALL, "limit": 5}, place="barn", amounts={"building": 1}), "place", "barn"),
        (form({**HALL, "limit": 5}, place="*", amounts={"building": 1}), "needs-place", "hall"),
        (form({**HALL, "limit": 5}, amounts={"pews": 1}), "component", "pews"),
        (form({**HALL, "limit": 5}, amounts={"building": -1}), "negative-loss", "building"),
        (form({**HALL, "limit": 5}, amounts={"building": [1, 2]}), "months", "building"),
        (form({**HALL, "limit": 5}, amounts={}), "no-amounts", "Fire"),
        (
            form({**HALL, "limit": 5}, {"coverage": "roof"}, amounts={"building": 1}),
            "coverage",
            "roof",
        ),
        (
            form({**HALL, "limit": 5, "coinsurance": "0.8"}, amounts={"building": 1}),
            "no-value",
            "building@hall",
        ),
        (
            form({**HALL, "limit": 5, "basis": "actual-cash-value"}, amounts={"building": 1}),
            "no-depreciation",
            "building@hall",
        ),
        (
            form({**HALL, "limit": 5, "deductible_percent": "0.02"}, amounts={"building": 1}),
            "percent-of-what",
            "building@hall",
        ),
        (
            form(
                {**HALL, "deductible_percent": "0.02", "deductible_percent_of": "limit"},
                amounts={"building": 1},
            ),
            "no-limit",
            "building@hall",
        ),
        (
            form(
                {**HALL, "limit": 5, "deductible": 5, "deductible_percent": "0.02"},
                amounts={"building": 1},
            ),
            "two-deductibles",
            "building@hall",
        ),
        (
            form(
                {**HALL, "limit": 5, "deductible_percent": "2", "deductible_percent_of": "loss"},
                amounts={"building": 1},
            ),
            "ratio",
            "200%",
        ),
        (
            form(
                {**HALL, "limit": 5, "deductible_percent": "0.1", "deductible_percent_of": "loss",
                 "deductible_minimum": 9, "deductible_maximum": 8},
                amounts={"building": 1},
            ),
            "deductible-bounds",
            "building@hall",
        ),
        (
            form(
                {**HALL, "limit": 5, "deductible_percent": "0.1", "deductible_percent_of": "loss"},
                terms={"deductible_rule": "highest"},
                amounts={"building": 1},
            ),
            "highest-of-loss",
            "building@hall",
        ),
        (form({**HALL, "limit": 5, "margin": -1}, amounts={"building": 1}), "negative", "Margin"),
        (
            form(
                {"coverage": "umbrella", "limit": 5, "attaches_to": ["general-liability"]},
                {**HALL, "limit": 5},
                amounts={"building": 1},
            ),
            "attaches-to-nothing",
            "general-liability",
        ),
        (
            form(
                {**HALL, "limit": 5},
                terms={"shared_limit": {"amount": -1, "tops_up": []}},
                amounts={"building": 1},
            ),
            "shared-negative",
            "-1",
        ),
        (
            form(
                {**HALL, "limit": 5},
                terms={"shared_limit": {"amount": 1, "tops_up": ["by-laws", "by-laws"]}},
                amounts={"building": 1},
            ),
            "shared-twice",
            "by-laws",
        ),
        (
            form({**HALL, "limit": 5}, terms={"end": "2026-12-31"}, amounts={"building": 1}),
            "period",
            "2026",
        ),
        (
            form({**HALL, "limit": 5}, reference="flood", amounts={"building": 1}),
            "reference",
            "flood",
        ),
    ],
)  # fmt: skip
def test_what_cannot_be_honoured_is_refused_in_a_sentence_that_names_it(
    canada: Reference, given: dict[str, Any], id: str, said: str
) -> None:
    with pytest.raises(Unusable) as caught:
        settle(given, canada)
    assert caught.value.words.id == f"settling-refused-{id}"
    assert said in Speech(canada, "en").say(caught.value.words)
    assert Speech(canada, "fr").say(caught.value.words)


@pytest.mark.parametrize(
    ("given", "id"),
    [
        ({}, "given-missing-of"),
        ({"terms": {}, "losses": []}, "given-missing"),
        (form({**HALL, "limits": 5}, amounts={"building": 1}), "given-unknown"),
        (form({**HALL, "limit": "many"}, amounts={"building": 1}), "given-number"),
        (form({**HALL, "limit": 0.5}, amounts={"building": 1}), "given-number"),
        (form({**HALL, "limit": 5}, date_of_loss="soon", amounts={"building": 1}), "given-date"),
        (form({**HALL, "limit": 5, "defence": "both"}, amounts={"building": 1}), "given-choice"),
        (
            form({**HALL, "limit": 5}, terms={"start": "soon"}, amounts={"building": 1}),
            "given-date",
        ),
        ({**form({**HALL, "limit": 5}, amounts={"building": 1}), "losses": 3}, "given-wrong"),
        ({**form({**HALL, "limit": 5}, amounts={"building": 1}), "terms": 3}, "given-wrong"),
    ],
)
def test_a_form_that_cannot_be_read_names_the_first_key_that_is_wrong(
    canada: Reference, given: dict[str, Any], id: str
) -> None:
    with pytest.raises(Unusable) as caught:
        settle(given, canada)
    assert caught.value.words.id == id


def test_several_losses_share_the_year_in_order_of_their_dates(canada: Reference) -> None:
    """Common practice, no source: what a loss uses of a yearly maximum is gone for later ones."""
    line = {"coverage": "sewer-backup", "limit": 50_000, "aggregate": 60_000}
    given = form({**HALL, "limit": 500_000}, line, amounts={"building": 1})
    given["losses"] = [
        {"cause": "sewer-backup", "place": "hall", "date_of_loss": day, "amounts": {"building": a}}
        for day, a in (("2027-09-01", 40_000), ("2027-03-01", 45_000))
    ]
    later, earlier = settle(given, canada)["losses"]
    assert (earlier["paid"], later["paid"]) == ("45000.00", "15000.00")
    assert later["borne_by_reason"] == {"over-aggregate": "25000.00"}
    assert (later["id"], earlier["id"]) == ("loss-1", "loss-2")


def test_each_loss_is_told_whole_with_its_steps(canada: Reference) -> None:
    given = building(250_000, "0.8", 100_000, 250)
    told = settle(
        form(*given["coverages"], values=given["values"], amounts={"building": 40_000}), canada
    )
    (done,) = told["losses"]
    assert done["total"] == "40000.00"
    assert done["paid_by"] == {"policy": "19750.00"}
    assert done["borne_by_reason"] == {"coinsurance": "20000.00", "deductible": "250.00"}
    assert done["amounts"] == [
        {"component": "building", "place": "hall", "lost": "40000.00", "paid": "19750.00",
         "borne": "20250.00"}
    ]  # fmt: skip
    assert told["steps"] == (*done["steps"], *done["cautions"])
    say = Speech(canada, "en").say
    assert [say(step) for step in done["steps"]] == [
        (
            "Building, hall: $100,000 is insured and $200,000 is required (coinsurance). "
            "$40,000 × 50% = $20,000."
        ),
        "Building, hall: $20,000 less the deductible (your own part) of $250 = $19,750.",
        "Building, hall: the limit of $100,000 is not reached.",
        "Of $40,000, insurance pays $19,750 and you bear $20,250.",
    ]
