"""What can go wrong in a way that a person can mend, and the sentences for it."""

from __future__ import annotations

from collections.abc import Iterator, Mapping

from quarterday.catalogue.load import reference
from quarterday.catalogue.problems import BadReference
from quarterday.catalogue.speech import Speech
from quarterday.core.reference import Reference
from quarterday.core.words import words
from quarterday.office import telling
from quarterday.office.own_data import reference_in_use

PATHS: Mapping[type[OSError], str] = {
    IsADirectoryError: "folder", NotADirectoryError: "no-folder", FileExistsError: "no-folder",
    FileNotFoundError: "missing", PermissionError: "locked",
}  # fmt: skip


def sentences(trouble: Exception, language: str) -> Iterator[str]:
    """Yield the sentences in which a trouble is told; none when nobody but a programmer can act."""
    speech = Speech(_known(), language)
    told = tuple(telling.sentences(trouble, speech))
    yield from told or _of_place(trouble, speech)


def _of_place(trouble: Exception, speech: Speech) -> Iterator[str]:
    """Yield what is wrong with a file or folder; libraries wrap the system's own error."""
    for one in (trouble, trouble.__cause__, trouble.__context__):
        if isinstance(one, OSError) and one.filename is not None:
            kind = PATHS.get(type(one), "failed")
            why = one.strerror or type(one).__name__
            yield speech.say(words(f"cli-path-{kind}", path=str(one.filename), why=why))
            return


def _known() -> Reference:
    """Return the data in use; that of the place alone where the brokerage's own is broken."""
    try:
        return reference_in_use()
    except BadReference:
        return reference()
