"""Two versions of terms, judged by what the same losses would cost under each.

Reference losses are settled one by one, each in a year of its own. Claims of the past are settled
year by year, so that yearly maximums are used up as they would have been.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, field
from datetime import date, timedelta
from functools import cached_property

from quarterday.core.dates import add_years
from quarterday.core.figure import Figure
from quarterday.core.file.records import Terms
from quarterday.core.money import Money, total
from quarterday.core.review.case import Case
from quarterday.core.terms.compare import compare
from quarterday.core.terms.losses.history import History, Replay, history
from quarterday.core.terms.losses.loss import Loss
from quarterday.core.terms.losses.scaling import Scaled, scaled_losses
from quarterday.core.terms.settling.account import setting_of
from quarterday.core.terms.settling.refusals import Refused
from quarterday.core.terms.settling.routing import Item, answer
from quarterday.core.terms.settling.settlement import Setting, Settlement, settle, settle_year
from quarterday.core.words import words

Settled = Settlement | Refused


@dataclass(frozen=True, slots=True)
class Outcome:
    """One loss under two versions of terms; a Refused says why a version cannot settle it.

    ``reworded`` names the coverages it meets whose form or edition changed: there nobody can say
    more until both wordings are read side by side.
    """

    loss: Loss
    before: Settled
    after: Settled
    reworded: tuple[str, ...] = ()

    @property
    def more_borne(self) -> Money | None:
        """How much more the organisation bears after (negative: less); None when not known."""
        if isinstance(self.before, Refused) or isinstance(self.after, Refused):
            return None
        return self.after.borne.money - self.before.borne.money

    @property
    def can_say(self) -> bool:
        """Whether the two amounts can be compared as they stand."""
        return self.more_borne is not None and not self.reworded


@dataclass(frozen=True, slots=True)
class Record:
    """The account's own past claims under two versions, with what had to be assumed.

    ``before`` and ``after`` are figures of what would have been borne over all years.
    """

    history: History
    outcomes: tuple[Outcome, ...]
    before: Figure
    after: Figure

    @property
    def more_borne(self) -> Money:
        """How much more would have been borne after, over all years."""
        return self.after.money - self.before.money


def last_day(terms: Terms) -> date:
    """Return the last day of a policy period: the loss that hurts most comes then."""
    return terms.end - timedelta(days=1)


def outcomes(
    case: Case, before: Terms, after: Terms, losses: Iterable[Loss]
) -> tuple[Outcome, ...]:
    """Return each of ``losses`` under both versions, as if on the last day of either period."""
    return _outcomes(case, (before, after), _settings(case, before, after), losses)


def reference_outcomes(
    case: Case, before: Terms, after: Terms
) -> tuple[tuple[Scaled, Outcome | None], ...]:
    """Return the library's losses, scaled to the account by ``after``, under both versions.

    Refused where ``after`` itself cannot be honoured.
    """
    losses = ReferenceLosses(case, before, after)
    return tuple((scaled, losses.outcome(id)) for id, scaled in losses.scaled.items())


@dataclass(frozen=True)
class ReferenceLosses:
    """The library's losses at an account; each is settled under both versions when asked for.

    Refused, once asked, where ``after`` itself cannot be honoured.
    """

    case: Case
    before: Terms
    after: Terms
    _done: dict[str, Outcome | None] = field(default_factory=dict, compare=False, repr=False)

    @cached_property
    def scaled(self) -> Mapping[str, Scaled]:
        """The losses by their id, scaled to the account by ``after``, in the library's order."""
        new = self._settings[1]
        if isinstance(new, Refused):
            raise new
        return {s.of.id: s for s in scaled_losses(self.case, new, last_day(self.after))}

    def outcome(self, id: str) -> Outcome | None:
        """Return what a loss of the library comes to; None when it cannot strike the account."""
        loss = self.scaled[id].loss
        if loss is not None and id not in self._done:
            versions = self.before, self.after
            (self._done[id],) = _outcomes(self.case, versions, self._settings, (loss,))
        return self._done.get(id)

    @cached_property
    def _settings(self) -> tuple[Setting | Refused, ...]:
        return _settings(self.case, self.before, self.after)


def _settings(case: Case, *versions: Terms) -> tuple[Setting | Refused, ...]:
    """Return what losses are settled under by each version, or why it cannot be honoured."""
    return tuple(_setting(case, terms) for terms in versions)


def _setting(case: Case, terms: Terms) -> Setting | Refused:
    try:
        return setting_of(case, terms, last_day(terms))
    except Refused as refusal:
        return refusal


