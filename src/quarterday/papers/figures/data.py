"""What the appendix of figures says."""

from __future__ import annotations

from collections.abc import Iterator

from quarterday.core.figure import Figure, Node
from quarterday.core.review.finding import Finding
from quarterday.core.words import Words, words
from quarterday.papers.setting import Data, Setting

ID = "figures"


def reason(setting: Setting) -> Words | None:
    """Return why it goes in: there are figures to explain."""
    count = len(list(_explained(setting)))
    return words("figures-reason", count=count) if count else None


def data(setting: Setting) -> Data:
    """Return the tree of every figure behind the leaders' findings, each once."""
    title, lead = setting.say("figures-title"), setting.say("figures-lead")
    nodes: dict[str, list[Data]] = {}
    for finding, figure in _explained(setting):
        nodes.setdefault(setting.spoken(finding.title), []).append(_node(setting, figure))
    trees = [{"heading": heading, "nodes": found} for heading, found in nodes.items()]
    return {"opening": setting.opening(ID, title, lead), "trees": trees}


def _explained(setting: Setting) -> Iterator[tuple[Finding, Figure]]:
    seen: set[str] = set()
    for finding in setting.told:
        for node in finding.evidence:
            if isinstance(node, Figure) and node.id not in seen:
                seen.add(node.id)
                yield finding, node


def _node(setting: Setting, node: Node) -> Data:
    parts = setting.speech.parts(node)
    return {
        "kind": type(node).__name__.lower(),
        "label": parts.label,
        "value": parts.value,
        "how": parts.how,
        "caution": parts.caution,
        "inputs": [_node(setting, child) for child in getattr(node, "inputs", ())],
    }
