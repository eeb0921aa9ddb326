"""What the copies for lenders and lessors say."""

from __future__ import annotations

from collections.abc import Iterator

from quarterday.core.file.records import Building, Interest, Terms
from quarterday.core.file.records.terms import Coverage
from quarterday.core.terms.option import deductible_said
from quarterday.core.words import Words, words
from quarterday.papers.letter.data import address
from quarterday.papers.setting import Data, Setting
from quarterday.papers.shown import shown

ID = "copies-for-lenders"


def _active(setting: Setting) -> tuple[Interest, ...]:
    return tuple(i for i in setting.file.interests if i.status == "active")


def reason(setting: Setting) -> Words | None:
    """Return why they go in: a lender or lessor has an interest, and there are terms to show."""
    active = _active(setting)
    if not active or setting.case.terms is None:
        return None
    return words("copies-reason", names=tuple(interest.name for interest in active))


def data(setting: Setting) -> Data:
    """Return one page for each active interest."""
    terms = setting.case.terms
    assert terms is not None
    active = enumerate(_active(setting))
    return {"copies": [_copy(setting, terms, interest, n == 0) for n, interest in active]}


def _copy(setting: Setting, terms: Terms, interest: Interest, first: bool) -> Data:
    title = setting.say(f"copies-title-{interest.role}")
    lead = setting.say(f"copies-lead-{terms.stage}")
    header = ("copies-coverage", "copies-limit", "copies-deductible")
    return {
        "opening": setting.opening(ID, title, lead, first=first),
        "to": [line for line in (interest.name, interest.address) if line],
        "facts": list(_facts(setting, terms, interest)),
        "header": [setting.say(id) for id in header],
        "rows": [
            _row(setting, terms, line) for line in shown(terms, interest.role, interest.location)
        ],
        "notes": [setting.say("copies-caution")],
        "closing": list(_closing(setting)),
    }


def _facts(setting: Setting, terms: Terms, interest: Interest) -> Iterator[tuple[str, str]]:
    organisation = setting.file.organisation
    named = organisation.named_insured or organisation.name
    told = {
        "insured": named,
        "address": ", ".join(filter(None, list(address(organisation))[1:])),
        "insurer": terms.insurer,
        "policy": terms.policy_number,
        "term": setting.say("copies-from-to", start=terms.start, end=terms.end),
        "reference": interest.reference,
        "location": _location(setting, interest),
        "item": interest.item,
        "amount": None if interest.amount is None else setting.money(terms.money(interest.amount)),
    }
    for key, value in told.items():
        if value:
            yield setting.say(f"copies-{key}"), value


def _location(setting: Setting, interest: Interest) -> str | None:
    building = setting.file.get(Building, interest.location) if interest.location else None
    if building is None:
        return None
    return ", ".join(filter(None, (building.name, building.address, building.town)))


def _row(setting: Setting, terms: Terms, line: Coverage) -> list[str]:
    none = "–"
    limit = setting.money(terms.money(line.limit)) if line.limit is not None else none
    own = deductible_said(terms, line)
    return [
        setting.coverage_at(line.coverage, line.location),
        limit,
        none if own is None else setting.spoken(own),
    ]


def _closing(setting: Setting) -> Iterator[str]:
    yield setting.brokerage.named(setting.language)
    if setting.signed:
        yield setting.say("copies-signed", name=setting.signed.reviewer, on=setting.built_on)
    else:
        yield setting.say("letter-not-signed")
