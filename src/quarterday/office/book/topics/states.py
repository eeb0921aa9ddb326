"""The renewals by state, with what is late and what can no longer be done in time."""

from __future__ import annotations

from typing import get_args

from quarterday.core.book.sums import Stood, Sums, dollars, total
from quarterday.core.review.state import State
from quarterday.office.book.topics.topic import Columns, Keys, Teller, Topic, chart, table

STATES: tuple[str, ...] = get_args(State)
COLUMNS: Columns = (
    ("state", "choice"), ("name", "text"), ("renewals", "integer"), ("late", "integer"),
    ("impossible", "integer"), ("premium", "amount"),
)  # fmt: skip
KEYS: Keys = (("borne", "late"), ("paid", "in-time"))


def topic(tell: Teller, sums: Sums) -> Topic:
    """Return where the renewals stand."""
    rows = [(state, sums.stood.get(state, Stood())) for state in STATES]
    whole = total(Stood, sums.stood.values())
    message = tell.say("book-states-message", renewals=whole.files, late=whole.late,
                       impossible=whole.impossible)  # fmt: skip
    made = table(tell, "states", COLUMNS, (
        (state, tell.name("state", state), row.files, row.late, row.impossible,
         dollars(row.premium)) for state, row in rows
    ))  # fmt: skip
    bars = [(tell.name("state", state), tell.count(row.files), (row.late, row.files - row.late))
            for state, row in rows]  # fmt: skip
    return Topic(
        "states", made.title, message, chart(tell, "states", message, KEYS, bars), made,
        ("name", "renewals", "late", "impossible", "premium"), (tell.say("book-premium-note"),),
    )  # fmt: skip
