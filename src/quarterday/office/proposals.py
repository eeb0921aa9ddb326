"""What returned forms propose, as plain data for JSON."""

from __future__ import annotations

from typing import Any

from quarterday.catalogue.speech import Speech
from quarterday.core.words import words
from quarterday.intake.forms.proposal import Proposal
from quarterday.intake.forms.recognise import Flat
from quarterday.intake.forms.telling import answered, sentence, value
from quarterday.office.accepting import Kept
from quarterday.office.returning import Reading, flat_notes

Plain = dict[str, Any]


def reading(read: Reading, kept: Kept | None, speech: Speech) -> Plain:
    """Return what a form proposes, and what of it was taken when somebody accepted it."""
    return {
        "file": read.file,
        "renewal": read.stamp.renewal.isoformat(),
        "document": read.looked.document if read.looked else None,
        "forms": list(read.proposed.filled),
        "notes": [speech.say(note) for note in read.notes],
        "proposals": [proposal(one, speech) for one in read.proposals],
        "taken": list(kept.taken) if kept else [],
        "refused": list(kept.refused) if kept else [],
        "entries": len(kept.entries) if kept else 0,
    }


def proposal(one: Proposal, speech: Speech) -> Plain:
    """Return one answer beside what the file says."""
    return {
        "field": one.name, "form": one.form, "kind": one.kind, "key": one.key,
        "of": one.field, "status": one.status, "can_be_taken": one.edit is not None,
        "was": speech.say(value(one, one.was)), "now": speech.say(value(one, one.now)),
        "said": speech.say(answered(one)),
        "sentence": speech.say(sentence(one)), "why": speech.say(one.why) if one.why else None,
    }  # fmt: skip


def flat(read: Flat, speech: Speech) -> Plain:
    """Return whose form it may be that holds no answers a program can read, and what to do."""
    file, name = read.files[0] if len(read.files) == 1 else "FILE", read.looked.name
    forms = read.forms if read.codes or len(read.forms) == 1 else ("FORM",)
    said = [words("returns-flat", name=name), *flat_notes(read)]
    said += [words("returns-flat-next", file=file, name=name, form=form) for form in forms]
    return {"document": read.looked.document, "files": list(read.files),
            "forms": list(read.forms), "notes": [speech.say(one) for one in said],
            "codes": {str(page): code.text for page, code in read.codes.items()}}  # fmt: skip
