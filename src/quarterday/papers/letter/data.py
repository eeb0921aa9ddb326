"""What the letter says."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from quarterday.core.file.records import Contact, Organisation
from quarterday.core.money import Money
from quarterday.core.premium.table import table
from quarterday.core.review.case import Version
from quarterday.core.review.finding import Finding
from quarterday.core.words import Term, Words, words
from quarterday.papers import alone
from quarterday.papers.parts import PARTS
from quarterday.papers.setting import Data, Setting

ID = "letter"
READERS = ("treasurer", "chair", "administrator", "secretary", "minister")  # in this order
Enclosed = Sequence[tuple[str, Words]]


def reason(setting: Setting) -> Words:
    """Return why the letter goes in: it always does."""
    return words("letter-reason", count=len(setting.review.agenda))


def data(setting: Setting, enclosed: Enclosed) -> Data:
    """Return the letter of a package that holds ``enclosed``, the letter first."""
    return {
        "opening": setting.opening(ID, _title(setting), _lead(setting)),
        "sender": list(alone.sender(setting.brokerage, setting.language)),
        "to": [line for line in _to(setting) if line],
        "greeting": _greeting(setting),
        "glance_items": list(_glance(setting)),
        "terms": setting.say("letter-words"),
        "agenda": _agenda(setting),
        "enclosed": _enclosed(setting, enclosed),
        "decisions": _decisions(setting),
        "lists": list(_lists(setting, enclosed)),
        "cautions": list(_cautions(setting)),
        "closing": list(_closing(setting)),
    }


def _title(setting: Setting) -> str:
    count, renewal = len(setting.review.agenda), setting.review.renewal
    return setting.say("letter-title", count=count, renewal=renewal)


def _lead(setting: Setting) -> str:
    offered = "letter-lead" if setting.case.offered else "letter-lead-no-offer"
    return setting.say(
        offered,
        as_of=setting.review.as_of,
        renewal=setting.review.renewal,
        count=len(setting.review.agenda),
    )


def address(organisation: Organisation) -> Iterator[str]:
    """Yield the lines of an organisation's name and address."""
    yield organisation.name
    yield organisation.address or ""
    town = f"{organisation.town} ({organisation.province})" if organisation.town else ""
    yield " ".join(filter(None, (town, organisation.postal_code)))


def _addressee(setting: Setting) -> Contact | None:
    """Return who gets the letter: a key contact, else anyone; the treasurer before the others."""
    return min(setting.contacts(), key=_nearness, default=None)


def _nearness(contact: Contact) -> tuple[bool, int, str]:
    rank = READERS.index(contact.role) if contact.role in READERS else len(READERS)
    return not contact.is_key, rank, contact.id


def _to(setting: Setting) -> Iterator[str]:
    yield setting.spoken(setting.built_on)
    contact = _addressee(setting)
    if contact:
        role = setting.spoken(Term("role", contact.role))
        yield setting.say("letter-to", name=contact.name, role=role)
    yield from address(setting.file.organisation)


def _greeting(setting: Setting) -> str:
    contact = _addressee(setting)
    return setting.say("letter-dear", name=contact.name) if contact else setting.say("letter-all")


def _glance(setting: Setting) -> Iterator[Data]:
    yield _premium(setting)
    count, renewal = len(setting.review.agenda), setting.review.renewal
    by = min(map(setting.review.deadline, setting.review.agenda), default=renewal)
    yield {
        "label": setting.say("letter-glance-decisions"),
        "figure": str(count),
        "note": setting.say("letter-glance-by", by=by) if count else None,
    }
    yield {
        "label": setting.say("letter-glance-renewal"),
        "figure": setting.spoken(renewal),
        "note": setting.say("letter-glance-as-of", as_of=setting.review.as_of),
    }


def _premium(setting: Setting) -> Data:
    label = setting.say("letter-glance-premium")
    now = premium_of(setting, "offered")
    if now is None:
        return {"label": label, "figure": setting.say("letter-not-offered"), "note": None}
    return {"label": label, "figure": setting.money(now), "note": _moved(setting, now)}


def premium_of(setting: Setting, name: Version) -> Money | None:
    """Return the total of a version of the terms; None where no premium is known."""
    terms = setting.case.version(name)
    if terms is None or not terms.premiums:
        return None
    return table(terms, setting.file.organisation.province, setting.reference).total


def _moved(setting: Setting, now: Money) -> str | None:
    before = premium_of(setting, "expiring")
    if before is None or before.currency != now.currency:
        return None
    change = now - before
    way = "same" if not change else "up" if change.amount > 0 else "down"
    return setting.say(f"letter-moved-{way}", change=abs(change))


