"""What the options paper says."""

from __future__ import annotations

from collections.abc import Iterator

from quarterday.core.file.records import Terms
from quarterday.core.file.records.terms import Option
from quarterday.core.money import Money
from quarterday.core.risk.choices import OptionRow, deductibles
from quarterday.core.risk.figures import caution
from quarterday.core.risk.told import deductible_told, rests_on
from quarterday.core.terms.option import amounts_said, changes_deductible
from quarterday.core.words import Words, words
from quarterday.papers.setting import Data, Setting

ID = "options"
HEADS = ("option", "state", "price", "average", "hundred")


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
        "table": _table(setting),
        "deductibles": _deductibles(setting),
        "items": [_item(setting, terms, option) for option in options],
        "notes": [setting.say("options-caution")],
    }


def _table(setting: Setting) -> Data | None:
    """Return what each option would have changed, in one table; None where nothing is measured."""
    rows = setting.case.options
    if not rows:
        return None
    why_not = [
        setting.say("risk-not-measured", option=row.name, why=row.why_not)
        for row in rows
        if row.why_not is not None
    ]
    return {
        "heading": setting.say("options-change"),
        "lead": setting.say("options-change-lead"),
        "header": [setting.say(f"risk-head-{id}") for id in HEADS],
        "rows": [list(_row(setting, row)) for row in rows],
        "notes": [*why_not, *_resting(setting)],
    }


def _row(setting: Setting, row: OptionRow) -> Iterator[str]:
    yield setting.sentence(setting.spoken(row.name)).rstrip(".")
    yield setting.say("risk-state", state=row.state)
    yield setting.say("paper-ask-us") if row.price is None else setting.money(row.price)
    if row.average is None:
        yield from (setting.say("options-not-measured"),) * 2
        return
    yield _change(setting, row.average.money)
    bad = _change(setting, row.bad[-1].money)
    yield f"{bad}\n{_reach(setting, row)}" if row.bad[-1].money else bad


def _change(setting: Setting, amount: Money) -> str:
    if not amount:
        return setting.say("risk-same")
    way = "less" if amount.amount < 0 else "more"
    return setting.say(f"risk-{way}", amount=abs(amount))


def _reach(setting: Setting, row: OptionRow) -> str:
    """Return between which amounts chance alone puts a change, the smaller first."""
    assert row.reach is not None
    least, most = sorted(map(abs, row.reach))
    return setting.say("options-reach", least=least, most=most)


def _resting(setting: Setting) -> Iterator[str]:
    """Yield what the figures rest on, and what no figure of a model holds."""
    risk = setting.case.risk
    assert risk is not None
    yield setting.say("options-rests-on", years=risk.comparison.years)
    yield setting.spoken(caution())
    yield from map(setting.spoken, rests_on(risk))


def _deductibles(setting: Setting) -> Data | None:
    """Return the choices of deductible, each with its break-even number of losses."""
    risk = setting.case.risk
    choices = deductibles(risk) if risk else ()
    if not choices:
        return None
    return {
        "heading": setting.say("options-deductibles"),
        "lead": setting.say("options-deductibles-lead"),
        "items": [[setting.spoken(said) for said in deductible_told(one)] for one in choices],
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
    yield from amounts(setting, terms, option)
    yield setting.say("options-now"), _now(setting, terms, option)


def amounts(setting: Setting, terms: Terms, option: Option) -> Iterator[tuple[str, str]]:
    """Yield the limit and the deductible that an option names, each with its label."""
    for key, amount in amounts_said(terms, option).items():
        shown = setting.money(amount) if isinstance(amount, Money) else setting.spoken(amount)
        yield setting.say(f"options-{key}"), shown


def _now(setting: Setting, terms: Terms, option: Option) -> str:
    line = terms.find(option.coverage, option.location)
    if line is None:
        return setting.say("options-not-covered")
    amounts = amounts_said(terms, line)
    if not changes_deductible(line, option):
        amounts.pop("deductible", None)
    if not amounts:
        return setting.say("options-covered")
    return setting.say("risk-amounts", case="-".join(amounts), **amounts)


def _texts(setting: Setting, option: Option) -> Iterator[str]:
    known = setting.reference.coverages.get(option.coverage)
    if known is None:
        return
    yield known.meaning[setting.language]
    yield known.not_covered[setting.language]
    yield setting.say("options-question", question=known.question[setting.language])
