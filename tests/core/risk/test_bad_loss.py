"""The loss once in a hundred years of one line: by hand, and against the simulated years."""

from __future__ import annotations

from dataclasses import replace
from datetime import date
from decimal import Decimal
from math import log

import numpy as np
import pytest
from tests.core.risk.conftest import VALUED, RiskOf, building, claim, liability, terms_of

from quarterday.catalogue.speech import Speech
from quarterday.core.figure import walk
from quarterday.core.file.records import Building
from quarterday.core.file.records.terms import Coverage
from quarterday.core.reference import LANGUAGES, Reference
from quarterday.core.risk.bad_loss import BadLoss, bad_loss
from quarterday.core.risk.perils import Model
from quarterday.core.risk.risk import Risk
from quarterday.core.risk.sampling import exact, shown
from quarterday.core.risk.years import simulated

LIMIT = 5_000
SEWER = {"coverage": "sewer-backup", "limit": LIMIT, "deductible": 1_000}
BACKUPS = [claim(str(n), date(2019 + n, 6, 1), "sewer-backup") for n in range(6)]


@pytest.fixture(scope="module")
def risk(risk_case: RiskOf) -> Risk:
    return risk_case(*BACKUPS, terms_of("offered", building(), SEWER, liability()))


def line_of(risk: Risk, coverage: str = "sewer-backup") -> Coverage:
    return next(c for c in risk.alternatives[0].terms.coverages if c.coverage == coverage)


def found(risk: Risk, one_in: int = 100) -> BadLoss:
    made = bad_loss(risk, line_of(risk), one_in)
    assert made is not None
    return made


@pytest.mark.parametrize("one_in", [20, 100])
def test_of_one_cause_it_is_a_quantile_of_the_severity(risk: Risk, one_in: int) -> None:
    """1 − exp(−rate × S(x)) = 1/n, so x is the quantile of 1 + ln(1 − 1/n) / rate."""
    (peril,) = (p for p in risk.model.perils if p.cause == "sewer-backup")
    by_hand = float(peril.severity.quantile(1 + log(1 - 1 / one_in) / peril.rate))
    made = found(risk, one_in)
    assert made.figure.money == shown(exact(by_hand), "CAD")
    assert (made.cause, made.place) == ("sewer-backup", "hall")
    assert sum(made.amounts.values()) == pytest.approx(made.figure.money.amount, abs=1)


def test_some_loss_of_one_simulated_year_in_a_hundred_is_larger(risk: Risk) -> None:
    only = Model(tuple(p for p in risk.model.perils if p.cause == "sewer-backup"))
    years = 200_000
    events = simulated(only, "bad loss", 0, years)
    largest = np.zeros(years)
    np.maximum.at(largest, events.year, events.size)
    amount = float(found(risk).figure.money.amount)
    share = float((largest > amount).mean())
    assert share == pytest.approx(0.01, abs=1e-3)  # two digits of the amount leave that much


def test_causes_and_places_add_up(risk_case: RiskOf) -> None:
    """The same hall twice: each has half the claims, and together they ask as often as one."""
    one = risk_case(*BACKUPS, terms_of("offered", building(), SEWER, liability()))
    annex = Building(id="annex", name="Annex", ownership="own")
    worth = VALUED.model_copy(update={"building": "annex"})
    lines = (building(), building(location="annex"), SEWER, liability())
    anywhere = [c.model_copy(update={"location": None}) for c in BACKUPS]
    two = risk_case(annex, worth, *anywhere, terms_of("offered", *lines))
    amounts = [float(found(risk).figure.money.amount) for risk in (one, two)]
    assert amounts[0] == pytest.approx(amounts[1], rel=0.02)


def test_by_laws_are_met_beyond_a_total_loss_alone(risk_case: RiskOf) -> None:
    """A hall of little worth that burns often: what today's rules add, up to a fifth of it."""
    fires = [claim(str(n), c.date_of_loss, "fire") for n, c in enumerate(BACKUPS)]
    small = building(20_000)
    by_laws = {"coverage": "by-laws", "limit": 100}
    risk = risk_case(*fires, terms_of("offered", small, by_laws, liability()))
    perils = tuple(replace(p, rate=p.rate * 50) for p in risk.model.perils)
    often = replace(risk, trials=(replace(risk.trials[0], model=Model(perils)),),
                    model=Model(perils))  # fmt: skip
    made = bad_loss(often, line_of(often, "by-laws"))
    assert made is not None
    assert set(made.amounts) == {"by-laws"}
    assert bad_loss(risk, line_of(risk, "by-laws")) is None


def test_a_limit_that_lasts_has_none(risk: Risk, risk_case: RiskOf) -> None:
    enough = {**SEWER, "limit": 900_000}
    other = risk_case(*BACKUPS, terms_of("offered", building(), enough, liability()))
    assert bad_loss(other, line_of(other)) is None
    absent = line_of(risk).model_copy(update={"location": "barn", "limit": Decimal(1)})
    assert bad_loss(risk, absent) is None


def test_it_says_what_it_rests_on(risk: Risk, canada: Reference) -> None:
    figure = found(risk).figure
    ids = {node.id for _, node in walk(figure)}
    assert {"risk-rate@sewer-backup", "risk-size@sewer-backup", "claim-incurred@0"} <= ids
    for language in LANGUAGES:
        parts = Speech(canada, language).parts(figure)
        assert "100" in parts.label
        assert "100" in parts.how
        assert parts.caution
