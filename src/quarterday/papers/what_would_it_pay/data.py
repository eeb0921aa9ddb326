"""What the paper of four losses says: what the library's losses would cost under these terms."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import asdict, dataclass
from decimal import Decimal

from quarterday.core.file.records.terms import EVERYWHERE
from quarterday.core.reference import ReferenceLoss
from quarterday.core.terms.settling.outcomes import ReferenceLosses
from quarterday.core.terms.settling.settlement import Settlement
from quarterday.core.words import Term, Words, words
from quarterday.papers.chart import Key, stacked
from quarterday.papers.setting import Data, Setting

ID = "what-would-it-pay"
MOST = 4
MOST_STEPS = 6  # of one loss
# What people can picture: a fire, water, money taken, somebody hurt; of each the first that fits.
FIRST = (
    ("total-fire", "kitchen-fire"),
    ("basement-backup", "burst-pipe"),
    ("dishonest-bookkeeper", "offering-theft"),
    ("fall-on-steps", "punitive-lawsuit"),
)


@dataclass(frozen=True, slots=True)
class Walked:
    """A loss of the library walked through; ``before``: as this year's policy would settle it."""

    of: ReferenceLoss
    now: Settlement
    before: Settlement | None


def walked(setting: Setting) -> tuple[Walked, ...]:
    """Return at most four losses that the terms say enough about, in the order they are told."""
    losses = setting.losses
    if losses is None:
        return ()
    told = (_first(setting, losses, ids) for ids in FIRST)
    first = [one for one in told if one is not None]
    return tuple(first if len(first) == MOST else [*first, *_worst(setting, losses, first)])


def _first(setting: Setting, losses: ReferenceLosses, ids: Iterable[str]) -> Walked | None:
    """Return the first of these losses that can be walked through; no other is settled."""
    told = (_walked(setting, losses, id) for id in ids if id in losses.scaled)
    return next((one for one in told if one is not None), None)


def _worst(setting: Setting, losses: ReferenceLosses, first: Sequence[Walked]) -> list[Walked]:
    """Return of the other losses those that leave the most with the organisation."""
    known = {one.of.id for one in first}
    told = (_walked(setting, losses, id) for id in losses.scaled if id not in known)
    rest = [one for one in told if one is not None]
    return sorted(rest, key=_most_borne)[: MOST - len(first)]


def _most_borne(one: Walked) -> tuple[Decimal, str]:
    return -one.now.borne.money.amount, one.of.id


def _walked(setting: Setting, losses: ReferenceLosses, id: str) -> Walked | None:
    """Return a loss settled under the terms; None where they refuse it or it cannot happen."""
    outcome = losses.outcome(id)
    if outcome is None or not isinstance(outcome.after, Settlement):
        return None
    comparable = setting.case.expiring is not setting.case.terms and outcome.can_say
    before = outcome.before if comparable and isinstance(outcome.before, Settlement) else None
    return Walked(losses.scaled[id].of, outcome.after, before)


def reason(setting: Setting) -> Words | None:
    """Return why it goes in: there are terms that say what they pay."""
    found = walked(setting)
    return words("would-pay-reason", count=len(found)) if found else None


def data(setting: Setting) -> Data:
    """Return each loss with what is paid and borne, why, and this year's policy beside it."""
    found = walked(setting)
    lead = setting.say("would-pay-lead", count=len(found))
    header = ("part", "lost", "pays", "borne")
    return {
        "opening": setting.opening(ID, _title(setting, found), lead),
        "chart": _chart(setting, found),
        "table": _table(setting, found),
        "header": [setting.say(f"would-pay-{id}") for id in header],
        "items": [_item(setting, one) for one in found],
        "notes": [setting.say("would-pay-caution"), setting.say("caution-wording-governs")],
    }


