"""The documented form does what its page says."""

from __future__ import annotations

import re
from pathlib import Path

from quarterday.catalogue.strict import read_yaml
from quarterday.core.file.records.terms import Coverage
from quarterday.core.reference import Reference, ReferenceLoss
from quarterday.core.terms.calc import settle
from quarterday.core.terms.losses.components import COMPONENTS
from quarterday.core.terms.losses.loss import Loss
from quarterday.core.terms.settling.form import Valued

PAGE = (Path(__file__).resolve().parents[4] / "docs" / "terms.md").read_text(encoding="utf-8")
FIRST, LAST = re.findall(r"```yaml\n(.*?)```", PAGE, flags=re.DOTALL)
NOT_ABOUT_LOSSES = {"automatic_increase", "qualified", "wording"}


def named(*headings: str) -> set[str]:
    """Return what stands in the first column of the tables below these headings."""
    parts = [PAGE.split(f"{heading}\n", 1)[1].split("\n#", 1)[0] for heading in headings]
    cells = (line.split("|")[1] for part in parts for line in part.splitlines() if "|" in line)
    return {name for cell in cells for name in re.findall(r"`([^`]+)`", cell)}


def test_the_first_example_pays_what_the_page_says(canada: Reference) -> None:
    (done,) = settle(read_yaml(FIRST, "terms.md"), canada)["losses"]
    assert done["paid"] == "19750.00"
    assert "pays 19,750" in PAGE


def test_the_example_of_a_reference_loss_is_one() -> None:
    (told,) = read_yaml(LAST, "terms.md")
    assert ReferenceLoss.model_validate(told).id == "burst-pipe"


def test_every_field_of_a_line_is_documented_and_nothing_else_is() -> None:
    fields = set(Coverage.model_fields) - NOT_ABOUT_LOSSES
    said = set(re.findall(r"`([a-z_]+)`", PAGE.split("### Lines\n")[1].split("\n###")[0]))
    assert fields <= said
    assert named("### Lines") <= fields


def test_every_field_of_values_and_losses_is_documented() -> None:
    assert named("## Values") == set(Valued.model_fields)
    assert named("## Losses") - set(COMPONENTS) == set(Loss.model_fields) - {"id"}


def test_every_component_is_documented() -> None:
    assert set(COMPONENTS) <= named("## Losses")
