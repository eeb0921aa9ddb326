"""The topics of the book, in the order in which they are told."""

from __future__ import annotations

from collections.abc import Mapping

from quarterday.core.book.sums import Sums
from quarterday.office.book.topics import cover, experience, offers, states, values, work
from quarterday.office.book.topics.topic import Tell, Teller, Topic

TOPICS: Mapping[str, Tell] = {
    "work": work.topic,
    "states": states.topic,
    "values": values.topic,
    "offers": offers.topic,
    "cover": cover.topic,
    "causes": experience.causes,
    "years": experience.by(experience.YEARS),
    "classes": experience.by(experience.CLASSES),
    "insurers": experience.by(experience.INSURERS),
    "provinces": experience.by(experience.PROVINCES),
}


def told(tell: Teller, sums: Sums) -> tuple[Topic, ...]:
    """Return every topic of the book."""
    return tuple(topic(tell, sums) for topic in TOPICS.values())
