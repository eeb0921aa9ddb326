"""What the appendix of figures says."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Iterator, Mapping, Sequence
from datetime import date
from itertools import groupby
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
    computed, sources = _figures(setting, numbers), list(_sources(setting, numbers))
    groups = [group for part in sources for group in part["groups"]]
    return {
        "opening": setting.opening(ID, title, lead),
        "cautions": _shared([*computed["rows"], *groups]),
        "computed": computed,
        "sources": sources,
        "credits": [
            setting.say("figures-credits", text=credit)
            for credit in data_credits(setting.language, setting.reference.place)
        ],
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

    Facts that came from the same place stand together, and so do values of the same source.
    """
    nodes = {node.id: node for root in roots for _, node in walk(root)}
    places = {node.id: _place(node) for node in nodes.values()}
    order = {place: n for n, place in enumerate(dict.fromkeys(places.values()))}
    together = sorted(nodes.values(), key=lambda node: order[places[node.id]])
    found: dict[str, tuple[str, Node]] = {}
    for kind, letter in LETTERS.items():
        of_kind = [node for node in together if type(node) is kind]
        found |= {node.id: (f"{letter}{n}", node) for n, node in enumerate(of_kind, start=1)}
    return found


def _place(node: Node) -> tuple[object, ...]:
    """Return what is said once for several nodes: where they were read, or nothing for figures."""
    match node:
        case Fact():
            return node.origin.model_dump_json(), node.recorded_on
        case Parameter():
            return node.source, node.since, node.illustrative
        case _:
            return ()


def _figures(setting: Setting, numbers: Numbers) -> Data:
    columns = ("figures-number", "figures-figure", "figures-value")
    return {
        "heading": setting.say("figures-figures"),
        "header": [setting.say(id) for id in columns],
        "rows": list(_rows(setting, _of_kind(numbers, Figure), numbers)),
    }


def _shared(cautioned: Sequence[Data]) -> list[Data]:
    """Return the cautions that several figures share, to be said once, and mark those figures."""
    count = Counter(one["caution"] for one in cautioned if one["caution"])
    often = [text for text, times in count.items() if times > 1]
    marks = {text: f"*{n}" for n, text in enumerate(often, start=1)}
    for one in cautioned:
        one["mark"] = marks.get(one["caution"], "")
    return [{"mark": mark, "text": text} for text, mark in marks.items()]


def _of_kind(numbers: Numbers, kind: type[Node]) -> list[tuple[str, Node]]:
    return [(number, node) for number, node in numbers.values() if type(node) is kind]


def _rows(setting: Setting, nodes: Iterable[tuple[str, Node]], numbers: Numbers) -> Iterator[Data]:
    for number, node in nodes:
        parts = setting.speech.parts(node)
        how = setting.sentence(parts.how)
        made_from = tuple(numbers[child.id][0] for child in getattr(node, "inputs", ()))
        if made_from:
            how = f"{how} {setting.say('figures-from', numbers=made_from)}"
        row = {"number": number, "label": parts.label, "value": parts.value}
        yield row | {"how": how, "caution": parts.caution}


def _sources(setting: Setting, numbers: Numbers) -> Iterator[Data]:
    """Yield facts and published values: what each group has in common is said once."""
    for kind in (Fact, Parameter):
        nodes = _of_kind(numbers, kind)
        if nodes:
            groups = (list(same) for _, same in groupby(nodes, key=lambda one: _place(one[1])))
            yield {
                "heading": setting.say(f"figures-{kind.__name__.lower()}s"),
                "groups": [_group(setting, same) for same in groups],
            }


def _group(setting: Setting, same: list[tuple[str, Node]]) -> Data:
    """Return a group of one origin: the origin, and line by line what was read there."""
    parts = setting.speech.parts(same[0][1])
    by_subject = groupby(same, key=lambda one: _about(setting, one[1]))
    return {
        "origin": setting.sentence(parts.how),
        "caution": parts.caution,
        "lines": [
            {"about": about, "items": [_item(setting, *one) for one in lines]}
            for about, lines in by_subject
        ],
    }


def _item(setting: Setting, number: str, node: Node) -> Data:
    parts = setting.speech.parts(node)
    return {"number": number, "label": parts.label, "value": parts.value}


def _about(setting: Setting, node: Node) -> str:
    return setting.sentence(_of(setting, node)).rstrip(".") if isinstance(node, Fact) else ""


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
