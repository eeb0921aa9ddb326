"""The plans of the invented insurers: what they usually offer."""

from __future__ import annotations

from functools import lru_cache
from pathlib import Path

from quarterday.catalogue.strict import read_yaml
from quarterday.invent.notation.policy import Notation, merged, spelled_out

FILE = Path(__file__).resolve().parent / "plans.yaml"


@lru_cache(maxsize=1)
def _told() -> Notation:
    found: Notation = read_yaml(FILE.read_text(encoding="utf-8"), FILE.name)
    return found


@lru_cache(maxsize=32)
def plan(name: str) -> Notation:
    """Return a plan by name, laid upon the plan that it starts from when it names one."""
    told = dict(_told()[name])
    base = told.pop("starts_from", None)
    own = spelled_out(told)
    found: Notation = merged(plan(base), own) if base else own
    return found
