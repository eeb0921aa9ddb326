"""What can go wrong in a way that a person can mend, and the sentences for it."""

from __future__ import annotations

from collections.abc import Iterator

from quarterday.catalogue.load import reference
from quarterday.catalogue.problems import BadReference
from quarterday.catalogue.speech import Speech
from quarterday.core.reference import Reference
from quarterday.office import telling
from quarterday.office.own_data import reference_in_use


def sentences(trouble: Exception, language: str) -> Iterator[str]:
    """Yield the sentences in which a trouble is told; none when it carries no sentence."""
    yield from telling.sentences(trouble, Speech(_known(), language))


def _known() -> Reference:
    """Return the data in use; that of the place alone where the brokerage's own is broken."""
    try:
        return reference_in_use()
    except BadReference:
        return reference()
