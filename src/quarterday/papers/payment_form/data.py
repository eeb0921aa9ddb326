"""What the payment form asks: one way to pay, out of those the insurer takes."""

from __future__ import annotations

from collections.abc import Iterator

from quarterday.core.diary.diary import diary
from quarterday.core.file.records import PaymentChoice, Terms
from quarterday.core.premium.instalments import AT_ONCE, Schedule, plan_name
from quarterday.core.premium.statement import Statement, statement
from quarterday.core.words import Rate, Words, words
from quarterday.papers.asking import Questions, confirmation
from quarterday.papers.premium_statement.paying import plan_table
from quarterday.papers.setting import Data, Setting

ID = "payment-form"
HEADS = ("way", "first", "last", "all", "extra", "rate")


def reason(setting: Setting) -> Words | None:
    """Return why it goes in: a finding brings it, and the offer has a premium to pay."""
    offered = setting.case.offered
    return setting.brought(ID) if offered and offered.premiums else None


def data(setting: Setting) -> Data:
    """Return the ways to pay with their cost, the choice (filled in when made), and the days."""
    terms = setting.case.offered
    assert terms is not None
    made = statement(setting.case, terms)
    by = next(due.latest for due in diary(setting.case) if due.id == "payment")
    title = setting.say("payment-form-title", total=made.table.total)
    return {
        "opening": setting.opening(ID, title, setting.say("payment-form-lead", by=by)),
        "heading": setting.say("payment-form-ways"),
        "header": [setting.say(f"payment-form-{head}") for head in HEADS],
        "rows": list(_rows(setting, terms, made)),
        "choice": _choice(setting, terms, made),
        "notes": list(_notes(setting, made)),
        "confirm": confirmation(setting, ID),
        "plans": {
            "heading": setting.say("payment-form-plans"),
            "lead": setting.say("premium-statement-plans-rates"),
            "tables": [plan_table(setting, plan) for plan in made.plans.values()],
        },
    }


def _rows(setting: Setting, terms: Terms, made: Statement) -> Iterator[list[str]]:
    day, total = setting.short_day(terms.start), setting.money(made.table.total)
    yield [setting.say("paper-name", paper=words("payment-at-once")), day, day, total, "–", "–"]
    for plan in made.plans.values():
        yield _row(setting, plan)


def _row(setting: Setting, plan: Schedule) -> list[str]:
    first, last = plan.payments[0].due, plan.payments[-1].due
    rate = setting.spoken(Rate(plan.effective, 2))
    days = [setting.short_day(day) for day in (first, last)]
    amounts = [setting.money(amount) for amount in (plan.total, plan.extra)]
    return [setting.say("paper-name", paper=plan_name(plan.plan)), *days, *amounts, rate]


def _choice(setting: Setting, terms: Terms, made: Statement) -> Data:
    """Return the question with the choice on file, and none where there is none."""
    label = setting.say("payment-form-question")
    asked = Questions(setting, ("payment",), setting.name)
    chosen = setting.file.get(PaymentChoice, str(terms.start))
    plans = ((id, setting.spoken(plan_name(plan.plan))) for id, plan in made.plans.items())
    options = ((AT_ONCE, setting.say("payment-at-once")), *plans)
    return asked.ask("plan", label, "one of", chosen.plan if chosen else "", options)


def _notes(setting: Setting, made: Statement) -> Iterator[str]:
    plans = [plan.plan for plan in made.plans.values()]
    ways = {plan.way for plan in plans}
    if "post-dated-cheques" in ways:
        yield setting.say("payment-form-cheques")
    if "direct-withdrawal" in ways:
        yield setting.say("payment-form-bank")
    if any(plan.illustrative for plan in plans):
        yield setting.say("premium-statement-plans-example")
