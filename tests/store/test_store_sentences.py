"""Everything the store refuses or finds has its sentence, in both languages."""

from __future__ import annotations

import re
from collections.abc import Callable
from pathlib import Path
from typing import get_args

import pytest

from quarterday.catalogue.load import reference
from quarterday.catalogue.speech import Speech
from quarterday.core.file.chain import FaultKind
from quarterday.core.file.entry import Entry
from quarterday.core.file.records import Organisation
from quarterday.store import refusals
from quarterday.store.conflict import Conflict
from quarterday.store.seals import SealFault

Save = Callable[..., tuple[Entry, ...]]
CODE = Path(refusals.__file__).parent
WORDINGS = CODE.parent / "reference" / "canada" / "wordings"


def used() -> set[str]:
    """Return the ids of the sentences that the store's code names."""
    text = "\n".join(path.read_text(encoding="utf-8") for path in CODE.glob("*.py"))
    ids = set(re.findall(r'"(store-[a-z-]+)"', text))
    ids |= {f"store-chain-{kind}" for kind in get_args(FaultKind)}
    return ids | {f"store-seal-{kind}" for kind in get_args(SealFault)}


def sentences(language: str) -> dict[str, str]:
    text = (WORDINGS / language / "store.ftl").read_text(encoding="utf-8")
    return dict(re.findall(r"^(store-[a-z-]+) = (.+)$", text, flags=re.MULTILINE))


@pytest.mark.parametrize("language", ["en", "fr"])
def test_every_sentence_that_is_named_exists_and_none_is_left_over(language: str) -> None:
    assert set(sentences(language)) == used()


def test_both_languages_say_the_same_things_of_the_same_things() -> None:
    english, french = sentences("en"), sentences("fr")
    for id, text in english.items():
        assert set(re.findall(r"\$\w+", text)) == set(re.findall(r"\$\w+", french[id])), id


@pytest.mark.parametrize("language", ["en", "fr"])
@pytest.mark.django_db
def test_the_sentence_of_a_conflict_is_spoken_whole(language: str, save: Save) -> None:
    save("A1", Organisation(name="Pinebrook Chapel", province="ON"))
    save("A1", Organisation(name="Pinebrook Church", province="ON"), by="bea", seen=1)
    with pytest.raises(Conflict) as caught:
        save("A1", Organisation(name="The Chapel", province="ON"), by="cy", seen=1)
    said = Speech(reference(), language).say(caught.value.words)
    assert "bea" in said
    assert "A1" in said
    assert "{" not in said


@pytest.mark.parametrize("language", ["en", "fr"])
def test_no_sentence_is_longer_than_what_is_read_in_one_breath(language: str) -> None:
    """At most 25 words a sentence: the project's own rule for plain language."""
    for id, text in sentences(language).items():
        for sentence in re.split(r"(?<=[.;:!?»])\s", text):
            assert len(sentence.split()) <= 25, id
