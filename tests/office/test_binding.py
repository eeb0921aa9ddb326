"""A binder says who confirmed which terms; a check says what the policy lacks of them."""

from __future__ import annotations

from datetime import date, timedelta
from decimal import Decimal
from typing import Any

import pytest
from tests.office.conftest import DAY, edit

from quarterday.catalogue.load import reference
from quarterday.core.file.entry import Draft, Origin
from quarterday.core.file.fold import File
from quarterday.core.file.records import Bound, PolicyChecked, Terms
from quarterday.core.review.case import Case
from quarterday.core.review.review import review
from quarterday.core.review.state import renewal_at_work, state
from quarterday.office import binding, checking
from quarterday.office.trouble import Moved, Trouble
from quarterday.store import ledger
from quarterday.store.conflict import Conflict

RENEWAL, LATER = date(2027, 1, 15), date(2027, 1, 28)
OPTION = "option/by-laws/*"


def bind(file: str, **changes: Any) -> None:
    held = ledger.load(file)
    given = {"insurer_person": "Ines Marlow", "on": DAY, "today": DAY, "accepted": (OPTION,),
             "number": "B-77", "said": "By telephone.", "by": "ann", "seen": held.seq}  # fmt: skip
    binding.bind(held, **{**given, **changes})


def issue(file: str, **changes: Any) -> Terms:
    """Load a policy that says what was bound, but for ``changes``."""
    bound = ledger.load(file).get(Bound, str(RENEWAL))
    assert bound is not None
    made = bound.agreed.model_copy(update={"stage": "issued", "options": (), **changes})
    draft = Draft("load", made.kind, made.key, made.body(), Origin(way="workbook", name="p.xlsx"))
    ledger.append(file, [draft], by="ann", expected_seq=None)
    return made


def stands(file: str, day: date) -> str:
    case = Case(ledger.load(file), reference(), day)
    return state(case, renewal_at_work(case))


def check(file: str, said: str = "", seen: int | None = None, on: date = LATER) -> None:
    checking.check(ledger.load(file), on=on, today=LATER, said=said, by="ann", seen=seen)


def test_a_binder_keeps_who_confirmed_it_and_the_terms_that_were_agreed(flagship: str) -> None:
    before = ledger.load(flagship)
    bind(flagship)
    file = ledger.load(flagship)
    (bound,) = file.all(Bound)
    assert (bound.by, bound.bound_on, bound.binder) == ("Ines Marlow", DAY, "B-77")
    assert bound.accepted == (OPTION,)
    by_laws = bound.agreed.find("by-laws")
    assert by_laws is not None
    assert by_laws.limit == Decimal(1_000_000)
    offered = file.terms(RENEWAL, "offered")
    assert offered is not None
    more = sum(p.amount for p in bound.agreed.premiums) - sum(p.amount for p in offered.premiums)
    assert more == Decimal(410)
    assert stands(flagship, DAY) == "bound"
    assert file.last_change == before.last_change  # it changes nothing that was reviewed


@pytest.mark.parametrize(
    "change",
    [{"insurer_person": " "}, {"on": DAY + timedelta(days=1)}, {"accepted": ("option/none/*",)},
     {"number": "x" * 301}, {"insurer_person": "a\x00b"}],
)  # fmt: skip
def test_a_binder_that_is_not_whole_is_refused(change: dict[str, Any], flagship: str) -> None:
    with pytest.raises(Trouble):
        bind(flagship, **change)
    assert ledger.load(flagship).all(Bound) == ()


def test_without_an_offer_nothing_is_bound(flagship: str) -> None:
    draft = Draft("withdraw", Terms.kind, f"{RENEWAL}/offered", None, Origin(way="person"))
    ledger.append(flagship, [draft], by="ann", expected_seq=None)
    with pytest.raises(Trouble, match="acts-no-offer"):
        bind(flagship)


def test_two_people_who_bind_at_once_see_each_other(flagship: str) -> None:
    seen = ledger.load(flagship).seq
    bind(flagship, seen=seen)
    with pytest.raises(Conflict):
        bind(flagship, seen=seen, insurer_person="Somebody else")
    assert ledger.load(flagship).all(Bound)[0].by == "Ines Marlow"


def test_a_policy_that_says_what_was_bound_is_checked_without_more_words(flagship: str) -> None:
    bind(flagship)
    issue(flagship)
    assert stands(flagship, DAY) == "bound"  # it came before its first day
    found = checking.check_of(ledger.load(flagship))
    assert (found.differences, found.checked) == ((), None)
    check(flagship)
    assert checking.check_of(ledger.load(flagship)).checked is not None
    case = Case(ledger.load(flagship), reference(), LATER)
    assert state(case, RENEWAL) == "checked"
    assert renewal_at_work(case) == date(2028, 1, 15)


def test_a_policy_that_lacks_the_option_is_found_out_and_needs_words(flagship: str) -> None:
    """The by-laws limit that was agreed (1,000,000) is printed as before (250,000)."""
    bind(flagship)
    offered = ledger.load(flagship).terms(RENEWAL, "offered")
    assert offered is not None
    issue(flagship, coverages=offered.coverages)
    (lacks,) = checking.check_of(ledger.load(flagship)).worse
    assert (lacks.coverage, lacks.kind) == ("by-laws", "limit")
    done = review(ledger.load(flagship), reference(), LATER)
    assert "terms.not-as-agreed" in {f.rule for f in done.findings}
    with pytest.raises(Trouble, match="acts-check-words"):
        check(flagship)
    check(flagship, said="Asked Ines Marlow to correct it from the first day.")
    (record,) = ledger.load(flagship).all(PolicyChecked)
    assert (record.differences, record.by) == (1, "ann")


def test_a_policy_that_is_corrected_is_to_be_checked_again(flagship: str) -> None:
    bind(flagship)
    issue(flagship, insurer="Another name")
    check(flagship, said="Asked.")
    assert checking.check_of(ledger.load(flagship)).checked is not None
    issue(flagship)
    assert checking.check_of(ledger.load(flagship)).checked is None
    assert stands(flagship, LATER) == "bound"


def test_before_the_policy_comes_there_is_nothing_to_check(flagship: str) -> None:
    """The expiring policy of the demo was never offered here: nothing to hold it to."""
    bind(flagship)
    with pytest.raises(Trouble, match="acts-nothing-to-check"):
        check(flagship)


def test_a_file_that_changed_under_the_eyes_is_compared_again(flagship: str) -> None:
    bind(flagship)
    issue(flagship)
    seen = ledger.load(flagship).seq
    edit(flagship, phone="705-555-0178")
    with pytest.raises(Moved):
        check(flagship, seen=seen)
    assert ledger.load(flagship).all(PolicyChecked) == ()


def test_a_check_is_not_dated_ahead(flagship: str) -> None:
    bind(flagship)
    issue(flagship)
    with pytest.raises(Trouble, match="acts-future"):
        check(flagship, on=LATER + timedelta(days=1))


def test_an_office_that_bound_outside_is_held_to_the_offer(flagship: str) -> None:
    file: File = ledger.load(flagship)
    offered = file.terms(RENEWAL, "offered")
    assert offered is not None
    made = offered.model_copy(update={"stage": "issued", "options": ()})
    draft = Draft("load", made.kind, made.key, made.body(), Origin(way="workbook", name="p.xlsx"))
    ledger.append(flagship, [draft], by="ann", expected_seq=None)
    found = checking.check_of(ledger.load(flagship))
    assert (found.bound, found.agreed.key, found.worse) == (None, offered.key, ())
