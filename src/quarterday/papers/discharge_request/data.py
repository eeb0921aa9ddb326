"""What the discharge request says: who is still named, what is asked, and room for the answer."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

from quarterday.catalogue.speech import Speech
from quarterday.core.file.records import Building, Interest
from quarterday.core.words import Term, words
from quarterday.papers import alone
from quarterday.papers.alone import Alone, InForce
from quarterday.papers.brokerage import Brokerage
from quarterday.papers.dress import dress
from quarterday.papers.setting import Data

ID = "discharge-request"
TEMPLATE = Path(__file__).parent / "template.typ"
REPLY = ("discharge-since", "discharge-name", "discharge-signature", "discharge-date")
CONSENT = ("discharge-name", "discharge-signature", "discharge-date")


def pdf(
    of: Alone,
    policy: InForce,
    interest: Interest,
    building: Building | None,
    brokerage: Brokerage,
    speech: Speech,
) -> bytes:
    """Return the letter as PDF; the same facts make the same bytes."""
    told = data(of, policy, interest, building, brokerage, speech)
    return alone.printed(TEMPLATE, told, of.day, dress(brokerage, speech))


def data(
    of: Alone,
    policy: InForce,
    interest: Interest,
    building: Building | None,
    brokerage: Brokerage,
    speech: Speech,
) -> Data:
    """Return what the letter says, part by part."""
    say, role = speech.say, interest.role
    insured = of.organisation.named_insured or of.organisation.name
    title = say(words(f"discharge-title-{role}"))
    return {
        "house": alone.house(of, title, brokerage, speech),
        "sender": list(alone.sender(brokerage, speech.language)),
        "to": [speech.day(of.day), interest.name, *filter(None, [interest.address])],
        "kicker": say(words("paper-name", paper=Term("paper", ID))),
        "title": title,
        "lead": say(words(f"discharge-lead-{role}", insured=insured)),
        "facts": [
            [say(words(id)), text]
            for id, text in _facts(insured, policy, interest, building)
            if text
        ],
        "parts": [
            {
                "heading": say(words("discharge-reply")),
                "text": say(words(f"discharge-reply-{role}", name=interest.name)),
                "lines": [say(words(id)) for id in REPLY],
            },
            {
                "heading": say(words("discharge-consent")),
                "text": say(words("discharge-consent-text", insured=insured)),
                "lines": [say(words(id)) for id in CONSENT],
            },
        ],
        "notes": [say(words("discharge-not-yet")), say(words("discharge-privacy"))],
        "closing": alone.closing(brokerage, speech.language),
    }


def _facts(
    insured: str, policy: InForce, interest: Interest, building: Building | None
) -> Iterator[tuple[str, str | None]]:
    yield "copies-insured", insured
    yield "copies-insurer", policy.terms.insurer
    yield policy.named()
    yield "copies-reference", interest.reference
    yield "copies-location", building.name if building else None
    yield "copies-item", interest.item
