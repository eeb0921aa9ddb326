"""Read the code lists of Open Exposure Data from the reference data."""

from __future__ import annotations

from functools import lru_cache

from pydantic import ValidationError

from quarterday.catalogue.load import PLACES
from quarterday.catalogue.problems import BadReference, sentences
from quarterday.catalogue.strict import read_yaml
from quarterday.catalogue.text import read_text
from quarterday.core.exposure.codes import Codes

_FILE = PLACES / "oed" / "codes.yaml"


@lru_cache(maxsize=1)
def codes() -> Codes:
    """Return the code lists; BadReference says what is wrong with them."""
    try:
        return Codes.model_validate(read_yaml(read_text(_FILE), _FILE.name))
    except ValidationError as error:
        raise BadReference(sentences(_FILE.name, "codes", error)) from error
