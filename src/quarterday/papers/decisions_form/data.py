"""What the decisions form asks: an answer to each decision, and to each option with a price."""

from __future__ import annotations

from typing import get_args

from quarterday.core.file.records import Decision, Terms
from quarterday.core.file.records.acts import Choice
from quarterday.core.file.records.terms import Option
from quarterday.core.review.finding import Finding
from quarterday.core.terms.agreed import option_id
from quarterday.core.words import Term, Words, words
from quarterday.papers.asking import Questions, confirmation
from quarterday.papers.letter.data import price
from quarterday.papers.options.data import amounts, offered
from quarterday.papers.setting import Data, Setting

ID = "decisions-form"
ANSWERS: tuple[str, ...] = get_args(Choice)
Fact = tuple[str, str]


def reason(setting: Setting) -> Words | None:
    """Return why it goes in: there is something to decide."""
    decisions, options = len(setting.review.agenda), len(priced(setting))
    if not decisions and not options:
        return None
    case = "both" if decisions and options else "decisions" if decisions else "options"
    return words("decisions-form-reason", case=case, decisions=decisions, options=options)


def priced(setting: Setting) -> tuple[Option, ...]:
    """Return the options with a price that no decision of the agenda asks about by itself."""
    agenda = setting.review.agenda
    alone = {f.subject.key.partition("/")[0] for f in agenda if f.subject.kind == "coverage"}
    return tuple(
        o for o in offered(setting) if o.price is not None and not _is_asked(o, alone)
    )  # fmt: skip


def _is_asked(option: Option, alone: set[str]) -> bool:
    return any(option.coverage in key.split("+") for key in alone)


def data(setting: Setting) -> Data:
    """Return every question with its price and its day, and the answers given so far."""
    agenda = enumerate(setting.review.agenda, start=1)
    decisions = [_decision(setting, number, finding) for number, finding in agenda]
    terms = setting.case.offered
    options = [_option(setting, terms, option) for option in priced(setting)] if terms else []
    parts = [("decisions", decisions), ("options", options)]
    title = setting.say("decisions-form-title", count=len(decisions) + len(options))
    return {
        "opening": setting.opening(ID, title, setting.say("decisions-form-lead")),
        "meanings": [_meaning(setting, id) for id in ANSWERS],
        "parts": [
            {"heading": setting.say(f"decisions-form-{part}"), "items": items}
            for part, items in parts if items
        ],
        "confirm": confirmation(setting, ID, lead="decisions-form-signed-lead"),
    }  # fmt: skip


def _meaning(setting: Setting, id: str) -> Fact:
    name = setting.sentence(setting.spoken(Term("answer", id))).rstrip(".")
    return name, setting.say(f"decisions-form-means-{id}")


def _decision(setting: Setting, number: int, finding: Finding) -> Data:
    title = setting.spoken(finding.title)
    facts = [
        (setting.say("letter-price"), price(setting, finding.priority.cost)),
        (setting.say("letter-by"), setting.spoken(setting.review.deadline(finding))),
    ]
    if finding.priority.at_risk:
        facts.insert(1, (setting.say("letter-at-stake"), setting.dollars(finding.priority.at_risk)))
    return _item(setting, finding.id, f"{number}. {title}", facts)


def _option(setting: Setting, terms: Terms, option: Option) -> Data:
    assert option.price is not None
    facts = [(setting.say("letter-price"), setting.money(terms.money(option.price)))]
    facts += amounts(setting, terms, option)
    title = setting.coverage_at(option.coverage, option.location)
    return _item(setting, option_id(option), title, facts)


def _item(setting: Setting, question: str, title: str, facts: list[Fact]) -> Data:
    given = setting.file.get(Decision, f"{setting.review.renewal}/{question}")
    asked = Questions(setting, ("decisions", question), title)
    options = tuple((id, setting.spoken(Term("answer", id))) for id in ANSWERS)
    label = setting.say("decisions-form-answer")
    value = given.answer if given else ""
    said = given.words or "" if given else ""
    return {
        "title": title,
        "facts": facts,
        "answer": asked.ask("answer", label, "one of", value, options),
        "words": asked.ask("words", setting.say("decisions-form-words"), "line", said),
    }
