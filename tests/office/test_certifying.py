"""Papers for people outside: only what is in force, to whom it concerns, and on record."""

from __future__ import annotations

import hashlib
from dataclasses import replace
from datetime import date
from decimal import Decimal
from pathlib import Path

import pytest
from tests.office.conftest import load_account
from tests.papers.judge import judge, missing
from tests.papers.reading import elements, page_texts

from quarterday.catalogue.load import reference
from quarterday.catalogue.speech import Speech
from quarterday.core.file.entry import Draft, Origin
from quarterday.core.file.records import Bound, EvidenceSent, Interest, Record, Terms
from quarterday.invent.demo.book import HERE as DEMO_DATA
from quarterday.office import certifying
from quarterday.office.brand import FILE_NAME, brokerage
from quarterday.office.certifying import Prepared, Stranger
from quarterday.office.evidence import archive
from quarterday.office.trouble import Trouble
from quarterday.store import ledger
from quarterday.store.verify import verify

DAY = date(2026, 11, 25)
PANTRY = "HW-1003"  # rents; a freezer on lease; in force to 2027-01-01
CHAPEL = "HW-1016"  # its roof loan is paid off
SCHOOL = Stranger("Alder Street School", "3 Ferry Street", "the gym, Tuesday evenings")
LANGUAGES = ("en", "fr")


@pytest.fixture
def pantry(db: None) -> str:
    return load_account(PANTRY)


@pytest.fixture
def chapel(db: None) -> str:
    return load_account(CHAPEL)


def certificate(
    file: str, holder: str = "school", told: Stranger = SCHOOL, *, day: date = DAY,
    language: str = "en", by: str = "ann",
) -> Prepared:  # fmt: skip
    house, speech = brokerage(DEMO_DATA / FILE_NAME), Speech(reference(), language)
    return certifying.certify(ledger.load(file), holder, told, house, speech, day=day, by=by)


def discharge(file: str, holder: str, *, day: date = DAY, language: str = "en") -> Prepared:
    house, speech = brokerage(DEMO_DATA / FILE_NAME), Speech(reference(), language)
    return certifying.ask_discharge(ledger.load(file), holder, house, speech, day)


def write(file: str, record: Record) -> None:
    draft = Draft("edit", record.kind, record.key, record.body(), Origin(way="person"))
    ledger.append(file, [draft], by="ann", expected_seq=None)


def issued(file: str) -> Terms:
    return next(t for t in ledger.load(file).all(Terms) if t.stage == "issued")


def refused(trouble: pytest.ExceptionInfo[Trouble], language: str = "en") -> str:
    return Speech(reference(), language).say(trouble.value.words)


def text_of(made: Prepared, folder: Path) -> str:
    return " ".join(" ".join(page_texts(made.pdf, folder)).split())


def test_a_certificate_states_the_policy_in_force_and_nothing_of_the_offer(
    pantry: str, tmp_path: Path
) -> None:
    """The offer runs to 2028-01-01 and comes later in the file; it is not in force."""
    assert ledger.load(pantry).terms(date(2027, 1, 1), "offered") is not None
    text, terms = text_of(certificate(pantry), tmp_path), issued(pantry)
    liability = terms.find("general-liability")
    assert liability is not None
    assert f"${liability.limit:,.0f}" in text
    assert f"${liability.aggregate:,.0f} in all" in text
    assert f"{terms.policy_number}" in text
    assert "January 1, 2026 to January 1, 2027" in text
    assert "2028" not in text
    for told in (SCHOOL.name, SCHOOL.address, SCHOOL.purpose):
        assert f"{told}" in text


@pytest.mark.parametrize(
    ("language", "said"),
    [("en", "10% of the loss, at least $500"), ("fr", "10 % du sinistre, au moins 500 $")],
)
def test_a_percentage_deductible_stands_on_a_certificate(
    pantry: str, tmp_path: Path, language: str, said: str
) -> None:
    """It showed a dash there, as if the organisation bore nothing."""
    percent = {
        "deductible": None,
        "deductible_percent": Decimal("0.1"),
        "deductible_percent_of": "loss",
        "deductible_minimum": Decimal("500.00"),
    }
    terms = issued(pantry)
    lines = tuple(
        line.model_copy(update=percent) if line.coverage == "general-liability" else line
        for line in terms.coverages
    )
    write(pantry, terms.model_copy(update={"coverages": lines}))
    text = text_of(certificate(pantry, language=language), tmp_path)
    assert said in text.replace("\xa0", " ").replace("\u202f", " ")


