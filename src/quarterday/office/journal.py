"""The journal of a premium as a CSV file that an accounting program or a spreadsheet reads."""

from __future__ import annotations

import csv
import io
from collections.abc import Iterable
from decimal import Decimal

from quarterday.catalogue.speech import Speech
from quarterday.core.premium.prepaid import JournalLine
from quarterday.core.words import words
from quarterday.intake.cells.answers import guarded

COLUMNS = ("date", "account", "fund", "debit", "credit", "memo")


def _text(said: str) -> str:
    """Return a text on one line, marked so that no spreadsheet runs it as a formula."""
    return guarded(" ".join(said.split()))


def _amount(amount: Decimal) -> str:
    return f"{amount:.2f}" if amount else ""


def journal_csv(lines: Iterable[JournalLine], speech: Speech) -> str:
    """Return a journal as CSV (RFC 4180), headings, accounts and memos in the speech's language.

    Days are ISO 8601; amounts have a point and two decimals, and the side that is nothing is empty.
    """
    out = io.StringIO()
    writer = csv.writer(out)
    writer.writerow([speech.say(words(f"journal-{column}")) for column in COLUMNS])
    for line in lines:
        amounts = _amount(line.debit), _amount(line.credit)
        account, memo = _text(speech.say(line.account)), _text(speech.say(line.memo))
        writer.writerow([line.date.isoformat(), account, _text(line.fund), *amounts, memo])
    return out.getvalue()
