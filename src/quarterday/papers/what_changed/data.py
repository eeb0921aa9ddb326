"""What the paper on changes says."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import asdict
from decimal import Decimal

from quarterday.core.file.records import Terms
from quarterday.core.money import Money
from quarterday.core.premium.split import EFFECTS, Effect, Split, between
from quarterday.core.terms.compare import compare
from quarterday.core.terms.difference import Difference
from quarterday.core.words import Words, words
from quarterday.papers.chart import Step, waterfall
from quarterday.papers.setting import Data, Setting

ID = "what-changed"
GROUPS = ("dropped", "worse", "added", "better", "other")  # in the order they are told


def _two(setting: Setting) -> tuple[Terms, Terms] | None:
    """Return the expiring and the offered terms when there are both."""
    expiring, offered = setting.case.expiring, setting.case.offered
    return (expiring, offered) if expiring and offered else None


def reason(setting: Setting) -> Words | None:
    """Return why it goes in: there are expiring and offered terms to compare."""
    return words("what-changed-reason") if _two(setting) else None


def data(setting: Setting) -> Data:
    """Return the differences between the expiring and the offered terms, and the premium's why."""
    two = _two(setting)
    assert two is not None
    moved = _split(setting, *two)
    title = _title(setting, two[1], moved)
    lead = setting.say("what-changed-lead", before=two[0].end, insurer=two[1].insurer or "–")
    return {
        "opening": setting.opening(ID, title, lead),
        "groups": list(_groups(setting, compare(*two))),
        "premium": _premium(setting, two[1], moved) if moved and _moves(moved) else None,
    }


def _group_of(difference: Difference) -> str:
    """Return the group a difference is told in."""
    if difference.kind in ("dropped", "added"):
        return difference.kind
    return difference.direction if difference.direction in ("worse", "better") else "other"


def _groups(setting: Setting, differences: Iterable[Difference]) -> Iterator[Data]:
    found: dict[str, list[Difference]] = {group: [] for group in GROUPS}
    for difference in differences:
        found[_group_of(difference)].append(difference)
    header = [setting.say(f"what-changed-{id}") for id in ("coverage", "change", "borne")]
    if not any(found.values()):
        yield _nothing(setting, header)
    for group, members in found.items():
        if members:
            yield {
                "heading": setting.say(f"what-changed-{group}", count=len(members)),
                "lead": setting.say(f"what-changed-{group}-lead"),
                "header": header,
                "rows": list(_rows(setting, members)),
            }


def _nothing(setting: Setting, header: list[str]) -> Data:
    lead = setting.say("what-changed-none-lead")
    heading = setting.say("what-changed-none")
    return {"heading": heading, "lead": lead, "header": header, "rows": []}


def _rows(setting: Setting, differences: Iterable[Difference]) -> Iterator[list[list[str]]]:
    """Yield rows of what changed in the same way, each cell a list of lines."""
    by_place: dict[str, list[tuple[str, str]]] = {}
    for difference in sorted(differences, key=lambda d: setting.order(d.coverage)):
        by_place.setdefault(_place(setting, difference), []).append(_change(setting, difference))
    alike: dict[tuple[tuple[str, str], ...], list[str]] = {}
    for place, changes in by_place.items():
        alike.setdefault(tuple(changes), []).append(place)
    for changed, places in alike.items():
        yield [places, [change for change, _ in changed], [borne for _, borne in changed]]


def _place(setting: Setting, difference: Difference) -> str:
    if not difference.coverage:
        return setting.say("what-changed-whole")
    return setting.coverage_at(difference.coverage, difference.location)


def _change(setting: Setting, difference: Difference) -> tuple[str, str]:
    borne = difference.more_borne
    change = setting.say("what-changed-sentence", change=difference.phrase)
    return change, _signed(setting, borne) if borne else "–"


def _split(setting: Setting, expiring: Terms, offered: Terms) -> Split | None:
    if not expiring.premiums or not offered.premiums or expiring.currency != offered.currency:
        return None
    return between(expiring, offered, setting.file.organisation.province, setting.reference)


def _moves(moved: Split) -> bool:
    """Tell whether any part of the premium moved, so that there is something to draw."""
    return any(moved.effects.values())


def _title(setting: Setting, offered: Terms, moved: Split | None) -> str:
    if moved is None:
        return setting.say("what-changed-title")
    change = offered.money(moved.change)
    way = "same" if not change else "up" if change.amount > 0 else "down"
    return setting.say(f"what-changed-title-{way}", change=abs(change))


def _steps(setting: Setting, moved: Split) -> Iterator[Step]:
    yield Step(setting.say("what-changed-before"), moved.before, total=True)
    for effect in EFFECTS:
        if moved.effects[effect]:
            yield Step(setting.say(_step_name(effect)), moved.effects[effect])
    yield Step(setting.say("what-changed-after"), moved.after, total=True)


def _step_name(effect: Effect) -> str:
    own = effect in ("added", "dropped")  # the groups of differences have these names already
    return f"what-changed-{effect}-step" if own else f"what-changed-{effect}"


def _premium(setting: Setting, offered: Terms, moved: Split) -> Data:
    steps = list(_steps(setting, moved))

    def money(value: Decimal) -> str:
        return setting.dollars(offered.money(value))

    def change(value: Decimal) -> str:
        return _signed(setting, offered.money(value))

    title = setting.say("what-changed-chart")
    told = tuple(
        setting.named(s.label, money(s.amount) if s.total else change(s.amount)) for s in steps
    )
    alternative = setting.say("chart-alternative", title=title, rows=told)
    say = setting.amounts(step.amount for step in steps)
    chart = waterfall(title, alternative, steps, money, change)
    starts = setting.say("chart-starts", **{"from": chart.starts}) if chart.starts else None
    return {
        "heading": setting.say("what-changed-premium"),
        "lead": _largest(setting, offered, moved),
        "chart": asdict(chart),
        "starts": starts,
        "header": [setting.say("what-changed-part"), setting.say("premium-statement-dollars")],
        "rows": [[s.label, say(s.amount)] for s in steps],
        "note": setting.say("what-changed-note"),
    }


def _signed(setting: Setting, value: Money) -> str:
    return f"+{setting.dollars(value)}" if value.amount > 0 else setting.dollars(value)


def _largest(setting: Setting, offered: Terms, moved: Split) -> str:
    effect = max(EFFECTS, key=lambda e: abs(moved.effects[e]))
    amount = offered.money(moved.effects[effect])
    way = "up" if amount.amount > 0 else "down"
    cause = words(f"what-changed-cause-{effect}")
    return setting.say(f"what-changed-largest-{way}", cause=cause, amount=abs(amount))
