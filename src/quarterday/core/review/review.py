"""The review of one file: all rules, their findings in order, the agenda, the figures."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace
from datetime import date

from quarterday.core.figure import Figure, Node, Parameter, parameters_used, walk
from quarterday.core.file.fold import File
from quarterday.core.file.records import FindingSetAside
from quarterday.core.reference import IndexRelease, Reference
from quarterday.core.review.case import Case
from quarterday.core.review.finding import Finding
from quarterday.core.review.priority import agenda, ordered, with_place
from quarterday.core.review.rules import RULES


@dataclass(frozen=True, slots=True)
class Review:
    """What the review of a file said on a day; ``seq`` is the file's newest change then."""

    file: str
    seq: int
    renewal: date
    as_of: date
    findings: tuple[Finding, ...]  # in order; those set aside are last and say why
    agenda: tuple[Finding, ...]  # what the leaders decide, at most five
    releases: tuple[IndexRelease, ...] = ()  # the index releases that its costs rest on

    def deadline(self, finding: Finding) -> date:
        """Return by when a finding must be settled: its own day, its matter's, or the renewal."""
        return finding.by or finding.priority.by or self.renewal

    def figures(self) -> Mapping[str, Node]:
        """Return every figure, fact and parameter behind the findings, by id."""
        nodes = (node for f in self.findings for e in f.evidence for _, node in walk(e))
        return {node.id: node for node in nodes}

    def parameters(self) -> tuple[Parameter, ...]:
        """Return the parameters the review rests on."""
        evidence = [e for f in self.findings for e in f.evidence if isinstance(e, Figure)]
        return parameters_used(evidence)


def review(file: File, reference: Reference, as_of: date) -> Review:
    """Review a file as on a day; NoRenewal when it gives no renewal date."""
    return review_of(Case(file, reference, as_of))


def review_of(case: Case) -> Review:
    """Review a case; what the rules worked out of it stays with it."""
    file = case.file
    found = [finding for rule in RULES for finding in rule.find(case)]
    aside = {a.finding: a.reason for a in file.all(FindingSetAside) if a.renewal == case.renewal}
    told = [replace(finding, set_aside=aside.get(finding.id)) for finding in found]
    findings, decided = _placed(ordered(told))
    used = _releases(case)
    return Review(file.id, file.last_change, case.renewal, case.as_of, findings, decided, used)


def _placed(findings: tuple[Finding, ...]) -> tuple[tuple[Finding, ...], tuple[Finding, ...]]:
    """Return findings and agenda, where each decision also says why it stands where it does."""
    decided = {id(finding): with_place(finding) for finding in agenda(findings)}
    return tuple(decided.get(id(f), f) for f in findings), tuple(decided.values())


def _releases(case: Case) -> tuple[IndexRelease, ...]:
    """Return the releases behind the costs of the insured buildings, one a place."""
    costs = (picture.costs for picture in case.pictures.values())
    used = {c.index.release.geography: c.index.release for c in costs if c is not None}
    return tuple(used[geography] for geography in sorted(used))