def _agenda(setting: Setting) -> Data | None:
    """Return the decisions as one short table, or None when there are none."""
    rows = [
        [
            str(number),
            setting.spoken(finding.title),
            price(setting, finding.priority.cost),
            setting.short_day(setting.review.deadline(finding)),
        ]
        for number, finding in enumerate(setting.review.agenda, start=1)
    ]
    header = ("letter-number", "letter-decision", "letter-price", "letter-by")
    named = [setting.say(id) for id in header]
    heading = setting.say("letter-decide")
    return {"heading": heading, "header": named, "rows": rows} if rows else None


def _decisions(setting: Setting) -> Data | None:
    agenda = setting.review.agenda
    if not agenda:
        return None
    items = [
        {
            "number": number,
            "title": setting.spoken(finding.title),
            "means": setting.spoken(finding.means),
            "todo": setting.spoken(finding.todo),
            "facts": list(_facts(setting, finding)),
        }
        for number, finding in enumerate(agenda, start=1)
    ]
    return {"heading": setting.say("letter-in-full"), "items": items}


def _facts(setting: Setting, finding: Finding) -> Iterator[tuple[str, str]]:
    priority = finding.priority
    yield setting.say("letter-price"), price(setting, priority.cost)
    if priority.at_risk:
        yield setting.say("letter-at-stake"), setting.dollars(priority.at_risk)
    yield setting.say("letter-by"), setting.spoken(setting.review.deadline(finding))


def price(setting: Setting, cost: Money | None) -> str:
    """Return what a decision costs, or that it must be asked."""
    if cost is None:
        return setting.say("paper-ask-us")
    return setting.dollars(cost) if cost else setting.say("letter-free")


def _lists(setting: Setting, enclosed: Enclosed) -> Iterator[Data]:
    """Yield what to send back, form by form, and what to know; what is alike is told once."""
    agenda = {finding.id for finding in setting.review.agenda}
    rest = [f for f in setting.told if f.id not in agenda]
    back = [f for f in rest if f.kind in ("send back", "fix")]
    if back:
        items = list(_to_send_back(setting, back, [id for id, _ in enclosed]))
        yield {"heading": setting.say("letter-send-back"), "items": items}
    know = [f for f in rest if f not in back]
    if know:
        items = [_item([title]) for title in _alike(setting, know)]
        yield {"heading": setting.say("letter-know"), "items": items}


def _item(texts: Sequence[str], form: str | None = None, title: str | None = None) -> Data:
    return {"id": form, "title": title, "texts": list(texts)}


def _to_send_back(
    setting: Setting, back: Sequence[Finding], enclosed: Sequence[str]
) -> Iterator[Data]:
    """Yield what each enclosed form is for and what to do, then what needs no form."""
    by_form: dict[str | None, list[Finding]] = {}
    for finding in back:
        form = next((id for id in finding.encloses if id in enclosed), None)
        by_form.setdefault(form, []).append(finding)
    for form, findings in sorted(by_form.items(), key=lambda item: item[0] is None):
        why = map(setting.sentence, _alike(setting, findings))
        todo = dict.fromkeys(setting.spoken(finding.todo) for finding in findings)
        name = setting.say("paper-name", paper=Term("paper", form)) if form else None
        yield _item([*why, *todo], form, name)


def _alike(setting: Setting, findings: Sequence[Finding]) -> Iterator[str]:
    """Yield a title for each rule: the most pressing one's, and how many more are like it."""
    by_rule: dict[tuple[str, str], list[Finding]] = {}
    for finding in findings:
        by_rule.setdefault((finding.rule, finding.title.id), []).append(finding)
    for same in by_rule.values():
        title, more = same[0].title, len(same) - 1
        yield setting.say("letter-alike", title=title, count=more)


def _enclosed(setting: Setting, enclosed: Enclosed) -> Data:
    """Return what is enclosed and why: what to read, what to send back, what to keep."""
    why = dict(enclosed)
    parts = {name: [id for id in ids if id in why] for name, ids in PARTS.items()}
    header = [setting.say(id) for id in ("letter-pages", "letter-why", "letter-page")]
    return {
        "heading": setting.say("letter-enclosed", count=sum(map(len, parts.values()))),
        "header": header,
        "parts": [
            {
                "name": setting.say(f"letter-part-{name}"),
                "rows": [_row_of(setting, id, why[id]) for id in ids],
            }
            for name, ids in parts.items()
            if ids
        ],
    }


def _row_of(setting: Setting, id: str, why: Words) -> Data:
    name = setting.say("paper-name", paper=Term("paper", id))
    return {"id": id, "name": name, "reason": setting.sentence(setting.spoken(why))}


def _cautions(setting: Setting) -> Iterator[str]:
    yield setting.say("caution-wording-governs")
    if setting.file.operations.works_with_vulnerable:
        yield setting.say("caution-at-risk")


def _closing(setting: Setting) -> Iterator[str]:
    if setting.signed is None:
        yield setting.say("letter-not-signed")
        return
    signed = setting.signed
    yield signed.reviewer
    yield setting.say("letter-licence", licence=signed.licence)
    yield setting.say("letter-reviewed", as_of=signed.as_of)
