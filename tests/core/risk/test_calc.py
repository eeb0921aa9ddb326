"""Credibility and limited means on their own: published rows, sentences, and what is refused."""

from __future__ import annotations

from collections.abc import Mapping
from decimal import Decimal
from typing import Any

import pytest
from tests.core.risk.test_credibility import states

from quarterday.catalogue.speech import Speech
from quarterday.core.given import Unusable
from quarterday.core.reference import Reference
from quarterday.core.risk import calc


def of(values: list[list[Any]], weights: list[list[Any]] | None = None) -> dict[str, Any]:
    """Return rows as a program gives them: numbers as text, null where nothing was seen."""

    def told(table: list[list[Any]]) -> list[list[str | None]]:
        return [[None if v is None else str(v) for v in row] for row in table]

    return {"values": told(values)} | ({"weights": told(weights)} if weights else {})


def test_a_negative_variance_is_printed_as_such(canada: Reference) -> None:
    """Loss Data Analytics, example 9.6.2."""
    done = calc.credibility(of([[3, 0, 0], [3, 0, 3]]), canada)
    assert (done["between"], done["k"]) == ("-0.500000", "unlimited")
    assert set(done["weights"]) == {"0.000000"}
    assert "no more than chance" in Speech(canada, "en").say(done["steps"][0])
    assert "-0.5" in Speech(canada, "en").say(done["steps"][0])


def test_a_group_that_was_never_observed_is_told(canada: Reference) -> None:
    done = calc.credibility(of([[0, 1, 0], [2, 1, 2], [None]]), canada)
    assert done["estimates"][2] == done["collective"]
    assert "3 was not observed" in Speech(canada, "en").say(done["steps"][-1])


def test_a_record_of_claims_beside_a_prior(canada: Reference) -> None:
    """z = years / (years + prior years) = 7/10, so seven parts are the record."""
    given = {"model": "gamma-poisson", "claims": 2, "years": 7, "mean": "0.1", "prior_years": 3}
    done = calc.credibility(given, canada)
    assert done["credibility"] == "0.700000"
    assert done["mean"] == "0.230000"  # (0.3 + 2) / (3 + 7)
    said = Speech(canada, "en").say(done["steps"][1])
    assert said == "7 parts your record, 3 parts organisations like yours."
    french = Speech(canada, "fr").say(done["steps"][1]).replace("’", "'")
    assert french == "7 parts de votre dossier, 3 parts d'organismes comme le vôtre."


def test_the_familiar_number(canada: Reference) -> None:
    """1,082 claims (CAS PCAS LIX, 1972), 1,082.22 with the normal's own quantile; rounded up."""
    given = {"model": "full", "chance": "0.9", "within": "0.05", "claims": 300}
    done = calc.credibility(given, canada)
    assert float(done["claims_for_full"]) == pytest.approx(1082.22, abs=0.01)
    assert float(done["credibility"]) == pytest.approx(0.5266, abs=1e-4)


def test_what_a_deductible_keeps_with_inflation(canada: Reference) -> None:
    """Loss Data Analytics 3: exponential 1,000 and 5 % more, over 100, at most 500: 361.66."""
    given = {"distribution": "exponential", "theta": 1000, "factor": "1.05",
             "deductible": 100, "limit": 500}  # fmt: skip
    done = calc.limited_mean(given, canada)
    assert float(done["paid"]) == pytest.approx(361.66, abs=0.01)
    assert float(done["paid_when_paid"]) == pytest.approx(397.797, abs=2e-3)
    assert float(done["paid"]) + float(done["kept"]) == pytest.approx(1050, abs=1e-5)


@pytest.mark.parametrize(
    ("limit", "mean"), [(100, 55.55), (250, 80.25), (500, 91.84), (1000, 97.22), (None, 100)]
)
def test_the_mean_is_of_what_counts_up_to_the_limit(
    canada: Reference, limit: int | None, mean: float
) -> None:
    """The same table; without a limit the mean is that of all losses."""
    given = {"distribution": "pareto", "alpha": 3, "theta": 200} | (
        {} if limit is None else {"limit": limit}
    )
    done = calc.limited_mean(given, canada)
    assert float(done["mean"]) == pytest.approx(mean, abs=0.0101)
    assert float(done["unlimited"]) == pytest.approx(100)


def rows(*, weighted: bool) -> dict[str, Any]:
    five = states(weighted=weighted)
    given: dict[str, Any] = {"values": [[str(v) for v in s.values] for s in five]}
    return given | ({"weights": [[str(w) for w in s.weights or ()] for s in five]} if weighted
                    else {})  # fmt: skip


def test_rows_of_values_and_weights_come_out_as_lists(canada: Reference) -> None:
    """The actuar package's vignette: 1684, 89639, 139120026; premiums computed from its data."""
    done = calc.credibility(rows(weighted=True), canada)
    assert (round(float(done["collective"])), round(float(done["between"]))) == (1684, 89639)
    assert round(float(done["within"])) == 139120026
    assert list(map(float, done["weights"])) == pytest.approx(
        [0.98474, 0.92764, 0.89848, 0.72791, 0.95879], abs=1e-5
    )
    assert [round(float(e), 2) for e in done["estimates"]] == [
        2055.17, 1523.71, 1793.44, 1442.97, 1603.29]  # fmt: skip