def _outcomes(
    case: Case,
    versions: tuple[Terms, Terms],
    settings: tuple[Setting | Refused, ...],
    losses: Iterable[Loss],
) -> tuple[Outcome, ...]:
    reworded = _reworded(*versions)
    old, new = settings
    return tuple(
        Outcome(
            loss=loss,
            before=_tried(old, loss),
            after=_tried(new, loss),
            reworded=_met(case, versions[1], loss, reworded),
        )
        for loss in losses
    )


def _tried(setting: Setting | Refused, loss: Loss) -> Settled:
    if isinstance(setting, Refused):
        return setting
    return _tried_on_its_day(setting, _moved(loss, last_day(setting.terms)))


def _moved(loss: Loss, day: date) -> Loss:
    return loss.model_copy(update={"date_of_loss": day, "claimed_on": None})


def _reworded(before: Terms, after: Terms) -> frozenset[str]:
    """Return the coverages whose form or edition changed."""
    return frozenset(d.coverage for d in compare(before, after) if d.kind == "wording")


def _met(case: Case, terms: Terms, loss: Loss, among: frozenset[str]) -> tuple[str, ...]:
    """Return the coverages of ``among`` that answer ``loss``."""
    met: dict[str, None] = {}
    for damage in loss.damages:
        item = Item(damage.component, damage.place, loss.cause)
        try:
            lines = answer(terms, case.reference, item).lines
        except Refused:
            continue
        met |= dict.fromkeys(line.coverage for line in lines if line.coverage in among)
    return tuple(met)


def past_outcomes(case: Case, before: Terms, after: Terms, years: int = 10) -> Record:
    """Return the account's claims of the last ``years`` years under both versions.

    A claim falls on its own day of the year within each period. What it cost from the ground up is
    its incurred amount and its deductible, where that is known; ``history`` says what is assumed.
    """
    told = history(case, years)
    old, new = (_replayed(s, told.replays) for s in _settings(case, before, after))
    reworded = _reworded(before, after)
    found = tuple(
        Outcome(r.loss, a, b, _met(case, after, r.loss, reworded))
        for r, a, b in zip(told.replays, old, new, strict=True)
    )
    both = [o for o in found if o.more_borne is not None]
    sides = ((o.before for o in both), (o.after for o in both))
    figures = (_borne(name, case, s) for name, s in zip(("before", "after"), sides, strict=True))
    return Record(told, found, *figures)


def _borne(name: str, case: Case, settled: Iterable[Settled]) -> Figure:
    inputs = tuple(s.borne for s in settled if isinstance(s, Settlement))
    currency = case.terms.currency if case.terms else "CAD"
    return Figure(
        id=f"settling-past-{name}",
        value=total((figure.money for figure in inputs), currency),
        unit="money",
        label=words(f"settling-past-{name}"),
        how=words("settling-how-past", n=len(inputs)),
        inputs=inputs,
    )


def _replayed(setting: Setting | Refused, replays: Sequence[Replay]) -> tuple[Settled, ...]:
    """Settle claims year by year; a claim the terms refuse is told, the others stay settled."""
    if isinstance(setting, Refused):
        return (setting,) * len(replays)
    done: dict[str, Settled] = {}
    for year in sorted({replay.year for replay in replays}, reverse=True):
        told = (r.loss for r in replays if r.year == year)
        done |= _year(setting, [_moved(loss, _within(setting.terms, loss)) for loss in told])
    return tuple(done[replay.loss.id] for replay in replays)


def _year(setting: Setting, losses: Sequence[Loss]) -> dict[str, Settled]:
    """Settle the claims of one year together, those aside that the terms refuse."""
    try:
        return {done.loss.id: done for done in settle_year(setting, losses)}
    except Refused:
        alone = {loss.id: _tried_on_its_day(setting, loss) for loss in losses}
    kept = [loss for loss in losses if not isinstance(alone[loss.id], Refused)]
    return alone | {done.loss.id: done for done in settle_year(setting, kept)}


def _tried_on_its_day(setting: Setting, loss: Loss) -> Settled:
    try:
        return settle(setting, loss)
    except Refused as refusal:
        return refusal


def _within(terms: Terms, loss: Loss) -> date:
    """Return the loss's own day of the year in the policy period, else the last day of that."""
    years = terms.start.year - loss.date_of_loss.year
    days = (add_years(loss.date_of_loss, n) for n in (years, years + 1))
    return next((day for day in days if day in terms.period), last_day(terms))
