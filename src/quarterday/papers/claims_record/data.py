"""What the claims record says: ten years by cause, how much of it was water, what prevents it."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import asdict
from decimal import Decimal

from quarterday.core.claims.late import DAYS, delayed, reported_late
from quarterday.core.claims.record import ClaimsRecord, Sums, record
from quarterday.core.figure import Figure
from quarterday.core.file.records import Claim
from quarterday.core.money import Money
from quarterday.core.words import Rate, Term, Words, words
from quarterday.papers.chart import Key, stacked
from quarterday.papers.setting import Data, Setting

ID = "claims-record"
YEARS = "claims.water-lookback-years"
MOST_CAUSES = 8  # in the chart; the table below it has every claim
MOST_ADVISED = 3  # causes whose prevention is told, the costliest first
MOST_TIPS = 3  # of one cause
UNKNOWN_CAUSE = "other"


def told(setting: Setting) -> ClaimsRecord:
    """Return the record of the years that insurers look back on."""
    return record(setting.case, int(str(setting.case.parameter(YEARS).value)))


def reason(setting: Setting) -> Words | None:
    """Return why it goes in: there were claims."""
    found = told(setting)
    if not found.sums.count:
        return None
    return words("claims-record-reason", count=found.sums.count, years=len(found.years))


def data(setting: Setting) -> Data:
    """Return the record by cause, claim by claim, and what prevents the costliest causes."""
    found = told(setting)
    return {
        "opening": setting.opening(ID, _title(setting, found), _lead(setting, found)),
        "glance_items": list(_glance(setting, found)),
        "chart": _chart(setting, found),
        "table": _table(setting, found),
        "prevention": _prevention(setting, found),
        "notes": [*_late(setting), _note(setting, found)],
    }


def _title(setting: Setting, found: ClaimsRecord) -> str:
    count, water = found.sums.count, found.water.count
    case = "none" if not water else "all" if water == count else "some"
    return setting.say(
        "claims-record-title", case=case, count=count, water=water, years=len(found.years)
    )


def _lead(setting: Setting, found: ClaimsRecord) -> str:
    return setting.say("claims-record-lead", start=found.period.start, end=found.period.end)


def _share(figure: Figure | None) -> Rate | None:
    """Return a share as whole percents."""
    return Rate(figure.number, 0) if figure else None


def _glance(setting: Setting, found: ClaimsRecord) -> Iterator[Data]:
    yield {
        "label": setting.say("claims-record-claims"),
        "figure": str(found.sums.count),
        "note": setting.say("claims-record-in-years", years=len(found.years)),
    }
    yield {
        "label": setting.say("claims-record-cost"),
        "figure": setting.dollars(found.sums.incurred),
        "note": setting.say("claims-record-cost-note"),
    }
    share = _share(found.water_cost_share)
    yield {
        "label": setting.say("claims-record-water-cost"),
        "figure": setting.dollars(found.water.incurred),
        "note": setting.say("claims-record-water-share", share=share) if share else None,
    }


def _chart(setting: Setting, found: ClaimsRecord) -> Data | None:
    """Return the costs by cause, water darker; None when no claim cost anything."""
    shown = [(c, s) for c, s in found.causes if s.incurred.amount > 0][:MOST_CAUSES]
    if not shown:
        return None
    water = setting.reference.water_causes
    keys = [
        Key("borne", setting.say("claims-record-key-water")),
        Key("paid", setting.say("claims-record-key-other")),
    ]
    rows = [
        (_cause(setting, cause), _counted(setting, sums), _amounts(sums, wet=cause in water))
        for cause, sums in shown
    ]
    title = setting.say("claims-record-chart")
    spoken = "; ".join(setting.named(label, note) for label, note, _ in rows)
    alt = setting.say("chart-alternative", title=title, rows=spoken)
    return asdict(stacked(title, alt, keys, rows))


def _amounts(sums: Sums, *, wet: bool) -> list[Decimal]:
    amount, none = sums.incurred.amount, Decimal(0)
    return [amount, none] if wet else [none, amount]


def _cause(setting: Setting, id: str) -> str:
    known = id in setting.reference.causes
    name = setting.spoken(Term("cause", id)) if known else id
    return setting.sentence(name).rstrip(".")


def _counted(setting: Setting, sums: Sums) -> str:
    return setting.say("claims-record-counted", count=sums.count, amount=sums.incurred.rounded())


def _table(setting: Setting, found: ClaimsRecord) -> Data:
    header = ("day", "cause", "place", "cost-header", "status")
    newest = sorted(found.sums.claims, key=lambda c: (c.date_of_loss, c.number), reverse=True)
    return {
        "heading": setting.say("claims-record-each"),
        "header": [setting.say(f"claims-record-{id}") for id in header],
        "rows": [_row(setting, found, claim) for claim in newest],
    }


def _row(setting: Setting, found: ClaimsRecord, claim: Claim) -> list[str]:
    nowhere = setting.say("claims-record-nowhere")
    return [
        setting.short_day(claim.date_of_loss),
        _cause(setting, claim.cause),
        setting.place(claim.location) if claim.location else nowhere,
        setting.dollars(Money(claim.incurred, found.sums.incurred.currency)),
        setting.spoken(Term("claim-status", claim.status)),
    ]


def _prevention(setting: Setting, found: ClaimsRecord) -> Data | None:
    """Return what prevents the costliest causes, as the catalogue of causes says it."""
    known = (setting.reference.causes.get(cause) for cause, _ in found.causes)
    advised = [cause for cause in known if cause and cause.tips and cause.id != UNKNOWN_CAUSE]
    items = [
        {
            "heading": _cause(setting, cause.id),
            "tips": [tip[setting.language] for tip in cause.tips[:MOST_TIPS]],
        }
        for cause in advised[:MOST_ADVISED]
    ]
    told = {
        "heading": setting.say("claims-record-prevention"),
        "caution": setting.say("caution-local-rules"),
        "items": items,
    }
    return told if items else None


def _late(setting: Setting) -> Iterator[str]:
    """Yield which claims were reported late; nothing where none was."""
    claims = reported_late(setting.case)
    if claims:
        days = setting.case.parameter(DAYS).value
        yield setting.say("claims-record-late", each=tuple(map(delayed, claims)), days=days)


def _note(setting: Setting, found: ClaimsRecord) -> str:
    """Return how far the record is to be trusted, with the day it was valued where it says so."""
    days = [claim.valued_on for claim in found.sums.claims if claim.valued_on]
    if not days:
        return setting.say("claims-record-caution")
    return setting.say("claims-record-caution-day", day=max(days))
