"""What differs between a document as it was kept and as it came back."""

from __future__ import annotations

from dataclasses import dataclass

from quarterday.intake.forms.peek import Cell, Looked


@dataclass(frozen=True, slots=True)
class Compared:
    """Where two documents differ: pages by number, fields filled, fields come or gone, marks.

    ``marks`` are what only the second holds that no form of ours has; ``counts`` how many pages
    each of the two has.
    """

    pages: tuple[int, ...]
    filled: tuple[str, ...]
    other_fields: tuple[str, ...]
    marks: tuple[str, ...]
    counts: tuple[int, int] = (0, 0)

    @property
    def only_filled(self) -> bool:
        """Whether nothing was done but filling fields in."""
        return not (self.pages or self.other_fields or self.marks)


def compared(kept: Looked, other: Looked) -> Compared:
    """Return where ``other`` differs from ``kept``; both were looked at with their pages."""
    count = max(kept.pages, other.pages)
    one, two = (_padded(looked.digests, count) for looked in (kept, other))
    pages = tuple(n for n in range(1, count + 1) if one[n - 1] != two[n - 1])
    before, after = _values(kept), _values(other)
    both = before.keys() & after.keys()
    return Compared(
        pages,
        tuple(sorted(name for name in both if before[name] != after[name])),
        tuple(sorted(before.keys() ^ after.keys())),
        tuple(sorted(set(other.marks) - set(kept.marks))),
        (kept.pages, other.pages),
    )


def _padded(digests: tuple[str, ...], count: int) -> tuple[str, ...]:
    return digests + ("",) * (count - len(digests))


def _values(looked: Looked) -> dict[str, frozenset[str | None]]:
    found: dict[str, set[str | None]] = {}
    for cell in looked.cells:
        if cell.kind != "Sig":
            found.setdefault(cell.name, set()).add(_value(cell))
    return {name: frozenset(values) for name, values in found.items()}


def _value(cell: Cell) -> str | None:
    is_off = cell.kind == "Btn" and cell.value in {"Off", ""}
    return "" if is_off else cell.value