def test_rows_without_weights_are_weighed_alike(canada: Reference) -> None:
    """The same vignette: 1671, 72310, 46040."""
    done = calc.credibility(rows(weighted=False), canada)
    names = ("collective", "between", "within")
    assert [round(float(done[name])) for name in names] == [1671, 72310, 46040]


@pytest.mark.parametrize("field", ["values", "weights"])
def test_a_null_is_a_period_that_nobody_observed(canada: Reference, field: str) -> None:
    given = {"values": [["1", "2", "9"], ["4", "5", "6"]],
             "weights": [["1", "1", "1"], ["1", "1", "1"]]}  # fmt: skip
    short = {"values": [["1", "2"], ["4", "5", "6"]], "weights": [["1", "1"], ["1", "1", "1"]]}
    given[field][0][2] = None  # type: ignore[call-overload]
    assert calc.credibility(given, canada) == calc.credibility(short, canada)


@pytest.mark.parametrize(
    ("given", "id"),
    [
        ({}, "given-missing-of"),
        ({"values": [["1", "2"], ["3"]], "weights": [["1", "1"], ["1", "1"]]}, "risk-rows-differ"),
        ({"values": []}, "given-wrong"),
        ({"model": "other"}, "given-choice"),
        ({"model": "buhlmann", **of([[1, 2], [2]])}, "given-choice"),
        ({**of([[1, 2], [2]]), "groups": {}}, "given-unknown-of"),
        (of([[1, 2]]), "risk-two-groups"),
        (of([[1], [2]]), "risk-two-periods"),
        (of([[1, 2], [2]], [[1], [1]]), "risk-rows-differ"),
        ({"model": "gamma-poisson", "claims": 1, "years": -1, "mean": 1, "prior_years": 1},
         "given-ge"),
        ({"model": "gamma-poisson", "claims": 1, "years": 1, "mean": 1, "prior_years": 0},
         "given-gt"),
        ({"model": "full", "chance": 1, "within": "0.1"}, "given-lt"),
    ],
)  # fmt: skip
def test_credibility_refuses_what_it_cannot_use(
    canada: Reference, given: Mapping[str, object], id: str
) -> None:
    with pytest.raises(Unusable) as refused:
        calc.credibility(given, canada)
    assert refused.value.words.id == id
    for language in ("en", "fr"):
        assert Speech(canada, language).say(refused.value.words)


@pytest.mark.parametrize(
    ("given", "id"),
    [
        ({"distribution": "normal"}, "given-choice"),
        ({"distribution": "pareto", "alpha": 2}, "risk-distribution-needs"),
        ({"distribution": "gamma", "alpha": 2, "theta": 1, "mu": 1}, "risk-distribution-needs"),
        ({"distribution": "pareto", "alpha": 1, "theta": 1}, "risk-no-mean"),
        ({"distribution": "exponential", "theta": 0}, "given-gt"),
        ({"distribution": "exponential", "theta": 1.5}, "given-number"),
        ({"distribution": "exponential", "theta": 1, "deductible": -1}, "given-ge"),
        ({"distribution": "exponential", "theta": 1, "share": 2}, "given-le"),
    ],
)
def test_limited_means_refuse_what_they_cannot_use(
    canada: Reference, given: Mapping[str, object], id: str
) -> None:
    with pytest.raises(Unusable) as refused:
        calc.limited_mean(given, canada)
    assert refused.value.words.id == id
    for language in ("en", "fr"):
        assert Speech(canada, language).say(refused.value.words)


def test_a_largest_loss_gives_any_distribution_a_mean(canada: Reference) -> None:
    given = {"distribution": "pareto", "alpha": 1, "theta": 100, "most": 100}
    assert float(calc.limited_mean(given, canada)["mean"]) == pytest.approx(69.3147, abs=1e-4)


def test_a_second_way_to_say_the_same_is_refused_by_name(canada: Reference) -> None:
    """One form alone: rows for groups, one limit for a limited mean."""
    for ask, given in (
        (calc.credibility, {**of([[1, 2], [2]]), "groups": {}}),
        (calc.limited_mean, {"distribution": "exponential", "theta": 1, "at": [1]}),
    ):
        with pytest.raises(Unusable) as refused:
            ask(given, canada)
        said = Speech(canada, "en").say(refused.value.words)
        assert said.startswith(('"groups" is not an input', '"at" is not an input'))


def test_every_step_is_said_in_both_languages(canada: Reference) -> None:
    asked = [
        calc.credibility(of([[0, 1, 0], [2, 1, 2]]), canada),
        calc.credibility({"model": "full", "chance": "0.9", "within": "0.05"}, canada),
        calc.limited_mean({"distribution": "lognormal", "mu": 7, "sigma": "1.5",
                           "limit": Decimal(1000)}, canada),
    ]  # fmt: skip
    for done in asked:
        english = [Speech(canada, "en").say(step) for step in done["steps"]]
        french = [Speech(canada, "fr").say(step) for step in done["steps"]]
        assert all(a != b for a, b in zip(english, french, strict=True))