def test_a_certificate_promises_nothing_and_says_so(pantry: str, tmp_path: Path) -> None:
    """Common practice, no source: informs only, confers no rights, does not amend the policy."""
    said = text_of(certificate(pantry), tmp_path)
    for part in ("gives you no rights", "does not change the policy", "promises nothing"):
        assert part in said
    dit = text_of(certificate(pantry, language="fr"), tmp_path)
    for part in ("aucun droit", "ne change rien au contrat", "ne promet rien"):
        assert part in dit


def test_what_is_no_business_of_a_hall_owner_is_not_shown(pantry: str, tmp_path: Path) -> None:
    assert issued(pantry).find("directors-and-officers") is not None
    text = text_of(certificate(pantry), tmp_path)
    assert "Directors and officers" not in text
    assert "Contents" not in text


def test_a_lessor_on_file_sees_what_is_leased(pantry: str, tmp_path: Path) -> None:
    text = text_of(certificate(pantry, "freezer-lease", Stranger()), tmp_path)
    lease = ledger.load(pantry).get(Interest, "freezer-lease")
    assert lease is not None
    for told in (lease.name, lease.reference, lease.item, "Contents"):
        assert f"{told}" in text


def test_a_licensed_person_is_named_and_nobody_else(pantry: str, tmp_path: Path) -> None:
    licensed = text_of(certificate(pantry, by="Judith Hollis"), tmp_path)
    assert "Issued by Judith Hollis, licence RIB-000417" in licensed
    for other in ("Tess Okonjo", "ann"):
        assert "Issued by" not in text_of(certificate(pantry, by=other), tmp_path)


def test_who_got_which_certificate_when_is_on_the_ledger_and_in_the_evidence(pantry: str) -> None:
    made = certificate(pantry)
    assert ledger.load(pantry).all(EvidenceSent) == ()
    entry = certifying.send(made, by="ann")
    assert entry is not None
    assert (entry.act, entry.by, entry.kind) == ("certify", "ann", "evidence sent")
    (kept,) = ledger.load(pantry).all(EvidenceSent)
    assert kept == made.record
    assert (kept.name, kept.sent_on) == (SCHOOL.name, DAY)
    assert kept.document == hashlib.sha256(made.pdf).hexdigest()
    assert archive(pantry, reference()).documents == 1
    assert verify(pantry).is_sound


def test_sending_the_same_again_writes_nothing_and_the_next_day_counts_on(pantry: str) -> None:
    first = certificate(pantry)
    certifying.send(first, by="ann")
    again = certificate(pantry, told=Stranger())
    assert again.pdf == first.pdf
    assert certifying.send(again, by="ann") is None
    later = certificate(pantry, told=Stranger(), day=date(2026, 12, 1))
    assert later.record.name == SCHOOL.name
    assert later.pdf != first.pdf
    assert certifying.send(later, by="ann") is not None
    assert len(ledger.load(pantry).all(EvidenceSent)) == 2


def test_a_paper_for_outsiders_changes_nothing_of_the_file(pantry: str) -> None:
    """A signed review still covers the file after a certificate went out."""
    before = ledger.load(pantry).last_change
    certifying.send(certificate(pantry), by="ann")
    assert ledger.load(pantry).last_change == before


@pytest.mark.parametrize("day", [date(2027, 1, 1), date(2025, 12, 31), date(2030, 6, 1)])
def test_a_day_without_a_policy_is_refused(pantry: str, day: date) -> None:
    """The last day is the renewal, when the new policy is offered but not issued."""
    with pytest.raises(Trouble) as trouble:
        certificate(pantry, day=day)
    said = refused(trouble)
    assert PANTRY in said
    assert "no policy, issued or bound, is in force" in said
    assert "--as-of" in said


def test_what_the_insurer_bound_is_certified_with_its_binder_from_the_day_it_was_bound(
    pantry: str, tmp_path: Path
) -> None:
    agreed = ledger.load(pantry).terms(date(2027, 1, 1), "offered")
    assert agreed is not None
    write(pantry, Bound(renewal=agreed.start, bound_on=date(2027, 1, 4), by="L. Park",
                        binder="B-7", agreed=agreed))  # fmt: skip
    text = text_of(certificate(pantry, day=date(2027, 1, 4)), tmp_path)
    assert "Binder B-7" in text
    assert "not issued yet" in text
    with pytest.raises(Trouble):
        certificate(pantry, day=date(2027, 1, 3))


@pytest.mark.parametrize("lacking", [{"policy_number": None}, {"insurer": None}])
def test_a_policy_that_nobody_could_look_up_is_not_certified(
    pantry: str, lacking: dict[str, None]
) -> None:
    write(pantry, issued(pantry).model_copy(update=lacking))
    with pytest.raises(Trouble) as trouble:
        certificate(pantry)
    assert "no insurer or no number" in refused(trouble)


