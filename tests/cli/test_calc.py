"""Calculations on their own, on published figures."""

from __future__ import annotations

import json

import pytest
from tests.cli.conftest import Run, printed


def test_coinsurance_pays_the_carried_share_less_the_deductible(run: Run) -> None:
    """A Canadian broker's example (crainsurance.ca, What is co-insurance): 600/900 of 300,000."""
    given = {"value": "1000000", "required": "0.9", "carried": "600000", "loss": "300000"}
    done = printed(run("calc", "coinsurance", "--json", json.dumps(given)))
    assert (done["required_amount"], done["paid"], done["borne"]) == (
        "900000.00", "200000.00", "100000.00"
    )  # fmt: skip
    assert done["steps"]


def test_numbers_written_without_quotes_stay_exact(run: Run) -> None:
    given = '{"value": 1000000, "required": 0.9, "carried": 600000, "loss": 300000.10}'
    assert printed(run("calc", "coinsurance", "--json", given))["paid"] == "200000.07"


def test_the_inputs_can_come_from_standard_input(run: Run) -> None:
    given = json.dumps({"total": "100", "weights": {"a": 1, "b": 1, "c": 1}})
    assert sorted(printed(run("calc", "apportion", given=given))["parts"].values()) == [
        "33.33", "33.33", "33.34"
    ]  # fmt: skip


def test_the_steps_are_spoken_in_french(run: Run) -> None:
    given = json.dumps({"value": "250000", "required": "0.8", "carried": "100000",
                        "loss": "40000", "deductible": "250"})  # fmt: skip
    english = printed(run("calc", "coinsurance", "--json", given))["steps"]
    french = printed(run("--language", "fr", "calc", "coinsurance", "--json", given))["steps"]
    assert len(french) == len(english)
    assert all(a != b for a, b in zip(english, french, strict=True))


@pytest.mark.parametrize("text", ["", "{", "[1]", "3", '{"value": NaN}x'])
def test_what_is_no_json_object_is_wrong_usage(run: Run, text: str) -> None:
    assert run("calc", "tax", "--json", text).exit_code == 2
