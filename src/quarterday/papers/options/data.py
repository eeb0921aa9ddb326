"""What the options paper says."""

from __future__ import annotations

from collections.abc import Iterator

from quarterday.core.file.records import Terms
from quarterday.core.file.records.terms import Option
from quarterday.core.words import Words, words
from quarterday.papers.setting import Data, Setting

ID = "options"


def offered(setting: Setting) -> tuple[Option, ...]:
    """Return the options of the offer, priced ones first."""
    terms = setting.case.offered
    options = terms.options if terms else ()
    return tuple(sorted(options, key=lambda o: (o.price is None, o.coverage, o.location)))


def reason(setting: Setting) -> Words | None:
    """Return why it goes in: the insurer offers something that is not taken yet."""
    count = len(offered(setting))
    return words("options-reason", count=count) if count else None


def data(setting: Setting) -> Data:
    """Return the options of the offered terms, priced ones first."""
    terms = setting.case.offered
    assert terms is not None
    options = offered(setting)
    title = setting.say("options-title", count=len(options))
    return {
        "opening": setting.opening(ID, title, setting.say("options-lead")),
        "items": [_item(setting, terms, option) for option in options],
        "notes": [setting.say("options-caution")],
    }


def _item(setting: Setting, terms: Terms, option: Option) -> Data:
    return {
        "title": setting.coverage_at(option.coverage, option.location),
        "facts": list(_facts(setting, terms, option)),
        "texts": list(_texts(setting, option)),
    }


def _facts(setting: Setting, terms: Terms, option: Option) -> Iterator[tuple[str, str]]:
    price = setting.say("paper-ask-us")
    if option.price is not None:
        price = setting.say("options-a-year", price=terms.money(option.price))
    yield setting.say("options-price"), price
    for key, amount in (("limit", option.limit), ("deductible", option.deductible)):
        if amount is not None:
            yield setting.say(f"options-{key}"), setting.money(terms.money(amount))
    yield setting.say("options-now"), _now(setting, terms, option)


def _now(setting: Setting, terms: Terms, option: Option) -> str:
    line = terms.find(option.coverage, option.location)
    if line is None:
        return setting.say("options-not-covered")
    if line.limit is None:
        return setting.say("options-covered")
    return setting.money(terms.money(line.limit))


def _texts(setting: Setting, option: Option) -> Iterator[str]:
    known = setting.reference.coverages.get(option.coverage)
    if known is None:
        return
    yield known.meaning[setting.language]
    yield known.not_covered[setting.language]
    yield setting.say("options-question", question=known.question[setting.language])
