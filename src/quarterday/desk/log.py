"""What is written to the log."""

from __future__ import annotations

import logging
import re

_SECRET = re.compile(r"(/diary/feed/)[^/\s\"']+")


class NoSecretAddress(logging.Filter):
    """Takes the secret part of a calendar's address out of what is logged."""

    def filter(self, record: logging.LogRecord) -> bool:
        """Keep the record, without the secret."""
        record.msg = _SECRET.sub(r"\1…", record.getMessage())
        record.args = ()
        return True
