"""Messages on their way: a mark outside the ledger, so that none goes out twice.

A message is sent first and recorded at once after; until then the mark holds a second one back.
"""

from __future__ import annotations

from datetime import UTC, datetime, timedelta

from django.db import IntegrityError, transaction

from quarterday.core.words import words
from quarterday.office.trouble import Trouble
from quarterday.people.models import Sending

ABANDONED = timedelta(minutes=10)


def begun(file: str, key: str, to: str) -> Sending:
    """Mark that a message is on its way; Trouble when another one is, or may have gone."""
    now = datetime.now(UTC)
    old = Sending.objects.filter(file=file, key=key, at__lt=now - ABANDONED).first()
    if old is not None:
        old.delete()
        raise Trouble(words("mail-perhaps", to=to, at=f"{old.at:%Y-%m-%d %H:%M} UTC"))
    try:
        with transaction.atomic():
            return Sending.objects.create(file=file, key=key, at=now)
    except IntegrityError:
        raise Trouble(words("mail-on-its-way", to=to)) from None
