"""What the appendix of figures says."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping

from quarterday.core.figure import Fact, Figure, Node, Parameter, walk
from quarterday.core.review.finding import Finding
from quarterday.core.words import Term, Words, words
from quarterday.papers.setting import Data, Setting

ID = "figures"
LETTERS: dict[type[Node], str] = {Figure: "F", Fact: "A", Parameter: "P"}
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
    return {"opening": setting.opening(ID, title, lead), "parts": list(_parts(setting, numbers))}


def _explained(setting: Setting) -> Iterator[tuple[Finding, Figure]]:
    seen: set[str] = set()
    for finding in setting.told:
        for node in finding.evidence:
            if isinstance(node, Figure) and node.id not in seen:
                seen.add(node.id)
                yield finding, node


def _numbers(roots: Iterable[Node]) -> dict[str, tuple[str, Node]]:
    """Return every node by id with its number: a letter for its kind, counted as it comes."""
    found: dict[str, tuple[str, Node]] = {}
    counts = dict.fromkeys(LETTERS, 0)
    for root in roots:
        for _, node in walk(root):
            if node.id not in found:
                counts[type(node)] += 1
                found[node.id] = f"{LETTERS[type(node)]}{counts[type(node)]}", node
    return found


def _parts(setting: Setting, numbers: Numbers) -> Iterator[Data]:
    for kind in LETTERS:
        name = kind.__name__.lower()
        rows = [
            _row(setting, n, node, numbers) for n, node in numbers.values() if type(node) is kind
        ]
        if rows:
            columns = ("figures-number", f"figures-{name}", "figures-value")
            header = [setting.say(id) for id in columns]
            yield {"heading": setting.say(f"figures-{name}s"), "header": header, "rows": rows}


def _row(setting: Setting, number: str, node: Node, numbers: Numbers) -> Data:
    parts = setting.speech.parts(node)
    label, how = parts.label, parts.how
    if isinstance(node, Fact):
        kind, _, key = node.id.partition("/")
        what = Term("record", kind)
        label = setting.say("figures-of", label=label, record=what, key=key.rpartition("/")[0])
    made_from = tuple(numbers[child.id][0] for child in getattr(node, "inputs", ()))
    if made_from:
        how = f"{how} {setting.say('figures-from', numbers=made_from)}"
    row = {"number": number, "label": label, "how": how, "caution": parts.caution}
    return row | {"value": parts.value}
