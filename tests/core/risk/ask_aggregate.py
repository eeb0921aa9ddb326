"""Ask ``aggregate`` what yearly purses pay, and keep its answers: tests/core/risk/aggregate.json.

The library has no wheel for Python 3.11, so it is no part of the lock. In an environment of its own
with ``aggregate==0.30.1``: ``python tests/core/risk/ask_aggregate.py``.
"""

from __future__ import annotations

import json
from pathlib import Path
from typing import Any

WELL_BELOW, STEP_PARTS, LOG2 = 1e-9, 4000, 16
CASES: list[dict[str, Any]] = [
    {"name": "sewer, once in four years", "purse": 25_000, "losses": [
        {"rate": 0.25, "kind": "lognormal", "mean": 20_000, "sigma": 2.07,
         "deductible": 5_000, "limit": 25_000}]},
    {"name": "often and small", "purse": 30_000, "losses": [
        {"rate": 3.0, "kind": "lognormal", "mean": 9_000, "sigma": 1.5,
         "deductible": 1_000, "limit": 25_000}]},
    {"name": "liability with a heavy tail", "purse": 250_000, "losses": [
        {"rate": 0.8, "kind": "pareto", "shape": 2.2, "scale": 60_000,
         "deductible": 1_000, "limit": 200_000}]},
    {"name": "two causes, one purse", "purse": 60_000, "losses": [
        {"rate": 0.6, "kind": "lognormal", "mean": 15_000, "sigma": 2.07,
         "deductible": 2_500, "limit": 50_000},
        {"rate": 1.2, "kind": "exponential", "mean": 8_000,
         "deductible": 1_000, "limit": 40_000}]},
    {"name": "no deductible", "purse": 40_000, "losses": [
        {"rate": 5.0, "kind": "exponential", "mean": 10_000, "deductible": 0, "limit": 100_000}]},
]  # fmt: skip


def severity(told: dict[str, Any]) -> str:
    """Return a size of losses in the language of ``aggregate``."""
    if told["kind"] == "lognormal":
        from math import exp, log

        scale = exp(log(told["mean"]) - told["sigma"] ** 2 / 2)
        return f"sev {scale!r} * lognorm {told['sigma']}"
    if told["kind"] == "pareto":
        return f"sev {told['scale']} * pareto {told['shape']} - {told['scale']}"
    return f"sev {told['mean']} * expon"


def answer(case: dict[str, Any]) -> float:
    """Return the mean of the lesser of the purse and what the losses of a year ask of it."""
    import numpy as np
    from aggregate import build  # type: ignore[import-not-found]

    step = case["purse"] / STEP_PARTS
    transform = np.ones(2 ** (LOG2 - 1) + 1, dtype=complex)
    for number, one in enumerate(case["losses"]):
        name = f"L{CASES.index(case)}n{number}"
        occurrence = f"occurrence net of {one['deductible']} xs 0" if one["deductible"] else ""
        most = one["deductible"] + one["limit"]
        made = build(
            f"agg {name} {one['rate']} claims {most} xs 0 {severity(one)} {occurrence} poisson",
            log2=LOG2, bs=step, normalize=False,
        )  # fmt: skip
        transform = transform * np.fft.rfft(made.density_df.p_total.to_numpy())
    density = np.fft.irfft(transform)
    paid = np.minimum(np.arange(len(density)) * step, case["purse"])
    return float((density * paid).sum())


def main() -> None:
    """Write the answers beside this file."""
    from importlib.metadata import version

    found = [{**case, "paid": round(answer(case), 2)} for case in CASES]
    told = {"library": f"aggregate {version('aggregate')}", "cases": found}
    place = Path(__file__).with_name("aggregate.json")
    place.write_text(json.dumps(told, indent=1) + "\n")


if __name__ == "__main__":
    main()
