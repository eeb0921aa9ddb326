"""What differs between two versions of a record, named so that a person finds it."""

from __future__ import annotations

from datetime import date
from decimal import Decimal

from hypothesis import given
from hypothesis import strategies as st

from quarterday.core.file.difference import Difference, differences, flat
from quarterday.core.file.records import Building, Terms
from quarterday.core.file.records.terms import Coverage, Premium, SharedLimit, StatedTotal

HALL = Building(id="hall", name="Hall", special_features=("organ", "steeple"))


def terms(*coverages: Coverage, **more: object) -> str:
    start = {"stage": "offered", "start": date(2026, 12, 1), "end": date(2027, 12, 1)}
    return Terms.model_validate({**start, "coverages": coverages, **more}).body()


def cover(name: str, limit: int, location: str = "*") -> Coverage:
    return Coverage(coverage=name, location=location, limit=Decimal(limit))


def test_only_what_differs_is_named() -> None:
    changed = HALL.model_copy(update={"name": "Great hall", "storeys": Decimal(2)})
    assert differences(HALL.body(), changed.body()) == (
        Difference("name", "Hall", "Great hall"),
        Difference("storeys", None, "2"),
    )


def test_a_list_of_words_is_one_field() -> None:
    changed = HALL.model_copy(update={"special_features": ("organ",)})
    assert differences(HALL.body(), changed.body()) == (
        Difference("special_features", "organ; steeple", "organ"),
    )


def test_a_part_is_named_by_what_it_is_and_not_by_its_place_in_the_list() -> None:
    before = terms(cover("building", 100, "hall"), cover("contents", 50))
    after = terms(cover("contents", 60), cover("building", 100, "hall"))
    assert differences(before, after) == (
        Difference("coverages[contents/*].limit", "50.00", "60.00"),
    )


def test_a_part_that_comes_or_goes_shows_with_its_fields() -> None:
    after = terms(cover("building", 100, "hall"))
    found = {d.field: d.after for d in differences(terms(), after)}
    assert found["coverages[building/hall].limit"] == "100.00"
    assert {d.before for d in differences(after, terms())} > {"100.00"}


def test_two_parts_of_one_name_are_told_apart() -> None:
    before = terms(cover("building", 100), cover("building", 200))
    after = terms(cover("building", 100), cover("building", 300))
    assert differences(before, after) == (
        Difference("coverages[building/*#2].limit", "200.00", "300.00"),
    )


def test_every_kind_of_part_has_a_name() -> None:
    body = terms(
        premiums=(Premium(coverage="building", kind="fee", amount=Decimal(5)),),
        totals=(StatedTotal(of="tax", amount=Decimal(8)),),
        shared_limit=SharedLimit(amount=Decimal(9), tops_up=("by-laws", "glass")),
    )
    found = flat(body)
    assert found["premiums[building/*/fee].amount"] == "5.00"
    assert found["totals[tax/*].amount"] == "8.00"
    assert found["shared_limit.amount"] == "9.00"
    assert found["shared_limit.tops_up"] == "by-laws; glass"


def test_a_record_that_was_taken_back_has_no_fields() -> None:
    assert flat(None) == {}
    assert {d.after for d in differences(HALL.body(), None)} == {None}


COVERAGES = st.lists(
    st.builds(
        Coverage, coverage=st.sampled_from(("building", "contents")),
        location=st.sampled_from(("*", "hall")), limit=st.none() | st.integers(0, 9).map(Decimal),
        in_shared_limit=st.booleans(),
    ),
    max_size=4,
)  # fmt: skip


@given(COVERAGES, COVERAGES)
def test_there_is_a_difference_exactly_when_the_bodies_differ_but_for_order(
    one: list[Coverage], other: list[Coverage]
) -> None:
    before, after = terms(*one), terms(*other)
    found = differences(before, after)
    assert found == tuple(
        Difference(d.field, d.after, d.before) for d in differences(after, before)
    )

    def named(parts: list[Coverage]) -> dict[tuple[str, str], list[str]]:
        """Return the parts of each name, in their order."""
        places = {part.place for part in parts}
        return {p: [part.model_dump_json() for part in parts if part.place == p] for p in places}

    assert bool(found) == (named(one) != named(other))


def test_an_empty_answer_is_not_the_same_as_none() -> None:
    """Terms that say "no such damages" differ from terms that do not say."""
    silent = Coverage(coverage="punitive-damages")
    spoken = silent.model_copy(update={"damages": ()})
    assert differences(terms(silent), terms(spoken)) == (
        Difference("coverages[punitive-damages/*].damages", None, ""),
    )


@given(COVERAGES)
def test_no_field_of_a_part_is_lost_in_the_names(coverages: list[Coverage]) -> None:
    parts = sum(len(c.model_dump(exclude_none=True)) for c in coverages)
    whole = len(flat(terms()))  # where the empty list is a field too
    assert len(flat(terms(*coverages))) == whole - bool(coverages) + parts
