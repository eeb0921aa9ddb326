"""What the draft motions say."""

from __future__ import annotations

from quarterday.core.review.motions import Motion, accepting, motions
from quarterday.core.words import Words, words
from quarterday.papers.letter.data import premium_of
from quarterday.papers.setting import Data, Setting

ID = "motions"


def reason(setting: Setting) -> Words | None:
    """Return why they go in: the board has something to decide."""
    agenda = setting.review.agenda
    return words("motions-reason", count=len(agenda)) if agenda else None


def data(setting: Setting) -> Data:
    """Return a draft for each decision of the agenda, and one to accept the renewal."""
    drafts = [*motions(setting.review.agenda), *_accepting(setting)]
    title = setting.say("motions-title", count=len(drafts))
    return {
        "opening": setting.opening(ID, title, setting.say("motions-lead")),
        "items": [_item(setting, number, draft) for number, draft in enumerate(drafts, start=1)],
        "by": [setting.say(f"motions-{id}") for id in ("mover", "seconder", "result")],
        "or_words": setting.say("motions-or"),
        "notes": [setting.say("motions-caution")],
    }


def _accepting(setting: Setting) -> tuple[Motion, ...]:
    offered = setting.case.offered
    if offered is None:
        return ()
    count = len(setting.review.agenda)
    premium = premium_of(setting, "offered")
    return (accepting(offered.insurer, setting.case.coming, premium, count),)


def _item(setting: Setting, number: int, draft: Motion) -> Data:
    return {
        "title": f"{number}. {setting.spoken(draft.about)}",
        "moved": setting.spoken(draft.moved),
        "instead": setting.spoken(draft.instead) if draft.instead else None,
    }
