"""What would it pay, and which terms are better, from the terminal."""

from __future__ import annotations

import json
from decimal import Decimal
from pathlib import Path

import pytest
from tests.cli.conftest import Run, printed

DAY = ("--as-of", "2026-11-25")


def test_paid_and_borne_add_up_to_each_loss(loaded: Run) -> None:
    tried = [loss for loss in printed(loaded("pay", "HW-1001", *DAY, "--json")) if "paid" in loss]
    assert len(tried) > 8
    for loss in tried:
        assert Decimal(loss["paid"]) + Decimal(loss["borne"]) == Decimal(loss["total"])
        assert sum(map(Decimal, loss["borne_by_reason"].values())) == Decimal(loss["borne"])


def test_one_loss_is_walked_through_step_by_step(loaded: Run) -> None:
    done = printed(loaded("pay", "HW-1001", "--loss", "basement-backup", *DAY, "--json"))
    assert done["paid"] == "25000.00"  # the sublimit of the offer
    assert len(done["steps"]) > 2


def test_a_loss_of_ones_own_comes_from_a_file(loaded: Run, tmp_path: Path) -> None:
    told = tmp_path / "loss.yaml"
    told.write_text(
        "id: mine\ncause: fire\nplace: hall\ndate_of_loss: 2027-06-01\n"
        "amounts:\n  building: '10000.00'\n",
        "utf-8",
    )
    done = printed(loaded("pay", "HW-1001", "--loss", str(told), *DAY, "--json"))
    assert (done["loss"], done["total"]) == ("mine", "10000.00")


def test_an_unknown_loss_is_wrong_usage_and_the_library_is_named(loaded: Run) -> None:
    result = loaded("pay", "HW-1001", "--loss", "meteor", *DAY)
    assert result.exit_code == 2
    assert "burst-pipe" in result.stderr


def test_terms_that_are_not_on_file_are_told(loaded: Run) -> None:
    result = loaded("pay", "HW-1001", "--terms", "issued", *DAY)
    assert result.exit_code == 1
    assert "HW-1001" in result.stderr


def test_terms_compared_with_themselves_do_not_differ(loaded: Run) -> None:
    done = printed(loaded("compare", "HW-1001", "offered", "offered", *DAY, "--json"))
    assert done["differences"] == []
    assert {loss["more_borne"] for loss in done["losses"]} == {"0.00"}


def test_a_comparison_turned_round_turns_its_directions(loaded: Run) -> None:
    turned = {
        "better": "worse",
        "worse": "better",
        "neutral": "neutral",
        "cannot say": "cannot say",
    }
    there = printed(loaded("compare", "HW-1001", "expiring", "offered", *DAY, "--json"))
    back = printed(loaded("compare", "HW-1001", "offered", "expiring", *DAY, "--json"))
    ways = sorted(
        (d["coverage"], d["location"], turned[d["direction"]]) for d in there["differences"]
    )
    assert ways == sorted(
        (d["coverage"], d["location"], d["direction"]) for d in back["differences"]
    )


@pytest.mark.parametrize("language", ["en", "fr"])
def test_it_is_shown_in_both_languages_within_the_terminal(loaded: Run, language: str) -> None:
    for words in (("pay", "HW-1010"), ("pay", "HW-1010", "--loss", "kitchen-fire"),
                  ("compare", "HW-1010", "expiring", "offered")):  # fmt: skip
        result = loaded("--language", language, *words, *DAY)
        assert result.exit_code == 0
        assert all(len(line) <= 80 for line in result.stdout.splitlines())


def test_a_loss_is_settled_on_given_terms(run: Run) -> None:
    """ISO CP 00 10, coinsurance, example 1 (from memory): 20,000 less 250 is 19,750."""
    line = {"coverage": "building", "location": "hall", "limit": "100000", "coinsurance": "0.8",
            "deductible": "250"}  # fmt: skip
    given = {
        "terms": {"start": "2026-01-01", "coverages": [line]},
        "values": [{"coverage": "building", "location": "hall", "value": "250000"}],
        "losses": [{"cause": "fire", "place": "hall", "date_of_loss": "2026-06-01",
                    "amounts": {"building": "40000"}}],
    }  # fmt: skip
    (loss,) = printed(run("calc", "settle", "--json", json.dumps(given)))["losses"]
    assert (loss["paid"], loss["borne"]) == ("19750.00", "20250.00")
    assert all(isinstance(step, str) for step in loss["steps"])
