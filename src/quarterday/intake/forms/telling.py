"""How proposals are told: today's fact, what the form says, and why something is asked."""

from __future__ import annotations

from datetime import date
from decimal import Decimal

from quarterday.core.file.layout import Column
from quarterday.core.file.records import Building, Decision, PaymentChoice, Terms
from quarterday.core.money import Money
from quarterday.core.premium.instalments import AT_ONCE
from quarterday.core.words import Arg, Rate, Term, Words, words
from quarterday.intake.faults import shown
from quarterday.intake.forms.edits import COLUMNS, LIMIT, Held
from quarterday.intake.forms.proposal import Proposal
from quarterday.intake.labels import choice

Told = Arg | Words | tuple[Arg | Words, ...]


def sentence(proposal: Proposal) -> Words:
    """Return a proposal in a sentence: the question, today's fact, and what the form says."""
    if proposal.is_unread:
        return words("returns-unread", label=proposal.label, said=answered(proposal))
    id = f"returns-{proposal.status}"
    said = {"label": proposal.label, "now": value(proposal, proposal.now)}
    said |= {"said": answered(proposal)}
    if proposal.status == "clash":
        said |= {"was": value(proposal, proposal.was)}
    return words(id, **said)


def answered(proposal: Proposal) -> Told:
    """Return what the form says, as it is spoken."""
    return words("returns-unread-said") if proposal.is_unread else value(proposal, proposal.said)


def value(proposal: Proposal, held: Held) -> Told:
    """Return one value of a proposal as it is spoken: an amount as money, a choice by its name."""
    if isinstance(held, tuple):
        return tuple(map(str, held)) or words("intake-nothing")
    column = LIMIT if proposal.kind == Terms.kind else None
    return _one(proposal, column or COLUMNS.get((proposal.kind, proposal.field)), held)


def _one(proposal: Proposal, column: Column | None, held: Held) -> Arg | Words:
    match held:
        case None:
            return words("returns-nothing")
        case bool():
            return words("yes" if held else "no")
        case Decimal():
            return _number(column, held)
        case int():
            return str(held) if proposal.kind == Building.kind else held
        case date():
            return held
        case _:
            return _named(proposal, column, str(held))


def _number(column: Column | None, held: Decimal) -> Arg:
    if column and column.kind == "amount":
        return Money(held)
    return Rate(held, 2) if column and column.kind == "ratio" else held


def _named(proposal: Proposal, column: Column | None, text: str) -> Arg | Words:
    if proposal.kind == Decision.kind and proposal.field == "answer":
        return Term("answer", text) if proposal.status != "asks" else text
    if proposal.kind == PaymentChoice.kind and text == AT_ONCE:
        return words("payment-at-once")
    if proposal.kind == PaymentChoice.kind:
        return Term("plan", text) if proposal.edit else text
    if column and text in column.choices:
        return choice(proposal.kind, column.field, text)
    return shown(text)
