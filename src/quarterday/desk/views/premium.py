"""The premium: why it moved, who bears which part, how it is paid and used up."""

from __future__ import annotations

from typing import Any

from django.http import HttpResponse
from django.shortcuts import render
from django.views.decorators.http import require_safe

from quarterday.core.file.records import AllocationKey, PaymentChoice, Terms
from quarterday.core.given import Unusable
from quarterday.core.premium.allocation import key_names
from quarterday.core.premium.instalments import AT_ONCE
from quarterday.core.premium.statement import statement
from quarterday.desk import filepage
from quarterday.desk.request import DeskRequest
from quarterday.desk.views.file import shown_of
from quarterday.desk.views.terms import versions_of
from quarterday.office import access
from quarterday.office.showing import Shown
from quarterday.papers.premium_statement.paying import sections

Told = dict[str, Any]


@require_safe
def premium(request: DeskRequest, file: str) -> HttpResponse:
    """Show the premium of one version of the terms, divided by one allocation key."""
    shown = shown_of(request, file)
    versions = {name: terms for name, terms in versions_of(shown.case).items() if terms.premiums}
    names, keys = list(versions), key_names(shown.file)
    asked = request.GET.get("terms", "")
    name = next((n for n in names if n == asked), names[-1] if names else None)
    key = request.GET.get("key", keys[0] if keys else "")[:80]
    told: Told = {
        "file": shown.file, "seq": shown.file.seq, "as_of": shown.as_of, "versions": names,
        "name": name, "keys": keys, "key": key, "at_once": AT_ONCE,
        "lines": [(line, shown.case.building_name(line.location))
                  for line in shown.file.all(AllocationKey) if line.name == key],
        "may": {act: access.may(request.person, act, access.office_of(shown.file))
                for act in ("edit", "record")},
    }  # fmt: skip
    if name is not None:
        told |= _statement(request, shown, versions[name], key)
    return render(request, "desk/premium.html", told)


def _statement(request: DeskRequest, shown: Shown, terms: Terms, key: str) -> Told:
    refused = ""
    try:
        made = statement(shown.case, terms, key or None)
    except Unusable as trouble:
        refused = request.speech.say(trouble.words)
        try:
            made = statement(shown.case, terms)
        except Unusable as other:
            return {"refused": request.speech.say(other.words)}
    return {
        "refused": refused,
        "made": made,
        "premium": filepage.premium(shown, request.speech) if terms is shown.case.terms else None,
        "sections": list(sections(shown.setting, made)),
        "doubts": made.doubts,
        "payment": shown.file.get(PaymentChoice, str(terms.start)),
    }
