"""What differs between two bodies of one record, field by field."""

from __future__ import annotations

import json
from collections import Counter
from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from typing import Any

Leaf = str | int | bool | None
_NAMES = ("of", "coverage", "location", "kind", "id")


@dataclass(frozen=True, slots=True)
class Difference:
    """A field and its two values; None where a side does not know it.

    A field of a part is named with the part: ``coverages[sewer-backup/*].limit``.
    """

    field: str
    before: Leaf
    after: Leaf


def _named(parts: list[dict[str, Any]]) -> Iterator[tuple[str, dict[str, Any]]]:
    """Yield each part with a name that does not hang on its place in the list."""
    seen: Counter[str] = Counter()
    for part in parts:
        name = "/".join(str(part[n]) for n in _NAMES if n in part)
        seen[name] += 1
        yield (name if seen[name] == 1 else f"{name}#{seen[name]}"), part


def _leaves(path: str, value: Any) -> Iterator[tuple[str, Leaf]]:  # noqa: ANN401 - any JSON
    if isinstance(value, dict):
        for name, inner in value.items():
            yield from _leaves(f"{path}.{name}" if path else name, inner)
    elif value and isinstance(value, list) and all(isinstance(part, dict) for part in value):
        for name, part in _named(value):
            yield from _leaves(f"{path}[{name}]", part)
    else:
        yield path, "; ".join(map(str, value)) if isinstance(value, list) else value


def flat(body: str | None) -> dict[str, Leaf]:
    """Return the fields of a body (canonical JSON) by path; none when there is no body."""
    return dict(_leaves("", json.loads(body))) if body else {}


def differing(one: Mapping[str, Leaf], other: Mapping[str, Leaf]) -> list[str]:
    """Return the fields, of two bodies made flat, whose values differ; in order.

    An empty list does not count beside the parts that the other side has.
    """
    fields = one.keys() | other.keys()
    lists = {field.partition("[")[0] for field in fields if "[" in field}
    return [f for f in sorted(fields - lists) if one.get(f) != other.get(f)]


def differences(before: str | None, after: str | None) -> tuple[Difference, ...]:
    """Return the fields whose values differ between two bodies, in order of field."""
    old, new = flat(before), flat(after)
    return tuple(Difference(f, old.get(f), new.get(f)) for f in differing(old, new))
