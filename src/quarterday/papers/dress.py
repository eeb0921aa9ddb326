"""How the brokerage's brand reaches a template: colours, logo and signature, each by name."""

from __future__ import annotations

from collections.abc import Iterator, Mapping

from quarterday.catalogue.speech import Speech
from quarterday.core.words import words
from quarterday.papers.brokerage import Brokerage


def dress(brokerage: Brokerage, speech: Speech, signer: str | None = None) -> Mapping[str, str]:
    """Return what ``look.typ`` reads of the brand; ``signer`` is whose signature may stand.

    A picture comes with its alternative text. What the brokerage has not is left out.
    """
    return dict(_parts(brokerage, speech, signer))


def _parts(
    brokerage: Brokerage, speech: Speech, signer: str | None
) -> Iterator[tuple[str, str]]:  # fmt: skip
    yield "accent", brokerage.colours.accent
    yield "tint", brokerage.colours.tint
    logo = brokerage.picture(brokerage.logo)
    if logo:
        yield "logo", logo
        named = brokerage.named(speech.language)
        yield "logo-alt", speech.say(words("brand-logo", name=named))
    person = brokerage.person(signer) if signer else None
    signature = brokerage.picture(person.signature) if person else None
    if person and signature:
        yield "signature", signature
        yield "signature-alt", speech.say(words("brand-signature", name=person.name))
