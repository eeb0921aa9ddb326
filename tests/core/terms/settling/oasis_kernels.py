"""Ask the open financial-terms kernels of oasislmf for answers; kept, not run by the tests.

oasislmf (BSD-3, pure Python and numba) brings some 800 MB, too much for the tests of every day. So
its answers are recorded: in a scratch environment with ``pip install oasislmf==2.5.8``, run

    python tests/core/terms/settling/oasis_kernels.py > tests/core/terms/settling/oasis.json

Terms are whole numbers and binary fractions: the kernels keep them as 32-bit floats, and these are
exact there. Losses are 64-bit. ``test_oasis.py`` settles the same losses under the same terms.
"""

from __future__ import annotations

import json
import sys
from collections.abc import Iterator, Mapping
from importlib.metadata import version
from typing import Any

import numpy as np
from oasislmf.pytools.common.data import fm_profile_dtype
from oasislmf.pytools.fm import policy, policy_extras

RULES: Mapping[
    str, list[tuple[int, tuple[str, ...]]]
] = {  # ours -> the kernels' numbers, applied one after the other, and their profile's fields
    "deductible and limit": [(1, ("deductible", "limit"))],
    "limit": [(14, ("limit",))],
    "deductible": [(12, ("deductible",))],
    "part of the loss": [(16, ("part",))],
    "part of the loss, limit": [(33, ("part", "limit"))],
    "part of the loss, least, most, limit": [(26, ("part", "least", "most", "limit"))],
    "part of the loss, then deductible and limit": [(16, ("part",)), (1, ("deductible", "limit"))],
    "excess": [(2, ("attachment", "limit", "share"))],
}
FIELDS = {"deductible": "deductible1", "part": "deductible1", "least": "deductible2",
          "most": "deductible3", "limit": "limit1", "attachment": "attachment1",
          "share": "share1"}  # fmt: skip
WITH_MEMORY = {26}  # kernels that also keep what was deducted
CASES = 12
LOSSES = 40


def terms(chance: np.random.Generator) -> dict[str, float]:
    """Return terms drawn at random, all exact as 32-bit floats."""
    least = int(chance.integers(1, 40)) * 250
    return {
        "deductible": int(chance.integers(1, 80)) * 250,
        "limit": int(chance.integers(4, 400)) * 2500,
        "part": int(chance.integers(1, 32)) / 64,
        "least": least,
        "most": least + int(chance.integers(1, 40)) * 500,
        "attachment": int(chance.integers(4, 400)) * 2500,
        "share": 1.0,
    }


def losses(chance: np.random.Generator, told: Mapping[str, float]) -> np.ndarray:
    """Return losses to the cent over six orders of size, and those at the terms' own edges."""
    drawn = np.round(np.exp(chance.uniform(np.log(10), np.log(3_000_000), LOSSES)), 2)
    edges = [told["deductible"], told["limit"], told["deductible"] + told["limit"],
             told["attachment"], told["attachment"] + told["limit"]]  # fmt: skip
    return np.concatenate([drawn, edges, [0.01]]).astype(np.float64)


def answered(rule: int, profile: Mapping[str, float], loss: np.ndarray) -> np.ndarray:
    """Return what a kernel pays for each loss."""
    record = np.zeros(1, dtype=fm_profile_dtype)[0]
    for field, value in profile.items():
        record[field] = value
    paid = np.zeros_like(loss)
    if rule in WITH_MEMORY:
        kept = [np.zeros_like(loss) for _ in ("deductible", "over limit", "under limit")]
        getattr(policy_extras, f"calcrule_{rule}")(record, paid, loss, *kept)
    else:
        getattr(policy, f"calcrule_{rule}")(record, paid, loss)
    return paid


def cases() -> Iterator[dict[str, Any]]:
    """Yield terms, losses and the kernels' answers."""
    chance = np.random.default_rng(20261128)
    for name, steps in RULES.items():
        for _ in range(CASES):
            told = terms(chance)
            loss = losses(chance, told)
            paid = loss
            for rule, fields in steps:
                paid = answered(rule, {FIELDS[f]: told[f] for f in fields}, paid)
            used = {field: told[field] for _, fields in steps for field in fields}
            yield {"rule": name, "terms": used, "losses": loss.tolist(), "paid": paid.tolist()}


if __name__ == "__main__":
    made = {"library": "oasislmf", "version": version("oasislmf"), "cases": list(cases())}
    json.dump(made, sys.stdout, indent=None, separators=(",", ":"))
    sys.stdout.write("\n")