def _title(setting: Setting, found: Iterable[Walked]) -> str:
    worst = max(found, key=lambda one: one.now.borne.money.amount)
    borne = worst.now.borne.money
    case = "some" if borne else "none"
    name = _name(setting, worst)
    return setting.say(
        "would-pay-title", case=case, amount=setting.dollars(borne.about()), loss=name
    )


def _name(setting: Setting, one: Walked) -> str:
    return setting.spoken(Term("loss", one.of.id))


def _at(setting: Setting, one: Walked) -> str:
    """Return a loss's name with the building it strikes."""
    place = one.now.loss.place
    if place == EVERYWHERE:
        return _name(setting, one)
    return setting.say(
        "paper-coverage-at", coverage=_name(setting, one), place=setting.place(place)
    )


def _chart(setting: Setting, found: Iterable[Walked]) -> Data:
    keys = [
        Key("paid", setting.say("building-values-paid")),
        Key("borne", setting.say("building-values-borne")),
    ]
    rows = [(_name(setting, one), _paid_borne(setting, one.now), _amounts(one)) for one in found]
    title = setting.say("would-pay-chart")
    spoken = "; ".join(setting.named(label, note) for label, note, _ in rows)
    alt = setting.say("chart-alternative", title=title, rows=spoken)
    return asdict(stacked(title, alt, keys, rows))


def _amounts(one: Walked) -> list[Decimal]:
    return [one.now.paid.money.amount, one.now.borne.money.amount]


def _paid_borne(setting: Setting, settlement: Settlement) -> str:
    paid, borne = setting.dollars(settlement.paid.money), setting.dollars(settlement.borne.money)
    return setting.say("building-values-pays", paid=paid, borne=borne)


def _table(setting: Setting, found: tuple[Walked, ...]) -> Data:
    """Return the losses side by side; this year's policy only where it can be compared."""
    header = ["loss", "total", "pays", "borne", "before"]
    rows = [list(_row(setting, one)) for one in found]
    if not any(one.before for one in found):
        header, rows = header[:-1], [row[:-1] for row in rows]
    return {"header": [setting.say(f"would-pay-{id}") for id in header], "rows": rows}


def _row(setting: Setting, one: Walked) -> Iterator[str]:
    yield _name(setting, one)
    for figure in (one.now.total, one.now.paid, one.now.borne):
        yield setting.dollars(figure.money)
    yield setting.dollars(one.before.borne.money) if one.before else "–"


def _item(setting: Setting, one: Walked) -> Data:
    return {
        "heading": _at(setting, one),
        "story": one.of.story[setting.language],
        "rows": list(_parts(setting, one.now)),
        "result": _result(setting, one.now),
        "why": _why(setting, one.now),
        "steps": [setting.spoken(step) for step in _steps(one.now)],
        "cautions": [setting.spoken(caution) for caution in one.now.cautions],
    }


def _parts(setting: Setting, settlement: Settlement) -> Iterator[list[str]]:
    for part in settlement.parts:
        name = setting.spoken(Term("settling-component", part.component))
        yield [name, *map(setting.dollars, (part.lost, part.paid, part.borne))]


def _result(setting: Setting, s: Settlement) -> str:
    paid, borne, whole = (setting.dollars(f.money) for f in (s.paid, s.borne, s.total))
    case = "all" if not s.borne.money else "none" if not s.paid.money else "part"
    return setting.say("would-pay-result", case=case, paid=paid, borne=borne, total=whole)


def _why(setting: Setting, s: Settlement) -> str | None:
    """Return why some is borne, the largest first; None when nothing is."""
    borne = ((Term("settling-reason", id), setting.dollars(f.money)) for id, f in s.by_reason)
    reasons = tuple(words("would-pay-reason-of", why=why, amount=amount) for why, amount in borne)
    return setting.say("would-pay-because", reasons=reasons) if reasons else None


def _steps(s: Settlement) -> Iterator[Words]:
    """Yield the steps of what is borne, whole or in part."""
    yield from [step for part in s.parts if part.borne for step in part.steps][:MOST_STEPS]
