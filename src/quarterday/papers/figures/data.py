"""What the appendix of figures says."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from datetime import date
from typing import get_args

from quarterday.catalogue.load import data_credits
from quarterday.core.figure import Fact, Figure, Node, Parameter, walk
from quarterday.core.file.records.terms import Stage
from quarterday.core.review.finding import Finding
from quarterday.core.words import Term, Words, words
from quarterday.papers.setting import Data, Setting

ID = "figures"
LETTERS: dict[type[Node], str] = {Figure: "F", Fact: "A", Parameter: "P"}
NOT_SAID = ("", "*", "coverages")  # parts of a fact's id that tell a reader nothing
Numbers = Mapping[str, tuple[str, Node]]


def reason(setting: Setting) -> Words | None:
    """Return why it goes in: there are figures to explain."""
    count = len(list(_explained(setting)))
    return words("figures-reason", count=count) if count else None


def data(setting: Setting) -> Data:
    """Return every figure behind the leaders' findings, each once, with what it was made from."""
    roots = [figure for _, figure in _explained(setting)]
    numbers = _numbers(roots)
    title, lead = setting.say("figures-title"), setting.say("figures-lead")
    return {
        "opening": setting.opening(ID, title, lead),
        "parts": list(_parts(setting, numbers)),
        "credits": {
            "heading": setting.say("figures-credits"),
            "lines": list(data_credits(setting.language, setting.reference.place)),
        },
    }


def _explained(setting: Setting) -> Iterator[tuple[Finding, Figure]]:
    seen: set[str] = set()
    for finding in setting.told:
        for node in finding.evidence:
            if isinstance(node, Figure) and node.id not in seen:
                seen.add(node.id)
                yield finding, node


def _numbers(roots: Iterable[Node]) -> Numbers:
    """Return every node by id with its number: a letter for its kind, counted as it comes.

    Facts that came from the same place stand together.
    """
    nodes = {node.id: node for root in roots for _, node in walk(root)}
    places = dict.fromkeys(_place(node) for node in nodes.values() if isinstance(node, Fact))
    order = {place: n for n, place in enumerate(places)}
    facts = (node for node in nodes.values() if isinstance(node, Fact))
    together = sorted(facts, key=lambda fact: order[_place(fact)])
    found: dict[str, tuple[str, Node]] = {}
    for kind, letter in LETTERS.items():
        of_kind = together if kind is Fact else [n for n in nodes.values() if type(n) is kind]
        found |= {node.id: (f"{letter}{n}", node) for n, node in enumerate(of_kind, start=1)}
    return found


def _place(fact: Fact) -> tuple[str, date]:
    return fact.origin.model_dump_json(), fact.recorded_on


def _parts(setting: Setting, numbers: Numbers) -> Iterator[Data]:
    for kind in LETTERS:
        name = kind.__name__.lower()
        of_kind = [(n, node) for n, node in numbers.values() if type(node) is kind]
        if of_kind:
            columns = ("figures-number", f"figures-{name}", "figures-value")
            rows = _facts(setting, of_kind) if kind is Fact else _rows(setting, of_kind, numbers)
            yield {
                "heading": setting.say(f"figures-{name}s"),
                "header": [setting.say(id) for id in columns],
                "rows": list(rows),
            }


def _rows(setting: Setting, nodes: Iterable[tuple[str, Node]], numbers: Numbers) -> Iterator[Data]:
    for number, node in nodes:
        parts = setting.speech.parts(node)
        how = setting.sentence(parts.how)
        made_from = tuple(numbers[child.id][0] for child in getattr(node, "inputs", ()))
        if made_from:
            how = f"{how} {setting.say('figures-from', numbers=made_from)}"
        row = {"number": number, "label": parts.label, "value": parts.value}
        yield row | {"how": how, "caution": parts.caution}


def _facts(setting: Setting, nodes: Iterable[tuple[str, Node]]) -> Iterator[Data]:
    """Yield the facts, each group of the same origin after a row that names it."""
    told = ""
    for number, node in nodes:
        assert isinstance(node, Fact)
        parts = setting.speech.parts(node)
        if parts.how != told:
            told = parts.how
            yield {"origin": told}
        label = setting.say("figures-of", label=parts.label, of=_of(setting, node))
        row = {"number": number, "label": label, "value": parts.value}
        yield row | {"how": "", "caution": ""}


def _of(setting: Setting, fact: Fact) -> str:
    """Return what a fact is about: its record, and the parts of the record's key as people say."""
    kind, _, rest = fact.id.partition("/")
    parts = rest.rpartition("/")[0].replace("@", "/").split("/")
    said = (_said(setting, part) for part in parts if part not in NOT_SAID)
    return ", ".join((setting.spoken(Term("record", kind)), *said))


def _said(setting: Setting, part: str) -> str:
    if part in get_args(Stage):
        return setting.spoken(Term("stage", part))
    if part in setting.reference.coverages:
        return setting.coverage(part)
    try:
        return setting.short_day(date.fromisoformat(part))
    except ValueError:
        return setting.place(part)
