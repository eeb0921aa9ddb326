"""The picture of a returned form's page, with the fields it speaks of framed and numbered."""

from __future__ import annotations

import json
import sys
from collections.abc import Mapping

from quarterday.intake.forms.confined import handled
from quarterday.intake.forms.peek import Looked
from quarterday.intake.forms.recognise import Given

WIDTH = 1000  # pixels
_CHILD = [sys.executable, "-m", "quarterday.intake.forms.drawn"]
Spot = tuple[float, float, float, float]


def spots_of(answers: Mapping[str, Given], name: str) -> Mapping[int, Spot]:
    """Return where a field stands: by page, the rectangle around all its places there.

    ``name`` is the field's, or what the names of several begin with up to a full stop.
    """
    named = (given for of, given in answers.items() if of == name or of.startswith(f"{name}."))
    found: dict[int, Spot] = {}
    for cell in (cell for given in named for cell in given.at):
        if cell.page is not None and cell.spot is not None:
            found[cell.page] = _around(found.get(cell.page, cell.spot), cell.spot)
    return found


def _around(one: Spot, other: Spot) -> Spot:
    left, bottom = min(one[0], other[0]), min(one[1], other[1])
    return left, bottom, max(one[2], other[2]), max(one[3], other[3])


def picture(looked: Looked, page: int, spots: Mapping[int, Spot], width: int = WIDTH) -> bytes:
    """Return page ``page`` (from 1) as PNG, ``width`` pixels wide, each spot under its number.

    Unreadable when the page cannot be drawn, or takes too much.
    """
    asked = {"page": page, "width": width, "spots": {str(n): s for n, s in spots.items()}}
    data = json.dumps(asked).encode("ascii") + b"\n" + looked.data
    return handled(_CHILD, data, looked.name)
