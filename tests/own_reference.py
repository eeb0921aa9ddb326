"""A brokerage's own reference data, for tests on every surface: one threshold, one sentence."""

from __future__ import annotations

from pathlib import Path

FOUND = "values.valuation-stale@rectory"
"""Found on the flagship by the data below alone: its rectory was valued in June 2024."""
SAID = "Our office says: the policy governs."
THRESHOLD = """
- id: values.stale-years
  values:
    - since: 2000-01-01
      value: 1
      source: {title: What our office holds, publisher: Our office, checked_on: 2026-11-01}
"""


def lay(folder: Path) -> Path:
    """Lay in ``folder`` data by which a valuation is old after a year, and a caution of our own."""
    (folder / "parameters").mkdir(parents=True)
    (folder / "parameters" / "ours.yaml").write_text(THRESHOLD, encoding="utf-8")
    for language in ("en", "fr"):
        (folder / "wordings" / language).mkdir(parents=True)
        wording = folder / "wordings" / language / "ours.ftl"
        wording.write_text(f"caution-wording-governs = {SAID}\n", encoding="utf-8")
    return folder
