"""The data that chance draws from."""

from __future__ import annotations

from collections.abc import Mapping
from decimal import Decimal
from functools import lru_cache
from pathlib import Path
from typing import Any

from quarterday.catalogue.strict import read_yaml

HERE = Path(__file__).resolve().parent


def _floats(told: Any) -> Any:  # noqa: ANN401 - YAML holds anything
    """Return ``told`` with its decimals as floats, which likelihoods may be."""
    if isinstance(told, dict):
        return {key: _floats(value) for key, value in told.items()}
    return float(told) if isinstance(told, Decimal) else told


@lru_cache(maxsize=2)
def _read(name: str) -> Mapping[str, Any]:
    found: Mapping[str, Any] = _floats(read_yaml((HERE / name).read_text(encoding="utf-8"), name))
    return found


def likely() -> Mapping[str, Any]:
    """Return how likely what is."""
    return _read("likely.yaml")


def names() -> Mapping[str, Any]:
    """Return the made-up names."""
    return _read("names.yaml")