def test_an_empty_certificate_is_refused(pantry: str) -> None:
    write(pantry, issued(pantry).model_copy(update={"coverages": ()}))
    with pytest.raises(Trouble) as trouble:
        certificate(pantry)
    assert "Alder Street School" in refused(trouble)


def test_an_unknown_holder_is_told_who_is_known(pantry: str) -> None:
    with pytest.raises(Trouble) as trouble:
        certificate(pantry, "skool", Stranger())
    said = refused(trouble)
    assert "“skool”" in said
    assert "freezer-lease" in said
    assert "--name" in said
    assert "«\N{NO-BREAK SPACE}skool\N{NO-BREAK SPACE}»" in refused(trouble, "fr")


@pytest.mark.parametrize("told", [Stranger(name="Another"), Stranger(address="Elsewhere")])
def test_who_is_on_file_is_not_renamed_by_the_way(pantry: str, told: Stranger) -> None:
    with pytest.raises(Trouble) as trouble:
        certificate(pantry, "freezer-lease", told)
    assert "Coldbrook Equipment Leasing" in refused(trouble)


def test_a_name_too_long_to_keep_is_refused_and_not_cut(pantry: str) -> None:
    with pytest.raises(Trouble):
        certificate(pantry, told=replace(SCHOOL, name="x" * 301))


def test_who_is_paid_off_gets_a_request_for_a_discharge_and_no_certificate(
    chapel: str, tmp_path: Path
) -> None:
    with pytest.raises(Trouble) as trouble:
        certificate(chapel, "roof-loan", Stranger())
    assert f"quarterday discharge {CHAPEL} roof-loan" in refused(trouble)
    made = discharge(chapel, "roof-loan")
    text = text_of(made, tmp_path)
    for told in ("Caisse des Trois-Clochers", "TC-4470", "VT-62288", "Your reply", "Consent"):
        assert told in text
    assert "26,000" not in text  # what was owed is nobody's business any more
    certifying.send(made, by="ann")
    (kept,) = ledger.load(chapel).all(EvidenceSent)
    assert (kept.paper, kept.role, kept.holder) == ("discharge-request", "lender", "roof-loan")


def test_a_discharge_is_asked_only_of_who_is_paid_off_and_known(pantry: str) -> None:
    with pytest.raises(Trouble) as trouble:
        discharge(pantry, "freezer-lease")
    assert "is not paid off on file" in refused(trouble)
    with pytest.raises(Trouble) as unknown:
        discharge(pantry, "nobody")
    assert "freezer-lease" in refused(unknown)


def test_a_lessor_that_is_paid_off_reads_of_a_lease(pantry: str, tmp_path: Path) -> None:
    lease = ledger.load(pantry).get(Interest, "freezer-lease")
    assert lease is not None
    write(pantry, lease.model_copy(update={"status": "paid-off"}))
    assert "this lease has ended" in text_of(discharge(pantry, "freezer-lease"), tmp_path)
    fr = text_of(discharge(pantry, "freezer-lease", language="fr"), tmp_path)
    assert "ce bail a pris fin" in fr


def test_a_file_s_name_is_safe_whatever_the_holder_is_called(pantry: str) -> None:
    made = certificate(pantry, "../é/x")
    assert made.name == f"{PANTRY}-certificate------x-2026-11-25-en.pdf"


@pytest.mark.parametrize("language", LANGUAGES)
def test_each_fits_a_page_under_one_heading(
    pantry: str, language: str, tmp_path: Path
) -> None:  # fmt: skip
    made = certificate(pantry, language=language)
    assert len(page_texts(made.pdf, tmp_path)) == 1
    assert [e.role for e in elements(made.pdf)].count("H1") == 1


@pytest.mark.skipif(bool(missing()), reason=f"veraPDF cannot be asked: {missing()}")
def test_both_papers_meet_both_standards_in_both_languages(
    pantry: str, db: None, tmp_path: Path
) -> None:
    """PDF/UA-1 (ISO 14289-1) and PDF/A-2a (ISO 19005-2), as veraPDF judges."""
    chapel = load_account(CHAPEL)
    files = []
    for language in LANGUAGES:
        for made in (certificate(pantry, language=language),
                     discharge(chapel, "roof-loan", language=language)):  # fmt: skip
            files.append(tmp_path / made.name)
            files[-1].write_bytes(made.pdf)
    verdicts = judge(files, tmp_path)
    assert len(verdicts) == 8
    assert [v for v in verdicts if not v.passes] == []
