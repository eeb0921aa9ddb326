"""Whether an organisation needs a coverage: the library's condition asked of its file.

A question nobody answered is neither yes nor no. Several conditions join as in Kleene's logic of
three values: any is yes with one yes, all is no with one no, and otherwise one unknown decides.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator
from dataclasses import dataclass, replace
from decimal import Decimal
from typing import Literal

from quarterday.core.figure import Fact, Unit
from quarterday.core.file.fold import File
from quarterday.core.file.records import Building, Record
from quarterday.core.reference import Condition
from quarterday.core.words import Words, words

Answer = Literal["yes", "no", "unknown"]
SubjectName = Literal["profile", "building", "organisation"]
Question = tuple[SubjectName, str]
SUBJECTS: tuple[SubjectName, ...] = ("profile", "building", "organisation")


@dataclass(frozen=True, slots=True)
class Need:
    """The answer to a condition: the facts that decide it, and the questions still open.

    ``because`` holds a reason in words for each deciding fact; ``asks`` names what nobody has
    answered, and is empty unless the answer is unknown.
    """

    answer: Answer
    because: tuple[Words, ...] = ()
    facts: tuple[Fact, ...] = ()
    asks: tuple[Question, ...] = ()

    @property
    def open_questions(self) -> tuple[Words, ...]:
        """The unanswered questions in words ("whether …")."""
        return tuple(words(f"ask-{subject}-{_slug(name)}") for subject, name in self.asks)


def need(condition: Condition, file: File) -> Need:
    """Return what ``file`` answers to ``condition``, and why."""
    if condition.always is not None:
        return Need("yes" if condition.always else "no")
    if condition.any is not None:
        return _joined([need(c, file) for c in condition.any], decisive="yes")
    if condition.all is not None:
        return _joined([need(c, file) for c in condition.all], decisive="no")
    return _tested(condition, file)


def questions(condition: Condition) -> Iterator[Question]:
    """Yield every subject and field that ``condition`` tests."""
    for subject in SUBJECTS:
        name = getattr(condition, subject)
        if name is not None:
            yield subject, name
    for inner in (*(condition.any or ()), *(condition.all or ())):
        yield from questions(inner)


def _slug(name: str) -> str:
    return name.replace("_", "-")


def _joined(needs: list[Need], decisive: Answer) -> Need:
    """Join answers: one ``decisive`` decides, else an unknown, else all are the other."""
    order: tuple[Answer, Answer] = (decisive, "unknown")
    for answer in order:
        chosen = [n for n in needs if n.answer == answer]
        if chosen:
            return _merged(answer, chosen)
    return _merged("no" if decisive == "yes" else "yes", needs)


def _merged(answer: Answer, needs: Iterable[Need]) -> Need:
    parts = tuple(needs)
    return Need(
        answer,
        because=tuple(dict.fromkeys(w for n in parts for w in n.because)),
        facts=tuple({f.id: f for n in parts for f in n.facts}.values()),
        asks=tuple(dict.fromkeys(q for n in parts for q in n.asks)),
    )


def _tested(condition: Condition, file: File) -> Need:
    subject, name = next(questions(condition))
    found = [_asked(condition, file, record, (subject, name)) for record in _records(file, subject)]
    if not found:
        return _without_buildings(file, (subject, name))
    return _joined(found, decisive="yes")


def _without_buildings(file: File, question: Question) -> Need:
    """Answer a question about buildings of a file that lists none: no only when it says so."""
    profile = file.operations
    none_used = profile.owns_premises is False and profile.rents_premises is False
    return Need("no") if none_used else Need("unknown", asks=(question,))


def _records(file: File, subject: SubjectName) -> tuple[Record, ...]:
    if subject == "building":
        return file.buildings
    return (file.operations,) if subject == "profile" else (file.organisation,)


def _asked(condition: Condition, file: File, record: Record, question: Question) -> Need:
    subject, name = question
    if isinstance(record, Building) and name == "province" and record.province is None:
        return _asked(condition, file, file.organisation, ("organisation", name))
    value = getattr(record, name)
    if value is None:
        return Need("unknown", asks=(question,))
    if not _holds(condition, value):
        return Need("no", facts=_fact(file, record, name, value))
    return Need("yes", (_reason(record, subject, name),), _fact(file, record, name, value))


def _reason(record: Record, subject: SubjectName, name: str) -> Words:
    id = f"reason-{subject}-{_slug(name)}"
    return words(id, building=record.name) if isinstance(record, Building) else words(id)


def _holds(condition: Condition, value: object) -> bool:
    """Apply the tests a condition states to a known value; without any, ask for a positive one."""
    stated = {
        "equals": condition.equals is None or value == condition.equals,
        "at_least": condition.at_least is None or _number(value) >= condition.at_least,
        "at_most": condition.at_most is None or _number(value) <= condition.at_most,
        "one_of": condition.one_of is None or _names_one(value, condition.one_of),
    }
    if all(getattr(condition, test) is None for test in stated):
        return _positive(value)
    return all(stated.values())


def _number(value: object) -> Decimal:
    if not isinstance(value, int | Decimal):
        raise TypeError(f"{value!r} has no size; test it with equals or one_of.")
    return Decimal(value)


def _positive(value: object) -> bool:
    return value > 0 if isinstance(value, int | Decimal) else bool(value)


def _names_one(value: object, names: tuple[str, ...]) -> bool:
    texts = value if isinstance(value, tuple) else (value,)
    starts = "|".join(re.escape(name.casefold()) for name in names)
    return any(re.search(rf"(?<!\w)(?:{starts})", str(text).casefold()) for text in texts)


def _unit(value: object) -> Unit:
    if isinstance(value, Decimal):
        return "money"
    return "count" if isinstance(value, int) and not isinstance(value, bool) else "text"


def _fact(file: File, record: Record, name: str, value: object) -> tuple[Fact, ...]:
    """Return the field as a fact; none when no entry holds the record or the list is empty."""
    if (record.kind, record.key) not in file.held or value == ():
        return ()
    fact = file.fact(record, name, _unit(value))
    if isinstance(value, tuple):
        fact = replace(fact, value="; ".join(value))
    elif name.startswith("year_"):
        fact = replace(fact, value=str(value), unit="text")
    return (fact,)
