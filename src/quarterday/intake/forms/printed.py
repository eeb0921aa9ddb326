"""The codes that are printed on the pages of a document."""

from __future__ import annotations

import json
import sys
from collections.abc import Mapping

from quarterday.core.file.page_code import PageCode, page_code
from quarterday.intake.forms.confined import handled
from quarterday.intake.forms.peek import Looked
from quarterday.intake.refusals import Unreadable

_CHILD = [sys.executable, "-m", "quarterday.intake.forms.codes"]


def printed_codes(looked: Looked) -> Mapping[int, PageCode]:
    """Return the code of each page that has one of ours; none when the pages cannot be drawn.

    A page with two different codes has none: it is looked at by a person.
    """
    try:
        found = json.loads(handled(_CHILD, looked.data, looked.name))
    except Unreadable:
        return {}  # whatever it was, a person can still look at what was kept
    told: dict[int, set[PageCode]] = {}
    for page, text in found:
        code = page_code(text)
        if code is not None:
            told.setdefault(page, set()).add(code)
    return {page: codes.pop() for page, codes in told.items() if len(codes) == 1}
