"""The causes of loss: complete, in both languages, with honest figures and useful tips."""

from __future__ import annotations

from decimal import Decimal

import pytest

from quarterday.catalogue.load import reference
from quarterday.core.reference import Cause

CAUSES = reference().causes
IDS = """
fire lightning water-escape sewer-backup overland-flood ice-damming rain-entry windstorm-hail
snow-weight earthquake theft theft-of-money dishonesty vandalism impact equipment-breakdown glass
power-surge cyber-incident smoke collapse injury-on-premises injury-away damage-to-others
abuse-allegation wrongful-act employment-practices professional-advice non-owned-vehicle
volunteer-injury libel-and-slander other
""".split()  # noqa: SIM905 - one line an idea would be 32 lines
WATER = {"water-escape", "sewer-backup", "overland-flood", "ice-damming", "rain-entry"}


def test_the_catalogue_holds_every_cause() -> None:
    assert set(CAUSES) == set(IDS)


def test_five_causes_count_as_water() -> None:
    """Common practice, no source: what the trade calls water damage."""
    assert reference().water_causes == WATER


def test_water_is_about_two_thirds_of_the_claims_of_an_average_organisation() -> None:
    """Common practice, no source."""
    by_cause = {c.id: c.frequency.value for c in CAUSES.values() if c.frequency}
    share = sum(by_cause[id] for id in WATER) / sum(by_cause.values())
    assert 0.6 < share < 0.7


@pytest.mark.parametrize("cause", CAUSES.values(), ids=lambda c: c.id)
def test_every_figure_says_that_it_is_illustrative(cause: Cause) -> None:
    """No published Canadian figures for such organisations were found, so all are marked."""
    for dated in (cause.frequency, cause.mean_severity):
        if dated is not None:
            assert dated.illustrative
            assert dated.value > 0
            assert dated.source.publisher == "Quarterday" or dated.source.place


def test_fire_severity_is_the_published_average() -> None:
    """NFPA, R. Campbell, June 2013: US$111 million a year over 1,780 fires is US$62,360."""
    fire = CAUSES["fire"].mean_severity
    assert fire is not None
    assert abs(fire.value - Decimal(111_000_000) / 1780) < 1


def test_water_severity_is_the_published_average_of_quebec_homes() -> None:
    """Bureau d'assurance du Canada, infoassurance.ca, 2019: 12 384 $."""
    water = CAUSES["water-escape"].mean_severity
    assert water is not None
    assert water.value == 12384


def test_harm_to_people_has_no_odds_and_no_price() -> None:
    """An abuse allegation ranks by duty; the absence of figures is deliberate."""
    abuse = CAUSES["abuse-allegation"]
    assert abuse.frequency is None
    assert abuse.mean_severity is None
    assert abuse.tips[0].en.startswith("Anyone at risk now: call emergency services")
    assert "protection de l'enfance" in abuse.tips[0].fr


@pytest.mark.parametrize("cause", CAUSES.values(), ids=lambda c: c.id)
def test_every_cause_but_the_last_has_tips_in_short_sentences(cause: Cause) -> None:
    assert bool(cause.tips) == (cause.id != "other")
    assert len(cause.tips) <= 5
    for tip in cause.tips:
        assert tip.en.endswith(".")
        assert tip.fr.endswith(".")
        assert len(tip.en.split()) < 25
        assert len(tip.fr.split()) < 25


@pytest.mark.parametrize("cause", CAUSES.values(), ids=lambda c: c.id)
def test_a_name_fits_within_a_sentence(cause: Cause) -> None:
    for name in (cause.name.en, cause.name.fr):
        assert name[0].islower()
        assert not name.endswith(".")


def test_work_that_needs_a_licence_is_left_to_those_who_have_one() -> None:
    """Safety: a tip sends people to licensed trades and officials, never volunteers up a roof."""
    said = {id: " ".join(tip.en for tip in cause.tips) for id, cause in CAUSES.items()}
    assert "licensed people" in said["fire"]
    assert "fire department" in said["fire"]
    assert "licensed plumber" in said["sewer-backup"]
    assert "engineer" in said["collapse"]
    assert "never by volunteers on ladders" in said["snow-weight"]
    assert "call the police first" in said["vandalism"]
